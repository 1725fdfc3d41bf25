//! Gas valves that are not concealed.

use plan::Element;
use plan::element::{ServiceKind, ServicePoint};

use crate::{Check, Finding, Group, Rule, Sheet};

use super::buried;

pub(crate) const RULE: Rule = Rule {
    slug: "gas-valve-concealed",
    group: Group::Access,
    title: "Gas valves are not concealed",
    page: "\
What
No gas valve is in a concealed place.

Why
When gas is smelled, the valve must be shut without breaking a wall; and a leak in a closed cavity gathers.

Source
IRC G2420.1.2 and the fuel gas code's definition of a concealed place.

How it is measured
It hangs on a wall and its front lies in furring or a partition, or in a cavity that these close; or it is above a
board ceiling or in a soffit. A front that is flush with the finished face is free. Lay-in tiles lift out and do not
count.

Cannot see
Whether an access opening is large enough for hands and tools, and finish that is not drawn.

Exceptions
Behind a panel or a door that comes off easily, above lay-in tiles, or behind an appliance that can be moved, a valve
is not concealed.

Remedies
Provide an access opening: 12 in by 12 in, or as large as the thing where that is larger (common practice, no source).
",
    cites: &["gas-valve-concealed"],
    check: Check::Services(&[ServiceKind::GasValve], &[], check),
    remedies: Some(buried::remedies),
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let why = "When gas is smelled, the valve must be shut without breaking a wall.";
    let citation = sheet.book.cite("gas-valve-concealed");
    out.extend(buried::finding(sheet, RULE.slug, citation, element, service, why));
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::element::{AccessOpening, Mount, RoomUse, ServiceKind};
    use plan::{CeilingBuild, ElementId};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "gas-valve-concealed";

    /// On the south wall, its front `deep` before the concrete, in a room of an office; furring of 4 1/2 in there where wanted.
    fn on_the_wall(kind: ServiceKind, deep: Len, furred: bool) -> Sample {
        let sample = Sample::room(144.0, 120.0).tag(at(72.0, 60.0), "Office", RoomUse::Office);
        let sample = if furred { sample.furring(ElementId(1)) } else { sample };
        sample
            .service(kind, at(72.0, 0.0), Facing::NORTH)
            .tune_service(|s| (s.mount, s.depth, s.bottom) = (Mount::Wall, deep, inch(30.0)))
    }

    #[test]
    fn clear_pass() {
        on_the_wall(ServiceKind::GasValve, inch(4.0), false).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = on_the_wall(ServiceKind::GasValve, inch(4.0), true);
        sample.expect(SLUG, &["correction, measured behind furring, required an access opening"]);
        let remedies = sample.remedies(SLUG);
        assert_eq!(remedies, ["Provide an access opening of 12\" × 12\" for gas valve S7"]);
    }

    #[test]
    fn at_the_limit() {
        // Flush with the finished face, and a unit behind it.
        on_the_wall(ServiceKind::GasValve, inch(4.5), true).expect_none(SLUG);
        assert_eq!(
            on_the_wall(ServiceKind::GasValve, inch(4.5) - Len::UNIT, true).findings(SLUG).len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        on_the_wall(ServiceKind::HoseBibValve, inch(4.0), true).expect_none(SLUG);
    }

    /// services.md T7 AX10: gas valve behind a snap-out panel, same room.
    #[test]
    fn behind_an_access_opening_it_is_reached() {
        on_the_wall(ServiceKind::GasValve, inch(4.0), true)
            .tune_service(|s| {
                s.access = Some(AccessOpening { width: inch(12.0), height: inch(12.0) });
            })
            .expect_none(SLUG);
    }

    #[test]
    fn above_the_ceiling() {
        let above = |ceiling| {
            on_the_wall(ServiceKind::GasValve, inch(4.0), false)
                .site(|s| s.ceiling = ceiling)
                .tune_service(|s| s.bottom += inch(66.0))
        };
        above(CeilingBuild::Board(inch(0.5))).expect(
            SLUG,
            &["correction, measured above the board ceiling, required an access opening"],
        );
        above(CeilingBuild::LayIn(inch(4.0))).expect_none(SLUG);
        above(CeilingBuild::Open).expect_none(SLUG);
    }
}
