//! Clear distances from a wall to what faces it.

use geometry::{Bounds, Pt, Where, closer_than, convex_overlap, locate};
use measure::Len;
use plan::ElementId;
use plan::element::Side;

use crate::reach::{REACH, Strip};
use crate::{Facts, SolidKind, WallFacts};

/// The clear distance from a face of a wall to the next thing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ClearGap {
    /// On the wall's finished face.
    pub from: Pt,
    /// On the other thing, straight before it.
    pub to: Pt,
    /// Rounded down.
    pub distance: Len,
    pub against: ElementId,
}

/// What stands higher than this hangs over one's head and is not measured to.
const BODY: Len = Len::feet_inches(6, 0);

/// The least clear distance from a wall's finished face on a side, along its normal, to the next wall,
/// column, stair or service point, over the wall's whole length; where the nearest thing faces it over
/// a stretch, at the place nearest to the wall's middle. `None` when nothing lies within 40 ft.
///
/// What touches the wall (walls that end on it, its own furring, what hangs on it) is not measured to.
/// A foundation wall's finished face on its left is that of its thickest furring.
pub fn clear_to_next(facts: &Facts, wall: ElementId, side: Side) -> Option<ClearGap> {
    let wall = facts.wall(wall)?;
    // The wall and the furring on it.
    let own: Vec<&WallFacts> =
        facts.walls.iter().filter(|w| w.id == wall.id || w.host == Some(wall.id)).collect();
    let furring = own.iter().filter(|w| w.id != wall.id).map(|w| w.thickness).max();
    let back = match side {
        Side::Left => wall.left.offset_left(furring.unwrap_or_default()),
        Side::Right => wall.right.reversed(),
    };
    let strip = Strip::before(back)?;
    let far = back.offset_left(REACH);
    let ring = [back.b, far.b, far.a, back.a];
    let bounds = Bounds::of(ring);
    let body: Vec<_> = facts
        .solids_near(bounds)
        .filter(|s| s.kind != SolidKind::Furnishing && s.element != wall.id)
        .filter(|s| s.bottom < BODY && s.top > Len::ZERO)
        .collect();
    // Solids are in the order of their elements, so the pieces of one lie together.
    let mut best: Option<ClearGap> = None;
    for pieces in body.chunk_by(|s, t| s.element == t.element) {
        let element = pieces[0].element;
        if own.iter().any(|w| w.id == element)
            || facts.solids_of(element).any(|s| touches(&own, &s.ring))
        {
            continue;
        }
        for piece in pieces.iter().filter(|p| convex_overlap(&p.ring, &ring)) {
            let Some(near) = strip.nearest(&piece.ring) else { continue };
            if best.is_some_and(|b| b.distance <= near.depth) {
                continue;
            }
            let middle = i128::from(back.dir().norm2()) / 2;
            let from = strip.foot(middle.clamp(near.from, near.to));
            let to = from + back.dir().left().with_len(near.depth);
            best = Some(ClearGap { from, to, distance: near.depth, against: element });
        }
    }
    best
}

/// Whether a piece touches the body of one of the walls, to within the rounding of skew faces, or holds
/// an end of its line (where an opening may have taken the body away).
fn touches(walls: &[&WallFacts], piece: &[Pt]) -> bool {
    const SLACK: Len = Len::from_units(4);
    let holds = |p: Pt| locate(p, piece) != Where::Outside;
    walls.iter().any(|w| {
        w.pieces.iter().any(|p| closer_than(p, piece, SLACK)) || holds(w.line.a) || holds(w.line.b)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::derive;
    use crate::testing::Sketch;
    use geometry::Facing;
    use plan::element::ServiceKind;

    #[test]
    fn both_sides_of_a_partition_between_walls() {
        let mut s = Sketch::new();
        let shell = s.rectangle(240, 120);
        let wall = s.partition((100, 0), (100, 120));
        let facts = derive(&s.shared());
        let left = clear_to_next(&facts, wall, Side::Left).unwrap();
        assert_eq!((left.against, left.distance), (shell[3], Len::inches(98)));
        assert_eq!((left.from, left.to), (Pt::inches(98, 60), Pt::inches(0, 60)));
        let right = clear_to_next(&facts, wall, Side::Right).unwrap();
        assert_eq!((right.against, right.distance), (shell[1], Len::inches(138)));
        assert_eq!((right.from, right.to), (Pt::inches(102, 60), Pt::inches(240, 60)));
    }

    #[test]
    fn the_nearest_thing_counts_but_not_what_touches_or_can_be_pushed_aside() {
        let mut s = Sketch::new();
        s.rectangle(240, 120);
        let wall = s.partition((100, 0), (100, 120));
        // A wall that ends on it, with a door, so that a piece of it stands free.
        let branch = s.partition((102, 80), (240, 80));
        s.door(branch, 20, 30);
        s.furnishing(130, 20, Facing::NORTH, (20, 20, 30));
        let facts = derive(&s.shared());
        assert_eq!(clear_to_next(&facts, wall, Side::Right).unwrap().distance, Len::inches(138));
        let column = s.column(180, 30);
        let facts = derive(&s.shared());
        let gap = clear_to_next(&facts, wall, Side::Right).unwrap();
        assert_eq!((gap.against, gap.distance), (column, Len::inches(76)));
        let heater = s.service(ServiceKind::WaterHeater, 160, 20, Facing::NORTH);
        let facts = derive(&s.shared());
        let gap = clear_to_next(&facts, wall, Side::Right).unwrap();
        assert_eq!((gap.against, gap.distance), (heater, Len::inches(160 - 11 - 102)));
        assert_eq!(gap.from, Pt::inches(102, 42), "at the place nearest to the middle");
    }

    #[test]
    fn a_furred_wall_is_measured_from_its_furring_and_to_furring() {
        let mut s = Sketch::new();
        let shell = s.rectangle(240, 120);
        let south = s.furring(shell[0], Len::inches(5));
        let north = s.furring(shell[2], Len::inches(6));
        let facts = derive(&s.shared());
        let gap = clear_to_next(&facts, shell[0], Side::Left).unwrap();
        assert_eq!((gap.against, gap.distance), (north, Len::inches(109)));
        let gap = clear_to_next(&facts, south, Side::Left).unwrap();
        assert_eq!((gap.against, gap.distance), (north, Len::inches(109)));
        assert_eq!(clear_to_next(&facts, shell[0], Side::Right), None);
    }

    #[test]
    fn a_wall_out_of_square_is_measured_at_its_nearest() {
        let mut s = Sketch::new();
        s.rectangle(240, 120);
        let wall = s.partition((100, 0), (100, 120));
        let other = s.partition((150, 0), (140, 120));
        let facts = derive(&s.shared());
        let gap = clear_to_next(&facts, wall, Side::Right).unwrap();
        assert_eq!(gap.against, other);
        // Its near face at y = 120 in.
        assert!(gap.distance < Len::inches(36) && gap.distance > Len::inches(35), "{gap:?}");
        assert_eq!(gap.from.y, Len::inches(120).units());
    }
}
