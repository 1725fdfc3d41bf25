//! Receptacle near a washer.

use plan::element::{BodyKind, Furnishing, ServiceKind};

use super::near_thing;
use crate::{Check, Finding, Group, On, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "receptacle-washer",
    group: Group::Electrical,
    title: "Receptacle near a washer",
    page: "\
What
A receptacle for a machine in a fixed place is within 6 ft of it; that of a laundry is on a 20 A circuit of its own.

Why
A cord across the floor, or one that is lengthened, is where a fire begins.

Source
NEC 210.50(C), 210.52(F), 210.11(C)(2): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
Straight from the box of the washer or dryer to the nearest receptacle of the same room; machines are known by their names (washer, dryer).

Cannot see
Circuits.

Exceptions
Machines that are wired in.

Remedies
Set one behind or beside the machine.
",
    cites: &["receptacle-washer"],
    check: Check::Plan(&[On::Kind(BodyKind::Furnishing), On::Service(ServiceKind::Receptacle)], check),
    remedies: None,
};

const WHY: &str = "A cord across the floor, or one that is lengthened, is where a fire begins.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    near_thing::look(sheet, out, RULE.slug, WHY, is_machine);
}

/// Whether a thing is a washer or dryer, by the words of its name.
fn is_machine(thing: &Furnishing) -> bool {
    thing.is_called(&["washer", "dryer", "washing"])
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::element::{RoomUse, ServiceKind};

    use crate::testing::{Sample, at};

    const SLUG: &str = "receptacle-washer";

    /// A washer 24 in wide in the south-west corner, a receptacle whose near edge is `off` from it.
    fn room(off: f64) -> Sample {
        let room = Sample::room(240.0, 120.0).tag(at(120.0, 90.0), "Room", RoomUse::Laundry);
        room.furnishing(at(12.0, 0.0), Facing::NORTH, 24.0, 24.0)
            .tune(|e| match &mut e.body {
                plan::Body::Furnishing(f) => f.name = "washer".to_owned(),
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
            let far = room(80.0).edition(edition);
            far.expect(SLUG, &["correction, measured 80\", required 72\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        room(72.0).expect_none(SLUG);
        assert_eq!(room(72.0 + 1.0 / 64.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        // No receptacle is drawn, or it is another thing.
        Sample::with_room(RoomUse::Laundry)
            .furnishing(at(12.0, 0.0), Facing::NORTH, 24.0, 24.0)
            .expect_none(SLUG);
        let shelf = Sample::room(240.0, 120.0).tag(at(120.0, 90.0), "Room", RoomUse::Laundry);
        shelf
            .furnishing(at(12.0, 0.0), Facing::NORTH, 24.0, 24.0)
            .service(ServiceKind::Receptacle, at(200.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
    }
}
