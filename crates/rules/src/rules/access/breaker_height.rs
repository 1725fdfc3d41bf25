//! Greatest height of the breakers in an electrical panel.

use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};
use plan::element::ServiceKind;

use super::panel;

pub(crate) const RULE: Rule = Rule {
    slug: "breaker-height",
    group: Group::Access,
    title: "Height of the highest breaker",
    page: "\
What
The handle of the highest breaker, in its upper position, is at most 6 ft 7 in above the floor.

Why
In an emergency everyone in the house must reach the breakers without a stool.

Source
NEC 240.24(A) and 404.8(A).

How it is measured
From the finished floor to the top of the panel: where that is higher, a breaker may be. Where the panel's bottom is higher
too, a breaker is for sure.

Cannot see
Where in the panel the highest breaker sits.

Exceptions
Switches beside the motors or appliances that they serve.

Remedies
None is offered: an electrician lowers the panel.
",
    cites: &["breaker-height"],
    check: Check::Plan(&[On::Service(ServiceKind::Panel)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let floor = sheet.plan().site.floor_build;
    for (element, service) in panel::panels(sheet) {
        let limit = sheet.book.len("breaker-height");
        let bottom = service.bottom - floor;
        let top = bottom + service.height;
        if top <= limit.value {
            continue;
        }
        let for_sure = bottom > limit.value;
        let finding = Finding::new(
            Severity::Correction,
            limit.citation,
            RULE.slug,
            vec![element.id],
            Phrase::text(format!(
                "The breakers of electrical panel {} are too high",
                element.name()
            )),
            "In an emergency everyone in the house must reach the breakers without a stool.",
        )
        .figures(Quantity::Len(if for_sure { bottom } else { top }), Quantity::Len(limit.value))
        .at(Place::Under(element.id));
        out.push(if for_sure {
            finding
        } else {
            finding.assuming("the highest breaker sits at the panel's top edge")
        });
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "breaker-height";

    /// A panel 30 in high.
    fn hung(kind: ServiceKind, bottom: Len) -> Sample {
        Sample::room(144.0, 120.0)
            .service(kind, at(72.0, 0.0), Facing::NORTH)
            .tune_service(|s| (s.bottom, s.height) = (bottom, inch(30.0)))
    }

    #[test]
    fn clear_pass() {
        hung(ServiceKind::Panel, inch(40.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        hung(ServiceKind::Panel, inch(80.0))
            .expect(SLUG, &["correction, measured 80\", required 79\""]);
    }

    #[test]
    fn at_the_limit() {
        hung(ServiceKind::Panel, inch(49.0)).expect_none(SLUG);
        hung(ServiceKind::Panel, inch(49.0) + Len::UNIT)
            .expect(SLUG, &["verify, measured 79 1/16\", required 79\""]);
        // The finished floor takes its build-up off.
        hung(ServiceKind::Panel, inch(49.5)).site(|s| s.floor_build = inch(0.5)).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        hung(ServiceKind::JunctionBox, inch(80.0)).expect_none(SLUG);
    }
}
