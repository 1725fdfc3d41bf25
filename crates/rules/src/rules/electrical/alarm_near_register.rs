//! A smoke alarm in the draught of a register or a fan.

use geometry::gap;
use plan::element::ServiceKind;

use super::devices::{of_kind, room_of};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "alarm-near-register",
    group: Group::Electrical,
    title: "Smoke alarm near a register or fan",
    page: "\
What
A smoke alarm is at least 36 in from supply registers and from fans.

Why
Moving air keeps the smoke away from it.

Source
NFPA 72, as a city gives it; not in the residential code.

How it is measured
In the plan, from box to box, in one room.

Cannot see
The tips of paddle fans, and the direction of the air.

Exceptions
Where the maker says otherwise.

Remedies
Move the alarm.
",
    cites: &["alarm-register"],
    check: Check::Plan(
        &[
            On::Service(ServiceKind::SmokeAlarm),
            On::Service(ServiceKind::SupplyRegister),
            On::Service(ServiceKind::ExhaustFan),
        ],
        check,
    ),
    remedies: None,
};

const WHY: &str = "Moving air keeps the smoke away from it.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("alarm-register");
    let moves = |kind| matches!(kind, ServiceKind::SupplyRegister | ServiceKind::ExhaustFan);
    for (element, alarm) in of_kind(sheet, ServiceKind::SmokeAlarm) {
        let room = room_of(sheet, alarm);
        for (other, thing) in sheet.services().filter(|(_, s)| moves(s.kind)) {
            let gap = gap(&alarm.placed().corners(), &thing.placed().corners());
            if gap.len >= limit.value || room.is_none() || room_of(sheet, thing) != room {
                continue;
            }
            let title = format!(
                "{} is too near to {}",
                capital(&called(sheet, element.id)),
                called(sheet, other.id)
            );
            out.push(
                Finding::new(
                    Severity::Advice,
                    limit.citation.clone(),
                    RULE.slug,
                    vec![element.id, other.id],
                    Phrase::text(title),
                    WHY,
                )
                .figures(Quantity::Len(gap.len), Quantity::Len(limit.value))
                .at(Place::Span(gap.from, gap.to)),
            );
        }
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::Edition;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "alarm-near-register";

    /// An alarm and a register so far east of it, box to box.
    fn beside(clear: Len) -> Sample {
        let sample = Sample::with_room(RoomUse::Den).service(
            ServiceKind::SmokeAlarm,
            at(30.0, 40.0),
            Facing::NORTH,
        );
        let alarm = match &sample.facts().plan.get(sample.last()).expect("there").body {
            plan::Body::Service(s) => s.width,
            other => panic!("{}", other.word()),
        };
        let mut register = plan::element::ServicePoint::usual(
            ServiceKind::SupplyRegister,
            at(30.0, 40.0),
            Facing::NORTH,
        );
        register.at = geometry::Pt::at(
            inch(30.0) + alarm - alarm / 2 + clear + register.width / 2,
            inch(40.0),
        );
        sample.add(plan::State::Existing, plan::Body::Service(register))
    }

    #[test]
    fn clear_pass() {
        beside(inch(50.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = beside(inch(12.0)).edition(edition);
            near.expect(SLUG, &["advice, measured 12\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        beside(inch(36.0)).expect_none(SLUG);
        assert_eq!(beside(inch(36.0) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_room(RoomUse::Den)
            .service(ServiceKind::SupplyRegister, at(30.0, 40.0), Facing::NORTH)
            .expect_none(SLUG);
    }
}
