//! The window on a bench: the program's own state and view, with iced's runtime done by hand and
//! no screen. Unlike `iced_test`'s simulator it runs tasks, so focus and scrolling move as they do
//! for a reader, and the state of widgets lasts from one event to the next.

use std::path::PathBuf;
use std::sync::Arc;

use heftwise::app::screen::{Place, reading};
use heftwise::app::shell::{App, Folders, Message, Start};
use heftwise::app::theme;
use heftwise::lesson::{Memory, Shipped, Source};
use iced::advanced::renderer::{Headless as _, Style};
use iced::advanced::widget::operation::{Operation, Outcome, black_box};
use iced::advanced::{clipboard, mouse::Cursor};
use iced::event::Status;
use iced::keyboard::{self, Key, Modifiers, key::Named};
use iced::widget::operation::AbsoluteOffset;
use iced::{Event, Point, Rectangle, Renderer, Size, Task, Theme, mouse, window};
use iced_test::core::SmolStr;
use iced_test::futures::futures::{StreamExt, executor::block_on};
use iced_test::runtime::{self, Action, UserInterface, task::into_stream, user_interface::Cache};
use iced_test::selector::{Bounded, Candidate, Selector};
use tempfile::TempDir;

/// The size most tests use: there is room for the rail and the margin.
pub const WIDE: Size = Size::new(1280.0, 800.0);
/// A window as narrow as a telephone.
pub const NARROW: Size = Size::new(380.0, 700.0);

pub type Ui<'a> = UserInterface<'a, Message, Theme, Renderer>;

/// The window on a bench.
pub struct Rig {
    pub app: App,
    /// Whether the program has asked to end.
    pub closed: bool,
    /// What was copied.
    pub copied: Vec<String>,
    /// Kept until the window is done with: the program's own files are in it.
    _folder: Option<TempDir>,
    pub size: Size,
    pub cursor: Cursor,
    pub cache: Cache,
    pub renderer: Renderer,
}

/// What a control that takes the focus is known by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Control {
    pub bounds: Rectangle,
    /// What of it can be seen, if anything.
    pub seen: Option<Rectangle>,
    pub focused: bool,
}

/// Start from the lessons shipped, the program's own files in a folder of the test.
pub fn start(folder: &TempDir) -> Start {
    Start { build: None, source: Arc::new(Shipped), watched: None, folders: folders(folder) }
}

pub fn folders(folder: &TempDir) -> Folders {
    let own = folder.path().join("own");
    Folders {
        recovery: own.join("recovery"),
        notebook: own.join("notebook.toml"),
        settings: own,
        exports: folder.path().to_owned(),
    }
}

/// Lessons held in memory, each an id and its text.
pub fn memory(lessons: &[(&str, &str)]) -> Arc<dyn Source> {
    let texts = lessons.iter().map(|(id, text)| ((*id).to_owned(), (*text).to_owned()));
    Arc::new(Memory { texts: texts.collect(), ..Memory::default() })
}

/// The window of a lesson, on the first demo build.
pub fn lesson(id: &str) -> Rig {
    let mut rig = Rig::fresh();
    rig.send(Message::Go(Place::Lesson(id.to_owned())));
    rig
}

impl Rig {
    /// Opens the window.
    pub fn open(start: Start, size: Size) -> Self {
        let (app, task) = App::new(start);
        let mut rig = Self {
            app,
            closed: false,
            copied: Vec::new(),
            _folder: None,
            size,
            cursor: Cursor::Unavailable,
            cache: Cache::default(),
            renderer: Renderer::new(theme::REGULAR, 16.0.into()),
        };
        rig.send(Message::Resized(size));
        rig.run(task);
        rig.settle();
        rig
    }

    /// The window on the first demo build, its list of lessons shown.
    pub fn fresh() -> Self {
        let folder = tempfile::tempdir().unwrap();
        let rig = Self::open(start(&folder), WIDE);
        Self { _folder: Some(folder), ..rig }
    }

    /// Acts on a message and does the work it asks for.
    pub fn send(&mut self, message: Message) {
        let task = self.app.update(message);
        self.run(task);
        self.settle();
    }

    pub fn run(&mut self, task: Task<Message>) {
        let Some(mut actions) = into_stream(task) else { return };
        while let Some(action) = block_on(actions.next()) {
            match action {
                Action::Output(message) => self.send(message),
                Action::Widget(operation) => self.operate(operation),
                Action::Clipboard(runtime::clipboard::Action::Write { contents, .. }) => {
                    self.copied.push(contents);
                }
                Action::Exit => self.closed = true,
                _ => {}
            }
        }
    }

    /// One frame: lets widgets say what the last change did to them.
    fn settle(&mut self) {
        let redraw = Event::Window(window::Event::RedrawRequested(std::time::Instant::now()));
        let (_, messages) = self.update(&redraw);
        for message in messages {
            let task = self.app.update(message);
            self.run(task);
        }
    }

    pub fn ui<T>(&mut self, act: impl FnOnce(&mut Ui<'_>, &mut Renderer) -> T) -> T {
        let cache = std::mem::take(&mut self.cache);
        // Larger text leaves fewer pixels to lay out in.
        let size = self.size * (1.0 / self.app.scale());
        let mut ui = UserInterface::build(self.app.view(), size, cache, &mut self.renderer);
        let done = act(&mut ui, &mut self.renderer);
        self.cache = ui.into_cache();
        done
    }

    fn update(&mut self, event: &Event) -> (Status, Vec<Message>) {
        let cursor = self.cursor;
        let mut messages = Vec::new();
        let status = self.ui(|ui, renderer| {
            let events = std::slice::from_ref(event);
            ui.update(events, cursor, renderer, &mut clipboard::Null, &mut messages).1
        });
        (status.first().copied().unwrap_or(Status::Ignored), messages)
    }

    fn operate(&mut self, operation: Box<dyn Operation>) {
        self.ui(|ui, renderer| {
            let mut next = Some(operation);
            while let Some(mut operation) = next.take() {
                ui.operate(renderer, operation.as_mut());
                if let Outcome::Chain(chained) = operation.finish() {
                    next = Some(chained);
                }
            }
        });
    }

    /// Hands an event to the widgets; a key that none of them takes goes to the program.
    pub fn feed(&mut self, event: Event) {
        if let Event::Mouse(mouse::Event::CursorMoved { position }) = event {
            self.cursor = Cursor::Available(position);
        }
        let (status, messages) = self.update(&event);
        for message in messages {
            self.send(message);
        }
        if let (Event::Keyboard(key), Status::Ignored) = (event, status) {
            self.send(Message::Key(key));
        }
        self.settle();
    }

    /// Presses a key while others are held.
    pub fn key(&mut self, key: Named, modifiers: Modifiers) {
        let text = (key == Named::Space).then(|| " ".into());
        self.held(Key::Named(key), modifiers, text);
    }

    /// Presses a letter together with Ctrl, or Cmd on a Mac.
    pub fn command(&mut self, letter: &str) {
        self.held(Key::Character(letter.into()), Modifiers::COMMAND, None);
    }

    fn held(&mut self, key: Key, modifiers: Modifiers, text: Option<SmolStr>) {
        let held = |modifiers| Event::Keyboard(keyboard::Event::ModifiersChanged(modifiers));
        self.feed(held(modifiers));
        self.feed(key_event(key, modifiers, text));
        self.feed(held(Modifiers::empty()));
    }

    /// Types into whatever has the focus.
    pub fn typewrite(&mut self, text: &str) {
        for letter in text.chars() {
            let letter: String = letter.into();
            let key = Key::Character(letter.as_str().into());
            self.feed(key_event(key, Modifiers::empty(), Some(letter.as_str().into())));
        }
    }

    pub fn point_at(&mut self, position: Point) {
        self.feed(Event::Mouse(mouse::Event::CursorMoved { position }));
    }

    pub fn press(&mut self) {
        self.feed(Event::Mouse(mouse::Event::ButtonPressed(mouse::Button::Left)));
    }

    pub fn release(&mut self) {
        self.feed(Event::Mouse(mouse::Event::ButtonReleased(mouse::Button::Left)));
    }

    /// Clicks what a selector finds, after scrolling the page to it if need be.
    pub fn click<S>(&mut self, selector: S)
    where
        S: Selector + Clone + Send,
        S::Output: Bounded + Clone + Send,
    {
        let at = self.show(selector);
        self.point_at(at.center());
        self.press();
        self.release();
    }

    /// Scrolls the page to what a selector finds; where on the window it can be seen then.
    pub fn show<S>(&mut self, selector: S) -> Rectangle
    where
        S: Selector + Clone + Send,
        S::Output: Bounded + Clone + Send,
    {
        let wanted = selector.description();
        let found = self.find(selector.clone()).unwrap_or_else(|| panic!("no {wanted}"));
        let whole = found.visible_bounds().filter(|seen| seen.height >= found.bounds().height);
        if let Some(seen) = whole {
            return seen;
        }
        let y = (found.bounds().y - 0.4 * self.size.height).max(0.0);
        let offset = AbsoluteOffset { x: 0.0, y };
        self.run(iced::widget::operation::scroll_to(reading::PAGE, offset));
        self.settle();
        let found = self.find(selector).and_then(|found| found.visible_bounds());
        found.unwrap_or_else(|| panic!("{wanted} cannot be scrolled to"))
    }

    /// The first thing a selector finds.
    pub fn find<S>(&mut self, selector: S) -> Option<S::Output>
    where
        S: Selector + Send,
        S::Output: Clone + Send,
    {
        match self.inspect(selector.find()) {
            Outcome::Some(found) => found,
            _ => None,
        }
    }

    /// All that a selector finds, in the order of the page.
    pub fn all<T: Clone + Send>(
        &mut self,
        selector: impl FnMut(Candidate<'_>) -> Option<T> + Send,
    ) -> Vec<T> {
        match self.inspect(selector.find_all()) {
            Outcome::Some(found) => found,
            _ => Vec::new(),
        }
    }

    fn inspect<T: Send>(&mut self, mut operation: impl Operation<T>) -> Outcome<T> {
        self.ui(|ui, renderer| ui.operate(renderer, &mut black_box(&mut operation)));
        operation.finish()
    }

    /// Every text on the window, in or out of view.
    pub fn texts(&mut self) -> Vec<String> {
        self.all(|candidate| match candidate {
            Candidate::Text { content, .. } => Some(content.to_owned()),
            _ => None,
        })
    }

    /// Whether a text on the window has these words in it.
    pub fn says(&mut self, words: &str) -> bool {
        self.texts().iter().any(|text| text.contains(words))
    }

    /// What stands in a text field.
    pub fn field(&mut self, id: &'static str) -> Option<String> {
        let id = iced::widget::Id::new(id);
        self.all(move |candidate| match candidate {
            Candidate::TextInput { id: Some(found), state, .. } if *found == id => {
                Some(state.text().to_owned())
            }
            _ => None,
        })
        .pop()
    }

    /// Every control that can take the focus, in the order of the page.
    pub fn controls(&mut self) -> Vec<Control> {
        self.all(|candidate| match candidate {
            Candidate::Focusable { bounds, visible_bounds, state, .. } => {
                Some(Control { bounds, seen: visible_bounds, focused: state.is_focused() })
            }
            _ => None,
        })
    }

    /// The control that has the focus; there is never more than one.
    pub fn focused(&mut self) -> Option<Control> {
        let focused: Vec<_> = self.controls().into_iter().filter(|c| c.focused).collect();
        assert!(focused.len() <= 1, "several controls have the focus: {focused:?}");
        focused.first().copied()
    }

    /// How far down the page is scrolled, in pixels.
    pub fn scrolled(&mut self) -> f32 {
        let page = iced::widget::Id::new(reading::PAGE);
        self.all(move |candidate| match candidate {
            Candidate::Scrollable { id, translation, .. } if id == Some(&page) => {
                Some(translation.y)
            }
            _ => None,
        })
        .pop()
        .expect("every screen has a page")
    }

    /// What the pointer would look like over a point.
    pub fn pointer_over(&mut self, points: &[Point]) -> Vec<mouse::Interaction> {
        self.ui(|ui, renderer| {
            let look = |point: &Point| {
                let moved = Event::Mouse(mouse::Event::CursorMoved { position: *point });
                let cursor = Cursor::Available(*point);
                let mut messages = Vec::new();
                let clipboard = &mut clipboard::Null;
                match ui.update(&[moved], cursor, renderer, clipboard, &mut messages).0 {
                    runtime::user_interface::State::Updated { mouse_interaction, .. } => {
                        mouse_interaction
                    }
                    runtime::user_interface::State::Outdated => mouse::Interaction::None,
                }
            };
            points.iter().map(look).collect()
        })
    }

    /// The pixels of the window, four bytes each, and how many there are in a row.
    pub fn picture(&mut self) -> (Vec<[u8; 4]>, usize) {
        let (theme, size, cursor) = (self.app.theme(), self.size, self.cursor);
        let scale = self.app.scale();
        let ground = theme.palette().background;
        let style = Style { text_color: theme.palette().text };
        let bytes = self.ui(|ui, renderer| {
            ui.draw(renderer, &theme, &style, cursor);
            let pixels = Size::new(size.width as u32, size.height as u32);
            renderer.screenshot(pixels, scale, ground)
        });
        let pixels = bytes.chunks_exact(4).map(|p| [p[0], p[1], p[2], p[3]]).collect();
        (pixels, size.width as usize)
    }
}

/// A key being pressed.
pub fn key_event(key: Key, modifiers: Modifiers, text: Option<SmolStr>) -> Event {
    use keyboard::key::{NativeCode, Physical};
    Event::Keyboard(keyboard::Event::KeyPressed {
        modified_key: key.clone(),
        key,
        physical_key: Physical::Unidentified(NativeCode::Unidentified),
        location: keyboard::Location::Standard,
        modifiers,
        text,
        repeat: false,
    })
}

/// A build file with this text in a folder.
pub fn file(folder: &TempDir, name: &str, text: &str) -> PathBuf {
    let path = folder.path().join(name);
    std::fs::write(&path, text).unwrap();
    path
}
