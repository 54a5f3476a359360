//! The numbers that a text prints, held against the rules and looked for in the text.
//!
//! By hand: 6.40 kg from 0.35 m lands at the root of 2 x 9.80665 x 0.35, 2.620 m/s; 25 mm stop it with
//! 878.7 N, and the weight of 62.76 N comes on top: 941.4 N. From 20 mm it is 1161.1 N.
//!
//! Of the parts: 120 kg at 300 mm and 90 kg at 580 mm have their middle at 88.2 / 210 = 420 mm up; a part
//! of 3.1 kg of 14.91 kg that goes 160 mm forward takes the balance point 33.3 mm along, from 52.0 to
//! 18.7 mm behind the middle; two bags of 1.5 kg, 280 mm before and behind the balance point, add
//! 3 x 0.28 x 0.28 = 0.235 kg m2 to a yaw inertia of 0.299.

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
        ("It is 940 N.", "mean-impact-force = \"about 940 N\""),
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
        (
            "It is 950 N.",
            "\"about 950 N\"",
            "950 N as mean-impact-force: the rules find another; expected 941 N",
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
fn a_number_below_zero_may_be_printed_without_its_sign() {
    let printed = |id: &str, number: &str| format!("{LANDS}{id} = \"unsigned {number}\"");
    right("It is 22 mm behind.", &printed("balance-offset", "22 mm"));
    one(
        "It is 23 mm behind.",
        &printed("balance-offset", "23 mm"),
        "11:18: 23 mm as balance-offset: the rules find another; expected 22 mm",
    );
    // Nothing else may lose its sign.
    one(
        "It is 941 N.",
        &printed("mean-impact-force", "941 N"),
        "11:21: 941 N as mean-impact-force: the rules find another; expected 941 N without \"unsigned\": it is not below zero",
    );
    one(
        "It is 22 mm.",
        &format!("{LANDS}balance-offset = \"22 mm\""),
        "11:18: 22 mm as balance-offset",
    );
    one(
        "It is −22 mm.",
        &printed("balance-offset", "−22 mm"),
        "11:18: \"unsigned −22 mm\" is no printed number of balance-offset",
    );
    one(
        "It is −22 mm.",
        &printed("balance-offset", "22 mm"),
        "11:18: the text prints no \"22 mm\"",
    );
}

#[test]
fn numbers_follow_from_a_changed_parts_list() {
    let battery = "on = \"bullock\"\n[[parts]]\nname = \"battery\"\n";
    let moved = format!("{battery}at = [\"60 mm\", \"0 mm\", \"100 mm\"]\n[found]\n");
    right("18.7 mm", &format!("{moved}balance-offset = \"unsigned 18.7 mm\""));
    one(
        "52.0 mm",
        &format!("{moved}balance-offset = \"unsigned 52.0 mm\""),
        "14:18: 52.0 mm as balance-offset: the rules find another; expected 18.7 mm",
    );
    right("12.8 kg", &format!("{battery}mass = \"1 kg\"\n[found]\nmass = \"12.8 kg\""));
    // What is given overrules the parts.
    let given = "[given]\nmass = \"20 kg\"\n[found]\nmass = \"20 kg\"";
    right("20 kg", &format!("{battery}mass = \"1 kg\"\n{given}"));
    let bags = "on = \"bullock\"\nparts = [{ name = \"a\", mass = \"1.5 kg\", at = [\"228 mm\", \"0 mm\", \"0 mm\"], new = true }, { name = \"b\", mass = \"1.5 kg\", at = [\"-332 mm\", \"0 mm\", \"0 mm\"], new = true }]\n[found]\n";
    right("0.534 kg·m²", &format!("{bags}yaw-inertia = \"0.534 kg·m²\""));
    one(
        "0.299 kg·m²",
        &format!("{bags}yaw-inertia = \"0.299 kg·m²\""),
        "12:15: 0.299 kg·m² as yaw-inertia: the rules find another; expected 0.534 kg·m²",
    );
}

#[test]
fn some_of_the_parts_or_parts_of_its_own_count() {
    let tracks = "[\"left track and idlers\", \"right track and idlers\"]\n[found]\nmass = ";
    right("1.56 kg", &format!("on = \"sandpiper\"\nonly = {tracks}\"1.56 kg\""));
    right("4.84 kg", &format!("on = \"sandpiper\"\nwithout = {tracks}\"4.84 kg\""));
    one(
        "1.56 kg",
        &format!("on = \"sandpiper\"\nwithout = {tracks}\"1.56 kg\""),
        "12:8: 1.56 kg as mass: the rules find another; expected 4.84 kg",
    );
    // What the build states of them counts no longer: the barrow states its mass and its height.
    for on in ["", "on = \"peat-barrow\"\n"] {
        let parts = "parts = [{ name = \"barrow\", mass = \"120 kg\", at = [\"10 mm\", \"0 mm\", \"300 mm\"], new = true }, { name = \"turf\", mass = \"90 kg\", at = [\"-95 mm\", \"0 mm\", \"790 mm\"], new = true }]\n";
        right("510 mm", &format!("{on}{parts}[found]\ncg-height = \"510 mm\""));
    }
}

#[test]
fn what_is_wrong_with_a_changed_part_is_told() {
    for (part, words) in [
        (
            "name = \"batery\"\nmass = \"1 kg\"",
            "11:8: unknown part \"batery\"; expected a part of the build, or new = true for one more; did you mean \"battery\"?",
        ),
        ("mass = \"1 kg\"", "10:1: a part needs the field \"name\""),
        (
            "name = \"battery\"",
            "10:1: a part needs the field \"at\"; expected another place or another mass of the part",
        ),
        ("name = \"sand\"\nnew = true", "10:1: a part needs the field \"mass\""),
        (
            "name = \"battery\"\nmass = \"1 kg\"\nnew = true",
            "11:8: there is a part \"battery\" already; expected another name, or no new = true",
        ),
        (
            "name = \"battery\"\nat = [\"1 mm\", \"2 mm\"]",
            "12:6: a place of 2 lengths; expected three: [\"forward\", \"to the left\", \"up\"]",
        ),
        ("name = \"battery\"\nmass = \"much\"", "12:8: Part 6, \"battery\": "),
        ("name = \"battery\"\nat = [\"1 mm\", \"2 kg\", \"3 mm\"]", "12:6: Part 6, \"battery\": "),
        (
            "name = \"battery\"\nmas = \"1 kg\"\nmass = \"1 kg\"",
            "12:1: a part has no field \"mas\"; expected one of name, mass, at, new; did you mean \"mass\"?",
        ),
    ] {
        let block = format!("on = \"sandpiper\"\n[[parts]]\n{part}\n[found]\nweight = \"62.8 N\"");
        one("62.8 N", &block, words);
    }
    for (line, words) in [
        ("only = [\"chasis\"]", "10:9: unknown part \"chasis\""),
        ("without = [\"rake\"]", "10:12: unknown part \"rake\""),
        ("without = \"chassis\"", "10:11: without is a text; expected a list"),
    ] {
        one("62.8 N", &format!("on = \"sandpiper\"\n{line}\n[found]\nweight = \"62.8 N\""), words);
    }
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
