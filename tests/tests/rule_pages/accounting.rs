//! Every fact that was collected for the rule book: which rule checks it, or why none does.

use serde::Deserialize;

/// The collections, each with the name of its file and what it is called in the table.
const FILES: [(&str, &str, &str); 3] = [
    (
        "building.ron",
        "Rooms, ways out, stairs, fire, moisture",
        include_str!("../../../docs/rules/accounting/building.ron"),
    ),
    (
        "services.ron",
        "Access, electrical, heating, air, plumbing",
        include_str!("../../../docs/rules/accounting/services.ron"),
    ),
    (
        "envelope.ron",
        "Fitness of the space, insulation, framing, furniture",
        include_str!("../../../docs/rules/accounting/envelope.ron"),
    ),
];

/// One file of the accounting.
pub struct Collection {
    pub file: &'static str,
    pub name: &'static str,
    pub subjects: Vec<Subject>,
}

/// Facts that belong together and, where no rule checks them, are left out for one reason.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Subject {
    pub subject: String,
    /// What the plan does not know; said once for all rows that are `Not`.
    pub reason: String,
    /// What the user does instead.
    pub instead: String,
    pub rows: Vec<Row>,
}

/// One fact: its key, a title in a few words, its section (of 2021 where nothing else is said; empty where it is none of
/// the code's), and the answer.
#[derive(Deserialize)]
pub struct Row(pub String, pub String, pub String, pub Answer);

#[derive(Deserialize)]
pub enum Answer {
    /// These rules check it.
    Rules(Vec<String>),
    /// These rules check a part of it; the reason for the rest, and what to do instead.
    Partly(Vec<String>, String, String),
    /// Nothing checks it, for the reason of the subject.
    Not,
    /// Nothing checks it, for a reason of its own; and what to do instead.
    Other(String, String),
}

impl Answer {
    /// The slugs of the rules that it names.
    pub fn rules(&self) -> &[String] {
        match self {
            Answer::Rules(rules) | Answer::Partly(rules, ..) => rules,
            Answer::Not | Answer::Other(..) => &[],
        }
    }
}

/// All collections, in the order of the files.
pub fn collections() -> Vec<Collection> {
    FILES
        .into_iter()
        .map(|(file, name, text)| {
            let subjects =
                ron::from_str(text).unwrap_or_else(|e| panic!("docs/rules/accounting/{file}: {e}"));
            Collection { file, name, subjects }
        })
        .collect()
}

/// Every row with its file and its subject.
pub fn rows(collections: &[Collection]) -> impl Iterator<Item = (&'static str, &Subject, &Row)> {
    collections.iter().flat_map(|c| {
        c.subjects.iter().flat_map(move |s| s.rows.iter().map(move |row| (c.file, s, row)))
    })
}
