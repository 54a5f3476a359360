//! All lessons together, and where they are read from.

mod shipped;
mod source;

use std::collections::BTreeMap;
use std::num::NonZero;
use std::panic::resume_unwind;
use std::thread;

use bytes::Bytes;

use super::appears::{self, Appearance};
use super::document::{Block, Lesson, MentionKind};
use super::problem::Problem;
use super::{parse, proof};
use crate::quantity::AnyId;
pub use shipped::Shipped;
pub use source::{Folder, Joined, Memory, Source, Text};

/// All lessons of a source, read and held against each other.
#[derive(Debug, Clone, Default)]
pub struct Library {
    /// The lessons by their order, then by title.
    pub lessons: Vec<Lesson>,
    /// What could not be read at all.
    pub problems: Vec<Problem>,
    pictures: BTreeMap<(String, String), Bytes>,
    appearances: BTreeMap<&'static str, Vec<Appearance>>,
    teachers: BTreeMap<String, Vec<Block>>,
    kept: Vec<Kept>,
}

/// A text as it was read, kept for proofreading.
#[derive(Debug, Clone)]
pub(super) struct Kept {
    /// The file as messages name it.
    pub(super) file: String,
    /// The text.
    pub(super) text: Text,
    /// Whether it is a page without a front matter.
    pub(super) is_page: bool,
}

impl Library {
    /// Reads every lesson and its pictures. Never fails: what is wrong stands in each lesson's
    /// problems, or in [`Library::problems`] if a file could not be read.
    pub fn load(source: &dyn Source) -> Self {
        let mut library = Self::default();
        let ids = source.lessons().unwrap_or_else(|error| {
            let words = format!("the lessons cannot be listed: {error}");
            library.problems.push(unreadable("lessons", words, "a folder of lessons"));
            Vec::new()
        });
        let mut found = Vec::new();
        let mut unread = Vec::new();
        for folder in &ids {
            let file = source.name(folder);
            let page = file.replace(source::TEXT, source::TEACHER);
            match source.text(folder) {
                Ok(text) => found.push((folder, Kept { file, text, is_page: false })),
                Err(error) => {
                    let words = format!("the lesson cannot be read: {error}");
                    library.problems.push(unreadable(&file, words, "a text file in UTF-8"));
                    continue;
                }
            }
            match source.teacher(folder) {
                Ok(None) => {}
                Ok(Some(text)) => found.push((folder, Kept { file: page, text, is_page: true })),
                Err(error) => {
                    let words = format!("the teacher's page cannot be read: {error}");
                    unread.push((folder, unreadable(&page, words, "a text file in UTF-8")));
                }
            }
        }
        let documents = at_once(&found, |(_, kept)| {
            (if kept.is_page { super::page } else { parse })(&kept.text, &kept.file)
        });
        let mut read: Vec<(String, Lesson)> = Vec::new();
        for ((folder, kept), mut document) in found.into_iter().zip(documents) {
            // The folder is what links go by, also when the front matter is broken.
            document.id.clone_from(folder);
            match read.last_mut() {
                // What is wrong with a teacher's page is wrong with its lesson.
                Some((_, lesson)) if kept.is_page => {
                    lesson.problems.extend(document.problems);
                    library.teachers.insert(document.id, document.blocks);
                }
                _ => {
                    library.take_pictures(source, &mut document);
                    read.push((folder.clone(), document));
                }
            }
            library.kept.push(kept);
        }
        for (folder, problem) in unread {
            let lesson = read.iter_mut().find(|(id, _)| id == folder);
            lesson.into_iter().for_each(|(_, lesson)| lesson.problems.push(problem.clone()));
        }
        proof::hold_together(&mut read);
        library.lessons = read.into_iter().map(|(_, lesson)| lesson).collect();
        library.lessons.sort_by(|a, b| (a.order, &a.title).cmp(&(b.order, &b.title)));
        library.appearances = appears::index(&library.lessons);
        library
    }

    /// The parts of lessons in which a quantity appears, in the order of the lessons.
    pub fn appearances(&self, id: AnyId) -> &[Appearance] {
        self.appearances.get(id.name()).map_or(&[], Vec::as_slice)
    }

    /// The lesson of that id.
    pub fn lesson(&self, id: &str) -> Option<&Lesson> {
        self.lessons.iter().find(|lesson| lesson.id == id)
    }

    /// Each lesson's id with its title, in their order.
    pub fn titles(&self) -> Vec<(&str, &str)> {
        self.lessons.iter().map(|lesson| (lesson.id.as_str(), lesson.title.as_str())).collect()
    }

    /// A picture that a lesson shows, as the bytes of its file.
    pub fn picture(&self, id: &str, file: &str) -> Option<Bytes> {
        self.pictures.get(&(id.to_owned(), file.to_owned())).cloned()
    }

    /// The teacher's page of a lesson, if it has one.
    pub fn teacher(&self, id: &str) -> Option<&[Block]> {
        self.teachers.get(id).map(Vec::as_slice)
    }

    /// Every text as it was read.
    pub(super) fn kept(&self) -> &[Kept] {
        &self.kept
    }

    fn take_pictures(&mut self, source: &dyn Source, lesson: &mut Lesson) {
        for picture in lesson.mentions.iter().filter(|m| m.kind == MentionKind::Picture) {
            match source.picture(&lesson.id, &picture.name) {
                Ok(bytes) => {
                    let key = (lesson.id.clone(), picture.name.clone());
                    self.pictures.insert(key, bytes);
                }
                Err(error) => {
                    let message =
                        format!("the picture \"{}\" cannot be read: {error}", picture.name);
                    lesson.problems.push(Problem {
                        expected: "a file beside lesson.md".to_owned(),
                        ..Problem::about(&lesson.file, picture, message)
                    });
                }
            }
        }
    }
}

/// Reads texts that do not hang on one another, on as many cores as there are, in their order.
fn at_once<T: Sync, R: Send>(texts: &[T], read: impl Fn(&T) -> R + Sync) -> Vec<R> {
    let cores = thread::available_parallelism().map_or(1, NonZero::get);
    let each = texts.len().div_ceil(cores).max(1);
    let read = |texts: &[T]| texts.iter().map(&read).collect::<Vec<_>>();
    thread::scope(|scope| {
        let readers: Vec<_> = texts.chunks(each).map(|texts| scope.spawn(|| read(texts))).collect();
        let done = readers.into_iter().map(|reader| reader.join());
        done.flat_map(|read| read.unwrap_or_else(|panic| resume_unwind(panic))).collect()
    })
}

fn unreadable(file: &str, message: String, expected: &str) -> Problem {
    Problem {
        file: file.to_owned(),
        line: 1,
        column: 1,
        message,
        expected: expected.to_owned(),
        nearest: None,
    }
}
