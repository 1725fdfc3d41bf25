//! A window whose open sash stays in the way.

use plan::element::WindowOperation;

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-operation",
    group: Group::WayOut,
    title: "Operation of an escape window",
    page: "\
What
The clear opening is what normal operation from inside leaves, without key, tool or taking out a sash.
Awning and hopper sashes stay in the path and usually fail unless the maker lists them.

Why
A window of 44 x 44 in that its centre crank stops after 12 in lets nobody out.

Source
IRC R310.2.1 (2018), R310.2.2 (2021), R319.2.2 (2024). What each operation leaves is common practice:
the code gives no formula.

How it is measured
By the operation that is entered for the window. Casements, sliders and hung windows pass here.

Cannot see
The crank, the hinges and the maker's listing. Locks, bars and screens: they must release from inside
without key or tool.

Exceptions
Fixed glass is no opening at all; bedroom-without-escape speaks of it.

Remedies
Choose a casement, slider or hung window, or confirm the maker's listing.
",
    cites: &["escape-operation"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "The open sash hangs in the path of who climbs out; most makers don't list this kind as an escape \
                   window.";

pub(super) fn judge(_: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    sash_in_the_way(candidate).map(|_| Severity::Verify)
}

fn sash_in_the_way(candidate: &Candidate<'_>) -> Option<WindowOperation> {
    let operation = candidate.window()?.operation;
    matches!(operation, WindowOperation::Awning | WindowOperation::Hopper).then_some(operation)
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let operation = sash_in_the_way(&choice.candidate).map_or("", WindowOperation::word);
        let citation = sheet.book.cite("escape-operation");
        let fault = "keeps its sash in the way";
        out.push(
            choice
                .finding(sheet, RULE.slug, severity, citation, fault, WHY)
                .figures(
                    Quantity::Words(operation.to_owned()),
                    Quantity::Words("a kind that opens clear".to_owned()),
                )
                .assuming("the maker lists this window as an escape window"),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::element::{Window, WindowOperation};

    use crate::rules::way_out::sample::{bedroom, good_window, with_window};

    const SLUG: &str = "escape-operation";

    fn operated(operation: WindowOperation) -> Window {
        Window { operation, ..good_window() }
    }

    #[test]
    fn clear_pass() {
        for operation in [WindowOperation::Casement, WindowOperation::Slider, WindowOperation::Hung]
        {
            bedroom(operated(operation)).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        for (operation, word) in
            [(WindowOperation::Awning, "awning"), (WindowOperation::Hopper, "hopper")]
        {
            let said = format!("verify, measured {word}, required a kind that opens clear");
            bedroom(operated(operation)).expect(SLUG, &[&said]);
        }
    }

    #[test]
    fn at_the_limit() {
        // One window that opens clear is enough for the room.
        let sample = bedroom(operated(WindowOperation::Awning));
        with_window(sample, operated(WindowOperation::Casement)).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        bedroom(operated(WindowOperation::Fixed)).expect_none(SLUG);
    }
}
