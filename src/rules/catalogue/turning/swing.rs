//! Swinging the machine round on the spot.

use crate::physics::turning;
use crate::quantity::catalogue::balance::GAUGE;
use crate::quantity::catalogue::ground::{GRIP_COEFFICIENT, ROLLING_COEFFICIENT};
use crate::quantity::catalogue::machine::{GRAVITY, GROUND_FORCE, MASS};
use crate::quantity::catalogue::motion::{LARGEST_THRUST, TOP_SPEED};
use crate::quantity::catalogue::running_gear::{CONTACT_LENGTH, TRACK_WIDTH};
use crate::quantity::catalogue::traction::GRIP_PUSH;
use crate::quantity::catalogue::turning::*;
use crate::quantity::{
    Angle, AngularAcceleration, AngularSpeed, Force, Id, Length, Ratio, Speed, Time, Torque,
};
use crate::rules::{Caution, Fault, Maybe, Origin, Rule, Values};

use super::GRIP_FOR_SIDEWAYS;

const WONG_6: &str =
    "Skid steering, J. Y. Wong, Theory of Ground Vehicles, chapter 6 (from memory)";
const UP_10_7: &str = "OpenStax, University Physics Volume 1, section 10.7";
const STEADY: &[&str] = &[
    "The moment stays the same all the way, and the ground holds no harder in the middle of the swing.",
    "It turns about its centre of gravity.",
];
const KEEP_UP: &[&str] = &[
    STEADY[0],
    STEADY[1],
    "The tracks run no faster than the machine does straight on; that the power may give out before is left out.",
];

const POINTS: Caution = Caution {
    when: |values| values.origin(YAW_INERTIA) == Some(Origin::Parts),
    says: "The yaw inertia adds the parts up as points: their own size is left out, so the machine answers slower than this. Say the mass of the running gear to see how much its size adds.",
};

const MASS_APART: Caution = Caution {
    when: |values| {
        values.origin(YAW_INERTIA) == Some(Origin::Parts)
            && values.origin(MASS) == Some(Origin::Given)
    },
    says: "The mass is set by itself, the yaw inertia is still that of the parts list: if the mass is not the parts' sum, the two do not belong together.",
};

/// Turning on the spot drags the tracks sideways while they push along.
const GRIP_TWICE: Caution = Caution {
    when: |values| exceeds_or_meets(values, LARGEST_THRUST, GRIP_PUSH),
    says: "The grip limits the thrust and is counted twice here, along the tracks and across them, but the ground gives it only once: the moment left lies anywhere from nothing to the whole turning moment, the more the belts spin the less they are held. Time a swing before you rely on it.",
};

/// Both tracks roll while they turn the machine, and what they grip for that is not there to turn it.
const ROLLING_APART: Caution = Caution {
    when: |values| {
        let shares = values.si(ROLLING_COEFFICIENT).zip(values.si(GRIP_COEFFICIENT));
        shares.is_some_and(|(rolling, grip)| rolling > MUCH_OF_THE_GRIP * grip)
    },
    says: "Both tracks also have to roll, and that is left out here. This ground drags at them enough to matter: it takes more push than this to turn, less is left to swing with, and there may be nothing left.",
};

/// The rolling coefficient over the grip coefficient from which on this is said. A tenth of the grip is
/// about as much as the coefficients are in doubt; a choice of ours, no published source.
const MUCH_OF_THE_GRIP: f64 = 0.1;

/// Said where the tracks' own speed ends the speeding up.
const TRACKS_CAP: Caution = Caution {
    when: |values| capped(values, 1.0),
    says: "The tracks reach their top speed on the way, and from there on it turns no faster.",
};
const TRACKS_CAP_HALFWAY: Caution = Caution { when: |values| capped(values, 0.5), ..TRACKS_CAP };
const TOP_UNKNOWN: Caution = Caution {
    when: |values| values.si(TOP_SPEED).is_none() || values.si(GAUGE).is_none(),
    says: "How fast the tracks can run is not known, so it is not counted as a limit.",
};

const BOX: Caution = Caution {
    when: |values| values.origin(YAW_INERTIA) == Some(Origin::Found),
    says: "The yaw inertia is that of an even box; parts with places say how the mass really sits.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(YAW_INERTIA, (MASS, MACHINE_LENGTH, MACHINE_WIDTH), turning::box_inertia)
            .title("As an even box")
            .formula(r"\q{yaw-inertia} = \dfrac{\q{mass} \left( \q{machine-length}^2 + \q{machine-width}^2 \right)}{12}")
            .assumes(&["The mass is spread evenly over length and width; mass at the ends makes it more, mass in the middle less."])
            .holds("A first guess; parts with places replace it.")
            .source("OpenStax, University Physics Volume 1, section 10.5"),
        Rule::new(RUNNING_GEAR_INERTIA, (RUNNING_GEAR_MASS, CONTACT_LENGTH, TRACK_WIDTH), turning::box_inertia)
            .title("Each track as a box about its own middle")
            .formula(r"\q{running-gear-inertia} = \dfrac{\q{running-gear-mass} \left( \q{contact-length}^2 + \q{track-width}^2 \right)}{12}")
            .assumes(&["The mass is spread evenly along the ground contact; drive and idler wheels beyond it make it more."])
            .holds("Tracks that stand in the parts list as one point each, in the middle.")
            .source("OpenStax, University Physics Volume 1, section 10.5"),
        Rule::new(SIZED_YAW_INERTIA, (YAW_INERTIA, RUNNING_GEAR_INERTIA), turning::added)
            .title("Points, and the size of the largest of them")
            .formula(r"\q{sized-yaw-inertia} = \q{yaw-inertia} + \q{running-gear-inertia}")
            .assumes(&["The yaw inertia counts the running gear as points."])
            .holds("A parts list; the size of the other parts is still left out.")
            .source("Parallel-axis theorem, OpenStax, University Physics Volume 1, section 10.5")
            .cautions(&[
                Caution {
                    when: |values| values.origin(YAW_INERTIA) != Some(Origin::Parts),
                    says: "The yaw inertia does not come from a parts list, so the size of the running gear may be in it already.",
                },
                MASS_APART,
            ]),
        Rule::new(YAW_RADIUS, (YAW_INERTIA, MASS), turning::radius_of_gyration)
            .title("How far out the mass sits")
            .formula(r"\q{yaw-radius} = \sqrt{\dfrac{\q{yaw-inertia}}{\q{mass}}}")
            .assumes(&["About the upright axis through the centre of gravity."])
            .holds("Any machine.")
            .source("The definition of the radius of gyration")
            .cautions(&[POINTS, BOX, MASS_APART]),
        Rule::new(TIMED_INERTIA, (MASS, GRAVITY, PIVOT_DISTANCE, SWING_PERIOD), turning::pendulum_inertia)
            .title("A slow swing means mass far out")
            .formula(r"\q{timed-inertia} = \dfrac{\q{mass} \cdot \q{gravity} \cdot \q{pivot-distance} \cdot \q{swing-period}^2}{4 \pi^2} - \q{mass} \cdot \q{pivot-distance}^2")
            .assumes(&["It swings through a few degrees on a hard edge; what it hangs by weighs nothing."])
            .holds("About the axis of the swing: hang it on its side for the yaw inertia. 1 % in the period is several per cent in the answer.")
            .source("J. K. Moore, BicycleParameters; physical pendulum, OpenStax, University Physics Volume 1, section 15.4"),
        Rule::new(TWIST_INERTIA, (KNOWN_INERTIA, KNOWN_PERIOD, TWIST_PERIOD), turning::torsion_inertia)
            .title("A slow twist means mass far out")
            .formula(r"\q{twist-inertia} = \q{known-inertia} \left( \dfrac{\q{twist-period}}{\q{known-period}} \right)^2")
            .assumes(&["The wire twists alike under both, and the machine hangs under its balance point."])
            .holds("About the wire: hung level, for the yaw inertia. 1 % in a period is 2 % in the answer.")
            .source("J. K. Moore, BicycleParameters; OpenStax, University Physics Volume 1, section 15.4")
            .cautions(&[Caution {
                when: super::super::common::always,
                says: "Hang the machine low, from a wire and hooks that carry several times its weight, and keep feet from under it.",
            }]),
        Rule::new(TURNING_MOMENT, (LARGEST_THRUST, GAUGE), turning::swing_moment)
            .title("One side forward, the other back")
            .formula(r"\q{turning-moment} = \dfrac{\q{largest-thrust} \cdot \q{gauge}}{2}")
            .assumes(&["Each side gives half the thrust, one of them backwards."])
            .holds("Tracks or wheels driven on both sides.")
            .source(WONG_6),
        Rule::new(
            SKID_MOMENT,
            (GROUND_FORCE, CONTACT_LENGTH, Maybe(SIDEWAYS_COEFFICIENT), Maybe(GRIP_COEFFICIENT)),
            skid_moment,
        )
        .title("A long contact is hard to turn")
        .formula(r"\q{skid-moment} = \dfrac{\q{sideways-coefficient} \cdot \q{ground-force} \cdot \q{contact-length}}{4}")
        .assumes(&["The load presses evenly along the tracks.", "Slow turning; the earth that soft ground pushes up at the sides is left out."])
        .holds("Tracks on firm ground; on soft ground it takes more.")
        .source(WONG_6)
        .cautions(&[GRIP_FOR_SIDEWAYS]),
        Rule::new(SKID_THRUST, (SKID_MOMENT, GAUGE), turning::skid_thrust)
            .title("What both sides must push")
            .formula(r"\q{skid-thrust} = \dfrac{2 \, \q{skid-moment}}{\q{gauge}}")
            .assumes(&["Each side gives half the thrust, one of them backwards; what it takes to roll is left out."])
            .holds("Tracks on firm ground; on soft ground it takes more.")
            .source(WONG_6)
            .cautions(&[ROLLING_APART]),
        Rule::new(SWING_MOMENT, (TURNING_MOMENT, SKID_MOMENT), turning::swinging_moment)
            .title("What the ground leaves")
            .formula(r"\q{swing-moment} = \q{turning-moment} - \q{skid-moment}")
            .assumes(STEADY)
            .holds("On the spot, where the tracks roll easily.")
            .source(WONG_6)
            .cautions(&[GRIP_TWICE, ROLLING_APART]),
        Rule::new(YAW_ACCELERATION, (SWING_MOMENT, YAW_INERTIA), turning::angular_acceleration)
            .title("Moment over inertia")
            .formula(r"\q{yaw-acceleration} = \dfrac{\q{swing-moment}}{\q{yaw-inertia}}")
            .assumes(STEADY)
            .holds("On the spot; mass moved to the middle quickens it, mass at the ends slows it.")
            .source(UP_10_7)
            .cautions(&[POINTS, BOX, MASS_APART, GRIP_TWICE, ROLLING_APART]),
        Rule::new(SWING_TIME, (SWING_ANGLE, YAW_ACCELERATION, Maybe(TOP_SPEED), Maybe(GAUGE)), swing_time)
            .title("Four times the inertia, twice the time")
            .formula(r"\q{swing-time} = \begin{cases} \sqrt{\dfrac{2 \, \q{swing-angle}}{\q{yaw-acceleration}}} & \text{while the tracks keep up} \\ \dfrac{\q{swing-angle}}{\omega} + \dfrac{\omega}{2 \, \q{yaw-acceleration}}, \; \omega = \dfrac{2 \, \q{top-speed}}{\q{gauge}} & \text{else} \end{cases}")
            .assumes(KEEP_UP)
            .holds("From rest; it is still turning at the end.")
            .source("OpenStax, University Physics Volume 1, section 10.2")
            .cautions(&[POINTS, BOX, MASS_APART, GRIP_TWICE, ROLLING_APART, TRACKS_CAP, TOP_UNKNOWN]),
        Rule::new(SWING_STOP_TIME, (SWING_ANGLE, YAW_ACCELERATION, Maybe(TOP_SPEED), Maybe(GAUGE)), swing_stop_time)
            .title("Half the angle to speed up, half to stop")
            .formula(r"\q{swing-stop-time} = \begin{cases} 2 \sqrt{\dfrac{\q{swing-angle}}{\q{yaw-acceleration}}} & \text{while the tracks keep up} \\ \dfrac{\q{swing-angle}}{\omega} + \dfrac{\omega}{\q{yaw-acceleration}}, \; \omega = \dfrac{2 \, \q{top-speed}}{\q{gauge}} & \text{else} \end{cases}")
            .assumes(KEEP_UP)
            .holds("From rest to rest; what the ground holds helps to stop, so it is done a little sooner.")
            .source("OpenStax, University Physics Volume 1, section 10.2")
            .cautions(&[POINTS, BOX, MASS_APART, GRIP_TWICE, ROLLING_APART, TRACKS_CAP_HALFWAY, TOP_UNKNOWN]),
        Rule::new(SWING_MOMENT_NEEDED, (YAW_INERTIA, SWING_ANGLE, SWING_TIME_WANTED), turning::moment_for_swing)
            .title("Half the time takes four times the moment")
            .formula(r"\q{swing-moment-needed} = \dfrac{4 \, \q{yaw-inertia} \cdot \q{swing-angle}}{\q{swing-time-wanted}^2}")
            .assumes(STEADY)
            .holds("From rest to rest; what the ground holds comes on top.")
            .source("OpenStax, University Physics Volume 1, sections 10.2 and 10.7")
            .cautions(&[POINTS, BOX]),
        Rule::new(SWING_RATE, (SWING_ANGLE, YAW_ACCELERATION, Maybe(TOP_SPEED), Maybe(GAUGE)), swing_rate)
            .title("How fast it turns by then")
            .formula(r"\q{swing-rate} = \min \left( \sqrt{2 \, \q{yaw-acceleration} \cdot \q{swing-angle}}, \; \dfrac{2 \, \q{top-speed}}{\q{gauge}} \right)")
            .assumes(KEEP_UP)
            .holds("From rest; the tracks must keep up with it.")
            .source("OpenStax, University Physics Volume 1, section 10.8")
            .cautions(&[TRACKS_CAP, TOP_UNKNOWN]),
        Rule::new(SWING_ENERGY, (YAW_INERTIA, SWING_RATE), turning::spin_energy)
            .title("Energy of turning")
            .formula(r"\q{swing-energy} = \frac{1}{2} \, \q{yaw-inertia} \cdot \q{swing-rate}^2")
            .assumes(STEADY)
            .holds("Any turning body.")
            .source("OpenStax, University Physics Volume 1, section 10.4")
            .cautions(&[POINTS, BOX]),
    ]
}

/// The fastest the tracks can turn it, where both numbers are known.
fn fastest(top_speed: Option<Speed>, gauge: Option<Length>) -> Option<AngularSpeed> {
    Some(turning::fastest_turn(top_speed?, gauge?))
}

fn swing_time(
    angle: Angle,
    acceleration: AngularAcceleration,
    top_speed: Option<Speed>,
    gauge: Option<Length>,
) -> Time {
    turning::swing_time(angle, acceleration, fastest(top_speed, gauge))
}

fn swing_stop_time(
    angle: Angle,
    acceleration: AngularAcceleration,
    top_speed: Option<Speed>,
    gauge: Option<Length>,
) -> Time {
    turning::swing_and_stop_time(angle, acceleration, fastest(top_speed, gauge))
}

fn swing_rate(
    angle: Angle,
    acceleration: AngularAcceleration,
    top_speed: Option<Speed>,
    gauge: Option<Length>,
) -> AngularSpeed {
    turning::rate_after(angle, acceleration, fastest(top_speed, gauge))
}

/// Whether the tracks reach their top speed before a share of the angle is swung.
fn capped(values: &Values, share: f64) -> bool {
    let fastest = fastest(values.get(TOP_SPEED), values.get(GAUGE));
    let free = values.get(SWING_ANGLE).zip(values.get(YAW_ACCELERATION));
    fastest.zip(free).is_some_and(|(fastest, (angle, acceleration))| {
        turning::rate_after(angle * share, acceleration, None) > fastest
    })
}

/// Whether the first, both known, is all of the second or more.
fn exceeds_or_meets(values: &Values, what: Id<Force>, limit: Id<Force>) -> bool {
    values.si(what).zip(values.si(limit)).is_some_and(|(what, limit)| what >= limit)
}

fn skid_moment(
    ground_force: Force,
    length: Length,
    side: Option<Ratio>,
    grip: Option<Ratio>,
) -> Result<Torque, Fault> {
    let side = side.or(grip).ok_or_else(|| {
        Fault::NeedsOneOf(vec![SIDEWAYS_COEFFICIENT.any(), GRIP_COEFFICIENT.any()])
    })?;
    Ok(turning::skid_moment(side, ground_force, length))
}
