//! A bath fan whose duct is too long or too narrow.

use measure::Len;
use plan::Element;
use plan::detail::heat::{FAN_DUCT, FAN_ELBOWS, FAN_LENGTH, FAN_RATE};
use plan::element::ServiceKind;

use super::told::of_kind;
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "bath-fan-duct",
    group: Group::Heat,
    title: "Duct of a bath fan",
    page: "\
What
The duct of a bath fan is no longer than the table allows for its size, its kind and the rate of the fan; each elbow takes 15
ft of that.

Why
A fan that pushes into a long, narrow, ribbed duct moves no air: the mirror stays wet, and so does the wall.

Source
IRC Table M1504.2 (2021); its figures are taken for 2018 and 2024 too.

How it is measured
By the stated duct, its length and elbows and the rate of the fan. A rate between two of the table's takes the higher.

Cannot see
How the duct sags, and what the fan really moves.

Exceptions
A fan whose maker allows another duct: keep the sheet.

Remedies
A shorter way out, a larger or a smooth duct.
",
    cites: &["bath-fan-duct", "bath-fan-duct-4-smooth-50", "bath-fan-duct-4-smooth-80", "bath-fan-duct-4-smooth-100", "bath-fan-duct-4-flexible-50", "bath-fan-duct-4-flexible-80", "bath-fan-duct-5-flexible-80", "bath-fan-duct-5-flexible-100", "bath-fan-duct-5-flexible-125", "bath-fan-duct-5-flexible-150", "bath-fan-duct-6-flexible-100", "bath-fan-duct-6-flexible-125", "bath-fan-duct-6-flexible-150", "bath-fan-duct-6-flexible-200"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "A fan that pushes into a long, narrow duct moves no air.";

/// Each duct of the table with its rates in cfm and the limits of its length.
const TABLE: &[(&str, &[(u32, &str)])] = &[
    (
        "4 in smooth",
        &[
            (50, "bath-fan-duct-4-smooth-50"),
            (80, "bath-fan-duct-4-smooth-80"),
            (100, "bath-fan-duct-4-smooth-100"),
        ],
    ),
    ("4 in flexible", &[(50, "bath-fan-duct-4-flexible-50"), (80, "bath-fan-duct-4-flexible-80")]),
    (
        "5 in flexible",
        &[
            (80, "bath-fan-duct-5-flexible-80"),
            (100, "bath-fan-duct-5-flexible-100"),
            (125, "bath-fan-duct-5-flexible-125"),
            (150, "bath-fan-duct-5-flexible-150"),
        ],
    ),
    (
        "6 in flexible",
        &[
            (100, "bath-fan-duct-6-flexible-100"),
            (125, "bath-fan-duct-6-flexible-125"),
            (150, "bath-fan-duct-6-flexible-150"),
            (200, "bath-fan-duct-6-flexible-200"),
        ],
    ),
];

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for element in of_kind(sheet, ServiceKind::ExhaustFan) {
        out.extend(judge(sheet, element));
    }
}

fn judge(sheet: &Sheet<'_>, element: &Element) -> Option<Finding> {
    let rate = sheet.ask(element, &FAN_RATE).number()?;
    let length = sheet.ask(element, &FAN_LENGTH).len()?;
    let duct = sheet.ask(element, &FAN_DUCT).word()?;
    let elbows = sheet.ask(element, &FAN_ELBOWS);
    let (_, rates) = TABLE.iter().find(|(word, _)| *word == duct)?;
    let limit = rates.iter().find(|(listed, _)| rate <= *listed).map(|(_, slug)| *slug);
    let taken = sheet.book.length("bath-fan-duct")
        * i32::try_from(elbows.number().unwrap_or(0)).unwrap_or(i32::MAX);
    let allowed = limit.map(|slug| (sheet.book.length(slug) - taken).max(Len::ZERO));
    if allowed.is_some_and(|allowed| length <= allowed) {
        return None;
    }
    let name = called(sheet, element.id);
    let (title, required) = match allowed {
        Some(len) => (format!("The duct of {name} is too long"), Quantity::Len(len)),
        None => (
            format!("The duct of {name} is too narrow for {rate} cfm"),
            Quantity::Words("a larger duct".to_owned()),
        ),
    };
    let citation = sheet.book.cite(limit.unwrap_or("bath-fan-duct"));
    let mut finding = Finding::new(
        Severity::Correction,
        citation,
        RULE.slug,
        vec![element.id],
        Phrase::text(capital(&title)),
        WHY,
    )
    .figures(Quantity::Len(length), required)
    .resting_on(&elbows);
    finding.places.push(Place::Of(element.id));
    Some(finding)
}

#[cfg(test)]
mod tests {

    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "bath-fan-duct";

    /// A fan of a rate, its duct so many feet long, with so many elbows.
    fn fan(rate: u32, duct: &'static str, feet: i32, elbows: u32) -> Sample {
        Sample::with(ServiceKind::ExhaustFan)
            .state(&FAN_RATE, Value::Number(rate))
            .state(&FAN_DUCT, Value::Word(duct))
            .state(&FAN_LENGTH, Value::Length(Len::feet_inches(feet, 0)))
            .state(&FAN_ELBOWS, Value::Number(elbows))
    }

    #[test]
    fn clear_pass() {
        fan(50, "4 in smooth", 20, 1).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        // The source's own trap: 80 cfm on a flexible duct of 4 in with one elbow.
        for edition in Edition::ALL {
            let ribbed = fan(80, "4 in flexible", 10, 1).edition(edition);
            ribbed.expect(SLUG, &["correction, measured 120\", required 0\""]);
        }
    }

    /// The whole of IRC Table M1504.2 as it is used: each length passes, a foot more does not.
    #[test]
    fn at_the_limit() {
        for (duct, rate, feet) in [
            ("4 in smooth", 50, 114),
            ("4 in smooth", 80, 31),
            ("4 in smooth", 100, 10),
            ("4 in flexible", 50, 56),
            ("4 in flexible", 80, 4),
            ("5 in flexible", 80, 81),
            ("5 in flexible", 100, 42),
            ("5 in flexible", 125, 16),
            ("5 in flexible", 150, 2),
            ("6 in flexible", 100, 158),
            ("6 in flexible", 125, 91),
            ("6 in flexible", 150, 55),
            ("6 in flexible", 200, 18),
        ] {
            fan(rate, duct, feet, 0).expect_none(SLUG);
            assert_eq!(fan(rate, duct, feet + 1, 0).findings(SLUG).len(), 1, "{duct} {rate}");
        }
        // Two elbows take 30 ft.
        fan(50, "4 in smooth", 84, 2).expect_none(SLUG);
        assert_eq!(fan(50, "4 in smooth", 85, 2).findings(SLUG).len(), 1);
        // Between 50 and 80 cfm the length of 80 counts.
        assert_eq!(fan(51, "4 in smooth", 32, 0).findings(SLUG).len(), 1);
    }

    #[test]
    fn a_duct_that_the_table_does_not_allow() {
        let narrow = fan(100, "4 in flexible", 1, 0);
        narrow.expect(SLUG, &["correction, measured 12\", required a larger duct"]);
    }

    #[test]
    fn does_not_apply() {
        Sample::with(ServiceKind::ExhaustFan).expect_none(SLUG);
        Sample::with(ServiceKind::SupplyRegister).expect_none(SLUG);
    }
}
