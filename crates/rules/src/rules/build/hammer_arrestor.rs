//! Water-hammer arrestor of a washer.

use plan::detail::Value;
use plan::detail::plumbing::HAMMER;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "hammer-arrestor",
    group: Group::Build,
    title: "Water-hammer arrestor of a washer",
    page: "\
What
The quick-closing valves of a washer or dishwasher have a water-hammer arrestor.

Why
A valve that shuts at once makes the pipes knock, until a joint gives.

Source
IRC P2903.5.

How it is measured
By what is stated of it, for new work. Until it is stated, it is asked for.

Cannot see
The arrestor: the maker says how it is reached.

Exceptions
None.

Remedies
An arrestor at the valves of the machine.
",
    cites: &["hammer-arrestor"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &HAMMER, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &HAMMER,
        fault: "No water-hammer arrestor",
        many: "machines",
        why: "A valve that shuts at once makes the pipes knock, until a joint gives.",
        required: Quantity::Words("an arrestor".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &HAMMER);
    judge(sheet, out, &sheet.book.cite("hammer-arrestor"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "hammer-arrestor";

    fn sample() -> Sample {
        Sample::with_thing("washer")
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            sample().edition(edition).state(&HAMMER, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&HAMMER, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required an arrestor"]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&HAMMER, Value::Yes).expect_none(SLUG);
        let over = sample().edition(Edition::E2021).state(&HAMMER, Value::No);
        assert_eq!(over.findings(SLUG).len(), 1);
        let open = sample().edition(Edition::E2021).findings(SLUG);
        assert_eq!(open[0].severity, crate::Severity::Verify);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&HAMMER, Value::No).existing().expect_none(SLUG);
    }
}
