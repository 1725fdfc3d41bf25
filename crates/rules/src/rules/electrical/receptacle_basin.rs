//! Receptacle near a basin.

use plan::element::{BodyKind, Furnishing, RoomUse, ServiceKind};

use super::near_thing;
use crate::rules::build::fixtures::Fixture;
use crate::{Check, Finding, Group, On, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "receptacle-basin",
    group: Group::Electrical,
    title: "Receptacle near a basin",
    page: "\
What
A bath has a receptacle within 3 ft of the outside edge of each basin, on a wall or the side of a cabinet.

Why
A cord that hangs across the basin ends in it.

Source
NEC 210.52(D), 210.11(C)(3): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
Straight from the box of the basin to the nearest receptacle of the same room; basins are known by their names (basin, lavatory, vanity, sink).

Cannot see
Circuits.

Exceptions
None.

Remedies
Set one beside the basin.
",
    cites: &["receptacle-basin"],
    check: Check::Plan(&[On::Kind(BodyKind::Furnishing), On::Service(ServiceKind::Receptacle)], check),
    remedies: None,
};

const WHY: &str = "A cord that hangs across the basin ends in it.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    near_thing::look(sheet, out, RULE.slug, WHY, |thing| is_basin(sheet, thing));
}

/// Whether a thing is the basin of a bath.
fn is_basin(sheet: &Sheet<'_>, thing: &Furnishing) -> bool {
    let room = || sheet.facts.room_at(thing.placed().centre());
    Fixture::of(thing) == Some(Fixture::Basin)
        && room().is_some_and(|room| sheet.facts.room(room).room_use == RoomUse::Bath)
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "receptacle-basin";

    /// A basin 24 in wide in the south-west corner, a receptacle whose near edge is `off` from it.
    fn room(off: f64) -> Sample {
        let room = Sample::room(240.0, 120.0).tag(at(120.0, 90.0), "Room", RoomUse::Bath);
        room.furnishing(at(12.0, 0.0), Facing::NORTH, 24.0, 24.0)
            .tune(|e| match &mut e.body {
                plan::Body::Furnishing(f) => f.name = "basin".to_owned(),
                other => panic!("{}", other.word()),
            })
            .service(ServiceKind::Receptacle, at(24.0 + off + 1.5, 0.0), Facing::NORTH)
            .fresh()
    }

    #[test]
    fn clear_pass() {
        room(12.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let far = room(44.0).edition(edition);
            far.expect(SLUG, &["correction, measured 44\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        room(36.0).expect_none(SLUG);
        assert_eq!(room(36.0 + 1.0 / 64.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        // No receptacle is drawn, or it is another thing.
        Sample::with_room(RoomUse::Bath)
            .furnishing(at(12.0, 0.0), Facing::NORTH, 24.0, 24.0)
            .expect_none(SLUG);
        let shelf = Sample::room(240.0, 120.0).tag(at(120.0, 90.0), "Room", RoomUse::Bath);
        shelf
            .furnishing(at(12.0, 0.0), Facing::NORTH, 24.0, 24.0)
            .service(ServiceKind::Receptacle, at(200.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }
}
