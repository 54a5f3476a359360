//! Weight, and what a slope does with it.

use crate::physics::weight;
use crate::quantity::catalogue::machine::*;
use crate::rules::Rule;

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(WEIGHT, (MASS, GRAVITY), weight::weight)
            .title("Weight is mass times gravity")
            .formula(r"\q{weight} = \q{mass} \cdot \q{gravity}")
            .assumes(&["Gravity is the same everywhere the machine goes; on Earth it varies by half a percent."])
            .holds("Any mass, standing or moving steadily.")
            .source("OpenStax, University Physics Volume 1, section 5.4"),
        Rule::new(GROUND_FORCE, (WEIGHT, SLOPE), weight::force_square_to_slope)
            .title("On a slope only part of the weight presses into the ground")
            .formula(r"\q{ground-force} = \q{weight} \cdot \cos \q{slope}")
            .assumes(&["The machine stands or moves steadily; nothing pulls it up or down."])
            .holds("Firm, even ground along the whole machine.")
            .source("OpenStax, University Physics Volume 1, section 5.6"),
        Rule::new(SLOPE_FORCE, (WEIGHT, SLOPE), weight::force_along_slope)
            .title("The rest of the weight pulls along the slope")
            .formula(r"\q{slope-force} = \q{weight} \cdot \sin \q{slope}")
            .assumes(&["The machine stands or moves steadily."])
            .holds("Any even slope.")
            .source("OpenStax, University Physics Volume 1, section 5.6"),
    ]
}
