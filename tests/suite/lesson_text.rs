//! Markdown becomes blocks, and no word of it is lost. Rules of Markdown: CommonMark 0.31.2.

use heftwise::lesson::{
    AlertKind, Alignment, BlockKind, Curve, Direction, GuessKind, Reference, SlipValue, Span,
    Target, Tolerance, of_spans, parse, plain_text,
};
use proptest::prelude::*;

fn blocks(body: &str) -> Vec<BlockKind> {
    let lesson = parse(body, "lesson.md");
    lesson.blocks.into_iter().map(|block| block.kind).collect()
}

#[test]
fn tables_alerts_footnotes_and_formulas() {
    let text = "| a | b |\n|:--|--:|\n| 1 | $x$ |\n\n> [!CAUTION]\n> Ice.\n\nAt rest[^n] it is $$p = 1$$ there.\n\n[^n]: A note.\n";
    let found = blocks(text);
    let [table, alert, before, formula, after, note] = found.as_slice() else {
        panic!("{found:?}")
    };
    let BlockKind::Table { alignments, header, rows } = table else { panic!("{table:?}") };
    assert_eq!(alignments, &[Alignment::Left, Alignment::Right]);
    assert_eq!((of_spans(&header[0]), &rows[0][1]), ("a".into(), &vec![Span::Formula("x".into())]));
    let BlockKind::Alert { kind: AlertKind::Caution, blocks } = alert else { panic!("{alert:?}") };
    assert_eq!(blocks[0].line, 6);
    let BlockKind::Paragraph(spans) = before else { panic!("{before:?}") };
    assert!(spans.contains(&Span::FootnoteRef("n".into())));
    assert_eq!(formula, &BlockKind::Formula("p = 1".into()));
    let BlockKind::Paragraph(spans) = after else { panic!("{after:?}") };
    assert_eq!(of_spans(spans).trim(), "there.");
    let BlockKind::Footnote { name, blocks } = note else { panic!("{note:?}") };
    assert_eq!((name.as_str(), blocks.len()), ("n", 1));
}

#[test]
fn lists_links_styles_and_pictures() {
    let found = blocks(
        "3. one\n4. two\n   - **deep** `c`\n\n![A track](t.svg)\n\n[0.8 kPa](live:ground-pressure?in=kPa) [i](lesson:impact) [p](quantity:mass) [w](https://example.org)\n",
    );
    let [list, picture, links] = found.as_slice() else { panic!("{found:?}") };
    let BlockKind::List { start: Some(3), items } = list else { panic!("{list:?}") };
    assert_eq!((items.len(), items[1].len(), items[1][1].line), (2, 2, 3));
    assert_eq!(picture, &BlockKind::Picture { file: "t.svg".into(), alt: "A track".into() });
    let BlockKind::Paragraph(spans) = links else { panic!("{links:?}") };
    let targets: Vec<_> = spans
        .iter()
        .filter_map(|span| match span {
            Span::Link { to, .. } => Some(to),
            _ => None,
        })
        .collect();
    let [Target::Live { id, unit }, Target::Lesson(lesson), Target::Quantity(mass), Target::Web(_)] =
        targets.as_slice()
    else {
        panic!("{targets:?}")
    };
    assert_eq!((id.name(), unit.as_deref()), ("ground-pressure", Some("kPa")));
    assert_eq!((lesson.as_str(), mass.name()), ("impact", "mass"));
}

#[test]
fn headings_have_anchors_of_their_own() {
    let lesson =
        parse("# Will *it* sink?\n\n## Again\n\n## Again\n\n[up](#again-2)\n", "lesson.md");
    let found: Vec<_> =
        lesson.headings.iter().map(|h| (h.level, h.anchor.as_str(), h.line)).collect();
    assert_eq!(found, [(1, "will-it-sink", 1), (2, "again", 3), (2, "again-2", 5)]);
    assert_eq!(lesson.problems.len(), 1, "only the front matter is missing");
}

#[test]
fn live_blocks_hold_si_numbers() {
    let found = blocks(
        "```curve\nfind = \"ground-pressure\"\nagainst = \"track-width\"\nfrom = \"40 mm\"\nto = \"0.16 m\"\nscale = \"log\"\nlimits = [\"holding-pressure\"]\n```\n",
    );
    let [BlockKind::Curve(Curve { from: Some(from), to: Some(to), log: true, limits, .. })] =
        found.as_slice()
    else {
        panic!("{found:?}")
    };
    assert!((from - 0.04).abs() < 1e-12 && (to - 0.16).abs() < 1e-12);
    assert_eq!(limits[0].name(), "holding-pressure");

    let text = "+++\nid = \"mud\"\n+++\n```guess\nquestion = \"How *hard*?\"\nkind = \"number\"\nanswer = \"0.83 kPa\"\nquantity = \"ground-pressure\"\ntolerance = \"15 %\"\nwhy = \"So.\"\n[[slip]]\nvalue = \"live:low-end-pressure\"\nidea = \"Worst for mean\"\nreply = \"That is the end.\"\n[[slip]]\nfactor = 2\nidea = \"One track\"\nreply = \"Two.\"\n```\n";
    let lesson = parse(text, "lesson.md");
    let [block] = lesson.blocks.as_slice() else { panic!("{lesson:?}") };
    let BlockKind::Guess(guess) = &block.kind else { panic!("{block:?}") };
    assert_eq!(guess.key, "mud/how-hard");
    let GuessKind::Number { answer: Reference::Si(answer), tolerance, slips, .. } = &guess.kind
    else {
        panic!("{guess:?}")
    };
    assert!((answer - 830.0).abs() < 1e-9);
    assert_eq!(*tolerance, Tolerance::Share(0.15));
    assert!(matches!(slips[0].value, SlipValue::Is(Reference::Live(_))));
    assert_eq!(slips[1].value, SlipValue::Times(2.0));
}

#[test]
fn a_direction_has_a_reply_for_each_wrong_answer() {
    let found = blocks(
        "```guess\nquestion = \"Q\"\nkind = \"direction\"\nanswer = \"down\"\nwhy = \"W\"\n[reply]\nup = \"U\"\nsame = \"S\"\n```\n",
    );
    let [BlockKind::Guess(guess)] = found.as_slice() else { panic!("{found:?}") };
    let GuessKind::Direction { answer: Direction::Down, replies } = &guess.kind else {
        panic!("{guess:?}")
    };
    let ways: Vec<_> = replies.iter().map(|(way, _)| *way).collect();
    assert_eq!(ways, [Direction::Up, Direction::Same]);
}

#[test]
fn other_languages_are_plain_code() {
    for language in ["", "rust", "toml", "curry", "c", "text calculator"] {
        let found = blocks(&format!("```{language}\nx = 1\n```\n"));
        let expected = BlockKind::Code { language: language.into(), text: "x = 1\n".into() };
        assert_eq!(found, [expected]);
    }
}

/// Deep or long input is read in good time and without running out of stack.
#[test]
fn depth_and_size_have_no_limit_that_hurts() {
    for piece in
        [">", "> ", "[", "![", "*", "_a_", "- ", "1. ", "`", "$", "{", "<", "|", "[^a]", "(", "~"]
    {
        let text = format!("{}deep", piece.repeat(10_000));
        let lesson = parse(&text, "lesson.md");
        assert!(plain_text(&lesson).contains("deep"), "{piece:?}");
    }
    let steps: String = (0..2_000).map(|n| format!("{}- x\n", "  ".repeat(n))).collect();
    let _ = parse(&steps, "lesson.md");
    let links = "[a](live:nothing) ".repeat(60_000);
    assert!(links.len() > 1_000_000);
    let lesson = parse(&links, "lesson.md");
    // The links, and the front matter that is lacking.
    assert_eq!(lesson.problems.len(), 60_001);
    assert_eq!(lesson.problems[60_000].column, 59_999 * 18 + 5);
    let prose =
        "Mud holds, or not.\n\n## Again\n\n| a | b |\n|---|---|\n| c | d |\n\n".repeat(18_000);
    assert!(prose.len() > 1_000_000);
    assert_eq!(parse(&prose, "lesson.md").headings.len(), 18_000);
}

/// Pieces of Markdown around words, well formed or not.
fn markdown() -> impl Strategy<Value = (Vec<String>, String)> {
    let word = "q[a-z]{5}z";
    let around = prop::sample::select(vec![
        "@ ",
        "@\n",
        "@\n\n",
        "# @\n",
        "*@* ",
        "**@ ",
        "`@` ",
        "> @\n",
        "> > @\n",
        "- @\n",
        "  - @\n",
        "1. @\n",
        "    @\n",
        "```\n@\n```\n",
        "```@\n",
        "```guess\n@\n```\n",
        "```calculator\nx = \"@\"\n",
        "```measure\nhow = \"@\"\n```\n",
        "```deeper\n@\n@\n```\n",
        "```teacher\n# @\n@\n```\n",
        "[@](live:x) ",
        "[@](https://x.org \"@\") ",
        "[@]: @\n",
        "[@] ",
        "![@](a.svg) ",
        "![@](../a)\n",
        "<b>@</b> ",
        "<div>\n@\n",
        "<!-- @ -->\n",
        "$@$ ",
        "$$@$$ ",
        "| @ | @ |\n|---|---|\n| @ | b | @ |\n",
        "[^@] ",
        "[^@]: @\n",
        "~~@~~ ",
        "&amp;@ ",
        "\\@",
        "> [!CAUTION]\n> @\n",
        "+++\n@\n",
        "---\n",
        "===\n",
        "@  \n",
    ]);
    prop::collection::vec((around, prop::collection::vec(word, 5)), 1..12).prop_map(|pieces| {
        let mut words = Vec::new();
        let mut text = String::from("x\n");
        for (around, names) in pieces {
            let mut names = names.into_iter().cycle();
            for c in around.chars() {
                match c {
                    '@' => {
                        let name = names.next().expect("a cycle");
                        text.push_str(&name);
                        words.push(name);
                    }
                    c => text.push(c),
                }
            }
        }
        (words, text)
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]

    #[test]
    fn no_word_is_lost((words, text) in markdown()) {
        let lesson = parse(&text, "lesson.md");
        let mut kept = plain_text(&lesson);
        kept.push_str(&format!("{:?}", lesson.blocks));
        for word in words {
            prop_assert!(kept.contains(&word), "{word} lost from\n{text}\n{:?}", lesson.blocks);
        }
    }

    #[test]
    fn any_text_is_read_and_places_lie_in_the_file(text in "\\PC{0,40}(\n\\PC{0,40}){0,8}") {
        let lesson = parse(&text, "lesson.md");
        let lines = text.split('\n').count();
        for problem in &lesson.problems {
            prop_assert!((1..=lines).contains(&problem.line) && problem.column >= 1);
        }
    }
}
