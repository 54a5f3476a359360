//! Too much of anything ends in a clear refusal or in bounded work.

use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use heftwise::app::settings::Settings;
use heftwise::app::widget::picture::{Picture, read};
use heftwise::lesson::{Folder, Library, parse, plain_text};
use heftwise::notebook;
use heftwise::quantity::catalogue::machine::MASS;
use heftwise::rules::evaluate;
use heftwise::sheet::file::{LoadError, load};
use heftwise::sheet::{EditRefused, Sheet};

use crate::sheet_edit::set;

/// Generous for a slow machine without optimising; what grows without bound takes far longer.
const SOON: Duration = Duration::from_secs(20);

/// A file that holds this many zero bytes, and takes no room on the disk.
fn hollow(path: &Path, length: u64) {
    fs::File::create(path).unwrap().set_len(length).unwrap();
}

#[test]
fn a_file_of_100_mb_is_refused_unread() {
    let folder = tempfile::tempdir().unwrap();
    let start = Instant::now();
    let path = folder.path().join("build.toml");
    hollow(&path, 100_000_000);
    assert!(matches!(load(&path), Err(LoadError::TooLarge { .. })));
    let book = folder.path().join("notebook.toml");
    hollow(&book, 100_000_000);
    let told = notebook::file::load(&book).told.unwrap();
    assert!(told.contains("larger than 16 MiB"), "{told}");
    assert_eq!(fs::metadata(&book).unwrap().len(), 100_000_000, "it is left as it is");
    hollow(&folder.path().join("settings.toml"), 100_000_000);
    assert_eq!(Settings::load(folder.path()), Settings::default());
    let lessons = folder.path().join("lessons");
    fs::create_dir_all(lessons.join("huge")).unwrap();
    hollow(&lessons.join("huge/lesson.md"), 100_000_000);
    let library = Library::load(Folder(lessons));
    assert!(library.problems[0].message.contains("larger than 4 MB"), "{:?}", library.problems);
    assert!(start.elapsed() < SOON, "{:?}", start.elapsed());
}

#[test]
fn ten_thousand_parts_are_summed() {
    let part = "[[parts]]\nname = \"bolt\"\nmass = \"1 g\"\nat = [\"1 mm\", \"0 mm\", \"2 mm\"]\n";
    let text = format!("format = 1\n{}", part.repeat(10_000));
    let start = Instant::now();
    let mut sheet = Sheet::read(&text).unwrap();
    let values = evaluate(&sheet.tally().givens);
    let mass = values.si(MASS).unwrap();
    assert!((mass - 10.0).abs() < 1e-9, "{mass}");
    sheet.apply(&set(heftwise::quantity::catalogue::machine::SLOPE, "5°")).unwrap();
    assert!(start.elapsed() < SOON, "{:?}", start.elapsed());
}

#[test]
fn a_build_that_would_grow_past_what_opens_again_is_refused() {
    let start = "format = 1\n#";
    let text = format!("{start}{}", "x".repeat((1 << 20) - start.len()));
    let mut sheet = Sheet::read(&text).unwrap();
    assert_eq!(sheet.apply(&set(MASS, "1 kg")), Err(EditRefused::TooLarge));
    assert_eq!(sheet.text(), text);
}

#[test]
fn deep_nesting_of_a_build_ends_in_words() {
    for (open, close) in [("[", "]"), ("{a = ", "}")] {
        for depth in [100, 10_000, 100_000] {
            let text = format!("format = 1\nx = {}1{}\n", open.repeat(depth), close.repeat(depth));
            match Sheet::read(&text) {
                Ok(sheet) => assert_eq!(sheet.text(), text),
                Err(error) => assert!(!error.mend.is_empty(), "{error}"),
            }
        }
    }
    let dotted = format!("format = 1\n{}a = 1\n", "a.".repeat(100_000));
    if let Ok(sheet) = Sheet::read(&dotted) {
        assert_eq!(sheet.text(), dotted);
    }
    let tables = format!("format = 1\n[{}a]\n", "a.".repeat(50_000));
    if let Ok(sheet) = Sheet::read(&tables) {
        assert_eq!(sheet.text(), tables);
    }
    let deep = format!("format = 1\nx = {}1{}\n", "[".repeat(50_000), "]".repeat(50_000));
    assert!(notebook::Notebook::read(&deep).is_err());
    let folder = tempfile::tempdir().unwrap();
    fs::write(folder.path().join("settings.toml"), &deep).unwrap();
    assert_eq!(Settings::load(folder.path()), Settings::default());
    let block = format!("```curve\nfind = {}\n```\nafter\n", "[".repeat(50_000));
    assert!(plain_text(&parse(&block, "lesson.md")).contains("after"));
    let front = format!("+++\nid = {}\n+++\nafter\n", "[".repeat(50_000));
    assert!(plain_text(&parse(&front, "lesson.md")).contains("after"));
}

#[test]
fn a_lesson_of_100_000_lines_is_read() {
    let start = Instant::now();
    let text = "Mud holds a track.\n\n> [!NOTE]\n> - It gives.\n\n".repeat(20_000);
    assert_eq!(text.lines().count(), 100_000);
    let lesson = parse(&text, "lesson.md");
    assert_eq!(lesson.blocks.len(), 40_000);
    assert!(start.elapsed() < SOON, "{:?}", start.elapsed());
}

fn why(file: &str, bytes: &[u8]) -> String {
    let start = Instant::now();
    let picture = read(file, bytes);
    assert!(start.elapsed() < SOON, "{:?}", start.elapsed());
    match picture {
        Picture::Broken(why) => why,
        picture => panic!("{file} was taken: {picture:?}"),
    }
}

/// A PNG (ISO/IEC 15948) of one colour channel that says it is so large, its dots left out.
fn png(width: u32, height: u32) -> Vec<u8> {
    let mut header = b"IHDR".to_vec();
    header.extend(width.to_be_bytes());
    header.extend(height.to_be_bytes());
    header.extend([8, 0, 0, 0, 0]);
    let mut bytes = b"\x89PNG\r\n\x1a\n\0\0\0\x0d".to_vec();
    bytes.extend(&header);
    bytes.extend(crc(&header).to_be_bytes());
    bytes.extend(b"\0\0\0\0IDAT");
    bytes.extend(crc(b"IDAT").to_be_bytes());
    bytes
}

/// The CRC-32 of PNG, ISO/IEC 15948 annex D.
fn crc(bytes: &[u8]) -> u32 {
    !bytes.iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| {
            (crc >> 1) ^ if crc & 1 == 1 { 0xedb8_8320 } else { 0 }
        })
    })
}

#[test]
fn a_picture_of_50_000_pixels_is_refused_in_words() {
    assert!(matches!(read("a.png", &png(640, 480)), Picture::Photo(_)));
    let said = why("a.png", &png(50_000, 50_000));
    assert!(said.contains("it is 50000 by 50000 pixels, and 8192 is the most"), "{said}");
    why("a.png", &png(1, 50_000));
    why("a.png", b"no picture at all");
    why("a.png", b"");
    let said = why("a.svg", svg("width='50000' height='50000'", "").as_bytes());
    assert!(said.contains("50000 by 50000"), "{said}");
    why("a.svg", svg("width='1e30' height='1'", "").as_bytes());
    why("a.png", &vec![0; 9 << 20]);
}

fn svg(size: &str, inside: &str) -> String {
    format!(
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' {size}>{inside}</svg>"
    )
}

#[test]
fn hostile_drawings_are_refused_or_drawn_without_their_sting() {
    // Entities of entities ("a billion laughs"), and elements used by elements.
    let entities: String = (1..12)
        .map(|n| format!("<!ENTITY e{n} '{}'>", format!("&e{};", n - 1).repeat(10)))
        .collect();
    let bomb = format!(
        "<!DOCTYPE svg [<!ENTITY e0 'ha'>{entities}]>{}",
        svg("width='9' height='9'", "<text>&e11;</text>")
    );
    why("a.svg", bomb.as_bytes());
    let round = "<!DOCTYPE svg [<!ENTITY a '&b;'><!ENTITY b '&a;'>]>".to_owned()
        + &svg("width='9' height='9'", "<text>&a;</text>");
    why("a.svg", round.as_bytes());
    let uses: String = (1..30)
        .map(|n| {
            format!("<g id='g{n}'>{}</g>", format!("<use xlink:href='#g{}'/>", n - 1).repeat(4))
        })
        .collect();
    let grown = format!(
        "<defs><g id='g0'><rect width='1' height='1'/></g>{uses}</defs><use xlink:href='#g29'/>"
    );
    why("a.svg", svg("width='9' height='9'", &grown).as_bytes());
    let deep = format!("{}{}", "<g>".repeat(100_000), "</g>".repeat(100_000));
    let _ = read("a.svg", svg("width='9' height='9'", &deep).as_bytes());
    // Effects, packed files, and no size at all.
    let effect = "<filter id='f'><feTurbulence baseFrequency='1' numOctaves='4000000000'/></filter><rect width='9' height='9' filter='url(#f)'/>";
    let said = why("a.svg", svg("width='9' height='9'", effect).as_bytes());
    assert!(said.contains("filter effects"), "{said}");
    assert!(why("a.svg", b"\x1f\x8b\x08").contains("packed"));
    why("a.svg", svg("width='0' height='0'", "").as_bytes());
    why("a.svg", b"\xff\xfe");
}

/// Files and addresses outside, and pictures packed inside, are not read: what is drawn holds none.
#[test]
fn a_drawing_reads_nothing_from_outside() {
    let folder = tempfile::tempdir().unwrap();
    let secret = folder.path().join("secret.svg");
    fs::write(&secret, svg("width='9' height='9'", "<text>5ecret</text>")).unwrap();
    let address = secret.display();
    for inside in [
        format!("<image xlink:href='{address}' width='9' height='9'/>"),
        format!("<image href='file://{address}' width='9' height='9'/>"),
        "<image href='http://192.0.2.1/a.png' width='9' height='9'/>".to_owned(),
        "<image href='data:image/png;base64,iVBORw0KGgo=' width='9' height='9'/>".to_owned(),
        format!("<use xlink:href='{address}#a'/>"),
        format!("<style>@import url('file://{address}');</style>"),
    ] {
        let drawn = read("a.svg", svg("width='9' height='9'", &inside).as_bytes());
        let Picture::Drawing { day, .. } = drawn else { panic!("{inside}: {drawn:?}") };
        let iced::advanced::svg::Data::Bytes(bytes) = day.data() else { panic!("no bytes") };
        let text = String::from_utf8_lossy(bytes);
        for word in ["5ecret", "image", "192.0.2.1", "href"] {
            assert!(!text.contains(word), "{inside}: {text}");
        }
    }
    let outside = format!(
        "<!DOCTYPE svg [<!ENTITY x SYSTEM 'file://{address}'>]>{}",
        svg("width='9' height='9'", "<text>&x;</text>")
    );
    if let Picture::Drawing { day, .. } = read("a.svg", outside.as_bytes()) {
        assert!(!format!("{day:?}").contains("5ecret"));
    }
}

#[cfg(unix)]
mod unix {
    use std::os::unix::fs::symlink;
    use std::process::Command;

    use super::*;

    /// Pipes and devices wait forever or never end: each is refused at once.
    #[test]
    fn pipes_and_devices_are_not_read() {
        let folder = tempfile::tempdir().unwrap();
        let pipe = folder.path().join("pipe");
        assert!(Command::new("mkfifo").arg(&pipe).status().unwrap().success());
        for odd in [pipe.as_path(), Path::new("/dev/zero")] {
            assert!(matches!(load(odd), Err(LoadError::NotAFile { .. })));
            assert!(notebook::file::load(odd).told.is_some());
        }
        fs::rename(&pipe, folder.path().join("settings.toml")).unwrap();
        assert_eq!(Settings::load(folder.path()), Settings::default());
        let lesson = folder.path().join("lessons/mud");
        fs::create_dir_all(&lesson).unwrap();
        fs::write(lesson.join("lesson.md"), "![a](a.svg)\n").unwrap();
        assert!(Command::new("mkfifo").arg(lesson.join("a.svg")).status().unwrap().success());
        let library = Library::load(Folder(folder.path().join("lessons")));
        let problems = &library.lessons().next().unwrap().problems;
        assert!(
            problems.iter().any(|problem| problem.message.contains("not a file")),
            "{problems:?}"
        );
    }

    #[test]
    fn a_link_out_of_a_lesson_is_not_followed() {
        let folder = tempfile::tempdir().unwrap();
        fs::write(folder.path().join("secret.svg"), svg("width='9' height='9'", "")).unwrap();
        let lesson = folder.path().join("lessons/mud");
        fs::create_dir_all(&lesson).unwrap();
        fs::write(lesson.join("lesson.md"), "![a](a.svg)\n").unwrap();
        symlink("../../secret.svg", lesson.join("a.svg")).unwrap();
        let library = Library::load(Folder(folder.path().join("lessons")));
        assert!(library.picture("mud", "a.svg").is_err());
    }
}
