//! A partition that is dragged in basements of 50 to 20,000 elements with 64 service points: the facts from scratch and
//! their parts, from the step before, and what it costs to keep and to let go of them. Before anything is timed, the
//! facts of a step are compared with the same plan derived from scratch.

#[path = "../../rules/benches/basement/mod.rs"]
mod basement;
#[path = "../../rules/benches/basement/report.rs"]
mod report;

use std::collections::BTreeMap;
use std::hint::black_box;
use std::sync::Arc;
use std::time::Duration;

use basement::SIZES;
use geometry::Pt;
use measure::Len;
use plan::{Body, ElementId, Plan, ops};
use report::{clock, line, percentile, time};
use space::{Facts, derive, derive_from, derive_in_parts};

const STEPS: usize = 400;
/// The first steps warm the caches.
const WARM: usize = 3;
const SCRATCHES: usize = 15;
const COPIES: usize = 100;

fn main() -> std::io::Result<()> {
    let mut rows: BTreeMap<String, Vec<Duration>> = BTreeMap::new();
    for n in SIZES {
        let (plan, grab) = basement::of(n);
        let drag = Drag::new(plan, grab);
        drag.compare();
        for (name, times) in drag.scratch().into_iter().chain(drag.steps()) {
            for (at, percent) in [("p50", 50), ("p99", 99), ("max", 100)] {
                rows.entry(format!("{name}, {at}")).or_default().push(percentile(&times, percent));
            }
        }
    }
    let mut out = std::io::stdout().lock();
    report::heads(&mut out, "ms, elements:")?;
    rows.iter().try_for_each(|(name, times)| line(&mut out, name, times))
}

type Times = BTreeMap<String, Vec<Duration>>;

/// The partition between the first two rooms on its way.
struct Drag {
    plan: Arc<Plan>,
    partition: ElementId,
}

impl Drag {
    fn new(plan: Plan, grab: Pt) -> Drag {
        let grabbed = |body: &Body| match body {
            Body::Partition(p) => {
                p.a.x == grab.x && p.b.x == grab.x && p.a.y < grab.y && grab.y < p.b.y
            }
            _ => false,
        };
        let partition = plan.elements().iter().find(|e| grabbed(&e.body)).expect("a partition").id;
        Drag { plan: Arc::new(plan), partition }
    }

    /// A step of the drag: 3 in to 12 in to the right of where it stands, round and round.
    fn at(&self, i: usize) -> Arc<Plan> {
        let by = Len::inches(3 + i32::try_from(i % 10).unwrap_or(0));
        // The partition runs north: its left is the west.
        let edit = ops::move_wall(&self.plan, self.partition, -by).expect("it can be moved");
        Arc::new(self.plan.with(&edit).expect("a sound plan"))
    }

    fn compare(&self) {
        let mut facts = derive(&self.plan);
        for i in (0..12).chain([25, 18, 3]) {
            let plan = self.at(i);
            facts = derive_from(&facts, &plan);
            assert!(facts == derive(&plan), "step {i}");
        }
    }

    fn scratch(&self) -> Times {
        let mut times = Times::new();
        for _ in 0..SCRATCHES {
            let mut last = clock();
            derive_in_parts(&self.plan, &mut |part| {
                let now = clock();
                times.entry(format!("part {part}")).or_default().push(now.saturating_sub(last));
                last = now;
            });
            let mut facts = None;
            let whole = time(|| facts = Some(derive(&self.plan)));
            times.entry("= from scratch".to_owned()).or_default().push(whole);
            let facts = facts.expect("derived just now");
            let drop = time(move || drop(facts));
            times.entry("last copy let go".to_owned()).or_default().push(drop);
        }
        times
    }

    fn steps(&self) -> Times {
        let (mut step, mut copy, mut let_go) = (Vec::new(), Vec::new(), Vec::new());
        let mut facts = derive(&self.plan);
        for i in 0..STEPS + WARM {
            let plan = self.at(i);
            let mut next: Option<Facts> = None;
            let took = time(|| next = Some(derive_from(&facts, &plan)));
            let next = next.expect("derived just now");
            if i >= WARM {
                step.push(took);
            }
            if i % (STEPS / COPIES) == 0 {
                copy.push(time(|| drop(black_box(facts.clone()))));
            }
            let old = std::mem::replace(&mut facts, next);
            let_go.push(time(move || drop(old)));
        }
        let named = [("= step", step), ("copy and drop it", copy), ("step before let go", let_go)];
        named.into_iter().map(|(name, times)| (name.to_owned(), times)).collect()
    }
}
