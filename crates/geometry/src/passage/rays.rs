//! On which side of the places a path passes.
//!
//! From each place a ray goes to the left. A step crosses it when exactly one of its ends lies above
//! the ray, a point on the ray's own height counting as below, and when the place lies to the right
//! of the step. So a closed path crosses a ray an odd number of times just when it goes round the
//! place an odd number of times, and no corner on a ray needs special care.

use super::link::{Bend, Path};
use crate::{Pt, Vec2};

/// A bit for every place of a batch: 64 service points and some arrivals fit.
pub(super) type Label = u128;

/// Up to [`Label::BITS`] places, a bit of a label each.
#[derive(Clone, Debug)]
pub(super) struct Rays {
    /// By rising y: the place and its bit.
    places: Vec<(Pt, Label)>,
}

impl Rays {
    /// Bit `k` is for place `k`; at most [`Label::BITS`].
    pub fn new(places: &[Pt]) -> Rays {
        let bits = places.iter().enumerate().map(|(k, &p)| (p, 1 << k));
        let mut places: Vec<(Pt, Label)> = bits.collect();
        places.sort_unstable_by_key(|&(p, bit)| (p.y, p.x, bit));
        Rays { places }
    }

    /// The label of a path from the anchor of a piece to the anchor of another: straight to the
    /// start of the link, along the link, straight to the other anchor.
    pub fn label(&self, anchor: Pt, path: Path, other: Pt) -> Label {
        let (from, to, bend) = path.legs();
        let link = match bend {
            None => self.step(from, to),
            Some(Bend { y, coming, leaving }) => {
                self.leg(from, from.y, y, coming) ^ self.leg(to, y, to.y, leaving)
            }
        };
        self.step(anchor, from) ^ link ^ self.step(to, other)
    }

    fn step(&self, from: Pt, to: Pt) -> Label {
        self.leg(from, from.y, to.y, to - from)
    }

    /// A leg on the line through `on` along `dir`, from one height to another.
    fn leg(&self, on: Pt, from: i32, to: i32, dir: Vec2) -> Label {
        let (low, high) = (from.min(to), from.max(to));
        if low == high {
            return 0;
        }
        let first = self.places.partition_point(|(p, _)| p.y < low);
        let right_of = |p: Pt| {
            let side = dir.cross(p - on);
            if to > from { side < 0 } else { side > 0 }
        };
        self.places[first..]
            .iter()
            .take_while(|(p, _)| p.y < high)
            .filter(|(p, _)| right_of(*p))
            .fold(0, |label, (_, bit)| label ^ bit)
    }
}

#[cfg(test)]
mod tests {
    use super::super::link::link;
    use super::*;
    use crate::reach::Reach;
    use crate::sample::{piece, point};
    use crate::{convex_hull, nearest_on, ring::edges};
    use proptest::prelude::*;

    /// Whether the ray to the left of `p` crosses a step between points `x / den`, `y / den`: by the rule,
    /// in wide integers.
    fn crosses(p: Pt, u: (i128, i128, i128), v: (i128, i128, i128)) -> bool {
        let (x, y) = (i128::from(p.x), i128::from(p.y));
        let below = |q: (i128, i128, i128)| q.1 <= y * q.2;
        if below(u) == below(v) {
            return false;
        }
        // The sign of (v - u) x (p - u), times the positive denominators.
        let (dx, dy) = (v.0 * u.2 - u.0 * v.2, v.1 * u.2 - u.1 * v.2);
        let side = dx * (y * u.2 - u.1) - dy * (x * u.2 - u.0);
        if below(u) { side < 0 } else { side > 0 }
    }

    /// The point between, by Cramer's rule on the two legs' lines, or by the foot of the perpendicular.
    fn middle(path: Path) -> Option<(i128, i128, i128)> {
        let along = |a: Pt, d: Vec2, num: i64, den: i64| {
            let (num, den) = if den < 0 { (-num, -den) } else { (num, den) };
            let part = |from: i32, d: i64| {
                i128::from(from) * i128::from(den) + i128::from(d) * i128::from(num)
            };
            (part(a.x, d.x), part(a.y, d.y), i128::from(den))
        };
        match path {
            Path::Straight(..) => None,
            Path::Foot { corner, edge, .. } => {
                let d = edge.dir();
                Some(along(edge.a, d, d.dot(corner - edge.a), d.norm2()))
            }
            Path::Crossing(s, t) => {
                let (u, v) = (s.dir(), t.dir());
                Some(along(s.a, u, (t.a - s.a).cross(v), u.cross(v)))
            }
        }
    }

    fn label_in_wide_integers(p: Pt, anchor: Pt, path: Path, other: Pt) -> Label {
        let whole = |q: Pt| (i128::from(q.x), i128::from(q.y), 1);
        let (from, to, _) = path.legs();
        let mut points = vec![whole(anchor), whole(from)];
        points.extend(middle(path));
        points.extend([whole(to), whole(other)]);
        points.windows(2).filter(|w| crosses(p, w[0], w[1])).count() as Label % 2
    }

    fn pieces(limit: i32) -> impl Strategy<Value = (Vec<Pt>, Vec<Pt>, Vec<Pt>)> {
        let hull = |limit| piece(limit).prop_map(|ring| convex_hull(&ring));
        (hull(limit), hull(limit), prop::collection::vec(point(limit), 1..=128))
    }

    /// Small, so that places lie on the heights of corners and on the paths; and as
    /// large as the reference can be.
    fn any_pieces() -> impl Strategy<Value = (Vec<Pt>, Vec<Pt>, Vec<Pt>)> {
        prop_oneof![pieces(5), pieces(40), pieces(30_000), pieces(1 << 18)]
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(600))]

        #[test]
        fn labels_agree_with_wide_integers((a, b, places) in any_pieces()) {
            let path = link(&a, &b).path;
            let label = Rays::new(&places).label(a[0], path, b[0]);
            for (k, &p) in places.iter().enumerate() {
                prop_assert_eq!(label >> k & 1, label_in_wide_integers(p, a[0], path, b[0]), "{:?}", p);
            }
        }

        /// Going there by one link and back by the other goes round no place that has room.
        #[test]
        fn the_link_of_swapped_pieces_has_the_same_label((a, b, places) in any_pieces()) {
            let (there, back) = (link(&a, &b), link(&b, &a));
            prop_assert_eq!(there.reach, back.reach);
            let rays = Rays::new(&places);
            let differ = rays.label(a[0], there.path, b[0]) ^ rays.label(b[0], back.path, a[0]);
            for (k, &p) in places.iter().enumerate().filter(|(k, _)| differ >> k & 1 == 1) {
                let near = [&a, &b].map(|ring| {
                    let inside = crate::locate(p, ring) != crate::Where::Outside;
                    let edge = edges(ring).map(|e| Reach::of(p, e)).min();
                    if inside { Reach::ZERO } else { edge.unwrap_or(Reach::ZERO) }
                });
                prop_assert!(near[0].min(near[1]).doubled() <= there.reach, "{k} {p:?}");
            }
        }

        /// The distance is that of the gap, which is found without floats.
        #[test]
        fn the_reach_is_that_of_the_gap((a, b, _) in any_pieces()) {
            prop_assert_eq!(link(&a, &b).reach.len(), crate::gap(&a, &b).len);
            let least = a.iter().flat_map(|&p| edges(&b).map(move |e| Reach::of(p, e)))
                .chain(b.iter().flat_map(|&p| edges(&a).map(move |e| Reach::of(p, e)))).min();
            let reach = link(&a, &b).reach;
            prop_assert!(reach.is_zero() || Some(reach) == least);
            prop_assert!(reach.is_zero() || !crate::convex_overlap(&a, &b));
        }
    }

    #[test]
    fn a_place_just_beside_a_foot_that_lies_off_the_grid() {
        let (corner, edge) = (vec![Pt::new(0, 0)], vec![Pt::new(2, -9), Pt::new(5, 1)]);
        let path = link(&corner, &edge).path;
        assert!(matches!(path, Path::Foot { .. }));
        let foot = nearest_on(crate::Seg::new(edge[0], edge[1]), corner[0]);
        for dx in -2..=2 {
            for dy in -2..=2 {
                let p = Pt::new(foot.x + dx, foot.y + dy);
                let label = Rays::new(&[p]).label(corner[0], path, edge[0]);
                assert_eq!(label, label_in_wide_integers(p, corner[0], path, edge[0]), "{p:?}");
            }
        }
    }
}
