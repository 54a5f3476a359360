//! The working: a rule's formula with symbols, with the numbers put in, and its answer.

mod plain;

use super::rule::Rule;
use super::value::{Known, Origin, Value, Values};
use crate::quantity::{AnyId, Entry, Shown, Units, catalogue, si_unit};
pub use plain::plain;

/// How a rule got from its inputs to its answer.
///
/// The numbers put in are in coherent SI units (degrees for angles), so that they can be
/// multiplied as they stand; the answer and the inputs are in the reader's own units.
#[derive(Debug, Clone, PartialEq)]
pub struct Working {
    /// The formula as TeX, with symbols.
    pub symbols_tex: String,
    /// The same with the numbers put in; what is not known keeps its symbol.
    pub numbers_tex: String,
    /// The answer as TeX; none if the rule did not find one.
    pub answer_tex: Option<String>,
    /// The formula as one line of text.
    pub symbols_text: String,
    /// The formula with the numbers put in, as one line of text.
    pub numbers_text: String,
    /// The answer as text.
    pub answer_text: Option<String>,
    /// What is taken for granted.
    pub assumptions: &'static [&'static str],
    /// Where the rule holds.
    pub holds: &'static str,
    /// Where it is published.
    pub source: &'static str,
    /// What the reader should know before trusting this answer.
    pub cautions: Vec<String>,
    /// The known inputs, each as the reader sees it elsewhere.
    pub inputs: Vec<(AnyId, Shown)>,
}

/// The working of a rule for what is known.
pub fn working(rule: &Rule, values: &Values, units: &Units) -> Working {
    let number = |id: &str| (id != rule.finds.name()).then(|| known(id, values)).flatten();
    let found = match values.of(rule.finds) {
        Value::Known(known) if known.origin == Origin::Found => Some(known),
        _ => None,
    };
    let answer = found.and_then(|known| {
        let entry = catalogue::find(rule.finds.name())?;
        Some((entry, units.show(entry, known.si)))
    });
    Working {
        symbols_tex: symbols_tex(rule),
        numbers_tex: fill(
            rule.formula,
            &|id| number(id).map_or_else(|| symbol(id).to_owned(), |shown| tex(&shown)),
            &|id| number(id).is_some(),
        ),
        answer_tex: answer
            .as_ref()
            .map(|(entry, shown)| format!("{} = {}", entry.symbol, tex(shown))),
        symbols_text: plain(rule.formula, &symbol_text),
        numbers_text: plain(rule.formula, &|id| {
            number(id).map_or_else(|| symbol_text(id), |shown| text(&shown))
        }),
        answer_text: answer
            .as_ref()
            .map(|(entry, shown)| format!("{} = {shown}", symbol_text(entry.id.name()))),
        assumptions: rule.assumes,
        holds: rule.holds,
        source: rule.source,
        cautions: found.map_or_else(Vec::new, |Known { cautions, .. }| {
            cautions.iter().map(ToString::to_string).collect()
        }),
        inputs: rule
            .needs
            .iter()
            .filter_map(|need| {
                let entry = catalogue::find(need.id.name())?;
                Some((need.id, units.show(entry, values.si(need.id)?)))
            })
            .collect(),
    }
}

/// The formula of a rule as TeX, with symbols.
pub fn symbols_tex(rule: &Rule) -> String {
    fill(rule.formula, &|id| symbol(id).to_owned(), &|_| false)
}

fn symbol(id: &str) -> &str {
    catalogue::find(id).map_or(id, |entry| entry.symbol)
}

fn symbol_text(id: &str) -> String {
    plain(symbol(id), &str::to_owned)
}

/// A known number in the coherent SI unit.
fn known(id: &str, values: &Values) -> Option<Shown> {
    let entry: &'static Entry = catalogue::find(id)?;
    let si = values.si(entry.id)?;
    // A multiple of g or a percentage goes into a formula as the plain number it is.
    let unit = si_unit(entry.dimension);
    Units::default().show_in(entry, si, unit.symbol).ok()
}

/// A negative number in brackets, so that two signs never meet.
fn text(shown: &Shown) -> String {
    if shown.number.starts_with('−') { format!("({shown})") } else { shown.to_string() }
}

/// A shown number as TeX.
fn tex(shown: &Shown) -> String {
    let mut number = String::new();
    let mut power = String::new();
    for c in shown.number.chars() {
        match c {
            '−' => number.push('-'),
            '\u{2009}' => number.push_str(r"\,"),
            '×' => number.push_str(r" \times "),
            '⁻' => power.push('-'),
            _ => match raised_digit(c) {
                Some(digit) => power.push(digit),
                None => number.push(c),
            },
        }
    }
    if !power.is_empty() {
        number.push_str(&format!("^{{{power}}}"));
    }
    let unit = shown.unit.tex();
    let gap = if unit.is_empty() || shown.unit.symbol == "°" { "" } else { r"\," };
    format!("{number}{gap}{unit}")
}

fn raised_digit(c: char) -> Option<char> {
    "⁰¹²³⁴⁵⁶⁷⁸⁹".chars().position(|raised| raised == c).and_then(|i| char::from_digit(i as u32, 10))
}

/// Puts something in place of each `\q{id}`: in brackets where a number is raised to a power or
/// negative, in braces where a symbol is raised.
fn fill(
    formula: &str,
    stand_in: &dyn Fn(&str) -> String,
    is_number: &dyn Fn(&str) -> bool,
) -> String {
    let mut out = String::with_capacity(formula.len() * 2);
    let mut rest = formula;
    while let Some((before, after)) = rest.split_once(r"\q{") {
        out.push_str(before);
        let Some((id, after)) = after.split_once('}') else {
            rest = after;
            break;
        };
        let piece = stand_in(id);
        let raised = after.trim_start().starts_with('^');
        if is_number(id) && (raised || piece.starts_with('-')) {
            out.push_str(&format!(r"\left({piece}\right)"));
        } else {
            // Braces also keep a symbol apart from a command before it: `\cos{\theta}`.
            out.push_str(&format!("{{{piece}}}"));
        }
        rest = after;
    }
    out.push_str(rest);
    out
}

#[cfg(test)]
mod tests {
    use super::fill;

    #[test]
    fn numbers_are_bracketed_where_they_must_be() {
        let number = |_: &str| "-2.00".to_owned();
        assert_eq!(fill(r"\q{a} + 1", &number, &|_| true), r"\left(-2.00\right) + 1");
        let number = |_: &str| r"2.00\,\mathrm{m}".to_owned();
        assert_eq!(fill(r"3\q{a}^2", &number, &|_| true), r"3\left(2.00\,\mathrm{m}\right)^2");
        assert_eq!(fill(r"\cos\q{a}", &|_| r"\theta".to_owned(), &|_| false), r"\cos{\theta}");
        assert_eq!(fill(r"x \q{a", &number, &|_| true), r"x a");
    }
}
