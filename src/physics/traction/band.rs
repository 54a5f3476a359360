//! How far the ground of the day may lie from the table: low and high ends of a result.
//!
//! Soil changes within metres and hours, so a result is a band. The doubt `d` (0 up to 1) takes
//! every strength of the ground, moduli, cohesion and friction alike, once weaker by `1 − d` and
//! once stronger by `1 + d`. Source: common practice, no published source; resistance on loose
//! ground is carried as a range of 30 to 50 % either way.

use uom::si::f64::{Force, Length, Pressure, Ratio};
use uom::si::ratio::ratio;

/// Which end of the band.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ground {
    /// Every strength less by the doubt.
    Weaker,
    /// Every strength more by the doubt.
    Stronger,
}

impl Ground {
    /// What the strengths are multiplied by; the doubt is 0 up to 1.
    pub fn factor(self, doubt: Ratio) -> f64 {
        let doubt = doubt.get::<ratio>();
        match self {
            Self::Weaker => 1.0 - doubt,
            Self::Stronger => 1.0 + doubt,
        }
    }
}

/// Sinkage of a plate or track where the moduli are `f` times as large, `z f^(−1/n)`.
pub fn sinkage(sinkage: Length, exponent: f64, doubt: Ratio, ground: Ground) -> Length {
    sinkage * ground.factor(doubt).powf(-1.0 / exponent)
}

/// Compaction resistance of a track at the same pressure, `R f^(−1/n)`: weaker ground makes a
/// deeper rut and a larger force.
pub fn compaction(force: Force, exponent: f64, doubt: Ratio, ground: Ground) -> Force {
    force * ground.factor(doubt).powf(-1.0 / exponent)
}

/// Sinkage of a rigid wheel under the same load, `z f^(−2/(2n+1))`.
pub fn wheel_sinkage(sinkage: Length, exponent: f64, doubt: Ratio, ground: Ground) -> Length {
    sinkage * ground.factor(doubt).powf(-2.0 / (2.0 * exponent + 1.0))
}

/// Compaction resistance of a rigid wheel under the same load, `R f^(−1/(2n+1))`.
pub fn wheel_compaction(force: Force, exponent: f64, doubt: Ratio, ground: Ground) -> Force {
    force * ground.factor(doubt).powf(-1.0 / (2.0 * exponent + 1.0))
}

/// What a ground carries at a depth, which goes with the strength, `p f`.
pub fn carried(pressure: Pressure, doubt: Ratio, ground: Ground) -> Pressure {
    pressure * ground.factor(doubt)
}

/// Resistance that a looser ground makes larger: `R (2 − f)`, more by the doubt on weaker ground.
pub fn resistance(force: Force, doubt: Ratio, ground: Ground) -> Force {
    force * (2.0 - ground.factor(doubt))
}

/// Thrust, which goes with the strength, `F f`.
pub fn thrust(force: Force, doubt: Ratio, ground: Ground) -> Force {
    force * ground.factor(doubt)
}
