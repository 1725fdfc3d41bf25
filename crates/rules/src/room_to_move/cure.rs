//! The smallest move that cures a finding and breaks nothing else.

use measure::Len;
use plan::{Body, ElementId, Plan, State};

use super::{Course, FARTHEST, STEP, Scan};
use crate::rules::rooms::words::called;
use crate::{Book, Finding, Phrase, Remedy, Safety, Sheet};

/// The smallest move of one element that a finding is about, after which the finding is gone and nothing is wrong that
/// was not wrong before; rounded up to 1/16 in where that serves too. What stands already is not moved, apart from
/// furniture.
///
/// Every offset that is looked at is judged whole, so this is for a thread of its own.
pub fn smallest_move(finding: &Finding, facts: &space::Facts, book: &Book) -> Option<Remedy> {
    let plan = &*facts.plan;
    let mut best: Option<(Course, Len)> = None;
    let movable = finding.elements.iter().filter(|id| may_move(plan, **id));
    for course in movable.flat_map(|id| Course::of(plan, *id)) {
        let most = best.map_or(FARTHEST, |(_, by)| by.abs());
        if let Some(by) = nearest(plan, book, course, finding, most) {
            best = Some((course, by));
        }
    }
    let (course, by) = best?;
    let sheet = Sheet::new(facts, book);
    let label = Phrase::text(format!("Move {} by ", called(&sheet, course.element())))
        .inches(by.abs())
        .then(way(course, plan, by));
    Some(Remedy { label, edit: course.edit(plan, by).ok()?, safety: Safety::Ask })
}

fn may_move(plan: &Plan, id: ElementId) -> bool {
    plan.get(id).is_some_and(|e| match (&e.body, e.state) {
        (Body::Furnishing(f), _) => !f.fixed || e.state == State::New,
        (_, state) => state == State::New,
    })
}

/// The offset nearest to zero at which the finding is gone and nothing else has come; less than `most` away.
fn nearest(plan: &Plan, book: &Book, course: Course, finding: &Finding, most: Len) -> Option<Len> {
    let mut scan = Scan::new(plan, book, course);
    let keys = |scan: &mut Scan<'_>, by| {
        let faults = scan.faults_at(by)?;
        Some(faults.into_iter().map(|f| (f.rule, f.elements.clone())).collect::<Vec<_>>())
    };
    let before = keys(&mut scan, Len::ZERO)?;
    let cured = |scan: &mut Scan<'_>, by| {
        keys(scan, by).is_some_and(|after| {
            after.iter().all(|key| {
                before.contains(key) && !(key.0 == finding.rule && key.1 == finding.elements)
            })
        })
    };
    let (least, greatest) = course.reach(plan);
    let mut at = Len::ZERO;
    while at + STEP < most {
        let next = at + STEP;
        for sign in [-1, 1] {
            let by = next * sign;
            if by < least || by > greatest || !cured(&mut scan, by) {
                continue;
            }
            let (mut bad, mut good) = (at, next);
            while (good - bad).units() > 1 {
                let middle = bad + Len::from_units((good - bad).units() / 2);
                if cured(&mut scan, middle * sign) {
                    good = middle;
                } else {
                    bad = middle;
                }
            }
            let sixteenth = Len::sixty_fourths(4);
            let parts = (good.units() + sixteenth.units() - 1) / sixteenth.units();
            let round = sixteenth * parts;
            let served = round < most && cured(&mut scan, round * sign);
            return Some(if served { round } else { good } * sign);
        }
        at = next;
    }
    None
}

/// Which way a move goes, in words.
fn way(course: Course, plan: &Plan, by: Len) -> &'static str {
    let Some(facing) = course.facing(plan) else { return "" };
    let v = facing.step(if by < Len::ZERO { -Len::inches(1) } else { Len::inches(1) });
    match (v.x.abs() > v.y.abs(), v.x > 0, v.y > 0) {
        (true, true, _) => " to the right",
        (true, false, _) => " to the left",
        (false, _, true) => " up the sheet",
        (false, _, false) => " down the sheet",
    }
}
