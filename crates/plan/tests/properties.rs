//! Properties of edits and history over arbitrary plans and arbitrary wishes.

use std::collections::BTreeSet;

use plan::sample::{Wish, any_plan, build, wishes};
use plan::{ElementId, History, Plan};
use proptest::prelude::*;

fn ids(plan: &Plan) -> BTreeSet<ElementId> {
    plan.elements().iter().map(|e| e.id).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(192))]

    /// An edit keeps the plan sound, or is refused and leaves it as it was.
    #[test]
    fn edits_keep_a_plan_sound(plan in any_plan(), wishes in wishes(1..6)) {
        prop_assert_eq!(plan.validate(), vec![]);
        let mut plan = plan;
        for wish in wishes {
            let before = plan.clone();
            match wish.edit(&plan).and_then(|edit| plan.with(&edit)) {
                Ok(next) => {
                    prop_assert_eq!(next.validate(), vec![], "{:?}", wish);
                    plan = next;
                }
                Err(e) => prop_assert!(e.to_string().ends_with('.'), "{}", e),
            }
            prop_assert!(plan.next_ids(1).next() >= before.next_ids(1).next());
        }
    }

    /// Undo gives back plan after plan, redo likewise, and no id is ever given twice.
    #[test]
    fn undo_and_redo_give_back_every_plan(
        first in wishes(0..10),
        then in proptest::collection::vec((any::<u8>(), wishes(1..2)), 1..40),
    ) {
        let start = build(&first);
        let mut shown = vec![start.clone()];
        let mut at = 0;
        let mut given = ids(&start);
        let mut history = History::new(start);
        for (choice, wish) in then {
            match choice % 4 {
                0 if history.undo().is_some() => at -= 1,
                1 if history.redo().is_some() => at += 1,
                _ => {
                    let before = history.now().clone();
                    let Ok(edit) = wish[0].edit(&before) else { continue };
                    if history.commit("step", &edit).is_err() || *history.now() == before {
                        continue;
                    }
                    let new: BTreeSet<_> = ids(history.now()).difference(&ids(&before)).copied().collect();
                    prop_assert!(new.is_disjoint(&given), "an id is given twice: {:?}", wish);
                    given.extend(new);
                    shown.truncate(at + 1);
                    shown.push(Plan::clone(history.now()));
                    at += 1;
                }
            }
            prop_assert!(history.now().says_the_same(&shown[at]));
            prop_assert_eq!(history.can_undo().is_some(), at > 0);
            prop_assert_eq!(history.can_redo().is_some(), at + 1 < shown.len());
        }
        while history.undo().is_some() {
            at -= 1;
            prop_assert!(history.now().says_the_same(&shown[at]));
        }
        prop_assert_eq!(at, 0);
        while history.redo().is_some() {
            at += 1;
            prop_assert!(history.now().says_the_same(&shown[at]));
        }
        prop_assert_eq!(at + 1, shown.len());
    }
}

/// The generator is worth something: it makes plans with openings, furring and service points.
#[test]
fn arbitrary_plans_hold_every_kind() {
    use proptest::strategy::ValueTree;
    let mut runner = proptest::test_runner::TestRunner::deterministic();
    let mut letters = BTreeSet::new();
    let mut largest = 0;
    for _ in 0..40 {
        let tree = any_plan().new_tree(&mut runner).expect("a plan");
        let plan = tree.current();
        letters.extend(plan.elements().iter().map(|e| e.body.letter()));
        largest = largest.max(plan.elements().len());
    }
    assert_eq!(letters.into_iter().collect::<String>(), "BCDFHLNRSTUWX");
    assert!(largest >= 15, "{largest}");
}

/// A wish that can't be made leaves the plan as it was.
#[test]
fn building_skips_what_is_refused() {
    let nothing = build(&[Wish::Remove(vec![]), Wish::SetAside(String::new(), vec![])]);
    assert_eq!(nothing, Plan::default());
}
