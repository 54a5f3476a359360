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

    /// Days since the start of 1970, with the time of day as a part of one; nothing if a person
    /// wrote something that is no date of the Gregorian calendar. A time zone is not looked at.
    pub fn days(&self) -> Option<f64> {
        let mut parts = self.date().splitn(3, '-').map(|part| part.parse::<u32>().ok());
        let (year, month, day) = (parts.next()??, parts.next()??, parts.next()??);
        let is_date =
            (1..=9999).contains(&year) && (1..=12).contains(&month) && (1..=31).contains(&day);
        let time = self.0.get(self.date().len() + 1..).unwrap_or("");
        let mut parts = time.split(':').map_while(|part| part.get(..2)?.parse::<f64>().ok());
        let minutes = 60.0 * parts.next().unwrap_or(0.0) + parts.next().unwrap_or(0.0);
        is_date.then(|| whole_days(year, month, day) + minutes / 1440.0)
    }
}

impl fmt::Display for Moment {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

/// The days from the start of 1970 to a date of the Gregorian calendar, counted in years that begin
/// in March, so that the leap day comes last.
fn whole_days(year: u32, month: u32, day: u32) -> f64 {
    let (year, month) = if month > 2 { (year, month - 3) } else { (year - 1, month + 9) };
    let leap_days = year / 4 - year / 100 + year / 400;
    // Months from March on have 31, 30, 31, 30, 31 days, and so on again.
    let before = (153 * month + 2) / 5;
    f64::from(365 * year + leap_days + before + day - 1) - 719_468.0
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_moment_is_so_many_days_after_1970() {
        for day in (0..60_000).step_by(7) {
            let moment = Moment::of_unix(day * DAY + 43_200);
            assert_eq!(moment.days(), Some(day as f64 + 0.5), "{moment}");
        }
        let written = |text: &str| Moment(text.to_owned()).days();
        assert_eq!(written("2000-03-01"), Some(11_017.0));
        assert_eq!(written("2000-03-01 06:00"), Some(11_017.25));
        for no_date in ["", "in May", "2026-13-01", "2026-05", "0000-01-01", "2026-05-00"] {
            assert_eq!(written(no_date), None, "{no_date}");
        }
    }
}
