//! Tables: numbers to put in and answers to find, builds compared, moves, parts, and readings.

use maud::{Markup, html};

use super::super::prose::{blocks, spans};
use super::super::{Ink, label};
use super::{boxed, gap};
use crate::lesson::{
    Calculator, FAR_OVER, FAR_UNDER, HundredGrams, Ledger, Levers, Measure, SideBySide,
};
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::{AnyId, catalogue};
use crate::sheet::{Sheet, demo};
use crate::study::{self, Outcome, side_by_side};

/// The most moves of a levers table on paper.
const MOVES: usize = 8;

/// A label with its symbol.
fn named(id: AnyId) -> Markup {
    let symbol = catalogue::find(id.name()).map_or("", |entry| entry.symbol);
    html! { (label(id)) " " (super::super::prose::maths(symbol, false)) }
}

pub(super) fn calculator(calculator: &Calculator, ink: Ink<'_>) -> Markup {
    let own = |id: AnyId| ink.number(id).unwrap_or_default();
    boxed(
        calculator.title.as_deref(),
        &html! {
            table {
                thead { tr { th { "Number" } th { (ink.subject.name) } th { "Your change" } } }
                tbody {
                    @for id in &calculator.change {
                        tr { td { (named(*id)) } td { (own(*id)) } td.write {} }
                    }
                    @for id in &calculator.freeze {
                        tr { td { (named(*id)) ", stays" } td { (own(*id)) } td { "—" } }
                    }
                    @for id in &calculator.find {
                        tr {
                            td { b { (named(*id)) } }
                            td { (gap(ink.number(*id), ink.unit(*id), ink.key)) }
                            td.write {}
                        }
                    }
                }
            }
        },
    )
}

pub(super) fn side_by_side(asked: &SideBySide, ink: Ink<'_>) -> Markup {
    let examples: Vec<(String, Outcome)> = asked
        .with
        .iter()
        .filter_map(|id| Sheet::read(demo::find(id)?.text).ok())
        .map(|sheet| {
            let tally = sheet.tally();
            (sheet.name().to_owned(), Outcome::of(tally.givens, &tally.spreads, 0))
        })
        .collect();
    let own = std::iter::once(ink.subject)
        .chain(ink.companion)
        .map(|subject| (subject.name.as_str(), &subject.outcome));
    let builds: Vec<side_by_side::Build<'_>> = own
        .chain(examples.iter().map(|(name, outcome)| (name.as_str(), outcome)))
        .map(|(name, outcome)| side_by_side::Build { name, outcome })
        .collect();
    let table = study::SideBySide::of(&asked.show, &builds);
    boxed(
        asked.title.as_deref(),
        &html! {
            table {
                thead {
                    tr { th { "Number" } @for column in &table.columns { th { (column.name) } } }
                }
                tbody {
                    @for row in &table.rows {
                        tr {
                            td { (named(row.id)) }
                            @for cell in &row.cells {
                                td {
                                    @match &cell.number {
                                        Ok(si) => (ink.shown(row.id, *si)),
                                        Err(_) => "—",
                                    }
                                }
                            }
                        }
                    }
                }
            }
        },
    )
}

pub(super) fn levers(asked: &Levers, ink: Ink<'_>) -> Markup {
    let found = study::Levers::of(asked.of, &asked.step, &ink.subject.outcome);
    boxed(
        asked.title.as_deref(),
        &html! {
            p { "What does one step more of each do to the " (label(asked.of)) "?" }
            table {
                thead { tr { th { "Number" } th { "One step" } th { "Effect" } } }
                tbody {
                    @for lever in found.levers.iter().take(MOVES) {
                        tr {
                            td { (named(lever.id)) }
                            td { (ink.shown(lever.id, lever.from)) " → " (ink.shown(lever.id, lever.to)) }
                            td.write { @if ink.key { (lever.effect()) } }
                        }
                    }
                }
            }
            @if ink.key { p { (found.sentence(ink.units)) } }
        },
    )
}

pub(super) fn ledger(asked: &Ledger, ink: Ink<'_>) -> Markup {
    let ledger = study::Ledger::of(&ink.subject.sheet, &ink.subject.tally);
    let parts = ink.subject.sheet.parts();
    let mass = |si: f64| ink.shown(MASS.any(), si);
    boxed(
        asked.title.as_deref(),
        &html! {
            table {
                thead { tr { th { "Part" } th { "Mass" } th { "Share" } th { "Could it lose some?" } } }
                tbody {
                    @for place in ledger.by_mass() {
                        @if let (Some(row), Some(part)) = (ledger.rows.get(place), parts.get(place)) {
                            tr {
                                td { (part.name) }
                                td { @if let Some(si) = row.mass { (mass(si)) } }
                                td {
                                    @if let Some(share) = row.share.filter(|_| ink.key) {
                                        (format!("{:.0} %", share * 100.0))
                                    } @else { (gap(None, "%", false)) }
                                }
                                td.write {}
                            }
                        }
                    }
                    tr { td { b { "All" } } td { (mass(ledger.total)) } td { "100 %" } td {} }
                }
            }
        },
    )
}

/// The headline answers now; what 100 g more does to them is for the reader to find.
pub(super) fn hundred_grams(asked: &HundredGrams, ink: Ink<'_>) -> Markup {
    let bought = study::hundred_grams(&ink.subject.tally, None);
    boxed(
        asked.title.as_deref(),
        &html! {
            p { "100 g more at the centre of gravity, all else as it is." }
            table {
                thead { tr { th { "Answer" } th { "Now" } th { "With 100 g" } th { "Change" } } }
                tbody {
                    @for one in bought.iter().take(asked.rows) {
                        tr {
                            td { (named(one.id)) }
                            td { (ink.shown(one.id, one.now)) }
                            td.write {
                                @if let Some(si) = one.with_more().filter(|_| ink.key) {
                                    (ink.shown(one.id, si))
                                }
                            }
                            td.write { @if ink.key { (one.moved().in_words()) } }
                        }
                    }
                }
            }
        },
    )
}

/// Predicted and measured, with what could explain a far ratio.
pub(super) fn measure(measure: &Measure, ink: Ink<'_>) -> Markup {
    let predicted = measure.predicted.si(|id| ink.subject.si(id));
    let predicted = predicted.map(|si| ink.shown(measure.quantity, si)).unwrap_or_default();
    let unit = ink.unit(measure.quantity);
    let head = |words: &str| {
        if unit.is_empty() { words.to_owned() } else { format!("{words}, {unit}") }
    };
    let far = |over: bool| {
        if over { format!("over {FAR_OVER}") } else { format!("under {FAR_UNDER}") }
    };
    boxed(
        Some(&measure.what),
        &html! {
            p { b { "Tool: " } (measure.tool) }
            (blocks(&measure.how, ink))
            table {
                thead {
                    tr {
                        th { "Predicted" }
                        @for reading in 1..=3 { th { (head(&reading.to_string())) } }
                        th { (head("Mean")) } th { (head("Range")) } th { "Mean ÷ predicted" }
                    }
                }
                tbody {
                    tr { td { (predicted) } td.write {} td.write {} td.write {} td.write {} td.write {} td.write {} }
                }
            }
            @for (over, why) in [(true, &measure.over), (false, &measure.under)] {
                @if ink.key {
                    p.small { b { "A ratio " (far(over)) ": " } (spans(why, ink)) }
                } @else if over {
                    p.small { "What could explain a ratio " (far(true)) " or " (far(false)) "?" }
                    span.lines {}
                }
            }
        },
    )
}
