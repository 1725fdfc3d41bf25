//! Batts with too little foam between them and the concrete.

use plan::Element;
use plan::detail::site::CLIMATE_ZONE;
use plan::detail::wall::{CAVITY_R, FOAM_R};

use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::new_work;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "foam-before-batts",
    group: Group::Build,
    title: "Foam before batts",
    page: "\
What
Where batts stand before foam on a foundation wall, the foam has at least R-2.5 in zone Marine 4, R-5 in zone 5, R-7.5 in zone 6
and R-10 in zones 7 and 8, for walls of 2x4.

Why
The face of the foam is then too warm for room air to condense on it behind the batts.

Source
IRC R702.7, ratios of its class III table, from memory; meant for the part of the wall above the ground. A forum of builders gives
the figure of zone 6.

How it is measured
By the R-values stated of foam and cavity of each run of new furring and by the stated zone.

Cannot see
Air that leaks past the batts, and how much of the wall stands above the ground.

Exceptions
Foam alone, and foam within the studs.

Remedies
Thicker foam, or none of the batts.
",
    cites: &["foam-batts-4-marine", "foam-batts-5", "foam-batts-6", "foam-batts-7"],
    check: Check::Plan(&[], check),
    remedies: None,
};

const WHY: &str = "Room air condenses on the cold face of the foam behind the batts.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    let slug = match sheet.ask_site(&CLIMATE_ZONE).word() {
        Some("4 marine") => "foam-batts-4-marine",
        Some("5") => "foam-batts-5",
        Some("6") => "foam-batts-6",
        Some("7" | "8") => "foam-batts-7",
        _ => return,
    };
    for element in new_work(sheet, &FOAM_R) {
        out.extend(judge(sheet, element, slug));
    }
}

fn judge(sheet: &Sheet<'_>, element: &Element, slug: &'static str) -> Option<Finding> {
    let limit = sheet.book.count(slug);
    sheet.ask(element, &CAVITY_R).number().filter(|r| *r > 0)?;
    let foam = sheet.ask(element, &FOAM_R).number()?;
    if foam * 10 >= limit.value {
        return None;
    }
    let title =
        format!("{} has too little foam before its batts", capital(&called(sheet, element.id)));
    let tenths = |n: u32| match n % 10 {
        0 => format!("R-{}", n / 10),
        rest => format!("R-{}.{rest}", n / 10),
    };
    let mut finding = Finding::new(
        Severity::Advice,
        limit.citation,
        RULE.slug,
        vec![element.id],
        Phrase::text(title),
        WHY,
    )
    .figures(
        Quantity::Words(format!("R-{foam} foam")),
        Quantity::Words(format!("{} foam", tenths(limit.value))),
    );
    finding.places.push(Place::Of(element.id));
    Some(finding)
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;

    use super::*;
    use crate::testing::Sample;

    const SLUG: &str = "foam-before-batts";

    fn wall(zone: &'static str, foam: u32, cavity: u32) -> Sample {
        Sample::with_furring()
            .state(&FOAM_R, Value::Number(foam))
            .state(&CAVITY_R, Value::Number(cavity))
            .state_site(&CLIMATE_ZONE, Value::Word(zone))
    }

    #[test]
    fn clear_pass() {
        wall("5", 10, 13).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let thin = wall("6", 5, 13).edition(edition);
            thin.expect(SLUG, &["advice, measured R-5 foam, required R-7.5 foam"]);
        }
    }

    #[test]
    fn at_the_limit() {
        for (zone, least) in [("4 marine", 3), ("5", 5), ("6", 8), ("7", 10), ("8", 10)] {
            wall(zone, least, 13).expect_none(SLUG);
            assert_eq!(wall(zone, least - 1, 13).findings(SLUG).len(), 1, "{zone}");
        }
    }

    #[test]
    fn does_not_apply() {
        wall("3", 0, 13).expect_none(SLUG);
        wall("6", 2, 0).expect_none(SLUG);
        Sample::with_furring().expect_none(SLUG);
    }
}
