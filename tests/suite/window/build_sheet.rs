//! The build sheet: what is a guess and what was measured, what a number is for, the parts by keys.

use heftwise::app::screen::{Place, build_sheet};
use heftwise::app::shell::{Message, Start};
use heftwise::quantity::AnyId;
use heftwise::quantity::catalogue::{machine::MASS, running_gear::*};
use heftwise::sheet::Edit;
use iced::keyboard::{Modifiers, key::Named};
use iced::widget::Id;
use tempfile::TempDir;

use super::rig::{self, Rig, WIDE, file};

const BUILD: &str = "format = 1\nname = \"Cart\"\n\n[running-gear]\ntrack-width = \"70 mm\"\n\
                     contact-length = \"421 mm\"\ntrack-count = \"2\"\n\
                     [ground]\nholding-pressure = \"8.1 ± 2 kPa\"\n\
                     [[parts]]\nname = \"frame\"\nmass = \"2 ± 0.05 kg\"\n\
                     [[parts]]\nname = \"pack\"\nmass = \"1 kg\"\n";

const BOOK: &str = "format = 1\n[[lesson.mud.measurement]]\nwhat = \"Print\"\n\
                    quantity = \"contact-length\"\nreadings = [\"418 mm\", \"421 mm\", \"424 mm\"]\n\
                    predicted = \"400 mm\"\nwhen = \"2026-05-04T09:30:00Z\"\n";

fn open(folder: &TempDir) -> Rig {
    let book = rig::folders(folder).notebook;
    std::fs::create_dir_all(book.parent().unwrap()).unwrap();
    std::fs::write(book, BOOK).unwrap();
    let build = Some(file(folder, "cart.toml", BUILD));
    let mut rig = Rig::open(Start { build, ..rig::start(folder) }, WIDE);
    rig.send(Message::Go(Place::BuildSheet));
    rig
}

fn edit(rig: &mut Rig, edit: Edit) {
    rig.send(Message::BuildSheet(build_sheet::Message::Edit(edit, None)));
}

fn set(id: AnyId, text: &str) -> Edit {
    Edit::Set { id, text: text.to_owned() }
}

#[test]
fn guesses_are_told_from_what_is_known() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    let count = |rig: &mut Rig, words: &str| {
        rig.texts().iter().filter(|text| text.as_str() == words).count()
    };
    assert_eq!(count(&mut rig, "measured 2026-05-04"), 1);
    assert_eq!(count(&mut rig, "with its spread"), 1);
    assert_eq!(count(&mut rig, "counted"), 1);
    assert_eq!(count(&mut rig, "guess"), 1, "the width");
    rig.click("Guesses: 1 of 4 given");
    assert!(rig.says("Track width") && !rig.says("Contact length"));
    edit(&mut rig, set(TRACK_WIDTH.any(), "70 ± 2 mm"));
    assert!(rig.says("Guesses: 0 of 4 given") && rig.says("No number is a guess"));
    rig.click("All numbers");
    // A number that has moved away from what was measured is measured no more.
    edit(&mut rig, set(CONTACT_LENGTH.any(), "500 mm"));
    assert_eq!(count(&mut rig, "measured 2026-05-04"), 0);
    let table = heftwise::sheet::presets::tables().iter().find(|table| table.id == "ground");
    let row = &table.unwrap().rows[0];
    edit(&mut rig, row.edit());
    assert!(rig.says(&format!("preset: {}", row.label)));
}

#[test]
fn a_number_says_what_it_is_used_for() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    assert!(!rig.says("Used for: "));
    rig.click(Id::new("find-number"));
    rig.typewrite("track width");
    rig.click("Show what each is used for");
    assert!(rig.says("Used for: ") && rig.says("contact area"));
    rig.click("Hide what each is used for");
    assert!(!rig.says("Used for: "));
}

#[test]
fn the_sheet_says_whether_it_is_saved_and_saves() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    assert!(!rig.says("● not saved"));
    edit(&mut rig, set(TRACK_WIDTH.any(), "75 mm"));
    assert!(rig.says("● not saved"));
    rig.click("Save");
    assert!(!rig.says("● not saved"));
    let text = std::fs::read_to_string(folder.path().join("cart.toml")).unwrap();
    assert!(text.contains("75 mm"));
}

fn is_focused(rig: &mut Rig, id: &str) -> bool {
    let at = rig.find(Id::from(id.to_owned())).unwrap_or_else(|| panic!("no {id}")).bounds();
    rig.focused().is_some_and(|focused| focused.bounds == at)
}

fn names(rig: &Rig) -> Vec<&str> {
    rig.app.desk.sheet().parts().iter().map(|part| part.name.as_str()).collect()
}

#[test]
fn the_focus_follows_a_part_that_is_moved_by_keys() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    let enter = |rig: &mut Rig| rig.key(Named::Enter, Modifiers::empty());
    rig.click(Id::new("part:0:copy"));
    assert_eq!(names(&rig), ["frame", "frame", "pack"]);
    assert!(is_focused(&mut rig, "part:1:name"), "the copy can be named at once");
    rig.command("a");
    rig.typewrite("deck");
    rig.click(Id::new("part:0:down"));
    assert!(is_focused(&mut rig, "part:1:down"));
    enter(&mut rig);
    assert_eq!(names(&rig), ["deck", "pack", "frame"]);
    assert!(is_focused(&mut rig, "part:2:up"), "at the end only up is left");
    enter(&mut rig);
    enter(&mut rig);
    assert_eq!(names(&rig), ["frame", "deck", "pack"]);
    rig.click(Id::new("part:2:remove"));
    assert_eq!(names(&rig), ["frame", "deck"]);
    assert!(is_focused(&mut rig, "part:1:remove"));
    rig.click("Add a part");
    assert!(is_focused(&mut rig, "part:2:name"));
}

/// What was weighed stays as sure as it was, though it goes into the trial mass of a parts list.
#[test]
fn a_weighed_mass_keeps_its_spread_on_a_parts_list() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    edit(&mut rig, set(MASS.any(), "3.44 ± 0.13 kg"));
    // 0.05² + 0.12² = 0.13².
    assert_eq!(rig.app.desk.sheet().trial().map(|it| it.mass.as_str()), Some("+440 ± 120 g"));
    rig.click("The machine");
    let field = rig.field("sheet:mass");
    assert_eq!(field.as_deref(), Some("3.44 ± 0.13 kg"));
    // Stepped on, it is as doubtful as before.
    rig.click(Id::new("sheet:mass"));
    rig.key(Named::ArrowUp, Modifiers::empty());
    let spread = rig.app.desk.tally.spreads[&MASS.any()];
    assert!((spread - 0.13).abs() < 1e-3, "{spread}");
}

/// A long list is shown a stretch at a time, and the focus follows a part from one to the next.
#[test]
fn thousands_of_parts_are_shown_a_stretch_at_a_time() {
    let folder = tempfile::tempdir().unwrap();
    let one = |number| format!("[[parts]]\nname = \"shoe {number}\"\nmass = \"{number} g\"\n");
    let text: String = (1..=2000).map(one).collect();
    let build = Some(file(&folder, "many.toml", &format!("format = 1\n{text}")));
    let mut rig = Rig::open(Start { build, ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::BuildSheet));
    let fields = rig.all(|candidate| match candidate {
        iced_test::selector::Candidate::TextInput { id: Some(id), .. } => Some(id.clone()),
        _ => None,
    });
    assert!(fields.len() < 300, "{} fields are built", fields.len());
    assert!(rig.says("Parts 1 to 40 of 2000"));
    rig.click("Later");
    assert!(rig.says("Parts 41 to 80 of 2000"));
    assert_eq!(rig.field("part:79:name").as_deref(), Some("shoe 80"));
    rig.click(Id::new("part:79:down"));
    assert!(rig.says("Parts 81 to 120 of 2000") && is_focused(&mut rig, "part:80:down"));
    assert_eq!(rig.app.desk.sheet().parts()[80].name, "shoe 80");
    rig.click("Last");
    rig.click("Add a part");
    assert!(rig.says("Parts 2001 to 2001 of 2001") && is_focused(&mut rig, "part:2000:name"));
    rig.send(Message::Undo);
    assert!(rig.says("Parts 1961 to 2000 of 2000"));
    rig.click("First");
    assert!(rig.field("part:0:name").is_some());
}

/// What cannot be read is told, but not two thousand times.
#[test]
fn many_reports_are_counted() {
    let folder = tempfile::tempdir().unwrap();
    let text = "[[parts]]\nname = \"shoe\"\nmass = \"heavy\"\n".repeat(500);
    let build = Some(file(&folder, "many.toml", &format!("format = 1\n{text}")));
    let mut rig = Rig::open(Start { build, ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::BuildSheet));
    assert!(rig.says("And 488 more like these."), "{:?}", rig.texts());
}

/// A part far down a long list is edited in its line alone, and the keys go on from there.
#[test]
fn a_part_far_down_the_list_is_edited_in_its_place() {
    let folder = tempfile::tempdir().unwrap();
    let one = |number| format!("[[parts]] # {number}\nname = 'shoe'\nmass = \"{number} g\"\n");
    let text = format!("format = 1\n{}", (1..=2000).map(one).collect::<String>());
    let build = Some(file(&folder, "many.toml", &text));
    let mut rig = Rig::open(Start { build, ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::BuildSheet));
    rig.send(Message::BuildSheet(build_sheet::Message::Parts(1499)));
    assert!(rig.says("Parts 1481 to 1520 of 2000"));
    let before = rig.app.desk.tally.parts.mass;
    rig.click(Id::new("part:1499:mass"));
    rig.command("a");
    rig.typewrite("7 kg");
    let edited = text.replace("\"1500 g\"", "\"7 kg\"");
    assert_eq!(rig.app.desk.sheet().text(), edited);
    let added = rig.app.desk.tally.parts.mass - before;
    assert!((added - 5.5).abs() < 1e-9, "{added} kg more");
    rig.key(Named::Tab, Modifiers::empty());
    assert!(is_focused(&mut rig, "part:1499:how far forward"));
    rig.typewrite("9 mm");
    let placed = edited.replace("\"7 kg\"\n", "\"7 kg\"\nat = [\"9 mm\", \"0 mm\", \"0 mm\"]\n");
    assert_eq!(rig.app.desk.sheet().text(), placed);
    for _ in 0..20 {
        rig.send(Message::Undo);
    }
    assert_eq!(rig.app.desk.sheet().text(), text);
}

/// A line that is kept from one view to the next still shows what the build says, or what is typed.
#[test]
fn a_field_shows_what_is_typed_and_then_what_the_build_says() {
    let folder = tempfile::tempdir().unwrap();
    let mut rig = open(&folder);
    const WIDTH: &str = "sheet:track-width";
    rig.click(Id::new(WIDTH));
    rig.key(Named::End, Modifiers::empty());
    rig.typewrite("x");
    assert_eq!(rig.field(WIDTH).as_deref(), Some("70 mmx"));
    assert_eq!(rig.app.desk.sheet().number(TRACK_WIDTH), Some("70 mm"));
    rig.key(Named::Backspace, Modifiers::empty());
    assert_eq!(rig.field(WIDTH).as_deref(), Some("70 mm"));
    rig.key(Named::ArrowUp, Modifiers::empty());
    assert_eq!(rig.field(WIDTH).as_deref(), Some("71 mm"));
    rig.send(Message::Undo);
    assert_eq!(rig.field(WIDTH).as_deref(), Some("70 mm"));

    let newer = file(&folder, "newer.toml", "format = 2\n[machine]\nmass = \"6 kg\"\n");
    let mut rig = Rig::open(Start { build: Some(newer), ..rig::start(&folder) }, WIDE);
    rig.send(Message::Go(Place::BuildSheet));
    rig.click(Id::new("sheet:mass"));
    rig.key(Named::End, Modifiers::empty());
    for _ in 0..2 {
        rig.typewrite("3");
        rig.key(Named::Backspace, Modifiers::empty());
        assert_eq!(rig.field("sheet:mass").as_deref(), Some("6 kg"));
    }
    assert!(rig.texts().iter().any(|text| text.contains("open for reading alone")));
    assert_eq!(rig.app.desk.sheet().number(MASS), Some("6 kg"));
}
