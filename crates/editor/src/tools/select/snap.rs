//! What catches a drag: faces in line, faces to stand against, and the grid.

use geometry::{Facing, Pt, Seg, Vec2};
use measure::Len;
use plan::element::Mount;
use plan::{Body, ElementId};

use super::super::Cx;
use super::super::hosted::catch_along;
use crate::Snap;
use crate::outline::outline;
use crate::pointer::{Pointer, along, offset};
use crate::snap::{caught, face_near, flush};

/// A wall-hung thing jumps to a wall this near.
const WALL: Len = Len::inches(24);

/// Faces farther along than this from a wall do not catch it.
const FAR: Len = Len::feet_inches(30, 0);

/// How far a wall goes along its left normal: until one of its faces or its line is in line with another
/// wall's, else by whole grid steps.
pub(super) fn wall(
    cx: &Cx<'_>,
    id: ElementId,
    line: Seg,
    by: Len,
    pointer: &Pointer,
) -> (Len, Option<Snap>) {
    let skip = [id];
    let catch = cx.catch(&skip);
    if !catch.active(pointer) {
        return (by, None);
    }
    let normal = line.dir().left();
    let own = cx.facts.wall(id).map_or(vec![line], |w| vec![w.line, w.left, w.right]);
    let mut best: Option<(Len, Seg)> = None;
    for other in cx.facts.walls.iter().filter(|w| w.id != id) {
        if other.line.dir().cross(line.dir()) != 0
            || !crate::pointer::box_reaches(other.line, pointer.at, FAR)
        {
            continue;
        }
        for seg in [other.left, other.right, other.line] {
            for mine in &own {
                let to = along(seg.a - mine.a, normal);
                let off = (to - by).abs();
                if off <= pointer.reach && best.is_none_or(|(b, _)| off < (b - by).abs()) {
                    best = Some((to, seg));
                }
            }
        }
    }
    match best {
        Some((to, seg)) => {
            let snap = Snap { word: "face", at: pointer.at, guide: Some((seg.a, seg.b)) };
            (to, Some(snap))
        }
        None if cx.options.grid > Len::ZERO => {
            (by.round_to(cx.options.grid), caught("grid", pointer.at))
        }
        None => (by, None),
    }
}

/// A place along a wall between two limits.
pub(super) fn along_wall(
    cx: &Cx<'_>,
    pointer: &Pointer,
    line: Seg,
    at: Len,
    limits: (Len, Len),
) -> (Len, Option<Snap>) {
    let (at, word) = catch_along(cx, pointer, at, limits);
    (at, word.and_then(|word| caught(word, line.point_at(at))))
}

/// How far one thing goes, and the way it faces where its back comes to a wall.
pub(super) fn thing(
    cx: &Cx<'_>,
    id: ElementId,
    v: Vec2,
    pointer: &Pointer,
) -> (Vec2, Option<Facing>, Option<Snap>) {
    let skip = [id];
    let catch = cx.catch(&skip);
    let Some(element) = cx.plan.get(id).filter(|_| catch.active(pointer)) else {
        return (v, None, None);
    };
    let backed = match &element.body {
        Body::Service(s) if s.mount == Mount::Wall => Some((s.at, WALL.max(pointer.reach))),
        Body::Furnishing(f) => Some((f.at, pointer.reach)),
        _ => None,
    };
    if let Some((back, near)) = backed
        && let Some(to) = offset(back, v)
        && let Some(face) = face_near(&catch, &Pointer { at: to, ..*pointer }, near)
    {
        return (face.at - back, Some(face.out), caught("face", face.at));
    }
    let (stepped, word) =
        step(cx, element.body.points().first().copied().unwrap_or(pointer.at), v, pointer);
    let ring = outline(cx.plan, cx.facts, element).unwrap_or_default();
    let moved: Option<Vec<Pt>> = ring.iter().map(|p| offset(*p, stepped)).collect();
    if let Some(corners) = moved.filter(|ring| ring.len() == 4)
        && let Some(more) = flush(&catch, &corners, pointer.reach)
    {
        return (stepped + more, None, caught("face", pointer.at));
    }
    (stepped, None, word)
}

/// A displacement by whole grid steps; square while it is nearly so.
pub(super) fn step(cx: &Cx<'_>, from: Pt, v: Vec2, pointer: &Pointer) -> (Vec2, Option<Snap>) {
    let grid = cx.options.grid;
    if !cx.catch(&[]).active(pointer) || grid <= Len::ZERO {
        return (v, None);
    }
    let round = |c: i64| {
        let len = Len::from_units(i32::try_from(c).unwrap_or(0));
        i64::from(len.round_to(grid).units())
    };
    let reach = i64::from(pointer.reach.units());
    let (x, y) = if v.y.abs() <= reach && v.x.abs() > 3 * v.y.abs() {
        (round(v.x), 0)
    } else if v.x.abs() <= reach && v.y.abs() > 3 * v.x.abs() {
        (0, round(v.y))
    } else {
        return (Vec2::new(round(v.x), round(v.y)), caught("grid", pointer.at));
    };
    let v = Vec2::new(x, y);
    let guide = offset(from, v).map(|to| (from, to));
    (v, Some(Snap { word: "square", at: pointer.at, guide }))
}
