//! Bolted joints: clamp, slip, shear.

use super::super::common::exceeds;
use crate::physics::{impact, structure};
use crate::quantity::catalogue::structure::*;
use crate::rules::{Caution, Origin, Rule};

const ISO: &str = "ISO 898-1, nominal stress area and loads by class";
const SHIGLEY: &str = "Shigley, Mechanical Engineering Design, nut factor (from memory)";
const EUROCODE: &str =
    "EN 1993-1-8, table 3.4 and section 3.9 (factors read, form of the slip sum from memory)";
const MARGIN: &str = "The definition of a margin; common practice, no published source";
const THREAD: &[&str] =
    &["A metric thread of full engagement, nut and hole as strong as the bolt."];
const TORQUE: &[&str] = &[
    "Most of the torque goes into friction, so the clamp strays about 30 % either way.",
    "A plain nut on a plain face, tightened once.",
];
const SHARED: &[&str] = &["Every bolt and every face takes an even share."];

const MAKERS: Caution = Caution {
    when: |_| true,
    says: "The maker's torque table comes first; oil on the thread raises the clamp by a third, and plastic creeps under a head unless a metal sleeve takes the clamp.",
};
const NUT_ASSUMED: Caution = Caution {
    when: |values| values.origin(NUT_FACTOR) == Some(Origin::Assumed),
    says: "The nut factor is assumed: 0.20, dry and plain.",
};
const GRIP_ASSUMED: Caution = Caution {
    when: |values| values.origin(JOINT_FRICTION) == Some(Origin::Assumed),
    says: "The friction in the joint is assumed: 0.15, dry smooth metal (from memory).",
};
const SHEAR_ASSUMED: Caution = Caution {
    when: |values| values.origin(SHEAR_FACTOR) == Some(Origin::Assumed),
    says: "Shear over tension is assumed: 0.6, for classes 4.6 to 8.8. Classes 10.9 and 12.9 take 0.5.",
};
const OVERSTRETCHED: Caution = Caution {
    when: |values| exceeds(values, HIGHEST_CLAMP, PROOF_LOAD),
    says: "At the high end of its scatter this torque stretches the bolt for good.",
};

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = threads();
    rules.extend(clamp());
    rules.extend(joint());
    rules
}

fn threads() -> Vec<Rule> {
    vec![
        Rule::new(THREAD_STRESS_AREA, (BOLT_DIAMETER, THREAD_PITCH), structure::thread_stress_area)
            .title("The area between core and pitch circle")
            .formula(r"\q{thread-stress-area} = \dfrac{\pi}{4} \left( \q{bolt-diameter} - 0.9382 \, \q{thread-pitch} \right)^2")
            .assumes(THREAD)
            .holds("Metric threads.")
            .source(ISO),
        Rule::new(PROOF_LOAD, (THREAD_STRESS_AREA, PROOF_STRESS), structure::bolt_load)
            .title("Stress area times proof stress")
            .formula(r"\q{proof-load} = \q{thread-stress-area} \cdot \q{proof-stress}")
            .assumes(THREAD)
            .holds("Steel bolts with a class mark on the head.")
            .source(ISO),
        Rule::new(TENSILE_LOAD, (THREAD_STRESS_AREA, BOLT_STRENGTH), structure::bolt_load)
            .title("Stress area times breaking stress")
            .formula(r"\q{tensile-load} = \q{thread-stress-area} \cdot \q{bolt-strength}")
            .assumes(THREAD)
            .holds("Steel bolts with a class mark on the head; one steady pull.")
            .source(ISO),
        Rule::new(BOLT_SHEAR_LOAD, (SHEAR_FACTOR, THREAD_STRESS_AREA, BOLT_STRENGTH, PARTIAL_FACTOR), structure::bolt_shear_load)
            .title("Shear is a part of the strength in tension")
            .formula(r"\q{bolt-shear-load} = \dfrac{\q{shear-factor} \cdot \q{thread-stress-area} \cdot \q{bolt-strength}}{\q{partial-factor}}")
            .assumes(&["The threads are in the plane of shear, and the plates are thick enough not to tear."])
            .holds("Steel bolts; the building code takes 800 and 1000 MPa for 8.8 and 10.9.")
            .source(EUROCODE)
            .cautions(&[SHEAR_ASSUMED]),
    ]
}

fn clamp() -> Vec<Rule> {
    vec![
        Rule::new(TARGET_CLAMP, (PRELOAD_SHARE, PROOF_LOAD), structure::target_clamp)
            .title("A share of the proof load")
            .formula(r"\q{target-clamp} = \q{preload-share} \cdot \q{proof-load}")
            .assumes(&["The parts clamped bear it: metal, or a metal sleeve through plastic."])
            .holds("Joints that are undone again; for good ones up to 0.9.")
            .source("Shigley, Mechanical Engineering Design, chapter 8 (from memory)"),
        Rule::new(TIGHTENING_TORQUE, (NUT_FACTOR, TARGET_CLAMP, BOLT_DIAMETER), structure::tightening_torque)
            .title("Nut factor times clamp times diameter")
            .formula(r"\q{tightening-torque} = \q{nut-factor} \cdot \q{target-clamp} \cdot \q{bolt-diameter}")
            .assumes(TORQUE)
            .holds("A first figure for plain steel bolts.")
            .source(SHIGLEY)
            .cautions(&[MAKERS, NUT_ASSUMED]),
        Rule::new(BOLT_CLAMP, (BOLT_TORQUE, NUT_FACTOR, BOLT_DIAMETER), structure::clamp_from_torque)
            .title("What a torque gives")
            .formula(r"\q{bolt-clamp} = \dfrac{\q{bolt-torque}}{\q{nut-factor} \cdot \q{bolt-diameter}}")
            .assumes(TORQUE)
            .holds("A first figure for plain steel bolts; a mean, not the least.")
            .source(SHIGLEY)
            .cautions(&[MAKERS, NUT_ASSUMED]),
        Rule::new(LEAST_CLAMP, (BOLT_CLAMP, CLAMP_SCATTER), structure::least_clamp)
            .title("The low end of the scatter")
            .formula(r"\q{least-clamp} = \q{bolt-clamp} \cdot (1 - \q{clamp-scatter})")
            .assumes(TORQUE)
            .holds("New joints; faces bed in and lose a few per cent more.")
            .source(SHIGLEY),
        Rule::new(HIGHEST_CLAMP, (BOLT_CLAMP, CLAMP_SCATTER), structure::highest_clamp)
            .title("The high end of the scatter")
            .formula(r"\q{highest-clamp} = \q{bolt-clamp} \cdot (1 + \q{clamp-scatter})")
            .assumes(TORQUE)
            .holds("Torque by hand; an angle or a stretch gauge does better.")
            .source(SHIGLEY),
        Rule::new(CLAMP_MARGIN, (PROOF_LOAD, HIGHEST_CLAMP), impact::force_ratio)
            .title("Proof load over the highest clamp")
            .formula(r"\q{clamp-margin} = \dfrac{\q{proof-load}}{\q{highest-clamp}}")
            .assumes(&["Nothing but the clamp pulls on the bolt."])
            .holds("While it is being tightened and after.")
            .source(MARGIN)
            .cautions(&[MAKERS, OVERSTRETCHED]),
    ]
}

fn joint() -> Vec<Rule> {
    let slip = |rule: Rule| {
        rule.assumes(SHARED).source(EUROCODE).holds(
            "Clean faces pressed together by the bolts alone; plastic creeps and loses clamp.",
        )
    };
    vec![
        slip(Rule::new(SLIP_LOAD, (BOLT_COUNT, JOINT_FACES, JOINT_FRICTION, BOLT_CLAMP), structure::slip_load))
            .title("Friction from the clamp holds the joint")
            .formula(r"\q{slip-load} = \q{bolt-count} \cdot \q{joint-faces} \cdot \q{joint-friction} \cdot \q{bolt-clamp}")
            .cautions(&[GRIP_ASSUMED, MAKERS]),
        slip(Rule::new(LEAST_SLIP_LOAD, (BOLT_COUNT, JOINT_FACES, JOINT_FRICTION, LEAST_CLAMP), structure::slip_load))
            .title("The same with the least clamp")
            .formula(r"\q{least-slip-load} = \q{bolt-count} \cdot \q{joint-faces} \cdot \q{joint-friction} \cdot \q{least-clamp}")
            .cautions(&[GRIP_ASSUMED]),
        Rule::new(JOINT_SHEAR_LOAD, (BOLT_COUNT, JOINT_FACES, BOLT_SHEAR_LOAD), structure::group_load)
            .title("Every bolt in every plane")
            .formula(r"\q{joint-shear-load} = \q{bolt-count} \cdot \q{joint-faces} \cdot \q{bolt-shear-load}")
            .assumes(SHARED)
            .holds("Holes that all fit; after slipping one bolt often bears first.")
            .source(EUROCODE),
        Rule::new(SLIP_MARGIN, (LEAST_SLIP_LOAD, JOINT_LOAD), impact::force_ratio)
            .title("Least slip force over the sideways force")
            .formula(r"\q{slip-margin} = \dfrac{\q{least-slip-load}}{\q{joint-load}}")
            .assumes(SHARED)
            .holds("One jerk; a joint that creeps to and fro works its bolts loose.")
            .source(MARGIN)
            .cautions(&[GRIP_ASSUMED, MAKERS, Caution {
                when: |values| exceeds(values, JOINT_LOAD, LEAST_SLIP_LOAD),
                says: "The joint may slip: more clamp or more grip helps, threadlocker does not.",
            }]),
        Rule::new(SHEAR_MARGIN, (JOINT_SHEAR_LOAD, JOINT_LOAD), impact::force_ratio)
            .title("Shear load over the sideways force")
            .formula(r"\q{shear-margin} = \dfrac{\q{joint-shear-load}}{\q{joint-load}}")
            .assumes(SHARED)
            .holds("After the joint has slipped; the plates may tear before the bolts shear.")
            .source(MARGIN),
    ]
}
