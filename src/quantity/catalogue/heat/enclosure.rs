//! The closed box, the controller in it, and the sun on it.

use super::CELSIUS;
use crate::quantity::{
    Area, Entry, HeatCapacity, HeatFlux, HeatTransfer, Id, Length, Power, Ratio, Temperature,
    TemperatureStep, ThermalConductivity, ThermalResistance, Time, Topic::Heat,
};

pub const JUNCTION_TO_CASE: Id<ThermalResistance> = Id::new("junction-to-case");
pub const CASE_TO_SINK: Id<ThermalResistance> = Id::new("case-to-sink");
pub const SINK_TO_AIR: Id<ThermalResistance> = Id::new("sink-to-air");
pub const CHIP_LIMIT: Id<Temperature> = Id::new("chip-limit");
pub const BOX_LENGTH: Id<Length> = Id::new("box-length");
pub const BOX_WIDTH: Id<Length> = Id::new("box-width");
pub const BOX_HEIGHT: Id<Length> = Id::new("box-height");
pub const BOX_COEFFICIENT: Id<HeatTransfer> = Id::new("box-coefficient");
pub const LID_COEFFICIENT: Id<HeatTransfer> = Id::new("lid-coefficient");
pub const LID_FIN_FACTOR: Id<Ratio> = Id::new("lid-fin-factor");
pub const BOX_OTHER_HEAT: Id<Power> = Id::new("box-other-heat");
pub const BOX_HEAT_CAPACITY: Id<HeatCapacity> = Id::new("box-heat-capacity");
pub const BOX_BODY_AREA: Id<Area> = Id::new("box-body-area");
pub const BOX_LID_AREA: Id<Area> = Id::new("box-lid-area");
pub const BOX_RESISTANCE: Id<ThermalResistance> = Id::new("box-resistance");
pub const BOX_HEAT: Id<Power> = Id::new("box-heat");
pub const BOX_RISE: Id<TemperatureStep> = Id::new("box-rise");
pub const BOX_TEMPERATURE: Id<Temperature> = Id::new("box-temperature");
pub const BOX_TIME_CONSTANT: Id<Time> = Id::new("box-time-constant");
pub const BOX_RISE_AFTER: Id<TemperatureStep> = Id::new("box-rise-after");
pub const CHIP_TO_AIR: Id<ThermalResistance> = Id::new("chip-to-air");
pub const CHIP_RISE: Id<TemperatureStep> = Id::new("chip-rise");
pub const CONTROLLER_TEMPERATURE: Id<Temperature> = Id::new("controller-temperature");
pub const CHIP_ALLOWED_RISE: Id<TemperatureStep> = Id::new("chip-allowed-rise");
pub const SINK_NEEDED: Id<ThermalResistance> = Id::new("sink-needed");
pub const CONTROLLER_MARGIN: Id<Ratio> = Id::new("controller-margin");
pub const BOX_LIMIT: Id<Temperature> = Id::new("box-limit");
pub const WALL_THICKNESS: Id<Length> = Id::new("wall-thickness");
pub const WALL_CONDUCTIVITY: Id<ThermalConductivity> = Id::new("wall-conductivity");
pub const SUN_IRRADIANCE: Id<HeatFlux> = Id::new("sun-irradiance");
pub const SUN_ABSORPTANCE: Id<Ratio> = Id::new("sun-absorptance");
pub const BOX_OUTSIDE_COEFFICIENT: Id<HeatTransfer> = Id::new("box-outside-coefficient");
pub const CHIP_RATED_POWER: Id<Power> = Id::new("chip-rated-power");
pub const CHIP_RATED_END: Id<Temperature> = Id::new("chip-rated-end");
pub const SUNLIT_AREA: Id<Area> = Id::new("sunlit-area");
pub const SUN_STEP: Id<TemperatureStep> = Id::new("sun-step");
pub const SUN_HEAT: Id<Power> = Id::new("sun-heat");
pub const BOX_DUTY_HEAT: Id<Power> = Id::new("box-duty-heat");
pub const BOX_DUTY_PEAK: Id<TemperatureStep> = Id::new("box-duty-peak");
pub const BOX_TIME_TO_LIMIT: Id<Time> = Id::new("box-time-to-limit");
pub const WALL_RESISTANCE: Id<ThermalResistance> = Id::new("wall-resistance");
pub const WALL_STEP: Id<TemperatureStep> = Id::new("wall-step");
pub const CONTROLLER_LOSS_LIMIT: Id<Power> = Id::new("controller-loss-limit");
pub const RATED_JUNCTION_TO_CASE: Id<ThermalResistance> = Id::new("rated-junction-to-case");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Heat, JUNCTION_TO_CASE, "chip to its case", r"R_{jc}", "How much warmer than its case the chip is for each watt; chips side by side share.")
        .usual(0.1, 10.0),
    Entry::given(Heat, CASE_TO_SINK, "case to heat sink", r"R_{cs}", "The pad or paste between.")
        .usual(0.05, 5.0),
    Entry::given(Heat, SINK_TO_AIR, "heat sink to air", r"R_{sa}", "The heat sink, or the board and case when there is none.")
        .above_zero()
        .usual(0.2, 40.0),
    Entry::given(Heat, CHIP_LIMIT, "chip temperature limit", r"T_{j,\mathrm{lim}}", "The most the chips may reach: the maker's limit, less what you keep in hand.")
        .assumed(CELSIUS + 125.0)
        .above_zero()
        .usual(CELSIUS + 85.0, CELSIUS + 175.0),
    Entry::given(Heat, BOX_LENGTH, "box length", r"l_b", "The outside length of the closed box.")
        .above_zero()
        .usual(0.03, 0.6),
    Entry::given(Heat, BOX_WIDTH, "box width", r"w_b", "The outside width of the closed box.")
        .above_zero()
        .usual(0.03, 0.6),
    Entry::given(Heat, BOX_HEIGHT, "box height", r"h_b", "The outside height of the closed box.")
        .above_zero()
        .usual(0.02, 0.6),
    Entry::given(Heat, BOX_COEFFICIENT, "heat passed by the box", r"U_b", "The heat each square metre passes for each kelvin, air inside to air outside: plastic about 3.5, painted steel 5.5, aluminium 12.")
        .assumed(3.5)
        .above_zero()
        .usual(2.0, 25.0),
    Entry::given(Heat, LID_COEFFICIENT, "heat passed by the lid", r"U_l", "The same for the lid.")
        .assumed(3.5)
        .above_zero()
        .usual(2.0, 25.0),
    Entry::given(Heat, LID_FIN_FACTOR, "fins on the lid", r"x_f", "How many times its flat area the lid sheds heat with, fin losses counted: 1 for a flat lid.")
        .assumed(1.0)
        .above_zero()
        .usual(1.0, 8.0),
    Entry::given(Heat, BOX_OTHER_HEAT, "other heat in the box", r"P_x", "What board, regulator and radio make in the box.")
        .assumed(0.0)
        .usual(0.0, 50.0),
    Entry::given(Heat, BOX_HEAT_CAPACITY, "heat capacity of what is in the box", r"C_b", "The heat that warms everything in the box by a kelvin.")
        .above_zero()
        .usual(50.0, 5000.0),
    Entry::given(Heat, BOX_LIMIT, "limit of the air in the box", r"T_{\mathrm{box,lim}}", "The warmest the air in the box may get: by the part in it that stands least.")
        .above_zero()
        .usual(CELSIUS + 40.0, CELSIUS + 85.0),
    Entry::given(Heat, WALL_THICKNESS, "thickness of the wall", r"d_w", "How thick the wall of the box is.")
        .above_zero()
        .usual(0.001, 0.02),
    Entry::given(Heat, WALL_CONDUCTIVITY, "conductivity of the wall", r"k_w", "How well the wall of the box leads heat: foam 0.03, plastic 0.2, aluminium 200 W/(m·K).")
        .assumed(0.2)
        .above_zero()
        .usual(0.02, 200.0),
    Entry::given(Heat, SUN_IRRADIANCE, "sunlight", r"E_s", "The power of the sun on each square metre that faces it: about 1000 W/m² on a clear noon, nothing in the shade.")
        .assumed(0.0)
        .usual(0.0, 1100.0),
    Entry::given(Heat, SUN_ABSORPTANCE, "sunlight taken in", r"\alpha_s", "The share of sunlight that the skin takes in: white paint about 0.3, black 0.95. Colour counts here.")
        .assumed(0.9)
        .possible(0.0, 1.0)
        .usual(0.1, 0.98),
    Entry::given(Heat, BOX_OUTSIDE_COEFFICIENT, "cooling of the skin of the box", r"h_o", "The heat each square metre of its skin gives to air and surroundings for each kelvin: about 10 W/(m²·K) in still air.")
        .assumed(10.0)
        .above_zero()
        .usual(5.0, 40.0),
    Entry::given(Heat, CHIP_RATED_POWER, "rated power of the chip", r"P_{\mathrm{rat}}", "The loss its data sheet allows with the case held at 25 °C.")
        .above_zero()
        .usual(1.0, 400.0),
    Entry::given(Heat, CHIP_RATED_END, "case temperature at which the rating ends", r"T_{\mathrm{end}}", "Where the data sheet's derating line reaches nothing: the most the chip may ever be.")
        .above_zero()
        .usual(CELSIUS + 125.0, CELSIUS + 200.0),
    Entry::found(Heat, BOX_BODY_AREA, "skin of the box without its lid", r"A_b", "The bottom and the four sides."),
    Entry::found(Heat, BOX_LID_AREA, "area of the lid", r"A_l", "The lid, flat."),
    Entry::found(Heat, BOX_RESISTANCE, "box air to outside air", r"R_{\mathrm{box}}", "How much warmer than outside the air in the box is for each watt."),
    Entry::found(Heat, BOX_HEAT, "heat in the box", r"P_{\mathrm{box}}", "All that is turned to heat inside: the controllers and the rest."),
    Entry::found(Heat, BOX_RISE, "rise in the box (at rest)", r"\Delta T_{\mathrm{box}}", "How much warmer than outside the air in the box ends up."),
    Entry::found(Heat, BOX_TEMPERATURE, "temperature in the box (at rest)", r"T_{\mathrm{box}}", "How warm the air in the box ends up.")
        .headline(),
    Entry::found(Heat, BOX_TIME_CONSTANT, "time constant of the box", r"\tau_{\mathrm{box}}", "How fast the box follows its heat."),
    Entry::found(Heat, BOX_RISE_AFTER, "rise in the box after the working time", r"\Delta T_{\mathrm{box},1}", "How much warmer than outside the air in the box is after one stretch of work."),
    Entry::found(Heat, CHIP_TO_AIR, "chip to air", r"R_{ja}", "Chip to case, case to sink, sink to air together."),
    Entry::found(Heat, CHIP_RISE, "rise of the chips", r"\Delta T_j", "How much warmer than the air about the controller its chips are."),
    Entry::found(Heat, CONTROLLER_TEMPERATURE, "chip temperature in the controller", r"T_c", "How hot the controller's chips end up at this load.")
        .headline(),
    Entry::found(Heat, CHIP_ALLOWED_RISE, "rise allowed for the chips", r"\Delta T_{j,\mathrm{lim}}", "From the air about the controller to the limit of its chips.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Heat, SINK_NEEDED, "heat sink needed", r"R_{sa,\mathrm{need}}", "The most kelvins per watt a heat sink may have."),
    Entry::found(Heat, CONTROLLER_MARGIN, "margin of the controller on heat", r"M_c", "The rise allowed for the chips over the rise at this load.")
        .possible(f64::MIN, f64::MAX)
        .headline(),
    Entry::found(Heat, SUNLIT_AREA, "skin the sun lights (most)", r"A_s^{\mathrm{sun}}", "The box as the sun sees it, from where it sees most.")
        .units(&["cm²", "m²"], &["in²", "ft²"]),
    Entry::found(Heat, SUN_STEP, "warming of the skin by the sun", r"\Delta T_{\mathrm{sun}}", "How much warmer than the air the sun alone makes a skin with nothing behind it."),
    Entry::found(Heat, SUN_HEAT, "heat of the sun in the box", r"P_{\mathrm{sun}}", "The heat inside that would warm the box as much as the sun on it does."),
    Entry::found(Heat, BOX_DUTY_HEAT, "heat in the box over the duty (mean)", r"P_{\mathrm{box,duty}}", "Work and rest in turn: what the box gets on the mean."),
    Entry::found(Heat, BOX_DUTY_PEAK, "rise in the box over the duty (peak)", r"\Delta T_{\mathrm{box,duty}}", "The hottest moment in the box of work and rest without end."),
    Entry::found(Heat, BOX_TIME_TO_LIMIT, "time to the limit of the box", r"t_{\mathrm{box}}", "How long from cold, working without rest, until the air in the box reaches its limit."),
    Entry::found(Heat, WALL_RESISTANCE, "resistance of the wall", r"R_w", "How much warmer its inner face is than its outer face for each watt."),
    Entry::found(Heat, WALL_STEP, "step across the wall", r"\Delta T_w^{\mathrm{wall}}", "How much warmer the inner face of the wall is than its outer face."),
    Entry::found(Heat, CONTROLLER_LOSS_LIMIT, "loss the chips may make", r"P_{j,\mathrm{lim}}", "The steady loss that holds the chips just at their limit."),
    Entry::found(Heat, RATED_JUNCTION_TO_CASE, "chip to its case (from its rating)", r"R_{jc,\mathrm{rat}}", "Kelvins for each watt, read from the power rating of a data sheet."),
];
