//! The documents of the rule book are what the rules, the code book and the accounting say.

#![allow(clippy::disallowed_methods, reason = "tests read and write files")]

mod accounting;
mod pages;

use std::collections::BTreeSet;
use std::path::PathBuf;

use accounting::{Answer, Row};
use rules::{RULES, rule};

const ANEW: &str = "UPDATE_RULE_PAGES=1 cargo nextest run -p whole --test rule_pages";

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).with_file_name("docs").join("rules")
}

/// The pages that stand in the folder.
fn on_disk() -> BTreeSet<String> {
    std::fs::read_dir(folder())
        .expect("the folder can be read")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .filter(|name| name.ends_with(".md"))
        .collect()
}

/// `UPDATE_RULE_PAGES=1` writes them anew, and takes away those that belong to no rule.
#[test]
fn the_pages_are_fresh_and_none_is_an_orphan() {
    let pages = pages::all(&accounting::collections());
    if std::env::var_os("UPDATE_RULE_PAGES").is_some() {
        for name in on_disk().iter().filter(|name| !pages.contains_key(*name)) {
            std::fs::remove_file(folder().join(name)).expect("the file can be removed");
        }
        for (name, text) in &pages {
            std::fs::write(folder().join(name), text).expect("the file can be written");
        }
    }
    let stale: Vec<&String> = pages
        .iter()
        .filter(|(name, text)| {
            std::fs::read_to_string(folder().join(name)).ok().as_ref() != Some(*text)
        })
        .map(|(name, _)| name)
        .collect();
    assert!(stale.is_empty(), "stale in docs/rules: {stale:?}; run once {ANEW}");
    let orphans: Vec<String> =
        on_disk().into_iter().filter(|name| !pages.contains_key(name)).collect();
    assert!(orphans.is_empty(), "in docs/rules without a rule: {orphans:?}; run once {ANEW}");
}

#[test]
fn every_rule_that_the_accounting_names_exists() {
    let collections = accounting::collections();
    let unknown: Vec<String> = accounting::rows(&collections)
        .flat_map(|(file, _, row)| row.3.rules().iter().map(move |slug| (file, &row.0, slug)))
        .filter(|(.., slug)| rule(slug).is_none())
        .map(|(file, key, slug)| format!("{file}: {key} names {slug}"))
        .collect();
    assert!(
        unknown.is_empty(),
        "no such rule: {unknown:#?}; correct the name, or make the row Not or Other"
    );
}

#[test]
fn the_accounting_names_every_rule() {
    let collections = accounting::collections();
    let named: BTreeSet<&str> = accounting::rows(&collections)
        .flat_map(|(.., row)| row.3.rules())
        .map(String::as_str)
        .collect();
    let missing: Vec<&str> = RULES.iter().map(|r| r.slug).filter(|s| !named.contains(s)).collect();
    assert!(
        missing.is_empty(),
        "no fact is checked by {missing:?}. In docs/rules/accounting find the row of the fact that the rule checks and make \
         its answer Rules([\"the-slug\"]), or Partly where some of it stays unchecked; where there is no such row, add one \
         to its subject with a key of its own. Then run {ANEW}"
    );
}

#[test]
fn every_key_stands_once_in_its_file() {
    let collections = accounting::collections();
    let mut seen = BTreeSet::new();
    let twice: Vec<_> = accounting::rows(&collections)
        .map(|(file, _, row)| (file, row.0.as_str()))
        .filter(|key| !seen.insert(*key))
        .collect();
    assert!(twice.is_empty(), "keys that stand twice: {twice:?}");
}

#[test]
fn nothing_is_left_blank() {
    let collections = accounting::collections();
    let blank = |text: &str| text.trim().is_empty();
    let sentence = |text: &str| !blank(text) && text.ends_with('.');
    let bad: Vec<_> = accounting::rows(&collections)
        .filter(|(_, subject, Row(key, title, _, answer))| {
            let said = match answer {
                Answer::Rules(rules) => !rules.is_empty(),
                Answer::Partly(rules, reason, instead) => {
                    !rules.is_empty() && sentence(reason) && sentence(instead)
                }
                Answer::Not => sentence(&subject.reason) && sentence(&subject.instead),
                Answer::Other(reason, instead) => sentence(reason) && sentence(instead),
            };
            blank(&subject.subject) || blank(key) || blank(title) || !said
        })
        .map(|(file, _, row)| format!("{file}: {}", row.0))
        .collect();
    assert!(
        bad.is_empty(),
        "rows without title, rule, or reason and advice in sentences: {bad:#?}"
    );
}
