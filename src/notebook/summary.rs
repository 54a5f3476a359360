//! What a few readings of one number come to.

/// A few readings of one number, in one unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Summary {
    /// The arithmetic mean.
    pub mean: f64,
    /// The lowest reading.
    pub low: f64,
    /// The highest reading.
    pub high: f64,
}

impl Summary {
    /// What finite readings come to; nothing without readings, or if one is no finite number.
    pub fn of(readings: &[f64]) -> Option<Self> {
        let finite = readings.iter().all(|reading| reading.is_finite());
        let mean = readings.iter().sum::<f64>() / readings.len() as f64;
        (finite && mean.is_finite()).then(|| Self {
            mean,
            low: readings.iter().copied().fold(f64::INFINITY, f64::min),
            high: readings.iter().copied().fold(f64::NEG_INFINITY, f64::max),
        })
    }

    /// Half of the range, but never less than what the tool itself can be off by: three readings
    /// that agree show that the tool repeats, not that it is right. A half-width, to be taken as
    /// the limits of a uniform distribution (JCGM 100:2008, 4.3.7).
    pub fn spread(&self, error: f64) -> f64 {
        (0.5 * (self.high - self.low)).max(error.abs())
    }

    /// The mean over what was predicted; nothing if either is zero or they differ in sign.
    pub fn ratio(&self, predicted: f64) -> Option<f64> {
        let ratio = self.mean / predicted;
        (ratio.is_finite() && ratio > 0.0).then_some(ratio)
    }
}

/// A positive ratio to three figures: `0.995`, `1.19`, `33.5`.
pub fn ratio_figures(ratio: f64) -> String {
    let places = (2.0 - ratio.log10().floor()).clamp(0.0, 9.0) as usize;
    format!("{ratio:.places$}")
}
