//! A part of a pass finds what a whole pass would.

use heftwise::quantity::{AnyId, catalogue};
use heftwise::rules::catalogue::finder;
use heftwise::rules::{Course, Givens, Known, Value, evaluate};
use proptest::prelude::*;

fn any_id() -> impl Strategy<Value = AnyId> {
    (0..catalogue::all().len()).prop_map(|place| catalogue::all()[place].id)
}

/// Usual numbers for half of the quantities a reader may set, and a new one for one of them.
fn change() -> impl Strategy<Value = (Givens, AnyId, f64)> {
    let part = || prop::option::of(0.0..1.0f64);
    let parts = prop::collection::vec(part(), catalogue::all().len());
    (parts, any_id(), 0.0..1.0f64).prop_map(|(parts, changed, to)| {
        let mut givens = Givens::default();
        for (entry, part) in catalogue::all().iter().zip(parts) {
            let (low, high) = entry.usual;
            if let Some(part) = part.filter(|_| entry.is_given()) {
                givens.set(entry.id, low + part * (high - low));
            }
        }
        (givens, changed, to)
    })
}

/// A value without its cautions, which may look further than the rule's own needs.
fn bare(value: &Value) -> Value {
    match value {
        Value::Known(known) => Value::Known(Known { cautions: Vec::new(), ..known.clone() }),
        other => other.clone(),
    }
}

proptest! {
    #[test]
    fn a_course_finds_what_a_whole_pass_finds(
        (mut givens, changed, to) in change(),
        wanted in any_id(),
    ) {
        let before = evaluate(&givens);
        givens.set(changed, to);
        let whole = evaluate(&givens);

        let mut reached = before.clone();
        Course::from(&[changed]).run(&givens, &mut reached);
        for entry in catalogue::all() {
            let (found, wanted) = (reached.of(entry.id), whole.of(entry.id));
            prop_assert_eq!(bare(found), bare(wanted), "{}", entry.id);
        }

        let mut between = before;
        Course::between(&[changed], &[wanted]).run(&givens, &mut between);
        prop_assert_eq!(bare(between.of(wanted)), bare(whole.of(wanted)), "{}", wanted);
    }
}

/// It would be no use if it always ran everything.
#[test]
fn a_course_leaves_out_what_cannot_change() {
    let givens = Givens::default();
    let stale = |course: &Course, id: AnyId| {
        let mut later = givens.clone();
        later.set(id, 1.0);
        let mut values = evaluate(&givens);
        course.run(&later, &mut values);
        values.si(id) != Some(1.0)
    };
    let width = catalogue::running_gear::TRACK_WIDTH.any();
    let mass = catalogue::machine::MASS.any();
    let pressure = catalogue::pressure::GROUND_PRESSURE.any();
    assert!(finder(pressure).is_some());
    let course = Course::between(&[width], &[pressure]);
    assert!(!stale(&course, width));
    assert!(stale(&course, mass), "the mass does not follow from the width");
}
