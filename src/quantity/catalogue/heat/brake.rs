//! Brakes and clutches.

use crate::quantity::{
    AngularSpeed, Energy, Entry, Id, Inertia, Length, Mass, Ratio, SpecificHeat, Speed,
    Temperature, TemperatureStep, Topic::Heat,
};

pub const BRAKING_SPEED: Id<Speed> = Id::new("braking-speed");
pub const BRAKING_DESCENT: Id<Length> = Id::new("braking-descent");
pub const BRAKE_MASS: Id<Mass> = Id::new("brake-mass");
pub const BRAKE_SPECIFIC_HEAT: Id<SpecificHeat> = Id::new("brake-specific-heat");
pub const BRAKE_SHARE: Id<Ratio> = Id::new("brake-share");
pub const BRAKE_ENERGY: Id<Energy> = Id::new("brake-energy");
pub const BRAKE_RISE: Id<TemperatureStep> = Id::new("brake-rise");
pub const BRAKE_TEMPERATURE: Id<Temperature> = Id::new("brake-temperature");
pub const CLUTCH_DRIVING_INERTIA: Id<Inertia> = Id::new("clutch-driving-inertia");
pub const CLUTCH_DRIVEN_INERTIA: Id<Inertia> = Id::new("clutch-driven-inertia");
pub const CLUTCH_DRIVING_SPEED: Id<AngularSpeed> = Id::new("clutch-driving-speed");
pub const CLUTCH_DRIVEN_SPEED: Id<AngularSpeed> = Id::new("clutch-driven-speed");
pub const CLUTCH_HEAT: Id<Energy> = Id::new("clutch-heat");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Heat, BRAKING_SPEED, "speed before braking", r"v_{br}", "The speed the brake takes away.")
        .assumed(0.0)
        .usual(0.0, 15.0),
    Entry::given(Heat, BRAKING_DESCENT, "height braked down", r"h_{br}", "How far down the brake holds the machine back.")
        .assumed(0.0)
        .usual(0.0, 100.0),
    Entry::given(Heat, BRAKE_MASS, "mass of a brake that warms", r"m_{br}", "The disc, drum or rotor that takes the heat.")
        .above_zero()
        .usual(0.02, 10.0),
    Entry::given(Heat, BRAKE_SPECIFIC_HEAT, "specific heat of the brake", r"c_{br}", "The heat that warms a kilogram of it by a kelvin.")
        .assumed(460.0)
        .above_zero()
        .usual(380.0, 1000.0),
    Entry::given(Heat, BRAKE_SHARE, "share of one brake", r"x_{br}", "The part of the energy that this brake takes.")
        .assumed(1.0)
        .possible(0.0, 1.0)
        .usual(0.1, 1.0),
    Entry::given(Heat, CLUTCH_DRIVING_INERTIA, "inertia on the driving side of the clutch", r"J_1", "Rotor, flywheel and all that turns with them.")
        .above_zero()
        .usual(1e-5, 1.0),
    Entry::given(Heat, CLUTCH_DRIVEN_INERTIA, "inertia on the driven side of the clutch", r"J_2", "All that the clutch must bring to speed, the machine's own mass among it, as felt at the clutch.")
        .above_zero()
        .usual(1e-5, 10.0),
    Entry::given(Heat, CLUTCH_DRIVING_SPEED, "speed of the driving side", r"\omega_1", "Its speed before the clutch bites.")
        .above_zero()
        .usual(10.0, 700.0),
    Entry::given(Heat, CLUTCH_DRIVEN_SPEED, "speed of the driven side", r"\omega_2", "Its speed before the clutch bites.")
        .assumed(0.0)
        .usual(0.0, 700.0),
    Entry::found(Heat, BRAKE_ENERGY, "energy to brake away", r"E_{br}", "What a stop, and the way down, put into the brakes."),
    Entry::found(Heat, BRAKE_RISE, "temperature rise of a brake", r"\Delta T_{br}", "How much warmer one stop makes a brake that keeps it all."),
    Entry::found(Heat, BRAKE_TEMPERATURE, "brake temperature", r"T_{br}", "How hot a brake is after one stop from air temperature."),
    Entry::found(Heat, CLUTCH_HEAT, "heat of one start in the clutch", r"E_c", "What the clutch turns to heat each time it bites, however fast or slow it does."),
];
