//! Findings of one plan after another, when little changes between them.
//!
//! Rules that judge things one by one ([`Check`]) are asked again only about those of which something has changed; what
//! they said about the others is kept. Rules that judge the plan as a whole are asked every time. Where more than places
//! has changed ([`Changes::between`] says `None`), everything is judged anew.

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::rc::Rc;
use std::sync::{Arc, LazyLock};

use measure::Len;
use plan::ElementId;
use space::{Changes, Facts, RoomIndex};

use crate::check::set_aside;
use crate::{Book, Check, Finding, KeepClear, RULES, Rule, Severity, Sheet, rules};

/// What is judged may lie a little farther off than it is measured: corners are rounded.
const MARGIN: Len = Len::inches(1);

/// Remembers what was found in one plan for the next. What it gives is what [`crate::check_with_keep_clears`] gives.
#[derive(Debug, Default)]
pub struct Kept {
    state: Option<State>,
}

#[derive(Debug)]
struct State {
    facts: Arc<Facts>,
    book: Book,
    /// For each rule what it found, in the order of [`Found::key`].
    rules: Vec<Vec<Found>>,
}

/// A finding, and which of the things that its rule judges it came from.
#[derive(Clone, Debug)]
struct Found {
    subject: u32,
    /// Its place among the findings of that thing.
    order: u32,
    finding: Arc<Finding>,
}

impl Found {
    fn key(&self) -> (Severity, &[ElementId], u32, u32) {
        (self.finding.severity, &self.finding.elements, self.subject, self.order)
    }
}

impl Kept {
    /// The findings and the keep-clear boxes of a plan, held to the book of its site.
    pub fn check(&mut self, facts: &Arc<Facts>) -> (Vec<Arc<Finding>>, Vec<KeepClear>) {
        let before = self.state.take();
        let changes = before.as_ref().and_then(|s| Changes::between(&s.facts, facts));
        let mut state = match (before, &changes) {
            // The site is the same, and so is the book.
            (Some(state), Some(_)) => State { facts: Arc::clone(facts), ..state },
            _ => State {
                facts: Arc::clone(facts),
                book: Book::of(&facts.plan.site),
                rules: vec![Vec::new(); RULES.len()],
            },
        };
        let sheet = Sheet::new(facts, &state.book);
        let again = Again::new(&sheet, changes.as_ref());
        for (rule, found) in RULES.iter().zip(&mut state.rules) {
            again.judge(rule, found);
        }
        let keep_clears = rules::keep_clears(&sheet);
        let findings = in_order(&state.rules);
        self.state = Some(state);
        (findings, keep_clears)
    }
}

/// What is to be judged again.
struct Again<'a> {
    sheet: &'a Sheet<'a>,
    /// Nothing where everything is.
    changes: Option<&'a Changes>,
    rooms: Vec<RoomIndex>,
    openings: ByReach<BTreeSet<usize>>,
    things: ByReach<BTreeSet<ElementId>>,
}

impl<'a> Again<'a> {
    fn new(sheet: &'a Sheet<'a>, changes: Option<&'a Changes>) -> Again<'a> {
        let rooms = match changes {
            Some(changes) => changes.rooms(sheet.facts).into_iter().collect(),
            None => sheet.facts.rooms.iter().map(|r| r.index).collect(),
        };
        let (openings, things) = Default::default();
        Again { sheet, changes, rooms, openings, things }
    }

    fn judge(&self, rule: &Rule, found: &mut Vec<Found>) {
        let (sheet, facts) = (self.sheet, self.sheet.facts);
        let mut new = New { sheet, out: Vec::new(), found: Vec::new() };
        match rule.check {
            Check::Plan(check) => {
                found.clear();
                new.judge(0, |out| check(sheet, out));
            }
            Check::Kinds(kinds, check) => {
                if self.changes.is_none_or(|changes| changes.touch(kinds)) {
                    found.clear();
                    new.judge(0, |out| check(sheet, out));
                }
            }
            Check::Rooms(check) => {
                forget(found, |subject| self.rooms.binary_search(&RoomIndex(subject)).is_ok());
                for room in &self.rooms {
                    new.judge(room.0, |out| check(sheet, facts.room(*room), out));
                }
            }
            Check::Openings(limits, check) => match self.changes {
                Some(changes) => {
                    let near = self.openings.of(self.reach(limits), |r| changes.openings(facts, r));
                    forget(found, |subject| near.contains(&subject));
                    for &i in near.iter() {
                        new.judge(i, |out| check(sheet, &facts.openings[i], out));
                    }
                }
                None => facts.openings.iter().enumerate().for_each(|(i, opening)| {
                    new.judge(i, |out| check(sheet, opening, out));
                }),
            },
            Check::Things(kinds, limits, check) => match self.changes {
                Some(changes) => {
                    let near = self.things.of(self.reach(limits), |r| changes.things(facts, r));
                    forget(found, |id| near.contains(&ElementId(id as u32)));
                    let near = near.iter().filter_map(|id| facts.plan.get(*id));
                    for thing in near.filter(|e| e.stands() && kinds.contains(&e.body.kind())) {
                        new.judge(thing.id.0 as usize, |out| check(sheet, thing, out));
                    }
                }
                None => facts.standing(kinds).for_each(|thing| {
                    new.judge(thing.id.0 as usize, |out| check(sheet, thing, out));
                }),
            },
        }
        if !new.found.is_empty() {
            found.append(&mut new.found);
            // What was kept is in order, and a stable sort sees that.
            found.sort_by(|a, b| a.key().cmp(&b.key()));
        }
    }

    /// The greatest of some limits, and a margin.
    fn reach(&self, limits: &[&'static str]) -> Len {
        let limits = limits.iter().map(|slug| self.sheet.book.length(slug));
        limits.fold(Len::ZERO, Len::max) + MARGIN
    }
}

/// What is near what has changed, looked up once for each reach.
struct ByReach<T>(RefCell<Vec<(Len, Rc<T>)>>);

impl<T> Default for ByReach<T> {
    fn default() -> ByReach<T> {
        ByReach(RefCell::default())
    }
}

impl<T> ByReach<T> {
    fn of(&self, reach: Len, find: impl FnOnce(Len) -> T) -> Rc<T> {
        let known = self.0.borrow().iter().find(|(r, _)| *r == reach).map(|(_, f)| Rc::clone(f));
        known.unwrap_or_else(|| {
            let found = Rc::new(find(reach));
            self.0.borrow_mut().push((reach, Rc::clone(&found)));
            found
        })
    }
}

fn forget(found: &mut Vec<Found>, judged_again: impl Fn(usize) -> bool) {
    found.retain(|f| !judged_again(f.subject as usize));
}

/// What a rule finds now.
struct New<'a> {
    sheet: &'a Sheet<'a>,
    out: Vec<Finding>,
    found: Vec<Found>,
}

impl New<'_> {
    fn judge(&mut self, subject: usize, check: impl FnOnce(&mut Vec<Finding>)) {
        check(&mut self.out);
        for (order, mut finding) in self.out.drain(..).enumerate() {
            set_aside(self.sheet.plan(), &mut finding);
            let (subject, order) = (subject as u32, order as u32);
            self.found.push(Found { subject, order, finding: Arc::new(finding) });
        }
    }
}

/// The places of the rules in the order of their slugs.
static BY_SLUG: LazyLock<Vec<usize>> = LazyLock::new(|| {
    let mut places: Vec<usize> = (0..RULES.len()).collect();
    places.sort_by_key(|i| RULES[*i].slug);
    places
});

/// All findings in the order of [`crate::check`].
fn in_order(rules: &[Vec<Found>]) -> Vec<Arc<Finding>> {
    let mut all = Vec::with_capacity(rules.iter().map(Vec::len).sum());
    for severity in [Severity::Correction, Severity::Verify, Severity::Advice] {
        for i in BY_SLUG.iter() {
            let found = &rules[*i];
            let from = found.partition_point(|f| f.finding.severity < severity);
            let to = found.partition_point(|f| f.finding.severity <= severity);
            all.extend(found[from..to].iter().map(|f| Arc::clone(&f.finding)));
        }
    }
    all
}
