//! The pack itself: voltage, resistance, charge, energy, and what it may be asked for.

use super::super::common::{always, below};
use super::super::whole::SHARE_ASSUMED;
use crate::physics::electrics::battery;
use crate::physics::whole::usable_energy;
use crate::quantity::catalogue::electrics::*;
use crate::quantity::{Measure, Ratio, Resistance, Temperature, TemperatureCoefficient};
use crate::rules::{Caution, Maybe, Rule, Values};

pub(super) const CELLS: &str = "OpenStax, College Physics 2e, sections 21.1 and 21.2";
const ALIKE: &[&str] = &[
    "All cells are alike and equally full; one weak cell drags the pack while the sum looks fine.",
];

const FIRE: &[Caution] = &[Caution {
    when: always,
    says: "A pack can burn: charge, store, carry and look after it by its maker's manual and the local rules, never charge it cold, and stay away from one that swells, smells or hisses.",
}];
const NO_WIRES: &[Caution] = &[
    Caution {
        when: |values| values.si(WIRE_RESISTANCE).is_none(),
        says: "The wires are left out: give their length and gauge.",
    },
    Caution {
        when: |values| values.si(JOINT_RESISTANCE) == Some(0.0),
        says: "Plugs and joints are left out; they often add as much as the wires.",
    },
];
const LEAD: &[&str] = &["A lead-acid battery; lithium cells do not follow this law."];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = pack();
    rules.extend(limits());
    rules.extend(lead_acid());
    rules
}

fn pack() -> Vec<Rule> {
    vec![
        Rule::new(BATTERY_VOLTAGE, (CELLS_IN_SERIES, CELL_VOLTAGE), battery::pack_voltage)
            .title("Voltages in a row add")
            .formula(r"\q{battery-voltage} = \q{cells-in-series} \cdot \q{cell-voltage}")
            .assumes(ALIKE)
            .holds("At rest; full cells are higher and empty ones lower.")
            .source(CELLS),
        Rule::new(BATTERY_CUTOFF_VOLTAGE, (CELLS_IN_SERIES, CELL_CUTOFF_VOLTAGE), battery::pack_voltage)
            .title("The cut-off counts cells")
            .formula(r"\q{battery-cutoff-voltage} = \q{cells-in-series} \cdot \q{cell-cutoff-voltage}")
            .assumes(&["The controller watches the whole pack, not each cell."])
            .holds("About 3.0 V for each lithium-ion cell is common (common practice).")
            .source(CELLS),
        Rule::new(
            BATTERY_RESISTANCE,
            (CELL_RESISTANCE, CELLS_IN_SERIES, CELLS_IN_PARALLEL),
            battery::pack_resistance,
        )
        .title("In a row resistances add, side by side they share")
        .formula(r"\q{battery-resistance} = \dfrac{\q{cell-resistance} \cdot \q{cells-in-series}}{\q{cells-in-parallel}}")
        .assumes(ALIKE)
        .holds("Room temperature and a steady current; a long pull finds more resistance than a short one.")
        .source(CELLS),
        Rule::new(
            TESTED_BATTERY_RESISTANCE,
            (LIGHT_TEST_VOLTAGE, LIGHT_TEST_CURRENT, HEAVY_TEST_VOLTAGE, HEAVY_TEST_CURRENT),
            battery::resistance_from_two_loads,
        )
        .title("What more current takes off the voltage")
        .formula(r"\q{tested-battery-resistance} = \dfrac{\q{light-test-voltage} - \q{heavy-test-voltage}}{\q{heavy-test-current} - \q{light-test-current}}")
        .assumes(&["The same pack, as full and as warm, the second load right after the first."])
        .holds("That charge and temperature; a longer pull finds more.")
        .source("The direct-current method of IEC 61960: a fifth of the charge an hour for 10 s, then all of it for 1 s (from memory)")
        .cautions(&[Caution {
            when: always,
            says: "Use a load and leads rated for the current, never a short circuit: a pack can burn.",
        }]),
        Rule::new(BATTERY_CHARGE, (CELL_CHARGE, CELLS_IN_PARALLEL), battery::pack_charge)
            .title("Side by side charges add, in a row they do not")
            .formula(r"\q{battery-charge} = \q{cell-charge} \cdot \q{cells-in-parallel}")
            .assumes(ALIKE)
            .holds("Full cells, room temperature, at the rate the label means.")
            .source(CELLS),
        Rule::new(BATTERY_ENERGY, (BATTERY_VOLTAGE, BATTERY_CHARGE), battery::energy)
            .title("Volts times ampere hours")
            .formula(r"\q{battery-energy} = \q{battery-voltage} \cdot \q{battery-charge}")
            .assumes(&["The cell voltage given is the mean over the discharge."])
            .holds("Full to empty; see the usable energy for what may be taken.")
            .source("OpenStax, College Physics 2e, section 20.4")
            .cautions(FIRE),
        Rule::new(USABLE_ENERGY, (BATTERY_ENERGY, USABLE_SHARE), usable_energy)
            .title("Only a part may be taken")
            .formula(r"\q{usable-energy} = \q{battery-energy} \cdot \q{usable-share}")
            .assumes(&["Warm cells; a cold pack gives less."])
            .holds("Taking 80 % is the habit (common practice); lead-acid lives longer on 50 %.")
            .source("Common practice, no published source")
            .cautions(SHARE_ASSUMED),
        Rule::new(LABEL_CURRENT, (CELL_C_RATE, BATTERY_CHARGE), battery::c_rate_current)
            .title("The label's C rate as a current")
            .formula(r"\q{label-current} = \q{cell-c-rate} \cdot \dfrac{\q{battery-charge}}{1\,\mathrm{h}}")
            .assumes(&["The label is honest: it often is not. Trust the sag you measure."])
            .holds("A new pack at room temperature.")
            .source("The definition of the C rate, MIT Electric Vehicle Team, A Guide to Understanding Battery Specifications, 2008 (from memory)"),
    ]
}

fn limits() -> Vec<Rule> {
    vec![
        Rule::new(
            SUPPLY_RESISTANCE,
            (BATTERY_RESISTANCE, Maybe(WIRE_RESISTANCE), JOINT_RESISTANCE),
            supply,
        )
        .title("The controller sees battery, wires and joints in a row")
        .formula(r"\q{supply-resistance} = \q{battery-resistance} + \q{wire-resistance} + \q{joint-resistance}")
        .assumes(&["Pack at room temperature."])
        .holds("Steady current.")
        .source(CELLS)
        .cautions(NO_WIRES),
        Rule::new(
            COLD_SUPPLY_RESISTANCE,
            (BATTERY_RESISTANCE, Maybe(WIRE_RESISTANCE), JOINT_RESISTANCE, COLD_RESISTANCE_FACTOR),
            cold_supply,
        )
        .title("The same with the pack cold")
        .formula(r"\q{cold-supply-resistance} = \q{cold-resistance-factor} \cdot \q{battery-resistance} + \q{wire-resistance} + \q{joint-resistance}")
        .assumes(&["Only the pack resists more in the cold; it warms itself as it works."])
        .holds("The first minutes of the coldest day; twice is usual near -10 °C (common practice, measure yours).")
        .source(CELLS)
        .cautions(NO_WIRES),
        Rule::new(
            CUTOFF_CURRENT,
            (BATTERY_VOLTAGE, BATTERY_CUTOFF_VOLTAGE, SUPPLY_RESISTANCE),
            battery::cutoff_current,
        )
        .title("The current whose sag reaches the cut-off")
        .formula(r"\q{cutoff-current} = \dfrac{\q{battery-voltage} - \q{battery-cutoff-voltage}}{\q{supply-resistance}}")
        .assumes(&["The controller trips on the voltage it sees itself, at once."])
        .holds("The state of charge the cell voltage is given for; it falls as the pack empties.")
        .source(CELLS),
        Rule::new(
            COLD_CUTOFF_CURRENT,
            (BATTERY_VOLTAGE, BATTERY_CUTOFF_VOLTAGE, COLD_SUPPLY_RESISTANCE),
            battery::cutoff_current,
        )
        .title("The same with the pack cold")
        .formula(r"\q{cold-cutoff-current} = \dfrac{\q{battery-voltage} - \q{battery-cutoff-voltage}}{\q{cold-supply-resistance}}")
        .assumes(&["The controller trips on the voltage it sees itself, at once."])
        .holds("The first minutes of the coldest day.")
        .source(CELLS)
        .cautions(&[Caution {
            when: always,
            says: "Never charge a cold pack: follow its maker's lowest charging temperature, often 0 °C or more.",
        }]),
    ]
}

fn lead_acid() -> Vec<Rule> {
    vec![
        Rule::new(
            PEUKERT_TIME,
            (BATTERY_CHARGE, RATED_DISCHARGE_TIME, BATTERY_CURRENT, PEUKERT_EXPONENT),
            battery::peukert_time,
        )
        .title("Taken faster, a lead-acid battery gives less")
        .formula(r"\q{peukert-time} = \q{rated-discharge-time} \left( \dfrac{\q{battery-charge}}{\q{battery-current} \cdot \q{rated-discharge-time}} \right)^{\q{peukert-exponent}}")
        .assumes(LEAD)
        .holds("Steady current, one temperature; for light loads it promises too much.")
        .source("W. Peukert, 1897, in the form of battery makers' manuals"),
        Rule::new(PEUKERT_CHARGE, (BATTERY_CURRENT, PEUKERT_TIME), battery::charge_given)
            .title("Current times the time it lasts")
            .formula(r"\q{peukert-charge} = \q{battery-current} \cdot \q{peukert-time}")
            .assumes(LEAD)
            .holds("Steady current, one temperature.")
            .source("The definition of current, OpenStax, College Physics 2e, section 20.1"),
        Rule::new(
            TESTED_PEUKERT_EXPONENT,
            (BATTERY_CHARGE, RATED_DISCHARGE_TIME, TEST_DISCHARGE_CURRENT, TEST_DISCHARGE_TIME),
            battery::peukert_exponent,
        )
        .title("Two discharges set the exponent")
        .formula(r"\q{tested-peukert-exponent} = \dfrac{\ln \left( \q{rated-discharge-time} / \q{test-discharge-time} \right)}{\ln \left( \q{test-discharge-current} \cdot \q{rated-discharge-time} / \q{battery-charge} \right)}")
        .assumes(&["A lead-acid battery, full at the start of both, at one temperature.", "The label's capacity is what it gives over its rated time."])
        .holds("A test a few times faster than the rated discharge.")
        .source("W. Peukert, 1897, as taught in battery handbooks (from memory)")
        .cautions(&[Caution {
            when: always,
            says: "Charge a lead-acid battery again at once after the test, by its maker's manual and in moving air: it gives off a gas that explodes.",
        }]),
        Rule::new(LEAD_ACID_COLD_SHARE, (BATTERY_TEMPERATURE, CAPACITY_COEFFICIENT), lead_acid_share)
            .title("Lead-acid loses capacity with each degree under 25 °C")
            .formula(r"\q{lead-acid-cold-share} = 1 + \q{capacity-coefficient} \left( \q{battery-temperature} - 298\,\mathrm{K} \right)")
            .assumes(LEAD)
            .holds("From -20 °C to 40 °C; fast discharges lose nearly twice as much.")
            .source("Capacity correction of battery makers, 0.6 % for each kelvin (IEC 60896 form)")
            .cautions(&[Caution {
                when: freezing,
                says: "An empty lead-acid battery can freeze and burst: keep it charged.",
            }]),
    ]
}

fn freezing(values: &Values) -> bool {
    below(values, BATTERY_TEMPERATURE, 273.15)
}

fn supply(battery: Resistance, wires: Option<Resistance>, joints: Resistance) -> Resistance {
    battery + wires.unwrap_or_default() + joints
}

fn cold_supply(
    battery: Resistance,
    wires: Option<Resistance>,
    joints: Resistance,
    factor: Ratio,
) -> Resistance {
    supply(battery * factor, wires, joints)
}

fn lead_acid_share(temperature: Temperature, coefficient: TemperatureCoefficient) -> Ratio {
    battery::cold_capacity(temperature, Temperature::from_si(298.15), coefficient)
}
