//! Pressure on the ground, mean and worst, against what the ground holds.

use uom::ConstZero;

use crate::physics::{Impossible, pressure};
use crate::quantity::catalogue::ground::*;
use crate::quantity::catalogue::machine::*;
use crate::quantity::catalogue::pressure::*;
use crate::quantity::catalogue::running_gear::*;
use crate::quantity::{Angle, Id, Length, Ratio};
use crate::rules::{Caution, Fault, Maybe, Rule, Values};

const LINEAR: &[&str] = &[
    "The tracks are stiff and press evenly from side to side.",
    "Pressure changes along a straight line from end to end; under a slack belt it bunches under the road wheels instead.",
];
const FOOTING: &str = "Linear pressure under a stiff footing with an off-centre load: AASHTO LRFD Bridge Design Specifications, article 11.6.3.2 (from memory)";
const TRACKS_ALONE: &str = "A machine on tracks alone whose load stays within the contact length.";
const BLOCK: &str = "Common practice, no published source; the idea of the plate-sinkage test in J. Y. Wong, Theory of Ground Vehicles, chapter 2 (from memory)";

const ONE_END_LIFTS: &[Caution] = &[
    Caution {
        when: |values| leans(values, 1.0),
        says: "The load is more than a sixth of the contact length forward of the middle: the tail lifts and carries nothing.",
    },
    Caution {
        when: |values| leans(values, -1.0),
        says: "The load is more than a sixth of the contact length behind the middle: the nose lifts and carries nothing.",
    },
];

/// What a rule for tracks alone looks at first: the load's offset, the length, and what else
/// carries the machine.
const GEAR: Gear = (
    Maybe(PRESSURE_OFFSET),
    Maybe(CONTACT_LENGTH),
    Maybe(TRACK_COUNT),
    Maybe(WHEEL_COUNT),
    Maybe(SKI_COUNT),
);

type Gear =
    (Maybe<Id<Length>>, Maybe<Id<Length>>, Maybe<Id<Ratio>>, Maybe<Id<Ratio>>, Maybe<Id<Ratio>>);

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = under_the_machine();
    rules.extend(against_the_ground());
    rules
}

fn under_the_machine() -> Vec<Rule> {
    vec![
        Rule::new(GROUND_PRESSURE, (GROUND_FORCE, CONTACT_AREA), pressure::mean_pressure)
            .title("Pressure is force over area")
            .formula(r"\q{ground-pressure} = \dfrac{\q{ground-force}}{\q{contact-area}}")
            .assumes(&[
                "The force spreads evenly over the nominal area. In truth loads bunch under the road wheels, and one end presses harder.",
                "Low pressure decides sinking; grip is a separate question.",
            ])
            .holds("Any machine that stands or moves steadily; a mean, not the worst spot.")
            .source("OpenStax, University Physics Volume 1, section 14.1; nominal ground pressure in J. Y. Wong, Theory of Ground Vehicles (from memory)"),
        Rule::new(PRESSURE_OFFSET, (BALANCE_OFFSET, Maybe(CG_HEIGHT), SLOPE), load_offset)
            .title("A slope moves the load towards the low end")
            .formula(r"\q{pressure-offset} = \q{balance-offset} - \q{cg-height} \cdot \tan \q{slope}")
            .assumes(&["The machine stands or moves steadily; pull, push and speeding up move the load as well."])
            .holds("Any even slope along the machine; on level ground the height does not matter.")
            .source("Balance of moments, OpenStax, University Physics Volume 1, section 12.2"),
        Rule::new(END_PRESSURE_RATIO, GEAR, end_ratio)
            .title("An off-centre load presses harder under one end")
            .formula(r"\q{end-pressure-ratio} = \begin{cases} 1 + \dfrac{6 \, |\q{pressure-offset}|}{\q{contact-length}} & \text{if } |\q{pressure-offset}| \le \dfrac{\q{contact-length}}{6} \\ \dfrac{2 \, \q{contact-length}}{3 \left( \frac{1}{2} \q{contact-length} - |\q{pressure-offset}| \right)} & \text{else} \end{cases}")
            .assumes(LINEAR)
            .holds(TRACKS_ALONE)
            .source(FOOTING)
            .cautions(ONE_END_LIFTS),
        Rule::new(LOW_END_PRESSURE, (END_PRESSURE_RATIO, GROUND_PRESSURE), |ratio, mean| ratio * mean)
            .title("The low end presses this much harder than the mean")
            .formula(r"\q{low-end-pressure} = \q{end-pressure-ratio} \cdot \q{ground-pressure}")
            .assumes(LINEAR)
            .holds(TRACKS_ALONE)
            .source(FOOTING)
            .cautions(ONE_END_LIFTS),
        Rule::new(LIFTED_LENGTH, GEAR, lifted_length)
            .title("Past a sixth of the length, the other end lifts")
            .formula(r"\q{lifted-length} = \max \left( 0, \; 3 \, |\q{pressure-offset}| - \frac{1}{2} \q{contact-length} \right)")
            .assumes(LINEAR)
            .holds(TRACKS_ALONE)
            .source(FOOTING)
            .cautions(ONE_END_LIFTS),
    ]
}

fn against_the_ground() -> Vec<Rule> {
    vec![
        Rule::new(HOLDING_PRESSURE, (BLOCK_MASS, GRAVITY, BLOCK_SIDE), pressure::holding_pressure)
            .title("What the block pressed when it had sunk 20 mm")
            .formula(r"\q{holding-pressure} = \dfrac{\q{block-mass} \cdot \q{gravity}}{\q{block-side}^2}")
            .assumes(&[
                "The ground under the machine is like the ground under the block, today.",
                "A larger area sinks a little deeper at the same pressure.",
            ])
            .holds("The place and the day of the test; test wet and dry, three times each.")
            .source(BLOCK),
        Rule::new(PRESSURE_MARGIN, (HOLDING_PRESSURE, GROUND_PRESSURE), pressure::margin)
            .title("What the ground held over the mean pressure")
            .formula(r"\q{pressure-margin} = \dfrac{\q{holding-pressure}}{\q{ground-pressure}}")
            .assumes(&["The mean speaks for the whole contact: look at the low end as well."])
            .holds("Standing or driving gently; spinning tracks dig.")
            .source(BLOCK)
            .cautions(&[Caution {
                when: |values| harder_than_held(values, GROUND_PRESSURE),
                says: "On average the machine presses harder than the ground held.",
            }]),
        Rule::new(LOW_END_MARGIN, (HOLDING_PRESSURE, LOW_END_PRESSURE), pressure::margin)
            .title("What the ground held over the pressure under the low end")
            .formula(r"\q{low-end-margin} = \dfrac{\q{holding-pressure}}{\q{low-end-pressure}}")
            .assumes(LINEAR)
            .holds(TRACKS_ALONE)
            .source(BLOCK)
            .cautions(&[Caution {
                when: |values| harder_than_held(values, LOW_END_PRESSURE),
                says: "The low end presses harder than the ground held, so that end goes in first.",
            }]),
        Rule::new(BALANCE_MARGIN, GEAR, balance_margin)
            .title("How near one end is to lifting")
            .formula(r"\q{balance-margin} = \dfrac{\frac{1}{6} \q{contact-length}}{|\q{pressure-offset}|}")
            .assumes(LINEAR)
            .holds("A machine on tracks alone; below 1 an end has lifted already.")
            .source(FOOTING)
            .cautions(ONE_END_LIFTS),
        Rule::new(LARGEST_MASS_MEAN, (HOLDING_PRESSURE, CONTACT_AREA, GRAVITY, SLOPE), pressure::largest_mass)
            .title("The mass whose mean pressure the ground just holds")
            .formula(r"\q{largest-mass-mean} = \dfrac{\q{holding-pressure} \cdot \q{contact-area}}{\q{gravity} \cdot \cos \q{slope}}")
            .assumes(&["The contact area stays as it is, whatever the mass."])
            .holds("Standing or driving gently; a mean, so look at the worst end as well.")
            .source(BLOCK)
            .cautions(&[Caution {
                when: |values| values.si(WHEEL_CONTACT_AREA) > Some(0.0),
                says: "Tyres change their contact area with the load, so with wheels this is a first guess only.",
            }]),
        Rule::new(LARGEST_MASS, (LARGEST_MASS_MEAN, END_PRESSURE_RATIO), pressure::largest_mass_at_end)
            .title("The mass whose low end the ground just holds")
            .formula(r"\q{largest-mass} = \dfrac{\q{largest-mass-mean}}{\q{end-pressure-ratio}}")
            .assumes(&["The balance stays as it is: what is added goes where the balance point is."])
            .holds(TRACKS_ALONE)
            .source(FOOTING)
            .cautions(ONE_END_LIFTS),
    ]
}

/// On level ground the height of the centre of gravity is not asked for.
fn load_offset(balance: Length, height: Option<Length>, slope: Angle) -> Result<Length, Fault> {
    match height {
        _ if slope == Angle::ZERO => Ok(balance),
        Some(height) => Ok(pressure::load_offset(balance, height, slope)),
        None => Err(Fault::Needs(vec![CG_HEIGHT.any()])),
    }
}

type Known<T> = Option<T>;

fn end_ratio(
    offset: Known<Length>,
    length: Known<Length>,
    tracks: Known<Ratio>,
    wheels: Known<Ratio>,
    skis: Known<Ratio>,
) -> Result<Ratio, Fault> {
    let (offset, length) = tracks_alone(offset, length, tracks, [wheels, skis])?;
    Ok(pressure::end_ratio(offset, length)?)
}

fn lifted_length(
    offset: Known<Length>,
    length: Known<Length>,
    tracks: Known<Ratio>,
    wheels: Known<Ratio>,
    skis: Known<Ratio>,
) -> Result<Length, Fault> {
    let (offset, length) = tracks_alone(offset, length, tracks, [wheels, skis])?;
    Ok(pressure::lifted_length(offset, length)?)
}

fn balance_margin(
    offset: Known<Length>,
    length: Known<Length>,
    tracks: Known<Ratio>,
    wheels: Known<Ratio>,
    skis: Known<Ratio>,
) -> Result<Ratio, Fault> {
    let (offset, length) = tracks_alone(offset, length, tracks, [wheels, skis])?;
    Ok(pressure::balance_margin(offset, length)?)
}

/// The load's offset and the contact length of a machine that stands on tracks and nothing else.
fn tracks_alone(
    offset: Known<Length>,
    length: Known<Length>,
    tracks: Known<Ratio>,
    others: [Known<Ratio>; 2],
) -> Result<(Length, Length), Fault> {
    if others.iter().any(|count| *count > Some(Ratio::ZERO)) {
        return Err(Impossible::NotTracksAlone.into());
    }
    if tracks == Some(Ratio::ZERO) {
        return Err(Impossible::NoContact.into());
    }
    match (offset, length) {
        (Some(offset), Some(length)) => Ok((offset, length)),
        _ => {
            let lacking = [(PRESSURE_OFFSET, offset), (CONTACT_LENGTH, length)];
            let lacking = lacking.iter().filter(|(_, known)| known.is_none());
            Err(Fault::Needs(lacking.map(|(id, _)| id.any()).collect()))
        }
    }
}

/// Whether the load leans out of the middle third, forward (`1.0`) or back (`-1.0`).
fn leans(values: &Values, way: f64) -> bool {
    match (values.si(PRESSURE_OFFSET), values.si(CONTACT_LENGTH)) {
        (Some(offset), Some(length)) => 6.0 * offset * way > length,
        _ => false,
    }
}

fn harder_than_held(values: &Values, id: Id<crate::quantity::Pressure>) -> bool {
    match (values.si(id), values.si(HOLDING_PRESSURE)) {
        (Some(pressure), Some(held)) => pressure > held,
        _ => false,
    }
}
