//! What pushes the machine, and which limit it meets first.

use uom::ConstZero;
use uom::si::angle::radian;
use uom::si::f64::{
    Acceleration, Angle, Area, AvailableEnergy, Force, Length, Mass, MassDensity, MomentOfInertia,
    Power, Ratio, SpecificPower, Time, Torque, Velocity,
};
use uom::si::ratio::ratio;
use uom::si::specific_power::watt_per_kilogram;
use uom::si::velocity::meter_per_second;

use super::resistance::{air_drag, terminal_speed};
use crate::physics::Impossible;

/// Power to mass, `P / m`.
///
/// Power in watts, mass in kilograms. Source: the definition; common practice.
pub fn power_to_mass(power: Power, mass: Mass) -> SpecificPower {
    SpecificPower::new::<watt_per_kilogram>(
        power.get::<uom::si::power::watt>() / mass.get::<uom::si::mass::kilogram>(),
    )
}

/// Force at the ground from a torque, `F = T / r`.
///
/// Torque of all the driven axles together in newton metres, after the gears; radius of the wheel
/// or sprocket in metres, above zero.
/// Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2.
pub fn torque_force(torque: Torque, radius: Length) -> Force {
    Force::new::<uom::si::force::newton>(
        torque.get::<uom::si::torque::newton_meter>() / radius.get::<uom::si::length::meter>(),
    )
}

/// Force that a power gives at a speed, `F = P / v`.
///
/// # Errors
/// [`Impossible::AtRest`] at rest, where any power would give an unlimited force.
///
/// Source: OpenStax, University Physics Volume 1, section 7.4 Power.
pub fn force_at_speed(power: Power, speed: Velocity) -> Result<Force, Impossible> {
    if speed == Velocity::ZERO { Err(Impossible::AtRest) } else { Ok(power / speed) }
}

/// Thrust at which the front just lifts, `F = m a + R`, `a` being the acceleration that lifts it.
///
/// `R` is what holds back at the ground: rolling and slope, not the air, which pushes at about the
/// height of the centre of gravity and so lifts the front as acceleration does.
/// Source: balance of moments about the rear contact, Meriam and Kraige, Dynamics, section 6/2
/// (from memory).
pub fn front_lift_force(mass: Mass, lifting: Acceleration, resistance: Force) -> Force {
    mass * lifting + resistance
}

/// Mass that rotating parts seem to add, `(J_m i² + J_w) / r²`.
///
/// `J_m` is the inertia of all motor rotors or the flywheel in kilogram square metres, `i` how many
/// times they turn for one turn of the wheel, `J_w` the inertia of all that turns with the wheels,
/// `r` the rolling radius in metres.
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 3 (from memory).
pub fn rotating_mass(
    rotors: MomentOfInertia,
    gear_ratio: Ratio,
    wheels: MomentOfInertia,
    radius: Length,
) -> Mass {
    (rotors * gear_ratio * gear_ratio + wheels) / (radius * radius)
}

/// Mass and what the rotating parts seem to add.
///
/// Source: as [`rotating_mass`].
pub fn equivalent_mass(mass: Mass, rotating: Mass) -> Mass {
    mass + rotating
}

/// Equivalent mass over mass; `1 + I/(m r²)` for one rolling body.
///
/// Source: OpenStax, University Physics Volume 1, section 11.1 Rolling Motion.
pub fn mass_factor(equivalent: Mass, mass: Mass) -> Ratio {
    equivalent / mass
}

/// Mass factor of a car with a flywheel engine, `1.04 + 0.0025 i²`, fitted to cars.
///
/// Source: J. Y. Wong, Theory of Ground Vehicles, chapter 3 (from memory).
pub fn car_mass_factor(gear_ratio: Ratio) -> Ratio {
    Ratio::new::<ratio>(1.04) + gear_ratio * gear_ratio * 0.0025
}

/// What sets the thrust.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Limit {
    /// Power: more speed leaves less force.
    Power,
    /// Torque at the wheels.
    Torque,
    /// What the ground and the balance let through.
    Ground,
}

/// What pushes a machine and what holds it back, for a run in a straight line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drive {
    /// Power at the ground.
    pub power: Option<Power>,
    /// Force that the torque gives at the ground.
    pub torque_force: Option<Force>,
    /// Thrust that grip and balance let through.
    pub thrust_limit: Option<Force>,
    /// Rolling and slope.
    pub resistance: Force,
    /// Mass.
    pub mass: Mass,
    /// Mass and what the rotating parts seem to add.
    pub equivalent_mass: Mass,
}

impl Drive {
    /// Acceleration at a speed against a drag, and what sets it; none when nothing limits it.
    ///
    /// `a = min((min(P/v, F_T) − R − D) / m_e, (F_G − R − D) / m)`: what the drive gives also spins
    /// the rotating parts up, what the ground lets through is counted after them. Below zero the
    /// machine slows down. Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 2.
    pub fn acceleration(&self, speed: Velocity, drag: Force) -> Option<(Acceleration, Limit)> {
        let against = self.resistance + drag;
        let power = self.power.filter(|_| speed > Velocity::ZERO);
        let power = power.map(|power| (power / speed, Limit::Power));
        let torque = self.torque_force.map(|force| (force, Limit::Torque));
        let drive = lesser(power, torque)
            .map(|(force, limit)| ((force - against) / self.equivalent_mass, limit));
        let ground = self.thrust_limit.map(|force| ((force - against) / self.mass, Limit::Ground));
        lesser(drive, ground)
    }
}

/// The lesser of two limits, of which either may not be known; the first where they are the same.
fn lesser<T: PartialOrd>(one: Option<(T, Limit)>, other: Option<(T, Limit)>) -> Option<(T, Limit)> {
    match (one, other) {
        (Some(one), Some(other)) => Some(if other.0 < one.0 { other } else { one }),
        (one, other) => one.or(other),
    }
}

/// Top speed that a power sustains: the root of `P = (R + ½ ρ A_d v²) v`.
///
/// Power in watts, steady resistance `R` in newtons (below zero downhill), density in kilograms per
/// cubic metre, drag area in square metres. Gearing may stop the machine earlier.
/// Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 4 (power balance).
///
/// # Errors
/// [`Impossible::NothingHoldsBack`] when neither air nor ground holds it back.
pub fn power_top_speed(
    power: Power,
    resistance: Force,
    density: MassDensity,
    drag_area: Area,
) -> Result<Velocity, Impossible> {
    let drag_at =
        |speed: f64| air_drag(density, drag_area, Velocity::new::<meter_per_second>(speed));
    let surplus = |speed: f64| {
        let against = resistance + drag_at(speed);
        let used = against * Velocity::new::<meter_per_second>(speed);
        (power - used).get::<uom::si::power::watt>()
    };
    if drag_area == Area::ZERO {
        return if resistance > Force::ZERO {
            Ok(power / resistance)
        } else {
            Err(Impossible::NothingHoldsBack)
        };
    }
    if power <= Power::ZERO {
        return Ok(terminal_speed(-resistance, density, drag_area));
    }
    let mut high = 1.0;
    while surplus(high) > 0.0 {
        high *= 2.0;
        if high > 1e9 {
            return Err(Impossible::NothingHoldsBack);
        }
    }
    let mut close = roots::SimpleConvergency { eps: 1e-13 * high, max_iter: 200 };
    roots::find_root_brent(0.0, high, surplus, &mut close)
        .map(Velocity::new::<meter_per_second>)
        .map_err(|_| Impossible::NothingHoldsBack)
}

/// Speed at which drag takes all that a force leaves over, `v = √(2 (F − R) / (ρ A_d))`; zero when
/// nothing is left over.
///
/// Source: as [`terminal_speed`].
pub fn drag_top_speed(
    force: Force,
    resistance: Force,
    density: MassDensity,
    drag_area: Area,
) -> Velocity {
    terminal_speed(force - resistance, density, drag_area)
}

/// Steepest slope that a thrust still climbs at a steady speed: `θ` of
/// `F = D + c W cos θ + W sin θ`, so `θ = asin(q / √(1 + c²)) − atan c` with `q = (F − D)/W`.
///
/// `c` is the rolling coefficient: on the slope less of the weight presses on the ground, and less
/// is held back. Below zero it needs a downhill.
/// Source: force balance, Mannering and Washburn, Principles of Highway Engineering, chapter 2.
///
/// # Errors
/// [`Impossible::ClimbsAnything`] when the thrust outdoes rolling and weight on any slope,
/// [`Impossible::NeverThatFast`] when the drag does on any downhill.
pub fn slope_by_thrust(
    thrust: Force,
    drag: Force,
    rolling: Ratio,
    weight: Force,
) -> Result<Angle, Impossible> {
    let rolling = rolling.get::<ratio>();
    let sine = ((thrust - drag) / weight).get::<ratio>() / rolling.hypot(1.0);
    if sine > 1.0 {
        Err(Impossible::ClimbsAnything)
    } else if sine < -1.0 {
        Err(Impossible::NeverThatFast)
    } else {
        Ok(Angle::new::<radian>(sine.asin() - rolling.atan()))
    }
}

/// Steepest slope against a drag where what gives out goes with the load: `θ` of
/// `k W cos θ = D + W sin θ`, so `θ = atan k − asin(D / (W √(1 + k²)))`.
///
/// For grip `k = μ s − c`: grip on the driven share less rolling. For the front that lifts `k` is the
/// arm behind the centre of gravity over its height, the drag pushing at about that height.
/// Source: as [`slope_by_thrust`]; for the front, balance of moments, Meriam and Kraige, Dynamics,
/// section 6/2 (from memory).
///
/// # Errors
/// [`Impossible::NeverThatFast`] when the drag outdoes it on any slope.
pub fn slope_by_load(share: Ratio, drag: Force, weight: Force) -> Result<Angle, Impossible> {
    let share = share.get::<ratio>();
    let sine = (drag / weight).get::<ratio>() / share.hypot(1.0);
    if sine > 1.0 {
        Err(Impossible::NeverThatFast)
    } else {
        Ok(Angle::new::<radian>(share.atan() - sine.asin()))
    }
}

/// Time to a speed and a height at constant power, `t = (½ m_e v² + m g h) / P`.
///
/// From rest, losses left out. What speeds up is the equivalent mass `m_e`, spinning parts
/// included; what is lifted is the mass alone. Real machines are limited by grip at the start.
/// Source: OpenStax, University Physics Volume 1, section 7.4 Power, problem on an 850-kg car.
pub fn constant_power_time(
    equivalent_mass: Mass,
    speed: Velocity,
    mass: Mass,
    rise: Length,
    gravity: Acceleration,
    power: Power,
) -> Time {
    let of_speed: AvailableEnergy = speed * speed * 0.5;
    let of_height: AvailableEnergy = gravity * rise;
    (equivalent_mass * of_speed + mass * of_height) / power
}

/// Fastest rise that a power allows, `w = P / W`.
///
/// Power in watts, weight in newtons; all of the power lifts, nothing rolls or slips.
/// Source: OpenStax, University Physics Volume 1, section 7.4 Power, `P = m g h / t`.
pub fn climb_rate(power: Power, weight: Force) -> Velocity {
    power / weight
}

/// Speed at which a power gives just a force, `v = P / F`: slower the force is the limit, faster the
/// power.
///
/// # Errors
/// [`Impossible::NothingAsked`] for a force of zero or less, which limits at any speed.
///
/// Source: OpenStax, University Physics Volume 1, section 7.4 Power.
pub fn power_meets(power: Power, force: Force) -> Result<Velocity, Impossible> {
    if force > Force::ZERO { Ok(power / force) } else { Err(Impossible::NothingAsked) }
}

/// Distance from rest at constant power on the level, `s = √(8 P / (9 m)) t^(3/2)`.
///
/// Source: OpenStax, University Physics Volume 1, section 7.4 Power, challenge problem.
pub fn constant_power_distance(power: Power, mass: Mass, time: Time) -> Length {
    constant_power_speed(power, mass, time) * time * (2.0 / 3.0)
}

/// Speed from rest at constant power on the level, `v = √(2 P t / m)`.
///
/// Source: as [`constant_power_distance`].
fn constant_power_speed(power: Power, mass: Mass, time: Time) -> Velocity {
    (power * time * 2.0 / mass).sqrt()
}
