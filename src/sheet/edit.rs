//! What can be done to a build.

use thiserror::Error;

use super::part::{Part, PartField};
use crate::quantity::AnyId;

/// One change to a build.
#[derive(Debug, Clone, PartialEq)]
pub enum Edit {
    /// Enters a number as typed; for a found quantity this pins it.
    ///
    /// The other of a pair that say the same thing is cleared. A mass set on a build whose mass
    /// adds up from its parts goes into the trial mass, so that the parts keep what they weigh.
    Set {
        /// Which quantity.
        id: AnyId,
        /// The number as typed.
        text: String,
    },
    /// Takes a number out.
    Clear {
        /// Which quantity.
        id: AnyId,
    },
    /// Enters several numbers at once: a row of a table of presets.
    Preset {
        /// Each quantity with its number as text.
        values: Vec<(AnyId, String)>,
    },
    /// Calls the build something else.
    Name(String),
    /// Writes the note; an empty one is taken out.
    Note(String),
    /// Adds a part at the end of the list.
    AddPart(Part),
    /// Changes one field of a part. Setting one direction of a part without a place puts the
    /// other two at zero.
    SetPart {
        /// The part, counted from zero.
        index: usize,
        /// Which field.
        field: PartField,
        /// The new text.
        text: String,
    },
    /// Takes the place of a part out.
    UnplacePart {
        /// The part, counted from zero.
        index: usize,
    },
    /// Puts a copy of a part right after it.
    DuplicatePart {
        /// The part, counted from zero.
        index: usize,
    },
    /// Takes a part out of the list.
    RemovePart {
        /// The part, counted from zero.
        index: usize,
    },
    /// Moves a part to another place in the list.
    MovePart {
        /// Where it is, counted from zero.
        from: usize,
        /// Where it goes, counted from zero.
        to: usize,
    },
    /// Enters the trial mass.
    SetTrial {
        /// The mass as typed: `+200 g`.
        mass: String,
        /// Where it sits; none: at the present centre of gravity.
        at: Option<[String; 3]>,
    },
    /// Takes the trial mass out.
    ClearTrial,
}

/// Why a change was not made; the build is as it was.
#[derive(Debug, Clone, PartialEq, Eq, Error)]
pub enum EditRefused {
    /// The build is open for reading alone.
    #[error(
        "This build was written by a newer Heftwise, so it is open for reading alone. \
         Update Heftwise to change it."
    )]
    ReadOnly,
    /// There is no such part.
    #[error("There is no part {}; the list has {count}.", index + 1)]
    NoSuchPart {
        /// The part asked for, counted from zero.
        index: usize,
        /// How many there are.
        count: usize,
    },
    /// The number has to be understood for this change, and is not.
    #[error("{0}")]
    Number(String),
    /// The build would grow too large to be opened again.
    #[error("The build would grow past 1 MiB, more than Heftwise opens. Shorten the text.")]
    TooLarge,
    /// The file is laid out in a way this change cannot be written into.
    #[error("{0}")]
    Layout(String),
}
