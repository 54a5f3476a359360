//! A number to change: label, symbol, field with unit, slider and step keys.

use iced::widget::{Row, column, row, slider, text, text_input};
use iced::{Center, Element, Fill, Length};

use super::pressable::{Kind, pressable};
use super::stepping::{Step, stepping};
use super::{formula, symbol};
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, size};
use crate::quantity::{AnyId, Entry, catalogue, unusual};
use crate::rules::{Origin, Value};
use crate::sheet::{Edit, presets};

/// Something done to a field.
#[derive(Debug, Clone)]
pub struct Event {
    /// Which field on the page: a quantity can stand in several places.
    pub place: String,
    /// Which quantity.
    pub id: AnyId,
    /// What was done.
    pub act: Act,
}

/// What was done to a field.
#[derive(Debug, Clone)]
pub enum Act {
    /// Its text is now this.
    Typed(String),
    /// Its slider is at this value, SI.
    Slid(f64),
    /// One step, or ten.
    Stepped(Step),
    /// A row of a table of presets is taken.
    Preset(Edit),
    /// An answer, SI, is taken into the build.
    Taken(f64),
    /// It is taken out of the build.
    Cleared,
    /// The gesture is over.
    Settled,
}

/// Puts what was done to a field into the build.
pub fn perform(event: &Event, desk: &mut Desk, settings: &Settings) {
    let Event { place, id, act } = event;
    match act {
        Act::Typed(text) => desk.typed(place, *id, text.clone(), &settings.units),
        Act::Slid(si) => desk.moved_to(place, *id, *si, &settings.units),
        Act::Stepped(step) => {
            if let Some(entry) = catalogue::find(id.name()) {
                let si = stepped(entry, desk, settings, *step);
                desk.moved_to(place, *id, si, &settings.units);
            }
        }
        Act::Preset(edit) => desk.preset(edit),
        Act::Taken(si) => desk.take(place, *id, *si, &settings.units),
        Act::Cleared => desk.clear(*id),
        Act::Settled => desk.settled(),
    }
}

/// The value one step on: a step is one in the second figure shown, or one for a count.
fn stepped(entry: &Entry, desk: &Desk, settings: &Settings, step: Step) -> f64 {
    let si = desk.outcome.values.si(entry.id).unwrap_or(entry.usual.0);
    let unit = settings.units.unit_for(entry, si);
    let shown = unit.from_si(si);
    let size = if entry.whole {
        1.0
    } else if shown == 0.0 {
        let (low, high) = entry.usual;
        10f64.powf((unit.from_si(high) - unit.from_si(low)).abs().max(1e-9).log10().floor() - 2.0)
    } else {
        10f64.powf(shown.abs().log10().floor() - 1.0)
    };
    let size = if step.coarse { 10.0 * size } else { size };
    let next = shown + if step.up { size } else { -size };
    // Onto the grid of the step, so that 6.43 goes to 6.5 and back to 6.4.
    unit.to_si((next / size).round() * size)
}

/// The full field of a calculator.
pub fn full<'a>(
    place: &str,
    id: AnyId,
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Event> {
    whole(place, id, desk, settings, |entry| Some(entry.symbol))
}

/// The full field without the symbol, for a reader who may not have met symbols yet.
pub fn in_words<'a>(
    place: &str,
    id: AnyId,
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Event> {
    whole(place, id, desk, settings, |_| None)
}

fn whole<'a>(
    place: &str,
    id: AnyId,
    desk: &'a Desk,
    settings: &'a Settings,
    symbol: fn(&'static Entry) -> Option<&'static str>,
) -> Element<'a, Event> {
    let Some(entry) = catalogue::find(id.name()) else { return text(id.name()).into() };
    let symbol = symbol(entry);
    let event = event(place, id);
    let step = |up| Act::Stepped(Step { up, coarse: false });
    let stepper = |sign: &'a str, up| {
        pressable(Kind::Plain, text(sign).size(size::LABEL).font(SEMIBOLD).width(12).center())
            .padding([5, 9])
            .on_press(event(step(up)))
    };
    let told = Told::of(place, entry, desk, settings);
    column![
        headed(
            (entry.label, symbol),
            settings.room() >= STACKED,
            row![
                told.input(place, id, if is_tight(settings) { TIGHT } else { 150.0 }),
                stepper("−", false),
                stepper("+", true),
            ]
            .spacing(UNIT)
            .align_y(Center),
        ),
        slide(entry, desk, &event),
        ready_made(entry, &event),
        told.note(),
    ]
    .spacing(UNIT / 2.0)
    .into()
}

/// The field in one line, for the margin and the build sheet.
pub fn compact<'a>(
    place: &str,
    id: AnyId,
    desk: &'a Desk,
    settings: &'a Settings,
) -> Element<'a, Event> {
    match catalogue::find(id.name()) {
        Some(entry) => Line::of(place, entry, desk, settings).view(),
        None => text(id.name()).into(),
    }
}

/// All that a field in one line shows.
#[derive(Hash)]
pub struct Line {
    place: String,
    id: AnyId,
    label: &'static str,
    symbol: &'static str,
    told: Told,
    is_tight: bool,
}

impl Line {
    /// What the field of a number shows in a place.
    pub fn of(place: &str, entry: &'static Entry, desk: &Desk, settings: &Settings) -> Self {
        let Entry { id, label, symbol, .. } = *entry;
        let told = Told::of(place, entry, desk, settings);
        let is_tight = is_tight(settings);
        Self { place: place.to_owned(), id, label, symbol, told, is_tight }
    }

    /// The field.
    pub fn view(&self) -> Element<'static, Event> {
        let width = if self.is_tight { TIGHT } else { 132.0 };
        column![
            headed(
                (self.label, Some(self.symbol)),
                !self.is_tight,
                self.told.input(&self.place, self.id, width),
            ),
            (!self.told.note.is_empty()).then(|| self.told.note()),
        ]
        .spacing(2)
        .into()
    }
}

/// The rows of the tables that fill this quantity and no other.
fn ready_made<'a>(
    entry: &'static Entry,
    event: &(impl Fn(Act) -> Event + Clone + 'static),
) -> Option<Element<'a, Event>> {
    let fills =
        |row: &&'static presets::Row| matches!(row.values.as_slice(), [(id, _)] if *id == entry.id);
    let rows: Vec<Element<'a, Event>> = presets::tables()
        .iter()
        .flat_map(|table| &table.rows)
        .filter(fills)
        .map(|row| {
            pressable(Kind::Plain, text(short(&row.label)).size(size::SMALL))
                .padding([4, 8])
                .on_press(event(Act::Preset(row.edit())))
                .into()
        })
        .collect();
    (!rows.is_empty()).then(|| {
        Row::with_children(rows)
            .spacing(UNIT)
            .width(Fill)
            .wrap()
            .vertical_spacing(UNIT / 2.0)
            .into()
    })
}

/// The name of a row without what is said of it.
fn short(label: &str) -> &str {
    label.split([':', '(']).next().unwrap_or(label).trim_end()
}

fn event(place: &str, id: AnyId) -> impl Fn(Act) -> Event + Clone + 'static {
    let place = place.to_owned();
    move |act| Event { place: place.clone(), id, act }
}

/// Under this width of the window, a full field stands under its name.
const STACKED: f32 = 430.0;

/// How wide a field is in a tight place.
const TIGHT: f32 = 92.0;

/// Whether a field stands under its name for want of room.
fn is_tight(settings: &Settings) -> bool {
    settings.room() < theme::TIGHT
}

/// The name of a number and its field, beside each other or one under the other.
fn headed<'a>(
    (label, symbol): (&'static str, Option<&'static str>),
    beside: bool,
    field: impl Into<Element<'a, Event>>,
) -> Element<'a, Event> {
    let name = row![
        text(symbol::capitalised(label)).size(size::LABEL).width(Fill),
        symbol.map(|symbol| formula::inline(symbol, size::LABEL)),
    ]
    .spacing(UNIT)
    .align_y(Center)
    .width(Fill);
    if beside {
        row![name, field.into()].spacing(UNIT).align_y(Center).into()
    } else {
        column![name, field.into()].spacing(UNIT / 2.0).into()
    }
}

/// What a field says: its text, and the words under it.
#[derive(Hash)]
struct Told {
    text: String,
    note: String,
    is_wrong: bool,
}

impl Told {
    fn of(place: &str, entry: &'static Entry, desk: &Desk, settings: &Settings) -> Self {
        let draft = desk.draft(place);
        let error = draft.and_then(|draft| draft.error.clone());
        Self {
            text: draft
                .map_or_else(|| desk.text_of(entry, &settings.units), |draft| draft.text.clone()),
            is_wrong: error.is_some(),
            note: error.unwrap_or_else(|| said(entry, desk, settings)),
        }
    }

    fn input(&self, place: &str, id: AnyId, width: f32) -> Element<'static, Event> {
        let event = event(place, id);
        let (typed, stepped) = (event.clone(), event.clone());
        let field = text_input("not given", &self.text)
            .id(place.to_owned())
            .font(REGULAR)
            .size(size::LABEL)
            .padding([6, 8])
            .width(Length::Fixed(width))
            .style(if self.is_wrong { theme::field_wrong } else { theme::field })
            .on_input(move |text| typed(Act::Typed(text)))
            .on_submit(event(Act::Settled));
        stepping(field, move |step| stepped(Act::Stepped(step)))
    }

    /// What is wrong, or where the number comes from.
    fn note<'a>(&self) -> Element<'a, Event> {
        let style = if self.is_wrong { theme::warning } else { theme::soft };
        text(self.note.clone()).size(size::SMALL).style(style).width(Fill).into()
    }
}

/// The slider of a quantity: even steps where the range is narrow, even ratios where it is wide.
fn slide<'a>(
    entry: &'static Entry,
    desk: &Desk,
    event: &(impl Fn(Act) -> Event + Clone + 'static),
) -> Element<'a, Event> {
    let (low, high) = entry.usual;
    let value = desk.outcome.values.si(entry.id).unwrap_or(low);
    let (low, high) = (low.min(value), high.max(value));
    let slid = event.clone();
    if low > 0.0 && high / low > 30.0 {
        let (from, to) = (low.ln(), high.ln());
        slider(from..=to, value.ln(), move |at| slid(Act::Slid(rounded(at.exp()))))
            .step((to - from) / 500.0)
            .on_release(event(Act::Settled))
            .style(theme::slide)
            .into()
    } else {
        let step = if entry.whole { 1.0 } else { ((high - low) / 500.0).max(f64::MIN_POSITIVE) };
        slider(low..=high, value, move |at| slid(Act::Slid(at)))
            .step(step)
            .on_release(event(Act::Settled))
            .style(theme::slide)
            .into()
    }
}

/// Three figures, so that a slide leaves a number a person would write.
fn rounded(si: f64) -> f64 {
    if si == 0.0 {
        return 0.0;
    }
    let size = 10f64.powf(si.abs().log10().floor() - 2.0);
    (si / size).round() * size
}

fn said(entry: &'static Entry, desk: &Desk, settings: &Settings) -> String {
    let Value::Known(known) = desk.outcome.values.of(entry.id) else {
        return match desk.outcome.values.of(entry.id) {
            Value::Invalid(why) => why.to_string(),
            _ => "Not given yet.".to_owned(),
        };
    };
    if let Some(hint) = unusual(entry, known.si, &settings.units) {
        return hint;
    }
    match known.origin {
        Origin::Given => String::new(),
        Origin::Parts => "Adds up from your parts list.".to_owned(),
        Origin::Assumed => "Taken for granted; change it if yours differs.".to_owned(),
        Origin::Found => "Found from your other numbers.".to_owned(),
    }
}
