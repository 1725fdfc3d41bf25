//! A flight that needs a handrail.

use plan::Body;
use plan::detail::{Value, stair::HANDRAIL};
use plan::element::BodyKind;

use crate::answer::state;
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, On, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-handrail",
    group: Group::Build,
    title: "Handrail of a stair",
    page: "\
What
A flight of four or more risers has a handrail on at least one side, 34 in to 38 in above the nosings.

Why
A hand on a rail is what stops a fall.

Source
IRC R311.7.8 (2018, 2021), R318.7.8 (2024).

How it is measured
By the number of risers, and by what is stated of the flight's handrail; until that is stated the finding asks for it.

Cannot see
The handrail's grip and its ends.

Exceptions
Flights of three risers or fewer. A stair under a bulkhead that isn't the way out.

Remedies
A handrail from the lowest to the highest riser, with its ends returned to the wall.
",
    cites: &["stair-handrail"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: Some(|finding, sheet| {
        vec![state(sheet, &finding.elements, &HANDRAIL, Value::Word("one side"))]
    }),
};

const WHY: &str = "A hand on a rail is what stops a fall.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("stair-handrail");
    for element in sheet.facts.standing(&[BodyKind::Stair]) {
        let Body::Stair(stair) = &element.body else { continue };
        let handrail = sheet.ask(element, &HANDRAIL);
        if !HANDRAIL.is_asked(&element.body, &element.details)
            || stair.risers < limit.value
            || handrail.is(&["one side", "both sides"])
        {
            continue;
        }
        let title = format!("{} needs a handrail", capital(&called(sheet, element.id)));
        out.push(
            Finding::new(
                Severity::Correction,
                limit.citation.clone(),
                RULE.slug,
                vec![element.id],
                Phrase::text(title),
                WHY,
            )
            .figures(
                Quantity::Words(format!("{} risers", stair.risers)),
                Quantity::Words(format!("a handrail from {} risers on", limit.value)),
            )
            .resting_on(&handrail)
            .at(Place::Point(stair.foot)),
        );
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "stair-handrail";

    fn flight(risers: u32) -> Sample {
        let stair = Sample::room(200.0, 240.0).stair(at(100.0, 30.0), Facing::NORTH);
        stair.tune(|e| match &mut e.body {
            Body::Stair(stair) => stair.risers = risers,
            other => panic!("{}", other.word()),
        })
    }

    #[test]
    fn clear_pass() {
        flight(2).expect_none(SLUG);
        flight(14).state(&HANDRAIL, Value::Word("one side")).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let bare = flight(14).edition(edition).state(&HANDRAIL, Value::Word("none"));
            bare.expect(
                SLUG,
                &["correction, measured 14 risers, required a handrail from 4 risers on"],
            );
        }
    }

    #[test]
    fn what_is_not_stated_is_asked_for() {
        let unstated = flight(14);
        unstated
            .expect(SLUG, &["verify, measured 14 risers, required a handrail from 4 risers on"]);
        assert_eq!(unstated.findings(SLUG)[0].assumed, ["“Handrail” is not stated"]);
        assert_eq!(unstated.remedies(SLUG), ["State of T5 “Handrail: one side”"]);
    }

    #[test]
    fn at_the_limit() {
        flight(3).expect_none(SLUG);
        assert_eq!(flight(4).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        use plan::detail::stair::STAIR_KIND;
        flight(12).state(&STAIR_KIND, Value::Word("under a bulkhead")).expect_none(SLUG);
        Sample::room(200.0, 240.0).expect_none(SLUG);
    }
}
