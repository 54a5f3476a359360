//! How deep the running gear goes into the ground, from end to end.

use super::{About, Sketch, Underneath, near};
use crate::quantity::Id;
use crate::quantity::catalogue::ground::SINKAGE_EXPONENT;
use crate::quantity::catalogue::running_gear::{SKI_COUNT, TRACK_COUNT, WHEEL_COUNT};
use crate::quantity::catalogue::traction::{LOW_END_SINKAGE, SINKAGE, WHEEL_SINKAGE};
use crate::rules::{Value, Values};

/// Deeper than so many times the height of its running gear, a machine is not drawn sunk in.
const DEEPEST: f64 = 1.5;

/// How deep the ground is pressed down along the contact; metres, zero or more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sinking {
    /// Under the mean pressure, as the rules find it.
    pub mean: f64,
    /// Under the low end, as the rules find it, with its place forward of the middle; nothing where
    /// all of the contact goes in alike.
    pub worst: Option<(f64, f64)>,
    /// A place further towards the light end, and how deep it goes in there.
    light: (f64, f64),
}

impl Sinking {
    /// How deep it goes in under what the rules find; nothing when they find nothing.
    ///
    /// Under the light end the ground gives way by its own pressure there, as at the low end: after
    /// Bekker's equation, in the ratio of the pressures to the power of one over the exponent.
    fn of(values: &Values, underneath: Option<&Underneath>) -> Option<Self> {
        let mean = values.si(sinkage_of(values)).filter(|si| near(si) && *si >= 0.0)?;
        let even = Self { mean, worst: None, light: (0.0, mean) };
        let tilted = || {
            let under = underneath.filter(|under| under.worst().0 > under.mean * 1.001)?;
            let low_end = under.worst().1;
            let exponent = values.si(SINKAGE_EXPONENT).filter(|exponent| *exponent > 0.0)?;
            let worst = values.si(LOW_END_SINKAGE).filter(near)?;
            // Where the contact has lifted it carries nothing, and goes in no deeper than nothing.
            let light = under.profile.iter().filter(|(place, _)| *place != low_end);
            let (place, pascals) = light.copied().max_by(|a, b| {
                let to_low_end = |place: f64| -(place - low_end).abs();
                a.1.total_cmp(&b.1).then(to_low_end(a.0).total_cmp(&to_low_end(b.0)))
            })?;
            let depth = mean * (pascals / under.mean).powf(1.0 / exponent);
            near(&depth).then_some(Self {
                mean,
                worst: Some((worst, low_end)),
                light: (place, depth),
            })
        };
        Some(tilted().unwrap_or(even))
    }

    /// How high the ground beside stands over the line of the contact: straight from the light end
    /// to the low one, and on. Below zero where an end has lifted off the ground.
    pub fn at(&self, place: f64) -> f64 {
        let (light_place, light) = self.light;
        match self.worst {
            Some((worst, low_end)) => {
                light + (worst - light) * (place - light_place) / (low_end - light_place)
            }
            None => self.mean,
        }
    }
}

/// Whether wheels alone carry the machine.
fn on_wheels(values: &Values) -> bool {
    let some = |id| values.si(id) > Some(0.0);
    some(WHEEL_COUNT) && !some(TRACK_COUNT) && !some(SKI_COUNT)
}

/// The sinkage that counts for what carries the machine.
fn sinkage_of(values: &Values) -> Id<crate::quantity::Length> {
    if on_wheels(values) { WHEEL_SINKAGE } else { SINKAGE }
}

impl Sketch {
    /// Lets the machine sink in as the rules say, or says why it is drawn on top.
    pub(super) fn sink(&mut self, values: &Values) {
        if self.bearers.is_empty() {
            return;
        }
        let high = self.bearers.iter().map(|bearer| bearer.height).fold(0.0, f64::max);
        match (Sinking::of(values, self.underneath.as_ref()), values.of(sinkage_of(values))) {
            (Some(sinking), _) => {
                let deep = sinking.worst.map_or(sinking.mean, |(worst, _)| worst);
                if deep > DEEPEST * high {
                    self.note(
                        About::Gear,
                        "By its numbers the ground swallows the running gear: it is drawn on top.",
                    );
                    return;
                }
                if on_wheels(values) {
                    self.note(
                        About::Gear,
                        "The wheels go in as stiff wheels that share the load would: soft tyres \
                         go in less.",
                    );
                }
                self.sinking = Some(sinking);
            }
            (None, Value::Missing(_)) => self.note(
                About::Gear,
                "It is drawn on top of the ground: how deep it goes in takes the ground's exponent \
                 of sinkage and its two moduli.",
            ),
            (None, _) => self.note(
                About::Gear,
                "It is drawn on top of the ground: how deep it goes in is known for tracks alone, \
                 skis alone or wheels alone.",
            ),
        }
    }
}
