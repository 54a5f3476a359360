//! The plots of a run.

use std::hash::{DefaultHasher, Hash, Hasher};

use heftwise::plot::{PlotStyle, Runner, panels, run_svg, table_of};
use heftwise::quantity::channel::{self, RunKind};
use heftwise::quantity::{UnitSet, Units};
use heftwise::study::Run;
use heftwise::study::run::Ask;

use super::sandpiper;

fn impact() -> Run {
    let ask = Ask { speed: Some(4.0), ..Ask::new(RunKind::Impact) };
    Run::of(&ask, &sandpiper()).unwrap()
}

#[test]
fn panels_share_one_time_axis() {
    let (own, units) = (impact(), Units::of(UnitSet::Metric));
    let slower = Ask { speed: Some(2.0), ..Ask::new(RunKind::Impact) };
    let other = Run::of(&slower, &sandpiper()).unwrap();
    let runners =
        [Runner { name: "Sandpiper", run: &own }, Runner { name: "Bullock", run: &other }];
    let panels = panels(&runners, &[&channel::FORCE, &channel::CRUSH], &units);
    assert_eq!(panels.len(), 2);
    assert_eq!(panels[0].x, panels[1].x);
    assert!(!panels[0].foot && panels[1].foot);
    assert!(panels.iter().all(|panel| panel.lines.len() == 2));
    assert!(panels[0].limits[0].label.starts_with("strength of the weakest mount 1.70 kN"));
    assert!(panels[0].dots[0].label.ends_with(": past the limit"), "{:?}", panels[0].dots);
    let table = table_of(&panels);
    assert_eq!(table.head.len(), 5);
    assert_eq!(table.head[0], "time, ms");
    assert!(table.rows.iter().all(|row| row.len() == 5));
}

/// The picture is known by its hash; when it changes it is written beside the failure, to be
/// looked at.
#[test]
fn the_picture_is_the_one_looked_at() {
    let run = impact();
    let runners = [Runner { name: "Sandpiper", run: &run }];
    let panels = panels(&runners, &RunKind::Impact.channels(), &Units::default());
    let picture = run_svg(&panels, 640, &PlotStyle::PAPER);
    assert!(picture.starts_with("<svg ") && picture.trim_end().ends_with("</svg>"));
    assert_eq!(picture.matches("<svg").count(), 1);
    assert!(!picture.contains("NaN") && !picture.contains("href"));
    assert!(picture.contains("It stops from 4.00 m/s"));
    let mut hasher = DefaultHasher::new();
    picture.hash(&mut hasher);
    let found = format!("{:016x}", hasher.finish());
    if found != LOOKED_AT {
        let path = std::env::temp_dir().join("heftwise-run.svg");
        std::fs::write(&path, &picture).unwrap();
        panic!("another picture, {found}: look at {}", path.display());
    }
}

const LOOKED_AT: &str = "49ac0edbaaf14191";
