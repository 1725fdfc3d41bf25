//! A flight that needs a handrail.

use plan::Body;

use crate::rules::rooms::words::{called, capital};
use crate::{Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

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
By the number of risers: handrails are not elements of the plan, so each such flight gets this advice.

Cannot see
The handrail, its height, its grip, its ends, and guards at open sides.

Exceptions
Flights of three risers or fewer.

Remedies
A handrail from the lowest to the highest riser, with its ends returned to the wall.
",
    cites: &["stair-handrail"],
    check,
    remedies: None,
};

const WHY: &str = "A hand on a rail is what stops a fall.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let limit = sheet.book.count("stair-handrail");
    for element in sheet.plan().elements().iter().filter(|e| e.stands()) {
        let Body::Stair(stair) = &element.body else { continue };
        if stair.risers < limit.value {
            continue;
        }
        let title =
            format!("{} needs a handrail, which is not drawn", capital(&called(sheet, element.id)));
        out.push(
            Finding::new(
                Severity::Advice,
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
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let advice = "advice, measured 14 risers, required a handrail from 4 risers on";
            flight(14).edition(edition).expect(SLUG, &[advice]);
        }
    }

    #[test]
    fn at_the_limit() {
        flight(3).expect_none(SLUG);
        assert_eq!(flight(4).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(200.0, 240.0).expect_none(SLUG);
    }
}
