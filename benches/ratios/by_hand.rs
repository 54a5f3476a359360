//! The formulas of weight, running gear, pressure, impact and motion on bare `f64`, as one would
//! write them for one machine and no other purpose.

use differential_equations::prelude::*;

/// What the demo build leaves out of impact.
pub const SAID_TOO: [(&str, f64); 5] = [
    ("other-mass", 90.0),
    ("mounted-mass", 0.07),
    ("support-rate", 5e3),
    ("test-pulse-peak", 50.0),
    ("test-pulse-time", 0.011),
];

macro_rules! inputs {
    ($($name:ident)+) => {
        /// What the formulas start from, SI units.
        pub struct Inputs {
            $($name: f64),+
        }

        impl Inputs {
            /// Reads each by its name.
            pub fn of(get: impl Fn(&str) -> f64) -> Self {
                Self { $($name: get(&stringify!($name).replace('_', "-"))),+ }
            }
        }
    };
}

inputs! {
    mass gravity slope balance_offset cg_height track_count track_width contact_length wheel_count
    ski_count block_mass block_side grip_test_pull grip_test_mass tow_test_pull tow_test_mass
    drop_height approach_angle stop_distance pulse_factor restitution impact_patch person_weight
    frame_strength shock_limit other_mass other_speed mounted_mass support_rate test_pulse_peak
    test_pulse_time driving_speed driven_share front_lift_limit target_speed wanted_acceleration drive_power
    drive_torque drive_radius rotor_inertia wheel_inertia drag_coefficient frontal_area altitude
    air_temperature rise reaction_time first_stage_ratio second_stage_ratio third_stage_ratio
    geared_top_speed
}

macro_rules! formulas {
    (
        $i:ident: $($name:ident = $found:expr;)+
        @ $both:ident = $of_both:expr;
        $($later:ident = $then:expr;)+
    ) => {
        const COUNT: usize = [$(stringify!($name),)+ $(stringify!($later)),+].len();

        /// The names of what [`all`] finds, in its order.
        pub fn names() -> [String; COUNT] {
            [$(stringify!($name),)+ $(stringify!($later)),+].map(|name| name.replace('_', "-"))
        }

        /// Everything, in SI units.
        pub fn all($i: &Inputs) -> [f64; COUNT] {
            $(let $name = $found;)+
            let $both = $of_both;
            $(let $later = $then;)+
            [$($name,)+ $($later),+]
        }
    };
}

const G: f64 = 9.80665;

formulas! { i:
    weight = i.mass * i.gravity;
    ground_force = weight * i.slope.cos();
    slope_force = weight * i.slope.sin();
    track_contact_area = i.track_count * i.track_width * i.contact_length;
    wheel_contact_area = if i.wheel_count == 0.0 { 0.0 } else { f64::NAN };
    ski_contact_area = if i.ski_count == 0.0 { 0.0 } else { f64::NAN };
    contact_area = track_contact_area + wheel_contact_area + ski_contact_area;
    holding_pressure = i.block_mass * i.gravity / (i.block_side * i.block_side);
    grip_coefficient = i.grip_test_pull / (i.grip_test_mass * i.gravity);
    rolling_coefficient = i.tow_test_pull / (i.tow_test_mass * i.gravity);
    ground_pressure = ground_force / contact_area;
    pressure_offset =
        if i.slope == 0.0 { i.balance_offset } else { i.balance_offset - i.cg_height * i.slope.tan() };
    end_pressure_ratio = if pressure_offset.abs() <= i.contact_length / 6.0 {
        1.0 + 6.0 * pressure_offset.abs() / i.contact_length
    } else {
        2.0 * i.contact_length / (3.0 * (i.contact_length / 2.0 - pressure_offset.abs()))
    };
    low_end_pressure = end_pressure_ratio * ground_pressure;
    lifted_length = (3.0 * pressure_offset.abs() - i.contact_length / 2.0).max(0.0);
    pressure_margin = holding_pressure / ground_pressure;
    low_end_margin = holding_pressure / low_end_pressure;
    balance_margin = i.contact_length / 6.0 / pressure_offset.abs();
    largest_mass_mean = holding_pressure * contact_area / (i.gravity * i.slope.cos());
    largest_mass = largest_mass_mean / end_pressure_ratio;
    impact_speed = (2.0 * i.gravity * i.drop_height).sqrt();
    stop_time = 2.0 * i.stop_distance / impact_speed;
    momentum = i.mass * impact_speed;
    kinetic_energy = 0.5 * i.mass * impact_speed * impact_speed;
    impulse = momentum * (1.0 + i.restitution);
    rebound_speed = i.restitution * impact_speed;
    rebound_height = rebound_speed * rebound_speed / (2.0 * i.gravity);
    deceleration = impact_speed / stop_time;
    deceleration_g = deceleration / G;
    peak_deceleration_g = i.pulse_factor * deceleration_g;
    stopping_force = i.mass * impact_speed / stop_time;
    weight_share = weight * i.approach_angle.sin();
    mean_impact_force = stopping_force + weight_share;
    peak_impact_force = i.pulse_factor * stopping_force + weight_share;
    spring_peak_force = 2.0 * (kinetic_energy / i.stop_distance + weight_share);
    spring_rate = spring_peak_force / i.stop_distance;
    standing_people = mean_impact_force / i.person_weight;
    standing_people_peak = peak_impact_force / i.person_weight;
    impact_pressure = peak_impact_force / i.impact_patch;
    frame_margin = i.frame_strength / peak_impact_force;
    shock_margin = i.shock_limit / peak_deceleration_g;
    closing_speed = impact_speed - i.other_speed;
    common_speed = (i.mass * impact_speed + i.other_mass * i.other_speed) / (i.mass + i.other_mass);
    exchanged_impulse =
        i.mass * i.other_mass / (i.mass + i.other_mass) * closing_speed * (1.0 + i.restitution);
    speed_after = impact_speed - exchanged_impulse / i.mass;
    other_speed_after = i.other_speed + exchanged_impulse / i.other_mass;
    collision_energy_lost = 0.5 * closing_speed * exchanged_impulse * (1.0 - i.restitution);
    test_pulse_speed = i.test_pulse_peak * G * i.test_pulse_time / i.pulse_factor;
    test_pulse_drop = test_pulse_speed * test_pulse_speed / (2.0 * i.gravity);
    mount_load = i.mounted_mass * peak_deceleration_g * G;
    loose_mount_load = 2.0 * mount_load;
    support_sag = weight / i.support_rate;
    drop_factor = 1.0 + (1.0 + 2.0 * i.drop_height / support_sag).sqrt();
    support_peak_force = drop_factor * weight;
    support_peak_sag = drop_factor * support_sag;
    support_peak_g = drop_factor - 1.0;
    bumper_travel = i.pulse_factor * impact_speed * impact_speed / (2.0 * i.shock_limit * G);
    spring_travel = 2.0 * kinetic_energy / (i.mass * i.shock_limit * G - weight_share);
    spring_for_limit = (i.mass * i.shock_limit * G + weight_share) / spring_travel;
    rolling_resistance = rolling_coefficient * ground_force;
    grip_push = grip_coefficient * i.driven_share * ground_force;
    standard_temperature = 288.15 - 0.0065 * (i.altitude / (1.0 + i.altitude / 6_356_766.0));
    standard_pressure =
        101_325.0 * (standard_temperature / 288.15).powf(9.80665 / (287.053 * 0.0065));
    air_density = standard_pressure / (287.053 * i.air_temperature);
    air_density_share = air_density / 1.225;
    altitude_power_loss = (0.03 * (i.altitude - 762.0) / 304.8).clamp(0.0, 1.0);
    drag_area = i.drag_coefficient * i.frontal_area;
    air_drag = 0.5 * air_density * drag_area * i.driving_speed * i.driving_speed;
    target_drag = 0.5 * air_density * drag_area * i.target_speed * i.target_speed;
    steady_resistance = rolling_resistance + slope_force;
    driving_resistance = steady_resistance + air_drag;
    drag_crossover = (2.0 * rolling_resistance / (air_density * drag_area)).sqrt();
    driving_power = (driving_resistance * i.driving_speed).max(0.0);
    gear_ratio = i.first_stage_ratio * i.second_stage_ratio * i.third_stage_ratio;
    rotating_mass = (i.rotor_inertia * gear_ratio * gear_ratio + i.wheel_inertia)
        / (i.drive_radius * i.drive_radius);
    equivalent_mass = i.mass + rotating_mass;
    thrust_needed = equivalent_mass * i.wanted_acceleration + driving_resistance;
    power_to_mass = i.drive_power / i.mass;
    mass_factor = equivalent_mass / i.mass;
    car_mass_factor = 1.04 + 0.0025 * gear_ratio * gear_ratio;
    power_force = i.drive_power / i.driving_speed;
    torque_force = i.drive_torque / i.drive_radius;
    support_length = i.contact_length;
    rear_arm = support_length / 2.0 + i.balance_offset;
    front_lift_acceleration =
        i.gravity * (rear_arm / i.cg_height * i.slope.cos() - i.slope.sin());
    front_lift_force = i.mass * front_lift_acceleration + steady_resistance;
    thrust_allowed = grip_push.min(front_lift_force);
    largest_thrust = torque_force.min(thrust_allowed);
    drive_thrust = power_force.min(largest_thrust);
    acceleration = ((power_force.min(torque_force) - driving_resistance) / equivalent_mass)
        .min((thrust_allowed - driving_resistance) / i.mass);
    climb_at_speed = (((power_force.min(torque_force) - air_drag)
        / (weight * rolling_coefficient.hypot(1.0))).asin() - rolling_coefficient.atan())
        .min(slope_by_load(grip_coefficient * i.driven_share - rolling_coefficient, air_drag / weight))
        .min(slope_by_load(i.front_lift_limit, air_drag / weight));
    power_top_speed = top_speed_by_power(i.drive_power, steady_resistance, air_density * drag_area);
    drag_top_speed = ((largest_thrust - steady_resistance).max(0.0) * 2.0
        / (air_density * drag_area)).sqrt();
    top_speed = power_top_speed.min(drag_top_speed).min(i.geared_top_speed);
    @ run = RunUp {
        power: i.drive_power,
        torque_force,
        thrust_allowed,
        resistance: steady_resistance,
        drag: target_drag / (i.target_speed * i.target_speed),
        mass: i.mass,
        equivalent_mass,
    }.solve(i.target_speed);
    run_up_time = run[0];
    run_up_distance = run[1];
    mean_acceleration = i.target_speed / run_up_time;
    run_up_power = (0.5 * equivalent_mass * i.target_speed * i.target_speed
        + steady_resistance * run_up_distance) / run_up_time;
    power_time = (0.5 * equivalent_mass * i.target_speed * i.target_speed
        + i.mass * i.gravity * i.rise) / i.drive_power;
    power_distance =
        (8.0 * i.drive_power / (9.0 * equivalent_mass)).sqrt() * power_time * power_time.sqrt();
    coast_down_distance = equivalent_mass * i.driving_speed * i.driving_speed / (2.0 * air_drag)
        * (air_drag / steady_resistance).ln_1p();
    coast_down_time = equivalent_mass * i.driving_speed / (air_drag * steady_resistance).sqrt()
        * (air_drag / steady_resistance).sqrt().atan();
    braking_deceleration = i.gravity * (grip_coefficient * i.slope.cos() + i.slope.sin());
    braking_distance = i.driving_speed * i.driving_speed / (2.0 * braking_deceleration);
    braking_force = i.mass * braking_deceleration;
    reaction_distance = i.driving_speed * i.reaction_time;
    stopping_distance = reaction_distance + braking_distance;
}

/// The speed at which resistance and drag take all the power, by Brent's method.
fn top_speed_by_power(power: f64, resistance: f64, drag: f64) -> f64 {
    let surplus = |v: f64| power - (resistance + 0.5 * drag * v * v) * v;
    let mut high = 1.0;
    while surplus(high) > 0.0 {
        high *= 2.0;
    }
    let mut close = roots::SimpleConvergency { eps: 1e-13 * high, max_iter: 200 };
    roots::find_root_brent(0.0, high, surplus, &mut close).unwrap()
}

struct RunUp {
    power: f64,
    torque_force: f64,
    thrust_allowed: f64,
    resistance: f64,
    /// Drag over the square of the speed.
    drag: f64,
    mass: f64,
    equivalent_mass: f64,
}

impl RunUp {
    /// Time and distance to a speed.
    fn solve(&self, target: f64) -> [f64; 2] {
        let solved = IVP::ode(self, 0.0, target, [0.0, 0.0])
            .method(ExplicitRungeKutta::dop853().rtol(1e-9).atol(1e-12))
            .solve();
        match solved {
            Ok(solution) => *solution.y.last().unwrap(),
            Err(Error::StepSize { y, .. }) => y,
            Err(_) => [f64::NAN; 2],
        }
    }
}

impl ODE<f64, [f64; 2]> for RunUp {
    fn diff(&self, v: f64, _: &[f64; 2], over_speed: &mut [f64; 2]) {
        let against = self.resistance + self.drag * v * v;
        let power = if v > 0.0 { self.power / v } else { f64::INFINITY };
        let drive = (power.min(self.torque_force) - against) / self.equivalent_mass;
        let a = drive.min((self.thrust_allowed - against) / self.mass);
        *over_speed = [1.0 / a, v / a];
    }
}

/// The slope where a share of the load is used up against a drag.
fn slope_by_load(share: f64, drag: f64) -> f64 {
    share.atan() - (drag / share.hypot(1.0)).asin()
}
