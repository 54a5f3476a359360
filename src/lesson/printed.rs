//! A number as a text prints it: how exact it claims to be, and where it stands.

use super::place::Fault;
use crate::quantity::{self, Entry, unit};

/// How far "about 0.8 kPa" may be off at most, as a share.
pub(super) const ABOUT: f64 = 0.1;

/// Before a number below zero that is printed without its minus.
const UNSIGNED: &str = "unsigned ";

/// Rounding of halves: this part of half a unit of the last digit.
const HAIR: f64 = 1e-6;

/// A number as a text prints it.
#[derive(Debug, Clone, PartialEq)]
pub struct Printed {
    /// As it is printed, without the words before it.
    text: String,
    /// Its digits, in `text` from here to there.
    digits: (usize, usize),
    /// How many of them stand behind the point.
    decimals: usize,
    /// The number in SI units.
    si: f64,
    /// Half a unit of its last digit, as printed and in SI units.
    half: (f64, f64),
    /// Whether the zeros at its end are no digits of it.
    about: bool,
    /// Whether it is printed without the minus it has.
    unsigned: bool,
}

/// The number that words say, and whether they say "about".
pub(super) fn about(words: &str) -> (&str, bool) {
    let words = words.trim();
    words.strip_prefix("about ").map_or((words, false), |number| (number, true))
}

impl Printed {
    /// Reads a printed number of the quantity: `941 N`, `2.50 m`, `about 900 N`, `unsigned 22 mm`.
    pub(super) fn read(words: &str, entry: &Entry) -> Result<Self, Fault> {
        let (number, about) = about(words);
        let below_zero =
            number.strip_prefix(UNSIGNED).filter(|number| !number.contains(['-', '−']));
        let unsigned = below_zero.is_some();
        let text = alike(below_zero.unwrap_or(number));
        let start = text.find(|c: char| c.is_ascii_digit()).unwrap_or(0);
        let inside = |c: char| c.is_ascii_digit() || matches!(c, '.' | ' ');
        let run = text.get(start..).unwrap_or_default();
        let run = run.find(|c| !inside(c)).map_or(run, |end| &run[..end]).trim_end();
        let decimals = run.split_once('.').map_or(0, |(_, behind)| behind.len());
        let half = 0.5 / 10_f64.powi(i32::try_from(decimals).unwrap_or(i32::MAX));
        let sign = if unsigned { "-" } else { "" };
        let power = power_of_ten(&text[start + run.len()..]);
        let read = quantity::parse(&format!("{sign}{text} ± {half}{power}"), entry);
        let read = read.map_err(|_| unread(words, entry))?;
        let half_si = read.spread.filter(|width| *width > 0.0 && !run.is_empty());
        let half = (half, half_si.ok_or_else(|| unread(words, entry))?);
        let digits = (start, start + run.len());
        Ok(Self { digits, decimals, si: read.si, half, about, unsigned, text })
    }

    /// Whether a number in SI units is printed so.
    pub(super) fn is(&self, si: f64) -> bool {
        let last = self.half.1 * (1.0 + HAIR);
        let near = if self.about { self.last_but_zeros(last).min(ABOUT * si.abs()) } else { last };
        (si - self.si).abs() <= near
    }

    /// Half a unit of the last digit that is no zero, from half a unit of the last one.
    fn last_but_zeros(&self, half: f64) -> f64 {
        let digits = &self.text[self.digits.0..self.digits.1];
        if self.decimals > 0 {
            return half;
        }
        let zeros = digits.chars().rev().filter(|c| *c != ' ').take_while(|c| *c == '0').count();
        half * 10_f64.powi(i32::try_from(zeros).unwrap_or(i32::MAX))
    }

    /// How a number in SI units would be printed in its place.
    pub(super) fn rather(&self, si: f64) -> String {
        let (start, end) = self.digits;
        let (sign, digits, rest) = (&self.text[..start], &self.text[start..end], &self.text[end..]);
        let size: f64 = digits.replace(' ', "").parse().unwrap_or(f64::NAN);
        let said = if self.unsigned || sign.contains('-') { -size } else { size };
        let rather = said + (si - self.si) * self.half.0 / self.half.1;
        if !self.unsigned {
            return format!("{rather:.*}{rest}", self.decimals);
        }
        let plain = format!("{:.*}{rest}", self.decimals, rather.abs());
        if rather < 0.0 {
            plain
        } else {
            format!("{plain} without \"unsigned\": it is not below zero")
        }
    }

    /// Whether it stands in a text of [`alike`] letters, as a whole: with its unit; or without,
    /// where no other unit follows, as in a column of a table that names the unit.
    pub(super) fn stands_in(&self, text: &str) -> bool {
        let digits = &self.text[..self.digits.1];
        whole(text, &self.text).next().is_some() || whole(text, digits).any(is_bare)
    }

    /// As it is printed, without the words before it.
    pub(super) fn text(&self) -> &str {
        &self.text
    }
}

/// The power of ten that digits are followed by: ` × 10⁻⁹` of ` × 10⁻⁹ m⁴`, `e-9` of `e-9 m⁴`.
fn power_of_ten(rest: &str) -> &str {
    let ten = rest.find("10").filter(|at| matches!(rest[..*at].trim(), "×" | "*"));
    let exponent = ten.map(|at| at + "10".len()).or_else(|| {
        let is_exponent = |c: char| c.is_ascii_digit() || matches!(c, '-' | '+');
        rest.strip_prefix(['e', 'E'])?.starts_with(is_exponent).then_some(1)
    });
    let Some(exponent) = exponent else { return "" };
    rest[exponent..].find(' ').map_or(rest, |end| &rest[..exponent + end])
}

fn unread(words: &str, entry: &Entry) -> Fault {
    Fault::new(
        format!("\"{words}\" is no printed number of {}", entry.id),
        format!("{} in digits with its unit", entry.dimension.in_words()),
    )
}

/// The text with every kind of space and of minus alike, line by line.
pub(super) fn alike(text: &str) -> String {
    let words = |line: &str| line.split_whitespace().collect::<Vec<_>>().join(" ");
    let lines: Vec<_> = text.lines().map(words).collect();
    lines.join("\n").replace('−', "-")
}

/// What follows each place where the words stand and no part of them goes on to either side.
fn whole<'t>(text: &'t str, words: &'t str) -> impl Iterator<Item = &'t str> {
    text.match_indices(words).filter_map(move |(at, _)| {
        let (before, after) = (&text[..at], &text[at + words.len()..]);
        (!leads_on(before) && !goes_on(after)).then_some(after)
    })
}

/// Whether a number that follows begins in this text already: with digits, or a sign.
fn leads_on(before: &str) -> bool {
    let mut back = before.chars().rev();
    let (last, one_before) = (back.next(), back.next());
    match last {
        Some('.' | ',') => one_before.is_some_and(|c| c.is_ascii_digit()),
        Some('-') => one_before.is_none_or(|c| c.is_whitespace() || matches!(c, '(' | '=')),
        last => last.is_some_and(char::is_alphanumeric),
    }
}

/// Whether a number or a unit goes on in this text.
fn goes_on(after: &str) -> bool {
    let mut ahead = after.chars();
    let (first, second) = (ahead.next(), ahead.next());
    match first {
        Some('.' | ',') => second.is_some_and(|c| c.is_ascii_digit()),
        Some('/' | '·') => second.is_some_and(char::is_alphabetic),
        first => first.is_some_and(|c| c.is_alphanumeric() || matches!(c, '°' | '%' | '⁻')),
    }
}

/// Whether no unit follows; "in" is a word more often than an inch.
fn is_bare(after: &str) -> bool {
    let line = after.split('\n').next().unwrap_or_default();
    let Some(word) = line.strip_prefix(' ').and_then(|rest| rest.split(' ').next()) else {
        return true;
    };
    let word = word.trim_end_matches([',', '.', ';', ':', ')', '?', '!', '”']);
    word == "in" || !(word == "%" || unit::is_symbol(word))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::catalogue;

    fn read(words: &str, id: &str) -> Printed {
        Printed::read(words, catalogue::find(id).unwrap()).unwrap()
    }

    #[test]
    fn a_number_is_as_exact_as_its_last_digit() {
        for (words, id, inside, outside) in [
            ("941 N", "mean-impact-force", [940.5, 941.5], [940.49, 941.51]),
            ("0.941 kN", "mean-impact-force", [940.5, 941.5], [940.49, 941.51]),
            ("0.9 kN", "mean-impact-force", [850.0, 950.0], [849.0, 951.0]),
            ("1000 N", "mean-impact-force", [999.5, 1000.5], [999.4, 1000.6]),
            ("16 800 N", "mean-impact-force", [16799.5, 16800.5], [16799.0, 16801.0]),
            ("about 900 N", "mean-impact-force", [850.0, 950.0], [849.0, 951.0]),
            ("about 1000 N", "mean-impact-force", [910.0, 1110.0], [908.0, 1112.0]),
            ("about 16 800 N", "mean-impact-force", [16750.0, 16850.0], [16749.0, 16851.0]),
            ("about 55 N", "mean-impact-force", [54.5, 55.5], [54.4, 55.6]),
            ("unsigned 22 mm", "balance-offset", [-0.0225, -0.0215], [-0.0226, 0.022]),
            ("about unsigned 20 mm", "balance-offset", [-0.0219, -0.0185], [-0.018, 0.02]),
            ("unsigned 5 °C", "air-temperature", [267.7, 268.6], [267.6, 278.15]),
            ("20.0 °C", "air-temperature", [293.1, 293.2], [293.0, 293.3]),
            ("\u{2212}5°", "slope", [-0.0959, -0.0786], [-0.097, -0.077]),
            ("118 %", "frame-margin", [1.175, 1.185], [1.17, 1.19]),
            ("1.18", "frame-margin", [1.175, 1.185], [1.17, 1.19]),
            ("2", "track-count", [1.5, 2.5], [1.4, 2.6]),
            ("8.00 × 10⁻⁹ m⁴", "second-moment", [7.996e-9, 8.004e-9], [7.99e-9, 8.01e-9]),
            ("8e3 N", "mean-impact-force", [7500.0, 8500.0], [7400.0, 8600.0]),
        ] {
            let printed = read(words, id);
            assert!(inside.iter().all(|si| printed.is(*si)), "{words}: {printed:?}");
            assert!(!outside.iter().any(|si| printed.is(*si)), "{words}: {printed:?}");
        }
    }

    #[test]
    fn another_number_is_printed_alike() {
        assert_eq!(read("941 N", "mean-impact-force").rather(943.4), "943 N");
        assert_eq!(read("0.941 kN", "mean-impact-force").rather(9434.0), "9.434 kN");
        assert_eq!(read("16\u{202f}800 N", "mean-impact-force").rather(16912.2), "16912 N");
        assert_eq!(read("20.0 °C", "air-temperature").rather(273.15), "0.0 °C");
        assert_eq!(read("−5°", "slope").rather(-0.1047), "-6°");
        assert_eq!(read("118 %", "frame-margin").rather(1.2), "120 %");
        assert_eq!(read("9.90 × 10⁻⁹ m⁴", "second-moment").rather(8e-9), "8.00 × 10⁻⁹ m⁴");
        assert_eq!(read("unsigned 22 mm", "balance-offset").rather(-0.0233), "23 mm");
        assert_eq!(read("unsigned 5 °C", "air-temperature").rather(267.15), "6 °C");
    }

    #[test]
    fn what_is_no_printed_number_is_told() {
        let entry = catalogue::find("mean-impact-force").unwrap();
        for words in
            ["", "much", "941", "941 kg", "941 N ± 2 N", "N", "0", "unsigned", "unsigned −5 N"]
        {
            assert!(Printed::read(words, entry).is_err(), "{words}");
        }
    }

    #[test]
    fn it_stands_as_a_whole_or_without_any_unit() {
        let printed = read("941 N", "mean-impact-force");
        for text in [
            "It is 941 N.",
            "(941\u{a0}N)",
            "62.8 N =\u{202f}941 \tN",
            "Force (N)\n941\n2.62",
            "from 941 to 943 N",
            "941, 943 and 945 N",
            "941 in all",
        ] {
            assert!(printed.stands_in(&alike(text)), "{text}");
        }
        for text in [
            "",
            "1941 N",
            "941.5 N",
            "0.941 kN",
            "941 kN",
            "941 N/m",
            "941 N·s",
            "941 %",
            "941%",
            "941 J.",
            "N941",
            "is −941 N",
            "9,941 N",
        ] {
            assert!(!printed.stands_in(&alike(text)), "{text}");
        }
        assert!(read("-5°", "slope").stands_in(&alike("It is −5° there.")));
    }
}
