//! Force, power, speed and stopping.

use crate::quantity::{Entry, Id, Ratio, Speed, Topic::Motion};

pub const DRIVING_SPEED: Id<Speed> = Id::new("driving-speed");
pub const DRAG_COEFFICIENT: Id<Ratio> = Id::new("drag-coefficient");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Motion, DRIVING_SPEED, "driving speed", "v", "The speed at which forces, power and stopping are worked out.")
        .usual(0.0, 15.0),
    Entry::given(Motion, DRAG_COEFFICIENT, "drag coefficient", r"C_d", "How much the shape drags in the air: about 0.3 for a car, 0.9 for an upright rider, 1.1 for a flat plate.")
        .units(&[""], &[""])
        .usual(0.2, 1.3),
];
