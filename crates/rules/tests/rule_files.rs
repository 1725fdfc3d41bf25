//! Reads the rules' source: every rule has its four cases, and cites what it asks the code book for.

#![allow(clippy::disallowed_methods, reason = "reads this crate's own source")]

use std::fs;
use std::path::{Path, PathBuf};

const CASES: [&str; 4] = ["clear_pass", "clear_fail", "at_the_limit", "does_not_apply"];

fn rule_files() -> Vec<(PathBuf, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/rules");
    let mut files = Vec::new();
    for family in fs::read_dir(root).expect("the rules' folder").flatten() {
        if !family.path().is_dir() {
            continue;
        }
        for file in fs::read_dir(family.path()).expect("a family's folder").flatten() {
            let text = fs::read_to_string(file.path()).expect("a source file");
            if text.contains("const RULE: Rule") {
                files.push((file.path(), text));
            }
        }
    }
    files.sort();
    files
}

#[test]
fn there_are_as_many_rule_files_as_rules() {
    assert_eq!(rule_files().len(), rules::RULES.len());
}

#[test]
fn every_rule_has_the_four_cases() {
    for (path, text) in rule_files() {
        for case in CASES {
            let found = text.contains(&format!("fn {case}()"));
            assert!(found, "{} has no test {case}", path.display());
        }
    }
}

#[test]
fn every_rule_file_is_named_by_its_slug() {
    for (path, text) in rule_files() {
        let stem = path.file_stem().and_then(|s| s.to_str()).unwrap_or_default();
        let slug = stem.replace('_', "-");
        assert!(text.contains(&format!("slug: \"{slug}\"")), "{}", path.display());
    }
}

#[test]
fn every_limit_that_a_rule_asks_for_is_among_its_cites() {
    for (path, text) in rule_files() {
        let code = text.split("#[cfg(test)]").next().unwrap_or_default();
        let cites = code.split("cites: &[").nth(1).and_then(|rest| rest.split(']').next());
        let cites = cites.unwrap_or_else(|| panic!("{} cites nothing", path.display()));
        for ask in ["book.len(\"", "book.area(\"", "book.count(\"", "book.cite(\""] {
            for rest in code.split(ask).skip(1) {
                let slug = rest.split('"').next().unwrap_or_default();
                let cited = cites.contains(&format!("\"{slug}\""));
                assert!(cited, "{} asks for {slug} and doesn't cite it", path.display());
            }
        }
    }
}
