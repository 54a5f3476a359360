//! One line from which all places along a machine are counted: the middle of its ground contact.

use approx::assert_relative_eq;
use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{balance::*, machine::*, pressure::*, running_gear::*};
use heftwise::rules::Values;

use super::{cautions, values};

/// Tracks of 0.8 m under axles 1.2 m apart, the balance point 50 mm behind the contact's middle.
fn tracked(more: &[(AnyId, f64)]) -> Values {
    let said = [
        (MASS.any(), 100.0),
        (TRACK_COUNT.any(), 2.0),
        (TRACK_WIDTH.any(), 0.2),
        (CONTACT_LENGTH.any(), 0.8),
        (WHEELBASE.any(), 1.2),
        (BALANCE_OFFSET.any(), -0.05),
    ];
    values(&[&said, more].concat())
}

#[test]
fn the_wheelbase_may_sit_off_the_contact() {
    let shifted = tracked(&[(WHEELBASE_MIDDLE.any(), 0.10)]);
    // The rear axle is 0.5 m behind the contact's middle, the balance point 0.05 m.
    assert_relative_eq!(shifted.si(REAR_ARM).unwrap(), 0.45, max_relative = 1e-12);
    assert_relative_eq!(shifted.si(FRONT_ARM).unwrap(), 0.75, max_relative = 1e-12);
    assert_relative_eq!(shifted.si(FRONT_SHARE).unwrap(), 0.45 / 1.2, max_relative = 1e-12);
    // The pressure under the tracks does not know of axles.
    assert_eq!(shifted.si(PRESSURE_OFFSET), Some(-0.05));
    assert_eq!(shifted.si(PRESSURE_OFFSET), tracked(&[]).si(PRESSURE_OFFSET));
    assert_eq!(cautions(&shifted, SUPPORT_MIDDLE), "");
}

#[test]
fn unsaid_the_middles_are_one_and_that_is_said() {
    let unsaid = tracked(&[]);
    assert_eq!(unsaid.si(SUPPORT_MIDDLE), Some(0.0));
    assert_relative_eq!(unsaid.si(REAR_ARM).unwrap(), 0.55, max_relative = 1e-12);
    assert!(cautions(&unsaid, SUPPORT_MIDDLE).contains("taken to be over the middle"));
    // Without a wheelbase the tracks' flat is the support, wherever a wheelbase would be.
    let flat = values(&[(CONTACT_LENGTH.any(), 0.8), (WHEELBASE_MIDDLE.any(), 0.3)]);
    assert_eq!(flat.si(SUPPORT_MIDDLE), Some(0.0));
}

/// The wheelbase runs from the track's middle to the skis.
#[test]
fn skis_stand_a_wheelbase_ahead_of_the_track() {
    let sled = [
        (MASS.any(), 100.0),
        (TRACK_COUNT.any(), 1.0),
        (SKI_COUNT.any(), 2.0),
        (WHEELBASE.any(), 1.2),
    ];
    let said = values(&[&sled[..], &[(BALANCE_OFFSET.any(), 0.3)]].concat());
    assert_relative_eq!(said.si(FRONT_SHARE).unwrap(), 0.25, max_relative = 1e-12);
    assert_eq!(cautions(&said, REAR_ARM), "");
    let unsaid = values(&sled);
    assert_relative_eq!(unsaid.si(FRONT_LOAD).unwrap(), 0.0);
    assert!(cautions(&unsaid, REAR_ARM).contains("the skis carry nothing"));
}

/// What the scales say can be entered as the balance point, wherever the axles are.
#[test]
fn scales_count_from_the_same_line() {
    let scales = [(FRONT_SCALE.any(), 40.0), (REAR_SCALE.any(), 60.0)];
    let middle = [(WHEELBASE_MIDDLE.any(), 0.10)];
    let read = tracked(&[&scales[..], &middle[..]].concat());
    let offset = read.si(SCALE_OFFSET).unwrap();
    assert_relative_eq!(offset, 0.10 - 0.12, max_relative = 1e-9);
    let entered = values(&[
        (WHEELBASE.any(), 1.2),
        (WHEELBASE_MIDDLE.any(), 0.10),
        (MASS.any(), 100.0),
        (BALANCE_OFFSET.any(), offset),
    ]);
    assert_relative_eq!(entered.si(FRONT_SHARE).unwrap(), 0.4, max_relative = 1e-9);
}
