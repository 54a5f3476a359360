//! A class learns the efficiency of its own cart.

use super::Story;

const CART: Story = Story("sand-carts");

#[test]
fn a_guessed_efficiency_is_learnt_from_a_meter() {
    CART.tells("weight", &[], "40.2 N");
    CART.tells("rolling-coefficient", &[], "0.23");
    let answer = CART.answer("rolling-coefficient", &[]);
    let end = |name: &str| answer[name].as_f64().unwrap();
    assert!((end("low") - 0.22).abs() < 0.005 && (end("high") - 0.24).abs() < 0.005, "{answer}");
    CART.tells("driving-power", &[], "8.5 W");
    // Guessed: half of what the pack gives reaches the sand.
    let half = ["drive-efficiency=0.5"];
    CART.tells("power-at-speed", &half, "17 W");
    CART.tells("current-at-speed", &half, "2.2 A");
    let guessed = CART.si("current-at-speed", &half);
    CART.tells("range-time", &half, "47 min");
    // Measured: 2.7 A at 7.6 V.
    let push = format!("push-power={} W", CART.si("driving-power", &[]));
    let measured = [push.as_str(), "battery-power=20.52 W"];
    CART.tells("drive-efficiency", &measured, "0.41");
    CART.tells("run-time", &measured, "39 min");
    assert!((2.7 / guessed - 1.2).abs() < 0.05);
    // 0.23 A·h in five minutes is 2.8 A.
    CART.tells("time-to-empty", &["battery-charge=0.23 A·h", "battery-current=2.76 A"], "5.0 min");
}

#[test]
fn ten_minutes_of_sand_are_most_of_the_heat() {
    const METER: &[&str] = &["motor-current=2.7 A"];
    CART.tells("winding-loss", METER, "3.6 W");
    let heat = format!("motor-loss={} W", CART.si("winding-loss", METER));
    let changes = [METER, &[heat.as_str()]].concat();
    CART.tells("winding-rise", &changes, "44 K");
    let ten = [&changes[..], &["work-time=10 min"]].concat();
    CART.tells("motor-rise-after", &ten, "31 K");
}
