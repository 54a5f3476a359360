//! Stops and drops.

pub(super) mod bounce;
pub(super) mod collision;
pub(super) mod pulse;
pub(super) mod support;

pub use bounce::*;
pub use collision::*;
pub use pulse::*;
pub use support::*;

use std::f64::consts::FRAC_PI_2;

use crate::quantity::{
    Acceleration, Angle, Area, Energy, Entry, Force, Id, Length, Momentum, Pressure, Ratio, Speed,
    Stiffness, Time, Topic::Impact,
};

pub const IMPACT_SPEED: Id<Speed> = Id::new("impact-speed");
pub const DROP_HEIGHT: Id<Length> = Id::new("drop-height");
pub const APPROACH_ANGLE: Id<Angle> = Id::new("approach-angle");
pub const STOP_TIME: Id<Time> = Id::new("stop-time");
pub const STOP_DISTANCE: Id<Length> = Id::new("stop-distance");
pub const PULSE_FACTOR: Id<Ratio> = Id::new("pulse-factor");
pub const RESTITUTION: Id<Ratio> = Id::new("restitution");
pub const IMPACT_PATCH: Id<Area> = Id::new("impact-patch");
pub const PERSON_WEIGHT: Id<Force> = Id::new("person-weight");
pub const FRAME_STRENGTH: Id<Force> = Id::new("frame-strength");
pub const SHOCK_LIMIT: Id<Ratio> = Id::new("shock-limit");
pub const MOMENTUM: Id<Momentum> = Id::new("momentum");
pub const KINETIC_ENERGY: Id<Energy> = Id::new("kinetic-energy");
pub const IMPULSE: Id<Momentum> = Id::new("impulse");
pub const REBOUND_SPEED: Id<Speed> = Id::new("rebound-speed");
pub const REBOUND_HEIGHT: Id<Length> = Id::new("rebound-height");
pub const DECELERATION: Id<Acceleration> = Id::new("deceleration");
pub const DECELERATION_G: Id<Ratio> = Id::new("deceleration-g");
pub const PEAK_DECELERATION_G: Id<Ratio> = Id::new("peak-deceleration-g");
pub const STOPPING_FORCE: Id<Force> = Id::new("stopping-force");
pub const WEIGHT_SHARE: Id<Force> = Id::new("weight-share");
pub const MEAN_IMPACT_FORCE: Id<Force> = Id::new("mean-impact-force");
pub const PEAK_IMPACT_FORCE: Id<Force> = Id::new("peak-impact-force");
pub const SPRING_PEAK_FORCE: Id<Force> = Id::new("spring-peak-force");
pub const SPRING_RATE: Id<Stiffness> = Id::new("spring-rate");
pub const STANDING_PEOPLE: Id<Ratio> = Id::new("standing-people");
pub const STANDING_PEOPLE_PEAK: Id<Ratio> = Id::new("standing-people-peak");
pub const IMPACT_PRESSURE: Id<Pressure> = Id::new("impact-pressure");
pub const FRAME_MARGIN: Id<Ratio> = Id::new("frame-margin");
pub const SHOCK_MARGIN: Id<Ratio> = Id::new("shock-margin");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::either(Impact, IMPACT_SPEED, "speed at touch", "v", "How fast the machine goes at the moment it touches.")
        .usual(0.1, 10.0)
        .free(),
    Entry::either(Impact, DROP_HEIGHT, "drop height", "h", "The height of a free fall that reaches the same speed, air left out.")
        .usual(0.02, 2.0)
        .free(),
    Entry::given(Impact, APPROACH_ANGLE, "approach angle", r"\alpha", "How steeply the machine comes in: 0° along the ground into a post, 90° straight down onto the ground.")
        .assumed(0.0)
        .possible(0.0, FRAC_PI_2)
        .usual(0.0, FRAC_PI_2)
        .free(),
    Entry::either(Impact, STOP_TIME, "stop time", "t", "The time from first touch to standing still.")
        .above_zero()
        .usual(0.001, 0.5),
    Entry::either(Impact, STOP_DISTANCE, "stop distance", "s", "How far the machine still travels from first touch to standing still: suspension, bumper, dent in the ground.")
        .above_zero()
        .usual(0.003, 0.3),
    Entry::given(Impact, PULSE_FACTOR, "peak over mean", "k_p", "How many times the mean the peak of the stop is; it depends on the shape of the pulse.")
        .assumed(FRAC_PI_2)
        .possible(1.0, 100.0)
        .usual(1.0, 3.0),
    Entry::given(Impact, RESTITUTION, "bounce", r"\epsilon", "Coefficient of restitution: speed after over speed before. 0 is a dead stop, 1 a perfect bounce.")
        .assumed(0.0)
        .possible(0.0, 1.0)
        .usual(0.0, 0.9),
    Entry::given(Impact, IMPACT_PATCH, "impact patch", r"A_i", "The area that really touches when it hits.")
        .above_zero()
        .units(&["mm²", "cm²"], &["in²"])
        .usual(1e-5, 0.05),
    Entry::given(Impact, PERSON_WEIGHT, "weight of a standing person", r"W_p", "The yardstick for a force in people standing still.")
        .assumed(700.0)
        .above_zero()
        .usual(500.0, 1000.0)
        .fixed(),
    Entry::given(Impact, FRAME_STRENGTH, "strength of the weakest mount", r"F_s", "The force at which the part that takes the stop bends or breaks: from a bucket test, a datasheet or a sum.")
        .above_zero()
        .usual(50.0, 5e4),
    Entry::given(Impact, SHOCK_LIMIT, "shock limit of the parts", r"G_s", "The deceleration, in multiples of g, that the most delicate part may see.")
        .above_zero()
        .units(&["g"], &["g"])
        .usual(5.0, 200.0),
    Entry::found(Impact, MOMENTUM, "momentum", "P", "Mass times speed: what a stop has to take away."),
    Entry::found(Impact, KINETIC_ENERGY, "kinetic energy", "E", "The work it takes to bring the machine to a stop.")
        .headline(),
    Entry::found(Impact, IMPULSE, "impulse", "J", "Force times time over the whole hit, bounce included."),
    Entry::found(Impact, REBOUND_SPEED, "rebound speed", r"v'", "How fast the machine leaves again."),
    Entry::found(Impact, REBOUND_HEIGHT, "rebound height", r"h'", "How high a straight bounce would carry it."),
    Entry::found(Impact, DECELERATION, "deceleration (mean)", "a", "How quickly the speed goes, on average over the stop.")
        .units(&["m/s²"], &["ft/s²"]),
    Entry::found(Impact, DECELERATION_G, "mean shock", r"G", "The mean deceleration in multiples of standard gravity.")
        .units(&["g"], &["g"])
        .headline(),
    Entry::found(Impact, PEAK_DECELERATION_G, "peak shock", r"G_{\mathrm{peak}}", "The peak deceleration in multiples of standard gravity.")
        .units(&["g"], &["g"])
        .headline(),
    Entry::found(Impact, STOPPING_FORCE, "force to stop the mass (mean)", r"F_a", "The mean force that takes the speed away, without holding up the weight."),
    Entry::found(Impact, WEIGHT_SHARE, "weight's share", r"F_W", "The part of the weight that the stop must hold up as well."),
    Entry::found(Impact, MEAN_IMPACT_FORCE, "impact force (mean)", r"F_{\mathrm{mean}}", "The mean force over the stop, weight's share included.")
        .headline(),
    Entry::found(Impact, PEAK_IMPACT_FORCE, "impact force (peak)", r"F_{\mathrm{peak}}", "The tallest moment of the stop, for the pulse shape chosen.")
        .headline(),
    Entry::found(Impact, SPRING_PEAK_FORCE, "peak force of a spring stop", r"F_{\mathrm{spring}}", "The peak force if one straight spring takes the whole stop distance."),
    Entry::found(Impact, SPRING_RATE, "spring rate for the stop", "k", "The stiffness of the one spring that uses exactly the stop distance."),
    Entry::found(Impact, STANDING_PEOPLE, "mean force in standing people", r"n_p", "How many people standing still press as hard as the mean force."),
    Entry::found(Impact, STANDING_PEOPLE_PEAK, "peak force in standing people", r"n_{\mathrm{peak}}", "How many people standing still press as hard as the peak force.")
        .headline(),
    Entry::found(Impact, IMPACT_PRESSURE, "pressure at the contact patch (peak)", r"p_{\mathrm{hit}}", "The peak force over the patch that touches."),
    Entry::found(Impact, FRAME_MARGIN, "margin of the weakest mount", r"M_f", "The strength of the weakest mount over the peak force.")
        .headline(),
    Entry::found(Impact, SHOCK_MARGIN, "margin on shock", r"M_s", "The shock limit of the parts over the peak deceleration.")
        .headline(),
];
