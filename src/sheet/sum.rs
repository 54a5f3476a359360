//! The parts list added up: mass, centre of gravity, and how sure they are.

use std::sync::LazyLock;

use super::contents::Parts;
use super::part::{Axis, Part, PartField};
use super::tally::{PartNumbers, PartsTotal, Place, Remark};
use crate::quantity::catalogue::machine::{BALANCE_OFFSET, MASS};
use crate::quantity::{Amount, AnyId, Entry, catalogue, parse};

/// How much of the mass must have a place before the rest may be left out of the balance.
const PLACED_ENOUGH: f64 = 0.99;

/// How the mass of a part is read: nothing is too light, zero included.
static PART_MASS: LazyLock<Option<Entry>> = LazyLock::new(|| variant(MASS.any(), (0.0, f64::MAX)));

/// How a trial mass is read: it may take away.
static TRIAL_MASS: LazyLock<Option<Entry>> =
    LazyLock::new(|| variant(MASS.any(), (f64::MIN, f64::MAX)));

/// How a length of a place is read.
static LENGTH: LazyLock<Option<Entry>> =
    LazyLock::new(|| variant(BALANCE_OFFSET.any(), (f64::MIN, f64::MAX)));

fn variant(id: AnyId, possible: (f64, f64)) -> Option<Entry> {
    catalogue::find(id.name()).map(|entry| Entry { possible, above_only: false, ..*entry })
}

fn read(text: &str, entry: &LazyLock<Option<Entry>>) -> Result<Amount, String> {
    let entry = entry.as_ref().ok_or("The catalogue lacks this quantity.")?;
    let amount = parse(text, entry).map_err(|error| error.to_string())?;
    if entry.admits(amount.si) {
        Ok(amount)
    } else {
        Err("It cannot be less than zero.".to_owned())
    }
}

/// Reads a mass that cannot be negative, or says in words why it is none.
pub(super) fn mass(text: &str) -> Result<Amount, String> {
    read(text, &PART_MASS)
}

/// Reads a mass to be added, or taken away when negative.
pub(super) fn trial(text: &str) -> Result<Amount, String> {
    read(text, &TRIAL_MASS)
}

/// A trial mass of so many kilograms with its half-width as text, to the milligram; none when it is
/// nothing.
pub(super) fn trial_text(kilograms: f64, spread: f64) -> Option<String> {
    let milligrams = |kilograms: f64| (kilograms * 1e6).round();
    let (mass, spread) = (milligrams(kilograms), milligrams(spread));
    if mass == 0.0 && spread == 0.0 {
        return None;
    }
    let (each, unit) = if mass.abs() < 1e6 { (1e3, "g") } else { (1e6, "kg") };
    // A zero takes no minus.
    let number = format!("{:+}", mass / each + 0.0);
    Some(if spread > 0.0 {
        format!("{number} ± {} {unit}", spread / each)
    } else {
        format!("{number} {unit}")
    })
}

/// The half-width of what is left of a whole when a part is taken away: what the part does not
/// account for of how unsure the whole is; nothing if it accounts for more (JCGM 100:2008, 5.1.2).
pub(super) fn rest(whole: f64, part: Option<f64>) -> f64 {
    (whole * whole - part.map_or(0.0, |part| part * part)).max(0.0).sqrt()
}

/// The mass of all the parts in kilograms, when there are any and every one can be read.
pub(super) fn whole_mass(parts: &Parts) -> Option<Amount> {
    let readings = parts.readings().iter();
    let masses: Option<Vec<Amount>> = readings.map(|part| part.mass.clone().ok()).collect();
    let masses = masses.filter(|masses| !masses.is_empty())?;
    let spread = quadrature(masses.iter().filter_map(|mass| mass.spread));
    Some(Amount {
        si: masses.iter().map(|mass| mass.si).sum(),
        spread: (spread > 0.0).then_some(spread),
    })
}

/// Three lengths of a place in metres with their half-widths, or which one cannot be read and why.
pub(super) fn place(at: &[String; 3]) -> Result<[Amount; 3], (Axis, String)> {
    let read = |axis: Axis| {
        read(&at[axis.index()], &LENGTH)
            .map_err(|why| (axis, format!("It is not clear {} it is. {why}", axis.in_words())))
    };
    Ok([read(Axis::Forward)?, read(Axis::Left)?, read(Axis::Up)?])
}

/// A part in numbers: what can be read of it, and of the rest why it cannot be.
#[derive(Debug, Clone)]
pub(super) struct Reading {
    mass: Result<Amount, String>,
    /// None for a part without a place.
    at: Option<Result<[Amount; 3], (Axis, String)>>,
}

impl Reading {
    /// Reads the mass and the place of a part.
    pub fn of(part: &Part) -> Self {
        Self { mass: mass(&part.mass), at: part.at.as_ref().map(place) }
    }
}

/// A part whose mass could be read.
struct Weighed {
    mass: Amount,
    at: Option<[Amount; 3]>,
}

/// A moment of inertia about the upright axis through a centre of gravity, SI units.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub(super) struct Swing {
    /// Kilogram square metres; points, without their own size.
    pub inertia: f64,
    /// Its half-width; zero when nothing carries a spread.
    pub spread: f64,
}

/// Point masses about the upright axis through their centre of gravity, `Σ m ((x−x̄)² + (y−ȳ)²)`:
/// the parallel-axis theorem without the parts' own inertia. Half-widths to first order
/// (JCGM 100:2008, 5.1.2); the centre of gravity drops out, as the inertia is least about it.
fn swing(placed: impl Iterator<Item = (Amount, [Amount; 3])>, cg: [f64; 3]) -> Swing {
    let mut widths = Vec::new();
    let inertia = placed
        .map(|(mass, at)| {
            let [x, y] = [0, 1].map(|axis| at[axis].si - cg[axis]);
            widths.push(mass.spread.unwrap_or(0.0) * (x * x + y * y));
            widths.push(2.0 * mass.si * x * at[0].spread.unwrap_or(0.0));
            widths.push(2.0 * mass.si * y * at[1].spread.unwrap_or(0.0));
            mass.si * (x * x + y * y)
        })
        .sum();
    Swing { inertia, spread: quadrature(widths.into_iter()) }
}

/// The parts added up, and what goes with them.
pub(super) struct Sum {
    pub total: PartsTotal,
    /// Half-widths of the centre of gravity in metres; zero when nothing carries a spread.
    pub cg_spread: [f64; 3],
    /// The placed parts about their centre of gravity, as points.
    pub swing: Swing,
    /// Whether the mass of every part can be read.
    pub complete: bool,
    pub problems: Vec<Remark>,
}

/// Adds up the parts list.
pub(super) fn parts(parts: &Parts) -> Sum {
    let mut problems = Vec::new();
    let mut total = PartsTotal::default();
    let mut weighed = Vec::new();
    for (index, (part, reading)) in parts.iter().zip(parts.readings()).enumerate() {
        let mut note = |field, why: &str| {
            let message = format!("Part {}, {:?}: {why}", index + 1, part.name);
            problems.push(Remark { place: Place::Part(index, field), message });
        };
        let mass = reading.mass.as_ref().map_err(|why| note(PartField::Mass, why)).ok().copied();
        let place = reading.at.as_ref().and_then(|place| {
            place.as_ref().map_err(|(axis, why)| note(PartField::At(*axis), why)).ok().copied()
        });
        if place.is_none() {
            total.unplaced.push(part.name.clone());
        }
        total.each.push(PartNumbers {
            mass: mass.map(|mass| mass.si),
            at: place.map(|place| place.map(|length| length.si)),
        });
        weighed.extend(mass.map(|mass| Weighed { mass, at: place }));
    }
    let placed = || weighed.iter().filter_map(|part| part.at.map(|at| (part.mass, at)));
    total.mass = weighed.iter().map(|part| part.mass.si).sum();
    total.mass_spread = quadrature(weighed.iter().filter_map(|part| part.mass.spread));
    total.placed_mass = placed().map(|(mass, _)| mass.si).sum();
    let complete = weighed.len() == parts.len();
    let enough = total.placed_mass > 0.0 && total.placed_mass >= PLACED_ENOUGH * total.mass;
    if complete && enough {
        total.cg = Some([0, 1, 2].map(|axis| {
            placed().map(|(mass, at)| mass.si * at[axis].si).sum::<f64>() / total.placed_mass
        }));
    }
    let cg = total.cg.unwrap_or_default();
    let cg_spread = [0, 1, 2].map(|axis| {
        quadrature(placed().flat_map(|(mass, at)| {
            [
                mass.spread.unwrap_or(0.0) * (at[axis].si - cg[axis]),
                mass.si * at[axis].spread.unwrap_or(0.0),
            ]
        })) / total.placed_mass.max(f64::MIN_POSITIVE)
    });
    let swing = swing(placed(), cg);
    Sum { total, cg_spread, swing, complete, problems }
}

/// Half-widths that have nothing to do with each other, combined (JCGM 100:2008, 5.1.2).
pub(super) fn quadrature(widths: impl Iterator<Item = f64>) -> f64 {
    widths.map(|width| width * width).sum::<f64>().sqrt()
}
