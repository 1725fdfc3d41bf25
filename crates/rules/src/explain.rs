//! A rule's page with its limits from the code book, as plain text and as Markdown.

use std::fmt::Write;

use measure::{Precision, System};
use plan::Edition;

use crate::{Book, Clause, Confidence, Entry, Figure, HEADINGS, Rule};

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

/// The page of a rule in Markdown, with figures in both unit systems. Links go to the pages beside it and to the
/// list of sources.
pub fn explain_markdown(rule: &Rule) -> String {
    let mut page =
        format!("# {}\n\n`{}` · [{}](README.md)\n", rule.title, rule.slug, rule.group.word());
    let after_source = HEADINGS.iter().skip_while(|heading| **heading != "Source").nth(1);
    for line in rule.page.trim().lines() {
        if HEADINGS.contains(&line) {
            page.truncate(page.trim_end().len());
            if Some(&line) == after_source {
                page += "\n\n";
                page += table(rule).trim_end();
            }
            page += "\n\n## ";
        }
        page += &literal(line);
        page += if HEADINGS.contains(&line) { "\n\n" } else { "\n" };
    }
    page
}

/// Every cited limit with its figure and its section in every edition, a few lines each.
fn limits(rule: &Rule, system: System) -> String {
    let books = Edition::ALL.map(Book::model);
    let mut text = String::new();
    for slug in rule.cites {
        let mut lines = String::new();
        let mut what = "";
        for (book, entry, clause) in clauses(&books, slug) {
            what = &entry.what;
            let figure = match figure(clause.figure, system) {
                Some(figure) => format!("{figure}, "),
                None => String::new(),
            };
            let citation = book.cite(slug).marked();
            // Writing to a String can't fail.
            let _ = writeln!(lines, "    {}: {figure}{citation}", book.edition().year());
        }
        let _ = write!(text, "  {what}\n{lines}");
    }
    text
}

/// The same as a table, with the source of each figure, and the exceptions in words below it.
fn table(rule: &Rule) -> String {
    let books = Edition::ALL.map(Book::model);
    let mut text = String::from(
        "| limit | edition | figure | section | confidence | source |\n|---|---|---|---|---|---|\n",
    );
    let mut exceptions = String::new();
    for slug in rule.cites {
        for (i, (book, entry, clause)) in clauses(&books, slug).enumerate() {
            let what = if i == 0 { cell(&entry.what) } else { String::new() };
            let figure = match figure(clause.figure, System::Imperial) {
                Some(imperial) => match figure(clause.figure, System::Metric) {
                    Some(metric) if metric != imperial => format!("{imperial} ({metric})"),
                    _ => imperial,
                },
                None => "in words".to_owned(),
            };
            let confidence = match clause.confidence {
                Confidence::Seen => "seen",
                other => other.mark(),
            };
            let _ = writeln!(
                text,
                "| {what} | {} | {} | {} | {confidence} | {} |",
                book.edition().year(),
                cell(&figure),
                cell(&clause.text),
                cell(&clause.source),
            );
            if i == 0 && !entry.exceptions.is_empty() {
                let _ = writeln!(
                    exceptions,
                    "- {}: {}",
                    literal(&entry.what),
                    literal(&entry.exceptions)
                );
            }
        }
    }
    text +=
        "\nThe keys of the sources are in the [list of sources](../../assets/code/sources.md).\n";
    if !exceptions.is_empty() {
        let _ = write!(text, "\nThe code book notes beside these limits:\n\n{exceptions}");
    }
    text
}

/// What the books say about a slug, edition after edition.
fn clauses<'a>(
    books: &'a [Book],
    slug: &'a str,
) -> impl Iterator<Item = (&'a Book, &'a Entry, &'a Clause)> {
    books.iter().filter_map(move |book| {
        let (entry, clause) = book.entry(slug)?;
        Some((book, entry, clause))
    })
}

/// A limit's figure in words; `None` where it has none.
fn figure(figure: Figure, system: System) -> Option<String> {
    match figure {
        Figure::None => None,
        Figure::Len(l) => Some(system.inches(l, Precision::Fine)),
        Figure::Area(a) => Some(system.area(a)),
        Figure::Count(n) => Some(n.to_string()),
    }
}

/// Text in which no character is Markdown.
fn literal(text: &str) -> String {
    let mut out = String::new();
    for c in text.chars() {
        if matches!(c, '*' | '_' | '<' | '`' | '[' | ']') {
            out.push('\\');
        }
        out.push(c);
    }
    out
}

/// The same within a table.
fn cell(text: &str) -> String {
    literal(text).replace('|', "\\|")
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
    #[test]
    fn a_markdown_page_has_headings_and_a_table_with_both_units() {
        let page = explain_markdown(rule("panel-depth").expect("the rule"));
        let start = "\
# Clear depth in front of the electrical panel

`panel-depth` · [Access](README.md)

## What

Nothing stands";
        assert!(page.starts_with(start), "{page}");
        let row = "| Clear depth in front of an electrical panel, from its face | 2018 | 36\" (914.4 mm) | \
                   2017 NEC 110.26(A)(1) | from memory | ";
        assert!(page.contains(row), "{page}");
        assert!(page.contains("\n\n## How it is measured\n\n"), "{page}");
    }

    #[test]
    fn signs_of_markdown_in_a_page_are_shown_as_they_are() {
        assert_eq!(cell("a_b | *c* <d>"), "a\\_b \\| \\*c\\* \\<d>");
    }
}
