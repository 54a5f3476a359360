//! Every control by key: it takes the focus in turn, shows it, and does by key what it does by
//! pointer.

use heftwise::app::question::Question;
use heftwise::app::screen::Place;
use heftwise::app::settings::Daylight;
use heftwise::app::shell::Message;
use heftwise::quantity::catalogue::running_gear::TRACK_WIDTH;
use iced::keyboard::{Modifiers, key::Named};
use iced::widget::Id;
use iced::{Point, Rectangle, mouse};

use super::rig::{self, Rig, WIDE};

const NONE: Modifiers = Modifiers::empty();

fn screens() -> [Place; 7] {
    let lesson = |id: &str| Place::Lesson(id.to_owned());
    [
        Place::Contents,
        lesson("pressure"),
        lesson("impact"),
        Place::BuildSheet,
        Place::WalkRound,
        Place::Bench,
        Place::Settings,
    ]
}

/// Takes the focus from whatever has it.
fn click_bare_paper(rig: &mut Rig) {
    rig.point_at(Point::new(700.0, 4.0));
    rig.press();
    rig.release();
    assert_eq!(rig.focused(), None);
}

#[test]
fn tab_goes_through_every_control_of_every_screen_in_order_and_keeps_it_in_view() {
    let mut rig = Rig::fresh();
    for place in screens() {
        rig.send(Message::Go(place.clone()));
        click_bare_paper(&mut rig);
        let controls = rig.controls();
        assert!(controls.len() > 12, "{place:?}: {} controls", controls.len());
        for (number, control) in controls.iter().enumerate() {
            rig.key(Named::Tab, NONE);
            let focused = rig.focused().unwrap_or_else(|| panic!("{place:?}: {number} is skipped"));
            assert_eq!(focused.bounds, control.bounds, "{place:?}: control {number}");
            let seen = focused.seen.map_or(0.0, |seen| seen.height);
            assert!(
                seen >= focused.bounds.height - 0.5,
                "{place:?}: control {number} has the focus out of view: {focused:?}"
            );
        }
        let at = |rig: &mut Rig| rig.focused().map(|control| control.bounds);
        let (first, last) = (controls[0].bounds, controls[controls.len() - 1].bounds);
        rig.key(Named::Tab, NONE);
        assert_eq!(at(&mut rig), Some(first), "after the last comes the first");
        rig.key(Named::Tab, Modifiers::SHIFT);
        assert_eq!(at(&mut rig), Some(last), "and before the first the last");
        rig.key(Named::Tab, Modifiers::SHIFT);
        assert_eq!(at(&mut rig), Some(controls[controls.len() - 2].bounds));
    }
}

#[test]
fn one_key_passes_the_rail() {
    let mut rig = Rig::fresh();
    for place in screens() {
        rig.send(Message::Go(place.clone()));
        rig.key(Named::F6, NONE);
        let at = rig.focused().unwrap_or_else(|| panic!("{place:?}: nothing has the focus"));
        let first = rig.controls().into_iter().find(|control| control.bounds.x > 250.0);
        assert_eq!(Some(at.bounds), first.map(|control| control.bounds), "{place:?}");
    }
}

#[test]
fn whatever_answers_the_pointer_takes_the_focus_too() {
    let mut rig = Rig::fresh();
    let points: Vec<Point> = (0..WIDE.height as u16)
        .step_by(12)
        .flat_map(|y| (0..WIDE.width as u16).step_by(20).map(move |x| (x, y)))
        .map(|(x, y)| Point::new(f32::from(x), f32::from(y)))
        .collect();
    for place in screens() {
        rig.send(Message::Go(place.clone()));
        let seen: Vec<Rectangle> = rig.controls().iter().filter_map(|c| c.seen).collect();
        let looks = rig.pointer_over(&points);
        let answering = points.iter().zip(looks).filter(|(_, look)| {
            matches!(look, mouse::Interaction::Pointer | mouse::Interaction::Text)
        });
        let mut count = 0;
        for (point, _) in answering {
            count += 1;
            let reached = seen.iter().any(|bounds| bounds.contains(*point));
            assert!(reached, "{place:?}: the control at {point:?} is out of reach of the keys");
        }
        assert!(count > 50, "{place:?}: {count} points answer");
    }
}

#[test]
fn the_focus_can_be_seen() {
    let mut rig = Rig::fresh();
    for light in [Daylight::Day, Daylight::Night] {
        rig.send(Message::Light(light));
        click_bare_paper(&mut rig);
        let (before, width) = rig.picture();
        rig.key(Named::Tab, NONE);
        let bounds = rig.focused().expect("a control has the focus").bounds;
        let (after, _) = rig.picture();
        let ring = bounds.expand(3.0);
        let changed: Vec<usize> = (0..after.len()).filter(|i| after[*i] != before[*i]).collect();
        let round = 2.0 * (bounds.width + bounds.height);
        assert!(changed.len() as f32 > round, "a ring two pixels wide: {}", changed.len());
        for i in changed {
            let point = Point::new((i % width) as f32, (i / width) as f32);
            assert!(ring.contains(point), "{point:?} changed, away from the control {bounds:?}");
        }
    }
}

#[test]
fn enter_and_space_press_what_has_the_focus() {
    for key in [Named::Enter, Named::Space] {
        let mut rig = Rig::fresh();
        let line = rig.find("Walk-round").expect("it stands in the rail");
        for _ in 0..rig.controls().len() {
            rig.key(Named::Tab, NONE);
            let at = rig.focused().expect("one has the focus").bounds;
            if at.contains(line.bounds().center()) {
                break;
            }
        }
        rig.key(key, NONE);
        assert_eq!(rig.app.place, Place::WalkRound, "{key:?}");
    }
}

#[test]
fn the_focus_stays_where_it_was_when_a_control_has_done_its_work() {
    let mut rig = rig::lesson("pressure");
    let answers = rig.find("Your guess first").expect("a guess").bounds();
    let first = rig
        .controls()
        .into_iter()
        .position(|c| c.bounds.y > answers.y && c.bounds.x >= answers.x)
        .expect("a choice");
    for _ in 0..=first {
        rig.key(Named::Tab, NONE);
    }
    let choice = rig.focused().expect("the choice has the focus").bounds;
    rig.key(Named::Enter, NONE);
    assert!(rig.says("Yes."));
    rig.key(Named::Tab, NONE);
    let next = rig.focused().expect("something has the focus").bounds;
    assert!(next.y > choice.y, "on to what follows, not back to the top of the window: {next:?}");
    rig.key(Named::Enter, NONE);
    assert!(!rig.says("Yes."), "what follows is “Try again”");
}

#[test]
fn arrows_step_the_number_in_focus_and_do_not_move_the_page() {
    let mut rig = rig::lesson("pressure");
    rig.click(Id::new("margin:track-width"));
    assert!(rig.focused().is_some());
    let width = |rig: &Rig| rig.app.desk.outcome.values.si(TRACK_WIDTH).unwrap();
    rig.key(Named::ArrowUp, NONE);
    approx::assert_relative_eq!(width(&rig), 0.091, max_relative = 1e-9);
    rig.key(Named::ArrowDown, NONE);
    approx::assert_relative_eq!(width(&rig), 0.090, max_relative = 1e-9);
    rig.key(Named::ArrowUp, Modifiers::SHIFT);
    approx::assert_relative_eq!(width(&rig), 0.100, max_relative = 1e-9);
    assert!(rig.scrolled() < 1.0);
}

#[test]
fn a_number_is_typed_into_its_field() {
    let mut rig = rig::lesson("pressure");
    rig.click(Id::new("margin:track-width"));
    rig.command("a");
    rig.typewrite("12 cm");
    assert_eq!(rig.field("margin:track-width").as_deref(), Some("12 cm"));
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("12 cm"));
}

#[test]
fn typing_on_the_build_sheet_keeps_the_focus_whatever_is_reported_above() {
    let mut rig = Rig::fresh();
    rig.send(Message::Go(Place::BuildSheet));
    rig.click(Id::new("part:0:mass"));
    rig.key(Named::End, NONE);
    rig.typewrite("xyz");
    assert_eq!(rig.field("part:0:mass").as_deref(), Some("1450 gxyz"));
    assert_eq!(rig.app.desk.sheet().parts()[0].mass, "1450 gxyz");
}

#[test]
fn a_question_keeps_the_focus_and_the_page_under_it_is_still() {
    let mut rig = rig::lesson("pressure");
    let page = rig.controls();
    rig.send(Message::KeysTurned);
    let card = rig.controls();
    assert_eq!(card.len(), 1, "only the card's own button takes the focus");
    assert!(card[0].focused, "and has it at once");
    for _ in 0..3 {
        rig.key(Named::Tab, NONE);
        assert_eq!(rig.focused().map(|c| c.bounds), Some(card[0].bounds));
    }
    // A click on the rail's “Walk-round”, which the card covers.
    let line = page.iter().find(|c| c.bounds.x < 100.0).expect("the rail has controls");
    rig.point_at(line.bounds.center());
    rig.press();
    rig.release();
    rig.key(Named::PageDown, NONE);
    assert_eq!(rig.app.question, Some(Question::Keys));
    assert!(matches!(rig.app.place, Place::Lesson(_)));
    rig.key(Named::Tab, NONE);
    rig.key(Named::Enter, NONE);
    assert_eq!(rig.app.question, None);
    assert!(rig.scrolled() < 1.0);
    assert_eq!(rig.controls().len(), page.len());
}
