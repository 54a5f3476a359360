//! Build files on disk: nothing may be lost, whatever fails.

use std::fs;
use std::path::{Path, PathBuf};

use heftwise::quantity::catalogue::machine::MASS;
use heftwise::sheet::Sheet;
use heftwise::sheet::file::{LoadError, SaveError, Stamp, autosave, last_good, load, save};
use tempfile::TempDir;

use crate::sheet_edit::{SAMPLE, set, sheet};

fn folder() -> TempDir {
    tempfile::tempdir().expect("a folder for the test")
}

fn file(folder: &TempDir, bytes: impl AsRef<[u8]>) -> PathBuf {
    let path = folder.path().join("build.toml");
    fs::write(&path, bytes).unwrap();
    path
}

fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<String> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    names
}

fn heavier(sheet: &Sheet) -> Sheet {
    let mut sheet = sheet.clone();
    sheet.apply(&set(MASS, "9 kg")).unwrap();
    sheet
}

#[test]
fn a_build_opens_and_saves_byte_for_byte_and_the_last_good_one_stays() {
    let folder = folder();
    let text = format!("\u{feff}{}", SAMPLE.replace('\n', "\r\n"));
    let path = file(&folder, &text);
    let loaded = load(&path).unwrap();
    let stamp = save(&path, &loaded.sheet, Some(loaded.stamp)).unwrap();
    assert_eq!(fs::read_to_string(&path).unwrap(), text);
    assert_eq!(names(folder.path()), ["build.toml"], "nothing changed, so there is no backup");
    let changed = heavier(&loaded.sheet);
    let stamp = save(&path, &changed, Some(stamp)).unwrap();
    assert_eq!(fs::read_to_string(&path).unwrap(), changed.text());
    assert_eq!(fs::read_to_string(last_good(&path)).unwrap(), text);
    assert_eq!(names(folder.path()), ["build.toml", "build.toml.last-good"]);
    assert_eq!(Stamp::on_disk(&path).unwrap(), Some(stamp));
    assert_eq!(load(&path).unwrap().sheet, changed);
}

#[test]
fn a_broken_file_does_not_become_the_last_good_one() {
    let folder = folder();
    let path = file(&folder, "not = = toml");
    let now = Stamp::on_disk(&path).unwrap();
    save(&path, &Sheet::blank(), now).unwrap();
    assert_eq!(names(folder.path()), ["build.toml"]);
}

#[test]
fn a_change_by_another_program_is_never_overwritten_in_silence() {
    let folder = folder();
    let path = file(&folder, SAMPLE);
    let loaded = load(&path).unwrap();
    // The same length, so that only the bytes tell.
    let theirs = SAMPLE.replace("\"90 mm\"", "\"91 mm\"");
    fs::write(&path, &theirs).unwrap();
    let changed = heavier(&loaded.sheet);
    let Err(SaveError::ChangedOnDisk { now, .. }) = save(&path, &changed, Some(loaded.stamp))
    else {
        panic!("the change was not noticed");
    };
    assert_eq!(fs::read_to_string(&path).unwrap(), theirs);
    save(&path, &changed, Some(now)).expect("asked, the reader may save over it");
    assert_eq!(fs::read_to_string(last_good(&path)).unwrap(), theirs);
    let new = save(&path, &changed, None);
    assert!(matches!(new, Err(SaveError::ChangedOnDisk { .. })), "a new file would hide a file");
}

#[test]
fn a_file_that_was_taken_away_is_written_again() {
    let folder = folder();
    let path = file(&folder, SAMPLE);
    let loaded = load(&path).unwrap();
    fs::remove_file(&path).unwrap();
    save(&path, &loaded.sheet, Some(loaded.stamp)).unwrap();
    assert_eq!(fs::read_to_string(&path).unwrap(), SAMPLE);
}

#[test]
fn what_a_crash_left_behind_does_no_harm() {
    let folder = folder();
    let path = file(&folder, SAMPLE);
    fs::write(folder.path().join(".heftwise-abc.part"), "half a bu").unwrap();
    let loaded = load(&path).unwrap();
    assert_eq!(loaded.sheet.text(), SAMPLE);
    save(&path, &heavier(&loaded.sheet), Some(loaded.stamp)).unwrap();
    assert_eq!(load(&path).unwrap().sheet, heavier(&loaded.sheet));
}

#[test]
fn what_cannot_be_opened_says_so_in_words() {
    let folder = folder();
    let said = |path: &Path| load(path).expect_err("it must not open").to_string();
    let gone = folder.path().join("gone.toml");
    assert!(said(&gone).contains("gone.toml cannot be opened. There is no such file"));
    assert!(said(folder.path()).contains("is not a file"));
    let path = file(&folder, b"format = 1\nname = \"caf\xe9\"\n");
    assert!(said(&path).contains("build.toml, line 2: this is not text in UTF-8"));
    let path = file(&folder, "format = 1\nname = Sandpiper\n");
    let why = said(&path);
    assert!(why.contains("build.toml, line 2, column 8: "), "{why}");
    assert!(why.contains("name = \"Sandpiper\""), "{why}");
}

#[test]
fn a_file_of_1_mib_opens_and_a_larger_one_is_refused() {
    let folder = folder();
    let start = "format = 1\n#";
    let fits = format!("{start}{}", "x".repeat((1 << 20) - start.len()));
    assert!(load(&file(&folder, &fits)).is_ok());
    let path = file(&folder, fits + "x");
    assert!(matches!(load(&path), Err(LoadError::TooLarge { .. })));
}

#[test]
fn a_folder_is_never_saved_over() {
    let folder = folder();
    let error = save(folder.path(), &Sheet::blank(), None).unwrap_err();
    assert!(matches!(error, SaveError::NotAFile { .. }), "{error}");
}

#[test]
fn saving_into_a_folder_that_is_not_there_says_so() {
    let folder = folder();
    let path = folder.path().join("no").join("build.toml");
    let said = save(&path, &Sheet::blank(), None).unwrap_err().to_string();
    assert!(said.contains("There is no such file or folder."), "{said}");
}

#[test]
fn unsaved_work_is_kept_aside_and_found_again() {
    let folder = folder();
    let path = file(&folder, SAMPLE);
    let data = folder.path().join("data").join("recovery");
    let work = heavier(&sheet(SAMPLE));
    assert_eq!(autosave::find(&data, Some(&path), &[]).unwrap(), None);
    let [own, other] = [(); 2].map(|()| autosave::Slot::new());
    autosave::write(&data, &own, Some(&path), &work).unwrap();
    autosave::write(&data, &other, None, &Sheet::blank()).unwrap();
    let (slot, found) = autosave::find(&data, Some(&path), &[]).unwrap().expect("it is kept");
    assert_eq!(slot, own);
    assert_eq!(autosave::find(&data, Some(&path), &[slot]).unwrap(), None, "it is put off");
    assert_eq!((found.text.as_str(), found.path.as_deref()), (work.text(), Some(path.as_path())));
    assert_eq!(fs::read_to_string(&path).unwrap(), SAMPLE, "the reader's file is not touched");
    let of_no_file = || autosave::find(&data, None, &[]).unwrap().map(|(slot, _)| slot);
    assert_eq!(of_no_file().as_ref(), Some(&other));
    let elsewhere = folder.path().join("other.toml");
    assert_eq!(autosave::find(&data, Some(&elsewhere), &[]).unwrap(), None);
    let stamp = Stamp::on_disk(&path).unwrap();
    save(&path, &work, stamp).unwrap();
    let same = autosave::find(&data, Some(&path), &[]).unwrap();
    assert_eq!(same, None, "the file holds the same now");
    autosave::discard(&data, &own).unwrap();
    autosave::discard(&data, &own).unwrap();
    assert_eq!(autosave::find(&data, Some(&path), &[]).unwrap(), None, "it is gone");
    fs::write(data.join("0.recovery.json"), "{").unwrap();
    assert_eq!(of_no_file(), Some(other), "a damaged copy is passed over");
}

/// A copy of a day to come, as a clock leaves it that was moved back since, is older than one that is
/// written now.
#[test]
fn the_newest_copy_is_the_one_written_last_whatever_the_clock_says() {
    let folder = folder();
    let data = folder.path().join("recovery");
    let [first, second] = [(); 2].map(|()| autosave::Slot::new());
    autosave::write(&data, &first, None, &Sheet::blank()).unwrap();
    let copy = fs::read_dir(&data).unwrap().next().unwrap().unwrap().path();
    let mut kept: autosave::Recovery = serde_json::from_slice(&fs::read(&copy).unwrap()).unwrap();
    kept.written += 900_000_000;
    fs::write(&copy, serde_json::to_vec(&kept).unwrap()).unwrap();
    for slot in [&second, &first, &second] {
        autosave::write(&data, slot, None, &heavier(&sheet(SAMPLE))).unwrap();
        let (newest, _) = autosave::find(&data, None, &[]).unwrap().unwrap();
        assert_eq!(&newest, slot);
    }
}

#[cfg(unix)]
mod unix {
    use std::os::unix::fs::{PermissionsExt, symlink};
    use std::process::Command;

    use super::*;

    fn mode(path: &Path) -> u32 {
        fs::metadata(path).unwrap().permissions().mode() & 0o777
    }

    #[test]
    fn permissions_are_kept_and_a_new_file_is_as_any_new_file() {
        let folder = folder();
        let path = file(&folder, SAMPLE);
        fs::set_permissions(&path, fs::Permissions::from_mode(0o640)).unwrap();
        let loaded = load(&path).unwrap();
        save(&path, &heavier(&loaded.sheet), Some(loaded.stamp)).unwrap();
        assert_eq!((mode(&path), mode(&last_good(&path))), (0o640, 0o640));
        let new = folder.path().join("new.toml");
        save(&new, &Sheet::blank(), None).unwrap();
        let usual = folder.path().join("usual");
        fs::write(&usual, "").unwrap();
        assert_eq!(mode(&new), mode(&usual));
    }

    #[test]
    fn a_file_marked_read_only_is_left_alone() {
        let folder = folder();
        let path = file(&folder, SAMPLE);
        fs::set_permissions(&path, fs::Permissions::from_mode(0o444)).unwrap();
        let loaded = load(&path).unwrap();
        let error = save(&path, &heavier(&loaded.sheet), Some(loaded.stamp)).unwrap_err();
        assert!(matches!(error, SaveError::ReadOnly { .. }), "{error}");
        assert_eq!(fs::read_to_string(&path).unwrap(), SAMPLE);
    }

    #[test]
    fn a_link_stays_a_link_and_its_file_is_written() {
        let folder = folder();
        let path = file(&folder, SAMPLE);
        let link = folder.path().join("link.toml");
        symlink("build.toml", &link).unwrap();
        let loaded = load(&link).unwrap();
        let changed = heavier(&loaded.sheet);
        save(&link, &changed, Some(loaded.stamp)).unwrap();
        assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
        assert_eq!(fs::read_to_string(&path).unwrap(), changed.text());
        let dangling = folder.path().join("dangling.toml");
        symlink("not-yet.toml", &dangling).unwrap();
        save(&dangling, &changed, None).unwrap();
        assert_eq!(fs::read_to_string(folder.path().join("not-yet.toml")).unwrap(), changed.text());
        let round = folder.path().join("round.toml");
        symlink("round.toml", &round).unwrap();
        assert!(save(&round, &changed, None).is_err());
    }

    /// A folder nobody may write in. `/proc/self` refuses new files to everyone, root included,
    /// where a folder's permissions would not.
    #[cfg(target_os = "linux")]
    #[test]
    fn a_folder_that_may_not_be_written_says_so() {
        let path = Path::new("/proc/self/build.toml");
        let error = save(path, &Sheet::blank(), None).unwrap_err();
        assert!(matches!(error, SaveError::Unwritable { .. }), "{error}");
        assert!(error.to_string().contains("was not saved"), "{error}");
    }

    /// The system itself stops the writing half way: this test runs itself anew under a limit on
    /// the size of files, far below that of the build.
    #[test]
    fn when_the_system_stops_the_writing_the_old_file_is_whole() {
        const INSIDE: &str = "HEFTWISE_TEST_SMALL_FILES_IN";
        let large = Sheet::read(&format!("format = 1\n# {}\n", "x".repeat(100_000))).unwrap();
        if let Some(folder) = std::env::var_os(INSIDE) {
            let path = Path::new(&folder).join("build.toml");
            let stamp = Stamp::on_disk(&path).unwrap();
            let error = save(&path, &large, stamp).unwrap_err();
            assert!(matches!(error, SaveError::Unwritable { .. }), "{error}");
            fs::write(Path::new(&folder).join("ran"), "").unwrap();
            return;
        }
        let folder = folder();
        let path = file(&folder, SAMPLE);
        let test = "sheet_file::unix::when_the_system_stops_the_writing_the_old_file_is_whole";
        let output = Command::new("sh")
            .arg("-c")
            .arg("trap '' XFSZ; ulimit -f 16; exec \"$0\" --exact \"$1\"")
            .arg(std::env::current_exe().unwrap())
            .arg(test)
            .env(INSIDE, folder.path())
            .output()
            .unwrap();
        assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stdout));
        assert_eq!(fs::read_to_string(&path).unwrap(), SAMPLE);
        assert_eq!(names(folder.path()), ["build.toml", "build.toml.last-good", "ran"]);
    }
}
