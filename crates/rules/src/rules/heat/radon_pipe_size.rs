//! Size and label of a radon pipe.

use plan::detail::heat::{RADON_DIAMETER, RADON_LABEL};
use plan::element::ServiceKind;

use super::told::{self, Demand, Good};
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "radon-pipe-size",
    group: Group::Heat,
    title: "Size and label of a radon pipe",
    page: "\
What
A radon pipe is at least 3 in in size and labelled as one on every floor.

Why
A thin pipe moves too little soil gas, and one without a label is taken for a drain and cut.

Source
IRC appendix AF103 (2018, 2021), BE103 (2024), where it is adopted.

How it is measured
By what is stated of the pipe; a new one is taken for 4 in, its label is asked for.

Cannot see
The pipe above the basement and its end over the roof.

Exceptions
Places that have not adopted the appendix; standing pipes are not asked about.

Remedies
Label it. Radon systems are for certified contractors.
",
    cites: &["radon-pipe-size", "radon-pipe-label"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| told::remedies(finding, sheet, DEMANDS)),
};

const WHY: &str =
    "A thin pipe moves too little soil gas, and one without a label is taken for a drain and cut.";

const DEMANDS: &[Demand] = &[
    Demand {
        rule: RULE.slug,
        limit: "radon-pipe-size",
        detail: &RADON_DIAMETER,
        good: Good::AtLeast,
        fails: "is too thin",
        why: WHY,
        asks: false,
    },
    Demand {
        rule: RULE.slug,
        limit: "radon-pipe-label",
        detail: &RADON_LABEL,
        good: Good::Yes,
        fails: "has no label",
        why: WHY,
        asks: true,
    },
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for demand in DEMANDS {
        told::check(sheet, out, demand, told::of_kind(sheet, ServiceKind::RadonPipe));
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "radon-pipe-size";

    fn thing() -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::RadonPipe, at(72.0, 0.0), Facing::NORTH)
            .fresh()
    }

    /// Everything that is asked for is stated.
    fn good() -> Sample {
        thing().state(&RADON_LABEL, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        good().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = good().edition(edition).state(&RADON_DIAMETER, Value::Length(inch(2.0)));
            sample.expect(SLUG, &["correction, measured 2\", required 3\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        good().state(&RADON_DIAMETER, Value::Length(inch(3.0))).expect_none(SLUG);
        assert_eq!(
            good()
                .state(&RADON_DIAMETER, Value::Length(inch(3.0) - measure::Len::UNIT))
                .findings(SLUG)
                .len(),
            1
        );
        good().state(&RADON_LABEL, Value::Yes).expect_none(SLUG);
        assert_eq!(good().state(&RADON_LABEL, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn what_is_not_stated_is_asked_for_where_it_is_new() {
        let unstated = thing();
        unstated.expect(SLUG, &["verify, measured not stated, required yes"]);
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
