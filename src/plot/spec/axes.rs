//! How far the axes of a plot reach, and in which unit.

use super::{Build, Role};
use crate::plot::axis::{Axis, nice_step};
use crate::quantity::{Entry, Units};
use crate::study::curve::{Curve, Scale};

/// How many times its own height the reader's line gives to others: it keeps a third.
const OTHERS: f64 = 2.0;

/// The axis along the foot is the reader's own.
pub(super) fn x_axis(own: &Curve, entry: &'static Entry, units: &Units) -> Axis {
    let unit = units.unit_for(entry, middle(own.from, own.to));
    let (from, to) = (unit.from_si(own.from), unit.from_si(own.to));
    // In degrees Celsius even a temperature above nothing can be zero.
    Axis::new(entry, unit, own.scale == Scale::Log && from > 0.0, from, to)
}

/// A size typical of a range, for choosing a unit.
fn middle(from: f64, to: f64) -> f64 {
    let most = if from.abs() > to.abs() { from } else { to };
    most / 2.0
}

/// The axis up the side holds the reader's own line and its family; companions, limits and the
/// range about the line as far as they leave it a third of the height.
pub(super) fn y_axis(
    builds: &[(Role, &Build<'_>)],
    entry: &'static Entry,
    units: &Units,
    log_x: bool,
) -> Axis {
    let curves = || builds.iter().map(|(_, build)| build.curve);
    let own = || curves().take(1);
    let relatives = own().flat_map(|own| &own.relatives).map(|relative| &relative.samples);
    let mut found: Vec<f64> = own()
        .map(|own| &own.samples)
        .chain(relatives)
        .flat_map(|samples| samples.iter().filter_map(|(_, y)| *y))
        .collect();
    found.sort_by(f64::total_cmp);
    let (mut low, mut high) = tame(&found).unwrap_or((0.0, 1.0));
    let within = |curve: &Curve, x: f64| (curve.from..=curve.to).contains(&x);
    if let Some((_, y)) = own().find_map(|own| own.point.filter(|(x, _)| within(own, *x))) {
        (low, high) = (low.min(y), high.max(y));
    }
    let reach = (high - low.min(0.0)).abs();
    let room = Room { low, high, log: log_x && low > 0.0, reach };
    let mut hold = |ends: (f64, f64)| {
        if room.has(ends.0) && room.has(ends.1) {
            (low, high) = (low.min(ends.0), high.max(ends.1));
        }
    };
    for companion in curves().skip(1) {
        // Beside a family a companion is a dot alone.
        let line = own().all(|own| own.family.is_none()).then_some(&companion.samples);
        let mut found: Vec<f64> = line.into_iter().flatten().filter_map(|(_, y)| *y).collect();
        found.sort_by(f64::total_cmp);
        tame(&found).into_iter().for_each(&mut hold);
        let point = companion.point.filter(|(x, _)| within(companion, *x));
        point.into_iter().for_each(|(_, y)| hold((y, y)));
    }
    let limits = own().flat_map(|own| &own.limits).flat_map(|limit| &limit.samples);
    limits.filter_map(|(_, y)| *y).for_each(|y| hold((y, y)));
    own().flat_map(|own| &own.band).filter_map(|(_, ends)| *ends).for_each(&mut hold);
    if log_x && low > 0.0 && high / low > 8.0 {
        let unit = units.unit_for(entry, (low * high).sqrt());
        let (from, to) = (unit.from_si(low / 1.15), unit.from_si(high * 1.15));
        if from > 0.0 {
            return Axis::new(entry, unit, true, from, to);
        }
    }
    let unit = units.unit_for(entry, middle(low, high));
    let (from, to) = with_headroom(unit.from_si(low), unit.from_si(high), unit.offset == 0.0);
    Axis::new(entry, unit, false, from, to)
}

/// The room that others may take beside the reader's own line.
struct Room {
    low: f64,
    high: f64,
    log: bool,
    reach: f64,
}

impl Room {
    fn has(&self, y: f64) -> bool {
        let linear =
            (self.low - OTHERS * self.reach..=self.high + OTHERS * self.reach).contains(&y);
        // Between logarithmic axes a third of the height is a power, not a difference.
        let tall = (self.high / self.low).powf(OTHERS);
        linear || (self.log && (self.low / tall..=self.high * tall).contains(&y))
    }
}

/// Lowest and highest, leaving out a spike that would flatten all the rest.
pub(in crate::plot) fn tame(sorted: &[f64]) -> Option<(f64, f64)> {
    let (low, high) = (*sorted.first()?, *sorted.last()?);
    let at = |part: f64| sorted[((sorted.len() - 1) as f64 * part) as usize];
    let (tenth, ninetieth) = (at(0.1), at(0.9));
    let body = (ninetieth - tenth).max(ninetieth.abs() * 0.1);
    let high = if high > ninetieth + 8.0 * body { ninetieth + 3.0 * body } else { high };
    let low = if low < tenth - 8.0 * body { tenth - 3.0 * body } else { low };
    Some((low, high))
}

/// Linear ends on round numbers: zero belongs to the plot unless that would flatten the lines.
pub(in crate::plot) fn with_headroom(low: f64, high: f64, zero_means_none: bool) -> (f64, f64) {
    let (mut from, mut to) = (low, high);
    if zero_means_none && low >= 0.0 && low < 0.6 * high {
        from = 0.0;
    }
    if zero_means_none && high <= 0.0 && high > 0.6 * low {
        to = 0.0;
    }
    if to - from <= 1e-9 * to.abs().max(from.abs()) {
        // A level line stands in the middle of the height.
        return match to {
            0.0 => (0.0, 1.0),
            y if y > 0.0 => (0.0, 2.0 * y),
            y => (2.0 * y, 0.0),
        };
    }
    let air = 0.06 * (to - from);
    let (low_end, high_end) =
        (if from == 0.0 { 0.0 } else { from - air }, if to == 0.0 { 0.0 } else { to + air });
    let step = nice_step(high_end - low_end, 6);
    ((low_end / step).floor() * step, (high_end / step).ceil() * step)
}
