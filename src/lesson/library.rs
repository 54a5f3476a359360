//! All lessons together, and where they are read from.

mod shipped;
mod source;

use std::collections::BTreeMap;
use std::io;
use std::num::NonZero;
use std::sync::OnceLock;
use std::thread;

use bytes::Bytes;

use super::appears::{self, Appearance};
use super::document::{Block, Front, Lesson, MentionKind};
use super::problem::Problem;
use super::{front, parse, proof, reading_minutes};
use crate::quantity::AnyId;
pub use shipped::Shipped;
pub use source::{Folder, Joined, Memory, Source, Text};

/// All lessons of a source. Their front matter is read at once; the rest of a lesson, its teacher's
/// page and its pictures when somebody asks for them.
#[derive(Debug)]
pub struct Library {
    source: Box<dyn Source>,
    /// By the lessons' order, then by title.
    fronts: Vec<Front>,
    /// In the same order.
    books: Vec<Book>,
    /// What could not be read at all.
    pub problems: Vec<Problem>,
    appearances: OnceLock<BTreeMap<&'static str, Vec<Appearance>>>,
}

/// One lesson and its teacher's page.
#[derive(Debug)]
struct Book {
    lesson: Leaf,
    teacher: Option<Leaf>,
    /// Why its teacher's page could not be read.
    unread: Option<Problem>,
    /// The minutes of its words, once somebody has asked.
    counted: OnceLock<usize>,
}

/// How long a lesson takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Minutes {
    /// As its author says, all of it done.
    Said(u32),
    /// By the number of its words, reading alone.
    Counted(usize),
}

/// A text, and what it says once somebody has asked.
#[derive(Debug)]
pub(super) struct Leaf {
    /// The file as messages name it.
    pub(super) file: String,
    /// The text.
    pub(super) text: Text,
    /// Whether it is a page without a front matter.
    pub(super) is_page: bool,
    read: OnceLock<Lesson>,
}

impl Leaf {
    fn new(file: String, text: Text, is_page: bool) -> Self {
        Self { file, text, is_page, read: OnceLock::new() }
    }
}

impl Library {
    /// Lists every lesson. Never fails: what is wrong stands in each lesson's problems, or in
    /// [`Library::problems`] if a file could not be read.
    pub fn load(source: impl Source + 'static) -> Self {
        let mut problems = Vec::new();
        let ids = source.lessons().unwrap_or_else(|error| {
            let words = format!("the lessons cannot be listed: {error}");
            problems.push(unreadable("lessons", words, "a folder of lessons"));
            Vec::new()
        });
        let mut found = Vec::new();
        for id in ids {
            match Book::open(&source, id) {
                Ok(book) => found.push(book),
                Err(problem) => problems.push(problem),
            }
        }
        found.sort_by(|(a, _), (b, _)| (a.order, &a.title).cmp(&(b.order, &b.title)));
        let (fronts, books) = found.into_iter().unzip();
        Self { source: Box::new(source), fronts, books, problems, appearances: OnceLock::new() }
    }

    /// What each lesson says about itself, in their order.
    pub fn fronts(&self) -> &[Front] {
        &self.fronts
    }

    /// Every lesson, in their order.
    pub fn lessons(&self) -> impl Iterator<Item = &Lesson> {
        let unread = |(_, leaf): &(_, &Leaf)| !leaf.is_page && leaf.read.get().is_none();
        self.read_at_once(&self.leaves().filter(unread).collect::<Vec<_>>());
        self.fronts.iter().filter_map(|front| self.lesson(&front.id))
    }

    /// How long a lesson takes: as its author says, or by its words.
    pub fn minutes(&self, front: &Front) -> Option<Minutes> {
        let counted = || {
            let book = self.book(&front.id)?;
            let count = || reading_minutes(self.read(&book.lesson, &front.id));
            Some(Minutes::Counted(*book.counted.get_or_init(count)))
        };
        front.minutes.map(Minutes::Said).or_else(counted)
    }

    /// The lesson of that id.
    pub fn lesson(&self, id: &str) -> Option<&Lesson> {
        self.book(id).map(|book| self.read(&book.lesson, id))
    }

    /// Each lesson's id with its title, in their order.
    pub fn titles(&self) -> Vec<(&str, &str)> {
        self.fronts.iter().map(|front| (front.id.as_str(), front.title.as_str())).collect()
    }

    /// The parts of lessons in which a quantity appears, in the order of the lessons.
    pub fn appearances(&self, id: AnyId) -> &[Appearance] {
        let appearances = self.appearances.get_or_init(|| appears::index(self.lessons()));
        appearances.get(id.name()).map_or(&[], Vec::as_slice)
    }

    /// A picture that a lesson shows, as the bytes of its file.
    ///
    /// # Errors
    /// There is no such picture, or it lies outside the lesson's folder.
    pub fn picture(&self, id: &str, file: &str) -> io::Result<Bytes> {
        self.source.picture(id, file)
    }

    /// The teacher's page of a lesson, if it has one.
    pub fn teacher(&self, id: &str) -> Option<&[Block]> {
        let page = self.book(id)?.teacher.as_ref()?;
        Some(&self.read(page, id).blocks)
    }

    /// What is wrong with a lesson and its teacher's page.
    pub fn problems_of(&self, id: &str) -> impl Iterator<Item = &Problem> {
        self.book(id).into_iter().flat_map(move |book| {
            let leaves = std::iter::once(&book.lesson).chain(&book.teacher);
            leaves.flat_map(move |leaf| &self.read(leaf, id).problems).chain(&book.unread)
        })
    }

    /// Reads every lesson and every teacher's page, for who needs them all.
    pub fn read_all(&self) {
        self.read_at_once(&self.leaves().collect::<Vec<_>>());
    }

    /// Every text with its lesson, teacher's pages too.
    pub(super) fn leaves(&self) -> impl Iterator<Item = (&Front, &Leaf)> {
        self.fronts.iter().zip(&self.books).flat_map(|(front, book)| {
            std::iter::once(&book.lesson).chain(&book.teacher).map(move |leaf| (front, leaf))
        })
    }

    fn book(&self, id: &str) -> Option<&Book> {
        self.fronts.iter().position(|front| front.id == id).and_then(|at| self.books.get(at))
    }

    /// A lesson or a page as it reads, from the first time that somebody asks.
    fn read<'l>(&self, leaf: &'l Leaf, id: &str) -> &'l Lesson {
        leaf.read.get_or_init(|| {
            if leaf.is_page {
                return super::page(&leaf.text, &leaf.file);
            }
            let mut lesson = parse(&leaf.text, &leaf.file);
            // The folder is what links go by, also when the front matter is broken.
            id.clone_into(&mut lesson.front.id);
            let unseen: Vec<_> = self.unseen_pictures(&lesson).collect();
            lesson.problems.extend(unseen);
            proof::hold_to_others(&mut lesson, &self.fronts);
            lesson
        })
    }

    /// Reads what nobody has asked for yet, on as many cores as there are: texts do not hang on one
    /// another.
    fn read_at_once(&self, leaves: &[(&Front, &Leaf)]) {
        let cores = thread::available_parallelism().map_or(1, NonZero::get);
        thread::scope(|scope| {
            for share in leaves.chunks(leaves.len().div_ceil(cores).max(1)) {
                scope.spawn(move || {
                    for (front, leaf) in share {
                        self.read(leaf, &front.id);
                    }
                });
            }
        });
    }

    /// What is wrong with the pictures that a lesson shows.
    fn unseen_pictures(&self, lesson: &Lesson) -> impl Iterator<Item = Problem> {
        let pictures = lesson.mentions.iter().filter(|m| m.kind == MentionKind::Picture);
        pictures.filter_map(|picture| {
            let error = self.source.picture(&lesson.front.id, &picture.name).err()?;
            let message = format!("the picture \"{}\" cannot be read: {error}", picture.name);
            Some(Problem {
                expected: "a file beside lesson.md".to_owned(),
                ..Problem::about(&lesson.file, picture, message)
            })
        })
    }
}

impl Book {
    /// Reads the texts of a lesson, and what it says about itself.
    fn open(source: &dyn Source, id: String) -> Result<(Front, Self), Problem> {
        let file = source.name(&id);
        let page = file.replace(source::TEXT, source::TEACHER);
        let text = source.text(&id).map_err(|error| {
            let words = format!("the lesson cannot be read: {error}");
            unreadable(&file, words, "a text file in UTF-8")
        })?;
        let (teacher, unread) = match source.teacher(&id) {
            Ok(text) => (text.map(|text| Leaf::new(page, text, true)), None),
            Err(error) => {
                let words = format!("the teacher's page cannot be read: {error}");
                (None, Some(unreadable(&page, words, "a text file in UTF-8")))
            }
        };
        let front = Front { id, ..front::alone(&text, &file) };
        Ok((
            front,
            Self {
                lesson: Leaf::new(file, text, false),
                teacher,
                unread,
                counted: OnceLock::new(),
            },
        ))
    }
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
