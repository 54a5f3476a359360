//! What the machine stands on.

use std::f64::consts::PI;

use crate::quantity::{
    Angle, Area, CohesiveModulus, Density, Entry, Force, FrictionalModulus, Id, Length, Mass,
    Pressure, Ratio, Topic::Ground,
};

pub const BLOCK_MASS: Id<Mass> = Id::new("block-mass");
pub const BLOCK_SIDE: Id<Length> = Id::new("block-side");
pub const HOLDING_PRESSURE: Id<Pressure> = Id::new("holding-pressure");
pub const SINKAGE_EXPONENT: Id<Ratio> = Id::new("sinkage-exponent");
pub const COHESIVE_MODULUS: Id<CohesiveModulus> = Id::new("cohesive-modulus");
pub const FRICTIONAL_MODULUS: Id<FrictionalModulus> = Id::new("frictional-modulus");
pub const COHESION: Id<Pressure> = Id::new("cohesion");
pub const FRICTION_ANGLE: Id<Angle> = Id::new("friction-angle");
pub const SHEAR_DEFORMATION: Id<Length> = Id::new("shear-deformation");
pub const SOIL_DOUBT: Id<Ratio> = Id::new("soil-doubt");
pub const RUT_DEPTH: Id<Length> = Id::new("rut-depth");
pub const SNOW_DEPTH: Id<Length> = Id::new("snow-depth");
pub const SNOW_DENSITY: Id<Density> = Id::new("snow-density");
pub const SNOW_TRACTION_FACTOR: Id<Ratio> = Id::new("snow-traction-factor");
pub const SNOW_TRACTION_EXPONENT: Id<Ratio> = Id::new("snow-traction-exponent");
pub const SNOW_RESISTANCE_COEFFICIENT: Id<Ratio> = Id::new("snow-resistance-coefficient");
pub const GRIP_TEST_PULL: Id<Force> = Id::new("grip-test-pull");
pub const GRIP_TEST_MASS: Id<Mass> = Id::new("grip-test-mass");
pub const GRIP_COEFFICIENT: Id<Ratio> = Id::new("grip-coefficient");
pub const SLIDING_COEFFICIENT: Id<Ratio> = Id::new("sliding-coefficient");
pub const TOW_TEST_PULL: Id<Force> = Id::new("tow-test-pull");
pub const TOW_TEST_MASS: Id<Mass> = Id::new("tow-test-mass");
pub const SHEAR_TEST_AREA: Id<Area> = Id::new("shear-test-area");
pub const LIGHT_SHEAR_LOAD: Id<Mass> = Id::new("light-shear-load");
pub const LIGHT_SHEAR_PULL: Id<Force> = Id::new("light-shear-pull");
pub const HEAVY_SHEAR_LOAD: Id<Mass> = Id::new("heavy-shear-load");
pub const HEAVY_SHEAR_PULL: Id<Force> = Id::new("heavy-shear-pull");
pub const TESTED_FRICTION_ANGLE: Id<Angle> = Id::new("tested-friction-angle");
pub const TESTED_COHESION: Id<Pressure> = Id::new("tested-cohesion");
pub const ROLL_ON_SLOPE: Id<Angle> = Id::new("roll-on-slope");
pub const ROLLING_COEFFICIENT: Id<Ratio> = Id::new("rolling-coefficient");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Ground, BLOCK_MASS, "block test load", r"m_b", "The mass on the test block, block and all, when it has sunk 20 mm into your ground today.")
        .above_zero()
        .usual(0.2, 60.0)
        .fixed(),
    Entry::given(Ground, BLOCK_SIDE, "block side", r"s_b", "The side of the square block of the block test.")
        .assumed(0.1)
        .above_zero()
        .usual(0.05, 0.3)
        .fixed(),
    Entry::found(Ground, HOLDING_PRESSURE, "holding pressure of the ground", r"p_h", "The pressure your ground held in the block test; press harder and the machine goes in deeper than 20 mm.")
        .above_zero()
        .usual(500.0, 2e5)
        .headline(),
    Entry::given(Ground, SINKAGE_EXPONENT, "exponent of sinkage", "n", "How fast the ground stiffens as a plate goes in: 1 is a straight spring, less gives way more and more.")
        .possible(0.05, 2.5)
        .usual(0.1, 1.6),
    Entry::given(Ground, COHESIVE_MODULUS, "cohesive modulus of sinkage", r"k_c", "The part of the ground's stiffness that counts more under a narrow patch. Its unit depends on the exponent n of the same ground.")
        .usual(0.0, 1.2e5),
    Entry::given(Ground, FRICTIONAL_MODULUS, "frictional modulus of sinkage", r"k_\phi", "The part of the ground's stiffness that does not care how wide the patch is. Its unit depends on the exponent n of the same ground.")
        .usual(1e4, 6e6),
    Entry::given(Ground, COHESION, "cohesion of the ground", r"c", "How hard the ground sticks to itself when nothing presses on it: much in clay, next to none in dry sand.")
        .usual(0.0, 7e4),
    Entry::given(Ground, FRICTION_ANGLE, "friction angle of the ground", r"\phi", "How much more shear the ground takes per pressure on it, as an angle: about that of a loose heap of dry sand.")
        .possible(0.0, 60.0 * PI / 180.0)
        .usual(5.0 * PI / 180.0, 40.0 * PI / 180.0),
    Entry::given(Ground, SHEAR_DEFORMATION, "shear deformation modulus", "K", "How far the ground must be dragged along before it gives 63 % of its grip.")
        .above_zero()
        .usual(5e-3, 5e-2),
    Entry::given(Ground, SOIL_DOUBT, "doubt in the ground", "d", "How much weaker or stronger than the table the ground of the day may be, every strength alike. It makes the low and high ends of each result.")
        .assumed(0.5)
        .possible(0.0, 0.95)
        .units(&["%"], &["%"])
        .usual(0.2, 0.8),
    Entry::given(Ground, RUT_DEPTH, "rut depth allowed or measured", r"z_r", "How deep a rut is, or how deep you would let it be.")
        .usual(5e-3, 0.5),
    Entry::given(Ground, SNOW_DEPTH, "snow depth", r"h_s", "How deep the undisturbed snow is on the firm ground beneath.")
        .usual(0.02, 0.5),
    Entry::given(Ground, SNOW_DENSITY, "snow density", r"\rho_0", "The mass of a cubic metre of the snow as it lies: weigh a tin of it.")
        .above_zero()
        .possible(1.0, 917.0)
        .usual(50.0, 650.0),
    Entry::given(Ground, SNOW_TRACTION_FACTOR, "traction factor of the snow", r"a_s", "The first of two numbers that say how a snow or ice surface grips, for pressures in kPa.")
        .usual(0.1, 1.0),
    Entry::given(Ground, SNOW_TRACTION_EXPONENT, "traction exponent of the snow", r"m_s", "The second of two numbers that say how a snow or ice surface grips, for pressures in kPa.")
        .possible(0.0, 2.0)
        .usual(0.8, 1.1),
    Entry::given(Ground, SNOW_RESISTANCE_COEFFICIENT, "resistance of the snow over weight", r"c_s", "How hard the snow holds back on the level, as a share of the weight.")
        .usual(0.02, 0.3),
    Entry::given(Ground, GRIP_TEST_PULL, "pull that makes it slide", r"F_\mu", "The steady pull on the level at which the machine slides with its drive locked.")
        .usual(1.0, 5e3),
    Entry::given(Ground, GRIP_TEST_MASS, "mass in the pull test", r"m_\mu", "The mass of the machine in the pull test, load and all.")
        .above_zero()
        .usual(0.3, 500.0),
    Entry::found(Ground, GRIP_COEFFICIENT, "grip coefficient", r"\mu", "The most push per force on the ground before it spins or slides, from a pull test or a table.")
        .usual(0.02, 1.0),
    Entry::given(Ground, SLIDING_COEFFICIENT, "sliding coefficient", r"\mu_s", "The friction per force on the ground once it slides; mostly less than the grip.")
        .usual(0.02, 1.0),
    Entry::given(Ground, TOW_TEST_PULL, "pull that tows it", r"F_c", "The steady pull that tows the machine at walking pace on the level with its drive free: the middle of the readings, not the jerk.")
        .usual(0.5, 1e3),
    Entry::given(Ground, TOW_TEST_MASS, "mass in the tow test", r"m_c", "The mass of the machine in the tow test, load and all.")
        .above_zero()
        .usual(0.3, 500.0),
    Entry::given(Ground, SHEAR_TEST_AREA, "area of the shear test", r"A_t", "The area of the plate with ribs, or of the track shoe, that is pressed into the ground and dragged along.")
        .above_zero()
        .usual(1e-3, 0.1)
        .fixed(),
    Entry::given(Ground, LIGHT_SHEAR_LOAD, "load of the light shear test", r"m_{t1}", "The mass that presses on the plate in the first of two shear tests, plate and all.")
        .usual(0.2, 60.0)
        .fixed(),
    Entry::given(Ground, LIGHT_SHEAR_PULL, "pull of the light shear test", r"F_{t1}", "The most that plate took before the ground under it gave way.")
        .usual(0.5, 500.0)
        .fixed(),
    Entry::given(Ground, HEAVY_SHEAR_LOAD, "load of the heavy shear test", r"m_{t2}", "The mass that presses on the same plate in the second test, on fresh ground beside it.")
        .usual(0.5, 120.0)
        .fixed(),
    Entry::given(Ground, HEAVY_SHEAR_PULL, "pull of the heavy shear test", r"F_{t2}", "The most the plate took in the second test.")
        .usual(1.0, 1000.0)
        .fixed(),
    Entry::found(Ground, TESTED_FRICTION_ANGLE, "friction angle by two shear tests", r"\phi_t", "What the added load added to the pull, as an angle."),
    Entry::found(Ground, TESTED_COHESION, "cohesion by two shear tests", r"c_t", "What would be left of the shear strength with no load at all; a little below zero means none.")
        .possible(f64::MIN, f64::MAX),
    Entry::given(Ground, ROLL_ON_SLOPE, "slope on which it just rolls on", r"\theta_c", "The slope on which the machine, pushed off with its drive free, just keeps rolling.")
        .possible(0.0, 60.0 * PI / 180.0)
        .usual(0.005, 0.4),
    Entry::found(Ground, ROLLING_COEFFICIENT, "rolling coefficient", r"c_r", "How hard the ground and the running gear hold back, per force on the ground, from a tow test or a table. Carry it as a range of 20 % at least.")
        .usual(0.002, 0.5),
];
