//! Opening the files named on the command line.

use std::path::Path;

use super::Stop;
use crate::sheet::{Sheet, Tally};

/// The build in a file.
pub(super) fn build(path: &Path) -> Result<Sheet, Stop> {
    let _ = path;
    Err(Stop::Failed("x".to_owned()))
}

/// What is amiss in a build, one line each.
pub(super) fn problems(path: &Path, sheet: &Sheet, tally: &Tally) -> Vec<String> {
    let file = path.display();
    let remarks = tally.problems.iter().chain(&tally.cautions);
    let reports = sheet.reports().iter().map(|report| format!("{file}: {report}"));
    reports.chain(remarks.map(|remark| remark.message.clone())).collect()
}
