//! The machine in metres, as its numbers say it is: what a sketch draws, before any drawing.
//!
//! Places are forward of the middle of the ground contact, to the left of the centre line, and up
//! from the ground, as in the parts list. What the numbers do not say is left out and named in
//! [`Sketch::lacks`]; what is a rule of thumb is said in [`Sketch::notes`].

mod bearers;
mod sinking;
mod underneath;
mod words;

pub use words::pressure_in_words;

pub use bearers::{Bearer, BearerKind};
pub use sinking::Sinking;
pub use underneath::Underneath;

use crate::quantity::catalogue::machine::{
    BALANCE_OFFSET, CG_HEIGHT, GROUND_FORCE, SLOPE, SLOPE_FORCE, WEIGHT,
};
use crate::quantity::catalogue::pressure::PRESSURE_OFFSET;
use crate::rules::{Origin, Values};
use crate::sheet::{PartNumbers, Sheet, Tally};

/// The density a part is drawn with, in kg/m³: that of water.
///
/// Motors are denser, boxes and baskets lighter; taken over a whole small machine it comes near.
/// Source: common practice, no published source.
pub const PART_DENSITY: f64 = 1000.0;

/// What lies further away than this, in metres, is not drawn.
const FARTHEST: f64 = 1e4;

/// As many parts are drawn; of more, the heaviest.
const MOST: usize = 100;

/// A part as a box about its place.
#[derive(Debug, Clone, PartialEq)]
pub struct PartBox {
    /// What it is called.
    pub name: String,
    /// Its mass in kilograms; of a trial mass it may be below zero.
    pub mass: f64,
    /// Its middle in metres: forward, left, up.
    pub at: [f64; 3],
    /// Its size in metres along the same directions, each above zero.
    pub size: [f64; 3],
    /// Whether it is the trial mass.
    pub trial: bool,
}

/// The centre of gravity, in metres.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cg {
    /// Forward of the middle of the contact.
    pub forward: f64,
    /// To the left of the centre line; zero when the numbers do not say.
    pub left: f64,
    /// Up from the ground, if known.
    pub up: Option<f64>,
}

/// Something that would let more be drawn.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Lacking {
    /// What is lacking, as a noun: `contact length`.
    pub what: String,
    /// Whether the view from the side lacks it too.
    pub side: bool,
}

/// Something drawn by rule of thumb.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Note {
    /// What, in a sentence.
    pub words: &'static str,
    /// What of the sketch it is about.
    pub about: About,
}

/// What of a sketch a note is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum About {
    /// Running gear, in every view.
    Gear,
    /// Places across the machine, which the view from the side does not show.
    Across,
    /// Parts.
    Parts,
}

/// The machine in metres, newtons and pascals; every number finite.
#[derive(Debug, Clone, PartialEq)]
pub struct Sketch {
    /// What the build is called.
    pub name: String,
    /// What carries it.
    pub bearers: Vec<Bearer>,
    /// The parts that have a mass and a place, the trial mass last.
    pub boxes: Vec<PartBox>,
    /// The centre of gravity, if the numbers say where it is.
    pub cg: Option<Cg>,
    /// Nose uphill positive, in radians.
    pub slope: f64,
    /// The weight in newtons.
    pub weight: Option<f64>,
    /// The force square into the ground, in newtons.
    pub ground_force: Option<f64>,
    /// The force down along the slope, in newtons; zero on the level.
    pub slope_force: f64,
    /// Where the load bears down, forward of the middle, in metres.
    pub load: Option<f64>,
    /// The pressure along the contact, for a machine on tracks alone.
    pub underneath: Option<Underneath>,
    /// How deep it goes into the ground, if the rules find that.
    pub sinking: Option<Sinking>,
    /// A companion to lay over it, outlines and centre of gravity alone.
    pub ghost: Option<Box<Self>>,
    /// What is lacking to draw the rest.
    pub lacks: Vec<Lacking>,
    /// What is drawn by rule of thumb.
    pub notes: Vec<Note>,
}

impl Sketch {
    /// The machine as a build and what the rules find from it say it is.
    pub fn of(name: &str, sheet: &Sheet, tally: &Tally, values: &Values) -> Self {
        let mut sketch = Self {
            name: name.to_owned(),
            bearers: Vec::new(),
            boxes: Vec::new(),
            cg: None,
            slope: values.si(SLOPE).unwrap_or(0.0),
            weight: values.si(WEIGHT),
            ground_force: values.si(GROUND_FORCE),
            slope_force: values.si(SLOPE_FORCE).unwrap_or(0.0),
            load: values.si(PRESSURE_OFFSET).filter(near),
            underneath: Underneath::of(values),
            sinking: None,
            ghost: None,
            lacks: Vec::new(),
            notes: Vec::new(),
        };
        sketch.stand(sheet, tally, values);
        sketch.press(values);
        sketch.sink(values);
        sketch.boxes = boxes(sheet, tally, !sketch.bearers.is_empty());
        sketch.balance(tally, values);
        if !sketch.boxes.is_empty() {
            sketch.note(
                About::Parts,
                "Parts are drawn as boxes as dense as water: their places are true, their shapes \
                 are a rule of thumb.",
            );
        }
        if sheet.parts().len() > MOST {
            sketch.note(About::Parts, "Of many parts, the hundred heaviest are drawn.");
        }
        if sketch.weight.is_none() {
            sketch.lack("mass", true);
        }
        sketch
    }

    /// The same with a companion laid over it, on the same ground.
    pub fn with_ghost(mut self, companion: Self) -> Self {
        self.ghost = Some(Box::new(companion));
        self
    }

    /// How much higher a companion stands on the same ground, in metres: it sinks in less.
    pub fn above(&self, ghost: &Self) -> f64 {
        match (&self.sinking, &ghost.sinking) {
            (Some(own), Some(other)) => own.mean - other.mean,
            _ => 0.0,
        }
    }

    fn note(&mut self, about: About, words: &'static str) {
        self.notes.push(Note { words, about });
    }

    fn lack(&mut self, what: &str, side: bool) {
        if !self.lacks.iter().any(|lacking| lacking.what == what) {
            self.lacks.push(Lacking { what: what.to_owned(), side });
        }
    }

    /// The centre of gravity. A balance point that is only taken for granted is not drawn, unless
    /// something else is known of the balance.
    fn balance(&mut self, tally: &Tally, values: &Values) {
        let up = values.si(CG_HEIGHT).filter(near);
        let said = values.origin(BALANCE_OFFSET) != Some(Origin::Assumed) || up.is_some();
        match values.si(BALANCE_OFFSET).filter(near) {
            Some(forward) if said => {
                let left = tally.cg.map(|cg| cg[1]).filter(near);
                self.cg = Some(Cg { forward, left: left.unwrap_or(0.0), up });
                if left.is_none() {
                    self.note(
                        About::Across,
                        "The centre of gravity is taken to be on the centre line.",
                    );
                }
            }
            _ => self.lack("balance point offset", true),
        }
        if up.is_none() {
            self.lack("centre of gravity height", true);
        }
    }

    /// Whether there is nothing at all to draw.
    pub fn is_empty(&self) -> bool {
        self.bearers.is_empty() && self.boxes.is_empty()
    }
}

/// Whether a length is one that can be drawn.
fn near(metres: &f64) -> bool {
    metres.abs() <= FARTHEST
}

/// The parts with a mass and a place, and the trial mass, as boxes; without those that are running
/// gear by name where the machine is `standing` on some that is drawn.
fn boxes(sheet: &Sheet, tally: &Tally, standing: bool) -> Vec<PartBox> {
    let parts = sheet.parts().iter().zip(&tally.parts.each);
    let parts = parts.filter(|(part, _)| !standing || !bearers::is_gear(&part.name));
    let parts = parts.filter_map(|(part, numbers)| boxed(&part.name, numbers, false));
    let trial = tally.trial.as_ref().and_then(|numbers| boxed("trial mass", numbers, true));
    heaviest(parts.collect()).into_iter().chain(trial).collect()
}

/// The heaviest parts, as many as can be told apart, in their order.
fn heaviest(boxes: Vec<PartBox>) -> Vec<PartBox> {
    if boxes.len() <= MOST {
        return boxes;
    }
    let mut ranked: Vec<(usize, PartBox)> = boxes.into_iter().enumerate().collect();
    ranked.sort_by(|(_, a), (_, b)| b.mass.total_cmp(&a.mass));
    ranked.truncate(MOST);
    ranked.sort_by_key(|(place, _)| *place);
    ranked.into_iter().map(|(_, part)| part).collect()
}

/// A cube of the part's mass, cut off where it would reach into the ground.
fn boxed(name: &str, numbers: &PartNumbers, trial: bool) -> Option<PartBox> {
    let (mass, at) = (numbers.mass?, numbers.at?);
    let side = (mass.abs() / PART_DENSITY).cbrt();
    if mass == 0.0 || !near(&side) || !at.iter().all(near) {
        return None;
    }
    let height = if at[2] > 0.0 { side.min(2.0 * at[2]) } else { side };
    Some(PartBox { name: name.to_owned(), mass, at, size: [side, side, height], trial })
}
