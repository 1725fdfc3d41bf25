//! A small or high escape window that is excused as a like-for-like replacement.

use super::candidate::Candidate;
use super::choice::faulty;
use super::{escape_area, escape_height, escape_sill, escape_width};
use crate::{Check, Finding, Group, On, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "escape-replacement",
    group: Group::WayOut,
    title: "Escape window that is excused as a replacement",
    page: "\
What
A window that takes the place of another in the same frame or rough opening need not meet the clear size and the height
above the floor, if it is the maker's largest standard size for it and of the same or a better kind.

Why
A larger window would need a larger hole in the wall. The exception rests on the maker's word, so the department wants to
see it.

Source
IRC R310.2.5 (2018), R310.5 (2021), in 2024 R319.5 from memory.

How it is measured
By what is stated of the window, in a house that stands. Where the window falls short of the clear area, height, width or
the height above the floor, and is excused by this alone, it is marked to verify.

Cannot see
The old frame, the maker's list of sizes, and the old window's kind.

Exceptions
None where the occupancy changes. Some places add conditions of their own, for rooms that need a licence or are let.

Remedies
Keep the maker's statement for the department, or choose a window that meets the size.
",
    cites: &["escape-replacement"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "It is smaller or higher than an escape opening may be, and only a like-for-like replacement in the \
                   maker's largest size is let be.";

pub(super) fn judge(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    (candidate.replaces(sheet) && lacks(sheet, candidate).is_some()).then_some(Severity::Verify)
}

/// What it falls short of.
fn lacks(sheet: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<(Quantity, Quantity)> {
    let (width, height) = candidate.clear_limits(sheet);
    let opening = candidate.facts;
    let len = |measured, limit| Some((Quantity::Len(measured), Quantity::Len(limit)));
    if escape_area::short(sheet, candidate) {
        let limit = candidate.area_limit(sheet).value;
        Some((Quantity::Area(candidate.area()), Quantity::Area(limit)))
    } else if escape_height::short(sheet, candidate) {
        len(opening.clear_height, height.value)
    } else if escape_width::short(sheet, candidate) {
        len(opening.clear_width, width.value)
    } else if escape_sill::high(sheet, candidate) {
        len(candidate.sill(&sheet.plan().site), sheet.book.length("escape-sill"))
    } else {
        None
    }
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let Some((measured, required)) = lacks(sheet, &choice.candidate) else { continue };
        let citation = sheet.book.cite(RULE.slug);
        let fault = "rests on the exception for replaced windows";
        out.push(
            choice
                .finding(sheet, RULE.slug, severity, citation, fault, WHY)
                .figures(measured, required)
                .assuming("the department accepts the maker's statement of its largest size"),
        );
    }
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::detail::Value;
    use plan::detail::opening::{OCCUPANCY, REPLACES};
    use plan::element::Window;

    use crate::rules::way_out::sample::{bedroom, good_window, window, with_window};
    use crate::testing::{Sample, inch};

    const SLUG: &str = "escape-replacement";
    const DEMANDS: [&str; 4] = ["escape-area", "escape-height", "escape-width", "escape-sill"];
    const LARGEST: Value = Value::Word("yes, the maker's largest");

    fn replaced(window: Window) -> Sample {
        bedroom(window).state(&REPLACES, LARGEST)
    }

    #[test]
    fn clear_pass() {
        replaced(good_window()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let small = replaced(window(18.0, 20.0)).edition(edition);
            small.expect(SLUG, &["verify, measured 2.5 sq ft, required 5.0 sq ft"]);
            DEMANDS.iter().for_each(|slug| small.expect_none(slug));
        }
        let high = replaced(Window { sill: inch(50.0), grade: inch(50.0), ..good_window() });
        high.expect(SLUG, &["verify, measured 50\", required 44\""]);
        high.expect_none("escape-sill");
        replaced(window(50.0, 20.0)).expect(SLUG, &["verify, measured 20\", required 24\""]);
        replaced(window(18.0, 50.0)).expect(SLUG, &["verify, measured 18\", required 20\""]);
    }

    #[test]
    fn at_the_limit() {
        replaced(window(30.0, 24.0)).expect_none(SLUG);
        let short = replaced(window(30.0, 23.9921875));
        short.expect(SLUG, &["verify, measured 4.9 sq ft, required 5.0 sq ft"]);
        // A window that meets every demand is chosen before one that is excused.
        with_window(short, good_window()).expect_none(SLUG);
    }

    #[test]
    fn does_not_apply() {
        let small = || bedroom(window(20.0, 24.0));
        let held = |sample: Sample| {
            sample.expect_none(SLUG);
            assert_eq!(sample.findings("escape-area").len(), 1);
        };
        held(small());
        held(small().state(&REPLACES, Value::Word("yes, not the largest")));
        held(small().state(&REPLACES, LARGEST).new_house());
        held(
            small().edition(Edition::E2018).state(&REPLACES, LARGEST).state(&OCCUPANCY, Value::Yes),
        );
    }
}
