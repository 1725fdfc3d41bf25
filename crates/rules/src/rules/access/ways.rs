//! The widest way through doors from where one comes in to a room.

use measure::Len;
use plan::{Body, ElementId};
use space::RoomIndex;

use crate::Sheet;

/// How one gets to a room through doors alone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Way {
    /// One comes in here: a stair or an outside door is in the room.
    Here,
    /// Through doors, of which this one is the narrowest.
    Through { narrowest: ElementId, clear: Len },
    /// No door leads here.
    None,
}

/// A door or cased opening between two rooms, or to the outside.
struct Link {
    door: ElementId,
    clear: Len,
    left: Option<RoomIndex>,
    right: Option<RoomIndex>,
}

/// The best way to a room: the one whose narrowest door is the widest. One comes in where a stair's foot is or an
/// outside door opens; in a plan without either, from any room next door.
pub(super) fn to(sheet: &Sheet<'_>, room: RoomIndex) -> Way {
    let links = links(sheet);
    let arrivals = arrivals(sheet, &links);
    if arrivals.contains(&room) {
        return Way::Here;
    }
    // Grow outwards from the room, always through the widest door at its edge, until one comes in.
    let mut reached = vec![room];
    let mut narrowest: Option<(Len, ElementId)> = None;
    loop {
        let beyond = |link: &&Link| {
            let (left, right) = (link.left, link.right);
            let inside = |r: Option<RoomIndex>| r.is_some_and(|r| reached.contains(&r));
            inside(left) != inside(right)
        };
        // Of equally wide doors the first by id.
        let widest = links.iter().rev().filter(beyond).max_by_key(|link| link.clear);
        let Some(link) = widest else { return Way::None };
        if narrowest.is_none_or(|(clear, _)| link.clear < clear) {
            narrowest = Some((link.clear, link.door));
        }
        let inside = |r: &RoomIndex| reached.contains(r);
        let next = [link.left, link.right].into_iter().flatten().find(|r| !inside(r));
        let there = next.is_none_or(|r| arrivals.is_empty() || arrivals.contains(&r));
        if let (true, Some((clear, narrowest))) = (there, narrowest) {
            return Way::Through { narrowest, clear };
        }
        reached.extend(next);
    }
}

fn links(sheet: &Sheet<'_>) -> Vec<Link> {
    let is_door = |id: ElementId| match sheet.plan().get(id).map(|e| &e.body) {
        Some(Body::Opening(o)) => o.door().is_some(),
        _ => false,
    };
    let openings = sheet.facts.openings.iter().filter(|o| is_door(o.id));
    openings
        .map(|o| Link { door: o.id, clear: o.clear_width, left: o.left, right: o.right })
        .collect()
}

fn arrivals(sheet: &Sheet<'_>, links: &[Link]) -> Vec<RoomIndex> {
    let stairs =
        sheet.plan().elements().iter().filter(|e| e.stands()).filter_map(|e| match &e.body {
            Body::Stair(stair) => {
                let before = stair.foot + stair.up.back().step(Len::inches(1));
                sheet.facts.room_at(before)
            }
            _ => None,
        });
    let outside =
        |link: &&Link| sheet.facts.opening(link.door).is_some_and(|opening| opening.outside);
    let doors = links.iter().filter(outside).flat_map(|link| [link.left, link.right]).flatten();
    stairs.chain(doors).collect()
}
