//! One change of a text: what stood where, and what stands there now.

/// From one text to the next, and back.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Step {
    /// The byte from which on the texts differ.
    at: usize,
    before: Box<str>,
    after: Box<str>,
}

impl Step {
    /// The smallest change of one piece that makes one text the other.
    pub fn between(before: &str, after: &str) -> Self {
        let same = |(a, b): &(u8, u8)| a == b;
        let at = before.bytes().zip(after.bytes()).take_while(same).count();
        let at = before.floor_char_boundary(at);
        let (before, after) = (tail(before, at), tail(after, at));
        let rest = before.bytes().rev().zip(after.bytes().rev()).take_while(same).count();
        let rest = before.len() - before.ceil_char_boundary(before.len() - rest);
        Self { at, before: head(before, rest), after: head(after, rest) }
    }

    /// The text before.
    pub fn back(&self, after: &str) -> String {
        replaced(after, self.at, &self.after, &self.before)
    }

    /// The text after.
    pub fn forth(&self, before: &str) -> String {
        replaced(before, self.at, &self.before, &self.after)
    }

    /// How much it holds, in bytes.
    pub fn size(&self) -> usize {
        size_of::<Self>() + self.before.len() + self.after.len()
    }
}

/// A text without its first bytes.
fn tail(text: &str, bytes: usize) -> &str {
    text.get(bytes..).unwrap_or_default()
}

/// A text without its last bytes.
fn head(text: &str, bytes: usize) -> Box<str> {
    text.len().checked_sub(bytes).and_then(|end| text.get(..end)).unwrap_or_default().into()
}

/// A text with one piece of it in place of another.
fn replaced(text: &str, at: usize, old: &str, new: &str) -> String {
    let start = text.get(..at).unwrap_or_default();
    [start, new, tail(text, at + old.len())].concat()
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::Step;

    proptest! {
        #[test]
        fn it_goes_forth_and_back(before in "[abé“ ]{0,12}", after in "[abé“ ]{0,12}") {
            let step = Step::between(&before, &after);
            prop_assert_eq!(step.forth(&before), after.as_str());
            prop_assert_eq!(step.back(&after), before);
        }
    }

    #[test]
    fn it_holds_what_differs_and_no_more() {
        let step = Step::between("a = \"9 mm\" # é", "a = \"10 mm\" # é");
        assert_eq!((step.at, &*step.before, &*step.after), (5, "9", "10"));
        assert_eq!(
            Step::between("aa", "aaa"),
            Step { at: 2, before: "".into(), after: "a".into() }
        );
    }
}
