//! What is known of each quantity after a pass over the rules.

use std::borrow::Cow;
use std::fmt;
use std::ops::Deref;
use std::sync::Arc;

use crate::quantity::{AnyId, Id, Measure, catalogue};

/// Where a known number came from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Origin {
    /// The reader said so, also where a rule could have found it.
    Given,
    /// It adds up from the parts list, trial mass included.
    Parts,
    /// Nothing was said, so the catalogue's usual value was taken.
    Assumed,
    /// A rule found it.
    Found,
}

/// A number that is known, in SI units.
#[derive(Debug, Clone, PartialEq)]
pub struct Known {
    /// The value in the coherent SI unit; always finite.
    pub si: f64,
    /// Where it came from.
    pub origin: Origin,
    /// What the reader should know before trusting it.
    pub cautions: Vec<Cow<'static, str>>,
}

/// One thing that is lacking: any one of these quantities would do.
pub type Lack = Vec<AnyId>;

/// What is lacking, each thing once; shared by all that lack the same.
#[derive(Clone, Default)]
pub struct Lacks(Shared);

#[derive(Clone, Default)]
enum Shared {
    #[default]
    Nothing,
    Own(&'static [Lack]),
    Joined(Arc<[Lack]>),
}

impl Lacks {
    /// What lacks itself alone.
    pub(super) fn own(lacks: &'static [Lack]) -> Self {
        Self(Shared::Own(lacks))
    }

    /// Both together, what stands here first.
    pub(super) fn with(self, more: &Self) -> Self {
        let new = || more.iter().filter(|lack| !self.contains(lack));
        if new().next().is_none() {
            self
        } else if self.is_empty() {
            more.clone()
        } else {
            self.iter().chain(new()).cloned().collect()
        }
    }
}

impl FromIterator<Lack> for Lacks {
    fn from_iter<I: IntoIterator<Item = Lack>>(lacks: I) -> Self {
        Self(Shared::Joined(lacks.into_iter().collect()))
    }
}

impl Deref for Lacks {
    type Target = [Lack];

    fn deref(&self) -> &[Lack] {
        match &self.0 {
            Shared::Nothing => &[],
            Shared::Own(lacks) => lacks,
            Shared::Joined(lacks) => lacks,
        }
    }
}

impl PartialEq for Lacks {
    fn eq(&self, other: &Self) -> bool {
        self[..] == other[..]
    }
}

impl fmt::Debug for Lacks {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self[..].fmt(f)
    }
}

/// What is known of a quantity.
#[derive(Debug, Clone, PartialEq)]
pub enum Value {
    /// A number.
    Known(Known),
    /// These given quantities are lacking.
    Missing(Lacks),
    /// The numbers given cannot be meant, and why.
    Invalid(Cow<'static, str>),
}

impl Value {
    /// Holds a number that a rule found, with nothing said of it yet.
    pub(super) fn hold(&mut self, si: f64) {
        match self {
            // The room of the last cautions is kept.
            Self::Known(known) => {
                (known.si, known.origin) = (si, Origin::Found);
                known.cautions.clear();
            }
            _ => {
                *self = Self::Known(Known { si, origin: Origin::Found, cautions: Vec::new() });
            }
        }
    }

    /// The number in SI units, if there is one.
    pub fn si(&self) -> Option<f64> {
        match self {
            Self::Known(known) => Some(known.si),
            Self::Missing(_) | Self::Invalid(_) => None,
        }
    }
}

/// Numbers to start from, indexed as the catalogue is.
#[derive(Debug, Clone, PartialEq)]
pub struct Givens {
    slots: Vec<Option<(f64, Origin)>>,
}

impl Default for Givens {
    fn default() -> Self {
        Self { slots: vec![None; catalogue::all().len()] }
    }
}

impl Givens {
    /// Takes a number in SI units as given.
    pub fn set(&mut self, id: impl Into<AnyId>, si: f64) {
        self.put(id.into(), si, Origin::Given);
    }

    /// Takes a number with the place it came from.
    pub fn put(&mut self, id: AnyId, si: f64, origin: Origin) {
        if let Some(index) = catalogue::index(id) {
            self.slots[index] = Some((si, origin));
        }
    }

    /// Forgets a number.
    pub fn clear(&mut self, id: AnyId) {
        if let Some(index) = catalogue::index(id) {
            self.slots[index] = None;
        }
    }

    /// The number given for a quantity, in SI units, and its origin.
    pub fn get(&self, id: AnyId) -> Option<(f64, Origin)> {
        catalogue::index(id).and_then(|index| self.slots[index])
    }

    /// The same by its place in the catalogue.
    pub(super) fn at(&self, place: usize) -> Option<(f64, Origin)> {
        self.slots[place]
    }
}

/// What is known of every quantity.
#[derive(Debug, Clone, PartialEq)]
pub struct Values {
    pub(super) slots: Vec<Value>,
}

impl Values {
    /// What is known of a quantity.
    pub fn of(&self, id: impl Into<AnyId>) -> &Value {
        static UNKNOWN: Value = Value::Missing(Lacks(Shared::Nothing));
        catalogue::index(id.into()).map_or(&UNKNOWN, |index| &self.slots[index])
    }

    /// The number at a place of the catalogue, in SI units, if known.
    pub(super) fn si_at(&self, place: usize) -> Option<f64> {
        self.slots.get(place)?.si()
    }

    /// The number of a quantity in SI units, if known.
    pub fn si(&self, id: impl Into<AnyId>) -> Option<f64> {
        self.of(id).si()
    }

    /// Where the number of a quantity came from, if known.
    pub fn origin(&self, id: impl Into<AnyId>) -> Option<Origin> {
        match self.of(id) {
            Value::Known(known) => Some(known.origin),
            Value::Missing(_) | Value::Invalid(_) => None,
        }
    }

    /// The typed number of a quantity, if known.
    pub fn get<Q: Measure>(&self, id: Id<Q>) -> Option<Q> {
        self.si(id).map(Q::from_si)
    }
}
