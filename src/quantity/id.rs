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
    hash: u64,
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
        Self { name, hash: hash(name), measure: PhantomData }
    }

    /// The same name without its type.
    pub const fn any(self) -> AnyId {
        AnyId { name: self.name, hash: self.hash }
    }
}

impl<Q: Measure> From<Id<Q>> for AnyId {
    fn from(id: Id<Q>) -> Self {
        id.any()
    }
}

/// The name of any quantity of the catalogue.
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct AnyId {
    name: &'static str,
    hash: u64,
}

impl AnyId {
    /// The name as files, lessons and the command line write it.
    pub const fn name(self) -> &'static str {
        self.name
    }

    /// What tables of quantities are keyed by, worked out by the compiler.
    pub(super) const fn hash(self) -> u64 {
        self.hash
    }
}

/// A name as one number: FNV-1a with 64 bits (RFC 9923).
pub(super) const fn hash(name: &str) -> u64 {
    let (bytes, mut at) = (name.as_bytes(), 0);
    let mut hash = 0xcbf2_9ce4_8422_2325_u64;
    while at < bytes.len() {
        hash = (hash ^ bytes[at] as u64).wrapping_mul(0x0100_0000_01b3);
        at += 1;
    }
    hash
}

impl fmt::Debug for AnyId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name)
    }
}

impl fmt::Display for AnyId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name)
    }
}
