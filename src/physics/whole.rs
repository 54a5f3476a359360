//! The whole machine: energy and range, the weight spiral, and what changes with size.

mod range;
mod scale;
mod spiral;

pub use range::{
    energy_per_distance, leg_energy, range, return_resistance, trip_time, trips, usable_energy,
};
pub use scale::{
    mass_exponent, mass_ratio, over, root, same, scaled_area, scaled_mass, slope_power,
    slope_torque, square,
};
pub use spiral::{
    battery_share, closed_battery, closed_mass, drive_share, growth_factor, growth_share,
    largest_range,
};
