//! The valves of an ejector.

use plan::detail::plumbing::EJECTOR_VALVES;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "ejector-valves",
    group: Group::Heat,
    title: "Valves of a sewage ejector",
    page: "\
What
The pipe of a sewage ejector has a check valve and a full-open valve, above the cover and within reach.

Why
Without the valves the pump can't be taken out before the whole pipe runs back into the pit.

Source
IRC P3007.2; some places ask for the check valve alone in a one-family house.

How it is measured
By what is stated of a new ejector; until then it is asked for.

Cannot see
The size of the pipe and how it joins the drain.

Exceptions
What is there already in a standing house.

Remedies
Both valves, with unions.
",
    cites: &["ejector-valves"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str =
    "Without the valves the pump can't be taken out before the whole pipe runs back into the pit.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "ejector-valves",
    detail: &EJECTOR_VALVES,
    good: Good::Words(&["check and full-open"]),
    fails: "lacks a valve on its pipe",
    why: WHY,
    asks: true,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::Ejector));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "ejector-valves";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Ejector, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&EJECTOR_VALVES, Value::Word("check and full-open"))
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&EJECTOR_VALVES, Value::Word("none"));
            sample
                .expect(SLUG, &["correction, measured valves: none, required check and full-open"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&EJECTOR_VALVES, Value::Word("check and full-open")).expect_none(SLUG);
        assert_eq!(good().state(&EJECTOR_VALVES, Value::Word("none")).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["verify, measured not stated, required check and full-open"]);
        assert_eq!(unstated.remedies(SLUG).len(), 1);
        unstated.existing().expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
