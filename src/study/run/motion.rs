//! Launch, coast and stop.

use super::{Mark, NoRun, Run, STEPS, Series, Words, even, known};
use crate::physics::motion::{self, Drive, Limit, SpeedUp};
use crate::quantity::catalogue::machine::MASS;
use crate::quantity::catalogue::motion as q;
use crate::quantity::catalogue::traction::GRIP_PUSH;
use crate::quantity::channel::{self, RunKind};
use crate::quantity::{Force, Measure, Speed};
use crate::rules::{Value, Values};
use crate::study::changed::number;

/// The part of its top speed at which a launch that never gets to its target ends: the top speed
/// itself takes for ever.
const NEARLY: f64 = 0.99;

/// From rest to the speed to reach, or as near as it gets.
pub(super) fn launch(values: &Values) -> Result<Run, NoRun> {
    // The rule for the time to the speed says best what a launch needs.
    if let time @ Value::Missing(_) = values.of(q::RUN_UP_TIME) {
        number(time).map_err(NoRun)?;
    }
    let [target] = known(values, [q::TARGET_SPEED.any()])?;
    let [resistance, mass, equivalent] =
        known(values, [q::STEADY_RESISTANCE.any(), MASS.any(), q::EQUIVALENT_MASS.any()])?;
    let drive = Drive {
        power: values.get(q::DRIVE_POWER),
        torque_force: values.get(q::TORQUE_FORCE),
        thrust_limit: values.get(q::THRUST_ALLOWED),
        resistance: Measure::from_si(resistance),
        mass: Measure::from_si(mass),
        equivalent_mass: Measure::from_si(equivalent),
    };
    let drag = values.get(q::TARGET_DRAG).unwrap_or_default();
    let speed_up = SpeedUp { drive: &drive, reference: Measure::from_si(target), drag };
    let top = speed_up.tops_out(Measure::from_si(target)).map(Measure::si);
    let end = top.map_or(target, |top| NEARLY * top);
    let starts = speed_up.at(Measure::from_si(0.0)).is_none_or(|(a, _)| a.si() > 0.0);
    if !starts || end <= 0.0 {
        let why = "It does not get going: what holds it back is more than anything that pushes.";
        return Err(NoRun(why.to_owned()));
    }
    let switches = switches(&speed_up, end);
    let mut speeds: Vec<f64> = even(STEPS).map(|part| part * end).collect();
    speeds.extend(switches.iter().map(|(speed, _)| *speed));
    speeds.sort_by(f64::total_cmp);
    speeds.dedup();
    let typed: Vec<Speed> = speeds.iter().map(|speed| Speed::from_si(*speed)).collect();
    let runs = speed_up.through(&typed)?;
    let times: Vec<f64> = runs.iter().map(|run| run.time.si()).collect();
    let least = end / STEPS as f64;
    let acceleration = |speed: f64| {
        // With power alone there is no limit at rest: the first step stands for it.
        let here = speed_up.at(Measure::from_si(speed));
        here.or_else(|| speed_up.at(Measure::from_si(least))).map_or(0.0, |(a, _)| a.si())
    };
    let marks = switches
        .iter()
        .map(|(speed, limit)| Mark {
            at: speeds.iter().zip(&times).find(|(v, _)| *v == speed).map_or(0.0, |(_, t)| *t),
            channel: &channel::ACCELERATION,
            value: acceleration(*speed),
            lasts: true,
            brief: in_words(*limit, values),
            words: Words::new(in_words(*limit, values)),
        })
        .collect();
    let last = runs.last().map(|run| (run.time.si(), run.distance.si())).unwrap_or_default();
    let ending = match top {
        None => Words::new("It reaches ").amount(&channel::SPEED, target),
        Some(top) => Words::new("It never reaches ")
            .amount(&channel::SPEED, target)
            .text(": it tops out at ")
            .amount(&channel::SPEED, top)
            .text(" and has 99 % of that"),
    };
    Ok(Run {
        kind: RunKind::Launch,
        series: vec![
            plain(&channel::SPEED, speeds.clone()),
            plain(&channel::ACCELERATION, speeds.iter().map(|v| acceleration(*v)).collect()),
            plain(&channel::DISTANCE, runs.iter().map(|run| run.distance.si()).collect()),
        ],
        times,
        marks,
        ending: ending
            .text(" after ")
            .amount(&channel::TIME, last.0)
            .text(" and ")
            .amount(&channel::DISTANCE, last.1),
        assumes: vec![Words::new(
            "Full power or full torque all the way, straight on, without slip; a limit that is not known does not count.",
        )],
    })
}

/// The speeds from which on another limit counts, the first one from rest.
fn switches(speed_up: &SpeedUp<'_>, end: f64) -> Vec<(f64, Limit)> {
    let at = |speed: f64| speed_up.at(Measure::from_si(speed)).map(|(_, limit)| limit);
    let mut switches: Vec<(f64, Limit)> = Vec::new();
    let mut before = 0.0;
    for speed in even(STEPS).map(|part| part * end) {
        let Some(limit) = at(speed) else { continue };
        match switches.last() {
            None => switches.push((0.0, limit)),
            Some((_, last)) if *last != limit => {
                let (mut low, mut high, last) = (before, speed, *last);
                for _ in 0..60 {
                    let middle = low + (high - low) / 2.0;
                    if at(middle) == Some(last) { low = middle } else { high = middle }
                }
                switches.push((high, limit));
            }
            Some(_) => {}
        }
        before = speed;
    }
    switches
}

fn in_words(limit: Limit, values: &Values) -> &'static str {
    match limit {
        Limit::Power => "the power limits",
        Limit::Torque => "the torque limits",
        Limit::Ground => match (values.si(q::FRONT_LIFT_FORCE), values.si(GRIP_PUSH)) {
            (Some(lift), Some(grip)) if grip <= lift => "the grip limits",
            (Some(_), _) => "the front is about to lift",
            (None, _) => "the grip limits",
        },
    }
}

/// Rolling out with the drive let go.
pub(super) fn coast(values: &Values) -> Result<Run, NoRun> {
    let [speed, resistance, mass] = known(
        values,
        [q::DRIVING_SPEED.any(), q::STEADY_RESISTANCE.any(), q::EQUIVALENT_MASS.any()],
    )?;
    moving(speed)?;
    let drag = values.si(q::AIR_DRAG).unwrap_or_default();
    // What is left of the roll once it is down to a speed.
    let left = |now: f64| {
        let drag = Force::from_si(drag * (now / speed) * (now / speed));
        let (mass, now) = (Measure::from_si(mass), Measure::from_si(now));
        let resistance = Measure::from_si(resistance);
        let time = motion::coast_down_time(mass, now, resistance, drag)?;
        let distance = motion::coast_down_distance(mass, now, resistance, drag)?;
        Ok::<_, NoRun>((time.si(), distance.si()))
    };
    let whole = left(speed)?;
    let mut run = slowing(RunKind::Coast, speed, |now| {
        let left = left(now)?;
        Ok((whole.0 - left.0, whole.1 - left.1))
    })?;
    run.ending = Words::new("It rolls out from ")
        .amount(&channel::SPEED, speed)
        .text(" in ")
        .amount(&channel::TIME, whole.0)
        .text(" and ")
        .amount(&channel::DISTANCE, whole.1);
    run.assumes = vec![Words::new(
        "The drive is let go and does not brake; ground and slope hold back the same at every speed.",
    )];
    if values.si(q::AIR_DRAG).is_none() {
        run.assumes.push(Words::new("The air is left out: its drag area is not known."));
    }
    Ok(run)
}

/// Braking to rest, the time to react first.
pub(super) fn stop(values: &Values) -> Result<Run, NoRun> {
    let [speed, deceleration, reaction] = known(
        values,
        [q::DRIVING_SPEED.any(), q::BRAKING_DECELERATION.any(), q::REACTION_TIME.any()],
    )?;
    moving(speed)?;
    let (typed, brake) = (Speed::from_si(speed), Measure::from_si(deceleration));
    let rolled = motion::reaction_distance(typed, Measure::from_si(reaction)).si();
    let whole = motion::braking_distance(typed, brake).si();
    let mut run = slowing(RunKind::Stop, speed, |now| {
        let left = motion::braking_distance(Speed::from_si(now), brake).si();
        Ok((reaction + (speed - now) / deceleration, rolled + whole - left))
    })?;
    if reaction > 0.0 {
        run.times.insert(0, 0.0);
        for series in &mut run.series {
            let start = if series.channel.id == channel::SPEED.id { speed } else { 0.0 };
            series.values.insert(0, start);
        }
        run.marks = vec![Mark {
            at: reaction,
            channel: &channel::SPEED,
            value: speed,
            lasts: false,
            brief: "the brakes take hold",
            words: Words::new("the brakes take hold, ")
                .amount(&channel::DISTANCE, rolled)
                .text(" on"),
        }];
    }
    run.ending = Words::new("From ")
        .amount(&channel::SPEED, speed)
        .text(" it stops in ")
        .amount(&channel::TIME, reaction + speed / deceleration)
        .text(" and ")
        .amount(&channel::DISTANCE, rolled + whole);
    run.assumes = vec![Words::new(
        "Full speed until the brakes hold, then all tracks or wheels brake to the limit of grip, steadily.",
    )];
    Ok(run)
}

/// A speed worth slowing down from.
fn moving(speed: f64) -> Result<(), NoRun> {
    if speed > 0.0 { Ok(()) } else { Err(crate::physics::Impossible::NoSpeed.into()) }
}

/// A run from a speed down to rest; `when` says after what time and distance it is down to a speed.
fn slowing(
    kind: RunKind,
    speed: f64,
    when: impl Fn(f64) -> Result<(f64, f64), NoRun>,
) -> Result<Run, NoRun> {
    let speeds: Vec<f64> = even(STEPS).map(|part| speed * (1.0 - part)).collect();
    let moments = speeds.iter().map(|now| when(*now)).collect::<Result<Vec<_>, _>>()?;
    let (times, distances) = moments.into_iter().unzip();
    Ok(Run {
        kind,
        times,
        series: vec![plain(&channel::SPEED, speeds), plain(&channel::DISTANCE, distances)],
        marks: Vec::new(),
        ending: Words::default(),
        assumes: Vec::new(),
    })
}

/// A series without limits.
fn plain(channel: &'static crate::quantity::Entry, values: Vec<f64>) -> Series {
    Series { channel, values, limits: Vec::new() }
}
