//! Cooling and warming against general-purpose libraries: `tests/golden/cooling.py` wrote the table.

use heftwise::physics::heat::{convection, winding};
use heftwise::quantity::Measure;

use super::of;

const TABLE: &str = include_str!("../../golden/cooling.csv");

/// The value our functions give for a row of the table.
fn ours(name: &str, inputs: &[f64]) -> f64 {
    match (name, inputs) {
        ("plate-any", [ra, pr]) => convection::plate_any(of(*ra), of(*pr)).si(),
        ("level-cylinder", [ra, pr]) => convection::level_cylinder(of(*ra), of(*pr)).si(),
        ("across-cylinder", [re, pr]) => convection::across_cylinder(of(*re), of(*pr)).si(),
        ("winding" | "housing", [loss, copper, inner, outer, cw, ch, time]) => {
            let path = winding::Path {
                to_housing: of(*inner),
                to_air: of(*outer),
                winding: of(*cw),
                housing: of(*ch),
            };
            let heating =
                winding::Heating { loss: of(*loss), copper: of(*copper), coefficient: of(0.00393) };
            let rises = winding::rises_after(&path, &heating, winding::cold(), of(*time));
            if name == "winding" { rises.winding.si() } else { rises.housing.si() }
        }
        other => panic!("a row of another kind: {other:?}"),
    }
}

#[test]
fn cooling_and_warming_as_the_libraries_have_it() {
    let rows = TABLE.lines().skip(1);
    assert!(rows.clone().count() > 70);
    for row in rows {
        let cells: Vec<&str> = row.split(',').collect();
        let [name, inputs @ .., wanted] = cells.as_slice() else { panic!("{row}") };
        let inputs: Vec<f64> = inputs
            .iter()
            .filter(|cell| !cell.is_empty())
            .map(|cell| cell.parse().unwrap())
            .collect();
        let (got, wanted) = (ours(name, &inputs), wanted.parse::<f64>().unwrap());
        let off = (got - wanted).abs() / wanted;
        assert!(off < 2e-7, "{row}: ours {got}; ht 1.2.0, scipy 1.17.1");
    }
}
