//! A flight that is too narrow.

use super::{flight_finding, limit_of, stairs};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};
use plan::element::BodyKind;

pub(crate) const RULE: Rule = Rule {
    slug: "stair-width",
    group: Group::Stairs,
    title: "Width of the stair",
    page: "\
What
A stair is at least 36 in wide above the handrail. A spiral stair is at least 26 in wide, clear.

Why
People meet on it, and carry furniture and stretchers.

Source
IRC R311.7.1 (2018, 2021), R318.7.1 (2024); spiral stairs: R311.7.10.1 (2018, 2021), R318.7.11.1 (2024).

How it is measured
The width that is entered, between the finished walls.

Cannot see
The handrail: at and below it 31 1/2 in must be left with one rail and 27 in with two.

Exceptions
A stair that was there before the work is marked to verify. A stair under a
bulkhead that isn't the way out is excused (bulkhead-stair).

Remedies
Build the flight anew.
",
    cites: &["stair-width", "spiral-width"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

const WHY: &str = "People meet on the stair, and furniture and stretchers are carried over it.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (element, stair) in stairs(sheet) {
        let limit = limit_of(sheet, element, "stair-width", "spiral-width");
        if stair.width < limit.value {
            let finding =
                flight_finding(sheet, element, RULE.slug, limit.citation, "is too narrow", WHY);
            out.push(finding.figures(Quantity::Len(stair.width), Quantity::Len(limit.value)));
        }
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::element::Stair;
    use plan::{Edition, State};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "stair-width";

    /// A new flight with one change.
    fn flight(change: impl FnOnce(&mut Stair)) -> Sample {
        Sample::room(300.0, 240.0).stair(at(100.0, 60.0), Facing::NORTH).tune(|e| {
            e.state = State::New;
            if let plan::Body::Stair(stair) = &mut e.body {
                change(stair);
            }
        })
    }

    #[test]
    fn clear_pass() {
        flight(|_| ()).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = flight(|s| {
                s.width = inch(34.0);
            })
            .edition(edition);
            sample.expect(SLUG, &["correction, measured 34\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        flight(|s| {
            s.width = Len::inches(36);
        })
        .expect_none(SLUG);
        assert_eq!(
            flight(|s| {
                s.width = Len::inches(36) - Len::UNIT;
            })
            .findings(SLUG)
            .len(),
            1
        );
    }

    #[test]
    fn does_not_apply() {
        Sample::room(300.0, 240.0).expect_none(SLUG);
    }

    #[test]
    fn a_stair_that_was_there_is_left_to_the_office() {
        let sample = flight(|s| {
            s.width = inch(34.0);
        })
        .existing();
        sample.expect(SLUG, &["verify, measured 34\", required 36\""]);
        let new = sample.new_house();
        new.expect(SLUG, &["correction, measured 34\", required 36\""]);
    }

    #[test]
    fn a_spiral_stair_has_a_limit_of_its_own() {
        use plan::detail::{Value, stair::STAIR_KIND};
        for edition in Edition::ALL {
            let spiral = |len: Len| {
                let stair = flight(|s| s.width = len).edition(edition);
                stair.state(&STAIR_KIND, Value::Word("spiral"))
            };
            spiral(inch(26.0)).expect_none(SLUG);
            assert_eq!(spiral(inch(26.0) - Len::UNIT).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn a_stair_under_a_bulkhead_is_excused() {
        use plan::detail::{Value, stair::STAIR_KIND};
        let bad = || flight(|s| s.width = inch(24.0));
        assert_eq!(bad().findings(SLUG).len(), 1);
        let low = |stair: Sample| {
            stair.tune(|e| match &mut e.body {
                plan::Body::Stair(stair) => stair.risers = 5,
                other => panic!("{}", other.word()),
            })
        };
        low(bad()).state(&STAIR_KIND, Value::Word("under a bulkhead")).expect_none(SLUG);
        // Higher than 8 ft it is a stair like any other.
        let high = bad().tune(|e| match &mut e.body {
            plan::Body::Stair(stair) => stair.risers = 16,
            other => panic!("{}", other.word()),
        });
        let high = high.state(&STAIR_KIND, Value::Word("under a bulkhead"));
        assert_eq!(high.findings(SLUG).len(), 1);
    }
}
