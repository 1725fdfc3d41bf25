//! A stair whose light is switched at one end only.

use plan::Body;
use plan::detail::Value;
use plan::detail::electrical::STAIR_SWITCHES;
use plan::element::{BodyKind, ServiceKind};

use super::devices::drawn;
use crate::rules::stated::{Demand, fitting, is_new, judge, state_all};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-switches",
    group: Group::Electrical,
    title: "Switches of a stair's light",
    page: "\
What
The light of a stair of six risers or more is switched at each floor level, and at each landing with a way in. Its treads
and landings get at least 1 footcandle.

Why
Nobody goes down a dark stair to look for the switch.

Source
NEC 210.70(A)(2): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024; IRC R303.7 (R325.6 in 2024).

How it is measured
By the number of risers and by what is stated of the stair, for new stairs and new houses; asked once a light is drawn.

Cannot see
Which switch controls which light, and the brightness on the treads.

Exceptions
Stairs of five risers or fewer. Remote, central or automatic control.

Remedies
A pair of three-way switches.
",
    cites: &["stair-switches"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: Some(|finding, sheet| {
        state_all(finding, sheet, &STAIR_SWITCHES, Value::Word("at both levels"))
    }),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Light) {
        return;
    }
    let limit = sheet.book.count("stair-switches");
    let demand = Demand {
        rule: RULE.slug,
        detail: &STAIR_SWITCHES,
        fault: "Light not switched at both ends",
        many: "stairs",
        why: "Nobody goes down a dark stair to look for the switch.",
        required: Quantity::Words("a switch at each level".to_owned()),
        advice: false,
    };
    let asked = fitting(sheet, &STAIR_SWITCHES).filter(|e| {
        is_new(sheet, e) && matches!(&e.body, Body::Stair(s) if s.risers >= limit.value)
    });
    judge(sheet, out, &limit.citation, &demand, asked, |a| a.is(&["at both levels", "automatic"]));
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "stair-switches";

    fn stair(risers: u32, switches: &'static str) -> Sample {
        let lit =
            Sample::room(240.0, 240.0).service(ServiceKind::Light, at(60.0, 60.0), Facing::NORTH);
        let stair = lit.stair(at(100.0, 60.0), Facing::NORTH).fresh();
        stair
            .tune(|e| match &mut e.body {
                Body::Stair(stair) => stair.risers = risers,
                other => panic!("{}", other.word()),
            })
            .state(&STAIR_SWITCHES, Value::Word(switches))
    }

    #[test]
    fn clear_pass() {
        stair(13, "at both levels").expect_none(SLUG);
        stair(13, "automatic").expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let found = "correction, measured at one level, required a switch at each level";
            stair(13, "at one level").edition(edition).expect(SLUG, &[found]);
        }
    }

    #[test]
    fn at_the_limit() {
        stair(5, "at one level").expect_none(SLUG);
        assert_eq!(stair(6, "at one level").findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        stair(13, "at one level").existing().expect_none(SLUG);
        // No light is drawn: this is no electrical plan.
        Sample::with_stair().expect_none(SLUG);
    }
}
