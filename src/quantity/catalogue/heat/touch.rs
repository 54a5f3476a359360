//! What may be touched, and how warm parts cool down.

use super::CELSIUS;
use crate::quantity::{
    Energy, Entry, HeatCapacity, Id, Mass, Ratio, SpecificHeat, Temperature, TemperatureStep,
    ThermalConductivity, Time, Topic::Heat, Volume,
};

pub const TOUCH_LIMIT: Id<Temperature> = Id::new("touch-limit");
pub const WARM_MASS: Id<Mass> = Id::new("warm-mass");
pub const WARM_SPECIFIC_HEAT: Id<SpecificHeat> = Id::new("warm-specific-heat");
pub const WARM_VOLUME: Id<Volume> = Id::new("warm-volume");
pub const WARM_CONDUCTIVITY: Id<ThermalConductivity> = Id::new("warm-conductivity");
pub const SINK_TEMPERATURE: Id<Temperature> = Id::new("sink-temperature");
pub const HOTTEST_SURFACE: Id<Temperature> = Id::new("hottest-surface");
pub const HOTTEST_RISE: Id<TemperatureStep> = Id::new("hottest-rise");
pub const TOUCH_RISE: Id<TemperatureStep> = Id::new("touch-rise");
pub const TOUCH_MARGIN: Id<Ratio> = Id::new("touch-margin");
pub const WARM_HEAT_CAPACITY: Id<HeatCapacity> = Id::new("warm-heat-capacity");
pub const STORED_HEAT: Id<Energy> = Id::new("stored-heat");
pub const BIOT_NUMBER: Id<Ratio> = Id::new("biot-number");
pub const COOLING_TIME_CONSTANT: Id<Time> = Id::new("cooling-time-constant");
pub const COOL_DOWN_TIME: Id<Time> = Id::new("cool-down-time");
pub const WARMTH_LEFT: Id<TemperatureStep> = Id::new("warmth-left");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Heat, TOUCH_LIMIT, "touch limit", r"T_{\mathrm{touch}}", "The hottest that what hands can reach may be: by its material, how long it is touched, and the standard of the machine.")
        .above_zero()
        .usual(CELSIUS + 43.0, CELSIUS + 95.0),
    Entry::given(Heat, WARM_MASS, "mass of the warm part", r"m_p", "The part that is left to cool down.")
        .above_zero()
        .usual(0.01, 20.0),
    Entry::given(Heat, WARM_SPECIFIC_HEAT, "specific heat of the warm part", r"c_p", "The heat that warms a kilogram of it by a kelvin: steel 452, aluminium 900, water 4186 J/(kg·K).")
        .assumed(452.0)
        .above_zero()
        .usual(380.0, 4200.0),
    Entry::given(Heat, WARM_VOLUME, "volume of the warm part", r"V_p", "The room the part itself takes up, holes left out.")
        .above_zero()
        .usual(1e-6, 0.01),
    Entry::given(Heat, WARM_CONDUCTIVITY, "conductivity of the warm part", r"k_p", "How well the part leads heat: plastic 0.2, steel 45, aluminium 200 W/(m·K).")
        .assumed(45.0)
        .above_zero()
        .usual(0.1, 400.0),
    Entry::found(Heat, SINK_TEMPERATURE, "heat sink temperature", r"T_s^{\mathrm{sink}}", "How hot the heat sink of the controller ends up at this load."),
    Entry::found(Heat, HOTTEST_SURFACE, "hottest surface in reach", r"T_{\mathrm{hot}}", "The hottest of motor housing, box and heat sink, as far as they are known."),
    Entry::found(Heat, HOTTEST_RISE, "rise of the hottest surface", r"\Delta T_{\mathrm{hot}}", "How much warmer than the air the hottest surface in reach is.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Heat, TOUCH_RISE, "rise allowed by touch", r"\Delta T_{\mathrm{touch}}", "From the air to the touch limit.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Heat, TOUCH_MARGIN, "margin on touch", r"M_{\mathrm{touch}}", "The rise allowed by touch over the rise of the hottest surface.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Heat, WARM_HEAT_CAPACITY, "heat capacity of the warm part", r"C_p", "The heat that warms the part by a kelvin."),
    Entry::found(Heat, STORED_HEAT, "heat stored in the warm part", r"Q_p", "What the part must give off until it is as cool as the air.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Heat, BIOT_NUMBER, "Biot number of the warm part", r"\mathrm{Bi}", "Heat shed against heat led inside: under 0.1 the part is as warm inside as its skin."),
    Entry::found(Heat, COOLING_TIME_CONSTANT, "time constant of the warm part", r"\tau_p", "The time in which its excess falls to 37 %."),
    Entry::found(Heat, COOL_DOWN_TIME, "time until it may be touched", r"t_{\mathrm{cool}}", "How long the part takes from its surface temperature down to the touch limit."),
    Entry::found(Heat, WARMTH_LEFT, "excess left after the rest", r"\Delta T_2", "How much warmer than the air the part still is after the rest time, in still air that cools it less as it cools."),
];
