//! The section of a beam: solid, tube, box or web and flanges.

use crate::quantity::{Area, Entry, Id, Length, SecondMoment, Topic::Structure, Volume};

pub const BAR_WIDTH: Id<Length> = Id::new("bar-width");
pub const BAR_DEPTH: Id<Length> = Id::new("bar-depth");
pub const ROUND_DIAMETER: Id<Length> = Id::new("round-diameter");
pub const TUBE_DIAMETER: Id<Length> = Id::new("tube-diameter");
pub const TUBE_WALL: Id<Length> = Id::new("tube-wall");
pub const BOX_TUBE_WIDTH: Id<Length> = Id::new("box-tube-width");
pub const BOX_TUBE_DEPTH: Id<Length> = Id::new("box-tube-depth");
pub const BOX_TUBE_WALL: Id<Length> = Id::new("box-tube-wall");
pub const BOX_TUBE_CORNER: Id<Length> = Id::new("box-tube-corner");
pub const FLANGE_WIDTH: Id<Length> = Id::new("flange-width");
pub const FLANGE_THICKNESS: Id<Length> = Id::new("flange-thickness");
pub const WEB_THICKNESS: Id<Length> = Id::new("web-thickness");
pub const WEB_DEPTH: Id<Length> = Id::new("web-depth");
pub const BAR_AREA: Id<Area> = Id::new("bar-area");
pub const ROUND_AREA: Id<Area> = Id::new("round-area");
pub const TUBE_AREA: Id<Area> = Id::new("tube-area");
pub const BOX_TUBE_AREA: Id<Area> = Id::new("box-tube-area");
pub const FLANGED_AREA: Id<Area> = Id::new("flanged-area");
pub const SECTION_AREA: Id<Area> = Id::new("section-area");
pub const BAR_SECOND_MOMENT: Id<SecondMoment> = Id::new("bar-second-moment");
pub const ROUND_SECOND_MOMENT: Id<SecondMoment> = Id::new("round-second-moment");
pub const TUBE_SECOND_MOMENT: Id<SecondMoment> = Id::new("tube-second-moment");
pub const BOX_TUBE_SECOND_MOMENT: Id<SecondMoment> = Id::new("box-tube-second-moment");
pub const FLANGED_SECOND_MOMENT: Id<SecondMoment> = Id::new("flanged-second-moment");
pub const SECOND_MOMENT: Id<SecondMoment> = Id::new("second-moment");
pub const BAR_SECTION_MODULUS: Id<Volume> = Id::new("bar-section-modulus");
pub const ROUND_SECTION_MODULUS: Id<Volume> = Id::new("round-section-modulus");
pub const TUBE_SECTION_MODULUS: Id<Volume> = Id::new("tube-section-modulus");
pub const BOX_TUBE_SECTION_MODULUS: Id<Volume> = Id::new("box-tube-section-modulus");
pub const FLANGED_SECTION_MODULUS: Id<Volume> = Id::new("flanged-section-modulus");
pub const SECTION_MODULUS: Id<Volume> = Id::new("section-modulus");

pub(in super::super) const ENTRIES: &[Entry] = &[
    side(
        BAR_WIDTH,
        "width of a solid bar",
        "b",
        "Width of a solid rectangular bar, square to the load.",
        2e-3,
        0.1,
    ),
    side(
        BAR_DEPTH,
        "depth of a solid bar",
        "h_b",
        "Depth of a solid rectangular bar in the direction of the load: stiffness goes with its cube.",
        2e-3,
        0.15,
    ),
    side(
        ROUND_DIAMETER,
        "diameter of a solid round",
        "d_r",
        "Diameter of a solid round bar or axle.",
        2e-3,
        0.06,
    ),
    side(
        TUBE_DIAMETER,
        "diameter of a round tube",
        "D_t",
        "Outside diameter of a round tube.",
        4e-3,
        0.1,
    ),
    side(TUBE_WALL, "wall of a round tube", "t_t", "Wall thickness of a round tube.", 0.3e-3, 6e-3),
    side(
        BOX_TUBE_WIDTH,
        "width of a box tube",
        "B",
        "Outside width of a square or rectangular tube, square to the load.",
        5e-3,
        0.15,
    ),
    side(
        BOX_TUBE_DEPTH,
        "depth of a box tube",
        "H",
        "Outside depth of a square or rectangular tube in the direction of the load.",
        5e-3,
        0.15,
    ),
    side(
        BOX_TUBE_WALL,
        "wall of a box tube",
        "t_B",
        "Wall thickness of a square or rectangular tube.",
        0.5e-3,
        8e-3,
    ),
    Entry::given(
        Structure,
        BOX_TUBE_CORNER,
        "corner radius of a box tube",
        "r_B",
        "Outside radius of its corners; cold-formed steel tube has about twice the wall.",
    )
    .assumed(0.0)
    .units(&["mm"], &["in"])
    .usual(0.0, 16e-3),
    side(
        FLANGE_WIDTH,
        "width of a flange",
        "b_f",
        "Width of the two equal plates above and below a web.",
        3e-3,
        0.15,
    ),
    side(
        FLANGE_THICKNESS,
        "thickness of a flange",
        "t_f",
        "Thickness of each of the two equal plates.",
        0.5e-3,
        20e-3,
    ),
    side(
        WEB_THICKNESS,
        "thickness of the web",
        "t_w",
        "Thickness of the wall between the two plates; of two walls, both together.",
        0.5e-3,
        20e-3,
    ),
    side(
        WEB_DEPTH,
        "depth of the web",
        "h_w",
        "Depth of the wall between the two plates, the plates left out.",
        3e-3,
        0.2,
    ),
    area(
        BAR_AREA,
        "section of the solid bar",
        "A_b",
        "Area of material in a solid rectangular bar.",
    ),
    area(ROUND_AREA, "section of the solid round", "A_d", "Area of material in a solid round bar."),
    area(TUBE_AREA, "section of the round tube", "A_t", "Area of material in a round tube."),
    area(
        BOX_TUBE_AREA,
        "section of the box tube",
        "A_B",
        "Area of material in a square or rectangular tube, round corners included.",
    ),
    area(
        FLANGED_AREA,
        "section of web and flanges",
        "A_f",
        "Area of material in a web between two plates.",
    ),
    area(
        SECTION_AREA,
        "section of the beam",
        "A_s",
        "Area of material in the beam: whichever section is described.",
    ),
    second(
        BAR_SECOND_MOMENT,
        "second moment of the solid bar",
        "I_b",
        "How well the shape of a solid rectangular bar resists bending.",
    ),
    second(
        ROUND_SECOND_MOMENT,
        "second moment of the solid round",
        "I_d",
        "How well the shape of a solid round bar resists bending.",
    ),
    second(
        TUBE_SECOND_MOMENT,
        "second moment of the round tube",
        "I_t",
        "How well the shape of a round tube resists bending.",
    ),
    second(
        BOX_TUBE_SECOND_MOMENT,
        "second moment of the box tube",
        "I_B",
        "How well the shape of a square or rectangular tube resists bending.",
    ),
    second(
        FLANGED_SECOND_MOMENT,
        "second moment of web and flanges",
        "I_f",
        "How well a web between two plates resists bending, all firmly joined.",
    ),
    second(
        SECOND_MOMENT,
        "second moment of the beam",
        "I",
        "How well the shape of the beam resists bending: whichever section is described.",
    ),
    modulus(
        BAR_SECTION_MODULUS,
        "section modulus of the solid bar",
        "Z_b",
        "Bending moment for each stress at the outermost fibre of a solid rectangular bar.",
    ),
    modulus(
        ROUND_SECTION_MODULUS,
        "section modulus of the solid round",
        "Z_d",
        "Bending moment for each stress at the outermost fibre of a solid round bar.",
    ),
    modulus(
        TUBE_SECTION_MODULUS,
        "section modulus of the round tube",
        "Z_t",
        "Bending moment for each stress at the outermost fibre of a round tube.",
    ),
    modulus(
        BOX_TUBE_SECTION_MODULUS,
        "section modulus of the box tube",
        "Z_B",
        "Bending moment for each stress at the outermost fibre of a square or rectangular tube.",
    ),
    modulus(
        FLANGED_SECTION_MODULUS,
        "section modulus of web and flanges",
        "Z_f",
        "Bending moment for each stress at the outermost fibre of a web between two plates.",
    ),
    modulus(
        SECTION_MODULUS,
        "section modulus of the beam",
        "Z",
        "Bending moment for each stress at the outermost fibre: whichever section is described.",
    ),
];

const fn side(
    id: Id<Length>,
    label: &'static str,
    symbol: &'static str,
    meaning: &'static str,
    low: f64,
    high: f64,
) -> Entry {
    Entry::given(Structure, id, label, symbol, meaning)
        .above_zero()
        .units(&["mm"], &["in"])
        .usual(low, high)
}

const fn area(
    id: Id<Area>,
    label: &'static str,
    symbol: &'static str,
    meaning: &'static str,
) -> Entry {
    Entry::found(Structure, id, label, symbol, meaning).units(&["mm²", "cm²"], &["in²"])
}

const fn second(
    id: Id<SecondMoment>,
    label: &'static str,
    symbol: &'static str,
    meaning: &'static str,
) -> Entry {
    Entry::found(Structure, id, label, symbol, meaning).units(&["mm⁴", "cm⁴"], &["in⁴"])
}

const fn modulus(
    id: Id<Volume>,
    label: &'static str,
    symbol: &'static str,
    meaning: &'static str,
) -> Entry {
    Entry::found(Structure, id, label, symbol, meaning).units(&["mm³", "cm³"], &["in³"])
}
