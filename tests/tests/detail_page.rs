//! The page of details is generated: a stale one fails.

#![allow(clippy::disallowed_methods, reason = "tests read and write files")]

use std::path::PathBuf;

use measure::System;
use plan::detail::{self, Detail};

const HEAD: &str = "\
# Details

What can be stated about elements and about the house besides figures on the drawing. The inspector shows those that fit
what is selected, the site facts those of the house. Until a detail is stated, what stands under *assumed* is taken for
true, and a finding that rests on it asks you to verify it; where nothing is assumed, the finding asks for the answer. What
is assumed is common practice, without a source. This page is written by
`UPDATE_DETAIL_PAGE=1 cargo nextest run -p whole --test detail_page`.
";

fn line(detail: &Detail) -> String {
    let assumed = detail.assumed.map_or("nothing".to_owned(), |v| detail.say(v, System::Imperial));
    let accepted = detail.accepted(System::Imperial).replace('|', "\\|");
    let when = detail.when.map_or_else(String::new, |when| {
        let answers: Vec<String> =
            when.answers.iter().map(|v| when.detail.say(*v, System::Imperial)).collect();
        format!(" *Where “{}” is {}.*", when.detail.word, answers.join(" or "))
    });
    format!(
        "| `{}` | {} | {}{when} | {accepted} | {assumed} |\n",
        detail.slug, detail.word, detail.asks
    )
}

fn page() -> String {
    let mut page = HEAD.to_owned();
    for (heading, details) in detail::families() {
        page += &format!(
            "\n## {heading}\n\n| name | field | what it asks | accepted | assumed |\n|---|---|---|---|---|\n"
        );
        page.extend(details.iter().map(|detail| line(detail)));
    }
    page
}

/// `UPDATE_DETAIL_PAGE=1` writes it anew.
#[test]
fn the_page_is_fresh() {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).with_file_name("docs").join("details.md");
    if std::env::var_os("UPDATE_DETAIL_PAGE").is_some() {
        std::fs::write(&path, page()).expect("the page can be written");
    }
    let on_disk = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(on_disk == page(), "docs/details.md is stale: run once with UPDATE_DETAIL_PAGE=1");
}
