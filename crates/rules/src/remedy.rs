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

fn corrections(findings: &[Arc<Finding>]) -> Vec<Key> {
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

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use plan::element::ServiceKind;

    use crate::testing::{Sample, at, inch};
    use crate::{Severity, check, remedies};

    /// A partition 33 5/8 in before the panel on the south wall, and a cleanout on the north wall whose face is
    /// `clear` behind the partition.
    fn between(clear: f64) -> Sample {
        let south = 37.625;
        let depth = south + 4.5 + clear + 4.0;
        Sample::room(144.0, depth)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .service(ServiceKind::Cleanout, at(72.0, depth), Facing::SOUTH)
            .partition_by_left_face(at(144.0, south), Pt::at(inch(0.0), inch(south)))
    }

    #[test]
    fn a_remedy_that_brings_a_new_correction_is_not_offered() {
        assert_eq!(between(24.0).remedies("panel-depth"), ["Move W7 by 2 3/8\""]);
        // Behind the partition there are 20 in: 2 3/8 in less would leave too little for the cleanout.
        assert!(between(20.0).remedies("panel-depth").is_empty());
    }

    #[test]
    fn an_applied_remedy_cures_and_settles() {
        let mut sample = between(24.0).furnishing(at(40.0, 5.0), Facing::NORTH, 36.0, 12.0);
        for _ in 0..10 {
            let (facts, book) = (sample.facts(), sample.book());
            let found = check(&facts, &book);
            let first = found.iter().find_map(|f| remedies(f, &facts, &book).into_iter().next());
            let Some(remedy) = first else { break };
            let corrections = |s: &Sample| {
                let found = check(&s.facts(), &s.book());
                found.iter().filter(|f| f.severity == Severity::Correction).count()
            };
            let before = corrections(&sample);
            sample = sample.edit(&remedy.edit);
            assert!(corrections(&sample) <= before);
        }
        let (facts, book) = (sample.facts(), sample.book());
        let left = check(&facts, &book);
        assert!(left.iter().all(|f| remedies(f, &facts, &book).is_empty()), "it has settled");
    }
}
