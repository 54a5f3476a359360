//! Spinning parts in the machine.

use crate::physics::turning;
use crate::quantity::catalogue::turning::*;
use crate::rules::{Caution, Rule};

const CP_6: &str = "OpenStax, College Physics 2e, sections 6.1 and 6.2";
const WHOLE: &[&str] = &["A rigid part that runs true."];

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
        Rule::new(SPIN_INERTIA, (SPIN_MASS, SPIN_RADIUS), turning::solid_inertia)
            .title("As a solid disc")
            .formula(r"\q{spin-inertia} = \frac{1}{2} \, \q{spin-mass} \cdot \q{spin-radius}^2")
            .assumes(&[
                "The mass is spread evenly; a ring with its mass at the rim has twice that.",
            ])
            .holds("Discs, rotors and solid wheels.")
            .source("OpenStax, University Physics Volume 1, section 10.5"),
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
