//! The target: what is wanted, the number that gets there, and one press to take it.

use iced::widget::{Column, column, row, text, text_input};
use iced::{Center, Element, Fill, Length};

use super::frame;
use crate::app::desk::Desk;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, BOLD, REGULAR, UNIT, size};
use crate::app::widget::field;
use crate::app::widget::pressable::{Kind, pressable};
use crate::asked;
use crate::lesson::TargetBlock;
use crate::quantity::{self, Entry, Units, catalogue};
use crate::study::{Target, Wish};

/// What the reader wishes for, and what was found for it.
#[derive(Default)]
pub struct State {
    /// The wish as typed, while it differs from the lesson's.
    typed: Option<String>,
    /// The wish typed, in SI units.
    wish: Option<f64>,
    /// What is wrong with the text typed.
    error: Option<String>,
    found: Option<Found>,
}

struct Found {
    /// What it was found for: the state of the build, and the wish.
    of: (u64, f64),
    target: Option<Target>,
}

/// What is done in a target.
#[derive(Debug, Clone)]
pub enum Act {
    /// The wish is now this text, for this quantity.
    Wished(quantity::AnyId, String),
    /// Back to the wish of the lesson.
    AsWritten,
}

impl State {
    /// Takes what was done.
    pub fn perform(&mut self, act: Act, units: &Units) {
        match act {
            Act::AsWritten => *self = Self::default(),
            Act::Wished(id, text) => {
                let Some(entry) = catalogue::find(id.name()) else { return };
                let near = self.wish.or(self.found.as_ref().map(|found| found.of.1));
                let unit = units.unit_for(entry, near.unwrap_or(entry.usual.1));
                // A number alone is in the unit the field shows.
                let read = quantity::parse(&text, entry)
                    .or_else(|words| quantity::parse_in(&text, entry, unit).map_err(|_| words));
                self.error = match read {
                    Ok(amount) if entry.admits(amount.si) => {
                        self.wish = Some(amount.si);
                        None
                    }
                    Ok(_) => Some(crate::rules::out_of_bounds(entry)),
                    Err(words) => Some(words.to_string()),
                };
                self.typed = Some(text);
            }
        }
    }

    /// Looks again if the build or the wish has changed.
    pub fn refresh(&mut self, block: &TargetBlock, desk: &Desk) {
        let be = self.wish.unwrap_or(block.be);
        let of = (desk.revision(), be);
        if self.found.as_ref().is_some_and(|found| found.of == of) {
            return;
        }
        let wish = Wish { be, ..asked::wish(block) };
        let target = Target::of(&wish, &desk.outcome.givens).ok();
        self.found = Some(Found { of, target });
    }

    /// Throws away what was found for another build.
    pub fn forget(&mut self) {
        self.found = None;
    }
}

/// A target that starts on `line` of its lesson.
pub fn view<'a>(block: &'a TargetBlock, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let (Some(make), Some(by), Some(state)) = (
        catalogue::find(block.make.name()),
        catalogue::find(block.by.name()),
        page.marks.targets.get(&line),
    ) else {
        return frame(block.title.as_deref(), text("This target cannot be shown."));
    };
    let found = state.found.as_ref().and_then(|found| found.target.as_ref());
    let units = &page.settings.units;
    let inside = match found {
        Some(target) => answers(target, by, line, page),
        None => text("There is nothing to look for in this range.").style(theme::warning).into(),
    };
    let ends = found.map(|target| {
        let span = units.show_range(by, (target.from, target.to, target.to));
        text(format!("Looked at every {} from {span}; everything else as it is.", by.label))
            .size(size::SMALL)
            .style(theme::soft)
            .width(Fill)
    });
    frame(
        block.title.as_deref(),
        column![
            wish(block, make, state, line, page),
            text(format!("by changing the {} to", by.label)).size(size::LABEL).width(Fill),
            inside,
            ends,
        ]
        .spacing(1.5 * UNIT),
    )
}

/// The number wanted, which the reader can change.
fn wish<'a>(
    block: &'a TargetBlock,
    make: &'static Entry,
    state: &'a State,
    line: usize,
    page: Page<'a>,
) -> Element<'a, Message> {
    let units = &page.settings.units;
    let shown = match &state.typed {
        Some(typed) => typed.clone(),
        None => quantity::field_text(make, block.be, units),
    };
    let wrong = state.error.is_some();
    let id = make.id;
    let input = text_input("what you want", &shown)
        .id(format!("target:{line}"))
        .font(REGULAR)
        .size(size::LABEL)
        .padding([6, 8])
        .width(Length::Fixed(130.0))
        .style(if wrong { theme::field_wrong } else { theme::field })
        .on_input(move |text| Message::Target(line, Act::Wished(id, text)));
    let now = page
        .desk
        .outcome
        .values
        .si(id)
        .map(|si| format!("Your build has {} now.", units.show(make, si)));
    let back = state.typed.is_some().then(|| {
        pressable(Kind::Word, text("As the lesson asks").size(size::SMALL))
            .on_press(Message::Target(line, Act::AsWritten))
    });
    column![
        row![text(format!("Make the {}", make.label)).size(size::LABEL).width(Fill), input]
            .spacing(UNIT)
            .align_y(Center),
        state
            .error
            .as_deref()
            .map(|words| { text(words).size(size::SMALL).style(theme::warning).width(Fill) }),
        now.map(|now| text(now).size(size::SMALL).style(theme::soft).width(Fill)),
        back,
    ]
    .spacing(UNIT / 2.0)
    .into()
}

/// Every answer with a press that takes it, then all in words.
fn answers<'a>(
    target: &Target,
    by: &'static Entry,
    line: usize,
    page: Page<'a>,
) -> Element<'a, Message> {
    let units = &page.settings.units;
    let each = target.answers.iter().enumerate().map(|(place, si)| {
        let shown = units.show(by, *si);
        let there = page
            .desk
            .outcome
            .values
            .si(by.id)
            .is_some_and(|now| (now - si).abs() <= 1e-4 * si.abs().max(now.abs()));
        let take = Message::Field(field::Event {
            place: format!("target:{line}:answer"),
            id: by.id,
            act: field::Act::Taken(*si),
        });
        let word = if there { "In your build" } else { "Take it into your build" };
        row![
            text(shown.number).size(size::ANSWER).font(BOLD),
            text(shown.unit.symbol).size(size::BODY).width(Fill),
            pressable(Kind::Plain, text(word).size(size::LABEL))
                .id(format!("target:{line}:take:{place}"))
                .on_press_maybe((!there).then_some(take)),
        ]
        .spacing(UNIT)
        .align_y(Center)
        .into()
    });
    let none =
        target.answers.is_empty().then(|| text("No answer").size(size::ANSWER).style(theme::soft));
    column![
        none,
        Column::with_children(each).spacing(UNIT),
        text(target.sentence(units)).size(size::LABEL).width(Fill),
    ]
    .spacing(UNIT)
    .into()
}
