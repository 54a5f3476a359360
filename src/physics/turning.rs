//! Turning: sideways force, inertia, swinging round, and spinning parts.

mod curve;
mod inertia;
mod spin;
mod swing;

pub use curve::{
    bank_speed, sideways_acceleration, sideways_force, sideways_grip, steer_angle, turn_radius,
    turn_radius_from_tracks, turning_rate,
};
pub use inertia::{
    added, box_inertia, pendulum_inertia, radius_of_gyration, spinning_inertia, torsion_inertia,
};
pub use spin::{
    rim_acceleration, rim_speed, rim_stress, shared_rate, spin_energy, tilting_torque, turns_rate,
};
pub use swing::{
    angular_acceleration, fastest_turn, moment_for_swing, rate_after, skid_moment, skid_thrust,
    steer_limit, swing_and_stop_time, swing_moment, swing_time, swinging_moment, torque_for,
};
