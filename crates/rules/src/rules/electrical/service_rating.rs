//! A service that is rated too small.

use plan::House;
use plan::detail::site::SERVICE_RATING;

use super::service;
use crate::{Check, Finding, Group, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "service-rating",
    group: Group::Electrical,
    title: "Rating of the service",
    page: "\
What
The service disconnect of a one-family house is rated at least 100 A.

Why
A finished basement with electric heat, a dryer or a car to charge asks more than an old service gives.

Source
NEC 230.79(C) (all editions).

How it is measured
By what is stated of the house; until it is stated nothing is said. A service of an existing house that isn't stated to be
replaced is marked to verify.

Cannot see
The load of the house: an electrician works it out.

Exceptions
Houses for two families.

Remedies
Ask the electrician whether the service carries the new rooms.
",
    cites: &["service-rating"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str =
    "A finished basement with electric heat or a dryer asks more than an old service gives.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("service-rating").value;
    let Some(rating) = sheet.ask_site(&SERVICE_RATING).number().filter(|n| *n < limit) else {
        return;
    };
    let figures = (format!("{rating} A"), format!("{limit} A"));
    let title = "The service is rated too small";
    let finding = service::finding(sheet, RULE.slug, Severity::Correction, title, WHY, figures);
    let stays = sheet.plan().site.house == House::Existing && !service::is_replaced(sheet);
    out.push(if stays {
        finding.assuming("the office lets a service be that stays as it is")
    } else {
        finding
    });
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::site::SERVICE_REPLACED;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "service-rating";

    fn rated(amps: u32) -> Sample {
        Sample::room(144.0, 120.0).state_site(&SERVICE_RATING, Value::Number(amps))
    }

    #[test]
    fn clear_pass() {
        rated(200).new_house().expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let small = "correction, measured 60 A, required 100 A";
            rated(60).new_house().edition(edition).expect(SLUG, &[small]);
            let replaced = rated(60).state_site(&SERVICE_REPLACED, Value::Yes);
            replaced.edition(edition).expect(SLUG, &[small]);
        }
    }

    #[test]
    fn one_that_stays_is_left_to_the_office() {
        rated(60).expect(SLUG, &["verify, measured 60 A, required 100 A"]);
    }

    #[test]
    fn at_the_limit() {
        rated(100).new_house().expect_none(SLUG);
        assert_eq!(rated(99).new_house().findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).new_house().expect_none(SLUG);
    }
}
