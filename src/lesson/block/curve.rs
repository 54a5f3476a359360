//! `curve`: a found number against a given one.

use crate::quantity::AnyId;

/// A found number against a given one.
#[derive(Debug, Clone, PartialEq)]
pub struct Curve {
    /// What it shows, in a line.
    pub title: Option<String>,
    /// The number found, up the page.
    pub find: AnyId,
    /// The number given, along the page.
    pub against: AnyId,
    /// Where it starts, in the SI unit of `against`; nothing: the usual range.
    pub from: Option<f64>,
    /// Where it ends, in the SI unit of `against`; nothing: the usual range.
    pub to: Option<f64>,
    /// Whether `against` is drawn on a logarithmic scale.
    pub log: bool,
    /// Quantities of the dimension of `find`, drawn as lines across.
    pub limits: Vec<AnyId>,
}
