//! Fireblocking at a soffit.

use plan::detail::Value;
use plan::detail::overhead::SOFFIT_FIREBLOCKED;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "soffit-fireblock",
    group: Group::Build,
    title: "Fireblocking at a soffit",
    page: "\
What
Where the space of a wall meets that of a soffit or a dropped ceiling, the two are closed against each other.

Why
A soffit is a flue along the ceiling.

Source
IRC R302.11 item 2 (all editions).

How it is measured
By what is stated of it, for new work. Until it is stated, one finding asks for all such elements.

Cannot see
Which board went on first.

Exceptions
A soffit against concrete.

Remedies
Board the wall before the soffit is framed.
",
    cites: &["soffit-fireblock"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &SOFFIT_FIREBLOCKED, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &SOFFIT_FIREBLOCKED,
        fault: "Soffit open to the stud spaces",
        many: "soffits",
        why: "A soffit is a flue along the ceiling.",
        required: Quantity::Words("closed where wall and soffit meet".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &SOFFIT_FIREBLOCKED);
    judge(sheet, out, &sheet.book.cite("soffit-fireblock"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "soffit-fireblock";

    fn sample() -> Sample {
        Sample::with_soffit()
    }

    #[test]
    fn clear_pass() {
        sample().state(&SOFFIT_FIREBLOCKED, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&SOFFIT_FIREBLOCKED, Value::No);
            wrong.expect(
                SLUG,
                &["correction, measured no, required closed where wall and soffit meet"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Nothing is assumed: what is not stated is asked for, once.
        sample().expect(
            SLUG,
            &["verify, measured not stated, required closed where wall and soffit meet"],
        );
        sample().state(&SOFFIT_FIREBLOCKED, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample().state(&SOFFIT_FIREBLOCKED, Value::No).existing().expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&SOFFIT_FIREBLOCKED, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
