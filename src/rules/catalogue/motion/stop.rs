//! Stopping.

use crate::physics::Impossible;
use crate::physics::motion;
use crate::quantity::catalogue::ground::GRIP_COEFFICIENT;
use crate::quantity::catalogue::machine::{GRAVITY, MASS, SLOPE};
use crate::quantity::catalogue::motion::*;
use crate::quantity::{Force, Length, Mass, Speed, Time};
use crate::rules::{Caution, Maybe, Origin, Rule};

use super::resistance::NO_DRAG;

const UP_3_4: &str = "OpenStax, University Physics Volume 1, section 3.4";
const STEADY: &[&str] = &["The deceleration is steady from the brake's first hold to rest."];

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(BRAKING_DECELERATION, (GRIP_COEFFICIENT, GRAVITY, SLOPE), motion::locked_deceleration)
            .title("All brakes to the limit of grip")
            .formula(r"\q{braking-deceleration} = \q{gravity} \left( \q{grip-coefficient} \cdot \cos \q{slope} + \sin \q{slope} \right)")
            .assumes(&["Every track or wheel brakes just short of sliding; locked, the smaller sliding coefficient counts.", "Nose uphill the slope helps, nose downhill it pushes."])
            .holds("The ground and the day of the pull test; a track or wheel that digs in stops sooner, on ice later.")
            .source("OpenStax, University Physics Volume 1, chapter 6, challenge problem")
            .cautions(&[
                BRAKES,
            ]),
        Rule::new(BRAKING_DISTANCE, (DRIVING_SPEED, BRAKING_DECELERATION), motion::braking_distance)
            .title("Twice the speed, four times the distance")
            .formula(r"\q{braking-distance} = \dfrac{\q{driving-speed}^2}{2 \, \q{braking-deceleration}}")
            .assumes(STEADY)
            .holds("A stop at near steady force.")
            .source(UP_3_4),
        Rule::new(BRAKING_FORCE, (MASS, BRAKING_DECELERATION), motion::braking_force)
            .title("Mass times deceleration")
            .formula(r"\q{braking-force} = \q{mass} \cdot \q{braking-deceleration}")
            .assumes(STEADY)
            .holds("The mean over the stop; the spin of rotors and wheels comes on top at the brakes.")
            .source("OpenStax, University Physics Volume 1, section 5.3"),
        Rule::new(REACTION_DISTANCE, (DRIVING_SPEED, REACTION_TIME), motion::reaction_distance)
            .title("Full speed until the brakes hold")
            .formula(r"\q{reaction-distance} = \q{driving-speed} \cdot \q{reaction-time}")
            .assumes(&["The speed does not drop before the brakes hold."])
            .holds("Any speed.")
            .source(UP_3_4)
            .cautions(&[Caution {
                when: |values| values.origin(REACTION_TIME) == Some(Origin::Assumed),
                says: "The reaction time is assumed to be one second.",
            }]),
        Rule::new(STOPPING_DISTANCE, (REACTION_DISTANCE, BRAKING_DISTANCE), add)
            .title("Reaction and braking together")
            .formula(r"\q{stopping-distance} = \q{reaction-distance} + \q{braking-distance}")
            .assumes(STEADY)
            .holds("A straight stop; leave more room than this.")
            .source(UP_3_4)
            .cautions(&[BRAKES]),
        Rule::new(COAST_DOWN_DISTANCE, (EQUIVALENT_MASS, DRIVING_SPEED, STEADY_RESISTANCE, Maybe(AIR_DRAG)), coast_down_distance)
            .title("Rolled out against ground and air")
            .formula(r"\q{coast-down-distance} = \dfrac{\q{equivalent-mass} \cdot \q{driving-speed}^2}{2 \, \q{air-drag}} \ln \left( 1 + \dfrac{\q{air-drag}}{\q{steady-resistance}} \right)")
            .assumes(&["The drive is let go and does not brake; ground and slope hold back the same at every speed."])
            .holds("A straight roll to rest; without air it is m v² / 2F.")
            .source("Newton's second law solved; the coast-down test of SAE J1263 (from memory)")
            .cautions(&[NO_DRAG]),
        Rule::new(COAST_DOWN_TIME, (EQUIVALENT_MASS, DRIVING_SPEED, STEADY_RESISTANCE, Maybe(AIR_DRAG)), coast_down_time)
            .title("Rolled out against ground and air")
            .formula(r"\q{coast-down-time} = \dfrac{\q{equivalent-mass} \cdot \q{driving-speed}}{\sqrt{\q{air-drag} \cdot \q{steady-resistance}}} \arctan \sqrt{\dfrac{\q{air-drag}}{\q{steady-resistance}}}")
            .assumes(&["The drive is let go and does not brake; ground and slope hold back the same at every speed."])
            .holds("A straight roll to rest; without air it is m v / F.")
            .source("Newton's second law solved; the coast-down test of SAE J1263 (from memory)")
            .cautions(&[NO_DRAG]),
    ]
}

const BRAKES: Caution = Caution {
    when: |values| values.si(DRIVING_SPEED) > Some(3.0),
    says: "Brakes are a matter for the maker's manual and local rules: test them at a walking pace first.",
};

fn add(one: Length, other: Length) -> Length {
    one + other
}

fn coast_down_distance(
    mass: Mass,
    speed: Speed,
    resistance: Force,
    drag: Option<Force>,
) -> Result<Length, Impossible> {
    motion::coast_down_distance(mass, speed, resistance, drag.unwrap_or_default())
}

fn coast_down_time(
    mass: Mass,
    speed: Speed,
    resistance: Force,
    drag: Option<Force>,
) -> Result<Time, Impossible> {
    motion::coast_down_time(mass, speed, resistance, drag.unwrap_or_default())
}
