//! The outline of any element in the plan, standing or removed.

use geometry::{Pt, Ring, Seg};
use measure::Len;
use plan::element::{Overhead, OverheadShape};
use plan::{Body, Element};
use space::Facts;

/// The ring round an element's place in the plan; empty for tags, notes, and what has lost its host.
pub(crate) fn outline(facts: &Facts, element: &Element) -> Ring {
    if let Some(wall) = facts.wall(element.id) {
        return wall.outline.clone();
    }
    if let Some(opening) = facts.opening(element.id) {
        return opening.quad.to_vec();
    }
    match &element.body {
        Body::Shell(w) => band(w.line(), Len::ZERO, w.thickness),
        Body::Partition(w) => band(w.line(), w.sides().0, w.sides().1),
        Body::Furring(f) => match facts.plan.get(f.host).map(|e| &e.body) {
            Some(Body::Shell(host)) => {
                let line = host.line();
                let line = Seg::new(line.point_at(f.from), line.point_at(f.to.min(line.len())));
                band(line, f.thickness(), Len::ZERO)
            }
            _ => Ring::new(),
        },
        Body::Opening(o) => {
            let host = facts.plan.get(o.host).map(|e| &e.body);
            let (line, left, right) = match host {
                Some(Body::Shell(w)) => (w.line(), Len::ZERO, w.thickness),
                Some(Body::Partition(w)) => (w.line(), w.sides().0, w.sides().1),
                _ => return Ring::new(),
            };
            band(Seg::new(line.point_at(o.at), line.point_at(o.at + o.width())), left, right)
        }
        Body::Column(c) => c.placed().corners().to_vec(),
        Body::Stair(s) => s.placed().corners().to_vec(),
        Body::Service(s) => s.placed().corners().to_vec(),
        Body::Furnishing(f) => f.placed().corners().to_vec(),
        Body::Overhead(o) => overhead(o),
        Body::Section(s) => vec![s.a, s.b],
        Body::RoomTag(_) | Body::Note(_) => Ring::new(),
    }
}

/// The outline of an overhead.
pub(crate) fn overhead(o: &Overhead) -> Ring {
    match &o.shape {
        OverheadShape::Run { a, b, width } => {
            band(Seg::new(*a, *b), *width / 2, *width - *width / 2)
        }
        OverheadShape::Outline(ring) => ring.clone(),
    }
}

/// The band from `left` of a line to `right` of it.
fn band(line: Seg, left: Len, right: Len) -> Ring {
    let (l, r) = (line.offset_left(left), line.offset_left(-right));
    vec![r.a, r.b, l.b, l.a]
}

/// The mean of a ring's corners: good enough to hang a badge on.
pub(crate) fn middle(ring: &[Pt]) -> Option<Pt> {
    let n = i64::try_from(ring.len()).ok().filter(|n| *n > 0)?;
    let (x, y) =
        ring.iter().fold((0i64, 0i64), |(x, y), p| (x + i64::from(p.x), y + i64::from(p.y)));
    Some(Pt::new((x / n) as i32, (y / n) as i32))
}
