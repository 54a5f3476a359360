//! The shell: it owns the build, the lessons and where the reader is, and acts on what screens
//! ask for. Screens see it by reference.

mod acts;
mod bench;
mod class;
mod company;
mod contents;
mod figure;
mod filing;
mod finding;
mod lessons;
mod listen;
mod message;
mod notes;
mod preferences;
mod printing;
mod recovery;
mod view;

use std::cell::OnceCell;
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::AtomicBool;

use iced::widget::operation::{self, AbsoluteOffset};
use iced::{Size, Task, Theme, system, window};

use crate::app::book::Book;
use crate::app::companion::{Companion, Company};
use crate::app::desk::Desk;
use crate::app::printing::Order;
use crate::app::question::{self, Next, Question};
use crate::app::screen::{
    Place, bench as bench_screen, build_sheet, contents as list, notebook, preferences as choices,
    reading, walk_round, workshop,
};
use crate::app::settings::{Daylight, Settings};
use crate::app::{files, find, focus, theme};
use crate::lesson::{Folder, Joined, Lesson, Library, Source};
use crate::sheet::file::Stamp;
use crate::sheet::file::autosave::Slot;
use crate::sheet::presets;

pub use message::Message;

/// Where the program keeps its own files.
#[derive(Debug, Clone)]
pub struct Folders {
    /// Settings.
    pub settings: PathBuf,
    /// Recovery copies.
    pub recovery: PathBuf,
    /// The notebook's file.
    pub notebook: PathBuf,
    /// Where the notebook is exported to, if the reader names no other folder.
    pub exports: PathBuf,
}

/// Everything the window starts from.
pub struct Start {
    /// The build to open; without one, the demo build.
    pub build: Option<PathBuf>,
    /// Where lessons come from.
    pub source: Arc<dyn Source>,
    /// The folder of lessons to watch for changes, if they come from one.
    pub watched: Option<PathBuf>,
    /// Where the program keeps its own files.
    pub folders: Folders,
}

/// The state of the window.
pub struct App {
    /// The build on the desk.
    pub desk: Desk,
    /// What is remembered between sessions.
    pub settings: Settings,
    pub(super) library: Arc<Library>,
    /// Which screen is shown.
    pub place: Place,
    /// The lesson last opened.
    pub reading: Option<reading::Reading>,
    /// The lesson shown to a class.
    pub workshop: Option<workshop::Workshop>,
    pub(super) book: Book,
    pub(super) notes: notebook::Notes,
    /// The window's size in pixels at a text size of 100 %.
    pixels: Size,
    pub(super) menu: bool,
    pub(super) strip: bool,
    /// Whether a file is held over the window.
    pub(super) hovered: bool,
    pub(super) build_sheet: build_sheet::BuildSheet,
    pub(super) walk_round: walk_round::WalkRound,
    /// What is asked, over the page.
    pub question: Option<Question>,
    /// The builds of the reader.
    pub bench: bench_screen::Bench,
    /// What is being typed among the settings.
    pub(super) choices: choices::Choices,
    /// Whether the card for a first start is shown.
    pub welcome: bool,
    /// Whether there is a window on a screen, with a clipboard.
    on_screen: bool,
    /// Whether what cannot be seen yet waits until the first frame is drawn.
    hastens: bool,
    /// What Find looks in.
    /// Made when something is first looked for.
    index: OnceCell<find::Index>,
    /// What is said of each lesson in the list.
    source: Arc<dyn Source + Send + Sync>,
    /// Whether lessons are being read.
    reader: lessons::Reader,
    /// The reader's own lessons.
    own: Option<Folder>,
    own_lessons: choices::OwnLessons,
    folders: Folders,
    system_dark: bool,
    /// Where unsaved work of the build on the desk is kept aside.
    slot: Slot,
    recovered: Option<recovery::Found>,
    /// Work found that the reader will decide about another time.
    put_off: Vec<Slot>,
    kept: u64,
    /// The change of the file that the reader has been asked about.
    seen: Option<Stamp>,
    /// What to do once the build is saved.
    after_save: Option<Next>,
    /// The picture that is to be saved.
    figure: Option<reading::Unsaved>,
    /// What is to be printed, while the reader says where.
    order: Option<Order>,
    /// Set to call off the page being made.
    writing: Option<Arc<AtomicBool>>,
    watched: Option<PathBuf>,
}

impl App {
    /// The window as it starts.
    pub fn new(start: Start) -> (Self, Task<Message>) {
        let settings = Settings::load(&start.folders.settings);
        let own = settings.own_lessons.clone().map(Folder);
        let joined = Joined { first: Arc::clone(&start.source), own: own.clone() };
        let library = Arc::new(Library::load(joined));
        let own_lessons = preferences::stand(own.as_ref(), &library);
        let welcome = start.build.is_none() && !Settings::are_kept(&start.folders.settings);
        let (mut desk, told) = filing::first_desk(start.build.as_deref());
        // The first field asks for them: better here, beside the window, than while it waits.
        presets::tables();
        desk.company = Company::remembered(&settings.companions);
        let (book, book_told) = Book::open(&start.folders.notebook);
        let told: Vec<String> = told.into_iter().chain(book_told).collect();
        let notes = notebook::Notes::new(&start.folders.exports);
        let size = Size::new(settings.window.0, settings.window.1);
        let mut app = Self {
            desk,
            pixels: size,
            library,
            place: Place::Contents,
            reading: None,
            workshop: None,
            book,
            notes,
            menu: false,
            strip: false,
            hovered: false,
            build_sheet: build_sheet::BuildSheet::default(),
            walk_round: walk_round::WalkRound::default(),
            question: (!told.is_empty()).then(|| Question::Told(told.join("\n\n"))),
            bench: bench_screen::Bench::default(),
            choices: choices::Choices::new(&settings),
            welcome,
            on_screen: false,
            hastens: false,
            own_lessons,
            index: OnceCell::new(),
            source: start.source,
            reader: lessons::Reader::default(),
            own,
            folders: start.folders,
            system_dark: false,
            slot: Slot::new(),
            recovered: None,
            put_off: Vec::new(),
            kept: 0,
            seen: None,
            after_save: None,
            figure: None,
            order: None,
            writing: None,
            watched: start.watched,
            settings,
        };
        let _ = app.offer_recovery();
        let place = app
            .settings
            .lesson
            .clone()
            .filter(|id| app.lesson(id).is_some())
            .map_or(Place::Contents, Place::Lesson);
        let offset = if place == Place::Contents { 0.0 } else { app.settings.place };
        let task = app.go(place);
        let back = operation::scroll_to(reading::PAGE, AbsoluteOffset { x: 0.0, y: offset });
        // The first thing to do stands ready for the keys.
        let first = match &app.question {
            Some(_) => operation::focus(question::FIRST),
            None if welcome => focus::on(list::MASS_FIELD.to_owned()),
            None => Task::none(),
        };
        let there = task.chain(back).chain(first);
        (app, Task::batch([there, system::theme().map(Message::System)]))
    }

    /// The same for a window on a screen, with a first frame of what can be seen alone.
    pub fn on_screen(start: Start) -> (Self, Task<Message>) {
        let (app, task) = Self::new(start);
        (Self { on_screen: true, hastens: true, ..app }, task)
    }

    /// The title of the window.
    pub fn title(&self) -> String {
        let mark = if self.desk.history.is_changed_since_save() { " (not saved)" } else { "" };
        format!("{}{mark} – Heftwise", self.desk.name())
    }

    /// Whether the paper is dark.
    pub fn is_dark(&self) -> bool {
        match self.settings.daylight {
            Daylight::Follow => self.system_dark,
            Daylight::Day => false,
            Daylight::Night => true,
        }
    }

    /// The theme of the window.
    pub fn theme(&self) -> Theme {
        theme::of(self.is_dark())
    }

    /// The size of the window in the pixels things are laid out in: larger text leaves fewer.
    pub(super) fn size(&self) -> Size {
        self.pixels * (1.0 / self.scale())
    }

    /// How much larger than usual everything is drawn.
    pub fn scale(&self) -> f32 {
        let class = match self.place {
            Place::Workshop(_) => workshop::scale(self.pixels.height),
            _ => 1.0,
        };
        class * f32::from(self.settings.text_size) / 100.0
    }

    /// Acts on a message.
    pub fn update(&mut self, message: Message) -> Task<Message> {
        let task = match message {
            Message::Reading(message) => self.read(message),
            Message::Workshop(message) => self.teach(message),
            Message::Show => self.show(),
            Message::BuildSheet(message) => self.enter(message),
            Message::Contents(message) => self.pick(message),
            Message::WalkRound(message) => self.walk(message),
            Message::Bench(message) => self.at_bench(message),
            Message::Choices(message) => self.choose(message),
            Message::Find(act) => self.find(act),
            Message::Notebook(message) => self.write_notes(message),
            Message::KeepNotebook => self.keep_notebook(),
            Message::Drawn => {
                self.hastens = false;
                Task::none()
            }
            Message::Go(place) => self.go(place),
            Message::Turn { back } => self.turn(back),
            Message::Undo => self.stepped(Desk::undo),
            Message::Redo => self.stepped(Desk::redo),
            Message::Open => self.leave(Next::Open),
            Message::Picked(path) => self.open(&path),
            Message::NothingPicked(how) => self.unpicked(how),
            Message::PathTyped(text) => self.path_typed(text),
            Message::PathGiven => self.path_given(),
            Message::OpenPath(path) => self.leave(Next::OpenPath(path)),
            Message::Hovers(hovers) => self.hover(hovers),
            Message::Dropped(path) => self.dropped(path),
            Message::OpenDemo(id) => self.leave(Next::Demo(id)),
            Message::CompanionFile => {
                files::choose(files::Purpose::Companion, self.settings.builds.as_deref())
            }
            Message::CompanionPicked(path) => self.accompany_file(&path),
            Message::CompanionExample(id) => self.accompany_example(id),
            Message::CompanionCopy => self.accompany(Companion::copy(&self.desk)),
            Message::CompanionRemoved(place) => self.part_from(place),
            Message::CompanionForgotten(place) => self.forget_companion(place),
            Message::New => self.leave(Next::Blank),
            Message::Save => self.save(),
            Message::SaveAs => self.save_as(),
            Message::SavePicked(path) => self.save_at(&path),
            Message::FigurePicked(path) => self.save_figure(&path),
            Message::Print(what) => self.print(what),
            Message::PrintHere => self.print_here(),
            Message::PrintAct(act) => self.print_act(act),
            Message::PrintOrdered => self.print_ordered(),
            Message::PaperPicked(path) => self.print_at(path),
            Message::Printing { made, of } => self.printing((made, of)),
            Message::Printed(done) => self.printed(done),
            Message::SaveOver => self.save_over(),
            Message::Reread => self.reread(),
            Message::Leave(next) => self.leave(next),
            Message::SaveThen(next) => self.save_then(next),
            Message::Proceed(next) => self.proceed(next),
            Message::Recover => self.recover(),
            Message::RecoveryRefused => self.refuse_recovery(),
            Message::QuestionClosed => self.answered(),
            Message::KeysTurned => self.ask(Question::Keys),
            Message::MenuTurned => self.turn_menu(),
            Message::StripTurned => self.turn_strip(),
            Message::Set(set) => self.with_settings(|settings| settings.units.set = set),
            Message::OtherUnits => self.with_settings(acts::other_units),
            Message::Light(light) => self.with_settings(|settings| settings.daylight = light),
            Message::Still(still) => self.with_settings(|settings| settings.still = still),
            Message::OtherLight => self.with_settings(acts::other_light),
            Message::Text(larger) => self.with_settings(|settings| settings.resize_text(larger)),
            Message::TextUsual => self.with_settings(|settings| settings.text_size = 100),
            Message::Copy(words) => Task::batch([iced::clipboard::write(words), self.answered()]),
            Message::Focus { back: false } => focus::next(),
            Message::Focus { back: true } => focus::previous(),
            Message::FocusPage => focus::first_in(reading::PAGE),
            Message::Scroll(how) => self.scroll(how),
            Message::Key(event) => self.key(&event),
            Message::Opened(id) => {
                window::monitor_size(id).map(move |screen| Message::Screen(id, screen))
            }
            Message::Screen(id, screen) => self.fit(id, screen),
            Message::Resized(size) => self.resized(size),
            Message::Moved(to) => self.moved(to),
            Message::Returned => self.returned(),
            Message::System(mode) => self.system(mode),
            Message::Keep => self.keep(),
            Message::BuildTouched => self.look_at_file(),
            Message::LessonsChanged => self.reload_lessons(),
            Message::LessonsRead(read) => self.lessons_read(read),
        };
        self.refresh();
        task
    }

    /// Draws anew what was drawn from numbers that have changed.
    fn refresh(&mut self) {
        let dark = self.is_dark();
        if self.place == Place::BuildSheet {
            self.build_sheet.look_up(&self.desk, self.book.notebook());
            self.build_sheet.refresh(&self.desk, &self.settings, dark);
        }
        if self.place == Place::WalkRound {
            self.walk_round.refresh(&self.desk);
        }
        if self.place == Place::Bench {
            self.bench.refresh(&self.desk);
        }
        if matches!(self.place, Place::Lesson(_) | Place::Workshop(_))
            && let Some(reading) = &mut self.reading
            && let Some(lesson) = self.library.lesson(&reading.id)
        {
            reading.refresh(lesson, &self.desk, &self.settings, dark);
        }
    }

    pub(super) fn lesson(&self, id: &str) -> Option<&Lesson> {
        self.library.lesson(id)
    }
}
