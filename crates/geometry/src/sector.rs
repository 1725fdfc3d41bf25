//! The floor that a door leaf sweeps.
//!
//! A polygon round the sector: the hinge, the two ends of the leaf's edge, and between them the
//! corners where the tangents at [`TANGENTS`] evenly spaced directions meet. The directions come from
//! halving the angle: the sum of two unit vectors points midway. With unit vectors `u`, `v` and
//! radius `r` the tangents at `r u` and `r v` meet at `r (u + v) / (1 + u·v)`. No trigonometry, so the
//! same everywhere.

use crate::{Pt, Ring, Vec2, convex_hull};

/// The arc is halved this many times.
const HALVINGS: u32 = 4;

/// Into how many parts the arc is cut.
pub const TANGENTS: usize = 1 << HALVINGS;

/// A convex counter-clockwise polygon that holds the sector swept by a leaf that is hinged at `hinge`,
/// between the leaf's ends `shut` and `open`, whichever way round.
///
/// Beyond the sector it reaches at most `r (1 / cos(a / 32) - 1)`, `r` being the leaf and `a` the angle:
/// 0.12 % of the leaf for a quarter turn, 0.044 in for a 36 in leaf; and two units for rounding. It
/// does not reach beyond the lines of the shut and the open leaf, nor beyond the tangents at their
/// ends, so along the axes its extent is the leaf's own length exactly.
///
/// The angle must be less than a half turn, and the two radii are taken to be equal (the longer counts).
/// When hinge and ends lie on one line, the hull of the three.
pub fn sector(hinge: Pt, shut: Pt, open: Pt) -> Ring {
    let (from, to) = (shut - hinge, open - hinge);
    if from.cross(to) == 0 {
        return convex_hull(&[hinge, shut, open]);
    }
    let radius = from.norm().max(to.norm());
    let mut directions = vec![unit(from), unit(to)];
    for _ in 0..HALVINGS {
        directions = halved(&directions);
    }
    let mut corners = vec![hinge, shut, open];
    let last = TANGENTS - 1;
    for (i, pair) in directions.windows(2).enumerate() {
        let (u, v) = (pair[0], pair[1]);
        let scale = radius / (1.0 + u.0 * v.0 + u.1 * v.1);
        let meet = ((u.0 + v.0) * scale, (u.1 + v.1) * scale);
        corners.push(match i {
            // On the tangent at the end, which is exact there when the leaf lies along an axis.
            0 => shut + along_tangent(from, meet),
            _ if i == last => open + along_tangent(to, meet),
            // A unit farther out, so that rounding does not cut into the sector.
            _ => hinge + rounded(meet, 1.0 + 1.0 / radius),
        });
    }
    convex_hull(&corners)
}

fn unit(v: Vec2) -> (f64, f64) {
    let norm = v.norm();
    (v.x as f64 / norm, v.y as f64 / norm)
}

fn halved(directions: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut out = Vec::with_capacity(2 * directions.len() - 1);
    for pair in directions.windows(2) {
        let (x, y) = (pair[0].0 + pair[1].0, pair[0].1 + pair[1].1);
        let norm = (x * x + y * y).sqrt();
        out.extend([pair[0], (x / norm, y / norm)]);
    }
    out.extend(directions.last());
    out
}

/// The step from the end of `leaf` along the tangent there to `meet` (both from the hinge), a unit longer.
fn along_tangent(leaf: Vec2, meet: (f64, f64)) -> Vec2 {
    let u = unit(leaf);
    let left = u.0 * meet.1 - u.1 * meet.0;
    let length = left + left.signum() * 2.0;
    rounded((-u.1 * length, u.0 * length), 1.0)
}

fn rounded(v: (f64, f64), scale: f64) -> Vec2 {
    Vec2::new((v.0 * scale).round() as i64, (v.1 * scale).round() as i64)
}
