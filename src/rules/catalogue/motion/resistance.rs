//! What holds the machine back.

use uom::ConstZero;

use crate::physics::motion;
use crate::quantity::Force;
use crate::quantity::catalogue::machine::{MASS, SLOPE, SLOPE_FORCE};
use crate::quantity::catalogue::motion::*;
use crate::quantity::catalogue::traction::ROLLING_RESISTANCE;
use crate::rules::{Caution, Maybe, Rule};

const DRAG: &str = "OpenStax, University Physics Volume 1, section 6.4";
const BLUNT: &[&str] = &[
    "The air is still: a head wind adds to the speed.",
    "The drag coefficient stays the same at every speed.",
];
const BALANCE: &str = "Force balance, F. L. Mannering and S. S. Washburn, Principles of Highway Engineering and Traffic Analysis, chapter 2";

/// Said where the drag is left out because its area is not known.
pub(super) const NO_DRAG: Caution = Caution {
    when: |values| values.si(DRAG_AREA).is_none(),
    says: "Air drag is left out, because the drag area is not known; at a walking pace it does not matter.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(DRAG_AREA, (DRAG_COEFFICIENT, FRONTAL_AREA), motion::drag_area)
            .title("Shape times shadow")
            .formula(r"\q{drag-area} = \q{drag-coefficient} \cdot \q{frontal-area}")
            .assumes(&["The coefficient goes with that very area."])
            .holds("Any machine; a rider is part of both.")
            .source(DRAG),
        Rule::new(AIR_DRAG, (AIR_DENSITY, DRAG_AREA, DRIVING_SPEED), motion::air_drag)
            .title("Drag grows with the square of the speed")
            .formula(r"\q{air-drag} = \frac{1}{2} \, \q{air-density} \cdot \q{drag-area} \cdot \q{driving-speed}^2")
            .assumes(BLUNT)
            .holds("Blunt machines from a walking pace up.")
            .source(DRAG),
        Rule::new(TARGET_DRAG, (AIR_DENSITY, DRAG_AREA, TARGET_SPEED), motion::air_drag)
            .title("Drag grows with the square of the speed")
            .formula(r"\q{target-drag} = \frac{1}{2} \, \q{air-density} \cdot \q{drag-area} \cdot \q{target-speed}^2")
            .assumes(BLUNT)
            .holds("Blunt machines from a walking pace up.")
            .source(DRAG),
        Rule::new(STEADY_RESISTANCE, (ROLLING_RESISTANCE, SLOPE_FORCE), motion::sum)
            .title("Ground and slope together")
            .formula(r"\q{steady-resistance} = \q{rolling-resistance} + \q{slope-force}")
            .assumes(&["Neither changes with speed."])
            .holds("Straight driving; turning takes more.")
            .source(BALANCE)
            .cautions(&[STEEP]),
        Rule::new(DRIVING_RESISTANCE, (STEADY_RESISTANCE, Maybe(AIR_DRAG)), with_drag)
            .title("Ground, slope and air together")
            .formula(r"\q{driving-resistance} = \q{steady-resistance} + \q{air-drag}")
            .assumes(&["A steady speed in a straight line."])
            .holds("Straight driving; turning takes more.")
            .source(BALANCE)
            .cautions(&[NO_DRAG]),
        Rule::new(DRAG_CROSSOVER, (ROLLING_RESISTANCE, AIR_DENSITY, DRAG_AREA), motion::drag_crossover)
            .title("Where air and ground hold back alike")
            .formula(r"\q{drag-crossover} = \sqrt{\dfrac{2 \, \q{rolling-resistance}}{\q{air-density} \cdot \q{drag-area}}}")
            .assumes(BLUNT)
            .holds("The slope is left out.")
            .source("D. J. C. MacKay, Sustainable Energy - without the hot air, technical chapter A"),
        Rule::new(STOP_SPACING_BALANCE, (MASS, AIR_DENSITY, DRAG_AREA), motion::stop_spacing_balance)
            .title("Where the air swept weighs as much as the machine")
            .formula(r"\q{stop-spacing-balance} = \dfrac{\q{mass}}{\q{air-density} \cdot \q{drag-area}}")
            .assumes(&["Every stop throws the speed away; rolling and slope are left out."])
            .holds("Any speed: both go with its square.")
            .source("D. J. C. MacKay, Sustainable Energy - without the hot air, technical chapter A"),
        Rule::new(DRIVING_POWER, (DRIVING_RESISTANCE, DRIVING_SPEED), motion::power_at_speed)
            .title("Power is force times speed")
            .formula(r"\q{driving-power} = \max \left( 0, \; \q{driving-resistance} \cdot \q{driving-speed} \right)")
            .assumes(&["A steady speed; gears and motor lose more before it arrives."])
            .holds("Straight driving without slip; on soft ground slip takes its share on top.")
            .source("OpenStax, University Physics Volume 1, section 7.4")
            .cautions(&[NO_DRAG]),
    ]
}

/// Snow on steep slopes slides.
const STEEP: Caution = Caution {
    when: |values| values.si(SLOPE).is_some_and(|slope| slope.abs() > 30.0_f64.to_radians()),
    says: "Snow on slopes over about 30° can slide: read the local avalanche bulletin and keep off when in doubt.",
};

/// All that holds back; unknown drag counts as none, and that is said.
pub(super) fn with_drag(steady: Force, drag: Option<Force>) -> Force {
    motion::sum(steady, drag.unwrap_or(Force::ZERO))
}
