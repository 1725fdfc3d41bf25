//! Junction boxes that can be reached.

use plan::Element;
use plan::element::{ServiceKind, ServicePoint};

use crate::{Check, Finding, Group, Rule, Sheet};

use super::buried;

pub(crate) const RULE: Rule = Rule {
    slug: "junction-box-access",
    group: Group::Access,
    title: "Junction boxes are not buried",
    page: "\
What
Every junction box can be reached without taking the building or its finish apart.

Why
A splice that works loose gets hot. It must be found and opened without a saw.

Source
NEC 314.29.

How it is measured
Its bottom is not below the face of the board ceiling, or it is in a soffit, or its front lies in a wall. In an
unfinished room the joists are taken to be open. Lay-in tiles lift out and do not count.

Cannot see
Whether an access opening is large enough for hands and tools, and finish that is not drawn.

Exceptions
Above lay-in tiles, behind a framed access door or under a blank cover on the finished face a box can be reached. What
slides away in front of it does not bury it.

Remedies
Provide an access opening: 12 in by 12 in, or as large as the thing where that is larger (common practice, no source).
",
    cites: &["junction-box-access"],
    check: Check::Services(&[ServiceKind::JunctionBox], &[], check),
    remedies: Some(buried::remedies),
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let why = "A splice that works loose gets hot: it must be found and opened without a saw.";
    let citation = sheet.book.cite("junction-box-access");
    out.extend(buried::finding(sheet, RULE.slug, citation, element, service, why));
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::CeilingBuild;
    use plan::element::{AccessOpening, RoomUse, ServiceKind};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "junction-box-access";

    /// Between the joists over an office, whose ceiling is at 95 1/2 in under board.
    fn overhead(kind: ServiceKind, bottom: Len, ceiling: CeilingBuild) -> Sample {
        Sample::room(144.0, 120.0)
            .tag(at(72.0, 60.0), "Office", RoomUse::Office)
            .site(|s| s.ceiling = ceiling)
            .service(kind, at(72.0, 60.0), Facing::NORTH)
            .tune_service(|s| (s.bottom, s.height) = (bottom, inch(4.0)))
    }

    const BOARD: CeilingBuild = CeilingBuild::Board(Len::sixty_fourths(32));

    #[test]
    fn clear_pass() {
        overhead(ServiceKind::JunctionBox, inch(96.0), CeilingBuild::Open).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = overhead(ServiceKind::JunctionBox, inch(96.0), BOARD);
        sample.expect(
            SLUG,
            &["correction, measured above the board ceiling, required an access opening"],
        );
        let remedies = sample.remedies(SLUG);
        assert_eq!(remedies, ["Provide an access opening of 12\" × 12\" for junction box S6"]);
    }

    #[test]
    fn at_the_limit() {
        // Its bottom at the ceiling's face is above it; a unit lower it shows.
        assert_eq!(overhead(ServiceKind::JunctionBox, inch(95.5), BOARD).findings(SLUG).len(), 1);
        overhead(ServiceKind::JunctionBox, inch(95.5) - Len::UNIT, BOARD).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        overhead(ServiceKind::Disconnect, inch(96.0), BOARD).expect_none(SLUG);
    }

    /// services.md T7 AX13: above lay-in tile OK, above drywall ERR.
    #[test]
    fn lay_in_tiles_lift_out() {
        overhead(ServiceKind::JunctionBox, inch(96.0), CeilingBuild::LayIn(inch(4.0)))
            .expect_none(SLUG);
    }

    #[test]
    fn behind_an_access_opening_it_is_reached() {
        overhead(ServiceKind::JunctionBox, inch(96.0), BOARD)
            .tune_service(|s| {
                s.access = Some(AccessOpening { width: inch(12.0), height: inch(12.0) });
            })
            .expect_none(SLUG);
    }
}
