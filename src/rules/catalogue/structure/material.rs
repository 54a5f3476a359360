//! Material indices, and rods under a straight pull.

use super::super::common::exceeds;
use crate::physics::structure;
use crate::quantity::catalogue::structure::*;
use crate::quantity::{Density, Pressure, Ratio};
use crate::rules::{Caution, Rule};

const ASHBY: &str =
    "M. F. Ashby, Materials Selection in Mechanical Design, chapter 5 (from memory)";
const UP_12: &str = "OpenStax, University Physics Volume 1, section 12.3";
const COMPARED: &[&str] = &[
    "Length and way of holding are given, and the section may grow as it needs.",
    "Price, joining, fatigue and toughness are left out.",
];
const STRAIGHT: &[&str] = &[
    "The pull goes through the middle of the section.",
    "Holes, notches and threads raise the stress beside them two to three times.",
];
const SPRINGY: &[&str] = &["The material springs back: it is pulled less than its yield."];
const COMPARE: &str = "A comparison of materials, not a size; fibres and wood along their length.";

const GIVES: &[Caution] = &[Caution {
    when: |values| exceeds(values, ROD_STRESS, MATERIAL_STRENGTH),
    says: "The rod stays longer or breaks.",
}];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = indices();
    rules.extend(rods());
    rules
}

fn indices() -> Vec<Rule> {
    let index = |rule: Rule| rule.assumes(COMPARED).holds(COMPARE).source(ASHBY);
    vec![
        index(Rule::new(STIFF_ROD_INDEX, (YOUNGS_MODULUS, MATERIAL_DENSITY), stiff_rod))
            .title("The lightest rod of a stiffness")
            .formula(r"\q{stiff-rod-index} = \dfrac{\q{youngs-modulus} / (10^9 \, \text{Pa})}{\q{material-density} / (1000 \, \text{kg/m}^3)}"),
        index(Rule::new(STIFF_BEAM_INDEX, (YOUNGS_MODULUS, MATERIAL_DENSITY), stiff_beam))
            .title("The lightest beam of a stiffness")
            .formula(r"\q{stiff-beam-index} = \dfrac{\sqrt{\q{youngs-modulus} / (10^9 \, \text{Pa})}}{\q{material-density} / (1000 \, \text{kg/m}^3)}"),
        index(Rule::new(STIFF_PANEL_INDEX, (YOUNGS_MODULUS, MATERIAL_DENSITY), stiff_panel))
            .title("The lightest panel of a stiffness")
            .formula(r"\q{stiff-panel-index} = \dfrac{\left( \q{youngs-modulus} / (10^9 \, \text{Pa}) \right)^{1/3}}{\q{material-density} / (1000 \, \text{kg/m}^3)}"),
        index(Rule::new(STRONG_ROD_INDEX, (MATERIAL_STRENGTH, MATERIAL_DENSITY), strong_rod))
            .title("The lightest rod of a strength")
            .formula(r"\q{strong-rod-index} = \dfrac{\q{material-strength} / (10^6 \, \text{Pa})}{\q{material-density} / (1000 \, \text{kg/m}^3)}"),
        index(Rule::new(STRONG_BEAM_INDEX, (MATERIAL_STRENGTH, MATERIAL_DENSITY), strong_beam))
            .title("The lightest beam of a strength")
            .formula(r"\q{strong-beam-index} = \dfrac{\left( \q{material-strength} / (10^6 \, \text{Pa}) \right)^{2/3}}{\q{material-density} / (1000 \, \text{kg/m}^3)}"),
    ]
}

fn rods() -> Vec<Rule> {
    vec![
        Rule::new(ROD_STRESS, (ROD_FORCE, ROD_AREA), structure::stress)
            .title("Pull over section")
            .formula(r"\q{rod-stress} = \dfrac{\q{rod-force}}{\q{rod-area}}")
            .assumes(STRAIGHT)
            .holds("Rods, straps and cables; a slender rod pushed together bows out long before this.")
            .source(UP_12),
        Rule::new(ROD_STRAIN, (ROD_STRESS, YOUNGS_MODULUS), structure::strain)
            .title("Stress over stiffness")
            .formula(r"\q{rod-strain} = \dfrac{\q{rod-stress}}{\q{youngs-modulus}}")
            .assumes(SPRINGY)
            .holds("Below the yield of the material.")
            .source(UP_12)
            .cautions(GIVES),
        Rule::new(ROD_STRETCH, (ROD_STRAIN, ROD_LENGTH), structure::stretch)
            .title("Strain over the length")
            .formula(r"\q{rod-stretch} = \q{rod-strain} \cdot \q{rod-length}")
            .assumes(SPRINGY)
            .holds("Below the yield of the material; a laid rope stretches more than its fibres.")
            .source(UP_12)
            .cautions(GIVES),
        Rule::new(ROD_STIFFNESS, (YOUNGS_MODULUS, ROD_AREA, ROD_LENGTH), structure::stiffness)
            .title("A rod is a spring")
            .formula(r"\q{rod-stiffness} = \dfrac{\q{youngs-modulus} \cdot \q{rod-area}}{\q{rod-length}}")
            .assumes(SPRINGY)
            .holds("Below the yield of the material.")
            .source("Gere and Timoshenko, Mechanics of Materials, section 2.2 (from memory)"),
        Rule::new(ROD_MARGIN, (MATERIAL_STRENGTH, ROD_STRESS), structure::stress_margin)
            .title("Strength over stress")
            .formula(r"\q{rod-margin} = \dfrac{\q{material-strength}}{\q{rod-stress}}")
            .assumes(STRAIGHT)
            .holds("One pull on a sound part; repeated pulls break it at less.")
            .source("The definition of a margin; common practice, no published source")
            .cautions(GIVES),
    ]
}

fn stiff_rod(modulus: Pressure, density: Density) -> Ratio {
    structure::modulus_index(modulus, density, 1)
}

fn stiff_beam(modulus: Pressure, density: Density) -> Ratio {
    structure::modulus_index(modulus, density, 2)
}

fn stiff_panel(modulus: Pressure, density: Density) -> Ratio {
    structure::modulus_index(modulus, density, 3)
}

fn strong_rod(strength: Pressure, density: Density) -> Ratio {
    structure::strength_index(strength, density, 1.0)
}

fn strong_beam(strength: Pressure, density: Density) -> Ratio {
    structure::strength_index(strength, density, 2.0 / 3.0)
}
