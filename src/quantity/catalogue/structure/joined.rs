//! Sections made stiffer by joining: a plate on a section, and two of a kind apart.

use crate::quantity::{Entry, Id, Length, SecondMoment, Topic::Structure};

pub const PLATE_WIDTH: Id<Length> = Id::new("plate-width");
pub const PLATE_THICKNESS: Id<Length> = Id::new("plate-thickness");
pub const PLATE_DISTANCE: Id<Length> = Id::new("plate-distance");
pub const PAIR_SPACING: Id<Length> = Id::new("pair-spacing");
pub const PLATED_SHIFT: Id<Length> = Id::new("plated-shift");
pub const PLATED_SECOND_MOMENT: Id<SecondMoment> = Id::new("plated-second-moment");
pub const PAIR_SECOND_MOMENT: Id<SecondMoment> = Id::new("pair-second-moment");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Structure, PLATE_WIDTH, "width of a joined plate", r"b_{\mathrm{pl}}", "Width of a flat plate, deck or skin joined to the section all along.")
        .above_zero()
        .units(&["mm"], &["in"])
        .usual(10e-3, 0.5),
    Entry::given(Structure, PLATE_THICKNESS, "thickness of a joined plate", r"t_{\mathrm{pl}}", "Thickness of that plate, in the direction of the load.")
        .above_zero()
        .units(&["mm"], &["in"])
        .usual(0.5e-3, 12e-3),
    Entry::given(Structure, PLATE_DISTANCE, "joined plate from the section's middle", r"d_{\mathrm{pl}}", "From the middle of the section to the middle of the plate's thickness, in the direction of the load.")
        .above_zero()
        .units(&["mm"], &["in"])
        .usual(2e-3, 0.1),
    Entry::given(Structure, PAIR_SPACING, "spacing of two joined sections", r"s_{\mathrm{pair}}", "From middle to middle of two equal sections, one above the other in the direction of the load, joined by webs or struts.")
        .above_zero()
        .units(&["mm"], &["in"])
        .usual(10e-3, 0.4),
    Entry::found(Structure, PLATED_SHIFT, "how far the plate moves the middle", r"e_{\mathrm{pl}}", "How far the line that neither stretches nor shortens moves from the section's own middle towards the plate.")
        .units(&["mm"], &["in"]),
    Entry::found(Structure, PLATED_SECOND_MOMENT, "second moment with the plate", r"I_{\mathrm{pl}}", "Second moment of section and plate together; enter it as the second moment of the beam to use it there."),
    Entry::found(Structure, PAIR_SECOND_MOMENT, "second moment of two joined sections", r"I_{\mathrm{pair}}", "Second moment of the pair about the line midway between them; enter it as the second moment of the beam to use it there."),
];
