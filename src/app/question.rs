//! What the program asks before it would lose something, and the sheet of keys: a card over the
//! page.

use std::path::PathBuf;

use iced::widget::{
    Column, column, container, opaque, progress_bar, row, scrollable, stack, text, text_input,
};
use iced::{Background, Center, Color, Element, Fill};

use crate::app::files::Purpose;
use crate::app::find::{self, view::Finding};
use crate::app::printing::{self, Order};
use crate::app::shell::Message;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::escaping::escaping;
use crate::app::widget::pressable::{Kind, pressable};
use crate::sheet::Edit;

/// What is asked.
#[derive(Debug, Clone, PartialEq)]
pub enum Question {
    /// The build is not saved, and this would put it away.
    Unsaved(Next),
    /// The file was changed by another program since it was read.
    ChangedOnDisk {
        /// Whether there are changes here that are not saved.
        unsaved: bool,
    },
    /// Changes that were not saved were found, to this build.
    Recover(String),
    /// A link leads out of the program.
    Web(String),
    /// This desktop shows no file dialog, so the path is typed.
    Path {
        /// What it is for.
        purpose: Purpose,
        /// As typed.
        text: String,
    },
    /// How something is to be printed.
    Print(Order),
    /// A page for the printer is being made.
    Writing {
        /// So many of its sheets are made.
        made: usize,
        /// So many it will have.
        of: usize,
    },
    /// It was written there.
    Written(PathBuf),
    /// Something went wrong.
    Told(String),
    /// What is looked for.
    Find(Finding),
    /// The sheet of keys.
    Keys,
}

/// What to do once the build is put away.
#[derive(Debug, Clone, PartialEq)]
pub enum Next {
    /// Close the window.
    Close,
    /// Choose a file to open.
    Open,
    /// Open this file.
    OpenPath(PathBuf),
    /// Open a demo build.
    Demo(&'static str),
    /// Start a blank build.
    Blank,
    /// Start a build with these answers.
    Begin(Vec<Edit>),
    /// Put a copy of the build on the desk, and the build itself beside it.
    WhatIf,
}

/// The first answer to what is asked.
pub const FIRST: &str = "answer:0";

/// The keys, and what they do.
pub const KEYS: &[(&str, &str)] = &[
    ("Tab, Shift+Tab", "next or previous control"),
    ("F6", "first control of the page, past the rail"),
    ("Enter or Space", "press the control in focus"),
    ("↑ ↓ in a number", "one step; with Shift, ten"),
    ("← → on the slider of a run", "a hundredth of it; with Shift, ten"),
    ("← → on a curve", "read point by point; Shift or Page keys ten, Home, End; Esc leaves"),
    ("↑ ↓ on a curve", "move its dot by a step; with Shift, ten"),
    ("Page Up, Page Down, Space, ↑ ↓, Home, End", "move the page"),
    ("Alt+← Alt+→", "previous or next lesson"),
    ("Ctrl+1 to 6", "lessons, build sheet, walk-round, notebook, bench, settings"),
    ("Ctrl+F", "find; ↓ ↑ go through what is found, Enter opens it"),
    ("Ctrl+P", "print the lesson, the walk-round or the notebook"),
    ("Ctrl+N, Ctrl+O, Ctrl+S, Ctrl+Shift+S", "new, open, save, save as"),
    ("Ctrl+Z, Ctrl+Shift+Z or Ctrl+Y", "undo, redo"),
    ("Ctrl+Plus, Ctrl+Minus, Ctrl+0", "larger, smaller, usual text"),
    ("Ctrl+U, Ctrl+D", "metric or imperial; light, dark or as the system"),
    ("F5", "show the lesson to a class; Esc goes back to reading"),
    ("before a class: ← → ↑ ↓, Page Up, Page Down, a clicker", "step back or on"),
    (
        "before a class: A or Enter; N; B; 1, 2, 3",
        "answer; notes; blank screen; a hand for that answer",
    ),
    ("Ctrl+Q", "close the window"),
    ("F1", "this sheet; Esc puts it away"),
];

/// What a question scrolls in, in a window too low for all of it.
pub const SHEET: &str = "question";

/// The page with a card over it.
pub fn over<'a>(page: Element<'a, Message>, question: &'a Question) -> Element<'a, Message> {
    let sheet = scrollable(container(card(question)).padding([0.0, 2.0 * UNIT]))
        .id(SHEET)
        .direction(theme::bar())
        .style(theme::scroll);
    let card = container(sheet).style(theme::block).padding([3.0 * UNIT, UNIT]).max_width(520);
    veiled(page, card.into())
}

/// The page with the word that a file held over it can be let go.
pub fn invitation<'a>(page: Element<'a, Message>) -> Element<'a, Message> {
    let words = column![
        text("Let go to open the build").size(size::MINOR).font(SEMIBOLD),
        text("Changes to the build on the desk are not lost: Heftwise asks first.")
            .size(size::LABEL)
            .style(theme::soft),
    ]
    .spacing(UNIT);
    veiled(page, container(words).style(theme::block).padding(3.0 * UNIT).max_width(520).into())
}

/// The page with something over it.
fn veiled<'a>(page: Element<'a, Message>, card: Element<'a, Message>) -> Element<'a, Message> {
    let veil = container(card).center(Fill).padding(2.0 * UNIT).style(|_| container::Style {
        background: Some(Background::Color(Color { a: 0.55, ..Color::BLACK })),
        ..Default::default()
    });
    stack![page, opaque(veil)].into()
}

fn card<'a>(question: &'a Question) -> Element<'a, Message> {
    match question {
        Question::Unsaved(next) => ask(
            "This build is not saved",
            "Save it before it is put away?".to_owned(),
            vec![
                ("Save", Kind::Main, Message::SaveThen(next.clone())),
                ("Do not save", Kind::Plain, Message::Proceed(next.clone())),
                ("Stay", Kind::Plain, Message::QuestionClosed),
            ],
        ),
        Question::ChangedOnDisk { unsaved: false } => ask(
            "The file has changed",
            "Another program has changed this build’s file since it was read here.".to_owned(),
            vec![
                ("Read it again", Kind::Main, Message::Reread),
                ("Keep what is here", Kind::Plain, Message::QuestionClosed),
            ],
        ),
        Question::ChangedOnDisk { unsaved: true } => ask(
            "The file has changed",
            "Another program has changed this build’s file since it was read here. Nothing has \
             been written."
                .to_owned(),
            vec![
                ("Save under another name", Kind::Main, Message::SaveAs),
                ("Write over it", Kind::Plain, Message::SaveOver),
                ("Read the file, drop my changes", Kind::Plain, Message::Reread),
                ("Do nothing", Kind::Plain, Message::QuestionClosed),
            ],
        ),
        Question::Recover(build) => ask(
            "Changes were kept",
            format!("The program ended before changes to {build} were saved."),
            vec![
                ("Bring them back", Kind::Main, Message::Recover),
                ("Throw them away", Kind::Plain, Message::RecoveryRefused),
                ("Decide later", Kind::Plain, Message::QuestionClosed),
            ],
        ),
        Question::Web(address) => ask(
            "This leads out of Heftwise",
            format!(
                "The lesson points to {address}. Heftwise opens no network pages itself; copy the address to read it in your browser."
            ),
            vec![
                ("Copy the address", Kind::Main, Message::Copy(address.clone())),
                ("Stay here", Kind::Plain, Message::QuestionClosed),
            ],
        ),
        Question::Path { purpose, text } => path(*purpose, text),
        Question::Print(order) => printing::card(order),
        Question::Writing { made, of } => writing(*made, *of),
        Question::Written(path) => ask(
            "The page is written",
            format!("It is at {}. Open it in any browser and print it from there.", path.display()),
            vec![
                ("Close", Kind::Main, Message::QuestionClosed),
                ("Copy the path", Kind::Plain, Message::Copy(path.display().to_string())),
            ],
        ),
        Question::Told(words) => ask(
            "This did not work",
            words.clone(),
            vec![("Close", Kind::Main, Message::QuestionClosed)],
        ),
        Question::Find(finding) => find::view::card(finding),
        Question::Keys => keys(),
    }
}

/// How far a page has come.
fn writing<'a>(made: usize, of: usize) -> Element<'a, Message> {
    let sheet = match of {
        1 => String::new(),
        _ => format!("{made} of {of} sheets are made. "),
    };
    column![
        text("Writing…").size(size::MINOR).font(SEMIBOLD),
        progress_bar(0.0..=of as f32, made as f32).girth(UNIT).style(theme::tally),
        text(format!("{sheet}Cancel, and no file is left.")).size(size::BODY).width(Fill),
        pressable(Kind::Plain, text("Cancel").size(size::LABEL))
            .id(FIRST)
            .on_press(Message::QuestionClosed),
    ]
    .spacing(2.0 * UNIT)
    .into()
}

fn ask<'a>(
    title: &'a str,
    words: String,
    ways: Vec<(&'a str, Kind, Message)>,
) -> Element<'a, Message> {
    let ways = ways.into_iter().enumerate().map(|(place, (word, kind, message))| {
        pressable(kind, text(word).size(size::LABEL))
            .id(format!("answer:{place}"))
            .on_press(message)
            .into()
    });
    column![
        text(title).size(size::MINOR).font(SEMIBOLD),
        text(words).size(size::BODY).line_height(theme::LEADING).width(Fill),
        iced::widget::Row::with_children(ways).spacing(UNIT).wrap().vertical_spacing(UNIT),
    ]
    .spacing(2.0 * UNIT)
    .into()
}

/// The field for a path.
pub const PATH: &str = "answer:path";

fn path<'a>(purpose: Purpose, typed: &'a str) -> Element<'a, Message> {
    let (title, word) = match purpose {
        Purpose::Save => ("Save the build as", "Save"),
        Purpose::Open => ("Open a build", "Open"),
        Purpose::Companion => ("Set a build beside yours", "Set beside"),
        Purpose::Figure => ("Save the picture (.svg, .png or .csv)", "Save"),
        Purpose::Paper => ("Save the page as", "Save"),
    };
    let example = match purpose {
        Purpose::Figure => "/home/me/curve.svg",
        Purpose::Paper => "/home/me/handout.html",
        _ => "/home/me/build.toml",
    };
    let field = text_input(example, typed)
        .id(PATH)
        .size(size::LABEL)
        .padding([6, 8])
        .style(theme::field)
        .on_input(Message::PathTyped)
        .on_submit(Message::PathGiven);
    column![
        text(title).size(size::MINOR).font(SEMIBOLD),
        text("This desktop has no file dialog to show. Type the path of the file.")
            .size(size::BODY)
            .line_height(theme::LEADING)
            .width(Fill),
        escaping(field, Message::QuestionClosed),
        row![
            pressable(Kind::Main, text(word).size(size::LABEL)).on_press(Message::PathGiven),
            pressable(Kind::Plain, text("Stay").size(size::LABEL))
                .on_press(Message::QuestionClosed),
        ]
        .spacing(UNIT),
    ]
    .spacing(2.0 * UNIT)
    .into()
}

fn keys<'a>() -> Element<'a, Message> {
    let lines = KEYS.iter().map(|(keys, does)| {
        row![
            text(*keys).size(size::LABEL).font(SEMIBOLD).width(200),
            text(*does).size(size::LABEL).width(250),
        ]
        .spacing(UNIT)
        .wrap()
        .vertical_spacing(0)
        .into()
    });
    column![
        row![
            text("Keys").size(size::MINOR).font(SEMIBOLD).width(Fill),
            pressable(Kind::Main, text("Close").size(size::LABEL))
                .id(FIRST)
                .on_press(Message::QuestionClosed),
        ]
        .align_y(Center),
        Column::with_children(lines).spacing(UNIT),
    ]
    .spacing(2.0 * UNIT)
    .into()
}
