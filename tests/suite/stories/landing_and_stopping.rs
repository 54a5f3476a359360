//! What breaks when it lands, and what one more gear costs when it has to stop.

use super::Story;

const WREN: Story = Story("sandwren");
const TORTOISE: Story = Story("turf-tortoise");

/// Two arms share the peak, twice the mean, so each arm carries the mean.
fn arm(changes: &[&str], more: &[&str]) -> Vec<String> {
    let each = format!("beam-load={} N", WREN.si("mean-impact-force", changes));
    changes.iter().chain(more).map(|change| (*change).to_owned()).chain([each]).collect()
}

fn tells_of_arm(quantity: &str, changes: &[&str], more: &[&str], told: &str) {
    let arm = arm(changes, more);
    WREN.tells(quantity, &arm.iter().map(String::as_str).collect::<Vec<_>>(), told);
}

#[test]
fn travel_and_direction_beat_thickness() {
    WREN.tells("impact-speed", &[], "2.6 m/s");
    WREN.tells("kinetic-energy", &[], "21 J");
    WREN.tells("mean-impact-force", &[], "593 N");
    // The story doubles the weight with the rest, 1.19 kN; only the stopping force is doubled.
    WREN.tells("peak-impact-force", &[], "1.13 kN");
    assert!(WREN.si("peak-impact-force", &[]) < 2.0 * WREN.si("mean-impact-force", &[]));
    tells_of_arm("beam-stress", &[], &[], "97 MPa");
    let margins = |changes: &[&str], more: &[&str]| {
        let arm = arm(changes, more);
        let arm: Vec<&str> = arm.iter().map(String::as_str).collect();
        (WREN.si("beam-margin", &arm), WREN.si("across-margin", &arm))
    };
    let (lying, standing) = margins(&[], &[]);
    assert!(lying < 1.0 && standing < 1.0, "it fails either way");
    // The depths that would hold are the next whole millimetres but for rounding.
    assert!((margins(&[], &["bar-depth=22 mm"]).0 - 1.5).abs() < 0.07);
    assert!((margins(&[], &["bar-depth=32 mm"]).1 - 1.5).abs() < 0.07);
    // Along the strands 2.25 times what holds across them.
    assert!((lying / standing - 2.25).abs() < 1e-9);
}

#[test]
fn twice_the_travel_holds_with_five_millimetres_more() {
    const LONGER: &[&str] = &["stop-distance=70 mm"];
    const DEEPER: &[&str] = &["bar-depth=17 mm"];
    WREN.tells("mean-impact-force", LONGER, "365 N");
    let gain = WREN.si("mean-impact-force", &[]) / WREN.si("mean-impact-force", LONGER);
    assert!((gain - 1.6).abs() < 0.05, "{gain}");
    tells_of_arm("beam-stress", LONGER, DEEPER, "30 MPa");
    tells_of_arm("beam-margin", LONGER, DEEPER, "1.5");
    tells_of_arm("across-margin", LONGER, DEEPER, "0.67");
}

/// The speed of a chain on paper is what it hits with, stops from and climbs at.
fn chain(ratio: &'static str) -> [String; 3] {
    let speed = TORTOISE.si("paper-speed", &[ratio]);
    [ratio.to_owned(), format!("impact-speed={speed} m/s"), format!("driving-speed={speed} m/s")]
}

#[test]
fn the_faster_chain_fails_three_ways() {
    for (ratio, speed, energy, stop, force, ramp) in [
        ("first-stage-ratio=14", "7.0 km/h", "312 J", "2.0 m", "5.2 kN", "795 W"),
        ("first-stage-ratio=9", "10.9 km/h", "755 J", "3.7 m", "12.6 kN", "1240 W"),
    ] {
        let chain = chain(ratio);
        let mut changes: Vec<&str> = chain.iter().map(String::as_str).collect();
        TORTOISE.tells("paper-speed", &changes, speed);
        TORTOISE.tells("kinetic-energy", &changes, energy);
        TORTOISE.tells("stopping-distance", &changes, stop);
        TORTOISE.tells("mean-impact-force", &changes, force);
        let past_the_edge = TORTOISE.si("stopping-distance", &changes) > 3.0;
        let breaks_the_tabs = TORTOISE.si("mean-impact-force", &changes) > 8000.0;
        // Even the slower chain's peak, about 10 kN, is more than the tabs hold.
        assert!(TORTOISE.si("frame-margin", &changes) < 1.0);
        changes.push("slope=10°");
        TORTOISE.tells("driving-power", &changes, ramp);
        let stalls_the_motor = TORTOISE.si("driving-power", &changes) > 1000.0;
        let fast = ratio.ends_with("=9");
        assert_eq!([past_the_edge, breaks_the_tabs, stalls_the_motor], [fast; 3], "{ratio}");
    }
}

/// 1000 W at 2600 rpm are 3.7 N·m; the ramp asks 3.9 of the slower chain, three quarters of it
/// efficient: short bursts alone.
#[test]
fn the_ramp_asks_more_torque_than_the_motor_is_rated_for() {
    let rated = ["motor-torque=3.673 N·m", "motor-speed=2600 rpm"];
    TORTOISE.tells("motor-output-power", &rated, "1000 W");
    let chain = chain("first-stage-ratio=14");
    let changes: Vec<&str> = chain.iter().map(String::as_str).chain(["slope=10°"]).collect();
    TORTOISE.tells("motor-torque", &changes, "3.9 N·m");
    TORTOISE.tells("peak-impact-force", &changes[..3], "10.4 kN");
}
