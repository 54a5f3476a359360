//! The authors' page: every block and key of the code stands in it, and its examples are right.

use std::collections::BTreeSet;

use heftwise::lesson::{BlockKind, Library, Memory, grammar, proof};

/// The page.
const PAGE: &str = include_str!("../../lessons/AUTHORING.md");

/// The text under a heading, up to the next heading of its level or above.
fn section(heading: &str) -> Option<&'static str> {
    let start = PAGE.find(&format!("\n{heading}\n"))? + heading.len() + 2;
    let level = heading.chars().take_while(|c| *c == '#').count();
    let rest = &PAGE[start..];
    let mut fenced = false;
    let mut end = 0;
    for line in rest.split_inclusive('\n') {
        fenced ^= line.starts_with("````");
        let hashes = line.chars().take_while(|c| *c == '#').count();
        if !fenced && (1..=level).contains(&hashes) {
            break;
        }
        end += line.len();
    }
    Some(&rest[..end])
}

/// The keys in the table of a section.
fn keys(section: &str) -> BTreeSet<String> {
    section
        .lines()
        .filter_map(|line| line.strip_prefix("| `")?.split_once('`'))
        .map(|(key, _)| key.to_owned())
        .collect()
}

/// The examples, each a part of a lesson or a whole one.
pub fn examples() -> Vec<&'static str> {
    let parts = PAGE.split("\n````markdown\n").skip(1);
    parts.map(|part| part.split_once("````").expect("the fence ends").0).collect()
}

/// The examples as lessons, and the picture they show.
pub fn lessons() -> Memory {
    let mut memory = Memory::default();
    let shipped = "+++\nid = \"pressure\"\ntitle = \"Pressure\"\norder = 1\n+++\n";
    memory.texts.insert("pressure".to_owned(), shipped.to_owned());
    for (place, example) in examples().into_iter().enumerate() {
        let (id, text) = match example.strip_prefix("+++\nid = \"") {
            Some(rest) => (rest.split_once('"').unwrap().0.to_owned(), example.to_owned()),
            None => {
                let id = format!("example-{place}");
                let front = format!("+++\nid = \"{id}\"\ntitle = \"Example {place}\"\n");
                (id, format!("{front}order = {}\n+++\n{example}", place + 10))
            }
        };
        let picture = include_bytes!("../../lessons/pressure/what-counts.svg").to_vec();
        memory.pictures.insert((id.clone(), "what-counts.svg".to_owned()), picture);
        memory.texts.insert(id, text);
    }
    memory
}

#[test]
fn every_block_and_key_of_the_code_stands_in_the_page_and_no_other() {
    let mut known = BTreeSet::new();
    for block in grammar::blocks() {
        let heading = format!("### `{}`", block.name);
        let section = section(&heading).unwrap_or_else(|| panic!("no heading {heading}"));
        let in_code: BTreeSet<String> = block
            .tables
            .iter()
            .flat_map(|(table, keys)| {
                let dot = if table.is_empty() { "" } else { "." };
                keys.iter().map(move |key| format!("{table}{dot}{key}"))
            })
            .collect();
        assert_eq!(keys(section), in_code, "the keys of {}", block.name);
        assert!(
            section.contains(&format!("\n```{}\n", block.name)),
            "an example of {}",
            block.name
        );
        known.insert(heading);
    }
    let headings: BTreeSet<String> =
        PAGE.lines().filter(|line| line.starts_with("### `")).map(str::to_owned).collect();
    assert_eq!(headings, known, "a heading for each block");
    let front = keys(section("## Front matter").expect("a section on it"));
    assert_eq!(front, grammar::front_matter().iter().map(|key| (*key).to_owned()).collect());
}

#[test]
fn every_key_is_used_in_an_example() {
    let mut unused = Vec::new();
    for block in grammar::blocks() {
        let section = section(&format!("### `{}`", block.name)).unwrap();
        for key in block.tables.iter().flat_map(|(_, keys)| *keys) {
            let used = ["\n{} = ", "\n[{}]", "\n[[{}]]"]
                .iter()
                .any(|shape| section.contains(&shape.replace("{}", key)));
            if !used {
                unused.push(format!("{}: {key}", block.name));
            }
        }
    }
    // Of the replies, the right answer has none.
    assert_eq!(unused, ["guess: up"]);
}

#[test]
fn every_example_is_right() {
    let library = Library::load(lessons());
    let problems: Vec<_> = proof::check(&library).iter().map(ToString::to_string).collect();
    assert!(problems.is_empty(), "{}", problems.join("\n"));
    let broken = |kind: &BlockKind| matches!(kind, BlockKind::Broken { .. });
    let blocks = library.lessons().flat_map(|lesson| lesson.every_block());
    assert!(blocks.filter(|block| broken(&block.kind)).count() == 0);
    assert!(examples().len() >= grammar::blocks().count());
}
