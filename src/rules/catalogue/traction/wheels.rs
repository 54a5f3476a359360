//! How deep stiff wheels go in, and what their ruts cost.

use uom::ConstZero;

use super::{BEKKER, DOUBT, LEFT_OUT, LOW_EXPONENT, STRENGTHS, soil};
use crate::physics::Impossible;
use crate::physics::traction::band::{self, Ground};
use crate::physics::traction::{resistance, sinkage};
use crate::quantity::catalogue::{ground::*, machine::*, running_gear::*, traction::*};
use crate::quantity::{CohesiveModulus, Force, FrictionalModulus, Id, Length, Measure, Ratio};
use crate::rules::{Caution, Rule};

const STIFF: &str = "The wheel does not squash: a soft tyre goes in less.";
const ARC: &str =
    "The arc in the ground is taken as a parabola, some 2 % off at a tenth of the diameter.";
const SHALLOW: &str =
    "Stiff wheels at least half a metre across that sink less than a sixth of their diameter.";

const SMALL_WHEEL: Caution = Caution {
    when: |values| values.si(WHEEL_DIAMETER).is_some_and(|diameter| diameter < 0.5),
    says: "Below about half a metre of diameter the flat-plate rules miss what small wheels do; take the low and high ends, and try it.",
};
const DEEP: Caution = Caution {
    when: |values| match (values.si(WHEEL_SINKAGE), values.si(WHEEL_DIAMETER)) {
        (Some(sinkage), Some(diameter)) => sinkage > diameter / 6.0,
        _ => false,
    },
    says: "The wheel sinks more than a sixth of its diameter: the rule no longer holds, and it is close to stuck.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(LOAD_PER_WHEEL, (WHEEL_LOAD_SHARE, GROUND_FORCE, WHEEL_COUNT), load_per_wheel)
            .title("All wheels share alike")
            .formula(r"\q{load-per-wheel} = \dfrac{\q{wheel-load-share} \cdot \q{ground-force}}{\q{wheel-count}}")
            .assumes(&["Every wheel carries the same; the heavier end sinks deeper."])
            .holds("Wheels alike and a load in the middle.")
            .source("Balance of forces, OpenStax, University Physics Volume 1, section 12.1"),
        Rule::new(
            WHEEL_SINKAGE,
            (
                LOAD_PER_WHEEL,
                WHEEL_WIDTH,
                WHEEL_DIAMETER,
                SINKAGE_EXPONENT,
                COHESIVE_MODULUS,
                FRICTIONAL_MODULUS,
            ),
            |load, width, diameter, n, k_c, k_phi| {
                sinkage::wheel_sinkage(soil(n, k_c, k_phi), load, width, diameter)
            },
        )
        .title("A stiff wheel goes in until the arc carries it")
        .formula(r"\q{wheel-sinkage} = \left( \dfrac{3 \, \q{load-per-wheel}}{\q{wheel-width} \cdot (3 - \q{sinkage-exponent}) \cdot (\q{cohesive-modulus} / \q{wheel-width} + \q{frictional-modulus}) \cdot \sqrt{\q{wheel-diameter}}} \right)^{2 / (2 \, \q{sinkage-exponent} + 1)}")
        .assumes(&[STIFF, ARC, LEFT_OUT])
        .holds(SHALLOW)
        .source(BEKKER)
        .cautions(&[SMALL_WHEEL, LOW_EXPONENT]),
        Rule::new(
            WHEEL_COMPACTION,
            (
                WHEEL_COUNT,
                WHEEL_WIDTH,
                WHEEL_SINKAGE,
                SINKAGE_EXPONENT,
                COHESIVE_MODULUS,
                FRICTIONAL_MODULUS,
            ),
            compaction,
        )
        .title("Pressing a rut takes work for every metre")
        .formula(r"\q{wheel-compaction-resistance} = \q{wheel-count} \cdot \q{wheel-width} \cdot \left( \dfrac{\q{cohesive-modulus}}{\q{wheel-width}} + \q{frictional-modulus} \right) \cdot \dfrac{\q{wheel-sinkage}^{\q{sinkage-exponent} + 1}}{\q{sinkage-exponent} + 1}")
        .assumes(&[STIFF, "Every wheel presses a rut of its own; one that follows in a rut has it easier.", LEFT_OUT])
        .holds(SHALLOW)
        .source(BEKKER)
        .cautions(&[SMALL_WHEEL, LOW_EXPONENT, DEEP]),
        banded_depth(WHEEL_SINKAGE_LOW, |x, n, d| band::wheel_sinkage(x, n.si(), d, Ground::Stronger))
            .title("The same on firmer ground")
            .formula(r"\q{wheel-sinkage-low} = \q{wheel-sinkage} \cdot (1 + \q{soil-doubt})^{-2 / (2 \, \q{sinkage-exponent} + 1)}"),
        banded_depth(WHEEL_SINKAGE_HIGH, |x, n, d| band::wheel_sinkage(x, n.si(), d, Ground::Weaker))
            .title("The same on weaker ground")
            .formula(r"\q{wheel-sinkage-high} = \q{wheel-sinkage} \cdot (1 - \q{soil-doubt})^{-2 / (2 \, \q{sinkage-exponent} + 1)}"),
        banded_force(WHEEL_COMPACTION_LOW, |x, n, d| band::wheel_compaction(x, n.si(), d, Ground::Stronger))
            .title("The same on firmer ground")
            .formula(r"\q{wheel-compaction-resistance-low} = \q{wheel-compaction-resistance} \cdot (1 + \q{soil-doubt})^{-1 / (2 \, \q{sinkage-exponent} + 1)}"),
        banded_force(WHEEL_COMPACTION_HIGH, |x, n, d| band::wheel_compaction(x, n.si(), d, Ground::Weaker))
            .title("The same on weaker ground")
            .formula(r"\q{wheel-compaction-resistance-high} = \q{wheel-compaction-resistance} \cdot (1 - \q{soil-doubt})^{-1 / (2 \, \q{sinkage-exponent} + 1)}"),
    ]
}

fn banded_depth(id: Id<Length>, find: fn(Length, Ratio, Ratio) -> Length) -> Rule {
    banded(Rule::new(id, (WHEEL_SINKAGE, SINKAGE_EXPONENT, SOIL_DOUBT), find))
}

fn banded_force(id: Id<Force>, find: fn(Force, Ratio, Ratio) -> Force) -> Rule {
    banded(Rule::new(id, (WHEEL_COMPACTION, SINKAGE_EXPONENT, SOIL_DOUBT), find))
}

fn banded(rule: Rule) -> Rule {
    rule.assumes(&[STRENGTHS]).holds(SHALLOW).source(DOUBT).cautions(&[
        SMALL_WHEEL,
        LOW_EXPONENT,
        DEEP,
    ])
}

fn load_per_wheel(share: Ratio, force: Force, count: Ratio) -> Result<Force, Impossible> {
    if count == Ratio::ZERO {
        return Err(Impossible::NoWheels);
    }
    Ok(share * force / count)
}

fn compaction(
    count: Ratio,
    width: Length,
    depth: Length,
    n: Ratio,
    k_c: CohesiveModulus,
    k_phi: FrictionalModulus,
) -> Result<Force, Impossible> {
    if count == Ratio::ZERO {
        return Err(Impossible::NoWheels);
    }
    Ok(count * resistance::compaction(soil(n, k_c, k_phi), width, width, depth))
}
