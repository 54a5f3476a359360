//! How much ground the machine presses on.

use uom::ConstZero;

use crate::physics::running_gear;
use crate::quantity::catalogue::machine::GROUND_FORCE;
use crate::quantity::catalogue::running_gear::*;
use crate::quantity::{Area, Id, Length, Ratio};
use crate::rules::{Caution, Fault, Maybe, Origin, Rule, Values};

const FLAT: &[&str] = &["The whole flat bears on the ground, and all of them are alike."];
const RECTANGLE: &str = "Area of a rectangle; nominal contact area in J. Y. Wong, Theory of Ground Vehicles, chapter 2 (from memory)";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(TRACK_CONTACT_AREA, (TRACK_COUNT, Maybe(TRACK_WIDTH), Maybe(CONTACT_LENGTH)), track_area)
            .title("Every track presses with its width times its flat length")
            .formula(r"\q{track-contact-area} = \q{track-count} \cdot \q{track-width} \cdot \q{contact-length}")
            .assumes(FLAT)
            .holds("Soft ground that meets the belt between the road wheels; a hard floor touches only under them.")
            .source(RECTANGLE),
        Rule::new(WHEEL_PATCH_LENGTH, (WHEEL_SQUASH, WHEEL_DIAMETER), running_gear::wheel_patch_length)
            .title("A squashed wheel is flat over a chord")
            .formula(r"\q{wheel-patch-length} = 2 \sqrt{\q{wheel-diameter} \cdot \q{wheel-squash} - \q{wheel-squash}^2}")
            .assumes(&["The rest of the wheel stays round: a real tyre bulges, and its patch is a little shorter."])
            .holds("Firm ground and a squash of less than half the diameter.")
            .source("Chord of a circular segment, Machinery's Handbook, Geometry (from memory)"),
        Rule::new(WHEEL_AREA_BY_SQUASH, (WHEEL_COUNT, WHEEL_WIDTH, WHEEL_PATCH_LENGTH), running_gear::flat_area)
            .title("Every wheel presses with its width times its patch length")
            .formula(r"\q{wheel-area-by-squash} = \q{wheel-count} \cdot \q{wheel-width} \cdot \q{wheel-patch-length}")
            .assumes(&["The patch is a rectangle, and all wheels are alike and squash alike."])
            .holds("Wide, flat tyres; a round-shouldered tyre touches less.")
            .source("Area of a rectangle"),
        Rule::new(WHEEL_AREA_BY_INFLATION, (INFLATION_PRESSURE, WHEEL_LOAD_SHARE, GROUND_FORCE), running_gear::area_by_inflation)
            .title("The air in the tyres carries the load")
            .formula(r"\q{wheel-area-by-inflation} = \dfrac{\q{wheel-load-share} \cdot \q{ground-force}}{\q{inflation-pressure}}")
            .assumes(&["The air carries the whole load. A stiff carcass carries part of it, so the real patch is smaller and presses harder."])
            .holds("Soft-walled tyres on firm ground, well filled or not.")
            .source("J. Y. Wong, Theory of Ground Vehicles, chapter 2, inflation and carcass pressure (from memory)")
            .cautions(&[Caution {
                when: share_unsaid,
                says: "Tracks or skis carry part of the load too; say what share of it is on the wheels.",
            }]),
        Rule::new(WHEEL_CONTACT_AREA, (WHEEL_COUNT, Maybe(WHEEL_AREA_BY_SQUASH), Maybe(WHEEL_AREA_BY_INFLATION)), wheel_area)
            .title("Measured squash first, inflation else")
            .formula(r"\q{wheel-contact-area} = \begin{cases} 0 & \text{if } \q{wheel-count} = 0 \\ \q{wheel-area-by-squash} & \text{if the squash is known} \\ \q{wheel-area-by-inflation} & \text{else} \end{cases}")
            .assumes(&["A squash measured under load says more than the gauge, because it counts the carcass too."])
            .holds("Wheels that carry the machine on firm or soft ground without sinking far.")
            .source("Common practice, no published source")
            .cautions(&[Caution {
                when: wheel_ways_differ,
                says: "The squash and the inflation pressure give contact areas more than 30 % apart; measure both again. The squash is used.",
            }]),
        Rule::new(SKI_CONTACT_AREA, (SKI_COUNT, Maybe(SKI_WIDTH), Maybe(SKI_LENGTH)), ski_area)
            .title("Every ski presses with its width times its flat length")
            .formula(r"\q{ski-contact-area} = \q{ski-count} \cdot \q{ski-width} \cdot \q{ski-length}")
            .assumes(FLAT)
            .holds("Skis that lie flat; a turned-up tip does not count until it sinks.")
            .source(RECTANGLE),
        Rule::new(CONTACT_AREA, (TRACK_CONTACT_AREA, WHEEL_CONTACT_AREA, SKI_CONTACT_AREA), running_gear::contact_area)
            .title("All that touches the ground, added up")
            .formula(r"\q{contact-area} = \q{track-contact-area} + \q{wheel-contact-area} + \q{ski-contact-area}")
            .assumes(&["Everything on the list touches at once."])
            .holds("A machine that stands on all of its running gear.")
            .source("Sum of areas"),
    ]
}

fn track_area(count: Ratio, width: Option<Length>, length: Option<Length>) -> Result<Area, Fault> {
    flat_area(count, (TRACK_WIDTH, width), (CONTACT_LENGTH, length))
}

fn ski_area(count: Ratio, width: Option<Length>, length: Option<Length>) -> Result<Area, Fault> {
    flat_area(count, (SKI_WIDTH, width), (SKI_LENGTH, length))
}

/// Where there are none, their sizes are not asked for.
fn flat_area(
    count: Ratio,
    width: (Id<Length>, Option<Length>),
    length: (Id<Length>, Option<Length>),
) -> Result<Area, Fault> {
    match (width.1, length.1) {
        _ if count == Ratio::ZERO => Ok(Area::ZERO),
        (Some(width), Some(length)) => Ok(running_gear::flat_area(count, width, length)),
        _ => Err(Fault::Needs(
            [width, length]
                .iter()
                .filter(|(_, size)| size.is_none())
                .map(|(id, _)| id.any())
                .collect(),
        )),
    }
}

fn wheel_area(
    count: Ratio,
    by_squash: Option<Area>,
    by_inflation: Option<Area>,
) -> Result<Area, Fault> {
    if count == Ratio::ZERO {
        return Ok(Area::ZERO);
    }
    let area = by_squash.or(by_inflation).ok_or_else(|| {
        Fault::NeedsOneOf(vec![WHEEL_AREA_BY_SQUASH.any(), WHEEL_AREA_BY_INFLATION.any()])
    })?;
    Ok(running_gear::wheel_area(area)?)
}

fn share_unsaid(values: &Values) -> bool {
    let others = [TRACK_COUNT, SKI_COUNT].iter().any(|id| values.si(*id) > Some(0.0));
    others && values.origin(WHEEL_LOAD_SHARE) == Some(Origin::Assumed)
}

fn wheel_ways_differ(values: &Values) -> bool {
    match (values.si(WHEEL_AREA_BY_SQUASH), values.si(WHEEL_AREA_BY_INFLATION)) {
        (Some(squash), Some(inflation)) => {
            values.si(WHEEL_COUNT) > Some(0.0) && (squash - inflation).abs() > 0.3 * squash
        }
        _ => false,
    }
}
