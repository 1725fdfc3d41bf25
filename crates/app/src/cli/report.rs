//! Findings as a report: plain text for people, JSON for programs (documented in docs/check-json.md).

use std::io::{self, Write};
use std::sync::Arc;

use measure::System;
use rules::{Book, Confidence, Finding, Quantity};
use serde::Serialize;
use space::Facts;

/// The number of the JSON's form; it goes up when a field changes its meaning or goes away.
const SCHEMA: u32 = 1;

/// All findings of one plan.
#[derive(Debug, Serialize)]
pub struct Report {
    schema: u32,
    title: String,
    /// Year of the residential code's edition.
    edition: u16,
    place: String,
    findings: Vec<Entry>,
    caution: &'static str,
}

/// One finding.
#[derive(Debug, Serialize)]
struct Entry {
    rule: &'static str,
    severity: &'static str,
    elements: Vec<String>,
    title: String,
    measured: Option<Figure>,
    required: Option<Figure>,
    citation: Cited,
    assumed: Vec<String>,
    /// The reason, where the finding is set aside.
    set_aside: Option<String>,
    message: String,
    /// Points in inches: a point, the ends of a gap, or the corners of an area.
    places: Vec<Vec<[f64; 2]>>,
}

#[derive(Debug, Serialize)]
struct Figure {
    text: String,
    /// In `unit`; absent where the figure is in words.
    #[serde(skip_serializing_if = "Option::is_none")]
    value: Option<f64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    unit: Option<&'static str>,
}

#[derive(Debug, Serialize)]
struct Cited {
    text: String,
    slug: &'static str,
    confidence: &'static str,
    #[serde(skip)]
    marked: String,
}

impl Report {
    pub fn new(facts: &Facts, book: &Book, findings: &[Arc<Finding>], system: System) -> Report {
        Report {
            schema: SCHEMA,
            title: facts.plan.site.title.clone(),
            edition: book.edition().year(),
            place: book.place().to_owned(),
            findings: findings.iter().map(|f| Entry::new(facts, f, system)).collect(),
            caution: super::CAUTION,
        }
    }

    /// Corrections that are not set aside.
    pub fn corrections(&self) -> usize {
        self.open("correction")
    }

    fn open(&self, severity: &str) -> usize {
        self.findings.iter().filter(|f| f.set_aside.is_none() && f.severity == severity).count()
    }

    pub fn write_text(&self, out: &mut dyn Write) -> io::Result<()> {
        let title = if self.title.is_empty() { "Plan" } else { &self.title };
        writeln!(out, "{title}, checked by the {} code, {}", self.edition, self.place)?;
        writeln!(
            out,
            "{} corrections, {} to verify, {} advice",
            self.open("correction"),
            self.open("verify"),
            self.open("advice")
        )?;
        for finding in self.findings.iter().filter(|f| f.set_aside.is_none()) {
            finding.write_text(out)?;
        }
        let aside: Vec<&Entry> = self.findings.iter().filter(|f| f.set_aside.is_some()).collect();
        if !aside.is_empty() {
            writeln!(out, "\nSet aside")?;
            for finding in aside {
                finding.write_text(out)?;
            }
        }
        writeln!(out, "\n{}", self.caution)
    }
}

impl Entry {
    fn new(facts: &Facts, finding: &Finding, system: System) -> Entry {
        Entry {
            rule: finding.rule,
            severity: finding.severity.word(),
            elements: finding
                .elements
                .iter()
                .filter_map(|id| facts.plan.get(*id))
                .map(|element| element.name())
                .collect(),
            title: finding.title.say(system),
            measured: Figure::new(finding.measured.as_ref(), finding.measured_text(system)),
            required: Figure::new(finding.required.as_ref(), finding.required_text(system)),
            citation: Cited {
                text: finding.citation.text.clone(),
                slug: finding.citation.slug,
                confidence: confidence(finding.citation.confidence),
                marked: finding.citation.marked(),
            },
            assumed: finding.assumed.clone(),
            set_aside: finding.set_aside.clone(),
            message: finding.why.say(system),
            places: finding
                .places
                .iter()
                .flat_map(|place| place.rings(facts))
                .map(inches)
                .collect(),
        }
    }

    fn write_text(&self, out: &mut dyn Write) -> io::Result<()> {
        write!(out, "\n{:10}  {}", self.severity, self.title)?;
        if !self.elements.is_empty() {
            write!(out, " [{}]", self.elements.join(", "))?;
        }
        writeln!(out)?;
        let indent = "            ";
        match (&self.measured, &self.required) {
            (Some(m), Some(r)) => {
                writeln!(out, "{indent}measured {}, required {}", m.text, r.text)?
            }
            (Some(m), None) => writeln!(out, "{indent}measured {}", m.text)?,
            (None, Some(r)) => writeln!(out, "{indent}required {}", r.text)?,
            (None, None) => {}
        }
        writeln!(out, "{indent}{}", self.message)?;
        for fact in &self.assumed {
            writeln!(out, "{indent}assumed: {fact}")?;
        }
        if let Some(reason) = &self.set_aside {
            writeln!(out, "{indent}set aside: {reason}")?;
        }
        writeln!(out, "{indent}{}; rule {}", self.citation.marked, self.rule)
    }
}

impl Figure {
    fn new(quantity: Option<&Quantity>, text: Option<String>) -> Option<Figure> {
        let (value, unit) = match quantity? {
            Quantity::Len(l) => (Some(l.to_inches()), Some("in")),
            Quantity::Area(a) => (Some(a.to_square_inches()), Some("sq in")),
            Quantity::Count(n) => (Some(f64::from(*n)), None),
            Quantity::Words(_) => (None, None),
        };
        Some(Figure { text: text?, value, unit })
    }
}

fn inches(ring: geometry::Ring) -> Vec<[f64; 2]> {
    ring.into_iter().map(|p| p.to_inches().into()).collect()
}

fn confidence(confidence: Confidence) -> &'static str {
    match confidence {
        Confidence::Seen => "seen",
        Confidence::SecondHand => "second-hand",
        Confidence::FromMemory => "from memory",
        Confidence::Derived => "derived",
        Confidence::Practice => "practice",
        Confidence::Stated => "stated",
    }
}
