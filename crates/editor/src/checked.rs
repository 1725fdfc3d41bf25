//! Facts and findings, derived again only when the plan has changed.

use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, OnceLock};
use std::time::Duration;

use plan::Plan;
use rules::{Book, Findings, KeepClear, Kept};
use space::Facts;
use space::ways::{Keeper, Ways};

/// The facts and findings of the plan that is shown (with the preview of the running gesture).
#[derive(Clone, Debug)]
pub struct Checked {
    pub facts: Arc<Facts>,
    pub findings: Arc<Findings>,
    pub keep_clears: Arc<Vec<KeepClear>>,
    ways: Arc<OnceLock<Ways>>,
    keeper: Arc<Mutex<Keeper>>,
}

/// Whether ways and findings that are kept from step to step are worked out anew as well and compared.
static SELF_CHECK: AtomicBool = AtomicBool::new(false);

/// A switch for whoever looks for a fault: from now on every answer that was kept up from step to step is compared
/// with one worked out anew; a difference goes to the log, and the new one counts.
pub fn set_self_check(on: bool) {
    SELF_CHECK.store(on, Ordering::Relaxed);
}

impl Checked {
    /// The facts of a plan with what was found in it.
    pub fn new(facts: Arc<Facts>, book: &Book) -> Checked {
        let found = rules::check_with_keep_clears(&facts, book);
        Checked::of(facts, (found.0.into(), found.1))
    }

    /// The same, with what is kept from step to step.
    fn kept(facts: Arc<Facts>, kept: &mut Kept) -> Checked {
        let found = kept.check(&facts);
        if !SELF_CHECK.load(Ordering::Relaxed) {
            return Checked::of(facts, found);
        }
        let facts_anew = Arc::new(space::derive(&facts.plan));
        let book = Book::of(&facts.plan.site);
        let anew = rules::check_with_keep_clears(&facts_anew, &book);
        let same = anew.0[..] == found.0[..] && anew.1 == found.1;
        if !same || *facts_anew != *facts {
            log::error!(
                "self-check: what was kept of facts and findings differs from that worked out anew"
            );
        }
        Checked::of(facts_anew, (anew.0.into(), anew.1))
    }

    fn of(facts: Arc<Facts>, found: (Findings, Vec<KeepClear>)) -> Checked {
        let (findings, keep_clears) = (Arc::new(found.0), Arc::new(found.1));
        let (ways, keeper) = (Arc::default(), Arc::default());
        Checked { facts, findings, keep_clears, ways, keeper }
    }

    /// The ways in; worked out when they are asked for first.
    pub fn ways(&self) -> &Ways {
        self.ways.get_or_init(|| {
            // A keeper that a panic has left half done is not asked.
            let kept = self.keeper.lock().ok().map(|mut keeper| keeper.ways(&self.facts));
            let anew = || space::ways::ways(&self.facts);
            let Some(kept) = kept else { return anew() };
            if !SELF_CHECK.load(Ordering::Relaxed) {
                return kept;
            }
            let anew = anew();
            if (&kept.arrivals, &kept.ways) != (&anew.arrivals, &anew.ways) {
                log::error!(
                    "self-check: the ways that were kept differ from those worked out anew"
                );
            }
            anew
        })
    }
}

/// The time since some fixed moment. The editor has no clock of its own: see `Session::set_clock`.
pub type Clock = fn() -> Duration;

/// How long the last change took, by the session's clock; all zero without one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Work {
    /// The tool, its snapping and the edit of the plan.
    pub edit: Duration,
    /// Facts derived from the plan.
    pub derive: Duration,
    /// Findings and keep-clear boxes.
    pub check: Duration,
}

impl Work {
    pub fn total(self) -> Duration {
        self.edit + self.derive + self.check
    }
}

/// Remembers what was derived from the two plans asked for last: the committed one, which snapping
/// and picking look at, and the shown one.
#[derive(Debug, Default)]
pub(crate) struct Memo {
    held: Vec<Held>,
    keeper: Arc<Mutex<Keeper>>,
    kept: Kept,
    pub clock: Option<Clock>,
    pub work: Work,
}

#[derive(Debug)]
struct Held {
    plan: Arc<Plan>,
    facts: Arc<Facts>,
    judged: Option<Checked>,
}

impl Memo {
    pub fn now(&self) -> Duration {
        self.clock.map_or(Duration::ZERO, |clock| clock())
    }

    /// The facts of a plan.
    pub fn facts(&mut self, plan: &Arc<Plan>) -> Arc<Facts> {
        Arc::clone(&self.held(plan).facts)
    }

    /// The facts, findings and keep-clear boxes of a plan.
    pub fn checked(&mut self, plan: &Arc<Plan>) -> Checked {
        let keeper = Arc::clone(&self.keeper);
        self.held(plan);
        let start = self.now();
        let held = self.held(plan);
        if let Some(checked) = &held.judged {
            return checked.clone();
        }
        let facts = Arc::clone(&held.facts);
        let checked = Checked { keeper, ..Checked::kept(facts, &mut self.kept) };
        self.held(plan).judged = Some(checked.clone());
        let spent = self.now().saturating_sub(start);
        self.work.check += spent;
        checked
    }

    /// What is held for a plan, moved to the front; derived where it is not held.
    fn held(&mut self, plan: &Arc<Plan>) -> &mut Held {
        match self.held.iter().position(|held| Arc::ptr_eq(&held.plan, plan)) {
            Some(i) => self.held[..=i].rotate_right(1),
            None => {
                let start = self.now();
                let facts = Arc::new(match self.held.first() {
                    Some(last) => space::derive_from(&last.facts, plan),
                    None => space::derive(plan),
                });
                let spent = self.now().saturating_sub(start);
                self.work.derive += spent;
                self.held.insert(0, Held { plan: Arc::clone(plan), facts, judged: None });
                self.held.truncate(2);
            }
        }
        &mut self.held[0]
    }
}
