//! How the load divides, and what scales say of it.

use super::super::common::below;
use uom::ConstZero;

use crate::physics::{Impossible, balance, motion};
use crate::quantity::catalogue::balance::*;
use crate::quantity::catalogue::machine::*;
use crate::quantity::catalogue::motion::WANTED_ACCELERATION;
use crate::quantity::catalogue::running_gear::{CONTACT_LENGTH, SKI_COUNT, TRACK_COUNT};
use crate::quantity::{Angle, Force, Id, Length, Mass, Ratio};
use crate::rules::{Caution, Fault, Maybe, Origin, Rule, Values};

const MOMENTS: &str = "Balance of moments, OpenStax, University Physics Volume 1, section 12.1";
const GILLESPIE_1: &str =
    "T. D. Gillespie, Fundamentals of Vehicle Dynamics, chapter 1 (from memory)";
const RIGID: &[&str] =
    &["A rigid machine; springs and soft tyres move the balance point a little."];
const FRAME: &[&str] = &["Places are counted forward from the middle of the ground contact."];
const SCALES: &str = "Penn State mechanical engineering, Notes 07_04 Vehicle Inertial Measurements (scales method; cites ISO 10392 and ISO 789-6)";

/// The load on an end is below zero: it tips over as it stands.
const TIPS: &str =
    "The other end carries more than the whole weight: the machine tips over as it stands.";

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(SUPPORT_LENGTH, (Maybe(WHEELBASE), Maybe(CONTACT_LENGTH)), support)
            .title("Between the axles, or along the track's flat")
            .formula(r"\q{support-length} = \q{wheelbase} \; \text{(unsaid: } \q{contact-length} \text{)}")
            .assumes(&["A track carries as far as its flat reaches; skis out in front belong to a wheelbase."])
            .holds("Any machine with a front and a rear support.")
            .source("The frame of the build sheet"),
        Rule::new(SUPPORT_MIDDLE, (Maybe(WHEELBASE_MIDDLE), Maybe(WHEELBASE), Maybe(TRACK_COUNT), Maybe(SKI_COUNT)), middle)
            .title("Where the middle of the support lies")
            .formula(r"\q{support-middle} = \q{wheelbase-middle} \; \text{(unsaid: } \frac{1}{2} \q{wheelbase} \text{ with skis in front of a track, else 0)}")
            .assumes(FRAME)
            .holds("Any machine with a front and a rear support; without a wheelbase the tracks’ flat itself is the support.")
            .source("The frame of the build sheet")
            .cautions(&[Caution {
                when: middle_assumed,
                says: "The middle of the wheelbase is taken to be over the middle of the tracks’ ground contact: say how far ahead of it it is if not.",
            }]),
        Rule::new(REAR_ARM, (SUPPORT_LENGTH, BALANCE_OFFSET, SUPPORT_MIDDLE), balance::rear_arm)
            .title("From the rear support to the balance point")
            .formula(r"\q{rear-arm} = \frac{1}{2} \q{support-length} + \q{balance-offset} - \q{support-middle}")
            .assumes(FRAME)
            .holds("Any machine with a front and a rear support.")
            .source(MOMENTS)
            .cautions(&[Caution {
                when: over_the_track,
                says: "The balance point is taken to be over the track's middle, where the skis carry nothing: say how far ahead of it it is.",
            }]),
        Rule::new(FRONT_ARM, (SUPPORT_LENGTH, BALANCE_OFFSET, SUPPORT_MIDDLE), balance::front_arm)
            .title("From the balance point to the front support")
            .formula(r"\q{front-arm} = \frac{1}{2} \q{support-length} - \q{balance-offset} + \q{support-middle}")
            .assumes(FRAME)
            .holds("Any machine with a front and a rear support.")
            .source(MOMENTS),
        Rule::new(FRONT_LOAD, (WEIGHT, REAR_ARM, Maybe(CG_HEIGHT), SLOPE, SUPPORT_LENGTH), front_load)
            .title("The front carries by the arm behind")
            .formula(r"\q{front-load} = \q{weight} \, \dfrac{\q{rear-arm} \cdot \cos \q{slope} - \q{cg-height} \cdot \sin \q{slope}}{\q{support-length}}")
            .assumes(RIGID)
            .holds("Standing, or driving steadily and slowly.")
            .source(MOMENTS)
            .cautions(&[Caution { when: |values| lifts(values, REAR_ARM, 1.0), says: TIPS }]),
        Rule::new(REAR_LOAD, (WEIGHT, FRONT_ARM, Maybe(CG_HEIGHT), SLOPE, SUPPORT_LENGTH), rear_load)
            .title("The rear carries by the arm in front")
            .formula(r"\q{rear-load} = \q{weight} \, \dfrac{\q{front-arm} \cdot \cos \q{slope} + \q{cg-height} \cdot \sin \q{slope}}{\q{support-length}}")
            .assumes(RIGID)
            .holds("Standing, or driving steadily and slowly.")
            .source(MOMENTS)
            .cautions(&[Caution { when: |values| lifts(values, FRONT_ARM, -1.0), says: TIPS }]),
        Rule::new(FRONT_SHARE, (FRONT_LOAD, REAR_LOAD), balance::load_share)
            .title("Front over both")
            .formula(r"\q{front-share} = \dfrac{\q{front-load}}{\q{front-load} + \q{rear-load}}")
            .assumes(RIGID)
            .holds("Standing, or driving steadily and slowly.")
            .source("The definition"),
        Rule::new(LOAD_SHIFT, (MASS, WANTED_ACCELERATION, CG_HEIGHT, SUPPORT_LENGTH), balance::load_shift)
            .title("Gaining speed leans on the rear")
            .formula(r"\q{load-shift} = \dfrac{\q{mass} \cdot \q{wanted-acceleration} \cdot \q{cg-height}}{\q{support-length}}")
            .assumes(RIGID)
            .holds("A steady gain or loss of speed, straight on.")
            .source(GILLESPIE_1),
        Rule::new(MOVING_FRONT_LOAD, (FRONT_LOAD, LOAD_SHIFT), moving_front)
            .title("What stays on the front")
            .formula(r"\q{moving-front-load} = \q{front-load} - \q{load-shift}")
            .assumes(RIGID)
            .holds("A steady gain or loss of speed, straight on.")
            .source(GILLESPIE_1)
            .cautions(&[Caution {
                when: |values| values.si(FRONT_LOAD).zip(values.si(LOAD_SHIFT)).is_some_and(|(load, shift)| load < shift),
                says: "The front lifts.",
            }]),
        Rule::new(MOVING_REAR_LOAD, (REAR_LOAD, LOAD_SHIFT), balance::moving_load)
            .title("What comes on the rear")
            .formula(r"\q{moving-rear-load} = \q{rear-load} + \q{load-shift}")
            .assumes(RIGID)
            .holds("A steady gain or loss of speed, straight on.")
            .source(GILLESPIE_1)
            .cautions(&[Caution {
                when: |values| values.si(REAR_LOAD).zip(values.si(LOAD_SHIFT)).is_some_and(|(load, shift)| load + shift < 0.0),
                says: "The rear lifts: it goes over its nose.",
            }]),
        Rule::new(SCALE_MASS, (FRONT_SCALE, REAR_SCALE), motion::equivalent_mass)
            .title("Both readings together")
            .formula(r"\q{scale-mass} = \q{front-scale} + \q{rear-scale}")
            .assumes(&["Nothing else carries while the scales are read."])
            .holds("Level, both ends at the same height.")
            .source(MOMENTS),
        Rule::new(SCALE_OFFSET, (FRONT_SCALE, REAR_SCALE, SUPPORT_LENGTH, SUPPORT_MIDDLE), balance::offset_from_scales)
            .title("The heavier end has the balance point")
            .formula(r"\q{scale-offset} = \q{support-middle} + \q{support-length} \left( \dfrac{\q{front-scale}}{\q{front-scale} + \q{rear-scale}} - \frac{1}{2} \right)")
            .assumes(&["The machine stands on the scales at the ends of its length of support: on edges, not along the whole track."])
            .holds("Level, both ends at the same height.")
            .source(MOMENTS),
        Rule::new(SCALE_CG_HEIGHT, (FRONT_SCALE, REAR_SCALE, RAISED_SCALE, SUPPORT_LENGTH, RAISE_ANGLE, AXLE_HEIGHT), scale_height)
            .title("Raise the rear, and the front gains by the height")
            .formula(r"\q{scale-cg-height} = \q{axle-height} + \dfrac{\q{support-length} \left( \q{raised-scale} - \q{front-scale} \right)}{\left( \q{front-scale} + \q{rear-scale} \right) \tan \q{raise-angle}}")
            .assumes(&["The suspension is blocked and the wheels roll free.", "The tilt is about the axles."])
            .holds("A tilt of 15° or more; a small error of the scale moves the answer a lot. Secure the machine against rolling and falling.")
            .source(SCALES)
            .cautions(&[Caution {
                when: |values| below(values, RAISE_ANGLE, 15.0_f64.to_radians()),
                says: "The tilt is less than 15°: a small error of the scale moves this answer a lot.",
            }]),
    ]
}

fn support(wheelbase: Option<Length>, contact: Option<Length>) -> Result<Length, Fault> {
    wheelbase
        .or(contact)
        .ok_or_else(|| Fault::NeedsOneOf(vec![WHEELBASE.any(), CONTACT_LENGTH.any()]))
}

/// Said, or half of a wheelbase that runs from skis to a track's middle; else the middles are one.
fn middle(
    said: Option<Length>,
    wheelbase: Option<Length>,
    tracks: Option<Ratio>,
    skis: Option<Ratio>,
) -> Length {
    let some = |count: Option<Ratio>| count > Some(Ratio::ZERO);
    match (wheelbase, said) {
        (Some(_), Some(said)) => said,
        (Some(wheelbase), None) if some(tracks) && some(skis) => {
            balance::ski_support_middle(wheelbase)
        }
        _ => Length::ZERO,
    }
}

/// Whether a tracked machine has a wheelbase of which it is not said where its middle is.
fn middle_assumed(values: &Values) -> bool {
    let some = |id: Id<Ratio>| values.si(id) > Some(0.0);
    values.si(WHEELBASE).is_some()
        && values.si(WHEELBASE_MIDDLE).is_none()
        && some(TRACK_COUNT)
        && !some(SKI_COUNT)
}

/// Whether the balance point of a machine with skis in front of a track is not said.
fn over_the_track(values: &Values) -> bool {
    values.origin(BALANCE_OFFSET) == Some(Origin::Assumed)
        && values.si(SUPPORT_MIDDLE) > Some(0.0)
        && values.si(SKI_COUNT) > Some(0.0)
}

/// On level ground the height is not asked for.
fn height(height: Option<Length>, slope: Angle) -> Result<Length, Fault> {
    match height {
        _ if slope == Angle::ZERO => Ok(Length::ZERO),
        Some(height) => Ok(height),
        None => Err(Fault::Needs(vec![CG_HEIGHT.any()])),
    }
}

fn front_load(
    weight: Force,
    arm: Length,
    cg_height: Option<Length>,
    slope: Angle,
    support: Length,
) -> Result<Force, Fault> {
    Ok(balance::end_load(weight, arm, height(cg_height, slope)?, slope, support))
}

fn rear_load(
    weight: Force,
    arm: Length,
    cg_height: Option<Length>,
    slope: Angle,
    support: Length,
) -> Result<Force, Fault> {
    front_load(weight, arm, cg_height, -slope, support)
}

fn moving_front(standing: Force, shifted: Force) -> Force {
    balance::moving_load(standing, -shifted)
}

fn scale_height(
    front: Mass,
    rear: Mass,
    raised: Mass,
    support: Length,
    tilt: Angle,
    axle_height: Length,
) -> Result<Length, Impossible> {
    balance::height_from_scales((front, raised), front + rear, support, tilt, axle_height)
}

/// Whether the end opposite to this arm carries less than nothing; `way` is 1 for the front.
fn lifts(values: &Values, arm: Id<Length>, way: f64) -> bool {
    match (values.si(arm), values.si(SLOPE)) {
        (Some(arm), Some(slope)) => {
            let height = values.si(CG_HEIGHT).unwrap_or(0.0);
            arm * slope.cos() < way * height * slope.sin()
        }
        _ => false,
    }
}
