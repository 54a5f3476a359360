//! Which functions of the program the first frame runs, for the linker to lay side by side, so that
//! little else of the program comes into memory with them: `cargo bench --bench order` tells how many
//! they are and how far apart they lie, `-- --write` writes assets/order/first-frame.ld anew.
//!
//! The program opens its window under callgrind (Debian: valgrind) on a virtual screen (Debian: xvfb);
//! the linker's map tells in which section of which library each function stands that ran.
#![allow(clippy::unwrap_used, clippy::print_stdout, reason = "a bench may be blunt")]

#[allow(dead_code, reason = "the pixels do not matter here")]
#[path = "start/screen.rs"]
mod screen;

#[path = "order/tree.rs"]
mod tree;

use std::collections::{BTreeMap, BTreeSet};
use std::fs::read_to_string;
use std::path::Path;
use std::process::{Command, ExitCode, Stdio};

use screen::Screen;
use tree::Tree;

/// How long the program may take to its first frames under callgrind, in seconds.
const WATCHED: &str = "25";
/// How much of a file comes into memory around a place that is looked at (Linux, `fault_around_bytes`).
const AROUND: u64 = 65_536;

/// A section of the program with one function; several names where functions are alike.
struct Section {
    start: u64,
    size: u64,
    /// The library that it comes from, as a pattern of its file's name.
    file: String,
    name: String,
    functions: Vec<String>,
}

fn main() -> ExitCode {
    let folder = tempfile::tempdir().unwrap();
    let Some(screen) = Screen::open(folder.path()) else {
        println!("passed over: no Xvfb");
        return ExitCode::SUCCESS;
    };
    let map = folder.path().join("map");
    let linked = Command::new(env!("CARGO"))
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .args(["rustc", "--quiet", "--release", "--bin", "heftwise", "--", "-C"])
        .arg(format!("link-arg=-Wl,--no-demangle,-Map={}", map.display()))
        .status();
    assert!(linked.unwrap().success(), "the program was not built");
    let Some(ran) = ran(&screen, folder.path()) else {
        println!("passed over: no valgrind");
        return ExitCode::SUCCESS;
    };

    let (mut files, mut windows, mut size) = (BTreeMap::<_, Tree>::new(), BTreeSet::new(), 0);
    for section in sections(&read_to_string(&map).unwrap()) {
        let has_run = section.functions.iter().any(|function| ran.contains(function));
        if has_run {
            size += section.size;
            windows.extend(section.start / AROUND..=(section.start + section.size) / AROUND);
        }
        files.entry(section.file).or_default().grow(&section.name, section.size, has_run);
    }
    let near = windows.len() as u64 * AROUND;
    println!("ran {} kB, for which {} kB come into memory", size / 1024, near / 1024);
    if std::env::args().any(|argument| argument == "--write") {
        let place = Path::new(env!("CARGO_MANIFEST_DIR")).join("assets/order/first-frame.ld");
        std::fs::write(place, script(&files)).unwrap();
    }
    ExitCode::SUCCESS
}

/// The functions that the program runs until its window stands; none without valgrind.
fn ran(screen: &Screen, folder: &Path) -> Option<BTreeSet<String>> {
    let program = env!("CARGO_BIN_EXE_heftwise");
    let watched = folder.join("ran");
    let mut command = Command::new("timeout");
    command.args(["--signal=TERM", WATCHED, "valgrind", "--tool=callgrind", "--demangle=no"]);
    command.arg("--compress-strings=no");
    command.arg(format!("--callgrind-out-file={}", watched.display())).arg(program);
    screen.show(&mut command, folder).stdout(Stdio::null()).stderr(Stdio::null()).status().ok()?;
    let text = read_to_string(watched).ok()?;
    // A function that calls itself is told once more, as `NAME'2`.
    let names = text.lines().filter_map(|line| line.strip_prefix("fn=")?.split('\'').next());
    Some(names.map(str::to_owned).collect())
}

/// The functions of the linker's map. A section: its place in memory and in the file, its size and how
/// it is aligned, then `PATH/libNAME-HASH.rlib(…):(.text.FUNCTION)`; below it, with the same four
/// numbers, each of its names.
fn sections(map: &str) -> Vec<Section> {
    let mut sections = Vec::new();
    let mut is_function = false;
    for line in map.lines() {
        let mut words = line.split_whitespace();
        let mut number = || u64::from_str_radix(words.next()?, 16).ok();
        let (Some(start), Some(_), Some(size), Some(_)) = (number(), number(), number(), number())
        else {
            continue;
        };
        let Some(word) = words.next() else { continue };
        if let Some((path, name)) = word.split_once(":(") {
            let section = place(path)
                .zip(name.strip_prefix(".text.").and_then(|name| name.strip_suffix(')')));
            is_function = section.is_some();
            sections.extend(section.map(|(file, name)| Section {
                start,
                size,
                file,
                name: name.to_owned(),
                functions: Vec::new(),
            }));
        } else if let Some(section) = sections.last_mut().filter(|_| is_function) {
            section.functions.push(word.to_owned());
        }
    }
    sections
}

/// The library of `PATH/libNAME-HASH.rlib(…)`, as a pattern.
fn place(path: &str) -> Option<String> {
    let (library, _member) = path.split_once(".rlib(")?;
    let (name, _hash) = library.rsplit('/').next()?.rsplit_once('-')?;
    Some(format!("*{name}-*"))
}

fn script(files: &BTreeMap<String, Tree>) -> String {
    let mut script = String::from(
        "/* The functions that the first frame runs, side by side.\n   \
         Written by `cargo bench --bench order -- --write`. */\n\
         SECTIONS\n{\n  .text.first_frame :\n  {\n",
    );
    for (file, tree) in files {
        let patterns = tree.patterns();
        if !patterns.is_empty() {
            script += &format!("    {file}(\n      {})\n", patterns.join("\n      "));
        }
    }
    script + "  }\n}\nINSERT BEFORE .text;\n"
}
