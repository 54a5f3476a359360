//! Whether a tracked machine is too long to steer.

use super::super::common::exceeds;
use super::GRIP_FOR_SIDEWAYS;
use crate::physics::turning;
use crate::quantity::Ratio;
use crate::quantity::catalogue::balance::GAUGE;
use crate::quantity::catalogue::ground::{GRIP_COEFFICIENT, ROLLING_COEFFICIENT};
use crate::quantity::catalogue::running_gear::CONTACT_LENGTH;
use crate::quantity::catalogue::turning::*;
use crate::rules::{Caution, Fault, Maybe, Rule};

const WONG_6: &str = "Steerability of tracked vehicles, J. Y. Wong, Theory of Ground Vehicles, chapter 6 (from memory)";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(STEER_RATIO_LIMIT, (GRIP_COEFFICIENT, ROLLING_COEFFICIENT, Maybe(SIDEWAYS_COEFFICIENT)), limit)
            .title("What grip leaves of rolling, against dragging sideways")
            .formula(r"\q{steer-ratio-limit} = \dfrac{2 \left( \q{grip-coefficient} - \q{rolling-coefficient} \right)}{\q{sideways-coefficient}}")
            .assumes(&[
                "The load is even on both tracks and along them; half the load grips under the outer track.",
                "Slow turning, the inner track rolling along; pushed-up earth is left out and makes it worse.",
            ])
            .holds("Two tracks that go on driving in the turn, on level ground.")
            .source(WONG_6)
            .cautions(&[GRIP_FOR_SIDEWAYS]),
        Rule::new(STEER_RATIO, (CONTACT_LENGTH, GAUGE, Maybe(STEER_RATIO_LIMIT)), ratio)
            .title("Length over width")
            .formula(r"\q{steer-ratio} = \dfrac{\q{contact-length}}{\q{gauge}}")
            .assumes(&["The whole contact length bears."])
            .holds("Two tracks.")
            .source(WONG_6)
            .cautions(&[Caution {
                when: |values| exceeds(values, STEER_RATIO, STEER_RATIO_LIMIT),
                says: "Longer than this ground lets it be: the outer track spins before the machine turns, unless the inner one is braked hard, which also stops the machine, or a part of the length lifts.",
            }]),
    ]
}

fn limit(grip: Ratio, rolling: Ratio, sideways: Option<Ratio>) -> Result<Ratio, Fault> {
    Ok(turning::steer_limit(grip, rolling, sideways.unwrap_or(grip))?)
}

/// The limit does not count, but decides what is said.
fn ratio(
    length: crate::quantity::Length,
    gauge: crate::quantity::Length,
    _: Option<Ratio>,
) -> Ratio {
    length / gauge
}
