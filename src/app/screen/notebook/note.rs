//! One note being written, with an undo of its own.

use iced::Element;
use iced::keyboard::Key;
use iced::widget::text_editor::{Action, Binding, Content, Cursor, Edit, KeyPress, Motion, Status};

use super::Message;
use crate::app::theme::{self, REGULAR, UNIT, size};

/// The most steps that can be taken back.
const STEPS: usize = 200;

/// A note, and what it was before.
#[derive(Default)]
pub struct Note {
    content: Content,
    before: Vec<Was>,
    after: Vec<Was>,
    /// Whether the last edit added to a word: more letters belong to the same step.
    in_word: bool,
}

/// A note as it was.
struct Was {
    text: String,
    cursor: Cursor,
}

/// What is done in a note.
#[derive(Debug, Clone)]
pub enum Act {
    /// Typed, moved in or selected.
    Edited(Action),
    /// The last step is taken back.
    Undo,
    /// It is made again.
    Redo,
}

impl Note {
    /// A note with the text kept of it.
    pub fn new(text: &str) -> Self {
        Self { content: Content::with_text(text), ..Self::default() }
    }

    /// Acts, and gives the text if it has changed.
    pub fn perform(&mut self, act: Act) -> Option<String> {
        match act {
            Act::Edited(action) => {
                let edits = action.is_edit();
                if edits {
                    self.remember(&action);
                } else {
                    self.in_word = false;
                }
                self.content.perform(action);
                edits.then(|| self.content.text())
            }
            Act::Undo => self.step(|note| (&mut note.before, &mut note.after)),
            Act::Redo => self.step(|note| (&mut note.after, &mut note.before)),
        }
    }

    /// A step is a word with the space after it, or one edit of another kind.
    fn remember(&mut self, action: &Action) {
        let inserted = match action {
            Action::Edit(Edit::Insert(letter)) => Some(*letter),
            _ => None,
        };
        if inserted.is_none() || !self.in_word {
            self.before.push(self.now());
            let over = self.before.len().saturating_sub(STEPS);
            self.before.drain(..over);
        }
        self.in_word = inserted.is_some_and(|letter| !letter.is_whitespace());
        self.after.clear();
    }

    fn now(&self) -> Was {
        Was { text: self.content.text(), cursor: self.content.cursor() }
    }

    fn step(
        &mut self,
        ways: impl Fn(&mut Self) -> (&mut Vec<Was>, &mut Vec<Was>),
    ) -> Option<String> {
        let now = self.now();
        let (from, to) = ways(self);
        let was = from.pop()?;
        to.push(now);
        self.in_word = false;
        self.content = Content::with_text(&was.text);
        self.content.perform(Action::Move(Motion::DocumentStart));
        self.content.move_to(was.cursor);
        Some(was.text)
    }

    /// The editor of the note of a lesson.
    pub fn view<'a>(&'a self, id: &'a str) -> Element<'a, Message> {
        iced::widget::text_editor(&self.content)
            .id(format!("note:{id}"))
            .placeholder("What you saw, what you would try next")
            .font(REGULAR)
            .size(size::LABEL)
            .padding(UNIT)
            .min_height(80.0)
            .style(theme::editor)
            .key_binding(move |press| binding(id, press))
            .on_action(move |action| Message::Note(id.to_owned(), Act::Edited(action)))
            .into()
    }
}

/// The keys of a note: letters pressed with Ctrl that it has no use for go to the window.
fn binding(id: &str, press: KeyPress) -> Option<Binding<Message>> {
    let letter = matches!(press.key, Key::Character(_));
    if !press.modifiers.command() || !letter {
        return Binding::from_key_press(press);
    }
    let focused = matches!(press.status, Status::Focused { .. });
    let step = |act| focused.then(|| Binding::Custom(Message::Note(id.to_owned(), act)));
    match (press.key.to_latin(press.physical_key)?, press.modifiers.shift()) {
        ('z', false) => step(Act::Undo),
        ('z', true) | ('y', _) => step(Act::Redo),
        ('a' | 'c' | 'v' | 'x', _) => Binding::from_key_press(press),
        _ => None,
    }
}
