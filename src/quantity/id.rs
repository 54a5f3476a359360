//! Names of quantities: typed where the code knows the type, plain where it only passes them on.

use std::fmt;
use std::marker::PhantomData;

use super::dimension::Measure;

/// The name of a quantity whose values have the type `Q`.
///
/// ```compile_fail
/// use heftwise::quantity::{Id, Mass, Force};
/// const MASS: Id<Mass> = Id::new("mass");
/// let force: Id<Force> = MASS; // a mass is not a force
/// ```
pub struct Id<Q> {
    name: &'static str,
    measure: PhantomData<fn() -> Q>,
}

impl<Q> Clone for Id<Q> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<Q> Copy for Id<Q> {}

impl<Q: Measure> Id<Q> {
    /// A name; it must stand in the catalogue exactly once.
    pub const fn new(name: &'static str) -> Self {
        Self { name, measure: PhantomData }
    }

    /// The same name without its type.
    pub const fn any(self) -> AnyId {
        AnyId(self.name)
    }
}

impl<Q: Measure> From<Id<Q>> for AnyId {
    fn from(id: Id<Q>) -> Self {
        id.any()
    }
}

/// The name of any quantity of the catalogue.
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct AnyId(pub(super) &'static str);

impl AnyId {
    /// The name as files, lessons and the command line write it.
    pub const fn name(self) -> &'static str {
        self.0
    }
}

impl fmt::Debug for AnyId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.0)
    }
}

impl fmt::Display for AnyId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.0)
    }
}
