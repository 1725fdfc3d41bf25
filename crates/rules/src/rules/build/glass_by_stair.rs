//! Low glass at the foot of a stair.

use geometry::gap;
use plan::Body;
use plan::element::BodyKind;
use space::OpeningFacts;

use super::glass::{bottom, new_window};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Reach, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "glass-by-stair",
    group: Group::Build,
    title: "Safety glass at the foot of a stair",
    page: "\
What
Glass whose bottom is less than 36 in above the floor, within 60 in of the lowest riser of a stair, is safety glass.

Why
Who falls down the stair falls into it.

Source
IRC R308.4.7 (2018, 2021), R324.4 (2024); the figures from memory.

How it is measured
From the middle of the lowest riser's nosing line, as wide as the flight, to the hole of the window, straight; the bottom of
the clear opening counts as the bottom of the glass.

Cannot see
Which way one falls: glass behind the stair is found too. Rails before the glass.

Exceptions
Glass behind a guard or bar at least 18 in before it.

Remedies
Safety glass: state it of the window.
",
    cites: &["glass-by-stair", "glass-by-stair-bottom"],
    check: Check::Openings(&[Reach::Limit("glass-by-stair")], check),
    remedies: Some(|finding, sheet| {
        let windows = finding.elements.iter().copied().filter(|id| {
            let body = sheet.plan().get(*id).map(|e| &e.body);
            matches!(body, Some(Body::Opening(_)))
        });
        let glass = &plan::detail::opening::SAFETY_GLASS;
        let yes = plan::detail::Value::Yes;
        windows.map(|id| crate::answer::state(sheet, &[id], glass, yes)).collect()
    }),
};

const WHY: &str = "Who falls down the stair falls into it.";

fn check(sheet: &Sheet<'_>, facts: &OpeningFacts, out: &mut Vec<Finding>) {
    let Some(window) = new_window(sheet, facts) else { return };
    let near = sheet.book.len("glass-by-stair");
    let low = sheet.book.length("glass-by-stair-bottom");
    if bottom(sheet, window) >= low {
        return;
    }
    for element in sheet.facts.standing(&[BodyKind::Stair]) {
        let Body::Stair(stair) = &element.body else { continue };
        let side = stair.up.left().step(stair.width / 2);
        let riser = [stair.foot + side, stair.foot - side];
        let gap = gap(&riser, &facts.quad);
        if gap.len > near.value {
            continue;
        }
        let title = format!(
            "{} at the foot of {} needs safety glass",
            capital(&called(sheet, facts.id)),
            called(sheet, element.id)
        );
        out.push(
            Finding::new(
                Severity::Correction,
                near.citation.clone(),
                RULE.slug,
                vec![facts.id, element.id],
                Phrase::text(title),
                WHY,
            )
            .figures(Quantity::Len(gap.len), Quantity::Len(near.value))
            .assuming("the pane is not of safety glass")
            .at(Place::Span(gap.from, gap.to)),
        );
    }
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::Edition;
    use plan::detail::{Value, opening::SAFETY_GLASS};
    use plan::element::{ClearOpening, Window, WindowOperation};

    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "glass-by-stair";

    /// A stair whose lowest riser lies `off` from the south wall, and a window in that wall.
    fn stair(off: f64, sill: f64) -> Sample {
        let room = Sample::room(240.0, 300.0);
        let host = room.facts().plan.elements().iter().next().expect("a wall").id;
        let window = Window {
            operation: WindowOperation::Fixed,
            frame_width: Len::inches(36),
            frame_height: Len::inches(40),
            clear: ClearOpening::Estimated,
            sill: inch(sill),
            grade: Len::inches(10),
            well: None,
        };
        room.stair(at(118.0, off), Facing::NORTH).window(host, 100.0, window).fresh()
    }

    #[test]
    fn clear_pass() {
        stair(100.0, 20.0).expect_none(SLUG);
        stair(40.0, 20.0).state(&SAFETY_GLASS, Value::Yes).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = stair(40.0, 20.0).edition(edition);
            near.expect(SLUG, &["verify, measured 40\", required 60\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        assert_eq!(stair(60.0, 20.0).findings(SLUG).len(), 1, "within 60 in");
        stair(60.0 + 1.0 / 64.0, 20.0).expect_none(SLUG);
        stair(40.0, 36.0).expect_none(SLUG);
        assert_eq!(stair(40.0, 36.0 - 1.0 / 64.0).findings(SLUG).len(), 1, "below 36 in");
    }

    #[test]
    fn does_not_apply() {
        stair(40.0, 20.0).existing().expect_none(SLUG);
    }
}
