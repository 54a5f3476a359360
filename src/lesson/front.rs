//! The front matter: what a lesson says about itself between two lines `+++`.

use super::document::{Lesson, MentionKind};
use super::fields::{self, Fields};
use super::known::{self, Wanted};
use super::place::{Fault, Origin, Report};
use super::prose::Grades;

const FENCE: &str = "+++";

/// The fields of a front matter.
pub(super) const FIELDS: &[&str] =
    &["id", "title", "order", "minutes", "needs", "goals", "uses", "grade", "caution-grade"];

/// Reads the front matter into `lesson`; returns where the Markdown starts, and how hard the text
/// may be.
pub(super) fn read(source: &str, lesson: &mut Lesson, report: &mut Report) -> (usize, Grades) {
    let mut grades = Grades::default();
    let start = read_fields(source, lesson, &mut grades, report);
    (start, grades)
}

fn read_fields(
    source: &str,
    lesson: &mut Lesson,
    grades: &mut Grades,
    report: &mut Report,
) -> usize {
    let start = if source.starts_with('\u{feff}') { '\u{feff}'.len_utf8() } else { 0 };
    let text = &source[start..];
    let mut lines = text.split_inclusive('\n');
    let Some(first) = lines.next().filter(|line| line.trim_end() == FENCE) else {
        report.add(
            start,
            Fault::new(
                "the lesson has no front matter",
                "a first line +++, then lines like: id = \"my-lesson\", then a line +++",
            ),
        );
        return start;
    };
    let mut end = first.len();
    for line in lines {
        if line.trim_end() == FENCE {
            let origin = Origin::at(start + first.len());
            let toml = &text[first.len()..end];
            fields::read("the front matter", (toml, &origin), start, report, |fields, report| {
                fill(fields, lesson, report);
                fill_grades(fields, grades, report);
            });
            return start + end + line.len();
        }
        end += line.len();
    }
    report.add(
        start,
        Fault::new("the front matter has no end", "a second line +++ after its fields"),
    );
    start
}

fn fill(fields: &Fields, lesson: &mut Lesson, report: &mut Report) {
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
        lesson.id = id.value;
    }
    if let Some(title) = fields.required("title", report) {
        lesson.title = title.value;
    }
    if !fields.has("order") {
        fields.missing("order", "its place among the lessons, a whole number", report);
    }
    lesson.order = fields.integer("order", report).unwrap_or(i64::MAX);
    if let Some(minutes) = fields.integer("minutes", report) {
        lesson.minutes = u32::try_from(minutes).ok().filter(|minutes| (1..=600).contains(minutes));
        if lesson.minutes.is_none() {
            let fault = Fault::new(format!("a lesson of {minutes} minutes"), "1 to 600 minutes");
            report.add(fields.place("minutes"), fault);
        }
    }
    for need in fields.texts("needs", report) {
        report.mention(need.at, MentionKind::Need, &need.value);
        lesson.needs.push(need.value);
    }
    lesson.goals = fields.texts("goals", report).into_iter().map(|goal| goal.value).collect();
    lesson.uses = known::ids(fields, "uses", Wanted::Any, report);
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
