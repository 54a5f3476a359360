//! What holds the machine back, and the power that goes into it.

use uom::ConstZero;
use uom::si::f64::{Acceleration, Area, Force, Length, Mass, MassDensity, Power, Ratio, Velocity};

/// Drag area `A_d = C_d A`.
///
/// Area in square metres, what the air meets from the front.
/// Source: OpenStax, University Physics Volume 1, section 6.4 Drag Force and Terminal Speed.
pub fn drag_area(coefficient: Ratio, frontal_area: Area) -> Area {
    coefficient * frontal_area
}

/// Air drag `F = ½ ρ C_d A v²`.
///
/// Density in kilograms per cubic metre, drag area `C_d A` in square metres, speed against the air
/// in metres per second. Holds for blunt bodies above a walking pace.
/// Source: OpenStax, University Physics Volume 1, section 6.4 Drag Force and Terminal Speed.
pub fn air_drag(density: MassDensity, drag_area: Area, speed: Velocity) -> Force {
    density * drag_area * speed * speed * 0.5
}

/// Speed at which drag alone takes a force, `v = √(2 F / (ρ C_d A))`; zero for a force below zero.
///
/// Source: terminal speed, OpenStax, University Physics Volume 1, section 6.4.
pub fn terminal_speed(force: Force, density: MassDensity, drag_area: Area) -> Velocity {
    (force.max(Force::ZERO) * 2.0 / (density * drag_area)).sqrt()
}

/// Speed at which air drag equals rolling resistance, `v = √(2 R / (ρ C_d A))`.
///
/// Source: D. J. C. MacKay, Sustainable Energy - without the hot air, technical chapter A.
pub fn drag_crossover(rolling: Force, density: MassDensity, drag_area: Area) -> Velocity {
    terminal_speed(rolling, density, drag_area)
}

/// Distance between stops at which the air takes as much energy as starting, `d = m / (ρ A_d)`.
///
/// Mass in kilograms, density in kilograms per cubic metre, drag area in square metres; every stop
/// throws the speed away. Source: D. J. C. MacKay, Sustainable Energy - without the hot air,
/// technical chapter A.
pub fn stop_spacing_balance(mass: Mass, density: MassDensity, drag_area: Area) -> Length {
    mass / (density * drag_area)
}

/// Two forces along the way, added.
pub fn sum(one: Force, other: Force) -> Force {
    one + other
}

/// Power to go on at a speed, `P = F v`; zero when the slope pulls more than all else holds back.
///
/// Source: OpenStax, University Physics Volume 1, section 7.4 Power.
pub fn power_at_speed(resistance: Force, speed: Velocity) -> Power {
    (resistance * speed).max(Power::ZERO)
}

/// Thrust for an acceleration against a resistance, `F = m a + R`.
///
/// The mass is the equivalent mass where rotating parts speed up as well.
/// Source: Newton's second law, OpenStax, University Physics Volume 1, section 5.3.
pub fn thrust_for(mass: Mass, acceleration: Acceleration, resistance: Force) -> Force {
    mass * acceleration + resistance
}
