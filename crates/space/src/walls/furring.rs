//! Furring: a strip against a stretch of a foundation wall's inner face, joined round the corners.

use geometry::{Seg, line_crossing};
use measure::Len;
use plan::element::Furring;
use plan::{Body as Is, ElementId, Plan};

use super::WallKind;
use super::body::Body;
use super::cap::Cap;
use super::joins::in_reach;

/// The strip of a furring; `None` when its host does not stand or the stretch is empty.
pub(super) fn body(plan: &Plan, id: ElementId, furring: &Furring) -> Option<Body> {
    let host = plan.get(furring.host).filter(|e| e.stands())?;
    let Is::Shell(shell) = &host.body else { return None };
    let face = shell.line();
    let length = face.len();
    let from = furring.from.clamp(Len::ZERO, length);
    let to = furring.to.clamp(Len::ZERO, length);
    if from >= to {
        return None;
    }
    // The very ends are taken over unrounded, so that strips meet where their hosts do.
    let a = if from == Len::ZERO { face.a } else { face.point_at(from) };
    let b = if to == length { face.b } else { face.point_at(to) };
    let layers = furring.layers.iter().rev().copied().collect();
    let sides = (furring.thickness(), Len::ZERO);
    let top = plan.site.joist_underside;
    let body = Body::new(id, WallKind::Furring, Seg::new(a, b), sides, layers, top)?;
    Some(Body { host: Some(furring.host), from, to, ..body })
}

/// Joins furring round the corners of the shell: where a strip reaches the end of its foundation wall
/// it is mitred with the strip of the next wall, or cut along that wall's bare face.
///
/// The next wall is the one that goes on from the corner in the same turning sense.
pub(super) fn join(bodies: &[Body], caps: &mut [[Cap; 2]]) {
    let shells: Vec<&Body> = bodies.iter().filter(|b| b.kind == WallKind::Shell).collect();
    let mut strips: Vec<&Body> = bodies.iter().filter(|b| b.kind == WallKind::Furring).collect();
    if strips.is_empty() {
        return;
    }
    // Bodies come by id.
    strips.sort_by_key(|b| (b.host, b.id));
    let shell = |id| shells.binary_search_by_key(&id, |b| b.id).ok().map(|i| shells[i]);
    let on = |host: ElementId| {
        let first = strips.partition_point(|s| s.host < Some(host));
        strips[first..].iter().take_while(move |s| s.host == Some(host))
    };
    // Walls by the corner they start from, and by the corner they end at.
    let mut by_start = shells.clone();
    by_start.sort_by_key(|b| (b.line.a, b.id));
    let mut by_end = shells.clone();
    by_end.sort_by_key(|b| (b.line.b, b.id));

    for (body, caps) in bodies.iter().zip(caps) {
        let Some(host) = body.host.and_then(shell) else { continue };
        if body.from > Len::ZERO {
            caps[0].right = caps[0].right - host.overlap();
        } else {
            let i = by_end.partition_point(|b| b.line.b < host.line.a);
            if let Some(next) = by_end.get(i).filter(|b| b.line.b == host.line.a) {
                let thickness = on(next.id).filter(|s| s.to == next.to).map(|s| s.left).max();
                let face = next.line.offset_left(thickness.unwrap_or_default());
                cut(body.left_face, face, body, &mut caps[0].left);
            }
        }
        if body.to < host.to {
            caps[1].right = caps[1].right - host.overlap();
        } else {
            let i = by_start.partition_point(|b| b.line.a < host.line.b);
            if let Some(next) = by_start.get(i).filter(|b| b.line.a == host.line.b) {
                let at_start = |s: &&&Body| s.from == Len::ZERO;
                let thickness = on(next.id).filter(at_start).map(|s| s.left).max();
                let face = next.line.offset_left(thickness.unwrap_or_default());
                cut(body.left_face.reversed(), face, body, &mut caps[1].left);
            }
        }
    }
}

/// Moves a corner to where the strip's face, running away from the corner, meets the other face.
fn cut(face: Seg, other: Seg, body: &Body, corner: &mut geometry::Pt) {
    let reach = (body.thickness() + body.thickness()) * 4;
    if let Some(p) = line_crossing(face, other)
        && in_reach(face, p, reach)
    {
        *corner = p;
    }
}
