//! Range, the weight spiral and scaling.

use crate::quantity::{
    Area, Energy, Entry, Force, Id, Length, Mass, Power, Pressure, Ratio, SpecificEnergy,
    SpecificPower, Time, Topic::Whole,
};

pub const IDLE_POWER: Id<Power> = Id::new("idle-power");
pub const ENERGY_PER_DISTANCE: Id<Force> = Id::new("energy-per-distance");
pub const RANGE: Id<Length> = Id::new("range");
pub const RANGE_TIME: Id<Time> = Id::new("range-time");
pub const TRIP_DISTANCE: Id<Length> = Id::new("trip-distance");
pub const LOAD_LEFT: Id<Mass> = Id::new("load-left");
pub const RETURN_RESISTANCE: Id<Force> = Id::new("return-resistance");
pub const OUT_ENERGY: Id<Energy> = Id::new("out-energy");
pub const BACK_ENERGY: Id<Energy> = Id::new("back-energy");
pub const TRIP_ENERGY: Id<Energy> = Id::new("trip-energy");
pub const TRIPS_PER_CHARGE: Id<Ratio> = Id::new("trips-per-charge");
pub const WANTED_RANGE: Id<Length> = Id::new("wanted-range");
pub const BARE_MASS: Id<Mass> = Id::new("bare-mass");
pub const BATTERY_SPECIFIC_ENERGY: Id<SpecificEnergy> = Id::new("battery-specific-energy");
pub const DRIVE_SPECIFIC_POWER: Id<SpecificPower> = Id::new("drive-specific-power");
pub const POWER_RESERVE: Id<Ratio> = Id::new("power-reserve");
pub const FRAME_SHARE: Id<Ratio> = Id::new("frame-share");
pub const BATTERY_MASS_SHARE: Id<Ratio> = Id::new("battery-mass-share");
pub const DRIVE_MASS_SHARE: Id<Ratio> = Id::new("drive-mass-share");
pub const GROWTH_SHARE: Id<Ratio> = Id::new("growth-share");
pub const GROWTH_FACTOR: Id<Ratio> = Id::new("growth-factor");
pub const CLOSED_MASS: Id<Mass> = Id::new("closed-mass");
pub const CLOSED_BATTERY_MASS: Id<Mass> = Id::new("closed-battery-mass");
pub const LARGEST_RANGE: Id<Length> = Id::new("largest-range");
pub const SCALE_FACTOR: Id<Ratio> = Id::new("scale-factor");
pub const SHEET_SHARE: Id<Ratio> = Id::new("sheet-share");
pub const SCALE_AREA_RATIO: Id<Ratio> = Id::new("scale-area-ratio");
pub const SCALE_MASS_RATIO: Id<Ratio> = Id::new("scale-mass-ratio");
pub const SCALE_MASS_EXPONENT: Id<Ratio> = Id::new("scale-mass-exponent");
pub const SCALE_PRESSURE_RATIO: Id<Ratio> = Id::new("scale-pressure-ratio");
pub const SCALE_STRESS_RATIO: Id<Ratio> = Id::new("scale-stress-ratio");
pub const SCALE_SHEET_STRESS_RATIO: Id<Ratio> = Id::new("scale-sheet-stress-ratio");
pub const SCALE_TORQUE_RATIO: Id<Ratio> = Id::new("scale-torque-ratio");
pub const SCALE_SPEED_RATIO: Id<Ratio> = Id::new("scale-speed-ratio");
pub const SCALE_POWER_RATIO: Id<Ratio> = Id::new("scale-power-ratio");
pub const SCALE_COOLING_RATIO: Id<Ratio> = Id::new("scale-cooling-ratio");
pub const SCALED_MASS: Id<Mass> = Id::new("scaled-mass");
pub const SCALED_CONTACT_AREA: Id<Area> = Id::new("scaled-contact-area");
pub const SCALED_GROUND_PRESSURE: Id<Pressure> = Id::new("scaled-ground-pressure");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Whole, IDLE_POWER, "power at standstill", r"P_0", "What radio, lights, pump and controller draw whether it drives or not.")
        .assumed(0.0)
        .usual(0.0, 50.0),
    Entry::found(Whole, ENERGY_PER_DISTANCE, "energy for each distance", "e", "What the battery gives for each metre: a joule per metre is a newton.")
        .units(&["J/m", "W·h/km"], &["W·h/mi"])
        .headline(),
    Entry::found(Whole, RANGE, "range", "d", "How far the usable energy carries at a steady speed.")
        .headline(),
    Entry::found(Whole, RANGE_TIME, "driving time", r"t_d", "How long that takes.")
        .units(&["min", "h"], &["min", "h"])
        .headline(),
    Entry::given(Whole, TRIP_DISTANCE, "distance out (one way)", r"d_1", "How far it goes out before it comes back the same way.")
        .usual(20.0, 2000.0),
    Entry::given(Whole, LOAD_LEFT, "load left at the far end", r"m_l", "What it carries out and not back; below zero, what it picks up there.")
        .assumed(0.0)
        .possible(-1e6, 1e6)
        .usual(0.0, 200.0),
    Entry::found(Whole, RETURN_RESISTANCE, "resistance on the way back", r"F_{\mathrm{back}}", "The same ground the other way: what was uphill is downhill, and the load left behind is not carried. Below zero, the slope pushes.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Whole, OUT_ENERGY, "energy on the way out", r"E_{\mathrm{out}}", "What the battery gives on the way out.")
        .units(&["W·h"], &["W·h"]),
    Entry::found(Whole, BACK_ENERGY, "energy on the way back", r"E_{\mathrm{back}}", "What the battery gives on the way back.")
        .units(&["W·h"], &["W·h"]),
    Entry::found(Whole, TRIP_ENERGY, "energy out and back", r"E_{\mathrm{trip}}", "What one trip takes from the battery, both ways together.")
        .units(&["W·h"], &["W·h"])
        .headline(),
    Entry::found(Whole, TRIPS_PER_CHARGE, "trips on one charge", r"n_{\mathrm{trip}}", "How many times the usable energy carries it out and back: only whole trips count."),
    Entry::given(Whole, WANTED_RANGE, "range wanted", r"d_w", "How far it must go on one charge.")
        .above_zero()
        .usual(100.0, 2e4),
    Entry::given(Whole, BARE_MASS, "mass that stays", r"m_0", "All that does not grow with the machine: load, tools, electronics; without the battery, and without the drive if its power per mass is said.")
        .above_zero()
        .usual(0.2, 300.0),
    Entry::given(Whole, BATTERY_SPECIFIC_ENERGY, "battery energy for each mass", r"w_b", "Energy of the full battery over its mass, case and leads included.")
        .above_zero()
        .usual(30.0 * 3600.0, 250.0 * 3600.0),
    Entry::given(Whole, DRIVE_SPECIFIC_POWER, "drive power for each mass", r"w_P", "The most the drive gives at the ground over its mass: motor, gears, controller.")
        .above_zero()
        .usual(20.0, 1000.0),
    Entry::given(Whole, POWER_RESERVE, "most power over cruising power", "r", "How many times the cruising power the drive must be able to give.")
        .assumed(3.0)
        .possible(1.0, 100.0)
        .usual(1.5, 10.0),
    Entry::given(Whole, FRAME_SHARE, "frame for each mass", r"\beta_f", "The mass of frame and running gear that each kilogram of the whole machine asks for.")
        .assumed(0.0)
        .possible(0.0, 1.0)
        .usual(0.0, 0.6),
    Entry::found(Whole, BATTERY_MASS_SHARE, "battery for each mass", r"\beta_b", "The mass of battery that each kilogram of the whole machine asks for."),
    Entry::found(Whole, DRIVE_MASS_SHARE, "drive for each mass", r"\beta_d", "The mass of motor, gears and controller that each kilogram of the whole machine asks for."),
    Entry::found(Whole, GROWTH_SHARE, "all that each mass asks for", r"\beta", "Battery, drive and frame for each kilogram of the whole machine; at 1 no battery closes it."),
    Entry::found(Whole, GROWTH_FACTOR, "growth factor", r"k_g", "How much heavier the machine becomes in the end for each kilogram of load added.")
        .headline(),
    Entry::found(Whole, CLOSED_MASS, "mass when the spiral comes to rest", r"m_c", "The mass at which battery, drive and frame just carry themselves, the load and the range wanted."),
    Entry::found(Whole, CLOSED_BATTERY_MASS, "battery when the spiral comes to rest", r"m_b", "The mass of battery in it."),
    Entry::found(Whole, LARGEST_RANGE, "range that no battery reaches", r"d_\infty", "The distance at which the battery would have to be endless, its kind and the drag as they are."),
    Entry::given(Whole, SCALE_FACTOR, "scale", "s", "Every length of the new machine over the same length of this one.")
        .above_zero()
        .usual(0.25, 4.0),
    Entry::given(Whole, SHEET_SHARE, "part of the mass in sheet that stays as thick", r"b_s", "The part of the mass that is sheet, wire or skin whose thickness does not change with size.")
        .assumed(0.0)
        .possible(0.0, 1.0)
        .usual(0.0, 1.0),
    Entry::found(Whole, SCALE_AREA_RATIO, "areas, times", r"k_A", "Areas of the new machine over those of this one: contact, sections, cooling."),
    Entry::found(Whole, SCALE_MASS_RATIO, "mass, times", r"k_m", "Mass of the new machine over that of this one."),
    Entry::found(Whole, SCALE_MASS_EXPONENT, "power of the scale that the mass goes by", r"x_m", "3 for a machine that is solid through and through, 2 for one of sheet that stays as thick."),
    Entry::found(Whole, SCALE_PRESSURE_RATIO, "ground pressure, times", r"k_p'", "Ground pressure of the new machine over that of this one."),
    Entry::found(Whole, SCALE_STRESS_RATIO, "stress from its own weight, times", r"k_\sigma", "Stress that the weight of a solid part puts in it, over that of this one."),
    Entry::found(Whole, SCALE_SHEET_STRESS_RATIO, "stress in sheet from its own weight, times", r"k_{\sigma s}", "Bending stress that the weight of a sheet that stays as thick puts in it, over that of this one."),
    Entry::found(Whole, SCALE_TORQUE_RATIO, "axle torque for the same slope, times", r"k_T", "Torque at the axle for the same slope, over that of this one."),
    Entry::found(Whole, SCALE_SPEED_RATIO, "speed that looks alike, times", r"k_v", "The speed at which swings and hops look alike, over that of this one."),
    Entry::found(Whole, SCALE_POWER_RATIO, "power for the same slope, times", r"k_P", "Power for the same slope at the speed that looks alike, over that of this one."),
    Entry::found(Whole, SCALE_COOLING_RATIO, "cooling for each watt, times", r"k_c", "Cooling surface over power, over that of this one: below 1 it runs hotter."),
    Entry::found(Whole, SCALED_MASS, "mass at the new scale", r"m_s", "Mass of this machine built at the new scale."),
    Entry::found(Whole, SCALED_CONTACT_AREA, "contact area at the new scale", r"A'_s", "Contact area of this machine built at the new scale."),
    Entry::found(Whole, SCALED_GROUND_PRESSURE, "ground pressure at the new scale", r"p_s", "Mean ground pressure of this machine built at the new scale."),
];
