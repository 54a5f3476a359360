//! A program killed while it saves leaves a whole build.

use std::fs;
use std::path::Path;
use std::process::Stdio;
use std::thread::sleep;
use std::time::{Duration, Instant};

use heftwise::sheet::Sheet;
use heftwise::sheet::file::{last_good, load, save};

use super::{Dice, again};

/// The folder in which a copy of this test saves over and over, until it is killed.
const FOLDER: &str = "HEFTWISE_TEST_SAVES_IN";
/// How many kills: set it to 500 for a long look.
const KILLS: &str = "HEFTWISE_TEST_KILLS";
const USUAL_KILLS: usize = 36;

/// A build of some length, every line of it telling the same number.
fn build(number: usize) -> Sheet {
    let line = format!("# {number}\n");
    let text =
        format!("format = 1\nname = \"{number}\"\n{}", line.repeat(2_000 + number % 7 * 1_000));
    Sheet::read(&text).unwrap()
}

fn save_without_end(path: &Path) {
    let start = Instant::now();
    let mut stamp = load(path).ok().map(|loaded| loaded.stamp);
    for number in (0..).take_while(|_| start.elapsed() < Duration::from_secs(20)) {
        stamp = Some(save(path, &build(number), stamp).unwrap());
        fs::write(path.with_extension("ready"), "").unwrap();
    }
}

/// What a file holds is one of the builds that were saved, and all of it.
fn whole(path: &Path) {
    let sheet = load(path).unwrap_or_else(|error| panic!("{error}")).sheet;
    let number = sheet.name().parse().unwrap_or_else(|_| panic!("{:?}", sheet.name()));
    assert!(sheet == build(number), "{} is not whole", path.display());
}

#[test]
fn a_build_is_whole_whenever_the_program_is_killed() {
    if let Some(folder) = std::env::var_os(FOLDER) {
        return save_without_end(&Path::new(&folder).join("build.toml"));
    }
    let kills = std::env::var(KILLS).map_or(USUAL_KILLS, |kills| kills.parse().unwrap());
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("build.toml");
    let ready = path.with_extension("ready");
    let mut dice = Dice(7);
    let mut half_written = 0;
    for _ in 0..kills {
        let mut child = again("trust::killed::a_build_is_whole_whenever_the_program_is_killed")
            .env(FOLDER, folder.path())
            .stdout(Stdio::null())
            .spawn()
            .unwrap();
        let start = Instant::now();
        while !ready.exists() {
            assert!(start.elapsed() < Duration::from_secs(20), "nothing was saved");
            assert!(child.try_wait().unwrap().is_none(), "saving failed");
            sleep(Duration::from_millis(1));
        }
        sleep(Duration::from_micros(dice.below(20_000) as u64));
        // SIGKILL, where there are signals.
        child.kill().unwrap();
        child.wait().unwrap();
        fs::remove_file(&ready).unwrap();
        whole(&path);
        if last_good(&path).exists() {
            whole(&last_good(&path));
        }
        let aside = fs::read_dir(folder.path()).unwrap().filter(|entry| {
            entry.as_ref().unwrap().path().extension().is_some_and(|ending| ending == "part")
        });
        let left = aside.count();
        assert!(left <= 1, "each save clears away what the one before it left");
        half_written += left;
    }
    eprintln!("{kills} kills, {half_written} of them in the midst of writing");
}
