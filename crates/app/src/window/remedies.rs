//! Remedies of the findings that are listed, tried one finding at a time so that no frame waits.

use std::sync::Arc;

use rules::{Book, Finding, Remedy};
use space::Facts;

use super::view::FindingKey;

/// Remedies that were found, for one state of the plan.
#[derive(Debug, Default)]
pub struct Remedies {
    facts: Option<Arc<Facts>>,
    found: Vec<(FindingKey, Vec<Remedy>)>,
    /// What the state before had: shown, but not offered, until it was tried again.
    stale: Vec<(FindingKey, Vec<Remedy>)>,
}

/// Remedies of a finding.
#[derive(Clone, Copy, Debug)]
pub struct Offer<'a> {
    pub remedies: &'a [Remedy],
    /// They were tried on the plan as it is.
    pub fresh: bool,
}

impl Remedies {
    /// Makes the remedies of one finding that is wanted and not yet tried. Gives whether there is more
    /// to do.
    pub fn work(
        &mut self,
        facts: &Arc<Facts>,
        wanted: &[FindingKey],
        findings: &[Arc<Finding>],
    ) -> bool {
        if !self.facts.as_ref().is_some_and(|held| Arc::ptr_eq(held, facts)) {
            self.facts = Some(Arc::clone(facts));
            let old = std::mem::take(&mut self.found);
            if !old.is_empty() {
                self.stale = old;
            }
        }
        let book = Book::of(&facts.plan.site);
        let mut untried = wanted.iter().filter(|key| self.fresh(key).is_none());
        let next = untried.next().cloned();
        let more = untried.next().is_some();
        if let Some(key) = next {
            let finding = findings.iter().find(|f| key.is(f));
            let remedies = finding.map(|f| rules::remedies(f, facts, &book)).unwrap_or_default();
            self.found.push((key, remedies));
        }
        more
    }

    /// Adds a remedy that was found elsewhere for the plan as it is; whether it was not yet offered.
    pub fn add(&mut self, key: &FindingKey, remedy: Remedy) -> bool {
        let Some((_, remedies)) = self.found.iter_mut().find(|(k, _)| k == key) else {
            return false;
        };
        let is_new = remedies.iter().all(|r| r.edit != remedy.edit && r.label != remedy.label);
        if is_new {
            remedies.push(remedy);
        }
        is_new
    }

    fn fresh(&self, key: &FindingKey) -> Option<&[Remedy]> {
        self.found.iter().find(|(k, _)| k == key).map(|(_, r)| r.as_slice())
    }

    /// The remedies of a finding, as far as they are known.
    pub fn of(&self, key: &FindingKey) -> Offer<'_> {
        if let Some(remedies) = self.fresh(key) {
            return Offer { remedies, fresh: true };
        }
        let stale = self.stale.iter().find(|(k, _)| k == key);
        Offer { remedies: stale.map_or(&[], |(_, r)| r), fresh: false }
    }
}
