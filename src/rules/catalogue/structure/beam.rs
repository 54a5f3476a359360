//! A beam under a load.

use super::super::common::exceeds;
use crate::physics::structure;
use crate::quantity::catalogue::structure::*;
use crate::rules::{Caution, Origin, Rule, Values};

const TABLES: &str = "Gere, Mechanics of Materials, tables G-1 and G-2 (from memory)";
const FLEXURE: &str = "Gere, Mechanics of Materials, section 5.5 (from memory)";
const SLENDER: &[&str] = &[
    "The beam is slender, at least ten times as long as deep, and bends little.",
    "Its own weight is left out.",
];
const SPRINGY: &[&str] = &[
    "The material springs back, equally stiff when pulled and pushed.",
    "Holes, welds and sharp inside corners raise the stress beside them two to three times.",
];

/// Said where a factor for how the beam is held is taken without being asked for.
const fn held(when: fn(&Values) -> bool) -> Caution {
    Caution { when, says: "How it is held is assumed: firmly at one end, loaded at the other." }
}
const HELD: Caution = held(|values| values.origin(MOMENT_FACTOR) == Some(Origin::Assumed));
const HELD_FOR_SAG: Caution = held(|values| values.origin(SAG_FACTOR) == Some(Origin::Assumed));
const HELD_FOR_SLOPE: Caution = held(|values| values.origin(BEND_FACTOR) == Some(Origin::Assumed));
const SAGS_FAR: Caution = Caution {
    when: |values| sag_over_span(values).is_some_and(|part| part > 0.1),
    says: "It would sag more than a tenth of its span: the sum no longer holds.",
};
const STUBBY: Caution = Caution {
    when: |values| slenderness(values).is_some_and(|n| n < 10.0),
    says: "The beam is short for its depth: shear adds to the sag, and the sum is too low.",
};
const FOLDS: Caution = Caution {
    when: |values| exceeds(values, BEAM_STRESS, MATERIAL_STRENGTH),
    says: "The stress is more than the material bears: it stays bent or breaks.",
};
const PRINTED: Caution = Caution {
    // The same strength in every direction is no print.
    when: |values| {
        values.si(STRENGTH_ACROSS).is_some() && exceeds(values, MATERIAL_STRENGTH, STRENGTH_ACROSS)
    },
    says: "Printed parts differ from print to print, lose strength when warm, and start to break at sharp inside corners: break a few test bars of your own.",
};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = under_a_load();
    rules.extend(under_a_moment());
    rules.extend(margins());
    rules
}

fn under_a_load() -> Vec<Rule> {
    vec![
        Rule::new(BENDING_MOMENT, (MOMENT_FACTOR, BEAM_LOAD, BEAM_SPAN), structure::bending_moment)
            .title("Load times span, by how it is held")
            .formula(r"\q{bending-moment} = \q{moment-factor} \cdot \q{beam-load} \cdot \q{beam-span}")
            .assumes(SLENDER)
            .holds("One beam held in one of the ways of the table.")
            .source(TABLES)
            .cautions(&[HELD]),
        Rule::new(BEAM_STRESS, (BENDING_MOMENT, SECTION_MODULUS), structure::bending_stress)
            .title("Moment over section modulus")
            .formula(r"\q{beam-stress} = \dfrac{\q{bending-moment}}{\q{section-modulus}}")
            .assumes(SPRINGY)
            .holds("Below the yield of the material; thin walls may dent or buckle first.")
            .source(FLEXURE)
            .cautions(&[HELD]),
        Rule::new(BEAM_SAG, (SAG_FACTOR, BEAM_LOAD, BEAM_SPAN, YOUNGS_MODULUS, SECOND_MOMENT), structure::deflection)
            .title("The span counts with its cube")
            .formula(r"\q{beam-sag} = \dfrac{\q{beam-load} \cdot \q{beam-span}^3}{\q{sag-factor} \cdot \q{youngs-modulus} \cdot \q{second-moment}}")
            .assumes(SLENDER)
            .holds("Sag of less than a tenth of the span, below the yield of the material.")
            .source(TABLES)
            .cautions(&[HELD_FOR_SAG, STUBBY, FOLDS, SAGS_FAR]),        Rule::new(BEAM_SLOPE, (BEND_FACTOR, BEAM_LOAD, BEAM_SPAN, YOUNGS_MODULUS, SECOND_MOMENT), structure::end_slope)
            .title("The span counts with its square")
            .formula(r"\q{beam-slope} = \dfrac{\q{beam-load} \cdot \q{beam-span}^2}{\q{bend-factor} \cdot \q{youngs-modulus} \cdot \q{second-moment}}")
            .assumes(SLENDER)
            .holds("Small slopes, below the yield of the material.")
            .source(TABLES)
            .cautions(&[HELD_FOR_SLOPE, STUBBY]),
        Rule::new(SHEAR_SHIFT, (BEAM_LOAD, BEAM_SPAN, SHEAR_MODULUS, SECTION_AREA), structure::shear_deflection)
            .title("A short stub shears")
            .formula(r"\q{shear-shift} = \dfrac{\q{beam-load} \cdot \q{beam-span}}{\q{shear-modulus} \cdot \q{section-area}}")
            .assumes(&["Shear is spread evenly over the section, and bending is left out."])
            .holds("Stubs no longer than their own depth.")
            .source("OpenStax, University Physics Volume 1, section 12.3")
            .cautions(&[Caution {
                when: |values| slenderness(values).is_some_and(|n| n > 1.0),
                says: "The stub is longer than it is deep: bending is more than this, see the sag of the beam.",
            }]),
    ]
}

fn under_a_moment() -> Vec<Rule> {
    vec![
        Rule::new(LARGEST_MOMENT, (MATERIAL_STRENGTH, SECTION_MODULUS), structure::largest_moment)
            .title("Strength times section modulus")
            .formula(r"\q{largest-moment} = \q{material-strength} \cdot \q{section-modulus}")
            .assumes(SPRINGY)
            .holds("To the first yield at the outermost fibre; thin walls may dent or buckle first.")
            .source(FLEXURE),
        Rule::new(BEND_RADIUS, (YOUNGS_MODULUS, SECOND_MOMENT, END_MOMENT), structure::bend_radius)
            .title("A steady moment bends an arc")
            .formula(r"\q{bend-radius} = \dfrac{\q{youngs-modulus} \cdot \q{second-moment}}{\q{end-moment}}")
            .assumes(SPRINGY)
            .holds("Below the yield of the material.")
            .source(FLEXURE),
        Rule::new(END_MOMENT_SAG, (BEAM_SPAN, BEND_RADIUS), structure::round_bend_deflection)
            .title("How far an arc leaves its line")
            .formula(r"\q{end-moment-sag} = \dfrac{\q{beam-span}^2}{2 \, \q{bend-radius}}")
            .assumes(SLENDER)
            .holds("A radius of several spans.")
            .source("Gere and Timoshenko, Mechanics of Materials, problem 5.4-4"),
    ]
}

fn margins() -> Vec<Rule> {
    vec![
        Rule::new(BEAM_MARGIN, (MATERIAL_STRENGTH, BEAM_STRESS), structure::stress_margin)
            .title("Strength over stress")
            .formula(r"\q{beam-margin} = \dfrac{\q{material-strength}}{\q{beam-stress}}")
            .assumes(SPRINGY)
            .holds("One load on a sound part; repeated loads break it at half of that or less.")
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[HELD, FOLDS, PRINTED]),
        Rule::new(ACROSS_MARGIN, (STRENGTH_ACROSS, BEAM_STRESS), structure::stress_margin)
            .title("Strength across the layers over stress")
            .formula(r"\q{across-margin} = \dfrac{\q{strength-across}}{\q{beam-stress}}")
            .assumes(&["The bending pulls the layers apart: the part was printed standing up."])
            .holds("One load on a sound print; repeated loads break it at half of that or less.")
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[HELD, PRINTED]),
    ]
}

/// The span over the depth, which is twice the second moment over the section modulus.
fn slenderness(values: &Values) -> Option<f64> {
    let depth = 2.0 * values.si(SECOND_MOMENT)? / values.si(SECTION_MODULUS)?;
    Some(values.si(BEAM_SPAN)? / depth)
}

/// The sag over the span, from what it is found from: a caution comes before its own number.
fn sag_over_span(values: &Values) -> Option<f64> {
    let stiffness =
        values.si(SAG_FACTOR)? * values.si(YOUNGS_MODULUS)? * values.si(SECOND_MOMENT)?;
    Some(values.si(BEAM_LOAD)? * values.si(BEAM_SPAN)?.powi(2) / stiffness)
}
