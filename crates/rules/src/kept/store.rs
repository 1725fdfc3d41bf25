//! What one rule found, by the things that it judged.

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
    /// In the order of the things; none is without findings.
    by_subject: Vec<(u32, Vec<Arc<Finding>>)>,
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
            let place = self.by_subject.binary_search_by_key(&subject, |s| s.0);
            let before = place.map_or(&[][..], |at| &self.by_subject[at].1);
            if before.iter().map(|f| &**f).eq(&findings) {
                continue;
            }
            before.iter().for_each(|f| severities[f.severity as usize] = true);
            findings.iter().for_each(|f| severities[f.severity as usize] = true);
            changed.push(subject);
            let findings: Vec<_> = findings.into_iter().map(Arc::new).collect();
            match place {
                Ok(at) if findings.is_empty() => drop(self.by_subject.remove(at)),
                Ok(at) => self.by_subject[at].1 = findings,
                Err(at) => self.by_subject.insert(at, (subject, findings)),
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
            let Ok(at) = self.by_subject.binary_search_by_key(subject, |s| s.0) else { continue };
            let findings = self.by_subject[at].1.iter().enumerate();
            let findings = findings.filter(|(_, f)| f.severity == severity);
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

#[cfg(test)]
mod tests {
    use plan::Edition;

    use super::*;
    use crate::testing::Sample;
    use crate::{Book, Phrase};

    fn finding(severity: Severity, id: u32, title: &str) -> Finding {
        let citation = Book::model(Edition::E2021).cite("panel-depth");
        Finding::new(
            severity,
            citation,
            "panel-depth",
            vec![ElementId(id)],
            Phrase::text(title),
            "",
        )
    }

    fn news(all: &[(usize, &[&Finding])]) -> News {
        let mut news = News::default();
        for (subject, findings) in all {
            news.judge(*subject, |out| out.extend(findings.iter().map(|f| (*f).clone())));
        }
        news
    }

    #[test]
    fn what_is_found_again_stays_the_very_same_value() {
        let sample = Sample::room(144.0, 120.0);
        let (facts, book) = (sample.facts(), sample.book());
        let sheet = Sheet::new(&facts, &book);
        let (first, second) =
            (finding(Severity::Correction, 9, "a"), finding(Severity::Advice, 4, "b"));
        let mut store = Store::default();
        store.put(&sheet, news(&[(1, &[&first]), (2, &[&second]), (3, &[])]));
        let corrections = Arc::clone(store.shown(Severity::Correction));
        assert_eq!((corrections.len(), store.shown(Severity::Advice).len()), (1, 1));

        store.put(&sheet, news(&[(1, &[&first]), (2, &[])]));
        assert!(Arc::ptr_eq(&corrections, store.shown(Severity::Correction)));
        assert!(store.shown(Severity::Advice).is_empty());

        let third = finding(Severity::Correction, 2, "c");
        store.put(&sheet, news(&[(7, &[&third, &second])]));
        let shown: Vec<_> = store.shown(Severity::Correction).iter().map(|f| &*f.finding).collect();
        assert_eq!(shown, [&third, &first], "by their elements");
        assert!(Arc::ptr_eq(
            &corrections[0].finding,
            &store.shown(Severity::Correction)[1].finding
        ));

        let graver = Finding { severity: Severity::Verify, ..first.clone() };
        store.put(&sheet, news(&[(1, &[&graver])]));
        let lengths = Severity::ALL.map(|severity| store.shown(severity).len());
        assert_eq!(lengths, [1, 1, 1]);
    }
}
