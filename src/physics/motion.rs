//! Force, power, speed and stopping.

mod air;
mod drive;
mod resistance;
mod run;
mod stop;

pub use air::{
    air_density, altitude_power_loss, density_ratio, standard_pressure, standard_temperature,
};
pub use drive::{
    Drive, Limit, car_mass_factor, climb_rate, constant_power_distance, constant_power_time,
    drag_top_speed, equivalent_mass, force_at_speed, front_lift_force, mass_factor, power_meets,
    power_to_mass, power_top_speed, rotating_mass, slope_by_load, slope_by_thrust, torque_force,
};
pub use resistance::{
    air_drag, drag_area, drag_crossover, power_at_speed, stop_spacing_balance, sum, terminal_speed,
    thrust_for,
};
pub use run::{Run, SpeedUp, mean_acceleration, mean_power, run_up};
pub use stop::{
    braking_distance, braking_force, coast_down_distance, coast_down_time, locked_deceleration,
    reaction_distance,
};
