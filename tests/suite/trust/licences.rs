//! Every library may be handed on under the licence of the program, and comes from the one registry:
//! what `cargo deny check licenses sources` holds, by the same list, without that tool.

use std::process::Command;

use serde::Deserialize;

use super::ours;

/// What is read of `.deny.toml`.
#[derive(Deserialize)]
struct Deny {
    licenses: Licenses,
}

#[derive(Deserialize)]
struct Licenses {
    allow: Vec<String>,
}

#[derive(Deserialize)]
struct Metadata {
    packages: Vec<Package>,
}

#[derive(Deserialize)]
struct Package {
    name: String,
    version: String,
    license: Option<String>,
    source: Option<String>,
}

/// The libraries that a build for this machine takes in.
fn packages() -> Vec<Package> {
    let host = Command::new("rustc").args(["--print", "host-tuple"]).output().unwrap();
    let host = String::from_utf8(host.stdout).unwrap();
    let metadata = Command::new(env!("CARGO"))
        .args(["metadata", "--offline", "--locked", "--format-version", "1"])
        .args(["--filter-platform", host.trim()])
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .output()
        .unwrap();
    assert!(metadata.status.success(), "{}", String::from_utf8_lossy(&metadata.stderr));
    serde_json::from_slice::<Metadata>(&metadata.stdout).unwrap().packages
}

/// Whether one of the licences offered by an expression is allowed; none when it cannot be read.
/// SPDX 2.3, annex D, and the stroke that stood for OR before.
fn allows(expression: &str, allowed: &dyn Fn(&str) -> bool) -> Option<bool> {
    let spaced = expression.replace('/', " OR ").replace('(', " ( ").replace(')', " ) ");
    let mut words = spaced.split_whitespace().peekable();
    let fits = any(&mut words, allowed)?;
    words.next().is_none().then_some(fits)
}

type Words<'a> = std::iter::Peekable<std::str::SplitWhitespace<'a>>;

/// Alternatives: OR binds less than AND.
fn any(words: &mut Words<'_>, allowed: &dyn Fn(&str) -> bool) -> Option<bool> {
    let mut fits = every(words, allowed)?;
    while words.next_if_eq(&"OR").is_some() {
        fits |= every(words, allowed)?;
    }
    Some(fits)
}

fn every(words: &mut Words<'_>, allowed: &dyn Fn(&str) -> bool) -> Option<bool> {
    let mut fits = one(words, allowed)?;
    while words.next_if_eq(&"AND").is_some() {
        fits &= one(words, allowed)?;
    }
    Some(fits)
}

fn one(words: &mut Words<'_>, allowed: &dyn Fn(&str) -> bool) -> Option<bool> {
    let name = words.next()?;
    if name == "(" {
        let fits = any(words, allowed)?;
        return words.next_if_eq(&")").map(|_| fits);
    }
    Some(match words.next_if_eq(&"WITH") {
        Some(_) => allowed(&format!("{name} WITH {}", words.next()?)),
        None => allowed(name),
    })
}

#[test]
fn every_licence_lets_the_program_be_handed_on() {
    let deny: Deny = toml::from_str(&ours(".deny.toml")).unwrap();
    let allowed = |name: &str| deny.licenses.allow.iter().any(|known| known == name);
    let packages = packages();
    assert!(packages.len() > 200, "{} packages", packages.len());
    let not: Vec<String> = packages
        .iter()
        .filter(|package| {
            let license = package.license.as_deref().unwrap_or_default();
            allows(license, &allowed) != Some(true)
        })
        .map(|Package { name, version, license, .. }| format!("{name} {version}: {license:?}"))
        .collect();
    assert!(not.is_empty(), "{}", not.join("\n"));
}

#[test]
fn every_library_comes_from_the_one_registry() {
    for Package { name, source, .. } in packages() {
        let known = match source.as_deref() {
            None => name == "heftwise",
            Some(source) => source.starts_with("registry+") && source.ends_with("/crates.io-index"),
        };
        assert!(known, "{name} comes from {source:?}");
    }
}

#[test]
fn licence_expressions_are_read() {
    let allowed = |name: &str| ["MIT", "Zlib", "A WITH B"].contains(&name);
    for (expression, fits) in [
        ("MIT", Some(true)),
        ("GPL-3.0-only", Some(false)),
        ("GPL-3.0-only OR MIT", Some(true)),
        ("GPL-3.0-only/MIT", Some(true)),
        ("GPL-3.0-only AND MIT", Some(false)),
        ("MIT AND (GPL-3.0-only OR Zlib)", Some(true)),
        ("MIT OR GPL-3.0-only AND GPL-2.0-only", Some(true)),
        ("A WITH B", Some(true)),
        ("A", Some(false)),
        ("(MIT", None),
        ("MIT Zlib", None),
        ("", None),
    ] {
        assert_eq!(allows(expression, &allowed), fits, "{expression}");
    }
}
