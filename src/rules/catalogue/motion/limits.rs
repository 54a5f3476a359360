//! The smallest limit, and which one it is.

use crate::physics::Impossible;
use crate::physics::drive::supplied;
use crate::physics::motion::{self, Drive, Limit};
use crate::quantity::catalogue::drive::{ENGINE_GROUND_SPEED, LINE_PUSH, UNLOADED_SPEED};
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::catalogue::motion::*;
use crate::quantity::catalogue::traction::GRIP_PUSH;
use crate::quantity::{Acceleration, Area, Density, Force, Id, Mass, Power, Speed};
use crate::rules::{Caution, Fault, Maybe, Rule, Values};

use super::drive::any_unknown;
use super::resistance::NO_DRAG;

const GILLESPIE_2: &str = "Power-limited and traction-limited acceleration, T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2 (from memory)";
const GILLESPIE_4: &str = "Power and force balance, T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 4 (from memory)";

/// Names the limit that counts for the acceleration at the driving speed.
pub(super) const WHICH_LIMIT: [Caution; 4] = [
    Caution {
        when: |values| at_speed(values) == Some(Limit::Power),
        says: "The power limits it: less resistance or more power makes it quicker.",
    },
    Caution {
        when: |values| at_speed(values) == Some(Limit::Torque),
        says: "The torque limits it: a lower gear or more torque makes it quicker.",
    },
    Caution {
        when: |values| at_speed(values) == Some(Limit::Ground) && !front_lifts_first(values),
        says: "The grip limits it: more torque or power only makes it slip.",
    },
    Caution {
        when: |values| at_speed(values) == Some(Limit::Ground) && front_lifts_first(values),
        says: "The front lifts first: ask for more and it goes over backwards.",
    },
];

pub(super) const UNKNOWN: [Caution; 3] = [
    Caution {
        when: |values| any_unknown(values, &[DRIVE_POWER.any()]),
        says: "The power is not known, so it is not counted as a limit.",
    },
    Caution {
        when: |values| any_unknown(values, &[TORQUE_FORCE.any()]),
        says: "The torque is not known, so it is not counted as a limit.",
    },
    Caution {
        when: |values| any_unknown(values, &[GRIP_PUSH.any()]),
        says: "The grip is not known, so it is not counted as a limit.",
    },
];

/// Riding and running a machine at speed can hurt.
const FAST: Caution = Caution {
    when: |values| {
        let ends = ENDS.map(|id| values.si(id));
        ends.iter().flatten().copied().reduce(f64::min) > Some(7.0)
    },
    says: "At such a speed a ridden machine needs brakes, a helmet and a clear way, and local rules say where it may go.",
};

const LIMITED: &[Caution] = &[
    WHICH_LIMIT[0],
    WHICH_LIMIT[1],
    WHICH_LIMIT[2],
    WHICH_LIMIT[3],
    UNKNOWN[0],
    UNKNOWN[1],
    UNKNOWN[2],
    NO_DRAG,
];

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(THRUST_ALLOWED, (Maybe(GRIP_PUSH), Maybe(FRONT_LIFT_FORCE)), thrust_limit)
            .title("Grip or balance, whichever gives out first")
            .formula(r"\q{thrust-allowed} = \min \left( \q{grip-push}, \; \q{front-lift-force} \right)")
            .assumes(&["A limit that is not known does not count."])
            .holds("Driving straight on.")
            .source(GILLESPIE_2)
            .cautions(&[
                Caution { when: front_lifts_first, says: "The front lifts before the grip gives out." },
                UNKNOWN[2],
            ]),
        Rule::new(LARGEST_THRUST, (Maybe(TORQUE_FORCE), Maybe(THRUST_ALLOWED)), largest_thrust)
            .title("Torque or ground, whichever is smaller")
            .formula(r"\q{largest-thrust} = \min \left( \q{torque-force}, \; \q{thrust-allowed} \right)")
            .assumes(&["A limit that is not known does not count."])
            .holds("From rest and at low speed, where the power does not limit yet.")
            .source(GILLESPIE_2)
            .cautions(&[UNKNOWN[1], UNKNOWN[2]]),
        Rule::new(
            DRIVE_THRUST,
            (DRIVING_SPEED, Maybe(DRIVE_POWER), Maybe(TORQUE_FORCE), Maybe(THRUST_ALLOWED)),
            drive_thrust,
        )
        .title("The smallest limit at that speed")
        .formula(r"\q{drive-thrust} = \min \left( \dfrac{\q{drive-power}}{\q{driving-speed}}, \; \q{torque-force}, \; \q{thrust-allowed} \right)")
        .assumes(&["A limit that is not known does not count.", "A steady speed: rotating parts take nothing."])
        .holds("Driving straight on; slip is left out.")
        .source(GILLESPIE_2)
        .cautions(&[UNKNOWN[0], UNKNOWN[1], UNKNOWN[2]]),
        Rule::new(
            ACCELERATION,
            (
                DRIVING_SPEED,
                Maybe(DRIVE_POWER),
                Maybe(TORQUE_FORCE),
                Maybe(THRUST_ALLOWED),
                STEADY_RESISTANCE,
                Maybe(AIR_DRAG),
                MASS,
                EQUIVALENT_MASS,
            ),
            acceleration,
        )
        .title("The smallest of what power, torque, grip and balance allow")
        .formula(r"\q{acceleration} = \min \left( \dfrac{\min \left( \frac{\q{drive-power}}{\q{driving-speed}}, \, \q{torque-force} \right) - F}{\q{equivalent-mass}}, \; \dfrac{\q{thrust-allowed} - F}{\q{mass}} \right), \; F = \q{steady-resistance} + \q{air-drag}")
        .assumes(&[
            "A limit that is not known does not count.",
            "Driving straight on, without slip; load shift changes no grip.",
        ])
        .holds("Any speed; below zero it slows down.")
        .source(GILLESPIE_2)
        .cautions(LIMITED),
        Rule::new(POWER_TOP_SPEED, (DRIVE_POWER, STEADY_RESISTANCE, AIR_DENSITY, Maybe(DRAG_AREA)), power_top_speed)
            .title("Where the power just keeps up")
            .formula(r"\q{power-top-speed} = \dfrac{\q{drive-power}}{\q{steady-resistance} + \frac{1}{2} \, \q{air-density} \cdot \q{drag-area} \cdot \q{power-top-speed}^2}")
            .assumes(&["The full power is there at that speed: the gearing fits.", "The air is still."])
            .holds("Straight on without slip.")
            .source(GILLESPIE_4)
            .cautions(&[NO_DRAG]),
        Rule::new(DRAG_TOP_SPEED, (LARGEST_THRUST, STEADY_RESISTANCE, AIR_DENSITY, DRAG_AREA), motion::drag_top_speed)
            .title("Where the air takes all the thrust that is left")
            .formula(r"\q{drag-top-speed} = \sqrt{\dfrac{2 \left( \q{largest-thrust} - \q{steady-resistance} \right)}{\q{air-density} \cdot \q{drag-area}}}")
            .assumes(&["The thrust stays the same at every speed.", "The air is still."])
            .holds("Where power and gearing do not end it earlier.")
            .source("OpenStax, University Physics Volume 1, section 6.4"),
        Rule::new(
            GEARED_TOP_SPEED,
            (
                Maybe(UNLOADED_SPEED),
                Maybe(LINE_PUSH),
                Maybe(ENGINE_GROUND_SPEED),
                STEADY_RESISTANCE,
                AIR_DENSITY,
                Maybe(DRAG_AREA),
            ),
            geared_top_speed,
        )
        .title("Where the motors' line meets what holds back")
        .formula(r"\q{geared-top-speed} = \dfrac{2 \left( \q{line-push} - \q{steady-resistance} \right)}{b + \sqrt{b^2 + 2 \, \q{air-density} \cdot \q{drag-area} \left( \q{line-push} - \q{steady-resistance} \right)}}, \; b = \dfrac{\q{line-push}}{\q{unloaded-speed}}; \; \text{or} \; \q{engine-ground-speed}")
        .assumes(&[
            "Full throttle, pack warm; speed falls straight with torque.",
            "An engine is held at the speed its figures are for, as a governor does; where motors and an engine are both known, the motors count.",
        ])
        .holds("Straight on without slip; downhill it is the speed at which the motors hold the machine back.")
        .source("Speed-torque line, maxon motor, catalogue data of the EC 40 motors, 2013; force balance, T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 4 (from memory)")
        .cautions(&[NO_DRAG]),
        Rule::new(
            TOP_SPEED,
            (Maybe(POWER_TOP_SPEED), Maybe(DRAG_TOP_SPEED), Maybe(GEARED_TOP_SPEED)),
            top_speed,
        )
        .title("Power, drag or gearing, whichever ends it first")
        .formula(r"\q{top-speed} = \min \left( \q{power-top-speed}, \; \q{drag-top-speed}, \; \q{geared-top-speed} \right)")
        .assumes(&["A limit that is not known does not count."])
        .holds("Straight on without slip.")
        .source(GILLESPIE_4)
        .cautions(&[
            NO_DRAG,
            Caution { when: |values| ends_by(values, POWER_TOP_SPEED), says: "The power ends it." },
            Caution {
                when: |values| ends_by(values, DRAG_TOP_SPEED),
                says: "The thrust ends it: torque, grip or balance, not the power.",
            },
            Caution {
                when: |values| ends_by(values, GEARED_TOP_SPEED),
                says: "The gearing ends it: at that push the motor or engine turns no faster. A smaller gear ratio makes it quicker, until the power ends it.",
            },
            Caution {
                when: |values| any_unknown(values, &[GEARED_TOP_SPEED.any()]),
                says: "The gearing is not known, so it is not counted as a limit: a motor at its no-load speed ends it earlier.",
            },
            FAST,
        ]),
    ]
}

fn smallest(forces: impl IntoIterator<Item = Option<Force>>) -> Option<Force> {
    forces.into_iter().flatten().reduce(|a, b| if b < a { b } else { a })
}

fn thrust_limit(grip: Option<Force>, lift: Option<Force>) -> Result<Force, Fault> {
    smallest([grip, lift])
        .ok_or_else(|| Fault::NeedsOneOf(vec![GRIP_PUSH.any(), FRONT_LIFT_FORCE.any()]))
}

fn largest_thrust(torque: Option<Force>, limit: Option<Force>) -> Result<Force, Fault> {
    smallest([torque, limit])
        .ok_or_else(|| Fault::NeedsOneOf(vec![TORQUE_FORCE.any(), GRIP_PUSH.any()]))
}

/// What would do when no limit is known.
pub(super) fn any_limit() -> Fault {
    Fault::NeedsOneOf(vec![DRIVE_POWER.any(), TORQUE_FORCE.any(), GRIP_PUSH.any()])
}

pub(super) fn drive_thrust(
    speed: Speed,
    power: Option<Power>,
    torque: Option<Force>,
    limit: Option<Force>,
) -> Result<Force, Fault> {
    let by_power = power.map(|power| motion::force_at_speed(power, speed));
    match smallest([by_power.and_then(Result::ok), torque, limit]) {
        Some(force) => Ok(force),
        None if by_power.is_some() => Err(Impossible::AtRest.into()),
        None => Err(any_limit()),
    }
}

#[expect(clippy::too_many_arguments, reason = "one argument for each input of the rule")]
fn acceleration(
    speed: Speed,
    power: Option<Power>,
    torque_force: Option<Force>,
    thrust_limit: Option<Force>,
    resistance: Force,
    drag: Option<Force>,
    mass: Mass,
    equivalent_mass: Mass,
) -> Result<Acceleration, Fault> {
    let drive = Drive { power, torque_force, thrust_limit, resistance, mass, equivalent_mass };
    let drag = drag.unwrap_or_default();
    match drive.acceleration(speed, drag) {
        Some((acceleration, _)) => Ok(acceleration),
        None if power.is_some() => Err(Impossible::AtRest.into()),
        None => Err(any_limit()),
    }
}

/// What limits the acceleration at the driving speed.
fn at_speed(values: &Values) -> Option<Limit> {
    let drive = Drive {
        power: values.get(DRIVE_POWER),
        torque_force: values.get(TORQUE_FORCE),
        thrust_limit: values.get(THRUST_ALLOWED),
        resistance: values.get(STEADY_RESISTANCE)?,
        mass: values.get(MASS)?,
        equivalent_mass: values.get(EQUIVALENT_MASS)?,
    };
    let drag = values.get(AIR_DRAG).unwrap_or_default();
    drive.acceleration(values.get(DRIVING_SPEED)?, drag).map(|(_, limit)| limit)
}

const ENDS: [Id<Speed>; 3] = [POWER_TOP_SPEED, DRAG_TOP_SPEED, GEARED_TOP_SPEED];

/// Whether this is what ends the speed, another that would end it later being known too.
fn ends_by(values: &Values, end: Id<Speed>) -> bool {
    let known: Vec<(Id<Speed>, f64)> =
        ENDS.into_iter().filter_map(|id| Some((id, values.si(id)?))).collect();
    known.len() > 1
        && known
            .iter()
            .min_by(|a, b| a.1.total_cmp(&b.1))
            .is_some_and(|first| first.0.any() == end.any())
}

fn front_lifts_first(values: &Values) -> bool {
    match (values.si(FRONT_LIFT_FORCE), values.si(GRIP_PUSH)) {
        (Some(lift), Some(grip)) => lift < grip,
        (lift, _) => lift.is_some(),
    }
}

fn power_top_speed(
    power: Power,
    resistance: Force,
    density: Density,
    drag_area: Option<Area>,
) -> Result<Speed, Impossible> {
    motion::power_top_speed(power, resistance, density, drag_area.unwrap_or_default())
}

fn top_speed(
    by_power: Option<Speed>,
    by_drag: Option<Speed>,
    by_gearing: Option<Speed>,
) -> Result<Speed, Fault> {
    [by_power, by_drag, by_gearing]
        .into_iter()
        .flatten()
        .reduce(|a, b| if b < a { b } else { a })
        .ok_or_else(|| Fault::NeedsOneOf(ENDS.map(|id| id.any()).to_vec()))
}

fn geared_top_speed(
    unloaded: Option<Speed>,
    push: Option<Force>,
    engine: Option<Speed>,
    resistance: Force,
    density: Density,
    drag_area: Option<Area>,
) -> Result<Speed, Fault> {
    match (unloaded, push, engine) {
        (Some(unloaded), Some(push), _) => {
            let drag_area = drag_area.unwrap_or_default();
            Ok(supplied::geared_top_speed(unloaded, push, resistance, density, drag_area)?)
        }
        (.., Some(speed)) => Ok(speed),
        (_, push, None) => {
            let motors = if push.is_some() { UNLOADED_SPEED.any() } else { LINE_PUSH.any() };
            Err(Fault::NeedsOneOf(vec![motors, ENGINE_GROUND_SPEED.any()]))
        }
    }
}
