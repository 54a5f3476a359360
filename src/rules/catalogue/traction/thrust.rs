//! How hard soft ground lets the tracks push, and what is left to pull and climb with.

use super::super::common::exceeds;
use super::{BEKKER, DOUBT, LEFT_OUT, SMALL, STRENGTHS};
use crate::physics::Impossible;
use crate::physics::traction::band::{self, Ground};
use crate::physics::traction::{climb, resistance, thrust};
use crate::quantity::catalogue::{
    ground::*, machine::*, motion::*, pressure::*, running_gear::*, traction::*,
};
use crate::quantity::{Angle, Area, Force, Length, Measure, Pressure, Ratio};
use crate::rules::{Caution, Origin, Rule, Values};

const SHEAR: &str = "Z. Janosi, B. Hanamoto, 1961, in J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, chapter 2";
const COULOMB: &str =
    "Mohr–Coulomb, in J. Y. Wong, Theory of Ground Vehicles, 4th ed. 2008, chapter 2";
const FLAT_TRACK: &str = "Flat tracks that all drive, without grousers: these add some, 22 to 66 % in one test on loose sand.";
const TRACKS: &str = "Machines on tracks, on ground of one kind that is not churned up yet; best pull comes at 20 to 40 % slip.";

const SLIP_ASSUMED: Caution = Caution {
    when: |values| values.origin(SLIP) == Some(Origin::Assumed),
    says: "The slip is assumed: 20 %.",
};
const SKIS_SHARE: Caution = Caution {
    when: |values| {
        let others = [WHEEL_COUNT, SKI_COUNT].iter().any(|id| values.si(*id) > Some(0.0));
        others && values.origin(DRIVEN_SHARE) == Some(Origin::Assumed)
    },
    says: "Wheels or skis carry part of the load; say what share of it is on the driven tracks.",
};
const DOUBT_APART: Caution = Caution {
    when: |values| values.si(SOIL_DOUBT).is_some_and(|doubt| doubt > 0.0),
    says: "The doubt in the ground is not in this number or its range: the low and high ends say what weaker and stronger ground do.",
};
const COHESION_RULES: Caution = Caution {
    when: cohesion_rules,
    says: "More than half of this comes from cohesion, the least sure number of the ground for so light a machine; look at the thrust without cohesion.",
};
const STANDS_STILL: Caution = Caution {
    when: |values| {
        let pull = Some(Force::from_si(0.0));
        let sum = [THRUST, COMPACTION_RESISTANCE, SLOPE_FORCE].map(|id| values.get(id));
        matches!(sum, [Some(thrust), Some(ruts), Some(slope)]
            if Some(thrust::drawbar_pull(thrust, ruts, slope)) < pull)
    },
    says: "Less than nothing is left: at this slip it cannot keep going, and more slip digs it in.",
};
/// A climb found on paper is no leave to try it.
pub(super) const NO_PERMISSION: Caution = Caution {
    when: |_| true,
    says: "A climbing figure is no permission: it may tip over or slide first, and snow slopes of about 30° and more, or joined to such, can set off an avalanche. Local bulletins and licensed practice decide.",
};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = stresses();
    rules.extend(thrusts());
    rules.extend(pulls());
    rules.extend(climbs());
    rules.push(thrown());
    rules
}

fn stresses() -> Vec<Rule> {
    vec![
        Rule::new(SHEAR_DISPLACEMENT, (SLIP, CONTACT_LENGTH), thrust::displacement)
            .title("Slip drags the ground further towards the end of the track")
            .formula(r"\q{shear-displacement} = \q{slip} \cdot \q{contact-length}")
            .assumes(&["The same slip all along the track."])
            .holds("Steady driving straight on.")
            .source(SHEAR)
            .cautions(&[SLIP_ASSUMED]),
        Rule::new(
            SHEAR_STRESS,
            (COHESION, GROUND_PRESSURE, FRICTION_ANGLE, SHEAR_DISPLACEMENT, SHEAR_DEFORMATION),
            thrust::shear_stress,
        )
        .title("The ground holds on harder the further it is dragged, up to a limit")
        .formula(r"\q{shear-stress} = (\q{cohesion} + \q{ground-pressure} \cdot \tan \q{friction-angle}) \cdot \left( 1 - e^{-\q{shear-displacement} / \q{shear-deformation}} \right)")
        .assumes(&["The ground has no peak that it falls back from, as a crust or a mat of roots has.", LEFT_OUT])
        .holds("Loose sand, soft clay, fresh snow and the like, within the pressures tested.")
        .source(SHEAR)
        .cautions(&[SMALL, SLIP_ASSUMED]),
        Rule::new(THRUST_REACHED, (SLIP, CONTACT_LENGTH, SHEAR_DEFORMATION), thrust::reached)
            .title("The front of the track still grips little, the end all it can")
            .formula(r"\q{thrust-reached} = 1 - \dfrac{\q{shear-deformation}}{\q{slip} \cdot \q{contact-length}} \left( 1 - e^{-\q{slip} \cdot \q{contact-length} / \q{shear-deformation}} \right)")
            .assumes(&["The pressure is even along the track. At no slip nothing is reached."])
            .holds(TRACKS)
            .source(SHEAR)
            .cautions(&[SLIP_ASSUMED]),
    ]
}

fn thrusts() -> Vec<Rule> {
    vec![
        Rule::new(
            THRUST_LIMIT,
            (TRACK_CONTACT_AREA, COHESION, DRIVEN_SHARE, GROUND_FORCE, FRICTION_ANGLE),
            thrust_limit,
        )
        .title("Area times cohesion, and load times friction")
        .formula(r"\q{thrust-limit} = \q{track-contact-area} \cdot \q{cohesion} + \q{driven-share} \cdot \q{ground-force} \cdot \tan \q{friction-angle}")
        .assumes(&[FLAT_TRACK, LEFT_OUT])
        .holds("An upper bound at full slip.")
        .source(COULOMB)
        .cautions(&[SMALL, COHESION_RULES, SKIS_SHARE]),
        Rule::new(THRUST, (THRUST_LIMIT, THRUST_REACHED), thrust::thrust)
            .title("The share of the limit that the slip reaches")
            .formula(r"\q{thrust} = \q{thrust-limit} \cdot \q{thrust-reached}")
            .assumes(&[FLAT_TRACK, LEFT_OUT])
            .holds(TRACKS)
            .source(SHEAR)
            .cautions(&[SMALL, COHESION_RULES, SKIS_SHARE, SLIP_ASSUMED, DOUBT_APART]),
        Rule::new(THRUST_LOW, (THRUST, SOIL_DOUBT), |f, d| band::thrust(f, d, Ground::Weaker))
            .title("The same on weaker ground")
            .formula(r"\q{thrust-low} = \q{thrust} \cdot (1 - \q{soil-doubt})")
            .assumes(&[STRENGTHS])
            .holds(TRACKS)
            .source(DOUBT)
            .cautions(&[SMALL]),
        Rule::new(THRUST_HIGH, (THRUST, SOIL_DOUBT), |f, d| band::thrust(f, d, Ground::Stronger))
            .title("The same on stronger ground")
            .formula(r"\q{thrust-high} = \q{thrust} \cdot (1 + \q{soil-doubt})")
            .assumes(&[STRENGTHS])
            .holds(TRACKS)
            .source(DOUBT)
            .cautions(&[SMALL]),
        Rule::new(
            THRUST_NO_COHESION,
            (DRIVEN_SHARE, GROUND_FORCE, FRICTION_ANGLE, THRUST_REACHED),
            |share, force, friction, reached| {
                thrust::without_cohesion(share * force, friction, reached)
            },
        )
        .title("Without cohesion only the load grips")
        .formula(r"\q{thrust-no-cohesion} = \q{driven-share} \cdot \q{ground-force} \cdot \tan \q{friction-angle} \cdot \q{thrust-reached}")
        .assumes(&["The ground does not stick to itself at all, as dry sand under a light machine.", FLAT_TRACK])
        .holds("A what-if, to see how much hangs on the cohesion.")
        .source(COULOMB)
        .cautions(&[SKIS_SHARE, SLIP_ASSUMED]),
    ]
}

fn pulls() -> Vec<Rule> {
    const LEFT: &str = "What the ground holds back is the pressing of ruts alone.";
    vec![
        Rule::new(
            DRAWBAR_PULL,
            (THRUST, COMPACTION_RESISTANCE, SLOPE_FORCE),
            thrust::drawbar_pull,
        )
        .title("Thrust less ruts less slope")
        .formula(r"\q{drawbar-pull} = \q{thrust} - \q{compaction-resistance} - \q{slope-force}")
        .assumes(&[LEFT, LEFT_OUT])
        .holds(TRACKS)
        .source(BEKKER)
        .cautions(&[SMALL, SLIP_ASSUMED, STANDS_STILL, DOUBT_APART]),
        Rule::new(
            DRAWBAR_PULL_LOW,
            (THRUST_LOW, COMPACTION_RESISTANCE_HIGH, SLOPE_FORCE),
            thrust::drawbar_pull,
        )
        .title("The same on weaker ground")
        .formula(r"\q{drawbar-pull-low} = \q{thrust-low} - \q{compaction-resistance-high} - \q{slope-force}")
        .assumes(&[STRENGTHS, LEFT])
        .holds(TRACKS)
        .source(DOUBT)
        .cautions(&[SMALL]),
        Rule::new(
            DRAWBAR_PULL_HIGH,
            (THRUST_HIGH, COMPACTION_RESISTANCE_LOW, SLOPE_FORCE),
            thrust::drawbar_pull,
        )
        .title("The same on stronger ground")
        .formula(r"\q{drawbar-pull-high} = \q{thrust-high} - \q{compaction-resistance-low} - \q{slope-force}")
        .assumes(&[STRENGTHS, LEFT])
        .holds(TRACKS)
        .source(DOUBT)
        .cautions(&[SMALL]),
        Rule::new(DRAWBAR_COEFFICIENT, (DRAWBAR_PULL, WEIGHT), resistance::coefficient)
            .title("Pull over weight compares machines of any size")
            .formula(r"\q{drawbar-coefficient} = \dfrac{\q{drawbar-pull}}{\q{weight}}")
            .assumes(&[LEFT, LEFT_OUT])
            .holds(TRACKS)
            .source(BEKKER)
            .cautions(&[SMALL, SLIP_ASSUMED, STANDS_STILL, DOUBT_APART]),
        Rule::new(
            PUSH_NEEDED,
            (COMPACTION_RESISTANCE, SLOPE_FORCE, PULL_WANTED),
            |ruts, slope, hook| ruts + slope + hook,
        )
        .title("Ruts, slope and hook add up")
        .formula(r"\q{push-needed} = \q{compaction-resistance} + \q{slope-force} + \q{pull-wanted}")
        .assumes(&[LEFT, LEFT_OUT])
        .holds("Steady driving.")
        .source("Balance of forces, OpenStax, University Physics Volume 1, section 5.2")
        .cautions(&[SMALL]),
        Rule::new(
            SLIP_NEEDED,
            (PUSH_NEEDED, THRUST_LIMIT, CONTACT_LENGTH, SHEAR_DEFORMATION),
            thrust::slip_for,
        )
        .title("The slip at which thrust and push agree, found by trial")
        .formula(r"\q{slip-needed} = i \; \text{for which} \; \q{push-needed} = \q{thrust-limit} \cdot \left( 1 - \dfrac{\q{shear-deformation}}{i \, \q{contact-length}} \left( 1 - e^{-i \, \q{contact-length} / \q{shear-deformation}} \right) \right)")
        .assumes(&[FLAT_TRACK, LEFT_OUT])
        .holds("Tracks; beyond some 40 % of slip a real machine digs itself in.")
        .source(SHEAR)
        .cautions(&[SMALL, COHESION_RULES, SKIS_SHARE]),
        Rule::new(
            SLIP_NEEDED_HIGH,
            (
                COMPACTION_RESISTANCE_HIGH,
                SLOPE_FORCE,
                PULL_WANTED,
                THRUST_LIMIT,
                SOIL_DOUBT,
                CONTACT_LENGTH,
                SHEAR_DEFORMATION,
            ),
            slip_needed_high,
        )
        .title("The same on weaker ground")
        .formula(r"\q{slip-needed-high} = i \; \text{for which} \; \q{compaction-resistance-high} + \q{slope-force} + \q{pull-wanted} = \q{thrust-limit} \cdot (1 - \q{soil-doubt}) \cdot \left( 1 - \dfrac{\q{shear-deformation}}{i \, \q{contact-length}} \left( 1 - e^{-i \, \q{contact-length} / \q{shear-deformation}} \right) \right)")
        .assumes(&[STRENGTHS])
        .holds("Tracks; beyond some 40 % of slip a real machine digs itself in.")
        .source(DOUBT)
        .cautions(&[SMALL, SKIS_SHARE]),
    ]
}

fn climbs() -> Vec<Rule> {
    const WHOLE: &str = "The resistance is that of the slope now set, kept whole while the slope grows, which is to the safe side.";
    vec![
        Rule::new(
            SOFT_CLIMB,
            (
                TRACK_CONTACT_AREA,
                COHESION,
                FRICTION_ANGLE,
                THRUST_REACHED,
                DRIVEN_SHARE,
                WEIGHT,
                COMPACTION_RESISTANCE,
            ),
            soft_climb,
        )
        .title("The slope on which thrust just beats ruts and weight")
        .formula(r"\q{soft-climb} = \arctan m + \arcsin \dfrac{\q{thrust-reached} \cdot \q{track-contact-area} \cdot \q{cohesion} - \q{compaction-resistance}}{\q{weight} \cdot \sqrt{1 + m^2}}, \; m = \q{thrust-reached} \cdot \q{driven-share} \cdot \tan \q{friction-angle}")
        .assumes(&[WHOLE, FLAT_TRACK, LEFT_OUT])
        .holds(TRACKS)
        .source(BEKKER)
        .cautions(&[NO_PERMISSION, SMALL, COHESION_RULES, SKIS_SHARE, SLIP_ASSUMED, DOUBT_APART]),
        Rule::new(
            SOFT_CLIMB_LOW,
            (
                TRACK_CONTACT_AREA,
                COHESION,
                FRICTION_ANGLE,
                THRUST_REACHED,
                DRIVEN_SHARE,
                WEIGHT,
                COMPACTION_RESISTANCE_HIGH,
                SOIL_DOUBT,
            ),
            soft_climb_low,
        )
        .title("The same on weaker ground")
        .formula(r"\q{soft-climb-low} = \arctan m + \arcsin \dfrac{r \cdot \q{track-contact-area} \cdot \q{cohesion} - \q{compaction-resistance-high}}{\q{weight} \cdot \sqrt{1 + m^2}}, \; m = r \cdot \q{driven-share} \cdot \tan \q{friction-angle}, \; r = \q{thrust-reached} \cdot (1 - \q{soil-doubt})")
        .assumes(&[STRENGTHS, WHOLE])
        .holds(TRACKS)
        .source(DOUBT)
        .cautions(&[NO_PERMISSION, SMALL, SKIS_SHARE, SLIP_ASSUMED]),
    ]
}

fn thrown() -> Rule {
    Rule::new(THROWN_THRUST, (THROWN_FLOW, THROW_SPEED, DRIVING_SPEED), thrust::of_thrown)
        .title("Throwing stuff back pushes the machine on")
        .formula(r"\q{thrown-thrust} = \q{thrown-flow} \cdot (\q{throw-speed} - \q{driving-speed})")
        .assumes(&[
            "What is thrown was at rest on the ground, and leaves straight back along the ground: what flies up or sideways pushes less.",
            "The throw is no faster than belt or paddle; the power for it comes on top of the push.",
            "It comes beside the ground's own shear thrust, not on top of the same ground.",
        ])
        .holds("Loose or liquid ground at speed, where a machine half floats on what it throws.")
        .source("Momentum of a steady stream, OpenStax, College Physics 2e, section 8.2")
        .cautions(&[Caution {
            when: |values| exceeds(values, DRIVING_SPEED, THROW_SPEED),
            says: "The machine outruns its own throw, which then holds it back.",
        }])
}

fn thrust_limit(
    area: Area,
    cohesion: Pressure,
    share: Ratio,
    force: Force,
    friction: Angle,
) -> Result<Force, Impossible> {
    thrust::limit(area, cohesion, share * force, friction)
}

fn slip_needed_high(
    ruts: Force,
    along_slope: Force,
    hook: Force,
    limit: Force,
    doubt: Ratio,
    length: Length,
    modulus: Length,
) -> Result<Ratio, Impossible> {
    let limit = band::thrust(limit, doubt, Ground::Weaker);
    thrust::slip_for(ruts + along_slope + hook, limit, length, modulus)
}

fn soft_climb(
    area: Area,
    cohesion: Pressure,
    friction: Angle,
    reached: Ratio,
    share: Ratio,
    weight: Force,
    ruts: Force,
) -> Result<Angle, Impossible> {
    climb::on_soft_ground(area * cohesion, friction, reached, share, weight, ruts)
}

#[expect(clippy::too_many_arguments, reason = "a rule's inputs, one by one")]
fn soft_climb_low(
    area: Area,
    cohesion: Pressure,
    friction: Angle,
    reached: Ratio,
    share: Ratio,
    weight: Force,
    ruts: Force,
    doubt: Ratio,
) -> Result<Angle, Impossible> {
    let reached = reached * Ground::Weaker.factor(doubt);
    climb::on_soft_ground(area * cohesion, friction, reached, share, weight, ruts)
}

/// Whether cohesion gives more of the limit than the load does.
fn cohesion_rules(values: &Values) -> bool {
    let by_load = || {
        let load = values.get(DRIVEN_SHARE)? * values.get(GROUND_FORCE)?;
        Some(load * values.get(FRICTION_ANGLE)?.tan())
    };
    let by_cohesion = || Some(values.get(TRACK_CONTACT_AREA)? * values.get(COHESION)?);
    matches!((by_cohesion(), by_load()), (Some(cohesion), Some(load)) if cohesion > load)
}
