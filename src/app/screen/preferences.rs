//! The settings: units, light, size of text, what moves, and folders.

use std::path::{Path, PathBuf};

use iced::widget::{Row, column, row, text, text_input};
use iced::{Center, Element, Fill};

use crate::app::settings::{Daylight, Settings};
use crate::app::shell;
use crate::app::theme::{self, BOLD, MEASURE, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::pick::pick;
use crate::app::widget::pressable::{Kind, pressable};
use crate::quantity::UnitSet;

/// A folder that is set here.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Which {
    /// Where the dialogs for builds begin.
    Builds,
    /// The reader's own lessons.
    Lessons,
}

/// What is being typed.
pub struct Choices {
    builds: String,
    lessons: String,
    /// Why the folder for builds was not taken.
    refused: Option<String>,
}

/// What happens among the settings.
#[derive(Debug, Clone)]
pub enum Message {
    /// The path of a folder is now this.
    Typed(Which, String),
    /// The path typed is the one.
    Given(Which),
    /// It is to be chosen in a dialog.
    Choose(Which),
    /// The dialog is over, with this path.
    Picked(Which, Option<PathBuf>),
    /// No folder is wanted.
    None(Which),
    /// Single quantities are no longer to have units of their own.
    NoPicks,
}

/// What the shell is asked for.
pub enum Action {
    /// Nothing.
    None,
    /// A folder is now this one, or none.
    Set(Which, Option<PathBuf>),
    /// A folder is to be asked for.
    Choose(Which),
    /// Single quantities are no longer to have units of their own.
    NoPicks,
}

/// How the reader's own lessons stand: whether all is well, and in words.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct OwnLessons {
    /// Whether there is something to mend.
    pub wrong: bool,
    /// In words, a line each; empty if no folder is set.
    pub words: Vec<String>,
}

impl Choices {
    /// The folders as they are set.
    pub fn new(settings: &Settings) -> Self {
        let shown = |path: &Option<PathBuf>| {
            path.as_deref().map(|path| path.display().to_string()).unwrap_or_default()
        };
        Self {
            builds: shown(&settings.builds),
            lessons: shown(&settings.own_lessons),
            refused: None,
        }
    }

    /// Acts on a message.
    pub fn update(&mut self, message: Message) -> Action {
        match message {
            Message::Typed(Which::Builds, text) => {
                self.builds = text;
                self.refused = None;
                Action::None
            }
            Message::Typed(Which::Lessons, text) => {
                self.lessons = text;
                Action::None
            }
            Message::Given(which) => self.given(which),
            Message::Choose(which) => Action::Choose(which),
            Message::Picked(which, Some(path)) => Action::Set(which, Some(path)),
            Message::Picked(_, None) => Action::None,
            Message::None(which) => Action::Set(which, None),
            Message::NoPicks => Action::NoPicks,
        }
    }

    fn given(&mut self, which: Which) -> Action {
        let typed = match which {
            Which::Builds => self.builds.trim(),
            Which::Lessons => self.lessons.trim(),
        };
        let path = (!typed.is_empty()).then(|| PathBuf::from(typed));
        if let (Which::Builds, Some(path)) = (which, &path)
            && !path.is_dir()
        {
            self.refused = Some(format!(
                "There is no folder {}. Make it first, or type another.",
                path.display()
            ));
            return Action::None;
        }
        Action::Set(which, path)
    }

    /// The screen; `kept` is where the settings themselves are.
    pub fn view<'a>(
        &'a self,
        settings: &'a Settings,
        own: &'a OwnLessons,
        kept: &Path,
    ) -> Element<'a, shell::Message> {
        let page = column![
            text("Settings").size(size::TITLE).font(BOLD),
            units(settings),
            light(settings),
            letters(settings),
            motion(settings),
            self.builds(settings),
            self.lessons(settings, own),
            text(format!(
                "The window opens as large as you left it, and where you left it if the system \
                 tells. All of this is kept in {}.",
                kept.display()
            ))
            .size(size::SMALL)
            .style(theme::soft)
            .wrapping(text::Wrapping::WordOrGlyph)
            .width(Fill),
        ]
        .spacing(3.0 * UNIT)
        .max_width(MEASURE)
        .width(Fill);
        super::scrolled(page)
    }

    fn builds<'a>(&'a self, settings: &Settings) -> Element<'a, shell::Message> {
        let gone = settings.builds.as_ref().filter(|_| self.refused.is_none());
        let gone = gone.filter(|path| self.builds == path.display().to_string());
        let told = self.refused.clone().map(|words| (true, words)).or_else(|| {
            gone.map(|_| (false, "Opening and saving begin in this folder.".to_owned()))
        });
        part(
            "Folder for builds",
            "Where the dialogs to open and to save begin. Without one they begin beside the build \
             on the desk.",
            column![
                folder(Which::Builds, &self.builds, settings.builds.is_some()),
                told.map(|(wrong, words)| said(wrong, words)),
            ]
            .spacing(UNIT)
            .into(),
        )
    }

    fn lessons<'a>(
        &'a self,
        settings: &Settings,
        own: &'a OwnLessons,
    ) -> Element<'a, shell::Message> {
        let told = own.words.iter().map(|words| said(own.wrong, words.clone()));
        part(
            "Folder for lessons of your own",
            "Each lesson is a folder in it with a lesson.md inside. They stand among the lessons \
             that come with Heftwise, in the place of one of the same name, and change here as \
             soon as you save them there.",
            column![
                folder(Which::Lessons, &self.lessons, settings.own_lessons.is_some()),
                iced::widget::Column::with_children(told).spacing(UNIT / 2.0),
            ]
            .spacing(UNIT)
            .into(),
        )
    }
}

fn said<'a>(wrong: bool, words: String) -> Element<'a, shell::Message> {
    text(words)
        .size(size::LABEL)
        .style(if wrong { theme::warning } else { theme::soft })
        .wrapping(text::Wrapping::WordOrGlyph)
        .width(Fill)
        .into()
}

fn part<'a>(
    title: &'a str,
    about: &'a str,
    inside: Element<'a, shell::Message>,
) -> Element<'a, shell::Message> {
    let about =
        (!about.is_empty()).then(|| text(about).size(size::LABEL).style(theme::soft).width(Fill));
    column![text(title).size(size::MINOR).font(SEMIBOLD), column![about, inside].spacing(UNIT)]
        .spacing(UNIT)
        .into()
}

/// Choices beside each other, under each other where there is no room.
fn choices<'a>(each: Vec<Element<'a, shell::Message>>) -> Element<'a, shell::Message> {
    Row::with_children(each).spacing(UNIT / 2.0).wrap().vertical_spacing(UNIT / 2.0).into()
}

fn units<'a>(settings: &'a Settings) -> Element<'a, shell::Message> {
    let set = settings.units.set;
    let one = |words, which| pick(words, set == which, shell::Message::Set(which));
    let picks = settings.units.picks.len();
    let picked = (picks > 0).then(|| {
        let words = if picks == 1 {
            "1 number has a unit of its own.".to_owned()
        } else {
            format!("{picks} numbers have units of their own.")
        };
        row![
            text(words).size(size::LABEL),
            pressable(Kind::Word, text("Show them in the units of the set").size(size::LABEL))
                .on_press(shell::Message::Choices(Message::NoPicks)),
        ]
        .spacing(UNIT)
        .wrap()
    });
    let both = vec![
        one("Metric: mm, kg, N", UnitSet::Metric),
        one("Imperial: in, lb, lbf", UnitSet::Imperial),
    ];
    part("Units", "", column![choices(both), picked].spacing(UNIT).into())
}

fn light<'a>(settings: &'a Settings) -> Element<'a, shell::Message> {
    let one = |words, which| pick(words, settings.daylight == which, shell::Message::Light(which));
    let three = vec![
        one("Light", Daylight::Day),
        one("Dark", Daylight::Night),
        one("As system", Daylight::Follow),
    ];
    part("Light and dark", "", choices(three))
}

fn letters<'a>(settings: &'a Settings) -> Element<'a, shell::Message> {
    let button = |words, message| {
        pressable(Kind::Plain, text(words).size(size::LABEL)).on_press(message).into()
    };
    let acts = [
        button("Smaller", shell::Message::Text(false)),
        button("Larger", shell::Message::Text(true)),
        button("Usual", shell::Message::TextUsual),
    ];
    let now = text(format!("Text {} %", settings.text_size)).size(size::BODY).font(SEMIBOLD);
    let acts = Row::with_children(acts).spacing(UNIT).align_y(Center);
    part(
        "Size of text",
        "",
        row![now, acts].spacing(2.0 * UNIT).align_y(Center).wrap().vertical_spacing(UNIT).into(),
    )
}

fn motion<'a>(settings: &'a Settings) -> Element<'a, shell::Message> {
    let one = |words, still| pick(words, settings.still == still, shell::Message::Still(still));
    part(
        "Motion",
        "Runs play by themselves once started, unless pictures stand still.",
        choices(vec![one("Pictures move", false), one("Stand still", true)]),
    )
}

/// A folder: its path typed or chosen, and taken out.
fn folder<'a>(which: Which, typed: &'a str, set: bool) -> Element<'a, shell::Message> {
    let say = shell::Message::Choices;
    let id = match which {
        Which::Builds => "folder-builds",
        Which::Lessons => "folder-lessons",
    };
    let field = text_input("None", typed)
        .id(id)
        .font(REGULAR)
        .size(size::LABEL)
        .padding([6, 8])
        .style(theme::field)
        .on_input(move |text| say(Message::Typed(which, text)))
        .on_submit(say(Message::Given(which)));
    let button = |words, kind, message, can: bool| {
        pressable(kind, text(words).size(size::LABEL))
            .on_press_maybe(can.then_some(say(message)))
            .into()
    };
    let acts = [
        button("Use this folder", Kind::Main, Message::Given(which), !typed.trim().is_empty()),
        button("Choose…", Kind::Plain, Message::Choose(which), true),
        button("Use none", Kind::Plain, Message::None(which), set),
    ];
    column![field, Row::with_children(acts).spacing(UNIT).wrap().vertical_spacing(UNIT)]
        .spacing(UNIT)
        .into()
}
