//! Every rule on a page of Markdown: formula, range, source and checks, by topic.

use std::io::Write;

use super::super::Stop;
use crate::quantity::{Entry, Topic, catalogue as quantities};
use crate::rules::{Rule, catalogue as rules, checks, plain};

/// Writes the page.
pub(super) fn write(out: &mut dyn Write) -> Result<(), Stop> {
    let all: Vec<_> = rules::all()
        .iter()
        .filter_map(|rule| Some((quantities::find(rule.finds.name())?, rule)))
        .collect();
    let (mut checked, mut numbers, mut derived) = (0, 0, 0);
    for (entry, _) in &all {
        let checks = checks::of(entry.id);
        checked += u32::from(checks.own() > 0);
        numbers += checks.published;
        derived += checks.derived;
    }
    writeln!(out, "# The rules\n")?;
    writeln!(
        out,
        "{} rules. {checked} of them are checked, against {numbers} published numbers and {derived} worked out by hand; each of the others says why it is not.",
        all.len()
    )?;
    for topic in Topic::ALL {
        let here: Vec<_> = all.iter().filter(|(entry, _)| entry.topic == topic).collect();
        if !here.is_empty() {
            writeln!(out, "\n## {}", topic.title())?;
        }
        for (entry, rule) in here {
            write_rule(out, entry, rule)?;
        }
    }
    Ok(())
}

fn write_rule(out: &mut dyn Write, entry: &Entry, rule: &Rule) -> Result<(), Stop> {
    let mut label = entry.label.chars();
    let first = label.next().map(|first| first.to_uppercase().to_string()).unwrap_or_default();
    writeln!(out, "\n### {first}{}\n", label.as_str())?;
    writeln!(out, "`{}`: {}.\n", entry.id, rule.title)?;
    writeln!(out, "    {}\n", plain(rule.formula, &str::to_owned))?;
    writeln!(out, "- Taken for granted: {}", rule.assumes.join(" "))?;
    writeln!(out, "- Holds: {}", rule.holds)?;
    writeln!(out, "- Source: {}.", rule.source.trim_end_matches('.'))?;
    writeln!(out, "- Checks: {}.", checks::of(entry.id))?;
    Ok(())
}
