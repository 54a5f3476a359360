//! Watching a folder of lessons: a lesson being edited reloads by itself.

use std::path::PathBuf;

use iced::Subscription;
use iced::futures::channel::mpsc;
use iced::futures::{SinkExt, Stream, StreamExt};
use notify::{RecursiveMode, Watcher};

use crate::app::shell::Message;

/// Says so whenever something in the folder changes.
pub fn lessons(folder: PathBuf) -> Subscription<Message> {
    Subscription::run_with(folder, changes)
}

#[expect(clippy::ptr_arg, reason = "a subscription hands over what it was made with")]
fn changes(folder: &PathBuf) -> impl Stream<Item = Message> + use<> {
    let folder = folder.clone();
    iced::stream::channel(8, async move |mut output: mpsc::Sender<Message>| {
        let (mut tell, mut told) = mpsc::channel(8);
        let watcher = notify::recommended_watcher(move |event: notify::Result<notify::Event>| {
            if event.is_ok_and(|event| !event.kind.is_access()) {
                // A full channel already holds the news.
                let _ = tell.try_send(());
            }
        });
        let Ok(mut watcher) = watcher else { return };
        if watcher.watch(&folder, RecursiveMode::Recursive).is_err() {
            return;
        }
        while told.next().await.is_some() {
            if output.send(Message::LessonsChanged).await.is_err() {
                return;
            }
        }
    })
}
