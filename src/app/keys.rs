//! What a key does when no control wants it.

use iced::keyboard::key::{Code, Key, Named, Physical};
use iced::keyboard::{Event, Modifiers};

use crate::app::find::view::Act;
use crate::app::question::{Next, Question};
use crate::app::screen::{Place, workshop};
use crate::app::shell::Message;

/// How a key moves the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scroll {
    /// A few lines.
    Lines(i8),
    /// Most of a page.
    Pages(i8),
    /// To the top.
    Top,
    /// To the end.
    End,
}

/// The message of a key, if it has one.
pub fn message(event: &Event, question: Option<&Question>, place: &Place) -> Option<Message> {
    let Event::KeyPressed { key, physical_key, modifiers, .. } = event else { return None };
    if let Key::Named(Named::Tab) = key {
        return Some(Message::Focus { back: modifiers.shift() });
    }
    if let (Key::Named(Named::Escape), true) = (key, question.is_some() || !teaches(place)) {
        return Some(Message::QuestionClosed);
    }
    if let (Some(Question::Find(_)), Key::Named(named @ (Named::ArrowDown | Named::ArrowUp))) =
        (question, key)
    {
        return Some(Message::Focus { back: *named == Named::ArrowUp });
    }
    let scrolls = || scroll(key, *modifiers).map(Message::Scroll);
    if question.is_some() {
        // Space answers it.
        return if matches!(key, Key::Named(Named::Space)) { None } else { scrolls() };
    }
    if modifiers.command() {
        return command(key, *physical_key, *modifiers);
    }
    if teaches(place)
        && let Some(message) = before_class(key, *physical_key, *modifiers)
    {
        return Some(Message::Workshop(message));
    }
    let Key::Named(named) = key else { return None };
    match (named, modifiers.alt()) {
        (Named::ArrowLeft, true) => Some(Message::Turn { back: true }),
        (Named::ArrowRight, true) => Some(Message::Turn { back: false }),
        (Named::F6, _) => Some(Message::FocusPage),
        (Named::F1, _) => Some(Message::KeysTurned),
        (Named::F5, _) => Some(Message::Show),
        _ => scrolls(),
    }
}

/// How a key moves what can be scrolled.
fn scroll(key: &Key, modifiers: Modifiers) -> Option<Scroll> {
    if modifiers.alt() || modifiers.command() {
        return None;
    }
    match key {
        Key::Named(Named::PageDown) => Some(Scroll::Pages(1)),
        Key::Named(Named::PageUp) => Some(Scroll::Pages(-1)),
        Key::Named(Named::Space) => Some(Scroll::Pages(if modifiers.shift() { -1 } else { 1 })),
        Key::Named(Named::ArrowDown) => Some(Scroll::Lines(1)),
        Key::Named(Named::ArrowUp) => Some(Scroll::Lines(-1)),
        Key::Named(Named::Home) => Some(Scroll::Top),
        Key::Named(Named::End) => Some(Scroll::End),
        _ => None,
    }
}

/// Whether a class looks on.
const fn teaches(place: &Place) -> bool {
    matches!(place, Place::Workshop(_))
}

/// The keys of a clicker, and of the one who holds it.
fn before_class(key: &Key, physical: Physical, modifiers: Modifiers) -> Option<workshop::Message> {
    use workshop::Message as Do;
    if let Key::Named(named) = key {
        return match named {
            Named::ArrowRight | Named::ArrowDown | Named::PageDown => Some(Do::Next),
            Named::ArrowLeft | Named::ArrowUp | Named::PageUp | Named::Backspace => Some(Do::Back),
            Named::Space => Some(if modifiers.shift() { Do::Back } else { Do::Next }),
            Named::Enter => Some(Do::AnswerTurned),
            Named::Home => Some(Do::First),
            Named::End => Some(Do::Last),
            Named::Escape | Named::F5 => Some(Do::Leave),
            _ => None,
        };
    }
    match key.to_latin(physical)? {
        'a' => Some(Do::AnswerTurned),
        'n' => Some(Do::NotesTurned),
        'b' | '.' => Some(Do::BlankTurned),
        digit => digit.to_digit(10)?.checked_sub(1).map(|place| Do::Vote(place as usize)),
    }
}

fn command(key: &Key, physical: Physical, modifiers: Modifiers) -> Option<Message> {
    let latin = key.to_latin(physical);
    match (latin?, modifiers.shift()) {
        ('o', _) => Some(Message::Open),
        ('s', false) => Some(Message::Save),
        ('s', true) => Some(Message::SaveAs),
        ('z', false) => Some(Message::Undo),
        ('z', true) | ('y', _) => Some(Message::Redo),
        ('u', _) => Some(Message::OtherUnits),
        ('d', _) => Some(Message::OtherLight),
        ('n', _) => Some(Message::New),
        ('w' | 'q', _) => Some(Message::Leave(Next::Close)),
        ('1', _) => Some(Message::Go(Place::Contents)),
        ('2', _) => Some(Message::Go(Place::BuildSheet)),
        ('3', _) => Some(Message::Go(Place::WalkRound)),
        ('4', _) => Some(Message::Go(Place::Notebook)),
        ('5', _) => Some(Message::Go(Place::Bench)),
        ('6' | ',', _) => Some(Message::Go(Place::Settings)),
        ('f', _) => Some(Message::Find(Act::Begin)),
        ('p', _) => Some(Message::PrintHere),
        ('+' | '=', _) => Some(Message::Text(true)),
        ('-', _) => Some(Message::Text(false)),
        ('0', _) => Some(Message::TextUsual),
        _ if physical == Physical::Code(Code::NumpadAdd) => Some(Message::Text(true)),
        _ => None,
    }
}
