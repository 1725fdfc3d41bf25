//! A pit that is too small, or whose lid is not right.

use plan::Body;
use plan::detail::plumbing::{PIT_DEPTH, SEALED_LID};
use plan::element::ServiceKind;

use super::told::{self, Demand, Good, of_kind};
use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::is_new;
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "pit",
    group: Group::Heat,
    title: "Size and lid of a sump or ejector pit",
    page: "\
What
A pit is at least 18 in wide and 24 in deep, with a rigid lid that is sealed and comes off: gastight for an ejector; for a
sump where the house has a radon system or the basement is finished.

Why
A small pit starts its pump every minute; an open one lets in damp, gas and radon, and a child falls in.

Source
IRC P3303.1.2, P3007.3.2: 2018 to 2024; the radon standard for the sealed lid of a sump.

How it is measured
The smaller side of the drawn pit; its depth and its lid as stated, for new pits. The lid is asked for until it is stated.

Cannot see
The vent of an ejector pit: see the rule on that.

Exceptions
A pit that only takes drain tile needs no gastight lid.

Remedies
A larger basin; a lid with a gasket and screws.
",
    cites: &["pit-width", "pit-depth", "pit-lid"],
    check: Check::Plan(&[On::Service(ServiceKind::Sump), On::Service(ServiceKind::Ejector)], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, &DEMANDS[1..])),
};

const WHY: &str =
    "A small pit starts its pump every minute; an open one lets in damp, gas and radon.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "pit-depth",
        detail: &PIT_DEPTH,
        good: Good::AtLeast,
        fails: "is too shallow",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "pit-lid",
        detail: &SEALED_LID,
        good: Good::Yes,
        fails: "has no sealed lid",
        why: WHY,
        asks: true,
    },
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let pits = || {
        of_kind(sheet, ServiceKind::Sump)
            .chain(of_kind(sheet, ServiceKind::Ejector))
            .filter(|e| is_new(sheet, e))
    };
    for demand in DEMANDS {
        told::check(sheet, out, demand, pits());
    }
    let limit = sheet.book.len("pit-width");
    for element in pits() {
        let Body::Service(pit) = &element.body else { continue };
        let width = pit.width.min(pit.depth);
        if width >= limit.value {
            continue;
        }
        let title = format!("{} is too narrow", capital(&called(sheet, element.id)));
        out.push(
            Finding::new(
                Severity::Correction,
                limit.citation.clone(),
                RULE.slug,
                vec![element.id],
                Phrase::text(title),
                WHY,
            )
            .figures(Quantity::Len(width), Quantity::Len(limit.value))
            .at(Place::Under(element.id)),
        );
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, inch};

    const SLUG: &str = "pit";

    fn pit() -> Sample {
        Sample::with(ServiceKind::Sump).state(&SEALED_LID, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        pit().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let shallow = pit().edition(edition).state(&PIT_DEPTH, Value::Length(inch(18.0)));
            shallow.expect(SLUG, &["correction, measured 18\", required 24\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        let wide = |w: Len| pit().tune_service(|s| (s.width, s.depth) = (w, w));
        wide(inch(18.0)).expect_none(SLUG);
        wide(inch(18.0) - Len::UNIT)
            .expect(SLUG, &["correction, measured 17 15/16\", required 18\""]);
        pit().state(&PIT_DEPTH, Value::Length(inch(24.0))).expect_none(SLUG);
        let shallow = Value::Length(inch(24.0) - Len::UNIT);
        assert_eq!(pit().state(&PIT_DEPTH, shallow).findings(SLUG).len(), 1);
    }

    #[test]
    fn the_lid_is_asked_for() {
        let open = Sample::with(ServiceKind::Ejector);
        assert_eq!(open.findings(SLUG)[0].severity, Severity::Verify);
        assert_eq!(
            open.state(&SEALED_LID, Value::No).findings(SLUG)[0].severity,
            Severity::Correction
        );
    }

    #[test]
    fn does_not_apply() {
        pit().state(&PIT_DEPTH, Value::Length(inch(6.0))).existing().expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
