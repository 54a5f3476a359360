//! Unit factors against NIST SP 811 (2008), "Guide for the Use of the International System of
//! Units", appendix B.8.

use approx::assert_relative_eq;
use heftwise::quantity::unit::{Missed, find, of_dimension};
use heftwise::quantity::{Dimension, Entry, Unit, catalogue, parse, si_unit};

/// An entry of a dimension, whether or not the catalogue has a quantity of it.
fn entry(dimension: Dimension) -> Entry {
    let mut entry = *catalogue::find("mass").expect("mass");
    entry.dimension = dimension;
    entry
}

/// Spelling, dimension, factor to 12 digits or more (from the exact definitions behind SP 811
/// B.8), and the factor SP 811 B.8 prints, if it prints one.
const FACTORS: &[(&str, Dimension, f64, Option<f64>)] = &[
    ("in", Dimension::Length, 0.0254, Some(0.0254)),
    ("ft", Dimension::Length, 0.3048, Some(0.3048)),
    ("mi", Dimension::Length, 1609.344, Some(1609.344)),
    ("mil", Dimension::Length, 0.0000254, None),
    ("in^2", Dimension::Area, 0.00064516, Some(0.00064516)),
    ("ft^2", Dimension::Area, 0.09290304, Some(0.09290304)),
    ("in^3", Dimension::Volume, 0.000016387064, Some(1.638706e-05)),
    ("ft^3", Dimension::Volume, 0.028316846592, Some(0.02831685)),
    ("US gal", Dimension::Volume, 0.003785411784, Some(0.003785412)),
    ("in^4", Dimension::SecondMoment, 0.0000004162314256, Some(4.162314e-07)),
    ("lb", Dimension::Mass, 0.45359237, Some(0.4535924)),
    ("oz", Dimension::Mass, 0.028349523125, Some(0.02834952)),
    ("slug", Dimension::Mass, 14.5939029372064, Some(14.5939)),
    ("short ton", Dimension::Mass, 907.18474, Some(907.1847)),
    ("lbf", Dimension::Force, 4.4482216152605, Some(4.448222)),
    ("ozf", Dimension::Force, 0.278013850953781, Some(0.2780139)),
    ("kgf", Dimension::Force, 9.80665, Some(9.80665)),
    ("kip", Dimension::Force, 4448.2216152605, Some(4448.222)),
    ("dyn", Dimension::Force, 0.00001, Some(1e-05)),
    ("lbf*ft", Dimension::Torque, 1.3558179483314, Some(1.355818)),
    ("kgf*cm", Dimension::Torque, 0.0980665, None),
    ("ozf*in", Dimension::Torque, 0.00706155181422604, Some(0.007061552)),
    ("psi", Dimension::Pressure, 6894.75729316836, Some(6894.757)),
    ("bar", Dimension::Pressure, 100000.0, Some(100000.0)),
    ("atm", Dimension::Pressure, 101325.0, Some(101325.0)),
    ("kgf/cm^2", Dimension::Pressure, 98066.5, Some(98066.5)),
    ("torr", Dimension::Pressure, 133.322368421053, Some(133.3224)),
    ("inH2O", Dimension::Pressure, 249.08891, Some(249.0889)),
    ("hp", Dimension::Power, 745.69987158227, Some(745.6999)),
    ("hp(electric)", Dimension::Power, 746.0, Some(746.0)),
    ("ft*lbf/s", Dimension::Power, 1.3558179483314, Some(1.355818)),
    ("Btu(IT)", Dimension::Energy, 1055.05585262, Some(1055.056)),
    ("Btu(th)", Dimension::Energy, 1054.35026448889, Some(1054.35)),
    ("cal", Dimension::Energy, 4.184, Some(4.184)),
    ("kcal", Dimension::Energy, 4184.0, Some(4184.0)),
    ("kWh", Dimension::Energy, 3600000.0, Some(3600000.0)),
    ("W*h", Dimension::Energy, 3600.0, Some(3600.0)),
    ("ft*lbf", Dimension::Energy, 1.3558179483314, Some(1.355818)),
    ("mph", Dimension::Speed, 0.44704, Some(0.44704)),
    ("km/h", Dimension::Speed, 0.277777777777778, Some(0.2777778)),
    ("ft/s", Dimension::Speed, 0.3048, Some(0.3048)),
    ("rpm", Dimension::AngularSpeed, 0.10471975511966, Some(0.1047198)),
    ("deg", Dimension::Angle, 0.0174532925199433, Some(0.01745329)),
    ("gn", Dimension::Acceleration, 9.80665, Some(9.80665)),
    ("lb*ft^2", Dimension::Inertia, 0.0421401100938048, Some(0.04214011)),
    ("lb/ft^3", Dimension::Density, 16.0184633739601, Some(16.01846)),
    ("lbf/in", Dimension::Stiffness, 175.126835246476, Some(175.1268)),
    ("degF", Dimension::TemperatureStep, 0.555555555555556, None),
];

/// Every dimension there is.
const DIMENSIONS: &[Dimension] = &[
    Dimension::Ratio,
    Dimension::Angle,
    Dimension::Length,
    Dimension::Area,
    Dimension::Volume,
    Dimension::SecondMoment,
    Dimension::Mass,
    Dimension::Density,
    Dimension::Inertia,
    Dimension::Time,
    Dimension::Speed,
    Dimension::AngularSpeed,
    Dimension::Acceleration,
    Dimension::Force,
    Dimension::Pressure,
    Dimension::Torque,
    Dimension::Energy,
    Dimension::Power,
    Dimension::Momentum,
    Dimension::Stiffness,
    Dimension::HeatFlux,
    Dimension::KinematicViscosity,
    Dimension::Temperature,
    Dimension::TemperatureStep,
];

#[test]
fn factors_agree_with_sp_811() {
    for (spelling, dimension, factor, printed) in FACTORS {
        let entry = entry(*dimension);
        let si = parse(&format!("1 {spelling}"), &entry)
            .unwrap_or_else(|error| panic!("1 {spelling}: {error}"))
            .si;
        assert_relative_eq!(si, *factor, max_relative = 1e-12);
        if let Some(printed) = printed {
            assert_relative_eq!(si, *printed, max_relative = 1e-6);
        }
    }
}

/// temp-boiling, temp-minus-forty, temp-room, temp-absolute-zero: NIST SP 811 (2008) B.8,
/// t/°C = (t/°F − 32)/1.8, and T/K = t/°C + 273.15.
#[test]
fn temperature_readings() {
    let temperature = entry(Dimension::Temperature);
    for (fahrenheit, celsius) in [(212.0, 100.0), (-40.0, -40.0), (68.0, 20.0), (-459.67, -273.15)]
    {
        let read = |text: String| parse(&text, &temperature).expect("a temperature").si;
        let kelvin = read(format!("{fahrenheit} °F"));
        assert_relative_eq!(kelvin, celsius + 273.15, max_relative = 1e-9, epsilon = 1e-9);
        assert_relative_eq!(
            kelvin,
            read(format!("{celsius} degC")),
            max_relative = 1e-9,
            epsilon = 1e-9
        );
    }
}

/// A spread of a temperature is a difference: no 273.15 in it (SP 811 B.8, degree Fahrenheit to
/// kelvin as an interval, 1/1.8).
#[test]
fn temperature_spread_has_no_offset() {
    let amount = parse("68 ± 9 °F", &entry(Dimension::Temperature)).expect("a temperature");
    assert_relative_eq!(amount.spread.expect("a spread"), 5.0, max_relative = 1e-12);
}

#[test]
fn every_dimension_has_its_si_unit_and_both_sets() {
    for dimension in DIMENSIONS {
        let unit = si_unit(*dimension);
        assert_eq!(unit.dimension, *dimension);
        if *dimension != Dimension::Angle {
            assert_eq!((unit.factor, unit.offset), (1.0, 0.0), "{dimension:?}");
        }
        let automatic = |holds: fn(&Unit) -> bool| {
            of_dimension(*dimension).any(|unit| unit.automatic && holds(unit))
        };
        assert!(automatic(|unit| unit.metric), "{dimension:?}");
        assert!(automatic(|unit| unit.imperial), "{dimension:?}");
    }
}

#[test]
fn automatic_units_go_from_small_to_large() {
    for dimension in DIMENSIONS {
        for holds in [|unit: &Unit| unit.metric, |unit: &Unit| unit.imperial] {
            let factors: Vec<f64> = of_dimension(*dimension)
                .filter(|unit| unit.automatic && holds(unit))
                .map(|unit| unit.factor)
                .collect();
            assert!(factors.is_sorted_by(|a, b| a < b), "{dimension:?}: {factors:?}");
        }
    }
}

/// No spelling belongs to two units of one dimension, so the table's order never decides.
#[test]
fn spellings_are_found_and_mean_one_unit() {
    for dimension in DIMENSIONS {
        let mut entry = entry(*dimension);
        entry.metric = &["g", "J/m", "W·h/km", "W·h/mi"];
        for unit in of_dimension(*dimension) {
            for spelling in std::iter::once(&unit.symbol).chain(unit.aliases) {
                assert_eq!(find(&entry, spelling), Ok(unit), "{dimension:?} “{spelling}”");
            }
        }
    }
}

#[test]
fn spellings_of_products_and_powers() {
    let torque = entry(Dimension::Torque);
    for text in ["N·m", "N*m", "N m", "Nm", "N-m", "N⋅m", "n·m"] {
        assert_eq!(find(&torque, text).map(|unit| unit.symbol), Ok("N·m"), "{text}");
    }
    let area = entry(Dimension::Area);
    for text in ["m²", "m2", "m^2", "sq m", "M2"] {
        assert_eq!(find(&area, text).map(|unit| unit.symbol), Ok("m²"), "{text}");
    }
    let length = entry(Dimension::Length);
    assert!(matches!(find(&length, "m*m"), Err(Missed::Unknown(_))), "a product is no length");
    for text in ["µm", "μm", "um"] {
        assert_eq!(find(&length, text).map(|unit| unit.symbol), Ok("µm"), "{text}");
    }
}

/// Milli and mega differ by a factor of a thousand million: never guess between them.
#[test]
fn capitals_that_decide_are_asked_for() {
    let power = entry(Dimension::Power);
    assert_eq!(find(&power, "mW").map(|unit| unit.factor), Ok(1e-3));
    assert_eq!(find(&power, "MW").map(|unit| unit.factor), Ok(1e6));
    assert_eq!(find(&power, "mw"), Err(Missed::Case(vec!["mW", "MW"])));
    assert_eq!(find(&entry(Dimension::Mass), "KG").map(|unit| unit.symbol), Ok("kg"));
}

#[test]
fn multiples_of_gravity_only_where_listed() {
    let listed = catalogue::find("deceleration-g").expect("deceleration-g");
    assert_eq!(parse("12 g", listed).expect("12 g").si, 12.0);
    let count = catalogue::find("track-count").expect("track-count");
    assert!(parse("2 g", count).is_err());
}

#[test]
fn a_unit_may_begin_with_a_digit() {
    let coefficient = entry(Dimension::TemperatureCoefficient);
    for text in ["0.4 %/K", "0.004 1/K", "0.004 1/°C", "0.004 ± 0.001 1/K"] {
        let amount = parse(text, &coefficient).unwrap_or_else(|error| panic!("{text}: {error}"));
        assert_relative_eq!(amount.si, 0.004, max_relative = 1e-12);
    }
}

#[test]
fn units_listed_in_the_catalogue_exist() {
    for entry in catalogue::all() {
        for symbol in entry.metric.iter().chain(entry.imperial) {
            let symbols = find(entry, symbol).map(|unit| unit.symbol);
            assert_eq!(symbols, Ok(*symbol), "{}", entry.id);
        }
    }
}

#[test]
fn units_as_tex() {
    let tex = |dimension, symbol: &str| find(&entry(dimension), symbol).expect("a unit").tex();
    assert_eq!(tex(Dimension::Acceleration, "m/s²"), r"\mathrm{m/s^{2}}");
    assert_eq!(tex(Dimension::Torque, "N·m"), r"\mathrm{N{\cdot}m}");
    assert_eq!(tex(Dimension::Angle, "°"), r"{}^\circ");
    assert_eq!(tex(Dimension::Temperature, "°C"), r"{}^\circ\mathrm{C}");
    assert_eq!(tex(Dimension::Ratio, "%"), r"\mathrm{\%}");
    assert_eq!(tex(Dimension::Ratio, ""), "");
}
