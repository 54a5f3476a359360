//! Small things done to words on their way to the screen.

/// The words with a capital first letter.
pub fn capitalised(words: &str) -> String {
    let mut letters = words.chars();
    match letters.next() {
        Some(first) => first.to_uppercase().chain(letters).collect(),
        None => String::new(),
    }
}
