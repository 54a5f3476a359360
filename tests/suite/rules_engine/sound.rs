//! What is said holds: names that tell apart, ranges that fit the builds that ship, cautions that
//! have read all they speak of.

use std::collections::HashMap;
use std::path::Path;

use heftwise::quantity::catalogue::{
    ground::*, machine::*, motion::*, structure::*, traction::*, turning::*,
};
use heftwise::quantity::{AnyId, Units, catalogue as quantities, parse, unusual};
use heftwise::rules::{Givens, Origin, Value, Values, catalogue, evaluate};
use heftwise::sheet::{demo, presets};

use super::{cautions, crawler_with, values};

/// Every build that ships, evaluated, and one with nothing said.
fn builds() -> Vec<(&'static str, Values)> {
    let read = |demo: &demo::Demo| {
        (demo.id, evaluate(&crate::sheet_edit::sheet(demo.text).tally().givens))
    };
    let mut builds: Vec<_> = demo::ALL.iter().map(read).collect();
    builds.push(("nothing", evaluate(&Givens::default())));
    builds
}

#[test]
fn no_two_quantities_share_a_label() {
    let mut labels = HashMap::new();
    for entry in quantities::all() {
        if let Some(other) = labels.insert(entry.label, entry.id) {
            panic!("{other} and {} are both called {:?}", entry.id, entry.label);
        }
    }
}

/// A slider that stops short of a build that ships, or a hint that doubts it, is set too narrow.
#[test]
fn nothing_that_ships_is_unusual() {
    let mut amiss = Vec::new();
    let mut look = |place: &str, id: AnyId, si: f64| {
        let entry = quantities::find(id.name()).unwrap();
        if let Some(hint) = unusual(entry, si, &Units::default()) {
            amiss.push(format!("{place}: {id}: {hint}"));
        }
    };
    for demo in demo::ALL {
        let tally = crate::sheet_edit::sheet(demo.text).tally();
        let values = evaluate(&tally.givens);
        for entry in quantities::all() {
            if let (Some(si), Some(_)) = (values.si(entry.id), tally.givens.get(entry.id)) {
                look(demo.id, entry.id, si);
            }
        }
        // What a reader may pin, as the builds have it by rule.
        for id in [DRIVE_POWER.any(), DRIVE_TORQUE.any(), YAW_INERTIA.any()] {
            values.si(id).into_iter().for_each(|si| look(demo.id, id, si));
        }
    }
    for table in presets::tables() {
        for row in &table.rows {
            for (id, text) in &row.values {
                let amount = parse(text, quantities::find(id.name()).unwrap()).unwrap();
                look(&format!("{} {}", table.id, row.id), *id, amount.si);
            }
        }
    }
    assert!(amiss.is_empty(), "{}", amiss.join("\n"));
}

/// A caution is asked once, when its rule has run. Asked again when all is known it must say the
/// same: else it looked at a number that was found later.
#[test]
fn cautions_look_at_nothing_found_later() {
    let mut amiss = Vec::new();
    for (name, values) in builds() {
        for rule in catalogue::all() {
            let Value::Known(known) = values.of(rule.finds) else { continue };
            if known.origin != Origin::Found {
                continue;
            }
            for caution in rule.cautions {
                let (said, says) = (
                    known.cautions.iter().any(|said| said == caution.says),
                    (caution.when)(&values),
                );
                if said != says {
                    amiss.push(format!(
                        "{name}: {} {said} then {says}: {}",
                        rule.finds, caution.says
                    ));
                }
            }
        }
    }
    assert!(amiss.is_empty(), "{}", amiss.join("\n"));
}

/// `None < Some(0.0)` holds, so a number that is not known would count as small.
#[test]
fn no_caution_takes_the_unknown_for_small() {
    fn sources(folder: &Path, found: &mut Vec<std::path::PathBuf>) {
        for path in std::fs::read_dir(folder).unwrap().map(|entry| entry.unwrap().path()) {
            if path.is_dir() { sources(&path, found) } else { found.push(path) }
        }
    }
    let mut files = Vec::new();
    sources(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src/rules"), &mut files);
    assert!(files.len() > 40, "{files:?}");
    for file in files {
        for (number, line) in std::fs::read_to_string(&file).unwrap().lines().enumerate() {
            let code = line.split("//").next().unwrap();
            let bare = code.contains("< Some(")
                || code.contains("<= Some(")
                || [") > values.", ") < values.", ") <= values.", ") >= values."]
                    .iter()
                    .any(|sign| code.contains(sign) && code.contains("values.si("));
            assert!(!bare, "{}:{}: {line}", file.display(), number + 1);
        }
    }
    // The rod is strong enough as far as anybody knows.
    let rod = [(ROD_FORCE.any(), 500.0), (ROD_AREA.any(), 25e-6)];
    assert!(!cautions(&values(&rod), ROD_STRESS.any()).contains("strength"));
}

/// Grip, balance and drive on the slope itself: whatever the power, it climbs no steeper than the
/// grip lets it.
#[test]
fn no_power_climbs_past_the_grip() {
    let ground = [
        (GRIP_COEFFICIENT.any(), 0.36),
        (ROLLING_COEFFICIENT.any(), 0.2),
        (DRIVING_SPEED.any(), 0.1),
        (SLOPE.any(), 0.05),
        (DRAG_COEFFICIENT.any(), 0.0),
    ];
    let with = |power: f64| {
        let given =
            [&ground[..], &[(DRIVE_POWER.any(), power), (DRIVE_TORQUE.any(), 100.0)]].concat();
        crawler_with(&given)
    };
    let strong = with(1e5);
    let (climb, grip) = (strong.si(CLIMB_AT_SPEED).unwrap(), strong.si(GRIP_CLIMB).unwrap());
    assert!((climb - grip).abs() < 1e-12, "{climb} {grip}");
    assert!(cautions(&strong, CLIMB_AT_SPEED.any()).contains("grip ends it"));
    let weak = with(1.5);
    let slope = weak.si(CLIMB_AT_SPEED).unwrap();
    assert!(slope < grip);
    assert!(cautions(&weak, CLIMB_AT_SPEED.any()).contains("Power or torque ends it"));
    // The balance of forces on that slope: 15 N of thrust, 6.4 kg, rolling 0.2.
    let weight = 6.4 * 9.80665;
    assert!((15.0 - weight * (slope.sin() + 0.2 * slope.cos())).abs() < 1e-9);
}

/// What grip allows is what is left of it by rolling and slope: the two ways to reckon a start that
/// grip limits agree.
#[test]
fn grip_acceleration_is_the_net_one() {
    let steep = [
        (GRIP_COEFFICIENT.any(), 0.356),
        (ROLLING_COEFFICIENT.any(), 0.219),
        (SLOPE.any(), 12.0_f64.to_radians()),
        (DRIVING_SPEED.any(), 0.0),
        (DRIVE_TORQUE.any(), 1e3),
    ];
    let values = crawler_with(&steep);
    let (by_grip, net) = (values.si(GRIP_ACCELERATION).unwrap(), values.si(ACCELERATION).unwrap());
    assert!(by_grip < 0.0 && (by_grip - net).abs() < 1e-9, "{by_grip} {net}");
    assert!(cautions(&values, GRIP_ACCELERATION.any()).contains("cannot start"));
    assert!(cautions(&values, ACCELERATION.any()).contains("grip limits"));
}

/// Tracks that can run only so fast end the speeding up of a swing.
#[test]
fn a_swing_is_no_faster_than_its_tracks() {
    let swing = |top_speed: f64| {
        values(&[
            (SWING_ANGLE.any(), 2.0),
            (YAW_ACCELERATION.any(), 4.0),
            (heftwise::quantity::catalogue::balance::GAUGE.any(), 0.5),
            (TOP_SPEED.any(), top_speed),
        ])
    };
    let free = swing(2.0);
    assert!((free.si(SWING_TIME).unwrap() - 1.0).abs() < 1e-12);
    assert!((free.si(SWING_STOP_TIME).unwrap() - 2.0_f64.sqrt()).abs() < 1e-12);
    // 0.5 m/s on half of 0.5 m is 2 rad/s: half a second and half a radian, then 1.5 rad at 2 rad/s.
    let held = swing(0.5);
    assert!((held.si(SWING_RATE).unwrap() - 2.0).abs() < 1e-12);
    assert!((held.si(SWING_TIME).unwrap() - 1.25).abs() < 1e-12);
    assert!((held.si(SWING_STOP_TIME).unwrap() - 1.5).abs() < 1e-12);
    assert!(cautions(&held, SWING_TIME.any()).contains("top speed"));
}
