//! Facts and findings that are kept up from edit to edit against those worked out anew, over random edits of the demo
//! plans. `KEPT_TIMES=100` makes a hundred times as many edits.

use std::sync::Arc;

use measure::Len;
use plan::{Body, Edit, Element, Plan};
use rules::room_to_move::Course;
use rules::{Book, Finding, Kept};
use whole::random::Random;

/// A random element moved along its line; now and then one that is taken away, torn out, or made larger or smaller.
fn edited(plan: &Plan, base: &Plan, random: &mut Random) -> Option<Plan> {
    let element = base.elements().iter().nth(random.below(base.elements().len()))?;
    match random.below(24) {
        0 => return plan.with(&Edit::Remove(vec![element.id])).ok(),
        1 => {
            let mut element = plan.get(element.id)?.clone();
            element.state = plan::State::Removed;
            return plan.with(&Edit::Replace(element)).ok();
        }
        2 | 3 => return resized(plan, plan.get(element.id)?.clone(), random),
        _ => {}
    }
    if let Some(Body::RoomTag(tag)) = plan.get(element.id).map(|e| &e.body) {
        let mut tag = tag.clone();
        tag.at.x += random.below(40_000) as i32 - 20_000;
        let element = plan::Element { body: Body::RoomTag(tag), ..element.clone() };
        return plan.with(&Edit::Replace(element)).ok();
    }
    let courses = Course::of(plan, element.id);
    let course = *courses.get(random.below(courses.len().max(1)))?;
    // Most steps are small, as those of a drag are.
    let reach = [3_000, 20_000, 100_000][random.below(3)];
    let by = Len::from_units(random.below(2 * reach) as i32 - reach as i32);
    plan.with(&course.edit(plan, by).ok()?).ok()
}

/// An element of another size, or at another height.
fn resized(plan: &Plan, mut element: Element, random: &mut Random) -> Option<Plan> {
    let by = Len::from_units(random.below(60_000) as i32 - 30_000);
    let which = random.below(3);
    let one = |lens: [&mut Len; 3]| {
        for (i, len) in lens.into_iter().enumerate().filter(|(i, _)| *i == which) {
            *len += by * if i == 2 { 2 } else { 1 };
        }
    };
    match &mut element.body {
        Body::Service(s) => one([&mut s.width, &mut s.depth, &mut s.bottom]),
        Body::Furnishing(f) => one([&mut f.width, &mut f.depth, &mut f.height]),
        Body::Stair(s) => one([&mut s.width, &mut s.run, &mut s.headroom]),
        Body::Overhead(o) => o.underside += by,
        Body::Shell(wall) => wall.height += by,
        _ => return None,
    }
    plan.with(&Edit::Replace(element)).ok()
}

#[test]
fn kept_facts_and_findings_are_those_worked_out_anew() {
    let mut random = Random(23);
    // Steps are edits of which the facts were made from those before.
    let (mut edits, mut stepped) = (0, 0);
    let times = std::env::var_os("KEPT_TIMES");
    let times = times.and_then(|n| n.to_str()?.parse().ok()).unwrap_or(1);
    for (name, base) in whole::demo::all() {
        let mut plan = base.clone();
        let mut facts = space::derive(&Arc::new(plan.clone()));
        let mut kept = Kept::default();
        let rounds = if base.elements().len() > 150 { 40 } else { 160 };
        for _ in 0..rounds * times {
            // From time to time back to the plan as it was, as when a gesture is dropped.
            if random.below(10) == 0 {
                plan = base.clone();
            }
            let Some(next) = edited(&plan, &base, &mut random) else { continue };
            plan = next;
            let shared = Arc::new(plan.clone());
            let anew = space::derive(&shared);
            let next = space::derive_from(&facts, &shared);
            stepped += usize::from(next.solids.shares(&facts.solids));
            facts = next;
            assert!(facts == anew, "{name}: the facts differ");
            let book = Book::of(&plan.site);
            let expected = rules::check_with_keep_clears(&anew, &book);
            let found = kept.check(&Arc::new(facts.clone()));
            let only = |a: &[Arc<Finding>], b: &[Arc<Finding>]| -> Vec<_> {
                a.iter().filter(|f| !b.contains(f)).cloned().collect()
            };
            let (kept_only, anew_only) = (only(&found.0, &expected.0), only(&expected.0, &found.0));
            assert!(kept_only.is_empty(), "{name}: kept, but not found anew: {kept_only:#?}");
            assert!(anew_only.is_empty(), "{name}: found anew, but not kept: {anew_only:#?}");
            assert!(found.0[..] == expected.0[..], "{name}: the findings stand in another order");
            assert_eq!(found.1, expected.1, "{name}: the keep-clears differ");
            edits += 1;
        }
    }
    assert!(edits > 1_000 && stepped > 500, "{edits} edits, {stepped} steps");
}
