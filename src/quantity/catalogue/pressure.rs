//! Force per area under the machine.

use crate::quantity::{Entry, Id, Length, Mass, Pressure, Ratio, Topic};

pub const GROUND_PRESSURE: Id<Pressure> = Id::new("ground-pressure");
pub const PRESSURE_OFFSET: Id<Length> = Id::new("pressure-offset");
pub const END_PRESSURE_RATIO: Id<Ratio> = Id::new("end-pressure-ratio");
pub const LOW_END_PRESSURE: Id<Pressure> = Id::new("low-end-pressure");
pub const LIFTED_LENGTH: Id<Length> = Id::new("lifted-length");
pub const PRESSURE_MARGIN: Id<Ratio> = Id::new("pressure-margin");
pub const LOW_END_MARGIN: Id<Ratio> = Id::new("low-end-margin");
pub const BALANCE_MARGIN: Id<Ratio> = Id::new("balance-margin");
pub const LARGEST_MASS_MEAN: Id<Mass> = Id::new("largest-mass-mean");
pub const LARGEST_MASS: Id<Mass> = Id::new("largest-mass");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::found(Topic::Pressure, GROUND_PRESSURE, "ground pressure (mean)", "p", "The force on the ground spread evenly over the whole contact area.")
        .headline(),
    Entry::found(Topic::Pressure, PRESSURE_OFFSET, "offset of the load", "e", "How far from the middle of the contact the load really bears down, slope included; uphill or forward is positive.")
        .possible(-100.0, 100.0),
    Entry::found(Topic::Pressure, END_PRESSURE_RATIO, "worst end over mean", r"k_e", "How many times the mean the pressure under the low end is."),
    Entry::found(Topic::Pressure, LOW_END_PRESSURE, "pressure under the low end (worst)", r"p_{\mathrm{end}}", "The pressure under the end that the load leans towards.")
        .headline(),
    Entry::found(Topic::Pressure, LIFTED_LENGTH, "length that carries nothing", r"L_{\mathrm{up}}", "How much of the contact length has lifted off because the load leans too far."),
    Entry::found(Topic::Pressure, PRESSURE_MARGIN, "margin on mean pressure", r"M_p", "How many times the mean ground pressure the ground holds.")
        .headline(),
    Entry::found(Topic::Pressure, LOW_END_MARGIN, "margin under the low end", r"M_e", "How many times the pressure under the low end the ground holds.")
        .headline(),
    Entry::found(Topic::Pressure, BALANCE_MARGIN, "margin before one end lifts", r"M_b", "A sixth of the contact length over the offset of the load.")
        .headline(),
    Entry::found(Topic::Pressure, LARGEST_MASS_MEAN, "largest mass here (mean)", r"m_{\mathrm{mean}}", "The mass at which the mean pressure reaches what the ground holds, same tracks, same balance.")
        .headline(),
    Entry::found(Topic::Pressure, LARGEST_MASS, "largest mass here (worst end)", r"m_{\mathrm{max}}", "The mass at which the low end reaches what the ground holds, same tracks, same balance.")
        .headline(),
];
