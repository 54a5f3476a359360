//! The build with one number changed, all others as they are.

use std::cell::RefCell;

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

/// A build whose numbers are known, on which one number after another is tried and put back.
pub(super) struct Trial<'v> {
    known: &'v Values,
    givens: Givens,
    values: Values,
}

impl<'v> Trial<'v> {
    /// The build of `givens`, of which all that follows is `known`.
    pub fn new(givens: &Givens, known: &'v Values) -> Self {
        Self { known, givens: givens.clone(), values: known.clone() }
    }

    /// Reads what is known with a given number at each of some places, SI, nothing where there is
    /// no place. `course` leads from it to all that is read.
    pub fn of<R, const N: usize>(
        &mut self,
        id: AnyId,
        places: [Option<f64>; N],
        course: &Course,
        read: impl Fn(&Values) -> R,
    ) -> [Option<R>; N] {
        let before = self.givens.get(id);
        let origin = self.known.origin(id).unwrap_or(Origin::Given);
        let seen = places.map(|place| {
            self.givens.put(id, place?, origin);
            course.run(&self.givens, &mut self.values);
            Some(read(&self.values))
        });
        match before {
            Some((si, origin)) => self.givens.put(id, si, origin),
            None => self.givens.clear(id),
        }
        course.restore(self.known, &mut self.values);
        seen
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
