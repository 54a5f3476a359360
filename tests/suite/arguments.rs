//! The command line without a process: whatever is typed, it ends with words and a code.

use std::path::PathBuf;

use heftwise::cli::{Next, run};
use proptest::prelude::*;

fn ask(arguments: &[String]) -> (Next, String, String) {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let all = std::iter::once("heftwise".to_owned()).chain(arguments.iter().cloned());
    let next = run(all, &mut out, &mut err);
    (next, String::from_utf8(out).unwrap(), String::from_utf8(err).unwrap())
}

fn window(arguments: &[&str]) -> Next {
    ask(&arguments.iter().map(|argument| (*argument).to_owned()).collect::<Vec<_>>()).0
}

#[test]
fn without_a_command_the_window_opens() {
    let path = |text: &str| Some(PathBuf::from(text));
    assert_eq!(window(&[]), Next::Window { build: None, lessons: None });
    assert_eq!(
        window(&["a build.toml", "--lessons", "mine"]),
        Next::Window { build: path("a build.toml"), lessons: path("mine") }
    );
    // Near to a command, but a file by its looks.
    assert_eq!(
        window(&["walk-round.toml"]),
        Next::Window { build: path("walk-round.toml"), lessons: None }
    );
}

/// Words a person might type, right and wrong, and anything else.
fn argument() -> impl Strategy<Value = String> {
    let known = prop::sample::select(vec![
        "weight",
        "mass=6.4 kg",
        "mass=0 kg",
        "gravity=0 m/s²",
        "slope=90°",
        "stop-time=0 s",
        "stop-distance=50 ± 60 mm",
        "impact-speed=-1 m/s",
        "pulse-shape=triangle",
        "ground=mudflat",
        "--in",
        "kPa",
        "--json",
        "--working",
        "--build",
        "sandpiper",
        "list",
        "rules",
    ]);
    prop_oneof![4 => known.prop_map(str::to_owned), 1 => ".*", 1 => "[a-z-]{1,20}=.*"]
}

proptest! {
    #[test]
    fn whatever_is_typed_ends_with_a_code_and_words(
        quantity in prop::sample::select(heftwise::quantity::catalogue::all().to_vec()),
        rest in prop::collection::vec(argument(), 0..8),
    ) {
        let mut arguments = vec!["reckon".to_owned(), quantity.id.name().to_owned()];
        arguments.extend(rest);
        let (next, out, err) = ask(&arguments);
        let Next::Exit(code) = next else { panic!("reckon opened a window: {arguments:?}") };
        prop_assert!(code <= 2);
        let told = if code == 0 { &out } else { &err };
        prop_assert!(!told.trim().is_empty(), "code {}", code);
        prop_assert!(!out.contains("NaN") && !out.contains("inf "), "{}", out);
    }
}
