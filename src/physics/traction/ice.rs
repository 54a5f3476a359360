//! Where a rough published guide on ice begins. It never says that ice is safe.

use uom::si::f64::{Force, Length};
use uom::si::force::pound_force;
use uom::si::length::inch;

/// The thinnest ice guidance speaks of at all, for one person on foot: 4 inches of clear ice.
///
/// Source: common practice, no published source; widely given by authorities, who all add that no
/// ice is safe.
const ON_FOOT: f64 = 4.0;

/// Thickness at which the rough guide for a vehicle of this weight begins, `h = 4 √P`, in inches of
/// clear, sound, floating ice, `P` in short tons; never less than the guidance for one person.
///
/// Not a safety rule. Ice breaks by bending, in ways that pressure under a track says nothing of;
/// snow ice counts half; warm, cracked, moving or undercut ice counts for nothing.
/// Source: US Army TM 5-852-1 / AFR 88-19 vol. 1, Arctic and Subarctic Construction, General
/// Provisions, section 2.
pub fn guide_begins(weight: Force) -> Length {
    let short_tons = weight.get::<pound_force>() / 2000.0;
    Length::new::<inch>((4.0 * short_tons.sqrt()).max(ON_FOOT))
}
