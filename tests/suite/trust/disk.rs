//! What disks and other programs do to a build file while it is open.

use std::fs;
use std::path::Path;

use heftwise::notebook;
use heftwise::quantity::catalogue::machine::MASS;
use heftwise::sheet::Sheet;
use heftwise::sheet::file::{SaveError, Stamp, load, save};

use super::ours;
use crate::sheet_edit::{SAMPLE, set};

fn heavier(sheet: &Sheet) -> Sheet {
    let mut sheet = sheet.clone();
    sheet.apply(&set(MASS, "9 kg")).unwrap();
    sheet
}

/// A clock moved back, or a program that keeps a file's time, must not hide a change.
#[test]
fn the_time_of_a_file_is_not_relied_on() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("build.toml");
    fs::write(&path, SAMPLE).unwrap();
    let loaded = load(&path).unwrap();
    let time = fs::metadata(&path).unwrap().modified().unwrap();
    let theirs = SAMPLE.replace("\"90 mm\"", "\"91 mm\"");
    for moved in [time, std::time::UNIX_EPOCH] {
        fs::write(&path, &theirs).unwrap();
        fs::File::options().write(true).open(&path).unwrap().set_modified(moved).unwrap();
        let refused = save(&path, &heavier(&loaded.sheet), Some(loaded.stamp));
        assert!(matches!(refused, Err(SaveError::ChangedOnDisk { .. })), "{refused:?}");
    }
    // And a time alone is no change.
    fs::write(&path, SAMPLE).unwrap();
    fs::File::options()
        .write(true)
        .open(&path)
        .unwrap()
        .set_modified(std::time::UNIX_EPOCH)
        .unwrap();
    save(&path, &heavier(&loaded.sheet), Some(loaded.stamp)).unwrap();
}

#[test]
fn a_build_of_a_newer_format_is_untouched_on_disk() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("build.toml");
    let newer = SAMPLE.replace("format = 1\n", "format = 2\n") + "\n[brand-new]\nx = [1, 2]\n";
    fs::write(&path, &newer).unwrap();
    let mut loaded = load(&path).unwrap();
    assert!(loaded.sheet.is_read_only());
    assert!(loaded.sheet.apply(&set(MASS, "9 kg")).is_err());
    save(&path, &loaded.sheet, Some(loaded.stamp)).unwrap();
    assert_eq!(fs::read_to_string(&path).unwrap(), newer);
}

/// Also a notebook: it is not begun anew in the place of what a newer program wrote.
#[test]
fn a_notebook_of_a_newer_format_is_untouched_on_disk() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("notebook.toml");
    fs::write(&path, "format = 2\n[brand-new]\nx = 1\n").unwrap();
    let loaded = notebook::file::load(&path);
    assert!(loaded.store.is_none());
    assert!(loaded.told.unwrap().contains("newer Heftwise"));
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1, "no copy is needed");
}

/// Samples of every format that was ever written: they read, and nothing of them is lost.
#[test]
fn samples_of_old_formats_still_read() {
    let text = ours("tests/samples/notebook-format-1.toml");
    let notebook = notebook::Notebook::read(&text).unwrap();
    let record = notebook.lesson("pressure").unwrap();
    assert_eq!((record.answers.len(), record.measurements.len()), (1, 1));
    assert_eq!(record.note, "The low end sinks first.");
    let written = notebook.text().unwrap();
    for kept in ["mood = \"fair\"", "later = \"kept\"", "unsure = true"] {
        assert!(written.contains(kept), "{written}");
    }
    assert_eq!(notebook::Notebook::read(&written).unwrap(), notebook);
}

#[cfg(unix)]
mod unix {
    use std::process::{Command, Stdio};

    use super::super::again;
    use super::*;

    const FOLDER: &str = "HEFTWISE_TEST_FOLDER";

    /// Two programs add one to the same build, over and over. Each addition is kept, or refused and
    /// made anew: none is written over.
    #[test]
    fn two_programs_on_one_file_lose_nothing() {
        const EACH: u64 = 40;
        if let Some(folder) = std::env::var_os(FOLDER) {
            let path = Path::new(&folder).join("build.toml");
            let mut added = 0;
            while added < EACH {
                let loaded = load(&path).unwrap();
                let count: u64 = loaded.sheet.name().parse().unwrap();
                let next = Sheet::read(&format!("format = 1\nname = \"{}\"\n", count + 1)).unwrap();
                match save(&path, &next, Some(loaded.stamp)) {
                    Ok(_) => added += 1,
                    Err(SaveError::ChangedOnDisk { .. }) => {}
                    Err(error) => panic!("{error}"),
                }
            }
            return;
        }
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("build.toml");
        fs::write(&path, "format = 1\nname = \"0\"\n").unwrap();
        let programs = [(); 2].map(|()| {
            again("trust::disk::unix::two_programs_on_one_file_lose_nothing")
                .env(FOLDER, folder.path())
                .stdout(Stdio::null())
                .spawn()
                .unwrap()
        });
        for mut program in programs {
            assert!(program.wait().unwrap().success());
        }
        assert_eq!(load(&path).unwrap().sheet.name(), (2 * EACH).to_string());
    }

    /// A real disk of 64 KiB, filled up, then made read-only; in a mount namespace of its own, so
    /// that no other program sees it. Without the right to mount (no root, no namespaces) the test
    /// says so and looks at nothing; the full disk is then held by the injected writer of
    /// `sheet::file::save` alone.
    #[cfg(target_os = "linux")]
    #[test]
    fn a_full_disk_and_a_read_only_disk_keep_the_old_file() {
        if let Some(folder) = std::env::var_os(FOLDER) {
            return on_a_small_disk(Path::new(&folder));
        }
        let folder = tempfile::tempdir().unwrap();
        let mount = "mount -t tmpfs -o size=64k none \"$0\"";
        let may = Command::new("unshare")
            .args(["--mount", "sh", "-c", mount])
            .arg(folder.path())
            .stderr(Stdio::null())
            .status();
        if !may.is_ok_and(|status| status.success()) {
            eprintln!("not looked at: a disk cannot be mounted here");
            return;
        }
        let output = Command::new("unshare")
            .args(["--mount", "sh", "-c", &format!("{mount} && exec \"$1\" --exact \"$2\"")])
            .arg(folder.path())
            .arg(std::env::current_exe().unwrap())
            .arg("trust::disk::unix::a_full_disk_and_a_read_only_disk_keep_the_old_file")
            .env(FOLDER, folder.path())
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&output.stdout);
        assert!(output.status.success() && said.contains("1 passed"), "{said}");
    }

    #[cfg(target_os = "linux")]
    fn on_a_small_disk(folder: &Path) {
        let path = folder.join("build.toml");
        let old = Sheet::read(SAMPLE).unwrap();
        let stamp = save(&path, &old, None).unwrap();
        fs::write(folder.join("filler"), vec![0; 50_000]).unwrap();
        let large = Sheet::read(&format!("{SAMPLE}# {}\n", "x".repeat(30_000))).unwrap();
        let error = save(&path, &large, Some(stamp)).unwrap_err();
        assert!(error.to_string().contains("The disk is full."), "{error}");
        assert_eq!(fs::read_to_string(&path).unwrap(), SAMPLE);
        let litter = fs::read_dir(folder).unwrap().filter(|entry| {
            entry.as_ref().unwrap().path().extension().is_some_and(|e| e == "part")
        });
        assert_eq!(litter.count(), 0);
        fs::remove_file(folder.join("filler")).unwrap();
        let stamp = save(&path, &heavier(&old), Stamp::on_disk(&path).unwrap()).unwrap();
        let read_only = Command::new("mount").args(["-o", "remount,ro"]).arg(folder).status();
        assert!(read_only.unwrap().success());
        let error = save(&path, &old, Some(stamp)).unwrap_err();
        assert!(error.to_string().contains("can be read but not written"), "{error}");
        assert_eq!(load(&path).unwrap().sheet, heavier(&old));
    }
}
