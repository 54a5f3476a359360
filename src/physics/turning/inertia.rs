//! Moments of inertia: of plain bodies, moved to another axis, and measured by timing a swing.

use std::f64::consts::PI;

use uom::ConstZero;
use uom::si::f64::{Acceleration, Length, Mass, MomentOfInertia, Ratio, Time};

use crate::physics::Impossible;

/// Moment of inertia of a point mass, `I = m r²`.
///
/// Mass in kilograms, distance from the axis in metres.
/// Source: OpenStax, University Physics Volume 1, section 10.4.
fn point_inertia(mass: Mass, distance: Length) -> MomentOfInertia {
    mass * distance * distance
}

/// Moment of inertia of an even box about the upright axis through its middle, `I = m (L² + W²)/12`.
///
/// Source: OpenStax, University Physics Volume 1, Figure 10.20 (rectangular plate).
pub fn box_inertia(mass: Mass, length: Length, width: Length) -> MomentOfInertia {
    mass * (length * length + width * width) / 12.0
}

/// Two moments of inertia about the same axis, added.
pub fn added(one: MomentOfInertia, other: MomentOfInertia) -> MomentOfInertia {
    one + other
}

/// Moment of inertia about an axis beside the centre of gravity, `I = I₀ + m d²`.
///
/// Both axes parallel, `d` between them in metres.
/// Source: parallel-axis theorem, OpenStax, University Physics Volume 1, section 10.5.
fn moved_inertia(own: MomentOfInertia, mass: Mass, distance: Length) -> MomentOfInertia {
    own + point_inertia(mass, distance)
}

/// Radius of gyration, `k = √(I / m)`: how far out the mass sits, on the whole.
///
/// Source: the definition.
pub fn radius_of_gyration(inertia: MomentOfInertia, mass: Mass) -> Length {
    (inertia / mass).sqrt()
}

/// Moment of inertia about the centre of gravity from a timed swing, `I = m g d T²/(4π²) − m d²`.
///
/// The body hangs from a pivot a distance `d` from its centre of gravity and swings through a few
/// degrees with the period `T` (there and back); the axis is that of the swing.
/// Source: physical pendulum, J. K. Moore, BicycleParameters; OpenStax, University Physics Volume 1,
/// section 15.4.
///
/// # Errors
/// [`Impossible::TooFastASwing`] when the period is shorter than that of a point mass.
pub fn pendulum_inertia(
    mass: Mass,
    gravity: Acceleration,
    distance: Length,
    period: Time,
) -> Result<MomentOfInertia, Impossible> {
    let about_pivot = mass * gravity * distance * period * period / (4.0 * PI * PI);
    let inertia: MomentOfInertia = about_pivot - mass * distance * distance;
    if inertia < MomentOfInertia::ZERO { Err(Impossible::TooFastASwing) } else { Ok(inertia) }
}

/// Moment of inertia of a turning part of a plain shape and what is fixed to it,
/// `I = k m r² + J_a + m_a r_a²`.
///
/// Shape `k`: ½ for a disc, 1 for a thin ring, 2/5 for a ball, 1/3 for a rod about its middle (`r` half
/// its length) or its end (`r` its length). `J_a` is the added mass's own inertia about its middle.
/// Source: OpenStax, University Physics Volume 1, Figure 10.20 and the parallel-axis theorem,
/// section 10.5.
pub fn spinning_inertia(
    shape: Ratio,
    mass: Mass,
    radius: Length,
    added: Mass,
    distance: Length,
    own: MomentOfInertia,
) -> MomentOfInertia {
    point_inertia(mass, radius) * shape + moved_inertia(own, added, distance)
}

/// Moment of inertia from a twisting wire, `I = I_r (T / T_r)²`.
///
/// A body of known inertia `I_r` swings on the same wire with the period `T_r`.
/// Source: J. K. Moore, BicycleParameters; OpenStax, University Physics Volume 1, section 15.4.
pub fn torsion_inertia(
    known: MomentOfInertia,
    known_period: Time,
    period: Time,
) -> MomentOfInertia {
    let share: Ratio = period / known_period;
    known * share * share
}
