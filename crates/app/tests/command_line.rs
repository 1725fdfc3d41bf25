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
fn a_place_changes_the_limits_and_stands_on_the_report() {
    let check = |more: &[&str], code| {
        out(
            cellarwright().args(["check", "--json"]).arg(demo("trouble-no-bedroom.ron")).args(more),
            code,
        )
    };
    let report = |text: &str| serde_json::from_str::<Value>(text).expect("JSON");
    let local = report(&check(&["--place", "chicago-il"], 1));
    assert_eq!(local["place"], "Chicago, Illinois (older code)");
    let findings = local["findings"].as_array().expect("a list");
    let ceiling = findings.iter().find(|f| f["rule"] == "ceiling-height").expect("the ceiling");
    assert_eq!(ceiling["required"]["value"], 90.0);
    let cited = ceiling["citation"]["text"].as_str().expect("a text");
    assert_eq!(cited, "Chicago, Illinois (older code): handout on habitable rooms");
    assert_eq!(report(&check(&["--place", "model"], 1))["place"], "model code");
    let said = err(cellarwright().arg("check").arg("plan.ron").args(["--place", "nowhere"]), 2);
    assert!(said.contains("fargo-nd"), "{said}");
}

#[test]
fn a_file_of_amendments_holds_or_says_what_is_wrong() {
    let dir = tempfile::tempdir().expect("a folder");
    let file = dir.path().join("town.ron");
    let write = |limit: &str, figure: &str| {
        let text = format!(
            "(\n  place: \"Our town\",\n  amendments: [\n    (limit: \"{limit}\", figure: \"{figure}\", \
             reason: \"Handout 7\"),\n  ],\n)\n"
        );
        fs::write(&file, text).expect("the file is written");
    };
    let check = || {
        let mut command = cellarwright();
        command.arg("check").arg(demo("passes.ron")).arg("--amendments").arg(&file);
        command
    };
    write("panel-depth", "30 ft");
    let text = out(&mut check(), 1);
    assert!(text.contains("Our town: Handout 7 (as the user states)"), "{text}");
    assert!(text.contains("required 360\""), "{text}");
    write("panel-dept", "30 ft");
    let said = err(&mut check(), 4);
    assert!(said.contains("town.ron:4: the code book has no limit \"panel-dept\""), "{said}");
    assert!(said.contains("panel-depth"), "{said}");
}

#[test]
fn an_amendment_of_the_plan_that_cannot_be_used_is_said() {
    let dir = tempfile::tempdir().expect("a folder");
    let plan = dir.path().join("plan.ron");
    let text = fs::read_to_string(demo("passes.ron")).expect("the demo plan");
    let bad = "    amendments: [\n        (limit: \"escape-sill\", figure: \"high\", reason: \"r\"),\n    ],\n";
    fs::write(&plan, text.replacen("    elements: [", &format!("{bad}    elements: ["), 1))
        .expect("the plan is written");
    let said = err(cellarwright().arg("check").arg(&plan), 0);
    assert!(said.contains("model code holds: \"escape-sill\""), "{said}");
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
    let dir = tempfile::tempdir().expect("a folder");
    let figure = dir.path().join("figure.svg");
    out(cellarwright().args(["explain", "panel-depth", "--figure"]).arg(&figure), 0);
    let svg = std::fs::read_to_string(&figure).expect("the figure is written");
    assert!(svg.starts_with("<svg") && svg.contains("finding panel-depth"), "{svg}");
    let text = err(cellarwright().args(["explain", "panel-depth", "--figure"]).arg(dir.path()), 4);
    assert!(text.contains("can't be written"), "{text}");
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

#[test]
fn room_to_move_tells_what_breaks_on_each_side() {
    let text = out(cellarwright().arg("room-to-move").arg(demo("passes.ron")).arg("w32"), 0);
    assert!(text.contains("Room to move of partition w32"), "{text}");
    assert!(text.contains("up: 5 1/2\", then: The way to Closet is narrower than 20 in"), "{text}");
    let text =
        out(cellarwright().args(["room-to-move", "--json"]).arg(demo("passes.ron")).arg("W32"), 0);
    let report: Value = serde_json::from_str(&text).expect("JSON");
    assert_eq!(report["schema"], 1);
    let course = &report["courses"][0];
    assert!(course["safe"][0].as_f64() < Some(0.0) && course["safe"][1].as_f64() > Some(0.0));
    let page = fs::read_to_string(root().join("docs/room-to-move-json.md")).expect("the page");
    for field in course.as_object().expect("an object").keys() {
        assert!(page.contains(&format!("`{field}`")), "{field}");
    }
}

#[test]
fn room_to_move_says_what_it_cannot_move() {
    let text = err(cellarwright().arg("room-to-move").arg(demo("passes.ron")).arg("W999"), 2);
    assert!(text.contains("there is no element W999"), "{text}");
}

#[test]
fn headroom_tells_the_lowest_spot_and_the_share_of_each_height() {
    let text = out(cellarwright().arg("headroom").arg(demo("passes.ron")), 0);
    assert!(text.contains("lowest 6' 7 1/2\" under duct H11"), "{text}");
    assert!(text.contains("% ("), "{text}");
    let text = out(cellarwright().args(["headroom", "--json"]).arg(demo("passes.ron")), 0);
    let report: Value = serde_json::from_str(&text).expect("JSON");
    assert_eq!(report["schema"], 1);
    let page = fs::read_to_string(root().join("docs/headroom-json.md")).expect("the page");
    for room in report["rooms"].as_array().expect("a list") {
        let sum: f64 = room["heights"]
            .as_array()
            .expect("a list")
            .iter()
            .filter_map(|h| h["area"].as_f64())
            .sum();
        assert!((sum - room["area"].as_f64().expect("a number")).abs() < 0.01, "{room}");
        for field in room.as_object().expect("an object").keys() {
            assert!(page.contains(&format!("`{field}`")), "{field}");
        }
    }
}

#[test]
fn a_thing_is_carried_to_each_room() {
    let text = out(cellarwright().args(["carry", "--thing", "heater"]).arg(demo("passes.ron")), 0);
    assert!(text.contains("Bedroom: fits, held with 22\" x 22\" on the floor"), "{text}");
    assert!(text.contains("measure them"), "{text}");
    let text = out(
        cellarwright().args(["carry", "--size", "84x40x40", "--json"]).arg(demo("passes.ron")),
        0,
    );
    let report: Value = serde_json::from_str(&text).expect("JSON");
    let rooms = report["rooms"].as_array().expect("a list");
    let bedroom = rooms.iter().find(|r| r["room"] == "Bedroom").expect("the room");
    assert_eq!(bedroom["verdict"], "sticks", "its door is 30 in wide: {bedroom}");
    let page = fs::read_to_string(root().join("docs/carry-json.md")).expect("the page");
    for field in bedroom.as_object().expect("an object").keys() {
        assert!(page.contains(&format!("`{field}`")), "{field}");
    }
    let text = err(cellarwright().args(["carry", "--size", "84x40"]).arg(demo("passes.ron")), 2);
    assert!(text.contains("three lengths"), "{text}");
}

/// The points of the lines and curves of a page of a PDF, in points from its left bottom corner.
fn drawn(file: &lopdf::Document, page: u32) -> Vec<(f32, f32)> {
    let bytes = file.get_page_content(file.get_pages()[&page]);
    let operations = lopdf::content::Content::decode(&bytes).expect("operations").operations;
    let (mut now, mut stack, mut points) = ([1.0, 0.0, 0.0, 1.0, 0.0, 0.0], Vec::new(), Vec::new());
    for op in operations {
        let n: Vec<f32> = op.operands.iter().filter_map(|o| o.as_float().ok()).collect();
        match (op.operator.as_str(), n.as_slice()) {
            ("q", _) => stack.push(now),
            ("Q", _) => now = stack.pop().expect("a saved state"),
            ("cm", &[a, b, c, d, e, f]) => {
                let [p, q, r, s, t, u] = now;
                let row = |x: f32, y: f32| (x * p + y * r, x * q + y * s);
                let ((a, b), (c, d), (e, f)) = (row(a, b), row(c, d), row(e, f));
                now = [a, b, c, d, e + t, f + u];
            }
            ("m" | "l", &[x, y]) => {
                let [a, b, c, d, e, f] = now;
                points.push((a * x + c * y + e, b * x + d * y + f));
            }
            _ => {}
        }
    }
    points
}

#[test]
fn the_permit_set_is_a_pdf_to_scale_that_another_reader_reads() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut command = cellarwright();
    command.arg("sheets").arg(demo("passes.ron")).arg("--out").arg(folder.path().join("new"));
    let text = out(&mut command, 0);
    assert!(text.contains("A-101  Proposed basement plan, 3/16\" = 1'-0\""), "{text}");
    let path = folder.path().join("new/passes.pdf");
    let first = fs::read(&path).expect("the file");
    let file = lopdf::Document::load_mem(&first).expect("a PDF");
    let pages = file.get_pages();
    let numbers: Vec<&str> =
        text.lines().skip(1).map_while(|l| l.split_once("  ")).map(|l| l.0.trim()).collect();
    assert_eq!(pages.len(), numbers.len(), "{numbers:?}");
    for (number, id) in &pages {
        let page = file.get_dictionary(*id).expect("a page");
        let size: Vec<f32> = page
            .get(b"MediaBox")
            .and_then(lopdf::Object::as_array)
            .expect("a box")
            .iter()
            .filter_map(|o| o.as_float().ok())
            .collect();
        assert_eq!(size, [0.0, 0.0, 17.0 * 72.0, 11.0 * 72.0]);
        let words = file.extract_text(&[*number]).expect("text");
        for word in ["Quarrystone Lane", numbers[*number as usize - 1], "100 %"] {
            assert!(words.contains(word), "page {number}: {word}");
        }
    }
    // Every font is embedded.
    let descriptors =
        file.objects.values().filter_map(|o| o.as_dict().ok()).filter(|d| d.has(b"FontName"));
    assert!(descriptors.clone().count() >= 2);
    assert!(
        descriptors
            .clone()
            .all(|d| [b"FontFile2".as_slice(), b"FontFile3"].iter().any(|k| d.has(k)))
    );
    // The foundation of 37 ft 4 in is 504 points wide at 3/16 in to the foot: the south-west and north-east corners.
    let plan = numbers.iter().position(|n| *n == "A-101").expect("the plan") as u32 + 1;
    let points = drawn(&file, plan);
    let wide = points.iter().any(|a| {
        points.iter().any(|b| (b.0 - a.0 - 504.0).abs() < 0.02 && (b.1 - a.1 - 396.0).abs() < 0.02)
    });
    assert!(wide, "no corners 504 by 396 points apart");
    // The same plan gives the same bytes.
    out(&mut command, 0);
    assert!(first == fs::read(&path).expect("the file"), "two runs differ");
}

#[test]
fn the_json_of_the_sheets_has_what_its_page_says() {
    let folder = tempfile::tempdir().expect("a folder");
    let mut command = cellarwright();
    command.arg("sheets").arg(demo("passes.ron")).arg("--out").arg(folder.path());
    command.args(["--json", "--list", "ffx", "--paper", "letter", "--format", "svg,png"]);
    let report: Value = serde_json::from_str(&out(&mut command, 0)).expect("JSON");
    let page = fs::read_to_string(root().join("docs/sheets-json.md")).expect("the page");
    for part in [&report, &report["sheets"][0], &report["demands"][0]] {
        for field in part.as_object().expect("an object").keys() {
            assert!(page.contains(&format!("`{field}`")), "{field}");
        }
    }
    assert_eq!(report["list"], "Fairfax County, Virginia");
    // It names a sheet larger than letter.
    let demands = report["demands"].as_array().expect("a list");
    let size = demands.iter().find(|d| d["id"] == "sheet-size").expect("it asks for a size");
    assert_eq!(size["answer"], "missing");
    let sheets = report["sheets"].as_array().expect("a list").len();
    assert_eq!(report["files"].as_array().expect("a list").len(), 2 * sheets);
    let svg =
        fs::read_to_string(folder.path().join("passes-A-101-proposed-plan.svg")).expect("a file");
    assert!(svg.contains("width=\"11in\"") && svg.contains("N26 escape"));
}

#[test]
fn the_sheets_say_what_is_wrong() {
    let folder = tempfile::tempdir().expect("a folder");
    let sheets = |args: &[&str]| {
        let mut command = cellarwright();
        command.arg("sheets").arg(demo("passes.ron")).args(args);
        command
    };
    assert!(err(&mut sheets(&[]), 2).contains("--out"));
    assert!(
        err(&mut sheets(&["--out", "x", "--paper", "foolscap"]), 2).contains("letter, tabloid")
    );
    assert!(err(&mut sheets(&["--out", "x", "--list", "XYZ"]), 2).contains("DOU Douglas County"));
    // A file stands where the folder should be.
    let taken = folder.path().join("taken");
    fs::write(&taken, "kept").expect("a file");
    let text = err(sheets(&["--out"]).arg(&taken), 4);
    assert!(text.contains("taken") && text.contains("Choose another folder"), "{text}");
    assert_eq!(fs::read_to_string(&taken).expect("still there"), "kept");
}
