//! A flight that rises too far without a landing.

use measure::Len;
use plan::element::{BodyKind, Stair};

use super::{flight_finding, stairs};
use crate::{Check, Finding, Group, On, Quantity, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-flight-rise",
    group: Group::Stairs,
    title: "Rise of a flight",
    page: "\
What
A flight rises at most 12 ft 7 in (151 in) between floors or landings.

Why
A landing breaks a fall and lets one rest.

Source
IRC R311.7.3 (2018, 2021: from memory), R318.7.3 (2024).

How it is measured
Number of risers times the height of one.

Cannot see
A landing in the flight: draw the flights apart.

Exceptions
A stair that was there before the work is marked to verify.

Remedies
Build the flight anew.
",
    cites: &["stair-flight-rise"],
    check: Check::Plan(&[On::Kind(BodyKind::Stair)], check),
    remedies: None,
};

const WHY: &str = "A landing on the way breaks a fall and lets one rest.";

fn check(sheet: &Sheet<'_>, out: &mut Vec<Finding>) {
    for (element, stair) in stairs(sheet) {
        let limit = sheet.book.len("stair-flight-rise");
        let rise = flight_rise(stair);
        if rise > limit.value {
            let finding = flight_finding(
                sheet,
                element,
                RULE.slug,
                limit.citation,
                "rises too far without a landing",
                WHY,
            );
            out.push(finding.figures(Quantity::Len(rise), Quantity::Len(limit.value)));
        }
    }
}

/// From floor to floor: every riser.
fn flight_rise(stair: &Stair) -> Len {
    let risers = i32::try_from(stair.risers).unwrap_or(i32::MAX);
    Len::from_units(stair.rise.units().saturating_mul(risers))
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::element::Stair;
    use plan::{Edition, State};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "stair-flight-rise";

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
                s.risers = 21;
                s.rise = inch(7.5);
            })
            .edition(edition);
            sample.expect(SLUG, &["correction, measured 157 1/2\", required 151\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        flight(|s| {
            s.risers = 20;
            s.rise = Len::from_units(Len::inches(151).units() / 20);
        })
        .expect_none(SLUG);
        assert_eq!(
            flight(|s| {
                s.risers = 20;
                s.rise = Len::from_units(Len::inches(151).units() / 20 + 1);
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
            s.risers = 21;
            s.rise = inch(7.5);
        })
        .existing();
        sample.expect(SLUG, &["verify, measured 157 1/2\", required 151\""]);
        let new = sample.new_house();
        new.expect(SLUG, &["correction, measured 157 1/2\", required 151\""]);
    }
}
