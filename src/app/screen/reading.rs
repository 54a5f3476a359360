//! A lesson being read: the text, and beside it the numbers of the build that it uses.

use iced::advanced::widget::{Id, Operation, operate, operation};
use iced::widget::{Column, column, container, row, rule, scrollable, text};
use iced::{Element, Fill, Length, Padding, Rectangle, Task, Vector};

use crate::app::block::{self, curve};
use crate::app::desk::Desk;
use crate::app::document::{self, blocks};
use crate::app::page::{self, Marks, Page};
use crate::app::settings::Settings;
use crate::app::theme::{self, BOLD, MEASURE, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::{field, formula, picture, symbol};
use crate::lesson::{Block, BlockKind, Lesson, Target};
use crate::quantity::{AnyId, catalogue};
use crate::rules::catalogue as rules;

/// The scrolled page, to move it by key.
pub const PAGE: &str = "page";

/// A lesson being read.
pub struct Reading {
    /// The lesson's id.
    pub id: String,
    /// How far down, in pixels.
    pub offset: f32,
    marks: Marks,
    meaning: Option<AnyId>,
    numbers: bool,
}

/// What happens on the page.
#[derive(Debug, Clone)]
pub enum Message {
    /// Something in the text.
    Page(page::Message),
    /// The page was scrolled to this many pixels.
    Scrolled(f32),
    /// A heading was picked.
    Jump(String),
    /// The meaning in the margin is put away.
    MeaningClosed,
    /// The numbers of a narrow window, in or out.
    NumbersTurned,
    /// Another lesson is wanted.
    Lesson(String),
}

/// What the shell is asked for.
pub enum Action {
    /// Nothing.
    None,
    /// A number is being changed.
    Field(field::Event),
    /// A number is to be shown in its next unit.
    NextUnit(AnyId),
    /// Numbers go back to those of the saved build.
    PutBack(Vec<AnyId>),
    /// Another lesson.
    Lesson(String),
    /// A page on the web.
    Web(String),
    /// Work to run.
    Run(Task<Message>),
}

impl Reading {
    /// Opens a lesson.
    pub fn new(lesson: &Lesson, read: impl Fn(&str) -> std::io::Result<Vec<u8>>) -> Self {
        let mut marks = Marks::default();
        for file in pictures(&lesson.blocks) {
            let drawn = match read(file) {
                Ok(bytes) => picture::read(file, &bytes),
                Err(error) => picture::Picture::Broken(format!("{file} cannot be read: {error}.")),
            };
            marks.pictures.insert(file.to_owned(), drawn);
        }
        Self { id: lesson.id.clone(), offset: 0.0, marks, meaning: None, numbers: false }
    }

    /// The same place in a lesson whose file has changed.
    pub fn reloaded(
        self,
        lesson: &Lesson,
        read: impl Fn(&str) -> std::io::Result<Vec<u8>>,
    ) -> Self {
        let fresh = Self::new(lesson, read);
        let Marks { open, guesses, .. } = self.marks;
        let marks = Marks { open, guesses, ..fresh.marks };
        Self { marks, ..self }
    }

    /// Throws away what was drawn from another build.
    pub fn forget_drawn(&mut self) {
        self.marks.curves.clear();
        self.marks.side_by_side.values_mut().for_each(block::side_by_side::State::forget);
        self.marks.targets.values_mut().for_each(block::target::State::forget);
        self.marks.levers.values_mut().for_each(block::levers::State::forget);
    }

    /// Acts on a message.
    pub fn update(&mut self, message: Message, settings: &Settings) -> Action {
        match message {
            Message::Page(message) => self.page(message, settings),
            Message::Scrolled(offset) => {
                self.offset = offset;
                Action::None
            }
            Message::Jump(anchor) => Action::Run(jump(&anchor)),
            Message::MeaningClosed => {
                self.meaning = None;
                Action::None
            }
            Message::NumbersTurned => {
                self.numbers = !self.numbers;
                Action::None
            }
            Message::Lesson(id) => Action::Lesson(id),
        }
    }

    fn page(&mut self, message: page::Message, settings: &Settings) -> Action {
        match message {
            page::Message::Field(event) => return Action::Field(event),
            page::Message::Working(key) => {
                if !self.marks.open.remove(&key) {
                    self.marks.open.insert(key);
                }
            }
            page::Message::Guess(key, act) => {
                self.marks.guesses.entry(key).or_default().perform(act, &settings.units);
            }
            page::Message::Curve(_, curve::Act::Field(event)) => return Action::Field(event),
            page::Message::Curve(line, curve::Act::Table) => {
                return self.page(page::Message::Working(format!("curve:{line}")), settings);
            }
            page::Message::Target(line, act) => {
                self.marks.targets.entry(line).or_default().perform(act, &settings.units);
            }
            page::Message::Levers(line, act) => {
                self.marks.levers.entry(line).or_default().perform(act);
            }
            page::Message::PutBack(ids) => return Action::PutBack(ids),
            page::Message::NextUnit(id) => return Action::NextUnit(id),
            page::Message::Follow(target) => return self.follow(target),
        }
        Action::None
    }

    fn follow(&mut self, target: Target) -> Action {
        match target {
            Target::Live { id, .. } | Target::Quantity(id) => {
                self.meaning = Some(id);
                Action::None
            }
            Target::Lesson(id) => Action::Lesson(id),
            Target::Heading(anchor) => Action::Run(jump(&anchor)),
            Target::Web(address) => Action::Web(address),
            Target::Unknown(_) => Action::None,
        }
    }

    /// Draws and works out anew what the build, the units or the light have changed.
    pub fn refresh(&mut self, lesson: &Lesson, desk: &Desk, settings: &Settings, dark: bool) {
        curve::refresh(&mut self.marks.curves, &lesson.blocks, desk, settings, dark);
        block::refresh(&mut self.marks, &lesson.blocks, desk);
    }

    /// The page, its margin beside it or, on a narrow window, under it.
    pub fn view<'a>(
        &'a self,
        lesson: &'a Lesson,
        around: Around<'a>,
        desk: &'a Desk,
        settings: &'a Settings,
    ) -> Element<'a, Message> {
        let page = Page {
            desk,
            settings,
            lesson,
            marks: &self.marks,
            dark: around.dark,
            width: around.column,
        };
        let text = column![
            self.title(lesson),
            blocks(body(lesson), page).map(Message::Page),
            onward(around.before, around.after),
        ]
        .spacing(2.0 * UNIT)
        .max_width(MEASURE)
        .width(Fill);
        let reading = scrollable(
            container(text).center_x(Fill).padding(Padding::from([3.0 * UNIT, 2.0 * UNIT])),
        )
        .id(PAGE)
        .on_scroll(|view| Message::Scrolled(view.absolute_offset().y))
        .direction(theme::bar())
        .style(theme::scroll)
        .width(Fill)
        .height(Fill);
        let margin = (!around.margin_under).then(|| {
            container(
                scrollable(
                    container(self.margin(lesson, desk, settings)).padding(2.0 * UNIT).width(Fill),
                )
                .id("margin")
                .direction(theme::bar())
                .style(theme::scroll)
                .height(Fill),
            )
            .style(theme::panel)
            .width(Length::Fixed(MARGIN))
        });
        let folded = around.margin_under.then(|| self.folded(lesson, desk, settings));
        column![folded, row![reading, margin]].into()
    }

    /// The margin of a narrow window: a line above the text that opens.
    fn folded<'a>(
        &'a self,
        lesson: &'a Lesson,
        desk: &'a Desk,
        settings: &'a Settings,
    ) -> Element<'a, Message> {
        let open = self.numbers || self.meaning.is_some();
        let word = if self.numbers { "Hide the numbers" } else { "Numbers in this lesson" };
        let margin = open.then(|| {
            let inside = if self.numbers {
                self.margin(lesson, desk, settings)
            } else {
                column![self.meaning.and_then(|id| meaning(id, desk, settings))].into()
            };
            container(
                scrollable(container(inside).padding(Padding::ZERO.right(1.5 * UNIT)))
                    .id("margin")
                    .direction(theme::bar())
                    .style(theme::scroll),
            )
            .max_height(300)
        });
        container(
            column![
                pressable(Kind::Word, text(word).size(size::LABEL))
                    .on_press(Message::NumbersTurned),
                margin,
            ]
            .spacing(UNIT),
        )
        .style(theme::panel)
        .padding([UNIT, 2.0 * UNIT])
        .width(Fill)
        .into()
    }

    fn title<'a>(&'a self, lesson: &'a Lesson) -> Element<'a, Message> {
        let minutes = lesson.minutes.map(|minutes| format!("About {minutes} minutes."));
        let goals = lesson.goals.iter().map(|goal| {
            row![text("•").size(size::LABEL), text(goal).size(size::LABEL).width(Fill)]
                .spacing(UNIT)
                .into()
        });
        let outline = lesson.headings.iter().filter(|heading| heading.level == 2).map(|heading| {
            pressable(Kind::Word, text(&heading.title).size(size::LABEL))
                .on_press(Message::Jump(heading.anchor.clone()))
                .into()
        });
        column![
            text(&lesson.title).size(size::TITLE).font(BOLD).line_height(1.2).width(Fill),
            minutes.map(|minutes| text(minutes).size(size::LABEL).style(theme::soft)),
            text("After this you can").size(size::LABEL).font(SEMIBOLD),
            Column::with_children(goals).spacing(UNIT / 2.0),
            text("In this lesson").size(size::LABEL).font(SEMIBOLD),
            iced::widget::Row::with_children(outline)
                .spacing(2.0 * UNIT)
                .width(Fill)
                .wrap()
                .vertical_spacing(UNIT / 2.0),
            rule::horizontal(1).style(theme::hairline),
        ]
        .spacing(UNIT)
        .into()
    }

    /// What a reader would pencil beside the text: their numbers, and what a symbol means.
    fn margin<'a>(
        &'a self,
        lesson: &'a Lesson,
        desk: &'a Desk,
        settings: &'a Settings,
    ) -> Element<'a, Message> {
        let numbers = lesson.uses.iter().map(|id| {
            field::compact(&format!("margin:{id}"), *id, desk, settings)
                .map(|event| Message::Page(page::Message::Field(event)))
        });
        column![
            self.meaning.and_then(|id| meaning(id, desk, settings)),
            text(format!("{} in this lesson", desk.name())).size(size::MINOR).font(SEMIBOLD),
            Column::with_children(numbers).spacing(1.5 * UNIT),
        ]
        .spacing(2.0 * UNIT)
        .into()
    }
}

/// The width of the margin beside the text.
pub const MARGIN: f32 = 312.0;

/// Where a lesson is shown.
#[derive(Clone, Copy)]
pub struct Around<'a> {
    /// The lesson before it.
    pub before: Option<&'a Lesson>,
    /// The lesson after it.
    pub after: Option<&'a Lesson>,
    /// Whether the margin folds under the title.
    pub margin_under: bool,
    /// The width of the text, in pixels.
    pub column: f32,
    /// Whether the paper is dark.
    pub dark: bool,
}

/// The text without a first heading that only says the title again.
fn body(lesson: &Lesson) -> &[Block] {
    match lesson.blocks.split_first() {
        Some((Block { kind: BlockKind::Heading { level: 1, .. }, .. }, rest)) => rest,
        _ => &lesson.blocks,
    }
}

fn pictures(blocks: &[Block]) -> Vec<&str> {
    let mut found = Vec::new();
    for block in blocks {
        match &block.kind {
            BlockKind::Picture { file, .. } => found.push(file.as_str()),
            BlockKind::List { items, .. } => {
                found.extend(items.iter().flat_map(|item| pictures(item)));
            }
            BlockKind::Quote(inner)
            | BlockKind::Alert { blocks: inner, .. }
            | BlockKind::Footnote { blocks: inner, .. } => found.extend(pictures(inner)),
            _ => {}
        }
    }
    found
}

fn onward<'a>(before: Option<&'a Lesson>, after: Option<&'a Lesson>) -> Element<'a, Message> {
    let to = |lesson: &'a Lesson, words: String| {
        pressable(Kind::Plain, text(words).size(size::LABEL))
            .on_press(Message::Lesson(lesson.id.clone()))
    };
    column![
        rule::horizontal(1).style(theme::hairline),
        row![
            before.map(|lesson| to(lesson, format!("← {}", lesson.title))),
            iced::widget::space::horizontal(),
            after.map(|lesson| to(lesson, format!("{} →", lesson.title))),
        ],
    ]
    .spacing(2.0 * UNIT)
    .into()
}

fn meaning<'a>(id: AnyId, desk: &'a Desk, settings: &'a Settings) -> Option<Element<'a, Message>> {
    let entry = catalogue::find(id.name())?;
    let now = desk.outcome.values.si(id).map_or_else(
        || "Not known yet in your build.".to_owned(),
        |si| format!("In your build: {}.", settings.units.show(entry, si)),
    );
    let holds = rules::finder(id).map(|rule| {
        column![
            text(format!("Holds for: {}", rule.holds)).size(size::SMALL).width(Fill),
            text(format!("Source: {}", rule.source))
                .size(size::SMALL)
                .style(theme::soft)
                .width(Fill),
        ]
        .spacing(UNIT / 2.0)
    });
    Some(
        container(
            column![
                row![
                    text(symbol::capitalised(entry.label))
                        .size(size::LABEL)
                        .font(SEMIBOLD)
                        .width(Fill),
                    formula::inline(entry.symbol, size::LABEL),
                ]
                .spacing(UNIT),
                text(entry.meaning).size(size::LABEL).width(Fill),
                text(now).size(size::LABEL).width(Fill),
                holds,
                pressable(Kind::Word, text("Put away").size(size::SMALL))
                    .on_press(Message::MeaningClosed),
            ]
            .spacing(UNIT),
        )
        .style(theme::note)
        .padding(1.5 * UNIT)
        .width(Fill)
        .into(),
    )
}

/// Scrolls the page to a heading.
fn jump(anchor: &str) -> Task<Message> {
    operate(FindHeading { heading: Id::from(document::heading_id(anchor)), page: None, top: None })
        .then(|y| {
            let offset = operation::scrollable::AbsoluteOffset { x: None, y: Some(y) };
            operate(operation::scrollable::scroll_to(Id::new(PAGE), offset))
        })
}

struct FindHeading {
    heading: Id,
    page: Option<Rectangle>,
    top: Option<f32>,
}

impl Operation<f32> for FindHeading {
    fn traverse(&mut self, operate: &mut dyn FnMut(&mut dyn Operation<f32>)) {
        operate(self);
    }

    fn scrollable(
        &mut self,
        id: Option<&Id>,
        bounds: Rectangle,
        _content: Rectangle,
        _translation: Vector,
        _state: &mut dyn operation::Scrollable,
    ) {
        if id == Some(&Id::new(PAGE)) {
            self.page = Some(bounds);
        }
    }

    fn container(&mut self, id: Option<&Id>, bounds: Rectangle) {
        if id == Some(&self.heading)
            && let Some(page) = self.page
        {
            self.top = Some((bounds.y - page.y).max(0.0));
        }
    }

    fn finish(&self) -> operation::Outcome<f32> {
        self.top.map_or(operation::Outcome::None, operation::Outcome::Some)
    }
}
