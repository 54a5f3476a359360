//! A lesson being read: the text, and beside it the numbers of the build that it uses.

mod footnote;
mod frame;
mod jump;
mod margin;
mod meaning;
mod record;

use std::time::Instant;

use iced::widget::{column, container, row, scrollable};
use iced::{Element, Fill, Length, Padding, Task};

use crate::app::block::{self, curve, ledger, measure, run, sketch};
use crate::app::desk::Desk;
use crate::app::document::blocks;
use crate::app::focus;
use crate::app::page::{self, Audience, Marks, Page};
use crate::app::settings::Settings;
use crate::app::theme::{self, MEASURE, UNIT};
use crate::app::widget::afresh::afresh;
use crate::app::widget::{field, picture};
use crate::lesson::{BlockKind, Front, Lesson, Library, Target};
use crate::plot::save::Figure;
use crate::quantity::AnyId;
use crate::sheet::Edit;
pub use jump::{section_at, to as jump_to};
use meaning::Meaning;

/// The scrolled page, to move it by key.
pub const PAGE: &str = "page";

/// So far the page moves until its heading is looked for again, in pixels.
const LOOK_EVERY: f32 = 40.0;

/// A lesson being read.
pub struct Reading {
    /// The lesson's id.
    pub id: String,
    /// How far down, in pixels.
    pub offset: f32,
    /// The heading the page stands under, by its anchor.
    pub section: Option<String>,
    /// Turned over whenever the page has moved.
    moved: bool,
    /// How far down the page was when the heading was looked for.
    looked: f32,
    marks: Marks,
    meaning: Option<Meaning>,
    /// The footnote shown in the margin.
    footnote: Option<String>,
    numbers: bool,
}

/// What happens on the page.
#[derive(Debug, Clone)]
pub enum Message {
    /// Something in the text.
    Page(page::Message),
    /// The page was scrolled to this many pixels.
    Scrolled(f32),
    /// The page stands under this heading.
    Stands(Option<String>),
    /// A heading was picked.
    Jump(String),
    /// The meaning in the margin is put away.
    MeaningClosed,
    /// Long lists of the meaning in the margin are to be shown whole.
    MeaningWhole,
    /// The meaning was asked for with this control of the page.
    MeaningFrom(usize),
    /// A part of a lesson is wanted.
    Part {
        /// The lesson.
        lesson: String,
        /// The heading.
        anchor: String,
    },
    /// The numbers of a narrow window, in or out.
    NumbersTurned,
    /// The footnote in the margin is put away.
    FootnoteClosed,
    /// The lesson is finished, or not finished after all.
    Finished(bool),
    /// Another lesson is wanted.
    Lesson(String),
    /// The lesson is to be shown to a class.
    Show,
    /// A handout of the lesson is to be printed.
    Print,
    /// What plays on the page is to be moved on to this moment.
    Ticked(Instant),
}

/// What the shell is asked for.
pub enum Action {
    /// Nothing.
    None,
    /// The page has moved on, perhaps under another heading.
    Scrolled,
    /// A number is being changed.
    Field(field::Event),
    /// The build is changed; changes of one gesture count as one.
    Edit(Edit, Option<String>),
    /// A number is to be shown in its next unit.
    NextUnit(AnyId),
    /// Numbers go back to those of the saved build.
    PutBack(Vec<AnyId>),
    /// Another lesson.
    Lesson(String),
    /// A heading of a lesson.
    Part {
        /// The lesson.
        lesson: String,
        /// The heading.
        anchor: String,
    },
    /// This lesson, shown to a class.
    Show,
    /// A handout of this lesson.
    Print,
    /// A page on the web.
    Web(String),
    /// Something to write in the notebook, or to do with what was written on the page.
    Noted(Noted),
    /// A picture is to be saved.
    Figure(Unsaved),
    /// A picture is to be put on the clipboard.
    Copy(Unsaved),
    /// Work to run.
    Run(Task<Message>),
}

/// A picture to be saved where the reader says.
#[derive(Debug, Clone, PartialEq)]
pub struct Unsaved {
    /// The line its block starts on.
    pub line: usize,
    /// The picture and its numbers.
    pub figure: Figure,
    /// A name for its file, without an ending.
    pub name: String,
}

/// What the reader has done that leaves a mark beyond the page.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Noted {
    /// The guess of that key was answered.
    Answered(String),
    /// In the faded example that starts on a line, a step was filled.
    Filled {
        /// The line of the lesson.
        line: usize,
        /// The step, counted from zero.
        step: usize,
    },
    /// The measure that starts on a line is to be written down, or put into the build as well.
    Measured {
        /// The line of the lesson.
        line: usize,
        /// Whether it goes into the build.
        take: bool,
    },
    /// The lesson is finished, or not finished after all.
    Finished(bool),
}

impl Reading {
    /// Opens a lesson.
    pub fn new(lesson: &Lesson, read: impl Fn(&str) -> std::io::Result<bytes::Bytes>) -> Self {
        let mut marks = Marks::default();
        let pictures = lesson.every_block().into_iter().filter_map(|block| match &block.kind {
            BlockKind::Picture { file, .. } => Some(file.as_str()),
            _ => None,
        });
        for file in pictures {
            let drawn = match read(file) {
                Ok(bytes) => picture::read(file, &bytes),
                Err(error) => picture::Picture::Broken(format!("{file} cannot be read: {error}.")),
            };
            marks.pictures.insert(file.to_owned(), drawn);
        }
        Self {
            id: lesson.front.id.clone(),
            offset: 0.0,
            section: None,
            moved: false,
            looked: 0.0,
            marks,
            meaning: None,
            footnote: None,
            numbers: false,
        }
    }

    /// The same place in a lesson whose file has changed.
    pub fn reloaded(
        self,
        lesson: &Lesson,
        read: impl Fn(&str) -> std::io::Result<bytes::Bytes>,
    ) -> Self {
        let fresh = Self::new(lesson, read);
        let Marks { open, guesses, .. } = self.marks;
        let marks = Marks { open, guesses, ..fresh.marks };
        Self { marks, ..self }
    }

    /// Says beside the block of a line where its picture was saved.
    pub fn saved(&mut self, line: usize, path: &std::path::Path) {
        self.told(line, &format!("Saved as {}.", path.display()));
    }

    /// Says beside the block of a line what became of its picture.
    pub fn told(&mut self, line: usize, words: &str) {
        self.marks.saved.insert(line, words.to_owned());
    }

    /// Throws away what was drawn from another build.
    pub fn forget_drawn(&mut self) {
        self.marks.saved.clear();
        self.marks.curves.clear();
        self.marks.sketches.clear();
        self.marks.ledgers.clear();
        self.marks.side_by_side.values_mut().for_each(block::side_by_side::State::forget);
        self.marks.targets.values_mut().for_each(block::target::State::forget);
        self.marks.hundred_grams.values_mut().for_each(block::hundred_grams::State::forget);
        self.marks.levers.values_mut().for_each(block::levers::State::forget);
        self.marks.runs.values_mut().for_each(run::State::forget);
    }

    /// Whether something on the page plays.
    pub fn plays(&self) -> bool {
        self.marks.runs.values().any(run::State::plays)
    }

    /// Acts on a message.
    pub fn update(&mut self, message: Message, settings: &Settings) -> Action {
        match message {
            Message::Page(message) => self.page(message, settings),
            Message::Scrolled(offset) => {
                self.offset = offset;
                self.moved = !self.moved;
                let far = (offset - self.looked).abs() >= LOOK_EVERY;
                if far {
                    self.looked = offset;
                }
                if far { Action::Scrolled } else { Action::None }
            }
            Message::Stands(section) => {
                self.section = section;
                Action::None
            }
            Message::Jump(anchor) => Action::Run(jump::to(&anchor)),
            Message::MeaningClosed => match self.meaning.take().and_then(|shown| shown.from) {
                Some(place) => Action::Run(focus::nth_in(PAGE, place)),
                None => Action::None,
            },
            Message::MeaningWhole => {
                self.meaning = self.meaning.map(|shown| Meaning { whole: true, ..shown });
                Action::None
            }
            Message::MeaningFrom(place) => {
                self.meaning = self.meaning.map(|shown| Meaning { from: Some(place), ..shown });
                Action::None
            }
            Message::Part { lesson, anchor } if lesson == self.id => Action::Run(jump::to(&anchor)),
            Message::Part { lesson, anchor } => Action::Part { lesson, anchor },
            Message::NumbersTurned => {
                self.numbers = !self.numbers;
                Action::None
            }
            Message::FootnoteClosed => {
                self.footnote.take().map_or(Action::None, |name| Action::Run(jump::back_to(&name)))
            }
            Message::Finished(finished) => Action::Noted(Noted::Finished(finished)),
            Message::Lesson(id) => Action::Lesson(id),
            Message::Show => Action::Show,
            Message::Print => Action::Print,
            Message::Ticked(now) => {
                self.marks.runs.values_mut().for_each(|run| run.tick(now));
                Action::None
            }
        }
    }

    fn page(&mut self, message: page::Message, settings: &Settings) -> Action {
        match message {
            page::Message::Field(event) => return Action::Field(event),
            page::Message::Working(key) => {
                if !self.marks.open.remove(&key) {
                    self.marks.open.insert(key);
                }
            }
            page::Message::Guess(key, act) => {
                let state = self.marks.guesses.entry(key.clone()).or_default();
                let before = state.given;
                state.perform(act, &settings.units);
                if before.is_none() && state.given.is_some() {
                    return Action::Noted(Noted::Answered(key));
                }
            }
            page::Message::Poll(key, act) => self.marks.polls.entry(key).or_default().perform(act),
            page::Message::Faded(line, act) => {
                let state = self.marks.faded.entry(line).or_default();
                if let Some(step) = state.perform(act) {
                    return Action::Noted(Noted::Filled { line, step });
                }
            }
            page::Message::Measure(line, act @ (measure::Act::Written | measure::Act::Taken)) => {
                let take = matches!(act, measure::Act::Taken);
                return Action::Noted(Noted::Measured { line, take });
            }
            page::Message::Measure(line, act) => {
                self.marks.measures.entry(line).or_default().perform(act, &settings.units);
            }
            page::Message::Footnote { name, back: true } => {
                return Action::Run(jump::back_to(&name));
            }
            page::Message::Footnote { name, back: false } => {
                self.meaning = None;
                self.footnote = Some(name);
                return Action::Run(focus::on(footnote::BACK.to_owned()));
            }
            page::Message::Curve(_, curve::Act::Field(event)) => return Action::Field(event),
            page::Message::Curve(line, curve::Act::Table) => {
                return self.page(page::Message::Working(format!("curve:{line}")), settings);
            }
            page::Message::Curve(line, curve::Act::Read(read)) => {
                self.marks.curves.entry(line).or_default().read(read);
            }
            page::Message::Save(line, what) => {
                return self.marks.figure(line, what).map_or(Action::None, |(figure, name)| {
                    Action::Figure(Unsaved { line, figure, name })
                });
            }
            page::Message::CopyPicture(line, what) => {
                return self.marks.figure(line, what).map_or(Action::None, |(figure, name)| {
                    Action::Copy(Unsaved { line, figure, name })
                });
            }
            page::Message::Copy(words) => return Action::Run(iced::clipboard::write(words)),
            page::Message::Run(line, run::Act::Table) => {
                return self.page(page::Message::Working(format!("run:{line}")), settings);
            }
            page::Message::Run(line, act) => {
                self.marks.runs.entry(line).or_default().perform(&act);
            }
            page::Message::Edit(edit, gesture) => return Action::Edit(edit, gesture),
            page::Message::Look(line, view) => {
                self.marks.sketches.entry(line).or_default().look(view);
            }
            page::Message::Sort(line) => self.marks.ledgers.entry(line).or_default().sort(),
            page::Message::Target(line, act) => {
                self.marks.targets.entry(line).or_default().perform(act, &settings.units);
            }
            page::Message::Levers(line, act) => {
                self.marks.levers.entry(line).or_default().perform(act);
            }
            page::Message::PutBack(ids) => return Action::PutBack(ids),
            page::Message::NextUnit(id) => return Action::NextUnit(id),
            page::Message::Follow(target) => return self.follow(target),
        }
        Action::None
    }

    fn follow(&mut self, target: Target) -> Action {
        match target {
            Target::Live { id, .. } | Target::Quantity(id) => {
                self.footnote = None;
                let from = self.meaning.and_then(|shown| shown.from);
                self.meaning = Some(Meaning { id, whole: false, from });
                let from = focus::place_in(PAGE).map(Message::MeaningFrom);
                Action::Run(from.chain(focus::on(meaning::CLOSE.to_owned())))
            }
            Target::Lesson(id) => Action::Lesson(id),
            Target::Heading(anchor) => Action::Run(jump::to(&anchor)),
            Target::Web(address) => Action::Web(address),
            Target::Unknown(_) => Action::None,
        }
    }

    /// Draws and works out anew what the build, the units or the light have changed.
    pub fn refresh(&mut self, lesson: &Lesson, desk: &Desk, settings: &Settings, dark: bool) {
        curve::refresh(&mut self.marks.curves, &lesson.blocks, desk, settings, dark);
        sketch::refresh(&mut self.marks.sketches, &lesson.blocks, desk, settings, dark);
        run::refresh(&mut self.marks.runs, &lesson.blocks, desk, settings, dark);
        ledger::refresh(&mut self.marks.ledgers, &lesson.blocks, desk);
        block::refresh(&mut self.marks, &lesson.blocks, desk);
    }

    /// The page, its margin beside it or, on a narrow window, under it.
    pub fn view<'a>(
        &'a self,
        lesson: &'a Lesson,
        around: Around<'a>,
        desk: &'a Desk,
        settings: &'a Settings,
    ) -> Element<'a, Message> {
        let page = self.sheet(lesson, (desk, settings), around.dark, around.column);
        let text = column![
            frame::title(lesson),
            blocks(frame::body(lesson), page).map(Message::Page),
            frame::onward(around),
        ]
        .spacing(2.0 * UNIT)
        .max_width(MEASURE)
        .width(Fill);
        let reading = scrollable(
            container(text).center_x(Fill).padding(Padding::from([3.0 * UNIT, 2.0 * UNIT])),
        )
        .id(PAGE)
        .on_scroll(|view| Message::Scrolled(view.absolute_offset().y))
        .direction(theme::bar())
        .style(theme::scroll)
        .width(Fill)
        .height(Fill);
        let reading = afresh(Some(self.moved), reading);
        let margin = (!around.margin_under).then(|| {
            container(
                scrollable(
                    container(self.margin(around.library, page)).padding(2.0 * UNIT).width(Fill),
                )
                .id("margin")
                .direction(theme::bar())
                .style(theme::scroll)
                .height(Fill),
            )
            .style(theme::panel)
            .width(Length::Fixed(MARGIN))
        });
        let folded = around.margin_under.then(|| self.folded(around.library, page));
        column![folded, row![reading, margin]].into()
    }

    /// What its blocks are drawn from, in a column of a width.
    pub fn sheet<'a>(
        &'a self,
        lesson: &'a Lesson,
        (desk, settings): (&'a Desk, &'a Settings),
        dark: bool,
        width: f32,
    ) -> Page<'a> {
        let audience = Audience::Reader;
        Page { desk, settings, lesson, marks: &self.marks, dark, width, audience }
    }
}

/// The width of the margin beside the text.
pub const MARGIN: f32 = 312.0;

/// Where a lesson is shown.
#[derive(Clone, Copy)]
pub struct Around<'a> {
    /// All lessons.
    pub library: &'a Library,
    /// The lesson before it.
    pub before: Option<&'a Front>,
    /// The lesson after it.
    pub after: Option<&'a Front>,
    /// Whether the reader has finished it.
    pub finished: bool,
    /// Whether the margin folds under the title.
    pub margin_under: bool,
    /// The width of the text, in pixels.
    pub column: f32,
    /// Whether the paper is dark.
    pub dark: bool,
}
