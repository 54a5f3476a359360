//! What can be printed, and how the reader wants it: the card that asks, and the page it makes.

use std::sync::Arc;

use iced::widget::{column, row, text, text_input};
use iced::{Center, Element, Fill, Length};

use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::shell::Message;
use crate::app::theme::{self, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::choice::choice;
use crate::app::widget::pressable::{Kind, pressable};
use crate::handout::{self, Choices, Copies, Paper, Subject, Told};
use crate::lesson::Library;
use crate::notebook::Notebook;
use crate::quantity::{UnitSet, Units};

/// What is printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Print {
    /// A lesson, by its id.
    Lesson(String),
    /// The record of the build.
    WalkRound,
    /// The reader's notebook.
    Notebook,
}

/// What is printed and how, as the reader has said so far.
#[derive(Debug, Clone, PartialEq)]
pub struct Order {
    /// What is printed.
    pub what: Print,
    /// The build beside the reader's own, if there is one.
    companion: Option<String>,
    whole: bool,
    copies: String,
    seed: String,
    key: bool,
    beside: bool,
    paper: Paper,
    /// What is wrong with what was typed.
    wrong: Option<String>,
}

/// What is done on the card.
#[derive(Debug, Clone)]
pub enum Act {
    /// All the text, or only what a bench needs.
    Whole(bool),
    /// The number of copies is now this.
    Copies(String),
    /// What their numbers start from is now this.
    Seed(String),
    /// With a key, or without.
    Key(bool),
    /// With the companion, or without.
    Beside(bool),
    /// On this paper.
    Paper(Paper),
}

impl Order {
    /// The usual order for that.
    pub fn new(what: Print, desk: &Desk, settings: &Settings) -> Self {
        Self {
            what,
            companion: desk.company.all().first().map(|companion| companion.name.clone()),
            whole: false,
            copies: String::new(),
            seed: "1".to_owned(),
            key: false,
            beside: false,
            paper: match settings.units.set {
                UnitSet::Metric => Paper::A4,
                UnitSet::Imperial => Paper::Letter,
            },
            wrong: None,
        }
    }

    /// Takes what was done.
    pub fn perform(&mut self, act: Act) {
        self.wrong = None;
        match act {
            Act::Whole(whole) => self.whole = whole,
            Act::Copies(text) => self.copies = text,
            Act::Seed(text) => self.seed = text,
            Act::Key(key) => self.key = key,
            Act::Beside(beside) => self.beside = beside,
            Act::Paper(paper) => self.paper = paper,
        }
    }

    /// Whether everything typed can be understood; what is wrong is said on the card.
    pub fn is_clear(&mut self) -> bool {
        self.wrong = self.copies().err();
        self.wrong.is_none()
    }

    fn copies(&self) -> Result<Option<Copies>, String> {
        if self.copies.trim().is_empty() {
            return Ok(None);
        }
        let whole = |text: &str, what: &str| {
            text.trim().parse::<u64>().map_err(|_| {
                format!("“{}” is no {what}. Type a whole number, such as 6.", text.trim())
            })
        };
        let count = whole(&self.copies, "number of copies")?;
        let seed = whole(&self.seed, "seed")?;
        let count = usize::try_from(count).unwrap_or(usize::MAX);
        Copies::new(count, seed).map(Some).map_err(|error| error.to_string())
    }

    /// A name for the file, without an ending.
    pub fn name(&self, desk: &Desk) -> String {
        match &self.what {
            Print::Lesson(id) => id.clone(),
            Print::WalkRound => format!("walk-round-{}", desk.file_name()),
            Print::Notebook => "notebook".to_owned(),
        }
    }

    /// Everything the page is made from, to be taken to another thread.
    pub fn job(self, desk: &Desk, settings: &Settings, held: Held) -> Job {
        let companion = desk.company.all().first().filter(|_| self.beside);
        Job {
            subject: Subject::new(desk.name(), desk.sheet().clone()),
            companion: companion.map(|it| Subject::new(it.name.clone(), it.sheet.clone())),
            units: settings.units.clone(),
            order: self,
            held,
        }
    }
}

/// What the reader has besides the build.
pub struct Held {
    /// The lessons.
    pub library: Arc<Library>,
    /// The notebook.
    pub notebook: Notebook,
}

/// A page to be made.
pub struct Job {
    order: Order,
    subject: Subject,
    companion: Option<Subject>,
    units: Units,
    held: Held,
}

impl Job {
    /// The page as one HTML file; nothing if `told` called it off.
    ///
    /// # Errors
    /// In words, why there is none.
    pub fn page(self, told: Told<'_>) -> Result<Option<String>, String> {
        let Self { order, subject, companion, units, held } = self;
        let paper = order.paper;
        match &order.what {
            Print::Lesson(id) => {
                let copies = order.copies()?;
                let choices = Choices { units, paper, copies, key: order.key, whole: order.whole };
                let builds = (&subject, companion.as_ref());
                if held.library.lesson(id).is_none() {
                    return Err("This lesson is not there any more.".to_owned());
                }
                Ok(handout::lesson_of(&held.library, id, builds, &choices, told))
            }
            Print::WalkRound => Ok(Some(handout::walk_round(&subject, &units, paper))),
            Print::Notebook => {
                let titles = held.library.titles();
                Ok(Some(handout::notebook(&held.notebook, &titles, &subject, &units, paper)))
            }
        }
    }
}

/// The card that asks how.
pub fn card(order: &Order) -> Element<'_, Message> {
    let title = match order.what {
        Print::Lesson(_) => "Print a handout",
        Print::WalkRound => "Print the walk-round",
        Print::Notebook => "Print the notebook",
    };
    let about = "This writes one file. Open it in any browser and print it from there.";
    let lesson = matches!(order.what, Print::Lesson(_)).then(|| of_lesson(order));
    let papers = [("A4", Paper::A4), ("Letter", Paper::Letter)];
    let papers = papers.map(|(words, paper)| way(words, order.paper == paper, Act::Paper(paper)));
    column![
        text(title).size(size::MINOR).font(SEMIBOLD),
        text(about).size(size::BODY).line_height(theme::LEADING).width(Fill),
        lesson,
        asked("Paper", choice(papers)),
        row![
            pressable(Kind::Main, text("Choose where to save").size(size::LABEL))
                .id(crate::app::question::FIRST)
                .on_press(Message::PrintOrdered),
            pressable(Kind::Plain, text("Stay").size(size::LABEL))
                .on_press(Message::QuestionClosed),
        ]
        .spacing(UNIT)
        .wrap()
        .vertical_spacing(UNIT),
    ]
    .spacing(2.0 * UNIT)
    .into()
}

fn of_lesson(order: &Order) -> Element<'_, Message> {
    let texts = [
        way("What a bench needs", !order.whole, Act::Whole(false)),
        way("The whole lesson", order.whole, Act::Whole(true)),
    ];
    let keys = [
        way("Without answers", !order.key, Act::Key(false)),
        way("With a key", order.key, Act::Key(true)),
    ];
    let beside = order.companion.as_ref().map(|name| {
        let ways = [
            way("Your build alone", !order.beside, Act::Beside(false)),
            way(&format!("{name} beside it"), order.beside, Act::Beside(true)),
        ];
        asked("Builds", choice(ways))
    });
    let numbers = row![
        field("print-copies", "Copies", &order.copies, Act::Copies),
        field("print-seed", "Seed", &order.seed, Act::Seed),
    ]
    .spacing(2.0 * UNIT);
    let told = match &order.wrong {
        Some(wrong) => text(wrong).style(theme::warning),
        None => text(
            "Copies have numbers of their own, and the same seed makes them again. Without a \
             number of copies it is one sheet with your own.",
        )
        .style(theme::soft),
    };
    column![
        asked("Text", choice(texts)),
        column![numbers, told.size(size::SMALL).width(Fill)].spacing(UNIT / 2.0),
        asked("Answers", choice(keys)),
        beside,
    ]
    .spacing(2.0 * UNIT)
    .into()
}

fn way(words: &str, chosen: bool, act: Act) -> (String, bool, Message) {
    (words.to_owned(), chosen, Message::PrintAct(act))
}

fn asked<'a>(label: &'a str, ways: Element<'a, Message>) -> Element<'a, Message> {
    column![text(label).size(size::SMALL).style(theme::soft), ways].into()
}

fn field<'a>(
    id: &'static str,
    label: &'a str,
    typed: &str,
    act: fn(String) -> Act,
) -> Element<'a, Message> {
    row![
        text(label).size(size::LABEL),
        text_input("", typed)
            .id(id)
            .font(REGULAR)
            .size(size::LABEL)
            .padding([6, 8])
            .width(Length::Fixed(72.0))
            .style(theme::field)
            .on_input(move |text| Message::PrintAct(act(text)))
            .on_submit(Message::PrintOrdered),
    ]
    .spacing(UNIT)
    .align_y(Center)
    .into()
}
