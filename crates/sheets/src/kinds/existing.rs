//! The basement as it is, with what will be removed.

use std::sync::Arc;

use depict::Show;
use plan::State;
use space::Facts;

use super::plans;
use super::{Context, Kind, Made};
use crate::legend;
use crate::plan_view::{self, Wanted};

pub(crate) const KIND: Kind = Kind {
    slug: "existing-plan",
    title: "Existing basement plan",
    discipline: "A",
    first: 100,
    make,
};

fn make(context: &Context<'_>) -> Made {
    if context.join.plans && has_any(context) {
        return Made::NotAsked;
    }
    let Some(facts) = facts(context) else {
        return Made::Nothing("everything in the plan is new".to_owned());
    };
    let remarks =
        ["Foundation: to outer faces. Openings: to jambs. Partitions: to centre lines.".to_owned()];
    plans::draw(context, &[&wanted(context, &facts)], &legend::of(&facts), &remarks)
}

fn has_any(context: &Context<'_>) -> bool {
    context.source.plan().elements().iter().any(|e| e.state != State::New)
}

/// What is there already; nothing where everything is new.
pub(super) fn facts(context: &Context<'_>) -> Option<Arc<Facts>> {
    let plan = context.source.plan();
    has_any(context).then(|| plan_view::without(plan, |e| e.state == State::New))
}

pub(super) fn wanted<'a>(context: &Context<'_>, facts: &'a Facts) -> Wanted<'a> {
    Wanted {
        facts,
        named: &[],
        show: Show { furnishings: false, notes: false, ..Show::default() },
        untouched: false,
        keep_clears: &[],
        strings: true,
        caption: "Existing basement, and what is removed",
        system: context.system,
    }
}
