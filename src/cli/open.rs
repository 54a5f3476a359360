//! Opening the build named on the command line.

use std::path::Path;

use super::Stop;
use crate::sheet::{Place, Remark, Sheet, Tally, demo, file};

/// The build in a file; without such a file, the demonstration build of that name.
pub(super) fn build(path: &Path) -> Result<Sheet, Stop> {
    let demo = path.to_str().and_then(demo::find).filter(|_| !path.exists());
    let sheet = match demo {
        Some(demo) => Sheet::read(demo.text).map_err(|error| error.to_string()),
        None => file::load(path).map(|loaded| loaded.sheet).map_err(|error| error.to_string()),
    };
    sheet.map_err(Stop::Failed)
}

/// What is amiss in a build, one line each.
pub(super) fn problems(path: &Path, sheet: &Sheet, tally: &Tally) -> Vec<String> {
    let reports = sheet.reports().iter().map(|report| format!("{}, {report}", path.display()));
    let remarks = tally.problems.iter().chain(&tally.cautions);
    reports.chain(remarks.map(|remark| in_words(sheet, remark))).collect()
}

fn in_words(sheet: &Sheet, remark: &Remark) -> String {
    let message = &remark.message;
    match remark.place {
        Place::Number(id) => format!("{id}: {message}"),
        Place::Part(index, _) => {
            let name = sheet.parts().get(index).map_or("", |part| part.name.as_str());
            format!("part {} ({name}): {message}", index + 1)
        }
        Place::Trial => format!("trial mass: {message}"),
    }
}
