//! Bath fixtures, which the plan knows by the names of their boxes.

use geometry::{Facing, Placed, Pt, gap};
use measure::Len;
use plan::element::{BodyKind, Furnishing};
use plan::{Body, Element, State};

use space::{Facts, RoomIndex, clear_span};

use crate::Sheet;

/// A kind of bath fixture.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Fixture {
    Toilet,
    Basin,
    Tub,
    Shower,
}

impl Fixture {
    /// By the words of its name, as the kit offers them or as others call the thing.
    pub(crate) fn of(thing: &Furnishing) -> Option<Fixture> {
        if thing.is_called(&["shower"]) {
            Some(Fixture::Shower)
        } else if thing.is_called(&["toilet", "wc"]) {
            Some(Fixture::Toilet)
        } else if thing.is_called(&["tub", "bathtub"]) {
            Some(Fixture::Tub)
        } else if thing.is_called(&["basin", "lavatory", "vanity", "sink"]) {
            Some(Fixture::Basin)
        } else {
            None
        }
    }
}

/// Whether a furnishing is, by its name, taken for a toilet, basin, tub or shower.
pub fn is_fixture(thing: &Furnishing) -> bool {
    Fixture::of(thing).is_some()
}

/// A standing fixture and what it is.
pub(crate) type Fitted<'a> = (&'a Element, &'a Furnishing, Fixture);

/// Every standing fixture of the plan, by its place in the plan's list.
pub(crate) fn standing(facts: &Facts) -> Vec<(u32, Fixture)> {
    let places = facts.places(BodyKind::Furnishing).iter().copied();
    places
        .filter_map(|place| match &facts.element_at(place).body {
            Body::Furnishing(f) => Some((place, Fixture::of(f)?)),
            _ => None,
        })
        .collect()
}

/// An element as a new fixture, where it is one.
pub(super) fn fixture(element: &Element) -> Option<Fitted<'_>> {
    match &element.body {
        Body::Furnishing(f) if element.state == State::New => Some((element, f, Fixture::of(f)?)),
        _ => None,
    }
}

/// Whether a basin, tub or shower of a room is no farther from a thing than `reach`.
pub(crate) fn near_water(sheet: &Sheet<'_>, room: RoomIndex, thing: &[Pt], reach: Len) -> bool {
    let wet = sheet.fixtures().filter(|(.., kind)| *kind != Fixture::Toilet);
    wet.map(|(_, f, _)| f.placed()).any(|placed| {
        sheet.facts.room_at(placed.centre()) == Some(room)
            && gap(&placed.corners(), thing).len <= reach
    })
}

/// The nearest thing beside a fixture: how far it is from the fixture's middle, square to its facing and over its whole
/// depth, and on which side.
pub(super) fn beside(sheet: &Sheet<'_>, element: &Element, fixture: &Furnishing) -> (Len, Facing) {
    let placed = fixture.placed();
    // What stands beside the box, from its back edge to its front.
    let back = Placed { depth: Len::ZERO, ..placed };
    let span = clear_span(sheet.facts, back, placed.depth, heights(sheet), &[element.id]);
    match span.left <= span.right {
        true => (span.left, placed.facing.left()),
        false => (span.right, placed.facing.right()),
    }
}

/// The heights between which a thing stands in a person's way: above a mat, below the head.
pub(super) fn heights(sheet: &Sheet<'_>) -> (Len, Len) {
    let floor = sheet.plan().site.floor_build;
    (floor + Len::inches(1), floor + Len::inches(60))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(name: &str) -> Option<Fixture> {
        let (width, depth, height) = (Len::inches(24), Len::inches(24), Len::inches(30));
        Fixture::of(&Furnishing {
            name: name.to_owned(),
            at: Pt::default(),
            facing: Facing::NORTH,
            width,
            depth,
            height,
            fixed: false,
        })
    }

    #[test]
    fn fixtures_are_known_by_their_names() {
        assert_eq!(named("toilet"), Some(Fixture::Toilet));
        assert_eq!(named("Wash basin"), Some(Fixture::Basin));
        assert_eq!(named("bath tub"), Some(Fixture::Tub));
        assert_eq!(named("corner shower"), Some(Fixture::Shower));
        assert_eq!(named("table"), None);
        assert_eq!(named("tubular shelf"), None);
    }
}
