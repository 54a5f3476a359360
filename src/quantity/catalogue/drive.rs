//! Motor, engine, gears and what they give at the ground.

pub(super) mod plate;
pub(super) mod supplied;

pub use plate::*;
pub use supplied::*;

use crate::quantity::{
    AngularSpeed, Current, Entry, Force, Id, Inertia, Length, Mass, MassFlow, Power, Pressure,
    Ratio, Resistance, SpecificConsumption, SpecificEnergy, Speed, SpeedConstant, Time,
    Topic::Drive, Torque, TorqueConstant, Voltage, Volume,
};

pub const SPEED_CONSTANT: Id<SpeedConstant> = Id::new("speed-constant");
pub const TORQUE_CONSTANT: Id<TorqueConstant> = Id::new("torque-constant");
pub const MOTOR_RESISTANCE: Id<Resistance> = Id::new("motor-resistance");
pub const NO_LOAD_CURRENT: Id<Current> = Id::new("no-load-current");
pub const MOTOR_INERTIA: Id<Inertia> = Id::new("motor-inertia");
pub const MOTOR_COUNT: Id<Ratio> = Id::new("motor-count");
pub const THROTTLE: Id<Ratio> = Id::new("throttle");
pub const FIRST_STAGE_RATIO: Id<Ratio> = Id::new("first-stage-ratio");
pub const SECOND_STAGE_RATIO: Id<Ratio> = Id::new("second-stage-ratio");
pub const THIRD_STAGE_RATIO: Id<Ratio> = Id::new("third-stage-ratio");
pub const FIRST_STAGE_EFFICIENCY: Id<Ratio> = Id::new("first-stage-efficiency");
pub const SECOND_STAGE_EFFICIENCY: Id<Ratio> = Id::new("second-stage-efficiency");
pub const THIRD_STAGE_EFFICIENCY: Id<Ratio> = Id::new("third-stage-efficiency");
pub const DRIVE_DIAMETER: Id<Length> = Id::new("drive-diameter");
pub const DISTANCE_PER_TURN: Id<Length> = Id::new("distance-per-turn");
pub const ENGINE_POWER: Id<Power> = Id::new("engine-power");
pub const ENGINE_TORQUE: Id<Torque> = Id::new("engine-torque");
pub const ENGINE_SPEED: Id<AngularSpeed> = Id::new("engine-speed");
pub const ENGINE_CONSUMPTION: Id<SpecificConsumption> = Id::new("engine-consumption");
pub const CALORIFIC_VALUE: Id<SpecificEnergy> = Id::new("calorific-value");
pub const AIR_FUEL_RATIO: Id<Ratio> = Id::new("air-fuel-ratio");
pub const ENGINE_FRICTION_POWER: Id<Power> = Id::new("engine-friction-power");
pub const ENGINE_LOAD: Id<Ratio> = Id::new("engine-load");
pub const ENGINE_DISPLACEMENT: Id<Volume> = Id::new("engine-displacement");
pub const ENGINE_STROKES: Id<Ratio> = Id::new("engine-strokes");
pub const FUEL_MASS: Id<Mass> = Id::new("fuel-mass");
pub const GEAR_RATIO: Id<Ratio> = Id::new("gear-ratio");
pub const GEAR_EFFICIENCY: Id<Ratio> = Id::new("gear-efficiency");
pub const PAPER_MOTOR_SPEED: Id<AngularSpeed> = Id::new("paper-motor-speed");
pub const PAPER_SPEED: Id<Speed> = Id::new("paper-speed");
pub const NO_LOAD_SPEED: Id<AngularSpeed> = Id::new("no-load-speed");
pub const STALL_CURRENT: Id<Current> = Id::new("stall-current");
pub const STALL_TORQUE: Id<Torque> = Id::new("stall-torque");
pub const BEST_EFFICIENCY: Id<Ratio> = Id::new("best-efficiency");
pub const BEST_EFFICIENCY_CURRENT: Id<Current> = Id::new("best-efficiency-current");
pub const BEST_EFFICIENCY_TORQUE: Id<Torque> = Id::new("best-efficiency-torque");
pub const GREATEST_MOTOR_POWER: Id<Power> = Id::new("greatest-motor-power");
pub const MECHANICAL_TIME_CONSTANT: Id<Time> = Id::new("mechanical-time-constant");
pub const MOTOR_TORQUE: Id<Torque> = Id::new("motor-torque");
pub const MOTOR_CURRENT: Id<Current> = Id::new("motor-current");
pub const MOTOR_SUPPLY_VOLTAGE: Id<Voltage> = Id::new("motor-supply-voltage");
pub const MOTOR_VOLTAGE: Id<Voltage> = Id::new("motor-voltage");
pub const BACK_EMF: Id<Voltage> = Id::new("back-emf");
pub const SPEED_LOST: Id<AngularSpeed> = Id::new("speed-lost");
pub const MOTOR_SPEED: Id<AngularSpeed> = Id::new("motor-speed");
pub const LOADED_SPEED: Id<Speed> = Id::new("loaded-speed");
pub const MOTOR_INPUT_POWER: Id<Power> = Id::new("motor-input-power");
pub const MOTOR_OUTPUT_POWER: Id<Power> = Id::new("motor-output-power");
pub const MOTOR_LOSS: Id<Power> = Id::new("motor-loss");
pub const WINDING_LOSS: Id<Power> = Id::new("winding-loss");
pub const MOTOR_EFFICIENCY: Id<Ratio> = Id::new("motor-efficiency");
pub const PUSH_POWER: Id<Power> = Id::new("push-power");
pub const DRIVE_EFFICIENCY: Id<Ratio> = Id::new("drive-efficiency");
pub const STALL_PUSH: Id<Force> = Id::new("stall-push");
pub const PEAK_MOTOR_CURRENT: Id<Current> = Id::new("peak-motor-current");
pub const PEAK_MOTOR_TORQUE: Id<Torque> = Id::new("peak-motor-torque");
pub const PEAK_PUSH: Id<Force> = Id::new("peak-push");
pub const LASTING_POWER: Id<Power> = Id::new("lasting-power");
pub const PUSH_MARGIN: Id<Ratio> = Id::new("push-margin");
pub const ENGINE_EFFICIENCY: Id<Ratio> = Id::new("engine-efficiency");
pub const FUEL_FLOW: Id<MassFlow> = Id::new("fuel-flow");
pub const ENGINE_AIR_FLOW: Id<MassFlow> = Id::new("engine-air-flow");
pub const ENGINE_WASTE_HEAT: Id<Power> = Id::new("engine-waste-heat");
pub const ENGINE_INDICATED_POWER: Id<Power> = Id::new("engine-indicated-power");
pub const BRAKE_MEAN_PRESSURE: Id<Pressure> = Id::new("brake-mean-pressure");
pub const ENGINE_MECHANICAL_EFFICIENCY: Id<Ratio> = Id::new("engine-mechanical-efficiency");
pub const ENGINE_PUSH: Id<Force> = Id::new("engine-push");
pub const ENGINE_GROUND_SPEED: Id<Speed> = Id::new("engine-ground-speed");
pub const FUEL_RUN_TIME: Id<Time> = Id::new("fuel-run-time");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::either(Drive, SPEED_CONSTANT, "motor speed constant", r"K_v", "How fast the motor turns for each volt, with nothing to drive.")
        .above_zero()
        .units(&["rpm/V"], &["rpm/V"])
        .usual(2.0, 700.0),
    Entry::either(Drive, TORQUE_CONSTANT, "motor torque constant", r"K_t", "The torque the motor makes for each ampere.")
        .above_zero()
        .usual(0.001, 0.5),
    Entry::given(Drive, MOTOR_RESISTANCE, "winding resistance", r"R_m", "The resistance of the motor's winding between its two leads, at air temperature.")
        .above_zero()
        .usual(0.002, 5.0),
    Entry::given(Drive, NO_LOAD_CURRENT, "no-load current", r"I_0", "What the motor draws when it turns freely: friction and iron loss.")
        .usual(0.02, 10.0),
    Entry::given(Drive, MOTOR_INERTIA, "inertia of a motor's rotor", r"J_m", "The moment of inertia of everything that turns with the shaft of one motor.")
        .above_zero()
        .units(&["g·cm²", "kg·cm²"], &["lb·in²"])
        .usual(1e-7, 0.01),
    Entry::given(Drive, MOTOR_COUNT, "number of motors", r"n_m", "How many equal motors drive the machine, each with its own controller.")
        .assumed(1.0)
        .above_zero()
        .whole()
        .usual(1.0, 6.0),
    Entry::given(Drive, THROTTLE, "throttle", r"D", "The part of the time the controller puts the battery on the motor: 1 is full throttle.")
        .assumed(1.0)
        .possible(0.01, 1.0)
        .usual(0.1, 1.0),
    Entry::given(Drive, FIRST_STAGE_RATIO, "first gear stage", r"g_1", "Turns of the stage's input for one turn of its output: more than 1 is slower and stronger; 1 when there is none.")
        .assumed(1.0)
        .above_zero()
        .usual(1.0, 50.0),
    Entry::given(Drive, SECOND_STAGE_RATIO, "second gear stage", r"g_2", "As the first stage; 1 when there is none.")
        .assumed(1.0)
        .above_zero()
        .usual(1.0, 20.0),
    Entry::given(Drive, THIRD_STAGE_RATIO, "third gear stage", r"g_3", "As the first stage; 1 when there is none. Do not forget the one inside the axle.")
        .assumed(1.0)
        .above_zero()
        .usual(1.0, 20.0),
    Entry::given(Drive, FIRST_STAGE_EFFICIENCY, "efficiency of the first stage", r"\eta_1", "The part of the power the stage passes on.")
        .assumed(0.95)
        .possible(0.01, 1.0)
        .usual(0.5, 0.99),
    Entry::given(Drive, SECOND_STAGE_EFFICIENCY, "efficiency of the second stage", r"\eta_2", "As the first stage; 1 when there is none.")
        .assumed(1.0)
        .possible(0.01, 1.0)
        .usual(0.5, 1.0),
    Entry::given(Drive, THIRD_STAGE_EFFICIENCY, "efficiency of the third stage", r"\eta_3", "As the first stage; 1 when there is none.")
        .assumed(1.0)
        .possible(0.01, 1.0)
        .usual(0.5, 1.0),
    Entry::either(Drive, DRIVE_DIAMETER, "effective drive diameter", r"d_d", "The diameter that rolls off: of the driven wheel under load, or of the sprocket with the belt round it.")
        .above_zero()
        .usual(0.02, 0.7),
    Entry::either(Drive, DISTANCE_PER_TURN, "distance per turn", r"s_1", "How far one turn of the driven wheel or sprocket carries the machine without slip.")
        .above_zero()
        .usual(0.06, 2.2),
    Entry::either(Drive, ENGINE_POWER, "engine power", r"P_e", "What the engine gives at its shaft at that speed, at full throttle.")
        .above_zero()
        .usual(200.0, 3e4),
    Entry::either(Drive, ENGINE_TORQUE, "engine torque", r"T_e", "What the engine gives at its shaft at that speed, at full throttle.")
        .above_zero()
        .usual(0.3, 100.0),
    Entry::given(Drive, ENGINE_SPEED, "engine speed", r"\omega_e", "The speed of the engine shaft the figures hold for.")
        .above_zero()
        .usual(100.0, 1500.0),
    Entry::given(Drive, ENGINE_CONSUMPTION, "specific fuel consumption", r"b_e", "The mass of fuel for each unit of work at the shaft.")
        .above_zero()
        .usual(6e-8, 2e-7),
    Entry::given(Drive, CALORIFIC_VALUE, "calorific value of the fuel", r"H_u", "The heat in each kilogram of fuel, water left as steam.")
        .assumed(43e6)
        .above_zero()
        .units(&["MJ/kg"], &["MJ/kg"])
        .usual(2e7, 5e7),
    Entry::given(Drive, AIR_FUEL_RATIO, "air to fuel, by mass", r"\lambda_m", "The kilograms of air drawn in for each kilogram of fuel.")
        .assumed(14.7)
        .above_zero()
        .usual(8.0, 30.0),
    Entry::given(Drive, ENGINE_FRICTION_POWER, "friction power of the engine", r"P_f", "What the engine's own rubbing and pumping takes, much the same at any load.")
        .usual(50.0, 1e4),
    Entry::given(Drive, ENGINE_LOAD, "engine load", r"x_e", "The part of the full power that is asked for.")
        .assumed(1.0)
        .possible(0.0, 1.0)
        .usual(0.1, 1.0),
    Entry::given(Drive, ENGINE_DISPLACEMENT, "engine displacement", r"V_h", "The volume its pistons sweep, all cylinders together.")
        .above_zero()
        .usual(2.5e-5, 2e-3),
    Entry::given(Drive, ENGINE_STROKES, "strokes for each cycle", r"z", "2 for a two-stroke engine, 4 for a four-stroke.")
        .assumed(4.0)
        .possible(2.0, 4.0)
        .whole()
        .usual(2.0, 4.0),
    Entry::given(Drive, FUEL_MASS, "fuel on board", r"m_f", "The mass of fuel in the tank.")
        .usual(0.1, 20.0),
    Entry::found(Drive, GEAR_RATIO, "gear ratio", r"G", "Turns of the motor for one turn of the driven wheel or sprocket.")
        .above_zero(),
    Entry::found(Drive, GEAR_EFFICIENCY, "gear efficiency (whole chain)", r"\eta_g", "The part of the shaft power that reaches the driven wheel or sprocket."),
    Entry::found(Drive, PAPER_MOTOR_SPEED, "motor speed on paper", r"\omega_p", "How fast the motor would turn with neither load nor loss."),
    Entry::found(Drive, PAPER_SPEED, "speed on paper", r"v_p", "The speed over the ground with neither load, loss nor slip: never reached.")
        .headline(),
    Entry::found(Drive, NO_LOAD_SPEED, "no-load speed", r"\omega_0", "How fast the motor turns with nothing to drive."),
    Entry::found(Drive, STALL_CURRENT, "stall current (motor alone)", r"I_s", "What the voltage drives through the motor when it cannot turn, wires and battery left out."),
    Entry::found(Drive, STALL_TORQUE, "stall torque (motor alone)", r"T_s", "The torque of the stall current: a catalogue figure, for a moment only."),
    Entry::found(Drive, BEST_EFFICIENCY, "best efficiency of the motor", r"\eta_{\mathrm{best}}", "The most the motor can do with what it draws, at the one current where it does.")
        .possible(0.0, 1.0),
    Entry::found(Drive, BEST_EFFICIENCY_CURRENT, "current at best efficiency", r"I_{\mathrm{best}}", "The current at which the motor makes most of what it draws."),
    Entry::found(Drive, BEST_EFFICIENCY_TORQUE, "torque at best efficiency", r"T_{\mathrm{best}}", "The shaft torque at which the motor makes most of what it draws.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Drive, GREATEST_MOTOR_POWER, "greatest motor power (peak)", r"P_{\mathrm{most}}", "What the motor gives at half its no-load speed: for seconds, with as much heat as work."),
    Entry::found(Drive, MECHANICAL_TIME_CONSTANT, "mechanical time constant", r"\tau_m", "How long the bare motor takes to 63 % of its speed."),
    Entry::found(Drive, MOTOR_TORQUE, "torque at each motor", r"T_m", "What each motor must give at its shaft to push the machine along; below zero, what it brakes with.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Drive, MOTOR_CURRENT, "current in each motor", r"I_m", "What flows in each winding for that torque.")
        .headline(),
    Entry::found(Drive, MOTOR_SUPPLY_VOLTAGE, "voltage for the motor (at rest)", r"V_0", "What the controller can offer the motor before anything flows."),
    Entry::found(Drive, MOTOR_VOLTAGE, "voltage at the motor (under load)", r"V_m", "What is left at the motor's leads, after battery, wires and controller.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Drive, BACK_EMF, "back EMF", r"E_m", "The voltage the turning motor makes against its supply.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Drive, SPEED_LOST, "motor speed lost to load", r"\Delta\omega", "How much slower the torque makes the motor turn."),
    Entry::found(Drive, MOTOR_SPEED, "motor speed (under load)", r"\omega_m", "How fast the motor turns while it pushes the machine along."),
    Entry::found(Drive, LOADED_SPEED, "speed (under load)", r"v_l", "The speed over the ground while the motors push it along, slip left out.")
        .headline(),
    Entry::found(Drive, MOTOR_INPUT_POWER, "power into each motor", r"P_{\mathrm{in}}", "Electric power into each motor."),
    Entry::found(Drive, MOTOR_OUTPUT_POWER, "power out of each motor", r"P_{\mathrm{out}}", "Shaft power of each motor."),
    Entry::found(Drive, MOTOR_LOSS, "loss in each motor", r"P_l", "What goes in and does not come out: all of it heat.")
        .headline(),
    Entry::found(Drive, WINDING_LOSS, "loss in each winding", r"P_{\mathrm{cu}}", "The part of the loss that the current makes in the winding."),
    Entry::found(Drive, MOTOR_EFFICIENCY, "motor efficiency", r"\eta_m", "Shaft power over electric power, at this load.")
        .possible(0.0, 1.0),
    Entry::found(Drive, PUSH_POWER, "power at the ground (in use)", r"P_g", "Push times speed: what the machine does with it all at the driving speed.")
        .headline(),
    Entry::found(Drive, LASTING_POWER, "power at the ground (lasting)", r"P_{\mathrm{cont}}", "What the motors give at the ground for as long as the battery lasts, the winding just at its limit."),
    Entry::found(Drive, DRIVE_EFFICIENCY, "efficiency of the drive", r"\eta_d", "Power at the ground over power from the battery: controller, motors and gears together.")
        .possible(0.0, 1.0)
        .headline(),
    Entry::found(Drive, STALL_PUSH, "push at stall (motor alone)", r"F_s", "What the stall torque would push with at the ground, were there grip and current without end."),
    Entry::found(Drive, PEAK_MOTOR_CURRENT, "most current in each motor (peak)", r"I_{\mathrm{peak}}", "What battery, wires and controller let into a motor that cannot turn.")
        .headline(),
    Entry::found(Drive, PEAK_MOTOR_TORQUE, "most torque of each motor (peak)", r"T_{\mathrm{peak}}", "The shaft torque of that current.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Drive, PEAK_PUSH, "most push of the motors (peak)", r"F_{\mathrm{peak}}", "What that torque pushes with at the ground, for seconds; grip may allow less.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Drive, PUSH_MARGIN, "margin before the motors stall", r"M_F", "The most push over the push needed.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Drive, ENGINE_EFFICIENCY, "engine efficiency", r"\eta_e", "The part of the fuel's heat that reaches the shaft."),
    Entry::found(Drive, FUEL_FLOW, "fuel flow", r"q_f", "The fuel used at full power.")
        .units(&["g/h", "kg/h"], &["lb/s"]),
    Entry::found(Drive, ENGINE_AIR_FLOW, "air drawn in", r"q_a", "The air the engine breathes at full power."),
    Entry::found(Drive, ENGINE_WASTE_HEAT, "waste heat of the engine", r"P_w", "All the fuel's heat that is not work: exhaust, cooling and friction."),
    Entry::found(Drive, ENGINE_INDICATED_POWER, "power in the cylinders", r"P_i", "What the gas does on the pistons at this load: shaft power and friction power together."),
    Entry::found(Drive, BRAKE_MEAN_PRESSURE, "brake mean effective pressure", r"p_e", "The steady pressure on the pistons that would make the engine's torque: how hard it works for its size.")
        .units(&["kPa", "bar"], &["psi"]),
    Entry::found(Drive, ENGINE_MECHANICAL_EFFICIENCY, "mechanical efficiency of the engine", r"\eta_f", "The part of the work in the cylinders that reaches the shaft, at this load."),
    Entry::found(Drive, ENGINE_PUSH, "push of the engine", r"F_e", "What the engine's torque pushes with at the ground; grip may allow less."),
    Entry::found(Drive, ENGINE_GROUND_SPEED, "speed at that engine speed", r"v_e", "The speed over the ground at that engine speed, without slip."),
    Entry::found(Drive, FUEL_RUN_TIME, "run time on the fuel", r"t_f", "How long the fuel lasts at full power."),
];
