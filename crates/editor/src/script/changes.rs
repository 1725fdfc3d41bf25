//! What changed between two moments of a session, in words.

use std::sync::Arc;

use measure::System;
use plan::{Element, Plan};
use rules::{Finding, Severity};

use crate::{Checked, Session};

/// A moment of a session.
pub(super) struct Moment {
    committed: Arc<Plan>,
    shown: Arc<Plan>,
    checked: Checked,
    refused: Option<String>,
}

impl Moment {
    pub fn of(session: &mut Session) -> Moment {
        Moment {
            committed: Arc::clone(session.plan()),
            shown: Arc::clone(session.shown()),
            checked: session.checked(),
            refused: session.status().refused.clone(),
        }
    }
}

/// What changed between two moments, one line each; `made` says that a new step may have been made.
pub(super) fn between(
    before: &Moment,
    after: &Moment,
    session: &Session,
    made: bool,
) -> Vec<String> {
    let mut said = Vec::new();
    if !Arc::ptr_eq(&before.committed, &after.committed) {
        if made {
            said.extend(session.can_undo().map(|label| format!("step: {label}")));
        }
        elements(&before.committed, &after.committed, &mut said);
    } else if !Arc::ptr_eq(&after.shown, &before.shown)
        && !Arc::ptr_eq(&after.shown, &after.committed)
    {
        let n = differing(&after.committed, &after.shown);
        said.push(format!("showing a change of {n} element{}", if n == 1 { "" } else { "s" }));
    }
    findings(before, after, session.system(), &mut said);
    if let Some(why) = &after.refused {
        said.push(format!("refused: {why}"));
    }
    said
}

fn elements(before: &Plan, after: &Plan, said: &mut Vec<String>) {
    let line = |sign: &str, e: &Element| format!("{sign} {} {}", e.name(), e.body.word());
    for e in after.elements().iter() {
        match before.get(e.id) {
            None => said.push(line("added", e)),
            Some(old) if old != e => said.push(line("changed", e)),
            Some(_) => {}
        }
    }
    let gone = before.elements().iter().filter(|e| after.get(e.id).is_none());
    said.extend(gone.map(|e| line("deleted", e)));
    if before.site != after.site {
        said.push("changed the site facts".to_owned());
    }
    if before.set_aside() != after.set_aside() {
        said.push("changed what is set aside".to_owned());
    }
}

fn differing(before: &Plan, after: &Plan) -> usize {
    let changed = after.elements().iter().filter(|e| before.get(e.id) != Some(e)).count();
    changed + before.elements().iter().filter(|e| after.get(e.id).is_none()).count()
}

fn findings(before: &Moment, after: &Moment, system: System, said: &mut Vec<String>) {
    let same = |a: &Finding, b: &Finding| {
        a.rule == b.rule && a.severity == b.severity && a.elements == b.elements
    };
    let (old, new) = (&before.checked.findings, &after.checked.findings);
    for finding in new.iter().filter(|f| !old.iter().any(|o| same(o, f))) {
        said.push(format!("finding: {}", words(finding, &after.shown, system)));
    }
    for finding in old.iter().filter(|f| !new.iter().any(|n| same(n, f))) {
        said.push(format!("gone: {}", words(finding, &before.shown, system)));
    }
}

/// A finding in one line.
pub(super) fn words(finding: &Finding, plan: &Plan, system: System) -> String {
    let names: Vec<String> =
        finding.elements.iter().filter_map(|id| plan.get(*id)).map(Element::name).collect();
    let severity = severity(finding.severity);
    let aside = if finding.set_aside.is_some() { " (set aside)" } else { "" };
    format!(
        "{severity} {} on {}: {}{aside}",
        finding.rule,
        if names.is_empty() { "the plan".to_owned() } else { names.join(" ") },
        finding.title.say(system)
    )
}

pub(super) fn severity(severity: Severity) -> &'static str {
    match severity {
        Severity::Correction => "correction",
        Severity::Verify => "verify",
        Severity::Advice => "advice",
    }
}
