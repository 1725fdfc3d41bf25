//! The permit set of the shown plan, made on a thread so that no frame waits; kept until the next one is there.

use std::sync::{Arc, PoisonError};

use editor::Checked;
use egui::Context;
use measure::System;
use rules::Book;
use sheets::{Options, Paper, Set, Source};
use space::Facts;

use super::moving::Job;

/// What the set is made for.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Wanted {
    pub paper: Paper,
    /// Code of the department whose list is checked; empty for the general list.
    pub list: String,
    pub system: System,
}

/// The set as it was made last, and the one that is being made.
#[derive(Debug, Default)]
pub struct Sheeting {
    of: Option<(Arc<Facts>, Wanted)>,
    job: Option<Job<Option<Arc<Set>>>>,
    made: Option<Arc<Set>>,
}

impl Sheeting {
    /// Sees to it that the set of these facts is there or is being made.
    pub fn tend(&mut self, ctx: &Context, checked: &Checked, wanted: &Wanted) {
        if let Some(set) = self.job.as_ref().and_then(|job| job.read(Option::clone)) {
            self.made = Some(set);
            self.job = None;
        }
        let same = self.of.as_ref().is_some_and(|(facts, made_for)| {
            Arc::ptr_eq(facts, &checked.facts) && made_for == wanted
        });
        // One is finished before the next begins, so that something is shown also while a wall moves.
        if same || self.job.is_some() {
            return;
        }
        self.of = Some((Arc::clone(&checked.facts), wanted.clone()));
        let (ctx, checked, wanted) = (ctx.clone(), checked.clone(), wanted.clone());
        self.job = Some(Job::start(move |_, result| {
            let set = make(&checked, &wanted);
            *result.lock().unwrap_or_else(PoisonError::into_inner) = Some(Arc::new(set));
            ctx.request_repaint();
        }));
    }

    pub fn set(&self) -> Option<Arc<Set>> {
        self.made.clone()
    }

    /// The set of the plan as it is now, made at once: what is written must not be what was.
    pub fn fresh(checked: &Checked, wanted: &Wanted) -> Arc<Set> {
        Arc::new(make(checked, wanted))
    }
}

fn make(checked: &Checked, wanted: &Wanted) -> Set {
    let facts = &checked.facts;
    let book = Book::of(&facts.plan.site);
    let source = Source { facts, findings: &checked.findings, book: &book };
    let list = (!wanted.list.is_empty()).then(|| wanted.list.clone());
    sheets::set(&source, &Options { paper: wanted.paper, system: wanted.system, list })
}
