//! What 100 g buys: every headline number with a little more and a little less mass.

use super::moved::Moved;
use crate::quantity::AnyId;
use crate::quantity::catalogue::{
    self,
    machine::{BALANCE_OFFSET, CG_HEIGHT, MASS},
};
use crate::rules::{Givens, Origin, Values, evaluate};
use crate::sheet::Tally;

/// The mass added and taken away, in kilograms.
pub const STEP: f64 = 0.1;

/// A change smaller than this part of the number is rounding.
const SAME: f64 = 1e-12;

/// What the step does to one headline number, in SI units.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bought {
    /// Which quantity.
    pub id: AnyId,
    /// Its number now.
    pub now: f64,
    /// The change with [`STEP`] more; none when there is no number then.
    pub more: Option<f64>,
    /// The change with [`STEP`] less; none when there is no number then.
    pub less: Option<f64>,
}

impl Bought {
    /// The number with [`STEP`] more, if there is one then.
    pub fn with_more(&self) -> Option<f64> {
        self.more.map(|change| self.now + change)
    }

    /// The move that [`STEP`] more makes.
    pub fn moved(&self) -> Moved {
        Moved { id: self.id, before: Some(self.now), after: self.with_more() }
    }

    /// The larger of both changes as a part of the number now; infinite when a number went, or
    /// was zero.
    pub fn part(&self) -> f64 {
        match (self.more, self.less) {
            (Some(more), Some(less)) => (more.abs().max(less.abs()) / self.now.abs()).abs(),
            _ => f64::INFINITY,
        }
    }
}

/// The change of every headline number for [`STEP`] of mass more and less, the largest part first.
///
/// `at` is where the mass goes, in metres forward of the middle of the contact, left and up; without
/// it, or where the balance was entered by hand, the mass goes to the present centre of gravity.
/// Numbers that do not move, and the mass itself, are left out. Empty when no mass is known.
pub fn hundred_grams(tally: &Tally, at: Option<[f64; 3]>) -> Vec<Bought> {
    let Some((mass, origin)) = tally.givens.get(MASS.any()) else { return Vec::new() };
    let stepped = |step: f64| {
        let mut givens = tally.givens.clone();
        givens.put(MASS.any(), mass + step, origin);
        if let (Some(cg), Some(at)) = (tally.cg, at) {
            balance(&mut givens, step / (mass + step), cg, at);
        }
        evaluate(&givens)
    };
    let (now, more, less) = (evaluate(&tally.givens), stepped(STEP), stepped(-STEP));
    let mut bought: Vec<Bought> = catalogue::all()
        .iter()
        .filter(|entry| entry.headline && entry.id != MASS.any())
        .filter_map(|entry| one(entry.id, &now, &more, &less))
        .collect();
    bought.sort_by(|a, b| b.part().total_cmp(&a.part()));
    bought
}

/// Moves the centre of gravity by a share of the mass, as far as it comes from the parts.
fn balance(givens: &mut Givens, share: f64, cg: [f64; 3], at: [f64; 3]) {
    for (id, axis) in [(BALANCE_OFFSET.any(), 0), (CG_HEIGHT.any(), 2)] {
        if givens.get(id).is_some_and(|(_, origin)| origin == Origin::Parts) {
            givens.put(id, cg[axis] + share * (at[axis] - cg[axis]), Origin::Parts);
        }
    }
}

fn one(id: AnyId, now: &Values, more: &Values, less: &Values) -> Option<Bought> {
    let si = now.si(id)?;
    let change = |values: &Values| values.si(id).map(|then| then - si);
    let bought = Bought { id, now: si, more: change(more), less: change(less) };
    let moves = |change: Option<f64>| change.is_none_or(|change| change.abs() > SAME * si.abs());
    (moves(bought.more) || moves(bought.less)).then_some(bought)
}
