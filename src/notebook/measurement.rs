//! A measurement as the notebook keeps it: numbers as text with their units, so that a person can
//! read them.

use serde::{Deserialize, Serialize};

use super::{Moment, Summary};
use crate::quantity::{self, Entry, catalogue};

/// A bench test done once.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Measurement {
    /// What was measured, in words.
    pub what: String,
    /// Which quantity, by its id.
    pub quantity: String,
    /// The readings, each with its unit: `418 mm`.
    pub readings: Vec<String>,
    /// What was predicted before the first reading, if the build gave it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub predicted: Option<String>,
    /// When.
    pub when: Moment,
    /// Keys that are not known.
    #[serde(flatten)]
    pub rest: toml::Table,
}

/// A measurement in numbers, SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reckoned {
    /// The quantity.
    pub entry: &'static Entry,
    /// What the readings come to.
    pub summary: Summary,
    /// What was predicted.
    pub predicted: Option<f64>,
}

impl Measurement {
    /// The numbers; nothing if the quantity is not known or a reading is no number of it.
    pub fn reckoned(&self) -> Option<Reckoned> {
        let entry = catalogue::find(&self.quantity)?;
        let si = |text: &String| quantity::parse(text, entry).ok().map(|amount| amount.si);
        let readings: Option<Vec<f64>> = self.readings.iter().map(si).collect();
        Some(Reckoned {
            entry,
            summary: Summary::of(&readings?)?,
            predicted: self.predicted.as_ref().and_then(si),
        })
    }
}
