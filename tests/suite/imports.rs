//! Which part of the house may see which: walks `src/` and fails on a path that leads the wrong way.
//!
//! The rules stand in DEVELOPERS.md; the tables here are what holds them.

mod paths;

use std::path::{Path, PathBuf};

use paths::{FoundPath, paths};

/// Each part of the house, and the other parts it may see.
const MAY_SEE: &[(&str, &[&str])] = &[
    ("aside", &[]),
    ("physics", &[]),
    ("quantity", &[]),
    ("rules", &["physics", "quantity"]),
    ("sheet", &["quantity", "rules"]),
    ("study", &["sheet", "rules", "quantity", "physics"]),
    ("lesson", &["quantity", "rules", "sheet", "study"]),
    ("notebook", &["aside", "quantity"]),
    ("plot", &["aside", "quantity", "study"]),
    ("asked", &["lesson", "plot", "study"]),
    (
        "handout",
        &["aside", "asked", "lesson", "plot", "study", "sheet", "notebook", "quantity", "rules"],
    ),
    ("app", EVERYTHING_BELOW),
    ("cli", EVERYTHING_BELOW),
];

const EVERYTHING_BELOW: &[&str] = &[
    "aside", "asked", "physics", "quantity", "rules", "sheet", "study", "lesson", "notebook",
    "plot", "handout",
];

/// Paths from outside that only some files may use: each file named without `src/` and `.rs`, a
/// module standing for all that is inside it.
const FENCES: &[(&[&str], &[&str])] = &[
    (&["iced"], &["app"]),
    (&["plotters_iced"], &["app"]),
    (&["plotters"], &["plot", "app/plot", "app/block/curve"]),
    (&["pulldown_cmark"], &["lesson"]),
    (&["clap"], &["cli"]),
    (&["clap_mangen"], &["cli/manual"]),
    (&["clap_complete"], &["cli/manual"]),
    (&["image"], &["app/widget/picture"]),
    (&["rfd"], &["app"]),
    (&["arboard"], &["app/clipboard"]),
    (&["resvg"], &["plot/save"]),
    (&["roots"], &["physics", "study"]),
    (&["differential_equations"], &["physics"]),
    (&["std", "fs"], READS_AND_WRITES_FILES),
    // Recovery copies tell the programs that run at once apart.
    (&["std", "process"], &["sheet/file/autosave"]),
    (&["std", "net"], &[]),
];

/// The few files that load and save.
const READS_AND_WRITES_FILES: &[&str] =
    &["aside", "sheet/file", "lesson/library/source", "notebook/file", "app/settings"];

/// The crate's own roots may see everything.
const ROOTS: &[&str] = &["lib", "main"];

/// What is wrong in one source file; `module` is its path without `src/` and `.rs`.
fn complaints(module: &str, source: &str) -> Vec<String> {
    if ROOTS.contains(&module) {
        return Vec::new();
    }
    let place: Vec<&str> = module.split('/').collect();
    paths(source, &place).iter().filter_map(|found| complaint(module, found)).collect()
}

fn complaint(module: &str, found: &FoundPath) -> Option<String> {
    let names: Vec<&str> = found.names.iter().map(String::as_str).collect();
    let why = match names.as_slice() {
        ["crate"] | ["crate", "*", ..] => "names the whole crate: name the part".to_owned(),
        ["crate", part, ..] => inside(module, part)?,
        other => outside(module, other)?,
    };
    Some(format!("src/{module}.rs:{}: `{}` {why}", found.line, names.join("::")))
}

fn inside(module: &str, part: &str) -> Option<String> {
    let own = module.split('/').next().unwrap_or(module);
    let Some((_, seen)) = MAY_SEE.iter().find(|(name, _)| *name == own) else {
        return Some(format!("is in `{own}`, which the import rules do not know"));
    };
    (part != own && !seen.contains(&part))
        .then(|| format!("leads from {own} to {part}; {own} may see {}", seen.join(", ")))
}

fn outside(module: &str, names: &[&str]) -> Option<String> {
    let (_, allowed) = FENCES.iter().find(|(fenced, _)| names.starts_with(fenced))?;
    (!allowed.iter().any(|file| is_within(module, file)))
        .then(|| format!("belongs in: {}", allowed.join(", ")))
}

fn is_within(module: &str, file: &str) -> bool {
    module.strip_prefix(file).is_some_and(|rest| rest.is_empty() || rest.starts_with('/'))
}

fn source_files() -> Vec<(String, PathBuf)> {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    walkdir::WalkDir::new(&src)
        .into_iter()
        .map(|entry| entry.expect("src can be walked").into_path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "rs"))
        .map(|path| {
            let inside = path.strip_prefix(&src).expect("it is under src").with_extension("");
            (inside.to_string_lossy().replace('\\', "/"), path)
        })
        .collect()
}

#[test]
fn every_path_in_src_leads_the_allowed_way() {
    let files = source_files();
    assert!(files.len() > 10, "src was not found");
    let wrong: Vec<String> = files
        .iter()
        .flat_map(|(module, path)| {
            complaints(module, &std::fs::read_to_string(path).expect("a source file reads"))
        })
        .collect();
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn no_mod_rs_and_every_part_is_known() {
    for (module, path) in source_files() {
        assert!(!module.ends_with("/mod"), "{}: use foo.rs beside foo/", path.display());
        let part = module.split('/').next().unwrap();
        let known = ROOTS.contains(&part) || MAY_SEE.iter().any(|(name, _)| *name == part);
        assert!(known, "{}: say in MAY_SEE what {part} may see", path.display());
    }
}

#[test]
fn only_main_exits() {
    let exits = |(module, path): &(String, PathBuf)| {
        let source = std::fs::read_to_string(path).expect("a source file reads");
        module != "main"
            && paths(&source, &[module])
                .iter()
                .any(|found| found.names.windows(2).any(|pair| pair == ["process", "exit"]))
    };
    let wrong: Vec<_> = source_files().into_iter().filter(exits).collect();
    assert!(wrong.is_empty(), "{wrong:?}");
}

#[test]
fn the_checker_catches_what_it_should() {
    let wrong: &[(&str, &str)] = &[
        ("physics/weight", "use crate::quantity::Mass;"),
        ("physics/weight", "use crate::{rules::Rule, physics::Impossible};"),
        ("physics/weight", "fn f() -> crate::rules::Rule { loop {} }"),
        ("quantity/catalogue/ground", "use super::super::super::rules::Rule;"),
        ("quantity", "use super::rules;"),
        ("quantity", "mod tests { use super::super::rules; }"),
        ("rules", "use crate::sheet::Sheet;"),
        ("sheet", "use crate::{quantity::{Entry, Id}, study};"),
        ("lesson/parse", "pub(crate) use crate::plot::axis as c;"),
        ("notebook", "use crate::rules;"),
        ("cli/reckon", "let run = crate::app::run;"),
        ("app/screen/home", "use crate::cli::Cli;"),
        ("rules", "use crate::*;"),
        ("rules", "use crate as all;"),
        ("plot/axis", "use iced::Color;"),
        ("plot/axis", "use iced;"),
        ("study", "fn f() { plotters::series::x() }"),
        ("app/shell", "use plotters::prelude::*;"),
        ("plot", "use plotters_iced::Chart;"),
        ("handout", "use pulldown_cmark::{Event, Tag};"),
        ("sheet/part", "use std::{collections::HashMap, fs::{self, File}};"),
        ("sheet/part", "fn f<'a>(c: char) { c == '\"'; std::fs::read(\"x\"); }"),
        ("cli/list", "std::process::exit(2)"),
        ("lesson/library/source", "use std::net::TcpStream;"),
        ("filing", "use crate::rules::Rule;"),
        ("rules", "/* a /* nested */ comment */ use crate::app;"),
        ("rules", "let text = r#\"a \" quote\"#; crate::app::run()"),
    ];
    for (module, source) in wrong {
        assert!(!complaints(module, source).is_empty(), "in {module}: {source}");
    }
}

#[test]
fn the_checker_lets_pass_what_it_should() {
    let right: &[(&str, &str)] = &[
        ("rules/catalogue/weight", "use crate::physics::weight; use crate::quantity::Id;"),
        ("rules", "// use crate::app::run;\n/* use crate::app; /* and */ use iced::x; */"),
        ("rules", "/// See [`crate::app::run`].\nfn f() { \"crate::app::run\"; r#\"std::fs\"#; }"),
        ("rules", "mod tests { use super::*; use super::rule::Rule; }"),
        ("rules/rule", "use super::value::Values; use super::super::quantity::Id;"),
        ("sheet/file", "use std::fs; use std::{fs::File, io};"),
        ("sheet/file/format", "use std::fs::File;"),
        ("app/block/curve", "use plotters::prelude::*; use iced::widget::canvas;"),
        ("plot/draw", "use plotters::coord::Shift;"),
        ("cli", "use clap::Parser; use crate::handout::page;"),
        ("study", "fn f<'iced>(x: &'iced str) -> impl Fn() + use<'iced> { || () }"),
        ("study", "let c = b'\\''; let d = '{'; use std::collections::{HashMap, HashSet};"),
        ("main", "fn main() { heftwise::app::run(); std::process::exit(0) }"),
    ];
    for (module, source) in right {
        assert_eq!(complaints(module, source), Vec::<String>::new(), "in {module}: {source}");
    }
}
