//! Ways that are kept up from edit to edit against ways worked out anew, over random edits of the demo plans.

use std::sync::Arc;

use plan::{Edit, Plan};
use rules::room_to_move::Course;
use space::ways::{Keeper, ways};
use whole::random::Random;

/// A random element moved along its line, now and then taken away.
fn edited(plan: &Plan, base: &Plan, random: &mut Random) -> Option<Plan> {
    let element = base.elements().iter().nth(random.below(base.elements().len()))?;
    if random.below(12) == 0 {
        return plan.with(&Edit::Remove(vec![element.id])).ok();
    }
    let courses = Course::of(plan, element.id);
    let course = *courses.get(random.below(courses.len().max(1)))?;
    let by = measure::Len::from_units(random.below(200_000) as i32 - 100_000);
    plan.with(&course.edit(plan, by).ok()?).ok()
}

#[test]
fn kept_ways_are_those_worked_out_anew() {
    let mut random = Random(11);
    let mut edits = 0;
    for (name, base) in whole::demo::all() {
        let (mut plan, mut keeper) = (base.clone(), Keeper::default());
        let rounds = if base.elements().len() > 150 { 60 } else { 400 };
        for _ in 0..rounds {
            // From time to time back to the plan as it was, as when a gesture is dropped.
            if random.below(10) == 0 {
                plan = base.clone();
            }
            let Some(next) = edited(&plan, &base, &mut random) else { continue };
            plan = next;
            let facts = space::derive(&Arc::new(plan.clone()));
            let (kept, anew) = (keeper.ways(&facts), ways(&facts));
            assert_eq!((&kept.arrivals, &kept.ways), (&anew.arrivals, &anew.ways), "{name}");
            edits += 1;
        }
    }
    assert!(edits > 1_500, "{edits}");
}
