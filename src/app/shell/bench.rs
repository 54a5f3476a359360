//! What the shell does on the bench: a what-if, a build from five answers, the recent builds.

use iced::Task;

use super::{App, Message};
use crate::app::companion::Companion;
use crate::app::desk::Desk;
use crate::app::focus;
use crate::app::question::Next;
use crate::app::screen::{Place, bench};
use crate::sheet::{Edit, History, Sheet};

/// What a copy is called.
const WHAT_IF: &str = ", what if";

impl App {
    /// Acts on what is done on the bench.
    pub(super) fn at_bench(&mut self, message: bench::Message) -> Task<Message> {
        match self.bench.update(message, &self.settings.units) {
            bench::Action::None => Task::none(),
            bench::Action::Edit(edit, gesture) => self.edit(&edit, Some(gesture)),
            bench::Action::WhatIf => self.leave(Next::WhatIf),
            bench::Action::Begin(edits) => self.leave(Next::Begin(edits)),
            bench::Action::Blank => self.leave(Next::Blank),
            bench::Action::Focus(field) => focus::on(field.to_owned()),
            bench::Action::Look => {
                self.bench.look(&self.settings.recent);
                Task::none()
            }
            bench::Action::Forget(path) => {
                let task = self.with_settings(|settings| settings.forget(&path));
                self.bench.look(&self.settings.recent);
                task
            }
        }
    }

    /// Opens the five questions.
    pub(super) fn ask_five(&mut self) -> Task<Message> {
        self.bench.ask_five();
        focus::on(bench::five::view::FIRST.to_owned())
    }

    /// A copy goes on the desk, the build itself beside it.
    pub(super) fn what_if(&mut self) -> Task<Message> {
        let left = Companion::left(&self.desk);
        let mut copy = self.desk.sheet().clone();
        // A build for reading alone keeps its name; the button is not offered for one.
        let _ = copy.apply(&Edit::Name(copy_name(&self.desk.name())));
        let task = self.put(Desk::new(History::opened(copy), None, None));
        Task::batch([task, self.accompany(left)])
    }

    /// A build that starts with these answers; they can be taken back as one change.
    pub(super) fn begin(&mut self, edits: &[Edit]) -> Task<Message> {
        let mut desk = Desk::new(History::opened(Sheet::blank()), None, None);
        for edit in edits {
            // Each was tried on a blank build when it was typed.
            let _ = desk.apply(edit, Some("five"));
        }
        desk.settled();
        self.bench.begun();
        let task = self.put(desk);
        // Nothing of it is in a file yet, so a recovery copy is due.
        self.kept = 0;
        Task::batch([task, self.go(Place::BuildSheet)])
    }
}

/// The name of a copy: `Sandpiper, what if`, then `Sandpiper, what if 2`.
fn copy_name(name: &str) -> String {
    match name.rsplit_once(WHAT_IF) {
        Some((name, "")) => format!("{name}{WHAT_IF} 2"),
        Some((name, number)) => match number.trim().parse::<u32>() {
            Ok(number) => format!("{name}{WHAT_IF} {}", number.saturating_add(1)),
            Err(_) => format!("{name}{WHAT_IF}{number}{WHAT_IF}"),
        },
        None => format!("{name}{WHAT_IF}"),
    }
}

#[cfg(test)]
mod tests {
    use super::copy_name;

    #[test]
    fn copies_of_copies_are_counted() {
        assert_eq!(copy_name("Cart"), "Cart, what if");
        assert_eq!(copy_name("Cart, what if"), "Cart, what if 2");
        assert_eq!(copy_name("Cart, what if 9"), "Cart, what if 10");
    }
}
