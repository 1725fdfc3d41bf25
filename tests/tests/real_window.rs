//! The story in a real window: the program under Xvfb, driven with xdotool as a person would, then compared
//! with the same story played through the editor. `.ci/window` runs it; it needs `Xvfb` and `xdotool`.

#![allow(clippy::disallowed_methods, reason = "tests read files and the clock")]

mod desk;

use std::path::Path;

use desk::{Desk, Window};
use plan::Plan;

fn story() -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("story/window.txt");
    std::fs::read_to_string(path).expect("the story can be read")
}

/// The story without a window.
fn rehearsed(story: &str) -> Plan {
    let report = editor::script::run(story, editor::Session::new(Plan::default()), || {
        std::time::Duration::ZERO
    });
    assert_eq!(report.problem, None);
    Plan::clone(report.session.plan())
}

fn saved(path: &Path) -> Plan {
    plan::file::read(&std::fs::read_to_string(path).expect("a file")).expect("a plan")
}

/// The lines of the files of two plans that are not in both; empty where the plans are equal.
fn differences(one: &Plan, other: &Plan) -> String {
    if one == other {
        return String::new();
    }
    let (one, other) = (plan::file::write(one), plan::file::write(other));
    let only = |a: &str, b: &str, mark: char| {
        let lines = a.lines().filter(|line| !b.lines().any(|l| l == *line));
        lines.map(|line| format!("{mark} {}\n", line.trim())).collect::<String>()
    };
    format!("different:\n{}{}", only(&one, &other, '+'), only(&other, &one, '-'))
}

#[test]
#[ignore = "needs Xvfb and xdotool: run .ci/window"]
fn the_story_from_a_blank_plan() {
    let story = story();
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("story.ron");
    std::fs::write(&file, plan::file::write(&Plan::default())).expect("the file can be written");

    let desk = Desk::new(71);
    let mut window = Window::open(&desk, &file, folder.path());
    for (i, line) in story.lines().enumerate() {
        let line = line.trim();
        if !line.is_empty() && !line.starts_with('#') {
            window.at(i + 1, line);
            window.play(line);
        }
    }
    window.key("ctrl+s", 1);
    let told = rehearsed(&story);
    window.wait_or_say("the plan is saved", || differences(&saved(&file), &told));

    // All of it back, and all of it again.
    window.key("ctrl+z", 120);
    window.key("ctrl+s", 1);
    window.wait("everything is undone", || saved(&file).elements().is_empty());
    window.key("ctrl+shift+z", 120);
    window.key("ctrl+s", 1);
    window.wait("everything is done again", || {
        let (saved, told) = (saved(&file), rehearsed(&story));
        saved.elements() == told.elements() && saved.site == told.site
    });
    window.key("ctrl+q", 1);
    window.ends();

    // Opened again, it is the same plan.
    let mut window = Window::open(&desk, &file, folder.path());
    window.wait_for("Study");
    window.key("ctrl+q", 1);
    window.ends();
    assert_eq!(saved(&file).elements(), rehearsed(&story).elements());
}

#[test]
#[ignore = "needs Xvfb and xdotool: run .ci/window"]
fn what_was_not_saved_is_offered_after_a_kill() {
    let folder = tempfile::tempdir().expect("a folder");
    let file = folder.path().join("killed.ron");
    std::fs::write(&file, plan::file::write(&Plan::default())).expect("the file can be written");
    let desk = Desk::new(72);
    let mut window = Window::open(&desk, &file, folder.path());
    for line in ["tool column", "enter 9', 18'"] {
        window.play(line);
    }
    window.wait_for("column C");
    // The recovery copy is at most 5 s behind.
    std::thread::sleep(std::time::Duration::from_secs(6));
    window.kill();
    assert!(saved(&file).elements().is_empty());

    let mut window = Window::open(&desk, &file, folder.path());
    window.wait_for("killed.ron");
    window.press_thing(|name| name.starts_with("Open"));
    window.wait_for("column C");
    window.kill();
}
