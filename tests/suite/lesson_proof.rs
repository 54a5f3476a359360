//! What proofreading finds beyond the grammar: useless numbers, hard text, dead marks, wrong answers.

use heftwise::lesson::{BlockKind, Library, Memory, parse, proof};

const FRONT: &str = "+++\nid = \"mud\"\ntitle = \"Mud\"\norder = 1\n+++\n";

/// The problems of a text after a front matter of five lines, all checks made.
fn found(body: &str) -> Vec<String> {
    found_in(&format!("{FRONT}{body}"))
}

fn found_in(text: &str) -> Vec<String> {
    let mut memory = Memory::default();
    memory.texts.insert("mud".to_owned(), text.to_owned());
    let problems = proof::check(&Library::load(memory));
    let short = |problem: String| problem.trim_start_matches("lessons/mud/lesson.md:").to_owned();
    problems.iter().map(|problem| short(problem.to_string())).collect()
}

#[track_caller]
fn one(body: &str, words: &str) {
    let found = found(body);
    assert!(found.len() == 1 && found[0].starts_with(words), "\n{words:?} is not\n{found:#?}");
}

#[test]
fn a_number_that_bears_on_nothing_found_is_reported_and_the_block_still_works() {
    let calculator = "```calculator\nchange = [\"mass\", \"wire-gauge\"]\nfind = [\"ground-pressure\"]\nfreeze = [\"slope\", \"restitution\"]\n```\n";
    assert_eq!(
        found(calculator),
        [
            "7:19: \"wire-gauge\" in change bears on nothing that is found here; expected a number that ground-pressure depends on",
            "9:20: \"restitution\" in freeze bears on nothing that is found here; expected a number that ground-pressure depends on",
        ]
    );
    let lesson = parse(&format!("{FRONT}{calculator}"), "mud");
    assert!(matches!(lesson.blocks[0].kind, BlockKind::Calculator(_)));
    one(
        "```curve\nfind = \"ground-pressure\"\nagainst = \"drop-height\"\n```\n",
        "8:11: \"drop-height\" in against bears on nothing",
    );
    one(
        "```target\nmake = \"ground-pressure\"\nbe = \"1 kPa\"\nby = \"drop-height\"\n```\n",
        "9:6: \"drop-height\" in by bears on nothing",
    );
    // By way of other rules: mass to weight to force to pressure to margin.
    assert!(found("```curve\nfind = \"low-end-margin\"\nagainst = \"mass\"\n```\n").is_empty());
    // By way of a pair: the height stands for the speed at touch.
    assert!(
        found("```curve\nfind = \"mean-impact-force\"\nagainst = \"drop-height\"\n```\n")
            .is_empty()
    );
}

#[test]
fn a_long_sentence_is_found_where_it_starts() {
    let words = |count: usize| vec!["mud"; count].join(" ");
    let body = format!("Mud is wet.\nThe {}. So it is.\n", words(30));
    one(&body, "7:1: a sentence of 31 words; expected 30 at most: make two of it");
    assert!(found(&format!("The {}. So it is.\n", words(29))).is_empty());
    // In a text of a block, and in a caution.
    let body = format!(
        "> [!CAUTION]\n> Stop. The {}.\n\n```guess\nquestion = \"Why? The {}.\"\nkind = \"direction\"\nanswer = \"up\"\nwhy = \"So.\"\n[reply]\nsame = \"No.\"\ndown = \"No.\"\n```\n",
        words(30),
        words(30)
    );
    let found = found(&body);
    assert_eq!(found.len(), 2, "{found:?}");
    assert!(found[0].starts_with("7:9: ") && found[1].starts_with("10:18: "), "{found:?}");
    // Formulas and numbers count, each as one; signs do not.
    let sum = "1.0 kg × $g$ = 9.81 N and ".repeat(8);
    assert!(super::lesson_proof::found(&format!("It is {sum}so.\n"))[0].contains("of 35 words"));
}

/// A paragraph of a hundred words and more, each of `syllables`, ten to the sentence.
fn paragraph(word: &str) -> String {
    let first = word[..1].to_uppercase() + &word[1..];
    format!("{first} {}. ", [word; 9].join(" ")).repeat(11)
}

#[test]
fn hard_text_is_found_and_the_author_sets_the_limit() {
    // 113 words, 223 syllables, 12 sentences: 0.39 x 113 / 12 + 11.8 x 223 / 113 - 15.59 = 11.4.
    one(
        &format!("Mud is wet.\n\n{}\n", paragraph("water")),
        "8:1: the text reads at grade 11.4 (Flesch-Kincaid); the hardest sentence is this one; expected grade 8 at most",
    );
    assert!(found(&paragraph("mud")).is_empty());
    assert!(found("Mechanisation necessitates organisational transformation.\n").is_empty());
    let front = FRONT.replace("order = 1\n", "order = 1\ngrade = 12\n");
    assert!(found_in(&format!("{front}{}", paragraph("water"))).is_empty());
    // Four words, eight syllables. Cautions keep to a grade of their own, however short.
    let caution = "> [!CAUTION]\n> Disconnect the battery first.\n";
    one(caution, "7:3: the cautions read at grade 9.6 (Flesch-Kincaid)");
    assert!(found(&caution.replace("CAUTION", "NOTE")).is_empty());
    let front = FRONT.replace("order = 1\n", "order = 1\ncaution-grade = 10\n");
    assert!(found_in(&format!("{front}{caution}")).is_empty());
    let front = FRONT.replace("order = 1\n", "order = 1\ngrade = 0\n");
    assert_eq!(found_in(&front), ["5:9: grade 0; expected a grade of 1 to 18"]);
}

#[test]
fn what_is_no_prose_is_not_graded() {
    let hard = "Antidisestablishmentarianism";
    let long = vec![hard; 120].join(" ");
    for body in [
        format!("## {long}\n"),
        format!("```\n{long}.\n```\n"),
        format!("| {long}. |\n|---|\n"),
        format!("$$ \\text{{{long}.}} $$\n"),
        format!("- {}\n", vec![hard; 20].join("\n- ")),
    ] {
        assert!(found(&body).is_empty(), "{:?}", found(&body));
    }
}

#[test]
fn dead_marks_pictures_and_addresses() {
    one("Mud[^tide] is wet.\n", "6:4: no footnote \"tide\" stands here");
    one("Mud.\n\n[^tide]: Wet.\n", "8:1: no mark leads to the footnote \"tide\"");
    assert!(found("Mud[^tide].\n\n[^tide]: Wet.\n").is_empty());
    for picture in ["![](a.svg)", "![ ](a.svg)", "![][a]\n\n[a]: a.svg"] {
        let found = found(&format!("{picture}\n"));
        assert!(found.iter().any(|f| f.starts_with("6:1: the picture has no words")), "{found:?}");
    }
    for address in [
        "https:/example.org",
        "https://",
        "https://example",
        "https://example..org",
        "https://exa_mple.org",
        "https://example.org:port/",
        "https://example.org:99999/",
        "<https://example.org/a b>",
        "mailto:shed",
        "mailto:@example.org",
    ] {
        let found = found(&format!("[Mud]({address})\n"));
        assert!(found.len() == 1 && found[0].contains("is no address"), "{address}: {found:?}");
    }
    for address in [
        "https://example.org",
        "http://192.0.2.1:8080/a?b=c#d",
        "https://en.example.org/wiki/Mud_(soil)",
        "mailto:shed@example.org",
    ] {
        assert!(found(&format!("[Mud]({address})\n")).is_empty(), "{address}");
    }
}

/// A guess at a number with an answer of the author's.
fn number(answer: &str, rest: &str) -> String {
    format!(
        "```guess\nquestion = \"How much?\"\nkind = \"number\"\nwhy = \"So.\"\nquantity = \"ground-pressure\"\ntolerance = \"1 %\"\nanswer = \"{answer}\"\n{rest}```\n"
    )
}

#[test]
fn a_number_is_held_against_the_rules() {
    // 6.4 kg x 9.80665 m/s² over 2 x 90 mm x 420 mm is 830 Pa; Bullock, by hand, 1.99 kPa.
    assert!(found(&number("830 Pa", "on = \"sandpiper\"\n")).is_empty());
    assert!(found(&number("1.99 kPa", "on = \"bullock\"\n")).is_empty());
    one(
        &number("850 Pa", "on = \"sandpiper\"\n"),
        "12:10: 850 Pa as ground-pressure: the rules find another; expected 830 Pa",
    );
    one(&number("830 Pa", ""), "12:10: 830 Pa as ground-pressure: nothing says what it is true of");
    let misspelt = found(&number("830 Pa", "on = \"sandpipper\"\n"));
    assert_eq!(
        misspelt[1],
        "13:6: unknown example build \"sandpipper\"; expected one of sandpiper, bullock, peat-barrow, dune-cart; did you mean \"sandpiper\"?"
    );
    let given = "[given]\nmass = \"10 kg\"\ntrack-count = \"2\"\ntrack-width = \"100 mm\"\n";
    let all = format!("{given}contact-length = \"500 mm\"\n");
    assert!(found(&number("981 Pa", &all)).is_empty());
    one(&number("490 Pa", &all), "12:10: 490 Pa as ground-pressure: the rules find another");
    one(&number("981 Pa", given), "12:10: 981 Pa as ground-pressure: the rules find none");
    // Given numbers overrule those of the build: twice the mass, twice the pressure.
    let twice = "on = \"sandpiper\"\n[given]\nmass = \"12.8 kg\"\n";
    assert!(found(&number("1.66 kPa", twice)).is_empty());
    let misspelt = found(&number("1 kPa", "[given]\nmas = \"1 kg\"\n"));
    assert!(misspelt[1].starts_with("14:1: unknown quantity \"mas\""), "{misspelt:?}");
}

fn direction(answer: &str, rest: &str) -> String {
    let replies = ["up", "same", "down"].iter().filter(|way| **way != answer);
    let replies: String = replies.map(|way| format!("{way} = \"No.\"\n")).collect();
    format!(
        "```guess\nquestion = \"Which way?\"\nkind = \"direction\"\nwhy = \"So.\"\nanswer = \"{answer}\"\n{rest}[reply]\n{replies}```\n"
    )
}

#[test]
fn a_direction_is_held_against_the_rules() {
    let wider = "moves = \"track-width\"\nfind = \"ground-pressure\"\n";
    assert!(found(&direction("down", wider)).is_empty());
    one(
        &direction("up", wider),
        "10:10: the answer is up, but on sandpiper the rules say down; expected down",
    );
    assert!(found(&direction("up", &format!("{wider}by = \"down\"\n"))).is_empty());
    let level = "moves = \"cg-height\"\nfind = \"ground-pressure\"\n";
    assert!(found(&direction("same", level)).is_empty());
    // Sandpiper leans back and Bullock too: away from zero is further back.
    let out = "moves = \"balance-offset\"\nby = \"out\"\nfind = \"low-end-pressure\"\n";
    assert!(found(&direction("up", out)).is_empty());
    one(
        &direction("up", "moves = \"track-width\"\n"),
        "6:1: a guess needs the field \"find\"; expected a quantity, as there is \"moves\"",
    );
    one(&direction("up", "by = \"out\"\n"), "6:1: a guess needs the field \"moves\"");
    // Without them there is nothing to check.
    assert!(found(&direction("up", "")).is_empty());
}

#[test]
fn the_words_of_a_live_number_are_true_of_an_example_build() {
    for words in ["830 Pa", "0.83 kPa", "about 0.8 kPa", "1.99 kPa", "so much"] {
        let link = format!("It is [{words}](live:ground-pressure).\n");
        assert!(found(&link).is_empty(), "{words}: {:?}", found(&link));
    }
    one(
        "It is [900 Pa](live:ground-pressure).\n",
        "6:16: no example build has 900 Pa as ground-pressure; expected 830 Pa (sandpiper) or 1.99 kPa (bullock)",
    );
}

#[test]
fn choices_with_live_numbers_differ() {
    let choices = |wrong: &str| {
        format!(
            "```guess\nquestion = \"How much?\"\nkind = \"choice\"\nwhy = \"So.\"\n[[choice]]\ntext = \"[830 Pa](live:ground-pressure)\"\nright = true\n[[choice]]\ntext = \"[a lot](live:{wrong})\"\nidea = \"No\"\nreply = \"No.\"\n```\n"
        )
    };
    assert!(found(&choices("low-end-pressure")).is_empty());
    one(&choices("ground-pressure"), "6:1: a right and a wrong choice both show");
}
