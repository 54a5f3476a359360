//! Where losses go and how hot things get.

pub(super) mod brake;
pub(super) mod enclosure;
pub(super) mod surface;
pub(super) mod touch;

use crate::quantity::{
    Current, Entry, HeatCapacity, Id, Mass, Power, Ratio, Resistance, SpecificHeat, Temperature,
    TemperatureCoefficient, TemperatureStep, ThermalResistance, Time, Topic::Heat, TorqueConstant,
};

pub use brake::*;
pub use enclosure::*;
pub use surface::*;
pub use touch::*;

/// Zero on the Celsius scale, in kelvin.
const CELSIUS: f64 = 273.15;

pub const COOLING_AIR: Id<Temperature> = Id::new("cooling-air");
pub const WINDING_TO_HOUSING: Id<ThermalResistance> = Id::new("winding-to-housing");
pub const HOUSING_TO_AIR: Id<ThermalResistance> = Id::new("housing-to-air");
pub const COPPER_MASS: Id<Mass> = Id::new("copper-mass");
pub const HOUSING_MASS: Id<Mass> = Id::new("housing-mass");
pub const HOUSING_SPECIFIC_HEAT: Id<SpecificHeat> = Id::new("housing-specific-heat");
pub const WINDING_LIMIT: Id<Temperature> = Id::new("winding-limit");
pub const WORK_TIME: Id<Time> = Id::new("work-time");
pub const REST_TIME: Id<Time> = Id::new("rest-time");
pub const REST_CURRENT: Id<Current> = Id::new("rest-current");
pub const COPPER_COEFFICIENT: Id<TemperatureCoefficient> = Id::new("copper-coefficient");
pub const MAGNET_COEFFICIENT: Id<TemperatureCoefficient> = Id::new("magnet-coefficient");
pub const WINDING_HEAT_CAPACITY: Id<HeatCapacity> = Id::new("winding-heat-capacity");
pub const HOUSING_HEAT_CAPACITY: Id<HeatCapacity> = Id::new("housing-heat-capacity");
pub const MOTOR_HEAT_CAPACITY: Id<HeatCapacity> = Id::new("motor-heat-capacity");
pub const MOTOR_TO_AIR: Id<ThermalResistance> = Id::new("motor-to-air");
pub const ALLOWED_RISE: Id<TemperatureStep> = Id::new("allowed-rise");
pub const WINDING_RISE: Id<TemperatureStep> = Id::new("winding-rise");
pub const WINDING_TEMPERATURE: Id<Temperature> = Id::new("winding-temperature");
pub const MOTOR_WARM_LOSS: Id<Power> = Id::new("motor-warm-loss");
pub const HOUSING_TEMPERATURE: Id<Temperature> = Id::new("housing-temperature");
pub const MOTOR_HEAT_MARGIN: Id<Ratio> = Id::new("motor-heat-margin");
pub const WARM_MOTOR_RESISTANCE: Id<Resistance> = Id::new("warm-motor-resistance");
pub const WARM_TORQUE_CONSTANT: Id<TorqueConstant> = Id::new("warm-torque-constant");
pub const RUNAWAY_CURRENT: Id<Current> = Id::new("runaway-current");
pub const CONTINUOUS_CURRENT: Id<Current> = Id::new("continuous-current");
pub const WINDING_TIME_CONSTANT: Id<Time> = Id::new("winding-time-constant");
pub const MOTOR_TIME_CONSTANT: Id<Time> = Id::new("motor-time-constant");
pub const MOTOR_RISE_AFTER: Id<TemperatureStep> = Id::new("motor-rise-after");
pub const WINDING_RISE_AFTER: Id<TemperatureStep> = Id::new("winding-rise-after");
pub const HOUSING_RISE_AFTER: Id<TemperatureStep> = Id::new("housing-rise-after");
pub const SOAK_RISE: Id<TemperatureStep> = Id::new("soak-rise");
pub const TIME_TO_LIMIT: Id<Time> = Id::new("time-to-limit");
pub const STALL_LOSS: Id<Power> = Id::new("stall-loss");
pub const STALL_TIME: Id<Time> = Id::new("stall-time");
pub const HEATING_CURRENT: Id<Current> = Id::new("heating-current");
pub const MEAN_DUTY_CURRENT: Id<Current> = Id::new("mean-duty-current");
pub const DUTY_PEAK_RISE: Id<TemperatureStep> = Id::new("duty-peak-rise");
pub const REST_NEEDED: Id<Time> = Id::new("rest-needed");
pub const INSULATION_LIFE: Id<Ratio> = Id::new("insulation-life");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Heat, COOLING_AIR, "air about the machine", r"T_a", "How warm the air that cools the machine is, on the hottest day it should work.")
        .assumed(CELSIUS + 20.0)
        .above_zero()
        .usual(CELSIUS - 30.0, CELSIUS + 45.0),
    Entry::given(Heat, WINDING_TO_HOUSING, "winding to housing", r"R_{wh}", "How much warmer than the housing the winding is for each watt.")
        .above_zero()
        .usual(0.1, 10.0),
    Entry::given(Heat, HOUSING_TO_AIR, "housing to air", r"R_{ha}", "How much warmer than the air the housing is for each watt: from a steady run until it gets no warmer.")
        .above_zero()
        .usual(0.3, 30.0),
    Entry::given(Heat, COPPER_MASS, "copper in the winding", r"m_{\mathrm{cu}}", "The mass of the winding.")
        .above_zero()
        .usual(0.002, 3.0),
    Entry::given(Heat, HOUSING_MASS, "mass of the motor without its winding", r"m_h", "Housing, iron, magnets, and what is bolted flat to them.")
        .above_zero()
        .usual(0.01, 20.0),
    Entry::given(Heat, HOUSING_SPECIFIC_HEAT, "specific heat of the housing", r"c_h", "The heat that warms a kilogram of it by a kelvin; 452 J/(kg·K) for iron and steel.")
        .assumed(452.0)
        .above_zero()
        .usual(380.0, 900.0),
    Entry::given(Heat, WINDING_LIMIT, "winding temperature limit", r"T_{w,\mathrm{lim}}", "The most the winding may reach: by its insulation class, its magnets or the maker, whichever is least.")
        .above_zero()
        .usual(CELSIUS + 70.0, CELSIUS + 220.0),
    Entry::given(Heat, WORK_TIME, "working time", r"t_1", "How long it works at a stretch.")
        .above_zero()
        .usual(5.0, 7200.0),
    Entry::given(Heat, REST_TIME, "rest time", r"t_2", "How long it rests between.")
        .usual(0.0, 7200.0),
    Entry::given(Heat, REST_CURRENT, "motor current at rest", r"I_2", "What flows in a motor during the rest or the easy part.")
        .assumed(0.0)
        .usual(0.0, 50.0),
    Entry::given(Heat, COPPER_COEFFICIENT, "resistance added by warm copper", r"\alpha_{\mathrm{cu}}", "The share by which a winding's resistance grows for each kelvin, from 20 °C.")
        .assumed(0.00393)
        .usual(0.0035, 0.0045),
    Entry::given(Heat, MAGNET_COEFFICIENT, "torque lost to warm magnets", r"\alpha_m", "The share by which the torque constant changes for each kelvin, from 20 °C; less than nothing.")
        .assumed(-0.0012)
        .possible(-0.01, 0.0)
        .usual(-0.002, -0.0002),
    Entry::found(Heat, WINDING_HEAT_CAPACITY, "heat capacity of the winding", r"C_w", "The heat that warms the winding by a kelvin."),
    Entry::found(Heat, HOUSING_HEAT_CAPACITY, "heat capacity of the housing", r"C_h", "The heat that warms the rest of the motor by a kelvin."),
    Entry::found(Heat, MOTOR_HEAT_CAPACITY, "heat capacity of the motor", r"C_m", "Winding and housing together."),
    Entry::found(Heat, MOTOR_TO_AIR, "winding to air", r"R_{wa}", "How much warmer than the air the winding is for each watt."),
    Entry::found(Heat, ALLOWED_RISE, "rise allowed for the winding", r"\Delta T_{w,\mathrm{lim}}", "From the air to the winding's limit.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Heat, WINDING_RISE, "winding rise (at rest)", r"\Delta T_w", "How much warmer than the air the winding is when it gets no warmer.")
        .headline(),
    Entry::found(Heat, WINDING_TEMPERATURE, "winding temperature (at rest)", r"T_w", "How hot the winding ends up at this load.")
        .headline(),
    Entry::found(Heat, MOTOR_WARM_LOSS, "loss in each motor (warm)", r"P_{l,\mathrm{warm}}", "The loss once the winding is as warm as it gets."),
    Entry::found(Heat, HOUSING_TEMPERATURE, "housing temperature (at rest)", r"T_h", "How hot the outside of the motor ends up at this load.")
        .headline(),
    Entry::found(Heat, MOTOR_HEAT_MARGIN, "margin of the motor on heat", r"M_T", "The rise allowed over the rise at this load.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Heat, WARM_MOTOR_RESISTANCE, "winding resistance (warm)", r"R_{m,\mathrm{warm}}", "The winding's resistance at its temperature at rest."),
    Entry::found(Heat, WARM_TORQUE_CONSTANT, "motor torque constant (warm)", r"K_{t,\mathrm{warm}}", "The torque constant with the magnets as warm as the housing."),
    Entry::found(Heat, RUNAWAY_CURRENT, "current of thermal runaway", r"I_{\mathrm{run}}", "The current above which no temperature is steady."),
    Entry::found(Heat, CONTINUOUS_CURRENT, "continuous current", r"I_{\mathrm{cont}}", "The current that holds the winding at its limit for ever.")
        .headline(),
    Entry::found(Heat, WINDING_TIME_CONSTANT, "time constant of the winding", r"\tau_w", "How fast the winding follows its housing."),
    Entry::found(Heat, MOTOR_TIME_CONSTANT, "time constant of the motor", r"\tau_T", "How fast the whole motor follows its load."),
    Entry::found(Heat, MOTOR_RISE_AFTER, "winding rise after the working time (one body)", r"\Delta T_1", "As if winding and housing were one body: too low at first."),
    Entry::found(Heat, WINDING_RISE_AFTER, "winding rise after the working time", r"\Delta T_{w,1}", "How much warmer than the air the winding is after one stretch of work from cold."),
    Entry::found(Heat, HOUSING_RISE_AFTER, "housing rise after the working time", r"\Delta T_{h,1}", "How much warmer than the air the housing is after one stretch of work from cold."),
    Entry::found(Heat, SOAK_RISE, "housing rise after stopping (peak)", r"\Delta T_{\mathrm{soak}}", "The warmest the housing gets after it stops, while the winding's heat soaks out."),
    Entry::found(Heat, TIME_TO_LIMIT, "time to the winding's limit", r"t_{\mathrm{lim}}", "How long from cold until the winding reaches its limit.")
        .headline(),
    Entry::found(Heat, STALL_LOSS, "heat in a stalled winding (peak)", r"P_s", "What the peak current makes in a winding that stands still."),
    Entry::found(Heat, STALL_TIME, "time to the limit when stalled", r"t_s", "How long from cold until a stalled winding reaches its limit, nothing leaving it: seconds.")
        .headline(),
    Entry::found(Heat, HEATING_CURRENT, "heating current of the duty", r"I_{\mathrm{rms}}", "The steady current that heats as much as work and rest in turn (root mean square)."),
    Entry::found(Heat, MEAN_DUTY_CURRENT, "mean current of the duty", r"I_{\mathrm{mean}}", "The mean of work and rest: it decides the charge used, not the heat."),
    Entry::found(Heat, DUTY_PEAK_RISE, "winding rise of the duty (peak)", r"\Delta T_{\mathrm{duty}}", "The hottest moment of work and rest without end."),
    Entry::found(Heat, REST_NEEDED, "rest needed", r"t_{2,\mathrm{need}}", "The rest after each stretch of work that keeps the winding at its limit."),
    Entry::found(Heat, INSULATION_LIFE, "life of the insulation", r"L_i", "Against its life at the limit: half for each 10 K more."),
];
