//! `heftwise handout`: a lesson, a build's record or a notebook for paper.

use std::io::Write;
use std::path::{Path, PathBuf};

use clap::{Args, ValueEnum};

use super::{Stop, open};
use crate::handout::{self, Choices, Copies, Paper, Subject};
use crate::lesson::{Folder, Library, Shipped};
use crate::notebook::file as notebook_file;
use crate::quantity::catalogue::nearest_of;
use crate::quantity::{UnitSet, Units};
use crate::sheet::file::name_of;

/// The build a handout shows if none is named.
const DEMO: &str = "sandpiper";

/// Writes a handout: one HTML file that fetches nothing and prints in black and white
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise handout pressure --build bullock.toml -o pressure.html
      The pressure lesson with that build's numbers.
  heftwise handout pressure --copies 6 --seed 42 --key -o club.html
      Six sheets with numbers of their own, and a key; the same seed makes them again.
  heftwise handout --walk-round bullock.toml -o bullock.html
      A record of the build and its limits, for its box.

Open the file in any browser and print it from there.")]
pub(super) struct Handout {
    /// The lesson, by its id.
    #[arg(required_unless_present_any = ["walk_round", "notebook"],
          conflicts_with_all = ["walk_round", "notebook"])]
    lesson: Option<String>,
    /// The build whose numbers it shows.
    #[arg(long, value_name = "FILE")]
    build: Option<PathBuf>,
    /// A build beside it.
    #[arg(long, value_name = "FILE")]
    companion: Option<PathBuf>,
    /// So many sheets, each with numbers of its own.
    #[arg(long, value_name = "N", requires = "lesson")]
    copies: Option<usize>,
    /// What the numbers of the copies are drawn from.
    #[arg(long, value_name = "S", requires = "copies", default_value_t = 1)]
    seed: u64,
    /// Add a key with the answers, on pages of its own.
    #[arg(long, requires = "lesson")]
    key: bool,
    /// Print all the text of the lesson, not only what a bench needs.
    #[arg(long, requires = "lesson")]
    whole: bool,
    /// The record of a build in place of a lesson.
    #[arg(long, value_name = "BUILD", conflicts_with_all = ["build", "companion", "notebook"])]
    walk_round: Option<PathBuf>,
    /// A notebook in place of a lesson; without a file, the reader's own.
    #[arg(long, value_name = "FILE", num_args = 0..=1)]
    notebook: Option<Option<PathBuf>>,
    /// The paper.
    #[arg(long, value_enum, default_value_t = Sheet::A4)]
    paper: Sheet,
    /// Write in imperial units.
    #[arg(long)]
    imperial: bool,
    /// Read the lessons of this folder in place of those inside the program.
    #[arg(long, value_name = "FOLDER")]
    lessons: Option<PathBuf>,
    /// The file to write.
    #[arg(short, long, value_name = "FILE")]
    output: PathBuf,
}

/// A size of paper.
#[derive(Debug, Clone, Copy, ValueEnum)]
enum Sheet {
    A4,
    Letter,
}

impl Handout {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        let page = match (&self.lesson, &self.walk_round, &self.notebook) {
            (Some(id), _, _) => self.lesson(id)?,
            (None, Some(build), _) => {
                handout::walk_round(&subject(build)?, &self.units(), self.paper())
            }
            (None, None, Some(file)) => self.notebook(file.as_deref())?,
            (None, None, None) => return Err(Stop::Usage("Name a lesson.".to_owned())),
        };
        handout::save(&self.output, &page).map_err(Stop::Failed)?;
        Ok(writeln!(out, "{} written. Print it from a browser.", self.output.display())?)
    }

    fn lesson(&self, id: &str) -> Result<String, Stop> {
        let library = self.library();
        let unknown = || {
            let known: Vec<&str> = library.fronts().iter().map(|it| it.id.as_str()).collect();
            let near = nearest_of(id, known.iter().copied());
            let near = near.map_or_else(String::new, |near| format!(" Did you mean \"{near}\"?"));
            Stop::Usage(format!(
                "There is no lesson \"{id}\".{near} Lessons: {}.",
                known.join(", ")
            ))
        };
        let copies = self.copies.map(|count| Copies::new(count, self.seed)).transpose();
        let copies = copies.map_err(|error| Stop::Usage(error.to_string()))?;
        let subject = subject(self.build.as_deref().unwrap_or(Path::new(DEMO)))?;
        let companion = self.companion.as_deref().map(self::subject).transpose()?;
        let choices = Choices {
            units: self.units(),
            paper: self.paper(),
            copies,
            key: self.key,
            whole: self.whole,
        };
        handout::lesson_of(&library, id, (&subject, companion.as_ref()), &choices, &|_, _| true)
            .ok_or_else(unknown)
    }

    fn notebook(&self, file: Option<&Path>) -> Result<String, Stop> {
        let path = file.map(Path::to_owned).or_else(notebook_file::usual).ok_or_else(|| {
            Stop::Usage("This system names no folder for notebooks: name the file.".to_owned())
        })?;
        if !path.exists() {
            return Err(Stop::Failed(format!("There is no notebook at {}.", path.display())));
        }
        let loaded = notebook_file::load(&path);
        if let Some(told) = loaded.told {
            return Err(Stop::Failed(told));
        }
        let library = self.library();
        let titles = library.titles();
        let subject = subject(self.build.as_deref().unwrap_or(Path::new(DEMO)))?;
        Ok(handout::notebook(&loaded.notebook, &titles, &subject, &self.units(), self.paper()))
    }

    fn library(&self) -> Library {
        match &self.lessons {
            Some(folder) => Library::load(Folder(folder.clone())),
            None => Library::load(Shipped),
        }
    }

    fn units(&self) -> Units {
        Units::of(if self.imperial { UnitSet::Imperial } else { UnitSet::Metric })
    }

    fn paper(&self) -> Paper {
        match self.paper {
            Sheet::A4 => Paper::A4,
            Sheet::Letter => Paper::Letter,
        }
    }
}

/// The build of a file, or the demonstration build of that name.
fn subject(path: &Path) -> Result<Subject, Stop> {
    let sheet = open::build(path)?;
    Ok(Subject::new(name_of(&sheet, Some(path)), sheet))
}
