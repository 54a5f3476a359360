//! Swinging the machine round on the spot.

use crate::physics::turning;
use crate::quantity::catalogue::balance::GAUGE;
use crate::quantity::catalogue::ground::GRIP_COEFFICIENT;
use crate::quantity::catalogue::machine::{GRAVITY, GROUND_FORCE, MASS};
use crate::quantity::catalogue::motion::LARGEST_THRUST;
use crate::quantity::catalogue::running_gear::CONTACT_LENGTH;
use crate::quantity::catalogue::turning::*;
use crate::quantity::{Force, Length, Ratio, Torque};
use crate::rules::{Caution, Fault, Maybe, Origin, Rule};

use super::GRIP_FOR_SIDEWAYS;

const WONG_6: &str =
    "Skid steering, J. Y. Wong, Theory of Ground Vehicles, chapter 6 (from memory)";
const UP_10_7: &str = "OpenStax, University Physics Volume 1, section 10.7";
const STEADY: &[&str] = &[
    "The moment stays the same all the way, and the ground holds no harder in the middle of the swing.",
    "It turns about its centre of gravity.",
];

const POINTS: Caution = Caution {
    when: |values| values.origin(YAW_INERTIA) == Some(Origin::Parts),
    says: "The yaw inertia adds the parts up as points: their own size is left out, so the machine answers a little slower than this.",
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
        Rule::new(YAW_RADIUS, (YAW_INERTIA, MASS), turning::radius_of_gyration)
            .title("How far out the mass sits")
            .formula(r"\q{yaw-radius} = \sqrt{\dfrac{\q{yaw-inertia}}{\q{mass}}}")
            .assumes(&["About the upright axis through the centre of gravity."])
            .holds("Any machine.")
            .source("The definition of the radius of gyration")
            .cautions(&[POINTS, BOX]),
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
            .assumes(&["Each side gives half the thrust, one of them backwards."])
            .holds("Tracks on firm ground; on soft ground it takes more.")
            .source(WONG_6),
        Rule::new(SWING_MOMENT, (TURNING_MOMENT, SKID_MOMENT), turning::swinging_moment)
            .title("What the ground leaves")
            .formula(r"\q{swing-moment} = \q{turning-moment} - \q{skid-moment}")
            .assumes(STEADY)
            .holds("On the spot.")
            .source(WONG_6),
        Rule::new(YAW_ACCELERATION, (SWING_MOMENT, YAW_INERTIA), turning::angular_acceleration)
            .title("Moment over inertia")
            .formula(r"\q{yaw-acceleration} = \dfrac{\q{swing-moment}}{\q{yaw-inertia}}")
            .assumes(STEADY)
            .holds("On the spot; mass moved to the middle quickens it, mass at the ends slows it.")
            .source(UP_10_7)
            .cautions(&[POINTS, BOX]),
        Rule::new(SWING_TIME, (SWING_ANGLE, YAW_ACCELERATION), turning::swing_time)
            .title("Four times the inertia, twice the time")
            .formula(r"\q{swing-time} = \sqrt{\dfrac{2 \, \q{swing-angle}}{\q{yaw-acceleration}}}")
            .assumes(STEADY)
            .holds("From rest; it is still turning at the end.")
            .source("OpenStax, University Physics Volume 1, section 10.2")
            .cautions(&[POINTS, BOX]),
        Rule::new(SWING_STOP_TIME, (SWING_ANGLE, YAW_ACCELERATION), turning::swing_and_stop_time)
            .title("Half the angle to speed up, half to stop")
            .formula(r"\q{swing-stop-time} = 2 \sqrt{\dfrac{\q{swing-angle}}{\q{yaw-acceleration}}}")
            .assumes(STEADY)
            .holds("From rest to rest; what the ground holds helps to stop, so it is done a little sooner.")
            .source("OpenStax, University Physics Volume 1, section 10.2")
            .cautions(&[POINTS, BOX]),
        Rule::new(SWING_MOMENT_NEEDED, (YAW_INERTIA, SWING_ANGLE, SWING_TIME_WANTED), turning::moment_for_swing)
            .title("Half the time takes four times the moment")
            .formula(r"\q{swing-moment-needed} = \dfrac{4 \, \q{yaw-inertia} \cdot \q{swing-angle}}{\q{swing-time-wanted}^2}")
            .assumes(STEADY)
            .holds("From rest to rest; what the ground holds comes on top.")
            .source("OpenStax, University Physics Volume 1, sections 10.2 and 10.7")
            .cautions(&[POINTS, BOX]),
        Rule::new(SWING_RATE, (SWING_ANGLE, YAW_ACCELERATION), turning::rate_after)
            .title("How fast it turns by then")
            .formula(r"\q{swing-rate} = \sqrt{2 \, \q{yaw-acceleration} \cdot \q{swing-angle}}")
            .assumes(STEADY)
            .holds("From rest; the tracks must keep up with it.")
            .source("OpenStax, University Physics Volume 1, section 10.8"),
        Rule::new(SWING_ENERGY, (YAW_INERTIA, SWING_RATE), turning::spin_energy)
            .title("Energy of turning")
            .formula(r"\q{swing-energy} = \frac{1}{2} \, \q{yaw-inertia} \cdot \q{swing-rate}^2")
            .assumes(STEADY)
            .holds("Any turning body.")
            .source("OpenStax, University Physics Volume 1, section 10.4")
            .cautions(&[POINTS, BOX]),
    ]
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
