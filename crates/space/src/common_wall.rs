//! The wall that two rooms have in common.

use geometry::{Facing, Pt, Seg};
use measure::Len;
use plan::ElementId;

use crate::{Facts, Room, WallFacts};

/// How far an edge of a room may lie off the face that it came from: crossings are rounded.
const SLACK: i64 = 2;

/// Each wall that stands between two rooms, with the length over which it parts them, openings counted in.
pub fn common_walls(facts: &Facts, a: &Room, b: &Room) -> Vec<(ElementId, Len)> {
    let shared = a.walls.iter().filter(|id| b.walls.contains(id));
    shared
        .filter_map(|id| {
            let wall = facts.wall(*id)?;
            let both = [(wall.left, wall.right), (wall.right, wall.left)];
            let len = both.into_iter().map(|(of_a, of_b)| parted(wall, (a, of_a), (b, of_b))).sum();
            (len > Len::ZERO).then_some((*id, len))
        })
        .collect()
}

/// The length over which one room lies on one face and the other room on the other.
fn parted(wall: &WallFacts, a: (&Room, Seg), b: (&Room, Seg)) -> Len {
    let Some(along) = Facing::along(wall.line.b - wall.line.a) else { return Len::ZERO };
    let (a, b) = (stretches(a, along, wall.line.a), stretches(b, along, wall.line.a));
    let meets = |(from, to): (Len, Len)| {
        b.iter().map(move |(f, t)| (to.min(*t) - from.max(*f)).max(Len::ZERO)).sum::<Len>()
    };
    a.into_iter().map(meets).sum()
}

/// Where the edges of a room lie on a face, measured along the wall.
fn stretches((room, face): (&Room, Seg), along: Facing, from: Pt) -> Vec<(Len, Len)> {
    let on = |p: Pt| {
        let off = (p - face.a).dot(along.left().step(Len::inches(1)));
        off.abs() <= SLACK * i64::from(Len::PER_INCH)
    };
    let at = |p: Pt| {
        let inch = i64::from(Len::PER_INCH);
        Len::from_units(((p - from).dot(along.step(Len::inches(1))) / inch) as i32)
    };
    let edges = room.shape.perimeter_edges().filter(|e| on(e.a) && on(e.b));
    edges.map(|e| (at(e.a).min(at(e.b)), at(e.a).max(at(e.b)))).filter(|(f, t)| f < t).collect()
}
