//! Plots: axes, layout, labels, drawing, readings.

mod axis;
mod labels;
mod picture;

use heftwise::plot::{Build, PlotSpec};
use heftwise::quantity::catalogue::{ground::*, machine::*, pressure::*, running_gear::*};
use heftwise::quantity::{UnitSet, Units};
use heftwise::rules::Givens;
use heftwise::study::Curve;
use heftwise::study::curve::{Ask, Scale};

/// Our own Sandpiper on soft mud.
fn sandpiper() -> Givens {
    let mut givens = Givens::default();
    for (id, si) in [
        (MASS.any(), 6.4),
        (TRACK_COUNT.any(), 2.0),
        (TRACK_WIDTH.any(), 0.09),
        (CONTACT_LENGTH.any(), 0.42),
        (BLOCK_MASS.any(), 1.2),
    ] {
        givens.set(id, si);
    }
    givens
}

fn against_width(scale: Scale) -> Ask {
    Ask {
        from: Some(0.04),
        to: Some(0.16),
        scale,
        limits: vec![HOLDING_PRESSURE.any()],
        ..Ask::new(GROUND_PRESSURE, TRACK_WIDTH)
    }
}

/// Two builds, one limit.
fn spec(scale: Scale, set: UnitSet) -> PlotSpec {
    let ask = against_width(scale);
    let own = Curve::of(&ask, &sandpiper()).unwrap();
    let mut heavy = sandpiper();
    heavy.set(MASS, 14.9);
    let other = Curve::of(&ask, &heavy).unwrap();
    let builds =
        [Build { name: "Sandpiper", curve: &own }, Build { name: "Bullock", curve: &other }];
    PlotSpec::of(&builds, &Units::of(set)).unwrap()
}
