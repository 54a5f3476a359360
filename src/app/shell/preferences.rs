//! What the shell does among the settings, and how the reader's own lessons stand.

use std::io;
use std::path::{Path, PathBuf};

use iced::{Element, Task};

use super::{App, Message};
use crate::app::files;
use crate::app::screen::preferences::{self, Choices, OwnLessons, Which};
use crate::lesson::{Folder, Library, Source};

/// How many problems of own lessons are told; `heftwise proof` tells all.
const TOLD: usize = 4;

impl App {
    /// Acts on what is done among the settings.
    pub(super) fn choose(&mut self, message: preferences::Message) -> Task<Message> {
        match self.choices.update(message) {
            preferences::Action::None => Task::none(),
            preferences::Action::Choose(which) => files::choose_folder(which),
            preferences::Action::Set(which, path) => self.set_folder(which, path),
            preferences::Action::NoPicks => {
                self.with_settings(|settings| settings.units.picks.clear())
            }
        }
    }

    fn set_folder(&mut self, which: Which, path: Option<PathBuf>) -> Task<Message> {
        match which {
            Which::Builds => self.settings.builds = path,
            Which::Lessons => {
                self.own = path.clone().map(Folder);
                self.settings.own_lessons = path;
            }
        }
        self.choices = Choices::new(&self.settings);
        self.save_settings();
        match which {
            Which::Builds => Task::none(),
            Which::Lessons => self.reload_lessons(),
        }
    }

    /// The screen of the settings.
    pub(super) fn preferences(&self) -> Element<'_, Message> {
        self.choices.view(&self.settings, &self.own_lessons, &self.folders.settings)
    }
}

/// How the lessons of a folder stand in a library that was read with them.
pub(super) fn stand(own: Option<&Folder>, library: &Library) -> OwnLessons {
    let Some(folder) = own else { return OwnLessons::default() };
    let ids = match folder.lessons() {
        Ok(ids) => ids,
        Err(error) => return OwnLessons { wrong: true, words: vec![broken(&folder.0, &error)] },
    };
    let fronts = library.fronts().iter().filter(|front| ids.contains(&front.id));
    let problems = fronts.flat_map(|front| library.problems_of(&front.id)).map(ToString::to_string);
    let unread = library.problems.iter().map(ToString::to_string);
    let mut words = vec![match ids.len() {
        0 => "There is no lesson in it: each is a folder with a lesson.md inside.".to_owned(),
        1 => "1 lesson of your own is read.".to_owned(),
        count => format!("{count} lessons of your own are read."),
    }];
    let problems: Vec<String> = unread.chain(problems).collect();
    let rest = problems.len().saturating_sub(TOLD);
    let wrong = ids.is_empty() || !problems.is_empty();
    words.extend(problems.into_iter().take(TOLD));
    if rest > 0 {
        words.push(format!("{rest} more; the command proof lists them all."));
    }
    OwnLessons { wrong, words }
}

fn broken(path: &Path, error: &io::Error) -> String {
    let path = path.display();
    match error.kind() {
        io::ErrorKind::NotFound => format!(
            "There is no folder {path}, so none of its lessons is shown. Make it or choose another."
        ),
        io::ErrorKind::NotADirectory => format!(
            "{path} is a file, not a folder. Choose the folder that holds your lessons’ folders."
        ),
        io::ErrorKind::PermissionDenied => format!(
            "You may not read the folder {path}. Change who may read it, or choose another."
        ),
        _ => format!("The folder {path} cannot be read: {error}. Choose another."),
    }
}
