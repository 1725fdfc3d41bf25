//! The basement as it will be: the whole of it.

use depict::Show;
use plan::element::ServiceKind;
use plan::{Body, Element, State};

use super::plans;
use super::tables::escape;
use super::{Context, Kind, Made, existing};
use crate::legend;
use crate::plan_view::{self, Wanted};
use crate::wall_types::{self, WallType};

pub(crate) const KIND: Kind = Kind {
    slug: "proposed-plan",
    title: "Proposed basement plan",
    discipline: "A",
    first: 101,
    make,
};

/// Outlets, lights and switches have a plan of their own; alarms stand on both.
fn elsewhere(e: &Element) -> bool {
    let Body::Service(s) = &e.body else { return false };
    matches!(
        s.kind,
        ServiceKind::Receptacle
            | ServiceKind::Switch
            | ServiceKind::Light
            | ServiceKind::JunctionBox
    )
}

fn make(context: &Context<'_>) -> Made {
    let plan = context.source.plan();
    if plan.elements().iter().next().is_none() {
        return Made::Nothing("nothing is drawn yet".to_owned());
    }
    let facts = plan_view::without(plan, |e| e.state == State::Removed || elsewhere(e));
    let types = wall_types::of(&facts);
    let mut named = WallType::names(&types);
    let openings = facts.plan.elements().iter().filter(|e| matches!(e.body, Body::Opening(_)));
    named.extend(openings.map(|e| {
        (e.id, if escape(context, e) == "yes" { format!("{} escape", e.name()) } else { e.name() })
    }));
    let mut legend = legend::of(&facts);
    if !plan_view::untouched(&facts).is_empty() {
        let text = "stays as it is: unfinished, or finished before";
        legend.push((legend::Sample::Untouched, text.to_owned()));
    }
    let word = |t: &WallType| format!("{}: {}", t.name, t.build_up(context.system));
    legend.extend(types.iter().map(|t| (legend::Sample::None, word(t))));
    let wanted = Wanted {
        facts: &facts,
        named: &named,
        show: Show::default(),
        untouched: true,
        keep_clears: &[],
        strings: true,
        caption: "Proposed basement",
        system: context.system,
    };
    let remarks = [
        "Foundation: to outer faces. Openings: to jambs. Partitions: to centre lines. Rooms: clear between finished faces.".to_owned(),
        "D and N: doors and windows of the tables.".to_owned(),
    ];
    // Where both are asked for on one sheet, what is there already comes first.
    let before = if context.join.plans { existing::facts(context) } else { None };
    let Some(before) = before else {
        return plans::draw(context, &[&wanted], &legend, &remarks);
    };
    for entry in legend::of(&before) {
        if !legend.contains(&entry) {
            legend.push(entry);
        }
    }
    let existing = existing::wanted(context, &before);
    plans::draw(context, &[&existing, &wanted], &legend, &remarks)
}
