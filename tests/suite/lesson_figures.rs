//! The numbers that a text prints, held against the rules and looked for in the text.
//!
//! By hand: 6.40 kg from 0.35 m lands at the root of 2 x 9.80665 x 0.35, 2.620 m/s; 25 mm stop it with
//! 878.7 N, and the weight of 62.76 N comes on top: 941.4 N. From 20 mm it is 1161.1 N.

use heftwise::lesson::{Library, Memory, page, parse, plain_text, proof, sections, word_count};

const FRONT: &str = "+++\nid = \"mud\"\ntitle = \"Mud\"\norder = 1\n+++\n";

/// The problems of a lesson and of its teacher's page, each with its place.
fn found_in(lesson: &str, page: &str) -> Vec<String> {
    let mut memory = Memory::default();
    memory.texts.insert("mud".to_owned(), format!("{FRONT}{lesson}"));
    memory.teachers.insert("mud".to_owned(), page.to_owned());
    let problems = proof::check(&Library::load(memory));
    problems
        .iter()
        .map(|problem| problem.to_string().trim_start_matches("lessons/mud/").to_owned())
        .collect()
}

/// The problems of a text and a block that follows it, the block's first line being line 9.
fn found(text: &str, block: &str) -> Vec<String> {
    found_in(&format!("{text}\n\n```figures\n{block}\n```\n"), "")
}

#[track_caller]
fn right(text: &str, block: &str) {
    assert_eq!(found(text, block), [""; 0], "{text}\n{block}");
}

#[track_caller]
fn one(text: &str, block: &str, words: &str) {
    let found = found(text, block);
    let place = format!("lesson.md:{words}");
    assert!(found.len() == 1 && found[0].starts_with(&place), "\n{place:?} is not\n{found:#?}");
}

const LANDS: &str = "on = \"sandpiper\"\n[found]\n";

#[test]
fn a_printed_number_is_right_to_its_last_digit() {
    for (text, printed) in [
        ("It is 941 N.", "mean-impact-force = \"941 N\""),
        ("It is 0.941 kN.", "mean-impact-force = \"0.941 kN\""),
        ("It is 0.9 kN.", "mean-impact-force = \"0.9 kN\""),
        ("It is 941.4 N.", "mean-impact-force = \"941.4 N\""),
        ("It is about 900 N.", "mean-impact-force = \"about 900 N\""),
        ("941 N or 0.941 kN.", "mean-impact-force = [\"941 N\", \"0.941 kN\"]"),
        ("It is 6.40 kg.", "mass = \"6.40 kg\""),
    ] {
        right(text, &format!("{LANDS}{printed}"));
    }
    for (text, printed, said) in [
        (
            "It is 942 N.",
            "\"942 N\"",
            "942 N as mean-impact-force: the rules find another; expected 941 N",
        ),
        (
            "It is 0.942 kN.",
            "\"0.942 kN\"",
            "0.942 kN as mean-impact-force: the rules find another; expected 0.941 kN",
        ),
        (
            "It is 940.0 N.",
            "\"940.0 N\"",
            "940.0 N as mean-impact-force: the rules find another; expected 941.4 N",
        ),
        (
            "It is about 800 N.",
            "\"about 800 N\"",
            "800 N as mean-impact-force: the rules find another; expected 941 N",
        ),
    ] {
        one(text, &format!("{LANDS}mean-impact-force = {printed}"), &format!("11:21: {said}"));
    }
    // In a list, the place is the number's own.
    let both = format!("{LANDS}mean-impact-force = [\"941 N\", \"0.942 kN\"]");
    one("941 N or 0.942 kN.", &both, "11:31: 0.942 kN as mean-impact-force");
    one("It is 6.41 kg.", &format!("{LANDS}mass = \"6.41 kg\""), "11:8: 6.41 kg as mass");
}

#[test]
fn given_numbers_overrule_the_build_or_stand_alone() {
    let given = "[given]\nstop-distance = \"20 mm\"\n[found]\nmean-impact-force = ";
    right("It is 1161 N.", &format!("on = \"sandpiper\"\n{given}\"1161 N\""));
    one(
        "It is 1161 N.",
        &format!("{given}\"1161 N\""),
        "12:21: 1161 N as mean-impact-force: the rules find none; expected numbers it follows from: mass, ",
    );
    let alone = "[given]\nmass = \"6.40 kg\"\nimpact-speed = \"2.62 m/s\"\nstop-distance = \"25 mm\"\napproach-angle = \"0°\"\n[found]\n";
    right("It is 879 N.", &format!("{alone}mean-impact-force = \"879 N\""));
    // The speed takes the place of the height that the build gives.
    let faster = "on = \"sandpiper\"\n[given]\nimpact-speed = \"5.24 m/s\"\n[found]\n";
    right("From 1.40 m.", &format!("{faster}drop-height = \"1.40 m\""));
}

#[test]
fn the_ends_of_a_range_come_from_the_spreads() {
    // 200 kg weigh 1961.3 N; 1 kg more or less is 9.8 N.
    let block = "[given]\nmass = \"200 ± 1 kg\"\n[range]\nweight = ";
    right("From 1.95 to\u{a0}1.97 kN.", &format!("{block}[\"1.95 kN\", \"1.97 kN\"]"));
    let high = format!("{block}[\"1.95 kN\", \"1.98 kN\"]");
    one(
        "From 1.95 to 1.98 kN.",
        &high,
        "12:22: 1.98 kN as the high end of weight: the rules find another; expected 1.97 kN",
    );
    let low = format!("{block}[\"1.94 kN\", \"1.97 kN\"]");
    one("From 1.94 to 1.97 kN.", &low, "12:11: 1.94 kN as the low end of weight");
    one(
        "1.97 kN",
        &format!("{block}[\"1.97 kN\"]"),
        "12:10: a range of 1 ends; expected the low and the high end",
    );
    // The build's own spread is ± 5 mm; a number that overrules it has its own, or none.
    let build = "[range]\nstop-distance = [\"20 mm\", \"30 mm\"]";
    right("20 to 30 mm.", &format!("on = \"sandpiper\"\n{build}"));
    let sure = format!("on = \"sandpiper\"\n[given]\nstop-distance = \"25 mm\"\n{build}");
    let found = found("20 to 30 mm.", &sure);
    assert_eq!(found.len(), 2, "{found:?}");
    assert!(
        found[0]
            .contains("as the low end of stop-distance: the rules find none; expected a spread")
    );
}

#[test]
fn a_number_stands_in_the_text_from_heading_to_heading() {
    let block = format!("{LANDS}mean-impact-force = \"941 N\"");
    let nowhere = "11:21: the text prints no \"941 N\" before the first heading; expected the number as it is printed there, or a block without it";
    for text in ["It is much.", "It is 0.941 kN.", "It is 941 kN.", "It is 1941 N."] {
        one(text, &block, nowhere);
    }
    for text in [
        "It is **941** N.",
        "It is 941\u{202f}N.",
        "- one\n- 941 N",
        "| F (N) |\n|---|\n| 941 |",
        "![A bar, 941 N.](bar.svg)",
        "> 941\n> N",
        "$F = 941$",
        "[941 N](live:mean-impact-force)",
        "```teacher\nAbout 941 N.\n```",
        "```deeper\nWhy\n\nAs 941 N.\n```",
        "```guess\nquestion = \"What?\"\nkind = \"direction\"\nanswer = \"up\"\nwhy = \"So.\"\n[reply]\nsame = \"No.\"\ndown = \"It is 941 N.\"\n```",
        "```guess\nquestion = \"What?\"\nkind = \"number\"\nquantity = \"mass\"\nanswer = \"live:mass\"\ntolerance = \"5 %\"\nwhy = \"It is 941 N.\"\n```",
        "```faded\n[[step]]\nsay = \"It.\"\nis = \"live:mass\"\nblank = true\nhint = \"From 941 N.\"\n```",
        "```measure\nwhat = \"F\"\nquantity = \"mass\"\ntool = \"a scale\"\nerror = \"1 g\"\nhow = \"At 941 N.\"\nover = \"A.\"\nunder = \"B.\"\n```",
    ] {
        let mut found = found(text, &block);
        found.retain(|problem| !problem.contains("the picture \"bar.svg\" cannot be read"));
        assert!(found.is_empty(), "{text}: {found:?}");
    }
    // A block does not print what another says, and the next heading ends the section.
    let figures = format!("```figures\n{block}\n```\n");
    let lesson =
        format!("## One\n\nIt is 941 N.\n\n## Two\n\n{figures}\n{figures}\n## Three\n\n941 N\n");
    let found = found_in(&lesson, "");
    assert_eq!(found.len(), 2, "{found:?}");
    assert!(found[0].contains("prints no \"941 N\" under the heading \"Two\""), "{found:?}");
    // Above its number is as good as below.
    assert!(found_in(&format!("## One\n\n{figures}\nIt is 941 N.\n"), "").is_empty());
}

#[test]
fn what_a_block_says_is_known_and_has_its_units() {
    let text = "It is 941 N.";
    for (block, words) in [
        ("on = \"sandpiper\"", "8:1: a figures block needs the field \"found\""),
        ("[found]\nmean-impact-force = \"941 N\"", "8:1: a figures block needs the field \"on\""),
        (
            "[given]\n[found]\nmean-impact-force = \"941 N\"",
            "8:1: a figures block needs the field \"on\"",
        ),
        (
            "on = \"sandpipper\"\n[found]\nmean-impact-force = \"941 N\"",
            "9:6: unknown example build \"sandpipper\"",
        ),
        (
            "on = \"sandpiper\"\n[found]\nmean-impact-forse = \"941 N\"",
            "11:1: unknown quantity \"mean-impact-forse\"; expected the id of a quantity; did you mean \"mean-impact-force\"?",
        ),
        (
            "on = \"sandpiper\"\n[found]\nmean-impact-force = \"941 kg\"",
            "11:21: \"941 kg\" is no printed number of mean-impact-force; expected a force in digits with its unit",
        ),
        (
            "on = \"sandpiper\"\n[found]\nmean-impact-force = 941",
            "11:21: mean-impact-force is a plain number",
        ),
        (
            "on = \"sandpiper\"\nfind = 1\n[found]\nmean-impact-force = \"941 N\"",
            "10:1: a figures block has no field \"find\"",
        ),
        (
            "on = \"sandpiper\"\n[given]\nmas = \"1 kg\"\n[found]\nmean-impact-force = \"941 N\"",
            "11:1: unknown quantity \"mas\"",
        ),
        ("on = \"sandpiper\"\n[found\n", "10:"),
    ] {
        one(text, block, words);
    }
}

#[test]
fn readers_never_see_it() {
    let text = format!("{FRONT}## One\n\nIt is 941 N.\n");
    for block in [format!("{LANDS}mean-impact-force = \"941 N\""), "nonsense".to_owned()] {
        let with = format!("{text}\n```figures\n{block}\n```\n");
        let (with, without) = (parse(&with, "mud"), parse(&text, "mud"));
        assert_eq!(with, without, "nothing of it is left");
        assert_eq!(plain_text(&with), "Mud\nOne\nIt is 941 N.\n");
        assert_eq!(word_count(&with), word_count(&without));
        assert_eq!(sections(&with).len(), 2);
        let with = page(&format!("It is.\n\n```figures\n{block}\n```\n"), "teacher.md");
        assert_eq!(with, page("It is.\n", "teacher.md"));
    }
}

#[test]
fn the_page_of_a_teacher_is_held_to_the_rules_too() {
    let page = |number: &str| {
        format!(
            "# Teaching\n\nIt is {number}.\n\n```figures\n{LANDS}mean-impact-force = \"{number}\"\n```\n"
        )
    };
    assert!(found_in("Mud.\n", &page("941 N")).is_empty());
    assert_eq!(
        found_in("Mud.\n", &page("942 N")),
        ["teacher.md:8:21: 942 N as mean-impact-force: the rules find another; expected 941 N"]
    );
    // So are its live numbers.
    let live = found_in("Mud.\n", "It is [942 Pa](live:ground-pressure).\n");
    assert!(live[0].starts_with("teacher.md:1:16: no example build has 942 Pa"), "{live:?}");
}
