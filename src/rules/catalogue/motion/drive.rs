//! What pushes, and the masses it has to move.

use uom::ConstZero;

use crate::physics::motion;
use crate::quantity::catalogue::balance::FRONT_LIFT_ACCELERATION;
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::catalogue::motion::*;
use crate::quantity::{Inertia, Length, Mass, Ratio};
use crate::rules::{Caution, Fault, Maybe, Origin, Rule, Values};

const WONG_3: &str = "J. Y. Wong, Theory of Ground Vehicles, chapter 3 (from memory)";

const SPIN_LEFT_OUT: Caution = Caution {
    when: |values| {
        [ROTOR_INERTIA, WHEEL_INERTIA].iter().all(|id| values.origin(*id) == Some(Origin::Assumed))
    },
    says: "Rotors and wheels are taken to weigh nothing when they spin up: say their inertia, or a geared machine comes out livelier than it is.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
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
