//! Disconnect outdoors.

use plan::detail::site::OUTDOOR_DISCONNECT;

use super::service;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "outdoor-disconnect",
    group: Group::Electrical,
    title: "Disconnect outdoors",
    page: "\
What
A new or replaced service of a dwelling has a disconnect outdoors, on the house or in sight of it, that is reached at once.

Why
Firefighters turn the power off before they go down to the panel.

Source
NEC 230.85 (2020 for the 2021 edition, 2023 for 2024); the electrical code of 2017 doesn't ask for it.

How it is measured
By what is stated of the house. Where the service is stated to be replaced it is asked for until it is stated; in a new house
nothing is said until then.

Cannot see
The service and its equipment.

Exceptions
A service that stays as it is.

Remedies
Ask the electrician and the utility before the service is moved or replaced.
",
    cites: &["outdoor-disconnect"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = service::Demand {
        rule: RULE.slug,
        detail: &OUTDOOR_DISCONNECT,
        title: "The service has no disconnect outdoors",
        why: "Firefighters turn the power off before they go down to the panel.",
        required: "one outdoors",
    };
    service::check(sheet, out, &demand);
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::site::SERVICE_REPLACED;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "outdoor-disconnect";

    fn replaced() -> Sample {
        Sample::room(144.0, 120.0).state_site(&SERVICE_REPLACED, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            replaced()
                .edition(edition)
                .state_site(&OUTDOOR_DISCONNECT, Value::Yes)
                .expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in [Edition::E2021, Edition::E2024] {
            let without = replaced().edition(edition).state_site(&OUTDOOR_DISCONNECT, Value::No);
            without.expect(SLUG, &["correction, measured none, required one outdoors"]);
            let open = replaced().edition(edition);
            open.expect(SLUG, &["verify, measured not stated, required one outdoors"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A new house has a new service; what nobody has stated is not asked there.
        let new = Sample::room(144.0, 120.0).new_house().edition(Edition::E2021);
        new.expect_none(SLUG);
        assert_eq!(new.state_site(&OUTDOOR_DISCONNECT, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn the_electrical_code_of_2017_does_not_ask() {
        replaced()
            .edition(Edition::E2018)
            .state_site(&OUTDOOR_DISCONNECT, Value::No)
            .expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).state_site(&OUTDOOR_DISCONNECT, Value::No).expect_none(SLUG);
    }
}
