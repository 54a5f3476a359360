//! The sketch: the machine in metres, the same on a surface, and its block in a lesson.

use heftwise::lesson::{BlockKind, SketchLayer, SketchView, parse};
use heftwise::plot::Rect;
use heftwise::plot::sketch::{Drawing, Show, Tone, View, draw, svg};
use heftwise::quantity::Units;
use heftwise::quantity::catalogue::machine::{GROUND_FORCE, WEIGHT};
use heftwise::quantity::catalogue::pressure::{
    END_PRESSURE_RATIO, GROUND_PRESSURE, PRESSURE_OFFSET,
};
use heftwise::quantity::catalogue::traction::{LOW_END_SINKAGE, SINKAGE, WHEEL_SINKAGE};
use heftwise::rules::{Values, evaluate};
use heftwise::sheet::{Sheet, demo};
use heftwise::study::Sketch;
use proptest::prelude::*;

fn sketch_of(text: &str) -> (Sketch, Values) {
    let sheet = Sheet::read(text).expect("the build is TOML");
    let tally = sheet.tally();
    let values = evaluate(&tally.givens);
    (Sketch::of(sheet.name(), &sheet, &tally, &values), values)
}

fn demo_of(id: &str) -> (Sketch, Values) {
    sketch_of(demo::find(id).expect("a demo build").text)
}

/// A machine on two tracks, level unless said otherwise.
fn on_tracks(mass: f64, length: f64, width: f64, offset: f64, height: f64, slope: f64) -> String {
    format!(
        "format = 1\nname = \"Box\"\n[machine]\nmass = \"{mass} kg\"\nslope = \"{slope}°\"\n\
         balance-offset = \"{offset} m\"\ncg-height = \"{height} m\"\n[running-gear]\n\
         track-count = \"2\"\ntrack-width = \"{width} m\"\ncontact-length = \"{length} m\"\n"
    )
}

fn drawn(sketch: &Sketch, view: View) -> Drawing {
    draw(sketch, (view, Show::ALL), &Units::default(), (560.0, 350.0), 14.0)
}

/// Area of a polygon by the shoelace formula.
fn area(points: &[(f32, f32)]) -> f64 {
    let next = points.iter().cycle().skip(1);
    let twice: f64 = points
        .iter()
        .zip(next)
        .map(|(a, b)| f64::from(a.0) * f64::from(b.1) - f64::from(b.0) * f64::from(a.1))
        .sum();
    twice.abs() / 2.0
}

/// By hand: (1 × 100 + 2 × 200 − 3 × 100) ÷ 6 = 33.3 mm forward, and so on.
#[test]
fn the_centre_of_gravity_is_the_weighted_mean_of_the_parts() {
    let part = |name: &str, mass: f64, at: [f64; 3]| {
        format!(
            "[[parts]]\nname = \"{name}\"\nmass = \"{mass} kg\"\n\
             at = [\"{} mm\", \"{} mm\", \"{} mm\"]\n",
            at[0], at[1], at[2]
        )
    };
    let text = format!(
        "format = 1\n{}{}{}",
        part("a", 1.0, [100.0, 60.0, 50.0]),
        part("b", 2.0, [200.0, -60.0, 80.0]),
        part("c", 3.0, [-100.0, 30.0, 110.0])
    );
    let (sketch, _) = sketch_of(&text);
    let cg = sketch.cg.expect("the parts say where it is");
    approx::assert_relative_eq!(cg.forward, 0.2 / 6.0, max_relative = 1e-9);
    approx::assert_relative_eq!(cg.left, 0.03 / 6.0, max_relative = 1e-9);
    approx::assert_relative_eq!(cg.up.unwrap(), 0.54 / 6.0, max_relative = 1e-9);
    // A kilogram as dense as water is a cube of 100 mm.
    assert_eq!(sketch.boxes[0].size, [0.1, 0.1, 0.1]);
    let by_boxes: f64 = sketch.boxes.iter().map(|part| part.mass * part.at[0]).sum::<f64>() / 6.0;
    approx::assert_relative_eq!(by_boxes, cg.forward, max_relative = 1e-9);
}

#[test]
fn the_trial_mass_is_drawn_and_moves_the_mark() {
    let sandpiper = demo::find("sandpiper").unwrap().text;
    let trial = "\n[trial-mass]\nmass = \"+800 g\"\nat = [\"150 mm\", \"0 mm\", \"100 mm\"]\n";
    let (before, _) = sketch_of(sandpiper);
    let (after, _) = sketch_of(&format!("{sandpiper}{trial}"));
    assert_eq!(before.boxes.len() + 1, after.boxes.len());
    assert!(after.boxes.last().unwrap().trial);
    // (6.40 × −22.0 + 0.80 × 150) ÷ 7.20 mm.
    let moved = (6.4 * before.cg.unwrap().forward + 0.8 * 0.15) / 7.2;
    approx::assert_relative_eq!(after.cg.unwrap().forward, moved, max_relative = 1e-9);
}

#[test]
fn forces_are_to_scale() {
    for slope in [-20.0, 0.0, 4.0, 24.0] {
        let (sketch, values) = sketch_of(&on_tracks(210.0, 0.7, 0.18, -0.035, 0.42, slope));
        let drawing = drawn(&sketch, View::Side);
        assert_eq!(drawing.arrows.len(), if slope == 0.0 { 2 } else { 3 });
        assert_eq!(drawing.arrows[0].newtons, values.si(WEIGHT).unwrap());
        assert_eq!(drawing.arrows[1].newtons, values.si(GROUND_FORCE).unwrap());
        for arrow in &drawing.arrows {
            let long = (arrow.to.0 - arrow.from.0).hypot(arrow.to.1 - arrow.from.1);
            let newtons = f64::from(long) / drawing.force_scale;
            approx::assert_relative_eq!(newtons, arrow.newtons, max_relative = 2e-3);
        }
        // The weight hangs plumb, whatever the slope.
        assert!((drawing.arrows[0].from.0 - drawing.arrows[0].to.0).abs() < 0.01);
        assert!(drawing.arrows[0].to.1 > drawing.arrows[0].from.1);
    }
}

proptest! {
    /// What the ground pushes with is the pressure summed over the contact, and it pushes where the
    /// load bears down: balance of forces and of moments (OpenStax, University Physics Volume 1,
    /// section 12.1).
    #[test]
    fn the_pressure_diagram_balances_the_load(
        mass in 0.5..400.0f64,
        length in 0.1..2.0f64,
        width in 0.02..0.4f64,
        lean in -0.48..0.48f64,
        high in 0.01..0.3f64,
        slope in -12.0..12.0f64,
    ) {
        let text = on_tracks(mass, length, width, lean * length, high * length, slope);
        let (sketch, values) = sketch_of(&text);
        let Some(under) = &sketch.underneath else {
            // Only a load past the end of the contact leaves no pressure to draw.
            let load = values.si(PRESSURE_OFFSET).unwrap();
            prop_assert!(load.abs() >= length / 2.0 && sketch.tips());
            return Ok(());
        };
        let force = values.si(GROUND_FORCE).unwrap();
        prop_assert!((under.force() / force - 1.0).abs() < 1e-3, "{} {force}", under.force());
        // Moment about the middle, each straight piece of the profile in closed form.
        let moment: f64 = under
            .profile
            .windows(2)
            .map(|ends| {
                let ((a, p), (b, q)) = (ends[0], ends[1]);
                (b - a) * (p * (2.0 * a + b) + q * (a + 2.0 * b)) / 6.0 * under.width
            })
            .sum();
        let load = values.si(PRESSURE_OFFSET).unwrap();
        prop_assert!((moment / force - load).abs() < 2e-3 * length, "{} {load}", moment / force);
        let worst = under.worst().0 / values.si(GROUND_PRESSURE).unwrap();
        prop_assert!((worst / values.si(END_PRESSURE_RATIO).unwrap() - 1.0).abs() < 1e-9);
        // And the same on the surface: area over area of the mean, to what a pixel can hold.
        let drawing = drawn(&sketch, View::Side);
        let diagram =
            drawing.shapes.iter().find(|shape| shape.tone == Tone::Pressure).unwrap();
        let by_worst = area(&diagram.points) / (length * drawing.scale);
        let deepest = f64::from(0.66 * (0.31f32 * 350.0));
        prop_assert!((by_worst / (deepest / worst) - 1.0).abs() < 0.01);
    }

    /// From above the sheets end where the pressure falls below their step.
    #[test]
    fn the_contact_reaches_as_far_as_it_presses(lean in -0.45..0.45f64, step in 0.02..1.0f64) {
        let (sketch, _) = sketch_of(&on_tracks(10.0, 1.0, 0.1, lean, 0.1, 0.0));
        let under = sketch.underneath.unwrap();
        let pascals = step * under.worst().0;
        let to = under.reaches(pascals);
        prop_assert!(to.abs() <= 0.5 + 1e-9);
        let there = under
            .profile
            .windows(2)
            .find(|w| w[0].0 <= to && to <= w[1].0)
            .map(|w| w[0].1 + (w[1].1 - w[0].1) * (to - w[0].0) / (w[1].0 - w[0].0))
            .unwrap();
        prop_assert!(there >= pascals * 0.999 || to == -under.worst().1);
    }

    #[test]
    fn any_build_is_drawn_whole_and_no_words_overlap(
        text in any_build(),
        width in 150.0..1200.0f32,
        height in 120.0..500.0f32,
    ) {
        let (sketch, _) = sketch_of(&text);
        let sketch = sketch.with_ghost(demo_of("peat-barrow").0);
        for view in [View::Side, View::Top, View::Rear] {
            let how = (view, Show::ALL);
            let drawing = draw(&sketch, how, &Units::default(), (width, height), 14.0);
            let points = drawing.shapes.iter().flat_map(|shape| &shape.points);
            prop_assert!(points.clone().all(|(x, y)| x.is_finite() && y.is_finite()));
            prop_assert!(drawing.scale.is_finite() && drawing.force_scale.is_finite());
            let surface = Rect { x: 0.0, y: 0.0, width, height };
            for (place, label) in drawing.labels.iter().enumerate() {
                prop_assert!(surface.holds_all(&label.bounds), "{label:?}");
                for other in &drawing.labels[place + 1..] {
                    prop_assert!(!label.bounds.overlaps(&other.bounds), "{label:?} {other:?}");
                }
            }
            let picture = svg(&sketch, how, &Units::default(), (width as u32, height as u32));
            prop_assert!(!picture.contains("NaN") && !picture.contains("inf\""));
            prop_assert!(!sketch.in_words(&Units::default()).contains("not a number"));
        }
    }
}

/// Builds of every kind, with numbers from tiny to absurd.
fn any_build() -> impl Strategy<Value = String> {
    let number = || prop_oneof![Just(0.0), 1e-4..3.0f64, -2.0..2.0f64, Just(1e9), Just(-1e300)];
    let part = (number(), prop::array::uniform3(number()));
    (
        prop::collection::vec(number(), 8),
        prop::array::uniform3(0..6u32),
        -80..81i32,
        prop::collection::vec(part, 0..9),
    )
        .prop_map(|(n, [tracks, wheels, skis], slope, parts)| {
            let mut text = format!(
                "format = 1\nname = \"Any <build>\"\n[machine]\nslope = \"{slope}°\"\n\
                 cg-height = \"{} m\"\n[running-gear]\ntrack-count = \"{tracks}\"\n\
                 wheel-count = \"{wheels}\"\nski-count = \"{skis}\"\ntrack-width = \"{} m\"\n\
                 contact-length = \"{} m\"\nwheel-diameter = \"{} m\"\nwheel-width = \"{} m\"\n\
                 wheel-squash = \"{} m\"\nski-length = \"{} m\"\nski-width = \"{} m\"\n",
                n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7]
            );
            for (place, (mass, at)) in parts.iter().enumerate() {
                text += &format!(
                    "[[parts]]\nname = \"track part {place}\"\nmass = \"{mass} kg\"\n\
                     at = [\"{} m\", \"{} m\", \"{} m\"]\n",
                    at[0], at[1], at[2]
                );
            }
            text
        })
}

#[test]
fn a_sketch_says_itself_in_words() {
    let (sketch, _) = demo_of("sandpiper");
    assert_eq!(
        sketch.in_words(&Units::default()),
        "Sandpiper stands level; its centre of gravity is 22 mm behind the middle and 91.4 mm up. \
         It presses with 0.830 kPa on average and 1.09 kPa at its rear end. It sinks in 3.26 mm \
         on average and 4.82 mm at its rear end."
    );
    assert_eq!(sketch.lacking_in_words(true), None);
    let (barrow, _) = demo_of("peat-barrow");
    assert!(barrow.in_words(&Units::default()).contains("nose uphill on a slope of 4°"));
    let (tips, _) = sketch_of(&on_tracks(10.0, 0.4, 0.1, -0.3, 0.2, 0.0));
    assert!(tips.tips() && tips.in_words(&Units::default()).ends_with("so it tips over."));
}

#[test]
fn what_is_lacking_is_named_and_not_drawn() {
    let (nothing, _) = sketch_of("format = 1\nname = \"New\"\n");
    assert!(nothing.is_empty());
    assert!(drawn(&nothing, View::Side).shapes.is_empty());
    let words = nothing.lacking_in_words(true).unwrap();
    assert!(words.contains("number of tracks, wheels or skis"), "{words}");
    assert!(words.contains("mass"), "{words}");
    // Without parts and gauge, nothing says how far apart the tracks are.
    let (barrow, _) = sketch_of(
        "format = 1\nname = \"Barrow\"\n[machine]\nmass = \"210 kg\"\ncg-height = \"300 mm\"\n\
         [running-gear]\ntrack-count = \"2\"\ntrack-width = \"200 mm\"\ncontact-length = \"800 mm\"\n",
    );
    assert_eq!(barrow.lacking_in_words(true), None);
    assert_eq!(barrow.lacking_in_words(false).unwrap(), "To draw the rest, give the gauge.");
    // Four wheels stand nowhere until the wheelbase is known.
    let (cart, _) = sketch_of(
        "format = 1\nname = \"Cart\"\n[machine]\nmass = \"20 kg\"\n[running-gear]\n\
         wheel-count = \"4\"\nwheel-diameter = \"300 mm\"\nwheel-width = \"80 mm\"\n",
    );
    assert!(cart.bearers.is_empty());
    assert!(cart.lacking_in_words(true).unwrap().contains("wheelbase"));
}

#[test]
fn a_picture_for_paper_stands_alone() {
    let (sketch, _) = demo_of("bullock");
    let picture = svg(&sketch, (View::Side, Show::ALL), &Units::default(), (640, 400));
    assert!(picture.starts_with("<svg ") && picture.trim_end().ends_with("</svg>"));
    assert!(picture.contains("<title>Bullock</title>"));
    assert!(picture.contains("<desc>Bullock stands level; its centre of gravity is 52"));
    assert!(
        picture.contains(">worst 3.33 kPa</text>") && picture.contains(">mean 1.99 kPa</text>")
    );
    assert!(!picture.contains("href"));
    if let Ok(path) = std::env::var("HEFTWISE_LOOK") {
        std::fs::write(path, picture).unwrap();
    }
}

#[test]
fn a_companion_is_laid_over() {
    let (alone, _) = demo_of("sandpiper");
    let both = alone.clone().with_ghost(demo_of("bullock").0);
    let (before, after) = (drawn(&alone, View::Side), drawn(&both, View::Side));
    // Bullock is longer, so that both fit Sandpiper is drawn smaller.
    assert!(after.scale < before.scale);
    assert!(after.shapes.iter().any(|shape| shape.tone == Tone::Ghost));
    assert!(after.labels.iter().any(|label| label.text == "Bullock"));
    assert_eq!(before.arrows.len(), after.arrows.len());
    let words = both.in_words(&Units::default());
    assert!(words.contains("Laid over it: Bullock stands level"), "{words}");
}

#[test]
fn only_what_is_asked_for_is_drawn() {
    let (sketch, _) = demo_of("sandpiper");
    let show = Show { pressure: false, cg: true, weight: false, parts: false };
    let drawing = draw(&sketch, (View::Side, show), &Units::default(), (560.0, 350.0), 14.0);
    assert!(drawing.arrows.is_empty());
    let unwanted = [Tone::Pressure, Tone::Part, Tone::Weight];
    assert!(!drawing.shapes.iter().any(|shape| unwanted.contains(&shape.tone)));
    assert!(drawing.labels.iter().any(|label| label.text.contains("22 mm behind the middle")));
}

fn block(body: &str) -> (Option<BlockKind>, Vec<String>) {
    let text = format!(
        "+++\nid = \"mud\"\ntitle = \"Mud\"\norder = 1\nminutes = 5\n+++\n\n```sketch\n{body}\n```\n"
    );
    let lesson = parse(&text, "mud.md");
    let problems = lesson.problems.iter().map(ToString::to_string).collect();
    (lesson.blocks.into_iter().next().map(|block| block.kind), problems)
}

#[test]
fn the_block_is_read() {
    let (kind, problems) = block("title = \"T\"\nview = \"rear\"\nshow = [\"cg\", \"parts\"]");
    assert!(problems.is_empty(), "{problems:?}");
    let Some(BlockKind::Sketch(sketch)) = kind else { panic!("{kind:?}") };
    assert_eq!(sketch.view, SketchView::Rear);
    assert_eq!(sketch.show, [SketchLayer::Cg, SketchLayer::Parts]);
    let (kind, _) = block("");
    let Some(BlockKind::Sketch(sketch)) = kind else { panic!("{kind:?}") };
    assert_eq!((sketch.view, sketch.show.len()), (SketchView::Side, 4));
}

#[test]
fn a_wrong_block_says_where() {
    let (kind, problems) =
        block("veiw = \"side\"\nview = \"frnot\"\nshow = [\"presure\", \"cg\", \"cg\"]");
    assert_eq!(
        problems,
        [
            "mud.md:9:1: a sketch has no field \"veiw\"; expected one of title, view, show; did you mean \"view\"?",
            "mud.md:10:8: unknown view \"frnot\"; expected one of side, top, rear",
        ]
    );
    assert!(matches!(kind, Some(BlockKind::Broken { .. })));
    let (_, problems) = block("show = [\"presure\", \"cg\", \"cg\"]");
    assert_eq!(
        problems,
        [
            "mud.md:9:9: unknown part of a sketch \"presure\"; expected one of pressure, cg, weight, parts; did you mean \"pressure\"?",
            "mud.md:9:26: \"cg\" stands twice in show; expected each once",
        ]
    );
    let (_, problems) = block("show = []");
    assert_eq!(
        problems,
        ["mud.md:9:8: show is empty; expected some of pressure, cg, weight, parts"]
    );
}

/// The ground stands over the contact as the rules find it: Bekker's equation (J. Y. Wong, Theory
/// of Ground Vehicles, chapter 2), under the mean, under the low end, and under the light end by its
/// own pressure.
#[test]
fn the_machine_sinks_in_by_what_the_rules_find() {
    let (bullock, values) = demo_of("bullock");
    let sinking = bullock.sinking.unwrap();
    assert_eq!(Some(sinking.mean), values.si(SINKAGE));
    let (worst, place) = sinking.worst.unwrap();
    assert_eq!(Some(worst), values.si(LOW_END_SINKAGE));
    approx::assert_relative_eq!(sinking.at(place), worst, max_relative = 1e-12);
    assert!(place < 0.0, "its load is behind the middle");
    let under = bullock.underneath.as_ref().unwrap();
    let light = under.profile.last().unwrap();
    // The exponent of this mud is 0.7.
    let share = (light.1 / under.worst().0).powf(1.0 / 0.7);
    approx::assert_relative_eq!(sinking.at(light.0), worst * share, max_relative = 1e-9);
    let banks = |view| {
        let drawing = drawn(&bullock, view);
        drawing.shapes.iter().filter(|s| s.tone == Tone::Ground && s.strength < 1.0).count()
    };
    assert_eq!((banks(View::Side), banks(View::Rear)), (1, 3), "beside and between two ruts");
    let words: Vec<String> =
        drawn(&bullock, View::Side).labels.into_iter().map(|label| label.text).collect();
    assert!(words.iter().any(|words| words.contains("sinks 11.1 mm (mean)")), "{words:?}");
}

/// Balance of forces (OpenStax, University Physics Volume 1, section 12.1): pressure times area,
/// added up over the wheels, is the force on the ground, and the heavier end presses harder.
#[test]
fn the_pressure_under_wheels_balances_the_load() {
    let (cart, values) = demo_of("dune-cart");
    let force: f64 = cart
        .bearers
        .iter()
        .map(|wheel| wheel.pressure.unwrap() * wheel.contact * wheel.width.unwrap())
        .sum();
    approx::assert_relative_eq!(force, values.si(GROUND_FORCE).unwrap(), max_relative = 1e-9);
    let rows = cart.rows();
    assert!(rows.len() == 2 && rows[0].1 > rows[1].1, "{rows:?}");
    assert_eq!(cart.sinking.unwrap().mean, values.si(WHEEL_SINKAGE).unwrap());
    for view in [View::Side, View::Top, View::Rear] {
        let drawing = drawn(&cart, view);
        assert!(drawing.shapes.iter().any(|shape| shape.tone == Tone::Pressure), "{view:?}");
    }
}

/// Of a list of thousands, the heaviest parts stand for it, and the sketch says so.
#[test]
fn of_many_parts_the_heaviest_are_drawn() {
    let shoe = |number: usize| {
        let grams = 2 + number % 9;
        format!(
            "[[parts]]\nname = \"shoe {number}\"\nmass = \"{grams} g\"\nat = [\"{number} mm\", \"0 mm\", \"20 mm\"]\n"
        )
    };
    let shoes: String = (0..2000).map(shoe).collect();
    let pack =
        "[[parts]]\nname = \"pack\"\nmass = \"4 kg\"\nat = [\"0 mm\", \"0 mm\", \"60 mm\"]\n";
    let (sketch, _) = sketch_of(&format!("format = 1\n{shoes}{pack}"));
    assert_eq!(sketch.boxes.len(), 100);
    assert_eq!(sketch.boxes.last().unwrap().name, "pack");
    let lightest = sketch.boxes.iter().map(|part| part.mass).fold(f64::INFINITY, f64::min);
    assert!((lightest - 0.010).abs() < 1e-9, "{lightest}");
    let told = "Of many parts, the hundred heaviest are drawn.";
    assert!(sketch.notes.iter().any(|note| note.words == told));
    assert!(drawn(&sketch, View::Side).shapes.len() < 3000);
}
