//! A door between a garage and the house.

use plan::ElementId;
use plan::detail::Value;
use plan::detail::opening::{CLOSES_ITSELF, LEAF_MADE_OF};

use super::garage::doors;
use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::{Demand, is_new, judge, state_all};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "garage-door",
    group: Group::Build,
    title: "Door between a garage and the house",
    page: "\
What
A door between a garage and the house has a leaf of solid wood or of steel, 1 3/8 in thick, or one rated for 20 minutes; it closes by
itself.

Why
It keeps a fire in the garage out of the house for as long as it takes to leave.

Source
IRC R302.5.1: 2018 to 2024.

How it is measured
A cased opening is a correction. A new door by what is stated of it, between a room that is used as a garage and another. It is asked for until it is stated.

Cannot see
The frame, the seals and the label. Some places do not ask that it closes by itself.

Exceptions
None.

Remedies
A solid or rated leaf with a closer.
",
    cites: &["garage-door", "garage-door-closes"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| {
        if finding.elements.iter().any(|id| sheet.facts.is_cased(*id)) {
            return Vec::new();
        }
        let mut remedies = state_all(finding, sheet, &LEAF_MADE_OF, Value::Word(SOLID[0]));
        remedies.extend(state_all(finding, sheet, &CLOSES_ITSELF, Value::Yes));
        remedies
    }),
};

const WHY: &str =
    "It keeps a fire in the garage out of the house for as long as it takes to leave.";
const SOLID: &[&str] = &["solid wood 1 3/8 in", "steel 1 3/8 in", "rated 20 minutes"];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (door, _) in doors(sheet).filter(|(door, _)| sheet.facts.is_cased(door.id)) {
        let title = format!("{} has no leaf towards the garage", capital(&called(sheet, door.id)));
        let citation = sheet.book.cite("garage-door");
        let words = |text: &str| Quantity::Words(text.to_owned());
        out.push(
            Finding::new(
                Severity::Correction,
                citation,
                RULE.slug,
                vec![door.id],
                Phrase::text(title),
                WHY,
            )
            .figures(words("open"), words("a door"))
            .at(Place::Along(door.id)),
        );
    }
    let ids: Vec<ElementId> = doors(sheet).map(|(door, _)| door.id).collect();
    let leaves = || {
        let elements = ids.iter().filter(|id| !sheet.facts.is_cased(**id));
        elements.filter_map(|id| sheet.plan().get(*id)).filter(|e| is_new(sheet, e))
    };
    let demand = |detail, fault, required: &str| Demand {
        rule: RULE.slug,
        detail,
        fault,
        many: "doors",
        why: WHY,
        required: Quantity::Words(required.to_owned()),
        advice: false,
    };
    let leaf = demand(&LEAF_MADE_OF, "Leaf too light for a garage", "solid, or rated 20 minutes");
    judge(sheet, out, &sheet.book.cite("garage-door"), &leaf, leaves(), |a| a.is(SOLID));
    let closer = demand(&CLOSES_ITSELF, "Door to the garage stays open", "closes by itself");
    judge(sheet, out, &sheet.book.cite("garage-door-closes"), &closer, leaves(), |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::RoomUse;

    use plan::element::DoorOperation;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "garage-door";

    /// A garage in the west, a room of this use in the east, and a door between them.
    fn beside(room_use: RoomUse) -> Sample {
        let sample = Sample::room(240.0, 120.0)
            .tag(at(60.0, 60.0), "Garage", RoomUse::Garage)
            .tag(at(180.0, 60.0), "Room", room_use)
            .partition(at(120.0, 0.0), at(120.0, 120.0));
        let wall = sample.last();
        sample.door(wall, 40.0, 32.0)
    }

    fn stated(leaf: &'static str, closes: Value) -> Sample {
        beside(RoomUse::Hall).state(&LEAF_MADE_OF, Value::Word(leaf)).state(&CLOSES_ITSELF, closes)
    }

    #[test]
    fn clear_pass() {
        stated("solid wood 1 3/8 in", Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            stated("hollow or thinner", Value::No).edition(edition).expect(
                SLUG,
                &[
                    "correction, measured hollow or thinner, required solid, or rated 20 minutes",
                    "correction, measured no, required closes by itself",
                ],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        for leaf in SOLID {
            stated(leaf, Value::Yes).expect_none(SLUG);
        }
        assert_eq!(stated("hollow or thinner", Value::Yes).findings(SLUG).len(), 1);
    }

    #[test]
    fn an_opening_without_a_leaf_is_no_door() {
        let open = beside(RoomUse::Hall).tune_door(|d| d.operation = DoorOperation::Cased);
        open.expect(SLUG, &["correction, measured open, required a door"]);
        assert!(open.remedies(SLUG).is_empty());
    }

    #[test]
    fn it_is_asked_for() {
        let open = beside(RoomUse::Hall).findings(SLUG);
        assert!(open.iter().all(|f| f.severity == crate::Severity::Verify));
        assert_eq!(open.len(), 2);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_door().expect_none(SLUG);
        beside(RoomUse::Hall).existing().expect_none(SLUG);
    }
}
