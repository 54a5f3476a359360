//! What touches the ground: tracks, wheels and skis.

use crate::quantity::{Area, Entry, Id, Length, Pressure, Ratio, Topic::RunningGear};

pub const TRACK_COUNT: Id<Ratio> = Id::new("track-count");
pub const TRACK_WIDTH: Id<Length> = Id::new("track-width");
pub const CONTACT_LENGTH: Id<Length> = Id::new("contact-length");
pub const WHEEL_COUNT: Id<Ratio> = Id::new("wheel-count");
pub const WHEEL_DIAMETER: Id<Length> = Id::new("wheel-diameter");
pub const WHEEL_WIDTH: Id<Length> = Id::new("wheel-width");
pub const WHEEL_SQUASH: Id<Length> = Id::new("wheel-squash");
pub const INFLATION_PRESSURE: Id<Pressure> = Id::new("inflation-pressure");
pub const WHEEL_LOAD_SHARE: Id<Ratio> = Id::new("wheel-load-share");
pub const SKI_COUNT: Id<Ratio> = Id::new("ski-count");
pub const SKI_LENGTH: Id<Length> = Id::new("ski-length");
pub const SKI_WIDTH: Id<Length> = Id::new("ski-width");
pub const TRACK_CONTACT_AREA: Id<Area> = Id::new("track-contact-area");
pub const WHEEL_PATCH_LENGTH: Id<Length> = Id::new("wheel-patch-length");
pub const WHEEL_AREA_BY_SQUASH: Id<Area> = Id::new("wheel-area-by-squash");
pub const WHEEL_AREA_BY_INFLATION: Id<Area> = Id::new("wheel-area-by-inflation");
pub const WHEEL_CONTACT_AREA: Id<Area> = Id::new("wheel-contact-area");
pub const SKI_CONTACT_AREA: Id<Area> = Id::new("ski-contact-area");
pub const CONTACT_AREA: Id<Area> = Id::new("contact-area");

pub(super) const ENTRIES: &[Entry] = &[
    Entry::given(
        RunningGear,
        TRACK_COUNT,
        "number of tracks",
        "n_t",
        "How many tracks carry the machine.",
    )
    .assumed(0.0)
    .whole()
    .usual(0.0, 4.0),
    Entry::given(
        RunningGear,
        TRACK_WIDTH,
        "track width",
        "b",
        "How wide one track is where it presses on the ground.",
    )
    .units(&[], &["in"])
    .above_zero()
    .usual(0.01, 0.5),
    Entry::given(
        RunningGear,
        CONTACT_LENGTH,
        "contact length",
        "L",
        "How long the flat of one track is where it presses on the ground: not the whole belt.",
    )
    .units(&[], &["in"])
    .above_zero()
    .usual(0.05, 2.0),
    Entry::given(
        RunningGear,
        WHEEL_COUNT,
        "number of wheels",
        "n_w",
        "How many wheels carry the machine.",
    )
    .assumed(0.0)
    .whole()
    .usual(0.0, 8.0),
    Entry::given(
        RunningGear,
        WHEEL_DIAMETER,
        "wheel diameter",
        "D",
        "How tall one wheel is, unloaded, over the tread.",
    )
    .units(&[], &["in"])
    .above_zero()
    .usual(0.04, 1.2),
    Entry::given(
        RunningGear,
        WHEEL_WIDTH,
        "wheel width",
        "b_w",
        "How wide one wheel presses on the ground.",
    )
    .units(&[], &["in"])
    .above_zero()
    .usual(0.01, 0.5),
    Entry::given(
        RunningGear,
        WHEEL_SQUASH,
        "tyre squash",
        r"\delta",
        "How much lower the axle sits when the wheel is loaded.",
    )
    .usual(0.0, 0.1)
    .free(),
    Entry::given(
        RunningGear,
        INFLATION_PRESSURE,
        "inflation pressure",
        "p_i",
        "What the gauge reads in the tyre, above the air outside.",
    )
    .above_zero()
    .usual(5e3, 3e5)
    .free(),
    Entry::given(
        RunningGear,
        WHEEL_LOAD_SHARE,
        "share of the load on the wheels",
        "s_w",
        "How much of the weight the wheels carry; the rest is on tracks or skis.",
    )
    .assumed(1.0)
    .possible(0.0, 1.0)
    .units(&["%"], &["%"])
    .usual(0.0, 1.0)
    .free(),
    Entry::given(
        RunningGear,
        SKI_COUNT,
        "number of skis",
        "n_s",
        "How many skis or runners carry the machine.",
    )
    .assumed(0.0)
    .whole()
    .usual(0.0, 4.0),
    Entry::given(
        RunningGear,
        SKI_LENGTH,
        "ski length",
        "L_s",
        "How long the flat of one ski is where it presses on the ground.",
    )
    .units(&[], &["in"])
    .above_zero()
    .usual(0.05, 1.5),
    Entry::given(
        RunningGear,
        SKI_WIDTH,
        "ski width",
        "b_s",
        "How wide one ski is where it presses on the ground.",
    )
    .units(&[], &["in"])
    .above_zero()
    .usual(0.01, 0.3),
    Entry::found(
        RunningGear,
        TRACK_CONTACT_AREA,
        "contact area of the tracks",
        r"A_{\mathrm{tracks}}",
        "How much ground all the tracks together press on.",
    ),
    Entry::found(
        RunningGear,
        WHEEL_PATCH_LENGTH,
        "length of a wheel's patch",
        r"L_w",
        "How long the flat under one squashed wheel is.",
    ),
    Entry::found(
        RunningGear,
        WHEEL_AREA_BY_SQUASH,
        "wheel contact from squash",
        r"A_{\mathrm{squash}}",
        "How much ground all the wheels press on, from how far they squash.",
    ),
    Entry::found(
        RunningGear,
        WHEEL_AREA_BY_INFLATION,
        "wheel contact from inflation",
        r"A_{\mathrm{air}}",
        "How much ground all the wheels press on, if the air inside carries the whole load.",
    ),
    Entry::found(
        RunningGear,
        WHEEL_CONTACT_AREA,
        "contact area of the wheels",
        r"A_{\mathrm{wheels}}",
        "How much ground all the wheels together press on.",
    ),
    Entry::found(
        RunningGear,
        SKI_CONTACT_AREA,
        "contact area of the skis",
        r"A_{\mathrm{skis}}",
        "How much ground all the skis together press on.",
    ),
    Entry::found(
        RunningGear,
        CONTACT_AREA,
        "contact area",
        "A",
        "How much ground the whole machine presses on.",
    )
    .headline(),
];
