//! Working space at a disconnect.

use plan::Element;
use plan::element::{ServiceKind, ServicePoint};

use crate::rules::rooms::words::called;
use crate::{Check, Finding, Group, Rule, Sheet};

use super::clear_box::{self, Demand};

use super::keep::KEEP;

pub(crate) const RULE: Rule = Rule {
    slug: "disconnect-space",
    group: Group::Access,
    title: "Working space at a disconnect",
    page: "\
What
Before a disconnect there is the same working space as before a panel: 36 in deep and 30 in wide.

Why
A disconnect is often worked on while one side of it is live.

Source
NEC 110.26(A), for equipment that is likely to be examined, adjusted or serviced while it is live.

How it is measured
As at a panel: the space must cover the disconnect's face, need not be centred, and reaches from the floor to 6 ft 6 in.

Cannot see
Whether anyone works on it while it is live: so the finding is always one to verify. The height over the space.

Exceptions
Equipment that is never worked on live is not held to it in every place.

Remedies
Move the partition or the furnishing that stands in the way by what is missing.
",
    cites: &["disconnect-space", "panel-width", "panel-depth", "panel-height", "panel-projection"],
    check: Check::Services(&[ServiceKind::Disconnect], KEEP, check),
    remedies: Some(clear_box::remedies),
};

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let Some(keep) = sheet.keep(element.id) else { return };
    let demand = Demand {
        slug: RULE.slug,
        citation: sheet.book.cite("disconnect-space"),
        space: keep.space,
        title: format!("Too little space before {}", called(sheet, element.id)),
        why: "A disconnect is often worked on while one side of it is live.",
    };
    let finding = clear_box::finding(sheet, element, service, &keep.fit, demand);
    out.extend(finding.map(|f| f.assuming("it is worked on while it is live")));
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "disconnect-space";

    /// A disconnect 5 in deep and a partition `clear` before it.
    fn before_a_partition(kind: ServiceKind, clear: Len) -> Sample {
        let y = inch(5.0) + clear;
        Sample::room(144.0, 120.0)
            .service(kind, at(72.0, 0.0), Facing::NORTH)
            .tune_service(|s| s.depth = inch(5.0))
            .partition_by_left_face(Pt::at(inch(144.0), y), Pt::at(Len::ZERO, y))
    }

    #[test]
    fn clear_pass() {
        before_a_partition(ServiceKind::Disconnect, inch(50.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        let sample = before_a_partition(ServiceKind::Disconnect, inch(30.0));
        sample.expect(SLUG, &["verify, measured 30\", required 36\""]);
        assert_eq!(sample.findings(SLUG)[0].assumed, ["it is worked on while it is live"]);
    }

    #[test]
    fn at_the_limit() {
        before_a_partition(ServiceKind::Disconnect, inch(36.0)).expect_none(SLUG);
        before_a_partition(ServiceKind::Disconnect, inch(36.0) - Len::UNIT)
            .expect(SLUG, &["verify, measured 35 15/16\", required 36\""]);
    }

    #[test]
    fn does_not_apply() {
        before_a_partition(ServiceKind::FixtureValve, inch(10.0)).expect_none(SLUG);
    }
}
