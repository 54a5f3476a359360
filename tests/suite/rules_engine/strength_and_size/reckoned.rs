//! Every quantity of these topics is reckoned from the command line.

use std::ffi::OsString;

use heftwise::cli::{self, Next};
use heftwise::quantity::{AnyId, Topic, catalogue, si_unit};

use super::super::CRAWLER;
use super::ALL;

fn argument((id, si): &(AnyId, f64)) -> OsString {
    let entry = catalogue::find(id.name()).unwrap();
    let shown = if entry.dimension == heftwise::quantity::Dimension::Angle {
        format!("{}={} rad", id.name(), si)
    } else {
        format!("{}={} {}", id.name(), si, si_unit(entry.dimension).symbol)
    };
    shown.into()
}

#[test]
fn every_quantity_is_reckoned_from_pins() {
    let topics = [Topic::Impact, Topic::Structure, Topic::Whole];
    let pins: Vec<OsString> = CRAWLER.iter().chain(ALL).map(argument).collect();
    for entry in catalogue::all().iter().filter(|entry| topics.contains(&entry.topic)) {
        if entry.is_given() {
            continue;
        }
        let mut args: Vec<OsString> =
            vec!["heftwise".into(), "reckon".into(), entry.id.name().into()];
        args.extend(pins.iter().cloned());
        let (mut out, mut err) = (Vec::new(), Vec::new());
        let next = cli::run(args, &mut out, &mut err);
        assert_eq!(next, Next::Exit(0), "{}: {}", entry.id, String::from_utf8_lossy(&err));
        assert!(!out.is_empty(), "{} says nothing", entry.id);
    }
}
