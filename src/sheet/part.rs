//! Parts and the trial mass, as the reader entered them.

/// One line of the parts list, every number as typed.
#[derive(Debug, Clone, Default, PartialEq, Eq, Hash)]
pub struct Part {
    /// What it is called.
    pub name: String,
    /// Its mass as typed: `412 g`. Empty when none was entered.
    pub mass: String,
    /// Where its centre of gravity is, as typed: forward of the middle of the ground contact,
    /// to the left of the centre line, up from the ground.
    pub at: Option<[String; 3]>,
}

/// A what-if mass, every number as typed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TrialMass {
    /// The mass added, or taken away when negative: `+200 g`.
    pub mass: String,
    /// Where it sits, measured as [`Part::at`] is; none: at the present centre of gravity.
    pub at: Option<[String; 3]>,
}

/// A direction in which the place of a part is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Axis {
    /// Forward of the middle of the ground contact.
    Forward,
    /// To the left of the centre line.
    Left,
    /// Up from the ground.
    Up,
}

impl Axis {
    /// The three directions, in the order of a place in the file.
    pub const ALL: [Self; 3] = [Self::Forward, Self::Left, Self::Up];

    /// The place of this direction in [`Part::at`].
    pub const fn index(self) -> usize {
        match self {
            Self::Forward => 0,
            Self::Left => 1,
            Self::Up => 2,
        }
    }

    /// The direction in a reader's words.
    pub const fn in_words(self) -> &'static str {
        match self {
            Self::Forward => "how far forward",
            Self::Left => "how far to the left",
            Self::Up => "how far up",
        }
    }
}

/// One field of a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum PartField {
    /// [`Part::name`].
    Name,
    /// [`Part::mass`].
    Mass,
    /// One direction of [`Part::at`].
    At(Axis),
}
