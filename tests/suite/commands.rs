//! The commands as a terminal sees them: the real program, its words and its exit codes.

use std::path::{Path, PathBuf};

use assert_cmd::Command;
use serde_json::Value;

fn heftwise(arguments: &[&str]) -> (i32, String, String) {
    let output = Command::cargo_bin("heftwise")
        .unwrap()
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .args(arguments)
        .output()
        .unwrap();
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code().unwrap(), text(output.stdout), text(output.stderr))
}

pub fn ends_with(code: i32, arguments: &[&str]) -> String {
    let (ended, out, err) = heftwise(arguments);
    assert_eq!(ended, code, "{arguments:?}\n{out}\n{err}");
    assert!(!err.contains("panicked"), "{err}");
    if code == 0 { out } else { err }
}

pub fn json(arguments: &[&str]) -> Value {
    let (_, out, err) = heftwise(arguments);
    serde_json::from_str(&out).unwrap_or_else(|error| panic!("{error}\n{out}\n{err}"))
}

/// A build in a folder of its own, gone with the returned guard.
fn build(text: &str) -> (tempfile::TempDir, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a build.toml");
    std::fs::write(&path, text).unwrap();
    (folder, path)
}

fn text(path: &Path) -> &str {
    path.to_str().unwrap()
}

const PRESSURE: [&str; 7] = [
    "reckon",
    "ground-pressure",
    "mass=6.4 kg",
    "track-count=2",
    "track-width=90 mm",
    "contact-length=420 mm",
    "slope=0 deg",
];

/// Weight over contact area, by hand: 6.4 kg · 9.80665 m/s² / (2 · 90 mm · 420 mm) = 830.2 Pa.
#[test]
fn ground_pressure_by_hand() {
    let out = ends_with(0, &[&PRESSURE[..], &["--in", "kPa"]].concat());
    assert_eq!(out.lines().next(), Some("ground pressure (mean) = 0.830 kPa"));
    assert!(out.contains("assumed: gravity 9.81 m/s²"), "{out}");
    assert!(!out.contains("slope 0"), "a number that was given is not assumed: {out}");
}

/// Momentum over time and energy over distance, by hand: 3 kg · 10 m/s / 10 ms, and
/// 3 kg · (10 m/s)² / 2 / 50 mm; both are 3 kN.
#[test]
fn mean_impact_force_from_time_or_distance() {
    for stop in ["stop-time=10 ms", "stop-distance=50 mm"] {
        let out = ends_with(
            0,
            &["reckon", "mean-impact-force", "mass=3 kg", "impact-speed=36 km/h", stop],
        );
        assert!(out.starts_with("impact force (mean) = 3.00 kN\n"), "{stop}: {out}");
    }
}

#[test]
pub fn json_is_in_si_units() {
    let answer = json(&[&PRESSURE[..], &["--in", "psi", "--json"]].concat());
    assert_eq!(answer["quantity"], "ground-pressure");
    assert!((answer["si"].as_f64().unwrap() - 830.19).abs() < 0.01, "{answer}");
    assert_eq!(answer["si_unit"], "Pa");
    // 1 psi = 6894.757 Pa (NIST SP 811, appendix B.8).
    assert_eq!(answer["shown"], "0.120 psi");
    assert_eq!(answer["origin"], "found");
    assert_eq!(answer["low"], Value::Null);
    assert_eq!(answer["assumed"][0]["quantity"], "gravity");
}

#[test]
pub fn json_angles_are_radians() {
    let answer = json(&["reckon", "slope", "slope=45 deg", "--json"]);
    assert_eq!(answer["si_unit"], "rad");
    assert!((answer["si"].as_f64().unwrap() - std::f64::consts::FRAC_PI_4).abs() < 1e-12);
}

/// First order: 10 % on the mass alone is 10 % on the weight.
#[test]
fn a_spread_becomes_a_range() {
    let answer = json(&["reckon", "weight", "mass=10 ± 1 kg", "--json"]);
    let end = |name: &str| answer[name].as_f64().unwrap();
    assert!((end("low") - 9.0 * 9.80665).abs() < 0.01, "{answer}");
    assert!((end("high") - 11.0 * 9.80665).abs() < 0.01, "{answer}");
    let out = ends_with(0, &["reckon", "weight", "mass=10 ± 1 kg"]);
    assert!(out.contains("range: 88.3 to 108 N"), "{out}");
}

#[test]
fn what_is_lacking_is_said() {
    let err = ends_with(1, &["reckon", "mean-impact-force", "mass=3 kg", "impact-speed=10 m/s"]);
    assert!(err.contains("also give: stop time or stop distance"), "{err}");
    let (code, out, _) =
        heftwise(&["reckon", "mean-impact-force", "impact-speed=10 m/s", "--json"]);
    let answer: Value = serde_json::from_str(&out).unwrap();
    assert_eq!(code, 1);
    assert_eq!(answer["missing"], serde_json::json!([["mass"], ["stop-time", "stop-distance"]]));
}

#[test]
fn what_cannot_be_meant_is_said() {
    let err = ends_with(1, &["reckon", "weight", "mass=-3 kg"]);
    assert!(err.contains("mass must be more than 0 kg"), "{err}");
    let answer = json(&["reckon", "weight", "mass=0 kg", "--json"]);
    assert!(answer["invalid"].as_str().unwrap().contains("mass"), "{answer}");
}

#[test]
fn a_usage_error_ends_with_2_and_says_how_to_mend_it() {
    let cases: &[(&[&str], &str)] = &[
        (&["reckon", "ground-presure", "mass=3 kg"], "\"ground-pressure\""),
        (&["reckon", "weight", "mas=3 kg"], "\"mass\""),
        (&["reckon", "weight", "mass"], "name=value"),
        (&["reckon", "weight", "mass=3"], "mass=\"3\""),
        (&["reckon", "weight", "mass=3 mm"], "mass=\"3 mm\""),
        (&["reckon", "weight", "mass=3 kg", "mass=4 kg"], "twice"),
        (&["reckon", "weight", "mass=3 kg", "--in", "kPa"], "kPa"),
        (&["reckon", "peak-impact-force", "pulse-shape=triangel"], "\"triangle\""),
        (&["reckon"], "QUANTITY"),
        (&["reckn", "weight", "mass=3 kg"], "\"reckon\""),
        (&["list", "lesons"], "lessons"),
        (&["walk-round"], "BUILD"),
        (&["--no-such-thing"], "--no-such-thing"),
    ];
    for (arguments, words) in cases {
        let err = ends_with(2, arguments);
        assert!(err.contains(words), "{arguments:?}: {err}");
    }
}

#[test]
fn hostile_arguments_get_words() {
    let long = "9".repeat(100_000) + " kg";
    for value in ["", "nan kg", "inf kg", "1e400 kg", "٣ kg", "1/0 kg", "\u{202e}3 kg", &long] {
        ends_with(2, &["reckon", "weight", &format!("mass={value}")]);
    }
    for name in ["", "=", "mass==3", "\\q{mass}=1", "../../etc/passwd=1", "💥=1"] {
        ends_with(2, &["reckon", "weight", name]);
    }
    let (code, out, err) = heftwise(&["reckon", "weight", "mass=1e300 kg", "gravity=1e300 m/s²"]);
    assert_eq!((code, out.as_str()), (1, ""), "{err}");
}

#[cfg(unix)]
#[test]
fn an_argument_that_is_no_text_is_a_usage_error() {
    use std::os::unix::ffi::OsStrExt;
    let bytes = std::ffi::OsStr::from_bytes(b"mass=\xff kg");
    let output =
        Command::cargo_bin("heftwise").unwrap().args(["reckon", "weight"]).arg(bytes).output();
    assert_eq!(output.unwrap().status.code(), Some(2));
}

#[test]
fn named_numbers_overrule_the_build() {
    let (_guard, path) = build(
        "format = 1\nname = \"Test bed\"\n[machine]\nmass = \"5 ± 1 kg\"\n\
         [impact]\ndrop-height = \"2 m\"\nstop-distance = \"50 mm\"\n",
    );
    let with = |more: &[&str]| {
        let first = ["reckon", "mean-impact-force", "--build", text(&path), "--json"];
        json(&[&first[..], more].concat())
    };
    // The build's mass carries a spread, the one named does not.
    assert_ne!(with(&[])["low"], Value::Null);
    let named = with(&["mass=3 kg", "impact-speed=36 km/h"]);
    assert_eq!(named["low"], Value::Null);
    assert!((named["si"].as_f64().unwrap() - 3000.0).abs() < 1e-6, "{named}");
    // Speed and drop height together would be a contradiction: the build's height is out of it.
    assert!(!named["cautions"].to_string().contains("drop height"), "{named}");
    let both = with(&["impact-speed=36 km/h", "drop-height=2 m"]);
    assert!(both["cautions"].to_string().contains("drop height"), "{both}");
}

#[test]
fn a_row_of_a_table_gives_its_numbers_unless_one_is_named() {
    let peak = |more: &[&str]| {
        let first =
            ["reckon", "peak-impact-force", "stopping-force=1 kN", "weight-share=0 N", "--json"];
        json(&[&first[..], more].concat())["si"].as_f64().unwrap()
    };
    // By geometry, the peak of a triangle is twice its mean.
    assert!((peak(&["pulse-shape=triangle"]) - 2000.0).abs() < 1.0);
    assert!((peak(&["pulse-shape=triangle", "pulse-factor=1.5"]) - 1500.0).abs() < 1.0);
}

#[test]
fn the_working_names_its_rule_and_source() {
    let out = ends_with(0, &[&PRESSURE[..], &["--working"]].concat());
    for part in ["6.40 kg · 9.81 m/s²", "= 62.8 N", "holds:", "source:", "Before that:"] {
        assert!(out.contains(part), "{part}\n{out}");
    }
    let pinned = ends_with(0, &["reckon", "weight", "weight=10 N", "--working"]);
    assert!(pinned.contains("no rule was needed"), "{pinned}");
}

#[test]
fn a_walk_round_fails_when_a_limit_fails() {
    let machine = "format = 1\nname = \"Test bed\"\n[machine]\nmass = \"6.4 kg\"\n[running-gear]\n\
                   track-count = \"2\"\ntrack-width = \"90 mm\"\ncontact-length = \"420 mm\"\n";
    let on = |holding: &str| format!("{machine}[ground]\nholding-pressure = \"{holding}\"\n");

    let (_firm, path) = build(&on("8.302 kPa"));
    let out = ends_with(0, &["walk-round", text(&path)]);
    assert!(out.contains("10.0"), "8302 Pa is ten times 830.2 Pa: {out}");
    let last = out.lines().last().unwrap();
    assert!(last.contains("limits are not known yet. Say the "), "{last}");
    assert_eq!(last.matches("the winding resistance").count(), 1, "each number once: {last}");

    let (_soft, path) = build(&on("0.4 kPa"));
    let err = ends_with(1, &["walk-round", text(&path)]);
    assert!(err.contains("fail"), "{err}");
    let limits = json(&["walk-round", text(&path), "--json"]);
    let first = &limits["limits"][0];
    assert_eq!(first["verdict"], "gives");
    assert!(first["margin"].as_f64().unwrap() < 0.5, "{first}");
}

#[test]
fn a_walk_round_says_what_cannot_be_checked() {
    let (_bare, path) = build("format = 1\n[running-gear]\ntrack-count = \"2\"\n");
    let err = ends_with(1, &["walk-round", text(&path)]);
    assert!(err.contains("no limit can be checked"), "{err}");
    let (_odd, path) = build("format = 1\n[machine]\nmass = \"6.4 parsecs\"\n");
    let err = ends_with(1, &["walk-round", text(&path)]);
    assert!(err.contains("1 entry of the build cannot be read"), "{err}");
}

#[test]
fn the_demonstration_crawlers_give_every_number_a_limit_asks_for() {
    let holds = ends_with(0, &["walk-round", "sandpiper"]);
    assert!(!holds.contains("not known"), "{holds}");
    let err = ends_with(1, &["walk-round", "bullock"]);
    assert!(err.contains("2 limits fail"), "{err}");
    let limits = json(&["walk-round", "bullock", "--json"]);
    let limits = limits["limits"].as_array().unwrap();
    let of = |verdict: &str| -> Vec<&str> {
        let such = limits.iter().filter(|limit| limit["verdict"] == verdict);
        such.filter_map(|limit| limit["limit"].as_str()).collect()
    };
    assert_eq!(of("gives"), ["label-margin", "low-end-margin"]);
    assert!(of("not known").is_empty() && of("invalid").is_empty());
}

/// Nothing gives on the wheeled demo, and what is about tracks alone is no failure.
#[test]
fn a_limit_that_does_not_apply_is_no_failure() {
    let out = ends_with(0, &["walk-round", "dune-cart"]);
    assert!(!out.contains("cannot be found"), "{out}");
    let limits = json(&["walk-round", "dune-cart", "--json"]);
    let limits = limits["limits"].as_array().unwrap();
    let other: Vec<_> = limits.iter().filter(|l| l["verdict"] == "does not apply").collect();
    assert_eq!(other.len(), 2, "{other:?}");
    assert!(other.iter().all(|limit| limit["margin"].is_null()), "{other:?}");
    // A lesson is named where the program has it.
    let of = |id: &str| limits.iter().find(|limit| limit["limit"] == id).unwrap();
    assert_eq!(of("frame-margin")["lesson"], "impact");
}

#[test]
fn a_demonstration_build_needs_no_file() {
    let elsewhere = tempfile::tempdir().unwrap();
    let mut command = Command::cargo_bin("heftwise").unwrap();
    command.current_dir(elsewhere.path()).args(["reckon", "mass", "--build", "sandpiper"]);
    let output = command.output().unwrap();
    // The parts of the demo add up to 6.4 kg.
    assert_eq!(String::from_utf8_lossy(&output.stdout).lines().next(), Some("mass = 6.40 kg"));
}

#[test]
fn a_build_that_cannot_be_read_is_said_with_its_place() {
    let err = ends_with(1, &["walk-round", "no such build.toml"]);
    assert!(err.contains("no such build.toml"), "{err}");
    let (_guard, path) = build("format = 1\nname = \"Broken\n");
    let err = ends_with(1, &["walk-round", text(&path)]);
    assert!(err.contains("line 2"), "{err}");
    let (_guard, path) = build("format = 1\n[machine]\nmass = \"6.4 kgg\"\nmassiveness = \"2\"\n");
    let (code, out, _) = heftwise(&["walk-round", text(&path)]);
    assert_eq!(code, 1);
    assert!(out.contains("line 4") && out.contains("massiveness"), "{out}");
    assert!(out.contains("mass"), "{out}");
}

#[test]
fn a_lesson_is_proofread_with_line_and_column() {
    let folder = tempfile::tempdir().unwrap();
    let lesson = folder.path().join("pressure");
    std::fs::create_dir(&lesson).unwrap();
    std::fs::write(
        lesson.join("lesson.md"),
        "+++\nid = \"pressure\"\ntitle = \"Pressure\"\norder = 1\nminutes = 5\n+++\n\n\
         It presses with [0.8 kPa](live:ground-presure).\n",
    )
    .unwrap();
    for path in [folder.path(), &lesson, &lesson.join("lesson.md")] {
        let (code, out, err) = heftwise(&["proof", text(path)]);
        assert_eq!(code, 1, "{out}{err}");
        assert!(out.contains("lesson.md:8:"), "{out}");
        assert!(out.contains("\"ground-pressure\""), "{out}");
    }
    let err = ends_with(1, &["proof", "no-such-folder"]);
    assert!(err.contains("no-such-folder"), "{err}");
}

#[test]
fn notes_for_teachers_are_counted() {
    let folder = tempfile::tempdir().unwrap();
    let lesson = folder.path().join("mud");
    std::fs::create_dir(&lesson).unwrap();
    std::fs::write(
        lesson.join("lesson.md"),
        "+++\nid = \"mud\"\ntitle = \"Mud\"\norder = 1\nminutes = 5\n+++\n\n\
         ```teacher\nAsk first.\n```\n",
    )
    .unwrap();
    for path in [folder.path(), &lesson] {
        let out = ends_with(0, &["proof", text(path)]);
        assert_eq!(out, "1 lesson proofread with 1 teacher note, nothing wrong.\n");
    }
    // The teacher's page is part of the lesson, also when it is proofread alone.
    std::fs::write(lesson.join("teacher.md"), "It is [1 t](live:mass).\n").unwrap();
    for path in [folder.path(), &lesson] {
        let (code, out, _) = heftwise(&["proof", text(path)]);
        assert_eq!(code, 1, "{out}");
        assert!(out.contains("teacher.md:1:13: no example build has 1.00 t as mass"), "{out}");
    }
}

#[test]
fn the_lessons_of_the_program_have_no_problems() {
    ends_with(0, &["proof"]);
    let elsewhere = tempfile::tempdir().unwrap();
    let mut command = Command::cargo_bin("heftwise").unwrap();
    command.current_dir(elsewhere.path()).arg("proof").assert().success();
}

#[test]
fn lists_name_everything_once() {
    let quantities = ends_with(0, &["list", "quantities"]);
    let of_json = json(&["list", "quantities", "--json"]);
    assert_eq!(quantities.lines().count(), of_json.as_array().unwrap().len());
    let column = quantities.lines().map(|line| line.find("  ").unwrap()).max().unwrap();
    assert!(quantities.lines().all(|line| line.chars().nth(column + 1) == Some(' ')));

    for rule in json(&["list", "rules", "--json"]).as_array().unwrap() {
        for field in ["title", "formula", "holds", "source"] {
            let words = rule[field].as_str().unwrap();
            assert!(!words.is_empty() && !words.contains('\\'), "{rule}");
        }
        assert!(rule["finds"].is_string() && !rule["assumes"].as_array().unwrap().is_empty());
        let needs = ["needs", "may_need"].map(|field| rule[field].as_array().unwrap().len());
        assert!(needs[0] + needs[1] > 0, "{rule}");
    }
    let rules = ends_with(0, &["list", "rules"]);
    assert!(rules.contains("weight = mass · gravity"), "{rules}");
    let lessons = ends_with(0, &["list", "lessons"]);
    assert!(lessons.contains("pressure"), "{lessons}");
    assert!(!json(&["list", "lessons", "--json"]).as_array().unwrap().is_empty());
}

#[test]
fn a_target_is_found_or_the_nearest_said() {
    let asked = ["target", "ground-pressure=0.6 kPa", "track-width", "--build", "sandpiper"];
    assert_eq!(
        ends_with(0, &asked).trim(),
        "At 125 mm track width the ground pressure (mean) is 600 Pa."
    );
    // b = m g / (n L p).
    let found = json(&[&asked[..], &["mass=6.4 kg", "--json"]].concat());
    let by_hand = 6.4 * 9.80665 / (2.0 * 0.42 * 600.0);
    approx::assert_relative_eq!(
        found["answers"][0].as_f64().unwrap(),
        by_hand,
        max_relative = 1e-9
    );
    let short = [&asked[..], &["--to", "100 mm"]].concat();
    let (code, _, words) = heftwise(&short);
    assert_eq!(code, 1);
    assert!(words.contains("The nearest is 747 Pa, at 100 mm"), "{words}");
    for wrong in [
        ["target", "ground-pressure", "track-width"],
        ["target", "ground-pressure=1 kg", "track-width"],
        ["target", "ground-pressure=1 kPa", "weight"],
        ["target", "ground-presure=1 kPa", "track-width"],
    ] {
        assert_eq!(heftwise(&wrong).0, 2, "{wrong:?}");
    }
}

#[test]
fn levers_are_sorted_and_marked() {
    let asked = ["levers", "ground-pressure", "--build", "sandpiper"];
    let words = ends_with(0, &asked);
    let row = words.lines().find(|line| line.starts_with("track-width")).unwrap();
    assert!(row.contains("down 0.99 %") && row.contains("takes parts or work"), "{row}");
    let found = json(&[&asked[..], &["--json", "--step", "10 mm"]].concat());
    let ids: Vec<_> = found["levers"].as_array().unwrap().iter().map(|l| &l["id"]).collect();
    assert_eq!(ids, ["track-width", "contact-length"]);
    assert_eq!(heftwise(&["levers", "ground-pressure", "--step", "much"]).0, 2);
    assert_eq!(heftwise(&["levers", "ground-pressure"]).0, 1);
}

#[test]
fn hundred_grams_move_what_hangs_on_mass() {
    let words = ends_with(0, &["hundred-grams", "sandpiper"]);
    // By hand: 100 g on 6.40 kg is 1.6 %.
    let row = words.lines().find(|line| line.starts_with("ground-pressure")).unwrap();
    assert!(
        row.contains("830 Pa") && row.contains("→ 843 Pa") && row.contains("up 1.6 %"),
        "{row}"
    );
    let found = json(&["hundred-grams", "sandpiper", "--json"]);
    let answers = found["answers"].as_array().unwrap();
    let pressure = answers.iter().find(|answer| answer["id"] == "ground-pressure").unwrap();
    let number = |key: &str| pressure[key].as_f64().unwrap();
    assert!((number("more") + number("less") - 2.0 * number("now")).abs() < 1e-9);
    let (_folder, light) = build("format = 1\n");
    assert!(ends_with(1, &["hundred-grams", text(&light)]).contains("has no mass"));
}

#[test]
fn help_teaches_by_example() {
    for arguments in [&["--help"][..], &["reckon", "--help"], &["walk-round", "--help"]] {
        let out = ends_with(0, arguments);
        assert!(out.contains("Examples:\n  heftwise "), "{out}");
    }
    assert!(ends_with(0, &["--version"]).starts_with("heftwise "));
}

#[cfg(unix)]
#[test]
fn a_reader_who_leaves_early_is_no_failure() {
    use std::process::{Command, Stdio};
    let mut child = Command::new(assert_cmd::cargo::cargo_bin("heftwise"))
        .args(["list", "rules", "--json"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let output = child.wait_with_output().unwrap();
    assert_eq!(output.status.code(), Some(0), "{}", String::from_utf8_lossy(&output.stderr));
    assert!(output.stderr.is_empty());
}

#[cfg(target_os = "linux")]
#[test]
fn an_answer_that_cannot_be_written_is_a_failure() {
    let full = std::fs::File::options().write(true).open("/dev/full").unwrap();
    let output = std::process::Command::new(assert_cmd::cargo::cargo_bin("heftwise"))
        .args(["list", "rules"])
        .stdout(full)
        .output()
        .unwrap();
    assert_eq!(output.status.code(), Some(1));
    assert!(String::from_utf8_lossy(&output.stderr).contains("cannot be written"));
}

#[test]
fn a_run_is_told_and_written() {
    let out = ends_with(0, &["run", "impact", "--build", "sandpiper", "--speed", "4 m/s"]);
    assert!(out.starts_with("time, ms"), "{out}");
    assert!(out.contains("it goes past the strength of the weakest mount"), "{out}");
    let found =
        json(&["run", "stop", "driving-speed=10 m/s", "braking-deceleration=5 m/s²", "--json"]);
    assert_eq!(found["series"]["distance"].as_array().unwrap().last().unwrap(), 20.0);
    assert_eq!(ends_with(1, &["run", "coast"]).lines().count(), 1);
    assert!(ends_with(2, &["run", "cost"]).contains("Did you mean \"coast\"?"));
    let folder = tempfile::tempdir().unwrap();
    for (name, first) in [("hit.svg", "<svg "), ("hit.csv", "\"time, ms\",\"force, N\"")] {
        let path = folder.path().join(name);
        ends_with(0, &["run", "impact", "--build", "sandpiper", "-o", text(&path)]);
        assert!(std::fs::read_to_string(&path).unwrap().starts_with(first));
    }
    let path = folder.path().join("hit.bmp");
    let why = ends_with(2, &["run", "impact", "--build", "sandpiper", "-o", text(&path)]);
    assert!(why.contains(".svg, .png or .csv"), "{why}");
}
