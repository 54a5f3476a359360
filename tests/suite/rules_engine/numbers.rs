//! Any numbers at all: what comes out is a number, what is lacking, or words.

use std::collections::HashMap;

use heftwise::quantity::{AnyId, Entry, catalogue};
use heftwise::rules::{Givens, Origin, Value, evaluate};
use proptest::prelude::*;

/// Numbers that trip sums up, and ordinary ones.
fn number() -> impl Strategy<Value = f64> {
    let odd = [
        0.0,
        -0.0,
        1.0,
        -1.0,
        1e308,
        -1e308,
        f64::MAX,
        f64::MIN_POSITIVE,
        5e-324,
        -5e-324,
        1e-300,
        f64::INFINITY,
        f64::NEG_INFINITY,
        f64::NAN,
    ];
    prop_oneof![
        3 => 0.0..1.0,
        3 => 0.0..1e4,
        2 => prop::sample::select(odd.to_vec()),
        1 => prop::num::f64::ANY,
    ]
}

fn ids(keep: impl Fn(&Entry) -> bool) -> Vec<AnyId> {
    catalogue::all().iter().filter(|entry| keep(entry)).map(|entry| entry.id).collect()
}

/// Some numbers for some of these quantities.
fn some_of(ids: Vec<AnyId>, often: f64) -> impl Strategy<Value = HashMap<AnyId, f64>> {
    let each = ids
        .into_iter()
        .map(move |id| prop::option::weighted(often, number()).prop_map(move |n| (id, n)));
    each.collect::<Vec<_>>()
        .prop_map(|all| all.into_iter().filter_map(|(id, n)| n.map(|n| (id, n))).collect())
}

fn check(given: &HashMap<AnyId, f64>) -> Result<(), TestCaseError> {
    let mut givens = Givens::default();
    given.iter().for_each(|(id, si)| givens.set(*id, *si));
    let values = evaluate(&givens);
    for entry in catalogue::all() {
        match values.of(entry.id) {
            Value::Known(known) => {
                prop_assert!(known.si.is_finite(), "{} is {}", entry.id, known.si);
                let pinned = given.get(&entry.id).copied();
                prop_assert_eq!(known.origin == Origin::Given, pinned.is_some());
                prop_assert!(pinned.is_none_or(|si| si == known.si), "{} was overruled", entry.id);
            }
            Value::Invalid(words) => prop_assert!(words.ends_with('.'), "{}: {words}", entry.id),
            Value::Missing(lacks) => {
                prop_assert!(!lacks.is_empty(), "{} lacks nothing and is not known", entry.id);
                for lack in lacks.iter() {
                    prop_assert!(!lack.is_empty(), "{}: an empty lack", entry.id);
                    let asked_again = lack.iter().find(|id| given.contains_key(id));
                    prop_assert!(
                        asked_again.is_none(),
                        "{} asks for {asked_again:?} again",
                        entry.id
                    );
                }
            }
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 512, ..ProptestConfig::default() })]

    #[test]
    fn any_givens(given in some_of(ids(Entry::is_given), 0.8)) {
        check(&given)?;
    }

    #[test]
    fn any_givens_and_any_pins(given in some_of(ids(|_| true), 0.4)) {
        check(&given)?;
    }
}
