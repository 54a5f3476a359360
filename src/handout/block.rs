//! The live blocks on paper: boxes to guess in, blanks to fill, tables to write in, and pictures.

mod answer;
mod picture;
mod table;

use maud::{Markup, html};

use super::Ink;
use crate::lesson::BlockKind;
pub(super) use answer::{result, slip_value};

/// A live block; nothing for one that is no live block.
pub(super) fn live(kind: &BlockKind, ink: Ink<'_>) -> Markup {
    match kind {
        BlockKind::Guess(guess) => answer::guess(guess, ink),
        BlockKind::Faded(faded) => answer::faded(faded, ink),
        BlockKind::Target(target) => answer::target(target, ink),
        BlockKind::Calculator(calculator) => table::calculator(calculator, ink),
        BlockKind::SideBySide(asked) => table::side_by_side(asked, ink),
        BlockKind::Levers(asked) => table::levers(asked, ink),
        BlockKind::Ledger(asked) => table::ledger(asked, ink),
        BlockKind::Measure(measure) => table::measure(measure, ink),
        BlockKind::Curve(curve) => picture::curve(curve, ink),
        BlockKind::Sketch(asked) => picture::sketch(asked, ink),
        BlockKind::Run(asked) => picture::run(asked, ink),
        BlockKind::HundredGrams(asked) => table::hundred_grams(asked, ink),
        _ => html! {},
    }
}

/// A box with what a block asks on top.
fn boxed(title: Option<&str>, inside: &Markup) -> Markup {
    html! { div.box { @if let Some(title) = title { h3 { (title) } } (inside) } }
}

/// A gap to write a number in, or the number in a key.
fn gap(answer: Option<String>, unit: &str, key: bool) -> Markup {
    match answer.filter(|_| key) {
        Some(answer) => html! { span.right { (answer) } },
        None => html! { span.gap {} " " (unit) },
    }
}
