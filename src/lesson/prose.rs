//! Running text as it is read: its sentences, how long they are, and how hard.
//!
//! The grade is the Flesch-Kincaid grade level, the years of schooling a text asks for: J. P. Kincaid,
//! R. P. Fishburne, R. L. Rogers and B. S. Chissom, "Derivation of New Readability Formulas for Navy
//! Enlisted Personnel", Research Branch Report 8-75, Naval Technical Training, Millington (1975).
//!
//! Counted is what is read as sentences: not headings, tables, code and formulas, and nothing that
//! does not end as a sentence does (a title, a label, a choice). A number with its unit is one word
//! of one syllable, as it is taken in at a glance. Syllables come from the spelling.

use super::place::{Fault, Origin, Report};
use super::syllables;
use crate::quantity::unit;

/// More words than this in one sentence are too many.
const LONGEST: usize = 30;

/// Fewer words than this say little of a text; R. Flesch, "A New Readability Yardstick", Journal of
/// Applied Psychology 32 (1948), takes samples of 100.
const SAMPLE: usize = 100;

/// Stands for a formula or code, which is passed over.
const PASSED_OVER: char = '\u{fffc}';

/// The running text of one paragraph.
#[derive(Debug, Clone, Default)]
pub(super) struct Prose {
    text: String,
    origin: Origin,
}

/// One sentence, or a piece of one.
#[derive(Debug, Clone, PartialEq)]
struct Sentence {
    /// The place in the file where it starts.
    at: usize,
    /// Its words, formulas and numbers.
    length: usize,
    /// Its words and numbers.
    words: usize,
    /// The syllables of its words and numbers.
    syllables: usize,
    /// Whether it ends as a sentence does.
    whole: bool,
}

impl Prose {
    /// Adds words that stand at a place of the file.
    pub(super) fn push(&mut self, at: usize, words: &str) {
        self.origin.push(self.text.len(), at);
        self.text.push_str(words);
    }

    /// Adds something that is no words.
    pub(super) fn pass_over(&mut self, at: usize) {
        self.push(at, PASSED_OVER.encode_utf8(&mut [0; 4]));
    }

    /// The places and names of marks of footnotes that were read as words.
    pub(super) fn loose_marks(&self) -> impl Iterator<Item = (usize, &str)> {
        self.text.match_indices("[^").filter_map(|(at, mark)| {
            let name = self.text.get(at + mark.len()..)?.split_once(']')?.0;
            (!name.is_empty() && !name.contains(char::is_whitespace))
                .then(|| (self.origin.file(at), name))
        })
    }

    fn sentences(&self) -> Vec<Sentence> {
        let mut found = Vec::new();
        let mut one: Option<Sentence> = None;
        let mut after_number = false;
        let mut tokens = tokens(&self.text).peekable();
        while let Some((at, token)) = tokens.next() {
            let sentence = one.get_or_insert_with(|| Sentence {
                at: self.origin.file(at),
                length: 0,
                words: 0,
                syllables: 0,
                whole: false,
            });
            let unit = after_number;
            after_number = sentence.take(token, after_number);
            if ends(token, tokens.peek().map(|(_, next)| *next), unit) {
                sentence.whole = true;
                after_number = false;
                found.extend(one.take());
            }
        }
        found.extend(one);
        found
    }
}

impl Sentence {
    /// Counts a token; says whether a unit may follow it.
    fn take(&mut self, token: &str, after_number: bool) -> bool {
        let bare = token.trim_matches(|c: char| !c.is_alphanumeric() && !"°%".contains(c));
        if token.contains(PASSED_OVER) {
            self.length += 1;
            return false;
        }
        if bare.starts_with(|c: char| c.is_ascii_digit()) {
            self.count(1);
            return true;
        }
        let is_unit = unit::is_symbol(bare);
        if bare.is_empty() || (after_number && is_unit) {
            return false;
        }
        let initials = bare.len() > 1 && bare.len() < 5 && bare.chars().all(char::is_uppercase);
        self.count(if is_unit && !bare.chars().all(char::is_alphabetic) {
            1
        } else if initials {
            bare.chars().count()
        } else {
            let parts = bare.split(|c: char| !c.is_alphabetic() && c != '’' && c != '\'');
            parts.filter(|part| !part.is_empty()).map(syllables::of_word).sum::<usize>().max(1)
        });
        false
    }

    fn count(&mut self, syllables: usize) {
        self.length += 1;
        self.words += 1;
        self.syllables += syllables;
    }
}

/// What stands between spaces, with its place.
fn tokens(text: &str) -> impl Iterator<Item = (usize, &str)> {
    let start = text.as_ptr() as usize;
    text.split_whitespace().map(move |token| (token.as_ptr() as usize - start, token))
}

/// Whether a sentence ends with a token; behind a number, a capital is a unit and not an initial.
fn ends(token: &str, next: Option<&str>, after_number: bool) -> bool {
    let bare = token.trim_end_matches(['"', '\'', '”', '’', ')', ']', '»']);
    let Some(next) = next else { return bare.ends_with(['.', '!', '?', '…', ':']) };
    let initial = !after_number && bare.len() == 2 && bare.starts_with(|c: char| c.is_uppercase());
    let goes_on = next.trim_start_matches(['"', '“', '‘', '(']).starts_with(char::is_lowercase);
    bare.ends_with(['.', '!', '?', '…']) && !initial && !goes_on
}

/// Words, sentences and syllables of a text.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
struct Count {
    sentences: usize,
    words: usize,
    syllables: usize,
}

impl Count {
    fn of<'s>(sentences: impl Iterator<Item = &'s Sentence>) -> Self {
        sentences.filter(|sentence| sentence.whole).fold(Self::default(), |sum, sentence| Self {
            sentences: sum.sentences + 1,
            words: sum.words + sentence.words,
            syllables: sum.syllables + sentence.syllables,
        })
    }

    /// The Flesch-Kincaid grade; nothing without a word.
    fn grade(self) -> Option<f64> {
        let (sentences, words) = (self.sentences as f64, self.words as f64);
        (self.words > 0)
            .then(|| 0.39 * words / sentences + 11.8 * self.syllables as f64 / words - 15.59)
    }
}

/// The grades a text is to keep to.
#[derive(Debug, Clone, Copy)]
pub(super) struct Grades {
    /// Of the text.
    pub(super) text: f64,
    /// Of its cautions and warnings, which are read in haste.
    pub(super) cautions: f64,
}

impl Default for Grades {
    fn default() -> Self {
        Self { text: 8.0, cautions: 6.0 }
    }
}

/// Reports sentences that are too long, and text that is too hard: the lesson's as a whole where
/// there is enough of it, and that of its cautions together.
pub(super) fn check(report: &mut Report, grades: Grades) {
    let prose = report.take_prose();
    let of = |urgent: bool| -> Vec<Sentence> {
        let chosen = prose.iter().filter(|(is_urgent, _)| *is_urgent == urgent);
        chosen.flat_map(|(_, prose)| prose.sentences()).collect()
    };
    let (text, cautions) = (of(false), of(true));
    for sentence in text.iter().chain(&cautions).filter(|sentence| sentence.length > LONGEST) {
        let fault = Fault::new(
            format!("a sentence of {} words", sentence.length),
            format!("{LONGEST} at most: make two of it"),
        );
        report.flaw(sentence.at, fault);
    }
    if Count::of(text.iter()).words >= SAMPLE {
        check_grade(report, "the text reads", &text, grades.text);
    }
    check_grade(report, "the cautions read", &cautions, grades.cautions);
}

fn check_grade(report: &mut Report, what: &str, sentences: &[Sentence], limit: f64) {
    let hardest = sentences
        .iter()
        .filter(|sentence| sentence.whole)
        .filter_map(|sentence| Some((sentence, Count::of([sentence].into_iter()).grade()?)))
        .rev()
        .max_by(|a, b| a.1.total_cmp(&b.1));
    let grade = Count::of(sentences.iter()).grade();
    if let (Some((hardest, _)), Some(grade)) = (hardest, grade.filter(|grade| *grade > limit)) {
        let fault = Fault::new(
            format!(
                "{what} at grade {grade:.1} (Flesch-Kincaid); the hardest sentence is this one"
            ),
            format!("grade {limit} at most: shorter sentences, shorter words"),
        );
        report.flaw(hardest.at, fault);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sentences(text: &str) -> Vec<(usize, usize, usize, bool)> {
        let mut prose = Prose::default();
        prose.push(0, text);
        let count = |s: &Sentence| (s.length, s.words, s.syllables, s.whole);
        prose.sentences().iter().map(count).collect()
    }

    #[test]
    fn sentences_end_where_they_end() {
        assert_eq!(
            sentences("It is 6.40 kg heavy. Is it? “Yes!” they say. See M. Mud, 1999"),
            [(4, 4, 5, true), (2, 2, 2, true), (3, 3, 3, true), (4, 4, 4, false)]
        );
        assert_eq!(sentences("6.40 kg × 9.81 m/s² = 62.8 N."), [(3, 3, 3, true)]);
        assert_eq!(sentences("It is 51.5 N. The pull")[0], (3, 3, 3, true));
    }

    #[test]
    fn formulas_count_for_the_length_alone() {
        let mut prose = Prose::default();
        prose.push(10, "Then ");
        prose.pass_over(15);
        prose.push(20, " falls. So does ");
        prose.pass_over(40);
        prose.push(44, ".");
        let found = prose.sentences();
        assert_eq!((found[0].length, found[0].words, found[0].at), (3, 2, 10));
        assert_eq!((found[1].length, found[1].words, found[1].at), (3, 2, 28));
    }

    /// The opening of Lincoln's Gettysburg address, counted by hand: 30 words, 1 sentence, 48
    /// syllables: 0.39 x 30 + 11.8 x 48 / 30 - 15.59 = 14.99.
    #[test]
    fn the_grade_of_a_known_text() {
        let text = "Four score and seven years ago our fathers brought forth on this continent, a \
                    new nation, conceived in Liberty, and dedicated to the proposition that all men \
                    are created equal.";
        let mut prose = Prose::default();
        prose.push(0, text);
        let count = Count::of(prose.sentences().iter());
        assert_eq!((count.words, count.sentences), (30, 1));
        let grade = count.grade().unwrap();
        assert!((grade - 14.99).abs() < 0.005, "{grade} {count:?}");
    }
}
