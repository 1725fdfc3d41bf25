//! The house: which crate may use which. The list here, `cargo metadata` and the map in DEVELOPERS.md agree.

#![allow(clippy::disallowed_methods, reason = "tests read files")]

use std::collections::BTreeMap;
use std::path::Path;
use std::process::Command;

/// Each crate and the workspace crates that it may use.
const ARROWS: &[(&str, &[&str])] = &[
    ("measure", &[]),
    ("geometry", &["measure"]),
    ("plan", &["measure", "geometry"]),
    ("space", &["measure", "geometry", "plan"]),
    ("rules", &["measure", "geometry", "plan", "space"]),
    ("drawing", &["measure", "geometry"]),
    ("depict", &["measure", "geometry", "plan", "space", "rules", "drawing"]),
    ("print", &["drawing"]),
    ("sheets", &["measure", "geometry", "plan", "space", "rules", "drawing", "depict"]),
    ("editor", &["measure", "geometry", "plan", "space", "rules", "drawing", "depict"]),
    (
        "cellarwright",
        &[
            "measure", "geometry", "plan", "space", "rules", "drawing", "depict", "print",
            "sheets", "editor",
        ],
    ),
];

/// Packages that only the application may use: the window, dialogs, folders, temporary files.
const ONLY_IN_THE_WINDOW: &[&str] = &["egui", "eframe", "rfd", "directories", "tempfile", "clap"];

/// Members that hold tests only and may use everything.
const TESTS_ONLY: &[&str] = &["whole", "window-tests"];

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR")).parent().expect("tests is in the workspace")
}

/// The workspace's members and what each uses outside its tests.
fn members() -> BTreeMap<String, Vec<String>> {
    let output = Command::new(env!("CARGO"))
        .args(["metadata", "--no-deps", "--format-version=1", "--offline"])
        .current_dir(root())
        .output()
        .expect("cargo runs");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    let metadata: serde_json::Value = serde_json::from_slice(&output.stdout).expect("JSON");
    let text = |v: &serde_json::Value| v.as_str().expect("a string").to_owned();
    metadata["packages"]
        .as_array()
        .expect("packages")
        .iter()
        .map(|p| {
            let uses = p["dependencies"].as_array().expect("dependencies").iter();
            let uses = uses.filter(|d| d["kind"].is_null()).map(|d| text(&d["name"])).collect();
            (text(&p["name"]), uses)
        })
        .collect()
}

#[test]
fn every_crate_is_on_the_map() {
    let names: Vec<String> = members().into_keys().collect();
    let mut expected: Vec<&str> =
        ARROWS.iter().map(|(name, _)| *name).chain(TESTS_ONLY.iter().copied()).collect();
    expected.sort_unstable();
    assert_eq!(names, expected);
    let guide = std::fs::read_to_string(root().join("DEVELOPERS.md")).expect("DEVELOPERS.md");
    for (name, _) in ARROWS {
        let folder = if *name == "cellarwright" { "app" } else { name };
        assert!(guide.contains(&format!("`crates/{folder}`")), "DEVELOPERS.md lacks {folder}");
    }
}

#[test]
fn arrows_go_one_way() {
    let members = members();
    for (name, allowed) in ARROWS {
        for used in &members[*name] {
            if members.contains_key(used) {
                assert!(allowed.contains(&used.as_str()), "{name} must not use {used}");
            }
        }
    }
}

#[test]
fn window_and_disk_are_the_application_s_alone() {
    for (name, uses) in members() {
        if name == "cellarwright" || TESTS_ONLY.contains(&name.as_str()) {
            continue;
        }
        for used in &uses {
            assert!(!ONLY_IN_THE_WINDOW.contains(&used.as_str()), "{name} must not use {used}");
        }
    }
}
