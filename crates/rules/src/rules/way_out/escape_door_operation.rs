//! A door that serves as escape opening but neither swings nor slides.

use plan::element::DoorOperation;

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-door-operation",
    group: Group::WayOut,
    title: "Operation of a door that serves as escape opening",
    page: "\
What
A door that serves as the escape opening is side-hinged or sliding.

Why
Folding, pocket and overhead doors jam, and can't be opened by who doesn't know them in the dark.

Source
IRC R310.3 (2018, 2021), R319.3 (2024).

How it is measured
By the operation that is entered for the door in the foundation wall.

Cannot see
Locks: the door must open from inside without a key. A bulkhead over the door.

Exceptions
None.

Remedies
Make it a hinged or a sliding door.
",
    cites: &["escape-door-operation"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str =
    "A door that folds or hides in the wall jams easily and is hard to open in the dark.";

pub(super) fn judge(_: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    match candidate.opening.door()?.operation {
        DoorOperation::Hinged | DoorOperation::Sliding => None,
        DoorOperation::Pocket | DoorOperation::Bifold | DoorOperation::Cased => {
            Some(Severity::Correction)
        }
    }
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let word = choice.candidate.opening.door().map_or("", |d| d.operation.word());
        let citation = sheet.book.cite("escape-door-operation");
        let fault = "neither swings nor slides";
        out.push(choice.finding(sheet, RULE.slug, severity, citation, fault, WHY).figures(
            Quantity::Words(word.to_owned()),
            Quantity::Words("hinged or sliding door".to_owned()),
        ));
    }
}

#[cfg(test)]
mod tests {
    use plan::element::DoorOperation;

    use crate::rules::way_out::sample::{bedroom, bedroom_with_door, good_window, south};

    const SLUG: &str = "escape-door-operation";

    #[test]
    fn clear_pass() {
        bedroom_with_door(DoorOperation::Hinged, 36.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for (operation, word) in [
            (DoorOperation::Bifold, "bifold door"),
            (DoorOperation::Pocket, "pocket door"),
            (DoorOperation::Cased, "cased opening"),
        ] {
            let said = format!("correction, measured {word}, required hinged or sliding door");
            bedroom_with_door(operation, 36.0).expect(SLUG, &[&said]);
        }
    }

    #[test]
    fn at_the_limit() {
        // A sliding door is the other kind that is allowed.
        bedroom_with_door(DoorOperation::Sliding, 72.0).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        // The window serves, so the bifold door need not.
        let sample = bedroom(good_window());
        let host = south(&sample);
        sample.opening(host, 72.0, DoorOperation::Bifold, 36.0).expect_none(SLUG);
    }
}
