//! A window beside a door.

use measure::Len;
use space::OpeningFacts;

use super::glass::{bottom, new_window};
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Reach, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "glass-by-door",
    group: Group::Build,
    title: "Safety glass beside a door",
    page: "\
What
Glass within 24 in of either edge of a door, and less than 60 in above the floor, is safety glass.

Why
A hand that misses the door goes through the pane.

Source
IRC R308.4.2 (2018, 2021), R324.4 (2024).

How it is measured
In the same wall, from the nearest edge of the door's opening to the nearest edge of the window's frame. New windows are
checked.

Cannot see
Its glass, and a pane in the wall square to the door's: so the finding is to be verified.

Exceptions
A wall or other fixed barrier between door and glass. Doors of closets of 3 ft or less in depth.

Remedies
Order the window with safety glass, marked in the corner.
",
    cites: &["glass-by-door", "glass-by-door-bottom"],
    check: Check::Openings(&[Reach::Limit("glass-by-door")], check),
    remedies: None,
};

const WHY: &str = "A hand that misses the door goes through the pane.";

fn check(sheet: &Sheet<'_>, facts: &OpeningFacts, out: &mut Vec<Finding>) {
    let Some(window) = new_window(sheet, facts) else { return };
    let limit = sheet.book.len("glass-by-door");
    if bottom(sheet, window) >= sheet.book.length("glass-by-door-bottom") {
        return;
    }
    let beside = facts.bounds().grow(limit.value);
    let doors = sheet.facts.openings_near(beside);
    let doors = doors.filter(|o| o.host == facts.host && sheet.facts.is_door(o.id));
    let near = doors.map(|d| (between(facts, d), d)).min_by_key(|(gap, d)| (*gap, d.id));
    let Some((gap, door)) = near.filter(|(gap, _)| *gap < limit.value) else { return };
    let title = format!(
        "{} may need safety glass: it is beside {}",
        capital(&called(sheet, facts.id)),
        called(sheet, door.id)
    );
    out.push(
        Finding::new(
            Severity::Verify,
            limit.citation.clone(),
            RULE.slug,
            vec![facts.id, door.id],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(gap), Quantity::Len(limit.value))
        .assuming("the glass is no safety glass")
        .at(Place::Along(facts.id)),
    );
}

/// The wall between two openings of one wall.
fn between(a: &OpeningFacts, b: &OpeningFacts) -> Len {
    let gap = |p, q| geometry::Seg::new(p, q).len();
    [gap(a.line.a, b.line.b), gap(a.line.b, b.line.a)].into_iter().min().unwrap_or(Len::ZERO)
}

#[cfg(test)]
mod tests {
    use plan::Edition;
    use plan::element::Window;

    use crate::rules::way_out::sample::{good_window, south};
    use crate::testing::{Sample, inch};

    const SLUG: &str = "glass-by-door";

    /// A door from 10 in to 42 in of the south wall and a window of 30 in `gap` beside it.
    fn beside(gap: f64, sill: f64) -> Sample {
        let room = Sample::room(240.0, 120.0);
        let wall = south(&room);
        let window = Window { frame_width: inch(30.0), sill: inch(sill), ..good_window() };
        room.door(wall, 10.0, 32.0).window(wall, 42.0 + gap, window).fresh()
    }

    #[test]
    fn clear_pass() {
        beside(60.0, 30.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = beside(12.0, 30.0).edition(edition);
            near.expect(SLUG, &["verify, measured 12\", required 24\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        // The clear distance is taken from the openings: 24 in and more is free.
        beside(24.0, 30.0).expect_none(SLUG);
        assert_eq!(beside(23.9375, 30.0).findings(SLUG).len(), 1);
        beside(12.0, 60.0).expect_none(SLUG);
        assert_eq!(beside(12.0, 59.9375).findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        beside(12.0, 30.0).existing().expect_none(SLUG);
    }
}
