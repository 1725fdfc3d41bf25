//! One drag step (edit, derive, check) of a partition in basements of 50, 300 and 2,000 elements, beside a plain
//! derive of the same plan. Prints the 50th and 99th percentile first, then what divan measures.

mod basement;

use std::io::Write;
use std::sync::{Arc, OnceLock};
use std::time::{Duration, Instant};

use divan::{Bencher, black_box};
use editor::{Gesture, Mods, Session};
use geometry::Pt;
use measure::Len;

const SIZES: [usize; 3] = [50, 300, 2_000];
const STEPS: usize = 1_000;

/// Time since the first call.
#[expect(clippy::disallowed_methods, reason = "a bench measures time")]
fn clock() -> Duration {
    static START: OnceLock<Instant> = OnceLock::new();
    START.get_or_init(Instant::now).elapsed()
}

fn main() {
    percentiles().expect("standard output can be written to");
    divan::main();
}

/// A session in which a partition of the first room is being dragged, and where it was grabbed.
fn dragging(n: usize) -> (Session, Pt) {
    let (plan, grab) = basement::of(n);
    let mut session = Session::new(plan);
    session.set_clock(clock);
    session.feed(&Gesture::Press { at: grab, reach: Len::inches(2), mods: Mods::default() });
    (session, grab)
}

/// One step of the drag: 3 in to 12 in away, round and round.
fn step(session: &mut Session, grab: Pt, i: usize) {
    let by = Len::inches(3 + i32::try_from(i % 10).unwrap_or(0));
    let at = Pt::at(Len::from_units(grab.x) + by, Len::from_units(grab.y));
    session.feed(&Gesture::Move { at, reach: Len::inches(2), mods: Mods::default() });
    black_box(session.checked());
}

fn percentiles() -> std::io::Result<()> {
    let mut out = std::io::stdout().lock();
    writeln!(out, "one drag step, ms   (p50 / p99 of {STEPS})")?;
    writeln!(
        out,
        "elements         edit        derive         check         total   plain derive  ratio"
    )?;
    for n in SIZES {
        let (mut session, grab) = dragging(n);
        let mut parts: [Vec<Duration>; 4] = Default::default();
        for i in 0..STEPS + 20 {
            step(&mut session, grab, i);
            assert!(!Arc::ptr_eq(session.plan(), session.shown()), "the step shows a change");
            let work = session.work();
            let row = [work.edit, work.derive, work.check, work.total()];
            // The first steps warm the caches.
            if i >= 20 {
                parts.iter_mut().zip(row).for_each(|(part, time)| part.push(time));
            }
        }
        let mut plain: Vec<Duration> = Vec::new();
        for _ in 0..STEPS {
            let start = clock();
            black_box(space::derive(session.shown()));
            plain.push(clock().saturating_sub(start));
        }
        let total = median(&mut parts[3].clone());
        let ratio = total.as_secs_f64() / median(&mut plain.clone()).as_secs_f64();
        write!(out, "{:>8}", session.plan().elements().len())?;
        for part in parts.iter_mut().chain([&mut plain]) {
            write!(out, "  {:>5.3}/{:>5.3}", ms(median(part)), ms(at(part, 99)))?;
        }
        writeln!(out, "  {ratio:>5.2}")?;
    }
    Ok(())
}

fn at(times: &mut [Duration], percent: usize) -> Duration {
    times.sort_unstable();
    times[(times.len() - 1) * percent / 100]
}

fn median(times: &mut [Duration]) -> Duration {
    at(times, 50)
}

fn ms(time: Duration) -> f64 {
    time.as_secs_f64() * 1e3
}

#[divan::bench(args = SIZES)]
fn drag_step(bencher: Bencher, n: usize) {
    let (mut session, grab) = dragging(n);
    let mut i = 0;
    bencher.bench_local(|| {
        i += 1;
        step(&mut session, grab, i);
    });
}

#[divan::bench(args = SIZES)]
fn plain_derive(bencher: Bencher, n: usize) {
    let plan = Arc::new(basement::of(n).0);
    bencher.bench_local(|| space::derive(black_box(&plan)));
}
