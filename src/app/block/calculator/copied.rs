//! An answer as text, to be put into a letter or a report.

use super::with;
use crate::app::desk::Desk;
use crate::quantity::{AnyId, Units, catalogue};
use crate::rules::{catalogue as rules, working};

/// The number with its unit; nothing if there is no answer.
pub fn number(id: AnyId, desk: &Desk, units: &Units) -> Option<String> {
    let entry = catalogue::find(id.name())?;
    Some(units.show(entry, desk.outcome.values.si(id)?).to_string())
}

/// The answer with the way there: the formula, the numbers in it, what it takes for granted and
/// where it is published; nothing if no rule found it.
pub fn with_working(id: AnyId, desk: &Desk, units: &Units) -> Option<String> {
    let entry = catalogue::find(id.name())?;
    let rule = rules::finder(id)?;
    let working = working(rule, &desk.outcome.values, units);
    let mut lines = vec![
        format!("{} of {}", rule.title, desk.name()),
        String::new(),
        working.symbols_text,
        working.numbers_text,
        working.answer_text?,
        String::new(),
    ];
    if let Some((range, si)) = desk.outcome.range(id).zip(desk.outcome.values.si(id)) {
        let ends = units.show_range(entry, (range.low, si, range.high));
        lines.push(format!("Could be {ends}."));
    }
    lines.push(with(&working.inputs));
    lines.extend(rule.assumes.iter().map(|words| format!("Takes for granted: {words}")));
    lines.push(format!("Holds for: {}", rule.holds));
    lines.push(format!("Source: {}", rule.source));
    lines.extend(working.cautions);
    Some(lines.join("\n"))
}
