//! The basement as it is, with what will be removed.

use depict::Show;
use plan::State;

use super::plans::{self, PlanSheet};
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
    let plan = context.source.plan();
    if !plan.elements().iter().any(|e| e.state != State::New) {
        return Made::Nothing("everything in the plan is new".to_owned());
    }
    let facts = plan_view::without(plan, |e| e.state == State::New);
    let wanted = Wanted {
        facts: &facts,
        named: &[],
        show: Show { furnishings: false, notes: false, ..Show::default() },
        keep_clears: &[],
        strings: true,
        caption: "Existing basement, and what is removed",
        system: context.system,
    };
    let sheet = PlanSheet {
        plan: wanted,
        legend: legend::of(&facts),
        remarks: vec![
            "Foundation: to outer faces. Openings: to jambs. Partitions: to centre lines."
                .to_owned(),
        ],
    };
    plans::draw(context, &sheet)
}
