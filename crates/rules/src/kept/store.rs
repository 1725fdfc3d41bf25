//! What one rule found, by the things that it judged.

use std::collections::BTreeMap;
use std::sync::Arc;

use plan::ElementId;

use crate::check::set_aside;
use crate::{Finding, Severity, Sheet};

/// A finding, and which of the things that its rule judges it came from.
#[derive(Clone, Debug)]
pub(crate) struct Found {
    subject: u32,
    /// Its place among the findings of that thing.
    order: u32,
    pub(crate) finding: Arc<Finding>,
}

impl Found {
    fn key(&self) -> (&[ElementId], u32, u32) {
        (&self.finding.elements, self.subject, self.order)
    }
}

/// What a rule found. What is the same as before stays the very same value.
#[derive(Clone, Debug, Default)]
pub(super) struct Store {
    by_subject: BTreeMap<u32, Vec<Arc<Finding>>>,
    /// By severity, each in the order in which it is shown.
    shown: [Arc<Vec<Found>>; Severity::ALL.len()],
}

impl Store {
    pub fn shown(&self, severity: Severity) -> &Arc<Vec<Found>> {
        &self.shown[severity as usize]
    }

    /// Puts what was found of some things now in the place of what was found of them before.
    pub fn put(&mut self, sheet: &Sheet<'_>, news: News) {
        let mut changed: Vec<u32> = Vec::new();
        let mut severities = [false; Severity::ALL.len()];
        for (subject, mut findings) in news.0 {
            findings.iter_mut().for_each(|finding| set_aside(sheet.plan(), finding));
            let before = self.by_subject.get(&subject).map_or(&[][..], Vec::as_slice);
            if before.iter().map(|f| &**f).eq(&findings) {
                continue;
            }
            before.iter().for_each(|f| severities[f.severity as usize] = true);
            findings.iter().for_each(|f| severities[f.severity as usize] = true);
            changed.push(subject);
            if findings.is_empty() {
                self.by_subject.remove(&subject);
            } else {
                self.by_subject.insert(subject, findings.into_iter().map(Arc::new).collect());
            }
        }
        changed.sort_unstable();
        for severity in Severity::ALL.into_iter().filter(|s| severities[*s as usize]) {
            self.show(severity, &changed);
        }
    }

    fn show(&mut self, severity: Severity, changed: &[u32]) {
        let shown = &mut self.shown[severity as usize];
        let stays = |f: &&Found| changed.binary_search(&f.subject).is_err();
        let mut all: Vec<Found> = shown.iter().filter(stays).cloned().collect();
        for subject in changed {
            let findings = self.by_subject.get(subject).into_iter().flatten();
            let findings = findings.enumerate().filter(|(_, f)| f.severity == severity);
            all.extend(findings.map(|(order, finding)| Found {
                subject: *subject,
                order: order as u32,
                finding: Arc::clone(finding),
            }));
        }
        // What stays is in order, and a stable sort sees that.
        all.sort_by(|a, b| a.key().cmp(&b.key()));
        *shown = Arc::new(all);
    }
}

/// What a rule finds now, thing by thing.
#[derive(Default)]
pub(super) struct News(Vec<(u32, Vec<Finding>)>);

impl News {
    /// Judges a thing.
    pub fn judge(&mut self, subject: usize, check: impl FnOnce(&mut Vec<Finding>)) {
        let mut findings = Vec::new();
        check(&mut findings);
        self.0.push((subject as u32, findings));
    }

    /// Whether nothing was judged.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}
