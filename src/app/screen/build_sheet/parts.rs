//! The parts list: name, mass and place of each part, what they add up to, and the trial mass.

use std::sync::Arc;

use iced::widget::{Column, Row, column, container, row, rule, scrollable, text, text_input};
use iced::{Center, Element, Fill, Length, Shrink};

use super::Message;
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::kept::kept_of;
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::stretch::Stretch;
use crate::quantity::catalogue::{self, machine::CG_HEIGHT, machine::MASS};
use crate::sheet::{Axis, Edit, Part, PartField, Place, TrialMass};

const NAME: f32 = 200.0;
const NUMBER: f32 = 96.0;

/// The parts, a stretch of them at a time, and the trial mass.
pub fn view<'a>(stretch: &Stretch, desk: &'a Desk, settings: &'a Settings) -> Element<'a, Message> {
    let parts = desk.sheet().parts();
    let shown = stretch.of(parts.len());
    let rows = parts.iter().enumerate().skip(shown.start).take(shown.len());
    let rows = rows.map(|(index, part)| line(index, part, parts.len(), desk));
    let table = column![
        head(),
        rule::horizontal(1).style(theme::hairline),
        // One place for both, so that a field of the trial mass keeps its own.
        column![parts.is_empty().then(none), Column::with_children(rows).spacing(UNIT / 2.0)],
        rule::horizontal(1).style(theme::hairline),
        text(total(desk, settings)).size(size::LABEL).font(SEMIBOLD),
        trial(desk.sheet().trial()),
    ]
    .spacing(UNIT);
    let blank = Part { name: "new part".to_owned(), mass: "0 g".to_owned(), at: None };
    column![
        text("Parts").size(size::HEADING).font(SEMIBOLD),
        text(
            "Places are measured from the middle of the ground contact: forward, to the left, up \
             from the ground."
        )
        .size(size::LABEL)
        .style(theme::soft)
        .width(Fill),
        stretch.way("Parts", parts.len(), Message::Parts),
        scrollable(container(table).padding(iced::Padding::ZERO.bottom(1.5 * UNIT)))
            .id("parts")
            .horizontal()
            .style(theme::scroll)
            .width(Fill),
        row![
            pressable(Kind::Plain, text("Add a part").size(size::LABEL))
                .on_press(Message::Edit(Edit::AddPart(blank), None)),
            desk.sheet().trial().is_none().then(|| {
                pressable(Kind::Plain, text("Add a trial mass").size(size::LABEL)).on_press(
                    Message::Edit(Edit::SetTrial { mass: "+100 g".to_owned(), at: None }, None),
                )
            }),
        ]
        .spacing(UNIT),
    ]
    .spacing(1.5 * UNIT)
    .into()
}

/// The part and the control of it that the focus goes to after a change of the list: it follows the
/// part, so that the same key can be pressed again; `count` parts are there now.
pub fn focus_after(edit: &Edit, count: usize) -> Option<(usize, &'static str)> {
    let control = |index: usize, word: &'static str| Some((index, word));
    match edit {
        Edit::AddPart(_) => control(count.checked_sub(1)?, "name"),
        Edit::DuplicatePart { index } => control(index + 1, "name"),
        Edit::MovePart { from, to } if to < from => {
            control(*to, if *to > 0 { "up" } else { "down" })
        }
        Edit::MovePart { to, .. } => control(*to, if to + 1 < count { "down" } else { "up" }),
        Edit::RemovePart { index } => control((*index).min(count.checked_sub(1)?), "remove"),
        _ => None,
    }
}

/// What a control of a part is known by.
pub fn control(index: usize, word: &str) -> String {
    format!("part:{index}:{word}")
}

/// What to do while there are no parts.
fn none<'a>() -> Element<'a, Message> {
    text(
        "No parts yet. Give the mass above as one number, or add what the scales say of each part.",
    )
    .size(size::LABEL)
    .style(theme::soft)
    .into()
}

fn head<'a>() -> Element<'a, Message> {
    let cell = |words: &'a str, width: f32| {
        text(words).size(size::SMALL).style(theme::soft).width(Length::Fixed(width)).into()
    };
    let places = Axis::ALL.map(|axis| cell(axis.in_words(), NUMBER));
    Row::with_children([cell("part", NAME), cell("mass", NUMBER)].into_iter().chain(places))
        .spacing(UNIT)
        .into()
}

fn input<'a>(
    id: String,
    value: &str,
    width: f32,
    wrong: bool,
    edit: impl Fn(String) -> Edit + 'a,
) -> Element<'a, Message> {
    let gesture = id.clone();
    text_input("", value)
        .id(id)
        .font(REGULAR)
        .size(size::LABEL)
        .padding([4, 8])
        .width(Length::Fixed(width))
        .style(if wrong { theme::field_wrong } else { theme::field })
        .on_input(move |text| Message::Edit(edit(text), Some(gesture.clone())))
        .into()
}

fn line<'a>(index: usize, part: &Arc<Part>, count: usize, desk: &Desk) -> Element<'a, Message> {
    let numbers = desk.tally.parts.each.get(index);
    let problem = desk
        .tally
        .problems
        .iter()
        .find(|remark| matches!(remark.place, Place::Part(part, _) if part == index));
    let line = Line {
        index,
        is_last: index + 1 >= count,
        part: part.clone(),
        is_mass_wrong: numbers.is_none_or(|numbers| numbers.mass.is_none()),
        is_place_wrong: part.at.is_some() && numbers.is_none_or(|numbers| numbers.at.is_none()),
        problem: problem.map(|remark| remark.message.clone()),
    };
    kept_of(Shrink, line, Line::view)
}

/// All that the line of a part shows.
#[derive(Hash)]
struct Line {
    index: usize,
    is_last: bool,
    part: Arc<Part>,
    is_mass_wrong: bool,
    is_place_wrong: bool,
    problem: Option<String>,
}

impl Line {
    fn view(&self) -> Element<'static, Message> {
        let Self { index, ref part, .. } = *self;
        let id = |field: &str| control(index, field);
        let set = move |field: PartField| move |text| Edit::SetPart { index, field, text };
        let places = Axis::ALL.map(|axis| {
            let value = part.at.as_ref().map_or("", |at| at[axis.index()].as_str());
            let set = set(PartField::At(axis));
            input(id(axis.in_words()), value, NUMBER, self.is_place_wrong, set)
        });
        let act = |word: &'static str, edit: Option<Edit>| {
            pressable(Kind::Word, text(word).size(size::SMALL))
                .id(id(word))
                .on_press_maybe(edit.map(|edit| Message::Edit(edit, None)))
                .into()
        };
        let up = index.checked_sub(1).map(|to| Edit::MovePart { from: index, to });
        let down = (!self.is_last).then(|| Edit::MovePart { from: index, to: index + 1 });
        let acts = [
            act("up", up),
            act("down", down),
            act("copy", Some(Edit::DuplicatePart { index })),
            act("remove", Some(Edit::RemovePart { index })),
        ];
        let problem = self.problem.clone();
        column![
            Row::with_children(
                [
                    input(id("name"), &part.name, NAME, false, set(PartField::Name)),
                    input(id("mass"), &part.mass, NUMBER, self.is_mass_wrong, set(PartField::Mass)),
                ]
                .into_iter()
                .chain(places)
                .chain(acts),
            )
            .spacing(UNIT)
            .align_y(Center),
            problem.map(|problem| text(problem).size(size::SMALL).style(theme::warning)),
        ]
        .into()
    }
}

fn total(desk: &Desk, settings: &Settings) -> String {
    let show = |id: crate::quantity::AnyId, si: f64| {
        catalogue::find(id.name())
            .map_or_else(String::new, |entry| settings.units.show(entry, si).to_string())
    };
    let length = |si| show(CG_HEIGHT.any(), si);
    let towards = |si: f64, ahead: &str, behind: &str| {
        format!("{} {}", length(si.abs()), if si < 0.0 { behind } else { ahead })
    };
    let parts = &desk.tally.parts;
    let sum = format!("The parts add up to {}", show(MASS.any(), parts.mass));
    match desk.tally.cg {
        Some([forward, left, up]) => format!(
            "{sum}; centre of gravity {}, {}, {} up.",
            towards(forward, "forward", "back"),
            towards(left, "left", "right"),
            length(up)
        ),
        None => format!("{sum}; the centre of gravity needs the places of all heavy parts."),
    }
}

fn trial<'a>(trial: Option<&'a TrialMass>) -> Option<Element<'a, Message>> {
    let trial = trial?;
    let at = trial.at.clone();
    let mass = input("trial:mass".to_owned(), &trial.mass, NUMBER, false, move |mass| {
        Edit::SetTrial { mass, at: at.clone() }
    });
    let places = Axis::ALL.map(|axis| {
        let value = trial.at.as_ref().map_or("", |at| at[axis.index()].as_str());
        let (mass, at) = (trial.mass.clone(), trial.at.clone());
        input(format!("trial:{}", axis.in_words()), value, NUMBER, false, move |text| {
            let mut places =
                at.clone().unwrap_or_else(|| ["0 mm", "0 mm", "0 mm"].map(String::from));
            places[axis.index()] = text;
            Edit::SetTrial { mass: mass.clone(), at: Some(places) }
        })
    });
    Some(
        Row::with_children(
            [
                text("Trial mass, plus or minus")
                    .size(size::LABEL)
                    .width(Length::Fixed(NAME))
                    .into(),
                mass,
            ]
            .into_iter()
            .chain(places)
            .chain([pressable(Kind::Word, text("take out").size(size::SMALL))
                .on_press(Message::Edit(Edit::ClearTrial, None))
                .into()]),
        )
        .spacing(UNIT)
        .align_y(Center)
        .into(),
    )
}
