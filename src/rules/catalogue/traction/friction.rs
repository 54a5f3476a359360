//! Grip, sliding and rolling by coefficients, and the tests that find them.

use super::super::common::below;
use super::thrust::NO_PERMISSION;
use crate::physics::traction::{climb, resistance};
use crate::physics::weight;
use crate::quantity::catalogue::{ground::*, machine::*, motion::*, running_gear::*, traction::*};
use crate::quantity::{Acceleration, Angle, Force, Mass, Ratio};
use crate::rules::{Caution, Fault, Maybe, Origin, Rule};

const FRICTION: &str = "OpenStax, University Physics Volume 1, section 6.2 Friction";
const ON_SLOPES: &str = "OpenStax, College Physics 2e, section 5.1 Friction";
const PROPORTIONAL: &str = "Grip goes with the load alone: on firm ground it nearly does, in soft ground area counts as well.";
const NOT_THE_MOTOR: &str = "The motor can push this hard at all; grip alone sets the limit.";

const SHARE_ASSUMED: Caution = Caution {
    when: |values| {
        let idle = [WHEEL_COUNT, SKI_COUNT].iter().any(|id| values.si(*id) > Some(0.0));
        idle && values.origin(DRIVEN_SHARE) == Some(Origin::Assumed)
    },
    says: "All of the load is taken to stand on driven gear; say what share does, if some wheels or skis do not drive.",
};

const NO_ROLLING: Caution = Caution {
    when: |values| values.si(ROLLING_COEFFICIENT).is_none(),
    says: "Rolling resistance is not known, so it is left out: less than this is there.",
};
const CANNOT_START: Caution = Caution {
    when: |values| below(values, GRIP_ACCELERATION, 0.0),
    says: "Slope and rolling take more than the grip gives: it cannot start up this slope, whatever its motor.",
};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = grip();
    rules.extend(sliding());
    rules.extend(rolling());
    rules
}

fn grip() -> Vec<Rule> {
    vec![
        Rule::new(GRIP_COEFFICIENT, (GRIP_TEST_PULL, GRIP_TEST_MASS, GRAVITY), coefficient)
            .title("The pull that makes it slide, over its weight")
            .formula(r"\q{grip-coefficient} = \dfrac{\q{grip-test-pull}}{\q{grip-test-mass} \cdot \q{gravity}}")
            .assumes(&["A steady pull on the level, low down, with the whole drive locked, on the ground in question; the middle of three pulls each way."])
            .holds("That ground on that day; wet, frozen or churned up it is another.")
            .source(FRICTION),
        Rule::new(GRIP_PUSH, (GRIP_COEFFICIENT, DRIVEN_SHARE, GROUND_FORCE), |grip, share, force| {
            resistance::from_coefficient(grip, share * force)
        })
        .title("The load on driven gear times its grip")
        .formula(r"\q{grip-push} = \q{grip-coefficient} \cdot \q{driven-share} \cdot \q{ground-force}")
        .assumes(&[PROPORTIONAL, NOT_THE_MOTOR])
        .holds("Firm ground, or the ground of the pull test.")
        .source(FRICTION)
        .cautions(&[SHARE_ASSUMED]),
        Rule::new(GRIP_CLIMB, (GRIP_COEFFICIENT, DRIVEN_SHARE, ROLLING_COEFFICIENT), climb::by_grip)
            .title("Grip has to beat slope and rolling")
            .formula(r"\q{grip-climb} = \arctan(\q{grip-coefficient} \cdot \q{driven-share} - \q{rolling-coefficient})")
            .assumes(&[PROPORTIONAL, NOT_THE_MOTOR])
            .holds("A steady climb straight up on the ground of the tests.")
            .source("Common practice, no published source; balance of forces along the slope")
            .cautions(&[NO_PERMISSION, SHARE_ASSUMED]),
        Rule::new(
            GRIP_ACCELERATION,
            (GRIP_COEFFICIENT, DRIVEN_SHARE, Maybe(ROLLING_COEFFICIENT), SLOPE, GRAVITY),
            grip_acceleration,
        )
        .title("What grip leaves over to gain speed with")
        .formula(r"\q{grip-acceleration} = \q{gravity} \cdot \left( (\q{grip-coefficient} \cdot \q{driven-share} - \q{rolling-coefficient}) \cos \q{slope} - \sin \q{slope} \right)")
        .assumes(&[PROPORTIONAL, NOT_THE_MOTOR, "Air is left out, and so is the shift of load to the tail; spinning parts take nothing from grip."])
        .holds("A start on firm ground, any mass.")
        .source(ON_SLOPES)
        .cautions(&[SHARE_ASSUMED, NO_ROLLING, CANNOT_START]),
        Rule::new(SLIDE_ANGLE, (GRIP_COEFFICIENT,), climb::holds)
            .title("Friction holds up to this slope")
            .formula(r"\q{slide-angle} = \arctan \q{grip-coefficient}")
            .assumes(&["Everything that touches is locked and grips alike.", PROPORTIONAL])
            .holds("Standing still; a jolt or a thaw lets go sooner.")
            .source(ON_SLOPES)
            .cautions(&[NO_PERMISSION]),
    ]
}

fn sliding() -> Vec<Rule> {
    const STEADY: &str = "The friction of sliding is the same at every speed; air is left out.";
    vec![
        Rule::new(SLIDING_FRICTION, (SLIDING_COEFFICIENT, GROUND_FORCE), resistance::from_coefficient)
            .title("Friction goes with the force on the ground")
            .formula(r"\q{sliding-friction} = \q{sliding-coefficient} \cdot \q{ground-force}")
            .assumes(&[STEADY])
            .holds("Sliding with everything locked.")
            .source(FRICTION),
        Rule::new(SLIDE_ACCELERATION, (SLIDING_COEFFICIENT, SLOPE, GRAVITY), climb::sliding_down)
            .title("Slope against friction, on the way down")
            .formula(r"\q{slide-acceleration} = \q{gravity} \cdot (\sin \q{slope} - \q{sliding-coefficient} \cdot \cos \q{slope})")
            .assumes(&[STEADY])
            .holds("Sliding down an even slope.")
            .source(FRICTION),
        Rule::new(SLIDE_UP_DECELERATION, (SLIDING_COEFFICIENT, SLOPE, GRAVITY), climb::sliding_up)
            .title("Slope and friction together, on the way up")
            .formula(r"\q{slide-up-deceleration} = \q{gravity} \cdot (\sin \q{slope} + \q{sliding-coefficient} \cdot \cos \q{slope})")
            .assumes(&[STEADY])
            .holds("Sliding up an even slope until it stops.")
            .source(ON_SLOPES),
    ]
}

fn rolling() -> Vec<Rule> {
    vec![
        Rule::new(
            ROLLING_COEFFICIENT,
            (Maybe(TOW_TEST_PULL), Maybe(TOW_TEST_MASS), Maybe(ROLL_ON_SLOPE), GRAVITY),
            rolling_coefficient,
        )
        .title("Tow it, or let it roll")
        .formula(r"\q{rolling-coefficient} = \begin{cases} \dfrac{\q{tow-test-pull}}{\q{tow-test-mass} \cdot \q{gravity}} & \text{if towed} \\ \tan \q{roll-on-slope} & \text{else} \end{cases}")
        .assumes(&["A steady pull at walking pace on the level with the drive free; with the drive locked it measures grip instead.", "The same ground, as wet as it will be: thawing or soaked ground can hold back several times as much."])
        .holds("That ground and that machine; carry it as a range of 20 % at least, on loose ground 30 to 50 %.")
        .source("The definition of the coefficient, T. D. Gillespie, Fundamentals of Vehicle Dynamics; the range is common practice, no published source"),
        Rule::new(ROLLING_RESISTANCE, (ROLLING_COEFFICIENT, GROUND_FORCE), resistance::from_coefficient)
            .title("Rolling resistance goes with the force on the ground")
            .formula(r"\q{rolling-resistance} = \q{rolling-coefficient} \cdot \q{ground-force}")
            .assumes(&["The coefficient stays the same with load and speed; in soft ground a heavier machine sinks deeper and it grows."])
            .holds("Walking pace on the ground of the test.")
            .source("T. D. Gillespie, Fundamentals of Vehicle Dynamics"),
        Rule::new(RUT_ROLLING_COEFFICIENT, (RUT_DEPTH,), resistance::coefficient_by_penetration)
            .title("Two percent, and one and a half more for every inch of rut")
            .formula(r"\q{rut-rolling-coefficient} = 0.02 + 0.015 \cdot \dfrac{\q{rut-depth}}{1 \, \text{in}}")
            .assumes(&["Large tyres, as on dump trucks."])
            .holds("Haul roads and fills; a rule of thumb, and small tyres do worse in a rut as deep.")
            .source("Rule of civil-engineering handbooks for haul units: 40 lb per short ton, 30 lb more per inch of tyre penetration"),
        Rule::new(PAVED_ROLLING_COEFFICIENT, (DRIVING_SPEED,), resistance::coefficient_on_pavement)
            .title("On pavement it grows with speed")
            .formula(r"\q{paved-rolling-coefficient} = 0.01 \cdot \left( 1 + \dfrac{\q{driving-speed}}{147 \, \text{ft/s}} \right)")
            .assumes(&["Car tyres, well filled."])
            .holds("Paved roads at road speeds.")
            .source("F. L. Mannering, S. S. Washburn, Principles of Highway Engineering and Traffic Analysis, chapter 2"),
    ]
}

fn coefficient(pull: Force, mass: Mass, gravity: Acceleration) -> Ratio {
    resistance::coefficient(pull, weight::weight(mass, gravity))
}

/// Unknown rolling resistance counts as none, and that is said.
fn grip_acceleration(
    grip: Ratio,
    share: Ratio,
    rolling: Option<Ratio>,
    slope: Angle,
    gravity: Acceleration,
) -> Acceleration {
    climb::grip_acceleration(grip, share, rolling.unwrap_or_default(), slope, gravity)
}

/// The tow test goes before the roll test.
fn rolling_coefficient(
    pull: Option<Force>,
    mass: Option<Mass>,
    slope: Option<Angle>,
    gravity: Acceleration,
) -> Result<Ratio, Fault> {
    match (pull, mass, slope) {
        (Some(pull), Some(mass), _) => Ok(coefficient(pull, mass, gravity)),
        (Some(_), None, None) => Err(Fault::Needs(vec![TOW_TEST_MASS.any()])),
        (_, _, Some(slope)) => Ok(resistance::coefficient_by_slope(slope)),
        (None, _, None) => Err(Fault::NeedsOneOf(vec![TOW_TEST_PULL.any(), ROLL_ON_SLOPE.any()])),
    }
}
