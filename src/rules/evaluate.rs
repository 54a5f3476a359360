//! One pass over all the rules: from the numbers given to all that can be known.

use std::sync::LazyLock;

use super::catalogue::{self, Pair};
use super::rule::{Fault, Rule};
use super::value::{Givens, Known, Lack, Lacks, Origin, Value, Values};
use super::words;
use crate::quantity::{AnyId, Entry, Role, catalogue as quantities};

/// The order in which quantities can be found: a quantity comes after all that its rule needs.
static ORDER: LazyLock<Vec<usize>> = LazyLock::new(order);

/// The quantities in an order that finds each after all it needs; the two of a pair stand
/// together, after all that either of their rules needs.
fn order() -> Vec<usize> {
    let entries = quantities::all();
    let mut order = Vec::with_capacity(entries.len());
    let mut seen = vec![false; entries.len()];
    for entry in entries {
        visit(entry.id, &mut seen, &mut order);
    }
    order
}

fn visit(id: AnyId, seen: &mut [bool], order: &mut Vec<usize>) {
    let pair = catalogue::partner(id);
    let together = pair.map_or_else(|| vec![id], |pair| vec![pair.one, pair.other]);
    let places: Vec<usize> = together.iter().filter_map(|id| quantities::index(*id)).collect();
    if places.iter().any(|&place| seen[place]) {
        return;
    }
    for &place in &places {
        seen[place] = true;
    }
    for rule in together.iter().filter_map(|id| catalogue::finder(*id)) {
        for need in &rule.needs {
            visit(need.id, seen, order);
        }
    }
    order.extend(places);
}

/// All that a pass asks of one quantity, looked up once.
struct Station {
    entry: &'static Entry,
    rule: Option<&'static Rule>,
    /// The places of what the rule needs, and whether it can do without.
    needs: Vec<(usize, bool)>,
    /// The other way to say it.
    partner: Option<Partner>,
    /// Itself, or its partner, as what is lacking.
    itself: [Lack; 1],
    /// The places of the quantities whose rules need it, or that say the same in another way.
    dependents: Vec<usize>,
}

struct Partner {
    pair: &'static Pair,
    place: usize,
}

impl Station {
    /// The places of what it is found from.
    fn sources(&self) -> impl Iterator<Item = usize> {
        let partner = self.partner.as_ref().map(|partner| partner.place);
        self.needs.iter().map(|(place, _)| *place).chain(partner)
    }
}

/// A station for each quantity, in the order of the catalogue.
static STATIONS: LazyLock<Vec<Station>> = LazyLock::new(|| {
    let mut stations: Vec<Station> = quantities::all().iter().map(station).collect();
    for place in 0..stations.len() {
        let sources: Vec<usize> = stations[place].sources().collect();
        for source in sources {
            stations[source].dependents.push(place);
        }
    }
    stations
});

fn station(entry: &'static Entry) -> Station {
    let rule = catalogue::finder(entry.id);
    let needs = rule.into_iter().flat_map(|rule| &rule.needs);
    let partner = catalogue::partner(entry.id).and_then(|pair| {
        let other = if pair.one == entry.id { pair.other } else { pair.one };
        Some(Partner { pair, place: quantities::index(other)? })
    });
    let itself = match &partner {
        Some(Partner { pair, .. }) => vec![pair.one, pair.other],
        None => vec![entry.id],
    };
    Station {
        entry,
        rule,
        needs: needs
            .filter_map(|need| Some((quantities::index(need.id)?, need.optional)))
            .collect(),
        partner,
        itself: [itself],
        dependents: Vec::new(),
    }
}

/// Everything reached from some quantities by a step from each to others.
fn reach<I: Iterator<Item = usize>>(
    from: &[AnyId],
    step: impl Fn(&'static Station) -> I,
) -> Vec<bool> {
    let mut reached = vec![false; STATIONS.len()];
    let mut waiting: Vec<usize> = from.iter().filter_map(|id| quantities::index(*id)).collect();
    while let Some(place) = waiting.pop() {
        if !reached[place] {
            reached[place] = true;
            waiting.extend(step(&STATIONS[place]));
        }
    }
    reached
}

/// Whether a number bears on an answer: the answer's rule needs it, or something found from it. A
/// number bears on itself.
pub fn bears_on(number: AnyId, answer: AnyId) -> bool {
    let reached = reach(&[answer], Station::sources);
    quantities::index(number).is_some_and(|place| reached[place])
}

/// All that bears on some answers, they among them, in the order of the catalogue.
pub fn all_bearing_on(answers: &[AnyId]) -> impl Iterator<Item = AnyId> {
    let reached = reach(answers, Station::sources);
    quantities::all().iter().zip(reached).filter_map(|(entry, bears)| bears.then_some(entry.id))
}

/// The quantities whose rules need a number, in the order of the catalogue.
pub fn used_by(number: AnyId) -> impl Iterator<Item = AnyId> {
    catalogue::all()
        .iter()
        .filter(move |rule| rule.needs.iter().any(|need| need.id == number))
        .map(|rule| rule.finds)
}

/// The part of a pass that a change of some given numbers can reach, for asking the same question
/// many times over: a curve, a spread. The numbers are those of a whole pass; a caution that looks
/// further than its rule's own needs may be left as it was.
#[derive(Debug, Clone)]
pub struct Course {
    places: Vec<usize>,
    /// The pairs both of whose quantities it passes.
    pairs: Vec<&'static Pair>,
}

impl Course {
    /// All of the rules.
    fn whole() -> &'static Self {
        static WHOLE: LazyLock<Course> = LazyLock::new(|| Course::over(&|_| true));
        &WHOLE
    }

    fn over(passes: &dyn Fn(usize) -> bool) -> Self {
        let here = |id| quantities::index(id).is_some_and(passes);
        Self {
            places: ORDER.iter().copied().filter(|place| passes(*place)).collect(),
            pairs: catalogue::PAIRS
                .iter()
                .filter(|pair| here(pair.one) && here(pair.other))
                .collect(),
        }
    }

    /// What `changed` can reach.
    pub fn from(changed: &[AnyId]) -> Self {
        let reached = reach(changed, |station| station.dependents.iter().copied());
        Self::over(&|place| reached[place])
    }

    /// What `changed` can reach on the way to `wanted`; nothing else is brought up to date.
    pub fn between(changed: &[AnyId], wanted: &[AnyId]) -> Self {
        let reached = reach(changed, |station| station.dependents.iter().copied());
        let leads = reach(wanted, Station::sources);
        Self::over(&|place| reached[place] && leads[place])
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
            values.slots[place] = given(givens, place).unwrap_or(Value::Missing(Lacks::default()));
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
            values.slots[place] = match (&station.partner, station.rule) {
                (Some(partner), Some(rule)) => {
                    found_by_partner(partner, (station, rule), givens, values)
                }
                (None, Some(rule)) => found(station, rule, values),
                (_, None) => match station.entry.role {
                    Role::Given { assumed: Some(si) } => known(si, Origin::Assumed),
                    _ => Value::Missing(Lacks::own(&station.itself)),
                },
            };
            caution(station, place, values);
        }
        for pair in &self.pairs {
            compare(pair, givens, values);
        }
    }
}

/// Says what is to be said of a number just found, which now stands among the values.
fn caution(station: &'static Station, place: usize, values: &mut Values) {
    let Some(rule) = station.rule else { return };
    let said: Vec<_> = rule
        .cautions
        .iter()
        .filter(|caution| (caution.when)(values))
        .map(|caution| caution.says.into())
        .collect();
    if let Value::Known(known) = &mut values.slots[place]
        && known.origin == Origin::Found
    {
        known.cautions.splice(0..0, said);
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

/// One of a pair, from the other when that one is given.
fn found_by_partner(
    partner: &Partner,
    (station, rule): (&'static Station, &'static Rule),
    givens: &Givens,
    values: &Values,
) -> Value {
    if givens.at(partner.place).is_none() {
        return Value::Missing(Lacks::own(&station.itself));
    }
    let mut value = found(station, rule, values);
    if let Value::Known(known) = &mut value {
        known.cautions.push(partner.pair.link.into());
    }
    value
}

/// What a rule finds from what is known so far.
fn found(station: &'static Station, rule: &'static Rule, values: &Values) -> Value {
    let mut lacks = Lacks::default();
    for &(place, optional) in &station.needs {
        match &values.slots[place] {
            Value::Known(_) => {}
            Value::Invalid(why) => return Value::Invalid(why.clone()),
            Value::Missing(missing) if !optional => lacks = lacks.with(missing),
            Value::Missing(_) => {}
        }
    }
    if !lacks.is_empty() {
        return Value::Missing(lacks);
    }
    match rule.find(values) {
        Ok(si) if si.is_finite() => known(si, Origin::Found),
        Ok(_) => Value::Invalid(words::not_a_number(rule, values).into()),
        Err(Fault::Impossible(why)) => Value::Invalid(words::impossible(why).into()),
        Err(Fault::Needs(ids)) => {
            Value::Missing(ids.iter().fold(lacks, |lacks, id| lacks.with(&lacks_of(*id, values))))
        }
        Err(Fault::NeedsOneOf(ids)) => {
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
fn compare(pair: &Pair, givens: &Givens, values: &mut Values) {
    let (Some(one), Some(other)) = (quantities::index(pair.one), quantities::index(pair.other))
    else {
        return;
    };
    if givens.at(one).is_none() || givens.at(other).is_none() {
        return;
    }
    let station = &STATIONS[one];
    let Some(rule) = station.rule else { return };
    let Value::Known(linked) = found(station, rule, values) else { return };
    let Some(said) = values.si(pair.one) else { return };
    if (linked.si - said).abs() > 0.01 * said.abs().max(linked.si.abs()) {
        let words = words::pair_disagrees(pair, linked.si);
        for place in [one, other] {
            if let Value::Known(known) = &mut values.slots[place] {
                known.cautions.push(words.clone().into());
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_quantity_stands_once_and_after_all_its_rule_needs() {
        let entries = quantities::all();
        let mut places = vec![None; entries.len()];
        for (place, &index) in ORDER.iter().enumerate() {
            assert_eq!(places[index].replace(place), None, "{} stands twice", entries[index].id);
        }
        let place = |id: AnyId| places[quantities::index(id).unwrap()].unwrap();
        for rule in catalogue::all() {
            let partner = catalogue::partner(rule.finds);
            for need in &rule.needs {
                let own = partner.is_some_and(|pair| [pair.one, pair.other].contains(&need.id));
                assert!(
                    own || place(need.id) < place(rule.finds),
                    "{} before {}",
                    rule.finds,
                    need.id
                );
            }
        }
    }
}
