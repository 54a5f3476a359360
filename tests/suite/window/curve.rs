//! The dot on a curve is the build: dragging it changes the number along the foot.

use heftwise::app::screen::Place;
use heftwise::app::shell::{Message, Start};
use heftwise::app::theme::DAY;
use heftwise::quantity::catalogue::running_gear::TRACK_WIDTH;
use iced::keyboard::{Modifiers, key::Named};
use iced::{Point, Rectangle};

use super::rig::{self, Rig, WIDE, memory};

const LESSON: &str = r#"+++
id = "one"
title = "One curve"
order = 1
goals = []
uses = []
+++

```curve
title = "What does more width buy?"
find = "ground-pressure"
against = "track-width"
from = "40 mm"
to = "160 mm"
```
"#;

fn open() -> (Rig, Rectangle) {
    let folder = tempfile::tempdir().unwrap();
    let source = memory(&[("one", LESSON)]);
    let mut rig = Rig::open(Start { source, ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::Lesson("one".to_owned())));
    let line = LESSON.lines().position(|line| line.starts_with("```curve")).unwrap() + 1;
    let plot = rig.show(iced::widget::Id::from(format!("plot:{line}")));
    (rig, plot)
}

/// The middle of the dot, found in the picture by its colour and its shape: where a disc of that
/// colour fits. The line itself is too thin to hold one.
fn dot(rig: &mut Rig, plot: Rectangle) -> Point {
    // Away from the plot, where the pointer draws nothing over it.
    rig.point_at(Point::new(1.0, 1.0));
    let (pixels, width) = rig.picture();
    let [red, green, blue, _] = DAY.yours.into_rgba8();
    let inked = |x: i32, y: i32| {
        let pixel = pixels[y as usize * width + x as usize];
        pixel[..3].iter().zip([red, green, blue]).all(|(a, b)| a.abs_diff(b) < 40)
    };
    let reach: i32 = 3;
    let (mut sum, mut count) = ((0, 0), 0);
    for y in plot.y as i32 + reach..(plot.y + plot.height) as i32 - reach {
        for x in plot.x as i32 + reach..(plot.x + plot.width) as i32 - reach {
            let around = (-reach..=reach).flat_map(|dx| (-reach..=reach).map(move |dy| (dx, dy)));
            if around
                .filter(|(dx, dy)| dx * dx + dy * dy <= 9)
                .all(|(dx, dy)| inked(x + dx, y + dy))
            {
                sum = (sum.0 + x, sum.1 + y);
                count += 1;
            }
        }
    }
    assert!(count > 0, "there is no dot on the plot");
    Point::new(sum.0 as f32 / count as f32, sum.1 as f32 / count as f32)
}

fn width(rig: &Rig) -> f64 {
    rig.app.desk.outcome.values.si(TRACK_WIDTH).unwrap()
}

#[test]
fn the_dot_is_dragged_and_the_build_follows() {
    let (mut rig, plot) = open();
    let before = rig.app.desk.sheet().text().to_owned();
    let from = dot(&mut rig, plot);
    rig.point_at(from);
    rig.press();
    for step in 1..=10 {
        rig.point_at(Point::new(from.x + 10.0 * step as f32, from.y));
    }
    let held = width(&rig);
    assert!(held > 0.100, "100 pixels to the right of 90 mm: {held}");
    rig.release();
    let to = dot(&mut rig, plot);
    assert!((to.x - from.x - 100.0).abs() < 3.0, "the dot is under the pointer: {to:?}");
    assert!(to.y > from.y + 5.0, "wider presses less, so the dot goes down");

    assert_eq!(width(&rig), held, "let go is let go");
    rig.send(Message::Undo);
    assert_eq!(rig.app.desk.sheet().text(), before, "a drag is taken back as one");
}

#[test]
fn a_drag_past_the_axis_stays_on_it() {
    let (mut rig, plot) = open();
    let from = dot(&mut rig, plot);
    rig.point_at(from);
    rig.press();
    rig.point_at(Point::new(WIDE.width - 1.0, from.y));
    rig.release();
    approx::assert_relative_eq!(width(&rig), 0.160, max_relative = 1e-6);
}

#[test]
fn a_press_away_from_the_dot_moves_nothing() {
    let (mut rig, plot) = open();
    let before = rig.app.desk.sheet().text().to_owned();
    let dot = dot(&mut rig, plot);
    rig.point_at(Point::new(dot.x + 80.0, dot.y));
    rig.press();
    rig.point_at(Point::new(dot.x + 120.0, dot.y));
    rig.release();
    assert_eq!(rig.app.desk.sheet().text(), before);
}

#[test]
fn the_dot_follows_a_number_changed_elsewhere() {
    let (mut rig, plot) = open();
    let from = dot(&mut rig, plot);
    let field = rig.controls();
    assert!(!field.is_empty());
    let step = rig.find("+").expect("the step key under the plot").bounds();
    for _ in 0..10 {
        rig.point_at(step.center());
        rig.press();
        rig.release();
    }
    approx::assert_relative_eq!(width(&rig), 0.100, max_relative = 1e-6);
    assert!(dot(&mut rig, plot).x > from.x + 10.0);
}

/// The curve has the focus, as after Tab.
fn focused(rig: &mut Rig, plot: Rectangle) {
    for _ in 0..60 {
        rig.key(Named::Tab, Modifiers::empty());
        let bounds = rig.focused().map(|control| control.bounds);
        if bounds.is_some_and(|bounds| (bounds.height - plot.height).abs() < 1.0) {
            return;
        }
    }
    panic!("Tab never comes to the curve");
}

#[test]
fn arrow_keys_read_the_curve_point_by_point_and_escape_leaves() {
    let (mut rig, plot) = open();
    focused(&mut rig, plot);
    let none = Modifiers::empty();
    let before = rig.app.desk.sheet().text().to_owned();
    rig.key(Named::ArrowRight, none);
    assert!(rig.says("At track width 90.0 mm: "), "it comes out at the build");
    rig.key(Named::ArrowRight, none);
    assert!(rig.says("At track width 91.0 mm: "), "{:?}", rig.texts());
    rig.key(Named::ArrowLeft, none);
    rig.key(Named::ArrowLeft, none);
    assert!(rig.says("At track width 89.0 mm: "));
    rig.key(Named::PageUp, none);
    assert!(rig.says("At track width 99.0 mm: "));
    rig.key(Named::ArrowLeft, Modifiers::SHIFT);
    assert!(rig.says("At track width 89.0 mm: "));
    rig.key(Named::End, none);
    assert!(rig.says("At track width 160 mm: "));
    rig.key(Named::ArrowRight, none);
    assert!(rig.says("At track width 160 mm: "), "it stays on the curve");
    rig.key(Named::Home, none);
    assert!(rig.says("At track width 40.0 mm: "));
    assert_eq!(rig.app.desk.sheet().text(), before, "reading changes nothing");
    rig.key(Named::Escape, none);
    assert!(!rig.says("At track width"));
}

/// By hand: 6.4 kg · 9.80665 m/s² / (2 · 40 mm · 420 mm) = 1.87 kPa;
/// the build's mass and length are sure to 3.5 % together.
#[test]
fn what_is_read_is_the_number_there() {
    let (mut rig, plot) = open();
    focused(&mut rig, plot);
    rig.key(Named::Home, Modifiers::empty());
    assert!(rig.says("At track width 40.0 mm: 1870 Pa (1800 to 1930)"), "{:?}", rig.texts());
}

#[test]
fn up_and_down_move_the_dot_as_in_a_number() {
    let (mut rig, plot) = open();
    focused(&mut rig, plot);
    rig.key(Named::ArrowUp, Modifiers::empty());
    approx::assert_relative_eq!(width(&rig), 0.091, max_relative = 1e-6);
    rig.key(Named::ArrowDown, Modifiers::SHIFT);
    // Ten steps at once, onto the grid of tens.
    approx::assert_relative_eq!(width(&rig), 0.080, max_relative = 1e-6);
}

#[test]
fn the_pointer_takes_the_reading_over() {
    let (mut rig, plot) = open();
    focused(&mut rig, plot);
    rig.key(Named::End, Modifiers::empty());
    assert!(rig.says("At track width 160 mm"));
    let blank = rig.picture().0;
    rig.point_at(plot.center());
    assert!(!rig.says("At track width 160 mm"));
    assert_ne!(rig.picture().0, blank, "the pointer draws its own");
}

#[test]
fn the_curve_is_saved_where_the_path_says() {
    use heftwise::app::files::{Purpose, Unpicked};
    let (mut rig, _) = open();
    let folder = tempfile::tempdir().unwrap();
    let ask = |rig: &mut Rig| {
        let button = rig.find("Save the curve").expect("a button under the curve").bounds();
        rig.point_at(button.center());
        rig.press();
        rig.release();
        rig.send(Message::NothingPicked(Unpicked { purpose: Purpose::Figure, at_once: true }));
    };
    for (name, start) in
        [("a.svg", &b"<svg "[..]), ("a.png", b"\x89PNG"), ("a.csv", b"\"track width, mm\"")]
    {
        ask(&mut rig);
        let path = folder.path().join(name);
        rig.send(Message::PathTyped(path.display().to_string()));
        rig.send(Message::PathGiven);
        assert!(std::fs::read(&path).unwrap().starts_with(start), "{name}");
        assert!(rig.says(&format!("Saved as {}.", path.display())));
    }
    ask(&mut rig);
    rig.send(Message::PathTyped(folder.path().join("a.svg").display().to_string()));
    rig.send(Message::PathGiven);
    assert!(rig.says("There is a file at"), "no other file is written over");
    rig.send(Message::QuestionClosed);
    ask(&mut rig);
    rig.send(Message::PathTyped(folder.path().join("a.gif").display().to_string()));
    rig.send(Message::PathGiven);
    assert!(rig.says("end the name in .svg, .png or .csv"));
}
