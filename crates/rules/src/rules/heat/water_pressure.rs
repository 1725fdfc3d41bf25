//! Water that comes in at too high a pressure.

use plan::detail::plumbing::STATIC_PRESSURE;
use plan::element::ServiceKind;

use super::house;
use super::told::of_kind;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "water-pressure",
    group: Group::Heat,
    title: "Pressure of the water that comes in",
    page: "\
What
Where the static pressure of the water is above 80 psi, a pressure reducer stands where it comes in.

Why
High pressure wears out valves and hoses, and one bursts behind the new wall.

Source
IRC P2903.3.1: 2018 to 2024.

How it is measured
By the stated pressure, and by a pressure reducer in the plan.

Cannot see
A reducer that is not drawn, and what it is set to.

Exceptions
None.

Remedies
Draw the reducer where it is, or have a plumber set one.
",
    cites: &["water-pressure"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "High pressure wears out valves and hoses, and one bursts behind the new wall.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("water-pressure");
    let pressure = sheet.ask_site(&STATIC_PRESSURE).number();
    let Some(pressure) = pressure.filter(|n| *n > limit.value) else { return };
    if of_kind(sheet, ServiceKind::PressureReducer).next().is_some() {
        return;
    }
    let main = of_kind(sheet, ServiceKind::MainWaterValve).map(|e| e.id).collect();
    let words = ("The water comes in at too high a pressure", WHY);
    let figures =
        (format!("{pressure} psi"), format!("a pressure reducer above {} psi", limit.value));
    out.push(house::finding(sheet, RULE.slug, limit.citation, main, words, figures));
}

#[cfg(test)]
mod tests {

    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "water-pressure";

    fn valve(psi: u32) -> Sample {
        Sample::with(ServiceKind::MainWaterValve).state_site(&STATIC_PRESSURE, Value::Number(psi))
    }

    #[test]
    fn clear_pass() {
        valve(60).expect_none(SLUG);
        let reduced = Sample::with(ServiceKind::PressureReducer);
        reduced.state_site(&STATIC_PRESSURE, Value::Number(120)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            valve(120).edition(edition).expect(
                SLUG,
                &["correction, measured 120 psi, required a pressure reducer above 80 psi"],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        valve(80).expect_none(SLUG);
        assert_eq!(valve(81).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with(ServiceKind::MainWaterValve).expect_none(SLUG);
    }
}
