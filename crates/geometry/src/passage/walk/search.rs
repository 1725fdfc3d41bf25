//! The search from turn to turn.

use std::cmp::Ordering;
use std::collections::BinaryHeap;

use measure::Len;

use super::super::obstacles::Obstacles;
use super::Walk;
use super::angle::{Xy, angle, fan};
use super::leg::Leg;
use super::turn::Turn;
use super::{exact, round};
use crate::{Bounds, Pt};

/// A leg that is known to be free, as the end of the shortest walk to it.
#[derive(Clone, Copy, Debug)]
struct Arrived {
    turn: usize,
    leg: Leg,
    /// From the start to the end of the leg.
    length: f64,
    /// The leg before; none before the first.
    before: Option<usize>,
}

/// A leg that may come next. The heap gives the one that promises the shortest walk.
#[derive(Clone, Copy, Debug)]
struct Next {
    promise: f64,
    turn: usize,
    before: Option<usize>,
    leg: Leg,
    length: f64,
}

impl Ord for Next {
    fn cmp(&self, other: &Next) -> Ordering {
        let promise = other.promise.total_cmp(&self.promise);
        promise.then_with(|| (other.turn, other.before).cmp(&(self.turn, self.before)))
    }
}

impl PartialOrd for Next {
    fn partial_cmp(&self, other: &Next) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Next {
    fn eq(&self, other: &Next) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Next {}

struct Search<'a> {
    obstacles: &'a Obstacles,
    radius: f64,
    origin: Pt,
    turns: Vec<Turn>,
    start: usize,
    goal: usize,
    arrived: Vec<Arrived>,
    /// For every turn the legs that arrived there.
    at: Vec<Vec<usize>>,
    next: BinaryHeap<Next>,
}

/// The shortest walk with the middle `radius` units from every piece.
pub(super) fn shortest(obstacles: &Obstacles, from: Pt, to: Pt, radius: f64) -> Option<Walk> {
    if from == to {
        return Some(Walk { length: 0.0, line: vec![from] });
    }
    let mut turns = Turn::all(obstacles);
    let (start, goal) = (turns.len(), turns.len() + 1);
    turns.extend([Turn::place(from, start), Turn::place(to, goal)]);
    let at = vec![Vec::new(); turns.len()];
    let (arrived, next) = (Vec::new(), BinaryHeap::new());
    let search = Search { obstacles, radius, origin: from, turns, start, goal, arrived, at, next };
    search.run()
}

impl Search<'_> {
    fn run(mut self) -> Option<Walk> {
        self.leave(None);
        while let Some(next) = self.next.pop() {
            if self.is_beaten(&next) || !self.is_free(&next) {
                continue;
            }
            let Next { turn, leg, length, before, .. } = next;
            let here = self.arrived.len();
            self.arrived.push(Arrived { turn, leg, length, before });
            if turn == self.goal {
                return Some(self.walk(here));
            }
            self.at[turn].push(here);
            self.leave(Some(here));
        }
        None
    }

    /// Puts in all legs that leave where a leg arrived, or the start.
    fn leave(&mut self, before: Option<usize>) {
        let from = self.turn_of(before);
        let to_goal = Xy::new(self.turns[self.goal].centre, self.origin);
        for to in &self.turns {
            // Neither back to the start nor to the other side of the same corner.
            let same_corner = to.piece.is_some() && to.id / 2 == from.id / 2;
            if to.id == self.start || same_corner {
                continue;
            }
            let Some(leg) = Leg::between(&from, to, self.radius, self.origin) else {
                continue;
            };
            let mut length = leg.length;
            if let Some(before) = before {
                let Arrived { leg: coming, length: so_far, .. } = self.arrived[before];
                length += so_far;
                if self.radius > 0.0 {
                    if !coming.may_turn_into(&leg, &from) {
                        continue;
                    }
                    length += self.radius * angle(coming.along, leg.along);
                }
            }
            let promise = length + to_goal.minus(leg.to).norm();
            self.next.push(Next { promise, turn: to.id, before, leg, length });
        }
    }

    fn turn_of(&self, arrived: Option<usize>) -> Turn {
        self.turns[arrived.map_or(self.start, |arrived| self.arrived[arrived].turn)]
    }

    /// Whether a leg that arrived at the same turn can go on wherever this one can, and not longer.
    fn is_beaten(&self, next: &Next) -> bool {
        let turn = &self.turns[next.turn];
        self.at[next.turn].iter().any(|&arrived| {
            let Arrived { leg, length, .. } = self.arrived[arrived];
            self.radius == 0.0
                || (leg.may_turn_into(&next.leg, turn)
                    && length + self.radius * angle(leg.along, next.leg.along) <= next.length
                    && self.arc_is_free(turn, leg.along, next.leg.along))
        })
    }

    /// Whether no piece is in the way of a leg, nor of the arc that leads into it.
    fn is_free(&self, next: &Next) -> bool {
        let (from, to) = (self.turn_of(next.before), &self.turns[next.turn]);
        let arc_is_free = next.before.is_none_or(|before| {
            self.radius == 0.0
                || self.arc_is_free(&from, self.arrived[before].leg.along, next.leg.along)
        });
        let reach = Len::from_units(self.radius.ceil() as i32);
        arc_is_free
            && self.boxes_along(&next.leg).all(|along| {
                let near = self.obstacles.grid().query(along.grow(reach));
                near.into_iter().all(|piece| {
                    let ring = self.obstacles.ring(piece);
                    if self.radius == 0.0 {
                        exact::is_free(&from, to, ring)
                    } else {
                        round::is_free(&next.leg, ring, self.radius, self.origin)
                    }
                })
            })
    }

    /// Boxes of 8 ft or so that cover a leg.
    fn boxes_along(&self, leg: &Leg) -> impl Iterator<Item = Bounds> {
        let part = f64::from(Len::inches(96).units());
        let count = (leg.length / part).ceil().max(1.0);
        let (leg, origin) = (*leg, self.origin);
        let at = move |i: i32| leg.from.plus(leg.along, leg.length * f64::from(i) / count);
        (0..count as i32).map(move |i| {
            let ends = [at(i).rounded(origin), at(i + 1).rounded(origin)];
            Bounds::of(ends).grow(Len::UNIT)
        })
    }

    fn arc_is_free(&self, turn: &Turn, u: Xy, v: Xy) -> bool {
        let reach = Len::from_units((2.0 * self.radius).ceil() as i32);
        let near = self.obstacles.grid().query(Bounds::of([turn.centre]).grow(reach));
        let (centre, side) = (Xy::new(turn.centre, self.origin), f64::from(turn.side));
        near.into_iter().filter(|&piece| Some(piece) != turn.piece).all(|piece| {
            let ring = self.obstacles.ring(piece);
            round::arc_is_free((centre, u, v), side, ring, self.radius, self.origin)
        })
    }

    /// The walk that ends with a leg.
    fn walk(&self, last: usize) -> Walk {
        let mut line = vec![self.turns[self.goal].centre];
        let mut at = Some(last);
        while let Some(here) = at {
            let Arrived { leg, before, .. } = self.arrived[here];
            let turn = self.turn_of(before);
            match before {
                Some(before) if self.radius > 0.0 => {
                    let (centre, side) = (Xy::new(turn.centre, self.origin), f64::from(turn.side));
                    let mut directions = Vec::new();
                    fan(self.arrived[before].leg.along, leg.along, side, &mut directions);
                    let out = |along: &Xy| {
                        centre.plus(along.right(), side * self.radius).rounded(self.origin)
                    };
                    line.extend(directions.iter().rev().map(out));
                }
                _ => line.push(turn.centre),
            }
            at = before;
        }
        line.reverse();
        line.dedup();
        Walk { length: self.arrived[last].length, line }
    }
}
