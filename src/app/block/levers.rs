//! The levers: what one more step of each number does, what costs nothing set apart.

use iced::widget::{Column, Row, column, container, progress_bar, row, text};
use iced::{Background, Center, Element, Fill, Length, border};

use super::frame;
use crate::app::desk::Desk;
use crate::app::page::{Message, Page};
use crate::app::theme::{self, SEMIBOLD, UNIT, ink, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::symbol;
use crate::lesson::Levers as Block;
use crate::quantity::{Effort, Step, catalogue};
use crate::study::{Lever, Levers};

/// Shares on offer beside the step the lesson asks for, in percent.
const SHARES: [f64; 4] = [1.0, 5.0, 10.0, -10.0];

/// The step the reader picked, and what it does.
#[derive(Default)]
pub struct State {
    step: Option<Step>,
    found: Option<(u64, Levers)>,
}

/// What is done in a levers block.
#[derive(Debug, Clone)]
pub enum Act {
    /// Another step is picked.
    Step(Step),
}

impl State {
    /// Takes what was done.
    pub fn perform(&mut self, act: Act) {
        let Act::Step(step) = act;
        self.step = Some(step);
    }

    /// Works it out again if the build or the step has changed.
    pub fn refresh(&mut self, block: &Block, desk: &Desk) {
        let step = self.step.as_ref().unwrap_or(&block.step);
        let fresh = self
            .found
            .as_ref()
            .is_some_and(|(revision, found)| *revision == desk.revision() && found.step == *step);
        if !fresh {
            self.found = Some((desk.revision(), Levers::of(block.of, step, &desk.outcome)));
        }
    }

    /// Throws away what was found for another build.
    pub fn forget(&mut self) {
        self.found = None;
    }
}

/// A levers block that starts on `line` of its lesson.
pub fn view<'a>(block: &'a Block, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let found = page.marks.levers.get(&line).and_then(|state| state.found.as_ref());
    let (Some((_, levers)), Some(entry)) = (found, catalogue::find(block.of.name())) else {
        return frame(block.title.as_deref(), text("These levers cannot be shown."));
    };
    let units = &page.settings.units;
    let now = match (&levers.now, page.desk.outcome.range(block.of)) {
        (Ok(si), Some(range)) => format!(
            "Now {}; could be {}.",
            units.show(entry, *si),
            units.show_range(entry, (range.low, *si, range.high))
        ),
        (Ok(si), None) => format!("Now {}.", units.show(entry, *si)),
        (Err(_), _) => String::new(),
    };
    let compared = levers.levers.iter().filter(|lever| !lever.counted);
    let most = compared.filter_map(Lever::size).fold(0.0_f64, f64::max);
    frame(
        block.title.as_deref(),
        column![
            text(format!("What moves the {}?", entry.label)).size(size::LABEL).width(Fill),
            (!now.is_empty()).then(|| text(now).size(size::SMALL).style(theme::soft).width(Fill)),
            steps(block, levers, line),
            group("Costs nothing", levers.by(Effort::Free), most, page),
            group("Takes parts or work", levers.by(Effort::Bought), most, page),
            group("One more, or one fewer", levers.counted(), 0.0, page),
            group("Not in your hands", levers.by(Effort::Fixed), most, page),
            text(levers.sentence(units)).size(size::LABEL).width(Fill),
        ]
        .spacing(1.5 * UNIT),
    )
}

/// The steps to pick from: the lesson's own first.
fn steps<'a>(block: &Block, levers: &Levers, line: usize) -> Element<'a, Message> {
    let shares = SHARES.iter().filter_map(|share| Step::percent(*share).ok());
    let mut offered = vec![block.step.clone()];
    offered.extend(shares.filter(|step| !(block.step.is_share() && *step == block.step)));
    let each = offered.into_iter().map(|step| {
        let chosen = step == levers.step;
        let font = if chosen { SEMIBOLD } else { theme::REGULAR };
        let sign = if step.to_string().starts_with(['-', '−']) { "" } else { "+" };
        let words = format!("{sign}{step}").replace('-', "−");
        pressable(Kind::Line(chosen), text(words).size(size::LABEL).font(font))
            .padding([4, 8])
            .on_press(Message::Levers(line, Act::Step(step)))
            .into()
    });
    row![
        text("One at a time:").size(size::SMALL).style(theme::soft),
        Row::with_children(each).spacing(2).width(Fill).wrap(),
    ]
    .spacing(UNIT)
    .align_y(Center)
    .into()
}

/// Levers of one kind; `most` is the effect with the longest bar, zero where none is drawn.
fn group<'a, 'l>(
    title: &'a str,
    levers: impl Iterator<Item = &'l Lever>,
    most: f64,
    page: Page<'a>,
) -> Option<Element<'a, Message>> {
    let each: Vec<_> = levers.map(|lever| one(lever, most, page)).collect();
    (!each.is_empty()).then(|| {
        column![
            text(title).size(size::LABEL).font(SEMIBOLD),
            Column::with_children(each).spacing(UNIT),
        ]
        .spacing(UNIT / 2.0)
        .into()
    })
}

/// One number: the step, what it does, and its part of the doubt.
fn one<'a>(lever: &Lever, most: f64, page: Page<'a>) -> Element<'a, Message> {
    let Some(entry) = catalogue::find(lever.id.name()) else { return text("").into() };
    let units = &page.settings.units;
    let span = format!("{} → {}", units.show(entry, lever.from), units.show(entry, lever.to));
    let doubt = lever
        .doubt
        .filter(|share| *share >= 0.005)
        .map(|share| format!("{:.0} % of the doubt", share * 100.0));
    let small = |words: String| text(words).size(size::SMALL).style(theme::soft);
    let why = lever.after.as_ref().err().cloned();
    column![
        row![
            text(symbol::capitalised(entry.label)).size(size::LABEL).width(Fill),
            text(lever.effect()).size(size::LABEL).font(SEMIBOLD),
        ]
        .spacing(UNIT),
        lever.size().filter(|_| most > 0.0).map(|size| bar((size / most) as f32)),
        row![small(span).width(Fill), doubt.map(small)].spacing(UNIT),
        why.map(|why| text(why).size(size::SMALL).style(theme::warning).width(Fill)),
    ]
    .spacing(2)
    .into()
}

/// How much it moves the answer, beside the one that moves it most.
fn bar<'a>(part: f32) -> Element<'a, Message> {
    container(progress_bar(0.0..=1.0, part).girth(Length::Fixed(UNIT / 2.0)).style(|theme| {
        let ink = ink(theme);
        progress_bar::Style {
            background: Background::Color(ink.line),
            bar: Background::Color(ink.soft),
            border: border::rounded(2),
        }
    }))
    .width(Fill)
    .into()
}
