//! A lesson shown to a class: one step at a time in large type, answers hidden until asked, moved by
//! arrow keys, page keys or a clicker.

mod steps;

use std::ops::Range;

use iced::advanced::widget::operation::{Outcome, Scrollable, scrollable as moves};
use iced::advanced::widget::{Id, Operation, operate};
use iced::widget::{Column, column, container, row, scrollable, text};
use iced::{Center, Element, Fill, Padding, Rectangle, Task, Vector};

use super::reading::PAGE;
use crate::app::block::guess::vote::Act;
use crate::app::document::blocks;
use crate::app::page::{self, Page};
use crate::app::theme::{self, BOLD, SEMIBOLD, UNIT, size};
use crate::app::widget::afresh::afresh;
use crate::app::widget::pressable::{Kind, pressable};
use crate::lesson::{Block, BlockKind, Lesson};
use steps::Step;

/// How many lines of layout the height of the screen is cut into. The small letters of running text
/// are then a fiftieth of the height, which the last row reads from eight screen heights.
const LINES: f32 = 435.0;
/// From this width of the text on, there is room for the section beside the buttons.
const TITLED: f32 = 280.0;

/// How much larger than usual a window of this height is drawn for a class.
pub fn scale(height: f32) -> f32 {
    (height / LINES).max(1.0)
}

/// A lesson shown to a class.
pub struct Workshop {
    /// The lesson's id.
    pub id: String,
    /// The step shown; the first is the title.
    at: usize,
    steps: Vec<Step>,
    /// Whether the teacher’s notes are shown.
    pub notes: bool,
    /// Whether the screen is blank, so that the class looks elsewhere.
    pub blank: bool,
}

/// What happens before the class.
#[derive(Debug, Clone)]
pub enum Message {
    /// Further: the rest of this step, or the next one.
    Next,
    /// Back to the step before.
    Back,
    /// The first step.
    First,
    /// The last one.
    Last,
    /// How much of the step is still below the screen, in pixels; none of it is the sign to go on.
    Below(f32),
    /// The answer to the question on the screen, in or out.
    AnswerTurned,
    /// A hand was raised for the answer of that place, counted from zero.
    Vote(usize),
    /// The teacher’s notes, in or out.
    NotesTurned,
    /// The screen, blank or not.
    BlankTurned,
    /// Back to reading.
    Leave,
    /// Something in the text.
    Page(page::Message),
}

/// What the shell is asked for.
pub enum Action {
    /// Work to run.
    Run(Task<Message>),
    /// Something for the page of the lesson.
    Page(page::Message),
    /// Back to reading.
    Leave,
}

impl Workshop {
    /// A lesson from its title on.
    pub fn new(lesson: &Lesson) -> Self {
        let steps = steps::steps(lesson);
        Self { id: lesson.front.id.clone(), at: 0, steps, notes: false, blank: false }
    }

    /// The same step of a lesson whose file has changed, as far as there still is one.
    pub fn reloaded(self, lesson: &Lesson) -> Self {
        let fresh = Self::new(lesson);
        let at = self.at.min(fresh.steps.len());
        Self { at, notes: self.notes, blank: self.blank, ..fresh }
    }

    /// Acts on a message.
    pub fn update(&mut self, message: Message, lesson: &Lesson) -> Action {
        if std::mem::take(&mut self.blank) {
            return Action::Run(Task::none());
        }
        match message {
            Message::Next => return Action::Run(operate(Below(None)).map(Message::Below)),
            Message::Back => return self.to(self.at.saturating_sub(1)),
            Message::First => return self.to(0),
            Message::Last => return self.to(self.steps.len()),
            Message::Below(left) if left >= 1.0 => return Action::Run(further(left)),
            Message::Below(_) => return self.to(self.at + 1),
            Message::AnswerTurned => {
                if let Some(key) = self.asked(lesson) {
                    return Action::Page(page::Message::Poll(key, Act::ShownTurned));
                }
            }
            Message::Vote(place) => {
                if let Some(key) = self.asked(lesson) {
                    return Action::Page(page::Message::Poll(key, Act::Raised(place)));
                }
            }
            Message::NotesTurned => self.notes = !self.notes,
            Message::BlankTurned => self.blank = true,
            Message::Leave => return Action::Leave,
            Message::Page(message) => return Action::Page(message),
        }
        Action::Run(Task::none())
    }

    fn to(&mut self, step: usize) -> Action {
        self.at = step.min(self.steps.len());
        let top = moves::AbsoluteOffset { x: 0.0, y: 0.0 };
        Action::Run(iced::widget::operation::scroll_to(PAGE, top))
    }

    /// The blocks on the screen; none on the title.
    fn blocks(&self) -> Option<Range<usize>> {
        let step = self.at.checked_sub(1).and_then(|at| self.steps.get(at))?;
        Some(step.blocks.clone())
    }

    /// The first question on the screen, by its key.
    fn asked(&self, lesson: &Lesson) -> Option<String> {
        lesson.blocks.get(self.blocks()?)?.iter().find_map(|block| match &block.kind {
            BlockKind::Guess(guess) => Some(guess.key.clone()),
            _ => None,
        })
    }

    /// The step on the screen.
    pub fn view<'a>(&'a self, lesson: &'a Lesson, page: Page<'a>) -> Element<'a, Message> {
        if self.blank {
            return container(text("")).style(theme::blank).width(Fill).height(Fill).into();
        }
        let shown = self.blocks().and_then(|range| lesson.blocks.get(range));
        let inside = shown.map_or_else(|| title(lesson), |shown| step(shown, page));
        let sheet = scrollable(container(inside).padding([UNIT, 3.0 * UNIT]).width(Fill))
            .id(PAGE)
            .direction(theme::bar())
            .style(theme::scroll)
            .width(Fill)
            .height(Fill);
        column![self.head(lesson, page.width), afresh(None, sheet), self.foot()]
            .width(Fill)
            .height(Fill)
            .into()
    }

    fn head<'a>(&'a self, lesson: &'a Lesson, width: f32) -> Element<'a, Message> {
        let section = self.at.checked_sub(1).and_then(|at| self.steps.get(at));
        let section = section.map_or("", |step| step.section.as_str());
        let words = match section {
            _ if width < TITLED => "",
            "" => &lesson.front.title,
            section => section,
        };
        let notes = if self.notes { "Hide the notes" } else { "Teacher’s notes" };
        bar(row![
            text(words).size(size::SMALL).font(SEMIBOLD).style(theme::soft).width(Fill),
            button(notes, Some(Message::NotesTurned)),
            button("Leave", Some(Message::Leave)),
        ])
    }

    fn foot(&self) -> Element<'_, Message> {
        let last = self.steps.len();
        bar(row![
            button("← Back", (self.at > 0).then_some(Message::Back)),
            container(
                text(format!("{} of {}", self.at + 1, last + 1))
                    .size(size::SMALL)
                    .style(theme::soft)
            )
            .center_x(Fill),
            button("Next →", Some(Message::Next)),
        ])
    }
}

fn bar(inside: iced::widget::Row<'_, Message>) -> Element<'_, Message> {
    container(inside.spacing(UNIT).align_y(Center))
        .style(theme::panel)
        .padding([UNIT / 2.0, 2.0 * UNIT])
        .width(Fill)
        .into()
}

fn button<'a>(words: &'a str, message: Option<Message>) -> Element<'a, Message> {
    pressable(Kind::Plain, text(words).size(size::SMALL))
        .padding([2, 10])
        .on_press_maybe(message)
        .into()
}

fn title<'a>(lesson: &'a Lesson) -> Element<'a, Message> {
    let goals = lesson.front.goals.iter().map(|goal| {
        row![text("•").size(size::BODY), text(goal).size(size::BODY).width(Fill)]
            .spacing(UNIT)
            .into()
    });
    let after = (!lesson.front.goals.is_empty()).then(|| text("After this you can").font(SEMIBOLD));
    column![
        text(&lesson.front.title).size(size::TITLE).font(BOLD).line_height(1.2).width(Fill),
        after,
        Column::with_children(goals).spacing(UNIT),
    ]
    .spacing(2.0 * UNIT)
    .padding(Padding::ZERO.top(3.0 * UNIT))
    .into()
}

fn step<'a>(shown: &'a [Block], page: Page<'a>) -> Element<'a, Message> {
    blocks(shown, page).map(Message::Page)
}

/// Moves the step up by most of a screen, or to its end.
fn further(left: f32) -> Task<Message> {
    let y = left.min(0.7 * LINES);
    operate(moves::scroll_by(Id::new(PAGE), moves::AbsoluteOffset { x: 0.0, y }))
}

/// How much of the page is below the screen.
struct Below(Option<f32>);

impl Operation<f32> for Below {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation<f32>)) {
        operate(self);
    }

    fn scrollable(
        &mut self,
        id: Option<&Id>,
        bounds: Rectangle,
        content: Rectangle,
        translation: Vector,
        _state: &mut dyn Scrollable,
    ) {
        if id == Some(&Id::new(PAGE)) {
            self.0 = Some((content.height - bounds.height - translation.y).max(0.0));
        }
    }

    fn finish(&self) -> Outcome<f32> {
        Outcome::Some(self.0.unwrap_or(0.0))
    }
}
