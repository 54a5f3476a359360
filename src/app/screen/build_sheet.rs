//! Every number of the build by topic, and the parts it is made of.

mod number;
mod parts;
mod standing;

use std::collections::{BTreeMap, HashSet};
use std::hash::Hash;

use iced::widget::{Column, column, container, row, space, text, text_input};
use iced::{Element, Fill, Length};

use crate::app::block::sketch;
use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::theme::{self, BOLD, REGULAR, SEMIBOLD, UNIT, size};
use crate::app::widget::choice::choice;
use crate::app::widget::field;
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::stretch::Stretch;
use crate::notebook::Notebook;
use crate::plot::sketch::{Show, View};
use crate::quantity::{AnyId, Entry, Topic, catalogue};
use crate::sheet::{Edit, presets};
pub use parts::{control, focus_after};
use standing::{Standing, standings};

/// What the reader is looking for on the build sheet, and which topics are unfolded.
pub struct BuildSheet {
    find: String,
    turned: HashSet<Topic>,
    tables: HashSet<&'static str>,
    /// The topics whose numbers say what they are used for.
    uses: HashSet<Topic>,
    /// Whether guesses alone are shown.
    guesses: bool,
    /// How well each number is known, and for which state of the build that was found.
    standings: Option<(u64, BTreeMap<AnyId, Standing>)>,
    /// Which of many parts are shown.
    parts: Stretch,
    sketch: sketch::State,
}

impl Default for BuildSheet {
    fn default() -> Self {
        Self {
            find: String::new(),
            turned: HashSet::new(),
            tables: HashSet::new(),
            uses: HashSet::new(),
            guesses: false,
            standings: None,
            parts: Stretch::new(PARTS),
            sketch: sketch::State::default(),
        }
    }
}

/// What the shell is asked for.
pub enum Action {
    /// Nothing.
    None,
    /// A number is being changed.
    Field(field::Event),
    /// The build is changed; changes of one gesture count as one.
    Edit(Edit, Option<String>),
}

/// What happens on the build sheet.
#[derive(Debug, Clone)]
pub enum Message {
    /// A number is being changed.
    Field(field::Event),
    /// The build is changed; changes of one gesture count as one.
    Edit(Edit, Option<String>),
    /// The words looked for are now these.
    Find(String),
    /// A topic is folded or unfolded.
    Turn(Topic),
    /// A table of ready-made numbers is folded or unfolded.
    Table(&'static str),
    /// What the numbers of a topic are used for, in or out.
    Uses(Topic),
    /// Guesses alone are to be shown, or every number.
    Guesses(bool),
    /// The part of that place in the list is wanted.
    Parts(usize),
    /// The sketch is to be seen from elsewhere.
    Look(View),
}

/// As many parts are shown at a time.
const PARTS: usize = 40;
/// As many reports are shown; the others are counted.
const REPORTS: usize = 12;
/// From this width of the window on, the numbers stand in two columns.
const TWO_COLUMNS: f32 = 1100.0;
/// Under this width of the window, the count of a topic stands under its heading.
const NARROW: f32 = 340.0;
/// From this width of the window on, the sketch stands beside the parts.
const BESIDE: f32 = 1480.0;

impl BuildSheet {
    /// Acts on a message.
    pub fn update(&mut self, message: Message) -> Action {
        match message {
            Message::Field(event) => return Action::Field(event),
            Message::Edit(edit, gesture) => return Action::Edit(edit, gesture),
            Message::Find(words) => self.find = words,
            Message::Turn(topic) => turn(&mut self.turned, topic),
            Message::Table(id) => turn(&mut self.tables, id),
            Message::Uses(topic) => turn(&mut self.uses, topic),
            Message::Guesses(guesses) => self.guesses = guesses,
            Message::Parts(index) => self.show_part(index),
            Message::Look(view) => self.sketch.look(view),
        }
        Action::None
    }

    /// Turns to the part of that place in the list.
    pub fn show_part(&mut self, index: usize) {
        self.parts.go(index);
    }

    /// Draws the sketch anew where the build has changed.
    pub fn refresh(&mut self, desk: &Desk, settings: &Settings, dark: bool) {
        self.sketch.refresh(desk, settings, dark);
    }

    /// Looks up how well each number is known where the build has changed.
    pub fn look_up(&mut self, desk: &Desk, notebook: &Notebook) {
        let revision = desk.revision();
        if self.standings.as_ref().is_none_or(|(found_for, _)| *found_for != revision) {
            self.standings = Some((revision, standings(desk, notebook)));
        }
    }

    /// Looks everything up anew: the notebook may say more than it did.
    pub fn open(&mut self) {
        self.standings = None;
    }

    fn standing(&self, id: AnyId) -> Option<&Standing> {
        self.standings.as_ref()?.1.get(&id)
    }

    /// Throws away what was drawn from another build.
    pub fn forget_drawn(&mut self) {
        self.sketch = sketch::State::default();
        self.standings = None;
        self.show_part(0);
    }

    /// The build sheet in a window of that width.
    pub fn view<'a>(
        &'a self,
        desk: &'a Desk,
        settings: &'a Settings,
        width: f32,
    ) -> Element<'a, Message> {
        let given = desk.sheet().numbers().filter_map(|(id, _)| catalogue::find(id.name()));
        let given: HashSet<Topic> = given.map(|entry| entry.topic).collect();
        let topics: Vec<Element<'a, Message>> = Topic::ALL
            .iter()
            .filter_map(|topic| {
                let open = self.is_open(*topic, given.contains(topic));
                self.section((*topic, open), desk, settings, width)
            })
            .collect();
        let nothing = topics.is_empty().then(|| {
            text(if self.guesses && self.find.trim().is_empty() {
                "No number is a guess: each was measured, stands in a table or says how sure it is."
            } else {
                "No number has these words in its name, its meaning or its id."
            })
            .size(size::BODY)
        });
        let page = column![
            title(desk),
            // One place for both: a report that comes or goes must not take the focus from a field
            // further down.
            column![about(desk), reports(desk)].spacing(3.0 * UNIT),
            column![self.finder(), self.filter()].spacing(UNIT),
            column![nothing, Column::with_children(topics).spacing(3.0 * UNIT)],
            self.find.trim().is_empty().then(|| with_sketch(
                parts::view(&self.parts, desk, settings),
                &self.sketch,
                width
            )),
        ]
        .spacing(3.0 * UNIT)
        .max_width(if width >= BESIDE { 1240 } else { 960 })
        .width(Fill);
        super::scrolled(page)
    }

    fn finder(&self) -> Element<'_, Message> {
        text_input("Find a number: width, battery, drop …", &self.find)
            .id("find-number")
            .font(REGULAR)
            .size(size::LABEL)
            .padding([6, 8])
            .style(theme::field)
            .on_input(Message::Find)
            .into()
    }

    /// Whether a quantity has all the words looked for.
    fn wanted(&self, entry: &Entry) -> bool {
        let guessed = || self.standing(entry.id) == Some(&Standing::Guess);
        (!self.guesses || guessed()) && (self.find.trim().is_empty() || self.has_words(entry))
    }

    fn has_words(&self, entry: &Entry) -> bool {
        let about = format!("{} {} {}", entry.label, entry.id, entry.meaning).to_lowercase();
        self.find.to_lowercase().split_whitespace().all(|word| about.contains(word))
    }

    /// Every number, or the guesses alone.
    fn filter(&self) -> Element<'_, Message> {
        let all = self.standings.iter().flat_map(|(_, all)| all.values());
        let (mut given, mut guesses) = (0, 0);
        for standing in all {
            given += 1;
            guesses += usize::from(*standing == Standing::Guess);
        }
        choice([
            ("All numbers".to_owned(), !self.guesses, Message::Guesses(false)),
            (format!("Guesses: {guesses} of {given} given"), self.guesses, Message::Guesses(true)),
        ])
    }

    /// A topic is unfolded while its numbers are being looked for or some of them are given,
    /// unless the reader has turned it.
    fn is_open(&self, topic: Topic, any_given: bool) -> bool {
        !self.find.trim().is_empty() || any_given != self.turned.contains(&topic)
    }

    /// The tables of ready-made numbers that fill quantities of a topic.
    fn ready_made<'a>(&self, topic: Topic) -> Element<'a, Message> {
        let fills = |table: &&'static presets::Table| {
            let mut ids = table.rows.iter().flat_map(|row| &row.values).map(|(id, _)| id.name());
            ids.any(|id| catalogue::find(id).is_some_and(|entry| entry.topic == topic))
        };
        let tables = presets::tables().iter().filter(fills).map(|table| {
            let open = self.tables.contains(table.id);
            let word = if open { "Put away" } else { "Fill in from a table" };
            let head =
                pressable(Kind::Word, text(format!("{word}: {}", table.title)).size(size::LABEL))
                    .on_press(Message::Table(table.id));
            let rows = table.rows.iter().filter(|_| open).map(number::preset);
            column![
                head,
                (open && !table.note.is_empty())
                    .then(|| text(table.note.as_str()).size(size::SMALL).width(Fill)),
                Column::with_children(rows).spacing(UNIT / 2.0),
            ]
            .spacing(UNIT)
            .into()
        });
        Column::with_children(tables).spacing(UNIT / 2.0).into()
    }

    /// The fold of what the numbers of a topic are used for.
    fn uses<'a>(&self, topic: Topic) -> Element<'a, Message> {
        let open = self.uses.contains(&topic);
        let word = if open { "Hide what each is used for" } else { "Show what each is used for" };
        pressable(Kind::Word, text(word).size(size::LABEL)).on_press(Message::Uses(topic)).into()
    }

    fn given<'a>(
        &'a self,
        entry: &'static Entry,
        desk: &'a Desk,
        settings: &'a Settings,
    ) -> Element<'a, Message> {
        let how = (self.standing(entry.id), self.uses.contains(&entry.topic));
        number::given(entry, how, desk, settings)
    }

    fn section<'a>(
        &'a self,
        (topic, open): (Topic, bool),
        desk: &'a Desk,
        settings: &'a Settings,
        width: f32,
    ) -> Option<Element<'a, Message>> {
        let wide = width >= TWO_COLUMNS;
        let entries: Vec<&'static Entry> = catalogue::all()
            .iter()
            .filter(|entry| entry.topic == topic && self.wanted(entry))
            .collect();
        if entries.is_empty() {
            return None;
        }
        let inside = open.then(|| {
            let (given, found): (Vec<_>, Vec<_>) =
                entries.iter().copied().partition(|entry| entry.is_given());
            let (any_given, any_found) = (!given.is_empty(), !found.is_empty());
            column![
                    any_given
                        .then(|| column![self.ready_made(topic), self.uses(topic)]
                            .spacing(UNIT / 2.0)),
                    columns(
                        wide,
                        1.5 * UNIT,
                        given.into_iter().map(|e| self.given(e, desk, settings)),
                    ),
                    any_found.then(|| text("Found from these").size(size::LABEL).font(SEMIBOLD)),
                    columns(
                        wide,
                        UNIT / 2.0,
                        found
                            .into_iter()
                            .map(|e| { number::answer(e, self.standing(e.id), desk, settings) })
                    ),
                ]
                .spacing(1.5 * UNIT)
        });
        let stated = entries.iter().filter(|entry| desk.sheet().number(entry.id).is_some()).count();
        let settable = entries.iter().filter(|entry| entry.is_given()).count();
        let count = (settable > 0).then(|| format!("{stated} of {settable} given"));
        let mark = if open { "−" } else { "+" };
        let title = text(topic.title()).size(size::HEADING).font(SEMIBOLD).width(Fill);
        let count = count.map(|count| text(count).size(size::SMALL).style(theme::soft));
        // A heading without room beside it has its count under it.
        let title: Element<'a, Message> = if width < NARROW {
            column![title, count].into()
        } else {
            row![title, count].spacing(UNIT).align_y(iced::Center).into()
        };
        let head = row![
            container(title).width(Fill),
            text(mark).size(size::HEADING).width(Length::Fixed(2.0 * UNIT)).center(),
        ]
        .spacing(UNIT)
        .align_y(iced::Center);
        let head = pressable(Kind::Line(false), head)
            .padding([UNIT / 2.0, 0.0])
            .width(Fill)
            .on_press(Message::Turn(topic));
        Some(column![head, inside].spacing(1.5 * UNIT).into())
    }
}

/// The heading, and whether something is not saved; the rail saves.
fn title<'a>(desk: &'a Desk) -> Element<'a, Message> {
    let changed = desk.history.is_changed_since_save();
    row![
        text("Build sheet").size(size::TITLE).font(BOLD),
        text(if changed { "● not saved" } else { "" }).size(size::LABEL).style(theme::soft),
    ]
    .spacing(1.5 * UNIT)
    .align_y(iced::Center)
    .width(Fill)
    .wrap()
    .into()
}

/// Puts in what is out, takes out what is in.
fn turn<T: Hash + Eq>(set: &mut HashSet<T>, what: T) {
    if !set.remove(&what) {
        set.insert(what);
    }
}

/// Cells one under the other, or two beside each other where there is room.
fn columns<'a>(
    wide: bool,
    spacing: f32,
    cells: impl Iterator<Item = Element<'a, Message>>,
) -> Element<'a, Message> {
    let mut cells = cells.peekable();
    let mut rows = Column::new().spacing(spacing);
    while let Some(cell) = cells.next() {
        let beside = wide.then(|| cells.next().unwrap_or_else(|| space::horizontal().into()));
        rows = rows.push(row![cell, beside].spacing(4.0 * UNIT));
    }
    rows.into()
}

/// The sketch beside the parts, or above them on a narrower window.
fn with_sketch<'a>(
    parts: Element<'a, Message>,
    drawn: &'a sketch::State,
    width: f32,
) -> Element<'a, Message> {
    let picture = |height| {
        let picture = sketch::picture(drawn, (View::Side, Show::ALL), height, Message::Look);
        container(picture).style(theme::block).padding(2.0 * UNIT)
    };
    if width >= BESIDE {
        row![container(parts).width(Fill), picture(300.0).width(Length::Fixed(400.0))]
            .spacing(3.0 * UNIT)
            .into()
    } else {
        column![picture(if width < 600.0 { 250.0 } else { 340.0 }).width(Fill), parts]
            .spacing(3.0 * UNIT)
            .into()
    }
}

fn about<'a>(desk: &'a Desk) -> Element<'a, Message> {
    let line = |label: &'a str, id: &'static str, value: &'a str, edit: fn(String) -> Edit| {
        row![
            text(label).size(size::LABEL).width(Length::Fixed(64.0)),
            text_input("", value)
                .id(id)
                .font(REGULAR)
                .size(size::LABEL)
                .padding([6, 8])
                .style(theme::field)
                .on_input(move |text| Message::Edit(edit(text), Some(id.to_owned()))),
        ]
        .spacing(UNIT)
        .align_y(iced::Center)
    };
    column![
        line("Name", "build-name", desk.sheet().name(), Edit::Name),
        line("Note", "build-note", desk.sheet().note(), Edit::Note),
    ]
    .spacing(UNIT)
    .into()
}

/// What was found in the file, and what the numbers do not add up to.
fn reports<'a>(desk: &'a Desk) -> Option<Element<'a, Message>> {
    let line = |words: String| text(words).size(size::LABEL).width(Fill).into();
    let remarks = desk.tally.problems.iter().chain(&desk.tally.cautions);
    let reports = desk.sheet().reports();
    let over = (reports.len() + remarks.clone().count()).saturating_sub(REPORTS);
    let said: Vec<Element<'a, Message>> = reports
        .iter()
        .map(ToString::to_string)
        .chain(remarks.map(|remark| remark.message.clone()))
        .take(REPORTS)
        .chain((over > 0).then(|| format!("And {over} more like these.")))
        .map(line)
        .collect();
    (!said.is_empty()).then(|| {
        container(Column::with_children(said).spacing(UNIT / 2.0))
            .style(theme::caution)
            .padding(1.5 * UNIT)
            .width(Fill)
            .into()
    })
}
