//! A strong exhaust fan that takes the air of a burner.

use plan::detail::heat::{MAKEUP_AIR, STRONGEST_FAN};
use plan::element::ServiceKind;

use super::burners::burners;
use super::house;
use crate::{Check, Finding, Group, On, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "exhaust-makeup",
    group: Group::Heat,
    title: "Make-up air for a strong fan",
    page: "\
What
An exhaust fan or hood that moves more than 400 cfm has make-up air of about the same rate, where an appliance burns with
the air of the house.

Why
A strong hood pulls the smoke of a furnace back down its flue, and nobody smells it.

Source
IRC M1503.6: 2018 to 2024.

How it is measured
By the stated rate of the strongest fan of the house and whether its air is brought in again. Appliances are those that draw
their air from a room: neither electric nor direct vent.

Cannot see
Fans that nobody has stated, several that run together, and appliances on other levels.

Exceptions
Houses whose appliances all draw their air from outdoors or are electric.

Remedies
An opening with a damper that opens with the fan; a weaker fan. Licensed work.
",
    cites: &["exhaust-makeup"],
    check: Check::Plan(&[On::Service(ServiceKind::Furnace), On::Service(ServiceKind::WaterHeater)], check),
    remedies: None,
};

const WHY: &str = "A strong hood pulls the smoke of a furnace back down its flue.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("exhaust-makeup");
    let Some(rate) = sheet.ask_site(&STRONGEST_FAN).number().filter(|n| *n > limit.value) else {
        return;
    };
    let makeup = sheet.ask_site(&MAKEUP_AIR);
    let about: Vec<_> = burners(sheet).iter().flat_map(|group| group.ids()).collect();
    if makeup.yes() == Some(true) || about.is_empty() {
        return;
    }
    let words = ("The strongest fan has no make-up air", WHY);
    let figures = (format!("{rate} cfm"), format!("make-up air above {} cfm", limit.value));
    let finding = house::finding(sheet, RULE.slug, limit.citation, about, words, figures);
    out.push(finding.resting_on(&makeup));
}

#[cfg(test)]
mod tests {

    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::heat::VENT;
    use plan::element::{RoomUse, ServiceKind};

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "exhaust-makeup";

    fn hood(rate: u32) -> Sample {
        Sample::with(ServiceKind::Furnace)
            .tag(crate::testing::at(72.0, 100.0), "Utility", RoomUse::Mechanical)
            .state_site(&STRONGEST_FAN, Value::Number(rate))
    }

    #[test]
    fn clear_pass() {
        hood(200).expect_none(SLUG);
        hood(900).state_site(&MAKEUP_AIR, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let strong = hood(900).edition(edition).state_site(&MAKEUP_AIR, Value::No);
            strong.expect(
                SLUG,
                &["correction, measured 900 cfm, required make-up air above 400 cfm"],
            );
            // Until it is stated, none is assumed.
            let open = hood(900).edition(edition);
            open.expect(SLUG, &["verify, measured 900 cfm, required make-up air above 400 cfm"]);
        }
    }

    #[test]
    fn at_the_limit() {
        hood(400).expect_none(SLUG);
        assert_eq!(hood(401).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with(ServiceKind::Furnace)
            .state(&VENT, Value::Word("direct vent"))
            .state_site(&STRONGEST_FAN, Value::Number(900))
            .expect_none(SLUG);
        Sample::with(ServiceKind::Furnace).expect_none(SLUG);
    }
}
