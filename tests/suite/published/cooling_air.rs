//! Dry air at one atmosphere, against tables.

use heftwise::physics::heat::air;
use heftwise::quantity::catalogue::heat::{
    AIR_CONDUCTIVITY, AIR_VISCOSITY, FILM_TEMPERATURE, PRANDTL_NUMBER,
};
use heftwise::quantity::{AnyId, Measure, Temperature};

use super::unit::CELSIUS;
use super::{by_rules, of};

/// Temperature in °C, density, conductivity, kinematic viscosity, specific heat, Prandtl number, at
/// 101 325 Pa, by CoolProp 8.0.0.
const COOLPROP: &[(f64, [f64; 5])] = &[
    (0.0, [1.2931, 0.02436, 1.3316e-5, 1005.7, 0.7108]),
    (20.0, [1.2046, 0.02587, 1.5114e-5, 1006.1, 0.7080]),
    (40.0, [1.1274, 0.02735, 1.6999e-5, 1006.9, 0.7055]),
    (60.0, [1.0596, 0.02880, 1.8968e-5, 1008.0, 0.7034]),
    (80.0, [0.9995, 0.03023, 2.1019e-5, 1009.5, 0.7017]),
    (100.0, [0.9459, 0.03162, 2.3150e-5, 1011.2, 0.7003]),
    (150.0, [0.8340, 0.03500, 2.8809e-5, 1017.1, 0.6982]),
];

/// The same of conductivity, viscosity and Prandtl number alone, by S. P. Sukhatme, A Textbook on
/// Heat Transfer, Table A.2, as his Examples 6.1 and 6.2 use it. His own rounding, and older data:
/// within 2.5 %.
const SUKHATME: &[(f64, [f64; 3])] =
    &[(70.0, [0.0297, 20.02e-6, 0.694]), (150.0, [0.0357, 28.95e-6, 0.683])];

fn near(what: &str, celsius: f64, got: f64, wanted: f64, tolerance: f64) {
    let off = (got - wanted).abs() / wanted;
    assert!(off <= tolerance, "{what} of air at {celsius} °C: {got}, table {wanted}");
}

/// What the rules find of air at a film temperature in °C.
fn found(id: AnyId, celsius: f64) -> f64 {
    by_rules(&[(FILM_TEMPERATURE.any(), CELSIUS + celsius)], id).unwrap()
}

#[test]
fn air_is_as_the_tables_have_it() {
    for (celsius, [density, conductivity, viscosity, specific_heat, prandtl]) in COOLPROP {
        let of_air = |id| found(id, *celsius);
        near("conductivity", *celsius, of_air(AIR_CONDUCTIVITY.any()), *conductivity, 0.01);
        near("viscosity", *celsius, of_air(AIR_VISCOSITY.any()), *viscosity, 0.01);
        near("Prandtl number", *celsius, of_air(PRANDTL_NUMBER.any()), *prandtl, 0.01);
        // Steps on the way to those three, and no quantities of their own.
        let film: Temperature = of(CELSIUS + celsius);
        near("density", *celsius, air::density(film).si(), *density, 0.01);
        near("specific heat", *celsius, air::specific_heat(film).si(), *specific_heat, 0.01);
    }
    for (celsius, [conductivity, viscosity, prandtl]) in SUKHATME {
        let of_air = |id| found(id, *celsius);
        near("conductivity", *celsius, of_air(AIR_CONDUCTIVITY.any()), *conductivity, 0.025);
        near("viscosity", *celsius, of_air(AIR_VISCOSITY.any()), *viscosity, 0.025);
        near("Prandtl number", *celsius, of_air(PRANDTL_NUMBER.any()), *prandtl, 0.025);
    }
}
