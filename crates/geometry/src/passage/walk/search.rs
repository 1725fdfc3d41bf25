//! The search from turn to turn.

use std::cmp::Ordering;
use std::collections::{BTreeMap, BinaryHeap};

use measure::Len;

use super::super::obstacles::Obstacles;
use super::Walk;
use super::angle::{Xy, fan, turned};
use super::band::Band;
use super::leg::Leg;
use super::turn::Turn;
use super::{exact, round};
use crate::{Bounds, Pt};

/// A leg that is known to be free, as the end of the shortest walk to it.
#[derive(Clone, Copy, Debug)]
struct Arrived {
    turn: Turn,
    leg: Leg,
    /// From the start to the end of the leg.
    length: f64,
    /// The leg before; none before the first.
    before: Option<usize>,
}

/// What may come next.
#[derive(Clone, Copy, Debug)]
enum Step {
    /// A leg, with the length up to its end.
    Leg(Turn, Leg, f64),
    /// The legs to the corners of a band.
    Band(u32),
}

/// What may come next after a leg, or after the start. The heap gives the one that promises the
/// shortest walk.
#[derive(Clone, Copy, Debug)]
struct Next {
    promise: f64,
    before: Option<usize>,
    step: Step,
}

impl Next {
    fn key(&self) -> (Option<usize>, (Option<usize>, i8)) {
        match self.step {
            Step::Leg(turn, ..) => (self.before, turn.id()),
            Step::Band(_) => (self.before, (None, i8::MIN)),
        }
    }
}

impl Ord for Next {
    fn cmp(&self, other: &Next) -> Ordering {
        other.promise.total_cmp(&self.promise).then_with(|| other.key().cmp(&self.key()))
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
    start: Turn,
    goal: Turn,
    arrived: Vec<Arrived>,
    /// For every turn the legs that arrived there.
    at: BTreeMap<(Option<usize>, i8), Vec<usize>>,
    next: BinaryHeap<Next>,
}

/// The shortest walk between two places, the middle `radius` units or more from every piece.
pub(super) fn shortest(obstacles: &Obstacles, from: Pt, to: Pt, radius: f64) -> Option<Walk> {
    let search = Search {
        obstacles,
        radius,
        start: Turn::place(from),
        goal: Turn::place(to),
        arrived: Vec::new(),
        at: BTreeMap::new(),
        next: BinaryHeap::new(),
    };
    search.run()
}

impl Search<'_> {
    fn run(mut self) -> Option<Walk> {
        self.leave(None, 0);
        while let Some(Next { before, step, .. }) = self.next.pop() {
            let (turn, leg, length) = match step {
                Step::Band(number) => {
                    self.leave(before, number);
                    continue;
                }
                Step::Leg(turn, leg, length) => (turn, leg, length),
            };
            if self.is_beaten(&turn, &leg, length) || !self.is_free(before, &turn, &leg) {
                continue;
            }
            let here = self.arrived.len();
            self.arrived.push(Arrived { turn, leg, length, before });
            if turn.corner.is_none() {
                return Some(self.walk(here));
            }
            self.at.entry(turn.id()).or_default().push(here);
            self.leave(Some(here), 0);
        }
        None
    }

    fn origin(&self) -> Pt {
        self.start.centre
    }

    fn xy(&self, turn: &Turn) -> Xy {
        Xy::new(turn.centre, self.origin())
    }

    /// Puts in the legs to a band of corners from where a leg arrived, or from the start.
    fn leave(&mut self, before: Option<usize>, number: u32) {
        let (from, goal) = (self.turn_of(before), self.goal);
        let band = Band::new(self.xy(&from), self.xy(&goal), number);
        if number == 0 {
            self.offer(before, &from, goal);
        }
        for piece in self.obstacles.grid().query(band.bounds(self.origin())) {
            for to in Turn::of(self.obstacles, piece) {
                if to.corner != from.corner && band.holds(self.xy(&to)) {
                    self.offer(before, &from, to);
                    self.offer(before, &from, to.mirrored());
                }
            }
        }
        if band.has_more(self.obstacles.all_bounds(), self.origin()) {
            let so_far = before.map_or(0.0, |before| self.arrived[before].length);
            // The ends of legs are up to a radius off the centres: at both ends of the next leg and
            // at the start of what follows it.
            let promise = so_far + band.beyond() - 3.0 * self.radius;
            self.next.push(Next { promise, before, step: Step::Band(number + 1) });
        }
    }

    /// Puts in the leg to a turn, if it touches the pieces at both of its ends.
    fn offer(&mut self, before: Option<usize>, from: &Turn, to: Turn) {
        let Some(leg) = Leg::between(from, &to, self.radius, self.origin()) else {
            return;
        };
        let mut length = leg.length;
        if let Some(before) = before {
            let Arrived { leg: coming, length: so_far, .. } = self.arrived[before];
            length += so_far;
            if self.radius > 0.0 {
                if !coming.may_turn_into(&leg, from) {
                    return;
                }
                length += self.radius * turned(coming.along, leg.along, f64::from(from.side));
            }
        }
        let promise = length + self.xy(&self.goal).minus(leg.to).norm();
        self.next.push(Next { promise, before, step: Step::Leg(to, leg, length) });
    }

    fn turn_of(&self, arrived: Option<usize>) -> Turn {
        arrived.map_or(self.start, |arrived| self.arrived[arrived].turn)
    }

    /// Whether a leg that arrived at the same turn can go on wherever this one can, and not longer.
    fn is_beaten(&self, turn: &Turn, leg: &Leg, length: f64) -> bool {
        let side = f64::from(turn.side);
        self.at.get(&turn.id()).into_iter().flatten().any(|&arrived| {
            let Arrived { leg: known, length: known_length, .. } = self.arrived[arrived];
            self.radius == 0.0
                || (known.may_turn_into(leg, turn)
                    && known_length + self.radius * turned(known.along, leg.along, side) <= length
                    && self.arc_is_free(turn, known.along, leg.along))
        })
    }

    /// Whether no piece is in the way of a leg, nor of the arc that leads into it.
    fn is_free(&self, before: Option<usize>, to: &Turn, leg: &Leg) -> bool {
        let from = self.turn_of(before);
        let arc_is_free = before.is_none_or(|before| {
            self.radius == 0.0 || self.arc_is_free(&from, self.arrived[before].leg.along, leg.along)
        });
        let reach = Len::from_units(self.radius.ceil() as i32);
        arc_is_free
            && self.boxes_along(leg).all(|along| {
                let near = self.obstacles.grid().query(along.grow(reach));
                near.into_iter().all(|piece| {
                    let ring = self.obstacles.ring(piece);
                    if self.radius == 0.0 {
                        exact::is_free(&from, to, ring)
                    } else {
                        round::is_free(leg, ring, self.radius, self.origin())
                    }
                })
            })
    }

    /// Boxes of 8 ft or so that cover a leg.
    fn boxes_along(&self, leg: &Leg) -> impl Iterator<Item = Bounds> {
        let part = f64::from(Len::inches(96).units());
        let count = (leg.length / part).ceil().max(1.0);
        let (leg, origin) = (*leg, self.origin());
        let at = move |i: i32| leg.from.plus(leg.along, leg.length * f64::from(i) / count);
        (0..count as i32).map(move |i| {
            let ends = [at(i).rounded(origin), at(i + 1).rounded(origin)];
            Bounds::of(ends).grow(Len::UNIT)
        })
    }

    fn arc_is_free(&self, turn: &Turn, u: Xy, v: Xy) -> bool {
        let reach = Len::from_units((2.0 * self.radius).ceil() as i32);
        let near = self.obstacles.grid().query(Bounds::of([turn.centre]).grow(reach));
        let (centre, side) = (self.xy(turn), f64::from(turn.side));
        near.into_iter().filter(|&piece| Some(piece) != turn.corner.map(|c| c.0)).all(|piece| {
            let ring = self.obstacles.ring(piece);
            round::arc_is_free((centre, u, v), side, ring, self.radius, self.origin())
        })
    }

    /// The walk that ends with a leg.
    fn walk(&self, last: usize) -> Walk {
        let mut line = vec![self.goal.centre];
        let mut at = Some(last);
        while let Some(here) = at {
            let Arrived { leg, before, .. } = self.arrived[here];
            let turn = self.turn_of(before);
            match before {
                Some(before) if self.radius > 0.0 => {
                    let (centre, side) = (self.xy(&turn), f64::from(turn.side));
                    let mut directions = Vec::new();
                    fan(self.arrived[before].leg.along, leg.along, side, &mut directions);
                    let out = |along: &Xy| {
                        centre.plus(along.right(), side * self.radius).rounded(self.origin())
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
