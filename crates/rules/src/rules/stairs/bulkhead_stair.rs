//! A stair under a bulkhead that is too high to be excused.

use super::{all_stairs, flight_finding, is_kind};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};
use plan::element::BodyKind;

pub(crate) const RULE: Rule = Rule {
    slug: "bulkhead-stair",
    group: Group::Stairs,
    title: "Cellar stair under a bulkhead",
    page: "\
What
A stair under a bulkhead that isn't the required way out need not meet the rules for stairs and landings, where it is at most
8 ft high from the basement's floor to the ground and covered by hinged doors.

Why
A steep cellar stair is for carrying things in. A higher one is a stair that people fall from like any other.

Source
IRC R311.7.10.2 (2018, 2021), R318.7.11.2 (2024, inferred).

How it is measured
By what is stated of the kind of stair, and by its risers times their height. Up to 8 ft the rules for width, treads, risers,
headroom, landing and rails are silent about it; above that this rule speaks, and those for the flight's figures.

Cannot see
The doors that cover it, and whether another way out of the basement is the required one.

Exceptions
None.

Remedies
Build it as a stair of the house, or as a lower one.
",
    cites: &["bulkhead-stair"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

const WHY: &str = "Only a cellar stair of this height is excused from the rules for stairs.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("bulkhead-stair");
    for (element, stair) in all_stairs(sheet).filter(|(e, _)| is_kind(sheet, e, "under a bulkhead"))
    {
        let height = stair.rise * stair.risers.cast_signed();
        if height <= limit.value {
            continue;
        }
        let fault = "is too high to be excused under its bulkhead";
        let finding = flight_finding(sheet, element, RULE.slug, limit.citation.clone(), fault, WHY);
        out.push(finding.figures(Quantity::Len(height), Quantity::Len(limit.value)));
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::stair::STAIR_KIND;

    use crate::testing::{Sample, inch};

    const SLUG: &str = "bulkhead-stair";

    fn cellar(risers: u32, rise: Len) -> Sample {
        let stair = Sample::with_stair().tune(|e| match &mut e.body {
            plan::Body::Stair(stair) => (stair.risers, stair.rise) = (risers, rise),
            other => panic!("{}", other.word()),
        });
        stair.state(&STAIR_KIND, Value::Word("under a bulkhead"))
    }

    #[test]
    fn clear_pass() {
        cellar(8, inch(9.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let high = cellar(12, inch(9.0)).edition(edition);
            high.expect(SLUG, &["correction, measured 108\", required 96\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        cellar(12, inch(8.0)).expect_none(SLUG);
        assert_eq!(cellar(12, inch(8.0) + Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        let house = cellar(16, inch(9.0)).state(&STAIR_KIND, Value::Word("straight"));
        house.expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
