//! The bench: the build on the desk, the companions beside it and how they differ, recent builds,
//! and starting a new one.

mod companions;
mod differing;
pub mod five;
mod own;
mod recent;

use std::path::{Path, PathBuf};

use iced::widget::{column, text};
use iced::{Element, Fill};

use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::shell;
use crate::app::theme::{BOLD, SEMIBOLD, UNIT, size};
use crate::app::widget::stretch::Stretch;
use crate::quantity::Units;
use crate::sheet::Edit;
use crate::study::Difference;
use five::Five;

/// What is open on the bench.
pub struct Bench {
    five: Option<Five>,
    /// Whether the list of builds to set beside is open.
    choosing: bool,
    /// How many builds were opened lately.
    count: usize,
    /// Which of them are shown.
    stretch: Stretch,
    recent: Vec<Recent>,
    compared: Option<Compared>,
    /// Whether every number that differs is listed.
    whole: bool,
}

impl Default for Bench {
    fn default() -> Self {
        Self {
            five: None,
            choosing: false,
            count: 0,
            stretch: Stretch::new(recent::SHOWN),
            recent: Vec::new(),
            compared: None,
            whole: false,
        }
    }
}

/// A build opened lately.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Recent {
    path: PathBuf,
    /// Whether the file is still there.
    there: bool,
}

/// A companion held against the reader's own build.
struct Compared {
    /// Its place among the companions.
    place: usize,
    /// The states of both that this was worked out from.
    of: (u64, u64),
    difference: Difference,
}

/// What happens on the bench.
#[derive(Debug, Clone)]
pub enum Message {
    /// The build is called this.
    Name(String),
    /// A copy goes on the desk, the build itself beside it.
    WhatIf,
    /// The five questions, in or out.
    FiveTurned,
    /// A question is answered.
    Five(five::Act),
    /// The answers are to start a build.
    Begin,
    /// A blank build is wanted.
    Blank,
    /// The list of builds to set beside, in or out.
    Choosing,
    /// What differs from the companion of that place is wanted, or not any more.
    Compare(usize),
    /// Every number that differs is to be listed, or only the largest ratios.
    Whole,
    /// The recent build of that place in the list is wanted.
    Recent(usize),
    /// A build is to go from the recent ones.
    Forget(PathBuf),
}

/// What the shell is asked for.
pub enum Action {
    /// Nothing.
    None,
    /// The build is changed; changes of one gesture count as one.
    Edit(Edit, &'static str),
    /// A copy goes on the desk.
    WhatIf,
    /// A build starts with these answers.
    Begin(Vec<Edit>),
    /// A blank build starts.
    Blank,
    /// The focus goes to this field.
    Focus(&'static str),
    /// The list of recent builds is to be looked at anew.
    Look,
    /// A build is to go from the recent ones.
    Forget(PathBuf),
}

/// The field of the name.
pub const NAME: &str = "bench-name";
/// From this width of the page on, a difference is a table.
const TABLE: f32 = 700.0;

impl Bench {
    /// Acts on a message.
    pub fn update(&mut self, message: Message, units: &Units) -> Action {
        match message {
            Message::Name(name) => return Action::Edit(Edit::Name(name), NAME),
            Message::WhatIf => return Action::WhatIf,
            Message::FiveTurned => return self.turn_five(),
            Message::Five(act) => self.five.get_or_insert_default().perform(act, units),
            Message::Begin => return self.begin(units),
            Message::Blank => return Action::Blank,
            Message::Choosing => self.choosing = !self.choosing,
            Message::Compare(place) => self.compare(place),
            Message::Whole => self.whole = !self.whole,
            Message::Recent(place) => {
                self.stretch.go(place);
                return Action::Look;
            }
            Message::Forget(path) => return Action::Forget(path),
        }
        Action::None
    }

    fn turn_five(&mut self) -> Action {
        self.five = if self.five.is_some() { None } else { Some(Five::default()) };
        if self.five.is_some() { Action::Focus(five::view::FIRST) } else { Action::None }
    }

    /// Opens the five questions.
    pub fn ask_five(&mut self) {
        self.five.get_or_insert_default();
    }

    /// A build was started, so the five questions are done with.
    pub fn begun(&mut self) {
        self.five = None;
    }

    fn begin(&mut self, units: &Units) -> Action {
        let five = self.five.get_or_insert_default();
        match five.begin(units) {
            Some(edits) => Action::Begin(edits),
            None => five.first_fault().map_or(Action::None, Action::Focus),
        }
    }

    /// Looks which of the recent builds that are shown are still there.
    pub fn look(&mut self, recent: &[PathBuf]) {
        let look = |path: &PathBuf| Recent { path: path.clone(), there: path.is_file() };
        self.count = recent.len();
        self.recent = recent[self.stretch.of(self.count)].iter().map(look).collect();
    }

    /// A build was set beside.
    pub fn chosen(&mut self) {
        self.choosing = false;
    }

    fn compare(&mut self, place: usize) {
        let again = self.compared.as_ref().is_some_and(|compared| compared.place == place);
        self.whole = false;
        // Worked out by the next refresh.
        self.compared = (!again).then(|| Compared {
            place,
            of: (u64::MAX, u64::MAX),
            difference: Difference::default(),
        });
    }

    /// Works out anew what has changed.
    pub fn refresh(&mut self, desk: &Desk) {
        let Some(compared) = &mut self.compared else { return };
        let now = (desk.revision(), desk.company.changes());
        if compared.of == now {
            return;
        }
        match desk.company.all().get(compared.place) {
            // With companions gone or changed places, what was compared may be another one.
            Some(companion) if compared.of.1 == now.1 || compared.of.1 == u64::MAX => {
                let theirs = (&companion.sheet, &companion.outcome);
                compared.difference = Difference::of(theirs, (desk.sheet(), &desk.outcome));
                compared.of = now;
            }
            _ => self.compared = None,
        }
    }

    /// Throws away what was worked out from another build.
    pub fn forget_drawn(&mut self) {
        if let Some(compared) = &mut self.compared {
            compared.of.0 = u64::MAX;
        }
    }

    /// The bench on a page of that width.
    pub fn view<'a>(
        &'a self,
        desk: &'a Desk,
        settings: &'a Settings,
        width: f32,
    ) -> Element<'a, shell::Message> {
        let five = self
            .five
            .as_ref()
            .map(|five| five::view::card(five, &settings.units).map(shell::Message::Bench));
        let differing = self.compared.as_ref().and_then(|compared| {
            let companion = desk.company.all().get(compared.place)?;
            let whole = self.whole;
            Some(differing::view(companion, desk, settings, &compared.difference, (whole, width)))
        });
        let page = column![
            text("Bench").size(size::TITLE).font(BOLD),
            own::view(desk),
            part("Beside it", companions::view(self, desk, settings), differing),
            part("Start another build", recent::start(self.five.is_some()), five),
            part("Recent builds", recent::view(self, desk), None),
        ]
        .spacing(3.0 * UNIT)
        .max_width(760)
        .width(Fill);
        super::scrolled(page)
    }
}

/// A part of the bench, and what is open under it.
fn part<'a>(
    title: &'a str,
    inside: Element<'a, shell::Message>,
    open: Option<Element<'a, shell::Message>>,
) -> Element<'a, shell::Message> {
    let head = column![text(title).size(size::HEADING).font(SEMIBOLD), inside].spacing(UNIT);
    column![head, open].spacing(1.5 * UNIT).into()
}

/// The name of a file without its folder.
fn file_name(path: &Path) -> String {
    path.file_name()
        .map_or_else(|| path.display().to_string(), |name| name.to_string_lossy().into_owned())
}

/// What an example build is called.
fn example(id: &str) -> String {
    crate::app::widget::symbol::capitalised(&id.replace('-', " "))
}
