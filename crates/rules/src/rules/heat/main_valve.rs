//! The main water valve.

use plan::detail::plumbing::MAIN_DRAINS;
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "main-valve",
    group: Group::Heat,
    title: "Main water valve that opens fully and drains",
    page: "\
What
The main water valve is a full-open one, with means to drain the pipes behind it.

Why
A valve that can't be drained lets the pipes freeze or flood the work.

Source
IRC P2903.9.1.

How it is measured
By what is stated of the valve; it is taken for right.

Cannot see
The size of the service pipe, 3/4 in at least (P2903.7), and the valve at the street.

Exceptions
What stands already in a standing house may stay as it was allowed.

Remedies
A ball valve with a drain.
",
    cites: &["main-valve-drains"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str = "A valve that can't be drained lets the pipes freeze or flood the work.";

const DEMANDS: &[Demand] = &[Demand {
    rule: RULE.slug,
    limit: "main-valve-drains",
    detail: &MAIN_DRAINS,
    good: Good::Yes,
    fails: "does not open fully or has no drain",
    why: WHY,
    asks: false,
}];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::MainWaterValve));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "main-valve";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::MainWaterValve, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing()
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&MAIN_DRAINS, Value::No);
            sample.expect(SLUG, &["correction, measured drains, full opening: no, required yes"]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&MAIN_DRAINS, Value::Yes).expect_none(SLUG);
        assert_eq!(good().state(&MAIN_DRAINS, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .fresh()
            .expect_none(SLUG);
    }
}
