//! Outlines: closed rings that neither cross nor touch themselves.

use geometry::{Pt, Seg, orient, segs_touch};

use crate::{EditError, bounds};

use super::Who;

/// Checks the number of points and that edges meet at shared corners only. O(n²) on at most 200 points.
pub(super) fn check(who: Who, ring: &[Pt]) -> Result<(), EditError> {
    let bound = bounds::OUTLINE_POINTS;
    if !bound.holds(ring.len()) {
        return Err(EditError::CountOutOfRange { who: who(), bound, value: ring.len() });
    }
    if is_simple(ring) { Ok(()) } else { Err(EditError::OutlineCrosses { who: who() }) }
}

fn is_simple(ring: &[Pt]) -> bool {
    let n = ring.len();
    let edge = |i: usize| Seg::new(ring[i], ring[(i + 1) % n]);
    (0..n).all(|i| {
        let (this, next) = (edge(i), edge((i + 1) % n));
        let folds_back = orient(this.a, this.b, next.b) == 0 && this.dir().dot(next.dir()) <= 0;
        // The edges after the next one; the last edge is a neighbour of the first.
        let mut apart = (i + 2..n).filter(|&j| (j + 1) % n != i);
        !folds_back && apart.all(|j| !segs_touch(this, edge(j)))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ring(points: &[(i32, i32)]) -> Vec<Pt> {
        points.iter().map(|&p| Pt::from(p)).collect()
    }

    #[test]
    fn plain_outlines_pass() {
        assert!(is_simple(&ring(&[(0, 0), (9, 0), (0, 9)])));
        assert!(is_simple(&ring(&[(0, 0), (0, 9), (9, 9), (9, 0)])));
        // A point on a straight edge.
        assert!(is_simple(&ring(&[(0, 0), (5, 0), (9, 0), (9, 9), (0, 9)])));
        assert!(is_simple(&ring(&[(0, 0), (9, 0), (9, 4), (4, 4), (4, 9), (0, 9)])));
    }

    #[test]
    fn crossing_touching_and_flat_outlines_fail() {
        for bad in [
            &[(0, 0), (9, 9), (9, 0), (0, 9)][..],
            &[(0, 0), (9, 0), (4, 0)],
            &[(0, 0), (9, 0), (9, 0), (0, 9)],
            &[(0, 0), (9, 0), (9, 9), (9, 0), (0, 9)],
            // Touches its own edge with a corner.
            &[(0, 0), (8, 0), (8, 8), (4, 0), (0, 8)],
            // Passes one corner twice.
            &[(0, 0), (4, 4), (8, 0), (8, 8), (4, 4), (0, 8)],
        ] {
            assert!(!is_simple(&ring(bad)), "{bad:?}");
        }
    }
}
