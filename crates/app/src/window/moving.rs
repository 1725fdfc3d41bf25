//! Room to move of the selected element, and smallest moves, looked for on a thread so that no frame waits.

use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};

use egui::Context;
use plan::{ElementId, Plan};
use rules::room_to_move::{Course, RoomToMove, Scan, smallest_move};
use rules::{Book, Finding, Remedy};
use space::Facts;

use super::view::FindingKey;

/// How often what is known so far is shown.
const SHOW: Duration = Duration::from_millis(60);

/// What is known so far, and whether that is all.
#[derive(Clone, Debug, Default)]
pub struct Known {
    pub found: Arc<Vec<RoomToMove>>,
    pub done: bool,
}

/// A job on a thread of its own; it ends early when this is dropped.
#[derive(Debug)]
pub(super) struct Job<T> {
    stop: Arc<AtomicBool>,
    result: Arc<Mutex<T>>,
}

impl<T: Default + Send + 'static> Job<T> {
    pub fn start(run: impl FnOnce(&AtomicBool, &Mutex<T>) + Send + 'static) -> Job<T> {
        let job = Job { stop: Arc::default(), result: Arc::default() };
        let (stop, result) = (Arc::clone(&job.stop), Arc::clone(&job.result));
        std::thread::spawn(move || run(&stop, &result));
        job
    }

    pub fn read<R>(&self, read: impl FnOnce(&T) -> R) -> R {
        read(&self.result.lock().unwrap_or_else(PoisonError::into_inner))
    }
}

impl<T> Drop for Job<T> {
    fn drop(&mut self) {
        self.stop.store(true, Ordering::Relaxed);
    }
}

/// The element that is looked at, in one state of the plan.
#[derive(Debug, Default)]
pub struct Moving {
    of: Option<(Arc<Plan>, ElementId)>,
    job: Option<Job<Known>>,
}

impl Moving {
    /// Looks at the selected element of a plan; at nothing where none is.
    pub fn tend(&mut self, ctx: &Context, plan: &Arc<Plan>, selected: Option<ElementId>) {
        let same = match (&self.of, selected) {
            (Some((held, id)), Some(wanted)) => Arc::ptr_eq(held, plan) && *id == wanted,
            (None, None) => true,
            _ => false,
        };
        if same {
            return;
        }
        self.of = selected.map(|id| (Arc::clone(plan), id));
        let courses = selected.map_or_else(Vec::new, |id| Course::of(plan, id));
        self.job = (!courses.is_empty()).then(|| {
            let (ctx, plan) = (ctx.clone(), Arc::clone(plan));
            Job::start(move |stop, result| look(&ctx, &plan, &courses, stop, result))
        });
    }

    pub fn known(&self) -> Known {
        self.job.as_ref().map(|job| job.read(Known::clone)).unwrap_or_default()
    }
}

/// Looks at all courses in turn, so that the near ends of each are known first.
fn look(ctx: &Context, plan: &Plan, courses: &[Course], stop: &AtomicBool, result: &Mutex<Known>) {
    let book = Book::of(&plan.site);
    let mut scans: Vec<Scan<'_>> =
        courses.iter().map(|course| Scan::new(plan, &book, *course)).collect();
    let show = |scans: &[Scan<'_>], done| {
        let found = Arc::new(scans.iter().map(Scan::result).collect());
        *result.lock().unwrap_or_else(PoisonError::into_inner) = Known { found, done };
        ctx.request_repaint();
    };
    let mut shown = Instant::now();
    loop {
        let mut more = false;
        for scan in &mut scans {
            if stop.load(Ordering::Relaxed) {
                return;
            }
            more |= scan.step();
        }
        if !more {
            show(&scans, true);
            return;
        }
        if shown.elapsed() > SHOW {
            show(&scans, false);
            shown = Instant::now();
        }
    }
}

/// The smallest move that cures the picked finding.
#[derive(Debug, Default)]
pub struct Smallest {
    of: Option<(Arc<Facts>, FindingKey)>,
    job: Option<Job<Option<Remedy>>>,
}

impl Smallest {
    /// Looks for it; gives it from when it is found.
    pub fn tend(
        &mut self,
        ctx: &Context,
        facts: &Arc<Facts>,
        picked: Option<&Finding>,
    ) -> Option<(FindingKey, Remedy)> {
        let same = match (&self.of, picked) {
            (Some((held, key)), Some(finding)) => Arc::ptr_eq(held, facts) && key.is(finding),
            (None, None) => true,
            _ => false,
        };
        if !same {
            self.of = picked.map(|finding| (Arc::clone(facts), FindingKey::of(finding)));
            self.job = picked.cloned().map(|finding| {
                let (ctx, facts) = (ctx.clone(), Arc::clone(facts));
                Job::start(move |_, result| {
                    let book = Book::of(&facts.plan.site);
                    let found = smallest_move(&finding, &facts, &book);
                    *result.lock().unwrap_or_else(PoisonError::into_inner) = found;
                    ctx.request_repaint();
                })
            });
        }
        let remedy = self.job.as_ref()?.read(Option::clone)?;
        self.of.as_ref().map(|(_, key)| (key.clone(), remedy))
    }
}
