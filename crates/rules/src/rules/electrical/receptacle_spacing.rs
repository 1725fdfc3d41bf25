//! A wall space with a point too far from a receptacle.

use geometry::Pt;
use measure::Len;
use plan::element::{ServiceKind, ServicePoint};
use space::{Room, WallSpace, wall_spaces};

use super::devices::{drawn, live_in_room, middle, was_there};
use crate::rules::rooms::uses::habitable;
use crate::rules::rooms::words::{capital, room_called, room_elements};
use crate::{Check, Finding, Group, Phrase, Place, Quantity, Rule, Severity, Sheet};

pub(crate) const RULE: Rule = Rule {
    slug: "receptacle-spacing",
    group: Group::Electrical,
    title: "Receptacles along the walls of living rooms",
    page: "\
What
In a habitable room no point of the floor line of a wall space is more than 6 ft from a receptacle, measured
along the wall: receptacles are at most 12 ft apart and at most 6 ft from a door. Each wall space of 2 ft or
more needs one.

Why
A lamp's cord is 6 ft long; what does not reach is fed by an extension cord under a rug.

Source
NEC 210.52(A)(1) to (3): 2017 for the 2018 edition, 2020 for 2021, 2023 for 2024.

How it is measured
Along the finished face, round corners, from doorway to doorway. Windows do not break a wall space. A receptacle
counts where it is at most 66 in above the finished floor and at most 18 in from the wall. Rooms are checked once
the plan shows a receptacle; a room that shows none is marked to verify.

Cannot see
Fireplaces, fixed cabinets and stationary appliances, which break a wall space; sliding panels of a patio door;
fixed room dividers; a receptacle that is part of a light, or switched as one.

Exceptions
Baths, closets, halls, utility rooms and unfinished floor. Rooms that were there before the work.

Remedies
Add a receptacle at the marked point, or move one nearer.
",
    cites: &["receptacle-reach", "receptacle-wall-space", "receptacle-floor", "receptacle-height"],
    check: Check::Room(check),
    remedies: None,
};

const WHY: &str =
    "A lamp's cord is 6 ft long; what does not reach is fed by an extension cord under a rug.";

/// The worst point of a wall space.
struct Worst {
    at: Pt,
    /// To the nearest receptacle along the wall; `None` where the wall space has none.
    away: Option<Len>,
}

fn check(sheet: &Sheet<'_>, room: &Room, out: &mut Vec<Finding>) {
    if !drawn(sheet, ServiceKind::Receptacle) {
        return;
    }
    if room.tag.is_none() || !habitable(room.room_use) || was_there(sheet, room) {
        return;
    }
    let receptacles: Vec<&ServicePoint> =
        live_in_room(sheet, room.index).into_iter().map(|(_, s)| s).collect();
    let limit = sheet.book.len("receptacle-reach");
    let mut faults: Vec<Worst> = wall_spaces(sheet.facts, room)
        .iter()
        .filter(|space| space.len() >= sheet.book.length("receptacle-wall-space"))
        .filter_map(|space| worst(sheet, space, &receptacles))
        .filter(|w| w.away.is_none_or(|away| away > limit.value))
        .collect();
    if faults.is_empty() {
        return;
    }
    // One without any receptacle is the worst; then the farthest.
    faults.sort_by_key(|w| (w.away.is_some(), std::cmp::Reverse(w.away)));
    let measured = match faults[0].away {
        Some(away) => Quantity::Len(away),
        None => Quantity::Words("a wall space without a receptacle".to_owned()),
    };
    let mut finding = Finding::new(
        Severity::Correction,
        limit.citation,
        RULE.slug,
        room_elements(room),
        Phrase::text(title(room)),
        WHY,
    )
    .figures(measured, Quantity::Len(limit.value));
    for fault in &faults {
        finding = finding.at(Place::Point(fault.at));
    }
    if receptacles.is_empty() {
        finding = finding.assuming("the receptacles of this room are not drawn yet");
    }
    out.push(finding);
}

fn title(room: &Room) -> String {
    format!("{} has too few receptacles", capital(&room_called(room)))
}

/// The point of a wall space that is farthest from a receptacle along it.
fn worst(sheet: &Sheet<'_>, space: &WallSpace, receptacles: &[&ServicePoint]) -> Option<Worst> {
    let reach = sheet.book.length("receptacle-floor");
    let highest = sheet.book.length("receptacle-height") + sheet.plan().site.floor_build;
    let mut at: Vec<Len> = receptacles
        .iter()
        .filter(|s| s.bottom <= highest)
        .map(|s| space.nearest(middle(s)))
        .filter(|(_, away)| *away <= reach)
        .map(|(along, _)| along)
        .collect();
    at.sort_unstable();
    let length = space.len();
    let (Some(first), Some(last)) = (at.first().copied(), at.last().copied()) else {
        return Some(Worst { at: space.point_at(length / 2), away: None });
    };
    let between = at.windows(2).map(|p| (p[0] + (p[1] - p[0]) / 2, half_up(p[1] - p[0])));
    let ends = if space.closed {
        let gap = length - last + first;
        let middle = last + gap / 2;
        vec![(if middle > length { middle - length } else { middle }, half_up(gap))]
    } else {
        vec![(Len::ZERO, first), (length, length - last)]
    };
    let (along, away) = between.chain(ends).max_by_key(|(_, away)| *away)?;
    Some(Worst { at: space.point_at(along), away: Some(away) })
}

/// Half of a gap, rounded up: a gap of one unit over twice the limit is over it.
fn half_up(gap: Len) -> Len {
    gap - gap / 2
}

#[cfg(test)]
mod tests {
    use geometry::Facing;
    use plan::Edition;
    use plan::element::RoomUse;

    use super::*;
    use crate::testing::{Sample, at, inch};

    const SLUG: &str = "receptacle-spacing";

    /// A room of `width` by 10 ft without a door, with receptacles at these distances along its south wall.
    fn room(width: f64, along: &[f64]) -> Sample {
        let room = Sample::room(width, 120.0).tag(at(60.0, 60.0), "Den", RoomUse::Den);
        along
            .iter()
            .fold(room, |room, x| room.service(ServiceKind::Receptacle, at(*x, 0.0), Facing::NORTH))
    }

    /// The same with one more on each of the other walls' middles.
    fn round(sample: Sample, width: f64) -> Sample {
        sample
            .service(ServiceKind::Receptacle, at(width, 60.0), Facing::WEST)
            .service(ServiceKind::Receptacle, at(width / 2.0, 120.0), Facing::SOUTH)
            .service(ServiceKind::Receptacle, at(0.0, 60.0), Facing::EAST)
    }

    #[test]
    fn clear_pass() {
        round(room(120.0, &[60.0]), 120.0).expect_none(SLUG);
    }

    #[test]
    fn clear_fail() {
        for edition in Edition::ALL {
            // One receptacle in a room of 40 ft round: 20 ft to the farthest point.
            let one = room(120.0, &[60.0]).edition(edition);
            one.expect(SLUG, &["correction, measured 240\", required 72\""]);
        }
    }

    #[test]
    fn at_the_limit() {
        // Round a room of 14 ft by 10 ft: from the middle of the short wall round the corner to the middle of the
        // long one is 60 in + 84 in = 144 in, 72 in to the point between.
        round(room(168.0, &[84.0]), 168.0).expect_none(SLUG);
        let wider = round(room(168.0, &[84.0]), 168.0).tune_service(|s| s.at.y += 1);
        assert_eq!(wider.findings(SLUG).len(), 1, "{:?}", wider.findings(SLUG));
        // 66 in above the finished floor counts, one unit more does not.
        let high = |up: Len| {
            round(room(168.0, &[84.0]), 168.0)
                .tune_service(move |s| s.bottom = inch(66.0) + up)
                .site(|s| s.floor_build = Len::ZERO)
        };
        high(Len::ZERO).expect_none(SLUG);
        assert_eq!(high(Len::UNIT).findings(SLUG).len(), 1);
    }

    #[test]
    fn a_door_breaks_the_wall_space() {
        // The door takes 32 in of a partition between two rooms of 10 ft; beside it 6 in and 82 in are left.
        let rooms = Sample::room(240.0, 120.0).partition(at(120.0, 0.0), at(120.0, 120.0));
        let wall = rooms.last();
        let rooms = rooms.door(wall, 6.0, 32.0).tag(at(60.0, 60.0), "Den", RoomUse::Den);
        let with = |x: f64| {
            rooms
                .clone()
                .service(ServiceKind::Receptacle, at(x, 0.0), Facing::NORTH)
                .service(ServiceKind::Receptacle, at(0.0, 60.0), Facing::EAST)
                .service(ServiceKind::Receptacle, at(60.0, 120.0), Facing::SOUTH)
                .service(ServiceKind::Receptacle, at(117.75, 80.0), Facing::WEST)
        };
        with(60.0).expect_none(SLUG);
        // Without the last one the wall from the north corner to the door is 82 in more than 6 ft away.
        let fewer = rooms
            .clone()
            .service(ServiceKind::Receptacle, at(60.0, 0.0), Facing::NORTH)
            .service(ServiceKind::Receptacle, at(0.0, 60.0), Facing::EAST)
            .service(ServiceKind::Receptacle, at(60.0, 120.0), Facing::SOUTH);
        assert_eq!(fewer.findings(SLUG).len(), 1);
    }

    #[test]
    fn does_not_apply() {
        room(120.0, &[]).expect_none(SLUG);
        let bath = Sample::room(120.0, 120.0).tag(at(60.0, 60.0), "Bath", RoomUse::Bath);
        bath.service(ServiceKind::Receptacle, at(60.0, 0.0), Facing::NORTH).expect_none(SLUG);
    }

    #[test]
    fn a_room_without_any_is_to_be_verified_once_others_have_some() {
        let two = Sample::room(240.0, 120.0)
            .partition(at(120.0, 0.0), at(120.0, 120.0))
            .tag(at(60.0, 60.0), "Den", RoomUse::Den)
            .tag(at(180.0, 60.0), "Store", RoomUse::Storage)
            .service(ServiceKind::Receptacle, at(180.0, 0.0), Facing::NORTH);
        two.expect(SLUG, &["verify, measured a wall space without a receptacle, required 72\""]);
    }

    #[test]
    fn one_that_is_switched_or_in_a_cabinet_does_not_count() {
        use plan::detail::{Value, electrical::LIVE};
        let second = |live: &'static str| {
            Sample::room(72.0, 72.0)
                .tag(at(36.0, 36.0), "Den", RoomUse::Den)
                .service(ServiceKind::Receptacle, at(36.0, 72.0), Facing::SOUTH)
                .service(ServiceKind::Receptacle, at(36.0, 0.0), Facing::NORTH)
                .state(&LIVE, Value::Word(live))
        };
        second("always").expect_none(SLUG);
        for other in ["switched at the wall", "part of a light or machine", "in a cabinet"] {
            assert_eq!(second(other).findings(SLUG).len(), 1, "{other}");
        }
    }
}
