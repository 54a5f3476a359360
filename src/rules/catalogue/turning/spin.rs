//! Spinning parts in the machine.

use super::super::common::always;
use crate::physics::heat::brake;
use crate::physics::turning;
use crate::quantity::catalogue::structure::MATERIAL_DENSITY;
use crate::quantity::catalogue::turning::*;
use crate::rules::{Caution, Origin, Rule};

const CP_6: &str = "OpenStax, College Physics 2e, sections 6.1 and 6.2";
const WHOLE: &[&str] = &["A rigid part that runs true."];

const COUPLED: &[&str] =
    &["Nothing else turns or holds them while they come together.", "Both end up turning alike."];

const BURST: Caution = Caution {
    when: |values| {
        values
            .si(SPIN_RATE)
            .zip(values.si(SPIN_RADIUS))
            .is_some_and(|(rate, radius)| rate * radius > 30.0)
    },
    says: "A part that fast can burst: keep out of its plane, guard it, and stay below the maker's speed limit.",
};

pub(super) fn rules() -> Vec<Rule> {
    vec![
        Rule::new(
            SPIN_INERTIA,
            (SPIN_SHAPE, SPIN_MASS, SPIN_RADIUS, ADDED_MASS, ADDED_DISTANCE, ADDED_INERTIA),
            turning::spinning_inertia,
        )
        .title("By its shape, and what is fixed to it")
        .formula(r"\q{spin-inertia} = \q{spin-shape} \cdot \q{spin-mass} \cdot \q{spin-radius}^2 + \q{added-inertia} + \q{added-mass} \cdot \q{added-distance}^2")
        .assumes(&["The mass is spread evenly over that shape."])
        .holds("Discs, rings, balls, rods and solid wheels on their axles, with one mass beside.")
        .source("OpenStax, University Physics Volume 1, sections 10.4 and 10.5")
        .cautions(&[Caution {
            when: |values| values.origin(SPIN_SHAPE) == Some(Origin::Assumed),
            says: "Taken as a solid disc; a ring with its mass at the rim has twice that.",
        }]),
        Rule::new(RIM_SPEED, (SPIN_RATE, SPIN_RADIUS), turning::rim_speed)
            .title("Rate times radius")
            .formula(r"\q{rim-speed} = \q{spin-rate} \cdot \q{spin-radius}")
            .assumes(WHOLE)
            .holds("Any spinning part.")
            .source(CP_6)
            .cautions(&[BURST]),
        Rule::new(RIM_ACCELERATION, (SPIN_RATE, SPIN_RADIUS), turning::rim_acceleration)
            .title("Rate squared times radius")
            .formula(r"\q{rim-acceleration} = \q{spin-rate}^2 \cdot \q{spin-radius}")
            .assumes(WHOLE)
            .holds("Any spinning part.")
            .source(CP_6)
            .cautions(&[BURST]),
        Rule::new(SPIN_ENERGY, (SPIN_INERTIA, SPIN_RATE), turning::spin_energy)
            .title("Energy in the spin")
            .formula(r"\q{spin-energy} = \frac{1}{2} \, \q{spin-inertia} \cdot \q{spin-rate}^2")
            .assumes(WHOLE)
            .holds("Any spinning part.")
            .source("OpenStax, University Physics Volume 1, section 10.4")
            .cautions(&[BURST]),
        Rule::new(RIM_STRESS, (MATERIAL_DENSITY, RIM_SPEED), turning::rim_stress)
            .title("A rim pulls itself apart with the square of its speed")
            .formula(r"\q{rim-stress} = \q{material-density} \cdot \q{rim-speed}^2")
            .assumes(&["A thin rim alone: spokes, holes, teeth and joints make it more."])
            .holds("Thin rims; a solid disc has somewhat less at its edge and a hole nearly doubles it.")
            .source("Machinery's Handbook, flywheels (from memory)")
            .cautions(&[BURST]),
        Rule::new(SPIN_UP_TORQUE, (SPIN_INERTIA, SPIN_RATE, SPIN_UP_TIME), turning::torque_for)
            .title("Inertia times the spin gained each second")
            .formula(r"\q{spin-up-torque} = \dfrac{\q{spin-inertia} \cdot \q{spin-rate}}{\q{spin-up-time}}")
            .assumes(&["A steady moment; friction of bearings and air helps to stop and hinders to start."])
            .holds("From rest to the spin, or from it to rest.")
            .source("OpenStax, University Physics Volume 1, section 10.7"),
        Rule::new(SPIN_RATE_NEEDED, (SPIN_ENERGY_WANTED, SPIN_INERTIA), turning::turns_rate)
            .title("The spin that holds the energy")
            .formula(r"\q{spin-rate-needed} = \sqrt{\dfrac{2 \, \q{spin-energy-wanted}}{\q{spin-inertia}}}")
            .assumes(WHOLE)
            .holds("A flywheel braked to rest; taken down to half its spin it gives three quarters.")
            .source("OpenStax, University Physics Volume 1, section 10.4")
            .cautions(&[Caution {
                when: always,
                says: "A flywheel gives all of it off at once if it bursts: guard it, balance it, and stay below the maker's speed limit.",
            }]),
        Rule::new(
            SHARED_RATE,
            (SPIN_INERTIA, SPIN_RATE, COUPLED_INERTIA, COUPLED_RATE),
            turning::shared_rate,
        )
        .title("What both keep of their spin")
        .formula(r"\q{shared-rate} = \dfrac{\q{spin-inertia} \cdot \q{spin-rate} + \q{coupled-inertia} \cdot \q{coupled-rate}}{\q{spin-inertia} + \q{coupled-inertia}}")
        .assumes(COUPLED)
        .holds("Clutches, jams and blows that are over before motor or ground do much.")
        .source("OpenStax, University Physics Volume 1, section 11.3"),
        Rule::new(
            COUPLING_HEAT,
            (SPIN_INERTIA, COUPLED_INERTIA, SPIN_RATE, COUPLED_RATE),
            brake::clutch_heat,
        )
        .title("The energy that is gone")
        .formula(r"\q{coupling-heat} = \dfrac{1}{2} \, \dfrac{\q{spin-inertia} \cdot \q{coupled-inertia}}{\q{spin-inertia} + \q{coupled-inertia}} \left( \q{spin-rate} - \q{coupled-rate} \right)^2")
        .assumes(COUPLED)
        .holds("One coupling.")
        .source("J. E. Shigley, Mechanical Engineering Design, clutches and brakes (from memory)")
        .cautions(&[Caution {
            when: always,
            says: "A clutch gets hot enough to burn: let it cool before a hand comes near.",
        }]),
        Rule::new(GYRO_TORQUE, (SPIN_INERTIA, SPIN_RATE, TURNING_RATE), turning::tilting_torque)
            .title("A spinning part resists being turned")
            .formula(
                r"\q{gyro-torque} = \q{spin-inertia} \cdot \q{spin-rate} \cdot \q{turning-rate}",
            )
            .assumes(&["Its axle lies level, so that turning the machine turns the axle."])
            .holds("Turning much slower than the spin.")
            .source("OpenStax, University Physics Volume 1, section 11.4"),
    ]
}
