//! Handouts printed to PDF by a real browser: pages, words, and nothing over the edge.
//!
//! Needs Chromium and `pdftotext` (Debian: chromium, poppler-utils). Where they are lacking the check
//! is passed over, unless `HEFTWISE_PRINT=must` says that they have to be there, as the CI does.

use std::path::{Path, PathBuf};
use std::process::Command;

use super::{Copies, of, subject};
use heftwise::handout::{Paper, walk_round};
use heftwise::quantity::Units;

/// A4 and letter in points of 1/72 inch (ISO 216; 8.5 in by 11 in).
const A4: (f64, f64) = (595.3, 841.9);
const LETTER: (f64, f64) = (612.0, 792.0);
/// The narrowest margin of a page, in points: 16 mm less a millimetre for rounding.
const MARGIN: f64 = 15.0 / 25.4 * 72.0;

pub struct Word {
    from: (f64, f64),
    to: (f64, f64),
    text: String,
}

pub struct Printed {
    pages: Vec<Vec<Word>>,
    size: (f64, f64),
}

/// Where a program of the system stands.
pub fn found(program: &str) -> Option<PathBuf> {
    std::env::split_paths(&std::env::var_os("PATH")?)
        .map(|folder| folder.join(program))
        .find(|path| path.is_file())
}

/// The page as a browser prints it; nothing if there is none to print it with.
pub fn printed(page: &str) -> Option<Printed> {
    let (Some(browser), Some(reader)) = (found("chromium"), found("pdftotext")) else {
        let must = std::env::var("HEFTWISE_PRINT").is_ok_and(|it| it == "must");
        assert!(!must, "chromium and pdftotext have to be there");
        return None;
    };
    let folder = tempfile::tempdir().unwrap();
    let (html, pdf) = (folder.path().join("page.html"), folder.path().join("page.pdf"));
    std::fs::write(&html, page).unwrap();
    let done = Command::new(browser)
        .args([
            "--headless",
            "--no-sandbox",
            "--disable-gpu",
            "--disable-dev-shm-usage",
            "--no-pdf-header-footer",
        ])
        .arg(format!("--user-data-dir={}", folder.path().join("profile").display()))
        .arg(format!("--print-to-pdf={}", pdf.display()))
        .arg(format!("file://{}", html.display()))
        .output()
        .unwrap();
    assert!(pdf.is_file(), "nothing printed: {}", String::from_utf8_lossy(&done.stderr));
    Some(read(&reader, &pdf))
}

fn read(reader: &Path, pdf: &Path) -> Printed {
    let done = Command::new(reader).arg("-bbox").arg(pdf).arg("-").output().unwrap();
    let text = String::from_utf8(done.stdout).unwrap();
    let mut printed = Printed { pages: Vec::new(), size: (0.0, 0.0) };
    for line in text.lines() {
        let value = |name: &str| -> f64 {
            let from = line.find(&format!("{name}=\"")).unwrap() + name.len() + 2;
            line[from..].split('"').next().unwrap().parse().unwrap()
        };
        if line.trim_start().starts_with("<page ") {
            printed.size = (value("width"), value("height"));
            printed.pages.push(Vec::new());
        } else if line.trim_start().starts_with("<word ") {
            let text = line.split('>').nth(1).unwrap().split('<').next().unwrap().to_owned();
            printed.pages.last_mut().unwrap().push(Word {
                from: (value("xMin"), value("yMin")),
                to: (value("xMax"), value("yMax")),
                text,
            });
        }
    }
    printed
}

impl Printed {
    pub fn says(&self, words: &str) -> bool {
        let all: Vec<&str> = self.pages.iter().flatten().map(|word| word.text.as_str()).collect();
        all.join(" ").contains(words)
    }

    fn assert_sound(&self, paper: (f64, f64)) {
        assert!((self.size.0 - paper.0).abs() < 1.0 && (self.size.1 - paper.1).abs() < 1.0);
        let count = self.pages.len();
        for (place, page) in self.pages.iter().enumerate() {
            for word in page {
                let inside = word.from.0 >= MARGIN
                    && word.to.0 <= self.size.0 - MARGIN
                    && word.from.1 >= 0.0
                    && word.to.1 <= self.size.1;
                assert!(inside, "\"{}\" runs over the edge of page {}", word.text, place + 1);
            }
            let texts: Vec<&str> = page.iter().map(|word| word.text.as_str()).collect();
            let foot = format!("{} / {count}", place + 1);
            assert!(texts.join(" ").contains(&foot), "page {} has no number", place + 1);
            assert!(texts.len() > 12, "page {} is all but empty", place + 1);
        }
    }
}

#[test]
fn lessons_print_on_both_papers() {
    for (paper, size) in [(Paper::A4, A4), (Paper::Letter, LETTER)] {
        let page = of("pressure", |request| {
            request.paper = paper;
            request.key = true;
            request.copies = Some(Copies::new(2, 3).unwrap());
        });
        let Some(printed) = printed(&page) else { return };
        printed.assert_sound(size);
        assert!(printed.says("Group 2") && printed.says("Key: Pressure on the ground"));
    }
}

#[test]
fn the_record_of_a_build_takes_two_pages() {
    let page = walk_round(&subject("bullock"), &Units::default(), Paper::A4);
    let Some(printed) = printed(&page) else { return };
    printed.assert_sound(A4);
    assert_eq!(printed.pages.len(), 2);
}
