//! The permit set of the shown plan, made on a thread so that no frame waits; kept until the next one is there.

use std::sync::{Arc, PoisonError};

use editor::Checked;
use egui::Context;
use rules::Book;
use sheets::{Options, Set, Source};
use space::Facts;

use super::moving::Job;

/// The set as it was made last, and the one that is being made.
#[derive(Debug, Default)]
pub struct Sheeting {
    of: Option<(Arc<Facts>, Options)>,
    job: Option<Job<Option<Arc<Set>>>>,
    made: Option<Arc<Set>>,
}

impl Sheeting {
    /// Sees to it that the set of these facts is there or is being made.
    pub fn tend(&mut self, ctx: &Context, checked: &Checked, wanted: &Options) {
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
    pub fn fresh(checked: &Checked, wanted: &Options) -> Arc<Set> {
        Arc::new(make(checked, wanted))
    }
}

fn make(checked: &Checked, options: &Options) -> Set {
    let book = Book::of(&checked.facts.plan.site);
    let source = Source { facts: &checked.facts, findings: &checked.findings, book: &book };
    sheets::set(&source, options)
}
