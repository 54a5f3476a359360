//! What curves look like, held by the hash of their pixels.
//!
//! Drawn by software with the shipped letters alone, so the pixels are the same on every machine.
//! When one differs, look at the picture that the failure names; if it is right, put its hash into
//! `tests/golden/plots.txt`.

use heftwise::app::block::curve::style;
use heftwise::app::theme::NIGHT;
use heftwise::plot::save::pixels;
use heftwise::plot::{PlotSpec, PlotStyle, svg};
use heftwise::quantity::UnitSet;
use heftwise::study::curve::Scale;

use super::{rich, spec};

const KNOWN: &str = include_str!("../../golden/plots.txt");

fn night() -> PlotStyle {
    let [red, green, blue, _] = NIGHT.paper.into_rgba8();
    let paper = (red, green, blue);
    PlotStyle { background: Some(paper), ground: paper, ..style(true) }
}

fn scenes() -> Vec<(&'static str, PlotSpec, PlotStyle)> {
    let masses = Some(("mass", &["4 kg", "5 kg", "7 kg", "8 kg", "9 kg"][..]));
    let plain = || rich(None, true, &[]);
    vec![
        ("linear", plain(), PlotStyle::PAPER),
        ("log", spec(Scale::Log, UnitSet::Metric), PlotStyle::PAPER),
        ("imperial", spec(Scale::Linear, UnitSet::Imperial), PlotStyle::PAPER),
        ("family", rich(masses, true, &[]), PlotStyle::PAPER),
        ("range", rich(None, false, &[]), PlotStyle::PAPER),
        ("companions", rich(None, true, &[4.0, 9.0]), PlotStyle::PAPER),
        ("companion-outside", rich(None, true, &[2500.0]), PlotStyle::PAPER),
        ("all", rich(masses, false, &[14.9]), PlotStyle::PAPER),
        ("night", rich(masses, false, &[14.9]), night()),
    ]
}

/// FNV-1a in 64 bits, which is the same on every machine and in every version.
fn hash(bytes: &[u8]) -> String {
    let hash = bytes.iter().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3)
    });
    format!("{hash:016x}")
}

#[test]
fn curves_look_as_they_did() {
    let mut wrong = Vec::new();
    for (name, spec, style) in scenes() {
        let drawn = pixels(&svg(&spec, (480, 320), &style), 1.0).unwrap();
        let found = hash(drawn.data());
        let known = KNOWN.lines().find_map(|line| line.strip_prefix(name)?.strip_prefix(' '));
        if known != Some(&found) {
            let path =
                std::path::Path::new(env!("CARGO_TARGET_TMPDIR")).join(format!("{name}.png"));
            std::fs::write(&path, drawn.encode_png().unwrap()).unwrap();
            wrong.push(format!("{name} {found}  (look at {})", path.display()));
        }
    }
    assert!(wrong.is_empty(), "these look otherwise:\n{}", wrong.join("\n"));
}

#[test]
fn a_hash_tells_pictures_apart() {
    let of = |spec: &PlotSpec, style: &PlotStyle| {
        hash(pixels(&svg(spec, (480, 320), style), 1.0).unwrap().data())
    };
    let plain = rich(None, true, &[]);
    assert_eq!(of(&plain, &PlotStyle::PAPER), of(&plain, &PlotStyle::PAPER));
    assert_ne!(of(&plain, &PlotStyle::PAPER), of(&plain, &night()));
    assert_ne!(of(&plain, &PlotStyle::PAPER), of(&rich(None, false, &[]), &PlotStyle::PAPER));
}
