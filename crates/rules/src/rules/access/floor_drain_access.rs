//! Floor drains that nothing stands on.

use plan::Element;
use plan::element::{ServiceKind, ServicePoint};

use crate::{Check, Finding, Group, Rule, Sheet};

use super::in_floor;

pub(crate) const RULE: Rule = Rule {
    slug: "floor-drain-access",
    group: Group::Access,
    title: "Nothing stands on a floor drain",
    page: "\
What
The inlet of a floor drain can be reached, its strainer lifts out, and nothing permanent stands on it.

Why
When the water heater lets go, the drain under the new wall is the one that was to save the floor.

Source
IRC P2719.1.

How it is measured
A wall, a column, a step, an appliance or a furnishing stands on a part of the drain. What touches its edge does not.

Cannot see
Flooring laid over the drain, and whether the slab falls towards it.

Exceptions
Furniture that can be pushed aside makes the finding one to verify.

Remedies
None is offered: move the wall or the appliance off the drain.
",
    cites: &["floor-drain-access"],
    check: Check::Services(&[ServiceKind::FloorDrain], &[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let why = "When the water heater lets go, the drain is what saves the floor.";
    let citation = sheet.book.cite("floor-drain-access");
    out.extend(in_floor::findings(sheet, RULE.slug, &citation, element, service, why));
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "floor-drain-access";

    /// A drain 8 in square from y = 60 to y = 68, and a partition whose south face is at `y`.
    fn beside_a_partition(kind: ServiceKind, y: Len) -> Sample {
        Sample::room(144.0, 120.0)
            .service(kind, at(72.0, 60.0), Facing::NORTH)
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        beside_a_partition(ServiceKind::FloorDrain, inch(90.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        beside_a_partition(ServiceKind::FloorDrain, inch(62.0))
            .expect(SLUG, &["correction, measured under partition W6, required nothing on it"]);
    }

    #[test]
    fn at_the_limit() {
        beside_a_partition(ServiceKind::FloorDrain, inch(68.0)).expect_none(SLUG);
        let over = beside_a_partition(ServiceKind::FloorDrain, inch(68.0) - Len::UNIT);
        assert_eq!(over.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        beside_a_partition(ServiceKind::Cleanout, inch(62.0)).expect_none(SLUG);
    }

    #[test]
    fn a_water_heater_on_it_and_a_loose_shelf_on_it() {
        let drain = Sample::room(144.0, 120.0).service(
            ServiceKind::FloorDrain,
            at(72.0, 60.0),
            Facing::NORTH,
        );
        drain
            .clone()
            .service(ServiceKind::WaterHeater, at(72.0, 50.0), Facing::NORTH)
            .expect(SLUG, &["verify, measured under water heater S6, required nothing on it"]);
        drain
            .furnishing(at(72.0, 50.0), Facing::NORTH, 30.0, 20.0)
            .expect(SLUG, &["verify, measured under shelf B6, required nothing on it"]);
    }
}
