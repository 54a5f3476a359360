//! Indices that compare full-size vehicles: mean maximum pressure and the army's cone indices.

use uom::si::area::square_inch;
use uom::si::f64::{Area, Force, Length, Pressure, Ratio};
use uom::si::force::pound_force;
use uom::si::length::inch;
use uom::si::pressure::psi;
use uom::si::ratio::ratio;

use crate::physics::Impossible;

/// Mean of the peaks under the road wheels of a rigid-link track, `1.26 W / (N A_l b √(t D))`.
///
/// `W` is the weight, `N` the number of road wheels of all tracks, `A_l` the rigid part of a link
/// over pitch times width, `b` track width, `t` link pitch, `D` road wheel diameter. A number to
/// compare vehicles with, not a pressure to put into other formulas.
/// Source: D. Rowland, Tracked Vehicle Ground Pressure and its Effect on Soft Ground Performance,
/// 4th ISTVS conference 1972, in J. Y. Wong, Theory of Ground Vehicles (from memory).
pub fn mean_maximum_pressure(
    weight: Force,
    road_wheels: Ratio,
    link_area_ratio: Ratio,
    width: Length,
    pitch: Length,
    diameter: Length,
) -> Pressure {
    weight * 1.26 / (road_wheels * link_area_ratio * width * (pitch * diameter).sqrt())
}

/// The same for a belt on pneumatic wheels, `0.5 W / (N b √(D f))`, `f` the tyre deflection.
///
/// Source: as [`mean_maximum_pressure`] (from memory).
pub fn belt_mean_maximum_pressure(
    weight: Force,
    road_wheels: Ratio,
    width: Length,
    diameter: Length,
    deflection: Length,
) -> Pressure {
    weight * 0.5 / (road_wheels * width * (diameter * deflection).sqrt())
}

/// All road wheels of a machine, from the tracks and the wheels of each.
pub fn road_wheels(tracks: Ratio, per_track: Ratio) -> Ratio {
    tracks * per_track
}

/// How much one track shoe under a road wheel carries, `(W/10) / (N a)`, in pounds-force and square
/// inches.
///
/// Source: US Army FM 5-430-00-1, 1994, trafficability chapter (from memory).
pub fn bogie_factor(weight: Force, road_wheels: Ratio, shoe_area: Area) -> Ratio {
    let shoes = road_wheels.get::<ratio>() * shoe_area.get::<square_inch>();
    Ratio::new::<ratio>(weight.get::<pound_force>() / 10.0 / shoes)
}

/// What the army's method multiplies by for weight: 1 below 50 000 lbf, then 1.2, 1.4 and 1.8.
fn weight_factor(weight: Force) -> f64 {
    match weight.get::<pound_force>() {
        ..50_000.0 => 1.0,
        ..70_000.0 => 1.2,
        ..100_000.0 => 1.4,
        _ => 1.8,
    }
}

/// The number by which the army ranks tracked vehicles in fine soil: contact pressure (psi) times
/// weight factor, over track factor (width/100 in) times grouser factor, plus bogie factor, less
/// clearance/10 in, all times the engine and transmission factors.
///
/// Made for vehicles of tons. Source: US Army FM 5-430-00-1, 1994 (from memory).
#[expect(clippy::too_many_arguments, reason = "the method has eight inputs")]
pub fn mobility_index(
    pressure: Pressure,
    weight: Force,
    width: Length,
    grouser_factor: Ratio,
    bogie_factor: Ratio,
    clearance: Length,
    engine_factor: Ratio,
    transmission_factor: Ratio,
) -> Ratio {
    let track_factor = width.get::<inch>() / 100.0;
    let pressing = pressure.get::<psi>() * weight_factor(weight)
        / (track_factor * grouser_factor.get::<ratio>());
    let sum = pressing + bogie_factor.get::<ratio>() - clearance.get::<inch>() / 10.0;
    Ratio::new::<ratio>(sum) * engine_factor * transmission_factor
}

/// Soil strength that one pass needs, `7 + 0.2 MI − 39.2/(MI + 5.6)`, in psi by custom.
///
/// Source: as [`mobility_index`].
///
/// # Errors
/// [`Impossible::OffTheTable`] when the mobility index is zero or less.
pub fn one_pass(index: Ratio) -> Result<Pressure, Impossible> {
    cone_index(index, |mi| 7.0 + 0.2 * mi - 39.2 / (mi + 5.6))
}

/// Soil strength that fifty passes in the same rut need, `19.27 + 0.43 MI − 125.79/(MI + 7.08)`,
/// in psi by custom.
///
/// Source: as [`mobility_index`].
///
/// # Errors
/// [`Impossible::OffTheTable`] when the mobility index is zero or less.
pub fn fifty_passes(index: Ratio) -> Result<Pressure, Impossible> {
    cone_index(index, |mi| 19.27 + 0.43 * mi - 125.79 / (mi + 7.08))
}

/// Soil strength that one pass of an all-wheel-drive wheeled vehicle needs in fine soil:
/// `(11.48 + 0.2 MI − 39.2/(MI + 3.74)) f` up to a mobility index of 115, `4.1 MI^0.446 f` above,
/// with `f = (0.15/d)^¼` for a tyre deflection `d` over its section height.
///
/// Source: J. D. Priddy, W. E. Willoughby, Clarification of vehicle cone index with reference to
/// mean maximum pressure, Journal of Terramechanics 43, 2006.
///
/// # Errors
/// [`Impossible::OffTheTable`] when the mobility index is zero or less.
pub fn wheeled_one_pass(index: Ratio, deflection: Ratio) -> Result<Pressure, Impossible> {
    let factor = (0.15 / deflection.get::<ratio>()).powf(0.25);
    cone_index(index, |mi| {
        factor
            * if mi <= 115.0 { 11.48 + 0.2 * mi - 39.2 / (mi + 3.74) } else { 4.1 * mi.powf(0.446) }
    })
}

fn cone_index(index: Ratio, curve: impl Fn(f64) -> f64) -> Result<Pressure, Impossible> {
    let index = index.get::<ratio>();
    if index <= 0.0 {
        return Err(Impossible::OffTheTable);
    }
    Ok(Pressure::new::<psi>(curve(index)))
}
