//! The widest way through doors from where one comes in to a room.

use measure::Len;
use plan::element::BodyKind;
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

/// The doors of a plan, and the rooms where one comes in.
pub(super) struct Ways {
    /// The widest first; of equally wide ones the first by id.
    links: Vec<Link>,
    arrivals: Vec<RoomIndex>,
}

impl Ways {
    pub fn new(sheet: &Sheet<'_>) -> Ways {
        let mut links = links(sheet);
        let arrivals = arrivals(sheet, &links);
        links.sort_by_key(|link| (std::cmp::Reverse(link.clear), link.door));
        Ways { links, arrivals }
    }

    /// The best way to a room: the one whose narrowest door is the widest. One comes in where a stair's foot
    /// is or an outside door opens; in a plan without either, from any room next door.
    pub fn to(&self, room: RoomIndex) -> Way {
        let Ways { links, arrivals } = self;
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
            let Some(link) = links.iter().find(beyond) else { return Way::None };
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
}

fn links(sheet: &Sheet<'_>) -> Vec<Link> {
    let openings = sheet.facts.openings.iter().filter(|o| sheet.facts.is_door(o.id));
    openings
        .map(|o| Link { door: o.id, clear: o.clear_width, left: o.left, right: o.right })
        .collect()
}

fn arrivals(sheet: &Sheet<'_>, links: &[Link]) -> Vec<RoomIndex> {
    let stairs = sheet.facts.standing(&[BodyKind::Stair]).filter_map(|e| match &e.body {
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
