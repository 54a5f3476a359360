//! What it takes to swing the machine round.

use crate::quantity::{
    Acceleration, Angle, AngularAcceleration, AngularSpeed, Energy, Entry, Force, Id, Inertia,
    Length, Mass, Pressure, Ratio, Speed, Time, Topic::Turning, Torque,
};

pub const STEER_ANGLE: Id<Angle> = Id::new("steer-angle");
pub const LEFT_SPEED: Id<Speed> = Id::new("left-speed");
pub const RIGHT_SPEED: Id<Speed> = Id::new("right-speed");
pub const MACHINE_LENGTH: Id<Length> = Id::new("machine-length");
pub const MACHINE_WIDTH: Id<Length> = Id::new("machine-width");
pub const SIDEWAYS_COEFFICIENT: Id<Ratio> = Id::new("sideways-coefficient");
pub const SWING_ANGLE: Id<Angle> = Id::new("swing-angle");
pub const SWING_TIME_WANTED: Id<Time> = Id::new("swing-time-wanted");
pub const BANK_ANGLE: Id<Angle> = Id::new("bank-angle");
pub const SWING_PERIOD: Id<Time> = Id::new("swing-period");
pub const PIVOT_DISTANCE: Id<Length> = Id::new("pivot-distance");
pub const SPIN_RATE: Id<AngularSpeed> = Id::new("spin-rate");
pub const SPIN_RADIUS: Id<Length> = Id::new("spin-radius");
pub const SPIN_MASS: Id<Mass> = Id::new("spin-mass");

pub const SPIN_SHAPE: Id<Ratio> = Id::new("spin-shape");
pub const ADDED_MASS: Id<Mass> = Id::new("added-mass");
pub const ADDED_DISTANCE: Id<Length> = Id::new("added-distance");
pub const ADDED_INERTIA: Id<Inertia> = Id::new("added-inertia");
pub const SPIN_UP_TIME: Id<Time> = Id::new("spin-up-time");
pub const SPIN_ENERGY_WANTED: Id<Energy> = Id::new("spin-energy-wanted");
pub const COUPLED_INERTIA: Id<Inertia> = Id::new("coupled-inertia");
pub const COUPLED_RATE: Id<AngularSpeed> = Id::new("coupled-rate");
pub const KNOWN_INERTIA: Id<Inertia> = Id::new("known-inertia");
pub const KNOWN_PERIOD: Id<Time> = Id::new("known-period");
pub const TWIST_PERIOD: Id<Time> = Id::new("twist-period");

pub const TURN_RADIUS: Id<Length> = Id::new("turn-radius");
pub const STEER_ANGLE_NEEDED: Id<Angle> = Id::new("steer-angle-needed");
pub const SIDEWAYS_ACCELERATION: Id<Acceleration> = Id::new("sideways-acceleration");
pub const SIDEWAYS_FORCE: Id<Force> = Id::new("sideways-force");
pub const SIDEWAYS_GRIP: Id<Ratio> = Id::new("sideways-grip");
pub const BANK_SPEED: Id<Speed> = Id::new("bank-speed");
pub const TURNING_RATE: Id<AngularSpeed> = Id::new("turning-rate");
pub const YAW_INERTIA: Id<Inertia> = Id::new("yaw-inertia");
pub const RUNNING_GEAR_MASS: Id<Mass> = Id::new("running-gear-mass");
pub const RUNNING_GEAR_INERTIA: Id<Inertia> = Id::new("running-gear-inertia");
pub const SIZED_YAW_INERTIA: Id<Inertia> = Id::new("sized-yaw-inertia");
pub const STEER_RATIO: Id<Ratio> = Id::new("steer-ratio");
pub const STEER_RATIO_LIMIT: Id<Ratio> = Id::new("steer-ratio-limit");
pub const YAW_RADIUS: Id<Length> = Id::new("yaw-radius");
pub const TIMED_INERTIA: Id<Inertia> = Id::new("timed-inertia");
pub const TURNING_MOMENT: Id<Torque> = Id::new("turning-moment");
pub const SKID_MOMENT: Id<Torque> = Id::new("skid-moment");
pub const SWING_MOMENT: Id<Torque> = Id::new("swing-moment");
pub const SKID_THRUST: Id<Force> = Id::new("skid-thrust");
pub const YAW_ACCELERATION: Id<AngularAcceleration> = Id::new("yaw-acceleration");
pub const SWING_TIME: Id<Time> = Id::new("swing-time");
pub const SWING_STOP_TIME: Id<Time> = Id::new("swing-stop-time");
pub const SWING_MOMENT_NEEDED: Id<Torque> = Id::new("swing-moment-needed");
pub const SWING_RATE: Id<AngularSpeed> = Id::new("swing-rate");
pub const SWING_ENERGY: Id<Energy> = Id::new("swing-energy");
pub const TWIST_INERTIA: Id<Inertia> = Id::new("twist-inertia");
pub const SPIN_INERTIA: Id<Inertia> = Id::new("spin-inertia");
pub const RIM_SPEED: Id<Speed> = Id::new("rim-speed");
pub const RIM_ACCELERATION: Id<Acceleration> = Id::new("rim-acceleration");
pub const SPIN_ENERGY: Id<Energy> = Id::new("spin-energy");
pub const SPIN_UP_TORQUE: Id<Torque> = Id::new("spin-up-torque");
pub const SPIN_RATE_NEEDED: Id<AngularSpeed> = Id::new("spin-rate-needed");
pub const SHARED_RATE: Id<AngularSpeed> = Id::new("shared-rate");
pub const COUPLING_HEAT: Id<Energy> = Id::new("coupling-heat");
pub const RIM_STRESS: Id<Pressure> = Id::new("rim-stress");
pub const GYRO_TORQUE: Id<Torque> = Id::new("gyro-torque");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(Turning, STEER_ANGLE, "steering angle", r"\delta", "How far the front wheels or skis point to the side.")
        .possible(-1.55, 1.55)
        .usual(0.0, 0.7),
    Entry::given(Turning, LEFT_SPEED, "speed of the left track", r"v_L", "How fast the left track or the wheels of that side run; below zero, backwards.")
        .possible(-100.0, 100.0)
        .usual(-3.0, 3.0),
    Entry::given(Turning, RIGHT_SPEED, "speed of the right track", r"v_R", "How fast the right track or the wheels of that side run; below zero, backwards.")
        .possible(-100.0, 100.0)
        .usual(-3.0, 3.0),
    Entry::given(Turning, MACHINE_LENGTH, "machine length", r"l_m", "From the front to the rear of the body and its tracks.")
        .above_zero()
        .usual(0.1, 3.0),
    Entry::given(Turning, MACHINE_WIDTH, "machine width", r"w_m", "From side to side over the tracks or wheels.")
        .above_zero()
        .usual(0.1, 2.0),
    Entry::given(Turning, SIDEWAYS_COEFFICIENT, "sideways coefficient", r"\mu_t", "The pull that drags the tracks or wheels sideways over the ground, over the force on the ground: from a sideways pull test.")
        .usual(0.2, 1.0),
    Entry::given(Turning, SWING_ANGLE, "angle to swing through", r"\psi", "How far the machine is to swing round.")
        .assumed(std::f64::consts::FRAC_PI_2)
        .above_zero()
        .usual(0.2, 3.2),
    Entry::given(Turning, SWING_TIME_WANTED, "time wanted for the swing", r"t_w", "How quickly the machine is to swing through the angle and stand still again.")
        .above_zero()
        .usual(0.2, 5.0),
    Entry::given(Turning, BANK_ANGLE, "bank of the curve", r"\beta", "How much the ground leans into the curve.")
        .possible(0.0, 80.0 * std::f64::consts::PI / 180.0)
        .usual(0.0, 0.6),
    Entry::given(Turning, SWING_PERIOD, "period of the timed swing", r"T_s", "The time of one swing there and back, hung up and let swing through a few degrees: time ten and divide.")
        .above_zero()
        .usual(0.5, 4.0),
    Entry::given(Turning, PIVOT_DISTANCE, "pivot above the balance point", r"d_p", "From the pivot it hangs by to its centre of gravity.")
        .above_zero()
        .usual(0.05, 2.0),
    Entry::given(Turning, SPIN_RATE, "spin of the spinning part", r"\omega_s", "How fast the rotor, wheel or disc turns.")
        .usual(1.0, 3000.0),
    Entry::given(Turning, SPIN_RADIUS, "radius of the spinning part", r"r_s", "From its axle to its rim.")
        .above_zero()
        .usual(0.01, 0.4),
    Entry::given(Turning, SPIN_MASS, "mass of the spinning part", r"m_r", "The mass of what spins.")
        .usual(0.02, 20.0),
    Entry::given(Turning, SPIN_SHAPE, "shape of the spinning part", r"k_r", "Its inertia over mass times radius squared: 0.5 for a solid disc, 1 for a thin ring, 0.4 for a ball, 1/3 for a rod that turns about its middle or its end.")
        .assumed(0.5)
        .above_zero()
        .possible(0.0, 1.0)
        .usual(0.3, 1.0),
    Entry::given(Turning, ADDED_MASS, "mass fixed to the spinning part", r"m_a", "A load, a blade or a balance weight that turns with it.")
        .assumed(0.0)
        .usual(0.0, 5.0),
    Entry::given(Turning, ADDED_DISTANCE, "how far out that mass sits", r"r_a", "From the axle to the middle of the mass fixed to it.")
        .assumed(0.0)
        .usual(0.0, 0.4),
    Entry::given(Turning, ADDED_INERTIA, "own inertia of that mass", r"J_a", "The moment of inertia of the added mass about its own middle, axis the same way; 0 for a small one.")
        .assumed(0.0)
        .usual(0.0, 0.1),
    Entry::given(Turning, SPIN_UP_TIME, "time to spin up or stop", r"t_s", "How quickly the spinning part is to reach its spin from rest, or to be braked from it to rest.")
        .above_zero()
        .usual(0.1, 60.0),
    Entry::given(Turning, SPIN_ENERGY_WANTED, "energy to store in the spin", r"E_w", "What the spinning part, as a flywheel, is to hold.")
        .usual(1.0, 1e4),
    Entry::given(Turning, COUPLED_INERTIA, "inertia of what it is coupled to", r"J_2", "The moment of inertia, about the same axis, of what a clutch couples to the spinning part or what strikes it.")
        .usual(1e-6, 1.0),
    Entry::given(Turning, COUPLED_RATE, "spin of what it is coupled to", r"\omega_2", "How fast that turns before; below zero, the other way.")
        .assumed(0.0)
        .possible(f64::MIN, f64::MAX)
        .usual(0.0, 1000.0),
    Entry::given(Turning, KNOWN_INERTIA, "inertia of the rod on the wire", r"I_k", "A body of plain shape, hung on the same wire to learn how stiff it is: a rod across the wire has its mass times length squared over 12.")
        .above_zero()
        .usual(1e-3, 5.0),
    Entry::given(Turning, KNOWN_PERIOD, "period of the rod on the wire", r"T_k", "The time of one twist there and back with that rod: time ten and divide.")
        .above_zero()
        .usual(0.5, 20.0),
    Entry::given(Turning, TWIST_PERIOD, "period of the machine on the wire", r"T_t", "The time of one twist there and back, hung on the wire under its balance point.")
        .above_zero()
        .usual(0.5, 20.0),
    Entry::given(Turning, RUNNING_GEAR_MASS, "mass of the running gear", r"m_{\mathrm{rg}}", "The mass of all tracks with their wheels and frames, spread evenly along the ground contact: it says how much a sum of points leaves out.")
        .usual(0.2, 150.0),
    Entry::found(Turning, TURN_RADIUS, "turning radius", "R", "From the middle of the turn to the middle of the machine.")
        .headline(),
    Entry::found(Turning, STEER_ANGLE_NEEDED, "steering angle for that radius", r"\delta_n", "What the front wheels or skis must point to at a walking pace."),
    Entry::found(Turning, SIDEWAYS_ACCELERATION, "sideways acceleration", r"a_y", "How quickly the direction changes in the turn.")
        .units(&["m/s²"], &["ft/s²"]),
    Entry::found(Turning, SIDEWAYS_FORCE, "sideways force", r"F_y", "What must push the machine towards the middle of the turn, or move it sideways that quickly.")
        .headline(),
    Entry::found(Turning, SIDEWAYS_GRIP, "grip that the turn takes", r"\mu_y", "Sideways acceleration over gravity: the ground must give as much on the level."),
    Entry::found(Turning, BANK_SPEED, "speed at which the bank needs no grip", r"v_\beta", "Slower it would slide in, faster out, if there were no grip."),
    Entry::found(Turning, TURNING_RATE, "rate of turning", r"\Omega", "How fast the machine's direction changes in the turn.")
        .units(&["°/s"], &["°/s"]),
    Entry::found(Turning, YAW_INERTIA, "yaw inertia", r"I_z", "How hard the machine is to swing round: mass far from the middle counts with the distance squared. From parts with places, which count as points (their own size is left out), or as an even box.")
        .above_zero()
        .usual(1e-3, 300.0)
        .headline(),
    Entry::found(Turning, RUNNING_GEAR_INERTIA, "yaw inertia of the running gear's own size", r"I_{\mathrm{rg}}", "What tracks, as boxes about their own middles, add to a yaw inertia that counts them as points."),
    Entry::found(Turning, SIZED_YAW_INERTIA, "yaw inertia, the running gear's size counted", r"I_{z+}", "The yaw inertia of points with what the running gear's own size adds; pin the yaw inertia to it to swing with it.")
        .above_zero(),
    Entry::found(Turning, STEER_RATIO, "contact length over gauge", r"L/B", "Long and narrow machines are hard to turn: below about 1.7 most tracked machines steer well."),
    Entry::found(Turning, STEER_RATIO_LIMIT, "longest contact over gauge that still steers", r"(L/B)_{\mathrm{max}}", "Past this the outer track cannot push hard enough to turn the machine while it drives on, whatever its motor."),
    Entry::found(Turning, YAW_RADIUS, "radius of gyration", r"k_z", "How far from the middle the mass sits, on the whole."),
    Entry::found(Turning, TIMED_INERTIA, "inertia by a timed swing", r"I_s", "The moment of inertia about the swing's axis, moved to the centre of gravity."),
    Entry::found(Turning, TWIST_INERTIA, "inertia by a twisting wire", r"I_t", "The moment of inertia about the wire, from the periods of a known rod and of the machine on it."),
    Entry::found(Turning, TURNING_MOMENT, "turning moment of the drive", r"M_d", "One side forward, the other back, with the largest thrust.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Turning, SKID_MOMENT, "moment with which the ground holds", r"M_h", "What it takes to turn tracks on the spot, before anything speeds up.")
        .headline(),
    Entry::found(Turning, SWING_MOMENT, "moment left to swing it", r"M_s", "The turning moment of the drive without what the ground holds."),
    Entry::found(Turning, SKID_THRUST, "thrust to turn on the spot", r"F_{\mathrm{skid}}", "The thrust of both sides together at which the tracks just begin to turn it."),
    Entry::found(Turning, YAW_ACCELERATION, "yaw acceleration", r"\alpha_z", "How quickly it answers the steering, on the spot.")
        .headline(),
    Entry::found(Turning, SWING_TIME, "time to swing through the angle", r"t_\psi", "From rest, with all the moment that is left, no faster than the tracks can run; it is still turning at the end.")
        .headline(),
    Entry::found(Turning, SWING_STOP_TIME, "time to swing and stop", r"t_{\psi 0}", "From rest to rest: the moment one way for half the angle, the other way for the rest."),
    Entry::found(Turning, SWING_MOMENT_NEEDED, "moment for the time wanted", r"M_w", "What must turn the machine, on top of what the ground holds, to swing and stop in the time wanted.")
        .headline(),
    Entry::found(Turning, SWING_RATE, "rate after the swing", r"\omega_\psi", "How fast it turns when it passes the angle.")
        .units(&["°/s"], &["°/s"]),
    Entry::found(Turning, SWING_ENERGY, "energy of the swing", r"E_\psi", "What the turning machine holds when it passes the angle."),
    Entry::found(Turning, SPIN_INERTIA, "inertia of the spinning part", r"I_r", "By its shape, with what is fixed to it.")
        .above_zero(),
    Entry::found(Turning, RIM_SPEED, "rim speed", r"v_r", "How fast the rim of the spinning part moves.")
        .headline(),
    Entry::found(Turning, RIM_ACCELERATION, "acceleration at the rim", r"a_r", "What the rim is held in with, in multiples of g: it pulls the part apart.")
        .units(&["g"], &["g"]),
    Entry::found(Turning, SPIN_ENERGY, "energy stored in the spin", r"E_r", "What the spinning part gives off at once if it bursts or jams.")
        .headline(),
    Entry::found(Turning, RIM_STRESS, "stress in the rim", r"\sigma_r", "The pull that its own spin puts in a thin rim.")
        .units(&["MPa"], &["psi"]),
    Entry::found(Turning, SPIN_UP_TORQUE, "moment to spin up or stop", r"M_u", "The steady moment that brings the part from rest to its spin in that time, or from it to rest."),
    Entry::found(Turning, SPIN_RATE_NEEDED, "spin that stores the energy", r"\omega_n", "How fast the part must turn to hold the energy wanted."),
    Entry::found(Turning, SHARED_RATE, "spin after coupling", r"\omega_c", "How fast both turn once a clutch has brought them together.")
        .possible(f64::MIN, f64::MAX),
    Entry::found(Turning, COUPLING_HEAT, "heat of the coupling", r"E_c", "What the clutch turns to heat until both turn alike."),
    Entry::found(Turning, GYRO_TORQUE, "gyroscopic moment", r"M_g", "What the spinning part puts on its bearings while the machine turns, if its axle lies level."),
];
