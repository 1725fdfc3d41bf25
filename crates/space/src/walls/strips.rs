//! The layers of a wall as strips that follow its caps.

use geometry::Pt;
use measure::Len;

use super::LayerStrip;
use super::body::Body;
use super::cap::Cap;

/// One strip for each layer, from left to right.
pub(super) fn strips(body: &Body, [a, b]: &[Cap; 2]) -> Vec<LayerStrip> {
    let at = |depth: Len| (depth, [across(body, a, depth), across(body, b, depth)]);
    let mut left = at(Len::ZERO);
    body.layers
        .iter()
        .map(|layer| {
            let right = at(left.0 + layer.thickness);
            let quad = [right.1[0], right.1[1], left.1[1], left.1[0]];
            left = right;
            LayerStrip { material: layer.material, quad }
        })
        .collect()
}

/// The point of a cap at a depth from the left face: on the way from the left corner over the shared
/// point to the right corner.
fn across(body: &Body, cap: &Cap, depth: Len) -> Pt {
    match cap.node {
        Some(node) if depth <= body.left => part(cap.left, node, depth, body.left),
        Some(node) => part(node, cap.right, depth - body.left, body.right),
        None => part(cap.left, cap.right, depth, body.thickness()),
    }
}

/// The point at `depth` of `whole` on the way from `p` to `q`, rounded once.
fn part(p: Pt, q: Pt, depth: Len, whole: Len) -> Pt {
    if depth <= Len::ZERO {
        return p;
    }
    if depth >= whole {
        return q;
    }
    let (d, w) = (i64::from(depth.units()), i64::from(whole.units()));
    // Halves go away from zero, so that a mirrored wall gets mirrored strips.
    let mid = |from: i32, to: i32| {
        if from == to {
            return from;
        }
        let step = (i64::from(to) - i64::from(from)) * d;
        from + ((2 * step.abs() + w) / (2 * w)) as i32 * step.signum() as i32
    };
    Pt::new(mid(p.x, q.x), mid(p.y, q.y))
}
