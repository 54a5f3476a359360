//! Materials, and rods under a straight pull.

use crate::quantity::{
    Area, Density, Entry, Force, Id, Length, Pressure, Ratio, Stiffness, Topic::Structure,
};

pub const YOUNGS_MODULUS: Id<Pressure> = Id::new("youngs-modulus");
pub const SHEAR_MODULUS: Id<Pressure> = Id::new("shear-modulus");
pub const MATERIAL_STRENGTH: Id<Pressure> = Id::new("material-strength");
pub const STRENGTH_ACROSS: Id<Pressure> = Id::new("strength-across");
pub const MATERIAL_DENSITY: Id<Density> = Id::new("material-density");
pub const STIFF_ROD_INDEX: Id<Ratio> = Id::new("stiff-rod-index");
pub const STIFF_BEAM_INDEX: Id<Ratio> = Id::new("stiff-beam-index");
pub const STIFF_PANEL_INDEX: Id<Ratio> = Id::new("stiff-panel-index");
pub const STRONG_ROD_INDEX: Id<Ratio> = Id::new("strong-rod-index");
pub const STRONG_BEAM_INDEX: Id<Ratio> = Id::new("strong-beam-index");
pub const ROD_FORCE: Id<Force> = Id::new("rod-force");
pub const ROD_AREA: Id<Area> = Id::new("rod-area");
pub const ROD_LENGTH: Id<Length> = Id::new("rod-length");
pub const ROD_STRESS: Id<Pressure> = Id::new("rod-stress");
pub const ROD_STRAIN: Id<Ratio> = Id::new("rod-strain");
pub const ROD_STRETCH: Id<Length> = Id::new("rod-stretch");
pub const ROD_STIFFNESS: Id<Stiffness> = Id::new("rod-stiffness");
pub const ROD_MARGIN: Id<Ratio> = Id::new("rod-margin");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Structure, YOUNGS_MODULUS, "stiffness of the material", "E", "Young's modulus: stress over strain while the material springs back.")
        .above_zero()
        .units(&["MPa", "GPa"], &["ksi"])
        .usual(0.5e9, 210e9),
    Entry::given(Structure, SHEAR_MODULUS, "shear stiffness of the material", "G_m", "Shear modulus: shear stress over shear angle while the material springs back.")
        .above_zero()
        .units(&["MPa", "GPa"], &["ksi"])
        .usual(0.2e9, 85e9),
    Entry::given(Structure, MATERIAL_STRENGTH, "strength of the material", r"\sigma_s", "The stress at which it stays bent or breaks, whichever comes first; in a printed part, pulled along the strands.")
        .above_zero()
        .units(&["MPa"], &["psi", "ksi"])
        .usual(10e6, 1600e6),
    Entry::given(Structure, STRENGTH_ACROSS, "strength across the layers", r"\sigma_\perp", "The stress at which a printed part comes apart between its layers, or a fibre part across its fibres.")
        .above_zero()
        .units(&["MPa"], &["psi", "ksi"])
        .usual(5e6, 1000e6),
    Entry::given(Structure, MATERIAL_DENSITY, "density of the material", r"\rho_m", "Mass over volume of the material.")
        .above_zero()
        .usual(400.0, 8000.0),
    Entry::found(Structure, STIFF_ROD_INDEX, "index: light stiff rod", r"i_{E1}", "Stiffness over density, in GPa per t/m³: twice the index, half the mass of a rod that stretches as little."),
    Entry::found(Structure, STIFF_BEAM_INDEX, "index: light stiff beam", r"i_{E2}", "Square root of stiffness over density, in √GPa per t/m³: twice the index, half the mass of a beam that bends as little."),
    Entry::found(Structure, STIFF_PANEL_INDEX, "index: light stiff panel", r"i_{E3}", "Cube root of stiffness over density, in ∛GPa per t/m³: twice the index, half the mass of a panel that bends as little."),
    Entry::found(Structure, STRONG_ROD_INDEX, "index: light strong rod", r"i_{S1}", "Strength over density, in MPa per t/m³: twice the index, half the mass of a rod that holds as much."),
    Entry::found(Structure, STRONG_BEAM_INDEX, "index: light strong beam", r"i_{S2}", "Strength to the power ⅔ over density, in MPa^⅔ per t/m³: twice the index, half the mass of a beam that holds as much."),
    Entry::given(Structure, ROD_FORCE, "pull on the rod", "F_r", "A straight pull on a rod, strap or cable, at its worst.")
        .usual(1.0, 5e4),
    Entry::given(Structure, ROD_AREA, "section of the rod", "A_r", "The area of material that the pull goes through, at its thinnest.")
        .above_zero()
        .units(&["mm²", "cm²"], &["in²"])
        .usual(1e-6, 1e-3),
    Entry::given(Structure, ROD_LENGTH, "length of the rod", "L_r", "The length that stretches.")
        .above_zero()
        .usual(0.02, 2.0),
    Entry::found(Structure, ROD_STRESS, "stress in the rod", r"\sigma_r", "Pull over section.")
        .units(&["MPa"], &["psi", "ksi"]),
    Entry::found(Structure, ROD_STRAIN, "strain of the rod", r"\epsilon_r", "Stretch over length."),
    Entry::found(Structure, ROD_STRETCH, "stretch of the rod", r"\Delta L_r", "How much longer the pull makes it."),
    Entry::found(Structure, ROD_STIFFNESS, "stiffness of the rod", "k_r", "Pull for each length of stretch."),
    Entry::found(Structure, ROD_MARGIN, "margin of the rod", "M_r", "Strength of the material over the stress in the rod.")
        .headline(),
];
