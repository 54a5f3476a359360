//! A rule: which physics function finds which quantity from which, and what to say of it.

use crate::physics::Impossible;
use crate::quantity::{AnyId, Id, Measure, catalogue};

use super::value::Values;

/// A quantity that a rule needs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Need {
    /// Which quantity.
    pub id: AnyId,
    /// Whether the rule can do without it in some cases.
    pub optional: bool,
}

/// Why a rule found no number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Fault {
    /// In this case the rule needs quantities it can otherwise do without.
    Needs(Vec<AnyId>),
    /// In this case any one of these would do.
    NeedsOneOf(Vec<AnyId>),
    /// The formula has no answer for these numbers.
    Impossible(Impossible),
}

impl From<Impossible> for Fault {
    fn from(why: Impossible) -> Self {
        Self::Impossible(why)
    }
}

/// Something the reader should know before trusting a number, said when it applies.
#[derive(Debug, Clone, Copy)]
pub struct Caution {
    /// Whether it applies, given all that is known so far, the rule's own number included.
    ///
    /// What is not known must not count as small: `None < Some(0.0)` holds, so a comparison reads
    /// both numbers first.
    pub when: fn(&Values) -> bool,
    /// What to say, in one sentence.
    pub says: &'static str,
}

/// Runs a physics function on what is known; SI units.
type Find = dyn Fn(&Values) -> Result<f64, Fault> + Send + Sync;

/// How one quantity is found from others.
pub struct Rule {
    /// What it finds.
    pub finds: AnyId,
    /// What it needs, in the order of the physics function's arguments.
    pub needs: Vec<Need>,
    /// What the rule is called.
    pub title: &'static str,
    /// The formula as TeX, each quantity written `\q{id}`: shown with symbols or with numbers.
    pub formula: &'static str,
    /// What is taken for granted, one sentence each.
    pub assumes: &'static [&'static str],
    /// Where it holds, in one sentence.
    pub holds: &'static str,
    /// Where it is published.
    pub source: &'static str,
    /// What to say when it is stretched.
    pub cautions: &'static [Caution],
    find: Box<Find>,
}

impl Rule {
    /// Starts a rule that finds `id` by `function` from `inputs`.
    ///
    /// The types tie ids to arguments: an argument of the wrong dimension does not compile.
    pub fn new<Q, I, R>(id: Id<Q>, inputs: I, function: I::Function<R>) -> Self
    where
        Q: Measure,
        I: Inputs,
        R: Outcome<Q> + 'static,
        I::Function<R>: Send + Sync + 'static,
    {
        let (needs, seated) = (inputs.needs(), inputs.seat());
        Self {
            finds: id.any(),
            needs,
            title: "",
            formula: "",
            assumes: &[],
            holds: "",
            source: "",
            cautions: &[],
            find: Box::new(move |values| I::call(&seated, &function, values)?.outcome().map(Q::si)),
        }
    }

    /// Its title.
    pub fn title(mut self, title: &'static str) -> Self {
        self.title = title;
        self
    }

    /// Its formula, quantities written `\q{id}`.
    pub fn formula(mut self, formula: &'static str) -> Self {
        self.formula = formula;
        self
    }

    /// What is taken for granted.
    pub fn assumes(mut self, assumes: &'static [&'static str]) -> Self {
        self.assumes = assumes;
        self
    }

    /// Where it holds.
    pub fn holds(mut self, holds: &'static str) -> Self {
        self.holds = holds;
        self
    }

    /// Where it is published.
    pub fn source(mut self, source: &'static str) -> Self {
        self.source = source;
        self
    }

    /// What to say when it is stretched.
    pub fn cautions(mut self, cautions: &'static [Caution]) -> Self {
        self.cautions = cautions;
        self
    }

    /// Runs the physics function on what is known; every required input must be.
    pub(super) fn find(&self, values: &Values) -> Result<f64, Fault> {
        (self.find)(values)
    }
}

/// What a physics function may return: the quantity, or why there is none.
pub trait Outcome<Q> {
    /// The quantity or the fault.
    fn outcome(self) -> Result<Q, Fault>;
}

impl<Q: Measure> Outcome<Q> for Q {
    fn outcome(self) -> Result<Q, Fault> {
        Ok(self)
    }
}

impl<Q: Measure, E: Into<Fault>> Outcome<Q> for Result<Q, E> {
    fn outcome(self) -> Result<Q, Fault> {
        self.map_err(Into::into)
    }
}

/// An input a rule can do without in some cases; the function gets an `Option`.
#[derive(Debug, Clone, Copy)]
pub struct Maybe<T>(pub T);

/// One input of a rule.
pub trait Input {
    /// What the physics function gets.
    type Argument;
    /// What must be known.
    fn need(&self) -> Need;
    /// The argument, from the number known at the input's place in the catalogue; the engine runs a
    /// rule only when its required inputs are known.
    fn argument(si: Option<f64>) -> Option<Self::Argument>;
}

impl<Q: Measure> Input for Id<Q> {
    type Argument = Q;
    fn need(&self) -> Need {
        Need { id: self.any(), optional: false }
    }
    fn argument(si: Option<f64>) -> Option<Q> {
        si.map(Q::from_si)
    }
}

impl<Q: Measure> Input for Maybe<Id<Q>> {
    type Argument = Option<Q>;
    fn need(&self) -> Need {
        Need { id: self.0.any(), optional: true }
    }
    fn argument(si: Option<f64>) -> Option<Option<Q>> {
        Some(si.map(Q::from_si))
    }
}

/// An input with its place in the catalogue, looked up once.
pub struct Seated<T> {
    input: T,
    place: usize,
}

impl<T: Input> Seated<T> {
    fn new(input: T) -> Self {
        let place = catalogue::index(input.need().id).unwrap_or(usize::MAX);
        Self { input, place }
    }

    fn read(&self, values: &Values) -> Result<T::Argument, Fault> {
        T::argument(values.si_at(self.place))
            .ok_or_else(|| Fault::Needs(vec![self.input.need().id]))
    }
}

/// The inputs of a rule, one to nine of them.
pub trait Inputs {
    /// The physics function that takes them.
    type Function<R>;
    /// The same inputs with their places.
    type Seated: Send + Sync + 'static;
    /// What must be known.
    fn needs(&self) -> Vec<Need>;
    /// Looks up the place of each.
    fn seat(self) -> Self::Seated;
    /// Calls the function with what is known.
    ///
    /// # Errors
    /// Names the required inputs that are not known.
    fn call<R>(
        seated: &Self::Seated,
        function: &Self::Function<R>,
        values: &Values,
    ) -> Result<R, Fault>;
}

macro_rules! inputs {
    ($($name:ident)+) => {
        #[allow(non_snake_case, reason = "the macro names variables after types")]
        impl<$($name: Input + Send + Sync + 'static),+> Inputs for ($($name,)+) {
            type Function<R> = fn($($name::Argument),+) -> R;
            type Seated = ($(Seated<$name>,)+);
            fn needs(&self) -> Vec<Need> {
                let ($($name,)+) = self;
                vec![$($name.need()),+]
            }
            fn seat(self) -> Self::Seated {
                let ($($name,)+) = self;
                ($(Seated::new($name),)+)
            }
            fn call<R>(
                seated: &Self::Seated,
                function: &Self::Function<R>,
                values: &Values,
            ) -> Result<R, Fault> {
                let ($($name,)+) = seated;
                Ok(function($($name.read(values)?),+))
            }
        }
    };
}

inputs!(A);
inputs!(A B);
inputs!(A B C);
inputs!(A B C D);
inputs!(A B C D E);
inputs!(A B C D E F);
inputs!(A B C D E F G);
inputs!(A B C D E F G H);
inputs!(A B C D E F G H I);
