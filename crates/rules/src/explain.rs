//! A rule's page with its limits from the code book.

use std::fmt::Write;

use measure::{Precision, System};
use plan::Edition;

use crate::{Book, Figure, HEADINGS, Rule};

/// The page of a rule: its title, its text, and under `Source` every limit that it cites, by edition, each
/// marked where it was not seen in the code itself.
pub fn explain(rule: &Rule, system: System) -> String {
    let mut page = format!("{}: {}\n\n", rule.slug, rule.title);
    let after_source = HEADINGS.iter().skip_while(|heading| **heading != "Source").nth(1);
    for line in rule.page.trim().lines() {
        if HEADINGS.contains(&line) {
            page.truncate(page.trim_end().len());
            page += "\n";
            if Some(&line) == after_source {
                page += &limits(rule, system);
            }
            page += "\n";
        }
        page += line;
        page += "\n";
    }
    page
}

/// The text under one of a page's headings.
pub(crate) fn section(rule: &Rule, heading: &str) -> &'static str {
    let marked = format!("\n{heading}\n");
    let Some(from) = rule.page.find(&marked).map(|i| i + marked.len()) else { return "" };
    let rest = &rule.page[from..];
    let to = HEADINGS.iter().filter_map(|h| rest.find(&format!("\n{h}\n"))).min();
    rest[..to.unwrap_or(rest.len())].trim()
}

/// Every cited limit with its figure and its section in every edition, a few lines each.
fn limits(rule: &Rule, system: System) -> String {
    let mut text = String::new();
    for slug in rule.cites {
        let mut lines = String::new();
        let mut what = "";
        let books = Edition::ALL.map(Book::model);
        for book in &books {
            let Some((entry, clause)) = book.entry(slug) else { continue };
            what = &entry.what;
            let figure = match clause.figure {
                Figure::None => String::new(),
                Figure::Len(l) => format!("{}, ", system.inches(l, Precision::Fine)),
                Figure::Area(a) => format!("{}, ", system.area(a)),
                Figure::Count(n) => format!("{n}, "),
            };
            let citation = book.cite(slug).marked();
            // Writing to a String can't fail.
            let _ = writeln!(lines, "    {}: {figure}{citation}", book.edition().year());
        }
        let _ = write!(text, "  {what}\n{lines}");
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{RULES, rule};

    #[test]
    fn limits_stand_under_the_source_with_their_marks() {
        let page = explain(rule("panel-depth").expect("the rule"), System::Imperial);
        let expected = "\
  Clear depth in front of an electrical panel, from its face
    2018: 36\", 2017 NEC 110.26(A)(1) (from memory)
    2021: 36\", 2020 NEC 110.26(A)(1)
    2024: 36\", 2023 NEC 110.26(A)(1)

How it is measured
";
        assert!(page.contains(expected), "{page}");
        assert!(
            page.starts_with("panel-depth: Clear depth in front of the electrical panel\n\nWhat\n")
        );
    }

    #[test]
    fn every_page_keeps_its_headings_and_shows_every_cited_limit() {
        for rule in RULES {
            let page = explain(rule, System::Metric);
            let headings = page.lines().filter(|line| HEADINGS.contains(line)).count();
            assert_eq!(headings, HEADINGS.len(), "{}", rule.slug);
            for slug in rule.cites {
                let book = Book::model(Edition::E2021);
                let (entry, clause) = book.entry(slug).expect("a cited entry");
                assert!(page.contains(&entry.what) && page.contains(&clause.text), "{page}");
            }
        }
    }
}
