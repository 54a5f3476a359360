//! The lessons that come with the program.

use heftwise::lesson::{Library, Shipped, Source, proof, reading_minutes, word_count};

#[test]
fn shipped_lessons_proofread_clean() {
    let library = Library::load(Shipped);
    let problems: Vec<_> = proof::check(&library).iter().map(ToString::to_string).collect();
    assert!(problems.is_empty(), "{}", problems.join("\n"));
}

#[test]
fn every_file_under_lessons_is_shipped() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("lessons");
    let mut on_disk: Vec<_> = walkdir::WalkDir::new(&root)
        .into_iter()
        .map(|entry| entry.expect("lessons can be walked"))
        .filter(|entry| entry.file_type().is_file())
        .map(|entry| entry.path().strip_prefix(&root).expect("below the root").to_owned())
        // What stands beside the lessons' folders is for authors.
        .filter(|path| path.components().count() > 1)
        .collect();
    let mut shipped: Vec<_> =
        Shipped::files().map(|(lesson, file)| std::path::Path::new(lesson).join(file)).collect();
    on_disk.sort();
    shipped.sort();
    assert_eq!(on_disk, shipped);
}

#[test]
fn shipped_lessons_come_in_order_with_their_pictures() {
    let library = Library::load(Shipped);
    let ids: Vec<_> = library.lessons().map(|lesson| lesson.front.id.as_str()).collect();
    let course = [
        "numbers",
        "power",
        "pressure",
        "ground",
        "turning",
        "balance",
        "impact",
        "structure",
        "drive",
        "heat",
        "spiral",
        "scaling",
        "evidence",
        "walk-round",
    ];
    assert_eq!(ids, course);
    assert!(ids.iter().all(|id| library.teacher(id).is_some()), "each has a teacher's page");
    let picture = library.picture("pressure", "what-counts.svg").expect("the picture is loaded");
    assert_eq!(*picture, *Shipped.picture("pressure", "what-counts.svg").expect("shipped"));
    for lesson in library.lessons() {
        let words = word_count(lesson);
        assert!((500..6000).contains(&words), "{}: {words} words", lesson.front.id);
        assert!(reading_minutes(lesson) <= lesson.front.minutes.unwrap_or(0) as usize);
    }
}

#[test]
fn the_front_matter_read_alone_says_what_the_whole_lesson_says() {
    let library = Library::load(Shipped);
    let alone = library.fronts().to_vec();
    let whole: Vec<_> = library.lessons().map(|lesson| lesson.front.clone()).collect();
    assert_eq!(alone, whole);
}
