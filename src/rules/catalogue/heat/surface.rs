//! How well a surface sheds heat to still air, moving air and its surroundings; fins.

use super::super::common::{BURNS, HOT};
use super::air::EVEN;
use crate::physics::heat::{self, fin, lump, radiation};
use crate::quantity::catalogue::heat::*;
use crate::quantity::{Area, HeatTransfer, Power, Temperature};
use crate::rules::{Caution, Fault, Maybe, Rule};

const RADIATES: &str = "OpenStax, College Physics 2e, section 14.7";
const COOLED: &str = "Newton's law of cooling; S. K. Som, Introduction to Heat Transfer";
const FINS: &[&str] = &[
    "Flat fins far enough apart that warm air gets away: 6 mm or more in still air.",
    "The fin's edge sheds nothing.",
];
const WARM: &[Caution] =
    &[Caution { when: |values| values.si(SURFACE_TEMPERATURE) >= Some(BURNS), says: HOT }];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = radiated();
    rules.extend(together());
    rules.extend(fins());
    rules
}

fn radiated() -> Vec<Rule> {
    vec![
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
            CONVECTED_HEAT,
            (
                Maybe(STILL_AIR_COEFFICIENT),
                Maybe(MOVING_AIR_COEFFICIENT),
                SURFACE_AREA,
                SURFACE_TEMPERATURE,
                COOLING_AIR,
            ),
            carried,
        )
        .title("What the air carries, without radiation")
        .formula(r"\q{convected-heat} = \max\left( \q{still-air-coefficient},\ \q{moving-air-coefficient} \right) \q{surface-area} \left( \q{surface-temperature} - \q{cooling-air} \right)")
        .assumes(&["Still and moving air do not add: the stronger one decides."])
        .holds("The area the air reaches. Give the coefficient of a round can as that of still or moving air to reckon with a can.")
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
        .holds("Fins much wider than they are thick; a round pin counts as a fin half as thick as the pin.")
        .source("S. P. Sukhatme, A Textbook on Heat Transfer, chapter 2"),
        Rule::new(FIN_EFFICIENCY, (FIN_NUMBER,), fin::efficiency)
            .title("The fin's tip works less than its root")
            .formula(r"\q{fin-efficiency} = \dfrac{\tanh \left( \q{fin-number} \right)}{\q{fin-number}}")
            .assumes(FINS)
            .holds("Straight fins of even thickness.")
            .source("F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 3 (from memory)"),
        Rule::new(
            FIN_EFFECTIVENESS,
            (FIN_EFFICIENCY, FIN_LENGTH, FIN_THICKNESS),
            fin::effectiveness,
        )
        .title("Both faces of the fin against its root")
        .formula(r"\q{fin-effectiveness} = \q{fin-efficiency} \cdot \dfrac{2 \, \q{fin-length}}{\q{fin-thickness}}")
        .assumes(FINS)
        .holds("Straight fins of even thickness.")
        .source("F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 3 (from memory)"),
        Rule::new(
            FINS_NEEDED,
            (SINK_NEEDED, SURFACE_COEFFICIENT, FIN_EFFICIENCY, FIN_LENGTH, FIN_WIDTH),
            fin::count,
        )
        .title("What the heat sink must pass over what a fin passes")
        .formula(r"\q{fins-needed} = \dfrac{1}{\q{sink-needed} \cdot \q{surface-coefficient} \cdot \q{fin-efficiency} \cdot 2 \, \q{fin-length} \cdot \q{fin-width}}")
        .assumes(&[
            "Flat fins far enough apart that warm air gets away: 6 mm or more in still air.",
            "The surface temperature given is that of the fins' root; the root itself sheds nothing.",
            "Fins face each other, so radiation counts too much in still air: take an emissivity of 0.1 or so.",
        ])
        .holds("Heat sinks for one controller, fins upright.")
        .source("F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, chapter 3 (from memory)"),
        Rule::new(FIN_TIP_SHARE, (FIN_NUMBER,), fin::tip_share)
            .title("What of the root's warmth reaches the tip")
            .formula(r"\q{fin-tip-share} = \dfrac{1}{\cosh \left( \q{fin-number} \right)}")
            .assumes(FINS)
            .holds("Straight fins and pins of even thickness.")
            .source("S. P. Sukhatme, A Textbook on Heat Transfer, Example 2.13"),
    ]
}

/// The stronger of still and moving air, as far as they are known.
fn stronger(still: Option<HeatTransfer>, moving: Option<HeatTransfer>) -> Option<HeatTransfer> {
    match (still, moving) {
        (Some(still), Some(moving)) => Some(still.max(moving)),
        (one, other) => one.or(other),
    }
}

fn better(
    still: HeatTransfer,
    moving: Option<HeatTransfer>,
    radiated: HeatTransfer,
) -> HeatTransfer {
    moving.map_or(still, |moving| still.max(moving)) + radiated
}

fn carried(
    still: Option<HeatTransfer>,
    moving: Option<HeatTransfer>,
    area: Area,
    surface: Temperature,
    air: Temperature,
) -> Result<Power, Fault> {
    let either = vec![STILL_AIR_COEFFICIENT.any(), MOVING_AIR_COEFFICIENT.any()];
    let h = stronger(still, moving).ok_or(Fault::NeedsOneOf(either))?;
    Ok(shed(h, area, surface, air))
}

fn shed(h: HeatTransfer, area: Area, surface: Temperature, air: Temperature) -> Power {
    lump::skin_heat(h, area, heat::rise_above(surface, air))
}
