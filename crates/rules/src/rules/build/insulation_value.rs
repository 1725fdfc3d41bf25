//! Furred foundation walls with too little insulation for their climate.

use plan::detail::site::CLIMATE_ZONE;
use plan::detail::wall::{CAVITY_R, FOAM_R};
use plan::{Body, Element};

use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::{fitting, is_new};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "insulation-value",
    group: Group::Build,
    title: "Insulation of a basement wall by climate zone",
    page: "\
What
The wall of a conditioned basement is insulated by the climate zone: R-5 in one sheet or R-13 between studs in zone 3; R-10 or
R-13 in zone 4; R-15 or R-19 in zones 5 to 8 and Marine 4, or R-13 between studs with R-5 in one sheet. Nothing in zones 1 and
2. It goes from the top of the wall to 10 ft below grade or to the floor.

Why
Bare concrete takes a third of the heat of a house, and sweats behind the studs.

Source
IRC N1102.1.2, N1102.1.3 (energy code R402.1), for 2018; 2021 and 2024 with the figures of that time.

How it is measured
By the R-values that are stated of the foam and of the cavity of each run of new furring, by their labels, against the zone
that is stated of the site. Film, board, concrete and gap don't count.

Cannot see
Warm-humid counties, where zone 3 asks for none. Insulation outside the wall. A batt that is squeezed.

Exceptions
Unconditioned basements whose floor above is insulated. A state that asks for its own: amend the limit.

Remedies
Thicker foam on the concrete before the studs, which also keeps the studs dry.
",
    cites: &["insulation-zone-3", "insulation-zone-4", "insulation-zone-5"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str =
    "Bare concrete takes a third of the heat of a house, and sweats behind the studs.";

/// What a zone asks for: the R-value of a sheet, that of a cavity, and whether 13 between studs with 5 in a sheet
/// serve too.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Asked {
    slug: &'static str,
    sheet: u32,
    cavity: u32,
    both: bool,
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let furring: Vec<&Element> = fitting(sheet, &FOAM_R)
        .filter(|e| is_new(sheet, e) && matches!(e.body, Body::Furring(_)))
        .collect();
    if furring.is_empty() {
        return;
    }
    let zone = sheet.ask_site(&CLIMATE_ZONE);
    let Some(word) = zone.word() else {
        out.push(ask(sheet, &furring));
        return;
    };
    let Some(asked) = asked(sheet, word) else { return };
    for element in furring {
        let (foam, cavity) = (sheet.ask(element, &FOAM_R), sheet.ask(element, &CAVITY_R));
        let (continuous, between) = (foam.number(), cavity.number());
        if meets(asked, continuous.unwrap_or(0), between.unwrap_or(0)) {
            continue;
        }
        let say = |r: Option<u32>| r.map_or("not stated".to_owned(), |r| format!("R-{r}"));
        let measured = format!("foam {}, cavity {}", say(continuous), say(between));
        let mut required = format!("R-{} foam or R-{} cavity", asked.sheet, asked.cavity);
        if asked.both {
            required += ", or R-13 with R-5 foam";
        }
        let title = format!(
            "{} has too little insulation for zone {word}",
            capital(&called(sheet, element.id))
        );
        let finding = Finding::new(
            Severity::Correction,
            sheet.book.cite(asked.slug),
            RULE.slug,
            vec![element.id],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Words(measured), Quantity::Words(required))
        .resting_on(&foam)
        .resting_on(&cavity);
        out.push(finding.at(Place::Of(element.id)));
    }
}

/// One question for all runs while the zone is not stated.
fn ask(sheet: &Sheet<'_>, furring: &[&Element]) -> Finding {
    let ids = furring.iter().map(|e| e.id).collect();
    let title = Phrase::text("State the climate zone: insulation is judged by it");
    let finding = Finding::new(
        Severity::Verify,
        sheet.book.cite("insulation-zone-5"),
        RULE.slug,
        ids,
        title,
        WHY,
    )
    .figures(
        Quantity::Words("climate zone not stated".to_owned()),
        Quantity::Words("by zone".to_owned()),
    );
    furring.iter().fold(finding, |finding, e| finding.at(Place::Of(e.id)))
}

/// What a zone asks for by the edition in force; nothing in the warm ones.
fn asked(sheet: &Sheet<'_>, zone: &str) -> Option<Asked> {
    let (slug, cavity, both) = match zone {
        "3" => ("insulation-zone-3", 13, false),
        "4" => ("insulation-zone-4", 13, false),
        // The second way is from memory for 2018.
        "4 marine" | "5" | "6" | "7" | "8" => ("insulation-zone-5", 19, true),
        _ => return None,
    };
    Some(Asked { slug, sheet: sheet.book.count(slug).value, cavity, both })
}

fn meets(asked: Asked, foam: u32, cavity: u32) -> bool {
    foam >= asked.sheet || cavity >= asked.cavity || (asked.both && cavity >= 13 && foam >= 5)
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "insulation-value";

    fn wall(zone: &'static str, foam: u32, cavity: u32) -> Sample {
        Sample::with_furring()
            .state(&FOAM_R, Value::Number(foam))
            .state(&CAVITY_R, Value::Number(cavity))
            .state_site(&CLIMATE_ZONE, Value::Word(zone))
    }

    #[test]
    fn clear_pass() {
        wall("5", 20, 0).expect_none(SLUG);
        wall("2", 0, 0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            wall("4", 5, 0).edition(edition).expect(
                SLUG,
                &["correction, measured foam R-5, cavity R-0, required R-10 foam or R-13 cavity"],
            );
        }
    }

    /// The table of required R-values: PNNL Building America Solution Center, 2009 to 2021 (by the fact sheet).
    #[test]
    fn at_the_limit() {
        for (zone, sheet, cavity) in [
            ("3", 5, 13),
            ("4", 10, 13),
            ("4 marine", 15, 19),
            ("5", 15, 19),
            ("6", 15, 19),
            ("7", 15, 19),
            ("8", 15, 19),
        ] {
            wall(zone, sheet, 0).expect_none(SLUG);
            assert_eq!(wall(zone, sheet - 1, 0).findings(SLUG).len(), 1, "{zone}");
            wall(zone, 0, cavity).expect_none(SLUG);
            assert_eq!(wall(zone, 0, cavity - 1).findings(SLUG).len(), 1, "{zone}");
        }
        wall("6", 5, 13).expect_none(SLUG);
        assert_eq!(wall("6", 4, 13).findings(SLUG).len(), 1);
        assert_eq!(wall("6", 5, 12).findings(SLUG).len(), 1);
    }

    #[test]
    fn a_value_that_is_not_stated_is_to_be_verified() {
        let bare = Sample::with_furring().state_site(&CLIMATE_ZONE, Value::Word("5"));
        let said = "verify, measured foam not stated, cavity not stated, \
                    required R-15 foam or R-19 cavity, or R-13 with R-5 foam";
        bare.expect(SLUG, &[said]);
    }

    #[test]
    fn the_zone_is_asked_for_once() {
        let bare = Sample::with_furring();
        bare.expect(SLUG, &["verify, measured climate zone not stated, required by zone"]);
    }

    #[test]
    fn does_not_apply() {
        // Nothing is furred, or in a warm zone.
        wall("2", 0, 0).expect_none(SLUG);
        Sample::room(144.0, 120.0).state_site(&CLIMATE_ZONE, Value::Word("7")).expect_none(SLUG);
        wall("5", 0, 0).existing().expect_none(SLUG);
    }
}
