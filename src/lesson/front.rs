//! The front matter: what a lesson says about itself between two lines `+++`.

use std::ops::Range;

use super::document::{Front, MentionKind};
use super::fields::{self, Fields};
use super::known::{self, Wanted};
use super::place::{Fault, Origin, Report};
use super::prose::Grades;

const FENCE: &str = "+++";

/// The fields of a front matter.
pub(super) const FIELDS: &[&str] =
    &["id", "title", "order", "minutes", "needs", "goals", "uses", "grade", "caution-grade"];

/// What a lesson says about itself, without the rest of its text. What is wrong with it is told when
/// the whole is read.
pub(super) fn alone(source: &str, file: &str) -> Front {
    let end = bounds(source).map_or(0, |(_, end)| end);
    let head = source.get(..end).unwrap_or_default();
    let mut front = Front::default();
    read(head, &mut front, &mut Report::new(file, head));
    front
}

/// Reads the front matter; returns where the Markdown starts, and how hard the text may be.
pub(super) fn read(source: &str, front: &mut Front, report: &mut Report) -> (usize, Grades) {
    let mut grades = Grades::default();
    let start = match bounds(source) {
        Ok((inside, end)) => {
            let toml = source.get(inside.clone()).unwrap_or_default();
            let origin = Origin::at(inside.start);
            fields::read("the front matter", (toml, &origin), 0, report, |fields, report| {
                fill(fields, front, report);
                fill_grades(fields, &mut grades, report);
            });
            end
        }
        Err((start, fault)) => {
            report.add(start, fault);
            start
        }
    };
    (start, grades)
}

/// Where the fields stand, and where the Markdown starts; or where that starts without them, and why.
fn bounds(source: &str) -> Result<(Range<usize>, usize), (usize, Fault)> {
    let start = if source.starts_with('\u{feff}') { '\u{feff}'.len_utf8() } else { 0 };
    let mut lines = source[start..].split_inclusive('\n');
    let Some(first) = lines.next().filter(|line| line.trim_end() == FENCE) else {
        let expected = "a first line +++, then lines like: id = \"my-lesson\", then a line +++";
        return Err((start, Fault::new("the lesson has no front matter", expected)));
    };
    let inside = start + first.len();
    let mut end = inside;
    for line in lines {
        if line.trim_end() == FENCE {
            return Ok((inside..end, end + line.len()));
        }
        end += line.len();
    }
    let fault = Fault::new("the front matter has no end", "a second line +++ after its fields");
    Err((start, fault))
}

fn fill(fields: &Fields, front: &mut Front, report: &mut Report) {
    fields.allow(FIELDS, report);
    if let Some(id) = fields.required("id", report) {
        report.mention(id.at, MentionKind::Id, &id.value);
        if !is_plain_name(&id.value) {
            let fault = Fault::new(
                format!("\"{}\" cannot be the name of a folder", id.value),
                "small letters, digits and hyphens",
            );
            report.add(id.at, fault);
        }
        front.id = id.value;
    }
    if let Some(title) = fields.required("title", report) {
        front.title = title.value;
    }
    if !fields.has("order") {
        fields.missing("order", "its place among the lessons, a whole number", report);
    }
    front.order = fields.integer("order", report).unwrap_or(i64::MAX);
    if let Some(minutes) = fields.integer("minutes", report) {
        front.minutes = u32::try_from(minutes).ok().filter(|minutes| (1..=600).contains(minutes));
        if front.minutes.is_none() {
            let fault = Fault::new(format!("a lesson of {minutes} minutes"), "1 to 600 minutes");
            report.add(fields.place("minutes"), fault);
        }
    }
    for need in fields.texts("needs", report) {
        report.mention(need.at, MentionKind::Need, &need.value);
        front.needs.push(need.value);
    }
    front.goals = fields.texts("goals", report).into_iter().map(|goal| goal.value).collect();
    front.uses = known::ids(fields, "uses", Wanted::Any, report);
}

fn fill_grades(fields: &Fields, grades: &mut Grades, report: &mut Report) {
    for (name, grade) in [("grade", &mut grades.text), ("caution-grade", &mut grades.cautions)] {
        match fields.number(name, report) {
            Some(number) if (1.0..=18.0).contains(&number) => *grade = number,
            Some(number) => {
                let fault = Fault::new(format!("grade {number}"), "a grade of 1 to 18");
                report.add(fields.place(name), fault);
            }
            None => {}
        }
    }
}

/// Whether a name can be a lesson's folder on any system and leads nowhere else.
pub(super) fn is_plain_name(name: &str) -> bool {
    !name.is_empty()
        && name.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
}
