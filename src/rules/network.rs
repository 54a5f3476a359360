//! What is found from what: every quantity with its rule, its needs, and all that follows from it.

use std::sync::LazyLock;

use fixedbitset::FixedBitSet;

use super::catalogue::{self, Pair};
use super::rule::Rule;
use super::value::Lack;
use crate::quantity::{AnyId, Entry, catalogue as quantities};

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
pub(super) struct Station {
    pub(super) entry: &'static Entry,
    pub(super) rule: Option<&'static Rule>,
    /// The places of what the rule needs, and whether it can do without.
    pub(super) needs: Vec<(usize, bool)>,
    /// The other way to say it.
    pub(super) partner: Option<Partner>,
    /// Itself, or its partner, as what is lacking.
    pub(super) itself: [Lack; 1],
}

/// The other way to say a quantity.
pub(super) struct Partner {
    pub(super) pair: &'static Pair,
    pub(super) place: usize,
}

impl Station {
    fn of(entry: &'static Entry) -> Self {
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
        Self {
            entry,
            rule,
            needs: needs
                .filter_map(|need| Some((quantities::index(need.id)?, need.optional)))
                .collect(),
            partner,
            itself: [itself],
        }
    }

    /// The places of what it is found from.
    fn sources(&self) -> impl Iterator<Item = usize> {
        let partner = self.partner.as_ref().map(|partner| partner.place);
        self.needs.iter().map(|(place, _)| *place).chain(partner)
    }
}

/// A station for each quantity, in the order of the catalogue.
pub(super) static STATIONS: LazyLock<Vec<Station>> =
    LazyLock::new(|| quantities::all().iter().map(Station::of).collect());

/// Some quantities, each by its rank: where it stands in [`ORDER`].
#[derive(Clone)]
pub(super) struct Reach(FixedBitSet);

/// What bears on each quantity and what follows from it, itself included, by place.
struct Routes {
    ranks: Vec<usize>,
    sources: Vec<FixedBitSet>,
    follows: Vec<FixedBitSet>,
}

static ROUTES: LazyLock<Routes> = LazyLock::new(|| {
    let count = ORDER.len();
    let mut ranks = vec![0; count];
    for (rank, &place) in ORDER.iter().enumerate() {
        ranks[place] = rank;
    }
    let mut sources = vec![FixedBitSet::with_capacity(count); count];
    // Twice, since the two of a pair are each found from the other.
    for &place in ORDER.iter().chain(ORDER.iter()) {
        let mut all = FixedBitSet::with_capacity(count);
        all.insert(ranks[place]);
        for source in STATIONS[place].sources() {
            all.union_with(&sources[source]);
        }
        sources[place] = all;
    }
    let mut follows = vec![FixedBitSet::with_capacity(count); count];
    for (place, all) in sources.iter().enumerate() {
        all.ones().for_each(|rank| follows[ORDER[rank]].insert(ranks[place]));
    }
    Routes { ranks, sources, follows }
});

impl Reach {
    /// Every quantity.
    pub(super) fn whole() -> Self {
        let mut all = FixedBitSet::with_capacity(ORDER.len());
        all.insert_range(..);
        Self(all)
    }

    /// The quantities that some bear on, themselves included.
    pub(super) fn from(changed: &[AnyId]) -> Self {
        Self::of(changed, &ROUTES.follows)
    }

    /// The quantities that bear on some, themselves included.
    pub(super) fn to(wanted: &[AnyId]) -> Self {
        Self::of(wanted, &ROUTES.sources)
    }

    fn of(ids: &[AnyId], routes: &[FixedBitSet]) -> Self {
        let mut all = FixedBitSet::with_capacity(ORDER.len());
        ids.iter()
            .filter_map(|id| quantities::index(*id))
            .for_each(|place| all.union_with(&routes[place]));
        Self(all)
    }

    /// What is in both.
    pub(super) fn and(mut self, other: &Self) -> Self {
        self.0.intersect_with(&other.0);
        self
    }

    /// Whether it holds the quantity at a place.
    pub(super) fn has(&self, place: usize) -> bool {
        self.0.contains(ROUTES.ranks[place])
    }

    /// The places of its quantities, each after all it is found from.
    pub(super) fn places(&self) -> impl Iterator<Item = usize> {
        self.0.ones().map(|rank| ORDER[rank])
    }
}

/// Whether a number bears on an answer: the answer's rule needs it, or something found from it. A
/// number bears on itself.
pub fn bears_on(number: AnyId, answer: AnyId) -> bool {
    quantities::index(number).is_some_and(|place| Reach::to(&[answer]).has(place))
}

/// All that bears on some answers, they among them, in the order of the catalogue.
pub fn all_bearing_on(answers: &[AnyId]) -> impl Iterator<Item = AnyId> {
    let reach = Reach::to(answers);
    let all = quantities::all().iter().enumerate();
    all.filter(move |(place, _)| reach.has(*place)).map(|(_, entry)| entry.id)
}

/// The quantities whose rules need a number, in the order of the catalogue.
pub fn used_by(number: AnyId) -> impl Iterator<Item = AnyId> {
    catalogue::all()
        .iter()
        .filter(move |rule| rule.needs.iter().any(|need| need.id == number))
        .map(|rule| rule.finds)
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
