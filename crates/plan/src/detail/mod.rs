//! Details: what can be stated about an element or the site besides its figures, such as the fuel of a furnace.
//!
//! A detail is stated or not. Where it is not, its usual value is assumed, or nothing is: a rule that rests on an
//! assumed value asks to verify it. Each family of details has a file; adding one means a constant and its name
//! in the family's list.

mod details;
mod read;
mod table;
mod value;

use crate::bounds::{Bound, CountBound};
use crate::element::{Body, BodyKind};

pub use details::Details;
pub use table::{electrical, heat, opening, overhead, plumbing, room, site, stair, wall, ways};
pub use value::Value;

/// What a detail is about.
#[derive(Clone, Copy)]
pub enum Subject {
    /// The house and its site.
    Site,
    /// The elements of some kinds for which this holds.
    Element(&'static [BodyKind], fn(&Body) -> bool),
}

/// What values a detail takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    YesNo,
    /// One of several words.
    Choice(&'static [&'static str]),
    Length(Bound),
    /// A whole number in a unit, such as `BTU/h`; empty for a count of things.
    Number(CountBound, &'static str),
}

/// Something that can be stated.
#[derive(Clone, Copy)]
pub struct Detail {
    /// Its name in files and scripts, stable for ever: `rungs-apart`.
    pub slug: &'static str,
    pub of: Subject,
    /// The word at its field, two or three words: `Rungs apart`.
    pub word: &'static str,
    /// What it asks, as a sentence for the reader of the field.
    pub asks: &'static str,
    pub kind: Kind,
    /// What is taken for true until it is stated (common practice, no source); nothing where a guess would mislead.
    pub assumed: Option<Value>,
    /// What must hold for it to be asked at all.
    pub when: Option<When>,
}

/// The answers to another detail of the same thing that bring a detail up: that of a spiral stair asks further.
#[derive(Clone, Copy)]
pub struct When {
    pub detail: &'static Detail,
    pub answers: &'static [Value],
}

impl Detail {
    /// Whether it can be stated about an element.
    pub fn fits(&self, body: &Body) -> bool {
        match self.of {
            Subject::Site => false,
            Subject::Element(kinds, fits) => kinds.contains(&body.kind()) && fits(body),
        }
    }

    /// The kinds of elements about which it can be stated.
    pub const fn kinds(&self) -> &'static [BodyKind] {
        match self.of {
            Subject::Site => &[],
            Subject::Element(kinds, _) => kinds,
        }
    }

    /// The same, asked only where another detail of the same thing has one of some answers.
    pub const fn when(mut self, detail: &'static Detail, answers: &'static [Value]) -> Detail {
        self.when = Some(When { detail, answers });
        self
    }

    /// Whether it is asked about an element of which this is stated: it fits, and what it hangs on holds, stated or
    /// assumed.
    pub fn is_asked(&self, body: &Body, details: &Details) -> bool {
        self.fits(body)
            && self.when.is_none_or(|when| {
                let answer = details.get(when.detail).or(when.detail.assumed);
                when.detail.is_asked(body, details)
                    && answer.is_some_and(|value| when.answers.contains(&value))
            })
    }

    /// Whether it is about the site.
    pub fn of_site(&self) -> bool {
        matches!(self.of, Subject::Site)
    }

    /// Whether a value is of its kind and in its range.
    pub fn takes(&self, value: Value) -> bool {
        match (self.kind, value) {
            (Kind::YesNo, Value::Yes | Value::No) => true,
            (Kind::Choice(words), Value::Word(word)) => words.contains(&word),
            (Kind::Length(bound), Value::Length(len)) => bound.holds(len),
            (Kind::Number(bound, _), Value::Number(n)) => bound.holds(n as usize),
            _ => false,
        }
    }
}

/// Two details are the same when their names are.
impl PartialEq for Detail {
    fn eq(&self, other: &Detail) -> bool {
        self.slug == other.slug
    }
}

impl Eq for Detail {}

impl std::fmt::Debug for Detail {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.slug)
    }
}

/// Every family of details with what it is about, in the order shown.
pub fn families() -> &'static [(&'static str, &'static [&'static Detail])] {
    table::FAMILIES
}

/// Every detail, family by family.
pub fn all() -> impl Iterator<Item = &'static Detail> {
    families().iter().flat_map(|(_, details)| details.iter().copied())
}

/// The detail with a name.
pub fn named(slug: &str) -> Option<&'static Detail> {
    all().find(|detail| detail.slug == slug)
}

/// The details that can be stated about an element, in the order shown.
pub fn fitting(body: &Body) -> impl Iterator<Item = &'static Detail> {
    all().filter(|detail| detail.fits(body))
}

/// The details that are asked about an element of which this is stated, in the order shown.
pub fn asked<'a>(
    body: &'a Body,
    details: &'a Details,
) -> impl Iterator<Item = &'static Detail> + use<'a> {
    all().filter(move |detail| detail.is_asked(body, details))
}

/// The details that can be stated about the site, in the order shown.
pub fn of_site() -> impl Iterator<Item = &'static Detail> {
    all().filter(|detail| detail.of_site())
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn names_are_unique_and_words_are_short_enough_for_a_field() {
        let slugs: BTreeSet<&str> = all().map(|d| d.slug).collect();
        assert_eq!(slugs.len(), all().count());
        for detail in all() {
            let slug = detail.slug;
            assert!(slug.chars().all(|c| c.is_ascii_lowercase() || c == '-' || c.is_ascii_digit()));
            assert!(detail.word.chars().count() <= 22, "{slug}: {}", detail.word);
            assert!(detail.asks.ends_with(['?', '.']), "{slug}: {}", detail.asks);
            assert_eq!(named(slug), Some(detail));
        }
    }

    #[test]
    fn what_a_detail_hangs_on_could_be_answered_so() {
        let hanging: Vec<_> = all().filter_map(|d| Some((d.slug, d.when?))).collect();
        assert!(!hanging.is_empty());
        for (slug, when) in hanging {
            assert!(named(when.detail.slug).is_some(), "{slug}");
            assert!(when.answers.iter().all(|value| when.detail.takes(*value)), "{slug}");
        }
    }

    #[test]
    fn a_detail_that_hangs_on_another_is_asked_only_then() {
        let body = Body::Stair(crate::element::Stair {
            foot: geometry::Pt::inches(0, 0),
            up: geometry::Facing::NORTH,
            width: measure::Len::inches(36),
            risers: 13,
            rise: measure::Len::inches(7),
            run: measure::Len::inches(10),
            headroom: measure::Len::inches(80),
        });
        let radius = &stair::WALKLINE_RADIUS;
        let kind = |word| Details::default().with(&stair::STAIR_KIND, Value::Word(word));
        assert!(!radius.is_asked(&body, &Details::default()));
        assert!(!radius.is_asked(&body, &kind("with winders")));
        assert!(radius.is_asked(&body, &kind("spiral")));
        assert!(asked(&body, &kind("spiral")).any(|d| d == radius));
    }

    #[test]
    fn what_is_assumed_could_be_stated() {
        for detail in all() {
            assert!(detail.assumed.is_none_or(|value| detail.takes(value)), "{}", detail.slug);
        }
    }
}
