//! The landing outside a door.

use plan::Element;
use plan::detail::opening::{BULKHEAD, EGRESS_DOOR, LANDING, STEP_DOWN};
use plan::detail::{Detail, Value};

use crate::rules::stated::{Demand, is_new, judge, state_all};
use crate::{Check, Finding, Group, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "door-landing",
    group: Group::Doors,
    title: "Landing outside a door",
    page: "\
What
Outside each door to the open there is a floor or landing at least 36 in deep in the direction of travel, no more than 7 3/4 in
below the threshold; 1 1/2 in at the required egress door.

Why
Who steps out in the dark expects the ground where the floor was.

Source
IRC R311.3, R311.3.1, R311.3.2 (2018, 2021), R318.3 (2024).

How it is measured
By what is stated of new doors that lead outdoors. The landing is asked for until it is stated; the step is judged once it is.

Cannot see
Its width and slope, and which way the door swings over it.

Exceptions
At the egress door 7 3/4 in where the door does not swing over the landing: set the finding aside with that reason. Doors with two
risers or fewer outside. A door under a bulkhead that is not the required egress door (IRC R311.7.10.2).

Remedies
A landing as wide as the door and 36 in deep.
",
    cites: &["door-landing", "door-drop", "door-drop-egress"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| {
        let landing = sheet.book.length("door-landing");
        state_all(finding, sheet, &LANDING, Value::Length(landing))
    }),
};

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    // Under a bulkhead that is not the way out no landing is asked for.
    let excused = |e: &Element| {
        !sheet.ask(e, &BULKHEAD).is(&["none"]) && sheet.ask(e, &EGRESS_DOOR).yes() != Some(true)
    };
    let outside = sheet.facts.outside();
    let outside = |detail: &'static Detail| {
        let elements = outside.iter().filter_map(|o| sheet.plan().get(o.id));
        elements.filter(|e| is_new(sheet, e) && !excused(e) && detail.is_asked(&e.body, &e.details))
    };
    let demand = |detail, fault, required| Demand {
        rule: RULE.slug,
        detail,
        fault,
        many: "doors",
        why: "Who steps out in the dark expects the ground where the floor was.",
        required: Quantity::Len(required),
        advice: false,
    };
    let landing = sheet.book.len("door-landing");
    let depth = demand(&LANDING, "Too small a landing outside", landing.value);
    let doors = outside(&LANDING);
    judge(sheet, out, &landing.citation, &depth, doors, |a| {
        a.len().is_some_and(|len| len >= landing.value)
    });
    for (slug, egress) in [("door-drop", false), ("door-drop-egress", true)] {
        let limit = sheet.book.len(slug);
        let step = demand(&STEP_DOWN, "Too high a step outside", limit.value);
        let doors = outside(&STEP_DOWN).filter(|e| {
            sheet.ask(e, &STEP_DOWN).stated
                && (sheet.ask(e, &EGRESS_DOOR).yes() == Some(true)) == egress
        });
        judge(sheet, out, &limit.citation, &step, doors, |a| {
            a.len().is_some_and(|len| len <= limit.value)
        });
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, inch};

    const SLUG: &str = "door-landing";

    fn door(landing: Len) -> Sample {
        Sample::with_door().state(&LANDING, Value::Length(landing))
    }

    #[test]
    fn clear_pass() {
        door(inch(48.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let small = door(inch(24.0)).edition(edition);
            small.expect(SLUG, &["correction, measured 24\", required 36\""]);
            let open = Sample::with_door().edition(edition);
            open.expect(SLUG, &["verify, measured not stated, required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        door(inch(36.0)).expect_none(SLUG);
        assert_eq!(door(inch(36.0) - Len::UNIT).findings(SLUG).len(), 1);
        let step = |len| door(inch(36.0)).state(&STEP_DOWN, Value::Length(len));
        step(inch(7.75)).expect_none(SLUG);
        assert_eq!(step(inch(7.75) + Len::UNIT).findings(SLUG).len(), 1);
        let egress = |len| step(len).state(&EGRESS_DOOR, Value::Yes);
        egress(inch(1.5)).expect_none(SLUG);
        assert_eq!(egress(inch(1.5) + Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with_door().existing().expect_none(SLUG);
        let under = || door(inch(24.0)).state(&BULKHEAD, Value::Word("covers open from inside"));
        under().expect_none(SLUG);
        assert_eq!(under().state(&EGRESS_DOOR, Value::Yes).findings(SLUG).len(), 1);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
