use std::fs;
use std::path::Path;

use geometry::Pt;
use plan::element::{Body, Note};
use plan::{Draft, Edit, Plan, State};

use super::save::backup_path;
use super::*;

fn plan_with_note(text: &str) -> Plan {
    let note = Note { at: Pt::inches(12, 24), text: text.to_owned() };
    let draft = Draft::new(State::New, Body::Note(note));
    Plan::default().with(&Edit::Add(draft)).expect("a note can be added")
}

#[test]
fn what_was_saved_is_opened_and_the_version_before_is_kept() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("cellar.ron");
    let (first, second) = (plan_with_note("first"), plan_with_note("second"));
    save(&path, &first).unwrap();
    assert!(!backup_path(&path).exists());
    save(&path, &second).unwrap();
    assert_eq!(open(&path).unwrap().plan, second);
    assert_eq!(open(&backup_path(&path)).unwrap().plan, first);
    assert_eq!(fs::read_dir(dir.path()).unwrap().count(), 2, "no temporary file is left");
}

#[test]
fn a_file_changed_by_another_program_is_not_overwritten() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("cellar.ron");
    let stamp = save(&path, &plan_with_note("mine")).unwrap();
    fs::write(&path, "somebody else's work").unwrap();
    let error = save_unchanged(&path, &plan_with_note("mine too"), stamp).unwrap_err();
    assert!(matches!(error, SaveError::ChangedOnDisk { .. }), "{error}");
    assert_eq!(fs::read_to_string(&path).unwrap(), "somebody else's work");
}

#[cfg(unix)]
#[test]
fn a_link_stays_a_link_and_permissions_stay() {
    use std::os::unix::fs::PermissionsExt;
    let dir = tempfile::tempdir().unwrap();
    let (real, link) = (dir.path().join("real.ron"), dir.path().join("link.ron"));
    save(&real, &plan_with_note("a")).unwrap();
    fs::set_permissions(&real, fs::Permissions::from_mode(0o640)).unwrap();
    std::os::unix::fs::symlink(&real, &link).unwrap();
    save(&link, &plan_with_note("b")).unwrap();
    assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
    assert_eq!(open(&real).unwrap().plan, plan_with_note("b"));
    assert_eq!(fs::metadata(&real).unwrap().permissions().mode() & 0o777, 0o640);
}

#[test]
fn a_folder_that_is_not_there_is_named_in_the_error() {
    let dir = tempfile::tempdir().unwrap();
    let path = dir.path().join("gone").join("cellar.ron");
    let error = save(&path, &plan_with_note("a")).unwrap_err().to_string();
    assert!(error.contains("gone") && error.contains("still open"), "{error}");
}

#[test]
fn bad_files_say_what_is_wrong() {
    let dir = tempfile::tempdir().unwrap();
    let cases: [(&str, &[u8], &str); 3] = [
        ("picture.ron", b"\x89PNG\r\n\x1a\n\xff\xfe", "not a text file"),
        ("empty.ron", b"", "empty.ron: "),
        ("broken.ron", b"(schema: 1,", "broken.ron, "),
    ];
    for (name, bytes, part) in cases {
        let path = dir.path().join(name);
        fs::write(&path, bytes).unwrap();
        let error = open(&path).unwrap_err().to_string();
        assert!(error.contains(part), "{name}: {error}");
    }
    assert!(open(dir.path()).unwrap_err().to_string().contains("folder"));
    assert!(open(Path::new("no-such-plan.ron")).unwrap_err().to_string().contains("no such file"));
    let long = dir.path().join("long.ron");
    fs::write(&long, " ".repeat(101)).unwrap();
    assert!(matches!(open_limited(&long, 100), Err(OpenError::TooLarge { .. })));
}

#[test]
fn an_orphan_is_offered_with_the_name_of_its_plan() {
    let dir = tempfile::tempdir().unwrap();
    let odd = dir.path().join("a \"quoted\" name.ron");
    let plan = plan_with_note("unsaved");
    let running = Recovery::start(dir.path()).unwrap();
    running.write(Some(&odd), &plan).unwrap();
    assert!(Recovery::orphans(dir.path()).is_empty(), "a running window keeps its copy");
    drop(running);
    let orphans = Recovery::orphans(dir.path());
    assert_eq!(orphans.len(), 1);
    assert_eq!(orphans[0].plan, plan);
    assert_eq!(orphans[0].of.as_deref(), Some(odd.as_path()));
    orphans[0].discard().unwrap();
    assert_eq!(fs::read_dir(dir.path()).unwrap().count(), 0);
}

#[test]
fn two_windows_have_two_copies_and_a_cleared_one_leaves_nothing() {
    let dir = tempfile::tempdir().unwrap();
    let (one, two) = (Recovery::start(dir.path()).unwrap(), Recovery::start(dir.path()).unwrap());
    one.write(None, &plan_with_note("one")).unwrap();
    two.write(None, &plan_with_note("two")).unwrap();
    assert_ne!(one.path(), two.path());
    one.clear().unwrap();
    drop(one);
    drop(two);
    let orphans = Recovery::orphans(dir.path());
    assert_eq!(orphans.len(), 1);
    assert_eq!(orphans[0].plan, plan_with_note("two"));
    assert_eq!(orphans[0].of, None);
}
