//! When something happened, as the notebook writes it.

use std::fmt;

use serde::{Deserialize, Serialize};

/// A moment in coordinated universal time, `2026-05-04T09:30:00Z` (RFC 3339).
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Default, Serialize, Deserialize)]
#[serde(from = "Written", into = "String")]
pub struct Moment(String);

/// A moment in the file: a text, or a date of TOML that a person wrote.
#[derive(Deserialize)]
#[serde(untagged)]
enum Written {
    Text(String),
    Date(toml::value::Datetime),
}

impl From<Written> for Moment {
    fn from(written: Written) -> Self {
        match written {
            Written::Text(text) => Self(text),
            Written::Date(date) => Self(date.to_string()),
        }
    }
}

impl From<Moment> for String {
    fn from(moment: Moment) -> Self {
        moment.0
    }
}

const DAY: u64 = 86_400;

impl Moment {
    /// The moment so many seconds after the start of 1970, leap seconds not counted (POSIX time).
    pub fn of_unix(seconds: u64) -> Self {
        let (year, month, day) = date(seconds / DAY);
        let (hour, minute, second) = (seconds % DAY / 3600, seconds % 3600 / 60, seconds % 60);
        Self(format!("{year:04}-{month:02}-{day:02}T{hour:02}:{minute:02}:{second:02}Z"))
    }

    /// The date alone: `2026-05-04`; what a person wrote instead stays as written.
    pub fn date(&self) -> &str {
        self.0.split(['T', ' ']).next().unwrap_or(&self.0)
    }
}

impl fmt::Display for Moment {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// Year, month and day of the Gregorian calendar (ISO 8601), so many days after 1970-01-01.
fn date(days: u64) -> (u64, u64, u64) {
    let is_leap = |year: u64| {
        year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400))
    };
    // The calendar repeats after 400 years of 146 097 days.
    let (mut year, mut rest) = (1970 + days / 146_097 * 400, days % 146_097);
    let length = |year| if is_leap(year) { 366 } else { 365 };
    while rest >= length(year) {
        rest -= length(year);
        year += 1;
    }
    let february = if is_leap(year) { 29 } else { 28 };
    let mut month = 1;
    for length in [31, february, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] {
        if rest < length {
            break;
        }
        rest -= length;
        month += 1;
    }
    (year, month, rest + 1)
}
