//! Runs every rule.

use space::Facts;

use crate::{Book, Finding, KeepClear, RULES, Sheet, rules};

/// All findings of a plan and all keep-clear boxes, with what both need measured once.
pub fn check_with_keep_clears(facts: &Facts, book: &Book) -> (Vec<Finding>, Vec<KeepClear>) {
    let sheet = Sheet::new(facts, book);
    (judge(&sheet), rules::keep_clears(&sheet))
}

/// All findings of a plan: corrections first, then by rule and element; set-aside ones carry their reason.
pub fn check(facts: &Facts, book: &Book) -> Vec<Finding> {
    judge(&Sheet::new(facts, book))
}

fn judge(sheet: &Sheet<'_>) -> Vec<Finding> {
    let mut findings = Vec::new();
    for rule in RULES {
        (rule.check)(sheet, &mut findings);
    }
    for finding in &mut findings {
        finding.set_aside = sheet
            .plan()
            .set_aside()
            .iter()
            .find(|s| s.rule == finding.rule && s.elements == finding.elements)
            .map(|s| s.reason.clone());
    }
    findings
        .sort_by(|a, b| (a.severity, a.rule, &a.elements).cmp(&(b.severity, b.rule, &b.elements)));
    findings
}
