//! The rules: one file each, a folder for each family, registered in one list.
//!
//! A rule's file holds, in this order: `pub(crate) const RULE: Rule` with its page, its check, and its tests. The
//! tests hold at least the four cases, named `clear_pass`, `clear_fail`, `at_the_limit` and `does_not_apply`;
//! `tests/rule_files.rs` looks for them. A family's `mod.rs` lists its rules in `pub(super) const RULES`.

pub(crate) mod access;
mod bedroom;
pub(crate) mod build;
mod doors;
pub(crate) mod electrical;
mod fitness;
pub(crate) mod headroom;
mod heat;
pub(crate) mod rooms;
mod stairs;
mod stated;
pub(crate) mod way_out;

use crate::Rule;

pub(crate) use access::{KEEP, KEEP_KINDS, Keep, keep, keep_clears, keeps};
pub use build::fixtures::is_fixture;

pub use bedroom::{Demand, Met, demands};

const FAMILIES: &[&[Rule]] = &[
    fitness::RULES,
    way_out::RULES,
    access::RULES,
    bedroom::RULES,
    rooms::RULES,
    headroom::RULES,
    doors::RULES,
    stairs::RULES,
    electrical::RULES,
    heat::RULES,
    build::RULES,
];

/// Every rule in force, in the order of the book.
pub const RULES: &[Rule] = &joined::<{ count() }>();

/// The rule with a slug.
pub fn rule(slug: &str) -> Option<&'static Rule> {
    RULES.iter().find(|rule| rule.slug == slug)
}

const fn count() -> usize {
    let (mut n, mut family) = (0, 0);
    while family < FAMILIES.len() {
        n += FAMILIES[family].len();
        family += 1;
    }
    n
}

/// The families end to end.
const fn joined<const N: usize>() -> [Rule; N] {
    let mut rules = [access::RULES[0]; N];
    let (mut n, mut family) = (0, 0);
    while family < FAMILIES.len() {
        let mut i = 0;
        while i < FAMILIES[family].len() {
            rules[n] = FAMILIES[family][i];
            n += 1;
            i += 1;
        }
        family += 1;
    }
    rules
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use plan::Edition;

    use super::RULES;
    use crate::{Book, HEADINGS};

    #[test]
    fn every_slug_is_unique() {
        let slugs: BTreeSet<&str> = RULES.iter().map(|rule| rule.slug).collect();
        assert_eq!(slugs.len(), RULES.len());
    }

    #[test]
    fn every_page_has_the_headings_in_order_with_words_under_each() {
        for rule in RULES {
            let lines: Vec<&str> = rule.page.lines().collect();
            let found: Vec<&str> =
                lines.iter().copied().filter(|line| HEADINGS.contains(line)).collect();
            assert_eq!(found, HEADINGS, "{}", rule.slug);
            for (i, line) in lines.iter().enumerate().filter(|(_, l)| HEADINGS.contains(l)) {
                let next = lines.get(i + 1).copied().unwrap_or_default();
                let filled = !next.is_empty() && !HEADINGS.contains(&next);
                assert!(filled, "{}: nothing under {line}", rule.slug);
            }
        }
    }

    #[test]
    fn every_cited_slug_stands_in_every_edition() {
        for rule in RULES {
            assert!(!rule.cites.is_empty(), "{} cites nothing", rule.slug);
            for slug in rule.cites {
                for edition in Edition::ALL {
                    let entry = Book::model(edition).entry(slug).is_some();
                    assert!(entry, "{} cites {slug} in {edition:?}", rule.slug);
                }
            }
        }
    }

    #[test]
    fn rules_are_grouped_in_the_order_of_the_book() {
        assert!(RULES.windows(2).all(|pair| pair[0].group <= pair[1].group));
    }
}
