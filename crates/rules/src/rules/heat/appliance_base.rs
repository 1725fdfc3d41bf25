//! Base of an appliance.

use plan::detail::Value;
use plan::detail::heat::BASE;

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "appliance-base",
    group: Group::Heat,
    title: "Base of an appliance",
    page: "\
What
Gypsum board is no base or support of an appliance.

Why
It crushes, and gives way when it gets wet.

Source
IRC M1307.7 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
What is under it.

Exceptions
None.

Remedies
Masonry or a metal stand.
",
    cites: &["appliance-base"],
    check,
    remedies: Some(|finding, sheet| {
        state_all(finding, sheet, &BASE, Value::Word("slab or masonry"))
    }),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &BASE,
        fault: "Appliance on gypsum board",
        many: "appliances",
        why: "It crushes, and gives way when it gets wet.",
        required: Quantity::Words("no gypsum board".to_owned()),
        advice: false,
    };
    let elements = fitting(sheet, &BASE);
    judge(sheet, out, &sheet.book.cite("appliance-base"), &demand, elements, |a| {
        a.is(&["slab or masonry", "metal stand"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "appliance-base";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Furnace)
    }

    #[test]
    fn clear_pass() {
        sample().state(&BASE, Value::Word("slab or masonry")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&BASE, Value::Word("gypsum board"));
            wrong.expect(SLUG, &["correction, measured gypsum board, required no gypsum board"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Each word on its side of the line.
        for good in ["slab or masonry", "metal stand"] {
            sample().state(&BASE, Value::Word(good)).expect_none(SLUG);
        }
        for bad in ["gypsum board"] {
            assert_eq!(sample().state(&BASE, Value::Word(bad)).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&BASE, Value::Word("gypsum board"));
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
