//! Small things done to words on their way to the screen.

use std::borrow::Cow;

use crate::quantity::unit::is_symbol;

/// The words with a capital first letter.
pub fn capitalised(words: &str) -> String {
    let mut letters = words.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}

/// The words with every number held to its unit, so that a line never breaks between them.
pub fn unbroken(words: &str) -> Cow<'_, str> {
    let mut held = String::new();
    let mut done = 0;
    for (place, _) in words.match_indices(' ') {
        let after = &words[place + 1..];
        let unit = after.split([' ', '\u{a0}']).next().unwrap_or(after);
        let unit = unit.trim_end_matches(['.', ',', ';', ':', ')', '?']);
        if words[..place].ends_with(|last: char| last.is_ascii_digit()) && is_symbol(unit) {
            held.push_str(&words[done..place]);
            held.push('\u{a0}');
            done = place + 1;
        }
    }
    if done == 0 {
        return Cow::Borrowed(words);
    }
    held.push_str(&words[done..]);
    Cow::Owned(held)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_hold_their_units() {
        assert_eq!(
            unbroken("2 tracks of 0.0756 m², 9 kPa."),
            "2 tracks of 0.0756\u{a0}m², 9\u{a0}kPa."
        );
        assert_eq!(unbroken("no numbers here"), "no numbers here");
    }
}
