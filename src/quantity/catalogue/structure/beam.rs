//! A beam under a load.

use crate::quantity::{Angle, Entry, Force, Id, Length, Pressure, Ratio, Topic::Structure, Torque};

pub const BEAM_LOAD: Id<Force> = Id::new("beam-load");
pub const BEAM_SPAN: Id<Length> = Id::new("beam-span");
pub const MOMENT_FACTOR: Id<Ratio> = Id::new("moment-factor");
pub const SAG_FACTOR: Id<Ratio> = Id::new("sag-factor");
pub const BEND_FACTOR: Id<Ratio> = Id::new("bend-factor");
pub const END_MOMENT: Id<Torque> = Id::new("end-moment");
pub const BENDING_MOMENT: Id<Torque> = Id::new("bending-moment");
pub const BEAM_STRESS: Id<Pressure> = Id::new("beam-stress");
pub const BEAM_SAG: Id<Length> = Id::new("beam-sag");
pub const BEAM_SLOPE: Id<Angle> = Id::new("beam-slope");
pub const SHEAR_SHIFT: Id<Length> = Id::new("shear-shift");
pub const LARGEST_MOMENT: Id<Torque> = Id::new("largest-moment");
pub const BEND_RADIUS: Id<Length> = Id::new("bend-radius");
pub const END_MOMENT_SAG: Id<Length> = Id::new("end-moment-sag");
pub const BEAM_MARGIN: Id<Ratio> = Id::new("beam-margin");
pub const ACROSS_MARGIN: Id<Ratio> = Id::new("across-margin");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Structure, BEAM_LOAD, "load on the beam", r"F_b", "The force that bends the beam, at its worst; for a landing or a crash the peak, not the weight.")
        .usual(1.0, 2e4),
    Entry::given(Structure, BEAM_SPAN, "span of the beam", r"L_b", "From where it is held to where it is loaded, or from support to support.")
        .above_zero()
        .usual(0.02, 2.0),
    Entry::given(Structure, MOMENT_FACTOR, "moment factor", r"c_M", "Bending moment over load times span: 1 held at one end and loaded at the other, ¼ on two supports and loaded in the middle, ⅛ with the load spread evenly.")
        .assumed(1.0)
        .above_zero()
        .usual(0.1, 1.0),
    Entry::given(Structure, SAG_FACTOR, "sag factor", r"c_\delta", "How little it sags for how it is held: 3 held at one end and loaded at the other, 48 on two supports and loaded in the middle, 76.8 with the load spread evenly.")
        .assumed(3.0)
        .above_zero()
        .usual(3.0, 200.0),
    Entry::given(Structure, BEND_FACTOR, "slope factor", r"c_\theta", "How little its steepest place tilts for how it is held: 2 held at one end and loaded at the other, 16 on two supports and loaded in the middle, 24 with the load spread evenly.")
        .assumed(2.0)
        .above_zero()
        .usual(2.0, 64.0),
    Entry::given(Structure, END_MOMENT, "moment on the end", r"M_0", "A pure twist in the plane of bending, the same all along the beam.")
        .above_zero()
        .usual(0.1, 2e3),
    Entry::found(Structure, BENDING_MOMENT, "bending moment (largest)", r"M_B", "The moment where the beam is bent hardest."),
    Entry::found(Structure, BEAM_STRESS, "stress in the beam (largest)", r"\sigma_b", "The stress at the outermost fibre where it is bent hardest.")
        .units(&["MPa"], &["psi", "ksi"])
        .headline(),
    Entry::found(Structure, BEAM_SAG, "sag of the beam (largest)", r"\delta_b", "How far it bends under the load.")
        .headline(),
    Entry::found(Structure, BEAM_SLOPE, "steepest slope of the bent beam", r"\theta_b", "How far the end of it tilts: what a bearing, a belt or a gear on it has to bear."),
    Entry::found(Structure, SHEAR_SHIFT, "sideways shear of a short stub", r"\delta_\tau", "How far a stub no longer than its own depth gives by shear alone. In anything longer bending is far more."),
    Entry::found(Structure, LARGEST_MOMENT, "largest moment it holds", r"M_{\mathrm{max}}", "The bending moment at which the outermost fibre reaches the strength of the material."),
    Entry::found(Structure, BEND_RADIUS, "radius it is bent to", r"R_b", "The radius of the arc that a moment on the end bends the beam to."),
    Entry::found(Structure, END_MOMENT_SAG, "sag under the end moment", r"\delta_0", "How far the end leaves its line when it is held at the other and bent to an even arc."),
    Entry::found(Structure, BEAM_MARGIN, "margin of the beam", r"M_\sigma", "Strength of the material over the stress in the beam; in a printed part, with the strands along it.")
        .headline(),
    Entry::found(Structure, ACROSS_MARGIN, "margin of the beam across the layers", r"M_\perp", "Strength across the layers over the stress in the beam: for a part printed standing up.")
        .headline(),
];
