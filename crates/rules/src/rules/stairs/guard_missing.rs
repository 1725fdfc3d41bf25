//! An open side of a stair without a guard.

use geometry::Pt;
use measure::Len;
use plan::Element;
use plan::detail::stair::GUARD_HEIGHT;
use plan::element::{BodyKind, Stair};
use space::SolidKind;

use super::asked;
use crate::rules::rooms::words::{called, capital};
use crate::rules::stated::is_new;
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "guard-missing",
    group: Group::Stairs,
    title: "Guard at the open side of a stair",
    page: "\
What
The open side of a stair has a guard where its treads lie more than 30 in above the floor below: at least 34 in above the
nosings (36 in at a level floor).

Why
A fall over the side of a stair is a fall on concrete.

Source
IRC R312.1.1, R312.1.2 (2018, 2021); R321.1.1, R321.1.2 (2024).

How it is measured
A side is open where no wall stands within 6 in beside the first tread that is more than 30 in up (the 6 in are common
practice, no source). The height is as stated; until then the finding asks for it.

Cannot see
The guard, and openings in it: see the rule on those. The well of the stair in the floor above.

Exceptions
Treads no more than 30 in up: only the upper part of a basement stair needs it.

Remedies
A wall, or a guard that serves as the handrail too at 34 in to 38 in.
",
    cites: &["guard-missing", "guard-drop"],
    check: Check::Things(&[BodyKind::Stair], &[], check),
    remedies: None,
};

const WHY: &str = "A fall over the side of a stair is a fall on concrete.";

/// A wall no farther than this from the side of a stair closes it.
const BESIDE: Len = Len::inches(6);

fn check(sheet: &Sheet<'_>, element: &Element, out: &mut Vec<Finding>) {
    let Some(stair) = asked(sheet, element).filter(|_| is_new(sheet, element)) else { return };
    let limit = sheet.book.len("guard-missing");
    let drop = sheet.book.length("guard-drop");
    let guard = sheet.ask(element, &GUARD_HEIGHT);
    if guard.len().is_some_and(|len| len >= limit.value) {
        return;
    }
    let Some(at) = open_side(sheet, stair, drop) else { return };
    let title =
        format!("{} has an open side that needs a guard", capital(&called(sheet, element.id)));
    let measured = match guard.len() {
        Some(len) => Quantity::Len(len),
        None => Quantity::Words("not stated".to_owned()),
    };
    out.push(
        Finding::new(
            Severity::Correction,
            limit.citation.clone(),
            RULE.slug,
            vec![element.id],
            Phrase::text(title),
            WHY,
        )
        .figures(measured, Quantity::Len(limit.value))
        .resting_on(&guard)
        .at(Place::Point(at)),
    );
}

/// Beside the first tread that is too high, on a side where no wall stands.
fn open_side(sheet: &Sheet<'_>, stair: &Stair, drop: Len) -> Option<Pt> {
    let floor = sheet.plan().site.floor_build;
    let treads = i32::try_from(stair.risers.saturating_sub(1)).unwrap_or(0);
    let first = (1..=treads).find(|n| stair.rise * *n - floor > drop)?;
    let along = stair.up.step(stair.run * (first - 1) + stair.run / 2);
    let half = stair.width / 2;
    [stair.up.left(), stair.up.left().back()].into_iter().find_map(|side| {
        let edge = stair.foot + along + side.step(half);
        let beyond = edge + side.step(BESIDE);
        let strip = [edge, beyond];
        let near = sheet.facts.solids_near(geometry::Bounds::of(strip));
        let wall = near
            .filter(|s| s.kind == SolidKind::Wall && s.top > drop)
            .any(|s| geometry::gap(&s.ring, &strip).len == Len::ZERO);
        (!wall).then_some(edge)
    })
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::detail::Value;
    use plan::{Body, Edition};

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "guard-missing";

    /// A stair that goes up north between a wall on its west side and open floor, `off` from the wall.
    fn stair(off: f64) -> Sample {
        Sample::room(240.0, 240.0).stair(at(18.0 + off, 60.0), Facing::NORTH).fresh()
    }

    /// The same with a partition `off` from its east side.
    fn between(off: f64) -> Sample {
        let x = 36.0 + off + 2.25;
        stair(0.0).partition(at(x, 40.0), at(x, 230.0))
    }

    #[test]
    fn clear_pass() {
        between(0.0).expect_none(SLUG);
        stair(0.0).state(&GUARD_HEIGHT, Value::Length(inch(36.0))).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            stair(0.0)
                .edition(edition)
                .expect(SLUG, &["verify, measured not stated, required 34\""]);
            stair(0.0)
                .edition(edition)
                .state(&GUARD_HEIGHT, Value::Length(inch(30.0)))
                .expect(SLUG, &["correction, measured 30\", required 34\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        stair(0.0).state(&GUARD_HEIGHT, Value::Length(inch(34.0))).expect_none(SLUG);
        let low = stair(0.0).state(&GUARD_HEIGHT, Value::Length(inch(34.0) - Len::UNIT));
        assert_eq!(low.findings(SLUG).len(), 1);
        // A wall within 6 in closes the side.
        between(6.0).expect_none(SLUG);
        assert_eq!(between(6.0 + 1.0 / 64.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn treads_up_to_30_in_need_none() {
        let flight = |rise: f64| {
            stair(0.0).tune(|e| match &mut e.body {
                Body::Stair(s) => (s.risers, s.rise) = (5, inch(rise)),
                other => panic!("{}", other.word()),
            })
        };
        // Four treads: the highest at four rises.
        flight(7.5).expect_none(SLUG);
        assert_eq!(flight(7.5 + 1.0 / 64.0).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        stair(0.0).existing().expect_none(SLUG);
        Sample::room(144.0, 120.0).expect_none(SLUG);
    }
}
