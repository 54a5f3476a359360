//! The gear chain, and what it makes of torque and turns.

use super::super::common::below;
use crate::physics::drive::gear;
use crate::quantity::catalogue::drive::*;
use crate::quantity::catalogue::motion::DRIVING_RESISTANCE;
use crate::rules::{Caution, Origin, Rule, Values};

const TRAIN: &str = "The definition of a gear train; any textbook of machine elements";
const BALANCE: &str = "Power balance over the gears; any textbook of machine elements";
const NO_SLIP: &[&str] = &["Nothing slips, in the chain or on the ground."];

const STAGE_ASSUMED: &[Caution] = &[Caution {
    when: stage_without_efficiency,
    says: "A stage that turns the speed down loses some power too, and none was said: give its efficiency. Belts pass on about 0.98, gears 0.95, chains 0.90, planetary 0.80, worms 0.60.",
}];
const BRAKES: &[Caution] = &[Caution {
    when: |values| below(values, DRIVING_RESISTANCE, 0.0),
    says: "Below zero: downhill the ground drives each motor, and it must brake with this torque or the machine runs away. A controller that cannot brake needs another brake.",
}];
const GRIP: &[Caution] = &[Caution {
    when: super::super::common::always,
    says: "What the motors can push is not what the ground can hold: compare it with the grip.",
}];

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            GEAR_RATIO,
            (FIRST_STAGE_RATIO, SECOND_STAGE_RATIO, THIRD_STAGE_RATIO),
            gear::three_stages,
        )
        .title("Stages in a row multiply")
        .formula(r"\q{gear-ratio} = \q{first-stage-ratio} \cdot \q{second-stage-ratio} \cdot \q{third-stage-ratio}")
        .assumes(&["Every ratio is input turns over output turns: driven teeth over driving teeth."])
        .holds("Gears, chains and toothed belts.")
        .source(TRAIN)
        .cautions(&[Caution {
            when: |values| values.origin(FIRST_STAGE_RATIO) == Some(Origin::Assumed),
            says: "No gears were said, so the motor is taken to turn the wheel or sprocket itself.",
        }]),
        Rule::new(
            GEAR_EFFICIENCY,
            (FIRST_STAGE_EFFICIENCY, SECOND_STAGE_EFFICIENCY, THIRD_STAGE_EFFICIENCY),
            gear::three_stages,
        )
        .title("Losses in a row multiply too")
        .formula(r"\q{gear-efficiency} = \q{first-stage-efficiency} \cdot \q{second-stage-efficiency} \cdot \q{third-stage-efficiency}")
        .assumes(&["The same at any load; at light load a gear loses a larger part."])
        .holds("Working load, run in and greased; cold grease costs more.")
        .source(TRAIN)
        .cautions(STAGE_ASSUMED),
        Rule::new(DISTANCE_PER_TURN, (DRIVE_DIAMETER,), gear::distance_per_turn)
            .title("One turn rolls off the circumference")
            .formula(r"\q{distance-per-turn} = \pi \cdot \q{drive-diameter}")
            .assumes(NO_SLIP)
            .holds("The effective diameter: squash and belt thickness counted.")
            .source("Geometry"),
        Rule::new(DRIVE_DIAMETER, (DISTANCE_PER_TURN,), gear::effective_diameter)
            .title("The diameter that rolls off one turn")
            .formula(r"\q{drive-diameter} = \dfrac{\q{distance-per-turn}}{\pi}")
            .assumes(NO_SLIP)
            .holds("A distance measured with the machine loaded.")
            .source("Geometry"),
        Rule::new(PAPER_SPEED, (PAPER_MOTOR_SPEED, GEAR_RATIO, DISTANCE_PER_TURN), gear::ground_speed)
            .title("Turns, through the gears, to distance")
            .formula(r"\q{paper-speed} = \dfrac{\q{paper-motor-speed}}{2 \pi} \cdot \dfrac{\q{distance-per-turn}}{\q{gear-ratio}}")
            .assumes(&["Neither load, loss nor slip."])
            .holds("For comparing gears: expect 70 to 85 % of it on hard ground, less on soft (common practice).")
            .source(TRAIN),
        Rule::new(LOADED_SPEED, (MOTOR_SPEED, GEAR_RATIO, DISTANCE_PER_TURN), gear::ground_speed)
            .title("Turns under load, through the gears, to distance")
            .formula(r"\q{loaded-speed} = \dfrac{\q{motor-speed}}{2 \pi} \cdot \dfrac{\q{distance-per-turn}}{\q{gear-ratio}}")
            .assumes(NO_SLIP)
            .holds("A steady push; on soft ground slip takes its part off.")
            .source(TRAIN),
        Rule::new(
            MOTOR_TORQUE,
            (DRIVING_RESISTANCE, DISTANCE_PER_TURN, GEAR_RATIO, GEAR_EFFICIENCY, MOTOR_COUNT),
            gear::motor_torque,
        )
        .title("The push, through the gears, back to the shaft")
        .formula(r"\q{motor-torque} = \begin{cases} \dfrac{\q{driving-resistance} \cdot \q{distance-per-turn}}{2 \pi \cdot \q{gear-ratio} \cdot \q{gear-efficiency} \cdot \q{motor-count}} & \text{if } \q{driving-resistance} \ge 0 \\ \dfrac{\q{driving-resistance} \cdot \q{distance-per-turn} \cdot \q{gear-efficiency}}{2 \pi \cdot \q{gear-ratio} \cdot \q{motor-count}} & \text{else} \end{cases}")
        .assumes(&["A steady speed, and the motors share the push evenly; in a turn one works far harder.", "Where the slope pushes, the motors brake and the gears' loss helps: times the efficiency, not over it."])
        .holds("A push that lasts; starts and jerks are peaks.")
        .source(BALANCE)
        .cautions(BRAKES),
        push_rule(STALL_PUSH, STALL_TORQUE)
            .title("The stall torque at the ground")
            .formula(r"\q{stall-push} = \dfrac{2 \pi \cdot \q{stall-torque} \cdot \q{gear-ratio} \cdot \q{gear-efficiency} \cdot \q{motor-count}}{\q{distance-per-turn}}")
            .assumes(&["Current without end and grip without end: a catalogue figure."])
            .holds("The first moment, for comparing.")
            .source(BALANCE)
            .cautions(GRIP),
        push_rule(PEAK_PUSH, PEAK_MOTOR_TORQUE)
            .title("The peak torque at the ground")
            .formula(r"\q{peak-push} = \dfrac{2 \pi \cdot \q{peak-motor-torque} \cdot \q{gear-ratio} \cdot \q{gear-efficiency} \cdot \q{motor-count}}{\q{distance-per-turn}}")
            .assumes(&["All motors at their peak at once."])
            .holds("For seconds, battery warm and full.")
            .source(BALANCE)
            .cautions(GRIP),
        Rule::new(PUSH_MARGIN, (PEAK_PUSH, DRIVING_RESISTANCE), gear::push_margin)
            .title("The most push over the push needed")
            .formula(r"\q{push-margin} = \dfrac{\q{peak-push}}{\q{driving-resistance}}")
            .assumes(&["The peak lasts seconds; for long pulls heat decides, not this."])
            .holds("Any steady push; downhill, where the slope pushes, there is none to state.")
            .source("The definition of a margin; common practice, no published source"),
        Rule::new(PUSH_POWER, (DRIVING_RESISTANCE, LOADED_SPEED), gear::push_power)
            .title("Push times speed")
            .formula(r"\q{push-power} = \q{driving-resistance} \cdot \q{loaded-speed}")
            .assumes(NO_SLIP)
            .holds("A steady speed.")
            .source("OpenStax, University Physics Volume 1, section 7.4"),
    ]
}

fn push_rule(
    finds: crate::quantity::Id<crate::quantity::Force>,
    torque: crate::quantity::Id<crate::quantity::Torque>,
) -> Rule {
    let needs = (torque, DISTANCE_PER_TURN, GEAR_RATIO, GEAR_EFFICIENCY, MOTOR_COUNT);
    Rule::new(finds, needs, gear::push)
}

/// A later stage that gears down while its efficiency stands at the assumed 1.
fn stage_without_efficiency(values: &Values) -> bool {
    [(SECOND_STAGE_RATIO, SECOND_STAGE_EFFICIENCY), (THIRD_STAGE_RATIO, THIRD_STAGE_EFFICIENCY)]
        .into_iter()
        .any(|(ratio, efficiency)| {
            values.si(ratio).is_some_and(|ratio| ratio != 1.0)
                && values.origin(efficiency) == Some(Origin::Assumed)
        })
}
