//! The pack at work: current, sag, heat, power, time, and the worst of them.

use super::super::common::{always, exceeds, over};
use super::battery::CELLS;
use crate::physics::Impossible;
use crate::physics::drive::motor;
use crate::physics::electrics::battery;
use crate::quantity::catalogue::drive::{MOTOR_COUNT, MOTOR_CURRENT, PEAK_MOTOR_CURRENT, THROTTLE};
use crate::quantity::catalogue::electrics::*;
use crate::quantity::catalogue::heat::WORK_TIME;
use crate::quantity::{Current, Ratio, Resistance, Time, Voltage};
use crate::rules::{Caution, Rule};

const MEAN: &[&str] = &["A steady push: the mean over bumps and starts, which are peaks above it."];
const WORST: &[&str] =
    &["Every motor held still at full throttle at once, and everything else running."];
const POWER: &str = "OpenStax, College Physics 2e, section 20.4";
const MARGIN: &str = "The definition of a margin; common practice, no published source";
const OVER_LABEL: &[Caution] = &[Caution {
    when: |values| exceeds(values, PEAK_BATTERY_CURRENT, LABEL_CURRENT),
    says: "The peak is more than the pack's label allows: limit the controller's current or fit a larger pack.",
}];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = steady();
    rules.extend(worst());
    rules.extend(time());
    rules
}

fn steady() -> Vec<Rule> {
    vec![
        Rule::new(
            BATTERY_CURRENT,
            (MOTOR_CURRENT, MOTOR_COUNT, THROTTLE, AUXILIARY_CURRENT),
            drawn,
        )
        .title("All motors, for the share of the time they are switched on")
        .formula(r"\q{battery-current} = \q{throttle} \cdot \q{motor-count} \cdot \q{motor-current} + \q{auxiliary-current}")
        .assumes(MEAN)
        .holds("Switching controllers; the motor's current is then larger than the battery's.")
        .source("Power balance of a switching controller; N. Mohan, T. Undeland, W. Robbins, Power Electronics (from memory)"),
        Rule::new(BATTERY_SAG, (BATTERY_CURRENT, BATTERY_RESISTANCE), battery::sag)
            .title("Current through the cells' own resistance")
            .formula(r"\q{battery-sag} = \q{battery-current} \cdot \q{battery-resistance}")
            .assumes(MEAN)
            .holds("A warm pack; see the lowest voltage for the worst.")
            .source(CELLS),
        Rule::new(BATTERY_LOADED_VOLTAGE, (BATTERY_VOLTAGE, BATTERY_SAG), battery::left)
            .title("What is left at the terminals")
            .formula(r"\q{battery-loaded-voltage} = \q{battery-voltage} - \q{battery-sag}")
            .assumes(MEAN)
            .holds("A warm pack; see the lowest voltage for the worst.")
            .source(CELLS),
        Rule::new(BATTERY_HEAT, (BATTERY_CURRENT, BATTERY_RESISTANCE), motor::winding_loss)
            .title("The current heats the cells with its square")
            .formula(r"\q{battery-heat} = \q{battery-current}^2 \cdot \q{battery-resistance}")
            .assumes(MEAN)
            .holds("Heat of resistance alone.")
            .source(POWER),
        Rule::new(BATTERY_POWER, (BATTERY_LOADED_VOLTAGE, BATTERY_CURRENT), motor::electric_power)
            .title("Volts times amperes at the terminals")
            .formula(r"\q{battery-power} = \q{battery-loaded-voltage} \cdot \q{battery-current}")
            .assumes(MEAN)
            .holds("The mean: a meter's peaks are not this.")
            .source(POWER),
        Rule::new(BATTERY_C_RATE, (BATTERY_CURRENT, BATTERY_CHARGE), battery::c_rate)
            .title("How many times over in an hour")
            .formula(r"\q{battery-c-rate} = \q{battery-current} \cdot \dfrac{1\,\mathrm{h}}{\q{battery-charge}}")
            .assumes(MEAN)
            .holds("Any battery.")
            .source("The definition of the C rate, MIT Electric Vehicle Team, A Guide to Understanding Battery Specifications, 2008 (from memory)"),
    ]
}

fn worst() -> Vec<Rule> {
    vec![
        Rule::new(
            PEAK_BATTERY_CURRENT,
            (PEAK_MOTOR_CURRENT, MOTOR_COUNT, AUXILIARY_CURRENT),
            peak_drawn,
        )
        .title("All motors held still at once")
        .formula(r"\q{peak-battery-current} = \q{motor-count} \cdot \q{peak-motor-current} + \q{auxiliary-current}")
        .assumes(WORST)
        .holds("Full throttle from rest, a jam, a wall. A controller that limits its current draws less than this from the battery.")
        .source("Kirchhoff's junction rule, OpenStax, College Physics 2e, section 21.3"),
        Rule::new(
            LOWEST_VOLTAGE,
            (BATTERY_VOLTAGE, PEAK_BATTERY_CURRENT, COLD_SUPPLY_RESISTANCE),
            lowest,
        )
        .title("The peak out of a cold pack")
        .formula(r"\q{lowest-voltage} = \q{battery-voltage} - \q{peak-battery-current} \cdot \q{cold-supply-resistance}")
        .assumes(WORST)
        .holds("The coldest start. A cold pack holds the peak itself back, so the truth is a little higher.")
        .source(CELLS),
        Rule::new(CUTOFF_MARGIN, (COLD_CUTOFF_CURRENT, PEAK_BATTERY_CURRENT), over::<Current>)
            .title("Cold cut-off current over the peak")
            .formula(r"\q{cutoff-margin} = \dfrac{\q{cold-cutoff-current}}{\q{peak-battery-current}}")
            .assumes(WORST)
            .holds("The coldest start.")
            .source(MARGIN).cautions(&[Caution {
            when: |values| exceeds(values, PEAK_BATTERY_CURRENT, COLD_CUTOFF_CURRENT),
            says: "A cold start at full throttle trips the cut-off: start gently, limit the current, or keep the pack warm.",
        }]),
        Rule::new(LABEL_MARGIN, (LABEL_CURRENT, PEAK_BATTERY_CURRENT), over::<Current>)
            .title("The label's current over the peak")
            .formula(r"\q{label-margin} = \dfrac{\q{label-current}}{\q{peak-battery-current}}")
            .assumes(WORST)
            .holds("Labels promise a steady current; a short peak may be more.")
            .source(MARGIN)
            .cautions(OVER_LABEL),
    ]
}

fn time() -> Vec<Rule> {
    vec![
        Rule::new(TIME_TO_EMPTY, (BATTERY_CHARGE, BATTERY_CURRENT), battery::time_to_empty)
            .title("Charge over current")
            .formula(r"\q{time-to-empty} = \dfrac{\q{battery-charge}}{\q{battery-current}}")
            .assumes(MEAN)
            .holds("All the charge, warm: longer than it should be run.")
            .source("The definition of current, OpenStax, College Physics 2e, section 20.1"),
        Rule::new(RUN_TIME, (USABLE_ENERGY, BATTERY_POWER), battery::run_time)
            .title("Usable energy over power")
            .formula(r"\q{run-time} = \dfrac{\q{usable-energy}}{\q{battery-power}}")
            .assumes(MEAN)
            .holds("A warm pack and the ground the push is given for: a run in sand takes more than one on grass.")
            .source(POWER),
        Rule::new(COLD_RUN_TIME, (RUN_TIME, COLD_CAPACITY_SHARE), cold_time)
            .title("The same out of a cold pack")
            .formula(r"\q{cold-run-time} = \q{run-time} \cdot \q{cold-capacity-share}")
            .assumes(&["The cold takes the same share of the usable part as of the whole."])
            .holds("A pack that stays cold; one that works hard warms itself.")
            .source("Common practice, no published source"),
        Rule::new(
            PACK_RISE,
            (BATTERY_HEAT, WORK_TIME, PACK_MASS, PACK_SPECIFIC_HEAT),
            battery::uncooled_rise,
        )
        .title("All the heat stays in the cells")
        .formula(r"\q{pack-rise} = \dfrac{\q{battery-heat} \cdot \q{work-time}}{\q{pack-mass} \cdot \q{pack-specific-heat}}")
        .assumes(&["No cooling at all: the worst case. The middle of a large pack comes near it."])
        .holds("One stretch of work from even temperature.")
        .source("OpenStax, University Physics Volume 2, section 1.4")
        .cautions(&[Caution {
            when: always,
            says: "Keep lithium cells under the maker's limit, usually 60 °C; from about 80 °C they can heat themselves and burn.",
        }]),
    ]
}

fn drawn(motor: Current, motors: Ratio, throttle: Ratio, rest: Current) -> Current {
    motor * motors * throttle + rest
}

fn peak_drawn(motor: Current, motors: Ratio, rest: Current) -> Current {
    motor * motors + rest
}

fn lowest(battery: Voltage, peak: Current, resistance: Resistance) -> Result<Voltage, Impossible> {
    battery::left(battery, battery::sag(peak, resistance))
}

fn cold_time(warm: Time, share: Ratio) -> Time {
    warm * share
}
