//! A motor as two bodies: the winding, and the housing that sheds its heat.
//!
//! All loss starts in the winding. Copper loss grows with the winding's own rise, so the pair of
//! equations stays linear and has a closed form:
//! `C_w θ_w' = P + g θ_w − (θ_w − θ_h)/R_w`, `C_h θ_h' = (θ_w − θ_h)/R_w − θ_h/R_h`,
//! with `g = α P_cu`.
//! Source: the two-body model of maxon motor's catalogue data.

use uom::si::f64::{
    ElectricCurrent, ElectricalResistance, HeatCapacity, Power, TemperatureCoefficient,
    TemperatureInterval, ThermalResistance, Time,
};

use crate::physics::{Impossible, si};

/// The thermal path of a motor.
#[derive(Debug, Clone, Copy)]
pub struct Path {
    /// From winding to housing.
    pub to_housing: ThermalResistance,
    /// From housing to air.
    pub to_air: ThermalResistance,
    /// Heat capacity of the winding.
    pub winding: HeatCapacity,
    /// Heat capacity of the housing and all that goes with it.
    pub housing: HeatCapacity,
}

/// What heats the winding.
#[derive(Debug, Clone, Copy)]
pub struct Heating {
    /// All loss with the winding at air temperature.
    pub loss: Power,
    /// The copper's part of it, which grows as the winding warms.
    pub copper: Power,
    /// By how much per degree.
    pub coefficient: TemperatureCoefficient,
}

/// How much warmer than the air the two bodies are.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rises {
    /// The winding.
    pub winding: TemperatureInterval,
    /// The housing.
    pub housing: TemperatureInterval,
}

/// Winding rise at rest, `ΔT = R P / (1 − α R P_cu)`.
///
/// Resistances at air temperature.
/// Source: energy balance with the resistance law of copper.
///
/// # Errors
/// [`Impossible::RunsAway`] when each degree adds more heat than it sheds.
pub fn steady_rise(
    loss: Power,
    copper: Power,
    coefficient: TemperatureCoefficient,
    resistance: ThermalResistance,
) -> Result<TemperatureInterval, Impossible> {
    let left = 1.0 - coefficient.value * resistance.value * copper.value;
    if left <= 0.0 {
        return Err(Impossible::RunsAway);
    }
    Ok(si(resistance.value * loss.value / left))
}

/// Loss at rest, once the winding is warm: `P + α P_cu ΔT`.
pub fn warm_loss(
    loss: Power,
    copper: Power,
    coefficient: TemperatureCoefficient,
    rise: TemperatureInterval,
) -> Power {
    si(loss.value + copper.value * coefficient.value * rise.value)
}

/// Current above which a winding runs away, `I = 1 / √(α R_el R_th)`.
///
/// Copper loss alone. Source: the pole of [`steady_rise`].
pub fn runaway_current(
    resistance: ElectricalResistance,
    coefficient: TemperatureCoefficient,
    thermal: ThermalResistance,
) -> ElectricCurrent {
    si(1.0 / (coefficient.value * resistance.value * thermal.value).sqrt())
}

/// Current that holds a winding at an allowed rise for ever, `I = √(ΔT / (R_th R_el (1 + α ΔT)))`.
///
/// Resistance at air temperature; copper loss alone, so friction and iron loss lower it.
/// Source: maxon motor, method of the catalogue's permissible continuous current.
///
/// # Errors
/// [`Impossible::TooHotAlready`] when nothing is allowed.
pub fn continuous_current(
    allowed: TemperatureInterval,
    thermal: ThermalResistance,
    resistance: ElectricalResistance,
    coefficient: TemperatureCoefficient,
) -> Result<ElectricCurrent, Impossible> {
    if allowed.value < 0.0 {
        return Err(Impossible::TooHotAlready);
    }
    let warm = resistance.value * (1.0 + coefficient.value * allowed.value);
    Ok(si((allowed.value / (thermal.value * warm)).sqrt()))
}

/// Time from cold of a steady current that nothing cools, `t = C / (α P) ln(1 + α ΔT)`.
///
/// `P` is the loss with the winding at air temperature. The copper's resistance grows with its
/// rise, so `C dθ/dt = P (1 + α θ)`; this is that integral. With `α = 0` it is `C ΔT / P`.
/// Seconds, in which nearly nothing leaves the winding.
/// Source: energy balance with the resistance law of copper, NBS Handbook 100 (from memory).
///
/// # Errors
/// [`Impossible::TooHotAlready`] when nothing is allowed.
pub fn uncooled_time(
    capacity: HeatCapacity,
    allowed: TemperatureInterval,
    loss: Power,
    coefficient: TemperatureCoefficient,
) -> Result<Time, Impossible> {
    if allowed.value < 0.0 {
        return Err(Impossible::TooHotAlready);
    }
    let growth = coefficient.value * allowed.value;
    let mean = if growth == 0.0 { 1.0 } else { growth.ln_1p() / growth };
    Ok(si(capacity.value * allowed.value / loss.value * mean))
}

/// The two linear equations in the form `θ' = M θ + b`.
struct Linear {
    m: [[f64; 2]; 2],
    b: f64,
}

impl Linear {
    fn new(path: &Path, heating: &Heating) -> Self {
        let (cw, ch) = (path.winding.value, path.housing.value);
        let (inner, outer) = (1.0 / path.to_housing.value, 1.0 / path.to_air.value);
        let feedback = heating.copper.value * heating.coefficient.value;
        Self {
            m: [[(feedback - inner) / cw, inner / cw], [inner / ch, -(inner + outer) / ch]],
            b: heating.loss.value / cw,
        }
    }

    /// The slower (or growing) and the faster rate.
    ///
    /// Both are real: the off-diagonal terms have one sign.
    fn rates(&self) -> (f64, f64) {
        let [[a, b], [c, d]] = self.m;
        let mean = (a + d) / 2.0;
        let half = (((a - d) / 2.0).powi(2) + b * c).sqrt();
        let fast = mean - half;
        // The product of the rates is the determinant: no digits lost by subtraction.
        let slow = if fast == 0.0 { mean + half } else { (a * d - b * c) / fast };
        (slow, fast)
    }

    /// The state after a time, from `θ(t) = θ₀ + φ(t) θ₀'`, split over the two rates.
    fn after(&self, start: [f64; 2], time: f64) -> [f64; 2] {
        let [[a, b], [c, d]] = self.m;
        let slope = [a * start[0] + b * start[1] + self.b, c * start[0] + d * start[1]];
        let (slow, fast) = self.rates();
        let (p, q) = (grown(slow, time), grown(fast, time));
        // Sylvester's formula for the integral of e^(M t), applied to the starting slope.
        let gap = slow - fast;
        let part = |row: [f64; 2], i: usize| {
            let moved = row[0] * slope[0] + row[1] * slope[1];
            (p * (moved - fast * slope[i]) - q * (moved - slow * slope[i])) / gap
        };
        [start[0] + part([a, b], 0), start[1] + part([c, d], 1)]
    }
}

/// `∫₀ᵗ e^(λ t) dt = (e^(λ t) − 1) / λ`, also for `λ = 0`.
fn grown(rate: f64, time: f64) -> f64 {
    if rate == 0.0 { time } else { (rate * time).exp_m1() / rate }
}

/// Rises of winding and housing after some time of steady current, from some start.
///
/// Any time; above the runaway current they grow without end.
pub fn rises_after(path: &Path, heating: &Heating, start: Rises, time: Time) -> Rises {
    let start = [start.winding.value, start.housing.value];
    let [winding, housing] = Linear::new(path, heating).after(start, time.value);
    Rises { winding: si(winding), housing: si(housing) }
}

/// As cold as the air.
pub fn cold() -> Rises {
    Rises { winding: si(0.0), housing: si(0.0) }
}

/// The hottest the housing gets once the current stops, heat still soaking out of the winding.
///
/// Closed form: the moment at which its two exponentials balance.
pub fn soak_peak(path: &Path, stopped: Rises) -> TemperatureInterval {
    let line = Linear::new(path, &idle());
    let (slow, fast) = line.rates();
    let start = [stopped.winding.value, stopped.housing.value];
    let [[_, _], [c, d]] = line.m;
    // Housing = s e^(slow t) + f e^(fast t), from its start and its starting slope.
    let slope = c * start[0] + d * start[1];
    let f = (slow * start[1] - slope) / (slow - fast);
    let s = start[1] - f;
    let when = (-f * fast / (s * slow)).ln() / (slow - fast);
    if when.is_finite() && when > 0.0 {
        let [_, housing] = line.after(start, when);
        si(housing.max(start[1]))
    } else {
        stopped.housing
    }
}

/// Time of steady current from cold until the winding reaches an allowed rise.
///
/// Found by halving: the rise only ever grows.
///
/// # Errors
/// [`Impossible::TooHotAlready`] when nothing is allowed; [`Impossible::NeverReached`] when the
/// rise at rest stays under it.
pub fn time_to_rise(
    path: &Path,
    heating: &Heating,
    allowed: TemperatureInterval,
) -> Result<Time, Impossible> {
    if allowed.value < 0.0 {
        return Err(Impossible::TooHotAlready);
    }
    let total = path.to_housing + path.to_air;
    if let Ok(rest) = steady_rise(heating.loss, heating.copper, heating.coefficient, total)
        && rest <= allowed
    {
        return Err(Impossible::NeverReached);
    }
    let line = Linear::new(path, heating);
    let there = |time: f64| line.after([0.0, 0.0], time)[0] >= allowed.value;
    let mut high = path.winding.value * path.to_housing.value;
    let mut low = 0.0;
    let mut doublings = 0;
    while !there(high) {
        low = high;
        high *= 2.0;
        doublings += 1;
        if doublings > 200 {
            return Err(Impossible::NeverReached);
        }
    }
    for _ in 0..100 {
        let middle = low + (high - low) / 2.0;
        if there(middle) { high = middle } else { low = middle }
    }
    Ok(si(high))
}

fn idle() -> Heating {
    Heating { loss: si(0.0), copper: si(0.0), coefficient: si(0.0) }
}

/// Rises at the end of each stretch of work, the hottest moment of work and rest without end.
///
/// The state that one round of rest and work brings back to itself, in closed form; no current while
/// it rests, the same cooling throughout.
/// Source: IEC 60034-1 duty type S3 (from memory), by the two-body model of this file.
///
/// # Errors
/// [`Impossible::RunsAway`] when every round ends warmer than the one before.
pub fn duty_peak(
    path: &Path,
    heating: &Heating,
    work: Time,
    rest: Time,
) -> Result<Rises, Impossible> {
    let busy = Linear::new(path, heating);
    let resting = Linear::new(path, &idle());
    let gained = busy.after([0.0, 0.0], work.value);
    // What one round leaves of a start, its own heating left out.
    let fading = Linear { m: busy.m, b: 0.0 };
    let left = |start| fading.after(resting.after(start, rest.value), work.value);
    let ([a, c], [b, d]) = (left([1.0, 0.0]), left([0.0, 1.0]));
    let (a, d) = (1.0 - a, 1.0 - d);
    let determinant = a * d - b * c;
    if !(a > 0.0 && d > 0.0 && determinant > 0.0) {
        return Err(Impossible::RunsAway);
    }
    Ok(Rises {
        winding: si((d * gained[0] + b * gained[1]) / determinant),
        housing: si((c * gained[0] + a * gained[1]) / determinant),
    })
}

/// Rest after each stretch of work that keeps the peak of [`duty_peak`] at an allowed rise; none
/// when the rise at rest is allowed.
///
/// Found by halving: more rest only ever lowers the peak.
///
/// # Errors
/// [`Impossible::TooHotAlready`] when nothing is allowed; [`Impossible::NoRestWillDo`] when one
/// stretch from cold passes it.
pub fn rest_needed(
    path: &Path,
    heating: &Heating,
    allowed: TemperatureInterval,
    work: Time,
) -> Result<Time, Impossible> {
    if allowed.value <= 0.0 {
        return Err(Impossible::TooHotAlready);
    }
    let total = path.to_housing + path.to_air;
    if steady_rise(heating.loss, heating.copper, heating.coefficient, total)
        .is_ok_and(|rise| rise <= allowed)
    {
        return Ok(si(0.0));
    }
    let holds = |rest: f64| {
        duty_peak(path, heating, work, si(rest)).is_ok_and(|peak| peak.winding <= allowed)
    };
    let (mut low, mut high) = (0.0, path.to_air.value * path.housing.value);
    let mut doublings = 0;
    while !holds(high) {
        (low, high) = (high, 2.0 * high);
        doublings += 1;
        if doublings > 60 {
            return Err(Impossible::NoRestWillDo);
        }
    }
    for _ in 0..100 {
        let middle = f64::midpoint(low, high);
        if holds(middle) { high = middle } else { low = middle }
    }
    Ok(si(high))
}
