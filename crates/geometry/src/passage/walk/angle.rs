//! Directions and angles in floats, without trigonometry, so the same everywhere.

use crate::{Pt, Vec2};

/// A point or a direction, in grid units from the start of a walk.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Xy {
    pub x: f64,
    pub y: f64,
}

impl Xy {
    /// From `origin` to a point.
    pub fn new(p: Pt, origin: Pt) -> Xy {
        let Vec2 { x, y } = p - origin;
        Xy { x: x as f64, y: y as f64 }
    }

    pub fn plus(self, other: Xy, times: f64) -> Xy {
        Xy { x: self.x + other.x * times, y: self.y + other.y * times }
    }

    pub fn minus(self, other: Xy) -> Xy {
        self.plus(other, -1.0)
    }

    pub fn times(self, times: f64) -> Xy {
        Xy { x: self.x * times, y: self.y * times }
    }

    pub fn dot(self, other: Xy) -> f64 {
        self.x * other.x + self.y * other.y
    }

    pub fn cross(self, other: Xy) -> f64 {
        self.x * other.y - self.y * other.x
    }

    pub fn norm(self) -> f64 {
        self.dot(self).sqrt()
    }

    /// Turned a quarter clockwise.
    pub fn right(self) -> Xy {
        Xy { x: self.y, y: -self.x }
    }

    /// On the grid, rounded once.
    pub fn rounded(self, origin: Pt) -> Pt {
        origin + Vec2::new(self.x.round() as i64, self.y.round() as i64)
    }
}

/// The angle between two unit vectors, from 0 to pi, whichever way.
///
/// Halved six times by the half-angle formulas, then the series of the arc sine; off by less than
/// 1e-12 of the angle.
fn angle(u: Xy, v: Xy) -> f64 {
    let (mut cos, mut sin) = (u.dot(v), u.cross(v).abs());
    let obtuse = cos < 0.0;
    cos = cos.abs().min(1.0);
    for _ in 0..6 {
        let half = ((1.0 + cos) / 2.0).sqrt();
        sin /= 2.0 * half;
        cos = half;
    }
    let square = sin * sin;
    let series = 1.0 + square * (1.0 / 6.0 + square * (3.0 / 40.0 + square * (15.0 / 336.0)));
    let acute = 64.0 * sin * series;
    if obtuse { std::f64::consts::PI - acute } else { acute }
}

/// What the cross product of unit vectors may be off by.
pub(super) const HAIR: f64 = 1e-9;

/// Whether it is more than a half turn from `u` to `v`, to the left for a positive `side`, to the right for a
/// negative one. A hair to the other side counts as no turn.
pub(super) fn is_reflex(u: Xy, v: Xy, side: f64) -> bool {
    side * u.cross(v) < -HAIR
}

/// How far it is from one unit vector to another, turning to a side: from 0 to two pi.
pub(super) fn turned(u: Xy, v: Xy, side: f64) -> f64 {
    let least = angle(u, v);
    if is_reflex(u, v, side) { std::f64::consts::TAU - least } else { least }
}

/// Unit vectors from `u` to `v`, both included, turning to a side; each 0.21 or less from the next.
pub(super) fn fan(u: Xy, v: Xy, side: f64, out: &mut Vec<Xy>) {
    out.push(u);
    if is_reflex(u, v, side) {
        let back = u.plus(v, 1.0);
        let far = if back.norm() < 1e-3 { u.right().times(-side) } else { back.times(-1.0) };
        let far = far.times(1.0 / far.norm());
        halve(u, far, side, out);
        out.push(far);
        halve(far, v, side, out);
    } else {
        halve(u, v, side, out);
    }
    out.push(v);
}

fn halve(u: Xy, v: Xy, side: f64, out: &mut Vec<Xy>) {
    if u.dot(v) > 0.98 {
        return;
    }
    let sum = u.plus(v, 1.0);
    // Nearly a half turn: the sum says too little.
    let middle = if sum.norm() < 1e-3 { u.right().times(-side) } else { sum };
    let middle = middle.times(1.0 / middle.norm());
    halve(u, middle, side, out);
    out.push(middle);
    halve(middle, v, side, out);
}

#[cfg(test)]
mod tests {
    use super::*;

    fn unit(angle: f64) -> Xy {
        Xy { x: angle.cos(), y: angle.sin() }
    }

    #[test]
    fn angles_agree_with_the_arc_cosine() {
        for i in 0..=1_000 {
            let expected = std::f64::consts::PI * f64::from(i) / 1_000.0;
            for from in [0.0, 1.0, 4.0] {
                for to in [from + expected, from - expected] {
                    let found = angle(unit(from), unit(to));
                    assert!((found - expected).abs() < 1e-12, "{expected} {found}");
                }
            }
        }
    }

    #[test]
    fn a_fan_turns_to_its_side_in_small_steps() {
        for i in 0..=200 {
            let turn = (std::f64::consts::TAU - 1e-4) * f64::from(i) / 200.0;
            for side in [1.0, -1.0] {
                let mut out = Vec::new();
                fan(unit(1.0), unit(1.0 + side * turn), side, &mut out);
                let steps = out.windows(2).map(|w| (angle(w[0], w[1]), side * w[0].cross(w[1])));
                let (mut sum, mut count) = (0.0, 0);
                for (step, turned) in steps {
                    assert!(step <= 0.21 && turned >= -1e-12);
                    (sum, count) = (sum + step, count + 1);
                }
                assert!((sum - turn).abs() < 1e-9, "{turn} {sum}");
                assert!((turned(unit(1.0), unit(1.0 + side * turn), side) - turn).abs() < 1e-9);
                assert!(count <= 66);
            }
        }
    }
}
