//! One layer of the code book: the model code, or the amendments of one place.

use std::collections::{BTreeMap, HashMap};

use plan::Edition;
use serde::Deserialize;

use super::figure::{Figure, FigureText};
use crate::Confidence;

/// Why a code file can't be used.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{file}:{line}: {reason}")]
pub struct BookError {
    pub file: String,
    /// From 1; of the start of the file where the place is not known.
    pub line: usize,
    pub reason: String,
}

/// One demand of the code with all its editions.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    pub slug: String,
    /// What is demanded, in a few plain words.
    pub what: String,
    /// Exceptions, in words; empty where there is none.
    pub exceptions: String,
    pub(super) clauses: BTreeMap<Edition, Clause>,
}

/// One demand in one edition.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Clause {
    pub figure: Figure,
    /// For example `2021 IRC R310.2.1` or `2020 NEC 110.26(A)(1)`.
    pub text: String,
    /// Key of the list of sources.
    pub source: String,
    pub confidence: Confidence,
}

/// The entries of the model code, or of one place's amendments to it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layer {
    pub place: String,
    /// What the layer leaves out, and who is to be asked.
    pub note: String,
    /// By slug: they are looked up many times in a step of a drag.
    entries: HashMap<String, Entry>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct EntryText {
    slug: String,
    what: String,
    #[serde(default)]
    limit: FigureText,
    #[serde(default)]
    exceptions: String,
    editions: BTreeMap<u16, ClauseText>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ClauseText {
    section: String,
    source: String,
    confidence: Confidence,
    /// Where this edition's figure differs from the entry's.
    #[serde(default)]
    limit: Option<FigureText>,
}

impl Entry {
    /// The demand in an edition; `None` where an amendment leaves that edition alone.
    pub fn clause(&self, edition: Edition) -> Option<&Clause> {
        self.clauses.get(&edition)
    }

    /// Whether it has a figure that an amendment can change.
    pub fn amendable(&self) -> bool {
        self.clauses.values().any(|c| c.figure != Figure::None)
    }
}

impl Layer {
    /// A layer without entries.
    pub(super) fn empty(place: &str) -> Layer {
        Layer { place: place.to_owned(), note: String::new(), entries: HashMap::new() }
    }

    /// Reads the text of one file into the layer. A slug may stand in a layer only once.
    pub(super) fn read(&mut self, file: &str, text: &str) -> Result<(), BookError> {
        let error = |line, reason| BookError { file: file.to_owned(), line, reason };
        let options = ron::Options::default()
            .with_default_extension(ron::extensions::Extensions::IMPLICIT_SOME);
        let entries: Vec<EntryText> =
            options.from_str(text).map_err(|e| error(e.span.start.line, e.code.to_string()))?;
        for entry in entries {
            let slug = entry.slug.clone();
            let line = line_of(text, &slug);
            let entry = entry.resolve().map_err(|reason| error(line, reason))?;
            if self.entries.insert(slug.clone(), entry).is_some() {
                return Err(error(line, format!("\"{slug}\" stands here a second time")));
            }
        }
        Ok(())
    }

    /// Adds an entry; false where its slug has one already.
    pub(super) fn put(&mut self, entry: Entry) -> bool {
        self.entries.insert(entry.slug.clone(), entry).is_none()
    }

    pub fn entry(&self, slug: &str) -> Option<&Entry> {
        self.entries.get(slug)
    }

    /// All entries by slug.
    pub fn entries(&self) -> impl Iterator<Item = &Entry> {
        let mut entries: Vec<&Entry> = self.entries.values().collect();
        entries.sort_unstable_by_key(|entry| &entry.slug);
        entries.into_iter()
    }
}

impl EntryText {
    fn resolve(self) -> Result<Entry, String> {
        let slug = &self.slug;
        let mut clauses = BTreeMap::new();
        for (year, clause) in &self.editions {
            let edition = Edition::from_year(*year)
                .ok_or_else(|| format!("\"{slug}\": {year} is no edition of the code book"))?;
            let figure = clause.limit.as_ref().unwrap_or(&self.limit);
            let figure = figure.read().map_err(|e| format!("\"{slug}\": {e}"))?;
            clauses.insert(
                edition,
                Clause {
                    figure,
                    text: with_year(&clause.section, edition),
                    source: clause.source.clone(),
                    confidence: clause.confidence,
                },
            );
        }
        Ok(Entry { slug: self.slug, what: self.what, exceptions: self.exceptions, clauses })
    }
}

/// Puts the year before the section: the electrical code goes with the residential code by one year less.
pub(super) fn with_year(section: &str, edition: Edition) -> String {
    let year = edition.year();
    match section.split_once(' ').map(|(code, _)| code) {
        Some("NEC") => format!("{} {section}", year - 1),
        Some("IRC" | "IFGC") => format!("{year} {section}"),
        _ => section.to_owned(),
    }
}

/// The line on which a slug first stands.
pub(super) fn line_of(text: &str, slug: &str) -> usize {
    let quoted = format!("\"{slug}\"");
    text.lines().position(|l| l.contains(&quoted)).map_or(1, |i| i + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Result<Layer, String> {
        let mut layer = Layer::empty("here");
        layer.read("here.ron", text).map(|()| layer).map_err(|e| e.to_string())
    }

    #[test]
    fn an_edition_may_differ_in_section_and_figure() {
        let layer = read(
            r#"[(slug: "a", what: "A", limit: Inches("36"), editions: {
                2018: (section: "NEC 110.26", source: "s", confidence: Seen),
                2024: (section: "IRC R319", source: "s", confidence: FromMemory, limit: Inches("40")),
            })]"#,
        )
        .expect("good text");
        let entry = layer.entry("a").expect("entry");
        let old = entry.clause(Edition::E2018).expect("2018");
        assert_eq!(
            (old.text.as_str(), old.figure),
            ("2017 NEC 110.26", Figure::Len(measure::Len::inches(36)))
        );
        let new = entry.clause(Edition::E2024).expect("2024");
        assert_eq!(
            (new.text.as_str(), new.figure),
            ("2024 IRC R319", Figure::Len(measure::Len::inches(40)))
        );
        assert_eq!(entry.clause(Edition::E2021), None);
    }

    #[test]
    fn a_mistake_names_file_line_and_reason() {
        let wrong = |text: &str| read(text).expect_err("bad text");
        assert!(wrong("[\n(slug: \"a\" what: \"A\")]").starts_with("here.ron:2: "));
        let said = wrong(
            "[\n(slug: \"a\", what: \"A\", limit: Inches(\"x\"),\neditions: {2021: (section: \"\", source: \"\", confidence: Seen)})]",
        );
        assert_eq!(said, "here.ron:2: \"a\": \"x\" is no number such as 36, 820.8, 3/4 or 1 1/2");
        let said = wrong(
            "[(slug: \"a\", what: \"A\", editions: {1999: (section: \"\", source: \"\", confidence: Seen)})]",
        );
        assert_eq!(said, "here.ron:1: \"a\": 1999 is no edition of the code book");
        let twice = "(slug: \"a\", what: \"A\", editions: {})";
        let said = wrong(&format!("[{twice},\n{twice}]"));
        assert_eq!(said, "here.ron:1: \"a\" stands here a second time");
    }
}
