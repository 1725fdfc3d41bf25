//! Volume dampers that can be reached.

use plan::element::{ServiceKind, ServicePoint};
use plan::{Edition, Element};

use crate::{Check, Finding, Group, Rule, Sheet};

use super::buried;

pub(crate) const RULE: Rule = Rule {
    slug: "damper-access",
    group: Group::Access,
    title: "Volume dampers are not buried",
    page: "\
What
Every volume damper can be reached.

Why
A damper that nobody can reach is never set, and the new room stays cold.

Source
IRC M1601.1.1, item 8, in the 2018 text. In a copy of the 2021 text the item is missing: from then on the finding is
one to verify.

How it is measured
Its bottom is not below the face of the board ceiling, or it is in a soffit, or its front lies in a wall. In an
unfinished room the joists are taken to be open. Lay-in tiles lift out and do not count.

Cannot see
Whether an access opening is large enough for hands and tools, and finish that is not drawn.

Exceptions
A register within arm's reach of the damper is commonly accepted.

Remedies
Provide an access opening: 12 in by 12 in, or as large as the thing where that is larger (common practice, no source).
",
    cites: &["damper-access"],
    check: Check::Services(&[ServiceKind::Damper], &[], check),
    remedies: Some(buried::remedies),
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let why = "A damper that nobody can reach is never set, and the new room stays cold.";
    let citation = sheet.book.cite("damper-access");
    let found = buried::finding(sheet, RULE.slug, citation, element, service, why);
    out.extend(found.map(|finding| match sheet.book.edition() {
        Edition::E2018 => finding,
        _ => finding.assuming("the place keeps the 2018 sentence about dampers"),
    }));
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::CeilingBuild;
    use plan::element::{AccessOpening, RoomUse, ServiceKind};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "damper-access";

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
        overhead(ServiceKind::Damper, inch(96.0), CeilingBuild::Open).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = overhead(ServiceKind::Damper, inch(96.0), BOARD);
        sample.expect(
            SLUG,
            &["verify, measured above the board ceiling, required an access opening"],
        );
        let remedies = sample.remedies(SLUG);
        assert_eq!(remedies, ["Provide an access opening of 12\" × 12\" for volume damper S6"]);
    }

    #[test]
    fn at_the_limit() {
        // Its bottom at the ceiling's face is above it; a unit lower it shows.
        assert_eq!(overhead(ServiceKind::Damper, inch(95.5), BOARD).findings(SLUG).len(), 1);
        overhead(ServiceKind::Damper, inch(95.5) - Len::UNIT, BOARD).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        overhead(ServiceKind::Panel, inch(96.0), BOARD).expect_none(SLUG);
    }

    /// services.md T7 AX13: above lay-in tile OK, above drywall ERR.
    #[test]
    fn lay_in_tiles_lift_out() {
        overhead(ServiceKind::Damper, inch(96.0), CeilingBuild::LayIn(inch(4.0))).expect_none(SLUG);
    }

    #[test]
    fn behind_an_access_opening_it_is_reached() {
        overhead(ServiceKind::Damper, inch(96.0), BOARD)
            .tune_service(|s| {
                s.access = Some(AccessOpening { width: inch(12.0), height: inch(12.0) });
            })
            .expect_none(SLUG);
    }

    #[test]
    fn in_2018_it_is_a_correction() {
        overhead(ServiceKind::Damper, inch(96.0), BOARD).edition(plan::Edition::E2018).expect(
            SLUG,
            &["correction, measured above the board ceiling, required an access opening"],
        );
    }
}
