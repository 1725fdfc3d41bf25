//! Where two outlines of one wall differ.

use geometry::{Bounds, Pt, orient};

/// The box of the edges that two outlines do not share. Of an edge that is only longer or shorter now, nothing counts
/// but the stretch by which it is.
pub(super) fn difference(a: &[Pt], b: &[Pt]) -> Bounds {
    if a.len() != b.len() {
        return Bounds::of(a.iter().chain(b));
    }
    let mut all = Bounds::EMPTY;
    for i in 0..a.len() {
        let next = (i + 1) % a.len();
        let (from, to) = ((a[i], b[i]), (a[next], b[next]));
        let part = match (from.0 == from.1, to.0 == to.1) {
            (true, true) => continue,
            (true, false) => stretched(from.0, to),
            (false, true) => stretched(to.0, from),
            (false, false) => Bounds::of([from.0, from.1, to.0, to.1]),
        };
        all = all.union(part);
    }
    all
}

/// The box of what an edge that begins at a point has more or less when its end moves.
fn stretched(fixed: Pt, (was, is): (Pt, Pt)) -> Bounds {
    let same_way = (was - fixed).dot(is - fixed) > 0;
    if same_way && orient(fixed, was, is) == 0 {
        Bounds::of([was, is])
    } else {
        Bounds::of([fixed, was, is])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn ring(corners: &[(i32, i32)]) -> Vec<Pt> {
        corners.iter().map(|(x, y)| Pt::inches(*x, *y)).collect()
    }

    #[test]
    fn a_wall_that_is_longer_differs_by_its_new_end() {
        let short = ring(&[(0, 0), (100, 0), (100, 4), (0, 4)]);
        let long = ring(&[(0, 0), (110, 0), (110, 4), (0, 4)]);
        let end = Bounds::of(ring(&[(100, 0), (110, 4)]));
        assert_eq!(difference(&short, &long), end);
        assert_eq!(difference(&long, &short), end);
        assert!(difference(&short, &short).is_empty());
    }

    #[test]
    fn a_wall_that_moves_or_turns_differs_everywhere() {
        let was = ring(&[(0, 0), (100, 0), (100, 4), (0, 4)]);
        let moved = ring(&[(0, 9), (100, 9), (100, 13), (0, 13)]);
        assert_eq!(difference(&was, &moved), Bounds::of(ring(&[(0, 0), (100, 13)])));
        let turned = ring(&[(0, 0), (100, 9), (100, 13), (0, 4)]);
        assert_eq!(difference(&was, &turned), Bounds::of(ring(&[(0, 0), (100, 13)])));
        let bent = ring(&[(0, 0), (50, 0), (100, 0), (100, 4), (0, 4)]);
        assert_eq!(difference(&was, &bent), Bounds::of(&was));
    }
}
