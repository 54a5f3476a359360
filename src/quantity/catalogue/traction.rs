//! How soft ground carries, drags and grips.

use std::f64::consts::PI;

use crate::quantity::{
    Acceleration, Angle, Area, Density, Entry, Force, Id, Length, MassFlow, Pressure, Ratio, Speed,
    Topic::Traction,
};

pub const SINKING_WIDTH: Id<Length> = Id::new("sinking-width");
pub const RUT_PRESSURE: Id<Pressure> = Id::new("rut-pressure");
pub const RUT_PRESSURE_LOW: Id<Pressure> = Id::new("rut-pressure-low");
pub const RUT_PRESSURE_HIGH: Id<Pressure> = Id::new("rut-pressure-high");
pub const SINKAGE: Id<Length> = Id::new("sinkage");
pub const SINKAGE_LOW: Id<Length> = Id::new("sinkage-low");
pub const SINKAGE_HIGH: Id<Length> = Id::new("sinkage-high");
pub const LOW_END_SINKAGE: Id<Length> = Id::new("low-end-sinkage");
pub const LOW_END_SINKAGE_HIGH: Id<Length> = Id::new("low-end-sinkage-high");
pub const COMPACTION_RESISTANCE: Id<Force> = Id::new("compaction-resistance");
pub const COMPACTION_RESISTANCE_LOW: Id<Force> = Id::new("compaction-resistance-low");
pub const COMPACTION_RESISTANCE_HIGH: Id<Force> = Id::new("compaction-resistance-high");
pub const LOAD_PER_WHEEL: Id<Force> = Id::new("load-per-wheel");
pub const WHEEL_SINKAGE: Id<Length> = Id::new("wheel-sinkage");
pub const WHEEL_SINKAGE_LOW: Id<Length> = Id::new("wheel-sinkage-low");
pub const WHEEL_SINKAGE_HIGH: Id<Length> = Id::new("wheel-sinkage-high");
pub const WHEEL_COMPACTION: Id<Force> = Id::new("wheel-compaction-resistance");
pub const WHEEL_COMPACTION_LOW: Id<Force> = Id::new("wheel-compaction-resistance-low");
pub const WHEEL_COMPACTION_HIGH: Id<Force> = Id::new("wheel-compaction-resistance-high");
pub const DRIVEN_SHARE: Id<Ratio> = Id::new("driven-share");
pub const SLIP: Id<Ratio> = Id::new("slip");
pub const SHEAR_DISPLACEMENT: Id<Length> = Id::new("shear-displacement");
pub const SHEAR_STRESS: Id<Pressure> = Id::new("shear-stress");
pub const THRUST_LIMIT: Id<Force> = Id::new("thrust-limit");
pub const THRUST_REACHED: Id<Ratio> = Id::new("thrust-reached");
pub const THRUST: Id<Force> = Id::new("thrust");
pub const THRUST_LOW: Id<Force> = Id::new("thrust-low");
pub const THRUST_HIGH: Id<Force> = Id::new("thrust-high");
pub const THRUST_NO_COHESION: Id<Force> = Id::new("thrust-no-cohesion");
pub const DRAWBAR_PULL: Id<Force> = Id::new("drawbar-pull");
pub const DRAWBAR_PULL_LOW: Id<Force> = Id::new("drawbar-pull-low");
pub const DRAWBAR_PULL_HIGH: Id<Force> = Id::new("drawbar-pull-high");
pub const DRAWBAR_COEFFICIENT: Id<Ratio> = Id::new("drawbar-coefficient");
pub const PULL_WANTED: Id<Force> = Id::new("pull-wanted");
pub const PUSH_NEEDED: Id<Force> = Id::new("push-needed");
pub const SLIP_NEEDED: Id<Ratio> = Id::new("slip-needed");
pub const SLIP_NEEDED_HIGH: Id<Ratio> = Id::new("slip-needed-high");
pub const SOFT_CLIMB: Id<Angle> = Id::new("soft-climb");
pub const SOFT_CLIMB_LOW: Id<Angle> = Id::new("soft-climb-low");
pub const GRIP_PUSH: Id<Force> = Id::new("grip-push");
pub const GRIP_CLIMB: Id<Angle> = Id::new("grip-climb");
pub const GRIP_ACCELERATION: Id<Acceleration> = Id::new("grip-acceleration");
pub const SLIDE_ANGLE: Id<Angle> = Id::new("slide-angle");
pub const SLIDING_FRICTION: Id<Force> = Id::new("sliding-friction");
pub const SLIDE_ACCELERATION: Id<Acceleration> = Id::new("slide-acceleration");
pub const SLIDE_UP_DECELERATION: Id<Acceleration> = Id::new("slide-up-deceleration");
pub const ROLLING_RESISTANCE: Id<Force> = Id::new("rolling-resistance");
pub const RUT_ROLLING_COEFFICIENT: Id<Ratio> = Id::new("rut-rolling-coefficient");
pub const PAVED_ROLLING_COEFFICIENT: Id<Ratio> = Id::new("paved-rolling-coefficient");
pub const SNOW_FINAL_DENSITY: Id<Density> = Id::new("snow-final-density");
pub const SNOW_RUT: Id<Length> = Id::new("snow-rut");
pub const SNOW_RUT_LOW: Id<Length> = Id::new("snow-rut-low");
pub const SNOW_RUT_HIGH: Id<Length> = Id::new("snow-rut-high");
pub const SNOW_TRACTION: Id<Force> = Id::new("snow-traction");
pub const SNOW_TRACTION_LOW: Id<Force> = Id::new("snow-traction-low");
pub const SNOW_TRACTION_HIGH: Id<Force> = Id::new("snow-traction-high");
pub const SNOW_RESISTANCE: Id<Force> = Id::new("snow-resistance");
pub const SNOW_DRAWBAR_PULL: Id<Force> = Id::new("snow-drawbar-pull");
pub const SNOW_DRAWBAR_PULL_LOW: Id<Force> = Id::new("snow-drawbar-pull-low");
pub const SNOW_DRAWBAR_PULL_HIGH: Id<Force> = Id::new("snow-drawbar-pull-high");
pub const SNOW_DRAWBAR_COEFFICIENT: Id<Ratio> = Id::new("snow-drawbar-coefficient");
pub const THROWN_FLOW: Id<MassFlow> = Id::new("thrown-flow");
pub const THROW_SPEED: Id<Speed> = Id::new("throw-speed");
pub const THROWN_THRUST: Id<Force> = Id::new("thrown-thrust");
pub const ROAD_WHEELS_PER_TRACK: Id<Ratio> = Id::new("road-wheels-per-track");
pub const ROAD_WHEELS: Id<Ratio> = Id::new("road-wheels");
pub const ROAD_WHEEL_DIAMETER: Id<Length> = Id::new("road-wheel-diameter");
pub const ROAD_WHEEL_SQUASH: Id<Length> = Id::new("road-wheel-squash");
pub const TRACK_PITCH: Id<Length> = Id::new("track-pitch");
pub const LINK_AREA_RATIO: Id<Ratio> = Id::new("link-area-ratio");
pub const MEAN_MAXIMUM_PRESSURE: Id<Pressure> = Id::new("mean-maximum-pressure");
pub const BELT_MEAN_MAXIMUM_PRESSURE: Id<Pressure> = Id::new("belt-mean-maximum-pressure");
pub const SHOE_AREA: Id<Area> = Id::new("shoe-area");
pub const BELLY_CLEARANCE: Id<Length> = Id::new("belly-clearance");
pub const GROUSER_FACTOR: Id<Ratio> = Id::new("grouser-factor");
pub const ENGINE_FACTOR: Id<Ratio> = Id::new("engine-factor");
pub const TRANSMISSION_FACTOR: Id<Ratio> = Id::new("transmission-factor");
pub const BOGIE_FACTOR: Id<Ratio> = Id::new("bogie-factor");
pub const MOBILITY_INDEX: Id<Ratio> = Id::new("mobility-index");
pub const CONE_INDEX_ONE_PASS: Id<Pressure> = Id::new("cone-index-one-pass");
pub const CONE_INDEX_FIFTY_PASSES: Id<Pressure> = Id::new("cone-index-fifty-passes");
pub const TYRE_SECTION_HEIGHT: Id<Length> = Id::new("tyre-section-height");
pub const TYRE_DEFLECTION_RATIO: Id<Ratio> = Id::new("tyre-deflection-ratio");
pub const WHEELED_MOBILITY_INDEX: Id<Ratio> = Id::new("wheeled-mobility-index");
pub const WHEELED_CONE_INDEX: Id<Pressure> = Id::new("wheeled-cone-index");
pub const ICE_GUIDE_THICKNESS: Id<Length> = Id::new("ice-guide-thickness");

const ANY: (f64, f64) = (f64::MIN, f64::MAX);
const DEGREE: f64 = PI / 180.0;

pub(super) const ENTRIES: &[Entry] = &[
    // How deep it goes in
    Entry::found(Traction, SINKING_WIDTH, "smaller side of the patch", r"b_p", "The smaller side of one track or ski where it presses: what decides how the ground answers.")
        .above_zero()
        .usual(0.01, 0.5),
    Entry::found(Traction, RUT_PRESSURE, "pressure the ground carries at a rut depth", r"p_r", "The even pressure at which this patch goes just as deep as the rut allowed."),
    Entry::found(Traction, RUT_PRESSURE_LOW, "pressure carried at a rut depth, weaker ground", r"p_{r,\mathrm{low}}", "The same where the ground is weaker by the doubt."),
    Entry::found(Traction, RUT_PRESSURE_HIGH, "pressure carried at a rut depth, stronger ground", r"p_{r,\mathrm{high}}", "The same where the ground is stronger by the doubt."),
    Entry::found(Traction, SINKAGE, "sinkage (mean)", "z", "How deep the tracks or skis go in under the mean pressure, by the table's ground.")
        .headline(),
    Entry::found(Traction, SINKAGE_LOW, "sinkage, firmer ground", r"z_{\mathrm{low}}", "How deep it goes in where the ground is stronger by the doubt."),
    Entry::found(Traction, SINKAGE_HIGH, "sinkage, weaker ground", r"z_{\mathrm{high}}", "How deep it goes in where the ground is weaker by the doubt.")
        .headline(),
    Entry::found(Traction, LOW_END_SINKAGE, "sinkage under the low end (worst)", r"z_{\mathrm{end}}", "How deep the end goes in that the load leans towards."),
    Entry::found(Traction, LOW_END_SINKAGE_HIGH, "sinkage under the low end, weaker ground", r"z_{\mathrm{end},\mathrm{high}}", "The worst end on ground that is weaker by the doubt."),
    Entry::found(Traction, LOAD_PER_WHEEL, "load on one wheel", r"W_w", "What one wheel carries when all of them share alike.")
        .above_zero(),
    Entry::found(Traction, WHEEL_SINKAGE, "sinkage of a stiff wheel", r"z_w", "How deep one wheel goes in that does not squash.")
        .headline(),
    Entry::found(Traction, WHEEL_SINKAGE_LOW, "sinkage of a stiff wheel, firmer ground", r"z_{w,\mathrm{low}}", "How deep the wheel goes in where the ground is stronger by the doubt."),
    Entry::found(Traction, WHEEL_SINKAGE_HIGH, "sinkage of a stiff wheel, weaker ground", r"z_{w,\mathrm{high}}", "How deep the wheel goes in where the ground is weaker by the doubt."),
    // What holds it back
    Entry::found(Traction, COMPACTION_RESISTANCE, "force to press the ruts", r"R_c", "How hard the ground holds the tracks back because they press ruts.")
        .headline(),
    Entry::found(Traction, COMPACTION_RESISTANCE_LOW, "force to press the ruts, firmer ground", r"R_{c,\mathrm{low}}", "The same where the ground is stronger by the doubt."),
    Entry::found(Traction, COMPACTION_RESISTANCE_HIGH, "force to press the ruts, weaker ground", r"R_{c,\mathrm{high}}", "The same where the ground is weaker by the doubt."),
    Entry::found(Traction, WHEEL_COMPACTION, "force to press the wheels' ruts", r"R_w", "How hard the ground holds stiff wheels back because they press ruts, each its own.")
        .headline(),
    Entry::found(Traction, WHEEL_COMPACTION_LOW, "force to press the wheels' ruts, firmer ground", r"R_{w,\mathrm{low}}", "The same where the ground is stronger by the doubt."),
    Entry::found(Traction, WHEEL_COMPACTION_HIGH, "force to press the wheels' ruts, weaker ground", r"R_{w,\mathrm{high}}", "The same where the ground is weaker by the doubt."),
    Entry::found(Traction, ROLLING_RESISTANCE, "rolling resistance", r"R_r", "How hard ground and running gear hold the machine back, by the rolling coefficient.")
        .headline(),
    Entry::found(Traction, RUT_ROLLING_COEFFICIENT, "rolling coefficient by rut depth (tyres)", r"c_z", "A rule of thumb of earthmoving for the rolling coefficient of large tyres that sink in."),
    Entry::found(Traction, PAVED_ROLLING_COEFFICIENT, "rolling coefficient on pavement", r"c_v", "The rolling coefficient of car tyres on a paved road, which grows with speed."),
    // What it can push with, by friction
    Entry::given(Traction, DRIVEN_SHARE, "share of the load on driven gear", r"s_d", "How much of the weight stands on tracks or wheels that drive.")
        .assumed(1.0)
        .possible(0.0, 1.0)
        .units(&["%"], &["%"])
        .usual(0.3, 1.0),
    Entry::found(Traction, GRIP_PUSH, "push the grip allows", r"F_g", "The most the machine can push before it spins, by the grip coefficient, whatever its motor.")
        .headline(),
    Entry::found(Traction, GRIP_CLIMB, "steepest climb by grip", r"\theta_g", "The steepest slope on which grip still beats rolling resistance; a negative angle means not even the level.")
        .possible(-90.0 * DEGREE, 90.0 * DEGREE)
        .headline(),
    Entry::found(Traction, GRIP_ACCELERATION, "acceleration by grip", r"a_g", "The most it can gain speed that grip allows, uphill and against rolling resistance; below zero it cannot start on this slope.")
        .possible(ANY.0, ANY.1),
    Entry::found(Traction, SLIDE_ANGLE, "slope on which it slides", r"\theta_s", "The steepest slope on which friction still holds it, drive locked."),
    Entry::found(Traction, SLIDING_FRICTION, "friction while sliding", r"F_s", "How hard the ground holds back a machine that slides."),
    Entry::found(Traction, SLIDE_ACCELERATION, "acceleration while sliding down", r"a_s", "How it gains speed while it slides down the slope; below zero it comes to rest.")
        .possible(ANY.0, ANY.1),
    Entry::found(Traction, SLIDE_UP_DECELERATION, "deceleration while sliding up", r"a_u", "How it loses speed while it slides up the slope.")
        .possible(ANY.0, ANY.1),
    // What it can push with, on soft ground
    Entry::given(Traction, SLIP, "slip", "i", "How much of the track's travel is lost: 0 is none, 100 % is spinning on the spot.")
        .assumed(0.2)
        .possible(0.0, 1.0)
        .units(&["%"], &["%"])
        .usual(0.02, 0.6),
    Entry::found(Traction, SHEAR_DISPLACEMENT, "drag of the ground under the track's end", r"j", "How far the ground is dragged along by the time the end of a slipping track leaves it."),
    Entry::found(Traction, SHEAR_STRESS, "shear stress under the track's end", r"\tau", "How hard the ground holds on, per area, where it has been dragged the furthest."),
    Entry::found(Traction, THRUST_LIMIT, "limit of thrust", r"F_{\mathrm{max}}", "The most this ground gives at full slip, however strong the motor."),
    Entry::found(Traction, THRUST_REACHED, "share of the limit reached", r"r_i", "How much of the limit of thrust the track reaches at this slip."),
    Entry::found(Traction, THRUST, "thrust", "F_t", "How hard the ground lets the tracks push at this slip.")
        .headline(),
    Entry::found(Traction, THRUST_LOW, "thrust, weaker ground", r"F_{t,\mathrm{low}}", "The thrust where the ground is weaker by the doubt."),
    Entry::found(Traction, THRUST_HIGH, "thrust, stronger ground", r"F_{t,\mathrm{high}}", "The thrust where the ground is stronger by the doubt."),
    Entry::found(Traction, THRUST_NO_COHESION, "thrust without cohesion (what if)", r"F_{t,0}", "What would be left of the thrust if the ground did not stick to itself at all."),
    Entry::found(Traction, DRAWBAR_PULL, "drawbar pull", r"F_d", "What is left to pull with after the ruts and the slope; below zero it cannot keep going.")
        .possible(ANY.0, ANY.1)
        .headline(),
    Entry::found(Traction, DRAWBAR_PULL_LOW, "drawbar pull, weaker ground", r"F_{d,\mathrm{low}}", "The drawbar pull where the ground is weaker by the doubt.")
        .possible(ANY.0, ANY.1)
        .headline(),
    Entry::found(Traction, DRAWBAR_PULL_HIGH, "drawbar pull, stronger ground", r"F_{d,\mathrm{high}}", "The drawbar pull where the ground is stronger by the doubt.")
        .possible(ANY.0, ANY.1),
    Entry::found(Traction, DRAWBAR_COEFFICIENT, "drawbar pull over weight", r"c_d", "The drawbar pull as a share of the weight, to compare machines of any size.")
        .possible(ANY.0, ANY.1),
    Entry::given(Traction, PULL_WANTED, "pull wanted at the hook", r"F_h", "What the machine should pull besides itself.")
        .assumed(0.0)
        .usual(0.0, 5e3),
    Entry::found(Traction, PUSH_NEEDED, "push needed on soft ground", r"F_n", "What the tracks must push: ruts, slope and the load at the hook.")
        .possible(ANY.0, ANY.1),
    Entry::found(Traction, SLIP_NEEDED, "slip needed", r"i_n", "The slip at which the ground gives the push needed.")
        .possible(0.0, 1.0)
        .units(&["%"], &["%"])
        .headline(),
    Entry::found(Traction, SLIP_NEEDED_HIGH, "slip needed, weaker ground", r"i_{n,\mathrm{high}}", "The same where the ground is weaker by the doubt.")
        .possible(0.0, 1.0)
        .units(&["%"], &["%"]),
    Entry::found(Traction, SOFT_CLIMB, "steepest climb on soft ground", r"\theta_t", "The slope on which thrust at this slip just beats ruts and weight; a negative angle means not even the level.")
        .possible(-90.0 * DEGREE, 90.0 * DEGREE)
        .headline(),
    Entry::found(Traction, SOFT_CLIMB_LOW, "steepest climb, weaker ground", r"\theta_{t,\mathrm{low}}", "The same where the ground is weaker by the doubt.")
        .possible(-90.0 * DEGREE, 90.0 * DEGREE),
    Entry::given(Traction, THROWN_FLOW, "mass thrown back per second", r"\dot m", "How much mud, sand, snow or water the tracks or paddles throw straight back each second.")
        .usual(0.0, 50.0),
    Entry::given(Traction, THROW_SPEED, "speed of the throw", "u", "How fast it leaves backwards as seen from the machine: at most the speed of the belt or paddle.")
        .usual(0.0, 30.0),
    Entry::found(Traction, THROWN_THRUST, "thrust from what is thrown back", r"F_u", "The push from throwing stuff back; below zero when the machine outruns its own throw.")
        .possible(ANY.0, ANY.1),
    // Snow and ice
    Entry::found(Traction, SNOW_FINAL_DENSITY, "density of the pressed snow", r"\rho_f", "The density of the snow left in the rut.")
        .above_zero(),
    Entry::found(Traction, SNOW_RUT, "rut in shallow snow", r"z_s", "How deep the rut is in undisturbed snow on firm ground, by the simple rule."),
    Entry::found(Traction, SNOW_RUT_LOW, "rut in shallow snow, shallow end", r"z_{s,\mathrm{low}}", "The shallowest that measured ruts lay against the simple rule."),
    Entry::found(Traction, SNOW_RUT_HIGH, "rut in shallow snow, deep end", r"z_{s,\mathrm{high}}", "The deepest that measured ruts lay against the simple rule."),
    Entry::found(Traction, SNOW_TRACTION, "gross traction on snow or ice", r"T_s", "The most a surface of snow or ice lets the tracks push."),
    Entry::found(Traction, SNOW_TRACTION_LOW, "gross traction, weaker snow", r"T_{s,\mathrm{low}}", "The same where the surface is weaker by the doubt."),
    Entry::found(Traction, SNOW_TRACTION_HIGH, "gross traction, stronger snow", r"T_{s,\mathrm{high}}", "The same where the surface is stronger by the doubt."),
    Entry::found(Traction, SNOW_RESISTANCE, "resistance of the snow", r"R_s", "How hard the snow holds back on the level."),
    Entry::found(Traction, SNOW_DRAWBAR_PULL, "drawbar pull on snow", r"F_{d,s}", "What is left to pull with after the snow and the slope; below zero it cannot keep going.")
        .possible(ANY.0, ANY.1),
    Entry::found(Traction, SNOW_DRAWBAR_PULL_LOW, "drawbar pull on snow, weaker snow", r"F_{d,s,\mathrm{low}}", "The same where the surface is weaker, and holds back more, by the doubt.")
        .possible(ANY.0, ANY.1),
    Entry::found(Traction, SNOW_DRAWBAR_PULL_HIGH, "drawbar pull on snow, stronger snow", r"F_{d,s,\mathrm{high}}", "The same where the surface is stronger, and holds back less, by the doubt.")
        .possible(ANY.0, ANY.1),
    Entry::found(Traction, SNOW_DRAWBAR_COEFFICIENT, "drawbar pull on snow over weight", r"c_{d,s}", "The drawbar pull on snow as a share of the weight.")
        .possible(ANY.0, ANY.1),
    Entry::found(Traction, ICE_GUIDE_THICKNESS, "ice: where a rough guide begins", r"h_{\mathrm{ice}}", "The thickness of clear ice at which a rough published guide for this weight begins. It does not say that ice is safe; no ice is."),
    // Indices to compare with
    Entry::given(Traction, ROAD_WHEELS_PER_TRACK, "road wheels per track", r"n_r", "How many wheels press one track down.")
        .above_zero()
        .whole()
        .usual(2.0, 10.0),
    Entry::found(Traction, ROAD_WHEELS, "road wheels in all", r"N_r", "The road wheels of all tracks.")
        .above_zero()
        .whole(),
    Entry::given(Traction, ROAD_WHEEL_DIAMETER, "road wheel diameter", r"D_r", "How tall one of the wheels is that press the track down.")
        .above_zero()
        .usual(0.01, 0.8),
    Entry::given(Traction, ROAD_WHEEL_SQUASH, "road wheel squash", r"f_r", "How much a pneumatic road wheel squashes under its load.")
        .above_zero()
        .usual(1e-3, 0.1),
    Entry::given(Traction, TRACK_PITCH, "track pitch", r"t", "How long one link of the track is.")
        .above_zero()
        .usual(5e-3, 0.2),
    Entry::given(Traction, LINK_AREA_RATIO, "rigid part of a link", r"A_l", "The stiff area of one link over its pitch times its width.")
        .assumed(1.0)
        .above_zero()
        .usual(0.3, 1.0),
    Entry::found(Traction, MEAN_MAXIMUM_PRESSURE, "mean maximum pressure (index, link track)", r"p_{mm}", "A number to compare tracked machines by: the mean of the peaks under the road wheels. Not a pressure for other formulas."),
    Entry::found(Traction, BELT_MEAN_MAXIMUM_PRESSURE, "mean maximum pressure (index, belt on tyres)", r"p_{mb}", "The same index for a belt that runs on pneumatic wheels."),
    Entry::given(Traction, SHOE_AREA, "area of one track shoe", r"a_l", "The area of one link of the track where it presses.")
        .above_zero()
        .usual(1e-4, 0.1),
    Entry::given(Traction, BELLY_CLEARANCE, "clearance under the belly", r"h_b", "How far the belly is above firm ground.")
        .usual(0.01, 0.5),
    Entry::given(Traction, GROUSER_FACTOR, "grouser factor", r"k_g", "The army method's factor for grousers: 1 for low ones, 1.1 for high.")
        .assumed(1.0)
        .above_zero()
        .usual(1.0, 1.1),
    Entry::given(Traction, ENGINE_FACTOR, "engine factor", r"k_e", "The army method's factor for power: 1 with 10 hp per short ton or more, 1.05 with less.")
        .assumed(1.0)
        .above_zero()
        .usual(1.0, 1.05),
    Entry::given(Traction, TRANSMISSION_FACTOR, "transmission factor", r"k_t", "The army method's factor for the gearbox: 1 when it shifts by itself, 1.05 by hand.")
        .assumed(1.0)
        .above_zero()
        .usual(1.0, 1.05),
    Entry::found(Traction, BOGIE_FACTOR, "bogie factor", r"k_b", "The army method's number for the load on each shoe under a road wheel."),
    Entry::found(Traction, MOBILITY_INDEX, "mobility index (tracks)", r"M_I", "A number that ranks tracked vehicles in fine soil; lower goes further.")
        .possible(ANY.0, ANY.1),
    Entry::found(Traction, CONE_INDEX_ONE_PASS, "cone index for one pass", r"C_1", "How hard fine soil must resist a standard cone for this vehicle to pass once; in psi by custom.")
        .units(&["psi"], &["psi"]),
    Entry::found(Traction, CONE_INDEX_FIFTY_PASSES, "cone index for fifty passes", r"C_{50}", "How hard fine soil must resist a standard cone for fifty passes in one rut; in psi by custom.")
        .units(&["psi"], &["psi"]),
    Entry::given(Traction, TYRE_SECTION_HEIGHT, "tyre section height", r"h_t", "From the rim to the tread of an unloaded tyre.")
        .above_zero()
        .usual(0.01, 0.4),
    Entry::found(Traction, TYRE_DEFLECTION_RATIO, "tyre squash over section height", r"d_t", "How much of its height a tyre squashes under its load.")
        .above_zero()
        .units(&["%"], &["%"]),
    Entry::given(Traction, WHEELED_MOBILITY_INDEX, "mobility index (wheels)", r"M_w", "The army's number that ranks wheeled vehicles in fine soil, from its own tables.")
        .above_zero()
        .usual(20.0, 200.0),
    Entry::found(Traction, WHEELED_CONE_INDEX, "cone index for one pass (wheels)", r"C_w", "How hard fine soil must resist a standard cone for this wheeled vehicle to pass once; in psi by custom.")
        .units(&["psi"], &["psi"]),
];
