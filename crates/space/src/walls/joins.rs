//! Joining walls where they meet: L, T and X joints and corners of any number of walls.
//!
//! Walls that share an end point are sorted by direction round it; each face runs on to the crossing
//! with the facing face of its neighbour. That mitres corners of equal and of different thickness, and
//! of walls drawn by one face. A mitre that would run further than [`MITRE_LIMIT`] thicknesses is cut
//! off. A wall whose end lies within another wall runs to the near face of that wall. Crossing walls
//! simply overlap.

use std::cmp::Ordering;

use geometry::{Grid, Pt, Seg, Vec2, line_crossing, orient};
use measure::Len;

use super::WallKind;
use super::body::Body;
use super::cap::{Cap, square_caps};

/// How many wall thicknesses a mitre may reach from the corner: corners down to about 30° are mitred.
const MITRE_LIMIT: i32 = 4;

/// An end of a wall seen from its corner, looking along the wall.
#[derive(Clone, Copy, Debug)]
struct Tip {
    body: usize,
    finish: bool,
    at: Pt,
    out: Vec2,
    /// The faces, running away from the corner.
    left: Seg,
    right: Seg,
    /// Whether the drawn line is that face.
    left_is_line: bool,
    right_is_line: bool,
    reach: Len,
}

/// The corner between a wall's left face and the right face of the next wall.
struct Corner {
    first: Pt,
    second: Pt,
    bevel: Option<Pt>,
}

/// The caps at `a` and `b` of the walls that are wanted; those of others may be square. `grid` holds the bounds of the
/// bodies.
pub(super) fn caps(bodies: &[Body], grid: &Grid, wanted: impl Fn(usize) -> bool) -> Vec<[Cap; 2]> {
    let mut caps: Vec<[Cap; 2]> = bodies.iter().map(square_caps).collect();
    let mut ends: Vec<(Pt, usize, bool)> = (0..bodies.len())
        .filter(|&i| bodies[i].kind != WallKind::Furring)
        .flat_map(|i| [(bodies[i].line.a, i, false), (bodies[i].line.b, i, true)])
        .collect();
    ends.sort_unstable();
    let (mut group, mut hosts) = (Vec::new(), Vec::new());
    for ends in ends.chunk_by(|s, t| s.0 == t.0).filter(|ends| ends.iter().any(|e| wanted(e.1))) {
        group.clear();
        group.extend(ends.iter().map(|&(_, i, finish)| Tip::new(bodies, i, finish)));
        hosts.clear();
        hosts.extend(
            grid.at(group[0].at)
                .filter(|&j| bodies[j].holds(group[0].at) && group.iter().all(|t| t.body != j)),
        );
        let shared = group.len() > 1;
        let mut open = 0;
        for i in 0..group.len() {
            let tip = group[i];
            let partner = if shared { None } else { partner(bodies, &tip, &hosts) };
            if let Some(other) = partner {
                join_pair(bodies, tip, other, &mut caps[tip.body][usize::from(tip.finish)]);
            } else if !tee(bodies, &tip, &hosts, &mut caps[tip.body][usize::from(tip.finish)]) {
                group[open] = tip;
                open += 1;
            }
        }
        if open > 1 {
            join_corner(&mut group[..open], &mut caps);
        }
    }
    caps
}

/// Whether a point lies within `reach` of the start of a face, and not past the face's other end.
pub(super) fn in_reach(face: Seg, p: Pt, reach: Len) -> bool {
    let v = p - face.a;
    let reach = i64::from(reach.units());
    v.x.abs() <= reach
        && v.y.abs() <= reach
        && v.norm2() <= reach * reach
        && v.dot(face.dir()) < face.dir().norm2()
}

impl Tip {
    fn new(bodies: &[Body], body: usize, finish: bool) -> Tip {
        let b = &bodies[body];
        let (left_is_line, right_is_line) = (b.left == Len::ZERO, b.right == Len::ZERO);
        let reach = b.thickness();
        if finish {
            Tip {
                body,
                finish,
                at: b.line.b,
                out: -b.line.dir(),
                left: b.right_face.reversed(),
                right: b.left_face.reversed(),
                left_is_line: right_is_line,
                right_is_line: left_is_line,
                reach,
            }
        } else {
            Tip {
                body,
                finish,
                at: b.line.a,
                out: b.line.dir(),
                left: b.left_face,
                right: b.right_face,
                left_is_line,
                right_is_line,
                reach,
            }
        }
    }
}

/// Directions counter-clockwise from east.
fn by_direction(u: Vec2, v: Vec2) -> Ordering {
    let lower = |w: Vec2| w.y < 0 || (w.y == 0 && w.x < 0);
    lower(u).cmp(&lower(v)).then_with(|| 0.cmp(&u.cross(v)))
}

/// Joins the walls that share one end point. Walls that run off in the same direction, one on the
/// other, are one arm of the corner: the others join its outermost faces.
fn join_corner(tips: &mut [Tip], caps: &mut [[Cap; 2]]) {
    tips.sort_by(|s, t| by_direction(s.out, t.out).then(s.body.cmp(&t.body)));
    let arms: Vec<&[Tip]> = tips.chunk_by(|s, t| by_direction(s.out, t.out).is_eq()).collect();
    if arms.len() < 2 {
        return;
    }
    let off = |tip: &Tip, face: Seg| (face.a - tip.at).norm2();
    for (i, arm) in arms.iter().enumerate() {
        let before = arms[(i + arms.len() - 1) % arms.len()];
        let after = arms[(i + 1) % arms.len()];
        let leftmost = before.iter().max_by_key(|t| off(t, t.left));
        let rightmost = after.iter().max_by_key(|t| off(t, t.right));
        let (Some(leftmost), Some(rightmost)) = (leftmost, rightmost) else { continue };
        for tip in arm.iter() {
            let cap = &mut caps[tip.body][usize::from(tip.finish)];
            set_left(cap, tip, &corner(tip, rightmost), tip.at);
            set_right(cap, tip, &corner(leftmost, tip), tip.at);
        }
    }
}

/// Shapes the end of one of two walls whose ends lie in each other without being the same point.
fn join_pair(bodies: &[Body], tip: Tip, other: Tip, cap: &mut Cap) {
    let (i, j) = (tip.body.min(other.body), tip.body.max(other.body));
    let node = line_crossing(bodies[i].line, bodies[j].line)
        .filter(|&p| in_reach(Seg::new(tip.at, tip.at + tip.out), p, reach(&tip, &other)))
        .unwrap_or(tip.at);
    let corner_left = corner(&tip, &other);
    let corner_right = corner(&other, &tip);
    set_left(cap, &tip, &corner_left, node);
    set_right(cap, &tip, &corner_right, node);
}

fn set_left(cap: &mut Cap, tip: &Tip, corner: &Corner, node: Pt) {
    cap.node = Some(node);
    if let Some(middle) = corner.bevel {
        cap.wedge = Some([node, corner.first, middle, corner.second]);
    }
    if tip.finish {
        (cap.right, cap.bevel_right) = (corner.first, corner.bevel);
    } else {
        (cap.left, cap.bevel_left) = (corner.first, corner.bevel);
    }
}

fn set_right(cap: &mut Cap, tip: &Tip, corner: &Corner, node: Pt) {
    cap.node = Some(node);
    if tip.finish {
        (cap.left, cap.bevel_left) = (corner.second, corner.bevel);
    } else {
        (cap.right, cap.bevel_right) = (corner.second, corner.bevel);
    }
}

fn reach(tip: &Tip, next: &Tip) -> Len {
    tip.reach.max(next.reach) * MITRE_LIMIT
}

/// The corner between the left face of a wall and the right face of the next one counter-clockwise.
fn corner(tip: &Tip, next: &Tip) -> Corner {
    let reach = reach(tip, next);
    let meet = line_crossing(tip.left, next.right)
        .filter(|&p| in_reach(tip.left, p, reach) && in_reach(next.right, p, reach));
    match meet {
        // A face that is the drawn line ends at the shared point: running it on adds no body.
        Some(p) => Corner {
            first: if tip.left_is_line { tip.at } else { p },
            second: if next.right_is_line { next.at } else { p },
            bevel: None,
        },
        None => {
            let (first, second) = (tip.left.a, next.right.a);
            let outer = tip.out.cross(next.out) < 0;
            let bevel = (outer && first != second).then(|| first.midway(second));
            Corner { first, second, bevel }
        }
    }
}

/// The end of another wall that lies in this wall while this end lies in that wall: both are meant to
/// meet, though they were not drawn to the same point.
fn partner(bodies: &[Body], tip: &Tip, hosts: &[usize]) -> Option<Tip> {
    hosts
        .iter()
        .filter(|&&j| bodies[j].kind == bodies[tip.body].kind)
        .flat_map(|&j| [Tip::new(bodies, j, false), Tip::new(bodies, j, true)])
        .find(|other| {
            let v = other.at - tip.at;
            let near = i64::from(reach(tip, other).units());
            bodies[tip.body].holds(other.at) && v.x.abs() <= near && v.y.abs() <= near
        })
}

/// Runs the end of a wall to the near face of the wall that it lies in; `false` where it lies in none.
///
/// A foundation wall runs only to foundation walls. Furring counts where the end lies in nothing else.
/// Where it lies in several walls, the one that it reaches furthest to counts.
fn tee(bodies: &[Body], tip: &Tip, hosts: &[usize], cap: &mut Cap) -> bool {
    let mine = bodies[tip.body].kind;
    let allowed = |kind: WallKind| mine == WallKind::Partition || kind == WallKind::Shell;
    let solid = hosts.iter().filter(|&&j| bodies[j].kind != WallKind::Furring);
    let strips = hosts.iter().filter(|&&j| bodies[j].kind == WallKind::Furring);
    let best = |some: &mut dyn Iterator<Item = &usize>| {
        some.filter(|&&j| allowed(bodies[j].kind))
            .filter_map(|&j| run_to(tip, &bodies[j]))
            .min_by_key(|&(left, right)| {
                (left - tip.at).dot(tip.out).max((right - tip.at).dot(tip.out))
            })
    };
    let Some((left, right)) = best(&mut { solid }).or_else(|| best(&mut { strips })) else {
        return false;
    };
    if tip.finish {
        (cap.right, cap.left) = (left, right);
    } else {
        (cap.left, cap.right) = (left, right);
    }
    true
}

/// Where the left and the right face of a wall's end meet the near face of another wall.
fn run_to(tip: &Tip, host: &Body) -> Option<(Pt, Pt)> {
    let far = tip.at + tip.out;
    let near = if orient(host.left_face.a, host.left_face.b, far) > 0 {
        host.left_face
    } else if orient(host.right_face.a, host.right_face.b, far) < 0 {
        host.right_face
    } else {
        return None;
    };
    let reach = (tip.reach + host.thickness()) * MITRE_LIMIT;
    let inward = if near == host.left_face { -host.overlap() } else { host.overlap() };
    let run = |face: Seg| {
        line_crossing(face, near)
            .filter(|&p| in_reach(face, p, reach) && host.spans(p))
            .map_or(face.a, |p| p + inward)
    };
    Some((run(tip.left), run(tip.right)))
}
