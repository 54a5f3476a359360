//! Driving on one charge until the cut-off.

use super::{Limit, Mark, NoRun, Run, Series, Words, known};
use crate::physics::accumulate;
use crate::physics::electrics::battery;
use crate::quantity::catalogue::drive::LOADED_SPEED;
use crate::quantity::catalogue::electrics as q;
use crate::quantity::catalogue::motion::DRIVING_SPEED;
use crate::quantity::catalogue::whole::ENERGY_PER_DISTANCE;
use crate::quantity::channel::{self, RunKind};
use crate::quantity::{Measure, Voltage};
use crate::rules::{Givens, Values};
use crate::study::changed::{Changed, number};

/// Even steps of charge.
const STEPS: usize = 60;

/// The battery under load at one resting voltage, in SI units.
#[derive(Debug, Clone, Copy)]
struct Load {
    current: f64,
    voltage: f64,
    speed: Option<f64>,
}

/// From full to the cut-off: at the push and throttle of the build, or held at a speed.
pub(super) fn until_empty(
    givens: &Givens,
    values: &Values,
    speed: Option<f64>,
) -> Result<Run, NoRun> {
    let [mean, cutoff, charge] = known(
        values,
        [q::BATTERY_VOLTAGE.any(), q::BATTERY_CUTOFF_VOLTAGE.any(), q::BATTERY_CHARGE.any()],
    )?;
    if mean <= cutoff {
        return Err(crate::physics::Impossible::EmptyAlready.into());
    }
    // The resting voltage falls in a straight line: its mean in the middle, the cut-off at the end.
    let resting = |used: f64| mean + (mean - cutoff) * (1.0 - 2.0 * used);
    let build = Changed::new(
        q::BATTERY_VOLTAGE.any(),
        givens,
        &[q::BATTERY_CURRENT.any(), q::BATTERY_LOADED_VOLTAGE.any(), LOADED_SPEED.any()],
    );
    let held = speed.map(|_| held(values)).transpose()?;
    let load = |used: f64| match held {
        Some(held) => held.at(resting(used)),
        None => build.at(resting(used), |values| {
            Ok(Load {
                current: number(values.of(q::BATTERY_CURRENT)).map_err(NoRun)?,
                voltage: number(values.of(q::BATTERY_LOADED_VOLTAGE)).map_err(NoRun)?,
                speed: values.si(LOADED_SPEED),
            })
        }),
    };
    let first = load(0.0)?;
    if first.current <= 0.0 {
        return Err(NoRun("Nothing is drawn from the battery, so it never gets empty.".to_owned()));
    }
    let runs =
        |used: f64| load(used).ok().filter(|load| load.voltage > cutoff && load.current > 0.0);
    if runs(0.0).is_none() {
        return Err(NoRun(
            "The load pulls even a full battery under its cut-off: ask for less, or give it cells with less resistance.".to_owned(),
        ));
    }
    let last = last_charge(|used| runs(used).is_some());
    let places: Vec<f64> = super::even(STEPS).map(|part| part * last).collect();
    let rates = |used: f64| {
        let load = load(used).unwrap_or(first);
        let time = charge / load.current;
        [time, time * load.speed.unwrap_or_default()]
    };
    let too_large =
        || NoRun("The numbers are too large or too small to make a run of them.".to_owned());
    let sums = accumulate(rates, &places).ok_or_else(too_large)?;
    let loads = places.iter().map(|used| load(*used)).collect::<Result<Vec<_>, _>>()?;
    let time_at = |used: f64| {
        let place = places.partition_point(|at| *at < used).clamp(1, places.len().max(2) - 1);
        let (a, b) = (places.get(place - 1)?, places.get(place)?);
        let (from, to) = (sums.get(place - 1)?[0], sums.get(place)?[0]);
        Some(from + (to - from) * (used - a) / (b - a))
    };
    let usable = values.si(q::USABLE_SHARE).filter(|share| *share < last);
    let marks = usable
        .and_then(|used| Some((used, time_at(used)?)))
        .map(|(used, at)| Mark {
            at,
            channel: &channel::CHARGE,
            value: 1.0 - used,
            lasts: false,
            brief: "the part to keep is left",
            words: Words::new("the part that should be used is gone"),
        })
        .into_iter()
        .collect();
    let [time, distance] = sums.last().copied().unwrap_or([0.0, 0.0]);
    let why = if last < 1.0 {
        Words::new("The voltage is down to the cut-off after ")
    } else {
        Words::new("The charge is used up after ")
    };
    let gone = match first.speed {
        Some(_) => {
            why.amount(&channel::TIME, time).text(" and ").amount(&channel::DISTANCE, distance)
        }
        None => why.amount(&channel::TIME, time),
    };
    let ending = if last < 1.0 {
        gone.text(", with ").amount(&channel::CHARGE, 1.0 - last).text(" of the charge left")
    } else {
        gone
    };
    let each = |channel, values: Vec<f64>, limits| Series { channel, values, limits };
    let of = |pick: fn(&Load) -> f64| loads.iter().map(pick).collect::<Vec<_>>();
    let left = places.iter().map(|used| 1.0 - used).collect();
    let keep = usable.map(|used| Limit { label: "part to keep", at: 1.0 - used });
    let cut = vec![Limit { label: "cut-off", at: cutoff }];
    let mut series = vec![
        each(&channel::VOLTAGE, of(|load| load.voltage), cut),
        each(&channel::CURRENT, of(|load| load.current), Vec::new()),
        each(&channel::CHARGE, left, keep.into_iter().collect()),
    ];
    if first.speed.is_some() {
        let gone = sums.iter().map(|sum| sum[1]).collect();
        series.push(each(&channel::SPEED, of(|load| load.speed.unwrap_or_default()), Vec::new()));
        series.push(each(&channel::DISTANCE, gone, Vec::new()));
    }
    let rhythm = match held {
        Some(_) => {
            "It holds its speed: the power stays the same, so the current grows as the voltage falls."
        }
        None => "Push and throttle stay the same, so it slows down as the voltage falls.",
    };
    Ok(Run {
        kind: RunKind::UntilEmpty,
        times: sums.iter().map(|sum| sum[0]).collect(),
        series,
        marks,
        ending,
        assumes: vec![
            Words::new(rhythm),
            Words::new(
                "The resting voltage falls in a straight line about its mean; real lithium cells hold up longer and then fall faster. Warm cells, all alike.",
            ),
        ],
    })
}

/// How much of the charge is used when it no longer runs, by halving; all of it if it runs to the
/// end.
fn last_charge(runs: impl Fn(f64) -> bool) -> f64 {
    if runs(1.0) {
        return 1.0;
    }
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..50 {
        let middle = (low + high) / 2.0;
        if runs(middle) { low = middle } else { high = middle }
    }
    low
}

/// A speed held: the power at the terminals, the battery's resistance and the speed.
#[derive(Debug, Clone, Copy)]
struct Held {
    power: f64,
    resistance: f64,
    speed: f64,
}

fn held(values: &Values) -> Result<Held, NoRun> {
    let [energy, resistance, speed] = known(
        values,
        [ENERGY_PER_DISTANCE.any(), q::BATTERY_RESISTANCE.any(), DRIVING_SPEED.any()],
    )?;
    Ok(Held { power: energy * speed, resistance, speed })
}

impl Held {
    fn at(self, resting: f64) -> Result<Load, NoRun> {
        let open = Voltage::from_si(resting);
        let resistance = Measure::from_si(self.resistance);
        let current = battery::current_for_power(open, resistance, Measure::from_si(self.power))?;
        let voltage = battery::left(open, battery::sag(current, resistance))?;
        Ok(Load { current: current.si(), voltage: voltage.si(), speed: Some(self.speed) })
    }
}
