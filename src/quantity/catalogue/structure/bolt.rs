//! Bolted joints.

use crate::quantity::{Area, Entry, Force, Id, Length, Pressure, Ratio, Topic::Structure, Torque};

pub const BOLT_DIAMETER: Id<Length> = Id::new("bolt-diameter");
pub const THREAD_PITCH: Id<Length> = Id::new("thread-pitch");
pub const BOLT_COUNT: Id<Ratio> = Id::new("bolt-count");
pub const JOINT_FACES: Id<Ratio> = Id::new("joint-faces");
pub const PROOF_STRESS: Id<Pressure> = Id::new("proof-stress");
pub const BOLT_STRENGTH: Id<Pressure> = Id::new("bolt-strength");
pub const BOLT_TORQUE: Id<Torque> = Id::new("bolt-torque");
pub const NUT_FACTOR: Id<Ratio> = Id::new("nut-factor");
pub const CLAMP_SCATTER: Id<Ratio> = Id::new("clamp-scatter");
pub const PRELOAD_SHARE: Id<Ratio> = Id::new("preload-share");
pub const JOINT_FRICTION: Id<Ratio> = Id::new("joint-friction");
pub const JOINT_LOAD: Id<Force> = Id::new("joint-load");
pub const SHEAR_FACTOR: Id<Ratio> = Id::new("shear-factor");
pub const PARTIAL_FACTOR: Id<Ratio> = Id::new("partial-factor");
pub const THREAD_STRESS_AREA: Id<Area> = Id::new("thread-stress-area");
pub const PROOF_LOAD: Id<Force> = Id::new("proof-load");
pub const TENSILE_LOAD: Id<Force> = Id::new("tensile-load");
pub const TARGET_CLAMP: Id<Force> = Id::new("target-clamp");
pub const TIGHTENING_TORQUE: Id<Torque> = Id::new("tightening-torque");
pub const BOLT_CLAMP: Id<Force> = Id::new("bolt-clamp");
pub const LEAST_CLAMP: Id<Force> = Id::new("least-clamp");
pub const HIGHEST_CLAMP: Id<Force> = Id::new("highest-clamp");
pub const SLIP_LOAD: Id<Force> = Id::new("slip-load");
pub const LEAST_SLIP_LOAD: Id<Force> = Id::new("least-slip-load");
pub const BOLT_SHEAR_LOAD: Id<Force> = Id::new("bolt-shear-load");
pub const JOINT_SHEAR_LOAD: Id<Force> = Id::new("joint-shear-load");
pub const SLIP_MARGIN: Id<Ratio> = Id::new("slip-margin");
pub const SHEAR_MARGIN: Id<Ratio> = Id::new("shear-margin");
pub const CLAMP_MARGIN: Id<Ratio> = Id::new("clamp-margin");

pub(in super::super) const ENTRIES: &[Entry] = &[
    Entry::given(Structure, BOLT_DIAMETER, "bolt diameter", r"d_B", "The nominal diameter: 8 mm for M8.")
        .above_zero()
        .units(&["mm"], &["in"])
        .usual(2e-3, 20e-3),
    Entry::given(Structure, THREAD_PITCH, "thread pitch", r"P_B", "From one thread to the next.")
        .above_zero()
        .units(&["mm"], &["in"])
        .usual(0.4e-3, 2.5e-3),
    Entry::given(Structure, BOLT_COUNT, "bolts in the joint", r"n_B", "How many bolts share the load.")
        .above_zero()
        .usual(1.0, 12.0)
        .whole(),
    Entry::given(Structure, JOINT_FACES, "faces that would slide", r"n_f", "How many pairs of faces slide when the joint slips: 1 for one plate on another, 2 for a plate held between two.")
        .assumed(1.0)
        .above_zero()
        .usual(1.0, 4.0)
        .whole(),
    Entry::given(Structure, PROOF_STRESS, "proof stress of the bolt", r"\sigma_p", "The stress a bolt of its class bears without staying longer: 580 MPa for 8.8 up to M16.")
        .above_zero()
        .units(&["MPa"], &["psi", "ksi"])
        .usual(200e6, 1000e6),
    Entry::given(Structure, BOLT_STRENGTH, "breaking stress of the bolt", r"\sigma_u", "The least stress at which a bolt of its class breaks: 800 MPa for 8.8.")
        .above_zero()
        .units(&["MPa"], &["psi", "ksi"])
        .usual(300e6, 1300e6),
    Entry::given(Structure, BOLT_TORQUE, "tightening torque used", r"T_B", "The torque each bolt is tightened with.")
        .usual(0.2, 100.0),
    Entry::given(Structure, NUT_FACTOR, "nut factor", r"K_B", "Torque over clamp times diameter: about 0.20 dry and plain, 0.15 oiled.")
        .assumed(0.2)
        .above_zero()
        .usual(0.1, 0.35),
    Entry::given(Structure, CLAMP_SCATTER, "scatter of the clamp", r"u_B", "How far the clamp strays from what the torque says, either way.")
        .assumed(0.3)
        .possible(0.0, 1.0)
        .units(&["%"], &["%"])
        .usual(0.05, 0.35),
    Entry::given(Structure, PRELOAD_SHARE, "clamp over proof load, aimed for", r"k_B", "The part of its proof load a bolt is stretched to: 0.75 for joints that are undone again.")
        .assumed(0.75)
        .possible(0.0, 1.0)
        .usual(0.4, 0.9),
    Entry::given(Structure, JOINT_FRICTION, "friction in the joint", r"\mu_B", "Grip between the faces pressed together: 0.15 for dry smooth metal; paint, oil and plastic less.")
        .assumed(0.15)
        .possible(0.0, 2.0)
        .usual(0.05, 0.5),
    Entry::given(Structure, JOINT_LOAD, "sideways force on the joint", r"F_J", "The force that would slide the joint, at its worst: a jerk, a landing, a stalled motor.")
        .usual(1.0, 5e4),
    Entry::given(Structure, SHEAR_FACTOR, "shear over tension", r"\alpha_B", "Shear strength of a bolt over its strength in tension: 0.6 for classes 4.6, 5.6 and 8.8, 0.5 for 10.9.")
        .assumed(0.6)
        .possible(0.0, 1.0)
        .usual(0.5, 0.6),
    Entry::given(Structure, PARTIAL_FACTOR, "safety divisor of the bolt", r"\gamma_B", "What the building code divides the strength of a bolt by: 1.25. 1 gives what breaks it.")
        .assumed(1.25)
        .possible(1.0, 10.0)
        .usual(1.0, 2.0),
    Entry::found(Structure, THREAD_STRESS_AREA, "stress area of the thread", r"A_B", "The area that carries the pull of a thread, less than the circle of its diameter.")
        .units(&["mm²"], &["in²"]),
    Entry::found(Structure, PROOF_LOAD, "proof load of a bolt", r"F_p", "The pull one bolt bears without staying longer."),
    Entry::found(Structure, TENSILE_LOAD, "breaking load of a bolt (least)", r"F_u", "The least pull that breaks one bolt."),
    Entry::found(Structure, TARGET_CLAMP, "clamp to aim for", r"F_{B0}", "The clamping force of one bolt at the share of its proof load aimed for."),
    Entry::found(Structure, TIGHTENING_TORQUE, "torque for that clamp", r"T_{B0}", "The tightening torque that gives the clamp aimed for, on average."),
    Entry::found(Structure, BOLT_CLAMP, "clamp of a bolt (mean)", r"F_B", "The clamping force one bolt gives, on average, at the torque used."),
    Entry::found(Structure, LEAST_CLAMP, "clamp of a bolt (least)", r"F_{B-}", "The clamping force at the low end of its scatter."),
    Entry::found(Structure, HIGHEST_CLAMP, "clamp of a bolt (highest)", r"F_{B+}", "The clamping force at the high end of its scatter."),
    Entry::found(Structure, SLIP_LOAD, "force at which the joint slips (mean)", r"F_{\mathrm{slip}}", "Bolts times faces times friction times clamp."),
    Entry::found(Structure, LEAST_SLIP_LOAD, "force at which the joint slips (least)", r"F_{\mathrm{slip-}}", "The same with the clamp at the low end of its scatter.")
        .headline(),
    Entry::found(Structure, BOLT_SHEAR_LOAD, "shear load of a bolt", r"F_v", "What one bolt bears in one plane of shear, threads in the plane."),
    Entry::found(Structure, JOINT_SHEAR_LOAD, "shear load of the joint", r"F_V", "What all bolts bear once the joint has slipped, each an even share."),
    Entry::found(Structure, SLIP_MARGIN, "margin before the joint slips", r"M_{\mathrm{slip}}", "The least force at which it slips over the sideways force on it.")
        .headline(),
    Entry::found(Structure, SHEAR_MARGIN, "margin before the bolts shear", r"M_V", "The shear load of the joint over the sideways force on it.")
        .headline(),
    Entry::found(Structure, CLAMP_MARGIN, "margin of the bolt against its own clamp", r"M_{B}", "The proof load over the highest clamp the torque may give.")
        .headline(),
];
