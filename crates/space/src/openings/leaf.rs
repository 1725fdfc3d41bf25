//! A door leaf and the quarter disc it sweeps.

use geometry::{Pt, Ring, Seg, Vec2, closer_than, convex_clip, convex_hull, sector, twice_area};
use plan::element::{Door, DoorOperation};

use super::Leaf;

/// The leaf of a door. `face` runs from the hinge jamb to the other jamb along the face that the leaf
/// swings from; `outward` points away from that face.
pub(super) fn leaf(door: &Door, face: Seg, outward: Vec2) -> Option<Leaf> {
    let width = match door.operation {
        DoorOperation::Hinged => door.leaf_width,
        DoorOperation::Bifold => door.leaf_width / 2,
        DoorOperation::Sliding | DoorOperation::Pocket | DoorOperation::Cased => return None,
    };
    let along = face.dir();
    if width.units() <= 0 || along == Vec2::default() {
        return None;
    }
    let (hinge, shut) = (face.a, face.a + along.with_len(width));
    let open = hinge + outward.with_len(width);
    let mut sweep = sector(hinge, shut, open);
    if door.operation == DoorOperation::Bifold {
        // The second panel runs from the free edge of the first, on the disc, to its guide on the
        // opening's line: a convex region that holds both ends always holds the panel.
        sweep.push(face.b);
        sweep = convex_hull(&sweep);
    }
    Some(Leaf { hinge, shut, open, width, sweep })
}

/// Whether something convex stands in the quarter disc that a leaf sweeps. Touching the arc, the wall
/// line or the open position does not count.
pub fn leaf_reaches(leaf: &Leaf, thing: &[Pt]) -> bool {
    if !closer_than(&[leaf.hinge], thing, leaf.width) {
        return false;
    }
    let far = leaf.shut + (leaf.open - leaf.hinge);
    let mut square: Ring = vec![leaf.hinge, leaf.shut, far, leaf.open];
    if twice_area(&square) < 0 {
        square.reverse();
    }
    let part = convex_clip(thing, &square);
    !part.is_empty() && closer_than(&[leaf.hinge], &part, leaf.width)
}

#[cfg(test)]
mod tests {
    use super::*;
    use geometry::{Where, locate};
    use measure::Len;
    use plan::element::{End, Side};

    fn door(operation: DoorOperation) -> Door {
        Door {
            operation,
            leaf_width: Len::inches(30),
            leaf_height: Len::inches(80),
            hinge: End::Start,
            swing: Side::Left,
        }
    }

    fn made(operation: DoorOperation) -> Leaf {
        let face = Seg::new(Pt::inches(10, 0), Pt::inches(40, 0));
        leaf(&door(operation), face, Vec2::new(0, 1)).unwrap()
    }

    #[test]
    fn the_polygon_holds_the_disc_and_little_more() {
        let l = made(DoorOperation::Hinged);
        assert_eq!((l.shut, l.open), (Pt::inches(40, 0), Pt::inches(10, 30)));
        // Points on the arc by the 3-4-5, 5-12-13 and 8-15-17 triangles.
        for (x, y, r) in [(3, 4, 5), (4, 3, 5), (5, 12, 13), (12, 5, 13), (8, 15, 17), (15, 8, 17)]
        {
            let d = |k: i32| Len::inches(30).units() * k / r;
            let p = l.hinge + Vec2::new(i64::from(d(x)), i64::from(d(y)));
            assert_ne!(locate(p, &l.sweep), Where::Outside, "{x} {y} {r}");
            let beyond = l.hinge
                + Vec2::new(i64::from(d(x)), i64::from(d(y)))
                    .with_len(Len::sixty_fourths(30 * 64 + 12));
            assert_eq!(locate(beyond, &l.sweep), Where::Outside, "{x} {y} {r}");
        }
    }

    #[test]
    fn reaching_is_exact_at_the_arc() {
        let l = made(DoorOperation::Hinged);
        let cube = |x: i32, y: i32| {
            let at = |dx: i32, dy: i32| Pt::new(x + dx, y + dy);
            [at(0, 0), at(900, 0), at(900, 900), at(0, 900)]
        };
        let arc = l.hinge
            + Vec2::new(i64::from(Len::inches(18).units()), i64::from(Len::inches(24).units()));
        assert!(!leaf_reaches(&l, &cube(arc.x, arc.y)), "touches the arc");
        assert!(leaf_reaches(&l, &cube(arc.x - 1, arc.y)));
        assert!(!leaf_reaches(&l, &cube(l.hinge.x - 900, l.hinge.y)), "behind the open leaf");
    }

    #[test]
    fn a_bifold_holds_both_panels() {
        let l = made(DoorOperation::Bifold);
        assert_eq!(l.width, Len::inches(15));
        // The joint at (15 cos t, 15 sin t), the guide at 30 cos t; t by the 3-4-5 triangle.
        let (joint, guide) = (Pt::inches(10 + 12, 9), Pt::inches(10 + 24, 0));
        for p in [joint, guide, joint.midway(guide)] {
            assert_ne!(locate(p, &l.sweep), Where::Outside);
        }
    }

    #[test]
    fn a_pocket_door_sweeps_nothing() {
        let face = Seg::new(Pt::inches(10, 0), Pt::inches(40, 0));
        assert!(leaf(&door(DoorOperation::Pocket), face, Vec2::new(0, 1)).is_none());
    }
}
