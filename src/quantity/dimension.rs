//! What kind of thing a number measures, and the bridge from uom's types to it.

use uom::si::f64 as si;

/// What a number measures.
///
/// Energy and torque have the same SI base units but are different dimensions here, because a
/// reader who types `3 N·m` for an energy has most likely mixed them up.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Dimension {
    /// A plain number, a count or a percentage.
    Ratio,
    /// Angle, SI radian.
    Angle,
    /// Length, SI metre.
    Length,
    /// Area, SI square metre.
    Area,
    /// Volume, SI cubic metre.
    Volume,
    /// Second moment of area, SI metre to the fourth.
    SecondMoment,
    /// Mass, SI kilogram.
    Mass,
    /// Density, SI kilogram per cubic metre.
    Density,
    /// Moment of inertia, SI kilogram square metre.
    Inertia,
    /// Time, SI second.
    Time,
    /// Speed, SI metre per second.
    Speed,
    /// Speed of turning, SI radian per second.
    AngularSpeed,
    /// Acceleration, SI metre per second squared.
    Acceleration,
    /// Force, SI newton.
    Force,
    /// Pressure or stress, SI pascal.
    Pressure,
    /// Torque, SI newton metre.
    Torque,
    /// Energy, SI joule.
    Energy,
    /// Power, SI watt.
    Power,
    /// Momentum or impulse, SI newton second.
    Momentum,
    /// Stiffness of a spring, SI newton per metre.
    Stiffness,
    /// A temperature reading, SI kelvin.
    Temperature,
    /// A difference of two temperatures, SI kelvin.
    TemperatureStep,
}

impl Dimension {
    /// The dimension in a reader's words: "a length", "a force".
    pub fn in_words(self) -> &'static str {
        match self {
            Self::Ratio => "a plain number",
            Self::Angle => "an angle",
            Self::Length => "a length",
            Self::Area => "an area",
            Self::Volume => "a volume",
            Self::SecondMoment => "a second moment of area",
            Self::Mass => "a mass",
            Self::Density => "a density",
            Self::Inertia => "a moment of inertia",
            Self::Time => "a time",
            Self::Speed => "a speed",
            Self::AngularSpeed => "a turning speed",
            Self::Acceleration => "an acceleration",
            Self::Force => "a force",
            Self::Pressure => "a pressure",
            Self::Torque => "a torque",
            Self::Energy => "an energy",
            Self::Power => "a power",
            Self::Momentum => "a momentum",
            Self::Stiffness => "a stiffness",
            Self::Temperature => "a temperature",
            Self::TemperatureStep => "a temperature difference",
        }
    }
}

/// A uom quantity that the catalogue can hold: it knows its dimension and its SI base value.
pub trait Measure: Copy + 'static {
    /// The dimension of this type.
    const DIMENSION: Dimension;
    /// The value in the coherent SI unit.
    fn si(self) -> f64;
    /// The quantity from a value in the coherent SI unit.
    fn from_si(value: f64) -> Self;
}

macro_rules! measures {
    ($($alias:ident = $dimension:ident, $uom:ty, $base:ty;)*) => {$(
        #[doc = concat!("A uom quantity of dimension [`Dimension::", stringify!($dimension), "`].")]
        pub type $alias = $uom;
        impl Measure for $alias {
            const DIMENSION: Dimension = Dimension::$dimension;
            fn si(self) -> f64 {
                self.get::<$base>()
            }
            fn from_si(value: f64) -> Self {
                Self::new::<$base>(value)
            }
        }
    )*};
}

measures! {
    Ratio = Ratio, si::Ratio, uom::si::ratio::ratio;
    Angle = Angle, si::Angle, uom::si::angle::radian;
    Length = Length, si::Length, uom::si::length::meter;
    Area = Area, si::Area, uom::si::area::square_meter;
    Volume = Volume, si::Volume, uom::si::volume::cubic_meter;
    Mass = Mass, si::Mass, uom::si::mass::kilogram;
    Time = Time, si::Time, uom::si::time::second;
    Speed = Speed, si::Velocity, uom::si::velocity::meter_per_second;
    Acceleration = Acceleration, si::Acceleration, uom::si::acceleration::meter_per_second_squared;
    Force = Force, si::Force, uom::si::force::newton;
    Pressure = Pressure, si::Pressure, uom::si::pressure::pascal;
    Energy = Energy, si::Energy, uom::si::energy::joule;
    Power = Power, si::Power, uom::si::power::watt;
    Torque = Torque, si::Torque, uom::si::torque::newton_meter;
    Momentum = Momentum, si::Momentum, uom::si::momentum::kilogram_meter_per_second;
    Stiffness = Stiffness, si::SurfaceTension, uom::si::surface_tension::newton_per_meter;
}
