//! An escape opening whose bottom is too high above the floor.

use measure::Len;

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-sill",
    group: Group::WayOut,
    title: "Height of the escape opening above the floor",
    page: "\
What
The bottom of the clear opening is at most 44 in above the finished floor.

Why
A child or an old person must reach it and climb out without help.

Source
IRC R310.2.2 (2018, sill height), R310.2.3 (2021), R319.2.3 (2024): bottom of the clear opening.

How it is measured
From the finished floor: the floor build-up is taken off the height above the slab. In the 2018 edition
the bottom of the clear opening is taken for the sill.

Cannot see
A floor that is thicker in this room than elsewhere.

Exceptions
The model code gives no credit for a step, platform or piece of furniture below the window; some places
do. Like-for-like replacement windows (escape-replacement).

Remedies
A window with its bottom nearer to the floor.
",
    cites: &["escape-sill", "escape-sill-platform"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "A child or an old person must reach the opening and climb out without help; a step below it \
                   doesn't count in the model code.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    let limit = sheet.book.len("escape-sill").value;
    let sill = candidate.sill(&sheet.plan().site);
    if !high(sheet, candidate) || candidate.replaces(sheet) {
        return None;
    }
    // Where a platform counts, one that is not drawn may be there.
    Some(if sill - platform(sheet) <= limit { Severity::Verify } else { Severity::Correction })
}

/// Whether its bottom is too high, no matter whether it is excused.
pub(super) fn high(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> bool {
    candidate.sill(&sheet.plan().site) > sheet.book.len("escape-sill").value
}

/// The highest platform that the place counts below the opening.
fn platform(sheet: &Sheet<'_>) -> Len {
    sheet.book.length("escape-sill-platform")
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let limit = sheet.book.len("escape-sill");
        let measured = choice.candidate.sill(&sheet.plan().site);
        let fault = "is too high above the floor";
        let finding = choice
            .finding(sheet, RULE.slug, severity, limit.citation, fault, WHY)
            .figures(Quantity::Len(measured), Quantity::Len(limit.value));
        let platform = platform(sheet);
        out.push(if platform > Len::ZERO && measured - platform <= limit.value {
            finding.assuming("a fixed platform below the opening, which this place counts")
        } else {
            finding
        });
    }
}

#[cfg(test)]
mod tests {
    use measure::Len;
    use plan::element::{DoorOperation, Window};
    use plan::{Amendment, Edition};

    use crate::rules::way_out::sample::{bedroom, bedroom_with_door, good_window};
    use crate::testing::inch;

    const SLUG: &str = "escape-sill";

    fn sill(sill: Len) -> Window {
        Window { sill, grade: sill, ..good_window() }
    }

    #[test]
    fn clear_pass() {
        bedroom(good_window()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = bedroom(sill(inch(46.0))).edition(edition);
            sample.expect(SLUG, &["correction, measured 46\", required 44\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        bedroom(sill(Len::inches(44))).expect_none(SLUG);
        let high = bedroom(sill(Len::inches(44) + Len::UNIT));
        high.expect(SLUG, &["correction, measured 44 1/16\", required 44\""]);
        // From the finished floor: 1/2 in of flooring gives the 1/2 in back.
        let floor = |build: f64| bedroom(sill(inch(44.5))).site(|s| s.floor_build = inch(build));
        floor(0.5).expect_none(SLUG);
        assert_eq!(floor(0.484375).findings(SLUG).len(), 1);
    }

    #[test]
    fn where_a_place_counts_a_platform_it_is_left_to_the_office() {
        let place = |key: &'static str, inches: f64| {
            bedroom(sill(inch(inches))).site(move |s| s.place = key.to_owned())
        };
        // 44 in and a landing of at most 24 in: 68 in.
        place("ankeny-ia", 68.0).expect(SLUG, &["verify, measured 68\", required 44\""]);
        place("ankeny-ia", 68.5).expect(SLUG, &["correction, measured 68 1/2\", required 44\""]);
        place("fargo-nd", 48.0).expect_none(SLUG);
        place("fargo-nd", 48.5).expect(SLUG, &["correction, measured 48 1/2\", required 48\""]);
        place("wisconsin", 60.0).expect(SLUG, &["verify, measured 60\", required 46\""]);
    }

    #[test]
    fn an_amendment_in_the_plan_moves_the_limit() {
        let amended = bedroom(sill(inch(50.0))).site(|s| {
            let texts = ["escape-sill", "50 in", "the handout"].map(str::to_owned);
            let [limit, figure, reason] = texts;
            s.amendments = vec![Amendment { limit, figure, reason }];
        });
        amended.expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        bedroom_with_door(DoorOperation::Hinged, 36.0).expect_none(SLUG);
    }
}
