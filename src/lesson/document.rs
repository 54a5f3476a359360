//! A lesson as the window and the handout read it: blocks of text and live blocks, each with the
//! line of the lesson file where it starts.

use super::block::{
    self, Calculator, Curve, Deeper, Faded, Guess, HundredGrams, Ledger, Levers, Measure,
    SideBySide, Sketch,
};
use super::problem::Problem;
use crate::quantity::AnyId;

/// One lesson, read. Reading never fails: what is wrong stands in [`Lesson::problems`].
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Lesson {
    /// The file as messages name it: `lessons/pressure/lesson.md`.
    pub file: String,
    /// What it says about itself.
    pub front: Front,
    /// The text, top to bottom.
    pub blocks: Vec<Block>,
    /// Every heading in order, for the table of contents.
    pub headings: Vec<Heading>,
    /// What it names outside itself, for checks that need the other files.
    pub mentions: Vec<Mention>,
    /// Everything that is wrong with it, in the order of the file; what it works with all the same is
    /// found by [`proof`](super::proof).
    pub problems: Vec<Problem>,
}

/// What a lesson says about itself before its text.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Front {
    /// Its id, which is also the name of its folder. Read alone, a lesson has the id its front matter
    /// gives, or none; in a library, always its folder's name.
    pub id: String,
    /// What it is called; empty if the front matter says nothing.
    pub title: String,
    /// Its place among the lessons, small first.
    pub order: i64,
    /// How long it takes, in minutes, as the author sees it.
    pub minutes: Option<u32>,
    /// Lessons to read first.
    pub needs: Vec<String>,
    /// What the reader can do afterwards.
    pub goals: Vec<String>,
    /// The build's numbers that this lesson uses.
    pub uses: Vec<AnyId>,
}

/// Something outside the file that a lesson names.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Mention {
    /// What it is.
    pub kind: MentionKind,
    /// Its name.
    pub name: String,
    /// Line where it is named, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
}

/// What a lesson names.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum MentionKind {
    /// Its own id.
    Id,
    /// A lesson to read first.
    Need,
    /// A lesson it links to.
    Lesson,
    /// A picture in its folder.
    Picture,
    /// A heading of its own.
    Heading,
    /// A quantity: in a link or a live block.
    Quantity,
}

/// A heading, for the table of contents.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Heading {
    /// 1 to 6.
    pub level: u8,
    /// Its name within the lesson, used by no other heading of it.
    pub anchor: String,
    /// Its words without style.
    pub title: String,
    /// Line of the file, from 1.
    pub line: usize,
}

/// One block of a lesson.
#[derive(Debug, Clone, PartialEq)]
pub struct Block {
    /// Line of the file where it starts, from 1.
    pub line: usize,
    /// What it is.
    pub kind: BlockKind,
}

/// What a block is.
#[derive(Debug, Clone, PartialEq)]
pub enum BlockKind {
    /// A heading.
    Heading {
        /// 1 to 6.
        level: u8,
        /// Its name within the lesson.
        anchor: String,
        /// Its words.
        spans: Vec<Span>,
    },
    /// Running text.
    Paragraph(Vec<Span>),
    /// A list.
    List {
        /// The first number, or nothing for bullets.
        start: Option<u64>,
        /// The items.
        items: Vec<Vec<Block>>,
    },
    /// A quotation.
    Quote(Vec<Block>),
    /// A note set apart from the text, a caution for one.
    Alert {
        /// How urgent.
        kind: AlertKind,
        /// What it says.
        blocks: Vec<Block>,
    },
    /// A table; every row has as many cells as the header.
    Table {
        /// How each column is set.
        alignments: Vec<Alignment>,
        /// The cells of the header.
        header: Vec<Vec<Span>>,
        /// The rows of cells.
        rows: Vec<Vec<Vec<Span>>>,
    },
    /// Text shown as typed.
    Code {
        /// The info string of the fence, empty if there is none.
        language: String,
        /// The text.
        text: String,
    },
    /// A formula on a line of its own, in TeX.
    Formula(String),
    /// A picture from the lesson's folder.
    Picture {
        /// Its file, a plain path inside the lesson's folder.
        file: String,
        /// What it shows, in words.
        alt: String,
    },
    /// A line across the page.
    Rule,
    /// A footnote.
    Footnote {
        /// Its name, as [`Span::FootnoteRef`] gives it.
        name: String,
        /// What it says.
        blocks: Vec<Block>,
    },
    /// Numbers to change and numbers found.
    Calculator(Calculator),
    /// A found number against a given one.
    Curve(Curve),
    /// A question answered before the number is shown.
    Guess(Guess),
    /// The machine drawn to scale.
    Sketch(Sketch),
    /// The parts by mass.
    Ledger(Ledger),
    /// A worked chain in which the reader fills the blanks.
    Faded(Faded),
    /// A bench test at home.
    Measure(Measure),
    /// A part that is folded until the reader opens it.
    Deeper(Deeper),
    /// The answers to questions asked before, folded until the reader asks for them.
    Answers(Vec<Block>),
    /// A note for teachers, hidden in normal reading.
    Teacher(Vec<Block>),
    /// Builds in columns, numbers in rows.
    SideBySide(SideBySide),
    /// A wish, and the number that gets there.
    Target(block::Target),
    /// What one more step of each number does.
    Levers(Levers),
    /// What 100 g more does to every headline answer.
    HundredGrams(HundredGrams),
    /// Something over time.
    Run(block::Run),
    /// A live block that cannot be read; the rest of the lesson still works.
    Broken {
        /// The info string of its fence.
        name: String,
        /// The text inside the fence.
        source: String,
        /// What is wrong; also in [`Lesson::problems`].
        problems: Vec<Problem>,
    },
}

/// How urgent an alert is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum AlertKind {
    /// Worth knowing.
    Note,
    /// Makes it easier.
    Tip,
    /// Needed to get it right.
    Important,
    /// Something can break.
    Warning,
    /// Someone can be hurt.
    Caution,
}

/// How a column of a table is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Alignment {
    /// As the page likes.
    #[default]
    Unset,
    /// To the left.
    Left,
    /// In the middle.
    Centre,
    /// To the right.
    Right,
}

/// A run of text inside a block.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Span {
    /// Words of one style.
    Text {
        /// The words.
        text: String,
        /// Their style.
        style: Style,
    },
    /// A formula within the line, in TeX.
    Formula(String),
    /// A link; its spans hold no further link.
    Link {
        /// Where it leads.
        to: Target,
        /// What a reader of the plain file sees.
        spans: Vec<Span>,
    },
    /// A line break the author asked for.
    Break,
    /// The mark of a footnote.
    FootnoteRef(String),
}

/// The style of words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub struct Style {
    /// Bold.
    pub strong: bool,
    /// Italic.
    pub emphasis: bool,
    /// Struck through.
    pub strikethrough: bool,
    /// As typed, in a fixed width.
    pub code: bool,
}

/// Where a link leads.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
pub enum Target {
    /// A number of the reader's build, shown in place of the link's words.
    Live {
        /// Which.
        id: AnyId,
        /// The unit to show it in, if the author chose one.
        unit: Option<String>,
    },
    /// What a quantity means.
    Quantity(AnyId),
    /// Another lesson.
    Lesson(String),
    /// A heading of this lesson, by its anchor.
    Heading(String),
    /// A page on the web; shown, opened only when the reader asks.
    Web(String),
    /// Nowhere we know; a problem says why. The words are shown as plain text.
    Unknown(String),
}
