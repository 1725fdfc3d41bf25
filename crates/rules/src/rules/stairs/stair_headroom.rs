//! Too little headroom over a flight or over the floor at its foot.

use measure::Len;
use plan::element::{BodyKind, Stair};
use plan::{Element, ElementId};
use space::intrusions;

use super::{asked, flight_finding, foot_finding, landing, limit_of};
use crate::{Check, Finding, Group, Place, Quantity, Reach, Rule, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "stair-headroom",
    group: Group::Stairs,
    title: "Headroom of the stair",
    page: "\
What
Over the line of the nosings, and over the floor at the foot, there are at least 6 ft 8 in of headroom. A spiral stair has at least 6 ft 6 in.

Why
On the way down the head comes to the edge of the floor opening, or to a duct, before the eye does.

Source
IRC R311.7.2 (2018, 2021), R318.7.2 (2024); spiral stairs: R311.7.10.1 (2018, 2021), R318.7.11.1 (2024).

How it is measured
The least headroom that is entered for the flight, and the clear height under what hangs over the floor before the
lowest riser, over the width of the flight and the depth of its landing.

Cannot see
Overheads over the flight itself: measure the least headroom from the sloped line of the nosings.

Exceptions
The edge of the floor opening may reach 4 3/4 in over the side of the flight. A stair that was there before the work is
marked to verify; something new that hangs over its foot is not.

Remedies
Move the duct, or lengthen the floor opening: cutting joists takes an engineer.
",
    cites: &["stair-headroom", "spiral-headroom", "stair-landing"],
    check: Check::Things(&[BodyKind::Stair], &[Reach::Limit("stair-landing")], check),
    remedies: None,
};

const WHY: &str = "On the way down the head strikes before the eye sees it.";

fn check(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let Some(stair) = asked(sheet, element) else { return };
    let limit = limit_of(sheet, element, "stair-headroom", "spiral-headroom");
    let figures = |measured: Len| (Quantity::Len(measured), Quantity::Len(limit.value));
    if stair.headroom < limit.value {
        let citation = limit.citation.clone();
        let fault = "has too little headroom";
        let finding = flight_finding(sheet, element, RULE.slug, citation, fault, WHY);
        let (measured, required) = figures(stair.headroom);
        out.push(finding.figures(measured, required));
    }
    for (over, clear) in over_the_foot(sheet, stair, limit.value) {
        let citation = limit.citation.clone();
        let fault = "has too little headroom over its foot";
        let about = (element, &[over][..]);
        let mut finding = foot_finding(sheet, about, RULE.slug, citation, fault, WHY);
        if let Some(overhead) = sheet.facts.overhead(over) {
            finding = finding.at(Place::Area(overhead.ring.clone()));
        }
        let (measured, required) = figures(clear);
        out.push(finding.figures(measured, required));
    }
}

/// What hangs lower than a height over the floor before the lowest riser.
fn over_the_foot(sheet: &Sheet<'_>, stair: &Stair, height: Len) -> Vec<(ElementId, Len)> {
    let floor = sheet.plan().site.floor_build;
    let depth = sheet.book.len("stair-landing").value;
    let ring = landing(stair, depth).corners();
    intrusions(sheet.facts, &ring, floor, floor + height, &[])
        .iter()
        .filter(|found| found.overhead)
        .filter_map(|found| Some((found.element, sheet.facts.overhead(found.element)?.clear)))
        .collect()
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::element::{OverheadKind, Stair};
    use plan::{Edition, State};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "stair-headroom";

    /// A new flight with one change.
    fn flight(change: impl FnOnce(&mut Stair)) -> Sample {
        Sample::room(300.0, 240.0).stair(at(100.0, 60.0), Facing::NORTH).tune(|e| {
            e.state = State::New;
            if let plan::Body::Stair(stair) = &mut e.body {
                change(stair);
            }
        })
    }

    /// A new duct across the foot of an existing flight, its near edge so far before the lowest riser.
    fn ducted(before: f64, under: f64) -> Sample {
        let y = 60.0 - before - 12.0;
        Sample::room(300.0, 240.0)
            .stair(at(100.0, 60.0), Facing::NORTH)
            .overhead(OverheadKind::Duct, at(0.0, y), at(300.0, y), 24.0, under)
            .tune(|e| e.state = State::New)
    }

    #[test]
    fn clear_pass() {
        flight(|s| s.headroom = inch(84.0)).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let sample = flight(|s| s.headroom = inch(76.0)).edition(edition);
            sample.expect(SLUG, &["correction, measured 76\", required 80\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        flight(|s| s.headroom = Len::inches(80)).expect_none(SLUG);
        let low = flight(|s| s.headroom = Len::inches(80) - Len::UNIT);
        low.expect(SLUG, &["correction, measured 79 15/16\", required 80\""]);
        ducted(10.0, 80.0).expect_none(SLUG);
        ducted(10.0, 79.5).expect(SLUG, &["correction, measured 79 1/2\", required 80\""]);
        // Beyond the depth of the landing it is no matter of the stair.
        ducted(36.0, 70.0).expect_none(SLUG);
        assert_eq!(ducted(35.984375, 70.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        Sample::room(300.0, 240.0).expect_none(SLUG);
    }

    #[test]
    fn what_was_there_is_left_to_the_office() {
        let low = flight(|s| s.headroom = inch(76.0)).existing();
        low.expect(SLUG, &["verify, measured 76\", required 80\""]);
        let duct = ducted(10.0, 79.5).existing();
        duct.expect(SLUG, &["verify, measured 79 1/2\", required 80\""]);
    }

    #[test]
    fn a_spiral_stair_has_a_limit_of_its_own() {
        use plan::detail::{Value, stair::STAIR_KIND};
        for edition in Edition::ALL {
            let spiral = |len: Len| {
                let stair = flight(|s| s.headroom = len).edition(edition);
                stair.state(&STAIR_KIND, Value::Word("spiral"))
            };
            spiral(inch(78.0)).expect_none(SLUG);
            assert_eq!(spiral(inch(78.0) - Len::UNIT).findings(SLUG).len(), 1);
        }
    }

    #[test]
    fn a_stair_under_a_bulkhead_is_excused() {
        use plan::detail::{Value, stair::STAIR_KIND};
        let bad = || flight(|s| s.headroom = inch(72.0));
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
