//! The calculator: numbers to change, numbers found, and the working.

mod copied;

use iced::widget::{Column, column, container, row, rule, text};
use iced::{Center, Element, Fill};

use super::{beside, frame};
use crate::app::page::{Message, Page};
use crate::app::theme::{self, BOLD, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::{field, formula, symbol};
use crate::lesson::Calculator;
use crate::quantity::{AnyId, Entry, Shown, catalogue};
use crate::rules::{Lack, Value, Working, catalogue as rules, working};

/// A calculator that starts on `line` of its lesson.
pub fn view<'a>(calculator: &'a Calculator, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let change = calculator.change.iter().map(|id| {
        let own = field::full(&format!("{line}:{id}"), *id, page.desk, page.settings);
        beside::given(own.map(Message::Field), *id, page)
    });
    let frozen = calculator.freeze.iter().filter_map(|id| frozen(*id, page));
    let answers =
        calculator.find.iter().map(|id| beside::answer(answer(*id, line, page), *id, page));
    frame(
        calculator.title.as_deref(),
        column![
            Column::with_children(change).spacing(2.0 * UNIT),
            Column::with_children(frozen).spacing(UNIT / 2.0),
            rule::horizontal(1).style(theme::hairline),
            Column::with_children(answers).spacing(2.0 * UNIT),
            put_back(calculator, page),
        ]
        .spacing(2.0 * UNIT),
    )
}

/// The way back to the saved build; it can be pressed while a number of this calculator differs
/// from it, and keeps its place meanwhile so that nothing below it moves.
fn put_back<'a>(calculator: &'a Calculator, page: Page<'a>) -> Element<'a, Message> {
    let ids: Vec<AnyId> = calculator.change.iter().chain(&calculator.find).copied().collect();
    let differs = page.desk.has_way_back(&ids);
    pressable(Kind::Plain, text("Reset to my build").size(size::LABEL))
        .on_press_maybe(differs.then_some(Message::PutBack(ids)))
        .into()
}

fn frozen<'a>(id: AnyId, page: Page<'a>) -> Option<Element<'a, Message>> {
    let entry = catalogue::find(id.name())?;
    let shown = page.desk.outcome.values.si(id).map_or_else(
        || "not given".to_owned(),
        |si| page.settings.units.show(entry, si).to_string(),
    );
    Some(
        text(format!("{} stays at {shown} here.", symbol::capitalised(entry.label)))
            .size(size::SMALL)
            .style(theme::soft)
            .into(),
    )
}

/// One answer: its name, the number, how sure, what it was, and the way there.
fn answer<'a>(id: AnyId, line: usize, page: Page<'a>) -> Element<'a, Message> {
    let Some(entry) = catalogue::find(id.name()) else { return text(id.name()).into() };
    let key = format!("{line}:{id}");
    let open = page.marks.open.contains(&key);
    let value = page.desk.outcome.values.of(id);
    let mut stack = column![
        row![
            text(symbol::capitalised(entry.label)).size(size::LABEL).width(Fill),
            formula::inline(entry.symbol, size::LABEL),
        ]
        .spacing(UNIT),
    ]
    .spacing(UNIT / 2.0);
    match value {
        Value::Known(known) => {
            stack = stack.push(number(entry, known.si, page));
            stack = stack.push(
                text(sure(entry, known.si, page)).size(size::SMALL).style(theme::soft).width(Fill),
            );
            for caution in &known.cautions {
                stack = stack.push(
                    text(caution.clone()).size(size::SMALL).style(theme::warning).width(Fill),
                );
            }
        }
        Value::Missing(lacks) => {
            stack = stack.push(text("Not known yet").size(size::ANSWER).style(theme::soft));
            stack = stack.push(text(asks(lacks)).size(size::SMALL).style(theme::warning));
        }
        Value::Invalid(why) => {
            stack = stack.push(text("No answer").size(size::ANSWER).style(theme::soft));
            stack = stack.push(text(why.clone()).size(size::SMALL).style(theme::warning));
        }
    }
    let opened = format!("pin:{key}");
    let pinned = page.desk.sheet().number(id).is_some();
    let word = if open { "Hide the working" } else { "Show the working" };
    let working =
        pressable(Kind::Word, text(word).size(size::LABEL)).on_press(Message::Working(key));
    let pinning = page.marks.open.contains(&opened);
    let pin = match (pinned, pinning) {
        (true, _) => pressable(Kind::Word, text("Unpin").size(size::LABEL)).on_press(
            Message::Field(field::Event { place: opened.clone(), id, act: field::Act::Cleared }),
        ),
        (false, open) => {
            let word = if open { "Do not pin" } else { "Pin…" };
            pressable(Kind::Word, text(word).size(size::LABEL))
                .on_press(Message::Working(opened.clone()))
        }
    };
    let units = &page.settings.units;
    let copy = |word: &'a str, words: Option<String>| {
        let press = |words| {
            pressable(Kind::Word, text(word).size(size::LABEL)).on_press(Message::Copy(words))
        };
        words.map(press)
    };
    let copied = copy("Copy", copied::number(id, page.desk, units));
    let with_working = (open && !pinned)
        .then(|| copy("Copy the working", copied::with_working(id, page.desk, units)))
        .flatten();
    stack = stack.push(
        row![(!pinned).then_some(working), pin, copied, with_working]
            .spacing(2.0 * UNIT)
            .wrap()
            .vertical_spacing(UNIT / 2.0),
    );
    if pinned {
        stack = stack.push(
            text("Pinned: you set this number yourself, and everything after it follows from it.")
                .size(size::SMALL)
                .style(theme::soft)
                .width(Fill),
        );
    }
    if pinning || pinned {
        let pin = field::compact(&opened, id, page.desk, page.settings);
        stack = stack.push(pin.map(Message::Field));
    }
    if open && !pinned {
        stack = stack.push(shown_working(id, page));
    }
    stack.into()
}

/// The number itself, with its unit small and the number before the change beside it.
fn number<'a>(entry: &'static Entry, si: f64, page: Page<'a>) -> Element<'a, Message> {
    let units = &page.settings.units;
    let shown = units.show(entry, si);
    let was = page
        .desk
        .before()
        .values
        .si(entry.id)
        .filter(|before| page.desk.revision() > 0 && differs(*before, si))
        .map(|before| {
            text(format!("was {}", units.show(entry, before))).size(size::LABEL).style(theme::soft)
        });
    row![
        text(shown.number).size(size::ANSWER).font(BOLD),
        (!shown.unit.symbol.is_empty()).then(|| {
            pressable(Kind::Word, text(shown.unit.symbol).size(size::BODY))
                .on_press(Message::NextUnit(entry.id))
        }),
        was,
    ]
    .spacing(UNIT)
    .align_y(Center)
    .into()
}

fn differs(before: f64, after: f64) -> bool {
    (before - after).abs() > 1e-9 * before.abs().max(after.abs())
}

/// The range the spreads leave, in words.
fn sure(entry: &'static Entry, si: f64, page: Page<'_>) -> String {
    match page.desk.outcome.range(entry.id) {
        Some(range) => {
            let ends = (range.low, si, range.high);
            format!("Could be {}.", page.settings.units.show_range(entry, ends))
        }
        None => "No spread: none of your numbers for this says how sure it is.".to_owned(),
    }
}

/// What to give to get an answer.
pub fn asks(lacks: &[Lack]) -> String {
    let label = |id: &AnyId| catalogue::find(id.name()).map_or(id.name(), |entry| entry.label);
    let each: Vec<String> =
        lacks.iter().map(|lack| lack.iter().map(label).collect::<Vec<_>>().join(" or ")).collect();
    format!("Give the {} to find it.", each.join(", the "))
}

/// The formula with symbols, with your numbers, and the answer; then what it takes for granted.
fn shown_working<'a>(id: AnyId, page: Page<'a>) -> Element<'a, Message> {
    let values = &page.desk.outcome.values;
    let Some(rule) = rules::finder(id) else {
        return text("You gave this number yourself.").size(size::SMALL).into();
    };
    let Working { symbols_tex, numbers_tex, answer_tex, inputs, .. } =
        working(rule, values, &page.settings.units);
    let answer = answer_tex.map(|tex| formula::display(&tex, size::BODY));
    let mut stack = column![
        text(rule.title).size(size::LABEL).font(SEMIBOLD),
        formula::display(&symbols_tex, size::MINOR),
        formula::display(&numbers_tex, size::BODY),
        answer,
        text(with(&inputs)).size(size::SMALL).width(Fill),
    ]
    .spacing(UNIT * 1.5);
    for assumption in rule.assumes {
        stack = stack.push(line("Takes for granted: ", assumption));
    }
    stack = stack.push(line("Holds for: ", rule.holds));
    stack = stack.push(line("Source: ", rule.source));
    container(stack).style(theme::note).padding(1.5 * UNIT).width(Fill).into()
}

/// What went in, by name: "With: force on the ground 62.8 N, contact area 0.0756 m²."
fn with(inputs: &[(AnyId, Shown)]) -> String {
    let each: Vec<String> = inputs
        .iter()
        .filter_map(|(id, shown)| Some(format!("{} {shown}", catalogue::find(id.name())?.label)))
        .collect();
    format!("With: {}.", each.join(", "))
}

fn line<'a>(title: &'static str, words: &'static str) -> Element<'a, Message> {
    text(format!("{title}{words}")).size(size::SMALL).width(Fill).into()
}
