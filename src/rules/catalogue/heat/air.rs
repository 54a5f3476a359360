//! What air close to a warm surface does, still and moving, and how well it cools.

use crate::physics::heat::{self, air, convection};
use crate::quantity::catalogue::heat::*;
use crate::quantity::catalogue::machine::GRAVITY;
use crate::quantity::{
    Acceleration, KinematicViscosity, Length, Ratio, Temperature, TemperatureCoefficient,
};
use crate::rules::Rule;

const CHU: &str =
    "S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18, 1975 (from memory)";
const BERNSTEIN: &str = "S. W. Churchill, M. Bernstein, J. Heat Transfer 99, 1977 (from memory)";
const INCROPERA: &str =
    "F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer (from memory)";
const SUTHERLAND: &str = "Sutherland's law, fitted to the tables of CoolProp 8.0.0";
const NUSSELT: &str =
    "The definition of the Nusselt number; S. K. Som, Introduction to Heat Transfer";
const DRY: &[&str] = &["Dry air near sea level, taken at the film temperature."];
const FILM: &str = "Air from 0 to 150 °C, within 1 %; give it for another gas or at a height.";
pub(super) const EVEN: &[&str] =
    &["The surface is equally warm all over and stands free in dry air near sea level."];
const LEVEL: &[&str] = &["A round can that lies level, equally warm all over, free of others."];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = properties();
    rules.extend(upright());
    rules.extend(power_law());
    rules.extend(level_can());
    rules.extend(moving());
    rules
}

fn properties() -> Vec<Rule> {
    vec![
        Rule::new(FILM_TEMPERATURE, (SURFACE_TEMPERATURE, COOLING_AIR), air::film)
            .title("Half way from surface to air")
            .formula(r"\q{film-temperature} = \dfrac{\q{surface-temperature} + \q{cooling-air}}{2}")
            .assumes(EVEN)
            .holds("Excesses of up to some 100 K.")
            .source(INCROPERA),
        Rule::new(AIR_CONDUCTIVITY, (FILM_TEMPERATURE,), air::conductivity)
            .title("Warm air leads heat better")
            .formula(r"\q{air-conductivity} = 0.02436 \left( \dfrac{\q{film-temperature}}{273\,\mathrm{K}} \right)^{3/2} \dfrac{438}{\q{film-temperature} + 165\,\mathrm{K}}")
            .assumes(DRY)
            .holds(FILM)
            .source(SUTHERLAND),
        Rule::new(AIR_VISCOSITY, (FILM_TEMPERATURE,), air::viscosity)
            .title("Warm air is thicker, and thinner spread")
            .formula(r"\q{air-viscosity} = \dfrac{1.722 \cdot 10^{-5}}{\rho} \left( \dfrac{\q{film-temperature}}{273\,\mathrm{K}} \right)^{3/2} \dfrac{384}{\q{film-temperature} + 110\,\mathrm{K}}, \;\; \rho = \dfrac{p}{R \, \q{film-temperature}}")
            .assumes(DRY)
            .holds(FILM)
            .source(SUTHERLAND),
        Rule::new(PRANDTL_NUMBER, (FILM_TEMPERATURE,), air::prandtl)
            .title("Motion against heat, spreading")
            .formula(r"\q{prandtl-number} = \dfrac{\mu \, c}{k}\left( \q{film-temperature} \right)")
            .assumes(DRY)
            .holds(FILM)
            .source(SUTHERLAND),
        Rule::new(AIR_EXPANSION, (FILM_TEMPERATURE,), air::expansion)
            .title("A gas grows with its temperature")
            .formula(r"\q{air-expansion} = \dfrac{1}{\q{film-temperature}}")
            .assumes(DRY)
            .holds("Any thin gas.")
            .source("The ideal gas law, OpenStax, College Physics 2e, section 13.3"),
    ]
}

fn upright() -> Vec<Rule> {
    vec![
        Rule::new(
            RAYLEIGH_NUMBER,
            (
                GRAVITY,
                AIR_EXPANSION,
                SURFACE_TEMPERATURE,
                COOLING_AIR,
                SURFACE_HEIGHT,
                AIR_VISCOSITY,
                PRANDTL_NUMBER,
            ),
            rayleigh,
        )
        .title("Warm air lifts, its thickness holds it back")
        .formula(r"\q{rayleigh-number} = \dfrac{\q{gravity} \cdot \q{air-expansion} \left| \q{surface-temperature} - \q{cooling-air} \right| \q{surface-height}^3}{\q{air-viscosity}^2} \, \q{prandtl-number}")
        .assumes(EVEN)
        .holds("Smooth flow below 10⁹, turbulent above.")
        .source(INCROPERA),
        Rule::new(STILL_AIR_NUSSELT, (RAYLEIGH_NUMBER, PRANDTL_NUMBER), convection::plate)
            .title("Warm air rises along an upright surface")
            .formula(r"\q{still-air-nusselt} = 0.68 + \dfrac{0.670 \, \q{rayleigh-number}^{1/4}}{\left( 1 + \left( 0.492 / \q{prandtl-number} \right)^{9/16} \right)^{4/9}}")
            .assumes(EVEN)
            .holds("Upright plates and boxes; tall hot ones (from 10⁹) by the all-range form of the same paper.")
            .source(CHU),
        Rule::new(
            STILL_AIR_COEFFICIENT,
            (STILL_AIR_NUSSELT, AIR_CONDUCTIVITY, SURFACE_HEIGHT),
            convection::coefficient,
        )
        .title("So many times what standing air would lead")
        .formula(r"\q{still-air-coefficient} = \q{still-air-nusselt} \cdot \dfrac{\q{air-conductivity}}{\q{surface-height}}")
        .assumes(EVEN)
        .holds("Upright plates and boxes.")
        .source(NUSSELT),
    ]
}

fn power_law() -> Vec<Rule> {
    const SHORT: &[&str] = &["One power for all sizes: textbooks differ by 30 % in its factor."];
    const RANGE: &str = "Rayleigh numbers of 10⁴ to 10⁹ with a quarter, from 10⁹ with a third.";
    const ADAMS: &str = "W. H. McAdams, Heat Transmission, as S. P. Sukhatme, A Textbook on Heat Transfer, quotes it";
    vec![
        Rule::new(STILL_AIR_FACTOR, (PRANDTL_NUMBER,), convection::integral_factor)
            .title("The factor of the integral method")
            .formula(r"\q{still-air-factor} = 0.678 \left( \dfrac{\q{prandtl-number}}{0.952 + \q{prandtl-number}} \right)^{1/4}")
            .assumes(EVEN)
            .holds("Smooth flow along an upright surface, with a quarter as exponent.")
            .source("H. B. Squire and E. R. G. Eckert, in J. H. Lienhard IV and V, A Heat Transfer Textbook, chapter 8"),
        Rule::new(
            POWER_LAW_NUSSELT,
            (STILL_AIR_FACTOR, RAYLEIGH_NUMBER, STILL_AIR_EXPONENT),
            convection::power_law,
        )
        .title("A power of the Rayleigh number")
        .formula(r"\q{power-law-nusselt} = \q{still-air-factor} \cdot \q{rayleigh-number}^{\q{still-air-exponent}}")
        .assumes(SHORT)
        .holds(RANGE)
        .source(ADAMS),
        Rule::new(
            POWER_LAW_COEFFICIENT,
            (POWER_LAW_NUSSELT, AIR_CONDUCTIVITY, SURFACE_HEIGHT),
            convection::coefficient,
        )
        .title("So many times what standing air would lead")
        .formula(r"\q{power-law-coefficient} = \q{power-law-nusselt} \cdot \dfrac{\q{air-conductivity}}{\q{surface-height}}")
        .assumes(SHORT)
        .holds(RANGE)
        .source(ADAMS),
    ]
}

fn level_can() -> Vec<Rule> {
    vec![
        Rule::new(
            CAN_RAYLEIGH_NUMBER,
            (
                GRAVITY,
                AIR_EXPANSION,
                SURFACE_TEMPERATURE,
                COOLING_AIR,
                CAN_DIAMETER,
                AIR_VISCOSITY,
                PRANDTL_NUMBER,
            ),
            rayleigh,
        )
        .title("Lift round a can goes by its diameter")
        .formula(r"\q{can-rayleigh-number} = \dfrac{\q{gravity} \cdot \q{air-expansion} \left| \q{surface-temperature} - \q{cooling-air} \right| \q{can-diameter}^3}{\q{air-viscosity}^2} \, \q{prandtl-number}")
        .assumes(LEVEL)
        .holds("Up to 10¹².")
        .source(INCROPERA),
        Rule::new(
            CAN_STILL_NUSSELT,
            (CAN_RAYLEIGH_NUMBER, PRANDTL_NUMBER),
            convection::level_cylinder,
        )
        .title("Warm air rises round a level can")
        .formula(r"\q{can-still-nusselt} = \left( 0.60 + \dfrac{0.387 \, \q{can-rayleigh-number}^{1/6}}{\left( 1 + \left( 0.559 / \q{prandtl-number} \right)^{9/16} \right)^{8/27}} \right)^2")
        .assumes(LEVEL)
        .holds("Rayleigh numbers up to 10¹²; the round side, ends left out.")
        .source(CHU),
        Rule::new(
            CAN_STILL_COEFFICIENT,
            (CAN_STILL_NUSSELT, AIR_CONDUCTIVITY, CAN_DIAMETER),
            convection::coefficient,
        )
        .title("So many times what standing air would lead")
        .formula(r"\q{can-still-coefficient} = \q{can-still-nusselt} \cdot \dfrac{\q{air-conductivity}}{\q{can-diameter}}")
        .assumes(LEVEL)
        .holds("The round side, ends left out.")
        .source(NUSSELT),
    ]
}

fn moving() -> Vec<Rule> {
    const PLATE: &str =
        "Smooth flow; past 500 000 it turns turbulent and is reckoned so. Rough air cools better.";
    const CAN: &str =
        "Reynolds times Prandtl number above 0.2, the can square to the air and free of others.";
    vec![
        Rule::new(
            REYNOLDS_NUMBER,
            (AIR_FLOW_SPEED, FLOW_LENGTH, AIR_VISCOSITY),
            convection::reynolds,
        )
        .title("Speed and length against viscosity")
        .formula(r"\q{reynolds-number} = \dfrac{\q{air-flow-speed} \cdot \q{flow-length}}{\q{air-viscosity}}")
        .assumes(EVEN)
        .holds("Air along a flat surface.")
        .source(INCROPERA),
        Rule::new(MOVING_AIR_NUSSELT, (REYNOLDS_NUMBER, PRANDTL_NUMBER), convection::along_plate)
            .title("Air along a flat surface")
            .formula(r"\q{moving-air-nusselt} = 0.664 \, \q{reynolds-number}^{1/2} \, \q{prandtl-number}^{1/3}")
            .assumes(EVEN)
            .holds(PLATE)
            .source(INCROPERA),
        Rule::new(
            MOVING_AIR_COEFFICIENT,
            (MOVING_AIR_NUSSELT, AIR_CONDUCTIVITY, FLOW_LENGTH),
            convection::coefficient,
        )
        .title("So many times what standing air would lead")
        .formula(r"\q{moving-air-coefficient} = \q{moving-air-nusselt} \cdot \dfrac{\q{air-conductivity}}{\q{flow-length}}")
        .assumes(EVEN)
        .holds(PLATE)
        .source(NUSSELT),
        Rule::new(
            CAN_REYNOLDS_NUMBER,
            (AIR_FLOW_SPEED, CAN_DIAMETER, AIR_VISCOSITY),
            convection::reynolds,
        )
        .title("Speed and diameter against viscosity")
        .formula(r"\q{can-reynolds-number} = \dfrac{\q{air-flow-speed} \cdot \q{can-diameter}}{\q{air-viscosity}}")
        .assumes(EVEN)
        .holds("Air across a round can.")
        .source(INCROPERA),
        Rule::new(CAN_NUSSELT, (CAN_REYNOLDS_NUMBER, PRANDTL_NUMBER), convection::across_cylinder)
            .title("Air across a round can")
            .formula(r"\q{can-nusselt} = 0.3 + \dfrac{0.62 \, \q{can-reynolds-number}^{1/2} \, \q{prandtl-number}^{1/3}}{\left( 1 + \left( 0.4 / \q{prandtl-number} \right)^{2/3} \right)^{1/4}} \left( 1 + \left( \dfrac{\q{can-reynolds-number}}{282000} \right)^{5/8} \right)^{4/5}")
            .assumes(EVEN)
            .holds(CAN)
            .source(BERNSTEIN),
        Rule::new(
            CAN_COEFFICIENT,
            (CAN_NUSSELT, AIR_CONDUCTIVITY, CAN_DIAMETER),
            convection::coefficient,
        )
        .title("So many times what standing air would lead")
        .formula(r"\q{can-coefficient} = \q{can-nusselt} \cdot \dfrac{\q{air-conductivity}}{\q{can-diameter}}")
        .assumes(EVEN)
        .holds(CAN)
        .source(NUSSELT),
    ]
}

fn rayleigh(
    gravity: Acceleration,
    expansion: TemperatureCoefficient,
    surface: Temperature,
    air: Temperature,
    length: Length,
    viscosity: KinematicViscosity,
    prandtl: Ratio,
) -> Ratio {
    let excess = heat::rise_above(surface, air);
    convection::rayleigh(gravity, expansion, excess, length, viscosity, prandtl)
}
