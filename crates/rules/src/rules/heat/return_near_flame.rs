//! Return air near an open flame.

use plan::detail::heat::RETURN_DISTANCE;

use crate::rules::stated::{Demand, fitting, judge};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "return-near-flame",
    group: Group::Heat,
    title: "Return air near an open flame",
    page: "\
What
Return air is not taken from within 10 ft of the draft hood or the burner of an appliance that burns with the air of
the room.

Why
It pulls flue gas into the house.

Source
IRC M1602.2 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
Where the inlets are.

Exceptions
Direct-vent appliances; inlets in the same room whose volume exceeds 1 cubic foot for each 10 BTU/h and that take no
more than supply gives.

Remedies
Move the inlet.
",
    cites: &["return-near-flame"],
    check,
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("return-near-flame");
    let demand = Demand {
        rule: RULE.slug,
        detail: &RETURN_DISTANCE,
        fault: "Return inlet too near the flame",
        many: "appliances",
        why: "It pulls flue gas into the house.",
        required: Quantity::Len(limit.value),
        advice: false,
    };
    let elements = fitting(sheet, &RETURN_DISTANCE);
    judge(sheet, out, &sheet.book.cite("return-near-flame"), &demand, elements, |a| {
        a.len().is_some_and(|len| len >= limit.value)
    });
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "return-near-flame";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Furnace)
    }

    #[test]
    fn clear_pass() {
        sample().state(&RETURN_DISTANCE, Value::Length(Len::inches(120))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample()
                .edition(edition)
                .state(&RETURN_DISTANCE, Value::Length(Len::sixty_fourths(7648)));
            wrong.expect(SLUG, &["correction, measured 119 1/2\", required 120\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        sample().state(&RETURN_DISTANCE, Value::Length(Len::inches(120))).expect_none(SLUG);
        let short = sample().state(&RETURN_DISTANCE, Value::Length(Len::inches(120) - Len::UNIT));
        assert_eq!(short.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
