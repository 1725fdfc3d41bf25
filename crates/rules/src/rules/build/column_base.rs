//! A wood post on the slab.

use plan::detail::wall::COLUMN_BASE;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "column-base",
    group: Group::Build,
    title: "Base of a wood post",
    page: "\
What
A wood post in a basement is treated, or stands on a pier or pedestal at least 1 in above the slab with a barrier between.

Why
End grain drinks from the slab, and the post that carries the house rots from below.

Source
IRC R317.1.4 (2018, 2021), R304.1.4 (2024).

How it is measured
By what is stated of new columns; one of steel or concrete is assumed until then.

Cannot see
The barrier, and columns inside walls.

Exceptions
Treated or durable wood.

Remedies
A steel post, or a standoff base. An engineer sees to what it carries.
",
    cites: &["column-base"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &COLUMN_BASE,
        fault: "Wood post on the slab",
        many: "columns",
        why: "End grain drinks from the slab, and the post that carries the house rots from below.",
        required: Quantity::Words("treated, or on a pier 1 in high".to_owned()),
        advice: false,
    };
    let columns = new_work(sheet, &COLUMN_BASE);
    judge(sheet, out, &sheet.book.cite("column-base"), &demand, columns, |a| {
        a.is(&["steel or concrete", "treated wood", "wood on a pier 1 in high"])
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "column-base";

    fn post(base: &'static str) -> Sample {
        Sample::room(144.0, 120.0)
            .column(at(72.0, 60.0), 4.0)
            .fresh()
            .state(&COLUMN_BASE, Value::Word(base))
    }

    #[test]
    fn clear_pass() {
        post("treated wood").expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            post("wood on the slab").edition(edition).expect(
                SLUG,
                &["correction, measured wood on the slab, required treated, or on a pier 1 in high"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // A pier of 1 in is enough.
        post("wood on a pier 1 in high").expect_none(SLUG);
        assert_eq!(post("wood on the slab").findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        post("wood on the slab").existing().expect_none(SLUG);
        Sample::room(144.0, 120.0).column(at(72.0, 60.0), 4.0).expect_none(SLUG);
    }
}
