//! A dryer's duct that is too long.

use measure::Len;
use plan::Element;
use plan::detail::heat::{
    DRYER_ELBOWS, DRYER_HALF_ANGLES, DRYER_LENGTH, DRYER_MAKER, DRYER_RIGHT_ANGLES,
};
use plan::element::ServiceKind;

use super::told::of_kind;
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "dryer-length",
    group: Group::Heat,
    title: "Length of a dryer's duct",
    page: "\
What
The rigid duct of a clothes dryer, from its flexible part to the outdoors, is at most 35 ft long, less an allowance for each
elbow: 5 ft for a mitred one of 90° and 2 1/2 ft for one of 45°, less for smooth ones; or as long as the dryer's
maker allows.

Why
Lint settles in a long duct, and burns.

Source
IRC M1502.4.6, Table M1502.4.6.1: 2018 to 2024.

How it is measured
The stated length, with the stated elbows' allowances taken off what is allowed. Where a maker's length is stated it counts in
the place of the 35 ft.

Cannot see
The duct's course: a dryer in the middle of a basement is what breaks this.

Exceptions
Dryers that need no duct; booster fans listed for dryers.

Remedies
A shorter way out, fewer or smoother elbows, a dryer whose maker allows more.
",
    cites: &[
        "dryer-length",
        "dryer-elbow-mitred",
        "dryer-elbow-half-mitred",
        "dryer-elbow-smooth-6",
        "dryer-elbow-half-smooth-6",
        "dryer-elbow-smooth-8",
        "dryer-elbow-half-smooth-8",
        "dryer-elbow-smooth-10",
        "dryer-elbow-half-smooth-10",
    ],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Lint settles in a long duct, and burns.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for element in of_kind(sheet, ServiceKind::ClothesDryer) {
        let Some(length) = sheet.ask(element, &DRYER_LENGTH).len() else { continue };
        let elbows = sheet.ask(element, &DRYER_RIGHT_ANGLES);
        let allowed = allowed(sheet, element);
        if length <= allowed {
            continue;
        }
        let title = format!("The duct of {} is too long", called(sheet, element.id));
        let finding = Finding::new(
            Severity::Correction,
            sheet.book.cite("dryer-length"),
            RULE.slug,
            vec![element.id],
            Phrase::text(capital(&title)),
            WHY,
        )
        .figures(Quantity::Len(length), Quantity::Len(allowed))
        .resting_on(&elbows);
        out.push(finding.at(Place::Under(element.id)));
    }
}

/// The longest duct with these elbows; not below zero.
fn allowed(sheet: &Sheet<'_>, element: &Element) -> Len {
    let maker = sheet.ask(element, &DRYER_MAKER).len();
    let longest = maker.unwrap_or_else(|| sheet.book.length("dryer-length"));
    (longest - taken_by_elbows(sheet, element)).max(Len::ZERO)
}

/// The length that the elbows of a dryer's duct take.
pub(super) fn taken_by_elbows(sheet: &Sheet<'_>, element: &Element) -> Len {
    let (right, half) = match sheet.ask(element, &DRYER_ELBOWS).word() {
        Some("smooth, 6 in radius") => ("dryer-elbow-smooth-6", "dryer-elbow-half-smooth-6"),
        Some("smooth, 8 in radius") => ("dryer-elbow-smooth-8", "dryer-elbow-half-smooth-8"),
        Some("smooth, 10 in radius") => ("dryer-elbow-smooth-10", "dryer-elbow-half-smooth-10"),
        _ => ("dryer-elbow-mitred", "dryer-elbow-half-mitred"),
    };
    let taken = |detail, slug: &'static str| {
        let n = sheet.ask(element, detail).number().unwrap_or(0);
        sheet.book.length(slug) * i32::try_from(n).unwrap_or(i32::MAX)
    };
    taken(&DRYER_RIGHT_ANGLES, right) + taken(&DRYER_HALF_ANGLES, half)
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::{Sample, at};

    const SLUG: &str = "dryer-length";

    /// A dryer whose duct is so many feet long and has so many mitred elbows of 90°.
    fn dryer(feet: i32, elbows: u32) -> Sample {
        Sample::room(144.0, 120.0)
            .service(ServiceKind::ClothesDryer, at(72.0, 0.0), Facing::NORTH)
            .state(&DRYER_LENGTH, Value::Length(Len::feet_inches(feet, 0)))
            .state(&DRYER_RIGHT_ANGLES, Value::Number(elbows))
    }

    #[test]
    fn clear_pass() {
        dryer(10, 2).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let long = dryer(40, 0).edition(edition);
            long.expect(SLUG, &["correction, measured 480\", required 420\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        // 35 ft less 5 ft for each of two mitred elbows.
        dryer(25, 2).expect_none(SLUG);
        dryer(26, 2).expect(SLUG, &["correction, measured 312\", required 300\""]);
        let unit = Value::Length(Len::feet_inches(25, 0) + Len::UNIT);
        assert_eq!(dryer(25, 2).state(&DRYER_LENGTH, unit).findings(SLUG).len(), 1);
    }

    #[test]
    fn smooth_elbows_and_a_maker_change_what_is_allowed() {
        // Smooth elbows of 8 in radius: 1 ft 7 in each.
        let smooth = dryer(31, 2).state(&DRYER_ELBOWS, Value::Word("smooth, 8 in radius"));
        smooth.expect_none(SLUG);
        let maker = |feet| Value::Length(Len::feet_inches(feet, 0));
        dryer(40, 2).state(&DRYER_MAKER, maker(60)).expect_none(SLUG);
        assert_eq!(dryer(51, 2).state(&DRYER_MAKER, maker(60)).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        // Nothing is stated of the duct, or there is no dryer.
        Sample::room(144.0, 120.0)
            .service(ServiceKind::ClothesDryer, at(72.0, 0.0), Facing::NORTH)
            .expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
