//! Handouts: what stands on paper, what must not, and that the same seed makes the same sheets.

pub mod print;

use bytes::Bytes;
use heftwise::handout::{
    Choices, Copies, Paper, Request, Subject, lesson, lesson_of, notebook, walk_round,
};
use heftwise::lesson::{Library, Memory, Shipped};
use heftwise::notebook::Notebook;
use heftwise::quantity::{UnitSet, Units};
use heftwise::sheet::{Sheet, demo};

fn subject(id: &str) -> Subject {
    let sheet = Sheet::read(demo::find(id).unwrap().text).unwrap();
    Subject::new(sheet.name().to_owned(), sheet)
}

/// A handout of a shipped lesson, changed by `change`.
fn of(id: &str, change: impl FnOnce(&mut Request<'_>)) -> String {
    let library = Library::load(Shipped);
    made(&library, id, &subject("sandpiper"), change)
}

fn made(
    library: &Library,
    id: &str,
    subject: &Subject,
    change: impl FnOnce(&mut Request<'_>),
) -> String {
    let units = Units::default();
    let mut request = Request {
        lesson: library.lesson(id).expect("a lesson"),
        teacher: library.teacher(id),
        picture: &|file| library.picture(id, file).ok(),
        subject,
        companion: None,
        units: &units,
        paper: Paper::A4,
        copies: None,
        key: false,
        whole: false,
        told: &|_, _| true,
    };
    change(&mut request);
    lesson(&request).expect("nobody called it off")
}

/// A lesson in memory, with every block that has an answer.
const LESSON: &str = r#"+++
id = "small"
title = "Small & <sharp>"
order = 1
goals = ["Find the pressure."]
uses = ["track-width", "contact-length"]
+++

## First

```guess
question = "How hard does it press?"
kind = "number"
answer = "live:ground-pressure"
quantity = "ground-pressure"
tolerance = "5 %"
why = "Force over area."
[[slip]]
factor = 2.0
idea = "Forgot the second track"
reply = "Count both."
```

```faded
title = "Line by line"
[[step]]
say = "Area:"
is = "live:contact-area"
unit = "m²"
[[step]]
say = "Pressure:"
is = "live:ground-pressure"
blank = true
```

```calculator
change = ["track-width"]
find = ["ground-pressure"]
```

```deeper
A fold

Words in a fold.
```

## Asked

1. Why?

```answers
Because of the area.
```

```teacher
Let them argue.
```
"#;

fn small(change: impl FnOnce(&mut Request<'_>)) -> String {
    let texts = [("small".to_owned(), LESSON.to_owned())].into();
    let teachers = [("small".to_owned(), "# Teaching\n\nBring clay.\n".to_owned())].into();
    let library = Library::load(Memory { texts, teachers, ..Memory::default() });
    assert_eq!(library.lessons().next().unwrap().problems, [], "the sample is sound");
    made(&library, "small", &subject("sandpiper"), change)
}

/// A page is self-contained: whatever it shows is inside it, and it runs nothing.
fn assert_closed(page: &str) {
    for banned in ["<script", "<link", "<iframe", "src=\"http", "href=\"http", "url(", "@import"] {
        assert!(!page.contains(banned), "{banned} in a handout");
    }
    assert!(page.starts_with("<!DOCTYPE html>"));
    assert!(page.contains("default-src 'none'"));
}

#[test]
fn every_shipped_lesson_makes_a_closed_page_for_every_demonstration_build() {
    let library = Library::load(Shipped);
    for it in library.lessons() {
        for demo in demo::ALL {
            let own = subject(demo.id);
            let page = made(&library, &it.front.id, &own, |request| {
                request.whole = true;
                request.key = true;
            });
            assert_closed(&page);
            assert!(page.contains(&own.name), "{} of {}", it.front.id, demo.id);
        }
    }
}

#[test]
fn answers_stand_in_the_key_alone() {
    let answers = ["830 Pa", "1.66 kPa", "Forgot the second track", "Because of the area."];
    let sheet = small(|_| {});
    for answer in answers {
        assert!(!sheet.contains(answer), "{answer} is given away");
    }
    assert!(!sheet.contains("Let them argue.") && !sheet.contains("Bring clay."));
    let with_key = small(|request| request.key = true);
    for answer in answers {
        assert!(with_key.contains(answer), "{answer} is not in the key");
    }
    assert!(with_key.contains("Let them argue.") && with_key.contains("Bring clay."));
    assert!(with_key.find("<h1>Key").unwrap() > with_key.find("<h1>Small").unwrap());
}

#[test]
fn the_prediction_stands_before_the_formula() {
    let page = of("pressure", |_| {});
    let guess = page.find("Your guess first").unwrap();
    assert!(guess < page.find("class=\"formula\"").unwrap());
}

#[test]
fn text_of_others_is_text_and_not_html() {
    let page = small(|_| {});
    assert!(page.contains("Small &amp; &lt;sharp&gt;") && !page.contains("<sharp>"));
    let mut hostile = subject("bullock");
    hostile.name = "</style><script>alert(1)</script>".to_owned();
    let page = walk_round(&hostile, &Units::default(), Paper::A4);
    assert_closed(&page);
    assert_eq!(page.matches("</style>").count(), 1);
}

#[test]
fn a_short_sheet_leaves_folds_out_and_a_whole_one_prints_them() {
    assert!(!small(|_| {}).contains("Words in a fold."));
    assert!(small(|request| request.whole = true).contains("Words in a fold."));
}

#[test]
fn the_same_seed_makes_the_same_sheets_and_another_seed_others() {
    let with =
        |count, seed| small(|request| request.copies = Some(Copies::new(count, seed).unwrap()));
    assert_eq!(with(4, 42), with(4, 42));
    assert_ne!(with(4, 42), with(4, 43));
    // More groups change nothing for the groups before them.
    let (few, many) = (with(2, 7), with(5, 7));
    let second = |page: &str| {
        let from = page.find("Group 2").unwrap();
        page[from..].split("</section>").next().unwrap().to_owned()
    };
    assert_eq!(second(&few), second(&many));
}

#[test]
fn copies_are_from_one_to_sixty() {
    assert!(Copies::new(1, 0).is_ok() && Copies::new(60, 0).is_ok());
    for wrong in [0, 61, usize::MAX] {
        let words = Copies::new(wrong, 0).unwrap_err().to_string();
        assert!(words.contains("1 to 60"), "{words}");
    }
}

/// Each group's answer in the key, worked out anew from the numbers printed for it.
#[test]
fn the_key_answers_each_group_with_its_own_numbers() {
    let page = small(|request| {
        request.key = true;
        request.copies = Some(Copies::new(3, 11).unwrap());
    });
    let key = &page[page.find("<h1>Key").unwrap()..];
    let cells = |name: &str| -> Vec<f64> {
        let row = key.split("<tr>").find(|row| row.contains(name)).expect(name);
        row.split("<td>").skip(2).map(number).collect()
    };
    let (width, length) = (cells(">track width<"), cells(">contact length<"));
    let pressure = cells(">ground pressure (mean)<");
    assert_eq!(pressure.len(), 3);
    for group in 0..3 {
        // Sandpiper: 6.40 kg on two tracks, on the level.
        let area = 2.0 * width[group] * 1e-3 * length[group] * 1e-3;
        let expected = 6.40 * 9.80665 / area;
        approx::assert_relative_eq!(pressure[group], expected, max_relative = 6e-3);
    }
    assert_ne!(width[0], width[1]);
}

/// A number as a handout shows it, without its unit; kilopascals come out as pascals.
fn number(cell: &str) -> f64 {
    let text = cell.split('<').next().unwrap();
    let figures: String = text.chars().take_while(|c| c.is_ascii_digit() || *c == '.').collect();
    let value: f64 = figures.parse().unwrap_or_else(|_| panic!("{cell}"));
    if text.contains("kPa") { 1000.0 * value } else { value }
}

#[test]
fn the_record_of_a_build_has_its_limits_its_parts_and_its_numbers() {
    let page = walk_round(&subject("bullock"), &Units::default(), Paper::Letter);
    assert_closed(&page);
    for words in ["The ground under the low end", "0.883", "battery", "3.10 kg", "80 ± 2 mm"] {
        assert!(page.contains(words), "{words}");
    }
    assert!(page.contains("size:letter"));
    assert!(page.contains("makers’ manuals, local rules"));
}

#[test]
fn a_handout_speaks_imperial_where_asked() {
    let units = Units::of(UnitSet::Imperial);
    let page = walk_round(&subject("bullock"), &units, Paper::Letter);
    assert!(page.contains(" lb"), "masses are in pounds");
}

#[test]
fn the_notebook_is_printed_as_it_stands() {
    let mut book = Notebook::default();
    book.noted("pressure", "The tail went in first.".to_owned());
    let titles = [("pressure", "Pressure on the ground")];
    let page = notebook(&book, &titles, &subject("sandpiper"), &Units::default(), Paper::A4);
    assert_closed(&page);
    assert!(page.contains("The tail went in first.") && page.contains("Pressure on the ground"));
}

#[test]
fn a_picture_that_is_not_there_leaves_its_words() {
    let none: &dyn Fn(&str) -> Option<Bytes> = &|_| None;
    let page = of("pressure", |request| request.picture = none);
    assert!(page.contains("Side view of a track."));
}

#[test]
fn each_sheet_is_told_and_the_rest_can_be_called_off() {
    let library = Library::load(Shipped);
    let subject = subject("sandpiper");
    let heard = std::cell::RefCell::new(Vec::new());
    let (units, copies) = (Units::default(), Some(Copies::new(3, 1).unwrap()));
    let choices = Choices { units, paper: Paper::A4, copies, key: false, whole: false };
    let made = |until: usize| {
        heard.borrow_mut().clear();
        let told = |made, of| {
            heard.borrow_mut().push((made, of));
            made < until
        };
        lesson_of(&library, "pressure", (&subject, None), &choices, &told).is_some()
    };
    assert!(made(4));
    assert_eq!(*heard.borrow(), [(1, 3), (2, 3), (3, 3)]);
    assert!(!made(2), "called off after the second");
    assert_eq!(*heard.borrow(), [(1, 3), (2, 3)]);
}
