//! What stands behind each rule: published numbers it was checked against, or why there are none.
//!
//! The counts are written by the tests from their cases; the reasons by hand.

use std::collections::BTreeMap;
use std::fmt;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::quantity::AnyId;

const COUNTS: &str = include_str!("../../assets/checks.toml");
const REASONS: &str = include_str!("../../assets/unchecked.toml");

/// What stands behind a rule.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Checks {
    /// How many published numbers it finds in the tests.
    pub published: u32,
    /// How many of these are quoted from memory of the work named.
    pub recalled: u32,
    /// How many more numbers it finds that were worked out by hand for the check, from figures that
    /// are published or chosen.
    pub derived: u32,
    /// How many more published numbers are found through it.
    pub on_the_way: u32,
    /// How far off the worst of its own is, as a share of the published number.
    pub worst: Option<f64>,
    /// Why it has no check of its own.
    pub reason: Option<&'static str>,
}

impl Checks {
    /// How many numbers it is itself checked against.
    pub fn own(&self) -> u32 {
        self.published + self.derived
    }
}

/// In words, without a stop at the end.
impl fmt::Display for Checks {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.published, self.derived, self.reason) {
            (0, 0, Some(reason)) => {
                write!(f, "none of its own; {}", reason.trim_end_matches('.'))?;
            }
            (0, 0, None) => f.write_str("none of its own")?,
            (0, derived, _) => write!(f, "{derived} worked out by hand")?,
            (published, derived, _) => {
                let plural = if published == 1 { "" } else { "s" };
                write!(f, "{published} published number{plural}")?;
                match self.recalled {
                    0 => {}
                    all if all == published => f.write_str(", from memory")?,
                    some => write!(f, ", {some} of them from memory")?,
                }
                if derived > 0 {
                    write!(f, ", {derived} more worked out by hand")?;
                }
            }
        }
        match self.worst {
            Some(worst) if worst < 1e-4 => f.write_str(", none off by 0.01 % or more")?,
            Some(worst) if self.own() == 1 => write!(f, ", {} off", percent(worst))?,
            Some(worst) => write!(f, ", the worst {} off", percent(worst))?,
            None => {}
        }
        match self.on_the_way {
            0 => Ok(()),
            count => write!(f, "; on the way to {count} more"),
        }
    }
}

/// A share in percent, two figures.
fn percent(share: f64) -> String {
    let percent = 100.0 * share;
    let places = if percent < 0.1 {
        3
    } else if percent < 1.0 {
        2
    } else {
        1
    };
    format!("{percent:.places$} %")
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case", deny_unknown_fields)]
struct Count {
    published: u32,
    recalled: u32,
    derived: u32,
    on_the_way: u32,
    worst: f64,
}

/// A reason and the rules it holds for.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Reason {
    says: String,
    rules: Vec<String>,
}

static COUNTED: LazyLock<BTreeMap<String, Count>> =
    LazyLock::new(|| toml::from_str(COUNTS).unwrap_or_default());
static EXCUSED: LazyLock<BTreeMap<String, Reason>> =
    LazyLock::new(|| toml::from_str(REASONS).unwrap_or_default());

/// What stands behind the rule that finds a quantity.
pub fn of(finds: AnyId) -> Checks {
    let reason = EXCUSED
        .values()
        .find(|reason| reason.rules.iter().any(|name| name == finds.name()))
        .map(|reason| reason.says.as_str());
    COUNTED.get(finds.name()).map_or(Checks { reason, ..Checks::default() }, |count| Checks {
        published: count.published,
        recalled: count.recalled,
        derived: count.derived,
        on_the_way: count.on_the_way,
        worst: (count.published + count.derived > 0).then_some(count.worst),
        reason,
    })
}

/// The names in both tables.
pub fn names() -> impl Iterator<Item = &'static str> {
    let excused = EXCUSED.values().flat_map(|reason| &reason.rules);
    COUNTED.keys().chain(excused).map(String::as_str)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_tables_read() {
        assert!(toml::from_str::<BTreeMap<String, Count>>(COUNTS).is_ok());
        assert!(toml::from_str::<BTreeMap<String, Reason>>(REASONS).is_ok());
    }
}
