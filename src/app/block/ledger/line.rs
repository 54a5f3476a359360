//! A line of the ledger: name, share, mass and place.

use iced::widget::{Row, column, container, row, space, text, text_input};
use iced::{Center, Element, Fill, Length};

use crate::app::page::{Message, Page};
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, Pressable, pressable};
use crate::app::widget::stepping::stepping;
use crate::quantity::catalogue;
use crate::quantity::catalogue::machine::{BALANCE_OFFSET, MASS};
use crate::sheet::{Axis, Edit, Part, PartField, Place, TrialMass};
use crate::study::ledger::{Row as Listed, nudged, stepped_mass, stepped_trial};

/// From this width of the text on, a line holds everything side by side.
const ABREAST: f32 = 520.0;

/// Where the lines stand.
#[derive(Clone, Copy)]
pub struct At<'a> {
    /// The line of the lesson where the ledger starts.
    pub line: usize,
    /// The page.
    pub page: Page<'a>,
    /// The largest share, whose bar is full.
    pub most: f64,
}

/// A mass as shown.
pub fn mass(si: f64, page: Page<'_>) -> String {
    catalogue::find(MASS.any().name())
        .map_or_else(String::new, |entry| page.settings.units.show(entry, si).to_string())
}

/// A length as shown, without zeros that only show precision.
fn length(si: f64, page: Page<'_>) -> String {
    catalogue::find(BALANCE_OFFSET.any().name())
        .map_or_else(String::new, |entry| page.settings.units.show(entry, si).short().to_string())
}

/// A share in words: `23 %`, `4.9 %`.
fn percent(share: f64) -> String {
    let percent = 100.0 * share;
    if percent >= 9.95 { format!("{percent:.0} %") } else { format!("{percent:.1} %") }
}

impl<'a> At<'a> {
    /// A part.
    pub fn part(self, listed: &Listed, part: &'a Part) -> Element<'a, Message> {
        let index = listed.part;
        let set = move |field, text| Edit::SetPart { index, field, text };
        let units = &self.page.settings.units;
        let step = move |up: bool, coarse: bool| stepped_mass(&part.mass, up, coarse, units);
        let weight = self.weight(
            &format!("{index}"),
            (&part.mass, listed.mass.is_none()),
            step,
            move |text| set(PartField::Mass, text),
        );
        let place = match &part.at {
            Some(at) => {
                let forward = at[Axis::Forward.index()].as_str();
                let nudge = move |ahead| {
                    nudged(forward, ahead, units)
                        .map(|text| set(PartField::At(Axis::Forward), text))
                };
                self.place(&format!("{index}"), listed.forward, nudge)
            }
            None => {
                self.word("put it in place", set(PartField::At(Axis::Forward), "0 mm".to_owned()))
            }
        };
        let share = listed.share.map_or_else(|| "?".to_owned(), percent);
        let name = column![
            row![
                text(part.name.as_str()).size(size::LABEL).width(Fill),
                text(share).size(size::LABEL).font(SEMIBOLD),
            ]
            .spacing(UNIT),
            self.bar(listed.share.unwrap_or(0.0)),
        ]
        .spacing(3);
        let problem = self.page.desk.tally.problems.iter().find(
            |remark| matches!(remark.place, Place::Part(part, PartField::Mass | PartField::At(_)) if part == index),
        );
        column![
            self.beside(name.into(), weight, place),
            problem.map(|remark| text(remark.message.as_str())
                .size(size::SMALL)
                .style(theme::warning)),
        ]
        .into()
    }

    /// What the stated mass holds beyond the parts.
    pub fn unlisted(self, (si, share): (f64, f64)) -> Element<'a, Message> {
        row![
            text("not in the parts list").size(size::LABEL).style(theme::soft).width(Fill),
            text(mass(si, self.page)).size(size::LABEL),
            text(percent(share)).size(size::LABEL).font(SEMIBOLD),
        ]
        .spacing(2.0 * UNIT)
        .into()
    }

    /// The trial mass, or the way to get one.
    pub fn trial(self) -> Element<'a, Message> {
        let Some(trial) = self.page.desk.sheet().trial() else {
            let edit = Edit::SetTrial { mass: "+100 g".to_owned(), at: None };
            return self.word("Add a trial mass", edit);
        };
        let units = &self.page.settings.units;
        let whole = self.page.desk.outcome.values.si(MASS).unwrap_or(1.0);
        let set = move |mass: String| Edit::SetTrial { mass, at: trial.at.clone() };
        let numbers = self.page.desk.tally.trial;
        let step = move |up, coarse| stepped_trial(&trial.mass, (up, coarse), whole, units);
        let weight = self.weight("trial", (&trial.mass, numbers.is_none()), step, set);
        let place = match &trial.at {
            Some(at) => {
                let nudge = move |ahead| {
                    let forward = nudged(&at[Axis::Forward.index()], ahead, units)?;
                    let mut at = at.clone();
                    at[Axis::Forward.index()] = forward;
                    Some(Edit::SetTrial { mass: trial.mass.clone(), at: Some(at) })
                };
                let forward = numbers.and_then(|numbers| numbers.at).map(|at| at[0]);
                self.place("trial", forward, nudge)
            }
            None => self.word("put it in place", self.placed(trial)),
        };
        let name = row![
            text("Trial mass").size(size::LABEL).width(Fill),
            self.word("take out", Edit::ClearTrial),
        ]
        .spacing(UNIT);
        self.beside(name.into(), weight, place)
    }

    /// The trial mass put where the centre of gravity is, to the millimetre.
    fn placed(self, trial: &TrialMass) -> Edit {
        let at = self.page.desk.tally.cg.unwrap_or_default();
        let at = at.map(|si| format!("{} mm", (si * 1000.0).round() + 0.0));
        Edit::SetTrial { mass: trial.mass.clone(), at: Some(at) }
    }

    fn word(self, word: &'a str, edit: Edit) -> Element<'a, Message> {
        pressable(Kind::Word, text(word).size(size::LABEL))
            .on_press(Message::Edit(edit, None))
            .into()
    }

    /// The share as a bar.
    fn bar(self, share: f64) -> Element<'a, Message> {
        let full = if self.most > 0.0 { (share / self.most).clamp(0.0, 1.0) } else { 0.0 };
        let part = (1000.0 * full).round() as u16;
        let bar = |portion: u16| {
            container(space()).height(5).width(Length::FillPortion(portion)).style(theme::share)
        };
        row![
            (part > 0).then(|| bar(part)),
            (part < 1000).then(|| space().width(Length::FillPortion(1000 - part))),
        ]
        .into()
    }

    fn is_wide(self) -> bool {
        self.page.width >= ABREAST
    }

    /// Name, mass and place side by side, or on a narrow page one under the other.
    fn beside(
        self,
        name: Element<'a, Message>,
        weight: Element<'a, Message>,
        place: Element<'a, Message>,
    ) -> Element<'a, Message> {
        let width = if self.is_wide() { 170.0 } else { 136.0 };
        let place = container(place).width(Length::Fixed(width));
        if self.is_wide() {
            let name = container(name).width(Fill);
            row![name, weight, place].spacing(2.0 * UNIT).align_y(Center).into()
        } else {
            let numbers = Row::with_children([weight, place.into()])
                .spacing(UNIT)
                .align_y(Center)
                .width(Fill)
                .wrap()
                .vertical_spacing(UNIT / 2.0);
            column![name, numbers].spacing(UNIT / 2.0).into()
        }
    }

    /// A mass with less and more beside it.
    fn weight(
        self,
        who: &str,
        (value, wrong): (&'a str, bool),
        step: impl Fn(bool, bool) -> Option<String> + Copy + 'a,
        edit: impl Fn(String) -> Edit + Clone + 'a,
    ) -> Element<'a, Message> {
        let place = format!("ledger:{}:{who}:mass", self.line);
        let message = {
            let place = place.clone();
            move |text: String| Message::Edit(edit(text), Some(place.clone()))
        };
        let field = text_input("not given", value)
            .id(place.clone())
            .font(REGULAR)
            .size(size::LABEL)
            .padding([4, 8])
            .width(Length::Fixed(if self.is_wide() { 92.0 } else { 80.0 }))
            .style(if wrong { theme::field_wrong } else { theme::field })
            .on_input(message.clone());
        let typed = message.clone();
        let field = stepping(field, move |to| {
            typed(step(to.up, to.coarse).unwrap_or_else(|| value.to_owned()))
        });
        let button = |sign: &'a str, up: bool| {
            button(sign)
                .id(format!("{place}:{}", if up { "more" } else { "less" }))
                .on_press_maybe(step(up, false).map(&message))
        };
        row![button("−", false), field, button("+", true)]
            .spacing(UNIT / 2.0)
            .align_y(Center)
            .into()
    }

    /// How far forward a part is, with back and forward beside it.
    fn place(
        self,
        who: &str,
        forward: Option<f64>,
        nudge: impl Fn(bool) -> Option<Edit>,
    ) -> Element<'a, Message> {
        let place = format!("ledger:{}:{who}:place", self.line);
        let button = |sign: &'a str, ahead: bool| {
            button(sign)
                .id(format!("{place}:{}", if ahead { "forward" } else { "back" }))
                .on_press_maybe(nudge(ahead).map(|edit| Message::Edit(edit, Some(place.clone()))))
        };
        let words = forward.map_or_else(
            || "?".to_owned(),
            |si| match si {
                _ if si.abs() < 5e-5 => "middle".to_owned(),
                _ if !self.is_wide() => length(si, self.page),
                _ => {
                    let way = if si > 0.0 { "ahead" } else { "back" };
                    format!("{} {way}", length(si.abs(), self.page))
                }
            },
        );
        let words = text(words).size(size::SMALL).width(Fill).align_x(Center);
        row![button("←", false), words, button("→", true)]
            .spacing(UNIT / 2.0)
            .align_y(Center)
            .width(Fill)
            .into()
    }
}

fn button(sign: &str) -> Pressable<'_, Message> {
    pressable(Kind::Plain, text(sign).size(size::LABEL).font(SEMIBOLD).width(12).center())
        .padding([4, 8])
}
