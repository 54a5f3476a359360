//! What the rules of several topics share: margins, and cautions that always speak.

use crate::quantity::{AnyId, Measure, Ratio};
use crate::rules::{Caution, Values};

/// What it can take over what is asked.
pub(super) fn over<Q: Measure>(capacity: Q, demand: Q) -> Ratio {
    Ratio::from_si(capacity.si() / demand.si())
}

/// A caution's `when` for one that is said with every number.
pub(super) fn always(_: &Values) -> bool {
    true
}

/// The temperature, in kelvin, from which a touch burns: 60 °C.
pub(super) const BURNS: f64 = 273.15 + 60.0;
/// What to say of a hot surface.
pub(super) const HOT: &str = "Hot enough to burn: about 5 s of touch at 60 °C, about 1 s at 68 °C. Let it cool, keep hands and anything that burns away, and measure instead of touching.";

/// What to say of every stall.
pub(super) const MOMENT: &[Caution] = &[Caution {
    when: always,
    says: "A stall is for a moment only: winding, controller and battery overheat in seconds, and a stalled motor must not be held on throttle.",
}];

/// Whether both are known and the first is more than the second.
pub(super) fn exceeds(values: &Values, what: impl Into<AnyId>, limit: impl Into<AnyId>) -> bool {
    values.si(what).zip(values.si(limit)).is_some_and(|(what, limit)| what > limit)
}

/// Whether it is known and less than `limit`, in SI units.
pub(super) fn below(values: &Values, what: impl Into<AnyId>, limit: f64) -> bool {
    values.si(what).is_some_and(|what| what < limit)
}
