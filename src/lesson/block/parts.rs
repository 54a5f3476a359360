//! The parts list of an example build, changed: what numbers of an author follow from.
//!
//! ```toml
//! only = ["chassis", "battery"]     # the list without the others, or
//! without = ["rake"]                # without these
//! [[parts]]
//! name = "battery"                  # a part of the build
//! mass = "412 g"                    # its mass, its place or both, as in a build file
//! at = ["60 mm", "0 mm", "55 mm"]
//! [[parts]]
//! name = "bag of sand"
//! mass = "3 kg"
//! at = ["0 mm", "0 mm", "90 mm"]
//! new = true                        # one more part
//! ```

use crate::lesson::fields::{Fields, Text};
use crate::lesson::place::{Fault, Report};
use crate::quantity::catalogue::nearest_of;
use crate::sheet::{Axis, Edit, FROM_PARTS, Part, PartField, Place, Sheet, demo};

/// The fields of it.
pub(super) const FIELDS: [&str; 3] = ["only", "without", "parts"];

/// The fields of a part.
pub(super) const PART: &[&str] = &["name", "mass", "at", "new"];

/// The build, or nothing but parts, with the list changed; nothing if it is not. Whatever the build
/// states that a parts list says follows from the list then.
pub(super) fn read(
    on: Option<&'static str>,
    fields: &Fields,
    report: &mut Report,
) -> Option<Sheet> {
    if !FIELDS.iter().any(|name| fields.has(name)) {
        return None;
    }
    let build = on.and_then(demo::find).and_then(|demo| Sheet::read(demo.text).ok());
    let mut sheet = build.unwrap_or_else(Sheet::blank);
    for id in FROM_PARTS {
        apply(&mut sheet, &Edit::Clear { id }, fields.at(), report);
    }
    let listed = sheet.parts().len();
    let [only, without] = [FIELDS[0], FIELDS[1]].map(|name| {
        let texts = fields.texts(name, report);
        texts.iter().filter_map(|text| index(text, &sheet, report)).collect::<Vec<_>>()
    });
    for part in fields.tables("a part", FIELDS[2], report) {
        change(&mut sheet, &part, report);
    }
    let left_out =
        |part: &usize| without.contains(part) || (fields.has(FIELDS[0]) && !only.contains(part));
    for index in (0..listed).rev().filter(left_out) {
        apply(&mut sheet, &Edit::RemovePart { index }, fields.at(), report);
    }
    Some(sheet)
}

/// Changes a part, or adds one.
fn change(sheet: &mut Sheet, fields: &Fields, report: &mut Report) {
    fields.allow(PART, report);
    let Some(name) = fields.required("name", report) else { return };
    let mass = fields.text("mass", report).map(|mass| mass.value);
    let at = place(fields, report);
    let index = if fields.truth("new", report) == Some(true) {
        if sheet.parts().iter().any(|part| part.name == name.value) {
            let message = format!("there is a part \"{}\" already", name.value);
            report.add(name.at, Fault::new(message, "another name, or no new = true"));
            return;
        }
        let Some(mass) = mass else {
            return fields.missing("mass", "a mass with its unit", report);
        };
        apply(sheet, &Edit::AddPart(Part { name: name.value, mass, at }), name.at, report);
        sheet.parts().len().saturating_sub(1)
    } else {
        let Some(index) = index(&name, sheet, report) else { return };
        if mass.is_none() && !fields.has("at") {
            return fields.missing("at", "another place or another mass of the part", report);
        }
        let lengths =
            at.into_iter().flat_map(|at| Axis::ALL.map(PartField::At).into_iter().zip(at));
        for (field, text) in mass.map(|mass| (PartField::Mass, mass)).into_iter().chain(lengths) {
            apply(sheet, &Edit::SetPart { index, field, text }, name.at, report);
        }
        index
    };
    for problem in sheet.tally().problems {
        let key = match problem.place {
            Place::Part(part, PartField::Mass) if part == index => "mass",
            Place::Part(part, PartField::At(_)) if part == index => "at",
            _ => continue,
        };
        let fault = Fault::new(problem.message.trim_end_matches('.'), "a number with its unit");
        report.add(fields.place(key), fault);
    }
}

/// The three lengths of a place.
fn place(fields: &Fields, report: &mut Report) -> Option<[String; 3]> {
    let texts: Vec<_> = fields.texts("at", report).into_iter().map(|text| text.value).collect();
    let found = texts.len();
    let place = texts.try_into().ok();
    if place.is_none() && fields.has("at") {
        let expected = "three: [\"forward\", \"to the left\", \"up\"]";
        report.add(fields.place("at"), Fault::new(format!("a place of {found} lengths"), expected));
    }
    place
}

/// Which part of the build has that name.
fn index(name: &Text, sheet: &Sheet, report: &mut Report) -> Option<usize> {
    let names = || sheet.parts().iter().map(|part| part.name.as_str());
    let found = names().position(|part| part == name.value);
    if found.is_none() {
        let fault = Fault::new(
            format!("unknown part \"{}\"", name.value),
            "a part of the build, or new = true for one more",
        );
        report.add(name.at, fault.nearest(nearest_of(&name.value, names())));
    }
    found
}

fn apply(sheet: &mut Sheet, edit: &Edit, at: usize, report: &mut Report) {
    if let Err(refused) = sheet.apply(edit) {
        let message = format!("the parts list cannot be changed so: {refused}");
        report.add(at, Fault::new(message.trim_end_matches('.'), "a change that the build takes"));
    }
}
