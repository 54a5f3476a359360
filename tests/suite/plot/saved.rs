//! Pictures and numbers as files.

use heftwise::plot::save::{Figure, Kind, SaveError, csv};
use heftwise::plot::{PlotStyle, Table, figures, svg};

use super::rich;

fn figure() -> Figure {
    let spec = rich(Some(("mass", &["4 kg", "8 kg"])), false, &[]);
    Figure { svg: svg(&spec, (480, 320), &PlotStyle::PAPER), numbers: figures(&spec) }
}

/// RFC 4180, section 2: CRLF ends a line (1), quotes hold a comma, a quote or a line end (6), a
/// quote inside is doubled (7).
#[test]
fn commas_quotes_and_line_ends_are_quoted() {
    let row = |cells: &[&str]| cells.iter().map(|cell| (*cell).to_owned()).collect::<Vec<_>>();
    let table = Table {
        head: row(&["plain", "a, b", "say \"so\""]),
        rows: vec![row(&["1.5", "", "x\ny"])],
    };
    let written = "plain,\"a, b\",\"say \"\"so\"\"\"\r\n1.5,,\"x\ny\"\r\n";
    assert_eq!(csv(&table), written);
}

#[test]
fn the_ending_decides_and_another_is_refused() {
    let folder = tempfile::tempdir().unwrap();
    let at = |name: &str| folder.path().join(name);
    figure().save(&at("a.svg")).unwrap();
    figure().save(&at("a.PNG")).unwrap();
    figure().save(&at("a.csv")).unwrap();
    let read = |name: &str| std::fs::read(at(name)).unwrap();
    assert!(read("a.svg").starts_with(b"<svg "));
    // The signature of PNG (ISO/IEC 15948, 5.2), then the width in pixels: twice 480.
    assert_eq!(read("a.PNG")[..8], [137, 80, 78, 71, 13, 10, 26, 10]);
    assert_eq!(read("a.PNG")[16..20], 960_u32.to_be_bytes());
    let numbers = String::from_utf8(read("a.csv")).unwrap();
    assert!(numbers.starts_with("\"track width, mm\",\"Sandpiper: ground pressure (mean), kPa\""));
    for name in ["a.gif", "a"] {
        let refused = figure().save(&at(name)).unwrap_err();
        assert!(matches!(refused, SaveError::Ending(_)));
        assert!(refused.to_string().contains(".svg, .png or .csv"), "{refused}");
        assert!(!at(name).exists());
    }
}

#[test]
fn a_file_that_cannot_be_written_is_said_and_the_old_one_stays() {
    let folder = tempfile::tempdir().unwrap();
    let refused = figure().save(&folder.path().join("none/a.svg")).unwrap_err();
    assert!(refused.to_string().contains("cannot be written"), "{refused}");
    let old = folder.path().join("old.svg");
    std::fs::write(&old, "old").unwrap();
    figure().save(&old).unwrap();
    assert_eq!(std::fs::read(&old).unwrap(), figure().bytes(Kind::Svg).unwrap());
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1, "no litter");
}
