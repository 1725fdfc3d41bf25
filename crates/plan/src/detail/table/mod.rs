//! The details there are, a file for each family.

pub mod electrical;
pub mod heat;
pub mod opening;
pub mod overhead;
pub mod plumbing;
pub mod room;
pub mod site;
pub mod stair;
pub mod wall;
pub mod ways;

use super::{Detail, Kind, Subject, Value};
use crate::bounds::{Bound, CountBound};
use crate::element::{Body, ServiceKind};

/// Every family with what it is about, in the order shown.
pub(super) const FAMILIES: &[(&str, &[&Detail])] = &[
    ("The house and its site", site::ALL),
    ("Foundation walls, partitions, furring", wall::ALL),
    ("Doors, windows and wells", opening::ALL),
    ("Stairs", stair::ALL),
    ("Beams, ducts, pipes and soffits", overhead::ALL),
    ("Outlets, switches, lights, alarms, panels", electrical::ALL),
    ("Heating and ducts", heat::ALL),
    ("Water, drains and gas", plumbing::ALL),
    ("Rooms", room::ALL),
    ("Ways in", ways::ALL),
];

/// A detail that is there or not.
const fn yes_no(
    slug: &'static str,
    of: Subject,
    word: &'static str,
    asks: &'static str,
    assumed: Option<Value>,
) -> Detail {
    Detail { slug, of, word, asks, kind: Kind::YesNo, assumed, when: None }
}

/// A detail that is one of several words.
const fn choice(
    slug: &'static str,
    of: Subject,
    word: &'static str,
    asks: &'static str,
    words: &'static [&'static str],
    assumed: Option<&'static str>,
) -> Detail {
    let assumed = match assumed {
        Some(word) => Some(Value::Word(word)),
        None => None,
    };
    Detail { slug, of, word, asks, kind: Kind::Choice(words), assumed, when: None }
}

/// A detail that is a length.
const fn length(
    slug: &'static str,
    of: Subject,
    word: &'static str,
    asks: &'static str,
    bound: Bound,
    assumed: Option<Value>,
) -> Detail {
    Detail { slug, of, word, asks, kind: Kind::Length(bound), assumed, when: None }
}

/// A detail that is a whole number in a unit.
const fn number(
    slug: &'static str,
    of: Subject,
    word: &'static str,
    asks: &'static str,
    (bound, unit): (CountBound, &'static str),
    assumed: Option<u32>,
) -> Detail {
    let assumed = match assumed {
        Some(n) => Some(Value::Number(n)),
        None => None,
    };
    Detail { slug, of, word, asks, kind: Kind::Number(bound, unit), assumed, when: None }
}

/// Whether an element is a service point of one of some kinds.
fn is_service(body: &Body, kinds: &[ServiceKind]) -> bool {
    matches!(body, Body::Service(s) if kinds.contains(&s.kind))
}
