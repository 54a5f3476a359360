//! Threads, clamping and joints that must not slip.

use std::f64::consts::FRAC_PI_4;

use uom::si::f64::{Area, Energy, Force, Length, Pressure, Ratio, Torque};
use uom::si::ratio::ratio;

use crate::physics::Impossible;

/// Stress area of a metric thread, `A_s = π/4 (d − 0.9382 P)²`.
///
/// Nominal diameter and pitch in metres.
/// Source: ISO 898-1, nominal stress area (checked against a table of its loads).
///
/// # Errors
/// [`Impossible::PitchTooCoarse`] when the pitch leaves no core.
pub fn thread_stress_area(diameter: Length, pitch: Length) -> Result<Area, Impossible> {
    let core = diameter - pitch * 0.9382;
    if core <= Length::default() {
        return Err(Impossible::PitchTooCoarse);
    }
    Ok(core * core * FRAC_PI_4)
}

/// Load of a thread at a stress, `F = A_s σ`: proof load or least breaking load by its class.
///
/// Source: ISO 898-1, loads by class (read in a table of them).
pub fn bolt_load(stress_area: Area, stress: Pressure) -> Force {
    stress_area * stress
}

/// Clamping force to aim for, a share of the proof load.
///
/// Source: Shigley, Mechanical Engineering Design, 75 % for joints that are undone (from memory).
pub fn target_clamp(share: Ratio, proof_load: Force) -> Force {
    share * proof_load
}

/// Torque that gives a clamping force, `T = K F d`.
///
/// Source: Shigley, Mechanical Engineering Design, nut factor K (from memory).
pub fn tightening_torque(nut_factor: Ratio, clamp: Force, diameter: Length) -> Torque {
    (nut_factor * clamp * diameter).into()
}

/// Clamping force that a torque gives, `F = T / (K d)`.
///
/// Source: Shigley, Mechanical Engineering Design, nut factor K (from memory).
pub fn clamp_from_torque(torque: Torque, nut_factor: Ratio, diameter: Length) -> Force {
    Energy::from(torque) / (nut_factor * diameter)
}

/// The least clamping force, `F (1 − scatter)`.
pub fn least_clamp(clamp: Force, scatter: Ratio) -> Force {
    clamp * (Ratio::new::<ratio>(1.0) - scatter)
}

/// The highest clamping force, `F (1 + scatter)`.
pub fn highest_clamp(clamp: Force, scatter: Ratio) -> Force {
    clamp * (Ratio::new::<ratio>(1.0) + scatter)
}

/// Sideways force at which a joint slips, `F = n f µ F_clamp`.
///
/// `n` bolts, `f` faces that would slide. Source: Coulomb friction; EN 1993-1-8 section 3.9 for the
/// form (from memory).
pub fn slip_load(count: Ratio, faces: Ratio, friction: Ratio, clamp: Force) -> Force {
    count * faces * friction * clamp
}

/// Shear load of one bolt in one plane, threads in the plane, `F = α A_s f_ub / γ`.
///
/// Source: EN 1993-1-8, table 3.4: α is 0.6 for classes 4.6, 5.6 and 8.8, 0.5 for 10.9; γ 1.25.
pub fn bolt_shear_load(
    shear_factor: Ratio,
    stress_area: Area,
    strength: Pressure,
    partial: Ratio,
) -> Force {
    shear_factor * (stress_area * strength) / partial
}

/// What all bolts and faces take, each an even share, `F = n f F₁`.
pub fn group_load(count: Ratio, faces: Ratio, one: Force) -> Force {
    count * faces * one
}
