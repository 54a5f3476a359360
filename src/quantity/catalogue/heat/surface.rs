//! Surfaces that air and radiation cool, and fins.

use super::CELSIUS;
use crate::quantity::{
    Area, Entry, HeatTransfer, Id, KinematicViscosity, Length, Power, Ratio, Speed, Temperature,
    TemperatureCoefficient, ThermalConductivity, ThermalResistance, Topic::Heat,
};

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
pub const FILM_TEMPERATURE: Id<Temperature> = Id::new("film-temperature");
pub const AIR_CONDUCTIVITY: Id<ThermalConductivity> = Id::new("air-conductivity");
pub const AIR_VISCOSITY: Id<KinematicViscosity> = Id::new("air-viscosity");
pub const PRANDTL_NUMBER: Id<Ratio> = Id::new("prandtl-number");
pub const AIR_EXPANSION: Id<TemperatureCoefficient> = Id::new("air-expansion");
pub const RAYLEIGH_NUMBER: Id<Ratio> = Id::new("rayleigh-number");
pub const STILL_AIR_NUSSELT: Id<Ratio> = Id::new("still-air-nusselt");
pub const STILL_AIR_FACTOR: Id<Ratio> = Id::new("still-air-factor");
pub const STILL_AIR_EXPONENT: Id<Ratio> = Id::new("still-air-exponent");
pub const POWER_LAW_NUSSELT: Id<Ratio> = Id::new("power-law-nusselt");
pub const POWER_LAW_COEFFICIENT: Id<HeatTransfer> = Id::new("power-law-coefficient");
pub const CAN_RAYLEIGH_NUMBER: Id<Ratio> = Id::new("can-rayleigh-number");
pub const CAN_STILL_NUSSELT: Id<Ratio> = Id::new("can-still-nusselt");
pub const CAN_STILL_COEFFICIENT: Id<HeatTransfer> = Id::new("can-still-coefficient");
pub const REYNOLDS_NUMBER: Id<Ratio> = Id::new("reynolds-number");
pub const MOVING_AIR_NUSSELT: Id<Ratio> = Id::new("moving-air-nusselt");
pub const CAN_REYNOLDS_NUMBER: Id<Ratio> = Id::new("can-reynolds-number");
pub const CAN_NUSSELT: Id<Ratio> = Id::new("can-nusselt");
pub const CONVECTED_HEAT: Id<Power> = Id::new("convected-heat");
pub const FIN_WIDTH: Id<Length> = Id::new("fin-width");
pub const FIN_EFFECTIVENESS: Id<Ratio> = Id::new("fin-effectiveness");
pub const FINS_NEEDED: Id<Ratio> = Id::new("fins-needed");

pub(in super::super) const ENTRIES: &[Entry] = &[
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
    Entry::given(Heat, FIN_WIDTH, "fin width", r"w_f", "How far a fin runs along its root.")
        .above_zero()
        .usual(0.01, 0.3),
    Entry::given(Heat, FIN_THICKNESS, "fin thickness", r"t_f", "How thick a fin is.")
        .above_zero()
        .usual(0.0005, 0.005),
    Entry::given(Heat, FIN_CONDUCTIVITY, "conductivity of the fins", r"k_f", "How well the fins' metal leads heat; about 200 W/(m·K) for aluminium.")
        .assumed(200.0)
        .above_zero()
        .usual(14.0, 390.0),
    Entry::given(Heat, STILL_AIR_EXPONENT, "exponent of the still-air power law", r"n_0", "How cooling grows with the excess in still air: a quarter while the flow is smooth, a third when it is turbulent.")
        .assumed(0.25)
        .above_zero()
        .usual(0.2, 0.3334),
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
    Entry::found(Heat, FILM_TEMPERATURE, "film temperature", r"T_f", "Half way from the surface to the air: what the air close by is taken to be."),
    Entry::found(Heat, AIR_CONDUCTIVITY, "conductivity of the air", r"k_a", "How well the air close to the surface leads heat."),
    Entry::found(Heat, AIR_VISCOSITY, "viscosity of the air (kinematic)", r"\nu_a", "How thick the air close to the surface is, for its density."),
    Entry::found(Heat, PRANDTL_NUMBER, "Prandtl number of the air", r"\mathrm{Pr}", "How motion spreads in the air against how heat does: about 0.7."),
    Entry::found(Heat, AIR_EXPANSION, "expansion of the air", r"\beta_a", "The share by which the air grows for each kelvin."),
    Entry::found(Heat, RAYLEIGH_NUMBER, "Rayleigh number of the surface", r"\mathrm{Ra}", "How hard warm air rises along it against what holds it back: from 10⁹ the flow is turbulent."),
    Entry::found(Heat, STILL_AIR_NUSSELT, "Nusselt number in still air", r"\mathrm{Nu}_0", "How many times better rising air cools the surface than air that stood would."),
    Entry::found(Heat, STILL_AIR_FACTOR, "factor of the still-air power law", r"c_0", "The number before the power of the Rayleigh number; by the integral method, or 0.59 smooth and 0.10 to 0.13 turbulent if you give it."),
    Entry::found(Heat, POWER_LAW_NUSSELT, "Nusselt number in still air (power law)", r"\mathrm{Nu}_p", "The same by the short power law: a second opinion."),
    Entry::found(Heat, POWER_LAW_COEFFICIENT, "cooling by still air (power law)", r"h_p", "Cooling by still air by the short power law: a second opinion, 5 to 30 % off the first."),
    Entry::found(Heat, CAN_RAYLEIGH_NUMBER, "Rayleigh number of a level can", r"\mathrm{Ra}_c", "How hard warm air rises round a round can that lies level."),
    Entry::found(Heat, CAN_STILL_NUSSELT, "Nusselt number of a level can in still air", r"\mathrm{Nu}_{c0}", "How many times better rising air cools the can than air that stood would."),
    Entry::found(Heat, CAN_STILL_COEFFICIENT, "cooling of a level can by still air", r"h_{c0}", "The heat each square metre of a level round can gives to still air for each kelvin."),
    Entry::found(Heat, REYNOLDS_NUMBER, "Reynolds number along the surface", r"\mathrm{Re}", "Drive of the moving air against its viscosity: past 500 000 the flow is turbulent."),
    Entry::found(Heat, MOVING_AIR_NUSSELT, "Nusselt number in moving air (flat)", r"\mathrm{Nu}_v", "How many times better moving air cools the surface than air that stood would."),
    Entry::found(Heat, CAN_REYNOLDS_NUMBER, "Reynolds number across the can", r"\mathrm{Re}_c", "Drive of the air across a round can against its viscosity."),
    Entry::found(Heat, CAN_NUSSELT, "Nusselt number in moving air (round can)", r"\mathrm{Nu}_c", "How many times better the air across it cools the can than air that stood would."),
    Entry::found(Heat, CONVECTED_HEAT, "heat carried off by air", r"P_{\mathrm{conv}}", "The part of the heat shed that the air carries away.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Heat, FIN_EFFECTIVENESS, "fin effectiveness", r"\epsilon_f", "The heat a fin sheds over what its bare root would: under 2 a fin is not worth its mass."),
    Entry::found(Heat, FINS_NEEDED, "fins needed", r"n_f", "How many such fins make the heat sink that the controller needs; round up."),
];
