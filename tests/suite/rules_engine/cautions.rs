//! Each caution speaks when it applies, and is silent otherwise.

use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{
    drive::*, electrics::*, heat::*, impact::*, machine::*, motion::*, pressure::*,
    running_gear::*, whole::*,
};

use super::{cautions, crawler_with, values};

/// The caution of `id` holds `words` with one set of changes to the crawler and not with another.
fn speaks(id: AnyId, words: &str, when: &[(AnyId, f64)], not_when: &[(AnyId, f64)]) {
    let said = cautions(&crawler_with(when), id);
    assert!(said.contains(words), "{id} says {said:?}");
    let said = cautions(&crawler_with(not_when), id);
    assert!(!said.contains(words), "{id} says {said:?} for nothing");
}

/// The crawler on the level with its load a share of a sixth of its length off the middle.
fn off_middle(share: f64) -> [(AnyId, f64); 2] {
    [(BALANCE_OFFSET.any(), share * 0.42 / 6.0), (SLOPE.any(), 0.0)]
}

#[test]
fn the_end_that_lifts_is_named() {
    let rules = [
        END_PRESSURE_RATIO.any(),
        LOW_END_PRESSURE.any(),
        LIFTED_LENGTH.any(),
        BALANCE_MARGIN.any(),
        LARGEST_MASS.any(),
    ];
    for id in rules {
        speaks(id, "the tail lifts", &off_middle(1.001), &off_middle(0.999));
        speaks(id, "the nose lifts", &off_middle(-1.001), &off_middle(-0.999));
        speaks(id, "lifts", &off_middle(1.5), &off_middle(0.0001));
    }
}

#[test]
fn pressing_harder_than_the_ground_held() {
    let heavy = [(MASS.any(), 30.0)];
    speaks(PRESSURE_MARGIN.any(), "harder than the ground held", &heavy, &[]);
    speaks(LOW_END_MARGIN.any(), "harder than the ground held", &heavy, &[]);
}

#[test]
fn bounce_and_pulse() {
    let (bounce, dead) = ([(RESTITUTION.any(), 0.3)], [(RESTITUTION.any(), 0.0)]);
    for id in [IMPULSE.any(), STOPPING_FORCE.any(), MEAN_IMPACT_FORCE.any()] {
        speaks(id, "bounce", &bounce, &dead);
    }
    for id in [PEAK_IMPACT_FORCE.any(), PEAK_DECELERATION_G.any()] {
        speaks(id, "pulse shape is assumed", &[], &[(PULSE_FACTOR.any(), 2.0)]);
    }
}

#[test]
fn what_breaks_first() {
    speaks(FRAME_MARGIN.any(), "weakest mount", &[(FRAME_STRENGTH.any(), 100.0)], &[]);
    speaks(SHOCK_MARGIN.any(), "delicate part", &[(SHOCK_LIMIT.any(), 1.0)], &[]);
}

#[test]
fn a_drop_without_an_angle() {
    let drop = [(MASS.any(), 5.0), (DROP_HEIGHT.any(), 1.0)];
    assert!(cautions(&values(&drop), WEIGHT_SHARE).contains("90°"));
    let down = [&drop[..], &[(APPROACH_ANGLE.any(), std::f64::consts::FRAC_PI_2)]].concat();
    assert_eq!(cautions(&values(&down), WEIGHT_SHARE), "");
    assert_eq!(cautions(&crawler_with(&[]), WEIGHT_SHARE), "");
}

/// A cart whose squash gives 12 000 mm² and whose air carries it on `by_air` of that.
fn cart(by_air: f64) -> Vec<(AnyId, f64)> {
    let weight = 80.0 * 9.80665;
    vec![
        (MASS.any(), 80.0),
        (WHEEL_COUNT.any(), 4.0),
        (WHEEL_DIAMETER.any(), 0.100),
        (WHEEL_SQUASH.any(), 0.010),
        (WHEEL_WIDTH.any(), 0.050),
        (INFLATION_PRESSURE.any(), weight / (0.012 * by_air)),
    ]
}

#[test]
fn squash_and_inflation_that_disagree() {
    for (by_air, speaks) in [(0.69, true), (0.71, false), (1.29, false), (1.31, true)] {
        let said = cautions(&values(&cart(by_air)), WHEEL_CONTACT_AREA);
        assert_eq!(said.contains("30 % apart"), speaks, "{by_air}");
    }
}

#[test]
fn wheels_that_share_the_load() {
    let skis = [(SKI_COUNT.any(), 1.0), (SKI_WIDTH.any(), 0.1), (SKI_LENGTH.any(), 0.5)];
    let said = |more: &[(AnyId, f64)]| {
        cautions(&values(&[&cart(1.0), more].concat()), WHEEL_AREA_BY_INFLATION)
    };
    assert!(said(&skis).contains("share"));
    assert_eq!(said(&[]), "");
    assert_eq!(said(&[&skis[..], &[(WHEEL_LOAD_SHARE.any(), 0.7)]].concat()), "");
}

#[test]
fn largest_mass_on_tyres_is_a_guess() {
    let block = [(heftwise::quantity::catalogue::ground::BLOCK_MASS.any(), 3.0)];
    let on_tyres = values(&[&cart(1.0), &block[..]].concat());
    assert!(cautions(&on_tyres, LARGEST_MASS_MEAN).contains("first guess"));
    assert_eq!(cautions(&crawler_with(&[]), LARGEST_MASS_MEAN), "");
}

#[test]
fn what_else_hangs_on_the_battery_counts_once() {
    let both = [
        (DRIVING_SPEED.any(), 1.0),
        (DRIVING_RESISTANCE.any(), 18.0),
        (AUXILIARY_CURRENT.any(), 0.5),
        (IDLE_POWER.any(), 6.0),
    ];
    let said = "counts it again";
    speaks(
        ENERGY_PER_DISTANCE.any(),
        said,
        &both,
        &[&both[..], &[(IDLE_POWER.any(), 0.0)]].concat(),
    );
    let once = [&both[..], &[(AUXILIARY_CURRENT.any(), 0.0)]].concat();
    speaks(ENERGY_PER_DISTANCE.any(), said, &both, &once);
    let told = [&both[..], &[(DRIVE_EFFICIENCY.any(), 0.5)]].concat();
    speaks(ENERGY_PER_DISTANCE.any(), said, &both, &told);
}

/// By hand: nothing is gained back downhill, so 5 W at 1 m/s is 5 J for each metre.
#[test]
fn a_slope_that_pushes_charges_no_battery() {
    let downhill = crawler_with(&[
        (DRIVING_RESISTANCE.any(), -20.0),
        (DRIVE_EFFICIENCY.any(), 0.5),
        (IDLE_POWER.any(), 5.0),
        (DRIVING_SPEED.any(), 1.0),
    ]);
    assert_eq!(downhill.si(ENERGY_PER_DISTANCE), Some(5.0));
}

#[test]
fn what_may_be_touched() {
    let surfaces = |housing: f64| {
        [
            (HOUSING_TEMPERATURE.any(), housing),
            (BOX_TEMPERATURE.any(), 300.0),
            (SINK_TEMPERATURE.any(), 300.0),
            (TOUCH_LIMIT.any(), 330.0),
        ]
    };
    let (hot, cool) = (surfaces(370.0), surfaces(300.0));
    speaks(TOUCH_MARGIN.any(), "in reach burns", &hot, &cool);
    for id in [TOUCH_MARGIN.any(), TOUCH_RISE.any(), COOL_DOWN_TIME.any()] {
        let said = cautions(&crawler_with(&cool), id);
        assert!(said.contains("not permissions"), "{id} says {said:?}");
    }
    speaks(
        SINK_TEMPERATURE.any(),
        "Hot enough to burn",
        &[(SINK_TO_AIR.any(), 100.0), (CONTROLLER_LOSS.any(), 2.0)],
        &[(SINK_TO_AIR.any(), 0.1), (CONTROLLER_LOSS.any(), 2.0), (BOX_TEMPERATURE.any(), 300.0)],
    );
    let thick = [(WARM_CONDUCTIVITY.any(), 0.02)];
    for id in [COOLING_TIME_CONSTANT.any(), COOL_DOWN_TIME.any()] {
        speaks(id, "Biot number is over 0.1", &thick, &[]);
    }
    assert!(cautions(&crawler_with(&[]), COOL_DOWN_TIME).contains("measure before you touch"));
}

#[test]
fn sun_rest_and_rotors_left_out_are_named() {
    let sun = |power: f64| [(SUN_IRRADIANCE.any(), power), (CONTROLLER_LOSS.any(), 2.0)];
    for id in [BOX_HEAT.any(), BOX_DUTY_HEAT.any(), BOX_DUTY_PEAK.any()] {
        speaks(id, "No sun is counted", &sun(0.0), &sun(800.0));
    }
    assert!(
        cautions(&crawler_with(&[(WINDING_RISE.any(), 40.0)]), MOTOR_RISE_AFTER)
            .contains("One body")
    );
    let braked = [(MASS.any(), 6.4), (BRAKING_SPEED.any(), 2.0)];
    assert!(cautions(&values(&braked), BRAKE_ENERGY).contains("Rotating parts are left out"));
    assert!(!cautions(&crawler_with(&[]), BRAKE_ENERGY).contains("Rotating parts"));
}
