//! The difference of two builds: every number that is not the same, and which limits that turns.

use std::sync::Arc;

use super::outcome::Outcome;
use super::side_by_side::ratio;
use super::walk_round::{Finding, walk_round};
use crate::quantity::{AnyId, catalogue};
use crate::rules::{Origin, Values};
use crate::sheet::{Part, Sheet};

/// Numbers nearer to each other than this, as a share of the larger, are the same.
const SAME: f64 = 1e-9;

/// All in which another build and the reader's own differ.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Difference {
    /// Numbers given or taken for granted in either build, the largest ratio first.
    pub given: Vec<Differing>,
    /// Numbers found in both, the largest ratio first.
    pub found: Vec<Differing>,
    /// Parts whose mass differs, or that only one build has.
    pub parts: Vec<DifferingPart>,
    /// Limits that stand differently in the two, what gives first in the reader's own at the top.
    pub turned: Vec<Turned>,
}

/// One number that differs.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Differing {
    /// Which.
    pub id: AnyId,
    /// In the other build, SI units; none if it is not known there.
    pub theirs: Option<f64>,
    /// In the reader's own, SI units; none if it is not known there.
    pub yours: Option<f64>,
}

/// A part that differs.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DifferingPart {
    /// Its name.
    pub name: String,
    /// Its mass in the other build, as typed; none if it has no such part.
    pub theirs: Option<String>,
    /// Its mass in the reader's own, as typed; none if it has no such part.
    pub yours: Option<String>,
}

/// A limit that stands differently.
#[derive(Debug, Clone, PartialEq)]
pub struct Turned {
    /// How it stands in the other build.
    pub theirs: Finding,
    /// How it stands in the reader's own.
    pub yours: Finding,
}

impl Difference {
    /// Holds another build, its sheet and what follows from it, against the reader's own.
    pub fn of(theirs: (&Sheet, &Outcome), yours: (&Sheet, &Outcome)) -> Self {
        let (given, found) = numbers(&theirs.1.values, &yours.1.values);
        Self {
            given,
            found,
            parts: parts(theirs.0.parts(), yours.0.parts()),
            turned: turned(theirs.1, yours.1),
        }
    }

    /// Whether the two are alike in every number, every part and every limit.
    pub fn is_none(&self) -> bool {
        self.given.is_empty() && self.found.is_empty() && self.parts.is_empty()
    }
}

impl Differing {
    /// Theirs over yours, if a ratio of them says anything.
    pub fn ratio(&self) -> Option<f64> {
        ratio(self.theirs?, self.yours?)
    }

    /// How far apart they are, for sorting: a number that one build lacks stands last.
    fn apart(&self) -> f64 {
        match (self.theirs, self.yours) {
            (Some(_), Some(_)) => self.ratio().map_or(f64::MAX, |ratio| ratio.ln().abs()),
            _ => -1.0,
        }
    }
}

fn numbers(theirs: &Values, yours: &Values) -> (Vec<Differing>, Vec<Differing>) {
    let mut all: Vec<Differing> = catalogue::all()
        .iter()
        .map(|entry| Differing {
            id: entry.id,
            theirs: theirs.si(entry.id),
            yours: yours.si(entry.id),
        })
        .filter(|one| match (one.theirs, one.yours) {
            (Some(a), Some(b)) => (a - b).abs() > SAME * a.abs().max(b.abs()),
            (None, None) => false,
            _ => true,
        })
        .collect();
    all.sort_by(|a, b| b.apart().total_cmp(&a.apart()));
    let set = |values: &Values, id| values.origin(id).is_some_and(|from| from != Origin::Found);
    all.into_iter().partition(|one| set(theirs, one.id) || set(yours, one.id))
}

/// Parts are told apart by name; of two of one name, the first is held against the first.
fn parts(theirs: &[Arc<Part>], yours: &[Arc<Part>]) -> Vec<DifferingPart> {
    let mut left: Vec<&Arc<Part>> = yours.iter().collect();
    let mut differing = Vec::new();
    for part in theirs {
        let place = left.iter().position(|own| own.name.trim() == part.name.trim());
        let own = place.map(|place| left.remove(place));
        if own.is_none_or(|own| own.mass.trim() != part.mass.trim()) {
            differing.push(DifferingPart {
                name: part.name.trim().to_owned(),
                theirs: Some(part.mass.trim().to_owned()),
                yours: own.map(|own| own.mass.trim().to_owned()),
            });
        }
    }
    differing.extend(left.into_iter().map(|own| DifferingPart {
        name: own.name.trim().to_owned(),
        theirs: None,
        yours: Some(own.mass.trim().to_owned()),
    }));
    differing
}

fn turned(theirs: &Outcome, yours: &Outcome) -> Vec<Turned> {
    let others = walk_round(theirs);
    walk_round(yours)
        .into_iter()
        .filter_map(|yours| {
            let theirs = others.iter().find(|other| other.limit.margin == yours.limit.margin)?;
            let differs = theirs.verdict.in_a_word() != yours.verdict.in_a_word();
            differs.then(|| Turned { theirs: theirs.clone(), yours })
        })
        .collect()
}
