//! A long hidden dryer duct whose length nobody can read.

use plan::detail::Value;
use plan::detail::heat::{DRYER_LABEL, DRYER_LENGTH};
use plan::element::ServiceKind;

use super::dryer_length::taken_by_elbows;
use super::told::of_kind;
use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::state_all;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "dryer-label",
    group: Group::Heat,
    title: "Label of a dryer duct",
    page: "\
What
Where a hidden dryer duct is longer than 35 ft with what its elbows take, a lasting label within 6 ft of the dryer says so.

Why
Who buys the next dryer must know what its fan has to push through.

Source
IRC M1502.4.7: 2018 to 2024.

How it is measured
By the stated length and elbows of the duct; the label is asked for until it is stated.

Cannot see
Whether the duct is hidden: it is taken to be.

Exceptions
A duct in sight over its whole length.

Remedies
A label on the wall behind the dryer.
",
    cites: &["dryer-label", "dryer-length"],
    check: Check::Plan(&[], check),
    remedies: Some(|finding, sheet| state_all(finding, sheet, &DRYER_LABEL, Value::Yes)),
};

const WHY: &str = "Who buys the next dryer must know what its fan has to push through.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let longest = sheet.book.length("dryer-length");
    for element in of_kind(sheet, ServiceKind::ClothesDryer) {
        let Some(length) = sheet.ask(element, &DRYER_LENGTH).len() else { continue };
        let whole = length + taken_by_elbows(sheet, element);
        let label = sheet.ask(element, &DRYER_LABEL);
        if whole <= longest || label.yes() == Some(true) {
            continue;
        }
        let title =
            format!("No label tells the length of the duct of {}", called(sheet, element.id));
        let mut finding = Finding::new(
            Severity::Correction,
            sheet.book.cite("dryer-label"),
            RULE.slug,
            vec![element.id],
            Phrase::text(capital(&title)),
            WHY,
        )
        .figures(Quantity::Len(whole), Quantity::Words("a label within 6 ft".to_owned()))
        .resting_on(&label);
        finding.places.push(Place::Of(element.id));
        out.push(finding);
    }
}

#[cfg(test)]
mod tests {

    use measure::Len;
    use plan::Edition;
    use plan::detail::heat::DRYER_RIGHT_ANGLES;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "dryer-label";

    fn dryer(feet: i32) -> Sample {
        Sample::with(ServiceKind::ClothesDryer)
            .state(&DRYER_LENGTH, Value::Length(Len::feet_inches(feet, 0)))
            .state(&DRYER_RIGHT_ANGLES, Value::Number(0))
    }

    #[test]
    fn clear_pass() {
        dryer(10).expect_none(SLUG);
        dryer(50).state(&DRYER_LABEL, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let long = dryer(50).edition(edition).state(&DRYER_LABEL, Value::No);
            long.expect(SLUG, &["correction, measured 600\", required a label within 6 ft"]);
            let open = dryer(50).edition(edition);
            open.expect(SLUG, &["verify, measured 600\", required a label within 6 ft"]);
        }
    }

    #[test]
    fn at_the_limit() {
        dryer(35).expect_none(SLUG);
        assert_eq!(dryer(36).findings(SLUG).len(), 1);
        // A mitred elbow counts 5 ft.
        let bent = |feet| dryer(feet).state(&DRYER_RIGHT_ANGLES, Value::Number(1));
        bent(30).expect_none(SLUG);
        assert_eq!(bent(31).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::with(ServiceKind::ClothesDryer).expect_none(SLUG);
    }
}
