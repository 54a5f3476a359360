//! Numbers as people write and read them. The spellings are common practice; where the way a
//! number is shown follows a standard, the standard is named.

use approx::assert_relative_eq;
use heftwise::quantity::unit::find;
use heftwise::quantity::{
    Dimension, Entry, NumberFault, UnitSet, Units, catalogue, field_text, parse, parse_in,
    show_plain, units_of, unusual,
};
use proptest::prelude::*;

fn entry(id: &str) -> &'static Entry {
    catalogue::find(id).expect("an id of the catalogue")
}

fn si(text: &str, id: &str) -> f64 {
    parse(text, entry(id)).unwrap_or_else(|error| panic!("{text}: {error}")).si
}

fn words(text: &str, id: &str) -> String {
    match parse(text, entry(id)) {
        Ok(amount) => panic!("“{text}” was read as {amount:?}"),
        Err(error) => {
            assert!(text.get(error.at.clone()).is_some(), "{text}: {:?}", error.at);
            error.to_string()
        }
    }
}

fn metric(id: &str, si: f64) -> String {
    Units::default().show(entry(id), si).to_string()
}

#[test]
fn plain_spellings() {
    for (text, id, expected) in [
        ("6.4 kg", "mass", 6.4),
        ("6.4kg", "mass", 6.4),
        ("  6.4  kg  ", "mass", 6.4),
        ("+6.4 kg", "mass", 6.4),
        ("2,5 kg", "mass", 2.5),
        ("0,250 kg", "mass", 0.25),
        ("12,34 kg", "mass", 12.34),
        (".5 kg", "mass", 0.5),
        ("5. kg", "mass", 5.0),
        ("412 g", "mass", 0.412),
        ("14 lb", "mass", 14.0 * 0.45359237),
        ("14 lbs.", "mass", 14.0 * 0.45359237),
        ("90mm", "track-width", 0.09),
        ("1.2e3 Pa", "ground-pressure", 1200.0),
        ("1.2E-3 MPa", "ground-pressure", 1200.0),
        ("1.2×10³ Pa", "ground-pressure", 1200.0),
        ("1.2 * 10^3 Pa", "ground-pressure", 1200.0),
        ("−5 °", "slope", -5.0 * 0.0174532925199433),
        ("-5°", "slope", -5.0 * 0.0174532925199433),
        ("- 5 degrees", "slope", -5.0 * 0.0174532925199433),
        ("30 km/h", "impact-speed", 30.0 / 3.6),
        ("30 kph", "impact-speed", 30.0 / 3.6),
        ("25 %", "wheel-load-share", 0.25),
        ("0.25", "wheel-load-share", 0.25),
        ("2", "track-count", 2.0),
        ("0", "mass", 0.0),
        ("30 cm2", "impact-patch", 0.003),
    ] {
        assert_relative_eq!(si(text, id), expected, max_relative = 1e-12);
    }
}

#[test]
fn digit_groups() {
    for text in
        ["1 200 kg", "1\u{a0}200 kg", "1\u{2009}200 kg", "1\u{202f}200 kg", "1'200 kg", "1’200 kg"]
    {
        assert_eq!(si(text, "mass"), 1200.0, "{text}");
    }
    assert_eq!(si("1.200,5 kg", "mass"), 1200.5);
    assert_eq!(si("1,200.5 kg", "mass"), 1200.5);
    assert_eq!(si("1 200,5 kg", "mass"), 1200.5);
    assert_eq!(si("1,234,567 kg", "mass"), 1234567.0);
    assert_eq!(si("1.234.567 kg", "mass"), 1234567.0);
    assert_eq!(si("1.200 kg", "mass"), 1.2, "the point is the decimal mark");
}

#[test]
fn a_comma_that_reads_two_ways_is_refused() {
    for (text, one, other) in [
        ("1,200 kg", "1.2", "1200"),
        ("−12,345 kg", "12.345", "12345"),
        ("100,000", "100", "100000"),
    ] {
        let words = words(text, "mass");
        assert!(words.contains(&format!("write {one} or {other}")), "{words}");
    }
    for text in ["1,20,0 kg", "1.2.3 kg", "1,2.3,4 kg", "1.23,456.7 kg"] {
        let error = parse(text, entry("mass")).expect_err(text);
        assert!(matches!(error.fault, NumberFault::OddSeparators { .. }), "{text}: {error}");
    }
}

#[test]
fn fractions_and_sums() {
    for (text, inches) in [
        ("3 1/2 in", 3.5),
        ("3-1/2 in", 3.5),
        ("3½ in", 3.5),
        ("3 ½\"", 3.5),
        ("¾ in", 0.75),
        ("-3 1/2 in", -3.5),
        ("1/2 in", 0.5),
        ("5 ft 3 in", 63.0),
        ("5' 3\"", 63.0),
        ("5'3\"", 63.0),
        ("5′ 3 1/2″", 63.5),
        ("-5 ft 3 in", -63.0),
    ] {
        assert_relative_eq!(si(text, "balance-offset"), inches * 0.0254, max_relative = 1e-12);
    }
    assert_relative_eq!(si("3 lb 4 oz", "mass"), 3.25 * 0.45359237, max_relative = 1e-12);
    assert!(words("3 in 5 ft", "track-width").contains("larger unit first"));
    assert!(words("5' 3", "track-width").contains("Add a unit"));
    assert!(words("1/0 in", "track-width").contains("zero"));
}

#[test]
fn spreads() {
    for (text, id, value, spread) in [
        ("0.25 ± 0.05", "restitution", 0.25, 0.05),
        ("0.25 +/- 0.05", "restitution", 0.25, 0.05),
        ("0.25+-0.05", "restitution", 0.25, 0.05),
        ("90 ± 2 mm", "track-width", 0.09, 0.002),
        ("90 mm ± 2 mm", "track-width", 0.09, 0.002),
        ("90 mm ± 2", "track-width", 0.09, 0.002),
        ("9 cm ± 2 mm", "track-width", 0.09, 0.002),
        ("90 mm ± 5 %", "track-width", 0.09, 0.0045),
        ("-90 mm ± 5 %", "balance-offset", -0.09, 0.0045),
        ("25 % ± 5 %", "wheel-load-share", 0.25, 0.05),
        ("50 g ± 10 %", "shock-limit", 50.0, 5.0),
        ("0 ± 2 mm", "balance-offset", 0.0, 0.002),
    ] {
        let amount = parse(text, entry(id)).unwrap_or_else(|error| panic!("{text}: {error}"));
        assert_relative_eq!(amount.si, value, max_relative = 1e-12);
        assert_relative_eq!(amount.spread.expect("a spread"), spread, max_relative = 1e-12);
    }
    assert_eq!(parse("90 mm", entry("track-width")).expect("90 mm").spread, None);
    assert!(words("90 ± -2 mm", "track-width").contains("negative"));
    assert!(words("90 ± 2 ± 1 mm", "track-width").contains("Only one ±"));
    assert!(words("90 mm ±", "track-width").contains("not a number"));
    assert!(words("90 ± 5 %", "track-width").contains("Add a unit"));
    let both = words("0.25 ± 5 %", "restitution");
    assert!(both.contains("0.25 % ± 5 %") && both.contains("0.25 ± 0.0125"), "{both}");
}

#[test]
fn refusals_say_how_to_mend_it() {
    assert_eq!(words("", "mass"), "Nothing is written here. Write a number in kg, g or lb.");
    assert_eq!(words("6.4", "mass"), "Add a unit: kg, g or lb.");
    assert!(words("heavy", "mass").starts_with("“heavy” is not a number"));
    assert_eq!(
        words("90 mm", "ground-pressure"),
        "mm is a length, where a pressure belongs. Write the ground pressure (mean) in Pa, kPa or psi."
    );
    assert!(words("6.4 kgg", "mass").contains("perhaps kg is meant"));
    assert!(words("3 N·m", "kinetic-energy").contains("N·m is a torque"));
    assert!(words("2.5", "track-count").contains("whole number"));
    assert!(words("2 kg", "track-count").contains("as a whole number, without a unit"));
    for text in ["nan kg", "inf kg", "NaN", "infinity", "∞ kg", "not a number"] {
        assert!(words(text, "mass").contains("is not a number"), "{text}");
    }
    for text in ["1e999 kg", "1e308 t", "9e99999999999999999999 kg"] {
        assert!(words(text, "mass").contains("too large"), "{text}");
    }
}

#[test]
fn errors_point_at_the_place() {
    let at = |text: &str| parse(text, entry("mass")).expect_err(text).at;
    assert_eq!(at("6.4 parsecs"), 4..11);
    assert_eq!(at("−1,200 kg"), 3..8, "bytes, behind the three of the minus");
    assert_eq!(at("6 kg ± 2 mm"), 10..12);
}

#[test]
fn a_field_supplies_its_unit() {
    let width = entry("track-width");
    let mm = find(width, "mm").expect("mm");
    assert_relative_eq!(parse_in("90", width, mm).expect("90").si, 0.09);
    assert_relative_eq!(parse_in("3 1/2 in", width, mm).expect("in").si, 0.0889);
    let spread = parse_in("90 ± 2", width, mm).expect("90 ± 2");
    assert_relative_eq!(spread.spread.expect("a spread"), 0.002);
    let relative = parse_in("90 ± 5 %", width, mm).expect("90 ± 5 %");
    assert_relative_eq!(relative.spread.expect("a spread"), 0.0045, max_relative = 1e-12);
    let share = entry("wheel-load-share");
    let percent = find(share, "%").expect("%");
    let points = parse_in("25 ± 5 %", share, percent).expect("25 ± 5 %");
    assert_eq!((points.si, points.spread), (0.25, Some(0.05)));
}

/// Three significant figures; a space between number and unit but none before the degree sign
/// (SI Brochure, 9th edition, 5.4.3); groups of three parted by a thin space (5.4.4).
#[test]
fn shown_with_three_figures_in_a_handy_unit() {
    for (id, value, expected) in [
        ("ground-pressure", 830.0, "830 Pa"),
        ("ground-pressure", 999.4, "999 Pa"),
        ("ground-pressure", 999.6, "1.00 kPa"),
        ("ground-pressure", 2.5e6, "2.50 MPa"),
        ("track-width", 0.09, "90.0 mm"),
        ("contact-length", 1.2, "1.20 m"),
        ("contact-area", 0.0000005, "0.500 mm²"),
        ("contact-area", 0.0468, "468 cm²"),
        ("contact-area", 0.5, "0.500 m²"),
        ("mass", 0.412, "412 g"),
        ("mass", 6.4, "6.40 kg"),
        ("mass", 210.0, "210 kg"),
        ("mass", 0.0, "0 kg"),
        ("mass", -0.0, "0 kg"),
        ("weight", 62.76256, "62.8 N"),
        ("stop-time", 0.02, "20.0 ms"),
        ("stop-time", 90.0, "1.50 min"),
        ("impact-speed", 8.333333, "8.33 m/s"),
        ("slope", -0.0872664626, "−5.00°"),
        ("wheel-load-share", 0.25, "25.0 %"),
        ("deceleration-g", 12.34, "12.3 g"),
        ("deceleration", 121.0, "121 m/s²"),
        ("track-count", 2.0, "2"),
        ("standing-people", 0.5, "0.500"),
        ("end-pressure-ratio", 12345.0, "12\u{2009}300"),
        ("end-pressure-ratio", 1.2e12, "1.20×10¹²"),
        ("end-pressure-ratio", 1.2e-12, "1.20×10⁻¹²"),
        ("mass", f64::NAN, "not a number"),
        ("mass", f64::INFINITY, "not a number"),
    ] {
        assert_eq!(metric(id, value), expected, "{id} {value}");
    }
}

#[test]
fn shown_in_a_unit_asked_for() {
    let units = Units::default();
    let show = |id: &str, si: f64, unit: &str| {
        units.show_in(entry(id), si, unit).map(|shown| shown.to_string())
    };
    assert_eq!(show("ground-pressure", 830.0, "kPa").expect("kPa"), "0.830 kPa");
    assert_eq!(show("peak-impact-force", 6400.0, "N").expect("N"), "6400 N");
    assert_eq!(show("peak-impact-force", 64000.0, "N").expect("N"), "64\u{2009}000 N");
    let refused = show("ground-pressure", 830.0, "mm").expect_err("a length").to_string();
    assert!(refused.contains("mm") && refused.contains("kPa"), "{refused}");
}

#[test]
fn sets_and_picks() {
    let mut units = Units { set: UnitSet::Imperial, ..Units::default() };
    assert_eq!(units.show(entry("mass"), 6.35029318).to_string(), "14.0 lb");
    assert_eq!(units.show(entry("track-width"), 0.0889).to_string(), "3.50 in");
    assert_eq!(units.show(entry("impact-patch"), 0.00064516).to_string(), "1.00 in²");
    units.picks.insert("impact-speed".to_owned(), "km/h".to_owned());
    units.picks.insert("mass".to_owned(), "furlong".to_owned());
    assert_eq!(units.show(entry("impact-speed"), 10.0).to_string(), "36.0 km/h");
    assert_eq!(
        units.show(entry("mass"), 6.35029318).to_string(),
        "14.0 lb",
        "a misfit is passed over"
    );
    let kept = toml::to_string(&units).expect("units as TOML");
    assert_eq!(toml::from_str::<Units>(&kept).expect("units from TOML"), units);
    assert_eq!(toml::from_str::<Units>("").expect("nothing said"), Units::default());
}

#[test]
fn ranges_and_spreads_in_one_unit() {
    let units = Units::default();
    let pressure = entry("ground-pressure");
    assert_eq!(units.show_range(pressure, (790.0, 830.0, 870.0)), "790 to 870 Pa");
    assert_eq!(units.show_range(pressure, (790.0, 1330.0, 1870.0)), "0.790 to 1.87 kPa");
    assert_eq!(units.show_range(pressure, (790.0, 930.0, 1070.0)), "790 to 1070 Pa");
    assert_eq!(units.show_spread(entry("track-width"), 0.09, 0.002), "90.0 ± 2.0 mm");
    assert_eq!(units.show_spread(entry("restitution"), 0.25, 0.05), "0.250 ± 0.050");
    assert_eq!(units.show_spread(pressure, 830.0, 0.4), "830.0 ± 0.4 Pa");
    assert_eq!(units.show_spread(pressure, 6412.0, 150.0), "6.41 ± 0.15 kPa");
    let counts = entry("standing-people");
    assert_eq!(units.show_spread(counts, 6412.0, 150.0), "6410 ± 150");
    assert_eq!(units.show_spread(counts, 6412.0, 5.0), "6412 ± 5");
    assert_eq!(units.show_spread(counts, 0.0, 0.2), "0.00 ± 0.20");
    assert_eq!(units.show_spread(counts, 1.5, 0.0), "1.50 ± 0.00");
    assert_eq!(units.show_range(pressure, (f64::NAN, 830.0, 870.0)), "not a number");
    assert_eq!(units.show_spread(pressure, 830.0, f64::NAN), "not a number");
}

#[test]
fn bounds_without_needless_zeros() {
    assert_eq!(show_plain(entry("mass"), 0.0), "0 kg");
    assert_eq!(show_plain(entry("slope"), 80.0_f64.to_radians()), "80°");
    assert_eq!(show_plain(entry("slope"), -80.0_f64.to_radians()), "−80°");
    assert_eq!(show_plain(entry("drop-height"), 100.0), "100 m");
}

#[test]
fn edit_fields_keep_the_value() {
    let units = Units::default();
    for (id, si, expected) in [
        ("mass", 6.4, "6.4 kg"),
        ("track-width", 0.09, "90 mm"),
        ("gravity", 9.80665, "9.80665 m/s²"),
        ("slope", -5.0_f64.to_radians(), "-5°"),
        ("impact-speed", 1.0 / 3.0, "0.33333 m/s"),
        ("track-count", 2.0, "2"),
        ("wheel-load-share", 0.7, "70 %"),
        ("balance-offset", -0.0, "0 mm"),
        ("stop-time", 292.6, "292.6 s"),
    ] {
        assert_eq!(field_text(entry(id), si, &units), expected);
    }
}

#[test]
fn unusual_numbers_are_asked_about() {
    let units = Units::default();
    assert_eq!(unusual(entry("mass"), 6.4, &units), None);
    assert_eq!(
        unusual(entry("mass"), 7000.0, &units).expect("a hint"),
        "7 t is outside the usual 300 g to 500 kg; check the unit."
    );
    assert_eq!(unusual(entry("weight"), 1e9, &units), None, "no usual range is known");
}

#[test]
fn units_on_offer_begin_with_the_fitting_ones() {
    let symbols = |id: &str| units_of(entry(id)).iter().map(|u| u.symbol).collect::<Vec<_>>();
    assert_eq!(symbols("mass")[..5], ["kg", "g", "t", "lb", "oz"]);
    assert_eq!(symbols("deceleration-g"), ["g", "", "%"]);
    assert_eq!(symbols("track-count"), [""]);
    assert!(symbols("impact-speed").contains(&"km/h"));
}

fn any_entry() -> impl Strategy<Value = &'static Entry> {
    (0..catalogue::all().len()).prop_map(|i| &catalogue::all()[i])
}

fn any_size() -> impl Strategy<Value = f64> {
    (-1.0..1.0f64, -12..13i32).prop_map(|(x, power)| x * 10f64.powi(power))
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_text_gets_a_number_or_words(text in "\\PC{0,30}", entry in any_entry()) {
        match parse(&text, entry) {
            Ok(amount) => prop_assert!(amount.si.is_finite()),
            Err(error) => {
                prop_assert!(text.get(error.at.clone()).is_some(), "{:?}", error.at);
                prop_assert!(!error.to_string().is_empty());
            }
        }
    }

    #[test]
    fn any_near_number_gets_a_number_or_words(
        text in "[-+−]?[0-9.,'½/ e×⁻³]{0,12} ?[a-zA-Zµ°\"'%²·*/^ ]{0,6}(±|\\+-)?[0-9., ]{0,4}[a-z%]{0,3}",
        entry in any_entry(),
    ) {
        match parse(&text, entry) {
            Ok(amount) => {
                prop_assert!(amount.si.is_finite());
                prop_assert!(amount.spread.is_none_or(|spread| spread.is_finite() && spread >= 0.0));
            }
            Err(error) => prop_assert!(text.get(error.at.clone()).is_some(), "{:?}", error.at),
        }
    }

    #[test]
    fn what_is_shown_reads_back(si in any_size(), entry in any_entry(), imperial: bool) {
        prop_assume!(!entry.whole);
        let set = if imperial { UnitSet::Imperial } else { UnitSet::Metric };
        let units = Units { set, ..Units::default() };
        let shown = units.show(entry, si).to_string();
        let read = parse(&shown, entry);
        prop_assert!(read.is_ok(), "{shown}: {read:?}");
        // The figures of a temperature count from the zero of its unit, not from the SI zero.
        let zero = if entry.dimension == Dimension::Temperature { 273.15 } else { 0.0 };
        let size = si.abs() + zero;
        prop_assert!((read.unwrap().si - si).abs() <= 5.01e-3 * size, "{shown}");
        let field = field_text(entry, si, &units);
        let unit = units.unit_for(entry, si);
        let read = parse_in(&field, entry, unit);
        prop_assert!(read.is_ok(), "{field}: {read:?}");
        prop_assert!((read.unwrap().si - si).abs() <= 5.01e-5 * size, "{field}");
    }

    #[test]
    fn short_numbers_survive_an_edit_field(digits in -99_999..99_999i32, power in -3..4i32, entry in any_entry()) {
        prop_assume!(!entry.whole);
        let units = Units::default();
        let unit = units.unit_for(entry, 0.0);
        let si = unit.to_si(f64::from(digits) * 10f64.powi(power));
        let field = field_text(entry, si, &units);
        let read = parse(&field, entry);
        prop_assert!(read.is_ok(), "{field}: {read:?}");
        prop_assert!((read.unwrap().si - si).abs() <= 1e-9 * si.abs(), "{field}");
    }

    #[test]
    fn shown_numbers_have_a_handy_size(exponent in -3.0..6.0f64) {
        let shown = Units::default().show(entry("ground-pressure"), 10f64.powf(exponent.max(0.0)));
        let number: f64 = shown.number.parse().unwrap();
        prop_assert!((1.0..1000.0).contains(&number), "{shown}");
    }
}
