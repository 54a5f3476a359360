//! How deep tracks and skis go in, and what their ruts cost.

use uom::ConstZero;

use super::{BEKKER, DOUBT, EVEN, LEFT_OUT, LOW_EXPONENT, SMALL, STRENGTHS, soil};
use crate::physics::traction::band::{self, Ground};
use crate::physics::traction::{resistance, sinkage};
use crate::physics::{Impossible, running_gear};
use crate::quantity::catalogue::{ground::*, pressure::*, running_gear::*, traction::*};
use crate::quantity::{
    CohesiveModulus, Force, FrictionalModulus, Length, Measure, Pressure, Ratio,
};
use crate::rules::{Caution, Fault, Maybe, Rule};

const PLATE: &str = "Within the pressures and plate sizes the ground was tested with; ground at least as deep as the sinkage, snow five times as deep.";
const BELLY_DRAGS: Caution = Caution {
    when: |values| match (values.si(SINKAGE), values.si(BELLY_CLEARANCE)) {
        (Some(sinkage), Some(clearance)) => sinkage >= clearance,
        _ => false,
    },
    says: "It sinks as deep as its belly is high: the belly drags and takes weight off the tracks.",
};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = depths();
    rules.extend(ruts());
    rules
}

fn depths() -> Vec<Rule> {
    vec![
        Rule::new(
            SINKING_WIDTH,
            (
                Maybe(TRACK_COUNT),
                Maybe(WHEEL_COUNT),
                Maybe(SKI_COUNT),
                Maybe(TRACK_WIDTH),
                Maybe(CONTACT_LENGTH),
                Maybe(SKI_WIDTH),
                Maybe(SKI_LENGTH),
            ),
            sinking_width,
        )
        .title("The smaller side of a patch decides")
        .formula(r"\q{sinking-width} = \begin{cases} \min(\q{track-width}, \q{contact-length}) & \text{on tracks} \\ \min(\q{ski-width}, \q{ski-length}) & \text{on skis} \end{cases}")
        .assumes(&["Every track or ski is a rectangle that bears all over."])
        .holds("A machine on tracks alone or on skis alone; for a round plate its radius counts instead.")
        .source(BEKKER),
        Rule::new(
            RUT_PRESSURE,
            (RUT_DEPTH, SINKING_WIDTH, SINKAGE_EXPONENT, COHESIVE_MODULUS, FRICTIONAL_MODULUS),
            |depth, side, n, k_c, k_phi| sinkage::pressure_at(soil(n, k_c, k_phi), side, depth),
        )
        .title("The deeper the rut, the harder the ground pushes back")
        .formula(r"\q{rut-pressure} = \left( \dfrac{\q{cohesive-modulus}}{\q{sinking-width}} + \q{frictional-modulus} \right) \cdot \q{rut-depth}^{\q{sinkage-exponent}}")
        .assumes(&[EVEN, LEFT_OUT])
        .holds(PLATE)
        .source(BEKKER)
        .cautions(&[SMALL, LOW_EXPONENT]),
        Rule::new(RUT_PRESSURE_LOW, (RUT_PRESSURE, SOIL_DOUBT), |p, d| {
            band::carried(p, d, Ground::Weaker)
        })
        .title("The same on weaker ground")
        .formula(r"\q{rut-pressure-low} = \q{rut-pressure} \cdot (1 - \q{soil-doubt})")
        .assumes(&[STRENGTHS])
        .holds(PLATE)
        .source(DOUBT)
        .cautions(&[SMALL]),
        Rule::new(RUT_PRESSURE_HIGH, (RUT_PRESSURE, SOIL_DOUBT), |p, d| {
            band::carried(p, d, Ground::Stronger)
        })
        .title("The same on stronger ground")
        .formula(r"\q{rut-pressure-high} = \q{rut-pressure} \cdot (1 + \q{soil-doubt})")
        .assumes(&[STRENGTHS])
        .holds(PLATE)
        .source(DOUBT)
        .cautions(&[SMALL]),
        Rule::new(
            SINKAGE,
            (GROUND_PRESSURE, SINKING_WIDTH, SINKAGE_EXPONENT, COHESIVE_MODULUS, FRICTIONAL_MODULUS),
            sinkage_under,
        )
        .title("It goes in until the ground pushes back as hard")
        .formula(r"\q{sinkage} = \left( \dfrac{\q{ground-pressure}}{\q{cohesive-modulus} / \q{sinking-width} + \q{frictional-modulus}} \right)^{1 / \q{sinkage-exponent}}")
        .assumes(&[EVEN, LEFT_OUT])
        .holds(PLATE)
        .source(BEKKER)
        .cautions(&[SMALL, LOW_EXPONENT]),
        Rule::new(
            LOW_END_SINKAGE,
            (LOW_END_PRESSURE, SINKING_WIDTH, SINKAGE_EXPONENT, COHESIVE_MODULUS, FRICTIONAL_MODULUS),
            sinkage_under,
        )
        .title("The low end goes in by its own pressure")
        .formula(r"\q{low-end-sinkage} = \left( \dfrac{\q{low-end-pressure}}{\q{cohesive-modulus} / \q{sinking-width} + \q{frictional-modulus}} \right)^{1 / \q{sinkage-exponent}}")
        .assumes(&["The low end sinks as a plate under the worst pressure would. The tilt that comes of it moves the load further to that end.", LEFT_OUT])
        .holds(PLATE)
        .source(BEKKER)
        .cautions(&[SMALL, LOW_EXPONENT]),
        Rule::new(SINKAGE_LOW, (SINKAGE, SINKAGE_EXPONENT, SOIL_DOUBT), |z, n: Ratio, doubt| {
            band::sinkage(z, n.si(), doubt, Ground::Stronger)
        })
        .title("The same on firmer ground")
        .formula(r"\q{sinkage-low} = \q{sinkage} \cdot (1 + \q{soil-doubt})^{-1 / \q{sinkage-exponent}}")
        .assumes(&[STRENGTHS])
        .holds(PLATE)
        .source(DOUBT)
        .cautions(&[SMALL, LOW_EXPONENT]),
        Rule::new(SINKAGE_HIGH, (SINKAGE, SINKAGE_EXPONENT, SOIL_DOUBT), |z, n: Ratio, doubt| {
            band::sinkage(z, n.si(), doubt, Ground::Weaker)
        })
        .title("The same on weaker ground")
        .formula(r"\q{sinkage-high} = \q{sinkage} \cdot (1 - \q{soil-doubt})^{-1 / \q{sinkage-exponent}}")
        .assumes(&[STRENGTHS])
        .holds(PLATE)
        .source(DOUBT)
        .cautions(&[SMALL, LOW_EXPONENT]),
        Rule::new(
            LOW_END_SINKAGE_HIGH,
            (LOW_END_SINKAGE, SINKAGE_EXPONENT, SOIL_DOUBT),
            |z, n: Ratio, doubt| band::sinkage(z, n.si(), doubt, Ground::Weaker),
        )
        .title("The worst end on weaker ground")
        .formula(r"\q{low-end-sinkage-high} = \q{low-end-sinkage} \cdot (1 - \q{soil-doubt})^{-1 / \q{sinkage-exponent}}")
        .assumes(&[STRENGTHS])
        .holds(PLATE)
        .source(DOUBT)
        .cautions(&[SMALL, LOW_EXPONENT]),
    ]
}

fn ruts() -> Vec<Rule> {
    vec![
        Rule::new(
            COMPACTION_RESISTANCE,
            (
                TRACK_COUNT,
                Maybe(TRACK_WIDTH),
                SINKING_WIDTH,
                SINKAGE,
                SINKAGE_EXPONENT,
                COHESIVE_MODULUS,
                FRICTIONAL_MODULUS,
            ),
            compaction,
        )
        .title("Pressing a rut takes work for every metre")
        .formula(r"\q{compaction-resistance} = \q{track-count} \cdot \q{track-width} \cdot \left( \dfrac{\q{cohesive-modulus}}{\q{sinking-width}} + \q{frictional-modulus} \right) \cdot \dfrac{\q{sinkage}^{\q{sinkage-exponent} + 1}}{\q{sinkage-exponent} + 1}")
        .assumes(&[EVEN, LEFT_OUT])
        .holds("Tracks in ruts that are not deep against their length, each in ground of its own.")
        .source(BEKKER)
        .cautions(&[SMALL, LOW_EXPONENT, BELLY_DRAGS]),
        Rule::new(
            COMPACTION_RESISTANCE_LOW,
            (COMPACTION_RESISTANCE, SINKAGE_EXPONENT, SOIL_DOUBT),
            |force, n: Ratio, doubt| band::compaction(force, n.si(), doubt, Ground::Stronger),
        )
        .title("The same on firmer ground")
        .formula(r"\q{compaction-resistance-low} = \q{compaction-resistance} \cdot (1 + \q{soil-doubt})^{-1 / \q{sinkage-exponent}}")
        .assumes(&[STRENGTHS])
        .holds("As the force to press the ruts.")
        .source(DOUBT)
        .cautions(&[SMALL, LOW_EXPONENT]),
        Rule::new(
            COMPACTION_RESISTANCE_HIGH,
            (COMPACTION_RESISTANCE, SINKAGE_EXPONENT, SOIL_DOUBT),
            |force, n: Ratio, doubt| band::compaction(force, n.si(), doubt, Ground::Weaker),
        )
        .title("The same on weaker ground")
        .formula(r"\q{compaction-resistance-high} = \q{compaction-resistance} \cdot (1 - \q{soil-doubt})^{-1 / \q{sinkage-exponent}}")
        .assumes(&[STRENGTHS])
        .holds("As the force to press the ruts.")
        .source(DOUBT)
        .cautions(&[SMALL, LOW_EXPONENT]),
    ]
}

fn sinking_width(
    tracks: Option<Ratio>,
    wheels: Option<Ratio>,
    skis: Option<Ratio>,
    track_width: Option<Length>,
    track_length: Option<Length>,
    ski_width: Option<Length>,
    ski_length: Option<Length>,
) -> Result<Length, Fault> {
    let there = |count: Option<Ratio>| count > Some(Ratio::ZERO);
    let sides = match (there(tracks), there(skis)) {
        _ if there(wheels) => return Err(Impossible::MixedGear.into()),
        (true, true) => return Err(Impossible::MixedGear.into()),
        (false, false) => return Err(Impossible::NoContact.into()),
        (true, false) => [(TRACK_WIDTH, track_width), (CONTACT_LENGTH, track_length)],
        (false, true) => [(SKI_WIDTH, ski_width), (SKI_LENGTH, ski_length)],
    };
    match sides {
        [(_, Some(width)), (_, Some(length))] => Ok(running_gear::smaller_side(width, length)),
        _ => {
            let lacking = sides.iter().filter(|(_, side)| side.is_none());
            Err(Fault::Needs(lacking.map(|(id, _)| id.any()).collect()))
        }
    }
}

fn sinkage_under(
    pressure: Pressure,
    side: Length,
    n: Ratio,
    k_c: CohesiveModulus,
    k_phi: FrictionalModulus,
) -> Length {
    sinkage::sinkage(soil(n, k_c, k_phi), side, pressure)
}

fn compaction(
    count: Ratio,
    width: Option<Length>,
    side: Length,
    depth: Length,
    n: Ratio,
    k_c: CohesiveModulus,
    k_phi: FrictionalModulus,
) -> Result<Force, Fault> {
    if count == Ratio::ZERO {
        return Err(Impossible::NoTracks.into());
    }
    let width = width.ok_or_else(|| Fault::Needs(vec![TRACK_WIDTH.any()]))?;
    Ok(count * resistance::compaction(soil(n, k_c, k_phi), side, width, depth))
}
