//! A basement without a way down.

use plan::Body;
use plan::detail::Value;
use plan::detail::ways::ARRIVAL;

use super::is_kind;
use crate::rules::rooms::uses::habitable;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "way-down",
    group: Group::Stairs,
    title: "The way down",
    page: "\
What
A basement to live in is reached by a stair or a ramp; a ladder is not enough.

Why
What has no stair has no way out.

Source
IRC R311.4 (2018, 2021), R318.4 (2024).

How it is measured
Once a room to live in is tagged: a standing stair, a door that leads outdoors, or a room or door of which it is stated that people
come in there. A stair under a bulkhead is stated not to be the way out and doesn't count.

Cannot see
A way down that is not drawn.

Exceptions
None.

Remedies
Draw the stair, or state under Details where people come in.
",
    cites: &["way-down"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "What has no stair has no way out.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let Some(room) = sheet.facts.rooms.iter().find(|room| habitable(room.room_use)) else { return };
    let leads = sheet.facts.standing(ARRIVAL.kinds()).any(|e| {
        let stated = e.stated(&ARRIVAL).and_then(Value::yes) == Some(true);
        stated
            || match &e.body {
                Body::Stair(_) => !is_kind(sheet, e, "under a bulkhead"),
                Body::Opening(o) => {
                    o.door().is_some() && sheet.facts.opening(e.id).is_some_and(|f| f.outside)
                }
                _ => false,
            }
    });
    if leads {
        return;
    }
    let words = |text: &str| Quantity::Words(text.to_owned());
    let title = Phrase::text("No way down to the basement is drawn");
    let citation = sheet.book.cite("way-down");
    out.push(
        Finding::new(Severity::Verify, citation, RULE.slug, Vec::new(), title, WHY)
            .figures(words("none drawn"), words("a stair or a ramp"))
            .assuming("there is none that is not drawn")
            .at(Place::Label(room.index)),
    );
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "way-down";

    #[test]
    fn clear_pass() {
        Sample::with_room(RoomUse::Den).stair(at(72.0, 30.0), Facing::NORTH).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let den = Sample::with_room(RoomUse::Den).edition(edition);
            den.expect(SLUG, &["verify, measured none drawn, required a stair or a ramp"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A stated arrival is enough.
        Sample::with_room(RoomUse::Den).state(&ARRIVAL, Value::Yes).expect_none(SLUG);
        // A cellar stair under a bulkhead is not.
        let cellar = Sample::with_room(RoomUse::Den).stair(at(72.0, 30.0), Facing::NORTH);
        let kind = Value::Word("under a bulkhead");
        let cellar = cellar.state(&plan::detail::stair::STAIR_KIND, kind);
        assert_eq!(cellar.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Storage).expect_none(SLUG);
    }
}
