//! Two bodies that meet along one line.

use crate::physics::impact;
use crate::quantity::catalogue::impact::*;
use crate::quantity::catalogue::machine::MASS;
use crate::rules::{Caution, Origin, Rule};

const UP_9: &str = "OpenStax, University Physics Volume 1, sections 9.3 and 9.4";
const CP_8: &str = "OpenStax, College Physics 2e, sections 8.4 and 8.5";
const ONE_LINE: &[&str] = &[
    "Both move along one line and meet middle to middle, so neither starts to spin.",
    "Ground and motor push little while the collision lasts.",
];
const STRAIGHT: &str = "Straight collisions of two free bodies.";

const PARTING: Caution = Caution {
    when: |values| {
        let speeds = values.si(OTHER_SPEED).zip(values.si(IMPACT_SPEED));
        speeds.is_some_and(|(other, impact)| other >= impact)
    },
    says: "The two do not close in on each other, so there is no collision.",
};

const BOUNCE_ASSUMED: Caution = Caution {
    when: |values| values.origin(RESTITUTION) == Some(Origin::Assumed),
    says: "The bounce is assumed: none, so both go on together.",
};

pub(super) fn rules() -> Vec<Rule> {
    let straight = |rule: Rule| rule.assumes(ONE_LINE).holds(STRAIGHT);
    vec![
        straight(Rule::new(CLOSING_SPEED, (IMPACT_SPEED, OTHER_SPEED), impact::closing_speed))
            .title("How fast they close in")
            .formula(r"\q{closing-speed} = \q{impact-speed} - \q{other-speed}")
            .source(UP_9)
            .cautions(&[PARTING]),
        straight(Rule::new(COMMON_SPEED, (MASS, IMPACT_SPEED, OTHER_MASS, OTHER_SPEED), impact::common_speed))
            .title("Momentum is shared by both masses")
            .formula(r"\q{common-speed} = \dfrac{\q{mass} \cdot \q{impact-speed} + \q{other-mass} \cdot \q{other-speed}}{\q{mass} + \q{other-mass}}")
            .source(CP_8),
        straight(Rule::new(EXCHANGED_IMPULSE, (MASS, OTHER_MASS, CLOSING_SPEED, RESTITUTION), impact::exchanged_impulse))
            .title("Each gets the same impulse, the other way round")
            .formula(r"\q{exchanged-impulse} = (1 + \q{restitution}) \, \q{closing-speed} \, \dfrac{\q{mass} \cdot \q{other-mass}}{\q{mass} + \q{other-mass}}")
            .source(CP_8)
            .cautions(&[PARTING, BOUNCE_ASSUMED]),
        straight(Rule::new(SPEED_AFTER, (MASS, IMPACT_SPEED, EXCHANGED_IMPULSE), impact::speed_held_back))
            .title("The impulse holds the machine back")
            .formula(r"\q{speed-after} = \q{impact-speed} - \dfrac{\q{exchanged-impulse}}{\q{mass}}")
            .source(UP_9)
            .cautions(&[PARTING, BOUNCE_ASSUMED]),
        straight(Rule::new(OTHER_SPEED_AFTER, (OTHER_MASS, OTHER_SPEED, EXCHANGED_IMPULSE), impact::speed_pushed_on))
            .title("The impulse pushes the other on")
            .formula(r"\q{other-speed-after} = \q{other-speed} + \dfrac{\q{exchanged-impulse}}{\q{other-mass}}")
            .source(UP_9)
            .cautions(&[PARTING, BOUNCE_ASSUMED]),
        straight(Rule::new(
            COLLISION_ENERGY_LOST,
            (EXCHANGED_IMPULSE, CLOSING_SPEED, SPEED_AFTER, OTHER_SPEED_AFTER),
            impact::energy_lost,
        ))
            .title("What bending, heat and noise take")
            .formula(r"\q{collision-energy-lost} = \frac{1}{2} \, \q{exchanged-impulse} \left( \q{closing-speed} - (\q{other-speed-after} - \q{speed-after}) \right)")
            .source(CP_8)
            .cautions(&[PARTING, BOUNCE_ASSUMED]),
    ]
}
