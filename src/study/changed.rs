//! The build with one number changed, all others as they are.

use std::cell::RefCell;

use super::outcome::Outcome;
use crate::quantity::AnyId;
use crate::rules::{Course, Givens, Origin, Value, Values, catalogue::partner, evaluate};
use crate::study::words::lacking;

/// One number of a build, ready to be changed again and again.
pub(super) struct Changed {
    by: AnyId,
    course: Course,
    /// The numbers and values of the last change, brought up to date from one to the next.
    scratch: RefCell<(Givens, Values)>,
}

impl Changed {
    /// The build of `givens`, to be changed by one number for the sake of what is `wanted`.
    pub fn new(by: AnyId, givens: &Givens, wanted: &[AnyId]) -> Self {
        let mut givens = givens.clone();
        // Two ways to say one thing: moving one must not leave the other behind.
        if let Some(pair) = partner(by) {
            givens.clear(if pair.one == by { pair.other } else { pair.one });
        }
        let values = evaluate(&givens);
        let course = Course::between(&[by], wanted);
        Self { by, course, scratch: RefCell::new((givens, values)) }
    }

    /// The same where all that follows from the numbers is known already; none when the change does
    /// not bear on what is wanted.
    pub fn of(by: AnyId, outcome: &Outcome, wanted: &[AnyId]) -> Option<Self> {
        let course = Course::between(&[by], wanted);
        if course.is_empty() {
            return None;
        }
        if partner(by).is_some() {
            return Some(Self::new(by, &outcome.givens, wanted));
        }
        let scratch = RefCell::new((outcome.givens.clone(), outcome.values.clone()));
        Some(Self { by, course, scratch })
    }

    /// Reads what is known with the number at `x`, SI; only what is wanted is up to date.
    pub fn at<R>(&self, x: f64, read: impl FnOnce(&Values) -> R) -> R {
        let (givens, values) = &mut *self.scratch.borrow_mut();
        givens.put(self.by, x, Origin::Given);
        self.course.run(givens, values);
        read(values)
    }

    /// Reads what is known with one more number changed, and puts that number back. `course` leads
    /// from it to what is wanted.
    pub fn also<R>(
        &self,
        course: &Course,
        (id, si): (AnyId, f64),
        read: impl FnOnce(&Values) -> R,
    ) -> R {
        let (givens, values) = &mut *self.scratch.borrow_mut();
        let before = givens.get(id);
        givens.put(id, si, before.map_or(Origin::Given, |(_, origin)| origin));
        course.run(givens, values);
        let found = read(values);
        match before {
            Some((si, origin)) => givens.put(id, si, origin),
            None => givens.clear(id),
        }
        course.run(givens, values);
        found
    }
}

/// A number, or in words why there is none.
pub(super) fn number(value: &Value) -> Result<f64, String> {
    match value {
        Value::Known(known) => Ok(known.si),
        Value::Invalid(why) => Err(why.to_string()),
        Value::Missing(lacks) => Err(lacking(lacks)),
    }
}
