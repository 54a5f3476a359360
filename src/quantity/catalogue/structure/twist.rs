//! Round tubes and axles under a twist.

use crate::quantity::{Entry, Id, Pressure, Topic::Structure, Torque, Volume};

pub const TWIST_MOMENT: Id<Torque> = Id::new("twist-moment");
pub const TUBE_POLAR_MODULUS: Id<Volume> = Id::new("tube-polar-modulus");
pub const TWIST_STRESS: Id<Pressure> = Id::new("twist-stress");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Structure, TWIST_MOMENT, "twist on the tube", "T_t", "The torque that a round tube or hollow axle passes on, at its worst: about the stall of the drive.")
        .usual(0.1, 500.0),
    Entry::found(Structure, TUBE_POLAR_MODULUS, "polar modulus of the tube", "Z_p", "What a round tube sets against a twist."),
    Entry::found(Structure, TWIST_STRESS, "shear stress in the twisted tube", r"\tau_t", "The shear stress at the skin of the tube; most metals give at a little over half of their strength in a straight pull.")
        .units(&["MPa"], &["psi", "ksi"]),
];
