//! One pass over all the rules: from the numbers given to all that can be known.

use std::sync::LazyLock;

use super::catalogue::{self, Pair};
use super::network::{Reach, STATIONS, Station};
use super::rule::{Caution, Fault, Rule};
use super::value::{Givens, Known, Lack, Lacks, Origin, Value, Values};
use super::words;
use crate::quantity::{AnyId, Role, catalogue as quantities};

/// The part of a pass that a change of some given numbers can reach, for asking the same question
/// many times over: a curve, a spread. The numbers are those of a whole pass; a caution that looks
/// further than its rule's own needs may be left as it was.
#[derive(Debug, Clone)]
pub struct Course {
    places: Vec<usize>,
    /// The pairs both of whose quantities it passes.
    pairs: Vec<&'static Both>,
}

/// A pair with the places of its two.
#[derive(Debug)]
struct Both {
    pair: &'static Pair,
    places: [usize; 2],
}

static PAIRS: LazyLock<Vec<Both>> = LazyLock::new(|| {
    let places = |pair: &Pair| Some([quantities::index(pair.one)?, quantities::index(pair.other)?]);
    catalogue::PAIRS.iter().filter_map(|pair| Some(Both { pair, places: places(pair)? })).collect()
});

impl Course {
    /// All of the rules.
    fn whole() -> &'static Self {
        static WHOLE: LazyLock<Course> = LazyLock::new(|| Course::over(&Reach::whole()));
        &WHOLE
    }

    fn over(reach: &Reach) -> Self {
        Self {
            places: reach.places().collect(),
            pairs: PAIRS
                .iter()
                .filter(|both| both.places.iter().all(|place| reach.has(*place)))
                .collect(),
        }
    }

    /// What `changed` can reach.
    pub fn from(changed: &[AnyId]) -> Self {
        Self::over(&Reach::from(changed))
    }

    /// What `changed` can reach on the way to `wanted`; nothing else is brought up to date.
    pub fn between(changed: &[AnyId], wanted: &[AnyId]) -> Self {
        Self::over(&Reach::from(changed).and(&Reach::to(wanted)))
    }

    /// Whether it passes nothing at all.
    pub fn is_empty(&self) -> bool {
        self.places.is_empty()
    }

    /// The quantities it brings up to date, each after all it is found from.
    pub fn passes(&self) -> impl Iterator<Item = AnyId> {
        self.places.iter().map(|place| STATIONS[*place].entry.id)
    }

    /// The numbers known of those quantities, in the same order.
    pub fn numbers(&self, values: &Values) -> impl Iterator<Item = Option<f64>> {
        self.places.iter().map(|place| values.si_at(*place))
    }

    /// Puts back what is known of those quantities elsewhere.
    pub fn restore(&self, from: &Values, values: &mut Values) {
        for &place in &self.places {
            values.slots[place].clone_from(&from.slots[place]);
        }
    }

    /// Brings values up to date with numbers that differ from those they were found from in
    /// nothing but what the course starts from.
    pub fn run(&self, givens: &Givens, values: &mut Values) {
        for &place in &self.places {
            match (given(givens, place), &mut values.slots[place]) {
                (Some(value), slot) => *slot = value,
                // A number is found anew in its place.
                (None, Value::Known(_)) => {}
                (None, slot) => *slot = Value::Missing(Lacks::default()),
            }
        }
        self.find(givens, values);
    }

    /// Finds what is not given, in values that hold what is.
    fn find(&self, givens: &Givens, values: &mut Values) {
        for &place in &self.places {
            if givens.at(place).is_some() {
                continue;
            }
            let station = &STATIONS[place];
            let found = match (&station.partner, station.rule) {
                // One of a pair is found from the other when that one is given.
                (Some(partner), _) if givens.at(partner.place).is_none() => Err(lacking(station)),
                (_, Some(rule)) => found(station, rule, values),
                (_, None) => Err(match station.entry.role {
                    Role::Given { assumed: Some(si) } => known(si, Origin::Assumed),
                    _ => lacking(station),
                }),
            };
            match found {
                Ok(si) => {
                    values.slots[place].hold(si);
                    caution(station, place, values);
                }
                Err(value) => values.slots[place] = value,
            }
        }
        for both in &self.pairs {
            compare(both, givens, values);
        }
    }
}

/// Says what is to be said of a number just found, which now stands among the values.
fn caution(station: &'static Station, place: usize, values: &mut Values) {
    let cautions = station.rule.map_or(&[][..], |rule| rule.cautions);
    if cautions.is_empty() && station.partner.is_none() {
        return;
    }
    let applies = |caution: &&Caution| (caution.when)(values);
    let said: Vec<_> = cautions.iter().filter(applies).map(|caution| caution.says.into()).collect();
    let link = station.partner.as_ref().map(|partner| partner.pair.link.into());
    if let Value::Known(known) = &mut values.slots[place] {
        known.cautions.extend(said.into_iter().chain(link));
    }
}

/// Finds every quantity that can be found from the numbers given.
///
/// A quantity that is given is taken as given, whether or not a rule could find it. Nothing
/// found is ever NaN or infinite: such a result is [`Value::Invalid`], with the reason.
pub fn evaluate(givens: &Givens) -> Values {
    let known = |place| given(givens, place).unwrap_or(Value::Missing(Lacks::default()));
    let mut values = Values { slots: (0..STATIONS.len()).map(known).collect() };
    Course::whole().find(givens, &mut values);
    values
}

fn known(si: f64, origin: Origin) -> Value {
    Value::Known(Known { si, origin, cautions: Vec::new() })
}

/// A given number, or why it cannot be meant.
fn given(givens: &Givens, place: usize) -> Option<Value> {
    let (si, origin) = givens.at(place)?;
    let entry = STATIONS[place].entry;
    Some(if entry.admits(si) {
        known(si, origin)
    } else {
        Value::Invalid(words::impossible_given(entry).into())
    })
}

/// Nothing is known of a quantity but that itself, or its partner, is lacking.
fn lacking(station: &'static Station) -> Value {
    Value::Missing(Lacks::own(&station.itself))
}

/// The number that a rule finds from what is known so far, in SI units, or what stands in its place.
fn found(station: &'static Station, rule: &'static Rule, values: &Values) -> Result<f64, Value> {
    let mut lacks = Lacks::default();
    for &(place, optional) in &station.needs {
        match &values.slots[place] {
            Value::Known(_) => {}
            Value::Invalid(why) => return Err(Value::Invalid(why.clone())),
            Value::Missing(missing) if !optional => lacks = lacks.with(missing),
            Value::Missing(_) => {}
        }
    }
    if !lacks.is_empty() {
        return Err(Value::Missing(lacks));
    }
    match rule.find(values) {
        Ok(si) if si.is_finite() => Ok(si),
        Ok(_) => Err(Value::Invalid(words::not_a_number(rule, values).into())),
        Err(fault) => Err(without(fault, values)),
    }
}

/// What stands in the place of a number that a rule does not find.
fn without(fault: Fault, values: &Values) -> Value {
    match fault {
        Fault::Impossible(why) => Value::Invalid(words::impossible(why).into()),
        Fault::Needs(ids) => Value::Missing(
            ids.iter().fold(Lacks::default(), |lacks, id| lacks.with(&lacks_of(*id, values))),
        ),
        Fault::NeedsOneOf(ids) => {
            // Of each way, what it lacks first: one question at a time.
            let first = |id: &AnyId| lacks_of(*id, values).first().cloned();
            let mut ways = Lack::new();
            for id in ids.iter().filter_map(first).flatten() {
                if !ways.contains(&id) {
                    ways.push(id);
                }
            }
            Value::Missing([ways].into_iter().collect())
        }
    }
}

/// What is lacking for a quantity that is not known: itself, or what its rule lacks.
fn lacks_of(id: AnyId, values: &Values) -> Lacks {
    match values.of(id) {
        Value::Missing(missing) if !missing.is_empty() => missing.clone(),
        _ => [vec![id]].into_iter().collect(),
    }
}

/// Says so when both of a pair are given and do not agree with what links them.
fn compare(both: &Both, givens: &Givens, values: &mut Values) {
    let [one, other] = both.places;
    if givens.at(one).is_none() || givens.at(other).is_none() {
        return;
    }
    let station = &STATIONS[one];
    let Some(rule) = station.rule else { return };
    let Ok(linked) = found(station, rule, values) else { return };
    let Some(said) = values.si_at(one) else { return };
    if (linked - said).abs() > 0.01 * said.abs().max(linked.abs()) {
        let words = words::pair_disagrees(both.pair, linked);
        for place in both.places {
            if let Value::Known(known) = &mut values.slots[place] {
                known.cautions.push(words.clone().into());
            }
        }
    }
}
