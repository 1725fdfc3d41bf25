//! Whether a thin person may walk straight from turn to turn: in whole numbers.
//!
//! Width zero stands for a width that is as small as one likes. A walk then passes a corner at that
//! small distance, with the piece on the side of the turn; along a leg the distance goes evenly from
//! that of one end to that of the other, and a place has none. So a piece that only touches the leg
//! is passed just when it lies, there, on the side on which both ends pass.

use super::turn::Turn;
use crate::{Pt, Seg, Where, locate, orient, ring::edges, segs_touch};

/// Whether a piece leaves the leg between two turns free.
pub(super) fn is_free(from: &Turn, to: &Turn, ring: &[Pt]) -> bool {
    let leg = Seg::new(from.centre, to.centre);
    let (mut left, mut right) = (false, false);
    // The part of the leg's line that the piece touches with corners, in steps along the leg.
    let (mut low, mut high) = (i64::MAX, i64::MIN);
    for &corner in ring {
        match orient(leg.a, leg.b, corner).signum() {
            1 => left = true,
            -1 => right = true,
            _ => {
                let along = (corner - leg.a).dot(leg.dir());
                (low, high) = (low.min(along), high.max(along));
            }
        }
    }
    if left && right {
        let crossed = edges(ring).any(|edge| segs_touch(edge, leg));
        return !crossed && locate(leg.a, ring) == Where::Outside;
    }
    let end = leg.dir().norm2();
    let (low, high) = (low.max(0), high.min(end));
    if low > high {
        return true;
    }
    // Wholly on the line, a piece can be passed on either side.
    let passed = |turn: &Turn| match turn.side {
        1 => !right,
        -1 => !left,
        _ => false,
    };
    if high == 0 {
        passed(from)
    } else if low == end {
        passed(to)
    } else {
        passed(from) && passed(to) && from.side == to.side
    }
}
