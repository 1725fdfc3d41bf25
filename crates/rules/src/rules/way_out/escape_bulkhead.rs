//! A door below grade under a bulkhead that serves as escape opening.

use measure::{Area, Len};
use plan::detail::Detail;
use plan::detail::opening::{BULKHEAD, BULKHEAD_LENGTH, BULKHEAD_WIDTH};

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Citation, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-bulkhead",
    group: Group::WayOut,
    title: "Bulkhead over a door that serves as escape opening",
    page: "\
What
A door below the ground that leads out under a bulkhead serves as escape opening where the bulkhead, with its covers fully
open, leaves the clear size of an escape opening, and the covers open from inside without a key or a tool.

Why
Who has opened the door still has to get through the covers.

Source
IRC R310.4 (2021), R319.4 (2024), seen second-hand in an older wording. In the 2018 edition R310.3.2, from memory, asks for a
well that is at least 36 in wide.

How it is measured
By the clear width and length that are stated of the bulkhead; until they are stated they are asked for. The area is
judged as that of a grade-floor opening: between 5.0 and 5.7 sq ft it is marked to verify. That the least height of an
opening is taken along the covers is our own reading.

Cannot see
The weight of the covers, the snow on them, and the stair or ladder below.

Exceptions
A door that is nobody's way out.

Remedies
A larger bulkhead, or covers with an inside latch.
",
    cites: &["escape-bulkhead", "bulkhead-width", "bulkhead-length", "escape-area-grade-floor", "escape-area"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "Who has opened the door must still get out through the covers.";

/// What is wrong with a bulkhead.
struct Fault {
    severity: Severity,
    citation: Citation,
    text: &'static str,
    measured: Quantity,
    required: Quantity,
    assuming: Option<String>,
}

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    fault(sheet, candidate).map(|fault| fault.severity)
}

fn fault(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Fault> {
    let door = sheet.plan().get(candidate.facts.id)?;
    if !BULKHEAD.fits(&door.body) {
        return None;
    }
    let words = |text: &str| Quantity::Words(text.to_owned());
    let covers = sheet.ask(door, &BULKHEAD);
    if covers.is(&["none"]) {
        return None;
    }
    let fault = |severity, citation, text, measured, required| {
        Some(Fault { severity, citation, text, measured, required, assuming: None })
    };
    if covers.is(&["covers locked or stuck"]) {
        let citation = sheet.book.cite("escape-bulkhead");
        let text = "leads to covers that don't open from inside";
        let (measured, required) = (words("locked or stuck"), words("open without key or tool"));
        return fault(Severity::Correction, citation, text, measured, required);
    }
    let size = |detail: &'static Detail, slug: &'static str| {
        let limit = sheet.book.len(slug);
        (sheet.ask(door, detail), limit)
    };
    let sizes =
        [size(&BULKHEAD_WIDTH, "bulkhead-width"), size(&BULKHEAD_LENGTH, "bulkhead-length")];
    let mut known = [Len::ZERO; 2];
    for (n, (answer, limit)) in sizes.into_iter().enumerate() {
        let required = Quantity::Len(limit.value);
        let Some(len) = answer.len() else {
            let text = "leads out under a bulkhead of unknown size";
            let asked =
                fault(Severity::Verify, limit.citation, text, words("not stated"), required);
            let assuming = Some(format!("“{}” is not stated", answer.detail.word));
            return asked.map(|fault| Fault { assuming, ..fault });
        };
        if len < limit.value {
            let text = "leads out under a bulkhead that is too small";
            return fault(Severity::Correction, limit.citation, text, Quantity::Len(len), required);
        }
        known[n] = len;
    }
    let area = Area::of_rect(known[0], known[1]);
    let (least, full) =
        (sheet.book.area("escape-area-grade-floor"), sheet.book.area("escape-area"));
    if area >= full.value {
        return None;
    }
    let text = "leads out under a bulkhead that is too small";
    if area < least.value {
        let required = Quantity::Area(least.value);
        return fault(Severity::Correction, least.citation, text, Quantity::Area(area), required);
    }
    let required = Quantity::Area(full.value);
    let open = fault(Severity::Verify, full.citation, text, Quantity::Area(area), required);
    let assuming = Some("the office counts the bulkhead as a grade-floor opening".to_owned());
    open.map(|fault| Fault { assuming, ..fault })
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let Some(fault) = fault(sheet, &choice.candidate) else { continue };
        let finding = choice
            .finding(sheet, RULE.slug, severity, fault.citation, fault.text, WHY)
            .figures(fault.measured, fault.required);
        out.push(match fault.assuming {
            Some(assuming) => finding.assuming(assuming),
            None => finding,
        });
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::Edition;
    use plan::detail::Value;
    use plan::element::DoorOperation;

    use super::*;
    use crate::rules::way_out::sample::{bedroom, bedroom_with_door, good_window};
    use crate::testing::{Sample, inch};

    const SLUG: &str = "escape-bulkhead";
    const OPENS: Value = Value::Word("covers open from inside");

    fn door() -> Sample {
        bedroom_with_door(DoorOperation::Hinged, 36.0)
    }

    fn bulkhead(width: f64, length: f64) -> Sample {
        door()
            .state(&BULKHEAD, OPENS)
            .state(&BULKHEAD_WIDTH, Value::Length(inch(width)))
            .state(&BULKHEAD_LENGTH, Value::Length(inch(length)))
    }

    #[test]
    fn clear_pass() {
        for edition in Edition::ALL {
            bulkhead(48.0, 60.0).edition(edition).expect_none(SLUG);
        }
    }

    #[test]
    fn clear_fail() {
        let locked = bulkhead(48.0, 60.0).state(&BULKHEAD, Value::Word("covers locked or stuck"));
        for edition in Edition::ALL {
            let words = "correction, measured locked or stuck, required open without key or tool";
            locked.clone().edition(edition).expect(SLUG, &[words]);
        }
    }

    #[test]
    fn at_the_limit() {
        for edition in [Edition::E2021, Edition::E2024] {
            let of = |width, length| bulkhead(width, length).edition(edition);
            of(20.0, 60.0).expect_none(SLUG);
            of(19.5, 60.0).expect(SLUG, &["correction, measured 19 1/2\", required 20\""]);
            of(40.0, 24.0).expect_none(SLUG);
            of(40.0, 23.5).expect(SLUG, &["correction, measured 23 1/2\", required 24\""]);
            // 34.2 x 24 in are 5.7 sq ft, 30 x 24 in are 5.0 sq ft.
            of(34.203125, 24.0).expect_none(SLUG);
            of(34.0, 24.0).expect(SLUG, &["verify, measured 5.6 sq ft, required 5.7 sq ft"]);
            of(30.0, 24.0).expect(SLUG, &["verify, measured 5.0 sq ft, required 5.7 sq ft"]);
            of(28.0, 24.0).expect(SLUG, &["correction, measured 4.6 sq ft, required 5.0 sq ft"]);
        }
    }

    #[test]
    fn the_2018_edition_asks_for_a_wider_one() {
        let of = |width| bulkhead(width, 60.0).edition(Edition::E2018);
        of(36.0).expect_none(SLUG);
        of(35.5).expect(SLUG, &["correction, measured 35 1/2\", required 36\""]);
    }

    #[test]
    fn its_size_is_asked_for() {
        let open = door().edition(Edition::E2021).state(&BULKHEAD, OPENS);
        open.expect(SLUG, &["verify, measured not stated, required 20\""]);
        assert_eq!(open.findings(SLUG)[0].assumed, ["“Bulkhead, clear width” is not stated"]);
        let half = open.state(&BULKHEAD_WIDTH, Value::Length(Len::inches(48)));
        half.expect(SLUG, &["verify, measured not stated, required 24\""]);
    }

    #[test]
    fn does_not_apply() {
        door().expect_none(SLUG);
        bedroom(good_window()).expect_none(SLUG);
    }
}
