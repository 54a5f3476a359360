//! Undo and redo.

use heftwise::quantity::catalogue;
use heftwise::quantity::catalogue::impact::{DROP_HEIGHT, IMPACT_SPEED};
use heftwise::quantity::catalogue::machine::MASS;
use heftwise::sheet::{Axis, Edit, Gesture, History, Part, PartField, Sheet, demo};
use proptest::prelude::*;

use crate::sheet_edit::{SAMPLE, set, sheet};

#[test]
fn edits_of_one_gesture_are_undone_as_one() {
    let mut history = History::opened(Sheet::blank());
    let start = history.sheet().text().to_owned();
    history.apply(&set(MASS, "1 kg"), None).unwrap();
    for text in ["2 kg", "3 kg", "4 kg"] {
        history.apply(&set(MASS, text), Some(Gesture(7))).unwrap();
    }
    history.apply(&set(MASS, "5 kg"), Some(Gesture(8))).unwrap();
    let mut seen = Vec::new();
    while history.undo() {
        seen.push(history.sheet().number(MASS).map(str::to_owned));
    }
    assert_eq!(seen, [Some("4 kg".to_owned()), Some("1 kg".to_owned()), None]);
    assert_eq!(history.sheet().text(), start);
    while history.redo() {}
    assert_eq!(history.sheet().number(MASS), Some("5 kg"));
}

#[test]
fn a_gesture_does_not_go_on_after_undo_save_or_another_edit() {
    let drag = Some(Gesture(1));
    let mut history = History::opened(Sheet::blank());
    history.apply(&set(MASS, "1 kg"), drag).unwrap();
    history.apply(&Edit::Name("A".into()), None).unwrap();
    history.apply(&set(MASS, "2 kg"), drag).unwrap();
    assert!(history.undo());
    assert_eq!((history.sheet().name(), history.sheet().number(MASS)), ("A", Some("1 kg")));
    history.apply(&set(MASS, "3 kg"), drag).unwrap();
    assert!(!history.can_redo());
    history.mark_saved(history.sheet().clone());
    history.apply(&set(MASS, "4 kg"), drag).unwrap();
    assert!(history.is_changed_since_save());
    assert!(history.undo());
    assert!(!history.is_changed_since_save());
}

#[test]
fn undo_brings_the_other_of_a_pair_back() {
    let mut history = History::unsaved(Sheet::blank());
    assert!(history.is_changed_since_save());
    history.apply(&set(DROP_HEIGHT, "0.3 m"), None).unwrap();
    history.apply(&set(IMPACT_SPEED, "2 m/s"), None).unwrap();
    assert_eq!(history.sheet().number(DROP_HEIGHT), None);
    assert!(history.undo());
    assert_eq!(history.sheet().number(DROP_HEIGHT), Some("0.3 m"));
}

#[test]
fn an_edit_that_changes_nothing_or_is_refused_is_no_step() {
    let mut history = History::opened(sheet(SAMPLE));
    history.apply(&Edit::Clear { id: MASS.any() }, None).unwrap();
    assert!(history.apply(&Edit::RemovePart { index: 9 }, None).is_err());
    assert!(!history.can_undo());
    assert!(!history.is_changed_since_save());
}

#[test]
fn many_thousand_steps_are_kept() {
    let mut history = History::opened(Sheet::blank());
    for grams in 1..=3_000 {
        history.apply(&set(MASS, &format!("{grams} g")), None).unwrap();
    }
    let steps = std::iter::from_fn(|| history.undo().then_some(())).count();
    assert_eq!(steps, 3_000);
    assert_eq!(history.sheet(), &Sheet::blank());
}

/// Large changes, such as notes of 700 kB, push the oldest out; the last can always be undone.
#[test]
fn what_the_steps_hold_is_bounded() {
    let mut history = History::opened(Sheet::blank());
    let note = |letter: &str| Edit::Note(letter.repeat(700_000));
    for letter in ["a", "b"].into_iter().cycle().take(40) {
        history.apply(&note(letter), None).unwrap();
    }
    let steps = std::iter::from_fn(|| history.undo().then_some(())).count();
    assert_eq!(steps, (16 << 20) / 1_400_100);
    assert!(history.sheet().note().starts_with('a') || history.sheet().note().starts_with('b'));
    assert_eq!(std::iter::from_fn(|| history.redo().then_some(())).count(), steps);
    assert_eq!(history.sheet().note(), "b".repeat(700_000));
}

fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![
        Just(String::new()),
        Just("6.4 kg".to_owned()),
        "-?[0-9]{1,3}(\\.[0-9])? (mm|kg|g|kPa|°)",
        "[\\[\\]=\"'#\\\\ \\n\\r\\t\u{7f}a-zé“]{0,12}",
    ]
}

fn any_place() -> impl Strategy<Value = Option<[String; 3]>> {
    proptest::option::of([any_text(), any_text(), any_text()])
}

fn any_edit() -> impl Strategy<Value = Edit> {
    let id = || (0..catalogue::all().len()).prop_map(|index| catalogue::all()[index].id);
    let index = || 0..6usize;
    let field = prop_oneof![
        Just(PartField::Name),
        Just(PartField::Mass),
        (0..3usize).prop_map(|axis| PartField::At(Axis::ALL[axis])),
    ];
    prop_oneof![
        4 => (id(), any_text()).prop_map(|(id, text)| Edit::Set { id, text }),
        2 => id().prop_map(|id| Edit::Clear { id }),
        1 => Just(Edit::Clear { id: MASS.any() }),
        1 => any_text().prop_map(|text| Edit::Set { id: MASS.any(), text }),
        1 => any_text().prop_map(Edit::Name),
        1 => any_text().prop_map(Edit::Note),
        1 => (any_text(), any_text(), any_place())
            .prop_map(|(name, mass, at)| Edit::AddPart(Part { name, mass, at })),
        2 => (index(), field, any_text())
            .prop_map(|(index, field, text)| Edit::SetPart { index, field, text }),
        1 => index().prop_map(|index| Edit::UnplacePart { index }),
        1 => index().prop_map(|index| Edit::DuplicatePart { index }),
        1 => index().prop_map(|index| Edit::RemovePart { index }),
        2 => (index(), index()).prop_map(|(from, to)| Edit::MovePart { from, to }),
        1 => (any_text(), any_place()).prop_map(|(mass, at)| Edit::SetTrial { mass, at }),
        1 => Just(Edit::ClearTrial),
    ]
}

fn any_start() -> impl Strategy<Value = String> {
    let plain = prop_oneof![
        Just(SAMPLE.to_owned()),
        Just(demo::ALL[0].text.to_owned()),
        Just(String::new()),
        Just("# alone".to_owned()),
    ];
    (plain, any::<bool>(), any::<bool>()).prop_map(|(text, dos, mark)| {
        let text = if dos { text.replace('\n', "\r\n") } else { text };
        if mark { format!("\u{feff}{text}") } else { text }
    })
}

/// Every comment and unknown name of the sample; no edit of a number may lose one.
const KEPT: [&str; 4] = [
    "# A build of format 1",
    "# taken from the worn pair",
    "shoe-colour = \"yellow\"",
    "shelf = 3",
];

proptest! {
    #[test]
    fn any_edits_are_made_exactly_and_undone_byte_for_byte(
        start in any_start(),
        edits in proptest::collection::vec(any_edit(), 1..25),
    ) {
        let mut history = History::opened(sheet(&start));
        let mut texts = vec![start.clone()];
        for edit in &edits {
            match history.apply(edit, None) {
                Ok(()) => {}
                Err(heftwise::sheet::EditRefused::Layout(why)) => {
                    prop_assert!(false, "{edit:?} was refused: {why}\n{}", history.sheet().text());
                }
                Err(_) => {}
            }
            let text = history.sheet().text();
            let again = Sheet::read(text).expect("what was written reads");
            prop_assert_eq!(&again, history.sheet());
            for kept in KEPT {
                prop_assert_eq!(text.contains(kept), start.contains(kept), "{} after {:?}", kept, edit);
            }
            if start.contains("\r\n") {
                prop_assert!(!text.replace("\r\n", "").contains('\n'), "mixed line ends: {text:?}");
            }
            if text != texts.last().unwrap() {
                texts.push(text.to_owned());
            }
            prop_assert_eq!(history.sheet().tally(), again.tally(), "after {:?}", edit);
        }
        let end = history.sheet().text().to_owned();
        while let Some(text) = texts.pop() {
            prop_assert_eq!(history.sheet().text(), text);
            prop_assert_eq!(history.undo(), !texts.is_empty());
        }
        prop_assert!(!history.is_changed_since_save());
        while history.redo() {}
        prop_assert_eq!(history.sheet().text(), end);
    }
}
