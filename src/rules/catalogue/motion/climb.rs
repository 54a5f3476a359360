//! The steepest slope at a speed, how fast it gains height, and where grip and power change places.

use uom::ConstZero;

use crate::physics::{Impossible, motion};
use crate::quantity::catalogue::balance::FRONT_LIFT_LIMIT;
use crate::quantity::catalogue::ground::{GRIP_COEFFICIENT, ROLLING_COEFFICIENT};
use crate::quantity::catalogue::machine::WEIGHT;
use crate::quantity::catalogue::motion::*;
use crate::quantity::catalogue::traction::{DRIVEN_SHARE, GRIP_PUSH};
use crate::quantity::{Angle, Force, Measure, Power, Ratio, Speed};
use crate::rules::{Caution, Fault, Maybe, Rule, Values};

use super::super::common::{always, exceeds};
use super::limits::UNKNOWN;
use super::resistance::NO_DRAG;

const UP_7_4: &str = "OpenStax, University Physics Volume 1, section 7.4";

/// What ends a climb.
#[derive(Clone, Copy, PartialEq)]
enum End {
    Drive,
    Grip,
    Balance,
}

const ENDED_BY: [Caution; 3] = [
    Caution {
        when: |values| ended_by(values) == Some(End::Drive),
        says: "Power or torque ends it: a lower speed, a lower gear or more of them takes it up steeper.",
    },
    Caution {
        when: |values| ended_by(values) == Some(End::Grip),
        says: "The grip ends it: more power or torque only makes it slip.",
    },
    Caution {
        when: |values| ended_by(values) == Some(End::Balance),
        says: "The balance ends it: steeper than this the front lifts and it goes over backwards.",
    },
];

const NO_GRIP: Caution = Caution {
    when: |values| values.si(GRIP_COEFFICIENT).is_none(),
    says: "The grip is not known, so it is not counted as a limit.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            CLIMB_AT_SPEED,
            (
                Maybe(POWER_FORCE),
                Maybe(TORQUE_FORCE),
                Maybe(GRIP_COEFFICIENT),
                DRIVEN_SHARE,
                Maybe(FRONT_LIFT_LIMIT),
                Maybe(AIR_DRAG),
                ROLLING_COEFFICIENT,
                WEIGHT,
            ),
            climb,
        )
        .title("The slope on which drive, grip or balance gives out first")
        .formula(r"\q{climb-at-speed} = \min \left( \arcsin \dfrac{\min (\q{power-force}, \, \q{torque-force}) - \q{air-drag}}{\q{weight} \sqrt{1 + \q{rolling-coefficient}^2}} - \arctan \q{rolling-coefficient}, \; a(\q{grip-coefficient} \cdot \q{driven-share} - \q{rolling-coefficient}), \; a(\q{front-lift-limit}) \right), \; a(k) = \arctan k - \arcsin \dfrac{\q{air-drag}}{\q{weight} \sqrt{1 + k^2}}")
        .assumes(&[
            "A limit that is not known does not count.",
            "Grip and rolling resistance go with the load, which a slope makes less.",
        ])
        .holds("A steady climb straight up at the driving speed, on the ground of the tests.")
        .source("Force balance, F. L. Mannering and S. S. Washburn, Principles of Highway Engineering and Traffic Analysis, chapter 2")
        .cautions(&[
            ENDED_BY[0],
            ENDED_BY[1],
            ENDED_BY[2],
            UNKNOWN[0],
            UNKNOWN[1],
            NO_GRIP,
            NO_DRAG,
            Caution {
                when: always,
                says: "A climbing figure is no permission: a bump, a rope or a jerk tips it earlier, and local rules and licensed practice decide.",
            },
        ]),
        Rule::new(CLIMB_RATE, (DRIVE_POWER, WEIGHT), motion::climb_rate)
            .title("Power over weight")
            .formula(r"\q{climb-rate} = \dfrac{\q{drive-power}}{\q{weight}}")
            .assumes(&["All of the power lifts: nothing rolls, slips or pushes air."])
            .holds("A bound: rolling and slip leave less, and grip sets how steep the way may be.")
            .source(UP_7_4),
        Rule::new(GRIP_POWER_SPEED, (DRIVE_POWER, GRIP_PUSH, Maybe(TORQUE_FORCE)), grip_power_speed)
            .title("Power over grip")
            .formula(r"\q{grip-power-speed} = \dfrac{\q{drive-power}}{\q{grip-push}}")
            .assumes(&["The full power is there at that speed: the gearing fits."])
            .holds("Straight on; on a slope the grip is less and the speed higher.")
            .source(UP_7_4)
            .cautions(&[Caution {
                when: |values| exceeds(values, GRIP_PUSH, TORQUE_FORCE),
                says: "The torque gives less than the grip allows, so below this speed the torque sets the thrust and the tracks never spin.",
            }]),
    ]
}

/// The torque does not count, but decides what is said.
fn grip_power_speed(power: Power, grip: Force, _: Option<Force>) -> Result<Speed, Impossible> {
    motion::power_meets(power, grip)
}

/// The slope at which each known limit gives out, or why it never does.
fn ends(
    drive: Option<Force>,
    grip: Option<Ratio>,
    lift: Option<Ratio>,
    drag: Force,
    rolling: Ratio,
    weight: Force,
) -> [Option<(Result<Angle, Impossible>, End)>; 3] {
    [
        drive.map(|force| (motion::slope_by_thrust(force, drag, rolling, weight), End::Drive)),
        grip.map(|grip| (motion::slope_by_load(grip - rolling, drag, weight), End::Grip)),
        lift.map(|lift| (motion::slope_by_load(lift, drag, weight), End::Balance)),
    ]
}

/// The smallest of them; a limit that any slope leaves intact counts only when it is alone.
fn first(
    ends: [Option<(Result<Angle, Impossible>, End)>; 3],
) -> Option<Result<(Angle, End), Impossible>> {
    let mut first: Option<Result<(Angle, End), Impossible>> = None;
    for (slope, end) in ends.into_iter().flatten() {
        first = Some(match (slope, first) {
            (Err(why), _) if why != Impossible::ClimbsAnything => return Some(Err(why)),
            (Err(why), None) => Err(why),
            (Err(_), Some(known)) => known,
            (Ok(slope), Some(Ok(known))) if known.0 <= slope => Ok(known),
            (Ok(slope), _) => Ok((slope, end)),
        });
    }
    first
}

fn smaller(power: Option<Force>, torque: Option<Force>) -> Option<Force> {
    match (power, torque) {
        (Some(power), Some(torque)) => Some(power.min(torque)),
        (power, torque) => power.or(torque),
    }
}

#[expect(clippy::too_many_arguments, reason = "one argument for each input of the rule")]
fn climb(
    power: Option<Force>,
    torque: Option<Force>,
    grip: Option<Ratio>,
    share: Ratio,
    lift: Option<Ratio>,
    drag: Option<Force>,
    rolling: Ratio,
    weight: Force,
) -> Result<Angle, Fault> {
    let grip = grip.map(|grip| grip * share);
    let drag = drag.unwrap_or(Force::ZERO);
    match first(ends(smaller(power, torque), grip, lift, drag, rolling, weight)) {
        Some(slope) => Ok(slope?.0),
        None => Err(Fault::NeedsOneOf(vec![
            POWER_FORCE.any(),
            TORQUE_FORCE.any(),
            GRIP_COEFFICIENT.any(),
        ])),
    }
}

fn ended_by(values: &Values) -> Option<End> {
    let grip = values.si(GRIP_COEFFICIENT).zip(values.si(DRIVEN_SHARE));
    let ends = ends(
        smaller(values.get(POWER_FORCE), values.get(TORQUE_FORCE)),
        grip.map(|(grip, share)| Ratio::from_si(grip * share)),
        values.get(FRONT_LIFT_LIMIT),
        values.get(AIR_DRAG).unwrap_or(Force::ZERO),
        values.get(ROLLING_COEFFICIENT)?,
        values.get(WEIGHT)?,
    );
    // Whatever stands alone needs no naming: the caution about what is unknown says it.
    (ends.iter().flatten().count() > 1).then_some(first(ends)?.ok()?.1)
}
