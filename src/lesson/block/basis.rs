//! What numbers of an author follow from, for proofreading.
//!
//! ```toml
//! on = "bullock"             # the example build they are true of, and/or
//! [given]                    # the numbers they follow from, which overrule the build's
//! mass = "10 kg"
//! ```

use crate::lesson::claim::Basis;
use crate::lesson::fields::Fields;
use crate::lesson::known::{self, Wanted};
use crate::lesson::place::Report;
use crate::sheet::demo;

/// The fields of it.
pub(super) const FIELDS: [&str; 2] = ["on", "given"];

/// The example build that numbers are true of, and the numbers they follow from.
pub(super) fn read(fields: &Fields, report: &mut Report) -> Basis {
    let on = fields.text("on", report).and_then(|text| {
        let table = demo::ALL.map(|demo| (demo.id, demo.id));
        known::one_of("example build", &text, &table, report)
    });
    let mut given = Vec::new();
    if let Some(table) = fields.table("the given numbers", "given", report) {
        for name in table.names() {
            let at = table.place_of_name(name);
            let Some(entry) = known::named(name, Wanted::Any, at, report) else { continue };
            let number = table.text(name, report);
            let number = number.and_then(|text| known::sure_amount(&text, entry, report));
            given.extend(number.map(|number| (entry.id, number)));
        }
    }
    Basis { on, parts: None, given }
}
