//! Stops and drops.

mod bounce;
mod collision;
mod pulse;
mod support;

use super::common::exceeds;
use crate::physics::{impact, pressure};
use crate::quantity::catalogue::impact::*;
use crate::quantity::catalogue::machine::{GRAVITY, MASS, WEIGHT};
use crate::rules::{Caution, Origin, Rule, Values};

const UP_1: &str = "OpenStax, University Physics Volume 1, section 9.2";
const PULSES: &str = "Pulse shapes of IEC 60068-2-27 (from memory)";
const NO_AIR: &[&str] = &["Air is left out, and nothing pushes or holds back on the way."];
const STEADY: &[&str] = &["The deceleration is steady from first touch to standing still."];
const WHOLE: &[&str] =
    &["The whole machine stops as one piece, against something that does not move."];
const PULSE: &[&str] = &[
    "The force rises and falls in the shape chosen; a hard edge inside the stop makes a taller peak.",
    "The whole machine stops as one piece.",
];

const SHAPE_ASSUMED: &[Caution] = &[Caution {
    when: |values| values.origin(PULSE_FACTOR) == Some(Origin::Assumed),
    says: "The pulse shape is assumed: half-sine, whose peak is 1.57 times its mean.",
}];

const BOUNCES: &[Caution] = &[Caution {
    when: |values| values.si(RESTITUTION) > Some(0.0),
    says: "A bounce takes more impulse than a dead stop; the stop time covers only the way down to rest.",
}];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = speeds_and_stops();
    rules.extend(what_a_stop_takes());
    rules.extend(forces());
    rules.extend(what_the_force_meets());
    rules.extend(bounce::rules());
    rules.extend(collision::rules());
    rules.extend(pulse::rules());
    rules.extend(support::rules());
    rules
}

fn speeds_and_stops() -> Vec<Rule> {
    vec![
        Rule::new(IMPACT_SPEED, (DROP_HEIGHT, GRAVITY), impact::drop_speed)
            .title("A free fall from this height ends at this speed")
            .formula(r"\q{impact-speed} = \sqrt{2 \, \q{gravity} \cdot \q{drop-height}}")
            .assumes(NO_AIR)
            .holds("A fall from rest of a few metres at most.")
            .source("OpenStax, University Physics Volume 1, section 3.5"),
        Rule::new(DROP_HEIGHT, (IMPACT_SPEED, GRAVITY), impact::drop_height)
            .title("A free fall from this height reaches this speed")
            .formula(r"\q{drop-height} = \dfrac{\q{impact-speed}^2}{2 \, \q{gravity}}")
            .assumes(NO_AIR)
            .holds("Any speed; for a machine driving into a post it is a comparison, not a fall.")
            .source("OpenStax, University Physics Volume 1, section 3.5"),
        Rule::new(STOP_TIME, (STOP_DISTANCE, IMPACT_SPEED), impact::stop_time)
            .title("A steady stop goes at half the speed on average")
            .formula(r"\q{stop-time} = \dfrac{2 \, \q{stop-distance}}{\q{impact-speed}}")
            .assumes(STEADY)
            .holds("A crush or skid at near steady force; a straight spring takes about a fifth less.")
            .source("OpenStax, University Physics Volume 1, section 3.4"),
        Rule::new(STOP_DISTANCE, (STOP_TIME, IMPACT_SPEED), impact::stop_distance)
            .title("A steady stop goes at half the speed on average")
            .formula(r"\q{stop-distance} = \dfrac{\q{impact-speed} \cdot \q{stop-time}}{2}")
            .assumes(STEADY)
            .holds("A crush or skid at near steady force; a straight spring needs about a quarter more.")
            .source("OpenStax, University Physics Volume 1, section 3.4"),
    ]
}

fn what_a_stop_takes() -> Vec<Rule> {
    vec![
        Rule::new(MOMENTUM, (MASS, IMPACT_SPEED), impact::momentum)
            .title("Momentum is mass times speed")
            .formula(r"\q{momentum} = \q{mass} \cdot \q{impact-speed}")
            .assumes(WHOLE)
            .holds("Any mass and any everyday speed.")
            .source("OpenStax, University Physics Volume 1, section 9.1"),
        Rule::new(KINETIC_ENERGY, (MASS, IMPACT_SPEED), impact::kinetic_energy)
            .title("Energy grows with the square of the speed")
            .formula(r"\q{kinetic-energy} = \frac{1}{2} \, \q{mass} \cdot \q{impact-speed}^2")
            .assumes(&["Spinning wheels and rotors carry more energy on top of this."])
            .holds("Any mass and any everyday speed.")
            .source("OpenStax, University Physics Volume 1, section 7.2"),
        Rule::new(IMPULSE, (MOMENTUM, RESTITUTION), impact::impulse)
            .title("A bounce takes more impulse than a dead stop")
            .formula(r"\q{impulse} = \q{momentum} \cdot (1 + \q{restitution})")
            .assumes(WHOLE)
            .holds("A straight hit; the impulse of the weight during the stop comes on top.")
            .source(UP_1)
            .cautions(BOUNCES),
        Rule::new(REBOUND_SPEED, (RESTITUTION, IMPACT_SPEED), impact::rebound_speed)
            .title("The bounce says what part of the speed comes back")
            .formula(r"\q{rebound-speed} = \q{restitution} \cdot \q{impact-speed}")
            .assumes(&[
                "The coefficient was measured near this speed; it falls as hits get harder.",
            ])
            .holds("A straight hit against something that does not move.")
            .source("Coefficient of restitution, OpenStax, College Physics 2e, section 8.5"),
        Rule::new(REBOUND_HEIGHT, (REBOUND_SPEED, GRAVITY), impact::drop_height)
            .title("How high that speed carries it, straight up")
            .formula(r"\q{rebound-height} = \dfrac{\q{rebound-speed}^2}{2 \, \q{gravity}}")
            .assumes(NO_AIR)
            .holds("A bounce straight up without tumbling.")
            .source("OpenStax, University Physics Volume 1, section 3.5"),
        Rule::new(DECELERATION, (IMPACT_SPEED, STOP_TIME), impact::deceleration)
            .title("Speed lost over the time it takes")
            .formula(r"\q{deceleration} = \dfrac{\q{impact-speed}}{\q{stop-time}}")
            .assumes(&["A mean over the stop, down to rest; the bounce comes after."])
            .holds("Any stop whose time is known.")
            .source("OpenStax, University Physics Volume 1, section 3.3"),
        Rule::new(DECELERATION_G, (DECELERATION,), impact::in_standard_gravity)
            .title("The same in multiples of standard gravity")
            .formula(r"\q{deceleration-g} = \dfrac{\q{deceleration}}{9.80665 \, \text{m/s}^2}")
            .assumes(&["Standard gravity is a fixed yardstick, the same wherever the machine is."])
            .holds("Any acceleration; a mean, not the peak.")
            .source("Standard acceleration of free fall, SI Brochure (BIPM)"),
        Rule::new(
            PEAK_DECELERATION_G,
            (PULSE_FACTOR, DECELERATION_G),
            impact::peak_in_standard_gravity,
        )
        .title("The tallest moment of the pulse")
        .formula(r"\q{peak-deceleration-g} = \q{pulse-factor} \cdot \q{deceleration-g}")
        .assumes(PULSE)
        .holds(
            "Single pulses; parts that can shake on their mounts may see up to about twice this.",
        )
        .source(PULSES)
        .cautions(SHAPE_ASSUMED),
    ]
}

fn forces() -> Vec<Rule> {
    vec![
        Rule::new(STOPPING_FORCE, (MASS, IMPACT_SPEED, STOP_TIME), impact::stopping_force)
            .title("Force is momentum over the time it takes to lose it")
            .formula(r"\q{stopping-force} = \dfrac{\q{mass} \cdot \q{impact-speed}}{\q{stop-time}}")
            .assumes(WHOLE)
            .holds("Any stop whose time or distance is known; a mean, not the peak.")
            .source(UP_1)
            .cautions(BOUNCES),
        Rule::new(WEIGHT_SHARE, (WEIGHT, APPROACH_ANGLE), impact::weight_share)
            .title("On the way down the stop holds up the weight as well")
            .formula(r"\q{weight-share} = \q{weight} \cdot \sin \q{approach-angle}")
            .assumes(&["The stop pushes straight back along the path."])
            .holds("From a post on level ground (0°) to a drop straight down (90°).")
            .source("OpenStax, University Physics Volume 1, section 5.6")
            .cautions(&[Caution {
                when: drop_without_angle,
                says: "The hit is taken to be along level ground; for a drop straight down set the approach angle to 90°.",
            }]),
        Rule::new(MEAN_IMPACT_FORCE, (STOPPING_FORCE, WEIGHT_SHARE), impact::mean_force)
            .title("Both together are the mean force")
            .formula(r"\q{mean-impact-force} = \q{stopping-force} + \q{weight-share}")
            .assumes(WHOLE)
            .holds("Any stop whose time or distance is known; a mean, not the peak.")
            .source("Newton's second law along the path, OpenStax, University Physics Volume 1, section 5.3")
            .cautions(BOUNCES),
        Rule::new(PEAK_IMPACT_FORCE, (PULSE_FACTOR, STOPPING_FORCE, WEIGHT_SHARE), impact::peak_force)
            .title("The tallest moment of the stop")
            .formula(r"\q{peak-impact-force} = \q{pulse-factor} \cdot \q{stopping-force} + \q{weight-share}")
            .assumes(PULSE)
            .holds("One pulse; a second knock or a hard edge is not in it.")
            .source(PULSES)
            .cautions(SHAPE_ASSUMED),
        Rule::new(SPRING_PEAK_FORCE, (KINETIC_ENERGY, STOP_DISTANCE, WEIGHT_SHARE), impact::spring_peak_force)
            .title("A straight spring peaks at twice its mean over the distance")
            .formula(r"\q{spring-peak-force} = 2 \left( \dfrac{\q{kinetic-energy}}{\q{stop-distance}} + \q{weight-share} \right)")
            .assumes(&["One straight spring, slack at first touch, takes all the energy and loses none."])
            .holds("Springs and rubber within their straight range that do not reach their end.")
            .source("Energy balance, OpenStax, College Physics 2e, section 7.4"),
        Rule::new(SPRING_RATE, (SPRING_PEAK_FORCE, STOP_DISTANCE), impact::spring_rate)
            .title("The spring that just uses the distance")
            .formula(r"\q{spring-rate} = \dfrac{\q{spring-peak-force}}{\q{stop-distance}}")
            .assumes(&["One straight spring; several side by side share this stiffness."])
            .holds("Springs and rubber within their straight range.")
            .source("Hooke's law, OpenStax, College Physics 2e, section 7.4"),
    ]
}

fn what_the_force_meets() -> Vec<Rule> {
    vec![
        Rule::new(STANDING_PEOPLE, (MEAN_IMPACT_FORCE, PERSON_WEIGHT), impact::force_ratio)
            .title("As many people standing still press as hard")
            .formula(r"\q{standing-people} = \dfrac{\q{mean-impact-force}}{\q{person-weight}}")
            .assumes(&["A yardstick only: the people stand for good, the stop is over at once."])
            .holds("Any force.")
            .source("Common practice, no published source"),
        Rule::new(STANDING_PEOPLE_PEAK, (PEAK_IMPACT_FORCE, PERSON_WEIGHT), impact::force_ratio)
            .title("As many people standing still press as hard as the peak")
            .formula(r"\q{standing-people-peak} = \dfrac{\q{peak-impact-force}}{\q{person-weight}}")
            .assumes(&["A yardstick only: the people stand for good, the peak is over at once."])
            .holds("Any force.")
            .source("Common practice, no published source"),
        Rule::new(IMPACT_PRESSURE, (PEAK_IMPACT_FORCE, IMPACT_PATCH), pressure::mean_pressure)
            .title("The peak force over the patch that touches")
            .formula(r"\q{impact-pressure} = \dfrac{\q{peak-impact-force}}{\q{impact-patch}}")
            .assumes(&["The force spreads evenly over the patch; an edge or a corner sees more."])
            .holds("A patch that does not grow during the hit.")
            .source("OpenStax, University Physics Volume 1, section 14.1"),
        Rule::new(FRAME_MARGIN, (FRAME_STRENGTH, PEAK_IMPACT_FORCE), impact::force_ratio)
            .title("Strength over the peak force")
            .formula(r"\q{frame-margin} = \dfrac{\q{frame-strength}}{\q{peak-impact-force}}")
            .assumes(&[
                "The whole peak goes through the weakest mount, pushed the way it was tested.",
            ])
            .holds("One hit on a sound part; repeated hits break it at less.")
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[Caution {
                when: |values| exceeds(values, PEAK_IMPACT_FORCE, FRAME_STRENGTH),
                says: "The peak force is more than the weakest mount can take.",
            }]),
        Rule::new(SHOCK_MARGIN, (SHOCK_LIMIT, PEAK_DECELERATION_G), impact::shock_margin)
            .title("Shock limit over the peak deceleration")
            .formula(r"\q{shock-margin} = \dfrac{\q{shock-limit}}{\q{peak-deceleration-g}}")
            .assumes(&[
                "The part sees the same deceleration as the machine: no soft mount, no play.",
            ])
            .holds("Pulses about as long as the one the limit was given for.")
            .source("The definition of a margin; common practice, no published source")
            .cautions(&[Caution {
                when: |values| exceeds(values, PEAK_DECELERATION_G, SHOCK_LIMIT),
                says: "The peak deceleration is more than the most delicate part may see.",
            }]),
    ]
}

fn drop_without_angle(values: &Values) -> bool {
    matches!(values.origin(DROP_HEIGHT), Some(Origin::Given))
        && values.origin(APPROACH_ANGLE) == Some(Origin::Assumed)
}
