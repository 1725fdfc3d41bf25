//! Surge protection of the service.

use plan::detail::site::SURGE_DEVICE;

use super::service;
use crate::{Check, Finding, Group, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "surge-device",
    group: Group::Electrical,
    title: "Surge protection of the service",
    page: "\
What
A new or replaced service of a dwelling has a surge-protective device.

Why
A surge from the street kills the boards of furnaces, pumps and alarms.

Source
NEC 230.67 (2020 for the 2021 edition, 2023 for 2024); the electrical code of 2017 doesn't ask for it.

How it is measured
By what is stated of the house. Where the service is stated to be replaced it is asked for until it is stated; in a new house
nothing is said until then.

Cannot see
The service and its equipment.

Exceptions
A service that stays as it is.

Remedies
Ask the electrician for a device in or beside the service equipment.
",
    cites: &["surge-device"],
    check: Check::Plan(&[], check),
    remedies: None,
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let demand = service::Demand {
        rule: RULE.slug,
        detail: &SURGE_DEVICE,
        title: "The service has no surge device",
        why: "A surge from the street kills the boards of furnaces, pumps and alarms.",
        required: "a surge device",
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

    const SLUG: &str = "surge-device";

    fn replaced() -> Sample {
        Sample::room(144.0, 120.0).state_site(&SERVICE_REPLACED, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            replaced().edition(edition).state_site(&SURGE_DEVICE, Value::Yes).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for edition in [Edition::E2021, Edition::E2024] {
            let without = replaced().edition(edition).state_site(&SURGE_DEVICE, Value::No);
            without.expect(SLUG, &["correction, measured none, required a surge device"]);
            let open = replaced().edition(edition);
            open.expect(SLUG, &["verify, measured not stated, required a surge device"]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A new house has a new service; what nobody has stated is not asked there.
        let new = Sample::room(144.0, 120.0).new_house().edition(Edition::E2021);
        new.expect_none(SLUG);
        assert_eq!(new.state_site(&SURGE_DEVICE, Value::No).findings(SLUG).len(), 1);
    }

    #[test]
    fn the_electrical_code_of_2017_does_not_ask() {
        replaced().edition(Edition::E2018).state_site(&SURGE_DEVICE, Value::No).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(144.0, 120.0).state_site(&SURGE_DEVICE, Value::No).expect_none(SLUG);
    }
}
