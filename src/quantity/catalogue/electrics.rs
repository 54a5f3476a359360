//! Battery, wires, controller and regulator.

use crate::quantity::{
    Area, Charge, Current, Energy, Entry, Frequency, Id, Length, Mass, Power, Ratio, Resistance,
    SpecificHeat, Temperature, TemperatureCoefficient, TemperatureStep, Time, Topic::Electrics,
    Voltage,
};

/// Zero on the Celsius scale, in kelvin.
const CELSIUS: f64 = 273.15;

pub const CELLS_IN_SERIES: Id<Ratio> = Id::new("cells-in-series");
pub const CELLS_IN_PARALLEL: Id<Ratio> = Id::new("cells-in-parallel");
pub const CELL_VOLTAGE: Id<Voltage> = Id::new("cell-voltage");
pub const CELL_RESISTANCE: Id<Resistance> = Id::new("cell-resistance");
pub const CELL_CHARGE: Id<Charge> = Id::new("cell-charge");
pub const CELL_CUTOFF_VOLTAGE: Id<Voltage> = Id::new("cell-cutoff-voltage");
pub const CELL_C_RATE: Id<Ratio> = Id::new("cell-c-rate");
pub const USABLE_SHARE: Id<Ratio> = Id::new("usable-share");
pub const COLD_RESISTANCE_FACTOR: Id<Ratio> = Id::new("cold-resistance-factor");
pub const COLD_CAPACITY_SHARE: Id<Ratio> = Id::new("cold-capacity-share");
pub const AUXILIARY_CURRENT: Id<Current> = Id::new("auxiliary-current");
pub const PEUKERT_EXPONENT: Id<Ratio> = Id::new("peukert-exponent");
pub const TEST_DISCHARGE_CURRENT: Id<Current> = Id::new("test-discharge-current");
pub const TEST_DISCHARGE_TIME: Id<Time> = Id::new("test-discharge-time");
pub const RATED_DISCHARGE_TIME: Id<Time> = Id::new("rated-discharge-time");
pub const BATTERY_TEMPERATURE: Id<Temperature> = Id::new("battery-temperature");
pub const CAPACITY_COEFFICIENT: Id<TemperatureCoefficient> = Id::new("capacity-coefficient");
pub const PACK_MASS: Id<Mass> = Id::new("pack-mass");
pub const PACK_SPECIFIC_HEAT: Id<SpecificHeat> = Id::new("pack-specific-heat");
pub const WIRE_GAUGE: Id<Ratio> = Id::new("wire-gauge");
pub const WIRE_DIAMETER: Id<Length> = Id::new("wire-diameter");
pub const WIRE_METAL_FACTOR: Id<Ratio> = Id::new("wire-metal-factor");
pub const WIRE_LENGTH: Id<Length> = Id::new("wire-length");
pub const WIRE_TEMPERATURE: Id<Temperature> = Id::new("wire-temperature");
pub const WIRE_FAULT_TEMPERATURE: Id<Temperature> = Id::new("wire-fault-temperature");
pub const WIRE_RATED_CURRENT: Id<Current> = Id::new("wire-rated-current");
pub const JOINT_RESISTANCE: Id<Resistance> = Id::new("joint-resistance");
pub const CONTROLLER_RESISTANCE: Id<Resistance> = Id::new("controller-resistance");
pub const CHIP_COEFFICIENT: Id<TemperatureCoefficient> = Id::new("chip-coefficient");
pub const CHIP_TEMPERATURE: Id<Temperature> = Id::new("chip-temperature");
pub const CONTROLLER_DROP: Id<Voltage> = Id::new("controller-drop");
pub const ON_SHARE: Id<Ratio> = Id::new("on-share");
pub const SWITCHING_FREQUENCY: Id<Frequency> = Id::new("switching-frequency");
pub const SWITCHING_RISE_TIME: Id<Time> = Id::new("switching-rise-time");
pub const SWITCHING_FALL_TIME: Id<Time> = Id::new("switching-fall-time");
pub const CONTROLLER_CURRENT_LIMIT: Id<Current> = Id::new("controller-current-limit");
pub const SERVO_COUNT: Id<Ratio> = Id::new("servo-count");
pub const SERVO_STALL_CURRENT: Id<Current> = Id::new("servo-stall-current");
pub const REGULATED_CURRENT: Id<Current> = Id::new("regulated-current");
pub const REGULATOR_LIMIT: Id<Current> = Id::new("regulator-limit");
pub const REGULATOR_VOLTAGE: Id<Voltage> = Id::new("regulator-voltage");
pub const BATTERY_VOLTAGE: Id<Voltage> = Id::new("battery-voltage");
pub const BATTERY_CUTOFF_VOLTAGE: Id<Voltage> = Id::new("battery-cutoff-voltage");
pub const BATTERY_RESISTANCE: Id<Resistance> = Id::new("battery-resistance");
pub const LIGHT_TEST_CURRENT: Id<Current> = Id::new("light-test-current");
pub const LIGHT_TEST_VOLTAGE: Id<Voltage> = Id::new("light-test-voltage");
pub const HEAVY_TEST_CURRENT: Id<Current> = Id::new("heavy-test-current");
pub const HEAVY_TEST_VOLTAGE: Id<Voltage> = Id::new("heavy-test-voltage");
pub const TESTED_BATTERY_RESISTANCE: Id<Resistance> = Id::new("tested-battery-resistance");
pub const BATTERY_CHARGE: Id<Charge> = Id::new("battery-charge");
pub const BATTERY_ENERGY: Id<Energy> = Id::new("battery-energy");
pub const USABLE_ENERGY: Id<Energy> = Id::new("usable-energy");
pub const WIRE_AREA: Id<Area> = Id::new("wire-area");
pub const WIRE_RESISTANCE: Id<Resistance> = Id::new("wire-resistance");
pub const SUPPLY_RESISTANCE: Id<Resistance> = Id::new("supply-resistance");
pub const COLD_SUPPLY_RESISTANCE: Id<Resistance> = Id::new("cold-supply-resistance");
pub const BATTERY_CURRENT: Id<Current> = Id::new("battery-current");
pub const BATTERY_SAG: Id<Voltage> = Id::new("battery-sag");
pub const BATTERY_LOADED_VOLTAGE: Id<Voltage> = Id::new("battery-loaded-voltage");
pub const BATTERY_HEAT: Id<Power> = Id::new("battery-heat");
pub const BATTERY_POWER: Id<Power> = Id::new("battery-power");
pub const POWER_AT_SPEED: Id<Power> = Id::new("power-at-speed");
pub const CURRENT_AT_SPEED: Id<Current> = Id::new("current-at-speed");
pub const BATTERY_C_RATE: Id<Ratio> = Id::new("battery-c-rate");
pub const LABEL_CURRENT: Id<Current> = Id::new("label-current");
pub const CUTOFF_CURRENT: Id<Current> = Id::new("cutoff-current");
pub const COLD_CUTOFF_CURRENT: Id<Current> = Id::new("cold-cutoff-current");
pub const PEAK_BATTERY_CURRENT: Id<Current> = Id::new("peak-battery-current");
pub const LOWEST_VOLTAGE: Id<Voltage> = Id::new("lowest-voltage");
pub const CUTOFF_MARGIN: Id<Ratio> = Id::new("cutoff-margin");
pub const LABEL_MARGIN: Id<Ratio> = Id::new("label-margin");
pub const TIME_TO_EMPTY: Id<Time> = Id::new("time-to-empty");
pub const RUN_TIME: Id<Time> = Id::new("run-time");
pub const COLD_RUN_TIME: Id<Time> = Id::new("cold-run-time");
pub const PEUKERT_TIME: Id<Time> = Id::new("peukert-time");
pub const PEUKERT_CHARGE: Id<Charge> = Id::new("peukert-charge");
pub const TESTED_PEUKERT_EXPONENT: Id<Ratio> = Id::new("tested-peukert-exponent");
pub const LEAD_ACID_COLD_SHARE: Id<Ratio> = Id::new("lead-acid-cold-share");
pub const PACK_RISE: Id<TemperatureStep> = Id::new("pack-rise");
pub const WIRE_DROP: Id<Voltage> = Id::new("wire-drop");
pub const WIRE_HEAT: Id<Power> = Id::new("wire-heat");
pub const PEAK_WIRE_DROP: Id<Voltage> = Id::new("peak-wire-drop");
pub const WIRE_WITHSTAND_TIME: Id<Time> = Id::new("wire-withstand-time");
pub const WIRE_SECOND_RISE: Id<TemperatureStep> = Id::new("wire-second-rise");
pub const WIRE_MARGIN: Id<Ratio> = Id::new("wire-margin");
pub const CONTROLLER_HOT_RESISTANCE: Id<Resistance> = Id::new("controller-hot-resistance");
pub const CONDUCTION_LOSS: Id<Power> = Id::new("conduction-loss");
pub const SWITCHING_LOSS: Id<Power> = Id::new("switching-loss");
pub const RESISTIVE_SWITCHING_LOSS: Id<Power> = Id::new("resistive-switching-loss");
pub const CONTROLLER_LOSS: Id<Power> = Id::new("controller-loss");
pub const PEAK_CONTROLLER_LOSS: Id<Power> = Id::new("peak-controller-loss");
pub const REGULATOR_DEMAND: Id<Current> = Id::new("regulator-demand");
pub const REGULATOR_MARGIN: Id<Ratio> = Id::new("regulator-margin");
pub const REGULATOR_LOSS: Id<Power> = Id::new("regulator-loss");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Electrics, CELLS_IN_SERIES, "cells in a row", r"n_s", "How many cells stand in series: their voltages add.")
        .above_zero()
        .whole()
        .usual(1.0, 24.0),
    Entry::given(Electrics, CELLS_IN_PARALLEL, "cells side by side", r"n_p", "How many cells stand in parallel: their charges add.")
        .assumed(1.0)
        .above_zero()
        .whole()
        .usual(1.0, 20.0),
    Entry::given(Electrics, CELL_VOLTAGE, "cell voltage (at rest)", r"V_c", "The voltage of one cell at rest; 3.7 V is the usual mean of a lithium-ion cell.")
        .assumed(3.7)
        .above_zero()
        .usual(1.1, 4.2),
    Entry::given(Electrics, CELL_RESISTANCE, "cell resistance (warm)", r"R_c", "The internal resistance of one cell at room temperature.")
        .usual(0.0005, 0.1),
    Entry::given(Electrics, CELL_CHARGE, "cell capacity", r"Q_c", "The charge one full cell holds.")
        .above_zero()
        .units(&["mA·h", "A·h"], &["mA·h", "A·h"])
        .usual(1000.0, 4e5),
    Entry::given(Electrics, CELL_CUTOFF_VOLTAGE, "cut-off voltage of a cell", r"V_{c,\mathrm{off}}", "The voltage for each cell at which the controller gives up.")
        .assumed(3.0)
        .usual(0.9, 3.6),
    Entry::given(Electrics, CELL_C_RATE, "C rate on the label", r"C_l", "How many times over the label says the pack may be emptied in an hour, for long.")
        .above_zero()
        .usual(0.5, 60.0),
    Entry::given(Electrics, USABLE_SHARE, "usable part of the battery", r"u_b", "The part of its energy that may be taken out before it has to be charged.")
        .assumed(0.8)
        .possible(0.0, 1.0)
        .usual(0.3, 1.0),
    Entry::given(Electrics, COLD_RESISTANCE_FACTOR, "cold resistance over warm", r"k_c", "How many times its warm resistance the pack has on the coldest day.")
        .assumed(2.0)
        .above_zero()
        .usual(1.0, 4.0),
    Entry::given(Electrics, COLD_CAPACITY_SHARE, "cold capacity over warm", r"u_c", "The part of its warm capacity the pack gives on the coldest day.")
        .assumed(0.7)
        .possible(0.0, 1.0)
        .usual(0.3, 1.0),
    Entry::given(Electrics, AUXILIARY_CURRENT, "current of everything else", r"I_a", "What radio, lights and sensors draw from the battery.")
        .assumed(0.0)
        .usual(0.0, 5.0),
    Entry::given(Electrics, PEUKERT_EXPONENT, "Peukert exponent", r"k_P", "How much less a lead-acid battery gives when it must give it fast: 1 means no less.")
        .assumed(1.2)
        .possible(1.0, 2.0)
        .usual(1.0, 1.4),
    Entry::given(Electrics, RATED_DISCHARGE_TIME, "time of the rated discharge", r"t_r", "The time over which the label's capacity was measured.")
        .assumed(72000.0)
        .above_zero()
        .usual(3600.0, 72000.0),
    Entry::given(Electrics, LIGHT_TEST_CURRENT, "light current of the two-load test", r"I_{t1}", "A small steady current, a fifth of the pack's charge each hour, drawn for ten seconds.")
        .usual(0.0, 10.0),
    Entry::given(Electrics, LIGHT_TEST_VOLTAGE, "voltage at the light current", r"V_{t1}", "What the pack shows under the light current.")
        .above_zero()
        .usual(1.0, 60.0),
    Entry::given(Electrics, HEAVY_TEST_CURRENT, "heavy current of the two-load test", r"I_{t2}", "A larger current right after it: all of the pack's charge each hour, drawn for one second.")
        .above_zero()
        .usual(0.5, 100.0),
    Entry::given(Electrics, HEAVY_TEST_VOLTAGE, "voltage at the heavy current", r"V_{t2}", "What the pack shows under the heavy current.")
        .above_zero()
        .usual(1.0, 60.0),
    Entry::given(Electrics, TEST_DISCHARGE_CURRENT, "current of a fast discharge test", r"I_t", "The steady current of a test that emptied the full lead-acid battery faster than the label's.")
        .above_zero()
        .usual(1.0, 100.0),
    Entry::given(Electrics, TEST_DISCHARGE_TIME, "time of a fast discharge test", r"t_t", "How long the battery lasted at that current.")
        .above_zero()
        .usual(600.0, 36000.0),
    Entry::given(Electrics, BATTERY_TEMPERATURE, "battery temperature", r"T_b", "How warm the pack itself is.")
        .assumed(CELSIUS + 20.0)
        .usual(CELSIUS - 20.0, CELSIUS + 45.0),
    Entry::given(Electrics, CAPACITY_COEFFICIENT, "capacity lost to cold", r"\alpha_Q", "The share of a lead-acid battery's capacity that each kelvin under 25 °C takes.")
        .assumed(0.006)
        .usual(0.003, 0.015),
    Entry::given(Electrics, PACK_MASS, "mass of the cells", r"m_b", "The mass of the pack that warms with the cells.")
        .above_zero()
        .usual(0.05, 60.0),
    Entry::given(Electrics, PACK_SPECIFIC_HEAT, "specific heat of the cells", r"c_b", "The heat that warms a kilogram of cells by a kelvin.")
        .assumed(1000.0)
        .above_zero()
        .usual(800.0, 1200.0),
    Entry::either(Electrics, WIRE_GAUGE, "wire gauge (AWG)", r"n_w", "The American wire gauge; a larger number is a thinner wire, 0000 is written -3.")
        .possible(-3.0, 56.0)
        .usual(-3.0, 28.0),
    Entry::either(Electrics, WIRE_DIAMETER, "wire diameter (metal)", r"d_w", "The diameter of a solid wire with as much metal.")
        .above_zero()
        .usual(0.0003, 0.007),
    Entry::given(Electrics, WIRE_LENGTH, "wire run (one way)", r"l_w", "How far the wire goes, one way; both wires are counted.")
        .usual(0.05, 5.0),
    Entry::given(Electrics, WIRE_METAL_FACTOR, "resistance of the wire's metal over copper", r"k_w", "How many times the resistance of copper the metal has at 20 °C: about 1.5 for copper-clad aluminium, 1.6 for aluminium.")
        .assumed(1.0)
        .above_zero()
        .usual(1.0, 2.0),
    Entry::given(Electrics, WIRE_TEMPERATURE, "wire temperature", r"T_{\mathrm{wire}}", "How warm the copper is.")
        .assumed(CELSIUS + 20.0)
        .possible(50.0, CELSIUS + 1000.0)
        .usual(CELSIUS - 20.0, CELSIUS + 90.0),
    Entry::given(Electrics, WIRE_FAULT_TEMPERATURE, "most the wire's insulation takes for a moment", r"T_{\mathrm{fault}}", "The temperature the insulation survives for a few seconds; 160 °C for PVC.")
        .assumed(CELSIUS + 160.0)
        .possible(50.0, CELSIUS + 1000.0)
        .usual(CELSIUS + 100.0, CELSIUS + 350.0),
    Entry::given(Electrics, WIRE_RATED_CURRENT, "rated current of wire and plugs", r"I_w", "The steady current the maker allows the weaker of wire and plugs, as they are laid.")
        .above_zero()
        .usual(1.0, 200.0),
    Entry::given(Electrics, JOINT_RESISTANCE, "resistance of plugs and joints", r"R_j", "Plugs, fuse holder, switch and joints together.")
        .assumed(0.0)
        .usual(0.0, 0.05),
    Entry::given(Electrics, CONTROLLER_RESISTANCE, "controller path resistance (cool)", r"R_{on}", "All that stands in one controller between battery and motor, chips at 25 °C.")
        .usual(0.0005, 0.1),
    Entry::given(Electrics, CHIP_COEFFICIENT, "resistance added by warm chips", r"\alpha_{on}", "The share by which the path resistance grows for each kelvin.")
        .assumed(0.005)
        .usual(0.003, 0.008),
    Entry::given(Electrics, CHIP_TEMPERATURE, "chip temperature reckoned with", r"T_j", "How warm the chips are taken to be when their resistance is reckoned.")
        .assumed(CELSIUS + 100.0)
        .possible(1.0, CELSIUS + 300.0)
        .usual(CELSIUS + 25.0, CELSIUS + 150.0),
    Entry::given(Electrics, CONTROLLER_DROP, "fixed voltage drop of the controller", r"V_{on}", "What diodes and older transistors take, whatever the current.")
        .assumed(0.0)
        .usual(0.0, 3.0),
    Entry::given(Electrics, ON_SHARE, "share of the time the path conducts", r"x_{on}", "The part of the time that current flows in the path reckoned with; 1 when one path or another always conducts.")
        .assumed(1.0)
        .possible(0.0, 1.0)
        .usual(0.1, 1.0),
    Entry::given(Electrics, SWITCHING_FREQUENCY, "switching frequency", r"f_s", "How often each second the controller switches.")
        .assumed(16e3)
        .usual(1e3, 1e5),
    Entry::given(Electrics, SWITCHING_RISE_TIME, "switch-on time", r"t_{on}", "How long one switch takes to turn on.")
        .assumed(100e-9)
        .units(&["µs"], &["µs"])
        .usual(2e-8, 5e-6),
    Entry::given(Electrics, SWITCHING_FALL_TIME, "switch-off time", r"t_{off}", "How long one switch takes to turn off.")
        .assumed(100e-9)
        .units(&["µs"], &["µs"])
        .usual(2e-8, 5e-6),
    Entry::given(Electrics, CONTROLLER_CURRENT_LIMIT, "current limit of a controller", r"I_{\mathrm{lim}}", "The most current one controller lets into its motor, if it limits at all.")
        .above_zero()
        .usual(1.0, 300.0),
    Entry::given(Electrics, SERVO_COUNT, "number of servos", r"n_{sv}", "How many servos hang on the regulator.")
        .whole()
        .usual(0.0, 8.0),
    Entry::given(Electrics, SERVO_STALL_CURRENT, "stall current of a servo", r"I_{sv}", "What one servo draws when it cannot move.")
        .usual(0.2, 10.0),
    Entry::given(Electrics, REGULATED_CURRENT, "other current of the regulator", r"I_r", "What receiver, board and sensors draw from the regulator.")
        .assumed(0.2)
        .usual(0.05, 5.0),
    Entry::given(Electrics, REGULATOR_LIMIT, "most the regulator gives", r"I_{\mathrm{reg}}", "The current at which the regulator's voltage falls, as warm as it will be.")
        .above_zero()
        .usual(0.5, 20.0),
    Entry::given(Electrics, REGULATOR_VOLTAGE, "regulated voltage", r"V_r", "What the regulator gives.")
        .above_zero()
        .usual(3.3, 8.4),
    Entry::found(Electrics, BATTERY_VOLTAGE, "battery voltage (at rest)", r"V_b", "The voltage of the pack with nothing drawn.")
        .headline(),
    Entry::found(Electrics, BATTERY_CUTOFF_VOLTAGE, "cut-off voltage of the pack", r"V_{\mathrm{off}}", "The voltage at which the controller gives up."),
    Entry::found(Electrics, TESTED_BATTERY_RESISTANCE, "battery resistance by two loads", r"R_t", "The internal resistance of the pack as it was tested, wires up to the voltmeter included."),
    Entry::found(Electrics, BATTERY_RESISTANCE, "battery resistance (warm)", r"R_b", "The internal resistance of the pack at room temperature."),
    Entry::found(Electrics, BATTERY_CHARGE, "battery capacity", r"Q_b", "The charge the full pack holds."),
    Entry::found(Electrics, BATTERY_ENERGY, "energy of the battery", r"E_b", "All the energy in the full battery.")
        .units(&["W·h"], &["W·h"])
        .headline(),
    Entry::found(Electrics, USABLE_ENERGY, "usable energy", r"E_u", "The energy that may be taken out before it has to be charged.")
        .units(&["W·h"], &["W·h"]),
    Entry::found(Electrics, WIRE_AREA, "wire section", r"A_w", "The metal section of the wire.")
        .units(&["mm²"], &["mm²"]),
    Entry::found(Electrics, WIRE_RESISTANCE, "wire resistance (out and back)", r"R_w", "Both wires of the run together."),
    Entry::found(Electrics, SUPPLY_RESISTANCE, "supply resistance (warm)", r"R_s", "Battery, wires and joints together, as the controller sees them."),
    Entry::found(Electrics, COLD_SUPPLY_RESISTANCE, "supply resistance (cold pack)", r"R_{s,\mathrm{cold}}", "The same on the coldest day."),
    Entry::found(Electrics, BATTERY_CURRENT, "battery current", r"I_b", "What is drawn from the battery at this push and throttle, on average.")
        .headline(),
    Entry::found(Electrics, BATTERY_SAG, "battery sag", r"\Delta V_b", "What the current takes from the battery's voltage."),
    Entry::found(Electrics, BATTERY_LOADED_VOLTAGE, "battery voltage (under load)", r"V_l", "What is left at the battery's terminals.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Electrics, BATTERY_HEAT, "heat in the battery", r"P_b", "What the current makes inside the pack."),
    Entry::found(Electrics, BATTERY_POWER, "power from the battery", r"P_{\mathrm{bat}}", "Terminal voltage times current, on average.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Electrics, POWER_AT_SPEED, "power from the battery at the driving speed", r"P_{\mathrm{el}}", "What the battery must give to keep the driving speed on this ground and slope, and to run what runs all the time.")
        .headline(),
    Entry::found(Electrics, CURRENT_AT_SPEED, "battery current at the driving speed", r"I_{\mathrm{el}}", "What flows from the battery for that power, its sag counted."),
    Entry::found(Electrics, BATTERY_C_RATE, "C rate", r"C", "How many times over this current would empty the pack in an hour."),
    Entry::found(Electrics, LABEL_CURRENT, "current by the label", r"I_l", "The C rate on the label as a current; labels are often hopeful."),
    Entry::found(Electrics, CUTOFF_CURRENT, "largest current before cut-off (warm)", r"I_{\mathrm{off}}", "The current at which the sag reaches the cut-off, pack warm."),
    Entry::found(Electrics, COLD_CUTOFF_CURRENT, "largest current before cut-off (cold)", r"I_{\mathrm{off,cold}}", "The same with the pack cold: the worse of the two.")
        .headline(),
    Entry::found(Electrics, PEAK_BATTERY_CURRENT, "most current from the battery (peak)", r"I_{b,\mathrm{peak}}", "All motors held still at full throttle, and everything else: what a start from rest asks for a moment.")
        .headline(),
    Entry::found(Electrics, LOWEST_VOLTAGE, "lowest voltage (cold, peak)", r"V_{\mathrm{low}}", "What the controller sees at the peak on the coldest day.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Electrics, CUTOFF_MARGIN, "margin before cut-off", r"M_{\mathrm{off}}", "The largest current of the cold pack before cut-off, over the peak.")
        .headline(),
    Entry::found(Electrics, LABEL_MARGIN, "margin on the label", r"M_l", "The label's current over the peak."),
    Entry::found(Electrics, TIME_TO_EMPTY, "time to empty", r"t_Q", "How long the whole charge lasts at this current."),
    Entry::found(Electrics, RUN_TIME, "run time", r"t_r", "How long the usable energy lasts at this power.")
        .headline(),
    Entry::found(Electrics, COLD_RUN_TIME, "run time (cold pack)", r"t_{r,\mathrm{cold}}", "The same with what a cold pack gives.")
        .headline(),
    Entry::found(Electrics, PEUKERT_TIME, "time to empty (lead-acid)", r"t_P", "How long a lead-acid battery lasts at this current."),
    Entry::found(Electrics, PEUKERT_CHARGE, "charge it gives (lead-acid)", r"Q_P", "What a lead-acid battery gives in all at this current."),
    Entry::found(Electrics, TESTED_PEUKERT_EXPONENT, "Peukert exponent by the test", r"k_t", "The exponent that the fast test and the label's slow discharge lie on: put it in as the Peukert exponent."),
    Entry::found(Electrics, LEAD_ACID_COLD_SHARE, "capacity of lead-acid in the cold", r"u_P", "The part of its capacity at 25 °C that a lead-acid battery gives."),
    Entry::found(Electrics, PACK_RISE, "temperature rise of the pack (no cooling)", r"\Delta T_b", "How much warmer the pack gets over the working time if it keeps all its heat: the worst case."),
    Entry::found(Electrics, WIRE_DROP, "voltage drop in the wires", r"\Delta V_w", "What the current takes on its way, out and back."),
    Entry::found(Electrics, WIRE_HEAT, "heat in the wires", r"P_w", "What the current makes in both wires."),
    Entry::found(Electrics, PEAK_WIRE_DROP, "voltage drop in the wires (peak)", r"\Delta V_{w,\mathrm{peak}}", "The same at the peak."),
    Entry::found(Electrics, WIRE_WITHSTAND_TIME, "time the wire stands the peak", r"t_w", "How long the peak current may flow before the insulation is past what it takes for a moment, no cooling counted."),
    Entry::found(Electrics, WIRE_SECOND_RISE, "rise of the wire in one second (peak)", r"\Delta T_1", "How much warmer the copper gets in the first second of the peak, no cooling counted."),
    Entry::found(Electrics, WIRE_MARGIN, "margin of the wire", r"M_w", "The rated current of wire and plugs over the battery current.")
        .headline(),
    Entry::found(Electrics, CONTROLLER_HOT_RESISTANCE, "controller path resistance (hot)", r"R_{on,\mathrm{hot}}", "The path resistance with the chips warm."),
    Entry::found(Electrics, CONDUCTION_LOSS, "path loss of a controller", r"P_{on}", "What the motor's current makes in one controller's path."),
    Entry::found(Electrics, SWITCHING_LOSS, "switching loss of a controller", r"P_{sw}", "What turning on and off costs in one controller."),
    Entry::found(Electrics, RESISTIVE_SWITCHING_LOSS, "switching loss with a plain resistance", r"P_{sw,R}", "What switching would cost if the load were a lamp or a heater: a third of what a motor costs."),
    Entry::found(Electrics, CONTROLLER_LOSS, "loss in a controller", r"P_c", "Path and switching together, in one controller.")
        .headline(),
    Entry::found(Electrics, PEAK_CONTROLLER_LOSS, "path loss of a controller (peak)", r"P_{c,\mathrm{peak}}", "The path loss while its motor is held still."),
    Entry::found(Electrics, REGULATOR_DEMAND, "most asked of the regulator (peak)", r"I_{r,\mathrm{peak}}", "All servos stalled at once, and the rest."),
    Entry::found(Electrics, REGULATOR_MARGIN, "margin of the regulator", r"M_r", "What the regulator gives over the most asked of it.")
        .headline(),
    Entry::found(Electrics, REGULATOR_LOSS, "heat in a linear regulator (peak)", r"P_r", "What a linear regulator turns to heat at the most asked of it; a switching one makes much less.")
        .possible(f64::MIN, f64::MAX),
];
