//! Remedies over every demo plan: each cures its finding, none brings a correction, and together they settle.

use std::sync::Arc;

use plan::{ElementId, Plan};
use rules::{Book, Finding, Severity};

/// A plan of a thousand rounds would be one that never settles.
const ROUNDS: usize = 10;

type Key = (&'static str, Vec<ElementId>);

fn key(finding: &Finding) -> Key {
    (finding.rule, finding.elements.clone())
}

fn corrections(plan: &Arc<Plan>) -> Vec<Key> {
    let found = rules::check(&space::derive(plan), &Book::of(&plan.site));
    found.iter().filter(|f| f.severity == Severity::Correction).map(|f| key(f)).collect()
}

/// The plan after the first remedy of each finding that has one; `None` where none has.
fn round(plan: &Arc<Plan>) -> Option<(Arc<Plan>, usize)> {
    let book = Book::of(&plan.site);
    let keys: Vec<Key> = rules::check(&space::derive(plan), &book).iter().map(|f| key(f)).collect();
    let (mut plan, mut applied) = (Arc::clone(plan), 0);
    for wanted in keys {
        let facts = space::derive(&plan);
        let findings = rules::check(&facts, &book);
        let Some(finding) = findings.iter().find(|f| key(f) == wanted) else { continue };
        let remedies = rules::remedies(finding, &facts, &book);
        let Some(remedy) = remedies.first() else { continue };
        let before = corrections(&plan);
        plan =
            Arc::new(plan.with(&remedy.edit).expect("a remedy is an edit that the plan accepts"));
        applied += 1;
        let after = rules::check(&space::derive(&plan), &book);
        assert!(after.iter().all(|f| key(f) != wanted), "{wanted:?} is not cured by its remedy");
        let new: Vec<Key> =
            corrections(&plan).into_iter().filter(|k| !before.contains(k)).collect();
        assert!(new.is_empty(), "the remedy of {wanted:?} brings {new:?}");
    }
    (applied > 0).then_some((plan, applied))
}

#[test]
fn remedies_settle_and_make_nothing_worse() {
    let mut total = 0;
    for (name, plan) in whole::demo::all() {
        let mut plan = Arc::new(plan);
        let mut rounds = 0;
        while let Some((next, applied)) = round(&plan) {
            plan = next;
            total += applied;
            rounds += 1;
            assert!(rounds <= ROUNDS, "{name} does not settle");
        }
    }
    assert!(total >= 5, "only {total} remedies were tried");
}
