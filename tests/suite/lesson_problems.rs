//! What is wrong in a lesson is said with its place, and the rest still works.

use heftwise::lesson::{
    BlockKind, Calculator, Folder, Lesson, Library, Memory, Source, parse, proof,
};

const FILE: &str = "lessons/mud/lesson.md";

const FRONT: &str = "+++\nid = \"mud\"\ntitle = \"Mud\"\norder = 1\nminutes = 5\n+++\n";

fn messages(text: &str) -> Vec<String> {
    parse(text, FILE).problems.iter().map(ToString::to_string).collect()
}

/// The problems of a text after a front matter of six lines.
fn after_front(body: &str) -> Vec<String> {
    messages(&format!("{FRONT}{body}"))
}

#[test]
fn a_lesson_broken_in_many_ways_says_where() {
    let text = r#"+++
id = "mud"
titel = "Mud"
order = "first"
minutes = 5
needs = []
goals = []
uses = ["mass", "trackwidth"]
+++

Größe: [0.8](live:ground-presure) and [5](live:mass?in=kPa).

```calculator
change = ["mass", "ground-pressure"]
find = ["ground-pressure"]
freese = ["slope"]
```

```curve
find = "ground-pressure"
against = "track-width"
from = "40 kg"
limits = ["contact-area"]
```

> ```guess
> question = "How much is [that](live:weigth)?"
> kind = "choice"
> why = "Because."
> [[choice]]
> text = "Much"
> right = true
> [[choice]]
> text = "Little"
> idea = "Light things float"
> ```

```calcualtor
change = ["mass"]
```

![A track](../secret.svg)

[Old](lessn:mud) and [gone](#no-such) and <script>run()</script>.
"#;
    let lesson = parse(text, FILE);
    let found: Vec<_> = lesson.problems.iter().map(ToString::to_string).collect();
    let at = |place: &str, words: &str| format!("{FILE}:{place}: {words}");
    let expected = [
        at("1:1", "the front matter needs the field \"title\"; expected a text in quotes"),
        at(
            "3:1",
            "the front matter has no field \"titel\"; expected one of id, title, order, minutes, needs, goals, uses, grade, caution-grade; did you mean \"title\"?",
        ),
        at("4:9", "order is a text; expected a whole number"),
        at(
            "8:17",
            "unknown quantity \"trackwidth\"; expected the id of a quantity; did you mean \"track-width\"?",
        ),
        at(
            "11:14",
            "unknown quantity \"ground-presure\"; expected the id of a quantity; did you mean \"ground-pressure\"?",
        ),
        at("11:43", "\"kPa\" is no unit of mass; expected one of "),
        at(
            "14:19",
            "\"ground-pressure\" is found by a rule; expected a quantity that the reader sets",
        ),
        at(
            "16:1",
            "a calculator has no field \"freese\"; expected one of title, change, find, freeze; did you mean \"freeze\"?",
        ),
        at("22:8", "\"40 kg\" does not fit: "),
        at("23:10", "\"contact-area\" is an area; expected a pressure, as \"ground-pressure\" is"),
        at(
            "27:34",
            "unknown quantity \"weigth\"; expected the id of a quantity; did you mean \"weight\"?",
        ),
        at("33:3", "a choice needs the field \"reply\"; expected a text in quotes"),
        at("38:1", "unknown block \"calcualtor\"; expected one of calculator, curve, guess"),
        at(
            "42:12",
            "\"../secret.svg\" is not in the lesson's folder; expected the plain name of a file beside lesson.md",
        ),
        at(
            "44:7",
            "a link to \"lessn:mud\" leads nowhere; expected live:quantity-id, quantity:quantity-id, lesson:lesson-id, #heading or https://...; did you mean \"lesson:mud\"?",
        ),
        at(
            "44:29",
            "no heading \"no-such\" in this lesson; expected a heading in small letters with hyphens",
        ),
        at("44:43", "HTML is shown as text, not followed; expected Markdown alone"),
        at("44:56", "HTML is shown as text, not followed; expected Markdown alone"),
    ];
    for (found, expected) in found.iter().zip(&expected) {
        assert!(found.starts_with(expected), "\n   found {found}\nexpected {expected}");
    }
    assert_eq!(found.len(), expected.len(), "{}", found.join("\n"));
}

#[test]
fn a_broken_block_stands_in_its_place_and_the_rest_works() {
    let body = "First.\n\n```curve\nfind = \n```\n\n```calculator\nchange = [\"mass\"]\nfind = [\"ground-pressure\"]\n```\n\nLast.\n";
    let lesson = parse(&format!("{FRONT}{body}"), FILE);
    let [first, broken, calculator, last] = lesson.blocks.as_slice() else {
        panic!("{:?}", lesson.blocks)
    };
    assert!(matches!(first.kind, BlockKind::Paragraph(_)));
    let BlockKind::Broken { name, source, problems } = &broken.kind else { panic!("{broken:?}") };
    assert_eq!((name.as_str(), source.as_str(), broken.line), ("curve", "find = \n", 9));
    assert_eq!(problems, &lesson.problems);
    assert_eq!(problems[0].line, 10);
    let BlockKind::Calculator(Calculator { change, find, .. }) = &calculator.kind else {
        panic!("{calculator:?}")
    };
    assert_eq!((change[0].name(), find[0].name()), ("mass", "ground-pressure"));
    assert!(matches!(last.kind, BlockKind::Paragraph(_)));
}

#[test]
fn rules_of_each_block() {
    let one = |fence: &str, body: &str, words: &str| {
        let found = after_front(&format!("```{fence}\n{body}\n```\n"));
        assert!(found.iter().any(|found| found.contains(words)), "{words:?} not in {found:?}");
    };
    let find = "find = [\"ground-pressure\"]";
    one("calculator", find, "7:1: a calculator needs the field \"change\"");
    one("calculator", &format!("change = []\n{find}"), "8:10: change is empty");
    one("calculator", "change = [\"mass\"]\nfind = [\"slope\"]", "9:9: no rule finds \"slope\"");
    one(
        "calculator",
        &format!("change = [\"mass\", \"mass\"]\n{find}"),
        "8:19: \"mass\" stands twice",
    );
    one(
        "calculator",
        &format!(
            "change = [\"mass\", \"slope\", \"track-width\", \"contact-length\", \"gravity\"]\n{find}"
        ),
        "8:10: 5 numbers to change; expected at most 4",
    );
    one(
        "calculator",
        &format!("change = [\"mass\"]\nfreeze = [\"mass\"]\n{find}"),
        "in both change and freeze",
    );
    one("calculator", &format!("change = [1]\n{find}"), "8:11: change is a plain number");
    let curve = "find = \"ground-pressure\"\nagainst = \"track-width\"\n";
    one(
        "curve",
        &format!("{curve}from = \"90 mm\"\nto = \"40 mm\""),
        "10:8: the curve ends before it starts",
    );
    one("curve", &format!("{curve}from = \"-5 mm\""), "10:8: track width cannot be -5 mm");
    one(
        "curve",
        &format!("{curve}scale = \"logg\""),
        "10:9: unknown scale \"logg\"; expected linear or log; did you mean \"log\"?",
    );
    one(
        "curve",
        "find = \"low-end-pressure\"\nagainst = \"balance-offset\"\nscale = \"log\"",
        "a logarithmic scale has no zero",
    );
    one(
        "curve",
        &format!("{curve}family = \"mas\"\nvalues = [\"4 kg\"]"),
        "10:10: unknown family \"mas\"; expected the id of a quantity that is set, or a table of presets such as ground; did you mean \"mass\"?",
    );
    one("curve", &format!("{curve}family = \"mass\""), "10:10: a family without values");
    one("curve", &format!("{curve}values = [\"4 kg\"]"), "10:10: values without a family");
    one(
        "curve",
        &format!("{curve}family = \"mass\"\nvalues = [\"4 kg\", \"6 mm\"]"),
        "11:19: \"6 mm\" does not fit: ",
    );
    one(
        "curve",
        &format!("{curve}family = \"mass\"\nvalues = [\"4 kg\", \"4 kg\"]"),
        "11:19: \"4 kg\" stands twice",
    );
    one(
        "curve",
        &format!("{curve}family = \"weight\"\nvalues = [\"4 N\"]"),
        "10:10: \"weight\" is found by a rule",
    );
    one(
        "curve",
        &format!("{curve}family = \"track-width\"\nvalues = [\"40 mm\"]"),
        "10:10: \"track-width\" runs along the foot already; expected another quantity",
    );
    one(
        "curve",
        &format!("{curve}family = \"ground\"\nvalues = [\"mudflats\"]"),
        "11:11: unknown row \"mudflats\"; expected a row of the table ground; did you mean \"mudflat\"?",
    );
    let six = "values = [\"1 kg\", \"2 kg\", \"3 kg\", \"4 kg\", \"5 kg\", \"6 kg\"]";
    one(
        "curve",
        &format!("{curve}family = \"mass\"\n{six}"),
        "11:51: 6 members; expected at most 5",
    );
    one("side-by-side", "with = [\"bullock\"]", "7:1: a side by side needs the field \"show\"");
    one("side-by-side", "show = [\"mas\"]", "8:9: unknown quantity \"mas\"");
    one(
        "side-by-side",
        "show = [\"mass\"]\nwith = [\"bullok\"]",
        "9:9: unknown example build \"bullok\"; expected one of sandpiper, bullock, peat-barrow, dune-cart; did you mean \"bullock\"?",
    );
    one(
        "side-by-side",
        "show = [\"mass\"]\nwith = [\"bullock\", \"sandpiper\", \"dune-cart\"]",
        "9:8: 3 builds to set beside; expected at most 2",
    );
    one(
        "target",
        "make = \"ground-pressure\"\nby = \"track-width\"",
        "7:1: a target needs the field \"be\"",
    );
    let target = "make = \"ground-pressure\"\nby = \"track-width\"\nbe = ";
    one("target", &format!("{target}\"0.6 kg\""), "10:6: \"0.6 kg\" does not fit: ");
    one(
        "target",
        &format!("{target}\"0.6 kPa\"\nfrom = \"90 mm\"\nto = \"40 mm\""),
        "11:8: the search ends before it starts; expected from smaller than to",
    );
    one("target", "make = \"mass\"\nbe = \"1 kg\"\nby = \"slope\"", "8:8: no rule finds \"mass\"");
    one("hundred-grams", "rows = 0", "8:8: 0 rows; expected 1 to 100");
    one(
        "hundred-grams",
        "of = \"mass\"",
        "8:1: a hundred-grams block has no field \"of\"; expected one of title, rows",
    );
    one("levers", "of = \"low-end-presure\"", "did you mean \"low-end-pressure\"?");
    one("levers", "of = \"weight\"\nstep = \"much\"", "9:8: \"much\" is no step; expected a share");
    one("levers", "of = \"weight\"\nstep = \"0 %\"", "9:8: \"0 %\" is no step");
    let guess = "question = \"Which?\"\nwhy = \"So.\"\n";
    let choice = "[[choice]]\ntext = \"A\"\nright = true\n";
    one(
        "guess",
        &format!("{guess}kind = \"choice\"\n{choice}"),
        "7:1: a guess with 1 to choose from",
    );
    one(
        "guess",
        &format!("{guess}kind = \"choice\"\n{choice}{choice}"),
        "7:1: a guess with 2 right choices",
    );
    one(
        "guess",
        &format!("{guess}kind = \"chioce\""),
        "10:8: unknown kind \"chioce\"; expected choice, direction, number; did you mean \"choice\"?",
    );
    one(
        "guess",
        &format!("{guess}kind = \"direction\"\nanswer = \"up\"\n[reply]\nsame = \"No.\""),
        "a reply needs the field \"down\"",
    );
    one(
        "guess",
        &format!("{guess}kind = \"direction\"\nanswer = \"upp\""),
        "11:10: unknown answer \"upp\"",
    );
    let number = format!("{guess}kind = \"number\"\nquantity = \"ground-pressure\"\n");
    one(
        "guess",
        &format!("{number}answer = \"live:mass\"\ntolerance = \"5 %\""),
        "12:10: \"mass\" is a mass; expected a pressure, as \"ground-pressure\" is",
    );
    one(
        "guess",
        &format!("{number}answer = \"830 Pa\"\ntolerance = \"much\""),
        "13:13: \"much\" is no tolerance",
    );
    one(
        "guess",
        &format!(
            "{number}answer = \"830 Pa\"\ntolerance = \"5 %\"\n[[slip]]\nfactor = 2.0\nvalue = \"1 Pa\"\nidea = \"i\"\nreply = \"r\""
        ),
        "15:10: a slip with both a value and a factor",
    );
}

#[test]
fn what_markdown_would_drop_is_shown_and_said() {
    assert_eq!(
        after_front("Mud.\n\n> [tide]: https://example.org\n\n| a |\n|---|\n| b | c |\n"),
        [
            format!("{FILE}:9:3: no link uses this definition; expected a link that names it"),
            format!("{FILE}:13:1: the row has more cells than the header; expected as many cells"),
        ]
    );
    assert!(after_front("[Tide]\n\n[tide]: https://example.org\n").is_empty());
}

#[test]
fn front_matter_missing_or_without_end() {
    assert_eq!(
        messages("Only text.\n"),
        [format!(
            "{FILE}:1:1: the lesson has no front matter; expected a first line +++, then lines like: id = \"my-lesson\", then a line +++"
        )]
    );
    let lesson = parse("+++\nid = \"mud\"\n\n# Still here\n", FILE);
    assert!(lesson.problems[0].message.contains("no end"));
    assert_eq!(lesson.headings[0].title, "Still here");
    let windows = parse(&format!("\u{feff}{FRONT}\n## Mud\n").replace('\n', "\r\n"), FILE);
    assert_eq!((windows.problems.as_slice(), windows.front.title.as_str()), (&[][..], "Mud"));
    assert_eq!(windows.headings[0].line, 8);
}

fn lesson(id: &str, order: i64, needs: &str, body: &str) -> (String, String) {
    let text = format!(
        "+++\nid = \"{id}\"\ntitle = \"{id}\"\norder = {order}\nneeds = [{needs}]\n+++\n{body}\n"
    );
    (id.to_owned(), text)
}

#[test]
fn lessons_are_held_against_each_other() {
    let mut memory = Memory::default();
    memory.texts.extend([
        lesson(
            "mud",
            2,
            "\"sand\", \"pete\"",
            "[On](lesson:sandd) ![Mud](mud.svg) ![Sand](gone.svg)",
        ),
        lesson("sand", 3, "", "[Back](lesson:mud)"),
        ("peat".to_owned(), lesson("loam", 1, "", "").1),
    ]);
    memory.pictures.insert(("mud".to_owned(), "mud.svg".to_owned()), vec![1, 2]);
    let library = Library::load(memory);
    let found: Vec<_> = proof::check(&library).iter().map(ToString::to_string).collect();
    assert_eq!(
        found,
        [
            "lessons/mud/lesson.md:5:10: needs \"sand\", which does not come before it; expected a lesson with an order below 2",
            "lessons/mud/lesson.md:5:18: unknown lesson \"pete\"; expected the id of a lesson; did you mean \"peat\"?",
            "lessons/mud/lesson.md:7:6: unknown lesson \"sandd\"; expected the id of a lesson; did you mean \"sand\"?",
            "lessons/mud/lesson.md:7:44: the picture \"gone.svg\" cannot be read: entity not found; expected a file beside lesson.md",
            "lessons/peat/lesson.md:2:6: the lesson \"loam\" stands in the folder \"peat\"; expected the name of its folder; did you mean \"peat\"?",
        ]
    );
    assert_eq!(library.picture("mud", "mud.svg").unwrap(), [1, 2][..]);
    let orders: Vec<_> = library.lessons().map(|lesson: &Lesson| lesson.front.order).collect();
    assert_eq!(orders, [1, 2, 3]);
    assert_eq!(library.lesson("peat").map(|lesson| lesson.front.title.as_str()), Some("loam"));
}

#[test]
fn a_folder_is_read_and_nothing_outside_it() {
    let root = tempfile::tempdir().expect("a folder to write in");
    let mud = root.path().join("lessons/mud");
    std::fs::create_dir_all(&mud).expect("made");
    std::fs::write(root.path().join("secret.svg"), "secret").expect("written");
    std::fs::write(mud.join("mud.svg"), "mud").expect("written");
    std::fs::write(mud.join("lesson.md"), [FRONT.as_bytes(), &[0xff]].concat()).expect("written");
    let folder = Folder(root.path().join("lessons"));
    assert_eq!(folder.lessons().expect("listed"), ["mud"]);
    assert_eq!(folder.picture("mud", "mud.svg").expect("read"), &b"mud"[..]);
    for (id, file) in [("mud", "../../secret.svg"), ("..", "secret.svg"), ("mud/..", "secret.svg")]
    {
        assert!(folder.picture(id, file).is_err(), "{id} {file}");
    }
    #[cfg(unix)]
    {
        std::os::unix::fs::symlink(root.path().join("secret.svg"), mud.join("way-out.svg"))
            .expect("linked");
        assert!(folder.picture("mud", "way-out.svg").is_err());
    }
    let library = Library::load(folder);
    assert!(library.fronts().is_empty());
    assert!(library.problems[0].to_string().contains("not UTF-8 text, from byte"));
}
