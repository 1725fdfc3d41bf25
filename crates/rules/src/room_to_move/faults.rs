//! What is wrong with a plan at one offset.

use std::sync::Arc;

use measure::{Len, System};
use plan::{ElementId, Plan};
use space::Facts;
use space::ways::{Keeper, Target, WALKER, WayIn, Ways};

use crate::rules::rooms::words::{called, room_called};
use crate::{Book, Finding, Kept, Severity, Sheet};

/// A way narrower than this is a fault here (common practice, no source: what a person takes with elbows drawn in).
pub const NARROWEST_WAY: Len = WALKER;

/// Stands in the place of a rule's slug where the fault is a way that gets too narrow.
pub const WAY_RULE: &str = "way-in";

/// A correction, something to verify, or a way that is too narrow. Two are the same where rule and elements are.
#[derive(Clone, Debug)]
pub struct Fault {
    /// The rule's slug, or [`WAY_RULE`].
    pub rule: &'static str,
    pub elements: Vec<ElementId>,
    pub severity: Severity,
    pub title: String,
}

impl Fault {
    fn key(&self) -> (&'static str, &[ElementId], Severity) {
        (self.rule, &self.elements, self.severity)
    }
}

impl PartialEq for Fault {
    fn eq(&self, other: &Fault) -> bool {
        self.key() == other.key()
    }
}

impl Eq for Fault {}

impl PartialOrd for Fault {
    fn partial_cmp(&self, other: &Fault) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Fault {
    fn cmp(&self, other: &Fault) -> std::cmp::Ordering {
        self.key().cmp(&other.key())
    }
}

/// Looks at one plan after another that differ little, and keeps from look to look what stays the same.
#[derive(Debug)]
pub(super) struct Look {
    book: Book,
    facts: Option<Arc<Facts>>,
    kept: Kept,
    keeper: Keeper,
}

impl Look {
    pub fn new(book: &Book) -> Look {
        let kept = Kept::held_to(book.clone());
        Look { book: book.clone(), facts: None, kept, keeper: Keeper::default() }
    }

    /// Everything that is wrong with a plan, in order. Advice is not counted.
    pub fn faults(&mut self, plan: Plan) -> Vec<Fault> {
        let plan = Arc::new(plan);
        let facts = Arc::new(match &self.facts {
            Some(before) => space::derive_from(before, &plan),
            None => space::derive(&plan),
        });
        let (found, _) = self.kept.check(&facts);
        let ways = self.keeper.ways(&facts);
        let all = faults(&facts, &self.book, &found, &ways);
        self.facts = Some(facts);
        all
    }
}

fn faults(facts: &Facts, book: &Book, found: &[Arc<Finding>], ways: &Ways) -> Vec<Fault> {
    let mut all: Vec<Fault> = found
        .iter()
        .filter(|f| f.severity != Severity::Advice && f.set_aside.is_none())
        .map(|f| Fault {
            rule: f.rule,
            severity: f.severity,
            title: f.title.say(System::Imperial),
            elements: f.elements.clone(),
        })
        .collect();
    all.extend(narrow_ways(ways, facts, book));
    all.sort();
    all.dedup();
    all
}

fn narrow_ways(ways: &Ways, facts: &Facts, book: &Book) -> Vec<Fault> {
    if ways.arrivals.is_empty() {
        return Vec::new();
    }
    let sheet = Sheet::new(facts, book);
    let narrow = |way: &&WayIn| way.width < NARROWEST_WAY;
    let say = |way: &WayIn| {
        let (elements, name) = match way.target {
            Target::Service(id) => (vec![id], called(&sheet, id)),
            Target::Room(room) => {
                let room = facts.room(room);
                (room.tag.into_iter().collect(), room_called(room))
            }
        };
        Fault {
            rule: WAY_RULE,
            elements,
            severity: Severity::Verify,
            title: format!("The way to {name} is narrower than 20 in"),
        }
    };
    ways.ways.iter().filter(narrow).map(say).filter(|fault| !fault.elements.is_empty()).collect()
}
