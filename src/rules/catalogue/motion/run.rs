//! Getting up to speed.

use std::cell::Cell;

use crate::physics::Impossible;
use crate::physics::motion::{self, Drive, Run};
use crate::quantity::catalogue::machine::{GRAVITY, MASS};
use crate::quantity::catalogue::motion::*;
use crate::quantity::{Force, Length, Mass, Power, Speed, Time};
use crate::rules::{Caution, Fault, Maybe, Rule};

use super::limits::any_limit;
use super::resistance::NO_DRAG;

const STEP_BY_STEP: &str = "Newton's second law added up over the speed; T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2 (from memory)";
const POWER_ALONE: &[&str] = &[
    "All the power goes into speed and height: no resistance, no slip, no air.",
    "The full power is there from the start, which would need an unlimited force at rest.",
];
const UP_7_4: &str = "OpenStax, University Physics Volume 1, section 7.4";

const NO_GRIP: Caution = Caution {
    when: |values| values.si(THRUST_ALLOWED).is_none(),
    says: "Grip and balance are not known, so the start is quicker here than on the ground.",
};

const NO_FORCE: Caution = Caution {
    when: |values| values.si(THRUST_ALLOWED).is_none() && values.si(TORQUE_FORCE).is_none(),
    says: "With power alone the first moments have no limit: say the torque or the grip.",
};

/// What a run-up takes into account.
const RUN_UP: RunUp = (
    Maybe(DRIVE_POWER),
    Maybe(TORQUE_FORCE),
    Maybe(THRUST_ALLOWED),
    STEADY_RESISTANCE,
    Maybe(TARGET_DRAG),
    MASS,
    EQUIVALENT_MASS,
    TARGET_SPEED,
);

type Id<Q> = crate::quantity::Id<Q>;
type RunUp = (
    Maybe<Id<Power>>,
    Maybe<Id<Force>>,
    Maybe<Id<Force>>,
    Id<Force>,
    Maybe<Id<Force>>,
    Id<Mass>,
    Id<Mass>,
    Id<Speed>,
);

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(RUN_UP_TIME, RUN_UP, run_up_time)
            .title("Small steps of speed, each with its own acceleration")
            .formula(r"\q{run-up-time} = \int_0^{\q{target-speed}} \dfrac{dv}{a}, \; a = \min \left( \dfrac{\min \left( \frac{\q{drive-power}}{v}, \, \q{torque-force} \right) - F}{\q{equivalent-mass}}, \; \dfrac{\q{thrust-allowed} - F}{\q{mass}} \right), \; F = \q{steady-resistance} + \q{target-drag} \dfrac{v^2}{\q{target-speed}^2}")
            .assumes(&[
                "Full power or full torque from the start to the end, whichever is less; no time for gear changes.",
                "A limit that is not known does not count.",
            ])
            .holds("Driving straight on, without slip.")
            .source(STEP_BY_STEP)
            .cautions(&[NO_FORCE, NO_GRIP, NO_DRAG]),
        Rule::new(RUN_UP_DISTANCE, RUN_UP, run_up_distance)
            .title("Small steps of speed, each with its own distance")
            .formula(r"\q{run-up-distance} = \int_0^{\q{target-speed}} \dfrac{v \, dv}{a}, \; a = \min \left( \dfrac{\min \left( \frac{\q{drive-power}}{v}, \, \q{torque-force} \right) - F}{\q{equivalent-mass}}, \; \dfrac{\q{thrust-allowed} - F}{\q{mass}} \right), \; F = \q{steady-resistance} + \q{target-drag} \dfrac{v^2}{\q{target-speed}^2}")
            .assumes(&[
                "Full power or full torque from the start to the end, whichever is less; no time for gear changes.",
                "A limit that is not known does not count.",
            ])
            .holds("Driving straight on, without slip.")
            .source(STEP_BY_STEP)
            .cautions(&[NO_FORCE, NO_GRIP, NO_DRAG]),
        Rule::new(MEAN_ACCELERATION, (TARGET_SPEED, RUN_UP_TIME), motion::mean_acceleration)
            .title("Speed over time")
            .formula(r"\q{mean-acceleration} = \dfrac{\q{target-speed}}{\q{run-up-time}}")
            .assumes(&["From rest."])
            .holds("A mean: the start is harder, the end gentler.")
            .source("OpenStax, University Physics Volume 1, section 3.3"),
        Rule::new(RUN_UP_POWER, (EQUIVALENT_MASS, TARGET_SPEED, STEADY_RESISTANCE, RUN_UP_DISTANCE, RUN_UP_TIME), motion::mean_power)
            .title("Work over time")
            .formula(r"\q{run-up-power} = \dfrac{\frac{1}{2} \, \q{equivalent-mass} \cdot \q{target-speed}^2 + \q{steady-resistance} \cdot \q{run-up-distance}}{\q{run-up-time}}")
            .assumes(&["From rest; the work against the air is left out."])
            .holds("A mean over the run; the peak is higher.")
            .source(UP_7_4),
        Rule::new(THRUST_NEEDED, (EQUIVALENT_MASS, WANTED_ACCELERATION, DRIVING_RESISTANCE), motion::thrust_for)
            .title("Mass times acceleration, and what holds back")
            .formula(r"\q{thrust-needed} = \q{equivalent-mass} \cdot \q{wanted-acceleration} + \q{driving-resistance}")
            .assumes(&["Everything turns in step with the ground."])
            .holds("Any speed, straight on.")
            .source("Newton's second law, OpenStax, University Physics Volume 1, section 5.3"),
        Rule::new(POWER_TIME, (EQUIVALENT_MASS, TARGET_SPEED, MASS, RISE, GRAVITY, DRIVE_POWER), motion::constant_power_time)
            .title("Energy over power")
            .formula(r"\q{power-time} = \dfrac{\frac{1}{2} \, \q{equivalent-mass} \cdot \q{target-speed}^2 + \q{mass} \cdot \q{gravity} \cdot \q{rise}}{\q{drive-power}}")
            .assumes(POWER_ALONE)
            .holds("A bound: no machine with that power is quicker.")
            .source(UP_7_4),
        Rule::new(POWER_DISTANCE, (DRIVE_POWER, EQUIVALENT_MASS, POWER_TIME), motion::constant_power_distance)
            .title("Distance at constant power")
            .formula(r"\q{power-distance} = \sqrt{\dfrac{8 \, \q{drive-power}}{9 \, \q{equivalent-mass}}} \; \q{power-time}^{3/2}")
            .assumes(POWER_ALONE)
            .holds("On the level, from rest.")
            .source(UP_7_4)
            .cautions(&[Caution {
                when: |values| values.si(RISE) > Some(0.0),
                says: "The rise counts in the time, not in this distance: uphill it is less.",
            }]),
    ]
}

#[expect(clippy::too_many_arguments, reason = "one argument for each input of the rule")]
fn run_up(
    power: Option<Power>,
    torque_force: Option<Force>,
    thrust_limit: Option<Force>,
    resistance: Force,
    drag: Option<Force>,
    mass: Mass,
    equivalent_mass: Mass,
    target: Speed,
) -> Result<Run, Fault> {
    if power.is_none() && torque_force.is_none() && thrust_limit.is_none() {
        return Err(any_limit());
    }
    let drive = Drive { power, torque_force, thrust_limit, resistance, mass, equivalent_mass };
    Ok(solved(Asked { drive, target, drag: drag.unwrap_or_default() })?)
}

/// What a run-up is solved from.
#[derive(Clone, Copy, PartialEq)]
struct Asked {
    drive: Drive,
    target: Speed,
    drag: Force,
}

/// Time and distance come out of one solution, and two rules ask for it in a pass: the first leaves
/// it here for the second, which takes it away.
fn solved(asked: Asked) -> Result<Run, Impossible> {
    thread_local! {
        static LEFT: Cell<Option<(Asked, Result<Run, Impossible>)>> = const { Cell::new(None) };
    }
    match LEFT.take() {
        Some((left, run)) if left == asked => run,
        _ => {
            let run = motion::run_up(&asked.drive, asked.target, asked.drag);
            LEFT.set(Some((asked, run)));
            run
        }
    }
}

macro_rules! of_run_up {
    ($name:ident, $field:ident, $measure:ty) => {
        #[expect(clippy::too_many_arguments, reason = "one argument for each input of the rule")]
        fn $name(
            power: Option<Power>,
            torque_force: Option<Force>,
            thrust_limit: Option<Force>,
            resistance: Force,
            drag: Option<Force>,
            mass: Mass,
            equivalent_mass: Mass,
            target: Speed,
        ) -> Result<$measure, Fault> {
            run_up(
                power,
                torque_force,
                thrust_limit,
                resistance,
                drag,
                mass,
                equivalent_mass,
                target,
            )
            .map(|run| run.$field)
        }
    };
}

of_run_up!(run_up_time, time, Time);
of_run_up!(run_up_distance, distance, Length);
