//! How near two convex pieces are, and a path from one to the other there.
//!
//! The path is exact although the nearest place may lie off the grid: a corner of one piece, the
//! foot of the perpendicular on an edge of the other, and the start of that edge. What a path is
//! asked for is on which side of a place it passes, and for that the directions of its two legs and
//! the first grid line at or above the foot are enough: whole numbers all of them.

use crate::reach::Reach;
use crate::{Bounds, Pt, Seg, Vec2, Where, locate, orient, ring::edges, segs_touch};

/// The nearest places of two pieces.
#[derive(Clone, Copy, Debug)]
pub(super) struct Link {
    /// The squared distance; zero when the pieces touch or overlap.
    pub reach: Reach,
    pub path: Path,
}

/// A way from a point of the first piece to a point of the second, within the union of the pieces and
/// the segment between their nearest places. Kept as where it comes from, because most are never asked.
#[derive(Clone, Copy, Debug)]
pub(super) enum Path {
    Straight(Pt, Pt),
    /// From a corner of one piece to its foot on an edge of the other, then to the start of the edge;
    /// `turned`: the other way round, the corner being of the second piece.
    Foot {
        corner: Pt,
        edge: Seg,
        turned: bool,
    },
    /// Along an edge of the first piece to where it crosses one of the second, back to the start of that.
    Crossing(Seg, Seg),
}

/// The point between the ends of a path, which may lie off the grid.
#[derive(Clone, Copy, Debug)]
pub(super) struct Bend {
    /// Its y, rounded up.
    pub y: i32,
    /// Along the leg that leads to it, and along the leg that leads on.
    pub coming: Vec2,
    pub leaving: Vec2,
}

impl Path {
    /// The ends, and the point between them if there is one.
    pub fn legs(self) -> (Pt, Pt, Option<Bend>) {
        match self {
            Path::Straight(from, to) => (from, to, None),
            Path::Foot { corner, edge, turned } => {
                let (d, w) = (edge.dir(), corner - edge.a);
                let towards = if d.cross(w) > 0 { -d.left() } else { d.left() };
                let y = ceil_along(edge.a.y, d.y, w.dot(d), d.norm2());
                if turned {
                    (edge.a, corner, Some(Bend { y, coming: d, leaving: -towards }))
                } else {
                    (corner, edge.a, Some(Bend { y, coming: towards, leaving: -d }))
                }
            }
            Path::Crossing(s, t) => {
                let (u, v) = (s.dir(), t.dir());
                let (num, den) = ((t.a - s.a).cross(v), u.cross(v));
                let (num, den) = if den < 0 { (-num, -den) } else { (num, den) };
                let y = ceil_along(s.a.y, u.y, num, den);
                (s.a, t.a, Some(Bend { y, coming: u, leaving: -v }))
            }
        }
    }
}

/// The link of two pieces that are not empty: counter-clockwise rings from the leftmost lowest corner,
/// points or segments.
pub(super) fn link(a: &[Pt], b: &[Pt]) -> Link {
    if let (Some(a), Some(b)) = (as_box(a), as_box(b)) {
        return link_of_boxes(a, b);
    }
    if let Some(path) = touch(a, b) {
        return Link { reach: Reach::ZERO, path };
    }
    let mut best = Nearest::none();
    best.corners_to_edges(a, b, false);
    best.corners_to_edges(b, a, true);
    Link { reach: best.reach(), path: best.path() }
}

/// The box that a piece is, if it is an axis-parallel one.
fn as_box(ring: &[Pt]) -> Option<Bounds> {
    match *ring {
        [min, low, max, high] if low == Pt::new(max.x, min.y) && high == Pt::new(min.x, max.y) => {
            Some(Bounds { min, max })
        }
        _ => None,
    }
}

/// The common case, with whole numbers only: nearest along x and along y each by itself. Where two
/// sides overlap, the lowest leftmost place.
fn link_of_boxes(a: Bounds, b: Bounds) -> Link {
    let nearest = |low_a: i32, high_a: i32, low_b: i32, high_b: i32| {
        if high_a < low_b {
            (high_a, low_b)
        } else if high_b < low_a {
            (low_a, high_b)
        } else {
            (low_a.max(low_b), low_a.max(low_b))
        }
    };
    let x = nearest(a.min.x, a.max.x, b.min.x, b.max.x);
    let y = nearest(a.min.y, a.max.y, b.min.y, b.max.y);
    let (from, to) = (Pt::new(x.0, y.0), Pt::new(x.1, y.1));
    Link { reach: Reach::whole((to - from).norm2()), path: Path::Straight(from, to) }
}

/// The corner and the edge that are nearest so far, and whether the corner is of the second piece.
struct Nearest {
    square: f64,
    corner: Pt,
    edge: Seg,
    turned: bool,
}

/// Far above the rounding of the floats that are compared: four operations of half of 2^-52 each.
const DOUBT: f64 = 1e-14;

impl Nearest {
    fn none() -> Nearest {
        let origin = Pt::default();
        let edge = Seg::new(origin, origin);
        Nearest { square: f64::INFINITY, corner: origin, edge, turned: false }
    }

    fn reach(&self) -> Reach {
        Reach::of(self.corner, self.edge)
    }

    fn path(&self) -> Path {
        let &Nearest { corner, edge, turned, .. } = self;
        match (edge.dir().dot(corner - edge.a) <= 0, turned) {
            (true, false) => Path::Straight(corner, edge.a),
            (true, true) => Path::Straight(edge.a, corner),
            (false, turned) => Path::Foot { corner, edge, turned },
        }
    }

    /// Floats decide where they can; else the ratios are compared exactly.
    fn corners_to_edges(&mut self, corners: &[Pt], ring: &[Pt], turned: bool) {
        for edge in edges(ring) {
            let d = edge.dir();
            let length2 = d.norm2();
            for &corner in corners {
                let w = corner - edge.a;
                let along = w.dot(d);
                let square = if along <= 0 {
                    w.norm2() as f64
                } else if along >= length2 {
                    // The end is the start of the next edge, and is met there.
                    continue;
                } else {
                    let off = d.cross(w) as f64;
                    off * off / length2 as f64
                };
                let nearer = square < self.square * (1.0 - DOUBT)
                    || (square <= self.square * (1.0 + DOUBT)
                        && Reach::of(corner, edge) < self.reach());
                if nearer {
                    *self = Nearest { square, corner, edge, turned };
                }
            }
        }
    }
}

/// A path through a point that both closed pieces hold, if they have one.
fn touch(a: &[Pt], b: &[Pt]) -> Option<Path> {
    if !Bounds::of(a).meets(Bounds::of(b)) || parted(a, b) || parted(b, a) {
        return None;
    }
    let held = |p: &&Pt, ring: &[Pt]| locate(**p, ring) != Where::Outside;
    if let Some(&p) = a.iter().find(|p| held(p, b)).or_else(|| b.iter().find(|p| held(p, a))) {
        return Some(Path::Straight(p, p));
    }
    // No corner lies on the other piece, so two edges cross inside both, or the pieces are apart.
    let mut pairs = edges(a).flat_map(|s| edges(b).map(move |t| (s, t)));
    pairs.find(|&(s, t)| segs_touch(s, t)).map(|(s, t)| Path::Crossing(s, t))
}

/// Whether an edge of a counter-clockwise piece has the other piece strictly outside.
fn parted(a: &[Pt], b: &[Pt]) -> bool {
    a.len() > 2 && edges(a).any(|e| b.iter().all(|&p| orient(e.a, e.b, p) < 0))
}

/// `from + d * num / den` rounded up, for `den` positive; between two coordinates, so a coordinate.
fn ceil_along(from: i32, d: i64, num: i64, den: i64) -> i32 {
    let up = match d.checked_mul(num) {
        Some(product) => -((-product).div_euclid(den)),
        None => -(-(i128::from(d) * i128::from(num))).div_euclid(i128::from(den)) as i64,
    };
    (i64::from(from) + up) as i32
}
