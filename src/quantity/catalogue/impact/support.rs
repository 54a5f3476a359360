//! Drops onto something springy, and what spring or bumper a stop needs.

use crate::quantity::{Entry, Force, Id, Length, Ratio, Stiffness, Topic::Impact};

pub const SUPPORT_RATE: Id<Stiffness> = Id::new("support-rate");
pub const SUPPORT_SAG: Id<Length> = Id::new("support-sag");
pub const DROP_FACTOR: Id<Ratio> = Id::new("drop-factor");
pub const SUPPORT_PEAK_FORCE: Id<Force> = Id::new("support-peak-force");
pub const SUPPORT_PEAK_SAG: Id<Length> = Id::new("support-peak-sag");
pub const SUPPORT_PEAK_G: Id<Ratio> = Id::new("support-peak-g");
pub const BUMPER_TRAVEL: Id<Length> = Id::new("bumper-travel");
pub const SPRING_TRAVEL: Id<Length> = Id::new("spring-travel");
pub const SPRING_FOR_LIMIT: Id<Stiffness> = Id::new("spring-for-limit");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Impact, SUPPORT_RATE, "stiffness of what it lands on", r"k_s", "Force for each length that the support gives: springs, a mount, a rod, foam in its straight range.")
        .above_zero()
        .units(&["N/mm", "kN/m"], &["lbf/in"])
        .usual(500.0, 5e6),
    Entry::found(Impact, SUPPORT_SAG, "sag at rest", r"\delta_s", "How far the support gives under the weight at rest."),
    Entry::found(Impact, DROP_FACTOR, "peak over the weight at rest", r"n_s", "How many times the force at rest the peak is; 2 for a load let go at once from no height."),
    Entry::found(Impact, SUPPORT_PEAK_FORCE, "force on what it lands on (peak)", r"F_s'", "The most that the support is pressed with, nothing lost on the way.")
        .headline(),
    Entry::found(Impact, SUPPORT_PEAK_SAG, "sag at the lowest point", r"\delta_{\mathrm{peak}}", "How far the support gives before it throws the machine back."),
    Entry::found(Impact, SUPPORT_PEAK_G, "deceleration on the support (peak) in g", r"G_s'", "The peak deceleration of what lands, in multiples of the local gravity.")
        .units(&["g"], &["g"]),
    Entry::found(Impact, BUMPER_TRAVEL, "bumper travel needed", r"s_B", "The stop distance that just keeps the peak at the shock limit, in the pulse shape chosen.")
        .headline(),
    Entry::found(Impact, SPRING_TRAVEL, "spring travel needed", r"s_S", "The travel of one straight spring that just keeps the peak at the shock limit."),
    Entry::found(Impact, SPRING_FOR_LIMIT, "spring needed", r"k_S", "The stiffness of that spring."),
];
