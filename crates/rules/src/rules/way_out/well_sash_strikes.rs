//! An out-swing sash that strikes its well.

use measure::Len;
use plan::element::{Window, WindowOperation};

use super::candidate::Candidate;
use super::choice::faulty;
use crate::{Check, Finding, Group, On, Phrase, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "well-sash-strikes",
    group: Group::WayOut,
    title: "Out-swing sash in a well",
    page: "\
What
The escape opening opens fully inside its well: a casement or awning sash must not strike the far side.

Why
A casement that a well stopped at 28 in left 20 in to climb through.

Source
IRC R310.2.3 (2018), R310.4.1 (2021); the 2024 section was not seen.

How it is measured
A casement sash is at least as wide as its clear opening and at most as wide as its frame; an awning sash
at most as high as its frame. A well that reaches out less than the clear opening of a casement stops the
sash for certain. One that reaches out less than the frame may, and is marked to verify.

Cannot see
How deep in the wall the window sits, and hinges that draw the sash in as it opens. The ladder in the
path of the sash.

Exceptions
Sliders and hung windows don't swing; hoppers swing in.

Remedies
A well that reaches farther out, or a slider or hung window.
",
    cites: &["well-sash"],
    check: Check::Plan(&[On::Outside], check),
    remedies: None,
};

const WHY: &str = "The sash strikes the far side of the well before it is fully open, and what is left may be too \
                   narrow to climb through.";

pub(super) fn judge(_: &Sheet<'_>, candidate: &Candidate<'_>) -> Option<Severity> {
    strike(candidate).map(|strike| strike.severity)
}

/// A sash that is stopped, or may be.
struct Strike {
    severity: Severity,
    /// From the wall to the far side of the well.
    room: Len,
    /// What the sash needs to open fully.
    sash: Len,
}

fn strike(candidate: &Candidate<'_>) -> Option<Strike> {
    let window: &Window = candidate.window()?;
    let room = candidate.well()?.projection;
    let (at_least, at_most) = match window.operation {
        WindowOperation::Casement => (candidate.facts.clear_width, window.frame_width),
        WindowOperation::Awning => (Len::ZERO, window.frame_height),
        WindowOperation::Slider
        | WindowOperation::Hung
        | WindowOperation::Hopper
        | WindowOperation::Fixed => return None,
    };
    if room < at_least {
        Some(Strike { severity: candidate.size_severity(), room, sash: at_least })
    } else if room < at_most {
        Some(Strike { severity: Severity::Verify, room, sash: at_most })
    } else {
        None
    }
}

/// The clear width left beside a casement sash of a width that a well stops: the sash is the long side of a
/// right triangle, the well its one leg, and the other leg is what the sash covers of the opening.
fn left_clear(sash: Len, room: Len) -> Len {
    let square = |l: Len| i64::from(l.units()) * i64::from(l.units());
    let covered = (square(sash) - square(room)).max(0).isqrt();
    sash - Len::from_units(i32::try_from(covered).unwrap_or(i32::MAX))
}

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (choice, severity) in faulty(sheet, judge) {
        let Some(strike) = strike(&choice.candidate) else { continue };
        let citation = sheet.book.cite("well-sash");
        let certain = severity == Severity::Correction;
        let fault = if certain { "strikes its well" } else { "may strike its well" };
        let mut finding = choice
            .finding(sheet, RULE.slug, severity, citation, fault, WHY)
            .figures(Quantity::Len(strike.room), Quantity::Len(strike.sash));
        if certain {
            let left = left_clear(strike.sash, strike.room);
            finding.why = Phrase::text(WHY).then(" Here it leaves about ").inches(left).then(".");
        } else {
            finding = finding.assuming("the sash is narrower than the frame and opens fully");
        }
        out.push(finding);
    }
}

#[cfg(test)]
mod tests {
    use measure::System;
    use plan::Edition;
    use plan::element::{Window, WindowOperation};

    use super::left_clear;
    use crate::rules::way_out::sample::{bedroom, good_window, window, window_in_well};
    use crate::testing::{Sample, inch};

    const SLUG: &str = "well-sash-strikes";

    /// A window of a clear width (and a frame 4 in wider) in a well that reaches out so far.
    fn in_well(operation: WindowOperation, clear: f64, projection: f64) -> Sample {
        let well = window_in_well(60.0, projection, 40.0);
        bedroom(Window { grade: well.grade, well: well.well, operation, ..window(clear, 42.0) })
    }

    #[test]
    fn clear_pass() {
        in_well(WindowOperation::Casement, 30.0, 48.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = in_well(WindowOperation::Casement, 40.0, 36.0).edition(edition);
            sample.expect(SLUG, &["correction, measured 36\", required 40\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        in_well(WindowOperation::Casement, 36.0, 40.0).expect_none(SLUG);
        let frame = in_well(WindowOperation::Casement, 36.0, 39.984375);
        frame.expect(SLUG, &["verify, measured 39 15/16\", required 40\""]);
        let clear = in_well(WindowOperation::Casement, 36.0, 36.0);
        clear.expect(SLUG, &["verify, measured 36\", required 40\""]);
        let stopped = in_well(WindowOperation::Casement, 36.0, 35.984375);
        stopped.expect(SLUG, &["correction, measured 35 15/16\", required 36\""]);
    }

    #[test]
    fn does_not_apply() {
        bedroom(good_window()).expect_none(SLUG);
        for operation in [WindowOperation::Slider, WindowOperation::Hung, WindowOperation::Hopper] {
            in_well(operation, 60.0, 36.0).expect_none(SLUG);
        }
    }

    #[test]
    fn an_awning_sash_is_as_high_as_its_frame() {
        in_well(WindowOperation::Awning, 30.0, 46.0).expect_none(SLUG);
        let sample = in_well(WindowOperation::Awning, 30.0, 45.984375);
        sample.expect(SLUG, &["verify, measured 45 15/16\", required 46\""]);
    }

    #[test]
    fn the_finding_says_what_the_well_leaves_clear() {
        // A right triangle of 3, 4 and 5: a 40 in sash stopped at 24 in covers 32 in.
        assert_eq!(left_clear(inch(40.0), inch(24.0)), inch(8.0));
        let findings = in_well(WindowOperation::Casement, 40.0, 24.0).findings(SLUG);
        assert!(findings[0].why.say(System::Imperial).contains("leaves about 8\""));
    }
}
