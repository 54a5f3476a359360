//! Labels never collide and never leave the picture.

use heftwise::plot::{Build, Layout, Part, PlotSpec, Rect, plot_rect, texts};
use heftwise::quantity::catalogue::{self, ground::*, machine::*};
use heftwise::quantity::{UnitSet, Units};
use heftwise::study::Curve;
use heftwise::study::curve::{Ask, Scale};
use proptest::prelude::*;

use super::{sandpiper, spec};

pub(super) fn sound(spec: &PlotSpec, layout: &Layout) -> Result<(), TestCaseError> {
    let placed = texts(spec, layout);
    let bounds: Vec<Rect> = placed.iter().map(|t| t.bounds(layout.text_size)).collect();
    for (i, a) in bounds.iter().enumerate() {
        prop_assert!(layout.surface().holds_all(a), "{:?} leaves the picture", placed[i]);
        for (j, b) in bounds.iter().enumerate().skip(i + 1) {
            prop_assert!(!a.overlaps(b), "{:?} and {:?}", placed[i], placed[j]);
        }
    }
    Ok(())
}

#[test]
fn all_is_said_when_there_is_room() {
    let spec = spec(Scale::Linear, UnitSet::Metric);
    let layout = Layout::new((640.0, 400.0), 14.0);
    let placed = texts(&spec, &layout);
    let says = |part: Part| placed.iter().filter(|t| t.part == part).count();
    assert_eq!(says(Part::Caption), 2);
    assert_eq!(says(Part::Limit), 1);
    assert_eq!(placed.iter().filter(|t| matches!(t.part, Part::Dot(_))).count(), 2);
    let words: Vec<&str> = placed.iter().map(|t| t.text.as_str()).collect();
    for label in
        ["Sandpiper: 0.830 kPa", "Bullock: 1.93 kPa", "holding pressure of the ground 1.18 kPa"]
    {
        assert!(words.contains(&label), "{label} in {words:?}");
    }
    assert_eq!(says(Part::Tick), spec.x.ticks.len() + spec.y.ticks.len());
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn labels_never_collide(
        width in 120.0..1400.0f32,
        height in 90.0..900.0f32,
        text in 9.0..28.0f32,
        log in any::<bool>(),
        imperial in any::<bool>(),
    ) {
        let scale = if log { Scale::Log } else { Scale::Linear };
        let set = if imperial { UnitSet::Imperial } else { UnitSet::Metric };
        sound(&spec(scale, set), &Layout::new((width, height), text))?;
    }

    /// Any curve of any two quantities lays out soundly.
    #[test]
    fn any_curve_lays_out(
        find in 0..catalogue::all().len(),
        against in 0..catalogue::all().len(),
        log in any::<bool>(),
        offset in -0.3..0.3f64,
    ) {
        let all = catalogue::all();
        let mut givens = sandpiper();
        givens.set(BALANCE_OFFSET, offset);
        let scale = if log { Scale::Log } else { Scale::Linear };
        let limits = vec![HOLDING_PRESSURE.any()];
        let ask = Ask { scale, limits, ..Ask::new(all[find].id, all[against].id) };
        if let Ok(curve) = Curve::of(&ask, &givens) {
            let builds = [Build { name: "Sandpiper", curve: &curve }];
            let spec = PlotSpec::of(&builds, &Units::default()).unwrap();
            prop_assert!(spec.x.from < spec.x.to && spec.y.from < spec.y.to, "{:?}", spec.y);
            let layout = Layout::new((640.0, 400.0), 14.0);
            sound(&spec, &layout)?;
            let room = Rect { x: layout.plot.x - 1.0, y: layout.plot.y - 1.0, width: layout.plot.width + 2.0, height: layout.plot.height + 2.0 };
            for p in spec.lines.iter().flat_map(|l| l.runs.iter().flatten()) {
                let (x, y) = layout.to_screen(&spec, *p);
                prop_assert!(room.holds(x, y), "{p:?} at {x}, {y}");
            }
        }
    }

    #[test]
    fn screen_and_back(x in 0.0..1.0f32, y in 0.0..1.0f32) {
        let spec = spec(Scale::Linear, UnitSet::Metric);
        let layout = Layout::new((640.0, 400.0), 14.0);
        let at = (layout.plot.x + x * layout.plot.width, layout.plot.y + y * layout.plot.height);
        let back = layout.to_screen(&spec, layout.from_screen(&spec, at));
        prop_assert!((at.0 - back.0).abs() < 0.01 && (at.1 - back.1).abs() < 0.01);
    }

    #[test]
    fn margins_depend_on_text_alone(width in 1.0..2000.0f32, height in 1.0..2000.0f32) {
        let rect = plot_rect((width, height), 14.0);
        prop_assert!(rect.width >= 1.0 && rect.height >= 1.0);
        prop_assert_eq!((rect.x, rect.y), (4.6 * 14.0, 2.2 * 14.0));
    }
}
