//! What the checker says.

use geometry::{Pt, Ring};
use measure::{Area, Len};
use plan::{Edit, Edition, ElementId};

use crate::Phrase;

/// How much a finding matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// The permit desk or the inspector would stop it.
    Correction,
    /// A fact is missing or assumed, or the text leaves it to the official.
    Verify,
    /// Good practice.
    Advice,
}

/// Something measured or required.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Quantity {
    Len(Len),
    Area(Area),
    Count(u32),
    /// A fact in words, such as `none` or `hinged`.
    Words(String),
}

/// How sure the book is of a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Confidence {
    /// Seen in code text or on an official page.
    Seen,
    /// Seen second-hand, or in a neighbouring edition.
    SecondHand,
    /// From memory; not seen.
    FromMemory,
    /// Our own arithmetic or reading.
    Derived,
    /// Common practice, no source.
    Practice,
}

/// Where a limit comes from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Citation {
    /// The limit's slug in the code book.
    pub slug: &'static str,
    /// For example `2021 IRC R310.2.1` or `2020 NEC 110.26(A)(1)`.
    pub text: String,
    pub edition: Edition,
    pub confidence: Confidence,
}

/// What to paint on the plan for a finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    Point(Pt),
    /// A gap or distance, with the figure that is written on it.
    Span(Pt, Pt),
    Area(Ring),
    /// A keep-clear box that something stands in.
    Breach {
        keep_clear: Ring,
        overlap: Vec<Ring>,
    },
}

/// Whether a remedy may be applied without asking.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Safety {
    /// Changes no intent: apply.
    Safe,
    /// Changes intent: show it first.
    Ask,
}

/// An edit that cures a finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remedy {
    /// In the user's words, as the undo step is named: `Move W14 by 2 3/8"`.
    pub label: Phrase,
    pub edit: Edit,
    pub safety: Safety,
}

/// One finding.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Finding {
    /// The rule's slug, such as `panel-depth`.
    pub rule: &'static str,
    pub severity: Severity,
    /// What it is about, by id, without repeats; the first in `subject` order is named in the title.
    pub elements: Vec<ElementId>,
    pub title: Phrase,
    /// One plain sentence of why it matters.
    pub why: Phrase,
    pub measured: Option<Quantity>,
    pub required: Option<Quantity>,
    pub citation: Citation,
    /// Assumed facts that it rests on, in words; never empty for a `Verify` that is so for that reason.
    pub assumed: Vec<String>,
    pub places: Vec<Place>,
    pub remedies: Vec<Remedy>,
    /// The user's reason, where it has been set aside.
    pub set_aside: Option<String>,
}
