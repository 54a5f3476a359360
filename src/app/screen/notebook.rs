//! The notebook: what the reader answered, measured and noted, lesson by lesson.

mod entry;
mod note;
mod over_time;

use std::collections::BTreeMap;
use std::io;
use std::path::{Path, PathBuf};

use iced::widget::{Column, column, container, row, text, text_input};
use iced::{Center, Element, Fill};

use crate::app::screen::Place;
use crate::app::theme::{self, BOLD, MEASURE, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::Front;
use crate::notebook::{Notebook, Record};
use crate::quantity::Units;
pub use note::{Act, Note};
use over_time::Series;

/// What is being written on the screen.
pub struct Notes {
    /// The notes being written, by lesson.
    editors: BTreeMap<String, Note>,
    /// What was measured more than once, by lesson.
    series: BTreeMap<String, Vec<Series>>,
    /// Where the notebook is exported to.
    path: String,
    /// What came of the last export, and whether it worked.
    told: Option<(bool, String)>,
}

/// What happens on the screen.
#[derive(Debug, Clone)]
pub enum Message {
    /// Something is done in the note of a lesson.
    Note(String, Act),
    /// The path of the export is now this.
    PathTyped(String),
    /// The export is wanted at the path typed.
    Export,
    /// The path is to be chosen in a dialog.
    Choose,
    /// The dialog is over, with this path.
    Picked(Option<PathBuf>),
    /// The notebook is to be printed.
    Print,
    /// Another screen is wanted.
    Go(Place),
}

/// What the shell is asked for.
pub enum Action {
    /// Nothing.
    None,
    /// The note of a lesson is now this.
    Noted(String, String),
    /// The notebook is to be written to a path.
    Export {
        /// Where.
        path: PathBuf,
        /// Whether a file that is there already is written over.
        over: bool,
    },
    /// Where to export is to be asked.
    Choose,
    /// The notebook on paper.
    Print,
    /// Another screen.
    Go(Place),
}

impl Notes {
    /// Nothing written yet; exports go to `folder` if the reader names no other.
    pub fn new(folder: &Path) -> Self {
        let path = folder.join("heftwise-notebook.md").display().to_string();
        Self { editors: BTreeMap::new(), series: BTreeMap::new(), path, told: None }
    }

    /// Takes up the notes of the notebook as the screen is opened.
    pub fn open(&mut self, notebook: &Notebook) {
        self.told = None;
        let series = notebook.lessons().map(|(id, record)| (id.to_owned(), Series::of(record)));
        self.series = series.collect();
        for (id, record) in notebook.lessons() {
            let editor = || Note::new(&record.note);
            self.editors.entry(id.to_owned()).or_insert_with(editor);
        }
    }

    /// Acts on a message.
    pub fn update(&mut self, message: Message) -> Action {
        match message {
            Message::Note(id, act) => {
                let changed = self.editors.get_mut(&id).and_then(|note| note.perform(act));
                changed.map_or(Action::None, |text| Action::Noted(id, text))
            }
            Message::PathTyped(path) => {
                self.path = path;
                self.told = None;
                Action::None
            }
            Message::Export => {
                Action::Export { path: PathBuf::from(self.path.trim()), over: false }
            }
            Message::Choose => Action::Choose,
            Message::Print => Action::Print,
            // The dialog has asked already before an existing file is written over.
            Message::Picked(Some(path)) => Action::Export { path, over: true },
            Message::Picked(None) => Action::None,
            Message::Go(place) => Action::Go(place),
        }
    }

    /// What came of an export.
    pub fn exported(&mut self, path: &Path, done: io::Result<()>) {
        self.told = Some(match done {
            Ok(()) => (true, format!("Written to {}.", path.display())),
            Err(error) => (false, format!("{} was not written: {error}.", path.display())),
        });
    }

    /// The screen.
    pub fn view<'a>(
        &'a self,
        lessons: &'a [Front],
        notebook: &'a Notebook,
        units: &Units,
    ) -> Element<'a, Message> {
        let known = lessons.iter().filter_map(|lesson| {
            let record = notebook.lesson(&lesson.id)?;
            let title = text(&lesson.title).size(size::HEADING).font(SEMIBOLD);
            let to = Message::Go(Place::Lesson(lesson.id.clone()));
            let heading = pressable(Kind::Word, title).on_press(to);
            Some(self.section(&lesson.id, heading, record, units))
        });
        let is_known = |id: &str| lessons.iter().any(|lesson| lesson.id == id);
        let gone = notebook.lessons().filter(|(id, record)| !is_known(id) && !record.is_blank());
        let gone = gone.map(|(id, record)| {
            let words = format!("{id} (this lesson is not there any more)");
            let heading = text(words).size(size::MINOR).font(SEMIBOLD).width(Fill);
            self.section(id, heading, record, units)
        });
        let sections: Vec<_> = known.chain(gone).collect();
        // Neither hangs on the notes: a note being written must keep its place on the page, and with
        // it the focus.
        let nothing_done = notebook
            .lessons()
            .all(|(_, record)| record.answers.is_empty() && record.measurements.is_empty());
        let nothing_there = sections.is_empty();
        let page = column![
            text("Notebook").size(size::TITLE).font(BOLD),
            nothing_done.then(empty),
            Column::with_children(sections).spacing(4.0 * UNIT),
            (!nothing_there).then(|| self.export()),
        ]
        .spacing(3.0 * UNIT)
        .max_width(MEASURE)
        .width(Fill);
        super::scrolled(page)
    }

    fn section<'a>(
        &'a self,
        id: &'a str,
        heading: impl Into<Element<'a, Message>>,
        record: &'a Record,
        units: &Units,
    ) -> Element<'a, Message> {
        let answers = record.answers.iter().map(entry::answer);
        let measurements = record.measurements.iter().map(|one| entry::measurement(one, units));
        let over_time = self.series.get(id).into_iter().flatten().map(|it| it.view(units));
        let part = |words, some: bool| some.then(|| text(words).size(size::MINOR).font(SEMIBOLD));
        let nothing = (record.answers.is_empty() && record.measurements.is_empty()).then(|| {
            text("No answers and no measurements in this lesson yet.")
                .size(size::LABEL)
                .style(theme::soft)
        });
        column![
            heading.into(),
            nothing,
            part("Answers", !record.answers.is_empty()),
            Column::with_children(answers).spacing(1.5 * UNIT),
            part("Measurements", !record.measurements.is_empty()),
            Column::with_children(measurements.chain(over_time)).spacing(1.5 * UNIT),
            part("Your notes", true),
            self.editors.get(id).map(|note| note.view(id)),
        ]
        .spacing(UNIT)
        .into()
    }

    fn export(&self) -> Element<'_, Message> {
        let told = self.told.as_ref().map(|(worked, words)| {
            let style = if *worked { theme::soft } else { theme::warning };
            text(words).size(size::LABEL).style(style).width(Fill)
        });
        column![
            text("Export as Markdown").size(size::MINOR).font(SEMIBOLD),
            text_input("/home/me/notebook.md", &self.path)
                .id("notebook-path")
                .font(REGULAR)
                .size(size::LABEL)
                .padding([6, 8])
                .style(theme::field)
                .on_input(Message::PathTyped)
                .on_submit(Message::Export),
            row![
                pressable(Kind::Main, text("Export").size(size::LABEL))
                    .on_press_maybe((!self.path.trim().is_empty()).then_some(Message::Export)),
                pressable(Kind::Plain, text("Choose a place").size(size::LABEL))
                    .on_press(Message::Choose),
                pressable(Kind::Plain, text("Print the notebook").size(size::LABEL))
                    .on_press(Message::Print),
            ]
            .spacing(UNIT)
            .align_y(Center)
            .wrap()
            .vertical_spacing(UNIT),
            told,
        ]
        .spacing(UNIT)
        .into()
    }
}

/// What to do while there is nothing to read.
fn empty<'a>() -> Element<'a, Message> {
    let words = "Nothing is written here yet. Answer a guess in a lesson, and it comes here by \
                 itself. Do one of the bench tests, write down its three readings, and they come \
                 here beside what was predicted.";
    let inside = column![
        text(words).size(size::BODY).line_height(theme::LEADING).width(Fill),
        pressable(Kind::Main, text("To the lessons").size(size::LABEL))
            .on_press(Message::Go(Place::Contents)),
    ]
    .spacing(2.0 * UNIT);
    container(inside).style(theme::block).padding(2.0 * UNIT).width(Fill).into()
}
