//! Over the side: standing, on a side slope, in a turn.

use super::super::common::exceeds;
use crate::physics::{Impossible, balance};
use crate::quantity::catalogue::balance::*;
use crate::quantity::catalogue::ground::GRIP_COEFFICIENT;
use crate::quantity::catalogue::machine::*;
use crate::quantity::catalogue::motion::DRIVING_SPEED;
use crate::quantity::catalogue::turning::{SIDEWAYS_COEFFICIENT, TURN_RADIUS};
use crate::quantity::{Angle, Ratio};
use crate::rules::{Caution, Maybe, Rule, Values};

use super::super::turning::{GRIP_FOR_SIDEWAYS, sideways};

const NHTSA: &str = "Static stability factor, NHTSA report DOT HS 809 868";
const ATV: &str = "FME Inc., ATV Static Stability Tests (2007)";
const TIP_OR_SLIDE: &str = "D. Baker and W. Haynes, Engineering Statics: Open and Interactive, chapter 9; FME Inc., ATV Static Stability Tests (2007)";
const RIGID: &[&str] = &[
    "A rigid machine: soft tyres, springs and a load that shifts tip it 10 to 15 % earlier.",
    "It tips about the middle of the tracks or wheels of the low side; their outer edge adds a little.",
];
const GENTLE: &str = "Smooth ground; a rut, a stone or a kerb trips it long before.";

const KEEP_CLEAR: Caution = Caution {
    when: |values| values.si(SIDE_SLOPE) > Some(10.0_f64.to_radians()),
    says: "On a side slope keep everybody off the low side; the maker's slope limit and local rules go before this number.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(SIDE_ARM, (GAUGE, SIDE_OFFSET), balance::side_arm)
            .title("From the balance point to the nearer side")
            .formula(r"\q{side-arm} = \frac{1}{2} \q{gauge} - | \q{side-offset} |")
            .assumes(RIGID)
            .holds("Any machine with a left and a right support.")
            .source(NHTSA),
        Rule::new(STABILITY_FACTOR, (SIDE_ARM, CG_HEIGHT), balance::stability_factor)
            .title("Wide and low")
            .formula(r"\q{static-stability-factor} = \dfrac{\q{side-arm}}{\q{cg-height}}")
            .assumes(RIGID)
            .holds(GENTLE)
            .source(NHTSA),
        Rule::new(SIDE_TIP_ANGLE, (SIDE_ARM, CG_HEIGHT), balance::tip_angle)
            .title("The side slope on which the load passes the low side")
            .formula(r"\q{side-tip-angle} = \arctan \dfrac{\q{side-arm}}{\q{cg-height}}")
            .assumes(RIGID)
            .holds("Standing still on smooth ground.")
            .source(ATV)
            .cautions(&[Caution {
                when: |values| values.si(SIDE_ARM).is_some(),
                says: "A tilt test gives 10 to 15 % less than this; never find it out by driving.",
            }]),
        Rule::new(SIDE_SLOPE_DEMAND, (SIDE_SLOPE,), tangent)
            .title("The slope's pull to the low side")
            .formula(r"\q{side-slope-demand} = \tan \q{side-slope}")
            .assumes(RIGID)
            .holds("Standing, or driving straight along the slope.")
            .source("OpenStax, University Physics Volume 1, section 5.6"),
        Rule::new(SIDE_SLOPE_MARGIN, (STABILITY_FACTOR, SIDE_SLOPE_DEMAND, Maybe(GRIP_COEFFICIENT)), side_margin)
            .title("What the balance holds over what the slope asks")
            .formula(r"\q{side-slope-margin} = \dfrac{\q{static-stability-factor}}{\q{side-slope-demand}}")
            .assumes(RIGID)
            .holds(GENTLE)
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[
                Caution {
                    when: |values| exceeds(values, SIDE_SLOPE_DEMAND, STABILITY_FACTOR),
                    says: "The machine tips over to the low side.",
                },
                Caution { when: slides_on_side_slope, says: "It slides down sideways before it tips." },
                KEEP_CLEAR,
            ]),
        Rule::new(SIDE_LIMIT, (STABILITY_FACTOR, Maybe(SIDEWAYS_COEFFICIENT), Maybe(GRIP_COEFFICIENT)), side_limit)
            .title("It tips or slides, whichever comes first")
            .formula(r"\q{side-limit} = \min \left( \q{static-stability-factor}, \; \q{sideways-coefficient} \right)")
            .assumes(RIGID)
            .holds("Smooth ground: a machine that slides into a rut or a kerb tips all the same.")
            .source(TIP_OR_SLIDE)
            .cautions(&[
                Caution { when: |values| tips_first(values) == Some(true), says: "It tips before it slides." },
                Caution { when: |values| tips_first(values) == Some(false), says: "It slides before it tips, until something trips it." },
                Caution { when: |values| tips_first(values).is_none(), says: "The grip is not known, so only tipping counts." },
                GRIP_FOR_SIDEWAYS,
            ]),
        Rule::new(SIDE_LIMIT_SLOPE, (SIDE_LIMIT,), arc_tangent)
            .title("The same limit as a side slope")
            .formula(r"\q{side-limit-slope} = \arctan \q{side-limit}")
            .assumes(RIGID)
            .holds("Standing still on smooth ground.")
            .source(TIP_OR_SLIDE)
            .cautions(&[Caution {
                when: |values| values.si(SIDE_LIMIT) > Some(30.0_f64.to_radians().tan()),
                says: "Snow on slopes over about 30° can slide: read the local avalanche bulletin and keep off when in doubt.",
            }]),
        Rule::new(TIP_SPEED, (STABILITY_FACTOR, GRAVITY, TURN_RADIUS), balance::turn_speed)
            .title("Where the turn pulls as hard as the balance holds")
            .formula(r"\q{tip-speed} = \sqrt{\q{static-stability-factor} \cdot \q{gravity} \cdot \q{turn-radius}}")
            .assumes(RIGID)
            .holds("A steady turn on level ground with grip enough.")
            .source(ATV),
        Rule::new(TURN_SPEED_LIMIT, (SIDE_LIMIT, GRAVITY, TURN_RADIUS), balance::turn_speed)
            .title("The fastest it gets round")
            .formula(r"\q{turn-speed-limit} = \sqrt{\q{side-limit} \cdot \q{gravity} \cdot \q{turn-radius}}")
            .assumes(RIGID)
            .holds("A steady turn on level, smooth ground.")
            .source("OpenStax, College Physics 2e, section 6.3"),
        Rule::new(TURN_MARGIN, (TURN_SPEED_LIMIT, DRIVING_SPEED), balance::speed_margin)
            .title("The fastest speed over yours")
            .formula(r"\q{turn-margin} = \dfrac{\q{turn-speed-limit}}{\q{driving-speed}}")
            .assumes(RIGID)
            .holds("A steady turn on level, smooth ground.")
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[Caution {
                when: |values| exceeds(values, DRIVING_SPEED, TURN_SPEED_LIMIT),
                says: "Too fast for this turn: it tips or slides.",
            }]),
        Rule::new(TIPPING_PUSH, (WEIGHT, SIDE_ARM, PUSH_HEIGHT), balance::tipping_push)
            .title("Weight by its arm against push by its height")
            .formula(r"\q{tipping-push} = \dfrac{\q{weight} \cdot \q{side-arm}}{\q{push-height}}")
            .assumes(RIGID)
            .holds("Level ground, a slow push; it slides first if the grip is less.")
            .source("D. Baker and W. Haynes, Engineering Statics: Open and Interactive, chapter 7"),
    ]
}

fn tangent(angle: Angle) -> Ratio {
    angle.tan()
}

fn arc_tangent(ratio: Ratio) -> Angle {
    ratio.atan()
}

/// The grip does not count, but decides whether it slides first.
fn side_margin(factor: Ratio, demand: Ratio, _: Option<Ratio>) -> Result<Ratio, Impossible> {
    balance::margin(factor, demand)
}

fn side_limit(factor: Ratio, side: Option<Ratio>, grip: Option<Ratio>) -> Ratio {
    side.or(grip).map_or(factor, |grip| balance::smaller(factor, grip))
}

/// Whether it tips before it slides; none while the grip is not known.
fn tips_first(values: &Values) -> Option<bool> {
    Some(values.si(STABILITY_FACTOR)? <= sideways(values)?)
}

fn slides_on_side_slope(values: &Values) -> bool {
    match (values.si(SIDE_SLOPE_DEMAND), sideways(values)) {
        (Some(asked), Some(grip)) => asked > grip && tips_first(values) == Some(false),
        _ => false,
    }
}
