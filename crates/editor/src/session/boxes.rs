//! Distances from the sides of a box to the next wall faces.

use geometry::{Placed, Pt, Seg, Vec2, line_crossing};
use measure::Len;
use plan::ElementId;
use space::Facts;

use crate::pointer::{along, box_reaches, offset};
use crate::{Dimension, DimensionId};

/// The distances from each side of a box to the next wall face straight before it, where there is one. Exact for
/// boxes and walls parallel to the axes.
pub(super) fn dimensions(facts: &Facts, placed: Placed) -> Vec<Dimension> {
    let [back_right, front_right, front_left, back_left] = placed.corners();
    let facing = placed.facing;
    let sides = [
        (DimensionId::BoxLeft, Seg::new(front_left, back_left), facing.left()),
        (DimensionId::BoxRight, Seg::new(back_right, front_right), facing.right()),
        (DimensionId::BoxFront, Seg::new(front_right, front_left), facing),
        (DimensionId::BoxBack, Seg::new(back_left, back_right), facing.back()),
    ];
    sides
        .into_iter()
        .filter_map(|(id, side, out)| {
            let (value, from, against) = next_face(facts, side, out.vec())?;
            let to = offset(from, out.step(value))?;
            Some(Dimension { id, from, to, value, editable: true, against: Some(against) })
        })
        .collect()
}

/// The distance from a side to the next wall straight out of it, where it is measured from, and the wall.
fn next_face(facts: &Facts, side: Seg, out: Vec2) -> Option<(Len, Pt, ElementId)> {
    let mut best: Option<(Len, Pt, ElementId)> = None;
    let mut meet = |far: Len, from: Pt, wall: ElementId| {
        if far >= Len::ZERO && best.is_none_or(|(least, ..)| far < least) {
            best = Some((far, from, wall));
        }
    };
    for wall in &facts.walls {
        for (i, corner) in wall.outline.iter().enumerate() {
            let edge = Seg::new(*corner, wall.outline[(i + 1) % wall.outline.len()]);
            // A corner of the wall straight before the side.
            let across = along(*corner - side.a, side.dir());
            if across > Len::ZERO && across < side.len() {
                meet(along(*corner - side.a, out), side.point_at(across), wall.id);
            }
            // An edge of the wall straight before an end of the side.
            for from in [side.a, side.b] {
                let Some(ahead) = offset(from, out.with_len(Len::inches(12))) else { continue };
                if let Some(p) = line_crossing(Seg::new(from, ahead), edge)
                    && box_reaches(edge, p, Len::ZERO)
                    && touches_strip(side, edge)
                {
                    meet(along(p - from, out), from, wall.id);
                }
            }
        }
    }
    best
}

/// Whether an edge reaches into the strip straight before a side; one that only runs along the strip's border
/// does not.
fn touches_strip(side: Seg, edge: Seg) -> bool {
    let (p, q) = (along(edge.a - side.a, side.dir()), along(edge.b - side.a, side.dir()));
    p.max(q) > Len::ZERO && p.min(q) < side.len()
}
