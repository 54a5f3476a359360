//! How hard soft ground lets itself be pushed, and at what slip.

use roots::{SimpleConvergency, find_root_brent};
use uom::ConstZero;
use uom::si::f64::{Angle, Area, Force, Length, MassRate, Pressure, Ratio, Velocity};
use uom::si::ratio::ratio;

use crate::physics::Impossible;

/// Share of its limit that the shear stress reaches, `1 − e^(−j/K)`.
///
/// `j` is how far the ground has been dragged along, `K` the shear deformation modulus, above zero.
/// Source: Z. Janosi, B. Hanamoto, 1961, in J. Y. Wong, Theory of Ground Vehicles, chapter 2.
pub fn stress_share(displacement: Length, modulus: Length) -> Ratio {
    Ratio::new::<ratio>(-(-(displacement / modulus).get::<ratio>()).exp_m1())
}

/// Shear stress on the ground, `τ = (c + p tan φ)(1 − e^(−j/K))`.
///
/// Cohesion and pressure in pascals; friction angle below 90°.
/// Source: as [`stress_share`]; Mohr and Coulomb for the limit.
pub fn shear_stress(
    cohesion: Pressure,
    pressure: Pressure,
    friction: Angle,
    displacement: Length,
    modulus: Length,
) -> Pressure {
    (cohesion + pressure * friction.tan()) * stress_share(displacement, modulus)
}

/// Friction angle from two shear tests of one plate, `tan φ = (F₂ − F₁)/(N₂ − N₁)`.
///
/// Loads and the pulls at which the ground gives way, in newtons, the second test the heavier.
/// Source: Mohr–Coulomb through two points; the direct shear test of ASTM D3080 runs through three or
/// more.
///
/// # Errors
/// [`Impossible::NoHeavierLoad`] unless the second load is more, and its pull no less.
pub fn angle_from_tests(light: (Force, Force), heavy: (Force, Force)) -> Result<Angle, Impossible> {
    let (load, pull) = (heavy.0 - light.0, heavy.1 - light.1);
    if load > Force::ZERO && pull >= Force::ZERO {
        Ok((pull / load).atan())
    } else {
        Err(Impossible::NoHeavierLoad)
    }
}

/// Cohesion from a shear test, `c = (F − N tan φ)/A`; below zero it is within the error of the tests.
///
/// Source: as [`angle_from_tests`].
pub fn cohesion_from_test(pull: Force, load: Force, friction: Angle, area: Area) -> Pressure {
    (pull - load * friction.tan()) / area
}

/// How far the ground is dragged by the end of a slipping track, `j = i L`.
///
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 2.
pub fn displacement(slip: Ratio, length: Length) -> Length {
    slip * length
}

/// The most a ground can give, `F = A c + N tan φ`.
///
/// Area of the driven tracks, force square to the ground on them; friction angle below 90°. An
/// upper bound at full slip, without grousers.
/// Source: Mohr–Coulomb, in J. Y. Wong, Theory of Ground Vehicles, chapter 2.
///
/// # Errors
/// [`Impossible::NoTracks`] when the area is zero.
pub fn limit(
    area: Area,
    cohesion: Pressure,
    normal: Force,
    friction: Angle,
) -> Result<Force, Impossible> {
    if area == Area::ZERO {
        return Err(Impossible::NoTracks);
    }
    Ok(area * cohesion + normal * friction.tan())
}

/// Share of the limit that a track reaches at a slip, `1 − (1 − e^(−x))/x` with `x = i L/K`.
///
/// Slip 0 to 1; nothing at zero slip. Pressure the same all along.
/// Source: Janosi–Hanamoto integrated along a track, J. Y. Wong, Theory of Ground Vehicles,
/// chapter 2.
pub fn reached(slip: Ratio, length: Length, modulus: Length) -> Ratio {
    Ratio::new::<ratio>(reached_at((slip * length / modulus).get::<ratio>()))
}

fn reached_at(x: f64) -> f64 {
    // Near zero the difference below loses its figures; the series has them.
    if x < 1e-5 { x / 2.0 } else { 1.0 + (-x).exp_m1() / x }
}

/// Thrust at that share, `F = r F_max`. Source: as [`reached`].
pub fn thrust(limit: Force, reached: Ratio) -> Force {
    limit * reached
}

/// Thrust of the same ground without its cohesion, `F = r N tan φ`. Source: as [`limit`].
pub fn without_cohesion(normal: Force, friction: Angle, reached: Ratio) -> Force {
    normal * friction.tan() * reached
}

/// The slip at which a track gives a push; [`reached`] turned round by Brent's method.
///
/// Push and limit in newtons, lengths in metres, above zero. A push of zero or less needs no slip.
///
/// # Errors
/// [`Impossible::PullTooHard`] when the track does not reach the push at full slip.
pub fn slip_for(
    push: Force,
    limit: Force,
    length: Length,
    modulus: Length,
) -> Result<Ratio, Impossible> {
    if push <= Force::ZERO {
        return Ok(Ratio::ZERO);
    }
    let wanted = (push / limit).get::<ratio>();
    let most = (length / modulus).get::<ratio>();
    let excess = |slip: f64| reached_at(slip * most) - wanted;
    let mut close = SimpleConvergency { eps: 1e-12_f64, max_iter: 200 };
    find_root_brent(0.0, 1.0, excess, &mut close)
        .map(Ratio::new::<ratio>)
        .map_err(|_| Impossible::PullTooHard)
}

/// What is left to pull with, `F_d = F − R − W sin θ`; below zero it cannot keep going.
///
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 2; with the slope as in US Army CRREL
/// Report 95-1.
pub fn drawbar_pull(thrust: Force, resistance: Force, along_slope: Force) -> Force {
    thrust - resistance - along_slope
}

/// Thrust from what is thrown back, `F = ṁ (u − v)`.
///
/// `ṁ` is the mass thrown per second, picked up at rest on the ground; `u` its speed backwards as
/// seen from the machine, `v` the speed of travel. Below zero when the machine outruns its throw.
/// Source: momentum of a steady stream, OpenStax, College Physics 2e, section 8.2.
pub fn of_thrown(flow: MassRate, throw_speed: Velocity, travel_speed: Velocity) -> Force {
    flow * (throw_speed - travel_speed)
}
