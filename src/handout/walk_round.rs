//! The record of a build: its numbers and parts, and every limit, for the box it travels in.

use maud::{Markup, html};

use super::Subject;
use super::page::{Paper, file};
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::{Topic, Units, catalogue};
use crate::rules::Origin;
use crate::study::walk_round::{Finding, Verdict, not_known};
use crate::study::{Ledger, walk_round as check};

/// A build's record as one HTML file: two pages for most builds.
pub fn walk_round(subject: &Subject, units: &Units, paper: Paper) -> String {
    let findings = check(&subject.outcome);
    let title = format!("Walk round {}", subject.name);
    file(&title, paper, &[limits(subject, &findings, units), numbers(subject, units)])
}

fn limits(subject: &Subject, findings: &[Finding], units: &Units) -> Markup {
    let shown = |id: crate::quantity::AnyId, si: f64| {
        catalogue::find(id.name())
            .map_or_else(String::new, |entry| units.show(entry, si).to_string())
    };
    let known = findings.iter().filter(|finding| finding.margin.is_some());
    html! {
        div.head { span.who { "Checked by:" } span.who { "Date:" } span.who { "Ground:" } }
        h1 { "Walk round " (subject.name) }
        p {
            "Each limit, what gives first on top. The margin is what holds over what is asked: under 1 "
            "it gives. This is no licence: makers’ manuals, local rules and a look with your own eyes "
            "come first."
        }
        table.long.dense {
            thead { tr { th { "Margin" } th { "Limit" } th { "Stands" } th { "First thing to try" } } }
            tbody {
                @for finding in known {
                    tr {
                        td {
                            @if let Some(margin) = finding.margin {
                                b { (shown(finding.limit.margin, margin)) }
                            }
                            @if let Some((low, high)) = finding.range {
                                " (" (shown(finding.limit.margin, low)) " to "
                                (shown(finding.limit.margin, high)) ")"
                            }
                        }
                        td { (finding.limit.title) }
                        td { (verdict(&finding.verdict)) }
                        td { (finding.limit.first_move) }
                    }
                }
            }
        }
        @for finding in findings.iter().filter(|finding| matches!(finding.verdict, Verdict::Invalid(_))) {
            p.small { b { (finding.limit.title) ": " } (finding.sentence) }
        }
        @if let Some(words) = not_known(findings) { p.small { (words) } }
        (parts(subject, units))
    }
}

fn verdict(verdict: &Verdict) -> &'static str {
    match verdict {
        Verdict::Gives => "gives",
        Verdict::Doubtful => "in doubt",
        Verdict::Holds => "holds",
        Verdict::NotKnown(_) => "not known yet",
        Verdict::Invalid(_) => "no answer",
        Verdict::DoesNotApply => "does not apply",
    }
}

fn numbers(subject: &Subject, units: &Units) -> Markup {
    html! {
        h2 { "What it is" }
        div.columns {
            @for topic in Topic::ALL {
                @let stated: Vec<(&str, String)> = stated(subject, units, topic);
                @if !stated.is_empty() { b { (topic.title()) } br; }
                @for (label, number) in stated { (label) ": " (number) br; }
            }
        }
    }
}

/// The parts by mass.
fn parts(subject: &Subject, units: &Units) -> Markup {
    let ledger = Ledger::of(&subject.sheet, &subject.tally);
    let mass = catalogue::find(MASS.any().name());
    html! {
        @if !subject.sheet.parts().is_empty() {
            h3 { "Parts" }
            table.long.dense {
                thead { tr { th { "Part" } th { "Mass" } th { "Share" } } }
                tbody {
                    @for place in ledger.by_mass() {
                        @if let (Some(row), Some(part)) = (ledger.rows.get(place), subject.sheet.parts().get(place)) {
                            tr {
                                td { (part.name) }
                                td { @if let (Some(si), Some(entry)) = (row.mass, mass) { (units.show(entry, si).to_string()) } }
                                td { @if let Some(share) = row.share { (format!("{:.0} %", share * 100.0)) } }
                            }
                        }
                    }
                }
            }
        }
    }
}

/// The numbers of a topic that were stated, as the build file has them.
fn stated(subject: &Subject, units: &Units, topic: Topic) -> Vec<(&'static str, String)> {
    let values = &subject.outcome.values;
    let number = |entry: &'static crate::quantity::Entry| {
        let si = values.si(entry.id)?;
        let text = subject.sheet.number(entry.id).map(str::to_owned);
        Some((entry.label, text.unwrap_or_else(|| units.show(entry, si).to_string())))
    };
    catalogue::all()
        .iter()
        .filter(|entry| entry.topic == topic)
        .filter(|entry| values.origin(entry.id) == Some(Origin::Given))
        .filter_map(number)
        .collect()
}
