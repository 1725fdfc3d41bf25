//! Runs every rule.

use space::Facts;

use crate::{Book, Finding, RULES, Sheet};

/// All findings of a plan: corrections first, then by rule and element; set-aside ones carry their reason.
pub fn check(facts: &Facts, book: &Book) -> Vec<Finding> {
    let sheet = Sheet { facts, book };
    let mut findings = Vec::new();
    for rule in RULES {
        (rule.check)(&sheet, &mut findings);
    }
    for finding in &mut findings {
        finding.set_aside = facts
            .plan
            .set_aside()
            .iter()
            .find(|s| s.rule == finding.rule && s.elements == finding.elements)
            .map(|s| s.reason.clone());
    }
    findings
        .sort_by(|a, b| (a.severity, a.rule, &a.elements).cmp(&(b.severity, b.rule, &b.elements)));
    findings
}
