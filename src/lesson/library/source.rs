//! Where lessons are read from: a folder, or memory. The only file that reads lessons from disk.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::fmt;
use std::fs::File;
use std::io::{self, Read};
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;

use bytes::Bytes;

use crate::lesson::link;

/// The name of a lesson's text inside its folder.
pub(super) const TEXT: &str = "lesson.md";

/// The name of the teacher's page beside it.
pub(super) const TEACHER: &str = "teacher.md";

/// The largest text of a lesson that is read, in bytes.
const LARGEST_TEXT: u64 = 4 << 20;

/// The largest picture that is read, in bytes.
const LARGEST_PICTURE: u64 = 16 << 20;

/// The text of a lesson: the program's own stays where it is.
pub type Text = Cow<'static, str>;

/// Where lessons are read from.
pub trait Source: fmt::Debug + Send + Sync {
    /// The ids of all lessons, in any order.
    ///
    /// # Errors
    /// The lessons cannot be listed.
    fn lessons(&self) -> io::Result<Vec<String>>;

    /// The text of a lesson.
    ///
    /// # Errors
    /// There is no such lesson, or it cannot be read as text.
    fn text(&self, id: &str) -> io::Result<Text>;

    /// The teacher's page of a lesson, if it has one.
    ///
    /// # Errors
    /// It is there and cannot be read as text.
    fn teacher(&self, id: &str) -> io::Result<Option<Text>>;

    /// A picture from a lesson's folder.
    ///
    /// # Errors
    /// There is no such picture, or it lies outside the folder.
    fn picture(&self, id: &str, file: &str) -> io::Result<Bytes>;

    /// What messages call the text of a lesson.
    fn name(&self, id: &str) -> String {
        format!("lessons/{id}/{TEXT}")
    }
}

/// A folder with a folder for each lesson, as `lessons/` is.
#[derive(Debug, Clone)]
pub struct Folder(pub PathBuf);

impl Source for Folder {
    fn lessons(&self) -> io::Result<Vec<String>> {
        let mut ids = Vec::new();
        for entry in self.0.read_dir()? {
            let entry = entry?;
            if entry.path().join(TEXT).is_file() {
                ids.push(entry.file_name().to_string_lossy().into_owned());
            }
        }
        Ok(ids)
    }

    fn text(&self, id: &str) -> io::Result<Text> {
        in_utf8(self.read(id, TEXT, LARGEST_TEXT)?).map(Text::from)
    }

    fn teacher(&self, id: &str) -> io::Result<Option<Text>> {
        match self.read(id, TEACHER, LARGEST_TEXT) {
            Ok(bytes) => in_utf8(bytes).map(|text| Some(text.into())),
            Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
            Err(error) => Err(error),
        }
    }

    fn picture(&self, id: &str, file: &str) -> io::Result<Bytes> {
        if link::picture(file).is_err() {
            return Err(outside());
        }
        self.read(id, file, LARGEST_PICTURE).map(Bytes::from)
    }

    fn name(&self, id: &str) -> String {
        self.0.join(id).join(TEXT).display().to_string().replace('\\', "/")
    }
}

impl Folder {
    /// Whether it has a lesson of that id.
    fn holds(&self, id: &str) -> bool {
        is_one_step(id) && self.0.join(id).join(TEXT).is_file()
    }

    /// Reads a file of a lesson's folder, never one that a link leads to outside it.
    fn read(&self, id: &str, file: &str, largest: u64) -> io::Result<Vec<u8>> {
        if !is_one_step(id) {
            return Err(outside());
        }
        let folder = self.0.join(id).canonicalize()?;
        let path = folder.join(file).canonicalize()?;
        if !path.starts_with(&folder) {
            return Err(outside());
        }
        // A device or a pipe could wait forever, so look before opening.
        if !path.metadata()?.is_file() {
            return Err(io::Error::new(io::ErrorKind::InvalidInput, "it is not a file"));
        }
        let mut bytes = Vec::new();
        File::open(path)?.take(largest + 1).read_to_end(&mut bytes)?;
        if bytes.len() as u64 > largest {
            let words = format!("the file is larger than {} MB", largest >> 20);
            return Err(io::Error::new(io::ErrorKind::FileTooLarge, words));
        }
        Ok(bytes)
    }
}

fn in_utf8(bytes: Vec<u8>) -> io::Result<String> {
    String::from_utf8(bytes).map_err(|error| {
        let at = error.utf8_error().valid_up_to();
        let words = format!("the file is not UTF-8 text, from byte {at} on");
        io::Error::new(io::ErrorKind::InvalidData, words)
    })
}

/// Whether a name leads one folder down and nowhere else.
fn is_one_step(name: &str) -> bool {
    let mut steps = Path::new(name).components();
    matches!(steps.next(), Some(Component::Normal(_))) && steps.next().is_none()
}

fn outside() -> io::Error {
    io::Error::new(io::ErrorKind::PermissionDenied, "the file is not in the lesson's folder")
}

/// The lessons of one source and, if the reader has any, those of a folder of their own. An own
/// lesson takes the place of one of the same id.
#[derive(Debug)]
pub struct Joined {
    /// The lessons everybody has.
    pub first: Arc<dyn Source>,
    /// The reader's own.
    pub own: Option<Folder>,
}

impl Joined {
    /// Where a lesson is read from.
    fn of(&self, id: &str) -> &dyn Source {
        match &self.own {
            Some(own) if own.holds(id) => own,
            _ => self.first.as_ref(),
        }
    }
}

impl Source for Joined {
    /// A folder that cannot be listed leaves the others readable; [`Folder::lessons`] says why.
    fn lessons(&self) -> io::Result<Vec<String>> {
        let mut ids = self.first.lessons()?;
        let own = self.own.as_ref().and_then(|own| own.lessons().ok()).unwrap_or_default();
        ids.retain(|id| !own.contains(id));
        ids.extend(own);
        Ok(ids)
    }

    fn text(&self, id: &str) -> io::Result<Text> {
        self.of(id).text(id)
    }

    fn teacher(&self, id: &str) -> io::Result<Option<Text>> {
        self.of(id).teacher(id)
    }

    fn picture(&self, id: &str, file: &str) -> io::Result<Bytes> {
        self.of(id).picture(id, file)
    }

    fn name(&self, id: &str) -> String {
        self.of(id).name(id)
    }
}

/// Lessons held in memory.
#[derive(Debug, Clone, Default)]
pub struct Memory {
    /// Texts by lesson id.
    pub texts: BTreeMap<String, String>,
    /// Teacher's pages by lesson id.
    pub teachers: BTreeMap<String, String>,
    /// Pictures by lesson id and file.
    pub pictures: BTreeMap<(String, String), Vec<u8>>,
}

impl Source for Memory {
    fn lessons(&self) -> io::Result<Vec<String>> {
        Ok(self.texts.keys().cloned().collect())
    }

    fn text(&self, id: &str) -> io::Result<Text> {
        let text = self.texts.get(id).cloned().map(Text::from);
        text.ok_or_else(|| io::ErrorKind::NotFound.into())
    }

    fn teacher(&self, id: &str) -> io::Result<Option<Text>> {
        Ok(self.teachers.get(id).cloned().map(Text::from))
    }

    fn picture(&self, id: &str, file: &str) -> io::Result<Bytes> {
        let key = (id.to_owned(), file.to_owned());
        let picture = self.pictures.get(&key).cloned().map(Bytes::from);
        picture.ok_or_else(|| io::ErrorKind::NotFound.into())
    }
}
