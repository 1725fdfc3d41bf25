//! The documents of the rule book, as text.

use std::collections::BTreeMap;
use std::fmt::Write;

use rules::{RULES, explain_markdown};

use crate::accounting::{Answer, Collection, Row, Subject};

const CAUTION: &str = "\
**A planning aid.** Model-code figures differ by place and edition, and your building department decides. Structural
changes, gas, service equipment, radon systems, asbestos and lead belong to licensed people.
";

const INDEX: &str = "\
Every rule in force has a page: what it checks, why, its limits by edition with section, source and confidence, how it is
measured, what it cannot see, exceptions and remedies. `cellarwright explain RULE` prints the same. What no rule checks is
in [what is not checked](not-checked.md), with the reason and what to do instead.

## How to read a finding

| severity | what it means |
|---|---|
| correction | the permit desk or the inspector would stop it |
| verify | a fact is missing or assumed, or the text leaves it to the official: look, measure or ask |
| advice | good practice |

A limit that is met exactly passes. Silence means only that no rule found anything in what was drawn.

A limit that was not seen in the code itself is marked:

| confidence | what it means |
|---|---|
| seen | seen in code text or on an official page; possibly a copy |
| seen second-hand | quoted by others, or seen in a neighbouring edition |
| from memory | not seen; check it first |
| our own reading | worked out or read from the text by us |
| common practice | no source |
";

const FORM: &str = "\
## How these pages are made

They are written by `UPDATE_RULE_PAGES=1 cargo nextest run -p whole --test rule_pages` and are not edited by hand. The
pages of the rules come from the rules and the code book, `not-checked.md` from `accounting/`: a list of subjects for each
collection of facts, with the reason and the advice that hold for the whole subject, and a row for each fact:

    (key, title, section, answer)

The answer is `Rules([...])` where rules check it, `Partly([...], reason, instead)` where they check a part of it, `Not`
where nothing does for the reason of the subject, and `Other(reason, instead)` where nothing does for another reason. Each
rule is named by at least one row.
";

const NOT_CHECKED: &str = "\
The program is silent about what stands here. Each subject says what the plan does not know and what to do instead; where a
line has a reason of its own, it says so. Sections are those of the 2021 edition where no year is given, and the electrical
code's (NEC) where it is named; not all were seen in the code itself, so look them up in your adopted text.
";

/// Every page by its file name in `docs/rules`.
pub fn all(collections: &[Collection]) -> BTreeMap<String, String> {
    let mut pages: BTreeMap<String, String> =
        RULES.iter().map(|rule| (format!("{}.md", rule.slug), explain_markdown(rule))).collect();
    pages.insert("README.md".to_owned(), index());
    pages.insert("not-checked.md".to_owned(), not_checked(collections));
    pages
}

// Writing to a String can't fail, so its results are dropped below.

fn index() -> String {
    let mut page = format!("# The rules\n\n{CAUTION}\n{INDEX}\n## The {} rules\n", RULES.len());
    let mut group = None;
    for rule in RULES {
        if group.replace(rule.group) != Some(rule.group) {
            let _ = write!(page, "\n### {}\n\n", rule.group.word());
        }
        let _ = writeln!(page, "- [{}]({0}.md): {}", rule.slug, rule.title);
    }
    page += "\n";
    page += FORM;
    page
}

fn not_checked(collections: &[Collection]) -> String {
    let mut page = format!("# What is not checked\n\n{CAUTION}\n{NOT_CHECKED}\n");
    page += "| facts about | checked | in part | not | together |\n|---|---|---|---|---|\n";
    let mut sum = [0; 3];
    for collection in collections {
        let counts = count(collection.subjects.iter().flat_map(|s| &s.rows));
        sum = [sum[0] + counts[0], sum[1] + counts[1], sum[2] + counts[2]];
        page += &line(collection.name, counts);
    }
    page += &line("all", sum);
    for subject in collections.iter().flat_map(|c| &c.subjects) {
        page += &section(subject);
    }
    page
}

/// How many rows are checked, checked in part, and not checked.
fn count<'a>(rows: impl Iterator<Item = &'a Row>) -> [usize; 3] {
    let mut counts = [0; 3];
    for row in rows {
        let kind = match row.3 {
            Answer::Rules(_) => 0,
            Answer::Partly(..) => 1,
            Answer::Not | Answer::Other(..) => 2,
        };
        counts[kind] += 1;
    }
    counts
}

fn line(name: &str, [checked, partly, not]: [usize; 3]) -> String {
    format!("| {name} | {checked} | {partly} | {not} | {} |\n", checked + partly + not)
}

/// A subject with its rows that no rule checks in full; nothing where there is none.
fn section(subject: &Subject) -> String {
    let mut own = String::new();
    let mut plain = String::new();
    for Row(_, title, section, answer) in &subject.rows {
        let title = match section.as_str() {
            "" => title.clone(),
            section => format!("{title} ({section})"),
        };
        let _ = match answer {
            Answer::Rules(_) => Ok(()),
            Answer::Not => writeln!(plain, "- {title}"),
            Answer::Other(reason, instead) => {
                writeln!(own, "- {title}: {reason} *Instead:* {instead}")
            }
            Answer::Partly(rules, reason, instead) => {
                let rules: Vec<String> = rules.iter().map(|r| format!("[{r}]({r}.md)")).collect();
                let rules = rules.join(", ");
                writeln!(own, "- {title}, in part by {rules}: {reason} *Instead:* {instead}")
            }
        };
    }
    if own.is_empty() && plain.is_empty() {
        return String::new();
    }
    let mut text = format!("\n## {}\n", subject.subject);
    if !plain.is_empty() {
        let _ = write!(text, "\n{} *Instead:* {}\n\n{plain}", subject.reason, subject.instead);
    }
    if !own.is_empty() {
        let also = if plain.is_empty() { "" } else { "\nFor reasons of their own:\n" };
        let _ = write!(text, "{also}\n{own}");
    }
    text
}
