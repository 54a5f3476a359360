//! The examples of the CommonMark Spec 0.31.2 (all 652) and of the tables of GitHub Flavored Markdown
//! (all 8), read as lessons: none panics, and no word that the spec shows is lost. The examples stand
//! in `tests/golden/commonmark.json`, with their source and licence.

use heftwise::app::screen::Place;
use heftwise::app::shell::{Message, Start};
use heftwise::lesson::{parse, plain_text};
use serde::Deserialize;

use crate::window::rig::{self, Rig, WIDE};

#[derive(Deserialize)]
struct Spec {
    examples: Vec<Example>,
}

#[derive(Deserialize)]
struct Example {
    example: String,
    markdown: String,
    html: String,
}

fn examples() -> Vec<Example> {
    let spec: Spec = serde_json::from_str(include_str!("../../golden/commonmark.json")).unwrap();
    assert_eq!(spec.examples.len(), 652 + 8);
    spec.examples
}

/// What HTML shows: its text without tags and comments, its entities resolved, and the words that
/// stand for pictures.
fn shown(html: &str) -> String {
    let mut text = String::new();
    let mut rest = html;
    while let Some(start) = rest.find('<') {
        text.push_str(&rest[..start]);
        let tag = &rest[start..];
        let end = if tag.starts_with("<!--") {
            tag.find("-->").map(|end| end + 3)
        } else {
            tag.find('>').map(|end| end + 1)
        };
        let end = end.unwrap_or(tag.len());
        if let Some((_, alt)) = tag[..end].split_once("alt=\"") {
            text.push_str(alt.split('"').next().unwrap_or(""));
        }
        text.push(' ');
        rest = &tag[end..];
    }
    text.push_str(rest);
    [("&lt;", "<"), ("&gt;", ">"), ("&quot;", "\""), ("&amp;", "&")]
        .iter()
        .fold(text, |text, (entity, c)| text.replace(entity, c))
}

fn words(text: &str) -> Vec<String> {
    text.split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect()
}

#[test]
fn every_example_is_read_and_no_word_of_it_is_lost() {
    let mut lost = Vec::new();
    for Example { example, markdown, html } in examples() {
        let lesson = parse(&markdown, "lesson.md");
        let mut ours = plain_text(&lesson);
        let mut theirs = words(&shown(&html));
        // Styles end within words, so a word of theirs may be a piece of one of ours: the longest first.
        theirs.sort_by_key(|word| std::cmp::Reverse(word.len()));
        for word in theirs {
            match ours.find(&word) {
                Some(at) => ours.replace_range(at..at + word.len(), " "),
                None => lost
                    .push(format!("{example}: {word:?}\n{markdown}\n--\n{}", plain_text(&lesson))),
            }
        }
    }
    assert!(lost.is_empty(), "{} words lost\n{}", lost.len(), lost.join("\n----\n"));
}

/// Each eleventh example in the window: it is drawn, and the page goes on after it.
#[test]
fn examples_are_shown_in_the_window() {
    let some: Vec<Example> = examples().into_iter().step_by(11).collect();
    let texts: Vec<(String, String)> = some
        .iter()
        .enumerate()
        .map(|(number, example)| (format!("l{number}"), format!("{}\n", example.markdown)))
        .collect();
    let lessons: Vec<(&str, &str)> =
        texts.iter().map(|(id, text)| (id.as_str(), text.as_str())).collect();
    let folder = tempfile::tempdir().unwrap();
    let start = Start { source: rig::memory(&lessons), ..rig::start(&folder) };
    let mut rig = Rig::open(start, WIDE);
    for ((id, _), example) in texts.iter().zip(&some) {
        rig.send(Message::Go(Place::Lesson(id.clone())));
        assert_eq!(rig.app.place, Place::Lesson(id.clone()), "{}", example.example);
    }
}
