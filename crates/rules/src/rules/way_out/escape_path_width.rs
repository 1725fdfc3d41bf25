//! Width of the yard before an escape opening.

use plan::detail::opening::PATH_WIDTH;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-path-width",
    group: Group::WayOut,
    title: "Width of the yard before an escape opening",
    page: "\
What
The yard, court or path from an escape opening to the public way is at least 36 in wide.

Why
A fire fighter with a pack, and whoever they carry, must pass.

Source
IRC R310.1 (2018, 2021); IRC R319.1 (2024).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The lot.

Exceptions
None.

Remedies
Clear the path; move the fence.
",
    cites: &["escape-path-width"],
    check,
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("escape-path-width");
    let demand = Demand {
        rule: RULE.slug,
        detail: &PATH_WIDTH,
        fault: "Way to the street too narrow",
        many: "windows",
        why: "A fire fighter with a pack, and whoever they carry, must pass.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = fitting(sheet, &PATH_WIDTH);
    judge(sheet, out, &sheet.book.cite("escape-path-width"), &demand, elements, |a| {
        a.len().is_some_and(|len| len >= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "escape-path-width";

    fn sample() -> Sample {
        Sample::with_well(false)
    }

    #[test]
    fn clear_pass() {
        sample().state(&PATH_WIDTH, Value::Length(Len::inches(36))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&PATH_WIDTH, Value::Length(Len::sixty_fourths(2272)));
            wrong.expect(SLUG, &["correction, measured 35 1/2\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&PATH_WIDTH, Value::Length(Len::inches(36))).expect_none(SLUG);
        let short = sample().state(&PATH_WIDTH, Value::Length(Len::inches(36) - Len::UNIT));
        assert_eq!(short.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
