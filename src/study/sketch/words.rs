//! A sketch in words, for those who cannot see it and for those who want to be sure.

use super::{About, Sinking, Sketch, Underneath};
use crate::quantity::catalogue::machine::{BALANCE_OFFSET, CG_HEIGHT, SLOPE};
use crate::quantity::catalogue::pressure::GROUND_PRESSURE;
use crate::quantity::catalogue::traction::SINKAGE;
use crate::quantity::{AnyId, Units, catalogue};

/// A number of a quantity with its unit.
fn show(id: AnyId, si: f64, units: &Units) -> String {
    catalogue::find(id.name())
        .map_or_else(String::new, |entry| units.show(entry, si).short().to_string())
}

impl Underneath {
    /// The mean and the worst pressure with one unit, so that they compare at a glance.
    pub fn in_words(&self, units: &Units) -> [String; 2] {
        let worst = self.worst().0;
        alike(GROUND_PRESSURE.any(), [self.mean, worst], units)
    }
}

/// Some numbers of a quantity in the unit that suits the last of them.
fn alike<const N: usize>(id: AnyId, numbers: [f64; N], units: &Units) -> [String; N] {
    let Some((entry, last)) = catalogue::find(id.name()).zip(numbers.last()) else {
        return [(); N].map(|()| String::new());
    };
    let unit = units.unit_for(entry, *last).symbol;
    numbers.map(|si| {
        units.show_in(entry, si, unit).unwrap_or_else(|_| units.show(entry, si)).to_string()
    })
}

/// A pressure under a row, with its unit.
pub fn pressure_in_words(pascals: f64, units: &Units) -> String {
    let [words] = alike(GROUND_PRESSURE.any(), [pascals], units);
    words
}

impl Sinking {
    /// The mean sinkage, and the worst where an end goes in deeper, with one unit.
    pub fn in_words(&self, units: &Units) -> (String, Option<String>) {
        let (worst, _) = self.worst.unwrap_or((self.mean, 0.0));
        let [mean, worst] = alike(SINKAGE.any(), [self.mean, worst], units);
        (mean, self.worst.is_some().then_some(worst))
    }
}

impl Sketch {
    /// The sketch in a sentence or three.
    pub fn in_words(&self, units: &Units) -> String {
        let own = self.own_words(units);
        match &self.ghost {
            Some(ghost) => format!("{own} Laid over it: {}", ghost.own_words(units)),
            None => own,
        }
    }

    fn own_words(&self, units: &Units) -> String {
        let mut said = format!("{} {}", self.name, self.standing(units));
        if let Some(offset) = self.offset_in_words(units) {
            said += &format!("; its centre of gravity is {offset}");
            if let Some(height) = self.height_in_words(units) {
                said += &format!(" and {height}");
            }
        }
        said.push('.');
        if let Some(under) = &self.underneath {
            let [mean, worst_words] = under.in_words(units);
            let (worst, place) = under.worst();
            if worst > under.mean * 1.001 {
                let end = if place > 0.0 { "front" } else { "rear" };

                said += &format!(
                    " It presses with {mean} on average and {worst_words} at its {end} end."
                );
            } else {
                said += &format!(" It presses with {mean}, the same from end to end.");
            }
            if under.profile.len() > 2 {
                said += " The other end has lifted and carries nothing.";
            }
        } else if self.tips() {
            said += " Its load bears down past the end of the contact, so it tips over.";
        }
        said + &self.rows_in_words(units) + &self.sinking_in_words(units)
    }

    /// The pressure under wheels or skis.
    fn rows_in_words(&self, units: &Units) -> String {
        let words = |pascals| pressure_in_words(pascals, units);
        match self.rows()[..] {
            [] => String::new(),
            [(_, rear), (_, front)] if rear != front => {
                let (front, rear) = (words(front), words(rear));
                format!(" It presses with {front} under the front and {rear} under the rear.")
            }
            [(_, pascals), ..] => format!(" It presses with {} on average.", words(pascals)),
        }
    }

    fn sinking_in_words(&self, units: &Units) -> String {
        let Some(sinking) = &self.sinking else { return String::new() };
        match (sinking.in_words(units), sinking.worst) {
            ((mean, Some(worst)), Some((_, place))) => {
                let end = if place > 0.0 { "front" } else { "rear" };
                format!(" It sinks in {mean} on average and {worst} at its {end} end.")
            }
            ((mean, _), _) => format!(" It sinks in {mean}."),
        }
    }

    fn standing(&self, units: &Units) -> String {
        if self.slope.abs() < 1e-9 {
            return "stands level".to_owned();
        }
        let slope = show(SLOPE.any(), self.slope.abs(), units);
        let way = if self.slope > 0.0 { "uphill" } else { "downhill" };
        format!("stands nose {way} on a slope of {slope}")
    }

    /// How far the centre of gravity is from the middle: `22 mm behind the middle`.
    pub fn offset_in_words(&self, units: &Units) -> Option<String> {
        let forward = self.cg?.forward;
        if forward.abs() < 5e-5 {
            return Some("over the middle".to_owned());
        }
        let way = if forward > 0.0 { "ahead of" } else { "behind" };
        Some(format!("{} {way} the middle", show(BALANCE_OFFSET.any(), forward.abs(), units)))
    }

    /// How far the centre of gravity is from the centre line: `12 mm to the left`.
    pub fn left_in_words(&self, units: &Units) -> Option<String> {
        let left = self.cg?.left;
        let way = if left > 0.0 { "left" } else { "right" };
        (left.abs() >= 5e-5)
            .then(|| format!("{} to the {way}", show(BALANCE_OFFSET.any(), left.abs(), units)))
    }

    /// How high the centre of gravity is: `90 mm up`.
    pub fn height_in_words(&self, units: &Units) -> Option<String> {
        Some(format!("{} up", show(CG_HEIGHT.any(), self.cg?.up?, units)))
    }

    /// What is lacking, in a sentence; `side` leaves out what only other views need.
    pub fn lacking_in_words(&self, side: bool) -> Option<String> {
        let what: Vec<&str> = self
            .lacks
            .iter()
            .filter(|lacking| lacking.side || !side)
            .map(|lacking| lacking.what.as_str())
            .collect();
        let (last, before) = what.split_last()?;
        let list = if before.is_empty() {
            format!("the {last}")
        } else {
            format!("the {} and the {last}", before.join(", the "))
        };
        Some(format!("To draw the rest, give {list}."))
    }

    /// What is drawn by rule of thumb, in sentences; `side` and `parts` say what is drawn.
    pub fn notes_in_words(&self, side: bool, parts: bool) -> String {
        let drawn = self.notes.iter().filter(|note| match note.about {
            About::Gear => true,
            About::Across => !side,
            About::Parts => parts,
        });
        drawn.map(|note| note.words).collect::<Vec<_>>().join(" ")
    }

    /// Whether the load bears down past the end of a contact of tracks alone.
    pub fn tips(&self) -> bool {
        let reach = self
            .bearers
            .iter()
            .map(|bearer| bearer.forward.abs() + bearer.contact / 2.0)
            .fold(0.0, f64::max);
        self.underneath.is_none()
            && reach > 0.0
            && self.load.is_some_and(|load| load.abs() >= reach)
    }
}
