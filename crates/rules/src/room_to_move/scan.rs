//! Looks outwards from where an element stands, one step at a time, so that a window can show what is known so far.

use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

use measure::Len;
use plan::Plan;

use super::faults::{Fault, Look};
use super::{Course, Holds, RoomToMove, STEP};
use crate::Book;

/// What is wrong at one offset, by the place of each fault in the list; `None` where the edit is refused.
type Found = Rc<BTreeSet<usize>>;

/// One side that is being looked at.
#[derive(Clone, Copy, Debug)]
struct Side {
    at: Len,
    end: Len,
}

/// A scan of one course.
#[derive(Debug)]
pub struct Scan<'a> {
    plan: &'a Plan,
    course: Course,
    /// One for each side, so that little changes from look to look.
    looks: [Look; 2],
    faults: Vec<Fault>,
    /// What was found at each offset that was looked at.
    found: BTreeMap<Len, Found>,
    sides: [Side; 2],
    turn: usize,
}

impl<'a> Scan<'a> {
    /// Begins with a look at where the element stands.
    pub fn new(plan: &'a Plan, book: &Book, course: Course) -> Scan<'a> {
        let (least, most) = course.reach(plan);
        let side = |end| Side { at: Len::ZERO, end };
        let mut scan = Scan {
            plan,
            course,
            looks: [Look::new(book), Look::new(book)],
            faults: Vec::new(),
            found: BTreeMap::new(),
            sides: [side(least), side(most)],
            turn: 0,
        };
        scan.look(Len::ZERO);
        scan
    }

    /// Looks one step further on one side, the sides in turn; whether there is more to look at.
    pub fn step(&mut self) -> bool {
        self.turn = 1 - self.turn;
        if !self.open(self.turn) {
            self.turn = 1 - self.turn;
        }
        if self.open(self.turn) {
            self.further(self.turn);
        }
        self.open(0) || self.open(1)
    }

    /// Looks at everything.
    pub fn run(mut self) -> RoomToMove {
        while self.step() {}
        self.result()
    }

    /// How far it has come on each side.
    pub fn looked(&self) -> (Len, Len) {
        (self.sides[0].at, self.sides[1].at)
    }

    /// What is wrong at an offset that is looked at for this.
    pub(super) fn faults_at(&mut self, by: Len) -> Option<Vec<&Fault>> {
        let found = self.look(by)?;
        Some(found.iter().map(|i| &self.faults[*i]).collect())
    }

    fn open(&self, side: usize) -> bool {
        self.sides[side].at != self.sides[side].end
    }

    fn further(&mut self, side: usize) {
        let Side { at, end } = self.sides[side];
        let to = if end < at { (at - STEP).max(end) } else { (at + STEP).min(end) };
        if self.look(to).is_none() {
            // The edit is refused from somewhere on: that is the end.
            let last = self.last_allowed(at, to);
            self.between(at, last);
            self.sides[side] = Side { at: last, end: last };
            return;
        }
        self.between(at, to);
        self.sides[side].at = to;
    }

    /// The last offset from `good` towards `bad` at which the edit is made.
    fn last_allowed(&mut self, mut good: Len, mut bad: Len) -> Len {
        while let Some(middle) = middle(good, bad) {
            match self.look(middle) {
                Some(_) => good = middle,
                None => bad = middle,
            }
        }
        good
    }

    /// Finds the neighbouring units between which each fault comes or goes.
    fn between(&mut self, a: Len, b: Len) {
        let (Some(at_a), Some(at_b)) = (self.look(a), self.look(b)) else { return };
        if at_a == at_b {
            return;
        }
        if let Some(middle) = middle(a, b) {
            self.between(a, middle);
            self.between(middle, b);
        }
    }

    fn look(&mut self, by: Len) -> Option<Found> {
        if let Some(found) = self.found.get(&by) {
            return Some(Rc::clone(found));
        }
        let edit = self.course.edit(self.plan, by).ok()?;
        let moved = self.plan.with(&edit).ok()?;
        let found = self.looks[usize::from(by > Len::ZERO)].faults(moved);
        let found = found.into_iter().map(|fault| self.number(fault)).collect();
        let found: Found = Rc::new(found);
        self.found.insert(by, Rc::clone(&found));
        Some(found)
    }

    fn number(&mut self, fault: Fault) -> usize {
        match self.faults.iter().position(|known| *known == fault) {
            Some(i) => i,
            None => {
                self.faults.push(fault);
                self.faults.len() - 1
            }
        }
    }

    /// What is known so far.
    pub fn result(&self) -> RoomToMove {
        let looked = self.looked();
        let now = self.found.get(&Len::ZERO);
        let mut holds: Vec<Holds> = self
            .faults
            .iter()
            .enumerate()
            .map(|(i, fault)| Holds {
                fault: fault.clone(),
                free: self.free(i, looked),
                now: now.is_some_and(|found| found.contains(&i)),
            })
            .collect();
        holds.sort_by(|a, b| a.fault.cmp(&b.fault));
        RoomToMove { course: self.course, looked, holds }
    }

    /// The stretches without a fault. Between two looks that agree nothing is taken to change; two that don't are
    /// neighbouring units.
    fn free(&self, fault: usize, (from, to): (Len, Len)) -> Vec<(Len, Len)> {
        let mut free: Vec<(Len, Len)> = Vec::new();
        let mut open = false;
        for (by, found) in self.found.range(from..=to) {
            let clear = !found.contains(&fault);
            match free.last_mut() {
                Some(last) if clear && open => last.1 = *by,
                _ if clear => free.push((*by, *by)),
                _ => {}
            }
            open = clear;
        }
        free
    }
}

/// The offset half way between two; `None` between neighbours.
fn middle(a: Len, b: Len) -> Option<Len> {
    let half = (b - a).units() / 2;
    (half != 0).then(|| a + Len::from_units(half))
}
