//! The working behind an answer: which rules ran, with which numbers.

use std::io::Write;

use super::super::Stop;
use crate::quantity::{AnyId, Entry, Units, catalogue as quantities};
use crate::rules::{Origin, Rule, Value, Values, catalogue, plain, working};

/// The rules that ran to find a quantity, each after all it needs.
fn behind(id: AnyId, values: &Values) -> Vec<&'static Rule> {
    let mut rules = Vec::new();
    visit(id, values, &mut rules);
    rules
}

fn visit(id: AnyId, values: &Values, rules: &mut Vec<&'static Rule>) {
    if !came_from(id, values, Origin::Found) || rules.iter().any(|rule| rule.finds == id) {
        return;
    }
    let Some(rule) = catalogue::finder(id) else { return };
    for need in &rule.needs {
        visit(need.id, values, rules);
    }
    rules.push(rule);
}

fn came_from(id: AnyId, values: &Values, origin: Origin) -> bool {
    matches!(values.of(id), Value::Known(known) if known.origin == origin)
}

/// The numbers nobody gave that an answer rests on, in SI units.
pub(super) fn assumed(id: AnyId, values: &Values) -> Vec<(&'static Entry, f64)> {
    let mut assumed: Vec<(&'static Entry, f64)> = Vec::new();
    for need in behind(id, values).iter().flat_map(|rule| &rule.needs) {
        let known = quantities::find(need.id.name()).zip(values.si(need.id));
        let seen = assumed.iter().any(|(entry, _)| entry.id == need.id);
        if came_from(need.id, values, Origin::Assumed) && !seen {
            assumed.extend(known);
        }
    }
    assumed
}

/// What to know before trusting an answer: its own cautions, and those of all it rests on with
/// what each is about.
pub(super) fn cautions(id: AnyId, values: &Values) -> Vec<String> {
    let rules = behind(id, values);
    let inputs = rules.iter().flat_map(|rule| rule.needs.iter().map(|need| need.id));
    let mut seen: Vec<&str> = Vec::new();
    let mut cautions: Vec<String> = Vec::new();
    for about in std::iter::once(id).chain(inputs) {
        let Value::Known(known) = values.of(about) else { continue };
        for caution in &known.cautions {
            if seen.contains(&caution.as_ref()) {
                continue;
            }
            seen.push(caution);
            let is_own = about == id;
            cautions.push(if is_own { caution.to_string() } else { named(about, caution) });
        }
    }
    cautions
}

fn named(id: AnyId, caution: &str) -> String {
    format!("{}: {caution}", label(id.name()))
}

/// Writes the working of the answer, then the rules behind it in short.
pub(super) fn write(
    out: &mut dyn Write,
    entry: &Entry,
    values: &Values,
    units: &Units,
) -> Result<(), Stop> {
    let mut rules = behind(entry.id, values);
    let Some(last) = rules.pop() else {
        writeln!(out, "\nThe number was given, so no rule was needed.")?;
        return Ok(());
    };
    writeln!(out, "\n{}", last.title)?;
    write_steps(out, last, values, units)?;
    for assumption in last.assumes {
        writeln!(out, "  assumes: {assumption}")?;
    }
    writeln!(out, "  holds: {}", last.holds)?;
    writeln!(out, "  source: {}", last.source)?;
    if !rules.is_empty() {
        writeln!(out, "\nBefore that:")?;
    }
    for rule in rules {
        write_steps(out, rule, values, units)?;
    }
    Ok(())
}

/// The formula in words, in symbols and with the numbers in, and what comes out.
fn write_steps(
    out: &mut dyn Write,
    rule: &Rule,
    values: &Values,
    units: &Units,
) -> Result<(), Stop> {
    let working = working(rule, values, units);
    writeln!(out, "  {}", plain(rule.formula, &|id| label(id).to_owned()))?;
    writeln!(out, "    {}", working.symbols_text)?;
    writeln!(out, "    {}", working.numbers_text)?;
    if let Some(answer) = working.answer_text {
        writeln!(out, "    {answer}")?;
    }
    Ok(())
}

fn label(id: &str) -> &str {
    quantities::find(id).map_or(id, |entry| entry.label)
}
