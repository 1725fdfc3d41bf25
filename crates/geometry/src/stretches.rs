//! The stretches of a line that lie within an outline.

use measure::Len;

use crate::{Pt, Seg, Where, line_crossing, locate, orient};

/// The stretches of a segment within a ring, as distances from its start, in order, each rounded to the grid. A stretch
/// that only runs along an edge is none.
///
/// ```
/// use geometry::{Pt, Seg, stretches};
/// use measure::Len;
/// let ring = [(2, -1), (5, -1), (5, 1), (2, 1)].map(|(x, y)| Pt::inches(x, y));
/// let line = Seg::new(Pt::inches(0, 0), Pt::inches(10, 0));
/// assert_eq!(stretches(line, &ring), [(Len::inches(2), Len::inches(5))]);
/// ```
pub fn stretches(line: Seg, ring: &[Pt]) -> Vec<(Len, Len)> {
    let length = line.len();
    let dir = line.dir();
    let far = |p: Pt| {
        let along = (p - line.a).dot(dir) as f64 / dir.norm();
        Len::from_units(along.round() as i32).clamp(Len::ZERO, length)
    };
    let mut places = vec![Len::ZERO, length];
    for (i, a) in ring.iter().enumerate() {
        let edge = Seg::new(*a, ring[(i + 1) % ring.len()]);
        let (from, to) = (orient(line.a, line.b, edge.a), orient(line.a, line.b, edge.b));
        if from.signum() * to.signum() > 0 {
            continue;
        }
        if from == 0 && to == 0 {
            places.extend([far(edge.a), far(edge.b)]);
        } else if let Some(p) = line_crossing(line, edge) {
            places.push(far(p));
        }
    }
    places.sort_unstable();
    places.dedup();
    let mut found: Vec<(Len, Len)> = Vec::new();
    for pair in places.windows(2) {
        let middle = line.point_at(pair[0] + (pair[1] - pair[0]) / 2);
        if locate(middle, ring) != Where::Inside {
            continue;
        }
        match found.last_mut() {
            Some(last) if last.1 == pair[0] => last.1 = pair[1],
            _ => found.push((pair[0], pair[1])),
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::convex_hull;

    #[test]
    fn a_line_passes_a_ring_with_a_notch_twice() {
        let u = [(0, 0), (9, 0), (9, 5), (6, 5), (6, 2), (3, 2), (3, 5), (0, 5)];
        let ring = u.map(|(x, y)| Pt::inches(x, y));
        let line = Seg::new(Pt::inches(-1, 4), Pt::inches(20, 4));
        let at = |a, b| (Len::inches(a), Len::inches(b));
        assert_eq!(stretches(line, &ring), [at(1, 4), at(7, 10)]);
        // Along the bottom of the notch it lies inside at both sides only.
        let line = Seg::new(Pt::inches(-1, 2), Pt::inches(20, 2));
        assert_eq!(stretches(line, &ring), [at(1, 4), at(7, 10)]);
        let line = Seg::new(Pt::inches(-1, 6), Pt::inches(20, 6));
        assert_eq!(stretches(line, &ring), []);
        // It starts and ends inside.
        let line = Seg::new(Pt::inches(1, 1), Pt::inches(8, 1));
        assert_eq!(stretches(line, &ring), [at(0, 7)]);
    }

    proptest! {
        /// Walking along the line, a point is inside the ring where a stretch says so.
        #[test]
        fn points_of_the_line_agree(
            points in prop::collection::vec((-300i32..300, -300i32..300), 3..9),
            ends in ((-400i32..400, -400i32..400), (-400i32..400, -400i32..400)),
        ) {
            let points: Vec<Pt> = points.into_iter().map(|(x, y)| Pt::inches(x, y)).collect();
            let ring = convex_hull(&points);
            let at = |(x, y)| Pt::inches(x, y);
            let line = Seg::new(at(ends.0), at(ends.1));
            prop_assume!(ring.len() > 2 && line.a != line.b);
            let found = stretches(line, &ring);
            for i in 0..=64 {
                let d = line.len() * i / 64;
                // Rounding decides within a few units of an end.
                let near = |e: Len| (e - d).units().abs() < 4;
                if found.iter().any(|(a, b)| near(*a) || near(*b)) {
                    continue;
                }
                let said = found.iter().any(|(a, b)| *a < d && d < *b);
                prop_assert_eq!(said, locate(line.point_at(d), &ring) == Where::Inside);
            }
        }
    }
}
