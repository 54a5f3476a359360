//! How many syllables a word has, as English spelling tells it.

/// Words whose spelling misleads the count.
const ODD: &[(&str, usize)] = &[
    ("anyone", 3),
    ("area", 3),
    ("areas", 3),
    ("create", 2),
    ("created", 3),
    ("creates", 2),
    ("every", 3),
    ("everyone", 4),
    ("everything", 4),
    ("everywhere", 4),
    ("idea", 3),
    ("ideas", 3),
    ("linear", 3),
    ("manual", 3),
    ("science", 2),
    ("someone", 2),
    ("something", 2),
    ("sometimes", 2),
    ("somewhere", 2),
];

/// Endings that begin with a sounded e or follow a silent one.
const SILENT_BEFORE: &[&str] = &["ly", "fully", "ment", "ments", "less", "ness", "ful", "ty"];

/// The syllables of a word of letters, at least one.
///
/// One for each run of vowels (a, e, i, o, u, and y but at the start), less those that are not
/// sounded (a last e but after a consonant and l or r, the e of -es and -ed where no hiss or t, d
/// stands before it), more for pairs that part (ia, io but in -tion, iu, eo, and some endings). The
/// words this misses are in a short table. Held against the CMU Pronouncing Dictionary by a test.
pub(super) fn of_word(word: &str) -> usize {
    let word: String =
        word.chars().filter(|c| c.is_alphabetic()).collect::<String>().to_lowercase();
    if let Some((_, syllables)) = ODD.iter().find(|(odd, _)| *odd == word) {
        return *syllables;
    }
    let letters: Vec<char> = word.chars().collect();
    let runs = runs(&letters) + parted(&word);
    runs.saturating_sub(silent(&word, &letters)).max(1)
}

fn is_vowel(letters: &[char], place: usize) -> bool {
    match letters.get(place) {
        Some('a' | 'e' | 'i' | 'o' | 'u' | 'é' | 'è' | 'ö' | 'ü' | 'ä') => {
            // The u of qu is a consonant.
            !(letters[place] == 'u' && place > 0 && letters[place - 1] == 'q')
        }
        Some('y') => place > 0 && !is_vowel_letter(letters.get(place + 1)),
        _ => false,
    }
}

fn is_vowel_letter(letter: Option<&char>) -> bool {
    matches!(letter, Some('a' | 'e' | 'i' | 'o' | 'u'))
}

/// Runs of vowels.
fn runs(letters: &[char]) -> usize {
    let starts = |place: &usize| {
        is_vowel(letters, *place) && (*place == 0 || !is_vowel(letters, *place - 1))
    };
    (0..letters.len()).filter(starts).count()
}

/// Pairs of vowels that are two syllables.
fn parted(word: &str) -> usize {
    let count = |pairs: &[&str]| pairs.iter().map(|pair| word.matches(pair).count()).sum::<usize>();
    let one = count(&["cial", "tial", "tion", "sion", "cious", "lion", "eop"]);
    let at_end = |ends: &[&str]| usize::from(ends.iter().any(|end| word.ends_with(end)));
    count(&["ia", "io", "iu", "eo", "uou"]).saturating_sub(one)
        + at_end(&["ying", "eing", "oing", "uing", "ier", "iest"])
}

/// Vowels that are written but not sounded.
fn silent(word: &str, letters: &[char]) -> usize {
    let consonant = |from_end: usize| {
        letters.len().checked_sub(from_end).is_some_and(|place| !is_vowel(letters, place))
    };
    let stem = SILENT_BEFORE
        .iter()
        .find_map(|end| word.strip_suffix(end).filter(|stem| stem.ends_with('e')))
        .unwrap_or_default();
    let inside = usize::from(stem.len() > 2 && stem.ends_with('e') && !stem.ends_with("ee"));
    let at_end = if word.ends_with('e') {
        let le = (word.ends_with("le") || word.ends_with("re")) && consonant(3);
        consonant(2) && !le
    } else if let Some(stem) = word.strip_suffix("es") {
        let hiss = ["s", "x", "z", "ch", "sh", "c", "g"].iter().any(|end| stem.ends_with(end));
        let le = stem.ends_with(['l', 'r']) && consonant(4);
        consonant(3) && !hiss && !le
    } else if let Some(stem) = word.strip_suffix("ed") {
        consonant(3) && !stem.ends_with(['t', 'd'])
    } else {
        false
    };
    inside + usize::from(at_end)
}

#[cfg(test)]
mod tests {
    use super::of_word;

    /// `tests/golden/syllables.py`: the lessons' words in the CMU Pronouncing Dictionary.
    #[test]
    fn words_are_counted_as_a_dictionary_counts_them() {
        let table = include_str!("../../tests/golden/syllables.csv");
        let rows: Vec<(&str, usize)> = table
            .lines()
            .filter(|line| !line.starts_with('"'))
            .map(|line| line.split_once(',').map(|(word, n)| (word, n.parse().unwrap())).unwrap())
            .collect();
        let missed: Vec<String> = rows
            .iter()
            .filter(|(word, syllables)| of_word(word) != *syllables)
            .map(|(word, syllables)| format!("{word} {} not {syllables}", of_word(word)))
            .collect();
        let (told, counted) =
            rows.iter().fold((0, 0), |(a, b), (word, n)| (a + n, b + of_word(word)));
        assert!(rows.len() > 500, "{}", rows.len());
        assert!(missed.len() * 50 < rows.len(), "{} of {}: {missed:?}", missed.len(), rows.len());
        assert!((told as f64 / counted as f64 - 1.0).abs() < 0.005, "{told} {counted}");
    }
}
