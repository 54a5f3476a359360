//! The notebook as Markdown, to print, mail or hand in.

use std::fmt::Write;

use super::{Answer, Measurement, Notebook, Record, ratio_figures};
use crate::quantity::Units;

/// The notebook as Markdown. `titles` gives the lessons that are known, in their order, with their
/// titles; what was written in lessons that are not known any more follows under their ids.
pub fn markdown(notebook: &Notebook, titles: &[(&str, &str)], units: &Units) -> String {
    let known = titles.iter().filter_map(|(id, title)| Some((*title, notebook.lesson(id)?)));
    let gone = notebook.lessons().filter(|(id, _)| titles.iter().all(|(known, _)| known != id));
    let mut text = "# Notebook\n".to_owned();
    for (title, record) in known.chain(gone) {
        lesson(&mut text, title, record, units);
    }
    text
}

fn lesson(text: &mut String, title: &str, record: &Record, units: &Units) {
    let mut line = |words: &str| {
        text.push_str(words);
        text.push('\n');
    };
    line(&format!("\n## {}\n", escaped(title)));
    if let Some(opened) = &record.opened {
        let finished = record.finished.as_ref().map_or_else(
            || "not finished".to_owned(),
            |finished| format!("finished {}", finished.date()),
        );
        line(&format!("Opened {}, {finished}.", opened.date()));
    }
    if !record.note.trim().is_empty() {
        line(&format!("\n### Notes\n\n{}", record.note.trim_end()));
    }
    if !record.answers.is_empty() {
        line("\n### Answers\n");
        record.answers.iter().for_each(|answer| line(&one_answer(answer)));
    }
    if !record.measurements.is_empty() {
        line("\n### Measurements\n");
        line("| Date | What | Predicted | Readings | Mean | Range | Ratio |");
        line("|---|---|---|---|---|---|---|");
        record.measurements.iter().for_each(|one| line(&row(one, units)));
    }
}

fn one_answer(answer: &Answer) -> String {
    let mut text = format!("- {}: {}  \n", answer.when.date(), escaped(&answer.asked));
    let verdict = if answer.right { "right" } else { "not right" };
    let _ = write!(text, "  “{}” ({verdict})", escaped(&answer.said));
    if let Some(idea) = &answer.idea {
        let _ = write!(text, "; the idea: “{}”", escaped(idea));
    }
    text
}

fn row(measurement: &Measurement, units: &Units) -> String {
    let (mut mean, mut range, mut ratio) = (String::new(), String::new(), String::new());
    if let Some(reckoned) = measurement.reckoned() {
        let summary = reckoned.summary;
        mean = units.show(reckoned.entry, summary.mean).to_string();
        let ends = (summary.low, summary.mean, summary.high);
        range = units.show_range(reckoned.entry, ends);
        let found = reckoned.predicted.and_then(|predicted| summary.ratio(predicted));
        ratio = found.map_or_else(String::new, ratio_figures);
    }
    let cells = [
        measurement.when.date(),
        &measurement.what,
        measurement.predicted.as_deref().unwrap_or(""),
        &measurement.readings.join(", "),
        &mean,
        &range,
        &ratio,
    ];
    format!("| {} |", cells.map(escaped).join(" | "))
}

/// Words that Markdown leaves as they are, on one line.
fn escaped(words: &str) -> String {
    let mut text = String::new();
    for letter in words.chars() {
        match letter {
            '\\' | '`' | '*' | '_' | '[' | ']' | '<' | '>' | '|' | '#' | '$' | '~' => {
                text.push('\\');
                text.push(letter);
            }
            '\n' | '\r' => text.push(' '),
            _ => text.push(letter),
        }
    }
    text
}
