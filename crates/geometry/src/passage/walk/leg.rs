//! Straight legs that touch the circles at both ends.

use super::angle::{HAIR, Xy, is_reflex};
use super::turn::Turn;
use crate::{Pt, Seg};

/// A leg from turn to turn.
#[derive(Clone, Copy, Debug)]
pub(super) struct Leg {
    pub from: Xy,
    pub to: Xy,
    /// Unit vector along it.
    pub along: Xy,
    pub length: f64,
}

impl Leg {
    /// The leg that leaves the circle of one turn and arrives at that of another, each with its piece on
    /// the turn's side; if the pieces are there then, and if the circles leave room.
    ///
    /// With the signed radii `a`, `b` to the right of the leg, `k = a - b` and `l² = D² - k²`, the way `D` from
    /// centre to centre is `l e + k e'`, where `e'` is the direction `e` of the leg turned to the right.
    pub fn between(from: &Turn, to: &Turn, radius: f64, origin: Pt) -> Option<Leg> {
        if radius == 0.0 {
            let line = Seg::new(from.centre, to.centre);
            let taut = line.a != line.b && to.is_touched_by(line) && from.is_touched_by(line);
            return taut.then(|| Leg::straight(Xy::new(line.a, origin), Xy::new(line.b, origin)));
        }
        let (a, b) = (radius * f64::from(from.side), radius * f64::from(to.side));
        let (u, v) = (Xy::new(from.centre, origin), Xy::new(to.centre, origin));
        let way = v.minus(u);
        let (square, k) = (way.dot(way), a - b);
        let rest = square - k * k;
        if square == 0.0 || rest < 0.0 {
            return None;
        }
        let length = rest.sqrt();
        let along = way.times(length).minus(way.right().times(k)).times(1.0 / square);
        let touched = |turn: &Turn, at: Xy| {
            let beside = |p: Pt| {
                let step = Xy::new(p, origin).minus(at);
                f64::from(turn.side) * along.cross(step) >= -HAIR * step.norm()
            };
            beside(turn.before) && beside(turn.after)
        };
        let (start, end) = (u.plus(along.right(), a), v.plus(along.right(), b));
        (touched(to, v) && touched(from, u)).then_some(Leg { from: start, to: end, along, length })
    }

    fn straight(from: Xy, to: Xy) -> Leg {
        let way = to.minus(from);
        let length = way.norm();
        Leg { from, to, along: way.times(1.0 / length), length }
    }

    /// Whether a turn with this leg coming in may go out along another: straight on, or to its side by
    /// up to a half turn. Only round a post it may be more, where posts beside it keep the walk out.
    pub fn may_turn_into(&self, out: &Leg, turn: &Turn) -> bool {
        turn.is_post() || !is_reflex(self.along, out.along, f64::from(turn.side))
    }
}
