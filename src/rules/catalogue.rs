//! The catalogue of rules, one file a topic, and the order in which they run.

mod balance;
mod drive;
mod electrics;
mod heat;
mod impact;
mod motion;
mod pressure;
mod running_gear;
mod structure;
mod traction;
mod turning;
mod weight;
mod whole;

use std::sync::LazyLock;

use super::rule::Rule;
use crate::quantity::{AnyId, catalogue as quantities, catalogue::impact::*};

static RULES: LazyLock<Vec<Rule>> = LazyLock::new(|| {
    let mut rules = weight::rules();
    rules.extend(running_gear::rules());
    rules.extend(pressure::rules());
    rules.extend(impact::rules());
    rules.extend(traction::rules());
    rules.extend(motion::rules());
    rules.extend(turning::rules());
    rules.extend(balance::rules());
    rules.extend(structure::rules());
    rules.extend(drive::rules());
    rules.extend(electrics::rules());
    rules.extend(heat::rules());
    rules.extend(whole::rules());
    rules
});

static FINDERS: LazyLock<Vec<Option<usize>>> = LazyLock::new(|| {
    let mut finders = vec![None; quantities::all().len()];
    for (place, rule) in RULES.iter().enumerate() {
        if let Some(index) = quantities::index(rule.finds) {
            finders[index] = Some(place);
        }
    }
    finders
});

/// Two ways to say one thing: whichever is given, the other is found.
#[derive(Debug, Clone, Copy)]
pub struct Pair {
    /// One way to say it.
    pub one: AnyId,
    /// The other way.
    pub other: AnyId,
    /// What links the two, as a sentence for the reader.
    pub link: &'static str,
}

/// Every pair.
pub const PAIRS: &[Pair] = &[
    Pair {
        one: IMPACT_SPEED.any(),
        other: DROP_HEIGHT.any(),
        link: "A free fall without air links the two.",
    },
    Pair {
        one: STOP_TIME.any(),
        other: STOP_DISTANCE.any(),
        link: "A steady deceleration from the speed at touch to rest links the two.",
    },
];

/// Every rule, topic by topic.
pub fn all() -> &'static [Rule] {
    &RULES
}

/// The rule that finds a quantity, if a rule does.
pub fn finder(id: AnyId) -> Option<&'static Rule> {
    quantities::index(id).and_then(|index| FINDERS[index]).map(|place| &RULES[place])
}

/// The other way to say a quantity, if it has one.
pub fn partner(id: AnyId) -> Option<&'static Pair> {
    PAIRS.iter().find(|pair| pair.one == id || pair.other == id)
}
