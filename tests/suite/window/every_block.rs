//! Every block of every lesson, on every example build, in three widths.

use heftwise::app::screen::Place;
use heftwise::app::shell::{Message, Start};
use heftwise::lesson::{Memory, MentionKind, Shipped, Source, grammar, parse};
use heftwise::quantity::catalogue;
use heftwise::rules::{Values, evaluate};
use heftwise::sheet::{Sheet, demo};
use iced::Size;
use std::sync::Arc;

use super::rig::{self, Rig};
use crate::lesson_authoring;

const WIDTHS: [f32; 3] = [400.0, 800.0, 1280.0];

/// What a block says when it has nothing to show.
const EMPTY: [&str; 5] = [
    "cannot be drawn",
    "cannot be shown",
    "cannot be read",
    "Nothing to compare",
    "(not known yet)",
];

/// The live blocks of a text, fences and all.
fn fences(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut one: Option<String> = None;
    for line in text.lines() {
        let starts = grammar::blocks().any(|block| line.strip_prefix("```") == Some(block.name));
        if one.is_none() && starts {
            one = Some(String::new());
        }
        if let Some(block) = &mut one {
            block.push_str(line);
            block.push('\n');
            if line == "```" {
                found.extend(one.take());
            }
        }
    }
    found
}

/// Every lesson shipped and every example for authors, whole, and each of their blocks alone.
fn everything() -> Memory {
    let mut memory = lesson_authoring::lessons();
    for (id, file) in Shipped::files() {
        if file == "lesson.md" {
            memory.texts.insert(id.to_owned(), Shipped.text(id).unwrap().into_owned());
        } else {
            let picture = Shipped.picture(id, file).unwrap();
            memory.pictures.insert((id.to_owned(), file.to_owned()), picture.to_vec());
        }
    }
    let blocks: Vec<String> = memory.texts.values().flat_map(|text| fences(text)).collect();
    for (place, block) in blocks.into_iter().enumerate() {
        let id = format!("block-{place}");
        let text = format!("+++\nid = \"{id}\"\ntitle = \"One\"\norder = 9\n+++\n\n{block}");
        memory.texts.insert(id, text);
    }
    memory
}

/// Whether a build has every number that a lesson names.
fn has_all(text: &str, values: &Values) -> bool {
    let lesson = parse(text, "lesson.md");
    let named = lesson.mentions.iter().filter(|mention| mention.kind == MentionKind::Quantity);
    named
        .filter_map(|mention| catalogue::find(&mention.name))
        .all(|entry| values.si(entry.id).is_some())
}

#[test]
fn every_block_is_shown_on_every_example_build_in_every_width() {
    let memory = everything();
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut full = 0;
    for demo in demo::ALL {
        let build = root.join(format!("assets/builds/{}.toml", demo.id));
        let values = evaluate(&Sheet::read(demo.text).unwrap().tally().givens);
        for width in WIDTHS {
            let folder = tempfile::tempdir().unwrap();
            let start = Start {
                build: Some(build.clone()),
                source: Arc::new(memory.clone()),
                ..rig::start(&folder)
            };
            let mut rig = Rig::open(start, Size::new(width, 800.0));
            // The text around the blocks is the same in each width, so once will do.
            let wanted = |id: &str| width == WIDTHS[0] || id.starts_with("block-");
            for (id, text) in memory.texts.iter().filter(|(id, _)| wanted(id)) {
                rig.send(Message::Go(Place::Lesson(id.clone())));
                let texts = rig.texts();
                assert!(texts.len() > 3, "{id} shows nothing");
                if id.starts_with("block-") && has_all(text, &values) {
                    full += 1;
                    let said = |words: &&&str| texts.iter().any(|text| text.contains(**words));
                    let empty = EMPTY.iter().find(said);
                    assert_eq!(empty, None, "{} at {width}: {text}\n{texts:?}", demo.id);
                }
            }
        }
    }
    assert!(full > 200, "{full} blocks had all their numbers");
}
