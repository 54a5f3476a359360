//! What pushes, and the masses it has to move.

use uom::ConstZero;

use crate::physics::drive::supplied;
use crate::physics::motion;
use crate::quantity::catalogue::balance::FRONT_LIFT_ACCELERATION;
use crate::quantity::catalogue::drive::{
    DISTANCE_PER_TURN, ENGINE_POWER, ENGINE_TORQUE, GEAR_EFFICIENCY, GEAR_RATIO, MOTOR_COUNT,
    PEAK_MOTOR_TORQUE, SUPPLIED_MOTOR_POWER,
};
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::catalogue::motion::*;
use crate::quantity::{Inertia, Length, Mass, Power, Ratio, Torque};
use crate::rules::{Caution, Fault, Maybe, Origin, Rule, Values};

const WONG_3: &str = "J. Y. Wong, Theory of Ground Vehicles, chapter 3 (from memory)";

const TRAIN: &str = "Power balance over the gears; any textbook of machine elements";

const SPIN_LEFT_OUT: Caution = Caution {
    when: |values| {
        [ROTOR_INERTIA, WHEEL_INERTIA].iter().all(|id| values.origin(*id) == Some(Origin::Assumed))
    },
    says: "Rotors and wheels are taken to weigh nothing when they spin up: say their inertia, or a geared machine comes out livelier than it is.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(DRIVE_RADIUS, (Maybe(DISTANCE_PER_TURN),), radius)
            .title("One turn rolls off the circumference")
            .formula(r"\q{drive-radius} = \dfrac{\q{distance-per-turn}}{2 \pi}")
            .assumes(&["Nothing slips on the ground."])
            .holds("The radius that rolls off: squash and belt thickness counted.")
            .source("Geometry"),
        Rule::new(
            DRIVE_TORQUE,
            (Maybe(PEAK_MOTOR_TORQUE), MOTOR_COUNT, Maybe(ENGINE_TORQUE), GEAR_RATIO, GEAR_EFFICIENCY),
            torque,
        )
        .title("The motors' peak torque, or the engine's, through the gears")
        .formula(r"\q{drive-torque} = \left( \q{motor-count} \cdot \q{peak-motor-torque} \; \text{or} \; \q{engine-torque} \right) \q{gear-ratio} \cdot \q{gear-efficiency}")
        .assumes(&["All motors at their peak at once; where motors and an engine are both known, the motors count."])
        .holds("For seconds from motors; from an engine, at its engine speed and full throttle.")
        .source(TRAIN),
        Rule::new(
            DRIVE_POWER,
            (Maybe(SUPPLIED_MOTOR_POWER), MOTOR_COUNT, Maybe(ENGINE_POWER), GEAR_EFFICIENCY),
            power,
        )
        .title("What motors or engine give, less what the gears lose")
        .formula(r"\q{drive-power} = \left( \q{motor-count} \cdot \q{supplied-motor-power} \; \text{or} \; \q{engine-power} \right) \q{gear-efficiency}")
        .assumes(&["The gearing lets the motor turn at the speed where it gives most; where motors and an engine are both known, the motors count."])
        .holds("The most, and from motors for seconds: for long runs say the power they stand.")
        .source(TRAIN)
        .cautions(&[Caution {
            when: |values| values.si(SUPPLIED_MOTOR_POWER).is_some(),
            says: "Motors give this for seconds only; how long they stand a load is a question of heat.",
        }]),
        Rule::new(POWER_TO_MASS, (DRIVE_POWER, MASS), motion::power_to_mass)
            .title("Power over mass")
            .formula(r"\q{power-to-mass} = \dfrac{\q{drive-power}}{\q{mass}}")
            .assumes(&["Power at the ground; a maker's figure at the motor or engine says more than arrives."])
            .holds("Any machine; it compares liveliness at speed, not pull from rest.")
            .source("The definition; M113 figures in R. P. Hunnicutt, Bradley"),
        Rule::new(ROTATING_MASS, (ROTOR_INERTIA, Maybe(GEAR_RATIO), WHEEL_INERTIA, Maybe(DRIVE_RADIUS)), rotating)
            .title("A rotor counts with the gear ratio squared")
            .formula(r"\q{rotating-mass} = \dfrac{\q{rotor-inertia} \cdot \q{gear-ratio}^2 + \q{wheel-inertia}}{\q{drive-radius}^2}")
            .assumes(&["Everything turns in step with the ground: no slip, no slack."])
            .holds("Any gear train of one ratio.")
            .source(WONG_3)
            .cautions(&[SPIN_LEFT_OUT]),
        Rule::new(EQUIVALENT_MASS, (MASS, ROTATING_MASS), motion::equivalent_mass)
            .title("What the drive feels")
            .formula(r"\q{equivalent-mass} = \q{mass} + \q{rotating-mass}")
            .assumes(&["Everything turns in step with the ground."])
            .holds("Speeding up and slowing down; at a steady speed rotating parts cost nothing.")
            .source("OpenStax, University Physics Volume 1, section 11.1"),
        Rule::new(MASS_FACTOR, (EQUIVALENT_MASS, MASS), motion::mass_factor)
            .title("Equivalent mass over mass")
            .formula(r"\q{mass-factor} = \dfrac{\q{equivalent-mass}}{\q{mass}}")
            .assumes(&["Everything turns in step with the ground."])
            .holds("Any machine; 1 when nothing spins.")
            .source("OpenStax, University Physics Volume 1, section 11.1"),
        Rule::new(CAR_MASS_FACTOR, (GEAR_RATIO,), motion::car_mass_factor)
            .title("What was fitted to cars")
            .formula(r"\q{car-mass-factor} = 1.04 + 0.0025 \, \q{gear-ratio}^2")
            .assumes(&["A car with a flywheel engine."])
            .holds("Cars only; for your machine use the inertia of its rotors.")
            .source(WONG_3),
        Rule::new(POWER_FORCE, (DRIVE_POWER, DRIVING_SPEED), motion::force_at_speed)
            .title("Power over speed")
            .formula(r"\q{power-force} = \dfrac{\q{drive-power}}{\q{driving-speed}}")
            .assumes(&["The full power is there at that speed."])
            .holds("Above rest; at rest torque or grip sets the force.")
            .source("OpenStax, University Physics Volume 1, section 7.4"),
        Rule::new(TORQUE_FORCE, (DRIVE_TORQUE, DRIVE_RADIUS), motion::torque_force)
            .title("Torque over radius")
            .formula(r"\q{torque-force} = \dfrac{\q{drive-torque}}{\q{drive-radius}}")
            .assumes(&["The torque is there at every speed; a motor gives less the faster it turns."])
            .holds("Slow driving, where the torque does not fall off yet.")
            .source("T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2 (from memory)"),
        Rule::new(FRONT_LIFT_FORCE, (MASS, FRONT_LIFT_ACCELERATION, STEADY_RESISTANCE), motion::front_lift_force)
            .title("The thrust that lifts the front")
            .formula(r"\q{front-lift-force} = \q{mass} \cdot \q{front-lift-acceleration} + \q{steady-resistance}")
            .assumes(&["The air pushes at about the height of the centre of gravity.", "What the motor's own spin-up kicks back is left out."])
            .holds("Rigid machines; springs lift the front a little earlier.")
            .source("Balance of moments about the rear contact, J. L. Meriam and L. G. Kraige, Dynamics, section 6/2 (from memory)"),
    ]
}

fn radius(distance: Option<Length>) -> Result<Length, Fault> {
    distance
        .map(supplied::rolling_radius)
        .ok_or_else(|| Fault::NeedsOneOf(vec![DRIVE_RADIUS.any(), DISTANCE_PER_TURN.any()]))
}

fn torque(
    motor: Option<Torque>,
    motors: Ratio,
    engine: Option<Torque>,
    ratio: Ratio,
    efficiency: Ratio,
) -> Result<Torque, Fault> {
    let one = Ratio::new::<uom::si::ratio::ratio>(1.0);
    motor
        .map(|torque| (torque, motors))
        .or(engine.map(|torque| (torque, one)))
        .map(|(torque, shafts)| supplied::axle_torque(torque, shafts, ratio, efficiency))
        .ok_or_else(|| {
            let any = [DRIVE_TORQUE.any(), PEAK_MOTOR_TORQUE.any(), ENGINE_TORQUE.any()];
            Fault::NeedsOneOf(any.to_vec())
        })
}

fn power(
    motor: Option<Power>,
    motors: Ratio,
    engine: Option<Power>,
    efficiency: Ratio,
) -> Result<Power, Fault> {
    motor.map(|power| power * motors).or(engine).map(|power| power * efficiency).ok_or_else(|| {
        let any = [DRIVE_POWER.any(), SUPPLIED_MOTOR_POWER.any(), ENGINE_POWER.any()];
        Fault::NeedsOneOf(any.to_vec())
    })
}

/// While nothing spins, neither ratio nor radius is asked for.
fn rotating(
    rotors: Inertia,
    ratio: Option<Ratio>,
    wheels: Inertia,
    radius: Option<Length>,
) -> Result<Mass, Fault> {
    let ratio = if rotors == Inertia::ZERO { Some(Ratio::ZERO) } else { ratio };
    match (ratio, radius) {
        _ if rotors == Inertia::ZERO && wheels == Inertia::ZERO => Ok(Mass::ZERO),
        (Some(ratio), Some(radius)) => Ok(motion::rotating_mass(rotors, ratio, wheels, radius)),
        (None, Some(_)) => Err(Fault::Needs(vec![GEAR_RATIO.any()])),
        (Some(_), None) => Err(Fault::Needs(vec![DRIVE_RADIUS.any()])),
        (None, None) => Err(Fault::Needs(vec![GEAR_RATIO.any(), DRIVE_RADIUS.any()])),
    }
}

/// Whether any of these is not known.
pub(super) fn any_unknown(values: &Values, ids: &[crate::quantity::AnyId]) -> bool {
    ids.iter().any(|id| values.si(*id).is_none())
}
