//! Where losses go and how hot things get.

use crate::quantity::{
    Area, Current, Energy, Entry, HeatCapacity, HeatTransfer, Id, Length, Mass, Power, Ratio,
    Resistance, SpecificHeat, Speed, Temperature, TemperatureCoefficient, TemperatureStep,
    ThermalConductivity, ThermalResistance, Time, Topic::Heat, TorqueConstant,
};

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
pub const SURFACE_TEMPERATURE: Id<Temperature> = Id::new("surface-temperature");
pub const SURFACE_AREA: Id<Area> = Id::new("surface-area");
pub const SURFACE_HEIGHT: Id<Length> = Id::new("surface-height");
pub const EMISSIVITY: Id<Ratio> = Id::new("emissivity");
pub const AIR_FLOW_SPEED: Id<Speed> = Id::new("air-flow-speed");
pub const FLOW_LENGTH: Id<Length> = Id::new("flow-length");
pub const CAN_DIAMETER: Id<Length> = Id::new("can-diameter");
pub const FIN_LENGTH: Id<Length> = Id::new("fin-length");
pub const FIN_THICKNESS: Id<Length> = Id::new("fin-thickness");
pub const FIN_CONDUCTIVITY: Id<ThermalConductivity> = Id::new("fin-conductivity");
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
pub const BRAKING_SPEED: Id<Speed> = Id::new("braking-speed");
pub const BRAKING_DESCENT: Id<Length> = Id::new("braking-descent");
pub const BRAKE_MASS: Id<Mass> = Id::new("brake-mass");
pub const BRAKE_SPECIFIC_HEAT: Id<SpecificHeat> = Id::new("brake-specific-heat");
pub const BRAKE_SHARE: Id<Ratio> = Id::new("brake-share");
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
pub const STILL_AIR_COEFFICIENT: Id<HeatTransfer> = Id::new("still-air-coefficient");
pub const MOVING_AIR_COEFFICIENT: Id<HeatTransfer> = Id::new("moving-air-coefficient");
pub const CAN_COEFFICIENT: Id<HeatTransfer> = Id::new("can-coefficient");
pub const RADIATION_COEFFICIENT: Id<HeatTransfer> = Id::new("radiation-coefficient");
pub const SURFACE_COEFFICIENT: Id<HeatTransfer> = Id::new("surface-coefficient");
pub const SURFACE_HEAT: Id<Power> = Id::new("surface-heat");
pub const RADIATED_HEAT: Id<Power> = Id::new("radiated-heat");
pub const SURFACE_RESISTANCE: Id<ThermalResistance> = Id::new("surface-resistance");
pub const FIN_NUMBER: Id<Ratio> = Id::new("fin-number");
pub const FIN_EFFICIENCY: Id<Ratio> = Id::new("fin-efficiency");
pub const FIN_TIP_SHARE: Id<Ratio> = Id::new("fin-tip-share");
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
pub const BRAKE_ENERGY: Id<Energy> = Id::new("brake-energy");
pub const BRAKE_RISE: Id<TemperatureStep> = Id::new("brake-rise");
pub const BRAKE_TEMPERATURE: Id<Temperature> = Id::new("brake-temperature");

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
        .usual(CELSIUS + 70.0, CELSIUS + 180.0),
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
    Entry::given(Heat, SURFACE_TEMPERATURE, "surface temperature", r"T_s", "How warm the surface is that cooling is asked for.")
        .above_zero()
        .usual(CELSIUS, CELSIUS + 150.0),
    Entry::given(Heat, SURFACE_AREA, "cooling surface", r"A_s", "The area that the air reaches.")
        .above_zero()
        .units(&["cm²", "m²"], &["in²", "ft²"])
        .usual(0.001, 1.0),
    Entry::given(Heat, SURFACE_HEIGHT, "height of the surface", r"h_s", "How tall the cooled surface stands.")
        .above_zero()
        .usual(0.01, 1.0),
    Entry::given(Heat, EMISSIVITY, "emissivity", r"\epsilon_s", "How well the surface shines heat away: bare bright metal under 0.1, paint and plastic of any colour about 0.9.")
        .assumed(0.9)
        .possible(0.0, 1.0)
        .usual(0.04, 0.95),
    Entry::given(Heat, AIR_FLOW_SPEED, "speed of the cooling air", r"v_a", "How fast air moves past: from a fan, or from driving.")
        .assumed(0.0)
        .usual(0.0, 15.0),
    Entry::given(Heat, FLOW_LENGTH, "length along the air flow", r"l_a", "How far the air runs along the surface.")
        .above_zero()
        .usual(0.01, 1.0),
    Entry::given(Heat, CAN_DIAMETER, "diameter of the motor can", r"d_c", "The diameter of a round housing with air across it.")
        .above_zero()
        .usual(0.01, 0.2),
    Entry::given(Heat, FIN_LENGTH, "fin length", r"l_f", "How far a fin stands out.")
        .above_zero()
        .usual(0.003, 0.1),
    Entry::given(Heat, FIN_THICKNESS, "fin thickness", r"t_f", "How thick a fin is.")
        .above_zero()
        .usual(0.0005, 0.005),
    Entry::given(Heat, FIN_CONDUCTIVITY, "conductivity of the fins", r"k_f", "How well the fins' metal leads heat; about 200 W/(m·K) for aluminium.")
        .assumed(200.0)
        .above_zero()
        .usual(14.0, 390.0),
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
    Entry::given(Heat, BRAKING_SPEED, "speed before braking", r"v_{br}", "The speed the brake takes away.")
        .assumed(0.0)
        .usual(0.0, 15.0),
    Entry::given(Heat, BRAKING_DESCENT, "height braked down", r"h_{br}", "How far down the brake holds the machine back.")
        .assumed(0.0)
        .usual(0.0, 100.0),
    Entry::given(Heat, BRAKE_MASS, "mass of a brake that warms", r"m_{br}", "The disc, drum or rotor that takes the heat.")
        .above_zero()
        .usual(0.02, 10.0),
    Entry::given(Heat, BRAKE_SPECIFIC_HEAT, "specific heat of the brake", r"c_{br}", "The heat that warms a kilogram of it by a kelvin.")
        .assumed(460.0)
        .above_zero()
        .usual(380.0, 1000.0),
    Entry::given(Heat, BRAKE_SHARE, "share of one brake", r"x_{br}", "The part of the energy that this brake takes.")
        .assumed(1.0)
        .possible(0.0, 1.0)
        .usual(0.1, 1.0),
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
    Entry::found(Heat, STILL_AIR_COEFFICIENT, "cooling by still air", r"h_0", "The heat each square metre gives to still air for each kelvin."),
    Entry::found(Heat, MOVING_AIR_COEFFICIENT, "cooling by moving air (flat)", r"h_v", "The heat each square metre of a flat surface gives to air that runs along it."),
    Entry::found(Heat, CAN_COEFFICIENT, "cooling by moving air (round can)", r"h_c", "The heat each square metre of a round can gives to air that runs across it."),
    Entry::found(Heat, RADIATION_COEFFICIENT, "cooling by radiation", r"h_r", "The heat each square metre shines away for each kelvin."),
    Entry::found(Heat, SURFACE_COEFFICIENT, "cooling of the surface", r"h_a", "The better of still and moving air, and radiation."),
    Entry::found(Heat, SURFACE_HEAT, "heat the surface sheds", r"P_{\mathrm{shed}}", "What goes from the surface to air and surroundings.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Heat, RADIATED_HEAT, "heat radiated", r"P_{\mathrm{rad}}", "The part of it that is radiation.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Heat, SURFACE_RESISTANCE, "surface to air", r"R_{\mathrm{surf}}", "How much warmer than the air the surface is for each watt."),
    Entry::found(Heat, FIN_NUMBER, "fin number", r"m_f l_f", "How hard the fin is worked against how well it leads heat: under 0.5 it is nearly all at work."),
    Entry::found(Heat, FIN_EFFICIENCY, "fin efficiency", r"\eta_f", "The heat a fin sheds over what it would if it were all as warm as its root.")
        .possible(0.0, 1.0),
    Entry::found(Heat, FIN_TIP_SHARE, "warmth left at the fin's tip", r"x_{\mathrm{tip}}", "The tip's excess over the air, as part of the root's."),
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
    Entry::found(Heat, BRAKE_ENERGY, "energy to brake away", r"E_{br}", "What a stop, and the way down, put into the brakes."),
    Entry::found(Heat, BRAKE_RISE, "temperature rise of a brake", r"\Delta T_{br}", "How much warmer one stop makes a brake that keeps it all."),
    Entry::found(Heat, BRAKE_TEMPERATURE, "brake temperature", r"T_{br}", "How hot a brake is after one stop from air temperature."),
];
