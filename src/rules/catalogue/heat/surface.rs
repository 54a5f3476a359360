//! How well a surface sheds heat to still air, moving air and its surroundings; fins.

use super::super::common::{BURNS, HOT};
use crate::physics::heat::{self, convection, fin, lump, radiation};
use crate::quantity::catalogue::heat::*;
use crate::quantity::catalogue::machine::GRAVITY;
use crate::quantity::{Area, HeatTransfer, Power, Temperature};
use crate::rules::{Caution, Maybe, Rule};

const CHU: &str =
    "S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18, 1975 (from memory)";
const RADIATES: &str = "OpenStax, College Physics 2e, section 14.7";
const COOLED: &str = "Newton's law of cooling; S. K. Som, Introduction to Heat Transfer";
const EVEN: &[&str] =
    &["The surface is equally warm all over and stands free in dry air near sea level."];
const FINS: &[&str] = &[
    "Flat fins far enough apart that warm air gets away: 6 mm or more in still air.",
    "The fin's edge sheds nothing.",
];
const WARM: &[Caution] =
    &[Caution { when: |values| values.si(SURFACE_TEMPERATURE) >= Some(BURNS), says: HOT }];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = air();
    rules.extend(together());
    rules.extend(fins());
    rules
}

fn air() -> Vec<Rule> {
    vec![
        Rule::new(
            STILL_AIR_COEFFICIENT,
            (SURFACE_TEMPERATURE, COOLING_AIR, SURFACE_HEIGHT, GRAVITY),
            convection::still_air,
        )
        .title("Warm air rises along an upright surface")
        .formula(r"\q{still-air-coefficient} = \dfrac{k}{\q{surface-height}} \left( 0.68 + \dfrac{0.670 \, Ra^{1/4}}{\left( 1 + \left( 0.492 / Pr \right)^{9/16} \right)^{4/9}} \right), \;\; Ra = \dfrac{\q{gravity} \, \beta \left( \q{surface-temperature} - \q{cooling-air} \right) \q{surface-height}^3}{\nu^2} Pr")
        .assumes(EVEN)
        .holds("Upright plates and boxes; tall hot ones (Ra from 10⁹) by the all-range form of the same paper.")
        .source(CHU),
        Rule::new(
            MOVING_AIR_COEFFICIENT,
            (SURFACE_TEMPERATURE, COOLING_AIR, AIR_FLOW_SPEED, FLOW_LENGTH),
            convection::moving_air_plate,
        )
        .title("Air along a flat surface")
        .formula(r"\q{moving-air-coefficient} = \dfrac{0.664 \, k}{\q{flow-length}} \, Re^{1/2} Pr^{1/3}, \;\; Re = \dfrac{\q{air-flow-speed} \cdot \q{flow-length}}{\nu\left( \q{surface-temperature}, \q{cooling-air} \right)}")
        .assumes(EVEN)
        .holds("Smooth flow; past Re = 500 000 it turns turbulent and is reckoned so. Rough air cools better.")
        .source("F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 7 (from memory)"),
        Rule::new(
            CAN_COEFFICIENT,
            (SURFACE_TEMPERATURE, COOLING_AIR, AIR_FLOW_SPEED, CAN_DIAMETER),
            convection::moving_air_cylinder,
        )
        .title("Air across a round can")
        .formula(r"\q{can-coefficient} = \dfrac{k}{\q{can-diameter}} \left( 0.3 + \dfrac{0.62 \, Re^{1/2} Pr^{1/3}}{\left( 1 + \left( 0.4 / Pr \right)^{2/3} \right)^{1/4}} \left( 1 + \left( \dfrac{Re}{282000} \right)^{5/8} \right)^{4/5} \right), \;\; Re = \dfrac{\q{air-flow-speed} \cdot \q{can-diameter}}{\nu\left( \q{surface-temperature}, \q{cooling-air} \right)}")
        .assumes(EVEN)
        .holds("Re Pr above 0.2, the can square to the air and free of others.")
        .source("S. W. Churchill, M. Bernstein, J. Heat Transfer 99, 1977 (from memory)"),
        Rule::new(
            RADIATION_COEFFICIENT,
            (EMISSIVITY, SURFACE_TEMPERATURE, COOLING_AIR),
            radiation::coefficient,
        )
        .title("Warm surfaces shine heat away")
        .formula(r"\q{radiation-coefficient} = \q{emissivity} \, \sigma \left( \q{surface-temperature}^2 + \q{cooling-air}^2 \right) \left( \q{surface-temperature} + \q{cooling-air} \right)")
        .assumes(&["All about is as warm as the air; under clear sky more goes, in the sun much comes back."])
        .holds("Surfaces that see little of each other.")
        .source(RADIATES),
    ]
}

fn together() -> Vec<Rule> {
    vec![
        Rule::new(
            SURFACE_COEFFICIENT,
            (STILL_AIR_COEFFICIENT, Maybe(MOVING_AIR_COEFFICIENT), RADIATION_COEFFICIENT),
            better,
        )
        .title("The better of still and moving air, and radiation")
        .formula(r"\q{surface-coefficient} = \max\left( \q{still-air-coefficient},\ \q{moving-air-coefficient} \right) + \q{radiation-coefficient}")
        .assumes(&["Still and moving air do not add: the stronger one decides."])
        .holds("Near the change from one to the other it is a little low.")
        .source("F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 9 (from memory)"),
        Rule::new(
            SURFACE_HEAT,
            (SURFACE_COEFFICIENT, SURFACE_AREA, SURFACE_TEMPERATURE, COOLING_AIR),
            shed,
        )
        .title("Heat for each square metre and kelvin, times both")
        .formula(r"\q{surface-heat} = \q{surface-coefficient} \cdot \q{surface-area} \left( \q{surface-temperature} - \q{cooling-air} \right)")
        .assumes(EVEN)
        .holds("The area the air reaches; fins count with their efficiency.")
        .source(COOLED)
        .cautions(WARM),
        Rule::new(
            RADIATED_HEAT,
            (EMISSIVITY, SURFACE_AREA, SURFACE_TEMPERATURE, COOLING_AIR),
            radiation::radiated,
        )
        .title("The fourth powers of both temperatures")
        .formula(r"\q{radiated-heat} = \q{emissivity} \, \sigma \cdot \q{surface-area} \left( \q{surface-temperature}^4 - \q{cooling-air}^4 \right)")
        .assumes(&["All about is as warm as the air."])
        .holds("Surfaces that see little of each other; paint of any colour shines heat as well as black.")
        .source(RADIATES)
        .cautions(WARM),
        Rule::new(SURFACE_RESISTANCE, (SURFACE_COEFFICIENT, SURFACE_AREA), lump::skin_resistance)
            .title("Kelvins for each watt")
            .formula(r"\q{surface-resistance} = \dfrac{1}{\q{surface-coefficient} \cdot \q{surface-area}}")
            .assumes(EVEN)
            .holds("This surface temperature; still air cools a cooler surface worse.")
            .source(COOLED),
    ]
}

fn fins() -> Vec<Rule> {
    vec![
        Rule::new(
            FIN_NUMBER,
            (SURFACE_COEFFICIENT, FIN_LENGTH, FIN_CONDUCTIVITY, FIN_THICKNESS),
            fin::plate_fin_number,
        )
        .title("Heat shed against heat led")
        .formula(r"\q{fin-number} = \q{fin-length} \sqrt{\dfrac{2 \, \q{surface-coefficient}}{\q{fin-conductivity} \cdot \q{fin-thickness}}}")
        .assumes(FINS)
        .holds("Fins much wider than they are thick.")
        .source("S. P. Sukhatme, A Textbook on Heat Transfer, chapter 2"),
        Rule::new(FIN_EFFICIENCY, (FIN_NUMBER,), fin::efficiency)
            .title("The fin's tip works less than its root")
            .formula(r"\q{fin-efficiency} = \dfrac{\tanh \left( \q{fin-number} \right)}{\q{fin-number}}")
            .assumes(FINS)
            .holds("Straight fins of even thickness.")
            .source("F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 3 (from memory)"),
        Rule::new(FIN_TIP_SHARE, (FIN_NUMBER,), fin::tip_share)
            .title("What of the root's warmth reaches the tip")
            .formula(r"\q{fin-tip-share} = \dfrac{1}{\cosh \left( \q{fin-number} \right)}")
            .assumes(FINS)
            .holds("Straight fins and pins of even thickness.")
            .source("S. P. Sukhatme, A Textbook on Heat Transfer, Example 2.13"),
    ]
}

fn better(
    still: HeatTransfer,
    moving: Option<HeatTransfer>,
    radiated: HeatTransfer,
) -> HeatTransfer {
    moving.filter(|moving| *moving > still).unwrap_or(still) + radiated
}

fn shed(h: HeatTransfer, area: Area, surface: Temperature, air: Temperature) -> Power {
    lump::skin_heat(h, area, heat::rise_above(surface, air))
}
