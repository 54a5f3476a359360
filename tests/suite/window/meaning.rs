//! The meaning of a quantity in the margin: what finds it, what uses it, where it is spoken of.

use heftwise::app::page;
use heftwise::app::screen::{Place, reading};
use heftwise::app::shell::Message;
use heftwise::lesson::Target;
use heftwise::quantity::catalogue;
use heftwise::rules::checks;
use iced::keyboard::{Modifiers, key::Named};

use super::rig::{self, Rig};

/// Opens the meaning of a quantity as a link in the text does.
fn follow(rig: &mut Rig, id: &str) {
    let id = catalogue::find(id).expect("a quantity").id;
    let link = page::Message::Follow(Target::Quantity(id));
    rig.send(Message::Reading(reading::Message::Page(link)));
}

/// Opens the meaning of the contact area from the table of formulas.
fn contact_area() -> Rig {
    let mut rig = rig::lesson("pressure");
    rig.click("contact area");
    rig
}

#[test]
fn it_says_what_finds_it_what_uses_it_and_its_units() {
    let mut rig = contact_area();
    for words in ["Found by", "From", "Holds for: ", "Source: ", "Used to find", "In the lessons"] {
        assert!(rig.says(words), "{words}: {:?}", rig.texts());
    }
    assert!(rig.says("Measured in ") && rig.says("m²"));
    // The rule for the mean pressure uses it.
    assert!(rig.says("ground pressure (mean)"));
    rig.click("Put away");
    assert!(!rig.says("Used to find"));
    // A number that no rule finds says so.
    rig.click("width of one track");
    assert!(rig.says("You set it: no rule finds it."));
}

/// The same words as `list rules` has: how many published numbers stand behind the rule and how far
/// off the worst is, or why there are none.
#[test]
fn it_says_what_the_rule_was_checked_against() {
    let mut rig = rig::lesson("pressure");
    let rules = || heftwise::rules::catalogue::all().iter().map(|rule| rule.finds);
    let with = |wanted: fn(&checks::Checks) -> bool| {
        rules().find(|id| wanted(&checks::of(*id))).expect("there is such a rule")
    };
    follow(&mut rig, "acceleration");
    assert!(rig.says("Checks: 4 published numbers, the worst 0.11 % off"), "{:?}", rig.texts());
    for id in [
        with(|checks| checks.reason.is_some() && checks.own() == 0),
        with(|checks| checks.published == 0 && checks.derived > 0),
        with(|checks| checks.on_the_way > 0 && checks.published > 0),
    ] {
        follow(&mut rig, id.name());
        assert!(rig.says(&format!("Checks: {}.", checks::of(id))), "{id}: {:?}", rig.texts());
    }
    follow(&mut rig, "mass");
    assert!(!rig.says("Checks: "), "no rule finds the mass");
}

#[test]
fn its_links_lead_on_to_other_meanings_and_long_lists_unfold() {
    let mut rig = rig::lesson("pressure");
    follow(&mut rig, "mass");
    assert!(rig.says("In your build: 6.40 kg."), "{:?}", rig.texts());
    let before = rig.texts();
    let more = before.iter().find(|text| text.ends_with(" more")).expect("mass has many uses");
    rig.click(more.clone());
    assert!(rig.texts().len() > before.len() + 10);
    let mass = catalogue::find("mass").unwrap().id;
    let last = heftwise::rules::used_by(mass).last().expect("mass has many uses");
    let last = catalogue::find(last.name()).unwrap();
    assert!(!rig.says(last.meaning) && last.label.contains(' '));
    rig.click(last.label);
    assert!(rig.says(last.meaning), "{}", last.label);
}

#[test]
fn a_heading_of_another_lesson_opens_there() {
    let mut rig = rig::lesson("impact");
    let heading = "Will it sink?";
    assert!(!rig.says(heading));
    follow(&mut rig, "mass");
    rig.click(heading);
    assert_eq!(rig.app.place, Place::Lesson("pressure".to_owned()));
    assert!(rig.scrolled() > 1000.0, "{}", rig.scrolled());
}

#[test]
fn by_key_the_focus_goes_to_the_meaning_and_back() {
    let mut rig = rig::lesson("pressure");
    rig.send(Message::FocusPage);
    let words = rig.find("ground pressure").expect("shown").bounds().center();
    for _ in 0..80 {
        if rig.focused().is_some_and(|control| control.bounds.contains(words)) {
            break;
        }
        rig.key(Named::Tab, Modifiers::empty());
    }
    rig.key(Named::Enter, Modifiers::empty());
    let back = rig.focused().expect("the way out has the focus");
    let close = rig.find("Put away").expect("shown").bounds();
    assert!(back.bounds.contains(close.center()), "{back:?} {close:?}");
    rig.key(Named::Enter, Modifiers::empty());
    assert!(!rig.says("Used to find"));
    let link = rig.focused().expect("the link has the focus again");
    let words = rig.find("ground pressure").expect("shown").bounds();
    assert!(link.bounds.contains(words.center()), "{link:?} {words:?}");
    // And so again, by key alone.
    rig.key(Named::Enter, Modifiers::empty());
    assert!(rig.says("Used to find"));
}
