//! The command line, run as a program.

#![allow(clippy::disallowed_methods, reason = "tests read and write files")]

use std::fs;
use std::path::{Path, PathBuf};

use assert_cmd::Command;
use serde_json::Value;

fn cellarwright() -> Command {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("cellarwright"));
    // No test may open a window.
    command.env_remove("DISPLAY").env_remove("WAYLAND_DISPLAY").env_remove("RUST_LOG");
    command
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).ancestors().nth(2).expect("the workspace").to_owned()
}

fn demo(name: &str) -> PathBuf {
    root().join("demo-plans").join(name)
}

fn out(command: &mut Command, code: i32) -> String {
    let assert = command.assert().code(code);
    String::from_utf8(assert.get_output().stdout.clone()).expect("text")
}

fn err(command: &mut Command, code: i32) -> String {
    let assert = command.assert().code(code);
    String::from_utf8(assert.get_output().stderr.clone()).expect("text")
}

#[test]
fn a_plan_that_passes_has_no_corrections() {
    let text = out(cellarwright().arg("check").arg(demo("passes.ron")), 0);
    assert!(text.contains("checked by the 2021 code"), "{text}");
    assert!(text.contains("\n0 corrections"), "{text}");
    assert!(text.contains("your building department decides"), "{text}");
}

#[test]
fn the_json_has_what_its_page_says() {
    let text = out(cellarwright().args(["check", "--json"]).arg(demo("trouble.ron")), 1);
    let report: Value = serde_json::from_str(&text).expect("JSON");
    assert_eq!(report["schema"], 1);
    assert_eq!(report["edition"], 2021);
    assert_eq!(report["place"], "model code");
    let findings = report["findings"].as_array().expect("a list");
    assert!(!findings.is_empty());
    let page = fs::read_to_string(root().join("docs/check-json.md")).expect("the page");
    for finding in findings {
        let finding = finding.as_object().expect("an object");
        for key in finding.keys() {
            assert!(page.contains(&format!("`{key}`")), "the page does not tell of {key}");
        }
        for key in ["rule", "severity", "elements", "measured", "required", "citation", "assumed"] {
            assert!(finding.contains_key(key), "{key}");
        }
        for key in ["set_aside", "message", "places"] {
            assert!(finding.contains_key(key), "{key}");
        }
        let severity = finding["severity"].as_str().expect("a word");
        assert!(["correction", "verify", "advice"].contains(&severity), "{severity}");
    }
    let panel = findings.iter().find(|f| f["rule"] == "panel-depth").expect("a panel in trouble");
    assert_eq!(panel["required"]["value"], 36.0);
    assert_eq!(panel["required"]["unit"], "in");
    assert!(panel["measured"]["value"].as_f64().expect("a figure") < 36.0);
}

#[test]
fn another_edition_changes_the_citation() {
    let text = |year: &str| {
        let mut command = cellarwright();
        command.args(["check", "--edition", year]).arg(demo("trouble.ron"));
        out(&mut command, 1)
    };
    assert!(text("2018").contains("2018 IRC R310"), "2018");
    assert!(text("2024").contains("2024 IRC R319"), "2024");
}

#[test]
fn every_rule_is_explained() {
    let list = out(cellarwright().args(["explain", "--list"]), 0);
    for rule in rules::RULES {
        assert!(list.contains(rule.slug), "{}", rule.slug);
    }
    let page = out(cellarwright().args(["explain", "panel-depth"]), 0);
    for heading in rules::HEADINGS {
        assert!(page.contains(heading), "{heading}");
    }
    assert!(page.contains("36\""), "{page}");
}

#[test]
fn an_unknown_rule_is_answered_with_a_near_one() {
    let text = err(cellarwright().args(["explain", "panel-deepness"]), 2);
    assert!(text.contains("Did you mean panel-"), "{text}");
    let text = err(cellarwright().args(["explain", "xyzzy"]), 2);
    assert!(text.contains("explain --list"), "{text}");
}

#[test]
fn files_that_are_no_plan_say_where_and_what() {
    let folder = tempfile::tempdir().expect("a folder");
    let broken = folder.path().join("broken.ron");
    fs::write(&broken, "(\n  schema: 1,\n  site: (").expect("written");
    let text = err(cellarwright().arg("check").arg(&broken), 4);
    assert!(text.contains("broken.ron") && text.contains("line 3"), "{text}");
    let newer = folder.path().join("newer.ron");
    fs::write(&newer, "(schema: 999)").expect("written");
    let text = err(cellarwright().arg("check").arg(&newer), 4);
    assert!(text.contains("newer"), "{text}");
    let text = err(cellarwright().args(["check", "no-such-plan.ron"]), 4);
    assert!(text.contains("no such file"), "{text}");
}

#[test]
fn wrong_usage_is_said_so() {
    err(cellarwright().args(["check"]), 2);
    let text = err(cellarwright().args(["check", "x.ron", "--edition", "1999"]), 2);
    assert!(text.contains("2018, 2021 and 2024"), "{text}");
    let help = out(cellarwright().arg("--help"), 0);
    for word in ["check", "explain", "rehearse", "A planning aid"] {
        assert!(help.contains(word), "{word}: {help}");
    }
}

#[test]
fn a_script_is_rehearsed_and_saved() {
    let folder = tempfile::tempdir().expect("a folder");
    let (script, saved) = (folder.path().join("story.txt"), folder.path().join("story.ron"));
    fs::copy(root().join("tests/story/window.txt"), &script).expect("copied");
    let mut command = cellarwright();
    command.arg("rehearse").arg(&script).arg("--save").arg(&saved);
    let text = out(&mut command, 0);
    assert!(text.contains("Draw partition 14' 0\""), "{text}");
    assert!(text.contains("derive"), "times are told");
    // The study is a bedroom now, and its way out is large enough.
    let text = out(cellarwright().arg("check").arg(&saved), 0);
    assert!(text.contains("\n0 corrections"), "{text}");
}

#[test]
fn a_script_says_which_line_is_wrong() {
    let unmet = "tool column\nexpect elements 3\n";
    let text = err(cellarwright().args(["rehearse", "-"]).write_stdin(unmet), 1);
    assert!(text.contains(":2:"), "{text}");
    let unknown = "tool column\n\ndance\n";
    let text = err(cellarwright().args(["rehearse", "-"]).write_stdin(unknown), 2);
    assert!(text.contains(":3:") && text.contains("dance"), "{text}");
    let mut command = cellarwright();
    command.args(["rehearse", "-", "--json"]).write_stdin("tool column\nclick 1', 1'\n");
    let json: Value = serde_json::from_str(&out(&mut command, 0)).expect("JSON");
    assert_eq!(json["steps"][1]["line"], 2);
    assert_eq!(json["problem"], Value::Null);
}

#[test]
fn without_a_display_one_sentence_says_what_to_do() {
    let text = err(cellarwright().arg(demo("passes.ron")), 3);
    assert!(text.contains("cellarwright check"), "{text}");
    assert!(!text.contains(env!("CARGO_MANIFEST_DIR")), "no path of the build machine: {text}");
}
