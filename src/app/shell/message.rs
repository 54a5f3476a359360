//! Everything that can happen in the window.

use std::path::PathBuf;
use std::sync::Arc;

use iced::{Point, Size, keyboard, theme::Mode, window};

use super::{lessons, printing};
use crate::app::printing::{self as printing_card, Print};
use crate::app::question::Next;
use crate::app::screen::{
    Place, bench as bench_screen, build_sheet, contents as list, notebook, preferences as choices,
    reading, walk_round, workshop,
};
use crate::app::settings::Daylight;
use crate::app::{files, find, keys};
use crate::quantity::UnitSet;

/// What happens in the window.
#[derive(Debug, Clone)]
pub enum Message {
    /// In a lesson.
    Reading(reading::Message),
    /// Before a class.
    Workshop(workshop::Message),
    /// The lesson on the page, shown to a class from its title on.
    Show,
    /// On the build sheet.
    BuildSheet(build_sheet::Message),
    /// Among the lessons.
    Contents(list::Message),
    /// On the bench.
    Bench(bench_screen::Message),
    /// Among the settings.
    Choices(choices::Message),
    /// In Find.
    Find(find::view::Act),
    /// On the walk-round.
    WalkRound(walk_round::Message),
    /// In the notebook.
    Notebook(notebook::Message),
    /// Time to save the notebook.
    KeepNotebook,
    /// The first frame is drawn.
    Drawn,
    /// Another screen is wanted.
    Go(Place),
    /// The lesson before or after this one is wanted.
    Turn {
        /// The one before.
        back: bool,
    },
    /// Take the last change back.
    Undo,
    /// Make it again.
    Redo,
    /// Choose a build to open.
    Open,
    /// This build was chosen.
    Picked(PathBuf),
    /// The dialog was put away without a pick.
    NothingPicked(files::Unpicked),
    /// The path being typed is now this.
    PathTyped(String),
    /// The path typed is the one.
    PathGiven,
    /// Open this build.
    OpenPath(PathBuf),
    /// A file is held over the window, or not any more.
    Hovers(bool),
    /// A file was let go over the window.
    Dropped(PathBuf),
    /// Open a demo build.
    OpenDemo(&'static str),
    /// Start a blank build.
    New,
    /// Choose a file to set beside.
    CompanionFile,
    /// Set this file beside.
    CompanionPicked(PathBuf),
    /// Set an example build beside.
    CompanionExample(&'static str),
    /// Set the build as it is now beside.
    CompanionCopy,
    /// Take a companion away, by its place.
    CompanionRemoved(usize),
    /// Look no more for a companion that is gone, by its place among those.
    CompanionForgotten(usize),
    /// Save the build.
    Save,
    /// Choose where to save it.
    SaveAs,
    /// Save it here.
    SavePicked(PathBuf),
    /// Save the picture here.
    FigurePicked(PathBuf),
    /// Something is to be printed.
    Print(Print),
    /// What is shown is to be printed.
    PrintHere,
    /// Something is done on the card that asks how to print.
    PrintAct(printing_card::Act),
    /// The card is filled.
    PrintOrdered,
    /// Write the page here.
    PaperPicked(PathBuf),
    /// So many of so many sheets of a handout are made.
    Printing {
        /// How many.
        made: usize,
        /// Of how many.
        of: usize,
    },
    /// How printing ended.
    Printed(printing::Printed),
    /// Save it though the file has changed.
    SaveOver,
    /// Read the file again and drop what was changed here.
    Reread,
    /// Put the build away, after asking if it is not saved.
    Leave(Next),
    /// Save, then go on.
    SaveThen(Next),
    /// Go on without saving.
    Proceed(Next),
    /// Bring back what was kept of an unsaved build.
    Recover,
    /// Throw it away.
    RecoveryRefused,
    /// Put the question away.
    QuestionClosed,
    /// The sheet of keys, in or out.
    KeysTurned,
    /// The menu of a narrow window, in or out.
    MenuTurned,
    /// All that moved, in or out.
    StripTurned,
    /// A set of units.
    Set(UnitSet),
    /// The other set of units.
    OtherUnits,
    /// Light or dark.
    Light(Daylight),
    /// The next of light, dark and as the system.
    OtherLight,
    /// Whether pictures may move.
    Still(bool),
    /// Larger or smaller text.
    Text(bool),
    /// Text of the usual size.
    TextUsual,
    /// Copy words.
    Copy(String),
    /// Move the focus.
    Focus {
        /// To the control before.
        back: bool,
    },
    /// Give the focus to the first control of the page.
    FocusPage,
    /// Move the page.
    Scroll(keys::Scroll),
    /// A key no control wanted.
    Key(keyboard::Event),
    /// The window is open.
    Opened(window::Id),
    /// The window stands on a screen of this size, in the pixels things are laid out in.
    Screen(window::Id, Option<Size>),
    /// The window has this size.
    Resized(Size),
    /// The window stands here on the screen.
    Moved(Point),
    /// The window has the focus again.
    Returned,
    /// The system is light or dark.
    System(Mode),
    /// Time to keep a recovery copy.
    Keep,
    /// The file of the build may have been changed by another program.
    BuildTouched,
    /// The lessons on disk may have changed.
    LessonsChanged,
    /// They were read; nothing if that went wrong.
    LessonsRead(Option<Arc<lessons::Read>>),
}
