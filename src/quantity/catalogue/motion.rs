//! Force, power, speed and stopping.

use crate::quantity::{
    Acceleration, Angle, Area, Density, Entry, Force, Id, Inertia, Length, Mass, Power, Pressure,
    Ratio, SpecificPower, Speed, Temperature, Time, Topic::Motion, Torque,
};

pub const DRIVING_SPEED: Id<Speed> = Id::new("driving-speed");
pub const TARGET_SPEED: Id<Speed> = Id::new("target-speed");
pub const WANTED_ACCELERATION: Id<Acceleration> = Id::new("wanted-acceleration");
pub const DRIVE_POWER: Id<Power> = Id::new("drive-power");
pub const DRIVE_TORQUE: Id<Torque> = Id::new("drive-torque");
pub const DRIVE_RADIUS: Id<Length> = Id::new("drive-radius");
pub const ROTOR_INERTIA: Id<Inertia> = Id::new("rotor-inertia");
pub const WHEEL_INERTIA: Id<Inertia> = Id::new("wheel-inertia");
pub const DRAG_COEFFICIENT: Id<Ratio> = Id::new("drag-coefficient");
pub const FRONTAL_AREA: Id<Area> = Id::new("frontal-area");
pub const ALTITUDE: Id<Length> = Id::new("altitude");
pub const AIR_TEMPERATURE: Id<Temperature> = Id::new("air-temperature");
pub const AIR_PRESSURE: Id<Pressure> = Id::new("air-pressure");
pub const RISE: Id<Length> = Id::new("rise");
pub const REACTION_TIME: Id<Time> = Id::new("reaction-time");

pub const STANDARD_TEMPERATURE: Id<Temperature> = Id::new("standard-temperature");
pub const STANDARD_PRESSURE: Id<Pressure> = Id::new("standard-pressure");
pub const AIR_DENSITY: Id<Density> = Id::new("air-density");
pub const AIR_DENSITY_SHARE: Id<Ratio> = Id::new("air-density-share");
pub const ALTITUDE_POWER_LOSS: Id<Ratio> = Id::new("altitude-power-loss");
pub const DRAG_AREA: Id<Area> = Id::new("drag-area");
pub const AIR_DRAG: Id<Force> = Id::new("air-drag");
pub const TARGET_DRAG: Id<Force> = Id::new("target-drag");
pub const STEADY_RESISTANCE: Id<Force> = Id::new("steady-resistance");
pub const DRIVING_RESISTANCE: Id<Force> = Id::new("driving-resistance");
pub const STOP_SPACING_BALANCE: Id<Length> = Id::new("stop-spacing-balance");
pub const DRAG_CROSSOVER: Id<Speed> = Id::new("drag-crossover");
pub const DRIVING_POWER: Id<Power> = Id::new("driving-power");
pub const THRUST_NEEDED: Id<Force> = Id::new("thrust-needed");
pub const POWER_TO_MASS: Id<SpecificPower> = Id::new("power-to-mass");
pub const ROTATING_MASS: Id<Mass> = Id::new("rotating-mass");
pub const EQUIVALENT_MASS: Id<Mass> = Id::new("equivalent-mass");
pub const MASS_FACTOR: Id<Ratio> = Id::new("mass-factor");
pub const CAR_MASS_FACTOR: Id<Ratio> = Id::new("car-mass-factor");
pub const POWER_FORCE: Id<Force> = Id::new("power-force");
pub const TORQUE_FORCE: Id<Force> = Id::new("torque-force");
pub const FRONT_LIFT_FORCE: Id<Force> = Id::new("front-lift-force");
pub const THRUST_ALLOWED: Id<Force> = Id::new("thrust-allowed");
pub const LARGEST_THRUST: Id<Force> = Id::new("largest-thrust");
pub const DRIVE_THRUST: Id<Force> = Id::new("drive-thrust");
pub const ACCELERATION: Id<Acceleration> = Id::new("acceleration");
pub const CLIMB_AT_SPEED: Id<Angle> = Id::new("climb-at-speed");
pub const POWER_TOP_SPEED: Id<Speed> = Id::new("power-top-speed");
pub const DRAG_TOP_SPEED: Id<Speed> = Id::new("drag-top-speed");
pub const GEARED_TOP_SPEED: Id<Speed> = Id::new("geared-top-speed");
pub const TOP_SPEED: Id<Speed> = Id::new("top-speed");
pub const RUN_UP_TIME: Id<Time> = Id::new("run-up-time");
pub const RUN_UP_DISTANCE: Id<Length> = Id::new("run-up-distance");
pub const MEAN_ACCELERATION: Id<Acceleration> = Id::new("mean-acceleration");
pub const RUN_UP_POWER: Id<Power> = Id::new("run-up-power");
pub const POWER_TIME: Id<Time> = Id::new("power-time");
pub const POWER_DISTANCE: Id<Length> = Id::new("power-distance");
pub const COAST_DOWN_DISTANCE: Id<Length> = Id::new("coast-down-distance");
pub const COAST_DOWN_TIME: Id<Time> = Id::new("coast-down-time");
pub const BRAKING_DECELERATION: Id<Acceleration> = Id::new("braking-deceleration");
pub const BRAKING_DISTANCE: Id<Length> = Id::new("braking-distance");
pub const BRAKING_FORCE: Id<Force> = Id::new("braking-force");
pub const REACTION_DISTANCE: Id<Length> = Id::new("reaction-distance");
pub const STOPPING_DISTANCE: Id<Length> = Id::new("stopping-distance");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Motion, DRIVING_SPEED, "driving speed", "v", "The speed at which forces, power and stopping are worked out.")
        .usual(0.0, 15.0),
    Entry::given(Motion, TARGET_SPEED, "speed to reach", r"v_1", "The speed at the end of a run from rest.")
        .above_zero()
        .usual(0.5, 15.0),
    Entry::given(Motion, WANTED_ACCELERATION, "acceleration wanted", r"a_w", "How quickly the machine is to gain speed; below zero, to lose it.")
        .assumed(0.0)
        .possible(-1e3, 1e3)
        .units(&["m/s²"], &["ft/s²"])
        .usual(0.0, 5.0),
    Entry::either(Motion, DRIVE_POWER, "power at the ground", r"P_d", "What arrives at the tracks or wheels, after motor and gears: the most, unless you say less.")
        .usual(20.0, 5e4),
    Entry::either(Motion, DRIVE_TORQUE, "torque at the axles", r"T_d", "The largest torque of all driven axles together, after the gears.")
        .usual(0.5, 500.0),
    Entry::either(Motion, DRIVE_RADIUS, "rolling radius", r"r_d", "The radius at which the torque pushes: half the distance per turn over π. For a track, the sprocket's.")
        .above_zero()
        .usual(0.01, 0.5),
    Entry::given(Motion, ROTOR_INERTIA, "inertia of the rotors", r"J_m", "The moment of inertia of all that turns with the motors or the engine, all of them together.")
        .assumed(0.0)
        .usual(0.0, 1e-2),
    Entry::given(Motion, WHEEL_INERTIA, "inertia of the wheels", r"J_w", "The moment of inertia of all that turns with the wheels or sprockets, all of them together; a track counts its mass times the radius squared.")
        .assumed(0.0)
        .usual(0.0, 5.0),
    Entry::given(Motion, DRAG_COEFFICIENT, "drag coefficient", r"C_d", "How much the shape drags in the air: about 0.3 for a car, 0.9 for an upright rider, 1.1 for a flat plate.")
        .units(&[""], &[""])
        .usual(0.2, 1.3),
    Entry::given(Motion, FRONTAL_AREA, "frontal area", r"A_f", "The shadow of machine and rider, lit from the front.")
        .usual(0.01, 3.0),
    Entry::given(Motion, ALTITUDE, "altitude", "H", "How high above the sea the machine works.")
        .assumed(0.0)
        .possible(-5000.0, 11_000.0)
        .usual(0.0, 4000.0),
    Entry::given(Motion, AIR_TEMPERATURE, "air temperature", r"T_a", "The temperature of the air outside; if unsaid, that of the standard air up there.")
        .above_zero()
        .usual(243.15, 313.15),
    Entry::given(Motion, AIR_PRESSURE, "air pressure", r"p_a", "The pressure a barometer shows where the machine is, not reduced to sea level; if unsaid, that of the standard air up there.")
        .above_zero()
        .usual(6e4, 1.05e5),
    Entry::given(Motion, RISE, "rise during the run", r"h_r", "How much higher the run from rest ends than it began.")
        .assumed(0.0)
        .usual(0.0, 10.0),
    Entry::given(Motion, REACTION_TIME, "reaction time", r"t_r", "From seeing the reason to the brake taking hold: about 0.7 s when alert, 1 to 2.5 s otherwise; a radio link adds its own.")
        .assumed(1.0)
        .usual(0.2, 2.5),
    Entry::found(Motion, STANDARD_TEMPERATURE, "temperature of standard air", r"T_0", "The temperature of the standard atmosphere at that altitude.")
        .above_zero(),
    Entry::found(Motion, STANDARD_PRESSURE, "pressure of standard air", r"p_0", "The pressure of the standard atmosphere at that altitude.")
        .above_zero(),
    Entry::found(Motion, AIR_DENSITY, "air density", r"\rho", "The mass of a cubic metre of the air outside.")
        .above_zero(),
    Entry::found(Motion, AIR_DENSITY_SHARE, "air density over that at sea level", r"\sigma", "How dense the air is beside standard air at sea level; an engine without a charger breathes by it."),
    Entry::found(Motion, ALTITUDE_POWER_LOSS, "engine power lost to altitude", r"k_H", "The part of its power that an engine without a charger loses up there, by the handbook's rule of thumb.")
        .possible(0.0, 1.0)
        .units(&["%"], &["%"]),
    Entry::found(Motion, DRAG_AREA, "drag area", r"A_d", "Drag coefficient times frontal area."),
    Entry::found(Motion, AIR_DRAG, "air drag", r"F_{\mathrm{air}}", "What the air holds back at the driving speed."),
    Entry::found(Motion, TARGET_DRAG, "air drag at the speed to reach", r"F_{\mathrm{air},1}", "What the air holds back at the end of the run."),
    Entry::found(Motion, STEADY_RESISTANCE, "resistance of ground and slope", r"F_{\mathrm{gr}}", "What holds back at any speed: rolling and slope together. Below zero downhill.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Motion, DRIVING_RESISTANCE, "resistance at the driving speed", r"F_{\mathrm{res}}", "Rolling, slope and air together.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Motion, DRAG_CROSSOVER, "speed at which air holds back as much as ground", r"v_{\mathrm{x}}", "Slower than this the ground holds back more, faster the air."),
    Entry::found(Motion, STOP_SPACING_BALANCE, "stop spacing at which air costs as much as starting", r"d_{\mathrm{x}}", "Stopping more often than this, the mass takes more energy than the air; less often, the air does."),
    Entry::found(Motion, DRIVING_POWER, "power to keep the driving speed", r"P_{\mathrm{v}}", "What must arrive at the tracks or wheels to go on at that speed, slope included.")
        .headline(),
    Entry::found(Motion, THRUST_NEEDED, "thrust for the acceleration wanted", r"F_{\mathrm{need}}", "What must push to gain speed that quickly against all that holds back.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Motion, POWER_TO_MASS, "power to mass", r"P/m", "Power at the ground over mass: how lively a machine is at speed.")
        .headline(),
    Entry::found(Motion, ROTATING_MASS, "mass that rotating parts seem to add", r"m_{\mathrm{rot}}", "How much heavier the machine feels to its drive because rotors and wheels must spin up too."),
    Entry::found(Motion, EQUIVALENT_MASS, "equivalent mass", r"m_e", "The mass and what the rotating parts seem to add.")
        .above_zero(),
    Entry::found(Motion, MASS_FACTOR, "mass factor", r"\gamma_m", "Equivalent mass over mass."),
    Entry::found(Motion, CAR_MASS_FACTOR, "mass factor of a car with that ratio", r"\gamma_c", "What a car with a flywheel engine would have, for comparison."),
    Entry::found(Motion, POWER_FORCE, "force that the power gives", r"F_P", "Power over driving speed: the faster, the less."),
    Entry::found(Motion, TORQUE_FORCE, "force that the torque gives", r"F_T", "Torque at the axles over the rolling radius."),
    Entry::found(Motion, FRONT_LIFT_FORCE, "thrust that lifts the front", r"F_{\mathrm{lift}}", "The thrust at which the front carries nothing.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Motion, THRUST_ALLOWED, "thrust that ground and balance allow", r"F_G", "The smaller of grip and front lift.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Motion, LARGEST_THRUST, "largest thrust at a standstill", r"F_{\mathrm{max}}", "The smaller of what the torque gives and what the ground lets through.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Motion, DRIVE_THRUST, "thrust at the driving speed", r"F_d", "The smallest of what power, torque, grip and balance allow at that speed.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Motion, ACCELERATION, "acceleration at the driving speed", "a", "How quickly it can gain speed there; below zero it slows down.")
        .possible(f64::MIN, f64::MAX)
        .units(&["m/s²"], &["ft/s²"])
        .headline(),
    Entry::found(Motion, CLIMB_AT_SPEED, "slope that the thrust climbs at the driving speed", r"\theta_v", "How steep it could still go without losing speed; below zero it needs a downhill.")
        .possible(-std::f64::consts::FRAC_PI_2, std::f64::consts::FRAC_PI_2),
    Entry::found(Motion, POWER_TOP_SPEED, "top speed by power", r"v_P", "Where the power just keeps up with ground, slope and air."),
    Entry::found(Motion, DRAG_TOP_SPEED, "top speed by drag", r"v_D", "Where the air takes all that the largest thrust leaves over."),
    Entry::found(Motion, GEARED_TOP_SPEED, "top speed by gearing", r"v_G", "Where the motors, through their gears, give just the thrust that holds it; with an engine, the speed at its engine speed."),
    Entry::found(Motion, TOP_SPEED, "top speed", r"v_{\mathrm{max}}", "The smallest of top speed by power, by drag and by gearing.")
        .headline(),
    Entry::found(Motion, RUN_UP_TIME, "time to the speed", r"t_1", "From rest to the speed to reach.")
        .headline(),
    Entry::found(Motion, RUN_UP_DISTANCE, "distance to the speed", r"s_1", "How far it goes from rest until it has the speed to reach."),
    Entry::found(Motion, MEAN_ACCELERATION, "acceleration (mean) of the run", r"a_1", "The speed reached over the time it took.")
        .units(&["m/s²"], &["ft/s²"]),
    Entry::found(Motion, RUN_UP_POWER, "power (mean) of the run", r"P_1", "What the run took on average, into speed and into ground and slope; air left out.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Motion, POWER_TIME, "time to the speed by power alone", r"t_P", "If all the power went into speed and height and nothing else: no machine does better."),
    Entry::found(Motion, POWER_DISTANCE, "distance in that time by power alone", r"s_P", "How far it would get in that time on the level if all the power went into speed."),
    Entry::found(Motion, COAST_DOWN_DISTANCE, "coast-down distance", r"s_c", "How far it rolls from the driving speed with the drive let go."),
    Entry::found(Motion, COAST_DOWN_TIME, "coast-down time", r"t_c", "How long it rolls from the driving speed with the drive let go."),
    Entry::found(Motion, BRAKING_DECELERATION, "deceleration of braking", r"a_b", "How quickly the speed goes with every track or wheel braked to the limit of grip.")
        .above_zero()
        .units(&["m/s²"], &["ft/s²"]),
    Entry::found(Motion, BRAKING_DISTANCE, "braking distance", r"s_b", "How far it goes while the brakes hold."),
    Entry::found(Motion, BRAKING_FORCE, "braking force (mean)", r"F_b", "The force that takes the speed away."),
    Entry::found(Motion, REACTION_DISTANCE, "reaction distance", r"s_r", "How far it goes before the brakes take hold."),
    Entry::found(Motion, STOPPING_DISTANCE, "stopping distance", r"s_s", "Reaction and braking together.")
        .headline(),
];
