//! The rail beside the page: the build on the desk and where to go. On a narrow window it is a bar on
//! top that opens.

use iced::widget::{Column, Row, column, container, row, rule, scrollable, text};
use iced::{Element, Fill, Length, Padding, Size};

use crate::app::desk::Desk;
use crate::app::find::view::Act;
use crate::app::screen::Place;
use crate::app::settings::Settings;
use crate::app::shell::Message;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, Pressable, pressable};
use crate::lesson::Front;
use crate::quantity::{catalogue, catalogue::machine::MASS};

/// The width of the rail.
pub const WIDTH: f32 = 248.0;

/// The part of a narrow window that the open rail covers, and the least it needs, in pixels.
const OPEN: f32 = 0.66;
const OPEN_LEAST: f32 = 280.0;

/// What the rail is drawn from.
#[derive(Clone, Copy)]
pub struct Rail<'a> {
    /// Where the reader is.
    pub place: &'a Place,
    /// Where they can go.
    pub lessons: &'a [Front],
    /// The builds.
    pub desk: &'a Desk,
    /// How the page looks.
    pub settings: &'a Settings,
}

impl<'a> Rail<'a> {
    /// The rail beside the page.
    pub fn beside(self) -> Element<'a, Message> {
        container(
            scrollable(container(self.inside()).padding(2.0 * UNIT))
                .id("rail")
                .direction(theme::bar())
                .style(theme::scroll)
                .height(Fill),
        )
        .style(theme::panel)
        .width(Length::Fixed(WIDTH))
        .height(Fill)
        .into()
    }

    /// The bar of a narrow window; `open` shows the rest of the rail under it.
    pub fn above(self, open: bool, Size { width, height }: Size) -> Element<'a, Message> {
        let word = if open { "Close" } else { "Menu" };
        let bar = row![
            button(word, Message::MenuTurned),
            text(name(self.desk))
                .size(if width < theme::TIGHT { size::SMALL } else { size::LABEL })
                .font(SEMIBOLD)
                .wrapping(iced::widget::text::Wrapping::WordOrGlyph)
                .width(Fill),
            // The menu saves as well.
            (width >= theme::TIGHT).then(|| button("Save", Message::Save)),
        ]
        .spacing(UNIT)
        .align_y(iced::Center);
        let rest = open.then(|| {
            scrollable(
                container(self.inside()).padding(Padding::from([UNIT, 0.0]).right(2.0 * UNIT)),
            )
            .id("rail")
            .direction(theme::bar())
            .style(theme::scroll)
            .height(Length::Fixed((OPEN * height).max(OPEN_LEAST)))
        });
        container(column![bar, rest]).style(theme::panel).padding(UNIT).width(Fill).into()
    }

    fn inside(self) -> Element<'a, Message> {
        column![
            text("Heftwise").size(size::LABEL).font(SEMIBOLD).style(theme::soft),
            build(self.desk, self.settings),
            line(),
            screens(self.place),
            row![
                pressable(Kind::Word, text("Find").size(size::LABEL))
                    .on_press(Message::Find(Act::Begin)),
                pressable(Kind::Word, text("Keys").size(size::LABEL)).on_press(Message::KeysTurned),
            ]
            .spacing(2.0 * UNIT),
            self.lessons_elsewhere(),
        ]
        .spacing(2.0 * UNIT)
        .into()
    }

    /// The lessons, except beside the page that lists them.
    fn lessons_elsewhere(self) -> Option<Element<'a, Message>> {
        let ways = self
            .lessons
            .iter()
            .map(|lesson| way(&lesson.title, Place::Lesson(lesson.id.clone()), self.place));
        (*self.place != Place::Contents)
            .then(|| column![line(), Column::with_children(ways)].spacing(2.0 * UNIT).into())
    }
}

fn line<'a>() -> Element<'a, Message> {
    rule::horizontal(1).style(theme::hairline).into()
}

fn button<'a>(word: &'a str, message: Message) -> Pressable<'a, Message> {
    pressable(Kind::Plain, text(word).size(size::SMALL)).padding([5, 10]).on_press(message)
}

fn name(desk: &Desk) -> String {
    let mark = if desk.history.is_changed_since_save() { " (not saved)" } else { "" };
    format!("{}{mark}", desk.name())
}

/// Whether the build is safe on disk.
fn standing(desk: &Desk) -> &'static str {
    match (desk.history.is_changed_since_save(), &desk.path) {
        (true, _) => "not saved",
        (false, Some(_)) => "saved",
        (false, None) => "in no file yet",
    }
}

fn build<'a>(desk: &'a Desk, settings: &'a Settings) -> Element<'a, Message> {
    let mass = catalogue::find(MASS.any().name())
        .zip(desk.outcome.values.si(MASS))
        .map(|(entry, si)| text(settings.units.show(entry, si).to_string()).size(size::LABEL));
    let act = |word, message, can: bool| {
        pressable(Kind::Plain, text(word).size(size::SMALL))
            .padding([5, 9])
            .on_press_maybe(can.then_some(message))
            .into()
    };
    let acts = [
        act("Open", Message::Open, true),
        act("Save", Message::Save, !desk.sheet().is_read_only()),
        act("Undo", Message::Undo, desk.history.can_undo()),
        act("Redo", Message::Redo, desk.history.can_redo()),
    ];
    column![
        text(desk.name()).size(size::MINOR).font(SEMIBOLD),
        row![mass, text(standing(desk)).size(size::SMALL).style(theme::soft),]
            .spacing(UNIT)
            .align_y(iced::Center),
        desk.sheet().is_read_only().then(|| {
            text("From a newer Heftwise: for reading alone.")
                .size(size::SMALL)
                .style(theme::warning)
        }),
        Row::with_children(acts).spacing(UNIT / 2.0).wrap().vertical_spacing(UNIT / 2.0),
    ]
    .spacing(UNIT)
    .into()
}

fn way<'a>(words: &'a str, to: Place, place: &Place) -> Element<'a, Message> {
    let here = *place == to;
    let font = if here { SEMIBOLD } else { theme::REGULAR };
    pressable(Kind::Line(here), text(words).size(size::LABEL).width(Fill).font(font))
        .padding([5, 10])
        .width(Fill)
        .on_press(Message::Go(to))
        .into()
}

/// The screens first: however many lessons there are, these stay in view.
fn screens<'a>(place: &Place) -> Element<'a, Message> {
    column![
        way("Lessons", Place::Contents, place),
        way("Build sheet", Place::BuildSheet, place),
        way("Walk-round", Place::WalkRound, place),
        way("Notebook", Place::Notebook, place),
        way("Bench", Place::Bench, place),
        way("Settings", Place::Settings, place),
    ]
    .into()
}
