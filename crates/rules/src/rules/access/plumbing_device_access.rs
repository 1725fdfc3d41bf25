//! Plumbing devices that can be reached.

use plan::Element;
use plan::element::{ServiceKind, ServicePoint};

use super::buried;
use crate::{Check, Confidence, Finding, Group, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "plumbing-device-access",
    group: Group::Access,
    title: "Plumbing devices are not buried",
    page: "\
What
Backflow preventers, backwater valves, air admittance valves and standpipes can be reached; a pressure reducer should.

Why
Each of them has a part that wears out or clogs, and is found too late behind board.

Source
IRC P2902.6, P3008.4, P3114.5 and P2706.1: 2018 to 2024; for a pressure reducer common practice.

How it is measured
It hangs on a wall and its front lies in furring or a partition, or in a cavity that these close; or it is above a board
ceiling or in a soffit. A front that is flush with the finished face is free. Lay-in tiles lift out and do not count.

Cannot see
Whether an access opening is large enough for hands and tools, and finish that is not drawn.

Exceptions
None.

Remedies
Provide an access opening: 12 in by 12 in, or as large as the thing where that is larger (common practice, no source).
",
    cites: &["pressure-reducer-access", "backflow-access", "air-valve-access", "backwater-valve-access", "standpipe-access"],
    check: Check::Services(&[ServiceKind::PressureReducer, ServiceKind::BackflowPreventer, ServiceKind::AirAdmittanceValve, ServiceKind::BackwaterValve, ServiceKind::Standpipe], &[], check),
    remedies: Some(buried::remedies),
};

const KINDS: &[(ServiceKind, &str)] = &[
    (ServiceKind::PressureReducer, "pressure-reducer-access"),
    (ServiceKind::BackflowPreventer, "backflow-access"),
    (ServiceKind::AirAdmittanceValve, "air-valve-access"),
    (ServiceKind::BackwaterValve, "backwater-valve-access"),
    (ServiceKind::Standpipe, "standpipe-access"),
];

fn check(sheet: &Sheet<'_>, element: &Element, service: &ServicePoint, out: &mut Vec<Finding>) {
    let why = "It has a part that wears out or clogs, and is found too late behind board.";
    let Some((_, slug)) = KINDS.iter().find(|(kind, _)| *kind == service.kind) else { return };
    let citation = sheet.book.cite(slug);
    let practice = citation.confidence == Confidence::Practice;
    let found = buried::finding(sheet, RULE.slug, citation, element, service, why);
    out.extend(found.map(|finding| match practice {
        true => Finding { severity: Severity::Advice, ..finding },
        false => finding,
    }));
}

#[cfg(test)]
mod tests {

    use geometry::Facing;
    use measure::Len;
    use plan::element::{Mount, RoomUse};
    use plan::{Edition, ElementId};

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "plumbing-device-access";

    /// On a furred wall of an office, its front so far before the concrete.
    fn furred(kind: ServiceKind, deep: Len) -> Sample {
        Sample::room(144.0, 120.0)
            .tag(at(72.0, 60.0), "Office", RoomUse::Office)
            .furring(ElementId(1))
            .service(kind, at(72.0, 0.0), Facing::NORTH)
            .tune_service(|s| (s.mount, s.depth, s.bottom) = (Mount::Wall, deep, inch(30.0)))
    }

    #[test]
    fn clear_pass() {
        for (kind, _) in KINDS {
            furred(*kind, inch(5.0)).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            for (kind, slug) in KINDS {
                let severity = match kind {
                    ServiceKind::PressureReducer => "advice",
                    _ => "correction",
                };
                let buried = furred(*kind, inch(4.0)).edition(edition);
                let said =
                    format!("{severity}, measured behind furring, required an access opening");
                buried.expect(SLUG, &[&said]);
                assert_eq!(buried.findings(SLUG)[0].citation.slug, *slug);
            }
        }
    }

    #[test]
    fn at_the_limit() {
        furred(ServiceKind::BackflowPreventer, inch(4.5)).expect_none(SLUG);
        let deeper = furred(ServiceKind::BackflowPreventer, inch(4.5) - Len::UNIT);
        assert_eq!(deeper.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        furred(ServiceKind::GasValve, inch(4.0)).expect_none(SLUG);
    }
}
