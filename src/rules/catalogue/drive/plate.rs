//! A motor by its plate: losses and efficiency at part of its rated load.

use crate::physics::drive::motor;
use crate::quantity::catalogue::drive::*;
use crate::quantity::{Current, Ratio};
use crate::rules::Rule;

const KOSOW: &str = "I. L. Kosow, Electric Machinery and Transformers, 2nd ed., chapter 12";
const STAYS: &[&str] = &[
    "Friction, fan and iron take the same at any load, the winding with the square of the current.",
    "Current grows in step with the load.",
];
const SPEED: &str = "One speed and supply; a motor that runs slower also turns less air and iron.";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            STEADY_MOTOR_LOSS,
            (MOTOR_SUPPLY_VOLTAGE, NO_LOAD_CURRENT, MOTOR_RESISTANCE),
            motor::no_load_loss,
        )
        .title("What it draws running free, less the copper loss")
        .formula(r"\q{steady-motor-loss} = \q{motor-supply-voltage} \cdot \q{no-load-current} - \q{no-load-current}^2 \cdot \q{motor-resistance}")
        .assumes(&["Measured with nothing on the shaft."])
        .holds("The voltage it was measured at.")
        .source("Fitzgerald, Kingsley, Umans, Electric Machinery, 6th ed., chapter 7 (from memory)"),
        Rule::new(RATED_WINDING_LOSS, (RATED_MOTOR_CURRENT, MOTOR_RESISTANCE), motor::winding_loss)
            .title("The rated current heats the copper with its square")
            .formula(r"\q{rated-winding-loss} = \q{rated-motor-current}^2 \cdot \q{motor-resistance}")
            .assumes(&["The winding at air temperature; warm copper loses more."])
            .holds("Direct-current motors, brushed or brushless.")
            .source("OpenStax, College Physics 2e, section 20.4"),
        Rule::new(
            PART_LOAD_EFFICIENCY,
            (RATED_MOTOR_POWER, STEADY_MOTOR_LOSS, RATED_WINDING_LOSS, MOTOR_LOAD),
            motor::part_load_efficiency,
        )
        .title("Some losses fall with the load, some stay")
        .formula(r"\q{part-load-efficiency} = \dfrac{\q{motor-load} \cdot \q{rated-motor-power}}{\q{motor-load} \cdot \q{rated-motor-power} + \q{steady-motor-loss} + \q{motor-load}^2 \cdot \q{rated-winding-loss}}")
        .assumes(STAYS)
        .holds(SPEED)
        .source(KOSOW),
        Rule::new(
            EQUAL_LOSS_CURRENT,
            (STEADY_MOTOR_LOSS, MOTOR_RESISTANCE),
            motor::current_of_equal_losses,
        )
        .title("Best where copper loses as much as the rest")
        .formula(r"\q{equal-loss-current} = \sqrt{\dfrac{\q{steady-motor-loss}}{\q{motor-resistance}}}")
        .assumes(STAYS)
        .holds(SPEED)
        .source(KOSOW),
        Rule::new(EQUAL_LOSS_LOAD, (EQUAL_LOSS_CURRENT, RATED_MOTOR_CURRENT), share)
            .title("Best current over rated current")
            .formula(r"\q{equal-loss-load} = \dfrac{\q{equal-loss-current}}{\q{rated-motor-current}}")
            .assumes(STAYS)
            .holds("Over 1 the best lies past the rating, where the motor overheats if it stays there.")
            .source(KOSOW),
    ]
}

fn share(current: Current, rated: Current) -> Ratio {
    current / rated
}
