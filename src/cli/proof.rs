//! `heftwise proof`: lessons proofread.

use std::io::{ErrorKind, Write};
use std::path::{Path, PathBuf};

use clap::Args;

use super::Stop;
use crate::lesson::{Folder, Lesson, Library, Problem, Shipped, Source, proof};

/// The name of a lesson's text in its folder.
const TEXT: &str = "lesson.md";

/// Proofreads lessons: names, units, links, numbers the rules do not give, text too hard to read
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise proof lessons/pressure/lesson.md
      Proofreads one lesson; links to the lessons beside it are followed.
  heftwise proof my-lessons
      Proofreads every lesson of a folder; ends with 1 when anything is wrong.")]
pub(super) struct Proof {
    /// Lessons or folders of lessons; without any, the folder 'lessons', or else the lessons inside
    /// the program.
    #[arg(value_name = "PATH")]
    paths: Vec<PathBuf>,
}

impl Proof {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        let mut proofs = self.paths.iter().map(|path| at(path)).collect::<Result<Vec<_>, _>>()?;
        if proofs.is_empty() {
            let here = Path::new("lessons");
            proofs.push(if here.is_dir() { at(here)? } else { of(Shipped, None) });
        }
        let lessons: usize = proofs.iter().map(|proof| proof.lessons).sum();
        let problems: Vec<&Problem> = proofs.iter().flat_map(|proof| &proof.problems).collect();
        for problem in &problems {
            writeln!(out, "{problem}")?;
        }
        match problems.len() {
            0 => {
                let notes: usize = proofs.iter().map(|proof| proof.notes).sum();
                let notes = match notes {
                    0 => String::new(),
                    _ => format!(" with {}", counted(notes, "teacher note")),
                };
                writeln!(out, "{} proofread{notes}, nothing wrong.", counted(lessons, "lesson"))?;
                Ok(())
            }
            wrong => Err(Stop::Failed(format!("{}.", counted(wrong, "problem")))),
        }
    }
}

fn counted(count: usize, thing: &str) -> String {
    format!("{count} {thing}{}", if count == 1 { "" } else { "s" })
}

/// What proofreading came to.
struct Proofread {
    lessons: usize,
    /// Notes for teachers, which normal reading hides.
    notes: usize,
    problems: Vec<Problem>,
}

/// Proofreads a lesson's file, its folder, or a folder of lessons.
fn at(path: &Path) -> Result<Proofread, Stop> {
    let fail = |why: &str| Stop::Failed(format!("{}: {why}", path.display()));
    // "." and "lesson.md" hide the names of the folders they stand in.
    let full = path.canonicalize().map_err(|error| match error.kind() {
        ErrorKind::NotFound => fail("there is no such file or folder."),
        _ => fail(&error.to_string()),
    })?;
    let lesson = if full.is_file() {
        if full.file_name().is_none_or(|name| name != TEXT) {
            return Err(fail("a lesson is a file lesson.md in a folder named after its id."));
        }
        full.parent()
    } else {
        full.join(TEXT).is_file().then_some(full.as_path())
    };
    let proofread = match lesson.and_then(|lesson| lesson.parent().zip(lesson.file_name())) {
        Some((beside, id)) => {
            of(Folder(as_given(path, &full, beside)), Some(&id.to_string_lossy()))
        }
        None => of(Folder(path.to_owned()), None),
    };
    if proofread.lessons == 0 && proofread.problems.is_empty() {
        return Err(fail("there is no lesson here; each has a folder with a file lesson.md."));
    }
    Ok(proofread)
}

/// The folder of lessons as the reader would name it, where that can be told from what was given.
fn as_given(path: &Path, full: &Path, beside: &Path) -> PathBuf {
    let steps_up = full.components().count() - beside.components().count();
    match path.ancestors().nth(steps_up) {
        Some(given) if given.canonicalize().is_ok_and(|given| given == beside) => given.to_owned(),
        _ => beside.to_owned(),
    }
}

/// Proofreads the lessons of a source, or one of them.
fn of(source: impl Source + 'static, only: Option<&str>) -> Proofread {
    let file = only.map(|id| source.name(id));
    let library = Library::load(source);
    let mut problems = proof::check(&library);
    let Some(id) = only else {
        let notes = library.lessons().map(Lesson::teacher_notes).sum();
        return Proofread { lessons: library.fronts().len(), notes, problems };
    };
    let folder = file.as_deref().and_then(|file| Path::new(file).parent());
    problems.retain(|problem| Path::new(&problem.file).parent() == folder);
    let notes = library.lesson(id).map_or(0, Lesson::teacher_notes);
    Proofread { lessons: 1, notes, problems }
}
