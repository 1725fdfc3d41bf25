//! Setting a box against the faces of walls.

use geometry::{Facing, Pt, Seg, Vec2, nearest_on};
use measure::Len;
use space::WallFacts;

use super::Catch;
use crate::pointer::{Pointer, along};

/// A place on a wall's face.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Face {
    /// The point on the face nearest to the pointer, on the grid where the face is parallel to an axis.
    pub at: Pt,
    /// Out of the wall.
    pub out: Facing,
}

/// The wall face within `reach` of the pointer that it stands before (or is just behind): the nearest one.
/// Where furring stands before a face, the furring's face is the nearer one to a pointer in the room.
pub(crate) fn face_near(catch: &Catch<'_>, pointer: &Pointer, reach: Len) -> Option<Face> {
    let mut best: Option<(i64, Face)> = None;
    for wall in catch.facts.walls.iter().filter(|w| !catch.skip.contains(&w.id)) {
        for (seg, out) in faces(wall) {
            if !crate::pointer::box_reaches(seg, pointer.at, reach) {
                continue;
            }
            let at = nearest_on(seg, pointer.at);
            let off = (pointer.at - at).norm2();
            let Some(out) = Facing::along(out) else { continue };
            let r = i64::from(reach.units());
            if off > r * r {
                continue;
            }
            // Behind its face the pointer stands in the wall: the face it looks out of still counts, but one in
            // front of which it stands is preferred at the same distance.
            let behind = out.vec().dot(pointer.at - at) < 0;
            let key = off * 2 + i64::from(behind);
            if best.as_ref().is_none_or(|(least, _)| key < *least) {
                best = Some((key, Face { at: catch.along_face(seg, at, pointer), out }));
            }
        }
    }
    best.map(|(_, face)| face)
}

/// How to shift a box so that its sides touch the faces before them within `reach`: at most one shift along
/// each of its two directions. `corners` are four, counter-clockwise. Exact for sides and faces parallel to
/// the axes.
pub(crate) fn flush(catch: &Catch<'_>, corners: &[Pt], reach: Len) -> Option<Vec2> {
    // Which of the two directions, how far, and the shift.
    let mut shifts: Vec<(usize, Len, Vec2)> = Vec::new();
    for (i, a) in corners.iter().enumerate() {
        let side = Seg::new(*a, corners[(i + 1) % corners.len()]);
        let out = -side.dir().left();
        for wall in catch.facts.walls.iter().filter(|w| !catch.skip.contains(&w.id)) {
            for (face, normal) in faces(wall) {
                if face.dir().cross(side.dir()) != 0 || normal.dot(out) >= 0 {
                    continue;
                }
                let gap = along(face.a - side.a, out);
                if gap.abs() <= reach && overlap(side, face) {
                    shifts.push((i % 2, gap.abs(), out.with_len(gap)));
                }
            }
        }
    }
    shifts.sort_by_key(|(_, gap, _)| *gap);
    let (direction, _, first) = *shifts.first()?;
    let second = shifts.iter().find(|(d, ..)| *d != direction);
    Some(second.map_or(first, |(_, _, v)| first + *v))
}

/// The two faces of a wall with the direction that each looks in.
fn faces(wall: &WallFacts) -> [(Seg, Vec2); 2] {
    [(wall.left, wall.left.dir().left()), (wall.right, -wall.right.dir().left())]
}

/// Whether two parallel segments lie beside each other along some stretch.
fn overlap(one: Seg, other: Seg) -> bool {
    let dir = one.dir();
    let (p, q) = (dir.dot(other.a - one.a), dir.dot(other.b - one.a));
    p.min(q) < dir.norm2() && p.max(q) > 0
}
