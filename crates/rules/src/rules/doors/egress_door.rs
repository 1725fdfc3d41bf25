//! The egress door, too narrow or too low.

use plan::Body;
use plan::detail::opening::EGRESS_DOOR;
use plan::element::DoorOperation;

use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::fitting;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "egress-door",
    group: Group::Doors,
    title: "Size of the egress door",
    page: "\
What
The one required egress door of a house is side-hinged, at least 32 in wide between the face of the leaf open 90 degrees and
the stop, and at least 78 in high from the threshold to the stop. Other doors have no least size.

Why
It is the door that people with furniture, stretchers and hoses use.

Source
IRC R311.2 (2018, 2021), R318.2 (2024).

How it is measured
For a door that is stated to be the egress door: the clear width (a hinged leaf less 2 in) and the height of the leaf.

Cannot see
The stop and the threshold. In most houses the door is on another level.

Exceptions
Every other door.

Remedies
A wider or a taller leaf.
",
    cites: &["egress-door-width", "egress-door-height"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "It is the door that people with furniture, stretchers and hoses use.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let egress =
        fitting(sheet, &EGRESS_DOOR).filter(|e| sheet.ask(e, &EGRESS_DOOR).yes() == Some(true));
    for element in egress {
        let Some(facts) = sheet.facts.opening(element.id) else { continue };
        let name = capital(&called(sheet, element.id));
        let mut add = |slug: &'static str, fault: &str, measured, required| {
            let title = Phrase::text(format!("{name}, the egress door, {fault}"));
            let citation = sheet.book.cite(slug);
            let severity = Severity::Correction;
            let finding = Finding::new(severity, citation, RULE.slug, vec![element.id], title, WHY)
                .figures(measured, required);
            out.push(finding.at(Place::Of(element.id)));
        };
        let width = sheet.book.length("egress-door-width");
        if facts.clear_width < width {
            let (measured, required) = (Quantity::Len(facts.clear_width), Quantity::Len(width));
            add("egress-door-width", "is too narrow", measured, required);
        }
        let height = sheet.book.length("egress-door-height");
        if facts.clear_height < height {
            let (measured, required) = (Quantity::Len(facts.clear_height), Quantity::Len(height));
            add("egress-door-height", "is too low", measured, required);
        }
        let hinged = matches!(
            &element.body,
            Body::Opening(o) if o.door().is_some_and(|d| d.operation == DoorOperation::Hinged)
        );
        if !hinged {
            let words = |w: &str| Quantity::Words(w.to_owned());
            let measured = words(element.body.word());
            add("egress-door-width", "is not side-hinged", measured, words("side-hinged"));
        }
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, inch};

    const SLUG: &str = "egress-door";

    fn door(width: Len, height: Len) -> Sample {
        Sample::with_door()
            .tune_door(|d| (d.leaf_width, d.leaf_height) = (width, height))
            .state(&EGRESS_DOOR, Value::Yes)
    }

    #[test]
    fn clear_pass() {
        door(inch(36.0), inch(80.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            door(inch(30.0), inch(76.0)).edition(edition).expect(
                SLUG,
                &[
                    "correction, measured 28\", required 32\"",
                    "correction, measured 76\", required 78\"",
                ],
            );
        }
    }

    #[test]
    fn at_the_limit() {
        // Fact `clear-vs-slab`: a leaf of 34 in gives 32 in clear.
        door(inch(34.0), inch(78.0)).expect_none(SLUG);
        assert_eq!(door(inch(34.0) - Len::UNIT, inch(78.0)).findings(SLUG).len(), 1);
        assert_eq!(door(inch(34.0), inch(78.0) - Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        // Other doors have no least size.
        Sample::with_door().tune_door(|d| d.leaf_width = inch(20.0)).expect_none(SLUG);
    }

    #[test]
    fn it_is_side_hinged() {
        let sliding = door(inch(80.0), inch(80.0)).tune_door(|d| {
            d.operation = DoorOperation::Sliding;
        });
        sliding.expect(SLUG, &["correction, measured sliding door, required side-hinged"]);
    }
}
