//! Winders that are too shallow.

use plan::detail::Detail;
use plan::detail::stair::{WINDER_NARROW, WINDER_WALKLINE};
use plan::element::BodyKind;

use crate::rules::stated::{Demand, judge, new_work};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-winder",
    group: Group::Stairs,
    title: "Winder treads",
    page: "\
What
A winder is at least 10 in deep at the walk line, 12 in from its narrow side, and nowhere within the clear width less than
6 in.

Why
Who cuts the corner on the way down steps on the narrow end.

Source
IRC R311.7.5.2.1, R311.7.4 (2018, 2021), R318.7.5.2.1, R318.7.4 (2024).

How it is measured
By what is stated of a new stair of which it is stated that it has winders. Until the two depths are stated they are asked
for.

Cannot see
The turn itself: the stair is drawn as one straight flight. The difference between winders.

Exceptions
Spiral stairs have figures of their own.

Remedies
A landing in the place of the winders, or wider ones.
",
    cites: &["winder-walkline", "winder-narrow"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let details: [(&'static str, &'static Detail); 2] =
        [("winder-walkline", &WINDER_WALKLINE), ("winder-narrow", &WINDER_NARROW)];
    for (slug, detail) in details {
        let limit = sheet.book.len(slug);
        let demand = Demand {
            rule: RULE.slug,
            detail,
            fault: "Winders too shallow",
            many: "stairs",
            why: "Who cuts the corner on the way down steps on the narrow end.",
            required: Quantity::Len(limit.value),
            advice: false,
        };
        let elements = new_work(sheet, detail);
        judge(sheet, out, &limit.citation, &demand, elements, |a| {
            a.len().is_some_and(|len| len >= limit.value)
        });
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::stair::STAIR_KIND;

    use super::*;
    use crate::testing::{Sample, inch};

    const SLUG: &str = "stair-winder";

    fn winders(walk: Len, narrow: Len) -> Sample {
        Sample::with_stair()
            .state(&STAIR_KIND, Value::Word("with winders"))
            .state(&WINDER_WALKLINE, Value::Length(walk))
            .state(&WINDER_NARROW, Value::Length(narrow))
    }

    #[test]
    fn clear_pass() {
        winders(inch(11.0), inch(7.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let bad = winders(inch(9.0), inch(4.0)).edition(edition);
            let walk = "correction, measured 9\", required 10\"";
            bad.expect(SLUG, &[walk, "correction, measured 4\", required 6\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        let (walk, narrow) = (Len::inches(10), Len::inches(6));
        winders(walk, narrow).expect_none(SLUG);
        assert_eq!(winders(walk - Len::UNIT, narrow).findings(SLUG).len(), 1);
        assert_eq!(winders(walk, narrow - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn the_depths_are_asked_for() {
        let open = Sample::with_stair().state(&STAIR_KIND, Value::Word("with winders"));
        let asked = |inches: i32| format!("verify, measured not stated, required {inches}\"");
        open.expect(SLUG, &[&asked(10), &asked(6)]);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_stair().expect_none(SLUG);
        let spiral = winders(inch(4.0), inch(2.0)).state(&STAIR_KIND, Value::Word("spiral"));
        spiral.expect_none(SLUG);
        winders(inch(4.0), inch(2.0)).existing().expect_none(SLUG);
    }
}
