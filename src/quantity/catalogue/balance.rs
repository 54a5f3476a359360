//! Axle loads, tipping and nosing over.

use crate::quantity::{
    Acceleration, Angle, Entry, Force, Id, Length, Mass, Ratio, Speed, Topic::Balance,
};

pub const WHEELBASE: Id<Length> = Id::new("wheelbase");
pub const WHEELBASE_MIDDLE: Id<Length> = Id::new("wheelbase-middle");
pub const GAUGE: Id<Length> = Id::new("gauge");
pub const SIDE_OFFSET: Id<Length> = Id::new("side-offset");
pub const SIDE_SLOPE: Id<Angle> = Id::new("side-slope");
pub const PUSH_HEIGHT: Id<Length> = Id::new("push-height");
pub const FRONT_SCALE: Id<Mass> = Id::new("front-scale");
pub const REAR_SCALE: Id<Mass> = Id::new("rear-scale");
pub const RAISED_SCALE: Id<Mass> = Id::new("raised-scale");
pub const RAISE_ANGLE: Id<Angle> = Id::new("raise-angle");
pub const AXLE_HEIGHT: Id<Length> = Id::new("axle-height");

pub const SUPPORT_LENGTH: Id<Length> = Id::new("support-length");
pub const SUPPORT_MIDDLE: Id<Length> = Id::new("support-middle");
pub const REAR_ARM: Id<Length> = Id::new("rear-arm");
pub const FRONT_ARM: Id<Length> = Id::new("front-arm");
pub const FRONT_LOAD: Id<Force> = Id::new("front-load");
pub const REAR_LOAD: Id<Force> = Id::new("rear-load");
pub const FRONT_SHARE: Id<Ratio> = Id::new("front-share");
pub const LOAD_SHIFT: Id<Force> = Id::new("load-shift");
pub const MOVING_FRONT_LOAD: Id<Force> = Id::new("moving-front-load");
pub const MOVING_REAR_LOAD: Id<Force> = Id::new("moving-rear-load");
pub const SCALE_MASS: Id<Mass> = Id::new("scale-mass");
pub const SCALE_OFFSET: Id<Length> = Id::new("scale-offset");
pub const SCALE_CG_HEIGHT: Id<Length> = Id::new("scale-cg-height");
pub const FRONT_LIFT_ACCELERATION: Id<Acceleration> = Id::new("front-lift-acceleration");
pub const FRONT_LIFT_LIMIT: Id<Ratio> = Id::new("front-lift-limit");
pub const FRONT_LIFT_SLOPE: Id<Angle> = Id::new("front-lift-slope");
pub const CLIMB_DEMAND: Id<Ratio> = Id::new("climb-demand");
pub const FRONT_LIFT_MARGIN: Id<Ratio> = Id::new("front-lift-margin");
pub const NOSE_OVER_DECELERATION: Id<Acceleration> = Id::new("nose-over-deceleration");
pub const NOSE_OVER_LIMIT: Id<Ratio> = Id::new("nose-over-limit");
pub const NOSE_OVER_SLOPE: Id<Angle> = Id::new("nose-over-slope");
pub const BRAKE_DEMAND: Id<Ratio> = Id::new("brake-demand");
pub const NOSE_OVER_MARGIN: Id<Ratio> = Id::new("nose-over-margin");
pub const SIDE_ARM: Id<Length> = Id::new("side-arm");
pub const STABILITY_FACTOR: Id<Ratio> = Id::new("static-stability-factor");
pub const SIDE_TIP_ANGLE: Id<Angle> = Id::new("side-tip-angle");
pub const SIDE_SLOPE_DEMAND: Id<Ratio> = Id::new("side-slope-demand");
pub const SIDE_SLOPE_MARGIN: Id<Ratio> = Id::new("side-slope-margin");
pub const SIDE_LIMIT: Id<Ratio> = Id::new("side-limit");
pub const SIDE_LIMIT_SLOPE: Id<Angle> = Id::new("side-limit-slope");
pub const TIP_SPEED: Id<Speed> = Id::new("tip-speed");
pub const TURN_SPEED_LIMIT: Id<Speed> = Id::new("turn-speed-limit");
pub const TURN_MARGIN: Id<Ratio> = Id::new("turn-margin");
pub const TIPPING_PUSH: Id<Force> = Id::new("tipping-push");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Balance, WHEELBASE, "wheelbase", r"L_w", "From the front to the rear axle, or from the skis to the track's middle. Unsaid, the contact length of the tracks counts.")
        .above_zero()
        .usual(0.1, 3.0),
    Entry::given(Balance, WHEELBASE_MIDDLE, "wheelbase's middle from the contact's", r"x_w", "How far the middle of the wheelbase is ahead of the middle of the tracks’ ground contact; behind it is negative. Unsaid, the two are taken to be the same, and with skis in front of a track half a wheelbase apart.")
        .possible(-100.0, 100.0)
        .usual(-0.5, 1.0),
    Entry::given(Balance, GAUGE, "gauge", "B", "From the middle of the left track or wheel to the middle of the right one.")
        .above_zero()
        .usual(0.08, 2.0),
    Entry::given(Balance, SIDE_OFFSET, "balance point to the side", r"y_0", "How far the balance point is off the middle line, left is positive.")
        .assumed(0.0)
        .possible(-100.0, 100.0)
        .usual(-0.05, 0.05),
    Entry::given(Balance, SIDE_SLOPE, "side slope", r"\phi", "How steep the ground is across the machine.")
        .assumed(0.0)
        .possible(0.0, 80.0 * std::f64::consts::PI / 180.0)
        .usual(0.0, 0.6)
        .fixed(),
    Entry::given(Balance, PUSH_HEIGHT, "height of the push", r"h_p", "How high above the ground something pushes or pulls from the side: a rope, a branch, a hand.")
        .above_zero()
        .usual(0.05, 1.5),
    Entry::given(Balance, FRONT_SCALE, "front scale reading", r"m_f", "What the scale under the front reads, level.")
        .usual(0.2, 300.0),
    Entry::given(Balance, REAR_SCALE, "rear scale reading", r"m_r", "What the scale under the rear reads, level.")
        .usual(0.2, 300.0),
    Entry::given(Balance, RAISED_SCALE, "front scale reading, rear raised", r"m_{f2}", "What the scale under the front reads with the rear raised.")
        .usual(0.2, 300.0),
    Entry::given(Balance, RAISE_ANGLE, "tilt with the rear raised", r"\tau", "How far the machine is tilted while the rear is raised: 15° or more.")
        .above_zero()
        .possible(0.0, 80.0 * std::f64::consts::PI / 180.0)
        .usual(0.2, 0.6),
    Entry::given(Balance, AXLE_HEIGHT, "axle height", r"r_a", "How high the axles, about which it tilts on the scales, are above the ground.")
        .usual(0.02, 0.5),
    Entry::found(Balance, SUPPORT_LENGTH, "length of support", r"L_s", "From the front to the rear edge of what carries the machine.")
        .above_zero(),
    Entry::found(Balance, SUPPORT_MIDDLE, "middle of support", r"x_s", "How far the middle between the front and the rear edge of support is ahead of the middle of the ground contact, from which the balance point is counted.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Balance, REAR_ARM, "balance point ahead of the rear support", r"l_r", "How far the balance point is ahead of the rear edge of support.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Balance, FRONT_ARM, "balance point behind the front support", r"l_f", "How far the balance point is behind the front edge of support.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Balance, FRONT_LOAD, "load on the front", r"F_f", "What the front carries, standing; below zero it lifts.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Balance, REAR_LOAD, "load on the rear", r"F_r", "What the rear carries, standing; below zero it lifts.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Balance, FRONT_SHARE, "share of the load on the front", r"s_f", "The load on the front over both.")
        .possible(f64::MIN, f64::MAX)
        .units(&["%"], &["%"]),
    Entry::found(Balance, LOAD_SHIFT, "load that shifts to the rear", r"\Delta F", "How much load the acceleration wanted moves from front to rear; below zero to the front.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Balance, MOVING_FRONT_LOAD, "load on the front while gaining speed", r"F_{f,a}", "What the front carries with the acceleration wanted; below zero it lifts.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Balance, MOVING_REAR_LOAD, "load on the rear while gaining speed", r"F_{r,a}", "What the rear carries with the acceleration wanted; below zero it lifts.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Balance, SCALE_MASS, "mass by the scales", r"m_s", "Both readings together."),
    Entry::found(Balance, SCALE_OFFSET, "balance point offset by the scales", r"e_s", "How far the balance point is ahead of the middle of the ground contact, by the two readings; enter it as the balance point offset.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Balance, SCALE_CG_HEIGHT, "centre of gravity height by the scales", r"h_s", "How high the centre of gravity is, by what the front scale gains when the rear is raised.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Balance, FRONT_LIFT_ACCELERATION, "acceleration that lifts the front", r"a_{\mathrm{lift}}", "Gain speed any quicker on this slope and the front carries nothing.")
        .possible(f64::MIN, f64::MAX)
        .units(&["m/s²"], &["ft/s²"]),
    Entry::found(Balance, FRONT_LIFT_LIMIT, "front-lift limit on the flat", r"n_{\mathrm{lift}}", "The acceleration that lifts the front on level ground, in multiples of g.")
        .possible(f64::MIN, f64::MAX)
        .units(&["g"], &["g"])
        .headline(),
    Entry::found(Balance, FRONT_LIFT_SLOPE, "slope that tips it backwards", r"\theta_{\mathrm{lift}}", "Standing still, nose uphill.")
        .headline(),
    Entry::found(Balance, CLIMB_DEMAND, "what slope and acceleration ask of the front", r"n_{\mathrm{climb}}", "How hard the present slope and the acceleration wanted pull the nose up, as an acceleration on the flat, in multiples of g.")
        .units(&["g"], &["g"]),
    Entry::found(Balance, FRONT_LIFT_MARGIN, "margin before the front lifts", r"M_{\mathrm{lift}}", "The front-lift limit over what slope and acceleration ask.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Balance, NOSE_OVER_DECELERATION, "deceleration that lifts the rear", r"a_{\mathrm{over}}", "Brake any harder on this slope and the rear carries nothing.")
        .possible(f64::MIN, f64::MAX)
        .units(&["m/s²"], &["ft/s²"]),
    Entry::found(Balance, NOSE_OVER_LIMIT, "nose-over limit on the flat", r"n_{\mathrm{over}}", "The deceleration that lifts the rear on level ground, in multiples of g.")
        .possible(f64::MIN, f64::MAX)
        .units(&["g"], &["g"])
        .headline(),
    Entry::found(Balance, NOSE_OVER_SLOPE, "slope that tips it over its nose", r"\theta_{\mathrm{over}}", "Standing still, nose downhill.")
        .headline(),
    Entry::found(Balance, BRAKE_DEMAND, "what slope and braking ask of the rear", r"n_{\mathrm{brake}}", "How hard the present slope and full braking lift the rear, as a deceleration on the flat, in multiples of g.")
        .units(&["g"], &["g"]),
    Entry::found(Balance, NOSE_OVER_MARGIN, "margin before it noses over", r"M_{\mathrm{over}}", "The nose-over limit over what slope and braking ask.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Balance, SIDE_ARM, "balance point to the nearer side", r"l_s", "From the balance point to the middle of the nearer track or wheel.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Balance, STABILITY_FACTOR, "static stability factor", r"\mathrm{SSF}", "Half the gauge over the height of the centre of gravity: the sideways pull, in multiples of g, that tips a rigid machine.")
        .possible(f64::MIN, f64::MAX)
        .units(&["g"], &["g"])
        .headline(),
    Entry::found(Balance, SIDE_TIP_ANGLE, "side tip angle", r"\phi_{\mathrm{tip}}", "The side slope on which a rigid machine standing still tips over.")
        .headline(),
    Entry::found(Balance, SIDE_SLOPE_DEMAND, "what the side slope asks", r"n_\phi", "The pull of the side slope to the low side, over the force on the ground.")
        .units(&["g"], &["g"]),
    Entry::found(Balance, SIDE_SLOPE_MARGIN, "margin on the side slope", r"M_\phi", "The static stability factor over what the side slope asks.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Balance, SIDE_LIMIT, "sideways limit", r"n_s", "The sideways pull, in multiples of g, at which it tips or slides, whichever comes first.")
        .possible(f64::MIN, f64::MAX)
        .units(&["g"], &["g"])
        .headline(),
    Entry::found(Balance, SIDE_LIMIT_SLOPE, "side slope at which it tips or slides", r"\phi_s", "Standing still, whichever comes first."),
    Entry::found(Balance, TIP_SPEED, "speed that tips it in the turn", r"v_{\mathrm{tip}}", "On level ground, if the grip holds."),
    Entry::found(Balance, TURN_SPEED_LIMIT, "fastest speed in the turn", r"v_s", "On level ground, before it tips or slides.")
        .headline(),
    Entry::found(Balance, TURN_MARGIN, "margin in the turn", r"M_t", "The fastest speed in the turn over the driving speed.")
        .headline(),
    Entry::found(Balance, TIPPING_PUSH, "push that tips it over its side", r"F_{\mathrm{tip}}", "On level ground, at the height of the push, if it does not slide first.")
        .possible(f64::MIN, f64::MAX),
];
