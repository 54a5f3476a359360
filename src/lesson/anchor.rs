//! Names made from words: of headings, of questions.

use std::collections::HashMap;

/// The longest name, in characters.
const LONGEST: usize = 60;

/// Gives out names, each once.
#[derive(Default)]
pub(super) struct Anchors {
    /// How often each name was asked for.
    asked: HashMap<String, usize>,
}

impl Anchors {
    /// A name from words: `Will it sink?` is `will-it-sink`, the second one `will-it-sink-2`.
    pub(super) fn name(&mut self, words: &str) -> String {
        let plain = hyphenated(words);
        let mut name = plain.clone();
        loop {
            let asked = self.asked.entry(plain.clone()).or_default();
            *asked += 1;
            if *asked > 1 {
                name = format!("{plain}-{asked}");
            }
            if name == plain || !self.asked.contains_key(&name) {
                break;
            }
        }
        if name != plain {
            self.asked.insert(name.clone(), 1);
        }
        name
    }
}

fn hyphenated(words: &str) -> String {
    let mut name = String::new();
    for c in words.chars().flat_map(char::to_lowercase) {
        if c.is_alphanumeric() {
            name.push(c);
        } else if !name.ends_with('-') && !name.is_empty() {
            name.push('-');
        }
        if name.chars().count() >= LONGEST {
            break;
        }
    }
    let name = name.trim_end_matches('-');
    if name.is_empty() { "part".to_owned() } else { name.to_owned() }
}
