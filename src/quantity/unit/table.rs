//! The table of units. Factors follow exactly from the definitions in NIST SP 811 (2008),
//! appendix B.8; where one is built from others, it is written as that product.

use std::f64::consts::PI;

use super::Unit;
use crate::quantity::Dimension::{self, *};

const INCH: f64 = 0.0254;
const FOOT: f64 = 0.3048;
const POUND: f64 = 0.45359237;
const STANDARD_GRAVITY: f64 = 9.80665;
const POUND_FORCE: f64 = 4.4482216152605;
const FOOT_POUND: f64 = 1.3558179483314004;

const fn unit(
    symbol: &'static str,
    aliases: &'static [&'static str],
    dimension: Dimension,
    factor: f64,
) -> Unit {
    Unit {
        symbol,
        aliases,
        dimension,
        factor,
        offset: 0.0,
        metric: false,
        imperial: false,
        automatic: true,
        listed_only: false,
    }
}

/// A metric unit.
const fn metric(
    symbol: &'static str,
    aliases: &'static [&'static str],
    dimension: Dimension,
    factor: f64,
) -> Unit {
    Unit { metric: true, ..unit(symbol, aliases, dimension, factor) }
}

/// An imperial unit.
const fn imperial(
    symbol: &'static str,
    aliases: &'static [&'static str],
    dimension: Dimension,
    factor: f64,
) -> Unit {
    Unit { imperial: true, ..unit(symbol, aliases, dimension, factor) }
}

/// A unit of both sets.
const fn both(
    symbol: &'static str,
    aliases: &'static [&'static str],
    dimension: Dimension,
    factor: f64,
) -> Unit {
    Unit { metric: true, imperial: true, ..unit(symbol, aliases, dimension, factor) }
}

impl Unit {
    /// Only when the reader picks it.
    const fn on_request(mut self) -> Self {
        self.automatic = false;
        self
    }

    /// The SI value at its zero.
    const fn from(mut self, offset: f64) -> Self {
        self.offset = offset;
        self
    }

    /// Only for quantities that list it.
    const fn listed_only(mut self) -> Self {
        self.listed_only = true;
        self.automatic = false;
        self
    }
}

/// Every unit; within a dimension and a set, the automatic ones go from small to large.
pub(super) static UNITS: &[Unit] = &[
    both("", &[], Ratio, 1.0),
    both("%", &["percent", "per cent", "pct"], Ratio, 0.01).on_request(),
    both("g", &["gn", "gₙ", "g0", "G"], Ratio, 1.0).listed_only(),
    // Angle
    both("°", &["deg", "degs", "degree", "degrees", "º"], Angle, PI / 180.0),
    both("rad", &["radian", "radians"], Angle, 1.0).on_request(),
    // Length
    metric("µm", &["micron", "microns", "micrometre", "micrometer"], Length, 1e-6).on_request(),
    metric("mm", &["millimetre", "millimetres", "millimeter", "millimeters"], Length, 1e-3),
    metric("cm", &["centimetre", "centimetres", "centimeter", "centimeters"], Length, 1e-2)
        .on_request(),
    metric("m", &["metre", "metres", "meter", "meters"], Length, 1.0),
    metric("km", &["kilometre", "kilometres", "kilometer", "kilometers"], Length, 1e3),
    imperial("mil", &["mils", "thou"], Length, INCH / 1000.0).on_request(),
    imperial("in", &["\"", "″", "”", "''", "inch", "inches"], Length, INCH),
    imperial("ft", &["'", "′", "’", "foot", "feet"], Length, FOOT),
    imperial("yd", &["yard", "yards"], Length, 3.0 * FOOT).on_request(),
    imperial("mi", &["mile", "miles"], Length, 1609.344),
    // Area
    metric("mm²", &["sq mm"], Area, 1e-6),
    metric("cm²", &["sq cm"], Area, 1e-4),
    metric("m²", &["sq m"], Area, 1.0),
    imperial("in²", &["sq in"], Area, INCH * INCH),
    imperial("ft²", &["sq ft"], Area, FOOT * FOOT),
    // Volume
    metric("mm³", &[], Volume, 1e-9),
    metric("cm³", &["cc", "ml", "millilitre", "milliliter"], Volume, 1e-6),
    metric("L", &["l", "litre", "litres", "liter", "liters", "dm³"], Volume, 1e-3),
    metric("m³", &[], Volume, 1.0),
    imperial("in³", &["cu in"], Volume, INCH * INCH * INCH),
    imperial("gal", &["gallon", "gallons", "US gal", "gal(US)"], Volume, 0.003785411784)
        .on_request(),
    imperial("ft³", &["cu ft"], Volume, FOOT * FOOT * FOOT),
    // Second moment of area
    metric("mm⁴", &[], SecondMoment, 1e-12),
    metric("cm⁴", &[], SecondMoment, 1e-8),
    metric("m⁴", &[], SecondMoment, 1.0),
    imperial("in⁴", &[], SecondMoment, INCH * INCH * INCH * INCH),
    // Mass
    metric("mg", &["milligram", "milligrams"], Mass, 1e-6).on_request(),
    metric("g", &["gram", "grams", "gramme", "grammes"], Mass, 1e-3),
    metric("kg", &["kgs", "kilo", "kilos", "kilogram", "kilograms"], Mass, 1.0),
    metric("t", &["tonne", "tonnes", "metric ton"], Mass, 1e3),
    imperial("oz", &["ounce", "ounces"], Mass, POUND / 16.0),
    imperial("lb", &["lbs", "lbm", "pound", "pounds"], Mass, POUND),
    imperial("slug", &["slugs"], Mass, POUND_FORCE / FOOT).on_request(),
    imperial("short ton", &["short tons", "US ton", "US tons"], Mass, 2000.0 * POUND).on_request(),
    // Density
    metric("kg/m³", &[], Density, 1.0),
    metric("g/cm³", &["g/cc", "kg/L", "kg/dm³"], Density, 1e3).on_request(),
    imperial("lb/ft³", &["lbs/ft³", "pcf"], Density, POUND / (FOOT * FOOT * FOOT)),
    // Moment of inertia
    metric("g·cm²", &[], Inertia, 1e-7).on_request(),
    metric("kg·cm²", &[], Inertia, 1e-4),
    metric("kg·m²", &[], Inertia, 1.0),
    imperial("lb·in²", &["lbs·in²"], Inertia, POUND * INCH * INCH),
    imperial("lb·ft²", &["lbs·ft²"], Inertia, POUND * FOOT * FOOT),
    // Time
    both("µs", &["microsecond", "microseconds"], Time, 1e-6).on_request(),
    both("ms", &["msec", "millisecond", "milliseconds"], Time, 1e-3),
    both("s", &["sec", "secs", "second", "seconds"], Time, 1.0),
    both("min", &["mins", "minute", "minutes"], Time, 60.0),
    both("h", &["hr", "hrs", "hour", "hours"], Time, 3600.0),
    // Speed
    metric("mm/s", &[], Speed, 1e-3).on_request(),
    metric("m/s", &["mps", "m/sec"], Speed, 1.0),
    metric("km/h", &["kph", "kmh", "kmph", "km/hr"], Speed, 1.0 / 3.6).on_request(),
    imperial("ft/s", &["fps", "ft/sec"], Speed, FOOT),
    imperial("mph", &["mi/h", "miles/h", "miles/hour"], Speed, 0.44704).on_request(),
    // Speed of turning
    both("rad/s", &["rad/sec"], AngularSpeed, 1.0).on_request(),
    both("°/s", &["deg/s", "degrees/s"], AngularSpeed, PI / 180.0).on_request(),
    both("rpm", &["r/min", "rev/min", "revs/min"], AngularSpeed, PI / 30.0),
    // Acceleration
    metric("m/s²", &["m/s/s"], Acceleration, 1.0),
    imperial("ft/s²", &["ft/s/s"], Acceleration, FOOT),
    both("g", &["gn", "gₙ", "g0", "G"], Acceleration, STANDARD_GRAVITY).on_request(),
    // Force
    metric("dyn", &["dyne", "dynes"], Force, 1e-5).on_request(),
    metric("mN", &["millinewton", "millinewtons"], Force, 1e-3).on_request(),
    metric("N", &["newton", "newtons"], Force, 1.0),
    metric("kgf", &["kp", "kilopond"], Force, STANDARD_GRAVITY).on_request(),
    metric("kN", &["kilonewton", "kilonewtons"], Force, 1e3),
    metric("MN", &["meganewton", "meganewtons"], Force, 1e6),
    imperial("ozf", &[], Force, POUND_FORCE / 16.0).on_request(),
    imperial("lbf", &["lbsf"], Force, POUND_FORCE),
    imperial("kip", &["kips"], Force, 1000.0 * POUND_FORCE).on_request(),
    // Energy for each distance, which is a force
    metric("J/m", &[], Force, 1.0).listed_only(),
    metric("W·h/km", &["Wh/km"], Force, 3.6).listed_only(),
    imperial("W·h/mi", &["Wh/mi"], Force, 3600.0 / 1609.344).listed_only(),
    // Pressure
    metric("Pa", &["pascal", "pascals", "N/m²"], Pressure, 1.0),
    metric("mbar", &["hPa", "millibar"], Pressure, 100.0).on_request(),
    metric("kPa", &["kilopascal", "kilopascals", "kN/m²"], Pressure, 1e3),
    metric("N/cm²", &[], Pressure, 1e4).on_request(),
    metric("bar", &["bars"], Pressure, 1e5).on_request(),
    metric("kgf/cm²", &["at"], Pressure, STANDARD_GRAVITY * 1e4).on_request(),
    metric("MPa", &["N/mm²", "megapascal", "megapascals"], Pressure, 1e6),
    metric("GPa", &["gigapascal", "gigapascals"], Pressure, 1e9),
    both("atm", &["atmosphere", "atmospheres"], Pressure, 101325.0).on_request(),
    both("torr", &["Torr"], Pressure, 101325.0 / 760.0).on_request(),
    imperial("lbf/ft²", &["psf", "lb/ft²"], Pressure, POUND_FORCE / (FOOT * FOOT)).on_request(),
    imperial("inH₂O", &["inH2O", "in water", "inch of water"], Pressure, 249.08891).on_request(),
    imperial("psi", &["lbf/in²", "lb/in²", "lbs/in²"], Pressure, POUND_FORCE / (INCH * INCH)),
    imperial("ksi", &[], Pressure, 1000.0 * POUND_FORCE / (INCH * INCH)),
    // Torque
    metric("mN·m", &["N·mm"], Torque, 1e-3),
    metric("kgf·cm", &["kg·cm"], Torque, STANDARD_GRAVITY / 100.0).on_request(),
    metric("N·m", &[], Torque, 1.0),
    metric("kN·m", &[], Torque, 1e3),
    imperial("ozf·in", &["oz·in", "in·ozf", "in·oz"], Torque, POUND_FORCE / 16.0 * INCH)
        .on_request(),
    imperial("lbf·in", &["lb·in", "in·lbf", "in·lb"], Torque, POUND_FORCE * INCH),
    imperial("lbf·ft", &["lb·ft", "ft·lbf", "ft·lb"], Torque, FOOT_POUND),
    // Energy
    metric("mJ", &["millijoule", "millijoules"], Energy, 1e-3).on_request(),
    metric("J", &["joule", "joules", "W·s"], Energy, 1.0),
    metric("kJ", &["kilojoule", "kilojoules"], Energy, 1e3),
    metric("MJ", &["megajoule", "megajoules"], Energy, 1e6),
    both("W·h", &["watt hour", "watt hours"], Energy, 3600.0).on_request(),
    both("kW·h", &["kilowatt hour", "kilowatt hours"], Energy, 3.6e6).on_request(),
    metric("cal", &["cal(th)", "calorie", "calories"], Energy, 4.184).on_request(),
    metric("kcal", &["kcal(th)"], Energy, 4184.0).on_request(),
    imperial("ft·lbf", &["lbf·ft", "ft·lb"], Energy, FOOT_POUND),
    imperial("Btu", &["Btu(IT)", "BTU"], Energy, 1055.05585262).on_request(),
    imperial("Btu(th)", &[], Energy, 4.184 * POUND * 1000.0 / 1.8).on_request(),
    // Power
    metric("mW", &["milliwatt", "milliwatts"], Power, 1e-3).on_request(),
    both("W", &["watt", "watts"], Power, 1.0),
    metric("kW", &["kilowatt", "kilowatts"], Power, 1e3),
    metric("MW", &["megawatt", "megawatts"], Power, 1e6),
    imperial("ft·lbf/s", &["lbf·ft/s"], Power, FOOT_POUND).on_request(),
    imperial("hp", &["HP", "horsepower"], Power, 550.0 * FOOT_POUND),
    imperial("hp(electric)", &["electric hp"], Power, 746.0).on_request(),
    // Momentum
    metric("N·s", &["kg·m/s"], Momentum, 1.0),
    metric("kN·s", &[], Momentum, 1e3),
    imperial("lbf·s", &["lb·s"], Momentum, POUND_FORCE),
    imperial("lb·ft/s", &[], Momentum, POUND * FOOT).on_request(),
    // Stiffness
    metric("N/m", &[], Stiffness, 1.0),
    metric("kN/m", &[], Stiffness, 1e3),
    metric("N/mm", &[], Stiffness, 1e3).on_request(),
    metric("MN/m", &["kN/mm"], Stiffness, 1e6),
    imperial("lbf/ft", &["lb/ft"], Stiffness, POUND_FORCE / FOOT).on_request(),
    imperial("lbf/in", &["lb/in", "lbs/in"], Stiffness, POUND_FORCE / INCH),
    // Electricity
    both("mA", &["milliamp", "milliamps"], Current, 1e-3),
    both("A", &["amp", "amps", "ampere", "amperes"], Current, 1.0),
    both("mV", &["millivolt", "millivolts"], Voltage, 1e-3),
    both("V", &["volt", "volts"], Voltage, 1.0),
    both("mΩ", &["mohm", "milliohm", "milliohms"], Resistance, 1e-3),
    both("Ω", &["ohm", "ohms"], Resistance, 1.0),
    both("C", &["coulomb", "coulombs", "A·s"], Charge, 1.0).on_request(),
    both("mA·h", &["mAh"], Charge, 3.6).on_request(),
    both("A·h", &["Ah", "amp hours"], Charge, 3600.0),
    both("rpm/V", &["Kv"], SpeedConstant, PI / 30.0),
    both("rad/(s·V)", &["rad/s/V"], SpeedConstant, 1.0).on_request(),
    both("mN·m/A", &["mNm/A"], TorqueConstant, 1e-3),
    both("N·m/A", &["Nm/A"], TorqueConstant, 1.0),
    // Moduli of sinkage: n is the exponent of the same ground, so no inch converts to a metre
    both("N/m^(n+1)", &["N/m^(1+n)"], CohesiveModulus, 1.0).on_request(),
    both("kN/m^(n+1)", &["kN/m^(1+n)"], CohesiveModulus, 1e3),
    both("N/m^(n+2)", &["N/m^(2+n)"], FrictionalModulus, 1.0).on_request(),
    both("kN/m^(n+2)", &["kN/m^(2+n)"], FrictionalModulus, 1e3),
    // Heat
    both("J/K", &["J/°C", "J/C"], HeatCapacity, 1.0),
    both("kJ/K", &[], HeatCapacity, 1e3),
    both("J/(kg·K)", &["J/kg/K", "J/(kg·°C)"], SpecificHeat, 1.0),
    both("K/W", &["°C/W", "C/W"], ThermalResistance, 1.0),
    both("W/(m·K)", &["W/m/K", "W/mK"], ThermalConductivity, 1.0),
    both("W/(m²·K)", &["W/m²/K", "W/m²K"], HeatTransfer, 1.0),
    both("W/m²", &["W/m2"], HeatFlux, 1.0),
    both("mm²/s", &["cSt"], KinematicViscosity, 1e-6),
    both("m²/s", &[], KinematicViscosity, 1.0).on_request(),
    // Per mass, per time
    metric("W/kg", &[], SpecificPower, 1.0),
    metric("kW/t", &[], SpecificPower, 1.0).on_request(),
    imperial("hp/lb", &[], SpecificPower, 550.0 * FOOT_POUND / POUND),
    both("J/kg", &[], SpecificEnergy, 1.0).on_request(),
    both("W·h/kg", &["Wh/kg"], SpecificEnergy, 3600.0),
    both("MJ/kg", &["kJ/g"], SpecificEnergy, 1e6).on_request(),
    both("kg/J", &[], SpecificConsumption, 1.0).on_request(),
    metric("g/(kW·h)", &["g/kWh"], SpecificConsumption, 1e-3 / 3.6e6),
    metric("kg/(kW·h)", &["kg/kWh"], SpecificConsumption, 1.0 / 3.6e6).on_request(),
    imperial("lb/(hp·h)", &["lb/hp/h"], SpecificConsumption, POUND / (550.0 * FOOT_POUND * 3600.0)),
    both("%/K", &["%/°C"], TemperatureCoefficient, 0.01),
    both("1/K", &["1/°C"], TemperatureCoefficient, 1.0).on_request(),
    metric("g/h", &[], MassFlow, 1e-3 / 3600.0).on_request(),
    metric("kg/h", &[], MassFlow, 1.0 / 3600.0).on_request(),
    metric("g/s", &[], MassFlow, 1e-3),
    metric("kg/s", &[], MassFlow, 1.0),
    imperial("lb/s", &[], MassFlow, POUND),
    both("Hz", &["1/s", "hertz"], Frequency, 1.0),
    both("kHz", &[], Frequency, 1e3),
    both("rad/s²", &["rad/s/s"], AngularAcceleration, 1.0),
    // Temperature readings
    metric("°C", &["C", "degC", "deg C", "celsius", "℃"], Temperature, 1.0).from(273.15),
    imperial("°F", &["F", "degF", "deg F", "fahrenheit", "℉"], Temperature, 1.0 / 1.8)
        .from(459.67 / 1.8),
    both("K", &["kelvin"], Temperature, 1.0).on_request(),
    // Temperature differences
    metric("K", &["kelvin"], TemperatureStep, 1.0),
    metric("°C", &["C", "degC", "deg C", "celsius", "℃"], TemperatureStep, 1.0).on_request(),
    imperial("°F", &["F", "degF", "deg F", "fahrenheit", "℉"], TemperatureStep, 1.0 / 1.8),
];
