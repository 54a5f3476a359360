//! Tables of presets: a ground, the shape of a pulse. A row fills in a few numbers at once.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use super::edit::Edit;
use crate::quantity::{AnyId, catalogue};

/// Each table's name and text.
const TEXTS: &[(&str, &str)] = &[
    ("ground", include_str!("../../assets/presets/ground.toml")),
    ("terrain", include_str!("../../assets/presets/terrain.toml")),
    ("shear", include_str!("../../assets/presets/shear.toml")),
    ("snow", include_str!("../../assets/presets/snow.toml")),
    ("grip", include_str!("../../assets/presets/grip.toml")),
    ("rolling", include_str!("../../assets/presets/rolling.toml")),
    ("drag", include_str!("../../assets/presets/drag.toml")),
    ("pulse-shape", include_str!("../../assets/presets/pulse-shape.toml")),
    ("gear-stage", include_str!("../../assets/presets/gear-stage.toml")),
    ("fuel", include_str!("../../assets/presets/fuel.toml")),
    ("cell", include_str!("../../assets/presets/cell.toml")),
    ("wire", include_str!("../../assets/presets/wire.toml")),
    ("wire-cover", include_str!("../../assets/presets/wire-cover.toml")),
    ("motor-limit", include_str!("../../assets/presets/motor-limit.toml")),
    ("surface", include_str!("../../assets/presets/surface.toml")),
    ("fin-metal", include_str!("../../assets/presets/fin-metal.toml")),
    ("box-wall", include_str!("../../assets/presets/box-wall.toml")),
    ("sun-skin", include_str!("../../assets/presets/sun-skin.toml")),
    ("touch-limit", include_str!("../../assets/presets/touch-limit.toml")),
    ("brake-metal", include_str!("../../assets/presets/brake-metal.toml")),
    ("material", include_str!("../../assets/presets/material.toml")),
    ("beam-hold", include_str!("../../assets/presets/beam-hold.toml")),
    ("thread", include_str!("../../assets/presets/thread.toml")),
    ("bolt-class", include_str!("../../assets/presets/bolt-class.toml")),
    ("thread-state", include_str!("../../assets/presets/thread-state.toml")),
];

static TABLES: LazyLock<Vec<Table>> =
    LazyLock::new(|| TEXTS.iter().filter_map(|(id, text)| Table::read(id, text).ok()).collect());

/// A table of presets.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    /// Its name: `ground`.
    pub id: &'static str,
    /// Its heading on screen.
    pub title: String,
    /// What to know before picking from it.
    pub note: String,
    /// Its rows, in the order to show.
    pub rows: Vec<Row>,
}

/// One row of a table of presets.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// Its name: `mudflat`.
    pub id: String,
    /// What it is called on screen.
    pub label: String,
    /// Where its numbers come from.
    pub source: String,
    /// The numbers it fills in, as text with units.
    pub values: Vec<(AnyId, String)>,
}

impl Row {
    /// The change that fills these numbers in.
    pub fn edit(&self) -> Edit {
        Edit::Preset { values: self.values.clone() }
    }
}

/// Every table of presets.
pub fn tables() -> &'static [Table] {
    &TABLES
}

/// A row of a table, by their names.
pub fn find(table: &str, row: &str) -> Option<&'static Row> {
    let table = TABLES.iter().find(|found| found.id == table)?;
    table.rows.iter().find(|found| found.id == row)
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct TableText {
    title: String,
    #[serde(default)]
    note: String,
    row: Vec<RowText>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RowText {
    id: String,
    label: String,
    source: String,
    values: BTreeMap<String, String>,
}

impl Table {
    fn read(id: &'static str, text: &str) -> Result<Self, String> {
        let TableText { title, note, row } =
            toml::from_str(text).map_err(|error| format!("{id}: {error}"))?;
        let rows = row.into_iter().map(Row::read).collect::<Result<_, _>>();
        Ok(Self { id, title, note, rows: rows.map_err(|why| format!("{id}: {why}"))? })
    }
}

impl Row {
    fn read(RowText { id, label, source, values }: RowText) -> Result<Self, String> {
        let values = values.into_iter().map(|(name, text)| match catalogue::find(&name) {
            Some(entry) => Ok((entry.id, text)),
            None => Err(format!("row {id}: no quantity {name}")),
        });
        Ok(Self { values: values.collect::<Result<_, _>>()?, id, label, source })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_table_that_ships_reads() {
        for &(id, text) in TEXTS {
            assert_eq!(Table::read(id, text).map(|table| table.id), Ok(id));
        }
    }
}
