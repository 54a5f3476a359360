//! What kind of thing a number measures, and the bridge from uom's types to it.

use std::marker::PhantomData;

use uom::si::f64 as si;
use uom::typenum::{N1, N2, P1, P2, P4, Z0};

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
    /// Electric current, SI ampere.
    Current,
    /// Electric potential, SI volt.
    Voltage,
    /// Electrical resistance, SI ohm.
    Resistance,
    /// Electric charge, SI coulomb.
    Charge,
    /// Angular acceleration, SI radian per second squared.
    AngularAcceleration,
    /// Heat capacity, SI joule per kelvin.
    HeatCapacity,
    /// Specific heat capacity, SI joule per kilogram kelvin.
    SpecificHeat,
    /// Thermal resistance, SI kelvin per watt.
    ThermalResistance,
    /// Thermal conductivity, SI watt per metre kelvin.
    ThermalConductivity,
    /// Heat transfer coefficient, SI watt per square metre kelvin.
    HeatTransfer,
    /// Heat flow or sunlight for each area, SI watt per square metre.
    HeatFlux,
    /// Kinematic viscosity, SI square metre per second.
    KinematicViscosity,
    /// Power per mass, SI watt per kilogram.
    SpecificPower,
    /// Energy per mass, SI joule per kilogram.
    SpecificEnergy,
    /// Mass per time, SI kilogram per second.
    MassFlow,
    /// Frequency, SI hertz.
    Frequency,
    /// Speed of turning per voltage of a motor, SI radian per second and volt.
    SpeedConstant,
    /// Torque per current of a motor, SI newton metre per ampere.
    TorqueConstant,
    /// Fuel mass per energy delivered, SI kilogram per joule.
    SpecificConsumption,
    /// Share of change per degree, SI one per kelvin.
    TemperatureCoefficient,
    /// A temperature reading, SI kelvin.
    Temperature,
    /// A difference of two temperatures, SI kelvin.
    TemperatureStep,
    /// Cohesive modulus of a ground with exponent n, SI newton per metre to the n + 1.
    CohesiveModulus,
    /// Frictional modulus of a ground with exponent n, SI newton per metre to the n + 2.
    FrictionalModulus,
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
            Self::Current => "an electric current",
            Self::Voltage => "a voltage",
            Self::Resistance => "an electrical resistance",
            Self::Charge => "an electric charge",
            Self::AngularAcceleration => "an angular acceleration",
            Self::HeatCapacity => "a heat capacity",
            Self::SpecificHeat => "a specific heat",
            Self::ThermalResistance => "a thermal resistance",
            Self::ThermalConductivity => "a thermal conductivity",
            Self::HeatTransfer => "a heat transfer coefficient",
            Self::HeatFlux => "a power per area",
            Self::KinematicViscosity => "a kinematic viscosity",
            Self::SpecificPower => "a power per mass",
            Self::SpecificEnergy => "an energy per mass",
            Self::MassFlow => "a mass flow",
            Self::Frequency => "a frequency",
            Self::SpeedConstant => "a motor speed constant",
            Self::TorqueConstant => "a motor torque constant",
            Self::SpecificConsumption => "a fuel mass per energy",
            Self::TemperatureCoefficient => "a change per degree",
            Self::Temperature => "a temperature",
            Self::TemperatureStep => "a temperature difference",
            Self::CohesiveModulus => "a cohesive modulus of sinkage",
            Self::FrictionalModulus => "a frictional modulus of sinkage",
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
    Current = Current, si::ElectricCurrent, uom::si::electric_current::ampere;
    Voltage = Voltage, si::ElectricPotential, uom::si::electric_potential::volt;
    Resistance = Resistance, si::ElectricalResistance, uom::si::electrical_resistance::ohm;
    Charge = Charge, si::ElectricCharge, uom::si::electric_charge::coulomb;
    AngularAcceleration = AngularAcceleration, si::AngularAcceleration, uom::si::angular_acceleration::radian_per_second_squared;
    HeatCapacity = HeatCapacity, si::HeatCapacity, uom::si::heat_capacity::joule_per_kelvin;
    SpecificHeat = SpecificHeat, si::SpecificHeatCapacity, uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;
    ThermalResistance = ThermalResistance, si::ThermalResistance, uom::si::thermal_resistance::kelvin_per_watt;
    ThermalConductivity = ThermalConductivity, si::ThermalConductivity, uom::si::thermal_conductivity::watt_per_meter_kelvin;
    HeatTransfer = HeatTransfer, si::HeatTransfer, uom::si::heat_transfer::watt_per_square_meter_kelvin;
    HeatFlux = HeatFlux, si::HeatFluxDensity, uom::si::heat_flux_density::watt_per_square_meter;
    KinematicViscosity = KinematicViscosity, si::KinematicViscosity, uom::si::kinematic_viscosity::square_meter_per_second;
    SpecificPower = SpecificPower, si::SpecificPower, uom::si::specific_power::watt_per_kilogram;
    SpecificEnergy = SpecificEnergy, si::AvailableEnergy, uom::si::available_energy::joule_per_kilogram;
    MassFlow = MassFlow, si::MassRate, uom::si::mass_rate::kilogram_per_second;
    Frequency = Frequency, si::Frequency, uom::si::frequency::hertz;
    Inertia = Inertia, si::MomentOfInertia, uom::si::moment_of_inertia::kilogram_square_meter;
    Density = Density, si::MassDensity, uom::si::mass_density::kilogram_per_cubic_meter;
    AngularSpeed = AngularSpeed, si::AngularVelocity, uom::si::angular_velocity::radian_per_second;
    TemperatureCoefficient = TemperatureCoefficient, si::TemperatureCoefficient, uom::si::temperature_coefficient::per_kelvin;
    Temperature = Temperature, si::ThermodynamicTemperature, uom::si::thermodynamic_temperature::kelvin;
    TemperatureStep = TemperatureStep, si::TemperatureInterval, uom::si::temperature_interval::kelvin;
}

macro_rules! composite_measures {
    ($($alias:ident = $dimension:ident, $exponents:ty;)*) => {$(
        #[doc = concat!("A uom quantity of dimension [`Dimension::", stringify!($dimension), "`], which uom has no name for.")]
        pub type $alias = uom::si::Quantity<$exponents, uom::si::SI<f64>, f64>;
        impl Measure for $alias {
            const DIMENSION: Dimension = Dimension::$dimension;
            fn si(self) -> f64 {
                self.value
            }
            fn from_si(value: f64) -> Self {
                Self { dimension: PhantomData, units: PhantomData, value }
            }
        }
    )*};
}

composite_measures! {
    SecondMoment = SecondMoment, uom::si::ISQ<P4, Z0, Z0, Z0, Z0, Z0, Z0>;
    SpecificConsumption = SpecificConsumption, uom::si::ISQ<N2, Z0, P2, Z0, Z0, Z0, Z0>;
    SpeedConstant = SpeedConstant, uom::si::ISQ<N2, N1, P2, P1, Z0, Z0, Z0>;
    TorqueConstant = TorqueConstant, uom::si::ISQ<P2, P1, N2, N1, Z0, Z0, Z0>;
}

macro_rules! moduli {
    ($($name:ident, $unit:literal;)*) => {$(
        #[doc = concat!("A number of dimension [`Dimension::", stringify!($name), "`], in ", $unit, ".")]
        ///
        /// Its power of the metre depends on the exponent of the same ground, which no type of uom
        /// can say, so it is a type of its own.
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);
        impl Measure for $name {
            const DIMENSION: Dimension = Dimension::$name;
            fn si(self) -> f64 {
                self.0
            }
            fn from_si(value: f64) -> Self {
                Self(value)
            }
        }
    )*};
}

moduli! {
    CohesiveModulus, "N/m^(n+1)";
    FrictionalModulus, "N/m^(n+2)";
}
