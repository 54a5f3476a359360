//! Beams, bolts, materials and mounts.

mod beam;
mod bolt;
mod joined;
mod material;
mod section;
mod twist;

use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = material::rules();
    rules.extend(section::rules());
    rules.extend(joined::rules());
    rules.extend(twist::rules());
    rules.extend(beam::rules());
    rules.extend(bolt::rules());
    rules
}
