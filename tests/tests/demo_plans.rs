//! The demo plans: what each is for, and that the files are what the code builds.

#![allow(clippy::disallowed_methods, reason = "tests read and write files")]

use std::collections::BTreeSet;
use std::path::PathBuf;
use std::sync::Arc;

use plan::Plan;
use rules::{Book, Finding, RULES, Severity};

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).with_file_name("demo-plans")
}

fn built(name: &str) -> Plan {
    whole::demo::all().into_iter().find(|(n, _)| *n == name).expect("a demo plan").1
}

fn findings(plan: Plan) -> Vec<Finding> {
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
fn the_third_is_large_and_irregular() {
    let plan = built("large.ron");
    assert!(plan.elements().len() >= 150, "{} elements", plan.elements().len());
    let facts = space::derive(&Arc::new(plan));
    let skew = facts.walls.iter().filter(|w| w.line.a.x != w.line.b.x && w.line.a.y != w.line.b.y);
    assert!(skew.count() >= 4, "walls at an angle");
    let islands = facts.rooms.iter().filter(|r| !r.shape.holes.is_empty());
    assert!(islands.count() >= 1, "a room with an island");
}
