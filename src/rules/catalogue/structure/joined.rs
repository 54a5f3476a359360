//! Sections made stiffer by joining: a plate on a section, and two of a kind apart.

use uom::ConstZero;

use crate::physics::structure;
use crate::quantity::catalogue::structure::*;
use crate::quantity::{Area, Length, SecondMoment};
use crate::rules::{Caution, Rule};

const STATICS: &str = "Parallel axis theorem, D. Baker and W. Haynes, Engineering Statics: Open and Interactive, chapter 10";
const ONE_PIECE: &[&str] = &[
    "Both are of the same material and firmly joined all along, so that they bend as one.",
    "The load acts in the direction in which they lie apart.",
];
const JOINT: &[Caution] = &[Caution {
    when: |_| true,
    says: "Rivets, tape and a few screws slip: what is not welded or glued all along gives most of this away.",
}];

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            PLATED_SHIFT,
            (SECTION_AREA, PLATE_WIDTH, PLATE_THICKNESS, PLATE_DISTANCE),
            |area, width, thickness, distance| {
                structure::plated((area, SecondMoment::ZERO), (width, thickness), distance).0
            },
        )
        .title("The middle moves towards the plate")
        .formula(r"\q{plated-shift} = \dfrac{\q{plate-width} \cdot \q{plate-thickness} \cdot \q{plate-distance}}{\q{section-area} + \q{plate-width} \cdot \q{plate-thickness}}")
        .assumes(ONE_PIECE)
        .holds("A flat plate on one side of any section.")
        .source(STATICS),
        Rule::new(
            PLATED_SECOND_MOMENT,
            (SECTION_AREA, SECOND_MOMENT, PLATE_WIDTH, PLATE_THICKNESS, PLATE_DISTANCE),
            plated_second_moment,
        )
        .title("What is far from the middle counts most")
        .formula(r"\q{plated-second-moment} = \q{second-moment} + \dfrac{\q{plate-width} \cdot \q{plate-thickness}^3}{12} + \dfrac{\q{section-area} \cdot \q{plate-width} \cdot \q{plate-thickness}}{\q{section-area} + \q{plate-width} \cdot \q{plate-thickness}} \cdot \q{plate-distance}^2")
        .assumes(ONE_PIECE)
        .holds("A flat plate on one side of any section; a thin plate that is pressed together buckles long before.")
        .source(STATICS)
        .cautions(JOINT),
        Rule::new(
            PAIR_SECOND_MOMENT,
            (SECOND_MOMENT, SECTION_AREA, PAIR_SPACING),
            structure::pair_second_moment,
        )
        .title("Apart counts with the square")
        .formula(r"\q{pair-second-moment} = 2 \left( \q{second-moment} + \q{section-area} \left( \dfrac{\q{pair-spacing}}{2} \right)^2 \right)")
        .assumes(ONE_PIECE)
        .holds("Two equal sections with webs or struts between them that do not give.")
        .source(STATICS)
        .cautions(JOINT),
    ]
}

fn plated_second_moment(
    area: Area,
    second: SecondMoment,
    width: Length,
    thickness: Length,
    distance: Length,
) -> SecondMoment {
    structure::plated((area, second), (width, thickness), distance).1
}
