//! Plots: axes, layout, labels, drawing, readings.

mod axis;
mod family;
mod labels;
mod picture;
mod saved;
mod seen;

use heftwise::plot::{Build, PlotSpec};
use heftwise::quantity::catalogue::{ground::*, machine::*, pressure::*, running_gear::*};
use heftwise::quantity::{UnitSet, Units};
use heftwise::rules::Givens;
use heftwise::sheet::Family;
use heftwise::study::Curve;
use heftwise::study::curve::{Ask, Numbers, Scale, together};

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

/// The reader's own line with a range, its family, one limit, and companions by their mass.
fn rich(family: Option<(&str, &[&str])>, sure: bool, companions: &[f64]) -> PlotSpec {
    let ask = Ask {
        family: family.map(|(name, values)| {
            Family::read(name, values, TRACK_WIDTH.any()).expect("it is a family")
        }),
        ..against_width(Scale::Linear)
    };
    let doubt = [(MASS.any(), 0.5), (CONTACT_LENGTH.any(), 0.02)];
    let spreads = doubt.into_iter().filter(|_| !sure).collect();
    let others: Vec<Givens> = companions
        .iter()
        .map(|mass| {
            let mut givens = sandpiper();
            givens.set(MASS, *mass);
            givens
        })
        .collect();
    let others: Vec<&Givens> = others.iter().collect();
    let givens = sandpiper();
    let numbers = Numbers { givens: &givens, spreads: &spreads };
    let (own, others) = together(&ask, numbers, &others).unwrap();
    let mut builds = vec![Build { name: "Sandpiper", curve: &own }];
    let named = others.iter().flatten().zip(["Bullock", "Peat barrow"]);
    builds.extend(named.map(|(curve, name)| Build { name, curve }));
    PlotSpec::of(&builds, &Units::default()).unwrap()
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
