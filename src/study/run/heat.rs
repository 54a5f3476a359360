//! A motor getting warm, working all the time or with rests.

use super::{Limit, Mark, NoRun, Run, STEPS, Series, Words, known};
use crate::physics::drive::motor;
use crate::physics::heat::{lump, winding};
use crate::quantity::catalogue::drive::{MOTOR_LOSS, MOTOR_RESISTANCE, WINDING_LOSS};
use crate::quantity::catalogue::heat as q;
use crate::quantity::channel::{self, RunKind};
use crate::quantity::{Measure, Time};
use crate::rules::Values;

/// How many time constants of the whole motor are shown: by then it is within 1 % of rest.
const CONSTANTS: f64 = 5.0;
/// Rounds of work and rest at most.
const ROUNDS: f64 = 60.0;
/// Rise in kelvin past which nothing of a winding is left to talk about.
const HOPELESS: f64 = 500.0;

/// From cold, with the build's working and rest times if it has both.
pub(super) fn warm_up(values: &Values, to: Option<f64>) -> Result<Run, NoRun> {
    let [loss, copper, coefficient, inner, outer, winding_capacity, housing_capacity, air] = known(
        values,
        [
            MOTOR_LOSS.any(),
            WINDING_LOSS.any(),
            q::COPPER_COEFFICIENT.any(),
            q::WINDING_TO_HOUSING.any(),
            q::HOUSING_TO_AIR.any(),
            q::WINDING_HEAT_CAPACITY.any(),
            q::HOUSING_HEAT_CAPACITY.any(),
            q::COOLING_AIR.any(),
        ],
    )?;
    let path = winding::Path {
        to_housing: Measure::from_si(inner),
        to_air: Measure::from_si(outer),
        winding: Measure::from_si(winding_capacity),
        housing: Measure::from_si(housing_capacity),
    };
    let coefficient = Measure::from_si(coefficient);
    let works = winding::Heating {
        loss: Measure::from_si(loss),
        copper: Measure::from_si(copper),
        coefficient,
    };
    let idle = values
        .get(q::REST_CURRENT)
        .zip(values.get(MOTOR_RESISTANCE))
        .map_or_else(Default::default, |(current, resistance)| {
            motor::winding_loss(current, resistance)
        });
    let rests = winding::Heating { loss: idle, copper: idle, coefficient };
    let constant = lump::time_constant(path.to_housing + path.to_air, path.winding + path.housing);
    let cycle = values
        .si(q::WORK_TIME)
        .zip(values.si(q::REST_TIME))
        .filter(|(on, off)| *on > 0.0 && *off > 0.0);
    let usual = CONSTANTS * constant.si();
    let end = match cycle {
        Some((on, off)) => to.unwrap_or(usual.max(2.0 * (on + off))).min(ROUNDS * (on + off)),
        None => to.unwrap_or(usual),
    };
    let warm = Warmth { path, works, rests, cycle };
    let (times, rises) = warm.until(end);
    let limit = values.si(q::WINDING_LIMIT);
    let at = |pick: fn(&winding::Rises) -> f64| rises.iter().map(|r| air + pick(r)).collect();
    let limits = limit.map(|at| Limit { label: "winding limit", at }).into_iter().collect();
    let copper =
        Series { channel: &channel::WINDING, values: at(|rises| rises.winding.si()), limits };
    let marks = limit
        .and_then(|limit| Some((copper.passes(&times, limit)?, limit)))
        .map(|(at, value)| Mark {
            at,
            channel: &channel::WINDING,
            value,
            lasts: false,
            brief: "past the limit",
            words: Words::new("the winding goes past its limit"),
        })
        .into_iter()
        .collect();
    let hottest = copper.values.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let shown = times.last().copied().unwrap_or_default();
    let ending = if shown < end {
        Words::new("There is no rest: the winding is past all use after ")
            .amount(&channel::TIME, shown)
    } else {
        Words::new("The winding gets to ")
            .amount(&channel::WINDING, hottest)
            .text(" within ")
            .amount(&channel::TIME, shown)
    };
    let ending = match limit {
        Some(limit) if hottest <= limit => {
            ending.text(", under its limit of ").amount(&channel::WINDING, limit)
        }
        Some(limit) => ending.text(", over its limit of ").amount(&channel::WINDING, limit),
        None => ending,
    };
    let rhythm = match cycle {
        Some((on, off)) => Words::new("It works ")
            .amount(&channel::TIME, on)
            .text(" and rests ")
            .amount(&channel::TIME, off)
            .text(", again and again, from cold."),
        None => Words::new("It works without a rest, from cold."),
    };
    let housing = Series {
        channel: &channel::HOUSING,
        values: at(|rises| rises.housing.si()),
        limits: Vec::new(),
    };
    Ok(Run {
        kind: RunKind::WarmUp,
        series: vec![copper, housing],
        times,
        marks,
        ending,
        assumes: vec![
            rhythm,
            Words::new(
                "Winding and housing are two bodies, each equally warm all over; the load is steady and the cooling the same throughout.",
            ),
        ],
    })
}

/// What warms up, and in which rhythm.
struct Warmth {
    path: winding::Path,
    works: winding::Heating,
    rests: winding::Heating,
    /// Working and rest time, in seconds.
    cycle: Option<(f64, f64)>,
}

impl Warmth {
    /// The rises at each moment until an end, or until there is no hope for the winding.
    fn until(&self, end: f64) -> (Vec<f64>, Vec<winding::Rises>) {
        let (on, off) = self.cycle.unwrap_or((end, 0.0));
        let stretches = 2.0 * (end / (on + off)).ceil().max(1.0);
        let steps = (2.0 * STEPS as f64 / stretches).clamp(8.0, STEPS as f64) as usize;
        let (mut times, mut rises) = (vec![0.0], vec![winding::cold()]);
        let (mut start, mut now, mut working) = (winding::cold(), 0.0, true);
        while now < end {
            let length = if working { on } else { off }.min(end - now);
            let heating = if working { &self.works } else { &self.rests };
            let mut last = start;
            for part in super::even(steps).skip(1) {
                let time = Time::from_si(part * length);
                last = winding::rises_after(&self.path, heating, start, time);
                times.push(now + part * length);
                rises.push(last);
                if last.winding.si() > HOPELESS {
                    return (times, rises);
                }
            }
            if now + length <= now {
                break;
            }
            (start, now, working) = (last, now + length, !working || off <= 0.0);
        }
        (times, rises)
    }
}
