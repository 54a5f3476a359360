//! The build with one number changed, all others as they are.

use crate::quantity::AnyId;
use crate::rules::{Givens, Origin, Value, Values, catalogue::partner, evaluate};
use crate::study::words::lacking;

/// One number of a build, ready to be changed again and again.
pub(super) struct Changed {
    by: AnyId,
    givens: Givens,
}

impl Changed {
    pub fn new(by: AnyId, givens: &Givens) -> Self {
        let mut givens = givens.clone();
        // Two ways to say one thing: moving one must not leave the other behind.
        if let Some(pair) = partner(by) {
            givens.clear(if pair.one == by { pair.other } else { pair.one });
        }
        Self { by, givens }
    }

    /// All that is known with the number at `x`, SI.
    pub fn at(&self, x: f64) -> Values {
        let mut givens = self.givens.clone();
        givens.put(self.by, x, Origin::Given);
        evaluate(&givens)
    }
}

/// A number, or in words why there is none.
pub(super) fn number(value: &Value) -> Result<f64, String> {
    match value {
        Value::Known(known) => Ok(known.si),
        Value::Invalid(why) => Err(why.clone()),
        Value::Missing(lacks) => Err(lacking(lacks)),
    }
}
