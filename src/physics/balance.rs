//! Axle loads, tipping and nosing over.
//!
//! The frame: forward from the middle of the ground contact, up from the ground. Slopes are nose
//! uphill positive; speeding up is positive.

mod loads;
mod scales;
mod tipping;

pub use loads::{
    end_load, front_arm, load_share, load_shift, moving_load, rear_arm, ski_support_middle,
};
pub use scales::{height_from_scales, offset_from_scales};
pub use tipping::{
    brake_demand, climb_demand, lift_acceleration, lift_ratio, margin, nose_over_deceleration,
    side_arm, smaller, speed_margin, stability_factor, tip_angle, tipping_push, turn_speed,
};
