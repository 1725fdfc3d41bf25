//! Bare foam at the rim.

use plan::detail::Value;
use plan::detail::wall::RIM;

use crate::rules::stated::{Demand, judge, new_work, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "rim-foam",
    group: Group::Build,
    title: "Bare foam at the rim",
    page: "\
What
Sprayed foam at the rim may stay bare up to 3 1/4 in of the listed kind. Rigid foam cut into the rim does not qualify:
it is covered.

Why
Foam in the joist bays is out of sight and feeds a fire along the whole wall.

Source
IRC R316.5.11 (2018, 2021); IRC R303 (2024).

How it is measured
By what is stated of it, for new work. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The density and the flame spread of the foam.

Exceptions
Foam tested and approved to stay bare.

Remedies
1/2 in board over it, or sprayed foam within the limit.
",
    cites: &["rim-foam"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &RIM, Value::Word("not by foam"))),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &RIM,
        fault: "Bare foam at the rim",
        many: "runs of furring",
        why: "Foam in the joist bays is out of sight and feeds a fire along the whole wall.",
        required: Quantity::Words("board over it, or thin sprayed foam".to_owned()),
        advice: false,
    };
    let elements = new_work(sheet, &RIM);
    judge(sheet, out, &sheet.book.cite("rim-foam"), &demand, elements, |a| {
        a.is(&["not by foam", "sprayed foam, up to 3 1/4 in", "foam under board"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "rim-foam";

    fn sample() -> Sample {
        Sample::with_furring()
    }

    #[test]
    fn clear_pass() {
        sample().state(&RIM, Value::Word("not by foam")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong =
                sample().edition(edition).state(&RIM, Value::Word("sprayed foam, thicker, bare"));
            wrong.expect(SLUG, &["correction, measured sprayed foam, thicker, bare, required board over it, or thin sprayed foam"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["not by foam", "sprayed foam, up to 3 1/4 in", "foam under board"] {
            sample().state(&RIM, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["rigid foam, bare", "sprayed foam, thicker, bare"] {
            assert_eq!(sample().state(&RIM, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // What is there already is left alone.
        sample()
            .state(&RIM, Value::Word("sprayed foam, thicker, bare"))
            .existing()
            .expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&RIM, Value::Word("sprayed foam, thicker, bare"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
