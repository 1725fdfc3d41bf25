//! One step of a drag, and the plan's file, in basements of 50 to 20,000 elements with 64 service points. Before
//! anything is timed, each answer is compared with the same plan made another way.

#[path = "../../rules/benches/basement/mod.rs"]
mod basement;
#[path = "../../rules/benches/basement/report.rs"]
mod report;

use std::time::Duration;

use basement::SIZES;
use geometry::Pt;
use measure::Len;
use plan::element::{Body, End, Opening};
use plan::{Draft, Edit, EditError, Element, Plan, file, ops};
use report::{clock, percentile, time};

/// Steps of a drag.
const STEPS: usize = 2_000;
/// Elements that a step changes together.
const TOGETHER: usize = 10;
/// Readings and writings of a file: as many as fit in some time, but not too few.
const AT_MOST: Duration = Duration::from_secs(2);
const AT_LEAST: usize = 5;

fn main() -> std::io::Result<()> {
    let mut out = std::io::stdout().lock();
    let runs: Vec<Run> = SIZES.into_iter().map(Run::of).collect();
    let mut table = |name: &str, part: fn(&Run) -> &Vec<Duration>| {
        [50, 99].into_iter().try_for_each(|percent| {
            let times: Vec<Duration> = runs.iter().map(|r| percentile(part(r), percent)).collect();
            report::line(&mut out, &format!("{name}, p{percent}"), &times)
        })
    };
    table("with: one partition", |r| &r.one)?;
    table("with: ten elements", |r| &r.ten)?;
    table("with: an opening to another wall", |r| &r.opening)?;
    table("operation: move a wall", |r| &r.wall)?;
    table("operation: move an end", |r| &r.end)?;
    table("read the file", |r| &r.read)?;
    table("write the file", |r| &r.write)?;
    report::heads(&mut out, "ms, elements:")
}

/// The times of one size.
struct Run {
    one: Vec<Duration>,
    ten: Vec<Duration>,
    opening: Vec<Duration>,
    wall: Vec<Duration>,
    end: Vec<Duration>,
    read: Vec<Duration>,
    write: Vec<Duration>,
}

impl Run {
    fn of(n: usize) -> Run {
        let (plan, _) = basement::of(n);
        let text = file::write(&plan);
        assert_eq!(file::read(&text).as_ref(), Ok(&plan));
        let wall = plan.elements().iter().find(|e| matches!(e.body, Body::Partition(_)));
        let wall = wall.expect("a partition");
        Run {
            one: steps(&plan, |by| dragged(&plan, 1, by)),
            ten: steps(&plan, |by| Edit::Batch(vec![dragged(&plan, TOGETHER, by)])),
            opening: steps(&plan, |by| to_another_wall(&plan, by)),
            wall: operations(|by| ops::move_wall(&plan, wall.id, by)),
            end: operations(|by| ops::move_end(&plan, wall.id, End::Start, Pt::at(by, by))),
            read: often(|| file::read(&text)),
            write: often(|| file::write(&plan)),
        }
    }
}

/// The times of steps of a drag, each from the plan as it was at the grab. A step's plan is held until the next is
/// there, as the editor holds it.
fn steps(plan: &Plan, edit: impl Fn(Len) -> Edit) -> Vec<Duration> {
    let edits: Vec<Edit> = (3..13).map(|inches| edit(Len::inches(inches))).collect();
    for edit in &edits {
        let next = plan.with(edit).expect("a step");
        assert!(next != *plan && next.says_the_same(&anew(plan, edit)));
    }
    let mut shown = plan.clone();
    let step = |i: usize| time(|| shown = plan.with(&edits[i % edits.len()]).expect("a step"));
    (0..STEPS).map(step).collect()
}

/// The times of working out the edits of a drag.
fn operations(operation: impl Fn(Len) -> Result<Edit, EditError>) -> Vec<Duration> {
    let by = |i: usize| Len::inches(3 + i as i32 % 10);
    assert!((0..10).all(|i| operation(by(i)).is_ok()));
    (0..STEPS).map(|i| time(|| operation(by(i)))).collect()
}

/// The plan after an edit, made from the first element on.
fn anew(plan: &Plan, edit: &Edit) -> Plan {
    let mut elements: Vec<Element> = plan.elements().iter().cloned().collect();
    let mut changes = vec![edit];
    while let Some(change) = changes.pop() {
        match change {
            Edit::Batch(edits) => changes.extend(edits),
            Edit::Replace(e) => elements[e.id.0 as usize - 1] = e.clone(),
            other => panic!("no step of a drag: {other:?}"),
        }
    }
    let draft = |e: Element| Edit::Add(Draft { state: e.state, body: e.body, details: e.details });
    let all = Edit::Batch(elements.into_iter().map(draft).collect());
    Plan::default().with(&all).expect("a sound plan")
}

/// The first walls and furnishings moved to the north, as one edit.
fn dragged(plan: &Plan, count: usize, by: Len) -> Edit {
    let moved = plan.elements().iter().filter_map(|e| {
        let mut e = e.clone();
        let points = match &mut e.body {
            Body::Partition(w) => vec![&mut w.a, &mut w.b],
            Body::Furnishing(f) => vec![&mut f.at],
            _ => return None,
        };
        points.into_iter().for_each(|p| p.y += by.units());
        Some(Edit::Replace(e))
    });
    let mut edits: Vec<Edit> = moved.take(count).collect();
    if count == 1 { edits.remove(0) } else { Edit::Batch(edits) }
}

/// The first opening put into the wall of the second.
fn to_another_wall(plan: &Plan, by: Len) -> Edit {
    let mut openings = plan.elements().iter().filter_map(|e| match &e.body {
        Body::Opening(o) => Some((e, o)),
        _ => None,
    });
    let (Some((e, first)), Some((_, second))) = (openings.next(), openings.next()) else {
        panic!("no two openings")
    };
    let at = second.at + second.width() + by;
    let body = Body::Opening(Opening { host: second.host, at, ..first.clone() });
    Edit::Replace(Element { body, ..e.clone() })
}

fn often<T>(work: impl Fn() -> T) -> Vec<Duration> {
    let start = clock();
    let mut times = Vec::new();
    while times.len() < AT_LEAST || clock().saturating_sub(start) < AT_MOST {
        times.push(time(&work));
    }
    times
}
