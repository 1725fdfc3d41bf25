//! Treads that are too shallow.

use super::{flight_finding, limit_of, stairs};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};
use plan::element::BodyKind;

pub(crate) const RULE: Rule = Rule {
    slug: "stair-tread",
    group: Group::Stairs,
    title: "Depth of the treads",
    page: "\
What
A tread is at least 10 in deep, nosing to nosing. Of a spiral stair it is at least 6 3/4 in at the walk line, which lies 12 in from the narrow side.

Why
The foot must find room, most of all on the way down.

Source
IRC R311.7.5.2 (2018, 2021), R318.7.5.2 (2024); spiral stairs: R311.7.10.1 (2018, 2021), R318.7.11.1 (2024).

How it is measured
The run that is entered, nosing to nosing.

Cannot see
Nosings, and whether all treads are alike: the deepest and the shallowest may differ by 3/8 in. Winders.

Exceptions
A stair that was there before the work is marked to verify. A stair under a
bulkhead that isn't the way out is excused (bulkhead-stair).

Remedies
Build the flight anew.
",
    cites: &["stair-tread", "spiral-tread"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

const WHY: &str = "The foot finds too little room on the tread on the way down.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (element, stair) in stairs(sheet) {
        let limit = limit_of(sheet, element, "stair-tread", "spiral-tread");
        if stair.run < limit.value {
            let finding = flight_finding(
                sheet,
                element,
                RULE.slug,
                limit.citation,
                "has treads that are too shallow",
                WHY,
            );
            out.push(finding.figures(Quantity::Len(stair.run), Quantity::Len(limit.value)));
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

    const SLUG: &str = "stair-tread";

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
                s.run = inch(9.0);
            })
            .edition(edition);
            sample.expect(SLUG, &["correction, measured 9\", required 10\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        flight(|s| {
            s.run = Len::inches(10);
        })
        .expect_none(SLUG);
        assert_eq!(
            flight(|s| {
                s.run = Len::inches(10) - Len::UNIT;
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
            s.run = inch(9.0);
        })
        .existing();
        sample.expect(SLUG, &["verify, measured 9\", required 10\""]);
        let new = sample.new_house();
        new.expect(SLUG, &["correction, measured 9\", required 10\""]);
    }

    #[test]
    fn a_spiral_stair_has_a_limit_of_its_own() {
        use plan::detail::{Value, stair::STAIR_KIND};
        for edition in Edition::ALL {
            let spiral = |len: Len| {
                let stair = flight(|s| s.run = len).edition(edition);
                stair.state(&STAIR_KIND, Value::Word("spiral"))
            };
            spiral(inch(6.75)).expect_none(SLUG);
            assert_eq!(spiral(inch(6.75) - Len::UNIT).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn a_stair_under_a_bulkhead_is_excused() {
        use plan::detail::{Value, stair::STAIR_KIND};
        let bad = || flight(|s| s.run = inch(6.0));
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
