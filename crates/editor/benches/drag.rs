//! A partition that is dragged in basements of 50 to 20,000 elements with 64 service points: its grab, every step
//! (edit, derive, check), and opening the plan's file up to its first whole verdict. Before anything is timed, what
//! the session shows is compared with the same plan checked from scratch.

#[path = "../../rules/benches/basement/mod.rs"]
mod basement;
#[path = "../../rules/benches/basement/report.rs"]
mod report;

use std::hint::black_box;
use std::io::Write;
use std::sync::Arc;
use std::time::Duration;

use basement::SIZES;
use editor::{EditorKey, Gesture, Mods, Session};
use geometry::Pt;
use measure::Len;
use report::{clock, percentile, time};
use rules::Book;

/// Steps of a drag, as many as fit in some time.
const STEPS: usize = 400;
const AT_MOST: Duration = Duration::from_secs(12);
const GRABS: usize = 10;
const OPENINGS: usize = 5;
/// The first steps warm the caches.
const WARM: usize = 3;

fn main() -> std::io::Result<()> {
    let mut out = std::io::stdout().lock();
    let runs: Vec<Run> = SIZES.into_iter().map(Run::of).collect();
    let times = |percent: usize, part: fn(&Run) -> &Vec<Duration>| -> Vec<Duration> {
        runs.iter().map(|r| percentile(part(r), percent)).collect()
    };
    let mut table = |name: &str, percent: usize, part: fn(&Run) -> &Vec<Duration>| {
        report::line(&mut out, &format!("{name}, p{percent}"), &times(percent, part))
    };
    for percent in [50, 99] {
        table("frame: edit", percent, |r| &r.edit)?;
        table("frame: derive", percent, |r| &r.derive)?;
        table("frame: check", percent, |r| &r.check)?;
        table("frame", percent, |r| &r.total)?;
    }
    table("grab", 50, |r| &r.grab)?;
    table("grab", 99, |r| &r.grab)?;
    table("from scratch: derive", 50, |r| &r.derive_anew)?;
    table("from scratch: check", 50, |r| &r.check_anew)?;
    table("open: read the file", 50, |r| &r.read)?;
    table("open: to the first verdict", 50, |r| &r.open)?;
    report::heads(&mut out, "ms, elements:")?;
    writeln!(out, "\nbeside what is asked for (! is missed):")?;
    let frame = times(99, |r| &r.total);
    report::line(&mut out, "frame, p99", &frame)?;
    goal(&mut out, &frame, [0.25, 0.5, 1.0, 2.0].map(Some), 0.1)?;
    let grab = times(99, |r| &r.grab);
    report::line(&mut out, "grab, p99", &grab)?;
    goal(&mut out, &grab, [1.0, 2.0, 5.0, 8.0].map(Some), 1.15)?;
    let open = times(50, |r| &r.open);
    report::line(&mut out, "open: to the first verdict, p50", &open)?;
    goal(&mut out, &open, [None, None, None, Some(150.0)], 1.15)
}

/// One line: what is asked for at each size in ms, if anything is, and for the slope; what is missed is marked.
fn goal(
    out: &mut impl Write,
    times: &[Duration],
    goals: [Option<f64>; SIZES.len()],
    steepest: f64,
) -> std::io::Result<()> {
    write!(out, "{:<34}", "  asked for")?;
    for (time, goal) in times.iter().zip(goals) {
        match goal {
            Some(goal) if report::ms(*time) > goal => write!(out, " {:>9}", format!("! {goal}"))?,
            Some(goal) => write!(out, " {goal:>9}")?,
            None => write!(out, " {:>9}", "")?,
        }
    }
    let missed = if report::slope(times) > steepest { "!" } else { " " };
    writeln!(out, "        {missed}{steepest:>5.2}")
}

/// The times of one size.
#[derive(Default)]
struct Run {
    edit: Vec<Duration>,
    derive: Vec<Duration>,
    check: Vec<Duration>,
    total: Vec<Duration>,
    grab: Vec<Duration>,
    derive_anew: Vec<Duration>,
    check_anew: Vec<Duration>,
    read: Vec<Duration>,
    open: Vec<Duration>,
}

impl Run {
    fn of(n: usize) -> Run {
        let (plan, grab) = basement::of(n);
        let text = plan::file::write(&plan);
        let mut run = Run::default();
        for _ in 0..OPENINGS {
            run.read.push(time(|| plan::file::read(&text)));
            run.open.push(time(|| {
                Session::new(plan::file::read(&text).expect("the plan's own file")).checked()
            }));
        }
        let mut session = Session::new(plan);
        session.set_clock(clock);
        session.checked();
        for _ in 0..GRABS {
            session.feed(&Gesture::Key { key: EditorKey::Escape, mods: Mods::default() });
            session.checked();
            run.grab.push(time(|| {
                press(&mut session, grab);
                step(&mut session, grab, 0);
            }));
        }
        let start = clock();
        for i in 0..STEPS + WARM {
            if clock().saturating_sub(start) > AT_MOST && run.total.len() > 5 {
                break;
            }
            step(&mut session, grab, i);
            if i < WARM {
                compare(&mut session);
                continue;
            }
            let work = session.work();
            run.edit.push(work.edit);
            run.derive.push(work.derive);
            run.check.push(work.check);
            run.total.push(work.total());
        }
        compare(&mut session);
        let book = Book::of(&session.shown().site);
        for _ in 0..OPENINGS {
            run.derive_anew.push(time(|| space::derive(session.shown())));
            let facts = space::derive(session.shown());
            run.check_anew.push(time(|| rules::check_with_keep_clears(&facts, &book)));
        }
        run
    }
}

fn press(session: &mut Session, at: Pt) {
    session.feed(&Gesture::Press { at, reach: Len::inches(2), mods: Mods::default() });
}

/// One step of the drag: 3 in to 12 in away, round and round.
fn step(session: &mut Session, grab: Pt, i: usize) {
    let by = Len::inches(3 + i32::try_from(i % 10).unwrap_or(0));
    let at = Pt::at(Len::from_units(grab.x) + by, Len::from_units(grab.y));
    session.feed(&Gesture::Move { at, reach: Len::inches(2), mods: Mods::default() });
    black_box(session.checked());
}

/// What is shown is what the plan says when it is checked from scratch.
fn compare(session: &mut Session) {
    let shown = session.checked();
    assert!(!Arc::ptr_eq(session.plan(), session.shown()), "the step shows a change");
    let facts = space::derive(session.shown());
    let (findings, _) = rules::check_with_keep_clears(&facts, &Book::of(&session.shown().site));
    assert!(shown.findings[..] == findings[..], "what was kept is what is found anew");
}
