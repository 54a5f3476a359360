//! A build that was edited and edited again is the build that its text says, and takes the next edit
//! as that one does: what is remembered of where things stand never drifts from the text.

use heftwise::quantity::catalogue::{ground, machine, running_gear};
use heftwise::sheet::{Axis, Edit, History, Part, PartField, Sheet};
use proptest::prelude::*;
use proptest::sample::select;

/// Entries as people leave them: twice, in the wrong table, without quotes, over several lines.
fn file() -> impl Strategy<Value = String> {
    let head = select(vec![
        "format = 1\nname = \"Añy\" # kept\nslope = '4°'\n",
        "name = '''one\ntwo'''\nnote = 'é'\nground.holding-pressure = \"3 kPa\"\nmass = \"7 kg\"\n",
        "mass = \"7 kg\"\nslope = 3\n\n[ground]\nmass = \"8 kg\"\nslope = \"2°\"\n",
        "machine = { slope = \"5°\", shoe = 1, mass = \"6 kg\", hat = 2 }\n",
    ]);
    let middle = select(vec![
        "\n[running-gear] # ran\ntrack-width = \"\"\"90 mm\"\"\"\n\"contact-length\" = \"420 mm\"\n",
        "\n[running-gear]\ntrack-width = 90 # no quotes\ncolour = 'red'\n[running-gear.own]\na = 1\n",
        "",
    ]);
    let parts = select(vec![
        "\n[[parts]]\nname = \"“a”\"\nmass = \"1 kg\" \nat = [\"1 mm\", '2 mm',\n \"3 mm\"] # here\n\n# a bolt\n  [[parts]]\nmass = \"9 g\"\nbought = 'here'\n[parts.more]\nx = 1\n",
        "\n[[parts]]\nname = \"b\"\nmass = 3\n[[parts]]\nmass = '''\n4 g'''\nat = [1, 2, \"3 mm\"]\n",
        "",
    ]);
    let trial = select(vec![
        "\n[trial-mass]\nmass = \"+2 g\"\nat = ['1 mm', '2 mm', '3 mm']\nodd = 1\n",
        "\n[trial-mass]\nat = ['1 mm', 'x', '3 mm']\nmass = 2\n",
        "",
    ]);
    (head, middle, parts, trial, any::<bool>(), any::<bool>()).prop_map(
        |(head, middle, parts, trial, dos, mark)| {
            let text = format!("{head}{middle}{parts}{trial}");
            let text = if dos { text.replace('\n', "\r\n") } else { text };
            if mark { format!("\u{feff}{text}") } else { text }
        },
    )
}

/// What may be typed into any field.
fn typed() -> impl Strategy<Value = String> {
    prop_oneof!["[0-9]{1,4} (g|kg|mm|°|kPa)", "\\PC{0,6}", "[\\n\\t\"'\\\\#=é]{0,4}"]
}

fn edit() -> impl Strategy<Value = Edit> {
    let ids = vec![
        machine::MASS.any(),
        machine::SLOPE.any(),
        ground::HOLDING_PRESSURE.any(),
        running_gear::TRACK_WIDTH.any(),
        running_gear::CONTACT_LENGTH.any(),
    ];
    let id = select(ids);
    let fields = vec![
        PartField::Name,
        PartField::Mass,
        PartField::At(Axis::Forward),
        PartField::At(Axis::Up),
    ];
    let part = (0..3usize, select(fields), typed());
    let at = || prop::option::of([typed(), typed(), typed()]);
    prop_oneof![
        4 => (id.clone(), typed()).prop_map(|(id, text)| Edit::Set { id, text }),
        1 => id.prop_map(|id| Edit::Clear { id }),
        2 => prop_oneof![typed().prop_map(Edit::Name), typed().prop_map(Edit::Note)],
        4 => part.prop_map(|(index, field, text)| Edit::SetPart { index, field, text }),
        1 => (typed(), typed(), at()).prop_map(|(name, mass, at)| Edit::AddPart(Part { name, mass, at })),
        2 => (0..3usize, 0..3usize, 0..4usize).prop_map(|(index, to, which)| match which {
            0 => Edit::UnplacePart { index },
            1 => Edit::DuplicatePart { index },
            2 => Edit::RemovePart { index },
            _ => Edit::MovePart { from: index, to },
        }),
        2 => (typed(), at()).prop_map(|(mass, at)| Edit::SetTrial { mass, at }),
        1 => Just(Edit::ClearTrial),
    ]
}

proptest! {
    #[test]
    fn an_edited_build_is_the_one_its_text_says(
        text in file(),
        edits in prop::collection::vec(edit(), 1..12),
    ) {
        let opened = Sheet::read(&text).unwrap();
        let mut history = History::opened(opened.clone());
        let mut sheet = opened;
        for edit in edits {
            let mut fresh = Sheet::read(sheet.text()).unwrap();
            let taken = fresh.apply(&edit);
            prop_assert_eq!(sheet.apply(&edit), taken, "{:?} into {:?}", edit, fresh.text());
            prop_assert_eq!(sheet.text(), fresh.text(), "{:?}", edit);
            let read = Sheet::read(sheet.text()).unwrap();
            prop_assert_eq!(&sheet, &read, "{:?}", edit);
            prop_assert_eq!(sheet.tally(), read.tally(), "{:?}", edit);
            let _ = history.apply(&edit, None);
        }
        prop_assert_eq!(history.sheet(), &sheet);
        while history.undo() {}
        prop_assert_eq!(history.sheet().text(), text);
    }
}
