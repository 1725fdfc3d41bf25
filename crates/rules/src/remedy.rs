//! Remedies: edits that cure a finding, tried before they are offered.

use std::sync::Arc;

use plan::ElementId;
use space::Facts;

use crate::{Book, Finding, Remedy, Severity, Sheet, check, rule};

/// The edits that cure a finding: with each of them the finding is gone and no new correction comes.
/// Every edit is tried on a copy of the plan, so this is for a pane or the command line, not for the
/// frame of a drag.
pub fn remedies(finding: &Finding, facts: &Facts, book: &Book) -> Vec<Remedy> {
    let Some(propose) = rule(finding.rule).and_then(|rule| rule.remedies) else {
        return Vec::new();
    };
    let proposed = propose(finding, &Sheet::new(facts, book));
    if proposed.is_empty() {
        return proposed;
    }
    let before: Vec<Key> = corrections(&check(facts, book));
    proposed.into_iter().filter(|remedy| cures(remedy, finding, facts, book, &before)).collect()
}

/// What a finding is known by.
type Key = (&'static str, Vec<ElementId>);

fn corrections(findings: &[Finding]) -> Vec<Key> {
    findings
        .iter()
        .filter(|f| f.severity == Severity::Correction)
        .map(|f| (f.rule, f.elements.clone()))
        .collect()
}

fn cures(remedy: &Remedy, finding: &Finding, facts: &Facts, book: &Book, before: &[Key]) -> bool {
    let Ok(plan) = facts.plan.with(&remedy.edit) else {
        return false;
    };
    let after = check(&space::derive(&Arc::new(plan)), book);
    let gone = !after.iter().any(|f| f.rule == finding.rule && f.elements == finding.elements);
    gone && corrections(&after).iter().all(|key| before.contains(key))
}
