//! What every block of a page is drawn from, and what it can ask for.

use std::collections::{HashMap, HashSet};

use crate::app::block::{
    curve, faded, guess, hundred_grams, ledger, levers, measure, run, side_by_side, sketch, target,
};
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::widget::field;
use crate::app::widget::picture::Picture;
use crate::lesson::{Lesson, Target};
use crate::plot::save::Figure;
use crate::plot::sketch::{Show, View};
use crate::quantity::AnyId;
use crate::sheet::Edit;

/// What a page is drawn from.
#[derive(Clone, Copy)]
pub struct Page<'a> {
    /// The build.
    pub desk: &'a Desk,
    /// Units and the like.
    pub settings: &'a Settings,
    /// The lesson.
    pub lesson: &'a Lesson,
    /// What the reader has opened and answered on this page.
    pub marks: &'a Marks,
    /// Whether it is drawn on dark paper.
    pub dark: bool,
    /// The width of the reading column, in pixels.
    pub width: f32,
    /// Who looks at it.
    pub audience: Audience,
}

impl Page<'_> {
    /// The height of a picture that is so tall for a reader: before a class it fits the screen with
    /// the words it needs.
    pub fn tall(&self, pixels: f32) -> f32 {
        match self.audience {
            Audience::Reader => pixels,
            Audience::Class { .. } => pixels.min(BEFORE_CLASS),
        }
    }
}

/// The tallest picture before a class, in pixels.
const BEFORE_CLASS: f32 = 210.0;

/// Who looks at a page.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Audience {
    /// One reader.
    #[default]
    Reader,
    /// A class: questions are voted on, and answers wait until they are asked for.
    Class {
        /// Whether the teacher’s notes are shown.
        notes: bool,
    },
}

/// What the reader has opened and answered on a page.
#[derive(Default)]
pub struct Marks {
    /// Workings that are open.
    pub open: HashSet<String>,
    /// Guesses, by their key.
    pub guesses: HashMap<String, guess::State>,
    /// Votes of a class, by the key of the guess.
    pub polls: HashMap<String, guess::vote::Poll>,
    /// Curves, by the line they start on.
    pub curves: HashMap<usize, curve::State>,
    /// Sketches, by the line they start on.
    pub sketches: HashMap<usize, sketch::State>,
    /// Ledgers, by the line they start on.
    pub ledgers: HashMap<usize, ledger::State>,
    /// Faded examples, by the line they start on.
    pub faded: HashMap<usize, faded::State>,
    /// Measures, by the line they start on.
    pub measures: HashMap<usize, measure::State>,
    /// Builds compared, by the line they start on.
    pub side_by_side: HashMap<usize, side_by_side::State>,
    /// Targets, by the line they start on.
    pub targets: HashMap<usize, target::State>,
    /// Levers, by the line they start on.
    pub levers: HashMap<usize, levers::State>,
    /// Tables of what 100 g buys, by the line they start on.
    pub hundred_grams: HashMap<usize, hundred_grams::State>,
    /// Runs, by the line they start on.
    pub runs: HashMap<usize, run::State>,
    /// Where pictures of blocks were last saved, in words, by the line they start on.
    pub saved: HashMap<usize, String>,
    /// The pictures of the lesson.
    pub pictures: HashMap<String, Picture>,
}

impl Marks {
    /// The picture of the block that starts on `line` as a file may hold it, and a name for it.
    pub fn figure(&self, line: usize, what: Pictured) -> Option<(Figure, String)> {
        match what {
            Pictured::Curve => self.curves.get(&line)?.figure(),
            Pictured::Sketch(view, show) => self.sketches.get(&line)?.figure((view, show)),
            Pictured::Run => self.runs.get(&line)?.figure(),
        }
    }
}

/// A picture of a block that can be saved.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Pictured {
    /// A curve.
    Curve,
    /// A sketch, seen and shown so.
    Sketch(View, Show),
    /// A run.
    Run,
}

/// What a block asks for.
#[derive(Debug, Clone)]
pub enum Message {
    /// A number is being changed.
    Field(field::Event),
    /// A working is opened or closed.
    Working(String),
    /// Something is done in a guess.
    Guess(String, guess::Act),
    /// A class votes on a guess.
    Poll(String, guess::vote::Act),
    /// Something is done in a curve.
    Curve(usize, curve::Act),
    /// The build is changed; changes of one gesture count as one.
    Edit(Edit, Option<String>),
    /// A sketch is to be seen from elsewhere.
    Look(usize, View),
    /// The parts of a ledger are to be sorted again.
    Sort(usize),
    /// Something is done in a faded example.
    Faded(usize, faded::Act),
    /// Something is done in a measure.
    Measure(usize, measure::Act),
    /// A footnote is wanted, or, from it, the place that refers to it.
    Footnote {
        /// Its name.
        name: String,
        /// Whether to go back.
        back: bool,
    },
    /// Something is done in a target.
    Target(usize, target::Act),
    /// Something is done in a levers block.
    Levers(usize, levers::Act),
    /// Something is done in a run.
    Run(usize, run::Act),
    /// Numbers go back to those of the saved build.
    PutBack(Vec<AnyId>),
    /// A number is to be shown in its next unit.
    NextUnit(AnyId),
    /// Words are to be copied.
    Copy(String),
    /// A picture is to be saved.
    Save(usize, Pictured),
    /// A picture is to be copied.
    CopyPicture(usize, Pictured),
    /// A link is followed.
    Follow(Target),
}
