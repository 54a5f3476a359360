//! Blocks in which the reader does something: variants of a guess, faded examples, measures, and
//! the parts a lesson folds away.

use heftwise::lesson::{
    BlockKind, Faded, Guess, Lesson, Line, Measure, Reference, Tolerance, of_spans, parse,
};
use heftwise::quantity::AnyId;

const FRONT: &str = "+++\nid = \"mud\"\ntitle = \"Mud\"\norder = 1\nminutes = 5\n+++\n";

fn lesson(body: &str) -> Lesson {
    parse(&format!("{FRONT}{body}"), "mud.md")
}

/// The problems of one block, whose fence stands on line 7.
fn problems(fence: &str, body: &str) -> Vec<String> {
    lesson(&format!("````{fence}\n{body}\n````\n"))
        .problems
        .iter()
        .map(ToString::to_string)
        .collect()
}

fn wrong(fence: &str, body: &str, expected: &str) {
    let found = problems(fence, body);
    assert!(
        found.iter().any(|found| found.starts_with(&format!("mud.md:{expected}"))),
        "{expected:?} not in {found:?}"
    );
}

fn only(lesson: &Lesson) -> &BlockKind {
    let [block] = lesson.blocks.as_slice() else { panic!("{:?}", lesson.blocks) };
    assert!(lesson.problems.is_empty(), "{:?}", lesson.problems);
    &block.kind
}

fn guess(body: &str) -> Guess {
    let lesson = lesson(&format!("```guess\n{body}\n```\n"));
    let BlockKind::Guess(guess) = only(&lesson) else { panic!("{lesson:?}") };
    guess.clone()
}

const CHOICE: &str = "question = \"Which?\"\nkind = \"choice\"\nwhy = \"So.\"\n\
    [[choice]]\ntext = \"A\"\nright = true\n\
    [[choice]]\ntext = \"B\"\nidea = \"b\"\nreply = \"No b.\"\n\
    [[choice]]\ntext = \"C\"\nidea = \"c\"\nreply = \"No c.\"\n";

#[test]
fn another_try_asks_another_question_then_shuffles() {
    let guess = guess(&format!(
        "{CHOICE}[[variant]]\nquestion = \"And now?\"\n\
         [[variant.choice]]\ntext = \"D\"\nright = true\n\
         [[variant.choice]]\ntext = \"E\"\nidea = \"e\"\nreply = \"No e.\"\n"
    ));
    let order = |attempt| {
        let asked = guess.asked(attempt);
        let texts = asked.choices().iter().map(|(_, choice)| of_spans(&choice.text)).collect();
        (of_spans(asked.question), of_spans(asked.why), texts)
    };
    let say =
        |question: &str, texts: &str| (question.to_owned(), "So.".to_owned(), texts.to_owned());
    let tries: Vec<(String, String, String)> = (0..8).map(order).collect();
    assert_eq!(tries[0], say("Which?", "ABC"));
    assert_eq!(tries[1], say("And now?", "DE"));
    assert_eq!(tries[2], say("Which?", "BCA"));
    assert_eq!(tries[3], say("And now?", "ED"));
    assert_eq!(tries[4], say("Which?", "CAB"));
    assert_eq!(tries[6], say("Which?", "CBA"));
    assert_eq!(tries, (0..8).map(order).collect::<Vec<_>>(), "the same try, the same order");
    // A choice keeps its place in the lesson, by which it is judged.
    let asked = guess.asked(2);
    let right: Vec<usize> = asked
        .choices()
        .iter()
        .filter(|(_, choice)| choice.right)
        .map(|(place, _)| *place)
        .collect();
    assert_eq!(right, [0]);
}

#[test]
fn a_number_variant_takes_over_what_it_does_not_say() {
    let body = "question = \"How hard?\"\nkind = \"number\"\nwhy = \"So.\"\n\
        answer = \"live:ground-pressure\"\nquantity = \"ground-pressure\"\ntolerance = \"5 %\"\n\
        [[slip]]\nfactor = 2.0\nidea = \"i\"\nreply = \"r\"\n\
        [[variant]]\nquestion = \"How hard at the tail?\"\nanswer = \"live:low-end-pressure\"\n";
    let guess = guess(body);
    let heftwise::lesson::GuessKind::Number { answer, tolerance, slips, .. } = guess.asked(1).kind
    else {
        panic!()
    };
    assert!(matches!(answer, Reference::Live(id) if id.name() == "low-end-pressure"));
    assert_eq!((*tolerance, slips.len()), (Tolerance::Share(0.05), 1));
    wrong(
        "guess",
        &format!("{CHOICE}[[variant]]\nquestoin = \"And?\""),
        "23:1: a variant has no field",
    );
    wrong(
        "guess",
        &format!("{CHOICE}[[variant]]\nwhy = \"So.\""),
        "22:1: a variant needs the field \"question\"",
    );
    wrong(
        "guess",
        &body.replace("live:low-end-pressure", "live:mass"),
        "20:10: \"mass\" is a mass",
    );
}

const CHAIN: &str = "title = \"Press\"\n\
    [[step]]\nsay = \"Force: mass times gravity\"\nis = \"live:weight\"\n\
    [[step]]\nsay = \"Area\"\nis = \"live:contact-area\"\nblank = true\ntolerance = \"5 %\"\n\
    [[step]]\nsay = \"Pressure: force over area\"\nis = \"live:ground-pressure\"\nblank = true\n\
    hint = \"Newtons over square metres.\"\n";

fn chain() -> Faded {
    let lesson = lesson(&format!("```faded\n{CHAIN}```\n"));
    let BlockKind::Faded(faded) = only(&lesson) else { panic!("{lesson:?}") };
    faded.clone()
}

/// The worked example of the pressure lesson: 6.40 kg on two tracks of 90 mm by 420 mm.
fn sandpiper(id: AnyId) -> Option<f64> {
    match id.name() {
        "weight" => Some(62.8),
        "contact-area" => Some(0.0756),
        "ground-pressure" => Some(830.0),
        _ => None,
    }
}

#[test]
fn blanks_open_one_by_one_and_each_is_checked() {
    let faded = chain();
    let lines = |said: [Option<f64>; 3]| faded.lines(|place| said[place], sandpiper);
    assert_eq!(lines([None; 3]), [Line::Given(62.8), Line::Open, Line::Later]);
    assert_eq!(
        lines([None, Some(0.0378), None]),
        [Line::Given(62.8), Line::Wrong { said: 0.0378, truth: 0.0756 }, Line::Later]
    );
    let right = Line::Right { said: 0.078 };
    assert_eq!(lines([None, Some(0.078), None]), [Line::Given(62.8), right, Line::Open]);
    // 2 % where the author says nothing.
    assert_eq!(lines([None, Some(0.078), Some(845.0)])[2], Line::Right { said: 845.0 });
    let off = Line::Wrong { said: 850.0, truth: 830.0 };
    assert_eq!(lines([None, Some(0.078), Some(850.0)])[2], off);
    // A build that does not give a number stops the chain there and says so.
    let lacking = |id: AnyId| (id.name() == "weight").then_some(62.8);
    let stopped = faded.lines(|_| None, lacking);
    assert_eq!(stopped, [Line::Given(62.8), Line::Unknown, Line::Later]);
    // The numbers are the reader's: another build, another truth.
    let heavier = |id: AnyId| sandpiper(id).map(|si| 2.0 * si);
    assert_eq!(faded.lines(|_| Some(0.1512), heavier)[1], Line::Right { said: 0.1512 });
}

#[test]
fn a_faded_example_says_what_is_wrong_with_it() {
    wrong("faded", "title = \"x\"", "7:1: a faded example needs the field \"step\"");
    wrong(
        "faded",
        "[[step]]\nsay = \"F\"\nis = \"live:weight\"",
        "7:1: a faded example without a blank",
    );
    wrong(
        "faded",
        &CHAIN.replace("live:weight", "live:wieght"),
        "11:6: unknown quantity \"wieght\"",
    );
    wrong(
        "faded",
        &CHAIN.replace("live:weight", "62.8 N"),
        "9:1: a step needs the field \"quantity\"",
    );
    wrong("faded", &CHAIN.replace("5 %", "much"), "16:13: \"much\" is no tolerance");
    wrong(
        "faded",
        &CHAIN.replacen("blank = true", "blank = true\nunit = \"kg\"", 1),
        "16:8: \"kg\" is no unit of contact-area",
    );
    wrong("faded", &CHAIN.replace("hint", "hitn"), "21:1: a step has no field \"hitn\"");
    wrong(
        "faded",
        &CHAIN.replacen("\"live:weight\"", "\"live:weight\"\nhint = \"h\"", 1),
        "12:8: hint in a step that is not blank",
    );
    let fixed = CHAIN.replace("is = \"live:weight\"", "is = \"62.8 N\"\nquantity = \"weight\"");
    assert!(problems("faded", &fixed).is_empty());
}

const PRINT: &str = "what = \"Length of the print\"\nquantity = \"contact-length\"\n\
    tool = \"a steel ruler\"\nhow = \"\"\"\n1. Lay card on foam.\n2. Measure the print.\n\"\"\"\n\
    error = \"1 mm\"\nover = \"Soft ground.\"\nunder = \"A hard floor.\"\n";

fn measure(body: &str) -> Measure {
    let lesson = lesson(&format!("```measure\n{body}```\n"));
    let BlockKind::Measure(measure) = only(&lesson) else { panic!("{lesson:?}") };
    measure.clone()
}

#[test]
fn a_measure_predicts_its_own_quantity_unless_it_says_otherwise() {
    let print = measure(PRINT);
    assert!(matches!(print.predicted, Reference::Live(id) if id.name() == "contact-length"));
    assert_eq!((print.error, print.take), (Tolerance::Si(0.001), true));
    let [list] = print.how.as_slice() else { panic!("{:?}", print.how) };
    assert!(matches!(&list.kind, BlockKind::List { items, .. } if items.len() == 2));
    assert_eq!(list.line, 12, "the list starts inside the text");
    let found = measure(&PRINT.replace("contact-length", "ground-pressure").replace("1 mm", "3 %"));
    assert!(!found.take, "what a rule finds is not put into the build");
    assert_eq!(found.error.width(-800.0), 24.0);
}

#[test]
fn a_measure_says_what_is_wrong_with_it() {
    wrong("measure", &PRINT.replace("a steel ruler", ""), "10:8: tool is empty");
    wrong("measure", &PRINT.replace("over", "ovre"), "7:1: a measure needs the field \"over\"");
    wrong("measure", &PRINT.replace("1 mm", "1 kg"), "15:9: \"1 kg\" does not fit");
    wrong("measure", &format!("{PRINT}predicted = \"live:mass\""), "18:13: \"mass\" is a mass");
    wrong(
        "measure",
        &PRINT.replace("1. Lay card", "# Card"),
        "12:1: a heading inside a live block",
    );
    wrong(
        "measure",
        &PRINT.replace("1. Lay card", "[x](live:wieght)"),
        "12:5: unknown quantity \"wieght\"",
    );
    let found = PRINT.replace("contact-length", "ground-pressure").replace("1 mm", "3 %");
    wrong(
        "measure",
        &format!("{found}take = true"),
        "18:8: \"ground-pressure\" is found by a rule",
    );
}

#[test]
fn folds_and_teacher_notes_hold_markdown() {
    let text = "```deeper\nWhy $L/6$?\n\nBecause of [it](live:mass).\n```\n\n\
                ```teacher\nAsk **first**.\n\n- one\n```\n";
    let lesson = lesson(text);
    assert!(lesson.problems.is_empty(), "{:?}", lesson.problems);
    let [deeper, teacher] = lesson.blocks.as_slice() else { panic!("{:?}", lesson.blocks) };
    let BlockKind::Deeper(fold) = &deeper.kind else { panic!("{deeper:?}") };
    assert_eq!((of_spans(&fold.title), fold.blocks[0].line), ("Why L/6?".to_owned(), 10));
    assert!(matches!(&teacher.kind, BlockKind::Teacher(blocks) if blocks.len() == 2));
    assert_eq!(lesson.teacher_notes(), 1);
    wrong("deeper", "", "7:1: a fold without a title");
    wrong("deeper", "Only a title", "7:1: a block with nothing in it");
    wrong("teacher", "Ask.\n\n## Why", "10:1: a heading inside a live block");
    wrong("teacher", "Ask.\n\n```curve\nx\n```", "10:1: a live block inside another");
    wrong("techer", "Ask.", "7:1: unknown block \"techer\"");
    wrong("deeper", "Title\n\n[x](live:wieght)", "10:5: unknown quantity");
}

#[test]
fn a_run_is_read() {
    use heftwise::lesson::RunPace;
    use heftwise::quantity::channel::{self, RunKind, RunPulse};
    let read = |body: &str| {
        let lesson = lesson(&format!("```run\n{body}```\n"));
        let BlockKind::Run(run) = only(&lesson) else { panic!("{lesson:?}") };
        run.clone()
    };
    let run = read(
        "title = \"Hit\"\nkind = \"impact\"\nshow = [\"crush\", \"force\"]\nspeed = \"3 m/s\"\n\
         pulse = \"spring\"\npace = \"30 s\"\nfrom = \"1 ms\"\nto = \"9 ms\"\n",
    );
    assert_eq!((run.kind, run.title.as_deref()), (RunKind::Impact, Some("Hit")));
    assert_eq!(run.show, [&channel::CRUSH, &channel::FORCE]);
    assert_eq!((run.from, run.speed), (Some(0.001), Some(3.0)));
    approx::assert_relative_eq!(run.to.unwrap(), 0.009);
    assert_eq!((run.pulse, run.pace), (Some(RunPulse::Spring), Some(RunPace::HalfMinute)));
    let plain = read("kind = \"warm-up\"\non = \"5 min\"\noff = \"2 min\"\n");
    assert_eq!((plain.on, plain.off, plain.speed), (Some(300.0), Some(120.0), None));
    assert_eq!(plain.show, RunKind::WarmUp.channels());
}

#[test]
fn a_run_says_what_is_wrong() {
    let wrong = |body: &str, expected: &str| {
        let found = problems("run", body);
        assert!(
            found.iter().any(|found| found.contains(expected)),
            "{expected:?} not in {found:?}"
        );
    };
    wrong("title = \"x\"", "a run needs the field \"kind\"");
    wrong("kind = \"lanch\"", "8:8: unknown kind of run \"lanch\"; expected one of launch, coast");
    wrong("kind = \"lanch\"", "did you mean \"launch\"?");
    wrong("kind = \"coast\"\nsped = \"1 m/s\"", "9:1: a run has no field \"sped\"");
    wrong("kind = \"coast\"\nspeed = \"1 kg\"", "9:9: \"1 kg\" does not fit");
    wrong("kind = \"coast\"\nshow = [\"force\"]", "unknown part of this run \"force\"");
    wrong("kind = \"coast\"\nshow = []", "show is empty");
    wrong("kind = \"coast\"\nshow = [\"speed\", \"speed\"]", "stands twice in show");
    wrong(
        "kind = \"coast\"\non = \"1 s\"",
        "on says nothing about this kind of run; expected a warm-up",
    );
    wrong("kind = \"coast\"\npulse = \"spring\"", "pulse says nothing about this kind of run");
    wrong("kind = \"warm-up\"\nspeed = \"1 m/s\"", "speed says nothing about this kind of run");
    wrong("kind = \"warm-up\"\noff = \"-1 s\"", "cannot be -1 s");
    wrong("kind = \"impact\"\npulse = \"spike\"", "unknown pulse \"spike\"");
    wrong(
        "kind = \"impact\"\npace = \"fast\"",
        "unknown pace \"fast\"; expected one of true, 10 s, 30 s",
    );
    wrong("kind = \"impact\"\nfrom = \"2 s\"\nto = \"1 s\"", "the run ends before it starts");
}
