//! The pressure along the contact of a machine on tracks alone.

use super::near;
use crate::physics::pressure;
use crate::quantity::catalogue::pressure::{GROUND_PRESSURE, PRESSURE_OFFSET};
use crate::quantity::catalogue::running_gear::{
    CONTACT_AREA, CONTACT_LENGTH, SKI_COUNT, TRACK_COUNT, WHEEL_COUNT,
};
use crate::quantity::{Length, Measure};
use crate::rules::Values;

/// The pressure along the contact: straight from point to point.
#[derive(Debug, Clone, PartialEq)]
pub struct Underneath {
    /// Places forward of the middle in metres, from tail to nose, each with its pressure in
    /// pascals. Two points where all of the contact bears, three where an end has lifted.
    pub profile: Vec<(f64, f64)>,
    /// The mean over the whole contact, in pascals.
    pub mean: f64,
    /// How wide all the tracks are together, in metres.
    pub width: f64,
}

impl Underneath {
    /// The pressure under the tracks; nothing when it is not known, when something else helps to
    /// carry, or when the load lies past the end and the machine tips.
    pub(super) fn of(values: &Values) -> Option<Self> {
        let helped = [WHEEL_COUNT, SKI_COUNT].iter().any(|id| values.si(*id) > Some(0.0));
        if helped || values.si(TRACK_COUNT).is_none_or(|count| count <= 0.0) {
            return None;
        }
        let mean = values.get(GROUND_PRESSURE)?;
        let offset = values.get(PRESSURE_OFFSET)?;
        let length = values.get(CONTACT_LENGTH)?;
        let long = values.si(CONTACT_LENGTH).filter(|si| near(si) && *si > 1e-6)?;
        let half = long / 2.0;
        let lifted = pressure::lifted_length(offset, length).ok()?.si();
        let at = |place: f64| {
            pressure::pressure_at(Length::from_si(place), mean, offset, length)
                .ok()
                .map(|pressure| (place, pressure.si()))
                .filter(|(_, pascals)| pascals.is_finite())
        };
        // The place where the contact has just lifted, towards the end away from the load.
        let edge = (lifted > 0.0).then(|| {
            let away = if offset.si() < 0.0 { 1.0 } else { -1.0 };
            away * (half - lifted)
        });
        let places = [Some(-half), edge, Some(half)];
        let profile: Option<Vec<_>> = places.into_iter().flatten().map(at).collect();
        let width = values.si(CONTACT_AREA)? / long;
        Some(Self { profile: profile?, mean: mean.si(), width })
    }

    /// The highest pressure along the contact and its place: pascals, metres forward.
    pub fn worst(&self) -> (f64, f64) {
        self.profile
            .iter()
            .map(|(place, pascals)| (*pascals, *place))
            .max_by(|a, b| a.0.total_cmp(&b.0))
            .unwrap_or((0.0, 0.0))
    }

    /// How far from the low end on the pressure is at least so many pascals: a place forward of the
    /// middle, in metres. All the contact when the light end presses that hard as well.
    pub fn reaches(&self, pascals: f64) -> f64 {
        let low_end = self.worst().1;
        let mut runs: Vec<_> = self.profile.windows(2).collect();
        if low_end > 0.0 {
            runs.reverse();
        }
        let crossed = runs.into_iter().find_map(|ends| {
            let ((a, p), (b, q)) = (ends[0], ends[1]);
            let crosses = p.min(q) < pascals && pascals <= p.max(q);
            crosses.then(|| a + (b - a) * (pascals - p) / (q - p))
        });
        crossed.unwrap_or(-low_end)
    }

    /// The area of the diagram times its width, in newtons: the force it stands for.
    pub fn force(&self) -> f64 {
        let area: f64 = self
            .profile
            .windows(2)
            .map(|ends| (ends[1].0 - ends[0].0) * (ends[0].1 + ends[1].1) / 2.0)
            .sum();
        area * self.width
    }
}
