//! Reading numbers: `6.4 kg`, `3 1/2 in`, `90 ± 2 mm`.

mod error;
mod number;

use std::ops::Range;

pub use error::{NumberError, NumberFault};

use self::error::{listed, quoted, wanted};
use self::number::{Cursor, begins, number};
use super::dimension::Dimension;
use super::entry::Entry;
use super::preference::suggested;
use super::unit::{self, Unit};

/// How `±` may be typed.
const PLUS_MINUS: &[&str] = &["±", "+/-", "+/−", "+-", "+−"];

/// A number a reader entered.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Amount {
    /// The value in the coherent SI unit.
    pub si: f64,
    /// The half-width after `±` in the coherent SI unit, if one was given; never negative.
    pub spread: Option<f64>,
}

/// Reads a number with its unit: `6.4 kg`, `2,5 kg`, `3 1/2 in`, `5 ft 3 in`, `90 mm ± 5 %`.
///
/// A number without a unit is taken for plain numbers, and zero for anything but a temperature.
///
/// # Errors
/// The text is no number of the entry's dimension, or can be read in two ways. Whether the
/// number is possible for the entry is not asked here.
pub fn parse(text: &str, entry: &Entry) -> Result<Amount, NumberError> {
    Reader { text, entry, default_unit: None }.amount()
}

/// Reads a number; one without a unit is in `default_unit`.
///
/// # Errors
/// As [`parse`].
pub fn parse_in(
    text: &str,
    entry: &Entry,
    default_unit: &'static Unit,
) -> Result<Amount, NumberError> {
    Reader { text, entry, default_unit: Some(default_unit) }.amount()
}

/// A number and the unit text after it, if any.
struct Part<'a> {
    value: f64,
    at: Range<usize>,
    unit: Option<(&'a str, Range<usize>)>,
}

struct Reader<'a> {
    text: &'a str,
    entry: &'a Entry,
    default_unit: Option<&'static Unit>,
}

impl<'a> Reader<'a> {
    fn amount(&self) -> Result<Amount, NumberError> {
        if self.text.trim().is_empty() {
            return Err(NumberFault::Empty { wanted: wanted(self.entry) }.at(0..self.text.len()));
        }
        let mut cursor = Cursor::new(self.text);
        let parts = self.parts(&mut cursor)?;
        let spread =
            if cursor.take_word(PLUS_MINUS) { Some(self.spread(&mut cursor)?) } else { None };
        let (first, more) = match parts.as_slice() {
            [first, more @ ..] => (first, more),
            [] => return Err(self.not_a_number(0)),
        };
        let unit = self.unit_of_value(first, spread.as_ref())?;
        let (si, last) = match more {
            [] => (self.finite(unit.map_or(0.0, |u| u.to_si(first.value)), &first.at)?, unit),
            _ => self.sum(&parts)?,
        };
        if self.entry.whole && si != si.round() {
            return Err(NumberFault::NotWhole { label: self.entry.label }.at(first.at.clone()));
        }
        let spread = spread.map(|spread| self.half_width(&spread, si, last)).transpose()?;
        Ok(Amount { si, spread })
    }

    /// One number, or several that add up, up to a `±` or the end.
    fn parts(&self, cursor: &mut Cursor<'a>) -> Result<Vec<Part<'a>>, NumberError> {
        let mut parts = vec![self.part(cursor)?];
        while !cursor.rest().is_empty() && !cursor.clone().take_word(PLUS_MINUS) {
            parts.push(self.part(cursor)?);
        }
        Ok(parts)
    }

    fn part(&self, cursor: &mut Cursor<'a>) -> Result<Part<'a>, NumberError> {
        let start = cursor.at;
        let Some(number) = number(cursor)? else { return Err(self.not_a_number(start)) };
        cursor.skip_space();
        let start = cursor.at;
        let mut before = ' ';
        while let Some(c) = cursor.peek() {
            let apart =
                before.is_whitespace() || matches!(before, '\'' | '"' | '′' | '″' | '’' | '”');
            if cursor.clone().take_word(PLUS_MINUS)
                || (apart && begins(c) && !cursor.at_reciprocal())
            {
                break;
            }
            before = c;
            cursor.at += c.len_utf8();
        }
        let symbol = cursor.since(start).trim_end();
        let at = start..start + symbol.len();
        Ok(Part {
            value: number.value,
            at: number.at,
            unit: (!symbol.is_empty()).then_some((symbol, at)),
        })
    }

    fn spread(&self, cursor: &mut Cursor<'a>) -> Result<Part<'a>, NumberError> {
        let part = self.part(cursor)?;
        let left = cursor.at..self.text.len();
        if cursor.take_word(PLUS_MINUS) {
            let found = quoted(self.text.get(left.clone()).unwrap_or_default());
            return Err(NumberFault::SecondSpread { found }.at(left));
        }
        if !cursor.rest().is_empty() {
            return Err(NumberFault::TwoNumbers { mend: self.one_number() }.at(left));
        }
        if part.value < 0.0 {
            return Err(NumberFault::NegativeSpread.at(part.at));
        }
        Ok(part)
    }

    /// The unit of the value: its own, else the spread's, else the field's; none for a bare zero.
    fn unit_of_value(
        &self,
        value: &Part,
        spread: Option<&Part>,
    ) -> Result<Option<&'static Unit>, NumberError> {
        let after_spread = spread.and_then(|spread| spread.unit.as_ref());
        match (&value.unit, after_spread) {
            (Some((symbol, at)), _) => self.find(symbol, at).map(Some),
            (None, Some((symbol, at))) if !unit::is_percent(symbol) => {
                self.find(symbol, at).map(Some)
            }
            (None, percent) => self.unit_unsaid(value, spread.filter(|_| percent.is_some())),
        }
    }

    fn unit_unsaid(
        &self,
        value: &Part,
        percent: Option<&Part>,
    ) -> Result<Option<&'static Unit>, NumberError> {
        if let Some(unit) = self.default_unit.filter(|u| percent.is_none() || !u.symbol.is_empty())
        {
            return Ok(Some(unit));
        }
        if self.entry.dimension == Dimension::Ratio {
            return match percent {
                Some(spread) => Err(NumberFault::AmbiguousPercent {
                    one: format!("{} % ± {} %", value.value, spread.value),
                    other: format!(
                        "{} ± {}",
                        value.value,
                        value.value.abs() * spread.value / 100.0
                    ),
                }
                .at(value.at.start..self.text.len())),
                None => Ok(Some(unit::si_unit(Dimension::Ratio))),
            };
        }
        if value.value == 0.0 && self.entry.dimension != Dimension::Temperature {
            return Ok(None);
        }
        Err(self.no_unit(&value.at))
    }

    /// `5 ft 3 in`: the same sign for all, the larger unit first, every number with its unit.
    fn sum(&self, parts: &[Part]) -> Result<(f64, Option<&'static Unit>), NumberError> {
        let mut total = 0.0;
        let mut last: Option<&'static Unit> = None;
        let negative = parts.first().is_some_and(|part| part.value.is_sign_negative());
        for part in parts {
            let Some((symbol, at)) = &part.unit else { return Err(self.no_unit(&part.at)) };
            let unit = self.find(symbol, at)?;
            let descends = last.is_none_or(|last| unit.factor < last.factor);
            let follows = last.is_none() || !part.value.is_sign_negative();
            if !descends || !follows || unit.offset != 0.0 || unit.dimension == Dimension::Ratio {
                return Err(NumberFault::TwoNumbers { mend: self.one_number() }.at(part.at.clone()));
            }
            total += self.finite(unit.to_si(part.value.abs()), &part.at)?;
            last = Some(unit);
        }
        let total = self.finite(total, &(0..self.text.len()))?;
        Ok((if negative { -total } else { total }, last))
    }

    /// The half-width in SI units: in the unit said, or a percentage of the value.
    fn half_width(
        &self,
        spread: &Part,
        si: f64,
        of_value: Option<&'static Unit>,
    ) -> Result<f64, NumberError> {
        let in_points = of_value.is_some_and(|unit| unit.symbol == "%");
        let relative = self.entry.dimension != Dimension::Temperature && !in_points;
        let width = match (&spread.unit, of_value) {
            (Some((symbol, _)), _) if relative && unit::is_percent(symbol) => {
                si.abs() * spread.value / 100.0
            }
            (Some((symbol, at)), _) => self.find(symbol, at)?.factor * spread.value,
            (None, Some(unit)) => unit.factor * spread.value,
            (None, None) if spread.value == 0.0 => 0.0,
            (None, None) => return Err(self.no_unit(&spread.at)),
        };
        self.finite(width, &spread.at)
    }

    fn find(&self, symbol: &str, at: &Range<usize>) -> Result<&'static Unit, NumberError> {
        unit::find(self.entry, symbol)
            .map_err(|missed| NumberFault::of_unit(missed, symbol, self.entry).at(at.clone()))
    }

    fn finite(&self, si: f64, at: &Range<usize>) -> Result<f64, NumberError> {
        if si.is_finite() {
            return Ok(si);
        }
        let found = quoted(self.text.get(at.clone()).unwrap_or_default());
        Err(NumberFault::TooLarge { found }.at(at.clone()))
    }

    fn no_unit(&self, at: &Range<usize>) -> NumberError {
        NumberFault::NoUnit { units: listed(&suggested(self.entry)) }.at(at.clone())
    }

    fn not_a_number(&self, start: usize) -> NumberError {
        let found = quoted(self.text.get(start..).unwrap_or_default());
        NumberFault::NotANumber { found, wanted: wanted(self.entry) }.at(start..self.text.len())
    }

    fn one_number(&self) -> &'static str {
        match self.entry.dimension {
            Dimension::Length => "Write one, or the larger unit first, as in 5 ft 3 in.",
            Dimension::Mass => "Write one, or the larger unit first, as in 3 lb 4 oz.",
            Dimension::Time => "Write one, or the larger unit first, as in 1 min 30 s.",
            _ => "Write one number with one unit.",
        }
    }
}
