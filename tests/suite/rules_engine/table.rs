//! Every rule and every quantity, as one table.

use std::collections::HashSet;

use heftwise::quantity::{AnyId, Role, catalogue as quantities};
use heftwise::rules::catalogue::{PAIRS, all, finder, partner};

/// The quantities a formula names.
fn placeholders(formula: &str) -> HashSet<&str> {
    formula.split(r"\q{").skip(1).map(|rest| rest.split('}').next().unwrap()).collect()
}

#[test]
fn every_quantity_has_the_finder_its_role_asks_for() {
    for entry in quantities::all() {
        let finders = all().iter().filter(|rule| rule.finds == entry.id).count();
        let wanted = usize::from(!matches!(entry.role, Role::Given { .. }));
        assert_eq!(finders, wanted, "{} has {finders} finders", entry.id);
        assert_eq!(finder(entry.id).map(|rule| rule.finds), (wanted == 1).then_some(entry.id));
    }
}

#[test]
fn either_quantities_are_the_pairs_and_what_can_be_stated_for_want_of_more() {
    // A plain statement of the drive, for a machine whose motor and gears are not known.
    let stated = ["drive-power", "drive-torque", "drive-radius"];
    for entry in quantities::all() {
        let either = entry.role == Role::Either;
        let paired = partner(entry.id).is_some();
        assert_eq!(paired || stated.contains(&entry.id.name()), either, "{}", entry.id);
    }
    for pair in PAIRS {
        for (one, other) in [(pair.one, pair.other), (pair.other, pair.one)] {
            let needs = &finder(one).unwrap().needs;
            assert!(needs.iter().any(|need| need.id == other), "{one} is not found from {other}");
        }
    }
}

#[test]
fn every_rule_says_what_it_is() {
    for rule in all() {
        let name = rule.finds;
        assert!(!rule.title.is_empty() && !rule.title.ends_with('.'), "{name}: title");
        assert!(rule.holds.ends_with('.'), "{name}: holds");
        assert!(!rule.source.is_empty(), "{name}: source");
        assert!(!rule.assumes.is_empty(), "{name}: assumes");
        assert!(rule.assumes.iter().all(|words| words.ends_with('.')), "{name}: assumes");
        assert!(
            rule.cautions.iter().all(|caution| caution.says.ends_with('.')),
            "{name}: cautions"
        );
    }
}

#[test]
fn formulas_name_what_the_rule_finds_and_needs() {
    for rule in all() {
        let named = placeholders(rule.formula);
        let lhs = rule.formula.split(" = ").next().unwrap();
        assert_eq!(lhs, format!(r"\q{{{}}}", rule.finds), "{}: left side", rule.finds);
        for need in rule.needs.iter().filter(|need| !need.optional) {
            assert!(named.contains(need.id.name()), "{}: {} unnamed", rule.finds, need.id);
        }
        for name in named {
            let known = rule.finds.name() == name || rule.needs.iter().any(|n| n.id.name() == name);
            assert!(known, "{}: {name} is neither found nor needed", rule.finds);
        }
    }
}

#[test]
fn formulas_are_tex() {
    for rule in all() {
        let tex =
            placeholders(rule.formula).into_iter().fold(rule.formula.to_owned(), |tex, name| {
                let symbol = quantities::find(name).unwrap().symbol;
                tex.replace(&format!(r"\q{{{name}}}"), &format!("{{{symbol}}}"))
            });
        assert!(ratex_parser::parse(&tex).is_ok(), "{}: {tex}", rule.finds);
    }
}

#[test]
fn needs_stand_in_the_catalogue_once_each() {
    for rule in all() {
        let mut seen = HashSet::new();
        for need in &rule.needs {
            assert!(quantities::find(need.id.name()).is_some(), "{}: {}", rule.finds, need.id);
            assert!(seen.insert(need.id), "{} needs {} twice", rule.finds, need.id);
        }
    }
}

/// The quantities that stand together: a pair, or one alone.
fn together(id: AnyId) -> Vec<AnyId> {
    partner(id).map_or_else(|| vec![id], |pair| vec![pair.one, pair.other])
}

fn walk(id: AnyId, path: &mut Vec<AnyId>, done: &mut HashSet<AnyId>) {
    let group = together(id);
    assert!(!path.contains(&group[0]), "a circle: {path:?} and back to {}", group[0]);
    if !done.insert(group[0]) {
        return;
    }
    path.push(group[0]);
    for rule in group.iter().filter_map(|id| finder(*id)) {
        for need in rule.needs.iter().filter(|need| !group.contains(&need.id)) {
            walk(need.id, path, done);
        }
    }
    path.pop();
}

#[test]
fn no_rule_waits_for_itself() {
    for entry in quantities::all() {
        walk(entry.id, &mut Vec::new(), &mut HashSet::new());
    }
}
