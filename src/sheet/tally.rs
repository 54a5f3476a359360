//! What a build says, in numbers: the start of every pass over the rules.

use std::collections::BTreeMap;

use super::contents::Entries;
use super::part::{PartField, TrialMass};
use super::sum::{self, Sum, Swing};
use crate::quantity::catalogue::balance::SIDE_OFFSET;
use crate::quantity::catalogue::machine::{BALANCE_OFFSET, CG_HEIGHT, MASS};
use crate::quantity::catalogue::turning::YAW_INERTIA;
use crate::quantity::{Amount, AnyId, catalogue, parse, show_plain};
use crate::rules::{Givens, Origin};

/// The numbers that a parts list says where the build does not state them.
pub const FROM_PARTS: [AnyId; 5] =
    [MASS.any(), BALANCE_OFFSET.any(), SIDE_OFFSET.any(), CG_HEIGHT.any(), YAW_INERTIA.any()];

/// Which entry of a build something is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Place {
    /// A number.
    Number(AnyId),
    /// A field of a part, counted from zero.
    Part(usize, PartField),
    /// The trial mass.
    Trial,
}

/// Something said about one entry of a build.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Remark {
    /// Which entry.
    pub place: Place,
    /// What is the matter and how to mend it, in words.
    pub message: String,
}

/// One part in numbers, SI units.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct PartNumbers {
    /// Its mass in kilograms, if it can be read.
    pub mass: Option<f64>,
    /// Where it is in metres, forward, left and up, if it has a place that can be read.
    pub at: Option<[f64; 3]>,
}

/// The parts list added up, without the trial mass, SI units.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct PartsTotal {
    /// Each part, in the order of the list.
    pub each: Vec<PartNumbers>,
    /// The sum of the masses that can be read, in kilograms.
    pub mass: f64,
    /// The half-width of the sum, in kilograms; zero when no part carries a spread.
    pub mass_spread: f64,
    /// The centre of gravity in metres, when at least 99 % of the mass has a place.
    pub cg: Option<[f64; 3]>,
    /// How much of the mass has a place, in kilograms.
    pub placed_mass: f64,
    /// The names of the parts without a place.
    pub unplaced: Vec<String>,
}

/// What a build says, in numbers.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Tally {
    /// The numbers that can be read, in SI units, each with its origin.
    pub givens: Givens,
    /// How sure they are: half-widths in SI units, for those that carry one.
    pub spreads: BTreeMap<AnyId, f64>,
    /// Entries that cannot be read; their quantities are not given.
    pub problems: Vec<Remark>,
    /// What the reader should know before trusting the numbers.
    pub cautions: Vec<Remark>,
    /// The parts list added up.
    pub parts: PartsTotal,
    /// The centre of gravity of the parts and the trial mass in metres: forward, left, up.
    pub cg: Option<[f64; 3]>,
    /// The trial mass in numbers, if there is one that can be read; its mass may be below zero.
    pub trial: Option<PartNumbers>,
}

/// What the entries say, in numbers.
pub(super) fn tally(entries: &Entries) -> Tally {
    let Sum { total, cg_spread, swing, complete, problems } = sum::parts(&entries.parts);
    let mut tally = Tally { parts: total, problems, ..Tally::default() };
    for (id, text) in &entries.numbers {
        tally.take_number(*id, text);
    }
    let trial = entries.trial.as_ref().and_then(|trial| tally.read_trial(trial));
    tally.trial = trial.as_ref().map(|trial| PartNumbers {
        mass: Some(trial.mass.si),
        at: trial.at.map(|at| at.map(|length| length.si)),
    });
    tally.weigh(trial.as_ref(), complete);
    tally.balance(trial.as_ref(), cg_spread);
    tally.swing(trial.as_ref(), swing);
    tally
}

/// A trial mass as read, SI units.
struct Trial {
    mass: Amount,
    at: Option<[Amount; 3]>,
}

impl Tally {
    fn problem(&mut self, place: Place, message: String) {
        self.problems.push(Remark { place, message });
    }

    fn caution(&mut self, place: Place, message: String) {
        self.cautions.push(Remark { place, message });
    }

    fn give(&mut self, id: AnyId, si: f64, origin: Origin, spread: f64) {
        self.givens.put(id, si, origin);
        if spread > 0.0 {
            self.spreads.insert(id, spread);
        } else {
            self.spreads.remove(&id);
        }
    }

    fn take_number(&mut self, id: AnyId, text: &str) {
        let Some(entry) = catalogue::find(id.name()) else { return };
        match parse(text, entry) {
            Ok(amount) => self.give(id, amount.si, Origin::Given, amount.spread.unwrap_or(0.0)),
            Err(error) => self.problem(Place::Number(id), error.to_string()),
        }
    }

    fn read_trial(&mut self, trial: &TrialMass) -> Option<Trial> {
        let mass = sum::trial(&trial.mass);
        let at = trial.at.as_ref().map(sum::place).transpose();
        match (mass, at) {
            (Ok(mass), Ok(at)) => Some(Trial { mass, at }),
            (Err(why), _) | (_, Err((_, why))) => {
                self.problem(Place::Trial, format!("The trial mass is left out. {why}"));
                None
            }
        }
    }

    /// The mass: what was stated, else the parts; the trial mass on top.
    fn weigh(&mut self, trial: Option<&Trial>, complete: bool) {
        let mass = MASS.any();
        let stated = self.givens.get(mass);
        let (base, origin, spread) = match stated {
            Some((si, origin)) => {
                self.compare_weighed(si);
                (si, origin, self.spreads.get(&mass).copied().unwrap_or(0.0))
            }
            None if self.blocked(mass) || !complete || self.parts.each.is_empty() => return,
            None => (self.parts.mass, Origin::Parts, self.parts.mass_spread),
        };
        let Some(trial) = trial else {
            self.give(mass, base, origin, spread);
            return;
        };
        let total = base + trial.mass.si;
        if total > 0.0 {
            let trial_spread = trial.mass.spread.unwrap_or(0.0);
            self.give(mass, total, origin, sum::quadrature([spread, trial_spread].into_iter()));
        } else {
            self.givens.clear(mass);
            self.spreads.remove(&mass);
            self.problem(
                Place::Trial,
                format!(
                    "The trial mass takes away {} of {}, so nothing would be left. Take away less.",
                    kilograms(-trial.mass.si),
                    kilograms(base)
                ),
            );
        }
    }

    /// Whether a number was entered that cannot be read, so that nothing else may stand in for it.
    fn blocked(&self, id: AnyId) -> bool {
        self.problems.iter().any(|problem| problem.place == Place::Number(id))
    }

    fn compare_weighed(&mut self, stated: f64) {
        let parts = self.parts.mass;
        let lacking = stated - parts;
        if self.parts.each.is_empty() || lacking.abs() < 5e-4 * stated.abs() {
            return;
        }
        let how = if lacking > 0.0 { "less" } else { "more" };
        self.caution(
            Place::Number(MASS.any()),
            format!(
                "The mass you entered counts. The parts add up to {}, {} {how}.",
                kilograms(parts),
                kilograms(lacking.abs())
            ),
        );
    }

    /// The balance point and the height of the centre of gravity, from the parts and the trial
    /// mass, where they were not stated.
    fn balance(&mut self, trial: Option<&Trial>, cg_spread: [f64; 3]) {
        self.name_unplaced();
        let placed = trial.and_then(|trial| trial.at.map(|at| (trial.mass, at)));
        let (Some(parts), Some((mass, _))) = (self.parts.cg, self.givens.get(MASS.any())) else {
            if placed.is_some() && self.parts.cg.is_none() {
                self.caution(
                    Place::Trial,
                    "The trial mass counts in the mass, not in the balance: that needs parts with \
                     places."
                        .to_owned(),
                );
            }
            return;
        };
        let (cg, spread) = match placed {
            None => (parts, cg_spread),
            Some((added, at)) => with_trial((parts, cg_spread), mass, added, at),
        };
        self.cg = Some(cg);
        let axes = [(BALANCE_OFFSET.any(), 0), (SIDE_OFFSET.any(), 1), (CG_HEIGHT.any(), 2)];
        for (id, axis) in axes {
            if self.givens.get(id).is_none() && !self.blocked(id) {
                self.give(id, cg[axis], Origin::Parts, spread[axis]);
            } else if placed.is_some() && self.givens.get(id).is_some() {
                let label = catalogue::find(id.name()).map_or(id.name(), |entry| entry.label);
                self.caution(
                    Place::Number(id),
                    format!("You entered the {label}, so the trial mass does not move it."),
                );
            }
        }
    }

    /// The yaw inertia from parts with places, as points, where it was not stated. A trial mass
    /// with a place moves the axis: the parallel-axis theorem adds both shares.
    fn swing(&mut self, trial: Option<&Trial>, parts: Swing) {
        let id = YAW_INERTIA.any();
        let (Some(cg), Some(own)) = (self.cg, self.parts.cg) else { return };
        if self.givens.get(id).is_some() || self.blocked(id) {
            return;
        }
        let away = |at: [f64; 3]| (at[0] - cg[0]).powi(2) + (at[1] - cg[1]).powi(2);
        let added = trial.and_then(|trial| trial.at.map(|at| (trial.mass, at)));
        let (moved, spread) = added.map_or((0.0, parts.spread), |(mass, at)| {
            let arm = away(at.map(|length| length.si));
            let from_mass = mass.spread.unwrap_or(0.0) * arm;
            let shift = self.parts.placed_mass * away(own);
            (mass.si * arm + shift, sum::quadrature([parts.spread, from_mass].into_iter()))
        });
        let inertia = parts.inertia + moved;
        if inertia > 0.0 {
            self.give(id, inertia, Origin::Parts, spread);
        }
    }

    fn name_unplaced(&mut self) {
        if self.parts.unplaced.is_empty() || self.parts.placed_mass <= 0.0 {
            return;
        }
        let names = self.parts.unplaced.join(", ");
        let message = if self.parts.cg.is_some() {
            format!("These parts have no place and are left out of the balance: {names}.")
        } else {
            format!(
                "The balance is not worked out, because less than 99 % of the mass has a place. \
                 Say where these parts are: {names}."
            )
        };
        self.caution(Place::Number(BALANCE_OFFSET.any()), message);
    }
}

/// The centre of gravity and its half-widths with a trial mass, `total` kilograms in all
/// (first order, JCGM 100:2008, 5.1.2; the mass of the rest is taken as sure).
fn with_trial(
    (cg, spread): ([f64; 3], [f64; 3]),
    total: f64,
    added: Amount,
    at: [Amount; 3],
) -> ([f64; 3], [f64; 3]) {
    let share = added.si / total;
    let moved = [0, 1, 2].map(|axis| (1.0 - share) * cg[axis] + share * at[axis].si);
    let widths = [0, 1, 2].map(|axis| {
        let from_cg = (1.0 - share) * spread[axis];
        let from_place = share * at[axis].spread.unwrap_or(0.0);
        let from_mass = added.spread.unwrap_or(0.0) * (at[axis].si - moved[axis]) / total;
        sum::quadrature([from_cg, from_place, from_mass].into_iter())
    });
    (moved, widths)
}

/// A mass in words.
fn kilograms(si: f64) -> String {
    catalogue::find(MASS.any().name())
        .map_or_else(|| format!("{si} kg"), |entry| show_plain(entry, si))
}
