//! The plain visibility graph: the reference for walks.
//!
//! Every corner of every piece and the two places, joined wherever the segment between them meets the
//! inside of no piece, in whole numbers; then Dijkstra. Nothing is pruned, and there is no grid.

use geometry::{Pt, Ring, Seg, edges};

/// Whether a segment meets the inside of a convex counter-clockwise piece: cut by one half-plane
/// after another (Cyrus and Beck, 1978), in exact ratios.
fn enters(s: Seg, ring: &[Pt]) -> bool {
    let (mut low, mut high) = ((0i128, 1i128), (1i128, 1i128));
    for e in edges(ring) {
        let at_a = i128::from(e.dir().cross(s.a - e.a));
        let rate = i128::from(e.dir().cross(s.dir()));
        if rate == 0 {
            if at_a <= 0 {
                return false;
            }
        } else if rate > 0 {
            if -at_a * low.1 > low.0 * rate {
                low = (-at_a, rate);
            }
        } else if at_a * high.1 < high.0 * -rate {
            high = (at_a, -rate);
        }
    }
    low.0 * high.1 < high.0 * low.1
}

/// The length of the shortest way that enters no piece; `None` when there is none.
pub fn shortest(rings: &[Ring], from: Pt, to: Pt) -> Option<f64> {
    let mut nodes: Vec<Pt> = vec![from, to];
    nodes.extend(rings.iter().flatten());
    let mut length = vec![f64::INFINITY; nodes.len()];
    let mut settled = vec![false; nodes.len()];
    length[0] = 0.0;
    loop {
        let open = (0..nodes.len()).filter(|&i| !settled[i] && length[i].is_finite());
        let here = open.min_by(|&a, &b| length[a].total_cmp(&length[b]))?;
        if here == 1 {
            return Some(length[1]);
        }
        settled[here] = true;
        for next in 0..nodes.len() {
            let leg = Seg::new(nodes[here], nodes[next]);
            let so_far = length[here] + leg.dir().norm();
            if so_far < length[next] && !rings.iter().any(|ring| enters(leg, ring)) {
                length[next] = so_far;
            }
        }
    }
}
