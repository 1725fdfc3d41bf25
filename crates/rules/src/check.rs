//! Runs every rule.

use std::sync::Arc;

use plan::Plan;
use space::Facts;

use crate::{Book, Finding, KeepClear, RULES, Sheet, rules};

/// All findings of a plan and all keep-clear boxes, with what both need measured once.
pub fn check_with_keep_clears(facts: &Facts, book: &Book) -> (Vec<Arc<Finding>>, Vec<KeepClear>) {
    let sheet = Sheet::new(facts, book);
    (judge(&sheet), rules::keep_clears(&sheet))
}

/// All findings of a plan: corrections first, then by rule and element; set-aside ones carry their reason.
pub fn check(facts: &Facts, book: &Book) -> Vec<Arc<Finding>> {
    judge(&Sheet::new(facts, book))
}

fn judge(sheet: &Sheet<'_>) -> Vec<Arc<Finding>> {
    let mut findings = Vec::new();
    for rule in RULES {
        rule.judge(sheet, &mut findings);
    }
    findings.iter_mut().for_each(|finding| set_aside(sheet.plan(), finding));
    findings
        .sort_by(|a, b| (a.severity, a.rule, &a.elements).cmp(&(b.severity, b.rule, &b.elements)));
    findings.into_iter().map(Arc::new).collect()
}

/// Gives a finding the reason why it was set aside, where it was.
pub(crate) fn set_aside(plan: &Plan, finding: &mut Finding) {
    let aside = plan.set_aside().iter();
    finding.set_aside = aside
        .filter(|s| s.rule == finding.rule && s.elements == finding.elements)
        .map(|s| s.reason.clone())
        .next();
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Pt};
    use plan::element::ServiceKind;
    use plan::{Edit, ElementId, SetAside};
    use proptest::prelude::*;

    use crate::testing::{Sample, at};
    use crate::{Finding, Severity, check, check_with_keep_clears, keep_clears};

    fn crowded(facing: Facing, kinds: &[(ServiceKind, i32, i32)], wall: (i32, i32)) -> Sample {
        // Turns a point about the origin so that north comes to lie along `facing`.
        let turn = |x: i32, y: i32| {
            let (n, e) = (facing.vec(), facing.right().vec());
            let p = |a: i64, b: i64| (i64::from(x) * a + i64::from(y) * b) as i32;
            Pt::inches(p(e.x, n.x), p(e.y, n.y))
        };
        let sample = Sample::blank().partition(turn(0, wall.0), turn(200, wall.1));
        kinds.iter().fold(sample, |sample, &(kind, x, y)| sample.service(kind, turn(x, y), facing))
    }

    /// What a finding says, without words that name points of the plan.
    fn key(f: &Finding) -> (&'static str, Severity, Vec<ElementId>, Option<String>) {
        (f.rule, f.severity, f.elements.clone(), f.measured_text(measure::System::Imperial))
    }

    #[test]
    fn corrections_come_first_then_by_rule_and_element() {
        let sample = Sample::room(60.0, 60.0)
            .service(ServiceKind::Disconnect, at(20.0, 0.0), Facing::NORTH)
            .service(ServiceKind::Panel, at(40.0, 0.0), Facing::NORTH)
            .service(ServiceKind::Furnace, at(30.0, 60.0), Facing::SOUTH)
            .partition(at(0.0, 20.0), at(60.0, 20.0));
        let found = check(&sample.facts(), &sample.book());
        assert!(found.len() > 3);
        let keys: Vec<_> = found.iter().map(|f| (f.severity, f.rule, &f.elements)).collect();
        assert!(keys.is_sorted());
    }

    #[test]
    fn what_is_set_aside_keeps_its_finding_and_carries_the_reason() {
        let sample = Sample::room(144.0, 120.0)
            .service(ServiceKind::Panel, at(72.0, 0.0), Facing::NORTH)
            .partition(at(0.0, 30.0), at(144.0, 30.0));
        let elements = sample.findings("panel-depth")[0].elements.clone();
        let reason = "the wall comes out in spring".to_owned();
        let aside = SetAside { rule: "panel-depth".into(), elements, reason: reason.clone() };
        let sample = sample.edit(&Edit::SetAside(aside));
        assert_eq!(sample.findings("panel-depth")[0].set_aside, Some(reason));
    }

    #[test]
    fn a_verify_that_rests_on_assumed_facts_names_them_and_a_correction_rests_on_none() {
        let sample = Sample::room(60.0, 60.0)
            .service(ServiceKind::Panel, at(40.0, 0.0), Facing::NORTH)
            .service(ServiceKind::GasValve, at(0.0, 30.0), Facing::EAST)
            .service(ServiceKind::Furnace, at(30.0, 60.0), Facing::SOUTH)
            .partition(at(0.0, 20.0), at(60.0, 20.0));
        for finding in check(&sample.facts(), &sample.book()) {
            let correction = finding.severity == Severity::Correction;
            assert!(!correction || finding.assumed.is_empty(), "{}", finding.rule);
        }
    }

    #[test]
    fn both_together_say_what_each_says() {
        let sample = crowded(Facing::NORTH, &[(ServiceKind::Panel, 60, 0)], (30, 30));
        let (facts, book) = (sample.facts(), sample.book());
        let (found, boxes) = check_with_keep_clears(&facts, &book);
        assert_eq!(found, check(&facts, &book));
        let rings: Vec<_> = boxes.into_iter().map(|k| k.ring).collect();
        let alone: Vec<_> = keep_clears(&facts, &book).into_iter().map(|k| k.ring).collect();
        assert_eq!(rings, alone);
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]
        /// A plan turned by quarters gets the same findings.
        #[test]
        fn turning_the_plan_changes_no_finding(
            kinds in prop::collection::vec(
                (prop::sample::select(ServiceKind::ALL.to_vec()), 0i32..180, 0i32..60), 1..6,
            ),
            wall in (20i32..80, 20i32..80),
        ) {
            let found = |facing| {
                let sample = crowded(facing, &kinds, wall);
                let found = check(&sample.facts(), &sample.book());
                found.iter().map(|f| key(f)).collect::<Vec<_>>()
            };
            let upright = found(Facing::NORTH);
            for facing in [Facing::EAST, Facing::SOUTH, Facing::WEST] {
                prop_assert_eq!(&found(facing), &upright);
            }
        }
    }
}
