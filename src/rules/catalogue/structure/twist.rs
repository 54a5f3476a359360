//! Round tubes and axles under a twist.

use crate::physics::structure;
use crate::quantity::catalogue::structure::*;
use crate::rules::{Caution, Rule, Values};

const TORSION: &str =
    "Torsion formula, Beer, Johnston et al., Mechanics of Materials, chapter 3 (from memory)";
const ROUND: &[&str] = &[
    "A round tube, twisted about its own middle.",
    "Keyways, flats and cross holes raise the stress beside them two to three times.",
];

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(TUBE_POLAR_MODULUS, (TUBE_SECTION_MODULUS,), structure::polar_modulus)
            .title("Round, it bends alike both ways")
            .formula(r"\q{tube-polar-modulus} = 2 \, \q{tube-section-modulus}")
            .assumes(ROUND)
            .holds("Round tubes; a slit along the tube takes nearly all of it.")
            .source(TORSION),
        Rule::new(TWIST_STRESS, (TWIST_MOMENT, TUBE_POLAR_MODULUS), structure::twist_stress)
            .title("Twist over polar modulus")
            .formula(r"\q{twist-stress} = \dfrac{\q{twist-moment}}{\q{tube-polar-modulus}}")
            .assumes(ROUND)
            .holds("Below the yield in shear; a very thin wall buckles before.")
            .source(TORSION)
            .cautions(&[Caution {
                when: gives,
                says: "The tube stays twisted or shears off: metals give in shear at about 0.58 of their strength.",
            }]),
    ]
}

/// Over the yield in shear by the distortion energy, `σ / √3`.
fn gives(values: &Values) -> bool {
    match (values.get(TWIST_MOMENT), values.get(TUBE_POLAR_MODULUS), values.get(MATERIAL_STRENGTH))
    {
        (Some(moment), Some(modulus), Some(strength)) => {
            structure::twist_stress(moment, modulus) * 3.0_f64.sqrt() > strength
        }
        _ => false,
    }
}
