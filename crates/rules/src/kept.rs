//! Findings of one plan after another, when little changes between them.
//!
//! A rule is asked again only about that of which something has changed ([`Check`]); what it said about the rest is kept,
//! and so are measures that several rules ask for. Where more than places has changed ([`Changes::between`] says `None`),
//! everything is judged anew.

use std::collections::BTreeSet;
use std::sync::{Arc, LazyLock};

use measure::Len;
use plan::ElementId;
use plan::element::BodyKind;
use space::{Changes, Facts, Near, On, RoomIndex};

use crate::check::set_aside;
use crate::rule::Measures;
use crate::rules::KEEP;
use crate::rules::electrical::devices;
use crate::rules::way_out::need;
use crate::{Book, Check, Finding, KeepClear, RULES, Reach, Rule, Severity, Sheet, rules};

/// Remembers what was found in one plan for the next. What it gives is what [`crate::check_with_keep_clears`] gives.
#[derive(Debug, Default)]
pub struct Kept {
    state: Option<State>,
}

#[derive(Debug)]
struct State {
    facts: Arc<Facts>,
    book: Book,
    /// How far each rule looks.
    reach: Vec<Len>,
    /// Whether all rooms are excused from an escape opening: it hangs on their areas together.
    excused: bool,
    measures: Measures,
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

impl State {
    fn new(facts: &Arc<Facts>) -> State {
        let book = Book::of(&facts.plan.site);
        State {
            facts: Arc::clone(facts),
            reach: RULES.iter().map(|rule| rule.check.reach(&book)).collect(),
            book,
            excused: false,
            measures: Measures::default(),
            rules: vec![Vec::new(); RULES.len()],
        }
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
            _ => State::new(facts),
        };
        let mut sheet = Sheet::new(facts, &state.book);
        let excused = need::only_excused(&sheet);
        let changes = changes.filter(|_| excused == state.excused);
        state.excused = excused;
        let again = changes.map(|changes| {
            let farthest = state.reach.iter().copied().fold(Len::ZERO, Len::max);
            Again::new(&sheet, changes, farthest)
        });
        if let Some(again) = &again {
            sheet.measures = state.measures;
            again.measure(&mut sheet);
        }
        for ((rule, reach), found) in RULES.iter().zip(&state.reach).zip(&mut state.rules) {
            let mut new = New { sheet: &sheet, out: Vec::new(), found: Vec::new() };
            match &again {
                Some(again) => again.judge(rule, *reach, found, &mut new),
                None => {
                    found.clear();
                    everything(rule, &mut new);
                }
            }
            if !new.found.is_empty() {
                found.append(&mut new.found);
                // What was kept is in order, and a stable sort sees that.
                found.sort_by(|a, b| a.key().cmp(&b.key()));
            }
        }
        let keep_clears = rules::keep_clears(&sheet);
        let findings = in_order(&state.rules);
        state.measures = sheet.measures;
        self.state = Some(state);
        (findings, keep_clears)
    }
}

/// Judges everything that a rule is about.
fn everything(rule: &Rule, new: &mut New<'_>) {
    let (sheet, facts) = (new.sheet, new.sheet.facts);
    match rule.check {
        Check::Plan(_, check) => new.judge(0, |out| check(sheet, out)),
        Check::Room(check) | Check::Rooms(check) => {
            facts.rooms.iter().for_each(|r| new.judge(r.index.0, |out| check(sheet, r, out)));
        }
        Check::Openings(_, check) => facts.openings.iter().enumerate().for_each(|(i, opening)| {
            new.judge(i, |out| check(sheet, opening, out));
        }),
        Check::Things(kinds, _, check) => {
            let things = kinds.iter().flat_map(|k| facts.places(*k)).copied();
            things.for_each(|place| {
                new.judge(place as usize, |out| check(sheet, facts.element_at(place), out));
            });
        }
        Check::Services(kinds, _, check) => {
            for place in devices::of_kinds(sheet, kinds) {
                if let Some((element, service)) = devices::service_at(sheet, place) {
                    new.judge(place as usize, |out| check(sheet, element, service, out));
                }
            }
        }
    }
}

/// What is to be judged again.
struct Again {
    changes: Changes,
    near: Near,
    rooms: BTreeSet<RoomIndex>,
    rooms_and_next: BTreeSet<RoomIndex>,
    /// How far the spaces before service points reach.
    keeps: Len,
}

impl Again {
    fn new(sheet: &Sheet<'_>, changes: Changes, farthest: Len) -> Again {
        let keeps = Reach::greatest(KEEP, sheet.book);
        Again {
            near: changes.near(sheet.facts, farthest.max(keeps)),
            rooms: changes.rooms().clone(),
            rooms_and_next: changes.rooms_and_next(sheet.facts),
            changes,
            keeps,
        }
    }

    /// Brings the measures that were taken of the plan before up to this one.
    fn measure(&self, sheet: &mut Sheet<'_>) {
        // What needs an escape opening, and what things are called, is as it was.
        if self.changes.touch(&[On::Kind(BodyKind::Service)]) {
            sheet.measures.devices.take();
        }
        let Some(mut keeps) = sheet.measures.keeps.take() else { return };
        for place in self.near.things(BodyKind::Service, self.keeps) {
            let element = sheet.facts.element_at(place);
            let Ok(at) = keeps.binary_search_by_key(&element.id, |keep| keep.service) else {
                continue;
            };
            if let Some(keep) = rules::keep(sheet, element) {
                keeps[at] = keep;
            }
        }
        sheet.measures.keeps = keeps.into();
    }

    fn judge(&self, rule: &Rule, reach: Len, found: &mut Vec<Found>, new: &mut New<'_>) {
        let (sheet, facts) = (new.sheet, new.sheet.facts);
        match rule.check {
            Check::Plan(on, check) => {
                if self.changes.touch(on) {
                    found.clear();
                    new.judge(0, |out| check(sheet, out));
                }
            }
            Check::Room(check) => rooms(&self.rooms, check, found, new),
            Check::Rooms(check) => rooms(&self.rooms_and_next, check, found, new),
            Check::Openings(_, check) => {
                for i in self.near.openings(reach) {
                    forget(found, i);
                    new.judge(i, |out| check(sheet, &facts.openings[i], out));
                }
            }
            Check::Things(kinds, _, check) => {
                for place in kinds.iter().flat_map(|kind| self.near.things(*kind, reach)) {
                    forget(found, place as usize);
                    new.judge(place as usize, |out| check(sheet, facts.element_at(place), out));
                }
            }
            Check::Services(kinds, _, check) => {
                for place in self.near.things(BodyKind::Service, reach) {
                    let Some((element, service)) = devices::service_at(sheet, place) else {
                        continue;
                    };
                    if kinds.contains(&service.kind) {
                        forget(found, place as usize);
                        new.judge(place as usize, |out| check(sheet, element, service, out));
                    }
                }
            }
        }
    }
}

fn rooms(
    again: &BTreeSet<RoomIndex>,
    check: crate::rule::CheckRoom,
    found: &mut Vec<Found>,
    new: &mut New<'_>,
) {
    let sheet = new.sheet;
    for room in again {
        forget(found, room.0);
        new.judge(room.0, |out| check(sheet, sheet.facts.room(*room), out));
    }
}

/// Forgets what was found of a thing.
fn forget(found: &mut Vec<Found>, subject: usize) {
    found.retain(|f| f.subject as usize != subject);
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
