//! Changing numbers of the build: what goes into it, what stays a draft, what else moves.

use heftwise::app::page;
use heftwise::app::screen::{build_sheet, reading};
use heftwise::app::shell::Message;
use heftwise::app::widget::field::{Act, Event};
use heftwise::app::widget::stepping::Step;
use heftwise::quantity::catalogue::impact::{DROP_HEIGHT, IMPACT_SPEED};
use heftwise::quantity::catalogue::machine::MASS;
use heftwise::quantity::catalogue::pressure::GROUND_PRESSURE;
use heftwise::quantity::catalogue::running_gear::{CONTACT_LENGTH, TRACK_WIDTH};
use heftwise::quantity::catalogue::traction::SINKAGE;
use heftwise::quantity::{AnyId, UnitSet};
use heftwise::sheet::Edit;

use super::rig::{self, Rig};

const PLACE: &str = "margin:track-width";

fn field(place: &str, id: impl Into<AnyId>, act: Act) -> Message {
    let event = Event { place: place.to_owned(), id: id.into(), act };
    Message::Reading(reading::Message::Page(page::Message::Field(event)))
}

fn typed(rig: &mut Rig, place: &str, id: impl Into<AnyId>, text: &str) {
    rig.send(field(place, id, Act::Typed(text.to_owned())));
}

fn stepped(rig: &mut Rig, up: bool, coarse: bool) {
    rig.send(field(PLACE, TRACK_WIDTH, Act::Stepped(Step { up, coarse })));
}

fn pressure(rig: &Rig) -> f64 {
    rig.app.desk.outcome.values.si(GROUND_PRESSURE).expect("the demo has all it takes")
}

#[test]
fn a_number_changed_in_a_lesson_moves_what_hangs_on_it_and_can_be_undone() {
    let mut rig = rig::lesson("pressure");
    let before = rig.app.desk.sheet().text().to_owned();
    let old = pressure(&rig);
    assert!(rig.app.desk.moved.is_empty());

    typed(&mut rig, PLACE, TRACK_WIDTH, "180 mm");

    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("180 mm"));
    // Twice the width is half the mean pressure.
    approx::assert_relative_eq!(pressure(&rig), old / 2.0, max_relative = 1e-9);
    let moved = rig.app.desk.moved.iter().find(|m| m.id == GROUND_PRESSURE.any());
    let moved = moved.expect("the pressure is said to have moved");
    assert_eq!((moved.before, moved.after), (Some(old), Some(pressure(&rig))));
    assert!(
        rig.says("was 830 Pa") && rig.texts().iter().any(|text| text == "415"),
        "beside the answer: {:?}",
        rig.texts()
    );
    let sinkage = rig.app.desk.moved.iter().find(|m| m.id == SINKAGE.any()).expect("it sinks less");
    assert!(sinkage.after < sinkage.before);
    assert!(
        rig.says("Sinkage (mean)") && rig.says("3.26 mm →"),
        "what else moved: {:?}",
        rig.texts()
    );

    rig.send(Message::Undo);
    assert_eq!(rig.app.desk.sheet().text(), before);
    approx::assert_relative_eq!(pressure(&rig), old);
    let back = rig.app.desk.moved.iter().find(|m| m.id == GROUND_PRESSURE.any()).unwrap();
    assert_eq!(back.after, Some(old), "taking it back is a change too");

    rig.send(Message::Redo);
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("180 mm"));
}

#[test]
fn what_else_moved_is_told_from_before_the_whole_gesture() {
    let mut rig = rig::lesson("pressure");
    let old = pressure(&rig);
    for width in ["1", "12", "120", "120 mm"] {
        typed(&mut rig, PLACE, TRACK_WIDTH, width);
    }
    let moved = rig.app.desk.moved.iter().find(|m| m.id == GROUND_PRESSURE.any()).unwrap();
    assert_eq!(moved.before, Some(old));
    rig.send(Message::Undo);
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("90 ± 2 mm"), "one typing, one undo");
}

#[test]
fn rubbish_stays_in_the_field_with_a_reason_and_the_build_stays_as_it_is() {
    let mut rig = rig::lesson("pressure");
    let before = rig.app.desk.sheet().text().to_owned();
    for rubbish in ["wide", "90 kg", "-5 mm", "90 mm mm", "0 mm"] {
        typed(&mut rig, PLACE, TRACK_WIDTH, rubbish);
        let draft = rig.app.desk.draft(PLACE).expect("what was typed is kept");
        assert_eq!(draft.text, rubbish);
        let error = draft.error.clone().unwrap_or_else(|| panic!("{rubbish}: no reason"));
        assert!(error.len() > 10, "{error}");
        assert_eq!(rig.app.desk.sheet().text(), before, "{rubbish}");
        assert_eq!(rig.field(PLACE).as_deref(), Some(rubbish));
        assert!(rig.says(&error), "the reason stands under the field: {error}");
    }
    rig.send(field(PLACE, TRACK_WIDTH, Act::Settled));
    assert!(rig.app.desk.draft(PLACE).is_some(), "leaving the field does not lose what was typed");

    typed(&mut rig, PLACE, TRACK_WIDTH, "95 mm");
    assert_eq!(rig.app.desk.draft(PLACE).and_then(|draft| draft.error.clone()), None);
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("95 mm"));
}

#[test]
fn a_number_without_a_unit_is_in_the_unit_of_its_field() {
    let mut rig = rig::lesson("pressure");
    typed(&mut rig, PLACE, TRACK_WIDTH, "95");
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("95 mm"));

    rig.send(Message::Set(UnitSet::Imperial));
    typed(&mut rig, PLACE, TRACK_WIDTH, "4");
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("4 in"));
    let si = rig.app.desk.outcome.values.si(TRACK_WIDTH).unwrap();
    approx::assert_relative_eq!(si, 0.1016, max_relative = 1e-9); // An inch is 25.4 mm: BS 350.
}

#[test]
fn an_emptied_field_takes_the_number_out() {
    let mut rig = rig::lesson("pressure");
    typed(&mut rig, PLACE, TRACK_WIDTH, "");
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), None);
    assert_eq!(rig.app.desk.outcome.values.si(GROUND_PRESSURE), None);
    assert!(rig.says("Not known yet"));
}

#[test]
fn steps_go_by_the_second_figure_and_leave_the_number_as_doubtful_as_it_was() {
    let mut rig = rig::lesson("pressure");
    stepped(&mut rig, true, false);
    assert_eq!(entered(&rig), (91, 2));
    stepped(&mut rig, false, true);
    assert_eq!(entered(&rig), (80, 2), "ten steps, onto the grid of tens");
}

/// The track width and its spread as entered, in whole millimetres.
fn entered(rig: &Rig) -> (i64, i64) {
    let entry = heftwise::quantity::catalogue::find("track-width").unwrap();
    let text = rig.app.desk.sheet().number(TRACK_WIDTH).expect("it is entered");
    let amount = heftwise::quantity::parse(text, entry).expect("what a step enters can be read");
    let whole = |si: f64| {
        approx::assert_relative_eq!(si * 1e3, (si * 1e3).round(), max_relative = 1e-6);
        (si * 1e3).round() as i64
    };
    (whole(amount.si), whole(amount.spread.expect("a spread")))
}

#[test]
fn a_slide_keeps_within_what_is_possible() {
    let mut rig = rig::lesson("pressure");
    rig.send(field(PLACE, TRACK_WIDTH, Act::Slid(1e12)));
    let si = rig.app.desk.outcome.values.si(TRACK_WIDTH).unwrap();
    let entry = heftwise::quantity::catalogue::find("track-width").unwrap();
    assert!(si <= entry.possible.1 * (1.0 + 1e-9), "{si}");
    let before = rig.app.desk.sheet().text().to_owned();
    rig.send(field(PLACE, TRACK_WIDTH, Act::Slid(f64::NAN)));
    assert_eq!(rig.app.desk.sheet().text(), before);
}

#[test]
fn two_numbers_that_say_the_same_do_not_stand_side_by_side() {
    let mut rig = rig::lesson("impact");
    assert!(rig.app.desk.sheet().number(DROP_HEIGHT).is_some());
    typed(&mut rig, "margin:impact-speed", IMPACT_SPEED, "2 m/s");
    assert_eq!(rig.app.desk.sheet().number(IMPACT_SPEED), Some("2 m/s"));
    assert_eq!(rig.app.desk.sheet().number(DROP_HEIGHT), None);
    // What is left out is found: v²/2g.
    let height = rig.app.desk.outcome.values.si(DROP_HEIGHT).expect("found from the speed");
    approx::assert_relative_eq!(height, 2.0 * 2.0 / (2.0 * 9.80665), max_relative = 1e-9);
    rig.send(Message::Undo);
    assert_eq!(rig.app.desk.sheet().number(DROP_HEIGHT), Some("0.35 m"));
}

#[test]
fn another_mass_on_a_build_of_parts_is_a_trial_mass() {
    let mut rig = rig::lesson("pressure");
    let parts = rig.app.desk.sheet().parts().to_vec();
    assert_eq!(rig.app.desk.sheet().number(MASS), None, "Sandpiper adds up from its parts");
    typed(&mut rig, "margin:mass", MASS, "7.4 kg");
    assert_eq!(rig.app.desk.sheet().parts(), parts, "no part weighs more");
    let trial = rig.app.desk.sheet().trial().expect("a trial mass");
    assert!(trial.mass.starts_with('+'), "{}", trial.mass);
    let mass = rig.app.desk.outcome.values.si(MASS).unwrap();
    approx::assert_relative_eq!(mass, 7.4, max_relative = 1e-6);
}

#[test]
fn an_edit_the_build_does_not_take_is_told_and_changes_nothing() {
    let mut rig = Rig::fresh();
    let before = rig.app.desk.sheet().text().to_owned();
    rig.send(Message::BuildSheet(build_sheet::Message::Edit(Edit::RemovePart { index: 99 }, None)));
    assert!(rig.says("There is no part 100; the list has 12."), "{:?}", rig.texts());
    assert_eq!(rig.app.desk.sheet().text(), before);
}

#[test]
fn the_same_number_shows_wherever_it_stands() {
    let mut rig = rig::lesson("pressure");
    typed(&mut rig, PLACE, CONTACT_LENGTH, "500 mm");
    assert_eq!(rig.field("margin:contact-length").as_deref(), Some("500 mm"));
    assert!(rig.texts().iter().any(|text| text == "500 mm"), "the live number in the text");
    rig.send(Message::Go(heftwise::app::screen::Place::BuildSheet));
    assert_eq!(rig.field("sheet:contact-length").as_deref(), Some("500 mm"));
}
