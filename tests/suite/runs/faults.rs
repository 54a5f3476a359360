//! Why there is no run is said in words.

use heftwise::quantity::catalogue::{electrics::*, impact::*, machine::*, motion::*};
use heftwise::quantity::channel::RunKind;
use heftwise::study::Run;
use heftwise::study::run::Ask;

use super::{run, sandpiper};

#[test]
fn what_is_lacking_is_named() {
    let why = run(RunKind::Impact, &[(MASS.any(), 3.0)]).unwrap_err().to_string();
    assert_eq!(
        why,
        "Say the speed at touch or the drop height, and the stop time or the stop distance."
    );
    let why = run(RunKind::Launch, &[(MASS.any(), 3.0)]).unwrap_err().to_string();
    assert!(why.starts_with("Say ") && why.contains("the speed to reach"), "{why}");
    for (word, kind) in RunKind::WORDS {
        let why = run(kind, &[]).unwrap_err().to_string();
        assert!(why.starts_with("Say the "), "{word}: {why}");
    }
}

#[test]
fn what_cannot_be_is_explained() {
    let downhill = [(MASS.any(), 3.0), (STEADY_RESISTANCE.any(), -1.0), (DRIVING_SPEED.any(), 1.0)];
    let why = run(RunKind::Coast, &downhill).unwrap_err().to_string();
    assert!(why.contains("never comes to rest"), "{why}");
    let stuck = [
        (MASS.any(), 3.0),
        (TORQUE_FORCE.any(), 5.0),
        (STEADY_RESISTANCE.any(), 9.0),
        (TARGET_SPEED.any(), 1.0),
    ];
    let why = run(RunKind::Launch, &stuck).unwrap_err().to_string();
    assert!(why.contains("does not get going"), "{why}");
    let mut sags = sandpiper();
    sags.set(CELL_RESISTANCE, 0.9);
    let why = Run::of(&Ask::new(RunKind::UntilEmpty), &sags).unwrap_err().to_string();
    assert!(why.contains("under its cut-off") || why.contains("resistance"), "{why}");
    let ask = Ask { from: Some(5.0), ..Ask::new(RunKind::Impact) };
    let why = Run::of(&ask, &sandpiper()).unwrap_err().to_string();
    assert!(why.contains("over after 19.1 ms"), "{why}");
    let standing = [(MASS.any(), 3.0), (IMPACT_SPEED.any(), 0.0), (STOP_DISTANCE.any(), 0.1)];
    assert!(run(RunKind::Impact, &standing).is_err());
}

#[test]
fn a_launch_that_never_gets_there_says_how_far_it_gets() {
    let run = run(
        RunKind::Launch,
        &[
            (MASS.any(), 50.0),
            (DRIVE_POWER.any(), 100.0),
            (STEADY_RESISTANCE.any(), 50.0),
            (TARGET_SPEED.any(), 9.0),
        ],
    )
    .unwrap();
    let said = run.sentence(&Default::default());
    assert!(said.starts_with("It never reaches 9.00 m/s: it tops out at 2.00 m/s"), "{said}");
}
