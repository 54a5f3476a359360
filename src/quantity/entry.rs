//! One entry of the catalogue: everything the program knows about a quantity but its value.

use super::dimension::{Dimension, Measure};
use super::id::{AnyId, Id};

/// Whether the reader sets a quantity or a rule finds it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Role {
    /// The reader sets it.
    Given {
        /// In SI units; taken, and shown as assumed, when nothing is said.
        assumed: Option<f64>,
    },
    /// A rule finds it.
    Found,
    /// The reader sets it, or a rule finds it: one of two ways to say the same thing, or a number that
    /// can be stated for want of those it is found from.
    Either,
}

/// What it takes to change a number that the reader sets.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Effort {
    /// Nothing but moving or setting something: position, gearing, pressure, orientation, speed.
    Free,
    /// Parts, material or work.
    #[default]
    Bought,
    /// Not in the reader's hands: gravity, the ground, a yardstick.
    Fixed,
}

/// The part of the subject a quantity belongs to; the build file and build sheet group by it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Topic {
    /// The whole machine: mass, balance, where it stands.
    Machine,
    /// What touches the ground.
    RunningGear,
    /// What it stands on.
    Ground,
    /// Force per area under it.
    Pressure,
    /// Stops and drops.
    Impact,
    /// How soft ground carries, drags and grips.
    Traction,
    /// Force, power, speed and stopping.
    Motion,
    /// What it takes to swing the machine round.
    Turning,
    /// Axle loads, tipping and nosing over.
    Balance,
    /// Beams, bolts, materials and mounts.
    Structure,
    /// Motor, engine, gears and what they give at the ground.
    Drive,
    /// Battery, wires, controller and regulator.
    Electrics,
    /// Where losses go and how hot things get.
    Heat,
    /// Range, the weight spiral and scaling.
    Whole,
}

impl Topic {
    /// Every topic, in the order of the build sheet.
    pub const ALL: [Self; 14] = [
        Self::Machine,
        Self::RunningGear,
        Self::Ground,
        Self::Pressure,
        Self::Impact,
        Self::Traction,
        Self::Motion,
        Self::Turning,
        Self::Balance,
        Self::Structure,
        Self::Drive,
        Self::Electrics,
        Self::Heat,
        Self::Whole,
    ];

    /// The table of the build file: `running-gear`.
    pub fn key(self) -> &'static str {
        match self {
            Self::Machine => "machine",
            Self::RunningGear => "running-gear",
            Self::Ground => "ground",
            Self::Pressure => "pressure",
            Self::Impact => "impact",
            Self::Traction => "traction",
            Self::Motion => "motion",
            Self::Turning => "turning",
            Self::Balance => "balance",
            Self::Structure => "structure",
            Self::Drive => "drive",
            Self::Electrics => "electrics",
            Self::Heat => "heat",
            Self::Whole => "whole",
        }
    }

    /// The heading on screen.
    pub fn title(self) -> &'static str {
        match self {
            Self::Machine => "The machine",
            Self::RunningGear => "Running gear",
            Self::Ground => "The ground",
            Self::Pressure => "Pressure",
            Self::Impact => "Impact",
            Self::Traction => "Sinking, dragging and gripping",
            Self::Motion => "Power and speed",
            Self::Turning => "Inertia and turning",
            Self::Balance => "Balance",
            Self::Structure => "Strength",
            Self::Drive => "Motor and gears",
            Self::Electrics => "Battery and wires",
            Self::Heat => "Heat",
            Self::Whole => "The whole machine",
        }
    }
}

/// A quantity's entry in the catalogue.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Entry {
    /// Its name in files, lessons and commands.
    pub id: AnyId,
    /// What it measures.
    pub dimension: Dimension,
    /// What it is called on screen, lower case: "ground pressure (mean)".
    pub label: &'static str,
    /// Its symbol as TeX: `p`, `F_{\mathrm{peak}}`.
    pub symbol: &'static str,
    /// One line: what it is.
    pub meaning: &'static str,
    /// Who sets it.
    pub role: Role,
    /// Where it belongs.
    pub topic: Topic,
    /// Units offered first in the metric set, small to large; empty: the dimension's own.
    pub metric: &'static [&'static str],
    /// Units offered first in the imperial set, small to large; empty: the dimension's own.
    pub imperial: &'static [&'static str],
    /// The usual range in SI units, for sliders; outside it the program asks, never refuses.
    pub usual: (f64, f64),
    /// The possible range in SI units; outside it the number cannot be meant.
    pub possible: (f64, f64),
    /// Whether the lower end of `possible` is itself impossible (a mass of zero).
    pub above_only: bool,
    /// Whether "what else moved" and the walk-round show it.
    pub headline: bool,
    /// Whether only whole numbers make sense.
    pub whole: bool,
    /// What it takes to change it.
    pub effort: Effort,
}

impl Entry {
    const fn new<Q: Measure>(
        id: Id<Q>,
        label: &'static str,
        symbol: &'static str,
        meaning: &'static str,
        role: Role,
        topic: Topic,
    ) -> Self {
        Self {
            id: id.any(),
            dimension: Q::DIMENSION,
            label,
            symbol,
            meaning,
            role,
            topic,
            metric: &[],
            imperial: &[],
            usual: (0.0, 0.0),
            possible: (0.0, f64::MAX),
            above_only: false,
            headline: false,
            whole: false,
            effort: Effort::Bought,
        }
    }

    /// A quantity the reader sets.
    pub const fn given<Q: Measure>(
        topic: Topic,
        id: Id<Q>,
        label: &'static str,
        symbol: &'static str,
        meaning: &'static str,
    ) -> Self {
        Self::new(id, label, symbol, meaning, Role::Given { assumed: None }, topic)
    }

    /// A quantity a rule finds.
    pub const fn found<Q: Measure>(
        topic: Topic,
        id: Id<Q>,
        label: &'static str,
        symbol: &'static str,
        meaning: &'static str,
    ) -> Self {
        Self::new(id, label, symbol, meaning, Role::Found, topic)
    }

    /// The reader sets it, or a rule finds it.
    pub const fn either<Q: Measure>(
        topic: Topic,
        id: Id<Q>,
        label: &'static str,
        symbol: &'static str,
        meaning: &'static str,
    ) -> Self {
        Self::new(id, label, symbol, meaning, Role::Either, topic)
    }

    /// Taken when nothing is said, in SI units.
    pub const fn assumed(mut self, si: f64) -> Self {
        self.role = Role::Given { assumed: Some(si) };
        self
    }

    /// The units offered first, small to large.
    pub const fn units(
        mut self,
        metric: &'static [&'static str],
        imperial: &'static [&'static str],
    ) -> Self {
        self.metric = metric;
        self.imperial = imperial;
        self
    }

    /// The usual range, in SI units.
    pub const fn usual(mut self, low: f64, high: f64) -> Self {
        self.usual = (low, high);
        self
    }

    /// The possible range, in SI units, both ends included.
    pub const fn possible(mut self, low: f64, high: f64) -> Self {
        self.possible = (low, high);
        self
    }

    /// Zero and less cannot be meant.
    pub const fn above_zero(mut self) -> Self {
        self.possible = (0.0, f64::MAX);
        self.above_only = true;
        self
    }

    /// Shown in the strip and the walk-round.
    pub const fn headline(mut self) -> Self {
        self.headline = true;
        self
    }

    /// Only whole numbers make sense.
    pub const fn whole(mut self) -> Self {
        self.whole = true;
        self
    }

    /// Changing it costs nothing: position, gearing, pressure, orientation, speed.
    pub const fn free(mut self) -> Self {
        self.effort = Effort::Free;
        self
    }

    /// Not in the reader's hands.
    pub const fn fixed(mut self) -> Self {
        self.effort = Effort::Fixed;
        self
    }

    /// Whether the reader may set it without pinning a found number.
    pub const fn is_given(&self) -> bool {
        !matches!(self.role, Role::Found)
    }

    /// Whether `si` can be meant at all.
    pub fn admits(&self, si: f64) -> bool {
        let (low, high) = self.possible;
        si.is_finite() && si <= high && if self.above_only { si > low } else { si >= low }
    }
}
