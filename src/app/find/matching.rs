//! How like two words are: alike whatever the case and the hyphens, and forgiving a small slip.

/// The words of a text in small letters, those tied by a hyphen each alone; whose a thing is
/// (track's) is the thing itself.
pub fn words_of(text: &str) -> Vec<String> {
    let words = text.to_lowercase().replace("'s ", " ").replace("’s ", " ");
    let words = words.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty());
    words.map(str::to_owned).collect()
}

/// Joined forms of words tied by a hyphen: `walk-round` gives `walkround`.
pub fn joined(text: &str) -> impl Iterator<Item = String> {
    let text = text.to_lowercase();
    let tied: Vec<String> = text
        .split(|c: char| !c.is_alphanumeric() && c != '-')
        .filter(|tied| tied.trim_matches('-').contains('-'))
        .map(|tied| tied.replace('-', ""))
        .collect();
    tied.into_iter()
}

/// A symbol as one would type it: `F_{\mathrm{peak}}` gives `F_peak Fpeak`.
pub fn plain_symbol(tex: &str) -> String {
    let bare: String =
        tex.replace("\\mathrm", "").chars().filter(|c| !"{}\\".contains(*c)).collect();
    format!("{bare} {}", bare.replace('_', ""))
}

/// How well a word fits the one looked for, 1 at best; nothing if it does not.
///
/// The start of a word counts from two letters on, a piece of it from four. One letter wrong,
/// missing, doubled or swapped is forgiven from four letters on, two from eight.
pub fn likeness(wanted: &str, word: &str) -> Option<f32> {
    let letters = wanted.chars().count();
    if wanted == word {
        return Some(1.0);
    }
    if letters >= 2 && word.starts_with(wanted) {
        return Some(0.8);
    }
    if letters >= 4 && word.contains(wanted) {
        return Some(0.5);
    }
    let slips = match letters {
        0..=3 => return None,
        4..=7 => 1,
        _ => 2,
    };
    let longer = word.chars().count().abs_diff(letters);
    (longer <= slips && strsim::osa_distance(wanted, word) <= slips).then_some(0.4)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn case_hyphens_and_small_slips_are_forgiven() {
        assert_eq!(words_of("Walk-round, the C rate"), ["walk", "round", "the", "c", "rate"]);
        assert_eq!(joined("A Walk-round").collect::<Vec<_>>(), ["walkround"]);
        assert_eq!(words_of("  – "), [] as [&str; 0]);
        assert_eq!(likeness("sinkage", "sinkage"), Some(1.0));
        assert_eq!(likeness("sink", "sinkage"), Some(0.8));
        assert_eq!(likeness("kage", "sinkage"), Some(0.5));
        for slip in ["sinkge", "sinkagge", "snikage", "sinkige"] {
            assert_eq!(likeness(slip, "sinkage"), Some(0.4), "{slip}");
        }
        for other in ["s", "sinter", "mass"] {
            assert_eq!(likeness(other, "sinkage"), None, "{other}");
        }
    }

    #[test]
    fn a_symbol_is_found_as_it_is_typed() {
        assert_eq!(plain_symbol(r"F_{\mathrm{peak}}"), "F_peak Fpeak");
    }
}
