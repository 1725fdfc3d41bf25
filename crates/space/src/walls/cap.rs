//! How the end of a wall is shaped, and the outline that follows.

use geometry::{Pt, Ring, orient, twice_area};

use super::body::Body;

/// How an end of a wall is shaped. `right` and `left` are sides of the wall looking from `a` to `b`.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cap {
    pub right: Pt,
    pub left: Pt,
    /// The shared point of a corner, which lies between the two.
    pub node: Option<Pt>,
    /// The middle of the edge where a mitre is cut off.
    pub bevel_right: Option<Pt>,
    pub bevel_left: Option<Pt>,
    /// The wedge behind a cut-off mitre, kept by one of the two walls.
    pub wedge: Option<[Pt; 4]>,
}

/// The ends of a wall that joins no other.
pub(super) fn square_caps(body: &Body) -> [Cap; 2] {
    let (l, r) = (body.left_face, body.right_face);
    let cap = |right, left| Cap {
        right,
        left,
        node: None,
        bevel_right: None,
        bevel_left: None,
        wedge: None,
    };
    [cap(r.a, l.a), cap(r.b, l.b)]
}

/// The ring round a wall with its caps, counter-clockwise. A wall so short that its caps pass each other
/// keeps square ends.
pub(super) fn outline(body: &Body, [a, b]: &[Cap; 2]) -> Ring {
    let dir = body.line.dir();
    let ring = if (b.right - a.right).dot(dir) > 0 && (b.left - a.left).dot(dir) > 0 {
        let points = [
            Some(a.right),
            Some(b.right),
            b.bevel_right,
            b.node,
            b.bevel_left,
            Some(b.left),
            Some(a.left),
            a.bevel_left,
            a.node,
            a.bevel_right,
        ];
        tidy(points.into_iter().flatten().collect())
    } else {
        Ring::new()
    };
    if twice_area(&ring) > 0 {
        ring
    } else {
        let (l, r) = (body.left_face, body.right_face);
        vec![r.a, r.b, l.b, l.a]
    }
}

/// Takes out points that repeat or lie on the line of their neighbours.
fn tidy(mut ring: Ring) -> Ring {
    loop {
        let n = ring.len();
        let idle = (0..n).find(|&i| {
            let (before, after) = (ring[(i + n - 1) % n], ring[(i + 1) % n]);
            orient(before, ring[i], after) == 0
        });
        match idle {
            Some(i) => ring.remove(i),
            None => return ring,
        };
    }
}
