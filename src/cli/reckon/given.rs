//! The numbers named on the command line: `mass="6.4 kg"`, `pulse-shape=triangle`.

use super::super::{Stop, did_you_mean};
use crate::quantity::{Amount, AnyId, Entry, catalogue as quantities, parse};
use crate::sheet::presets::{self, Table};

/// A number named.
pub(super) struct Named {
    pub(super) id: AnyId,
    pub(super) amount: Amount,
}

/// Reads `name=value` arguments; a quantity named by itself goes before one out of a table.
pub(super) fn read(arguments: &[String]) -> Result<Vec<Named>, Stop> {
    let mut from_tables: Vec<Named> = Vec::new();
    let mut named: Vec<Named> = Vec::new();
    for argument in arguments {
        let (name, value) = argument.split_once('=').ok_or_else(|| {
            Stop::Usage(format!(
                "\"{argument}\" names no number: write it as name=value, as in mass=\"6.4 kg\"."
            ))
        })?;
        let (name, value) = (name.trim(), value.trim());
        if let Some(entry) = quantities::find(name) {
            if named.iter().any(|one| one.id == entry.id) {
                return Err(Stop::Usage(format!("{name} is given twice: leave one out.")));
            }
            named.push(amount(entry, value)?);
        } else if let Some(table) = presets::tables().iter().find(|table| table.id == name) {
            from_tables.extend(row(table, value)?);
        } else {
            return Err(unknown(name));
        }
    }
    from_tables.retain(|one| named.iter().all(|other| other.id != one.id));
    from_tables.extend(named);
    Ok(from_tables)
}

fn amount(entry: &Entry, value: &str) -> Result<Named, Stop> {
    let amount = parse(value, entry)
        .map_err(|error| Stop::Usage(format!("{}=\"{value}\": {error}", entry.id)))?;
    Ok(Named { id: entry.id, amount })
}

/// The numbers of a row of a table of presets.
fn row(table: &Table, name: &str) -> Result<Vec<Named>, Stop> {
    let rows = || table.rows.iter().map(|row| row.id.as_str());
    let row = presets::find(table.id, name).ok_or_else(|| {
        let near = did_you_mean(name, rows());
        let rows = rows().collect::<Vec<_>>().join(", ");
        Stop::Usage(format!(
            "The table {} has no row \"{name}\".{near} Its rows: {rows}.",
            table.id
        ))
    })?;
    let entries = row
        .values
        .iter()
        .filter_map(|(id, text)| quantities::find(id.name()).map(|entry| amount(entry, text)));
    entries.collect()
}

fn unknown(name: &str) -> Stop {
    let quantities = quantities::all().iter().map(|entry| entry.id.name());
    let near = did_you_mean(name, quantities.chain(presets::tables().iter().map(|table| table.id)));
    Stop::Usage(format!(
        "There is no quantity or table called \"{name}\".{near} 'heftwise list quantities' names them all."
    ))
}
