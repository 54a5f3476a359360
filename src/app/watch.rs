//! Watching what other programs change: a folder of lessons, which reload by themselves, and the file of
//! the build on the desk.

use std::path::PathBuf;

use iced::Subscription;
use iced::futures::channel::mpsc;
use iced::futures::{SinkExt, Stream, StreamExt};
use notify::{RecursiveMode, Watcher};

use crate::app::shell::Message;

/// What is watched.
#[derive(Debug, Clone, PartialEq, Eq, Hash)]
enum Watched {
    /// A folder and all in it.
    Lessons(PathBuf),
    /// A file, through its folder: most programs put a new one in its place.
    Build(PathBuf),
}

/// Says so whenever something in the folder changes.
pub fn lessons(folder: PathBuf) -> Subscription<Message> {
    Subscription::run_with(Watched::Lessons(folder), changes)
}

/// Says so whenever the file of a build changes.
pub fn build(file: PathBuf) -> Subscription<Message> {
    Subscription::run_with(Watched::Build(file), changes)
}

impl Watched {
    /// The folder to look at, and whether at what lies deeper as well.
    fn folder(&self) -> Option<(PathBuf, RecursiveMode)> {
        match self {
            Self::Lessons(folder) => Some((folder.clone(), RecursiveMode::Recursive)),
            // A path may be given without a folder.
            Self::Build(file) => {
                let file = std::path::absolute(file).ok()?;
                Some((file.parent()?.to_owned(), RecursiveMode::NonRecursive))
            }
        }
    }

    /// Whether something happened to it.
    fn is_in(&self, event: &notify::Event) -> bool {
        let is_it = match self {
            Self::Lessons(_) => true,
            Self::Build(file) => {
                event.paths.iter().any(|path| path.file_name() == file.file_name())
            }
        };
        is_it && !event.kind.is_access()
    }

    fn news(&self) -> Message {
        match self {
            Self::Lessons(_) => Message::LessonsChanged,
            Self::Build(_) => Message::BuildTouched,
        }
    }
}

fn changes(watched: &Watched) -> impl Stream<Item = Message> + use<> {
    let watched = watched.clone();
    iced::stream::channel(8, async move |mut output: mpsc::Sender<Message>| {
        let (mut tell, mut told) = mpsc::channel(8);
        let of = watched.clone();
        let watcher = notify::recommended_watcher(move |event: notify::Result<notify::Event>| {
            if event.is_ok_and(|event| of.is_in(&event)) {
                // A full channel already holds the news.
                let _ = tell.try_send(());
            }
        });
        let (Ok(mut watcher), Some((folder, depth))) = (watcher, watched.folder()) else { return };
        if watcher.watch(&folder, depth).is_err() {
            return;
        }
        while told.next().await.is_some() {
            if output.send(watched.news()).await.is_err() {
                return;
            }
        }
    })
}

#[cfg(test)]
mod tests {
    use std::sync::mpsc;
    use std::thread;
    use std::time::Duration;

    use iced_test::futures::futures::executor::block_on;

    use super::{Message, StreamExt, Watched, changes};

    /// The first news while something is changed again and again, for ten seconds at most: watching
    /// begins some time after it is asked for.
    fn news(watched: Watched, change: impl Fn()) -> Option<Message> {
        let (tell, told) = mpsc::sync_channel(1);
        thread::spawn(move || {
            let _ = tell.send(block_on(Box::pin(changes(&watched)).next()));
        });
        let often = (0..500).find_map(|_| {
            change();
            told.recv_timeout(Duration::from_millis(20)).ok()
        });
        often.flatten()
    }

    #[test]
    fn a_lesson_written_in_a_folder_is_told() {
        let folder = tempfile::tempdir().unwrap();
        let own = tempfile::tempdir_in(folder.path()).unwrap();
        let told = news(Watched::Lessons(folder.path().to_owned()), move || {
            tempfile::NamedTempFile::new_in(own.path()).unwrap();
        });
        assert!(matches!(told, Some(Message::LessonsChanged)), "{told:?}");
    }

    #[test]
    fn a_build_put_in_the_place_of_the_open_one_is_told() {
        let folder = tempfile::tempdir().unwrap();
        let (place, file) = (folder.path().to_owned(), folder.path().join("own.toml"));
        let own = file.clone();
        let told = news(Watched::Build(file), move || {
            tempfile::NamedTempFile::new_in(&place).unwrap().persist(&own).unwrap();
        });
        assert!(matches!(told, Some(Message::BuildTouched)), "{told:?}");
    }

    #[test]
    fn what_happens_beside_the_build_is_not() {
        let watched = Watched::Build("some/own.toml".into());
        let of = |path: &str| notify::Event::new(notify::EventKind::Any).add_path(path.into());
        assert!(watched.is_in(&of("/home/some/own.toml")));
        assert!(!watched.is_in(&of("/home/some/own.toml.part")));
    }
}
