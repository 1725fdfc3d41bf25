//! The demo plans: what each is for, and that the files are what the code builds.

#![allow(clippy::disallowed_methods, reason = "tests read and write files")]

use std::collections::BTreeSet;
use std::path::PathBuf;
use std::sync::Arc;

use geometry::{Pt, orient};
use plan::element::{Opening, OpeningKind};
use plan::{Body, Plan};
use rules::{Book, Finding, RULES, Severity};

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).with_file_name("demo-plans")
}

fn built(name: &str) -> Plan {
    whole::demo::all().into_iter().find(|(n, _)| *n == name).expect("a demo plan").1
}

fn findings(plan: Plan) -> Vec<Arc<Finding>> {
    let book = Book::model(plan.site.edition);
    rules::check(&space::derive(&Arc::new(plan)), &book)
}

/// `UPDATE_DEMO_PLANS=1` writes them anew.
#[test]
fn the_files_are_what_the_code_builds() {
    for (name, plan) in whole::demo::all() {
        let path = folder().join(name);
        let text = plan::file::write(&plan);
        if std::env::var_os("UPDATE_DEMO_PLANS").is_some() {
            std::fs::write(&path, &text).expect("the file can be written");
        }
        let on_disk = std::fs::read_to_string(&path).unwrap_or_default();
        assert!(on_disk == text, "{name} is stale: run once with UPDATE_DEMO_PLANS=1");
        assert_eq!(plan::file::read(&on_disk).expect("it can be read"), plan, "{name}");
    }
}

#[test]
fn the_first_passes() {
    let stops: Vec<String> = findings(built("passes.ron"))
        .iter()
        .filter(|f| f.severity == Severity::Correction)
        .map(|f| format!("{}: {}", f.rule, f.title.say(measure::System::Imperial)))
        .collect();
    assert_eq!(stops, [""; 0]);
}

#[test]
fn those_in_trouble_set_off_every_rule() {
    let plans = whole::demo::all().into_iter().filter(|(name, _)| name.starts_with("trouble"));
    let fired: BTreeSet<&str> =
        plans.flat_map(|(_, plan)| findings(plan)).map(|finding| finding.rule).collect();
    let silent: Vec<&str> = RULES.iter().map(|r| r.slug).filter(|s| !fired.contains(s)).collect();
    assert_eq!(silent, [""; 0]);
}

#[test]
fn the_last_is_large_and_irregular() {
    let plan = built("large.ron");
    assert!(plan.elements().len() >= 300, "{} elements", plan.elements().len());
    let count = |is: fn(&Body) -> bool| plan.elements().iter().filter(|e| is(&e.body)).count();
    assert!(count(|b| matches!(b, Body::Stair(_))) >= 2, "two stairs");
    assert!(count(|b| matches!(b, Body::Furring(_))) >= 4, "furring");
    let well = |o: &Opening| matches!(&o.kind, OpeningKind::Window(w) if w.well.is_some());
    let openings = plan.elements().iter().filter_map(|e| match &e.body {
        Body::Opening(opening) => Some(opening),
        _ => None,
    });
    assert!(openings.filter(|o| well(o)).count() >= 4, "windows in wells");
    let shell: Vec<Pt> = plan.elements().iter().filter_map(|e| corner(&e.body)).collect();
    let turn = |i: usize, n: usize| shell[(i + n) % shell.len()];
    let re_entrant = (0..shell.len()).filter(|&i| orient(turn(i, 0), turn(i, 1), turn(i, 2)) < 0);
    assert!(re_entrant.count() >= 3, "re-entrant corners");

    let facts = space::derive(&Arc::new(plan));
    let skew = facts.walls.iter().filter(|w| w.line.a.x != w.line.b.x && w.line.a.y != w.line.b.y);
    assert!(skew.count() >= 4, "walls at an angle");
    let islands: usize = facts.rooms.iter().map(|r| r.shape.holes.len()).sum();
    assert!(islands >= 2, "a room with two islands");
    let untagged: Vec<_> = facts.rooms.iter().filter(|r| r.tag.is_none()).map(|r| r.area).collect();
    assert!(untagged.is_empty(), "rooms without a tag: {untagged:?}");
}

/// Where a foundation wall begins; they are drawn one after the other, counter-clockwise.
fn corner(body: &Body) -> Option<Pt> {
    match body {
        Body::Shell(wall) => Some(wall.a),
        _ => None,
    }
}
