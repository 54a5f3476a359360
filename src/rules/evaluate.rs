//! One pass over all the rules: from the numbers given to all that can be known.

use std::sync::LazyLock;

use super::catalogue::{self, Pair};
use super::rule::{Fault, Rule};
use super::value::{Givens, Known, Lack, Origin, Value, Values};
use super::words;
use crate::quantity::{AnyId, Role, catalogue as quantities};

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

/// Which quantities' rules need a quantity, or say the same thing in another way.
static DEPENDENTS: LazyLock<Vec<Vec<usize>>> = LazyLock::new(|| {
    let mut dependents = vec![Vec::new(); quantities::all().len()];
    for (place, entry) in quantities::all().iter().enumerate() {
        for source in sources(entry.id) {
            dependents[source].push(place);
        }
    }
    dependents
});

/// What a quantity is found from: the needs of its rule, and its partner.
fn sources(id: AnyId) -> Vec<usize> {
    let needs = catalogue::finder(id).into_iter().flat_map(|rule| &rule.needs).map(|need| need.id);
    let pair = catalogue::partner(id).into_iter().flat_map(|pair| [pair.one, pair.other]);
    needs.chain(pair.filter(|other| *other != id)).filter_map(quantities::index).collect()
}

/// Everything reached from some quantities by a step from each to others.
fn reach(from: &[AnyId], step: impl Fn(usize) -> Vec<usize>) -> Vec<bool> {
    let mut reached = vec![false; quantities::all().len()];
    let mut waiting: Vec<usize> = from.iter().filter_map(|id| quantities::index(*id)).collect();
    while let Some(place) = waiting.pop() {
        if !reached[place] {
            reached[place] = true;
            waiting.extend(step(place));
        }
    }
    reached
}

/// The part of a pass that a change of some given numbers can reach, for asking the same question
/// many times over: a curve, a spread. The numbers are those of a whole pass; a caution that looks
/// further than its rule's own needs may be left as it was.
#[derive(Debug, Clone)]
pub struct Course {
    places: Vec<usize>,
}

impl Course {
    /// All of the rules.
    fn whole() -> Self {
        Self { places: ORDER.clone() }
    }

    /// What `changed` can reach.
    pub fn from(changed: &[AnyId]) -> Self {
        let reached = reach(changed, |place| DEPENDENTS[place].clone());
        Self { places: ORDER.iter().copied().filter(|place| reached[*place]).collect() }
    }

    /// What `changed` can reach on the way to `wanted`; nothing else is brought up to date.
    pub fn between(changed: &[AnyId], wanted: &[AnyId]) -> Self {
        let leads = reach(wanted, |place| sources(quantities::all()[place].id));
        let mut course = Self::from(changed);
        course.places.retain(|place| leads[*place]);
        course
    }

    /// Whether nothing can be reached.
    pub fn is_empty(&self) -> bool {
        self.places.is_empty()
    }

    /// Brings values up to date with numbers that differ from those they were found from in
    /// nothing but what the course starts from.
    pub fn run(&self, givens: &Givens, values: &mut Values) {
        let entries = quantities::all();
        for &place in &self.places {
            values.slots[place] =
                given(givens, entries[place].id).unwrap_or(Value::Missing(Vec::new()));
        }
        for &place in &self.places {
            let id = entries[place].id;
            if givens.get(id).is_some() {
                continue;
            }
            values.slots[place] = match (catalogue::partner(id), catalogue::finder(id)) {
                (Some(pair), Some(rule)) => found_by_partner(pair, rule, givens, values),
                (None, Some(rule)) => found(rule, values),
                (_, None) => match entries[place].role {
                    Role::Given { assumed: Some(si) } => known(si, Origin::Assumed),
                    _ => Value::Missing(vec![vec![id]]),
                },
            };
        }
        let here = |id| quantities::index(id).is_some_and(|place| self.places.contains(&place));
        for pair in catalogue::PAIRS.iter().filter(|pair| here(pair.one) && here(pair.other)) {
            compare(pair, givens, values);
        }
    }
}

/// Finds every quantity that can be found from the numbers given.
///
/// A quantity that is given is taken as given, whether or not a rule could find it. Nothing
/// found is ever NaN or infinite: such a result is [`Value::Invalid`], with the reason.
pub fn evaluate(givens: &Givens) -> Values {
    let mut values = Values { slots: vec![Value::Missing(Vec::new()); quantities::all().len()] };
    Course::whole().run(givens, &mut values);
    values
}

fn known(si: f64, origin: Origin) -> Value {
    Value::Known(Known { si, origin, cautions: Vec::new() })
}

/// A given number, or why it cannot be meant.
fn given(givens: &Givens, id: AnyId) -> Option<Value> {
    let (si, origin) = givens.get(id)?;
    let entry = quantities::find(id.name())?;
    Some(if entry.admits(si) {
        known(si, origin)
    } else {
        Value::Invalid(words::impossible_given(entry))
    })
}

/// One of a pair, from the other when that one is given.
fn found_by_partner(pair: &Pair, rule: &Rule, givens: &Givens, values: &Values) -> Value {
    let other = if pair.one == rule.finds { pair.other } else { pair.one };
    if givens.get(other).is_some() {
        let mut value = found(rule, values);
        if let Value::Known(known) = &mut value {
            known.cautions.push(pair.link.to_owned());
        }
        value
    } else {
        Value::Missing(vec![vec![pair.one, pair.other]])
    }
}

/// What a rule finds from what is known so far.
fn found(rule: &Rule, values: &Values) -> Value {
    let mut lacks: Vec<Lack> = Vec::new();
    for need in &rule.needs {
        match values.of(need.id) {
            Value::Known(_) => {}
            Value::Invalid(why) => return Value::Invalid(why.clone()),
            Value::Missing(missing) if !need.optional => add_lacks(&mut lacks, missing),
            Value::Missing(_) => {}
        }
    }
    if !lacks.is_empty() {
        return Value::Missing(lacks);
    }
    match rule.find(values) {
        Ok(si) if si.is_finite() => {
            let cautions = rule
                .cautions
                .iter()
                .filter(|caution| (caution.when)(values))
                .map(|caution| caution.says.to_owned())
                .collect();
            Value::Known(Known { si, origin: Origin::Found, cautions })
        }
        Ok(_) => Value::Invalid(words::not_a_number(rule, values)),
        Err(Fault::Impossible(why)) => Value::Invalid(words::impossible(why)),
        Err(Fault::Needs(ids)) => {
            ids.iter().for_each(|id| add_lacks(&mut lacks, &lacks_of(*id, values)));
            Value::Missing(lacks)
        }
        Err(Fault::NeedsOneOf(ids)) => {
            // Of each way, what it lacks first: one question at a time.
            let first = |id: &AnyId| lacks_of(*id, values).into_iter().next();
            Value::Missing(vec![ids.iter().filter_map(first).flatten().collect()])
        }
    }
}

/// What is lacking for a quantity that is not known: itself, or what its rule lacks.
fn lacks_of(id: AnyId, values: &Values) -> Vec<Lack> {
    match values.of(id) {
        Value::Missing(missing) if !missing.is_empty() => missing.clone(),
        _ => vec![vec![id]],
    }
}

fn add_lacks(lacks: &mut Vec<Lack>, more: &[Lack]) {
    for lack in more {
        if !lacks.contains(lack) {
            lacks.push(lack.clone());
        }
    }
}

/// Says so when both of a pair are given and do not agree with what links them.
fn compare(pair: &Pair, givens: &Givens, values: &mut Values) {
    if givens.get(pair.one).is_none() || givens.get(pair.other).is_none() {
        return;
    }
    let Some(rule) = catalogue::finder(pair.one) else { return };
    let Value::Known(linked) = found(rule, values) else { return };
    let Some(said) = values.si(pair.one) else { return };
    if (linked.si - said).abs() > 0.01 * said.abs().max(linked.si.abs()) {
        let words = words::pair_disagrees(pair, linked.si);
        for id in [pair.one, pair.other] {
            if let Some(Value::Known(known)) = quantities::index(id).map(|i| &mut values.slots[i]) {
                known.cautions.push(words.clone());
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
