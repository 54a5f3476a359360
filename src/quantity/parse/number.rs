//! Reading the digits: signs, groups, decimal commas, exponents and fractions.

use std::ops::Range;

use super::error::{NumberError, NumberFault, quoted};

/// A place in a text, moving on.
#[derive(Clone)]
pub(super) struct Cursor<'a> {
    text: &'a str,
    /// The byte it stands at.
    pub(super) at: usize,
}

impl<'a> Cursor<'a> {
    pub(super) fn new(text: &'a str) -> Self {
        Self { text, at: 0 }
    }

    pub(super) fn rest(&self) -> &'a str {
        self.text.get(self.at..).unwrap_or_default()
    }

    pub(super) fn since(&self, start: usize) -> &'a str {
        self.text.get(start..self.at).unwrap_or_default()
    }

    pub(super) fn peek(&self) -> Option<char> {
        self.rest().chars().next()
    }

    pub(super) fn skip_space(&mut self) {
        self.take_while(char::is_whitespace);
    }

    /// Whether a unit that begins with a digit stands here: `1/K`.
    pub(super) fn at_reciprocal(&self) -> bool {
        let below = self.rest().strip_prefix("1/").and_then(|rest| rest.chars().next());
        below.is_some_and(|c| c.is_alphabetic() || c == '°')
    }

    /// Passes over one of these characters.
    fn take(&mut self, wanted: impl Fn(char) -> bool) -> Option<char> {
        let c = self.peek().filter(|c| wanted(*c))?;
        self.at += c.len_utf8();
        Some(c)
    }

    /// Passes over the first of these words that stands here.
    pub(super) fn take_word(&mut self, words: &[&str]) -> bool {
        let found = words.iter().find(|word| self.rest().starts_with(**word));
        self.at += found.map_or(0, |word| word.len());
        found.is_some()
    }

    pub(super) fn take_while(&mut self, wanted: impl Fn(char) -> bool) -> &'a str {
        let start = self.at;
        while self.take(&wanted).is_some() {}
        self.since(start)
    }

    /// What `step` reads, or nothing and no move.
    fn attempt<T>(&mut self, step: impl FnOnce(&mut Self) -> Option<T>) -> Option<T> {
        let mut ahead = self.clone();
        let found = step(&mut ahead)?;
        self.at = ahead.at;
        Some(found)
    }
}

fn is_digit(c: char) -> bool {
    c.is_ascii_digit()
}

fn is_minus(c: char) -> bool {
    matches!(c, '-' | '−' | '–' | '‒' | '－' | '﹣')
}

fn is_sign(c: char) -> bool {
    c == '+' || is_minus(c)
}

fn is_group_mark(c: char) -> bool {
    matches!(c, ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}' | '\'' | '’')
}

/// Whether a number may begin with this character, signs aside.
pub(super) fn begins(c: char) -> bool {
    is_digit(c) || vulgar(c).is_some()
}

/// A number without its unit, and where it stands.
pub(super) struct Number {
    pub(super) value: f64,
    pub(super) at: Range<usize>,
}

/// Reads a number, if one stands here.
pub(super) fn number(cursor: &mut Cursor) -> Result<Option<Number>, NumberError> {
    cursor.skip_space();
    let start = cursor.at;
    let negative = cursor.take(is_sign).is_some_and(is_minus);
    cursor.skip_space();
    let Some(size) = size(cursor)? else {
        cursor.at = start;
        return Ok(None);
    };
    let at = start..cursor.at;
    if !size.is_finite() {
        return Err(NumberFault::TooLarge { found: quoted(cursor.since(start)) }.at(at));
    }
    Ok(Some(Number { value: if negative { -size } else { size }, at }))
}

fn size(cursor: &mut Cursor) -> Result<Option<f64>, NumberError> {
    if let Some(part) = cursor.attempt(|ahead| ahead.take(|c| vulgar(c).is_some()).and_then(vulgar))
    {
        return Ok(Some(part));
    }
    let start = cursor.at;
    let run = run(cursor);
    if run.is_empty() {
        return Ok(None);
    }
    let plain = plain_digits(run, start..cursor.at)?;
    if let Some(power) = cursor.attempt(power) {
        return Ok(Some(read(&format!("{plain}e{power}"))));
    }
    let whole = read(&plain);
    if plain.contains('.') {
        return Ok(Some(whole));
    }
    let value = match fraction(cursor, whole) {
        Some(value) => value,
        None => return Ok(Some(whole)),
    };
    if value.is_nan() || value.is_infinite() && whole.is_finite() {
        let found = quoted(cursor.since(start));
        return Err(NumberFault::OverZero { found }.at(start..cursor.at));
    }
    Ok(Some(value))
}

/// A string of digits, a point and an exponent; nothing else reaches here.
fn read(plain: &str) -> f64 {
    plain.parse().unwrap_or(f64::INFINITY)
}

/// Digits with what may stand between them: `1 200`, `1'200`, `2,5`, `1.200,5`.
fn run<'a>(cursor: &mut Cursor<'a>) -> &'a str {
    let start = cursor.at;
    let mut since_mark = 0;
    let mut point_seen = false;
    loop {
        since_mark += cursor.take_while(is_digit).len();
        let Some(c) = cursor.peek() else { break };
        let after = cursor.rest().get(c.len_utf8()..).unwrap_or_default();
        let follows = after.bytes().take_while(u8::is_ascii_digit).count();
        let goes_on = if is_group_mark(c) {
            let is_fraction = after.get(follows..).is_some_and(|rest| rest.starts_with(['/', '⁄']));
            (1..=3).contains(&since_mark) && follows == 3 && !point_seen && !is_fraction
        } else {
            matches!(c, '.' | ',') && follows > 0
        };
        if !goes_on {
            if c == '.' && since_mark > 0 && !point_seen {
                cursor.take(|c| c == '.');
            }
            break;
        }
        point_seen |= matches!(c, '.' | ',');
        since_mark = 0;
        cursor.take(|_| true);
    }
    cursor.since(start)
}

/// The same number with a decimal point and nothing else between its digits.
fn plain_digits(run: &str, at: Range<usize>) -> Result<String, NumberError> {
    let found = || quoted(run);
    let grouped = run.contains(is_group_mark);
    let run: String = run.chars().filter(|c| !is_group_mark(*c)).collect();
    let run = run.strip_suffix('.').unwrap_or(&run);
    let points = run.matches('.').count();
    let commas = run.matches(',').count();
    let without = |mark: char| run.replace(mark, "");
    let odd = |found: String| NumberFault::OddSeparators { found }.at(at.clone());
    match (points, commas) {
        (0 | 1, 0) => Ok(run.to_owned()),
        (0, 1) if grouped || !is_grouped(run, ',') => Ok(run.replace(',', ".")),
        (0, 1) => Err(NumberFault::Ambiguous {
            found: found(),
            one: trimmed(&run.replace(',', ".")),
            other: without(','),
        }
        .at(at)),
        (_, 0) if !grouped && is_grouped(run, '.') => Ok(without('.')),
        (0, _) if !grouped && is_grouped(run, ',') => Ok(without(',')),
        (_, 1) => match run.split_once(',') {
            Some((whole, part)) if !grouped && !part.contains('.') && is_grouped(whole, '.') => {
                Ok(format!("{}.{part}", whole.replace('.', "")))
            }
            // One of each: the comma may group, too.
            _ => comma_groups(run).filter(|_| !grouped).ok_or_else(|| odd(found())),
        },
        (1, _) => comma_groups(run).filter(|_| !grouped).ok_or_else(|| odd(found())),
        _ => Err(odd(found())),
    }
}

/// `1,200.5` without its commas.
fn comma_groups(run: &str) -> Option<String> {
    let (whole, part) = run.split_once('.')?;
    (!part.contains([',', '.']) && is_grouped(whole, ','))
        .then(|| format!("{}.{part}", whole.replace(',', "")))
}

/// Whether marks stand where thousands are parted: `1,200`, `12.345.678`, never `0,250`.
fn is_grouped(run: &str, mark: char) -> bool {
    let mut groups = run.split(mark);
    let first = groups.next().unwrap_or_default();
    (1..=3).contains(&first.len())
        && !first.starts_with('0')
        && run.contains(mark)
        && groups.all(|group| group.len() == 3 && group.bytes().all(|b| b.is_ascii_digit()))
}

fn trimmed(decimal: &str) -> String {
    decimal.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A power of ten: `e3`, `×10³`, `*10^-3`.
fn power(cursor: &mut Cursor) -> Option<String> {
    if cursor.take(|c| matches!(c, 'e' | 'E')).is_none() {
        cursor.skip_space();
        cursor.take(|c| matches!(c, '×' | '*' | '·' | '⋅'))?;
        cursor.skip_space();
        cursor.take_word(&["10"]).then_some(())?;
        if cursor.take(|c| c == '^').is_none() {
            return raised(cursor);
        }
    }
    let sign = if cursor.take(is_sign).is_some_and(is_minus) { "-" } else { "" };
    let figures = cursor.take_while(is_digit);
    (!figures.is_empty()).then(|| format!("{sign}{figures}"))
}

fn raised(cursor: &mut Cursor) -> Option<String> {
    let raised = cursor.take_while(|c| lowered(c).is_some());
    let figures: String = raised.chars().filter_map(lowered).collect();
    figures.parse::<i64>().ok().map(|_| figures)
}

fn lowered(c: char) -> Option<char> {
    Some(match c {
        '⁰' => '0',
        '¹' => '1',
        '²' => '2',
        '³' => '3',
        '⁴' => '4',
        '⁵' => '5',
        '⁶' => '6',
        '⁷' => '7',
        '⁸' => '8',
        '⁹' => '9',
        '⁻' => '-',
        _ => return None,
    })
}

/// What a whole number becomes with the fraction after it: `1/2`, `3 1/2`, `3-1/2`, `3½`.
fn fraction(cursor: &mut Cursor, whole: f64) -> Option<f64> {
    let over = |cursor: &mut Cursor| {
        cursor.take(|c| matches!(c, '/' | '⁄'))?;
        let below = cursor.take_while(is_digit);
        (!below.is_empty()).then(|| read(below))
    };
    if let Some(below) = cursor.attempt(over) {
        return Some(whole / below);
    }
    cursor.attempt(|ahead| {
        ahead.skip_space();
        if let Some(part) = ahead.take(|c| vulgar(c).is_some()).and_then(vulgar) {
            return Some(whole + part);
        }
        ahead.take(|c| c == '-');
        let above = ahead.take_while(is_digit);
        let below = over(ahead)?;
        (!above.is_empty()).then(|| whole + read(above) / below)
    })
}

fn vulgar(c: char) -> Option<f64> {
    Some(match c {
        '½' => 1.0 / 2.0,
        '¼' => 1.0 / 4.0,
        '¾' => 3.0 / 4.0,
        '⅓' => 1.0 / 3.0,
        '⅔' => 2.0 / 3.0,
        '⅛' => 1.0 / 8.0,
        '⅜' => 3.0 / 8.0,
        '⅝' => 5.0 / 8.0,
        '⅞' => 7.0 / 8.0,
        _ => return None,
    })
}
