//! Force, power, speed and stopping.

mod air;
mod climb;
mod drive;
mod limits;
mod resistance;
mod run;
mod stop;

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = air::rules();
    rules.extend(resistance::rules());
    rules.extend(drive::rules());
    rules.extend(limits::rules());
    rules.extend(climb::rules());
    rules.extend(run::rules());
    rules.extend(stop::rules());
    rules
}
