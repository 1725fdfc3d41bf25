//! Cutting openings out of a wall.

use geometry::{Pt, orient};
use measure::Len;
use plan::{Body as Is, Element, ElementId};

use super::body::Body;
use super::cap::Cap;

/// Where the standing openings of a plan cut their hosts, along the host from its `a`.
pub(crate) struct Cuts(Vec<(ElementId, Len, Len)>);

impl Cuts {
    /// Those of some elements that may be openings.
    pub fn of<'a>(elements: impl Iterator<Item = &'a Element>) -> Cuts {
        let mut cuts: Vec<_> = elements
            .filter(|e| e.stands())
            .filter_map(|e| match &e.body {
                Is::Opening(o) => Some((o.host, o.at, o.at + o.width())),
                _ => None,
            })
            .collect();
        cuts.sort_unstable();
        Cuts(cuts)
    }

    /// The cuts of one host, in order.
    pub fn along(&self, host: ElementId) -> &[(ElementId, Len, Len)] {
        let first = self.0.partition_point(|c| c.0 < host);
        let last = self.0.partition_point(|c| c.0 <= host);
        &self.0[first..last]
    }
}

/// The cuts along a body's own line, merged where they overlap.
pub(super) fn along(body: &Body, cuts: &[(ElementId, Len, Len)]) -> Vec<(Len, Len)> {
    let mut merged: Vec<(Len, Len)> = Vec::new();
    for &(_, from, to) in cuts {
        let (from, to) = (from.max(body.from) - body.from, to.min(body.to) - body.from);
        if from >= to {
            continue;
        }
        match merged.last_mut() {
            Some(last) if from <= last.1 => last.1 = last.1.max(to),
            _ => merged.push((from, to)),
        }
    }
    merged
}

/// One end of a piece.
#[derive(Clone, Copy)]
struct Edge {
    right: Pt,
    left: Pt,
    node: Option<Pt>,
}

/// The convex pieces between the cuts, counter-clockwise. A piece whose end bulges to the shared point
/// of a corner is split along its length, so that the pieces of all walls leave no hole there.
pub(super) fn pieces(body: &Body, [a, b]: &[Cap; 2], cuts: &[(Len, Len)]) -> Vec<[Pt; 4]> {
    let square = |at: Len| Edge {
        right: body.right_face.point_at(at),
        left: body.left_face.point_at(at),
        node: None,
    };
    let capped = |cap: &Cap| Edge { right: cap.right, left: cap.left, node: cap.node };
    let mut out = Vec::with_capacity(cuts.len() + 1);
    let mut start = capped(a);
    for &(from, to) in cuts {
        if from > Len::ZERO {
            push(&mut out, start, square(from));
        }
        start = square(to);
    }
    let ends_in_wall = cuts.last().is_none_or(|c| body.from + c.1 < body.to);
    if ends_in_wall {
        push(&mut out, start, capped(b));
    }
    if out.is_empty() && cuts.is_empty() {
        let (l, r) = (body.left_face, body.right_face);
        out.push([r.a, r.b, l.b, l.a]);
    }
    out.extend(a.wedge.into_iter().chain(b.wedge).filter(convex));
    out
}

fn push(out: &mut Vec<[Pt; 4]>, start: Edge, end: Edge) {
    let start_node = start.node.filter(|&n| orient(start.left, start.right, n) < 0);
    let end_node = end.node.filter(|&n| orient(end.right, end.left, n) < 0);
    let whole = [start.right, end.right, end.left, start.left];
    if start_node.is_none() && end_node.is_none() {
        out.extend(Some(whole).filter(convex));
        return;
    }
    let from = start_node.unwrap_or(start.right.midway(start.left));
    let to = end_node.unwrap_or(end.right.midway(end.left));
    let halves = [[start.right, end.right, to, from], [from, to, end.left, start.left]];
    if halves.iter().all(convex) {
        out.extend(halves);
    } else {
        out.extend(Some(whole).filter(convex));
    }
}

/// Whether four points run counter-clockwise round a convex quad of some area without repeating.
fn convex(quad: &[Pt; 4]) -> bool {
    (0..4).all(|i| {
        quad[i] != quad[(i + 1) % 4] && orient(quad[i], quad[(i + 1) % 4], quad[(i + 2) % 4]) >= 0
    }) && orient(quad[0], quad[1], quad[2]) + orient(quad[0], quad[2], quad[3]) > 0
}
