//! `heftwise curve`, through `cli::run` and as the real program.

use std::path::Path;

use heftwise::cli::{self, Next};

const BUILD: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/assets/builds/sandpiper.toml");

fn run(arguments: &[&str]) -> (u8, String, String) {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let arguments = ["heftwise", "curve"].iter().chain(arguments);
    let Next::Exit(code) = cli::run(arguments, &mut out, &mut err) else { panic!("a window") };
    (code, String::from_utf8(out).unwrap(), String::from_utf8(err).unwrap())
}

/// By hand: m g / (2 w L) with 6.4 kg, 420 mm: 0.830 kPa at 90 mm; 8 kg make 1.04 kPa.
const PRESSURE: [&str; 12] = [
    "ground-pressure",
    "--against",
    "track-width",
    "--from",
    "40 mm",
    "--to",
    "160 mm",
    "mass=6.4 kg",
    "track-count=2",
    "track-width=90 mm",
    "contact-length=420 mm",
    "slope=0 deg",
];

#[test]
fn without_a_file_it_is_a_table_and_a_sentence() {
    let family = ["--family", "mass", "--values", "4 kg, 8 kg"];
    let (code, out, err) = run(&[&PRESSURE[..], &family].concat());
    assert_eq!((code, err.as_str()), (0, ""));
    assert!(
        out.starts_with("track width, mm  These numbers: ground pressure (mean), kPa"),
        "{out}"
    );
    let row = out.lines().find(|line| line.starts_with("90.0")).unwrap();
    let cells: Vec<&str> = row.split_whitespace().collect();
    assert_eq!(cells, ["90.0", "0.830", "0.519", "1.04"]);
    assert!(out.contains("the mass takes it from 0.519 kPa (4 kg) to 1.04 kPa (8 kg)."), "{out}");
}

#[test]
fn the_ending_of_the_file_decides() {
    let folder = tempfile::tempdir().unwrap();
    for (name, start) in [("a.svg", &b"<svg "[..]), ("a.png", b"\x89PNG"), ("a.csv", b"\"track")] {
        let path = folder.path().join(name);
        let output = ["-o", path.to_str().unwrap()];
        let (code, out, err) = run(&[&PRESSURE[..], &output].concat());
        assert_eq!(code, 0, "{err}");
        assert!(out.contains(&format!("Written to {}.", path.display())), "{out}");
        assert!(std::fs::read(&path).unwrap().starts_with(start), "{name}");
    }
    let output = ["--output", "a.gif"];
    let (code, _, err) = run(&[&PRESSURE[..], &output].concat());
    assert_eq!(code, 2);
    assert_eq!(err, "a.gif does not say what to write: end the name in .svg, .png or .csv.\n");
    assert!(!Path::new("a.gif").exists());
    let output = ["-o", "no/such/folder/a.svg"];
    let (code, _, err) = run(&[&PRESSURE[..], &output].concat());
    assert_eq!(code, 1);
    assert!(err.contains("cannot be written"), "{err}");
}

#[test]
fn builds_companions_limits_and_scales() {
    let (code, out, err) = run(&[
        "low-end-pressure",
        "--against",
        "mass",
        "--build",
        BUILD,
        "--companion",
        "bullock",
        "--limits",
        "holding-pressure",
        "--scale",
        "log",
    ]);
    assert_eq!(code, 0, "{err}");
    assert!(out.contains("Bullock: pressure under the low end (worst), kPa"), "{out}");
}

#[test]
fn every_mistake_is_named() {
    let refused = |arguments: &[&str], says: &str| {
        let (code, _, err) = run(&[&PRESSURE[..], arguments].concat());
        assert_eq!(code, 2, "{err}");
        assert!(err.contains(says), "{says}: {err}");
    };
    refused(&["--family", "mass", "--values", "4 mm"], "\"4 mm\" does not fit");
    refused(&["--family", "mas", "--values", "4 kg"], "Did you mean \"mass\"?");
    refused(&["--family", "ground", "--values", "mudflats"], "Did you mean \"mudflat\"?");
    refused(&["--family", "mass"], "--values");
    refused(&["--values", "4 kg"], "--family");
    refused(&["--limits", "weight"], "a limit must be the same");
    refused(&["--scale", "cubic"], "cubic");
    refused(
        &["--companion", "bullock", "--companion", "bullock", "--companion", "bullock"],
        "at most",
    );
    let (code, _, err) = run(&["ground-pressure", "--against", "weight"]);
    assert_eq!((code, err.contains("found by a rule")), (2, true), "{err}");
    let (code, _, err) = run(&["ground-pressure", "--against", "track-width"]);
    assert_eq!((code, err.contains("There is no ground pressure (mean)")), (1, true), "{err}");
    let six = ["--family", "mass", "--values", "1 kg,2 kg,3 kg,4 kg,5 kg,6 kg"];
    refused(&six, "at most 5");
    let (code, _, err) = run(&[&PRESSURE[..], &["--from", "200 mm"]].concat());
    assert_eq!(code, 2, "{err}");
}

#[test]
fn the_real_program_does_the_same() {
    let folder = tempfile::tempdir().unwrap();
    let output = assert_cmd::Command::cargo_bin("heftwise")
        .unwrap()
        .current_dir(&folder)
        .args(["curve", "ground-pressure", "--against", "mass", "--build", BUILD, "-o", "p.svg"])
        .output()
        .unwrap();
    assert!(output.status.success(), "{output:?}");
    let picture = std::fs::read_to_string(folder.path().join("p.svg")).unwrap();
    assert!(picture.contains("<title>ground pressure (mean) against mass</title>"));
}
