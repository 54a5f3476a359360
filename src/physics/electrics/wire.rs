//! Wires: size, resistance, loss, and how long they stand a fault.

use std::f64::consts::PI;

use uom::si::f64::{
    Area, ElectricCurrent, ElectricalResistance, ElectricalResistivity, Length, Ratio,
    TemperatureInterval, ThermodynamicTemperature, Time, VolumetricHeatCapacity,
};

use crate::physics::si;

/// Diameter of a solid wire by the American wire gauge, `d = 0.127 mm × 92^((36 − n)/39)`.
///
/// Gauge 0000 is −3, 000 is −2, 00 is −1. Stranded wire of a gauge has the same metal area and a
/// larger diameter. Source: ASTM B258.
pub fn gauge_diameter(gauge: Ratio) -> Length {
    si(127e-6 * 92f64.powf((36.0 - gauge.value) / 39.0))
}

/// Gauge of a solid wire's diameter; see [`gauge_diameter`].
pub fn gauge(diameter: Length) -> Ratio {
    si(36.0 - 39.0 * (diameter.value / 127e-6).ln() / 92f64.ln())
}

/// Metal area of a round wire, `A = π d² / 4`.
pub fn round_area(diameter: Length) -> Area {
    diameter * diameter * (PI / 4.0)
}

/// Diameter of a round wire with an area, `d = √(4 A / π)`.
pub fn round_diameter(area: Area) -> Length {
    (area * (4.0 / PI)).sqrt()
}

/// Resistance of a wire, `R = ρ L / A`.
///
/// Source: OpenStax, College Physics 2e, section 20.3 Resistance and Resistivity.
fn resistance(
    resistivity: ElectricalResistivity,
    length: Length,
    area: Area,
) -> ElectricalResistance {
    resistivity * length / area
}

/// Resistivity of annealed copper, `1.7241 × 10⁻⁸ Ω·m × (1 + 0.00393 (T − 20 °C))`.
///
/// Source: IEC 60028; NBS Handbook 100, Copper Wire Tables (from memory).
pub fn copper_resistivity(temperature: ThermodynamicTemperature) -> ElectricalResistivity {
    si(1.7241e-8 * (1.0 + 0.00393 * (temperature.value - 293.15)))
}

/// Resistance of a copper pair, out and back, `R = 2 L ρ(T) / A`.
///
/// One-way length. Solid annealed copper; stranded wire is a few per cent higher.
/// Source: NBS Handbook 100, Copper Wire Tables (from memory).
pub fn pair_resistance(
    one_way: Length,
    area: Area,
    temperature: ThermodynamicTemperature,
) -> ElectricalResistance {
    resistance(copper_resistivity(temperature), one_way * 2.0, area)
}

/// Warming of a copper wire that keeps all its heat, `ΔT = ρ (I/A)² t / (ρ_m c)`, resistance steady.
///
/// Density 8890 kg/m³, specific heat 387 J/(kg·K).
/// Source: energy balance; NBS Handbook 100 (from memory); OpenStax, College Physics, Table 14.1.
pub fn uncooled_rise(
    current: ElectricCurrent,
    area: Area,
    resistivity: ElectricalResistivity,
    time: Time,
) -> TemperatureInterval {
    let density = current.value / area.value;
    let heat = resistivity.value * density * density;
    si(heat * time.value / (8890.0 * 387.0))
}

/// Time a conductor stands a current with no cooling, `t = (k A / I)²`, where
/// `k² = Q_c (β + 20 °C) / ρ₂₀ × ln((β + T₂)/(β + T₁))`.
///
/// `β` is how far under 0 °C the resistance would vanish (copper 234.5 K), `Q_c` the heat capacity
/// per volume, `ρ₂₀` the resistivity at 20 °C. Up to 5 s.
/// Source: IEC 60949, IEC 60364-5-54 annex A (from memory).
pub fn withstand_time(
    area: Area,
    current: ElectricCurrent,
    start: ThermodynamicTemperature,
    end: ThermodynamicTemperature,
    metal: &Metal,
) -> Time {
    let zero = 273.15 - metal.zero_below_freezing.value;
    let (start, end) = (start.value - zero, end.value - zero);
    let k = metal.heat_capacity.value * (293.15 - zero) / metal.resistivity.value;
    let density = current.value / area.value;
    si(k * (end / start).ln() / (density * density))
}

/// What a metal does when a current heats it.
#[derive(Debug, Clone, Copy)]
pub struct Metal {
    /// Heat capacity per volume.
    pub heat_capacity: VolumetricHeatCapacity,
    /// Resistivity at 20 °C.
    pub resistivity: ElectricalResistivity,
    /// How far under 0 °C the straight line of its resistance reaches zero.
    pub zero_below_freezing: TemperatureInterval,
}

impl Metal {
    /// Copper, by IEC 60949 (from memory).
    pub fn copper() -> Self {
        Self {
            heat_capacity: si(3.45e6),
            resistivity: si(17.241e-9),
            zero_below_freezing: si(234.5),
        }
    }
}
