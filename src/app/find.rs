//! Find: lessons, numbers and rules by the words in them. The index is built once for a library;
//! a keystroke only looks words up in it.

mod matching;
pub mod view;

use std::collections::HashMap;

use crate::lesson::{Library, sections};
use crate::quantity::{AnyId, Entry, catalogue};
use crate::rules::{Rule, catalogue as catalogue_of_rules};
use matching::{joined, likeness, words_of};

/// How many hits of a group are shown.
const SHOWN: usize = 6;

/// What a hit is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Group {
    /// A lesson or a part of one.
    Lessons,
    /// A quantity.
    Numbers,
    /// A rule.
    Rules,
}

impl Group {
    const ALL: [Self; 3] = [Self::Lessons, Self::Numbers, Self::Rules];

    /// Its heading.
    pub const fn title(self) -> &'static str {
        match self {
            Self::Lessons => "Lessons",
            Self::Numbers => "Numbers",
            Self::Rules => "Rules",
        }
    }
}

/// Where a hit leads.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Way {
    /// To a lesson.
    Lesson(String),
    /// To a heading of a lesson.
    Part {
        /// The lesson.
        lesson: String,
        /// The heading.
        anchor: String,
    },
    /// To a number on the build sheet.
    Number(AnyId),
}

/// One thing that can be found.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Hit {
    /// What it is.
    pub group: Group,
    /// Its name.
    pub title: String,
    /// A line about it.
    pub about: String,
    /// Where it leads.
    pub to: Way,
}

/// The hits of one group.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Hits {
    /// What they are.
    pub group: Group,
    /// The best, the best first.
    pub best: Vec<Hit>,
    /// How many there are in all.
    pub of: usize,
}

/// Everything that can be found, by its words.
#[derive(Debug, Default)]
pub struct Index {
    hits: Vec<Hit>,
    /// Each word with the hits it stands in, and how much it says of each.
    words: Vec<(String, Vec<(usize, f32)>)>,
}

/// How much a word of a title says: more in a short one.
fn of_title(title: &str) -> f32 {
    8.0 + 4.0 / words_of(title).len().max(1) as f32
}

/// How much a word of an id, a symbol or a goal says.
const NAME: f32 = 4.0;
/// How much a word of the text says.
const TEXT: f32 = 1.0;

impl Index {
    /// All lessons of a library, every quantity and every rule.
    pub fn of(library: &Library) -> Self {
        let mut making = Making::default();
        making.lessons(library);
        catalogue::all().iter().for_each(|entry| making.number(entry));
        catalogue_of_rules::all().iter().for_each(|rule| making.rule(rule, library));
        let mut words: Vec<_> = making
            .words
            .into_iter()
            .map(|(word, weights)| (word, weights.into_iter().collect::<Vec<_>>()))
            .collect();
        words.sort_by(|a, b| a.0.cmp(&b.0));
        Self { hits: making.hits, words }
    }

    /// The hits that have every word of a text, one way or another, the best of each group first.
    pub fn find(&self, text: &str) -> Vec<Hits> {
        let wanted = words_of(text);
        let Some(scores) = wanted.iter().map(|word| self.scores(word)).reduce(|all, more| {
            let both = |(hit, score)| more.get(&hit).map(|other| (hit, score + other));
            all.into_iter().filter_map(both).collect()
        }) else {
            return Vec::new();
        };
        let mut ranked: Vec<(usize, f32)> = scores.into_iter().collect();
        ranked.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
        let of = |group| {
            let hits = ranked.iter().filter_map(|(hit, _)| self.hits.get(*hit));
            let hits: Vec<&Hit> = hits.filter(|hit| hit.group == group).collect();
            let best = hits.iter().take(SHOWN).map(|hit| (*hit).clone()).collect();
            Hits { group, best, of: hits.len() }
        };
        Group::ALL.into_iter().map(of).filter(|hits| hits.of > 0).collect()
    }

    /// Every hit that has a word like this one, with how well it fits.
    fn scores(&self, wanted: &str) -> HashMap<usize, f32> {
        let mut scores = HashMap::new();
        for (word, weights) in &self.words {
            let Some(likeness) = likeness(wanted, word) else { continue };
            for (hit, weight) in weights {
                let score = scores.entry(*hit).or_insert(0.0_f32);
                *score = score.max(likeness * weight);
            }
        }
        scores
    }
}

#[derive(Default)]
struct Making {
    hits: Vec<Hit>,
    words: HashMap<String, HashMap<usize, f32>>,
}

impl Making {
    fn add(&mut self, hit: Hit, texts: &[(&str, f32)]) {
        let place = self.hits.len();
        for (text, weight) in texts {
            for word in words_of(text).into_iter().chain(joined(text)) {
                let known = self.words.entry(word).or_default().entry(place).or_insert(0.0);
                *known = known.max(*weight);
            }
        }
        self.hits.push(hit);
    }

    fn lessons(&mut self, library: &Library) {
        for lesson in library.lessons() {
            let goals = lesson.front.goals.join(" ");
            let parts = sections(lesson);
            let opening = parts.iter().find(|part| part.heading.is_none());
            let opening = opening.map_or("", |part| part.text.as_str());
            let about = lesson.front.goals.first().cloned().unwrap_or_default();
            self.add(
                Hit {
                    group: Group::Lessons,
                    title: lesson.front.title.clone(),
                    about,
                    to: Way::Lesson(lesson.front.id.clone()),
                },
                &[
                    (&lesson.front.title, 1.25 * of_title(&lesson.front.title)),
                    (&lesson.front.id, NAME),
                    (&goals, NAME),
                    (opening, TEXT),
                ],
            );
            for part in &parts {
                let Some(heading) = part.heading else { continue };
                let to =
                    Way::Part { lesson: lesson.front.id.clone(), anchor: heading.anchor.clone() };
                self.add(
                    Hit {
                        group: Group::Lessons,
                        title: heading.title.clone(),
                        about: format!("In {}", lesson.front.title),
                        to,
                    },
                    &[(&heading.title, of_title(&heading.title)), (&part.text, TEXT)],
                );
            }
        }
    }

    fn number(&mut self, entry: &'static Entry) {
        let symbol = matching::plain_symbol(entry.symbol);
        self.add(
            Hit {
                group: Group::Numbers,
                title: crate::app::widget::symbol::capitalised(entry.label),
                about: entry.meaning.to_owned(),
                to: Way::Number(entry.id),
            },
            &[
                (entry.label, of_title(entry.label)),
                (entry.id.name(), NAME),
                (&symbol, NAME),
                (entry.meaning, TEXT),
            ],
        );
    }

    /// A rule leads to the first part of a lesson in which its number appears, or to the number.
    fn rule(&mut self, rule: &'static Rule, library: &Library) {
        let label = catalogue::find(rule.finds.name()).map_or(rule.finds.name(), |e| e.label);
        let (about, to) = match library.appearances(rule.finds).first() {
            Some(there) => {
                let lesson = there.lesson.clone();
                let to = match &there.heading {
                    Some((anchor, _)) => Way::Part { lesson, anchor: anchor.clone() },
                    None => Way::Lesson(lesson),
                };
                (format!("Finds the {label}, in {}", there.title), to)
            }
            None => (format!("Finds the {label}"), Way::Number(rule.finds)),
        };
        self.add(
            Hit { group: Group::Rules, title: rule.title.to_owned(), about, to },
            &[(rule.title, of_title(rule.title)), (label, 0.5 * NAME)],
        );
    }
}
