//! Will it sink, how much may it carry, and what does that cost.

use super::Story;

const HERON: Story = Story("heron");
const MULE: Story = Story("sphagnum-mule");

/// Tracks of 90 mm for 0.6 kg more, or the pack moved 35 mm forward for nothing.
#[test]
fn moving_the_pack_beats_wider_tracks() {
    const WIDE: &[&str] = &["mass=8.0 kg", "track-width=90 mm"];
    const MOVED: &[&str] = &["balance-offset=-10 mm"];
    const BOTH: &[&str] = &["mass=8.0 kg", "track-width=90 mm", "balance-offset=-10 mm"];
    HERON.tells("weight", &[], "72.6 N");
    HERON.tells("holding-pressure", &[], "2.9 kPa");
    for (changes, mean, tail, margin) in [
        (&[][..], "1.78 kPa", "3.2 kPa", "0.92"),
        (WIDE, "1.28 kPa", "2.3 kPa", "1.3"),
        (MOVED, "1.78 kPa", "2.1 kPa", "1.4"),
        (BOTH, "1.28 kPa", "1.5 kPa", "1.95"),
    ] {
        HERON.tells("ground-pressure", changes, mean);
        HERON.tells("low-end-pressure", changes, tail);
        HERON.tells("low-end-margin", changes, margin);
    }
    // Mean alone would have passed what the tail fails.
    assert!(HERON.si("pressure-margin", &[]) > 1.0 && HERON.si("low-end-margin", &[]) < 1.0);
    // Mud that holds less than the tail presses undoes the free way out.
    assert!(
        HERON.si("low-end-margin", &["balance-offset=-10 mm", "holding-pressure=2.0 kPa"]) < 1.0
    );
}

/// 24 W and 18 W at 0.8 m/s; the story's 33 W·h are what the pack holds, 80 % of it used.
#[test]
fn less_drag_is_a_longer_survey() {
    let watts = |changes: &[&str]| 0.8 * HERON.si("energy-per-distance", changes);
    let easier = ["driving-resistance=11 N"];
    assert!((watts(&[]) - 24.0).abs() < 0.5 && (watts(&easier) - 18.0).abs() < 0.5);
    HERON.tells("range-time", &[], "66 min");
    HERON.tells("range-time", &easier, "90 min");
}

/// The site's 8 kPa counts at the worst end: the stone allowed halves.
#[test]
fn a_load_behind_the_middle_halves_the_stone() {
    let stone = |quantity| MULE.si(quantity, &[]) - 135.0;
    assert!((stone("largest-mass-mean") - 334.0).abs() < 0.5);
    MULE.tells("largest-mass", &[], "288 kg");
    assert!((stone("largest-mass") - 153.0).abs() < 0.5);
    MULE.tells("end-pressure-ratio", &[], "1.63");
    MULE.tells("low-end-pressure", &["mass=285 kg"], "7.9 kPa");
    // The hopper moved to the middle, the ends press alike and the ground allows both sums.
    let moved = ["balance-offset=0 mm"];
    assert_eq!(MULE.si("largest-mass", &moved), MULE.si("largest-mass-mean", &moved));
}

/// Up 400 m of 12° with 285 kg: the two motors of 750 W decide the speed, the pack the trips.
#[test]
fn power_sets_the_speed_and_the_pack_the_trips() {
    const UP: &[&str] = &["mass=285 kg", "slope=12°"];
    MULE.tells("driving-resistance", UP, "1128 N");
    let per_metre = MULE.si("energy-per-distance", UP);
    assert!((0.9 * per_metre - 1560.0).abs() < 5.0, "{per_metre}");
    // 1500 W electric are 975 W at the ground.
    let driven = [UP, &["drive-power=975 W"]].concat();
    MULE.tells("power-top-speed", &driven, "0.86 m/s");
    let climb = per_metre * 400.0 / 3600.0;
    assert!((climb - 193.0).abs() < 0.5, "{climb} W·h");
    MULE.tells("usable-energy", &[], "1152 W·h");
    // About 18 W·h to come back, as the story has it: coasting home has no rule.
    let trips = MULE.si("usable-energy", &[]) / 3600.0 / (climb + 18.0);
    assert_eq!(trips.floor(), 5.0);
}
