//! The milliseconds of a hit.

use super::{Limit, Mark, NoRun, Run, STEPS, Series, Words, even, known};
use crate::physics::impact::{self, PulseShape, SpringStop};
use crate::quantity::catalogue::impact as q;
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::channel::{self, RunKind, RunPulse};
use crate::quantity::{Acceleration, Entry, Measure, Speed, Time};
use crate::rules::{Origin, Values};

/// From first touch to rest.
pub(super) fn impact(values: &Values, pulse: Option<RunPulse>) -> Result<Run, NoRun> {
    let (pulse, taken) = match pulse {
        Some(pulse) => (pulse, None),
        None => nearest(values)?,
    };
    // The stop time also asks for all that any pulse needs.
    let [mass, speed, share, _] = known(
        values,
        [MASS.any(), q::IMPACT_SPEED.any(), q::WEIGHT_SHARE.any(), q::STOP_TIME.any()],
    )?;
    if speed <= 0.0 {
        return Err(crate::physics::Impossible::NoSpeed.into());
    }
    let moments = match shape(pulse) {
        Some(shape) => pulsed(values, shape, speed)?,
        None => sprung(values, mass, speed, share)?,
    };
    let force = Series {
        channel: &channel::FORCE,
        values: moments.iter().map(|moment| mass * moment.deceleration + share).collect(),
        limits: limit(values.si(q::FRAME_STRENGTH), "strength of the weakest mount"),
    };
    let in_g = |moment: &Moment| {
        impact::in_standard_gravity(Acceleration::from_si(moment.deceleration)).si()
    };
    let shock = Series {
        channel: &channel::SHOCK,
        values: moments.iter().map(in_g).collect(),
        limits: limit(values.si(q::SHOCK_LIMIT), "shock limit of the parts"),
    };
    let times: Vec<f64> = moments.iter().map(|moment| moment.time).collect();
    let mut marks: Vec<Mark> = [&force, &shock]
        .into_iter()
        .flat_map(|series| series.limits.iter().map(move |limit| (series, limit)))
        .filter_map(|(series, limit)| {
            Some(Mark {
                at: series.passes(&times, limit.at)?,
                channel: series.channel,
                value: limit.at,
                lasts: false,
                brief: "past the limit",
                words: Words::new(format!("it goes past the {}", limit.label)),
            })
        })
        .collect();
    marks.sort_by(|a, b| a.at.total_cmp(&b.at));
    let last = moments.last().map_or((0.0, 0.0), |moment| (moment.time, moment.travel));
    let ending = Words::new("It stops from ")
        .amount(&channel::SPEED, speed)
        .text(" in ")
        .amount(&channel::TIME, last.0)
        .text(" and ")
        .amount(&channel::CRUSH, last.1)
        .text("; the force peaks at ")
        .amount(&channel::FORCE, most(&force))
        .text(" and the shock at ")
        .amount(&channel::SHOCK, most(&shock));
    let still = |channel: &'static Entry, pick: fn(&Moment) -> f64| Series {
        channel,
        values: moments.iter().map(pick).collect(),
        limits: Vec::new(),
    };
    let as_one = "The machine stops as one piece against something that does not move; a bounce comes after, and a hard edge inside the stop makes a taller peak.";
    Ok(Run {
        kind: RunKind::Impact,
        series: vec![
            force,
            shock,
            still(&channel::SPEED, |moment| moment.speed),
            still(&channel::CRUSH, |moment| moment.travel),
        ],
        times,
        marks,
        ending,
        assumes: taken
            .into_iter()
            .chain([Words::new(in_words(pulse)), Words::new(as_one)])
            .collect(),
    })
}

/// One moment of a stop, in SI units.
struct Moment {
    time: f64,
    deceleration: f64,
    speed: f64,
    travel: f64,
}

fn most(series: &Series) -> f64 {
    series.values.iter().copied().fold(f64::NEG_INFINITY, f64::max)
}

fn limit(at: Option<f64>, label: &'static str) -> Vec<Limit> {
    at.map(|at| Limit { label, at }).into_iter().collect()
}

/// The shape that goes with the build's peak over mean, and a word when none fits.
fn nearest(values: &Values) -> Result<(RunPulse, Option<Words>), NoRun> {
    let [factor] = known(values, [q::PULSE_FACTOR.any()])?;
    let pulses = [RunPulse::HalfSine, RunPulse::Triangle, RunPulse::Trapezoid, RunPulse::Steady];
    let off = |pulse: &RunPulse| {
        shape(*pulse).map_or(f64::INFINITY, |shape| (shape.peak_over_mean().si() - factor).abs())
    };
    let pulse = pulses.into_iter().min_by(|a, b| off(a).total_cmp(&off(b)));
    let pulse = pulse.unwrap_or(RunPulse::HalfSine);
    let taken = (off(&pulse) > 0.01 * factor).then(|| {
        Words::new("No pulse here has the peak over mean of the build, ")
            .amount(&FACTOR, factor)
            .text("; the nearest is taken.")
    });
    Ok((pulse, taken))
}

/// A plain number, for words.
static FACTOR: Entry = Entry::found(
    crate::quantity::Topic::Impact,
    crate::quantity::Id::<crate::quantity::Ratio>::new("factor"),
    "factor",
    "k",
    "A plain number.",
)
.units(&[""], &[""]);

fn shape(pulse: RunPulse) -> Option<PulseShape> {
    match pulse {
        RunPulse::HalfSine => Some(PulseShape::HalfSine),
        RunPulse::Triangle => Some(PulseShape::Triangle),
        RunPulse::SawTooth => Some(PulseShape::Sawtooth),
        RunPulse::Trapezoid => Some(PulseShape::Trapezoid),
        RunPulse::Steady => Some(PulseShape::Square),
        RunPulse::Spring => None,
    }
}

fn in_words(pulse: RunPulse) -> &'static str {
    match pulse {
        RunPulse::HalfSine => "The pulse is taken as a half-sine: its peak is 1.57 times its mean.",
        RunPulse::Triangle => "The pulse is taken as a triangle: its peak is twice its mean.",
        RunPulse::SawTooth => "The pulse is taken as a saw-tooth: its peak is twice its mean.",
        RunPulse::Trapezoid => {
            "The pulse is taken as a trapezoid: its peak is 1.11 times its mean."
        }
        RunPulse::Steady => "The force is taken as level from touch to rest.",
        RunPulse::Spring => "One straight spring, slack at first touch, takes the whole stop.",
    }
}

/// A stop by a pulse that lasts the stop time, or as long as fits the stop distance said.
fn pulsed(values: &Values, shape: PulseShape, speed: f64) -> Result<Vec<Moment>, NoRun> {
    let [time, distance] = known(values, [q::STOP_TIME.any(), q::STOP_DISTANCE.any()])?;
    let said = values.origin(q::STOP_TIME) == Some(Origin::Given);
    let time = if said { time } else { distance / (speed * shape.moment(1.0).travel) };
    let mean = impact::deceleration(Speed::from_si(speed), Time::from_si(time)).si();
    let moment = |part: f64| {
        let moment = shape.moment(part);
        Moment {
            time: part * time,
            deceleration: mean * moment.deceleration,
            speed: speed * (1.0 - moment.speed_lost),
            travel: speed * time * moment.travel,
        }
    };
    Ok(even(STEPS).map(moment).collect())
}

/// A stop by the one spring that uses the stop distance.
fn sprung(values: &Values, mass: f64, speed: f64, share: f64) -> Result<Vec<Moment>, NoRun> {
    let [rate] = known(values, [q::SPRING_RATE.any()])?;
    let spring = SpringStop {
        mass: Measure::from_si(mass),
        speed: Measure::from_si(speed),
        weight_share: Measure::from_si(share),
        rate: Measure::from_si(rate),
    };
    let duration = spring.duration().si();
    let moment = |part: f64| {
        let (travel, left) = spring.after(Time::from_si(part * duration));
        Moment {
            time: part * duration,
            deceleration: (rate * travel.si() - share) / mass,
            speed: left.si(),
            travel: travel.si(),
        }
    };
    Ok(even(STEPS).map(moment).collect())
}
