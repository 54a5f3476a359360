//! Five questions that start a build. Each may be left out; the answers go in as edits.

pub mod view;

use crate::app::desk::entered;
use crate::quantity::catalogue::{
    self, drive::ENGINE_POWER, drive::MOTOR_COUNT, machine::MASS, pressure::GROUND_PRESSURE,
    running_gear::*,
};
use crate::quantity::{AnyId, Units};
use crate::sheet::{Edit, Sheet, presets};
use crate::study::Outcome;

/// What carries the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Carries {
    /// Two tracks.
    Tracks,
    /// Four wheels.
    Wheels,
    /// One track and two skis.
    TrackAndSkis,
    /// Two wheels and two skis.
    WheelsAndSkis,
}

impl Carries {
    /// All of them.
    pub const ALL: [Self; 4] =
        [Self::Tracks, Self::Wheels, Self::TrackAndSkis, Self::WheelsAndSkis];

    /// Its words.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Tracks => "Two tracks",
            Self::Wheels => "Four wheels",
            Self::TrackAndSkis => "One track, two skis",
            Self::WheelsAndSkis => "Two wheels, two skis",
        }
    }

    const fn rolls(self) -> bool {
        matches!(self, Self::Wheels | Self::WheelsAndSkis)
    }

    const fn has_skis(self) -> bool {
        matches!(self, Self::TrackAndSkis | Self::WheelsAndSkis)
    }

    /// How many there are of each, as text.
    fn counts(self) -> Vec<(AnyId, &'static str)> {
        match self {
            Self::Tracks => vec![(TRACK_COUNT.any(), "2")],
            Self::Wheels => vec![(WHEEL_COUNT.any(), "4")],
            Self::TrackAndSkis => vec![(TRACK_COUNT.any(), "1"), (SKI_COUNT.any(), "2")],
            Self::WheelsAndSkis => vec![(WHEEL_COUNT.any(), "2"), (SKI_COUNT.any(), "2")],
        }
    }
}

/// What drives the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Drives {
    /// Electric motors.
    Motor,
    /// An engine.
    Engine,
    /// Nothing yet.
    Nothing,
}

impl Drives {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Motor, Self::Engine, Self::Nothing];

    /// Its words.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Motor => "A motor",
            Self::Engine => "An engine",
            Self::Nothing => "Nothing yet",
        }
    }
}

/// Grounds to choose from, as the reader calls them: the table and its row.
pub const GROUNDS: &[(&str, &str, &str)] = &[
    ("Tidal mud (the demo’s)", "ground", "mudflat"),
    ("Building-site mud", "ground", "soft-construction-mud"),
    ("Marsh plants", "ground", "fragile-marsh"),
    ("Dry sand", "terrain", "dry-sand-land-locomotion-lab"),
    ("Sandy loam", "terrain", "sandy-loam-land-locomotion-lab"),
    ("Loam", "terrain", "grenville-loam-wong"),
    ("Wet clay", "terrain", "clayey-soil-wet-thailand"),
    ("Snow", "terrain", "snow-sweden"),
];

/// A number that is typed, and how large it is in an example.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Asked {
    /// The name of its field.
    pub field: &'static str,
    /// Which number.
    pub id: AnyId,
    /// What it is called here.
    pub words: &'static str,
    /// An example, SI units.
    pub example: f64,
}

const HEAVY: Asked =
    Asked { field: "five:mass", id: MASS.any(), words: "All of it, ready to go", example: 6.4 };
const LONG: Asked = Asked {
    field: "five:length",
    id: CONTACT_LENGTH.any(),
    words: "Flat of one track, front to back",
    example: 0.42,
};
const WIDE: Asked = Asked {
    field: "five:width",
    id: TRACK_WIDTH.any(),
    words: "Width of one track",
    example: 0.09,
};
const PATCH: Asked = Asked {
    field: "five:length",
    id: WHEEL_PATCH_LENGTH.any(),
    words: "Flat of one loaded wheel, front to back",
    example: 0.12,
};
const TREAD: Asked = Asked {
    field: "five:width",
    id: WHEEL_WIDTH.any(),
    words: "Width of one wheel",
    example: 0.06,
};
const SKI_LONG: Asked = Asked {
    field: "five:ski-length",
    id: SKI_LENGTH.any(),
    words: "Flat of one ski, front to back",
    example: 0.6,
};
const SKI_WIDE: Asked =
    Asked { field: "five:ski-width", id: SKI_WIDTH.any(), words: "Width of one ski", example: 0.1 };
const MOTORS: Asked =
    Asked { field: "five:drive", id: MOTOR_COUNT.any(), words: "How many motors", example: 2.0 };
const POWER: Asked = Asked {
    field: "five:drive",
    id: ENGINE_POWER.any(),
    words: "Power of the engine at its shaft",
    example: 3000.0,
};

/// The answers so far.
#[derive(Debug, Clone, Default)]
pub struct Five {
    carries: Option<Carries>,
    drives: Option<Drives>,
    /// The place of a ground in [`GROUNDS`].
    ground: Option<usize>,
    /// What is typed, by the name of the field.
    typed: std::collections::BTreeMap<&'static str, String>,
    /// Why a field holds no number.
    faults: std::collections::BTreeMap<&'static str, String>,
    /// The mean ground pressure that follows, Pa.
    pressure: Option<f64>,
}

/// What is done to them.
#[derive(Debug, Clone)]
pub enum Act {
    /// This carries it.
    Carries(Carries),
    /// This drives it.
    Drives(Drives),
    /// It stands on this, by its place in [`GROUNDS`].
    Ground(usize),
    /// This is typed in a field.
    Typed(&'static str, String),
}

impl Five {
    /// Takes an answer. The same choice again takes it back.
    pub fn perform(&mut self, act: Act, units: &Units) {
        match act {
            Act::Carries(carries) => turn(&mut self.carries, carries),
            Act::Drives(drives) => turn(&mut self.drives, drives),
            Act::Ground(place) => turn(&mut self.ground, place),
            Act::Typed(field, text) => {
                self.typed.insert(field, text);
            }
        }
        let edits = self.answers(units);
        self.pressure = pressure(&edits);
    }

    /// The numbers asked for about what carries it.
    fn sizes(&self) -> Vec<Asked> {
        let carries = self.carries.unwrap_or(Carries::Tracks);
        let mut sizes = if carries.rolls() { vec![PATCH, TREAD] } else { vec![LONG, WIDE] };
        if carries.has_skis() {
            sizes.extend([SKI_LONG, SKI_WIDE]);
        }
        sizes
    }

    /// The number asked for about what drives it.
    fn power(&self) -> Option<Asked> {
        match self.drives? {
            Drives::Motor => Some(MOTORS),
            Drives::Engine => Some(POWER),
            Drives::Nothing => None,
        }
    }

    /// The answers that are whole, as edits; what is wrong with the others stands at their fields.
    fn answers(&mut self, units: &Units) -> Vec<Edit> {
        let mut edits = Vec::new();
        self.faults.clear();
        let asked: Vec<Asked> =
            [HEAVY].into_iter().chain(self.sizes()).chain(self.power()).collect();
        // Sizes alone are of tracks: that is what their labels say while nothing else is chosen.
        let sized = self.sizes().iter().any(|size| !self.text(size.field).trim().is_empty());
        let carries = self.carries.or(sized.then_some(Carries::Tracks));
        for (id, count) in carries.map(Carries::counts).unwrap_or_default() {
            edits.push(Edit::Set { id, text: count.to_owned() });
        }
        for Asked { field, id, example, .. } in asked {
            let Some(entry) = catalogue::find(id.name()) else { continue };
            let text = self.text(field).to_owned();
            if text.trim().is_empty() {
                continue;
            }
            match entered(entry, &text, units.unit_for(entry, example)) {
                Ok(edit) => edits.push(edit),
                Err(words) => {
                    self.faults.insert(field, words);
                }
            }
        }
        let ground = self.ground.and_then(|place| GROUNDS.get(place));
        edits
            .extend(ground.and_then(|(_, table, row)| presets::find(table, row)).map(|r| r.edit()));
        edits
    }

    /// The edits that start the build, unless something typed is no number.
    pub fn begin(&mut self, units: &Units) -> Option<Vec<Edit>> {
        let edits = self.answers(units);
        self.faults.is_empty().then_some(edits)
    }

    /// The field of the first answer that is wrong.
    pub fn first_fault(&self) -> Option<&'static str> {
        let order = [HEAVY].into_iter().chain(self.sizes()).chain(self.power());
        order.map(|asked| asked.field).find(|field| self.faults.contains_key(field))
    }

    fn text(&self, field: &str) -> &str {
        self.typed.get(field).map_or("", String::as_str)
    }
}

fn turn<T: PartialEq>(chosen: &mut Option<T>, now: T) {
    *chosen = if chosen.as_ref() == Some(&now) { None } else { Some(now) };
}

/// The mean ground pressure of a build of these answers.
fn pressure(edits: &[Edit]) -> Option<f64> {
    let mut sheet = Sheet::blank();
    for edit in edits {
        sheet.apply(edit).ok()?;
    }
    let tally = sheet.tally();
    Outcome::of(tally.givens, &tally.spreads, 0).values.si(GROUND_PRESSURE)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_ground_to_choose_is_there() {
        for (words, table, row) in GROUNDS {
            assert!(presets::find(table, row).is_some(), "{words}");
        }
    }
}
