//! What carries the machine: tracks, wheels and skis, each in its place.

use super::{About, Sketch, near};
use crate::quantity::catalogue;
use crate::quantity::catalogue::balance::{FRONT_LOAD, REAR_LOAD, WHEELBASE_MIDDLE};
use crate::quantity::catalogue::pressure::GROUND_PRESSURE;
use crate::quantity::catalogue::running_gear::*;
use crate::quantity::{Id, Ratio};
use crate::rules::Values;
use crate::sheet::{Sheet, Tally};

/// The most of a kind that are drawn.
const MOST: usize = 12;
/// How high a track is drawn, as a part of its contact length: a rule of thumb.
const TRACK_HEIGHT: f64 = 0.25;
/// How high the tip of a ski is drawn, as a part of its length: a rule of thumb.
const SKI_HEIGHT: f64 = 0.08;

/// What kind of thing carries the machine.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum BearerKind {
    /// A track.
    Track,
    /// A wheel.
    Wheel,
    /// A ski or runner.
    Ski,
}

/// One thing that carries the machine; lengths in metres, above zero unless said otherwise.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bearer {
    /// What it is.
    pub kind: BearerKind,
    /// Its middle, forward of the middle of the contact.
    pub forward: f64,
    /// Its middle, to the left of the centre line, if known.
    pub left: Option<f64>,
    /// How long it presses on the ground; zero for a wheel whose squash is not known.
    pub contact: f64,
    /// How wide it is, if known.
    pub width: Option<f64>,
    /// How high it is drawn: of a wheel, its diameter less the squash.
    pub height: f64,
    /// How far a wheel is squashed; zero for all else.
    pub squash: f64,
    /// The pressure under it in pascals, even all over; none where it is not known, or where it
    /// changes from end to end as [`Sketch::underneath`] says.
    pub pressure: Option<f64>,
}

impl Sketch {
    /// Puts tracks, wheels and skis where they stand.
    pub(super) fn stand(&mut self, sheet: &Sheet, tally: &Tally, values: &Values) {
        let tracks = self.count(values, TRACK_COUNT);
        let wheels = self.count(values, WHEEL_COUNT);
        let skis = self.count(values, SKI_COUNT);
        if tracks + wheels + skis == 0 {
            self.lack("number of tracks, wheels or skis", true);
            return;
        }
        let gauge = named(values, "gauge").or_else(|| {
            let found = gauge_of_parts(sheet, tally);
            if found.is_some() {
                self.note(
                    About::Across,
                    "The gauge is taken from the parts called track, wheel or ski.",
                );
            }
            found
        });
        let wheelbase = named(values, "wheelbase");
        // Where the middle of the wheelbase is, from the middle of the ground contact.
        let middle = values.si(WHEELBASE_MIDDLE).filter(near);
        let ahead = wheelbase.filter(|_| tracks > 0);
        let ahead = ahead.map(|reach| middle.map_or(reach, |middle| middle + reach / 2.0));
        self.tracks(tracks, gauge, values);
        self.wheels(wheels, gauge, wheelbase, values);
        self.skis(skis, gauge, ahead, values);
        if tracks > 0 && skis > 0 && wheelbase.is_none() {
            self.lack("wheelbase", true);
        }
        let has_width = |kind| match kind {
            BearerKind::Track => values.si(TRACK_WIDTH).is_some(),
            BearerKind::Wheel => values.si(WHEEL_WIDTH).is_some(),
            BearerKind::Ski => values.si(SKI_WIDTH).is_some(),
        };
        for (count, kind, label) in [
            (tracks, BearerKind::Track, "track width"),
            (wheels, BearerKind::Wheel, "wheel width"),
            (skis, BearerKind::Ski, "ski width"),
        ] {
            if count > 0 && !has_width(kind) {
                self.lack(label, false);
            }
        }
        if self.bearers.iter().any(|bearer| bearer.left.is_none()) {
            self.lack("gauge", false);
        }
    }

    /// How many there are, as far as they are drawn.
    fn count(&mut self, values: &Values, id: Id<Ratio>) -> usize {
        let said = values.si(id).unwrap_or(0.0).round().max(0.0);
        if said > MOST as f64 {
            self.note(About::Gear, "Only twelve of a kind are drawn.");
        }
        said.min(MOST as f64) as usize
    }

    /// Tracks abreast, in the middle of the ground contact.
    fn tracks(&mut self, count: usize, gauge: Option<f64>, values: &Values) {
        if count == 0 {
            return;
        }
        let Some(long) = length(values, CONTACT_LENGTH) else {
            self.lack("contact length", true);
            return;
        };
        self.note(
            About::Gear,
            "How high the tracks are is a rule of thumb, a quarter of their contact length.",
        );
        let width = length(values, TRACK_WIDTH);
        self.bearers.extend(abreast(count, gauge).into_iter().map(|left| Bearer {
            kind: BearerKind::Track,
            forward: 0.0,
            left,
            contact: long,
            width,
            height: TRACK_HEIGHT * long,
            squash: 0.0,
            pressure: None,
        }));
    }

    /// Wheels in pairs on axles spaced evenly over the wheelbase; an odd one stands in front.
    fn wheels(
        &mut self,
        count: usize,
        gauge: Option<f64>,
        wheelbase: Option<f64>,
        values: &Values,
    ) {
        if count == 0 {
            return;
        }
        let Some(diameter) = length(values, WHEEL_DIAMETER) else {
            self.lack("wheel diameter", true);
            return;
        };
        // Two wheels stand abreast when the numbers say how far apart, else one behind the other.
        let abreast_pair = count == 2 && gauge.is_some();
        let axles = if count == 2 && !abreast_pair { 2 } else { count.div_ceil(2) };
        if axles > 1 && wheelbase.is_none() {
            self.lack("wheelbase", true);
            return;
        }
        if axles > 2 {
            self.note(About::Gear, "The axles are drawn evenly spaced.");
        }
        let squash = values.si(WHEEL_SQUASH).unwrap_or(0.0).clamp(0.0, diameter / 2.0);
        let wheel = |forward, left| Bearer {
            kind: BearerKind::Wheel,
            forward,
            left,
            contact: patch_length(values).unwrap_or(0.0),
            width: length(values, WHEEL_WIDTH),
            height: diameter - squash,
            squash,
            pressure: None,
        };
        let reach = wheelbase.unwrap_or(0.0);
        let middle = values.si(WHEELBASE_MIDDLE).filter(near).unwrap_or(0.0);
        let mut left_over = count;
        for axle in 0..axles {
            let part = if axles > 1 { axle as f64 / (axles - 1) as f64 - 0.5 } else { 0.0 };
            let on_axle = if count == 2 && axles == 2 { 1 } else { left_over.min(2) };
            left_over -= on_axle;
            let abreast = abreast(on_axle, gauge);
            self.bearers.extend(abreast.into_iter().map(|left| wheel(middle + reach * part, left)));
        }
    }

    /// Skis abreast: in front of a track by the wheelbase, or alone in the middle.
    fn skis(&mut self, count: usize, gauge: Option<f64>, ahead: Option<f64>, values: &Values) {
        if count == 0 {
            return;
        }
        let has_tracks = self.bearers.iter().any(|bearer| bearer.kind == BearerKind::Track);
        let Some(long) = length(values, SKI_LENGTH) else {
            self.lack("ski length", true);
            return;
        };
        if has_tracks && ahead.is_none() {
            return;
        }
        let width = length(values, SKI_WIDTH);
        self.bearers.extend(abreast(count, gauge).into_iter().map(|left| Bearer {
            kind: BearerKind::Ski,
            forward: ahead.unwrap_or(0.0),
            left,
            contact: long,
            width,
            height: SKI_HEIGHT * long,
            squash: 0.0,
            pressure: None,
        }));
    }
}

impl Sketch {
    /// The pressure under each wheel, ski or track of a machine that is not on tracks alone: by the
    /// loads on front and rear where two rows carry it, else the mean over all that touches.
    pub(super) fn press(&mut self, values: &Values) {
        if self.underneath.is_some() || self.tips() {
            return;
        }
        let area =
            |bearer: &Bearer| Some(bearer.contact * bearer.width?).filter(|area| *area > 0.0);
        let row = |forward: f64| -> Option<f64> {
            let row = self.bearers.iter().filter(|bearer| bearer.forward == forward);
            row.map(area).sum()
        };
        let places = || self.bearers.iter().map(|bearer| bearer.forward);
        let (rear, front) = (places().fold(f64::MAX, f64::min), places().fold(f64::MIN, f64::max));
        let two_rows = rear < front && places().all(|place| place == rear || place == front);
        let by_load = |forward: f64| {
            let load = values.si(if forward == rear { REAR_LOAD } else { FRONT_LOAD })?;
            Some(load / row(forward)?).filter(|pascals| pascals.is_finite() && *pascals >= 0.0)
        };
        let (rear_pressure, front_pressure) = (by_load(rear), by_load(front));
        let rows_known = two_rows && rear_pressure.is_some() && front_pressure.is_some();
        let mean = values.si(GROUND_PRESSURE);
        for bearer in self.bearers.iter_mut().filter(|bearer| bearer.contact > 0.0) {
            bearer.pressure = match (rows_known, bearer.forward == rear) {
                (true, true) => rear_pressure,
                (true, false) => front_pressure,
                (false, _) => mean,
            };
        }
        if self.bearers.iter().any(|bearer| bearer.pressure.is_some()) {
            self.note(
                About::Gear,
                if rows_known {
                    "Under each wheel, ski or track the pressure is the mean over its own contact, \
                     by the loads on front and rear."
                } else {
                    "The pressure is the mean over all that touches: how it spreads from end to \
                     end is known for tracks alone, or for two axles a wheelbase apart."
                },
            );
        }
    }

    /// The mean pressures drawn under rows of wheels, skis or tracks, from the rear on: metres
    /// forward and pascals, each place once.
    pub fn rows(&self) -> Vec<(f64, f64)> {
        let mut rows: Vec<(f64, f64)> = self
            .bearers
            .iter()
            .filter_map(|bearer| Some((bearer.forward, bearer.pressure?)))
            .collect();
        rows.sort_by(|a, b| a.0.total_cmp(&b.0));
        rows.dedup_by(|a, b| a.0 == b.0);
        rows
    }
}

/// How long each wheel touches: by its squash, or by the air that carries it.
fn patch_length(values: &Values) -> Option<f64> {
    values
        .si(WHEEL_PATCH_LENGTH)
        .or_else(|| {
            let each = values.si(WHEEL_CONTACT_AREA)? / values.si(WHEEL_COUNT)?;
            Some(each / values.si(WHEEL_WIDTH)?)
        })
        .filter(|long| near(long) && *long > 0.0)
}

/// The places across of so many, evenly over the gauge; one alone is on the centre line.
fn abreast(count: usize, gauge: Option<f64>) -> Vec<Option<f64>> {
    match count {
        0 => Vec::new(),
        1 => vec![Some(0.0)],
        _ => (0..count)
            .map(|place| gauge.map(|gauge| gauge * (0.5 - place as f64 / (count - 1) as f64)))
            .collect(),
    }
}

/// A length that can be drawn.
fn length(values: &Values, id: Id<crate::quantity::Length>) -> Option<f64> {
    values.si(id).filter(|si| near(si) && *si > 1e-6)
}

/// A length by the name of its quantity, if the catalogue has one of that name.
fn named(values: &Values, name: &str) -> Option<f64> {
    let entry = catalogue::find(name)?;
    values.si(entry.id).filter(|si| near(si) && *si > 1e-6)
}

/// Whether a part is running gear by its name.
pub(super) fn is_gear(name: &str) -> bool {
    const GEAR: [&str; 6] = ["track", "tracks", "wheel", "wheels", "ski", "skis"];
    name.split(|letter: char| !letter.is_alphabetic())
        .any(|word| GEAR.iter().any(|gear| word.eq_ignore_ascii_case(gear)))
}

/// Twice the mean distance from the centre line of the parts that are named as running gear.
fn gauge_of_parts(sheet: &Sheet, tally: &Tally) -> Option<f64> {
    let away: Vec<f64> = sheet
        .parts()
        .iter()
        .zip(&tally.parts.each)
        .filter(|(part, _)| is_gear(&part.name))
        .filter_map(|(_, numbers)| numbers.at.map(|at| at[1].abs()))
        .filter(|left| near(left) && *left > 1e-6)
        .collect();
    (!away.is_empty()).then(|| 2.0 * away.iter().sum::<f64>() / away.len() as f64)
}
