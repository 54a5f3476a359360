//! Out and back: what a trip takes, and how many a charge is good for.

use super::{COUNTED_TWICE, SHARE_ASSUMED};
use crate::physics::{Impossible, whole};
use crate::quantity::catalogue::drive::DRIVE_EFFICIENCY;
use crate::quantity::catalogue::electrics::USABLE_ENERGY;
use crate::quantity::catalogue::machine::{MASS, SLOPE_FORCE};
use crate::quantity::catalogue::motion::{AIR_DRAG, DRIVING_SPEED};
use crate::quantity::catalogue::traction::ROLLING_RESISTANCE;
use crate::quantity::catalogue::whole::*;
use crate::quantity::{Energy, Force, Length, Mass, Power, Ratio, Speed};
use crate::rules::{Caution, Maybe, Rule, Values};

const WORK: &str = "Work, OpenStax, University Physics Volume 1, section 7.1";
const BOTH_WAYS: &[&str] = &[
    "The same ground and speed both ways; the slope turns round with the machine.",
    "Nothing is gained back where the slope pushes.",
];
const HELD_BACK: &[Caution] = &[Caution {
    when: slope_pushes,
    says: "On the way back the slope pushes: motors or brakes must hold the machine, and a loaded one can run away. Walk beside or above it, never below.",
}];

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            RETURN_RESISTANCE,
            (ROLLING_RESISTANCE, SLOPE_FORCE, Maybe(AIR_DRAG), MASS, LOAD_LEFT),
            back,
        )
        .title("The slope turned round, the load left behind")
        .formula(r"\q{return-resistance} = \left( \q{rolling-resistance} - \q{slope-force} \right) \dfrac{\q{mass} - \q{load-left}}{\q{mass}} + \q{air-drag}")
        .assumes(&["Rolling resistance goes in step with the mass; on soft ground a lighter machine sinks less and does better than that, and its own ruts help."])
        .holds("The same way back.")
        .source("Force balance, F. L. Mannering and S. S. Washburn, Principles of Highway Engineering and Traffic Analysis, chapter 2")
        .cautions(HELD_BACK),
        Rule::new(OUT_ENERGY, (ENERGY_PER_DISTANCE, TRIP_DISTANCE), whole::leg_energy)
            .title("Energy for each distance, times the distance")
            .formula(r"\q{out-energy} = \q{energy-per-distance} \cdot \q{trip-distance}")
            .assumes(BOTH_WAYS)
            .holds("Steady driving; starts, turns and soft spots take more.")
            .source(WORK)
            .cautions(COUNTED_TWICE),
        Rule::new(
            BACK_ENERGY,
            (RETURN_RESISTANCE, DRIVE_EFFICIENCY, IDLE_POWER, DRIVING_SPEED, TRIP_DISTANCE),
            back_energy,
        )
        .title("The same with what holds back on the way home")
        .formula(r"\q{back-energy} = \left( \dfrac{\max(0, \q{return-resistance})}{\q{drive-efficiency}} + \dfrac{\q{idle-power}}{\q{driving-speed}} \right) \q{trip-distance}")
        .assumes(&["The same ground and speed both ways.", "The drive's efficiency is that of the way out; at a light load it is less."])
        .holds("Steady driving; nothing is gained back where the slope pushes.")
        .source(WORK)
        .cautions(HELD_BACK),
        Rule::new(TRIP_ENERGY, (OUT_ENERGY, BACK_ENERGY), sum)
            .title("Out and back")
            .formula(r"\q{trip-energy} = \q{out-energy} + \q{back-energy}")
            .assumes(BOTH_WAYS)
            .holds("One trip; loading and waiting come on top, at the idle power.")
            .source(WORK),
        Rule::new(TRIPS_PER_CHARGE, (USABLE_ENERGY, TRIP_ENERGY), whole::trips)
            .title("Usable energy over energy of a trip")
            .formula(r"\q{trips-per-charge} = \dfrac{\q{usable-energy}}{\q{trip-energy}}")
            .assumes(BOTH_WAYS)
            .holds("Whole trips count; a cold or old pack makes fewer.")
            .source(WORK)
            .cautions(SHARE_ASSUMED),
    ]
}

/// Whether the slope of the way out, turned round, pushes more than all else holds back.
fn slope_pushes(values: &Values) -> bool {
    let back = |rolling, slope, mass, left| {
        let drag = values.get(AIR_DRAG);
        back(rolling, slope, drag, mass, left).is_ok_and(|force| force < Force::default())
    };
    match (
        values.get(ROLLING_RESISTANCE),
        values.get(SLOPE_FORCE),
        values.get(MASS),
        values.get(LOAD_LEFT),
    ) {
        (Some(rolling), Some(slope), Some(mass), Some(left)) => back(rolling, slope, mass, left),
        _ => values.get(RETURN_RESISTANCE).is_some_and(|force| force < Force::default()),
    }
}

fn back(
    rolling: Force,
    slope: Force,
    drag: Option<Force>,
    mass: Mass,
    left: Mass,
) -> Result<Force, Impossible> {
    whole::return_resistance(rolling, slope, drag.unwrap_or_default(), mass, left)
}

fn back_energy(
    resistance: Force,
    efficiency: Ratio,
    idle: Power,
    speed: Speed,
    distance: Length,
) -> Energy {
    whole::leg_energy(whole::energy_per_distance(resistance, efficiency, idle, speed), distance)
}

fn sum(out: Energy, back: Energy) -> Energy {
    out + back
}
