//! Shallow snow and ice.

use super::{DOUBT, SMALL, STRENGTHS};
use crate::physics::traction::band::{self, Ground};
use crate::physics::traction::{ice, resistance, snow, thrust};
use crate::quantity::catalogue::{
    ground::*, machine::*, pressure::*, running_gear::*, traction::*,
};
use crate::quantity::{Force, Id, Ratio};
use crate::rules::{Caution, Rule};

const CRREL: &str = "P. W. Richmond, S. A. Shoop, G. L. Blaisdell, Cold Regions Mobility Models, US Army CRREL Report 95-1, 1995";
const RUTS: &str = "CRREL TR-01-16, Table 11: measured ruts against the rule";
const SHALLOW: &str = "Undisturbed snow on firm ground, under tracks and wheels of full size; deep snow behaves as soft ground does.";
const SIDEWAYS: &str =
    "The snow is only pressed straight down; in truth it flows sideways and forward as well.";

const SLOPES: Caution = Caution {
    when: |values| values.si(SLOPE).is_some_and(|slope| slope.abs() > 25f64.to_radians()),
    says: "Snow slopes of about 30° and more, or joined to such, can set off an avalanche: look at the local bulletin and stay off.",
};
const STANDS_STILL: Caution = Caution {
    when: |values| {
        let sum = [SNOW_TRACTION, SNOW_RESISTANCE, SLOPE_FORCE].map(|id| values.si(id));
        matches!(sum, [Some(traction), Some(snow), Some(slope)] if traction < snow + slope)
    },
    says: "Less than nothing is left: it cannot keep going.",
};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = ruts();
    rules.extend(pulls());
    rules.push(ice());
    rules
}

fn ruts() -> Vec<Rule> {
    vec![
        Rule::new(SNOW_FINAL_DENSITY, (GROUND_PRESSURE,), snow::final_density)
            .title("Pressure packs snow to a density of its own")
            .formula(r"\q{snow-final-density} = \begin{cases} 500 \, \text{kg/m³} & \text{if } \q{ground-pressure} \le 210 \, \text{kPa} \\ 550 \, \text{kg/m³} & \text{up to } 350 \, \text{kPa} \\ 600 \, \text{kg/m³} & \text{up to } 700 \, \text{kPa} \\ 650 \, \text{kg/m³} & \text{above} \end{cases}")
            .assumes(&["The mean pressure decides; under road wheels it is more."])
            .holds("Tens of kPa and more. A light machine packs snow less, so its rut is shallower than the rule says.")
            .source("US Army CRREL Report 95-7, 1995")
            .cautions(&[SMALL]),
        Rule::new(SNOW_RUT, (SNOW_DEPTH, SNOW_DENSITY, SNOW_FINAL_DENSITY), snow::rut)
            .title("As much snow, packed closer")
            .formula(r"\q{snow-rut} = \q{snow-depth} \cdot \left( 1 - \dfrac{\q{snow-density}}{\q{snow-final-density}} \right)")
            .assumes(&[SIDEWAYS])
            .holds(SHALLOW)
            .source(CRREL)
            .cautions(&[SMALL]),
        Rule::new(SNOW_RUT_LOW, (SNOW_RUT,), snow::shallowest_rut)
            .title("The shallowest measured against the rule")
            .formula(r"\q{snow-rut-low} = 0.92 \cdot \q{snow-rut}")
            .assumes(&[SIDEWAYS])
            .holds("Tyres in 13 to 22 cm of snow of 110 to 220 kg/m³.")
            .source(RUTS)
            .cautions(&[SMALL]),
        Rule::new(SNOW_RUT_HIGH, (SNOW_RUT,), snow::deepest_rut)
            .title("The deepest measured against the rule")
            .formula(r"\q{snow-rut-high} = 1.45 \cdot \q{snow-rut}")
            .assumes(&[SIDEWAYS])
            .holds("Tyres in 13 to 22 cm of snow of 110 to 220 kg/m³.")
            .source(RUTS)
            .cautions(&[SMALL]),
    ]
}

fn pulls() -> Vec<Rule> {
    vec![
        Rule::new(
            SNOW_TRACTION,
            (SNOW_TRACTION_FACTOR, SNOW_TRACTION_EXPONENT, GROUND_PRESSURE, TRACK_CONTACT_AREA),
            snow::traction,
        )
        .title("Each surface has its own power of the pressure")
        .formula(r"\q{snow-traction} = \q{snow-traction-factor} \cdot \left( \dfrac{\q{ground-pressure}}{1 \, \text{kPa}} \right)^{\q{snow-traction-exponent}} \cdot 1 \, \text{kPa} \cdot \q{track-contact-area}")
        .assumes(&["All tracks drive, and everything that touches is a track."])
        .holds("Tracked vehicles of tons; for light machines a first guess only.")
        .source(CRREL)
        .cautions(&[SMALL, SLOPES]),
        Rule::new(SNOW_TRACTION_LOW, (SNOW_TRACTION, SOIL_DOUBT), |f, d| {
            band::thrust(f, d, Ground::Weaker)
        })
        .title("The same on a weaker surface")
        .formula(r"\q{snow-traction-low} = \q{snow-traction} \cdot (1 - \q{soil-doubt})")
        .assumes(&[STRENGTHS])
        .holds("As the gross traction.")
        .source(DOUBT)
        .cautions(&[SMALL, SLOPES]),
        Rule::new(SNOW_TRACTION_HIGH, (SNOW_TRACTION, SOIL_DOUBT), |f, d| {
            band::thrust(f, d, Ground::Stronger)
        })
        .title("The same on a stronger surface")
        .formula(r"\q{snow-traction-high} = \q{snow-traction} \cdot (1 + \q{soil-doubt})")
        .assumes(&[STRENGTHS])
        .holds("As the gross traction.")
        .source(DOUBT)
        .cautions(&[SMALL, SLOPES]),
        Rule::new(
            SNOW_RESISTANCE,
            (SNOW_RESISTANCE_COEFFICIENT, WEIGHT),
            resistance::from_coefficient,
        )
        .title("What the snow holds back, as a share of the weight")
        .formula(r"\q{snow-resistance} = \q{snow-resistance-coefficient} \cdot \q{weight}")
        .assumes(&["Measured on the level, and kept whole on a slope, to the safe side."])
        .holds(SHALLOW)
        .source(CRREL),
        Rule::new(
            SNOW_DRAWBAR_PULL,
            (SNOW_TRACTION, SNOW_RESISTANCE, SLOPE_FORCE),
            thrust::drawbar_pull,
        )
        .title("Traction less snow less slope")
        .formula(r"\q{snow-drawbar-pull} = \q{snow-traction} - \q{snow-resistance} - \q{slope-force}")
        .assumes(&["Losses in the running gear are left out."])
        .holds(SHALLOW)
        .source(CRREL)
        .cautions(&[SMALL, SLOPES, STANDS_STILL]),
        banded_pull(SNOW_DRAWBAR_PULL_LOW, SNOW_TRACTION_LOW, |traction, snow, doubt, slope| {
            thrust::drawbar_pull(traction, band::resistance(snow, doubt, Ground::Weaker), slope)
        })
        .title("The same on a weaker surface")
        .formula(r"\q{snow-drawbar-pull-low} = \q{snow-traction-low} - \q{snow-resistance} \cdot (1 + \q{soil-doubt}) - \q{slope-force}"),
        banded_pull(SNOW_DRAWBAR_PULL_HIGH, SNOW_TRACTION_HIGH, |traction, snow, doubt, slope| {
            thrust::drawbar_pull(traction, band::resistance(snow, doubt, Ground::Stronger), slope)
        })
        .title("The same on a stronger surface")
        .formula(r"\q{snow-drawbar-pull-high} = \q{snow-traction-high} - \q{snow-resistance} \cdot (1 - \q{soil-doubt}) - \q{slope-force}"),
        Rule::new(SNOW_DRAWBAR_COEFFICIENT, (SNOW_DRAWBAR_PULL, WEIGHT), resistance::coefficient)
            .title("Pull over weight compares machines of any size")
            .formula(r"\q{snow-drawbar-coefficient} = \dfrac{\q{snow-drawbar-pull}}{\q{weight}}")
            .assumes(&["Losses in the running gear are left out."])
            .holds(SHALLOW)
            .source(CRREL)
            .cautions(&[SMALL, SLOPES, STANDS_STILL]),
    ]
}

fn banded_pull(
    id: Id<Force>,
    traction: Id<Force>,
    find: fn(Force, Force, Ratio, Force) -> Force,
) -> Rule {
    Rule::new(id, (traction, SNOW_RESISTANCE, SOIL_DOUBT, SLOPE_FORCE), find)
        .assumes(&[STRENGTHS])
        .holds(SHALLOW)
        .source(DOUBT)
        .cautions(&[SMALL, SLOPES])
}

fn ice() -> Rule {
    Rule::new(ICE_GUIDE_THICKNESS, (WEIGHT,), ice::guide_begins)
        .title("Where a rough published guide begins; it does not say that ice is safe")
        .formula(r"\q{ice-guide-thickness} = \max \left( 4 \, \text{in} \cdot \sqrt{\dfrac{\q{weight}}{2000 \, \text{lbf}}}, \; 4 \, \text{in} \right)")
        .assumes(&[
            "Clear, sound ice that floats on water over all its breadth, in lasting frost. Snow ice counts half; warm, cracked, moving or undercut ice counts for nothing.",
            "Never less than the thickness from which guidance speaks of one person on foot, since somebody has to fetch the machine.",
        ])
        .holds("A comparison for vehicles of tons on measured ice. It is not a safety rule, and pressure under a track says nothing of ice: ice breaks by bending.")
        .source("US Army TM 5-852-1 / AFR 88-19 vol. 1, Arctic and Subarctic Construction, General Provisions, section 2; the 4 in for one person is common practice, no published source")
        .cautions(&[Caution {
            when: |_| true,
            says: "No ice is safe, and this figure does not say so. It is where a rough guide begins. Measure often, ask those who know that water, and let local rules and licensed practice decide.",
        }])
}
