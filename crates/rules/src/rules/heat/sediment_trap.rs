//! Sediment trap of a gas appliance.

use plan::detail::Value;
use plan::detail::heat::{FUEL, SEDIMENT_TRAP};

use crate::rules::stated::{Demand, fitting, judge, state_all};
use crate::{Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "sediment-trap",
    group: Group::Heat,
    title: "Sediment trap of a gas appliance",
    page: "\
What
A gas appliance without one built in has a sediment trap downstream of its valve, as close to its inlet as practical.

Why
Scale and chips block the burner.

Source
IRC G2419.4 (all editions).

How it is measured
By what is stated of it. Until it is stated, the usual is assumed and nothing is said.

Cannot see
The gas pipe.

Exceptions
Illuminating appliances, ranges, clothes dryers, decorative appliances, gas fireplaces and outdoor grills.

Remedies
Licensed work: have the gas fitter add it.
",
    cites: &["sediment-trap"],
    check,
    remedies: Some(|finding, sheet| state_all(finding, sheet, &SEDIMENT_TRAP, Value::Yes)),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = Demand {
        rule: RULE.slug,
        detail: &SEDIMENT_TRAP,
        fault: "No sediment trap",
        many: "appliances",
        why: "Scale and chips block the burner.",
        required: Quantity::Words("one downstream of the valve".to_owned()),
        advice: false,
    };
    let elements =
        fitting(sheet, &SEDIMENT_TRAP).filter(|e| !sheet.ask(e, &FUEL).is(&["electric", "oil"]));
    judge(sheet, out, &sheet.book.cite("sediment-trap"), &demand, elements, |a| {
        a.yes() == Some(true)
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "sediment-trap";

    fn sample() -> Sample {
        Sample::with(ServiceKind::Furnace)
    }

    #[test]
    fn clear_pass() {
        sample().state(&SEDIMENT_TRAP, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let wrong = sample().edition(edition).state(&SEDIMENT_TRAP, Value::No);
            wrong.expect(SLUG, &["correction, measured no, required one downstream of the valve"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The usual is assumed until it is stated otherwise.
        sample().expect_none(SLUG);
        assert_eq!(sample().state(&SEDIMENT_TRAP, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).expect_none(SLUG);
        // Nor does it concern an electric one.
        let electric = sample().state(&FUEL, Value::Word("electric"));
        electric.state(&SEDIMENT_TRAP, Value::No).expect_none(SLUG);
    }

    #[test]
    fn stating_it_is_the_remedy() {
        let wrong = sample().state(&SEDIMENT_TRAP, Value::No);
        assert_eq!(wrong.remedies(SLUG).len(), 1);
    }
}
