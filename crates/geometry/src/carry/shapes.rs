//! The rectangle at all angles of a slice, from outside and from inside.

use measure::Len;

use crate::{Pt, Ring, convex_hull};

/// Which polygon stands for the rectangle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    /// Contains it at every angle of the slice.
    Around,
    /// Lies in it at every angle of the slice.
    Within,
}

/// By how much the sides are moved so that rounding takes nothing off, in units.
const ROUNDING: f64 = 2.0;

/// The polygon of a slice from one angle to another in radians, around the origin; empty where none lies within.
pub(super) fn polygon((length, width): (Len, Len), (from, to): (f64, f64), kind: Kind) -> Ring {
    let (a, b) = (f64::from(length.units()) / 2.0, f64::from(width.units()) / 2.0);
    match kind {
        Kind::Around => around(a, b, from, to),
        Kind::Within => within(a, b, from, to),
    }
}

/// The rectangle along the axes, smaller by a unit on each side, so that contact is free.
pub(super) fn square_on((length, width): (Len, Len), turned: bool) -> Ring {
    let half = |len: Len| (len.units() / 2 - 1).max(1);
    let (x, y) = if turned { (half(width), half(length)) } else { (half(length), half(width)) };
    vec![Pt::new(-x, -y), Pt::new(x, -y), Pt::new(x, y), Pt::new(-x, y)]
}

/// Each corner runs along an arc, which its ends and the crossing of their tangents contain.
fn around(a: f64, b: f64, from: f64, to: f64) -> Ring {
    let bulge = 1.0 / ((to - from) / 2.0).cos();
    let (a, b) = (a + ROUNDING, b + ROUNDING);
    let mut points = Vec::with_capacity(12);
    for (x, y) in [(a, b), (-a, b), (-a, -b), (a, -b)] {
        for (angle, factor) in [(from, 1.0), ((from + to) / 2.0, bulge), (to, 1.0)] {
            points.push(turned(x * factor, y * factor, angle));
        }
    }
    convex_hull(&points)
}

/// A rectangle at the middle angle that stays inside when the outer one turns by half of the slice: with the half sides
/// a − b·sin and b − a·sin, or shorter where it is thin.
fn within(a: f64, b: f64, from: f64, to: f64) -> Ring {
    let sine = ((to - from) / 2.0).sin();
    let (mut x, mut y) = (a - b * sine, b - a * sine);
    if y < b / 2.0 {
        (x, y) = (x.min(b / 2.0 / sine), b / 2.0);
    }
    if x < a / 2.0 && y > x {
        (x, y) = (a / 2.0, y.min(a / 2.0 / sine));
    }
    let (x, y) = (x - ROUNDING, y - ROUNDING);
    if x < 1.0 || y < 1.0 {
        return Ring::new();
    }
    let angle = (from + to) / 2.0;
    convex_hull(&[(x, y), (-x, y), (-x, -y), (x, -y)].map(|(x, y)| turned(x, y, angle)))
}

fn turned(x: f64, y: f64, angle: f64) -> Pt {
    let (sin, cos) = angle.sin_cos();
    Pt::new((x * cos - y * sin).round() as i32, (x * sin + y * cos).round() as i32)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Whether a point lies in the rectangle at an angle, with some slack.
    fn holds(size: (f64, f64), angle: f64, p: Pt, slack: f64) -> bool {
        let (sin, cos) = angle.sin_cos();
        let (x, y) = (f64::from(p.x), f64::from(p.y));
        (x * cos + y * sin).abs() <= size.0 + slack && (y * cos - x * sin).abs() <= size.1 + slack
    }

    #[test]
    fn one_contains_the_rectangle_at_every_angle_and_the_other_lies_in_it() {
        for (length, width) in [(84, 36), (22, 22), (96, 1), (60, 30)] {
            let size = (Len::inches(length), Len::inches(width));
            let half = (f64::from(size.0.units()) / 2.0, f64::from(size.1.units()) / 2.0);
            for count in [32_u32, 64, 128] {
                let step = std::f64::consts::PI / f64::from(count);
                for k in 0..count {
                    let slice = (step * f64::from(k), step * f64::from(k + 1));
                    let around = polygon(size, slice, Kind::Around);
                    let within = polygon(size, slice, Kind::Within);
                    for i in 0..=8 {
                        let angle = slice.0 + step * f64::from(i) / 8.0;
                        for p in &within {
                            assert!(holds(half, angle, *p, 0.0), "{length} {width} {k} {i}");
                        }
                        for (x, y) in [(1.0, 1.0), (-1.0, 1.0), (-1.0, -1.0), (1.0, -1.0)] {
                            let corner = turned(half.0 * x, half.1 * y, angle);
                            let place = crate::locate(corner, &around);
                            assert_ne!(place, crate::Where::Outside, "{length} {width} {k} {i}");
                        }
                    }
                }
            }
        }
    }
}
