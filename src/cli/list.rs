//! `heftwise list`: what the program knows, as tables.

mod page;

use std::io::Write;

use clap::{Args, ValueEnum};
use serde_json::json;

use super::{Stop, table, write_json};
use crate::lesson::{Front, Library, Shipped};
use crate::quantity::{Entry, Role, catalogue as quantities, units_of};
use crate::rules::{Rule, catalogue as rules, checks, plain};

/// Lists the quantities, rules or lessons the program knows
#[derive(Debug, Args)]
#[command(after_help = "\
Examples:
  heftwise list quantities
      Every quantity: its name on the command line and in files, who sets it, units, meaning.
  heftwise list rules --json
      Every rule with its formula, inputs, range, source and checks, for other programs.
  heftwise list rules --page > rules.md
      The same as a page of Markdown, to read or print.")]
pub(super) struct List {
    /// What to list.
    what: What,
    /// Write JSON instead of columns.
    #[arg(long)]
    json: bool,
    /// Write a page of Markdown: rules alone.
    #[arg(long, conflicts_with = "json")]
    page: bool,
}

#[derive(Debug, Clone, Copy, ValueEnum)]
enum What {
    Quantities,
    Rules,
    Lessons,
}

impl List {
    pub(super) fn run(&self, out: &mut dyn Write) -> Result<(), Stop> {
        if self.page {
            return match self.what {
                What::Rules => page::write(out),
                What::Quantities | What::Lessons => Err(Stop::Usage(
                    "Only the rules are a page: 'heftwise list rules --page'.".to_owned(),
                )),
            };
        }
        match (self.what, self.json) {
            (What::Quantities, false) => list_quantities(out),
            (What::Rules, false) => list_rules(out),
            (What::Lessons, false) => list_lessons(out),
            (What::Quantities, true) => {
                write_json(out, &quantities::all().iter().map(quantity_json).collect())
            }
            (What::Rules, true) => write_json(out, &rules::all().iter().map(rule_json).collect()),
            (What::Lessons, true) => write_json(out, &lessons().iter().map(lesson_json).collect()),
        }
    }
}

/// Who sets a quantity, in a word.
fn role(entry: &Entry) -> &'static str {
    match entry.role {
        Role::Given { assumed: None } => "given",
        Role::Given { assumed: Some(_) } => "assumed",
        Role::Found => "found",
        Role::Either => "either",
    }
}

fn units(entry: &Entry) -> Vec<&'static str> {
    if entry.whole {
        return Vec::new();
    }
    units_of(entry).iter().map(|unit| unit.symbol).filter(|symbol| !symbol.is_empty()).collect()
}

fn list_quantities(out: &mut dyn Write) -> Result<(), Stop> {
    let rows: Vec<[String; 4]> = quantities::all()
        .iter()
        .map(|entry| {
            let units = units(entry).into_iter().take(4).collect::<Vec<_>>().join(", ");
            [
                entry.id.name().to_owned(),
                role(entry).to_owned(),
                if units.is_empty() { "-".to_owned() } else { units },
                entry.meaning.to_owned(),
            ]
        })
        .collect();
    Ok(table::write(out, &rows)?)
}

fn quantity_json(entry: &Entry) -> serde_json::Value {
    json!({
        "id": entry.id.name(),
        "label": entry.label,
        "role": role(entry),
        "topic": entry.topic.key(),
        "units": units(entry),
        "meaning": entry.meaning,
    })
}

fn needs(rule: &Rule) -> Vec<String> {
    let optional = |is_optional: bool| if is_optional { "?" } else { "" };
    rule.needs.iter().map(|need| format!("{}{}", need.id, optional(need.optional))).collect()
}

fn list_rules(out: &mut dyn Write) -> Result<(), Stop> {
    for rule in rules::all() {
        writeln!(out, "{}: {}", rule.finds, rule.title)?;
        let lines = [
            ["", "formula", &plain(rule.formula, &str::to_owned)],
            ["", "needs", &needs(rule).join(", ")],
            ["", "holds", rule.holds],
            ["", "source", rule.source],
            ["", "checks", &checks::of(rule.finds).to_string()],
        ];
        table::write(out, &lines.map(|line| line.map(str::to_owned)))?;
        writeln!(out)?;
    }
    Ok(())
}

fn rule_json(rule: &Rule) -> serde_json::Value {
    let named = |optional: bool| -> Vec<&str> {
        let needs = rule.needs.iter().filter(|need| need.optional == optional);
        needs.map(|need| need.id.name()).collect()
    };
    let checks = checks::of(rule.finds);
    json!({
        "finds": rule.finds.name(),
        "title": rule.title,
        "formula": plain(rule.formula, &str::to_owned),
        "tex": rule.formula,
        "needs": named(false),
        "may_need": named(true),
        "assumes": rule.assumes,
        "holds": rule.holds,
        "source": rule.source,
        "published_checks": checks.published,
        "of_them_from_memory": checks.recalled,
        "derived_checks": checks.derived,
        "on_the_way_to": checks.on_the_way,
        "worst_deviation": checks.worst,
        "unchecked_because": checks.reason,
    })
}

fn lessons() -> Vec<Front> {
    Library::load(Shipped).fronts().to_vec()
}

fn list_lessons(out: &mut dyn Write) -> Result<(), Stop> {
    let rows: Vec<[String; 3]> = lessons()
        .iter()
        .map(|lesson| {
            let minutes =
                lesson.minutes.map_or_else(|| "-".to_owned(), |minutes| format!("{minutes} min"));
            [lesson.id.clone(), lesson.title.clone(), minutes]
        })
        .collect();
    Ok(table::write(out, &rows)?)
}

fn lesson_json(lesson: &Front) -> serde_json::Value {
    json!({
        "id": lesson.id,
        "title": lesson.title,
        "minutes": lesson.minutes,
        "needs": lesson.needs,
        "goals": lesson.goals,
        "uses": lesson.uses.iter().map(|id| id.name()).collect::<Vec<_>>(),
    })
}
