//! The widest way through doors from where one comes in to a room.

use std::cmp::Reverse;
use std::collections::BTreeSet;

use measure::Len;
use plan::element::BodyKind;
use plan::{Body, ElementId};
use space::{BEFORE_A_FACE, Facts, RoomIndex};

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

/// The doors of a plan, and the rooms where one comes in.
pub(super) struct Ways<'a> {
    facts: &'a Facts,
    arrivals: BTreeSet<RoomIndex>,
}

impl<'a> Ways<'a> {
    pub fn new(sheet: &Sheet<'a>) -> Ways<'a> {
        Ways { facts: sheet.facts, arrivals: arrivals(sheet) }
    }

    /// The best way to a room: the one whose narrowest door is the widest. One comes in where a stair's foot
    /// is or an outside door opens; in a plan without either, from any room next door.
    pub fn to(&self, room: RoomIndex) -> Way {
        if self.arrivals.contains(&room) {
            return Way::Here;
        }
        // Grow outwards from the room, always through the widest door at its edge, of equally wide ones the first by
        // id, until one comes in.
        let mut reached = BTreeSet::new();
        let mut edge: BTreeSet<(Reverse<Len>, ElementId)> = BTreeSet::new();
        let mut narrowest: Option<(Len, ElementId)> = None;
        let mut next = Some(room);
        loop {
            if let Some(room) = next {
                reached.insert(room);
                self.turn(room, &reached, &mut edge);
            }
            let Some((Reverse(clear), id)) = edge.first().copied() else { return Way::None };
            if narrowest.is_none_or(|(least, _)| clear < least) {
                narrowest = Some((clear, id));
            }
            let mut rooms = self.facts.opening(id).into_iter().flat_map(|door| door.rooms());
            next = rooms.find(|r| !reached.contains(r));
            let there = next.is_none_or(|r| self.arrivals.is_empty() || self.arrivals.contains(&r));
            if let (true, Some((clear, narrowest))) = (there, narrowest) {
                return Way::Through { narrowest, clear };
            }
        }
    }

    /// Puts the doors of a room that was reached on the edge, or takes them off where both sides are reached.
    fn turn(
        &self,
        room: RoomIndex,
        reached: &BTreeSet<RoomIndex>,
        edge: &mut BTreeSet<(Reverse<Len>, ElementId)>,
    ) {
        for door in self.facts.openings_of(room).filter(|o| self.facts.is_door(o.id)) {
            let inside = |r: Option<RoomIndex>| r.is_some_and(|r| reached.contains(&r));
            let key = (Reverse(door.clear_width), door.id);
            if inside(door.left) != inside(door.right) {
                edge.insert(key);
            } else {
                edge.remove(&key);
            }
        }
    }
}

fn arrivals(sheet: &Sheet<'_>) -> BTreeSet<RoomIndex> {
    let facts = sheet.facts;
    let stairs = facts.standing(&[BodyKind::Stair]).filter_map(|e| match &e.body {
        Body::Stair(stair) => facts.room_at(stair.foot + stair.up.back().step(BEFORE_A_FACE)),
        _ => None,
    });
    let outside = facts.outside().into_iter().filter(|o| facts.is_door(o.id));
    stairs.chain(outside.flat_map(|o| o.rooms())).collect()
}
