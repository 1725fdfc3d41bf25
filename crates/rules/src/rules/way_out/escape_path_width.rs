//! Width of the yard before an escape opening.

use plan::detail::opening::PATH_WIDTH;

use super::candidate::Candidate;
use super::told::Told;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

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
IRC R310.1 (2021); IRC R319.1 (2024). The edition of 2018 names no width.

How it is measured
By what is stated of the opening that a need rests on; an opening that fails is not chosen where another serves. Until it is
stated, the usual is assumed and nothing is said.

Cannot see
The lot.

Exceptions
None.

Remedies
Clear the path; move the fence.
",
    cites: &["escape-path-width"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const TOLD: Told = Told {
    rule: RULE.slug,
    detail: &PATH_WIDTH,
    fault: "has too narrow a way to the street",
    why: "A fire fighter with a pack, and whoever they carry, must pass.",
};

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    let least = sheet.book.length(RULE.slug);
    TOLD.judge(sheet, candidate, |a| a.len().is_some_and(|len| len >= least))
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let required = Quantity::Len(sheet.book.length(RULE.slug));
    TOLD.check(sheet, out, &sheet.book.cite(RULE.slug), &required, judge);
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::rules::way_out::sample::{bedroom, good_window, with_window};
    use crate::testing::Sample;

    const SLUG: &str = "escape-path-width";

    fn sample() -> Sample {
        bedroom(good_window())
    }

    #[test]
    fn clear_pass() {
        sample().state(&PATH_WIDTH, Value::Length(Len::inches(36))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in [Edition::E2021, Edition::E2024] {
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
        // The edition of 2018 names no width.
        sample()
            .edition(Edition::E2018)
            .state(&PATH_WIDTH, Value::Length(Len::inches(24)))
            .expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // A second window serves as well: the other is nobody's way out.
        let wrong = sample().state(&PATH_WIDTH, Value::Length(Len::inches(24)));
        with_window(wrong, good_window()).expect_none(SLUG);
    }
}
