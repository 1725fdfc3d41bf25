//! The circuit of an electric water heater.

use plan::detail::electrical::{HEATER_BREAKER, HEATER_WATTS};

use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::fitting;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "heater-circuit",
    group: Group::Electrical,
    title: "Circuit of an electric water heater",
    page: "\
What
The circuit of a storage water heater of at most 120 gal is rated for at least 125 % of its current.

Why
It runs for hours: a smaller breaker and wire grow hot.

Source
NEC 422.13 (all editions).

How it is measured
By the power and the breaker that are stated of an electric heater: the power over 240 V, times 1.25. 4.5 kW make 23.4 A. Until
both are stated nothing is said.

Cannot see
The wire, and heaters at another voltage.

Exceptions
Heaters of more than 120 gal, and those without a tank.

Remedies
Ask the electrician for a circuit of the next size.
",
    cites: &["heater-circuit"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "It runs for hours: a smaller breaker and wire grow hot.";

const VOLTS: u64 = 240;

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("heater-circuit");
    for heater in fitting(sheet, &HEATER_WATTS) {
        let [watts, amps] = [&HEATER_WATTS, &HEATER_BREAKER].map(|d| sheet.ask(heater, d).number());
        let (Some(watts), Some(amps)) = (watts, amps) else { continue };
        // In hundredths of a volt-ampere on both sides, so that the limit is exact.
        let needed = u64::from(watts) * u64::from(limit.value);
        if u64::from(amps) * VOLTS * 100 >= needed {
            continue;
        }
        let tenths = needed.div_ceil(VOLTS * 10);
        let title = format!("The circuit of {} is too small", capital(&called(sheet, heater.id)));
        out.push(
            Finding::new(
                Severity::Correction,
                limit.citation.clone(),
                RULE.slug,
                vec![heater.id],
                Phrase::text(title),
                WHY,
            )
            .figures(
                Quantity::Words(format!("{amps} A")),
                Quantity::Words(format!("{}.{} A", tenths / 10, tenths % 10)),
            )
            .at(Place::Under(heater.id)),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::heat::FUEL;
    use plan::element::ServiceKind;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "heater-circuit";

    fn heater(watts: u32, amps: u32) -> Sample {
        Sample::with(ServiceKind::WaterHeater)
            .state(&FUEL, Value::Word("electric"))
            .state(&HEATER_WATTS, Value::Number(watts))
            .state(&HEATER_BREAKER, Value::Number(amps))
    }

    #[test]
    fn clear_pass() {
        heater(4500, 30).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let small = heater(4500, 20).edition(edition);
            small.expect(SLUG, &["correction, measured 20 A, required 23.5 A"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 4,800 W at 240 V are 20 A: 25 A are just enough.
        heater(4800, 25).expect_none(SLUG);
        heater(4801, 25).expect(SLUG, &["correction, measured 25 A, required 25.1 A"]);
    }

    #[test]
    fn does_not_apply() {
        heater(4500, 20).state(&FUEL, Value::Word("natural gas")).expect_none(SLUG);
        Sample::with(ServiceKind::WaterHeater)
            .state(&FUEL, Value::Word("electric"))
            .expect_none(SLUG);
    }
}
