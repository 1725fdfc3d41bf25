//! The convex pieces that stand in the way.

use std::ops::Range;

use measure::Len;

use crate::reach::Reach;
use crate::{Bounds, Grid, Pt, Seg, Where, convex_hull, locate, nearest_on, orient, ring::edges};

/// Convex pieces by index, each with its owner, and the grid that finds them.
///
/// A wall, a column, an appliance: whatever a walking person cannot enter, cut into convex pieces.
/// A closed door is the caller's matter: leave it out, or put it in.
#[derive(Clone, Debug, Default)]
pub struct Obstacles {
    points: Vec<Pt>,
    starts: Vec<u32>,
    owners: Vec<usize>,
    grid: Grid,
}

impl Obstacles {
    /// From rings with their owners. The convex hull of each ring counts, whatever its winding; one
    /// point is a thin post, two are a thin screen; an empty ring stands nowhere but keeps its index.
    pub fn new<'a>(pieces: impl IntoIterator<Item = (&'a [Pt], usize)>) -> Obstacles {
        let mut all = Obstacles { starts: vec![0], ..Obstacles::default() };
        let mut boxes = Vec::new();
        for (ring, owner) in pieces {
            let from = all.points.len();
            push_hull(&mut all.points, ring);
            boxes.push(Bounds::of(&all.points[from..]));
            all.starts.push(all.points.len() as u32);
            all.owners.push(owner);
        }
        all.grid = Grid::new(boxes);
        all
    }

    /// How many pieces.
    pub fn len(&self) -> usize {
        self.owners.len()
    }

    pub fn is_empty(&self) -> bool {
        self.owners.is_empty()
    }

    /// The corners of a piece: counter-clockwise from the leftmost lowest, without collinear ones.
    pub fn ring(&self, piece: usize) -> &[Pt] {
        &self.points[self.span(piece)]
    }

    /// Whom a piece belongs to, as given.
    pub fn owner(&self, piece: usize) -> usize {
        self.owners[piece]
    }

    /// The box round a piece.
    pub fn bounds(&self, piece: usize) -> Bounds {
        self.grid.bounds(piece)
    }

    /// The pieces whose boxes meet a box, in rising order.
    pub fn near(&self, within: Bounds) -> Vec<usize> {
        self.grid.query(within)
    }

    /// How far the nearest piece is from a point, rounded down, up to `most`; zero inside one.
    pub fn clearance(&self, p: Pt, most: Len) -> Len {
        self.nearest(p, most).map_or(most, |(_, reach)| reach.len().min(most))
    }

    pub(super) fn grid(&self) -> &Grid {
        &self.grid
    }

    /// The box round all pieces.
    pub(super) fn all_bounds(&self) -> Bounds {
        self.grid.all()
    }

    /// The indices into all corners of the corners of a piece.
    pub(super) fn span(&self, piece: usize) -> Range<usize> {
        self.starts[piece] as usize..self.starts[piece + 1] as usize
    }

    /// The nearest piece to a point within `most`, with the squared distance; the piece that comes
    /// first by its corners where several are as near.
    pub(super) fn nearest(&self, p: Pt, most: Len) -> Option<(usize, Reach)> {
        let mut radius = Len::inches(12).min(most);
        loop {
            let near = self.grid.query(Bounds::of([p]).grow(radius));
            let best = near
                .into_iter()
                .map(|i| (i, self.reach(p, i)))
                .min_by(|a, b| a.1.cmp(&b.1).then_with(|| self.ring(a.0).cmp(self.ring(b.0))))
                .filter(|best| best.1 <= Reach::of_len(radius));
            if best.is_some() || radius >= most {
                return best;
            }
            radius = radius.checked_add(radius).unwrap_or(most).min(most);
        }
    }

    /// The squared distance of a point from a piece that is not empty; zero inside it.
    fn reach(&self, p: Pt, piece: usize) -> Reach {
        let ring = self.ring(piece);
        if locate(p, ring) == Where::Inside {
            return Reach::ZERO;
        }
        let least = edges(ring).map(|e| Reach::of(p, e)).min();
        least.unwrap_or(Reach::whole(1 << 61))
    }

    /// The point of a piece nearest to a point outside it, rounded once.
    pub(super) fn foot(&self, p: Pt, piece: usize) -> Pt {
        let ring = self.ring(piece);
        if locate(p, ring) == Where::Inside {
            return p;
        }
        let edge = edges(ring).min_by(|&a, &b| Reach::of(p, a).cmp(&Reach::of(p, b)));
        nearest_on(edge.unwrap_or(Seg::new(p, p)), p)
    }
}

/// Two rings in the order of their corners.
pub(super) fn by_corners<'a>(a: &'a [Pt], b: &'a [Pt]) -> (&'a [Pt], &'a [Pt]) {
    if a <= b { (a, b) } else { (b, a) }
}

/// Appends the hull of a ring; the common case, already in order, without sorting.
fn push_hull(points: &mut Vec<Pt>, ring: &[Pt]) {
    let n = ring.len();
    let first = (0..n).min_by_key(|&i| ring[i]).unwrap_or(0);
    let at = |i: usize| ring[(first + i) % n];
    // All turns to the left, and only one: seen from the first corner, the others go round in order.
    let in_order = n >= 3
        && (0..n).all(|i| orient(at(i), at(i + 1), at(i + 2)) > 0)
        && (1..n - 1).all(|i| orient(at(0), at(i), at(i + 1)) > 0);
    if in_order {
        points.extend((0..n).map(at));
    } else {
        points.extend(convex_hull(ring));
    }
}
