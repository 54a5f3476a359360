//! The working behind an answer: which rules ran, with which numbers.

use std::io::Write;

use super::super::{Stop, formula};
use crate::quantity::{AnyId, Entry, Units, catalogue as quantities, si_unit};
use crate::rules::{Origin, Rule, Value, Values, catalogue};

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

/// What to know before trusting an answer: its own cautions and those of all it rests on.
pub(super) fn cautions(id: AnyId, values: &Values) -> Vec<String> {
    let rules = behind(id, values);
    let inputs = rules.iter().flat_map(|rule| rule.needs.iter().map(|need| need.id));
    let mut cautions: Vec<String> = Vec::new();
    for id in std::iter::once(id).chain(inputs) {
        let Value::Known(known) = values.of(id) else { continue };
        for caution in &known.cautions {
            if !cautions.contains(caution) {
                cautions.push(caution.clone());
            }
        }
    }
    cautions
}

/// Writes the working of the answer, then the rules behind it in short.
pub(super) fn write(out: &mut dyn Write, entry: &Entry, values: &Values) -> Result<(), Stop> {
    let mut rules = behind(entry.id, values);
    let Some(last) = rules.pop() else {
        writeln!(out, "\nThe number was given, so no rule was needed.")?;
        return Ok(());
    };
    writeln!(out, "\n{}", last.title)?;
    write_formula(out, last, values)?;
    for assumption in last.assumes {
        writeln!(out, "  assumes: {assumption}")?;
    }
    writeln!(out, "  holds: {}", last.holds)?;
    writeln!(out, "  source: {}", last.source)?;
    if !rules.is_empty() {
        writeln!(out, "\nBefore that:")?;
    }
    for rule in rules {
        write_formula(out, rule, values)?;
    }
    Ok(())
}

/// The formula with names, with the numbers in, and what comes out.
fn write_formula(out: &mut dyn Write, rule: &Rule, values: &Values) -> Result<(), Stop> {
    let found = number(rule.finds.name(), values);
    let right = rule.formula.split_once('=').map_or(rule.formula, |(_, right)| right);
    writeln!(out, "  {}", formula::plain(rule.formula, &label))?;
    writeln!(out, "    = {}", formula::plain(right, &|id| number(id, values)))?;
    writeln!(out, "    = {found}")?;
    Ok(())
}

fn label(id: &str) -> String {
    quantities::find(id).map_or_else(|| id.to_owned(), |entry| entry.label.to_owned())
}

/// A number in the unit workings are written in, so that the formula can be followed.
fn number(id: &str, values: &Values) -> String {
    let shown = quantities::find(id).and_then(|entry| {
        let unit = si_unit(entry.dimension).symbol;
        Units::default().show_in(entry, values.si(entry.id)?, unit).ok()
    });
    shown.map_or_else(|| label(id), |shown| shown.to_string())
}
