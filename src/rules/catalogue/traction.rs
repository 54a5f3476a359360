//! How soft ground carries, drags and grips.

mod friction;
mod indices;
mod shear_test;
mod sinkage;
mod snow;
mod thrust;
mod wheels;

use crate::physics::traction::sinkage::Soil;
use crate::quantity::catalogue::{ground::*, pressure::*, running_gear::*};
use crate::quantity::{CohesiveModulus, FrictionalModulus, Measure, Ratio};
use crate::rules::{Caution, Rule};

const BEKKER: &str = "J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, chapter 2 (Bekker)";
const DOUBT: &str = "Common practice, no published source: resistance on loose ground is carried as a range of 30 to 50 % either way";

const LEFT_OUT: &str = "Left out: ground pushed up ahead (bulldozing), a second pass in the same rut, slip that digs, a belly that drags and losses in the running gear. Most of them make it worse.";
const EVEN: &str = "The pressure is even under a stiff track; under a slack belt with few wheels it comes in waves and goes deeper.";
const STRENGTHS: &str = "Every strength of the ground is off the same way at once, by the doubt.";

/// The classical rules were fitted on plates and vehicles far larger than a model.
const SMALL: Caution = Caution {
    when: |values| {
        values.si(TRACK_WIDTH).is_some_and(|width| width < 0.15)
            || values.si(GROUND_PRESSURE).is_some_and(|pressure| pressure < 5e3)
    },
    says: "The classical rules were fitted on larger plates and heavier machines; for tracks under 150 mm or pressures of a few kPa measured pull and sinkage often miss them. Take the low and high ends, and try it.",
};

/// Small exponents make sinkage a high power of the pressure.
const LOW_EXPONENT: Caution = Caution {
    when: |values| values.si(SINKAGE_EXPONENT).is_some_and(|exponent| exponent <= 0.2),
    says: "With an exponent of 0.2 or less the sinkage grows with the fifth power of the pressure or more: only trust it near the pressures that were tested.",
};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = sinkage::rules();
    rules.extend(wheels::rules());
    rules.extend(thrust::rules());
    rules.extend(shear_test::rules());
    rules.extend(friction::rules());
    rules.extend(snow::rules());
    rules.extend(indices::rules());
    rules
}

/// Bekker's numbers as the physics takes them: their units hang on the exponent.
fn soil(exponent: Ratio, cohesive: CohesiveModulus, frictional: FrictionalModulus) -> Soil {
    Soil { exponent: exponent.si(), cohesive: cohesive.si(), frictional: frictional.si() }
}
