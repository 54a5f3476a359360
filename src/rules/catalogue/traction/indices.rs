//! Indices that compare full-size vehicles.

use crate::physics::Impossible;
use crate::physics::traction::mobility;
use crate::quantity::catalogue::{machine::*, pressure::*, running_gear::*, traction::*};
use crate::quantity::{Measure, Ratio};
use crate::rules::{Caution, Rule};

const ROWLAND: &str = "D. Rowland, Tracked Vehicle Ground Pressure and its Effect on Soft Ground Performance, 4th ISTVS conference 1972, as in J. Y. Wong, Theory of Ground Vehicles (from memory)";
const ARMY: &str = "US Army FM 5-430-00-1, Planning and Design of Roads, Airfields and Heliports, 1994, trafficability chapter (from memory)";
const COMPARE: &str = "Comparing tracked vehicles with one another, by kind of ground; not a pressure to put into other formulas.";
const FINE_SOIL: &str =
    "Vehicles of tons in fine-grained soil, wet silt and clay; sand and snow have other rules.";
const HARD_WHEELS: &str = "Every road wheel carries the same, and the belt is slack between them.";

const LIGHT: Caution = Caution {
    when: |values| values.si(WEIGHT).is_some_and(|weight| weight < 5e3),
    says: "The army's tables were made from vehicles of tons; for so light a machine this number ranks, at best.",
};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = peaks();
    rules.extend(cone_indices());
    rules
}

fn peaks() -> Vec<Rule> {
    vec![
        Rule::new(ROAD_WHEELS, (TRACK_COUNT, ROAD_WHEELS_PER_TRACK), road_wheels)
            .title("The road wheels of all tracks")
            .formula(r"\q{road-wheels} = \q{track-count} \cdot \q{road-wheels-per-track}")
            .assumes(&["All tracks are alike."])
            .holds("Machines on tracks.")
            .source("Counting"),
        Rule::new(
            MEAN_MAXIMUM_PRESSURE,
            (WEIGHT, ROAD_WHEELS, LINK_AREA_RATIO, TRACK_WIDTH, TRACK_PITCH, ROAD_WHEEL_DIAMETER),
            mobility::mean_maximum_pressure,
        )
        .title("Pressure bunches under the road wheels")
        .formula(r"\q{mean-maximum-pressure} = \dfrac{1.26 \, \q{weight}}{\q{road-wheels} \cdot \q{link-area-ratio} \cdot \q{track-width} \cdot \sqrt{\q{track-pitch} \cdot \q{road-wheel-diameter}}}")
        .assumes(&[HARD_WHEELS, "Stiff links on hard road wheels."])
        .holds(COMPARE)
        .source(ROWLAND)
        .cautions(&[LIGHT]),
        Rule::new(
            BELT_MEAN_MAXIMUM_PRESSURE,
            (WEIGHT, ROAD_WHEELS, TRACK_WIDTH, ROAD_WHEEL_DIAMETER, ROAD_WHEEL_SQUASH),
            mobility::belt_mean_maximum_pressure,
        )
        .title("Pressure bunches under the tyres inside a belt")
        .formula(r"\q{belt-mean-maximum-pressure} = \dfrac{0.5 \, \q{weight}}{\q{road-wheels} \cdot \q{track-width} \cdot \sqrt{\q{road-wheel-diameter} \cdot \q{road-wheel-squash}}}")
        .assumes(&[HARD_WHEELS, "A soft belt on pneumatic road wheels."])
        .holds(COMPARE)
        .source(ROWLAND)
        .cautions(&[LIGHT]),
    ]
}

fn cone_indices() -> Vec<Rule> {
    vec![
        Rule::new(BOGIE_FACTOR, (WEIGHT, ROAD_WHEELS, SHOE_AREA), mobility::bogie_factor)
            .title("The load on each shoe under a road wheel")
            .formula(r"\q{bogie-factor} = \dfrac{\q{weight} / 10 \, \text{lbf}}{\q{road-wheels} \cdot \q{shoe-area} / 1 \, \text{in²}}")
            .assumes(&["The weight over ten and the shoes in pounds-force and square inches, as the method has it."])
            .holds(FINE_SOIL)
            .source(ARMY)
            .cautions(&[LIGHT]),
        Rule::new(
            MOBILITY_INDEX,
            (
                GROUND_PRESSURE,
                WEIGHT,
                TRACK_WIDTH,
                GROUSER_FACTOR,
                BOGIE_FACTOR,
                BELLY_CLEARANCE,
                ENGINE_FACTOR,
                TRANSMISSION_FACTOR,
            ),
            mobility::mobility_index,
        )
        .title("What makes a tracked vehicle bog down, in one number")
        .formula(r"\q{mobility-index} = \left( \dfrac{(\q{ground-pressure} / 1 \, \text{psi}) \cdot k_W(\q{weight})}{(\q{track-width} / 100 \, \text{in}) \cdot \q{grouser-factor}} + \q{bogie-factor} - \dfrac{\q{belly-clearance}}{10 \, \text{in}} \right) \cdot \q{engine-factor} \cdot \q{transmission-factor}")
        .assumes(&["The weight factor is 1 below 50 000 lbf, then 1.2, from 70 000 lbf 1.4, from 100 000 lbf 1.8.", "Level ground, and all the weight on the tracks."])
        .holds(FINE_SOIL)
        .source(ARMY)
        .cautions(&[LIGHT]),
        Rule::new(CONE_INDEX_ONE_PASS, (MOBILITY_INDEX,), mobility::one_pass)
            .title("The soil that carries it once")
            .formula(r"\q{cone-index-one-pass} = \left( 7 + 0.2 \, \q{mobility-index} - \dfrac{39.2}{\q{mobility-index} + 5.6} \right) \, \text{psi}")
            .assumes(&["The soil is tested with the army's cone, remoulded as a track would."])
            .holds(FINE_SOIL)
            .source(ARMY)
            .cautions(&[LIGHT]),
        Rule::new(CONE_INDEX_FIFTY_PASSES, (MOBILITY_INDEX,), mobility::fifty_passes)
            .title("The soil that carries it fifty times in one rut")
            .formula(r"\q{cone-index-fifty-passes} = \left( 19.27 + 0.43 \, \q{mobility-index} - \dfrac{125.79}{\q{mobility-index} + 7.08} \right) \, \text{psi}")
            .assumes(&["The soil is tested with the army's cone, remoulded as a track would."])
            .holds(FINE_SOIL)
            .source(ARMY)
            .cautions(&[LIGHT]),
        Rule::new(TYRE_DEFLECTION_RATIO, (WHEEL_SQUASH, TYRE_SECTION_HEIGHT), |squash, height| {
            squash / height
        })
        .title("How soft a tyre runs")
        .formula(r"\q{tyre-deflection-ratio} = \dfrac{\q{wheel-squash}}{\q{tyre-section-height}}")
        .assumes(&["The squash is measured on firm ground under the working load."])
        .holds("Pneumatic tyres.")
        .source("Definition, J. D. Priddy, W. E. Willoughby, Journal of Terramechanics 43, 2006"),
        Rule::new(
            WHEELED_CONE_INDEX,
            (WHEELED_MOBILITY_INDEX, TYRE_DEFLECTION_RATIO),
            mobility::wheeled_one_pass,
        )
        .title("The soil that carries a wheeled vehicle once")
        .formula(r"\q{wheeled-cone-index} = f \cdot \begin{cases} 11.48 + 0.2 \, \q{wheeled-mobility-index} - \dfrac{39.2}{\q{wheeled-mobility-index} + 3.74} & \text{up to } 115 \\ 4.1 \, \q{wheeled-mobility-index}^{0.446} & \text{above} \end{cases} \, \text{psi}, \; f = \left( \dfrac{0.15}{\q{tyre-deflection-ratio}} \right)^{1/4}")
        .assumes(&["All wheels drive; the mobility index comes from the army's own tables."])
        .holds(FINE_SOIL)
        .source("J. D. Priddy, W. E. Willoughby, Clarification of vehicle cone index with reference to mean maximum pressure, Journal of Terramechanics 43, 2006")
        .cautions(&[LIGHT]),
    ]
}

fn road_wheels(tracks: Ratio, per_track: Ratio) -> Result<Ratio, Impossible> {
    if tracks.si() == 0.0 {
        return Err(Impossible::NoTracks);
    }
    Ok(mobility::road_wheels(tracks, per_track))
}
