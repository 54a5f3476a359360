//! Going round a curve.

use crate::physics::turning;
use crate::quantity::catalogue::balance::{GAUGE, WHEELBASE};
use crate::quantity::catalogue::ground::GRIP_COEFFICIENT;
use crate::quantity::catalogue::machine::{GRAVITY, MASS};
use crate::quantity::catalogue::motion::DRIVING_SPEED;
use crate::quantity::catalogue::turning::*;
use crate::quantity::{Acceleration, Angle, Length, Ratio, Speed};
use crate::rules::{Caution, Fault, Maybe, Rule};

const CIRCLE: &[&str] = &["A steady speed on a circle."];
const ACKERMANN: &str = "Ackermann geometry, T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 6 (from memory)";
const CP_6_3: &str = "OpenStax, College Physics 2e, section 6.3";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            TURN_RADIUS,
            (Maybe(LEFT_SPEED), Maybe(RIGHT_SPEED), Maybe(GAUGE), Maybe(STEER_ANGLE), Maybe(WHEELBASE)),
            turn_radius,
        )
        .title("By the speeds of the two sides, or by the steering angle")
        .formula(r"\q{turn-radius} = \dfrac{\q{gauge}}{2} \left| \dfrac{\q{left-speed} + \q{right-speed}}{\q{left-speed} - \q{right-speed}} \right| \; \text{or} \; \dfrac{\q{wheelbase}}{\tan | \q{steer-angle} |}")
        .assumes(&["No slip: tracks that skid round and tyres that give turn wider."])
        .holds("A walking pace on ground that grips.")
        .source("J. Y. Wong, Theory of Ground Vehicles, chapter 6; T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 6 (both from memory)"),
        Rule::new(STEER_ANGLE_NEEDED, (WHEELBASE, TURN_RADIUS), turning::steer_angle)
            .title("Wheelbase over radius")
            .formula(r"\q{steer-angle-needed} = \arctan \dfrac{\q{wheelbase}}{\q{turn-radius}}")
            .assumes(&["No slip of tyres or skis."])
            .holds("A walking pace.")
            .source(ACKERMANN),
        Rule::new(SIDEWAYS_ACCELERATION, (DRIVING_SPEED, TURN_RADIUS), turning::sideways_acceleration)
            .title("Speed squared over radius")
            .formula(r"\q{sideways-acceleration} = \dfrac{\q{driving-speed}^2}{\q{turn-radius}}")
            .assumes(CIRCLE)
            .holds("Any circle.")
            .source("OpenStax, College Physics 2e, section 6.2"),
        Rule::new(SIDEWAYS_FORCE, (MASS, SIDEWAYS_ACCELERATION), turning::sideways_force)
            .title("Mass times sideways acceleration")
            .formula(r"\q{sideways-force} = \q{mass} \cdot \q{sideways-acceleration}")
            .assumes(&["The whole machine moves as one piece."])
            .holds("A turn, or a push to the side.")
            .source(CP_6_3),
        Rule::new(SIDEWAYS_GRIP, (SIDEWAYS_ACCELERATION, GRAVITY, Maybe(GRIP_COEFFICIENT)), grip_taken)
            .title("Sideways acceleration in multiples of gravity")
            .formula(r"\q{sideways-grip} = \dfrac{\q{sideways-acceleration}}{\q{gravity}}")
            .assumes(CIRCLE)
            .holds("Level ground; a bank takes its share off.")
            .source(CP_6_3)
            .cautions(&[Caution {
                when: |values| match (values.si(SIDEWAYS_ACCELERATION), values.si(GRAVITY), super::sideways(values)) {
                    (Some(acceleration), Some(gravity), Some(grip)) => acceleration > grip * gravity,
                    _ => false,
                },
                says: "The ground does not give that much: it slides out of the turn.",
            }]),
        Rule::new(BANK_SPEED, (TURN_RADIUS, GRAVITY, BANK_ANGLE), turning::bank_speed)
            .title("Where the bank alone turns it")
            .formula(r"\q{bank-speed} = \sqrt{\q{turn-radius} \cdot \q{gravity} \cdot \tan \q{bank-angle}}")
            .assumes(CIRCLE)
            .holds("An even bank.")
            .source("OpenStax, University Physics Volume 1, section 6.3"),
        Rule::new(TURNING_RATE, (DRIVING_SPEED, TURN_RADIUS), turning::turning_rate)
            .title("Speed over radius")
            .formula(r"\q{turning-rate} = \dfrac{\q{driving-speed}}{\q{turn-radius}}")
            .assumes(CIRCLE)
            .holds("Any circle; on the spot the radius is zero and the rate comes from the tracks.")
            .source("OpenStax, University Physics Volume 1, section 10.3"),
    ]
}

/// The grip that is there does not count, but decides what is said.
fn grip_taken(acceleration: Acceleration, gravity: Acceleration, _: Option<Ratio>) -> Ratio {
    turning::sideways_grip(acceleration, gravity)
}

fn turn_radius(
    left: Option<Speed>,
    right: Option<Speed>,
    gauge: Option<Length>,
    steer: Option<Angle>,
    wheelbase: Option<Length>,
) -> Result<Length, Fault> {
    match (left, right, steer) {
        (Some(left), Some(right), _) => {
            let gauge = gauge.ok_or_else(|| Fault::Needs(vec![GAUGE.any()]))?;
            Ok(turning::turn_radius_from_tracks(gauge, left, right)?)
        }
        (.., Some(steer)) => {
            let wheelbase = wheelbase.ok_or_else(|| Fault::Needs(vec![WHEELBASE.any()]))?;
            Ok(turning::turn_radius(wheelbase, steer)?)
        }
        (Some(_), None, None) => Err(Fault::Needs(vec![RIGHT_SPEED.any()])),
        (None, Some(_), None) => Err(Fault::Needs(vec![LEFT_SPEED.any()])),
        (None, None, None) => Err(Fault::NeedsOneOf(vec![STEER_ANGLE.any(), LEFT_SPEED.any()])),
    }
}
