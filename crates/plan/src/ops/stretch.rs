//! A wall whose ends have moved, and what is fixed to it.

use geometry::Seg;
use measure::Len;

use crate::element::{Body, Furring, Opening};
use crate::{Edit, Element, Plan};

use super::{replace, shifted};

/// The same wall on another line.
pub(super) fn on_line(body: &Body, line: Seg) -> Body {
    let mut body = body.clone();
    match &mut body {
        Body::Shell(w) => (w.a, w.b) = (line.a, line.b),
        Body::Partition(w) => (w.a, w.b) = (line.a, line.b),
        _ => {}
    }
    body
}

/// How far `a` has come nearer to what is fixed to a wall whose `b` stayed in place, so that
/// everything keeps its distance from `b`: the change of length.
pub(super) fn by_length(before: Seg, after: Seg) -> i64 {
    i64::from(after.len().units()) - i64::from(before.len().units())
}

/// Everything fixed to a wall.
pub(super) fn fixed_to<'p>(plan: &'p Plan, wall: &Element) -> Vec<&'p Element> {
    plan.elements().fixed_to(wall.id).collect()
}

/// Whether an opening lies within a wall of length `length` after its place has shifted.
pub(super) fn fits(opening: &Opening, shift: i64, length: Len) -> bool {
    let at = i64::from(opening.at.units()) + shift;
    at >= 0 && at + i64::from(opening.width().units()) <= i64::from(length.units())
}

/// The edits that put a wall on a new line and keep what is fixed to it in place; `shift` is added to
/// the distances from `a`. Lengths that would leave the range of a [`Len`] are left as they are, for
/// [`Plan::with`] to refuse.
pub(super) fn edits(
    wall: &Element,
    fixed: &[&Element],
    before: Seg,
    after: Seg,
    shift: i64,
) -> Vec<Edit> {
    let mut edits = Vec::new();
    if before != after {
        edits.push(replace(wall, on_line(&wall.body, after)));
    }
    let lengths = (before.len(), after.len());
    for e in fixed {
        let body = match &e.body {
            Body::Opening(o) => {
                let at = shifted(o.at, shift).unwrap_or(o.at);
                Body::Opening(Opening { at, ..o.clone() })
            }
            Body::Furring(f) => Body::Furring(furring(f, shift, lengths)),
            _ => continue,
        };
        if body != e.body {
            edits.push(replace(e, body));
        }
    }
    edits
}

/// Furring that reaches an end of its wall goes on reaching it; another end keeps its place.
fn furring(f: &Furring, shift: i64, (before, after): (Len, Len)) -> Furring {
    let from = if f.from == Len::ZERO {
        Len::ZERO
    } else {
        shifted(f.from, shift).unwrap_or(f.from).max(Len::ZERO)
    };
    let to = if f.to >= before { f.to.max(after) } else { shifted(f.to, shift).unwrap_or(f.to) };
    Furring { from, to, ..f.clone() }
}
