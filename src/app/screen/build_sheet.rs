//! Every number of the build by topic, and the parts it is made of.

mod parts;

use iced::widget::{Column, Row, column, container, row, scrollable, text, text_input};
use iced::{Element, Fill, Length, Padding};

use crate::app::block::sketch;
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, BOLD, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::{field, symbol};
use crate::plot::sketch::{Show, View};
use crate::quantity::{AnyId, Entry, Topic, catalogue};
use crate::rules::{Origin, Value};
use crate::sheet::{Edit, presets};

/// What happens on the build sheet.
#[derive(Debug, Clone)]
pub enum Message {
    /// A number is being changed.
    Field(field::Event),
    /// The build is changed; changes of one gesture count as one.
    Edit(Edit, Option<String>),
    /// The sketch is to be seen from elsewhere.
    Look(View),
}

/// From this width of the window on, the numbers stand in two columns.
const TWO_COLUMNS: f32 = 1100.0;
/// From this width of the window on, the sketch stands beside the parts.
const BESIDE: f32 = 1480.0;

/// The build sheet in a window of that width.
pub fn view<'a>(
    desk: &'a Desk,
    settings: &'a Settings,
    drawn: &'a sketch::State,
    width: f32,
) -> Element<'a, Message> {
    let wide = width >= TWO_COLUMNS;
    let topics = Topic::ALL.iter().filter_map(|topic| section(*topic, desk, settings, wide));
    let page = column![
        text("Build sheet").size(size::TITLE).font(BOLD),
        about(desk),
        reports(desk),
        Column::with_children(topics).spacing(4.0 * UNIT),
        with_sketch(parts::view(desk, settings), drawn, width),
    ]
    .spacing(3.0 * UNIT)
    .max_width(if width >= BESIDE { 1240 } else { 960 })
    .width(Fill);
    scrollable(container(page).center_x(Fill).padding(Padding::from([3.0 * UNIT, 2.0 * UNIT])))
        .id(super::reading::PAGE)
        .direction(theme::bar())
        .style(theme::scroll)
        .height(Fill)
        .into()
}

/// The sketch beside the parts, or above them on a narrower window.
fn with_sketch<'a>(
    parts: Element<'a, Message>,
    drawn: &'a sketch::State,
    width: f32,
) -> Element<'a, Message> {
    let picture = |height| {
        let picture = sketch::picture(drawn, (View::Side, Show::ALL), height, Message::Look);
        container(picture).style(theme::block).padding(2.0 * UNIT)
    };
    if width >= BESIDE {
        row![container(parts).width(Fill), picture(300.0).width(Length::Fixed(400.0))]
            .spacing(3.0 * UNIT)
            .into()
    } else {
        column![picture(if width < 600.0 { 250.0 } else { 340.0 }).width(Fill), parts]
            .spacing(3.0 * UNIT)
            .into()
    }
}

fn about<'a>(desk: &'a Desk) -> Element<'a, Message> {
    let line = |label: &'a str, id: &'static str, value: &'a str, edit: fn(String) -> Edit| {
        row![
            text(label).size(size::LABEL).width(Length::Fixed(64.0)),
            text_input("", value)
                .id(id)
                .font(REGULAR)
                .size(size::LABEL)
                .padding([6, 8])
                .style(theme::field)
                .on_input(move |text| Message::Edit(edit(text), Some(id.to_owned()))),
        ]
        .spacing(UNIT)
        .align_y(iced::Center)
    };
    column![
        line("Name", "build-name", desk.sheet().name(), Edit::Name),
        line("Note", "build-note", desk.sheet().note(), Edit::Note),
    ]
    .spacing(UNIT)
    .into()
}

/// What was found in the file, and what the numbers do not add up to.
fn reports<'a>(desk: &'a Desk) -> Option<Element<'a, Message>> {
    let said: Vec<Element<'a, Message>> = desk
        .sheet()
        .reports()
        .iter()
        .map(ToString::to_string)
        .chain(desk.tally.problems.iter().chain(&desk.tally.cautions).map(|r| r.message.clone()))
        .map(|words| text(words).size(size::LABEL).width(Fill).into())
        .collect();
    (!said.is_empty()).then(|| {
        container(Column::with_children(said).spacing(UNIT / 2.0))
            .style(theme::caution)
            .padding(1.5 * UNIT)
            .width(Fill)
            .into()
    })
}

fn section<'a>(
    topic: Topic,
    desk: &'a Desk,
    settings: &'a Settings,
    wide: bool,
) -> Option<Element<'a, Message>> {
    let entries = || catalogue::all().iter().filter(move |entry| entry.topic == topic);
    let given: Vec<&Entry> = entries().filter(|entry| entry.is_given()).collect();
    let found: Vec<&Entry> = entries().filter(|entry| !entry.is_given()).collect();
    let fields = given.chunks(if wide { 2 } else { 1 }).map(|pair| {
        let cells = pair.iter().map(|entry| number(entry, desk, settings));
        let gap = (wide && pair.len() == 1).then(|| iced::widget::space::horizontal().into());
        Row::with_children(cells.chain(gap)).spacing(4.0 * UNIT).into()
    });
    let answers = found.chunks(if wide { 2 } else { 1 }).map(|pair| {
        let cells = pair.iter().map(|entry| answer(entry, desk, settings));
        let gap = (wide && pair.len() == 1).then(|| iced::widget::space::horizontal().into());
        Row::with_children(cells.chain(gap)).spacing(4.0 * UNIT).into()
    });
    Some(
        column![
            text(topic.title()).size(size::HEADING).font(SEMIBOLD),
            ready_made(topic),
            Column::with_children(fields).spacing(1.5 * UNIT),
            (!found.is_empty()).then(|| text("Found from these").size(size::LABEL).font(SEMIBOLD)),
            Column::with_children(answers).spacing(UNIT / 2.0),
        ]
        .spacing(1.5 * UNIT)
        .into(),
    )
}

fn number<'a>(
    entry: &'static Entry,
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Message> {
    let clear = desk.sheet().number(entry.id).is_some().then(|| clear(entry.id, "Clear"));
    row![
        container(
            field::compact(&format!("sheet:{}", entry.id), entry.id, desk, settings)
                .map(Message::Field)
        )
        .width(Fill),
        container(clear).width(Length::Fixed(48.0)),
    ]
    .spacing(UNIT)
    .width(Fill)
    .into()
}

fn clear<'a>(id: AnyId, word: &'a str) -> Element<'a, Message> {
    container(
        pressable(Kind::Word, text(word).size(size::SMALL))
            .on_press(Message::Edit(Edit::Clear { id }, None)),
    )
    .padding(Padding::ZERO.top(UNIT))
    .into()
}

fn answer<'a>(
    entry: &'static Entry,
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Message> {
    let (shown, pinned) = match desk.outcome.values.of(entry.id) {
        Value::Known(known) => {
            (settings.units.show(entry, known.si).to_string(), known.origin == Origin::Given)
        }
        Value::Missing(_) => ("—".to_owned(), false),
        Value::Invalid(_) => ("no answer".to_owned(), false),
    };
    row![
        text(symbol::capitalised(entry.label)).size(size::LABEL).width(Fill),
        text(shown).size(size::LABEL).font(SEMIBOLD),
        pinned.then(|| clear(entry.id, "Unpin")),
    ]
    .spacing(UNIT)
    .width(Fill)
    .into()
}

/// The tables of ready-made numbers that fill quantities of a topic.
fn ready_made<'a>(topic: Topic) -> Option<Element<'a, Message>> {
    let tables = presets::tables().iter().filter(|table| {
        table
            .rows
            .iter()
            .flat_map(|row| &row.values)
            .any(|(id, _)| catalogue::find(id.name()).is_some_and(|entry| entry.topic == topic))
    });
    let lines: Vec<Element<'a, Message>> = tables
        .map(|table| {
            let rows = table.rows.iter().map(|preset| {
                let values = preset.values.clone();
                pressable(Kind::Plain, text(&preset.label).size(size::SMALL))
                    .padding([4, 8])
                    .on_press(Message::Edit(Edit::Preset { values }, None))
                    .into()
            });
            column![
                text(format!("Fill in: {}", table.title)).size(size::SMALL).style(theme::soft),
                Row::with_children(rows).spacing(UNIT).width(Fill).wrap().vertical_spacing(UNIT),
            ]
            .spacing(UNIT / 2.0)
            .into()
        })
        .collect();
    (!lines.is_empty()).then(|| Column::with_children(lines).spacing(UNIT).into())
}
