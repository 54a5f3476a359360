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
    let easier = ["driving-resistance=11 N"];
    HERON.tells("power-at-speed", &[], "24 W");
    HERON.tells("power-at-speed", &easier, "18 W");
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
    MULE.tells("power-at-speed", UP, "1560 W");
    // Two motors of 750 W electric, of which 0.65 reaches the ground.
    let motors = ["motor-count=2", "supplied-motor-power=750 W", "gear-efficiency=0.65"];
    let driven = [UP, &motors].concat();
    MULE.tells("drive-power", &driven, "975 W");
    MULE.tells("power-top-speed", &driven, "0.86 m/s");
    MULE.tells("out-energy", UP, "193 W·h");
    MULE.tells("usable-energy", &[], "1152 W·h");
}

/// The stone stays at the top. By the sums the empty carrier of 135 kg is pushed home by the slope
/// with 15 N; the story allows 18 W·h for it. Five trips either way.
#[test]
fn the_way_home_is_reckoned_too() {
    const UP: &[&str] = &["mass=285 kg", "slope=12°"];
    let unloaded = [UP, &["load-left=150 kg"]].concat();
    // 0.20 cos 12° - sin 12° of 1324 N, by hand.
    let back = MULE.si("return-resistance", &unloaded);
    assert!((back + 16.3).abs() < 0.5, "{back}");
    assert!(MULE.cautions("return-resistance", &unloaded).contains("slope pushes"));
    assert_eq!(MULE.si("back-energy", &unloaded), 0.0);
    MULE.tells("trip-energy", &unloaded, "193 W·h");
    assert_eq!(MULE.si("trips-per-charge", &unloaded).floor(), 5.0);
    let as_told = [&unloaded[..], &["back-energy=18 W·h"]].concat();
    MULE.tells("trip-energy", &as_told, "211 W·h");
    assert_eq!(MULE.si("trips-per-charge", &as_told).floor(), 5.0);
    // On the level the load left behind is all the difference: 135 of 285 kg.
    let level = ["mass=285 kg", "load-left=150 kg"];
    let (out, home) = (MULE.si("out-energy", &level), MULE.si("back-energy", &level));
    assert!((home / out - 135.0 / 285.0).abs() < 1e-9, "{out} {home}");
    assert!(!MULE.cautions("return-resistance", &level).contains("slope pushes"));
}
