//! A smoke alarm too near the door of a bath.

use geometry::{Bounds, nearest_on};
use measure::Len;
use plan::Element;
use plan::element::{RoomUse, ServiceKind, ServicePoint};
use space::OpeningFacts;

use super::devices::middle;
use crate::rules::rooms::words::{called, capital};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Reach, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "alarm-near-bath",
    group: Group::Electrical,
    title: "Distance of a smoke alarm from the door of a bath",
    page: "\
What
A smoke alarm is at least 3 ft from the door or opening of a bath with a tub or shower.

Why
Steam sets it off, and then somebody takes its battery out.

Source
IRC R314.3 item 4 (2018, 2021), R310.3 item 4 (2024).

How it is measured
Level, from the middle of the alarm to the nearest point of the doorway, in the middle of its wall.

Cannot see
Whether the bath has a tub or a shower, and whether the alarm could stand anywhere else: so the finding is to be
verified.

Exceptions
Where the distance would keep a required alarm from being placed.

Remedies
Move the alarm away from the door.
",
    cites: &["alarm-bath-distance"],
    check: Check::Services(&[ServiceKind::SmokeAlarm], &[Reach::Limit("alarm-bath-distance")], check),
    remedies: None,
};

const WHY: &str = "Steam sets it off, and then somebody takes its battery out.";

fn check(sheet: &Sheet<'_>, element: &Element, alarm: &ServicePoint, out: &mut Vec<Finding>) {
    let limit = sheet.book.len("alarm-bath-distance");
    let at = middle(alarm);
    let near = bath_doors(sheet, Bounds::of([at]).grow(limit.value.max(Len::ZERO)))
        .map(|door| {
            let foot = nearest_on(door.line, at);
            (geometry::Seg::new(foot, at).len(), foot, door)
        })
        .min_by_key(|(away, _, door)| (*away, door.id));
    let Some((away, foot, door)) = near.filter(|(away, ..)| *away < limit.value) else {
        return;
    };
    let title = format!(
        "{} is near {}, the door of a bath",
        capital(&called(sheet, element.id)),
        called(sheet, door.id)
    );
    out.push(
        Finding::new(
            Severity::Verify,
            limit.citation,
            RULE.slug,
            vec![element.id, door.id],
            Phrase::text(title),
            WHY,
        )
        .figures(Quantity::Len(away), Quantity::Len(limit.value))
        .assuming("the bath has a tub or a shower, and the alarm could stand elsewhere")
        .at(Place::Span(at, foot)),
    );
}

/// The doors and cased openings of baths that meet a box.
fn bath_doors<'a>(
    sheet: &Sheet<'a>,
    near: Bounds,
) -> impl Iterator<Item = &'a OpeningFacts> + use<'a> {
    let facts = sheet.facts;
    facts.openings_near(near).filter(move |o| {
        facts.is_door(o.id) && o.rooms().any(|r| facts.room(r).room_use == RoomUse::Bath)
    })
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use measure::Len;
    use plan::Edition;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "alarm-near-bath";

    /// A bath east of a hall, the door in the partition between from 40 in to 72 in, and an alarm `away` in before the middle
    /// of the doorway.
    fn bath(away: f64, room_use: RoomUse) -> Sample {
        let rooms = Sample::room(240.0, 120.0).partition(at(120.0, 0.0), at(120.0, 120.0));
        let wall = rooms.last();
        rooms
            .door(wall, 40.0, 32.0)
            .tag(at(60.0, 60.0), "Hall", RoomUse::Hall)
            .tag(at(180.0, 60.0), "Bath", room_use)
            .service(ServiceKind::SmokeAlarm, at(120.0 - away, 53.0), Facing::NORTH)
    }

    #[test]
    fn clear_pass() {
        bath(60.0, RoomUse::Bath).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            let near = bath(30.0, RoomUse::Bath).edition(edition);
            near.expect(SLUG, &["verify, measured 30\", required 36\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        bath(36.0, RoomUse::Bath).expect_none(SLUG);
        let nearer = bath(36.0, RoomUse::Bath).tune_service(|s| s.at.x += 1);
        assert_eq!(nearer.findings(SLUG).len(), 1);
        assert_eq!(nearer.findings(SLUG)[0].measured, Some(Quantity::Len(inch(36.0) - Len::UNIT)));
    }

    #[test]
    fn does_not_apply() {
        bath(10.0, RoomUse::Storage).expect_none(SLUG);
    }
}
