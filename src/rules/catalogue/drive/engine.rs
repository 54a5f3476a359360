//! A combustion engine by its power, torque and fuel.

use super::super::common::always;
use crate::physics::drive::{engine, gear, motor};
use crate::quantity::catalogue::drive::*;
use crate::quantity::{Force, Length, Ratio, Torque};
use crate::rules::{Caution, Rule};

const MATHUR: &str = "M. L. Mathur, R. P. Sharma, Internal Combustion Engine";
const FULL: &[&str] = &["Full throttle at that speed, warm, at the maker's air density."];
const FUMES: &[Caution] = &[Caution {
    when: always,
    says: "Exhaust holds carbon monoxide: never run an engine indoors, and refuel it cold, outside, by the maker's manual.",
}];

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(ENGINE_POWER, (ENGINE_TORQUE, ENGINE_SPEED), motor::shaft_power)
            .title("Torque times speed of turning")
            .formula(r"\q{engine-power} = \q{engine-torque} \cdot \q{engine-speed}")
            .assumes(FULL)
            .holds("Any shaft.")
            .source("OpenStax, University Physics Volume 1, section 10.8"),
        Rule::new(ENGINE_TORQUE, (ENGINE_POWER, ENGINE_SPEED), engine::torque)
            .title("Power over speed of turning")
            .formula(r"\q{engine-torque} = \dfrac{\q{engine-power}}{\q{engine-speed}}")
            .assumes(FULL)
            .holds("Any shaft.")
            .source("OpenStax, University Physics Volume 1, section 10.8"),
        Rule::new(ENGINE_EFFICIENCY, (ENGINE_CONSUMPTION, CALORIFIC_VALUE), engine::thermal_efficiency)
            .title("Work over the heat of the fuel")
            .formula(r"\q{engine-efficiency} = \dfrac{1}{\q{engine-consumption} \cdot \q{calorific-value}}")
            .assumes(FULL)
            .holds("The load the consumption holds for; at part load it is worse.")
            .source(MATHUR),
        Rule::new(FUEL_FLOW, (ENGINE_CONSUMPTION, ENGINE_POWER), engine::fuel_flow)
            .title("Fuel for each unit of work, times the work")
            .formula(r"\q{fuel-flow} = \q{engine-consumption} \cdot \q{engine-power}")
            .assumes(FULL)
            .holds("Full power; part load uses less, but less well.")
            .source(MATHUR)
            .cautions(FUMES),
        Rule::new(ENGINE_AIR_FLOW, (FUEL_FLOW, AIR_FUEL_RATIO), engine::air_flow)
            .title("Air goes with the fuel")
            .formula(r"\q{engine-air-flow} = \q{fuel-flow} \cdot \q{air-fuel-ratio}")
            .assumes(FULL)
            .holds("Engines that burn all they draw in.")
            .source(MATHUR),
        Rule::new(ENGINE_WASTE_HEAT, (FUEL_FLOW, CALORIFIC_VALUE, ENGINE_POWER), engine::waste_heat)
            .title("All the fuel's heat that is not work")
            .formula(r"\q{engine-waste-heat} = \q{fuel-flow} \cdot \q{calorific-value} - \q{engine-power}")
            .assumes(FULL)
            .holds("Exhaust, cooling and friction together.")
            .source(MATHUR)
            .cautions(FUMES),
        Rule::new(
            ENGINE_MECHANICAL_EFFICIENCY,
            (ENGINE_POWER, ENGINE_FRICTION_POWER, ENGINE_LOAD),
            engine::mechanical_efficiency,
        )
        .title("Friction stays as the load falls")
        .formula(r"\q{engine-mechanical-efficiency} = \dfrac{\q{engine-load} \cdot \q{engine-power}}{\q{engine-load} \cdot \q{engine-power} + \q{engine-friction-power}}")
        .assumes(&["Friction power depends on speed, not on load."])
        .holds("One speed.")
        .source("M. L. Mathur, R. P. Sharma, Internal Combustion Engine, Example 1.3"),
        Rule::new(
            ENGINE_INDICATED_POWER,
            (ENGINE_POWER, ENGINE_FRICTION_POWER, ENGINE_LOAD),
            engine::indicated_power,
        )
        .title("What the gas gives, friction and all")
        .formula(r"\q{engine-indicated-power} = \q{engine-load} \cdot \q{engine-power} + \q{engine-friction-power}")
        .assumes(&["Friction power depends on speed, not on load."])
        .holds("One speed.")
        .source("M. L. Mathur, R. P. Sharma, Internal Combustion Engine, Example 1.3"),
        Rule::new(
            BRAKE_MEAN_PRESSURE,
            (ENGINE_TORQUE, ENGINE_DISPLACEMENT, ENGINE_STROKES),
            engine::brake_mean_pressure,
        )
        .title("Torque for each litre")
        .formula(r"\q{brake-mean-pressure} = \dfrac{\pi \cdot \q{engine-strokes} \cdot \q{engine-torque}}{\q{engine-displacement}}")
        .assumes(FULL)
        .holds("Any piston engine: about 600 to 900 kPa for a small four-stroke without a charger (from memory). Much more than that means the figures are hopeful.")
        .source("J. B. Heywood, Internal Combustion Engine Fundamentals, section 2.7 (from memory)"),
        Rule::new(
            ENGINE_PUSH,
            (ENGINE_TORQUE, DISTANCE_PER_TURN, GEAR_RATIO, GEAR_EFFICIENCY),
            one_engine_push,
        )
        .title("The engine's torque at the ground")
        .formula(r"\q{engine-push} = \dfrac{2 \pi \cdot \q{engine-torque} \cdot \q{gear-ratio} \cdot \q{gear-efficiency}}{\q{distance-per-turn}}")
        .assumes(&["One engine drives it all; a slipping belt or clutch is not in it."])
        .holds("Steady push at that engine speed; grip may allow less.")
        .source("Power balance over the gears; any textbook of machine elements"),
        Rule::new(ENGINE_GROUND_SPEED, (ENGINE_SPEED, GEAR_RATIO, DISTANCE_PER_TURN), gear::ground_speed)
            .title("Engine turns, through the gears, to distance")
            .formula(r"\q{engine-ground-speed} = \dfrac{\q{engine-speed}}{2 \pi} \cdot \dfrac{\q{distance-per-turn}}{\q{gear-ratio}}")
            .assumes(&["Nothing slips, in the chain or on the ground."])
            .holds("Any gear train.")
            .source("The definition of a gear train; any textbook of machine elements"),
        Rule::new(FUEL_RUN_TIME, (FUEL_MASS, FUEL_FLOW), fuel_time)
            .title("Fuel over fuel flow")
            .formula(r"\q{fuel-run-time} = \dfrac{\q{fuel-mass}}{\q{fuel-flow}}")
            .assumes(FULL)
            .holds("Full power all the time: the shortest it lasts.")
            .source("The definition of a rate"),
    ]
}

fn one_engine_push(torque: Torque, distance: Length, ratio: Ratio, efficiency: Ratio) -> Force {
    gear::push(torque, distance, ratio, efficiency, Ratio::new::<uom::si::ratio::ratio>(1.0))
}

fn fuel_time(
    fuel: crate::quantity::Mass,
    flow: crate::quantity::MassFlow,
) -> crate::quantity::Time {
    fuel / flow
}
