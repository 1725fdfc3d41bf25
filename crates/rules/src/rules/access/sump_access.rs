//! Sump and ejector pits that nothing stands on.

use plan::Element;
use plan::element::{ServiceKind, ServicePoint};

use crate::{Check, Finding, Group, Rule, Sheet};

use super::in_floor;

pub(crate) const RULE: Rule = Rule {
    slug: "sump-access",
    group: Group::Access,
    title: "Nothing stands on a sump or ejector pit",
    page: "\
What
A sump pit or an ejector pit can be reached and its cover taken off.

Why
A pump lasts some ten years and fails in the night of the big rain. It must come out straight up.

Source
IRC P3303.1.2 for sumps, P3007.3.2 for ejectors.

How it is measured
A wall, a column, a step, an appliance or a furnishing stands on a part of the pit's cover. What touches its edge does not.

Cannot see
The height that it takes to lift the pump out, and flooring laid over the cover.

Exceptions
Furniture that can be pushed aside makes the finding one to verify.

Remedies
None is offered: move the wall or the appliance off the cover.
",
    cites: &["sump-access", "ejector-access"],
    check: Check::Services(&[ServiceKind::Sump, ServiceKind::Ejector], &[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let why = "A pump fails in the night of the big rain, and must come out straight up.";
    let citation = match service.kind {
        ServiceKind::Sump => sheet.book.cite("sump-access"),
        ServiceKind::Ejector => sheet.book.cite("ejector-access"),
        _ => return,
    };
    out.extend(in_floor::findings(sheet, RULE.slug, &citation, element, service, why));
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "sump-access";

    /// A pit 20 in square from y = 60 to y = 80, and a partition whose south face is at `y`.
    fn beside_a_partition(kind: ServiceKind, y: Len) -> Sample {
        Sample::room(144.0, 160.0)
            .service(kind, at(72.0, 60.0), Facing::NORTH)
            .tune_service(|s| (s.width, s.depth) = (inch(20.0), inch(20.0)))
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        beside_a_partition(ServiceKind::Sump, inch(100.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let said = ["correction, measured under partition W6, required nothing on it"];
        beside_a_partition(ServiceKind::Sump, inch(70.0)).expect(SLUG, &said);
        let ejector = beside_a_partition(ServiceKind::Ejector, inch(70.0));
        ejector.expect(SLUG, &said);
        assert_eq!(ejector.findings(SLUG)[0].citation.text, "2021 IRC P3007.3.2");
    }

    #[test]
    fn at_the_limit() {
        beside_a_partition(ServiceKind::Sump, inch(80.0)).expect_none(SLUG);
        let over = beside_a_partition(ServiceKind::Sump, inch(80.0) - Len::UNIT);
        assert_eq!(over.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        beside_a_partition(ServiceKind::RadonPipe, inch(70.0)).expect_none(SLUG);
    }
}
