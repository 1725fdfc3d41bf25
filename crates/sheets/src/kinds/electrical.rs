//! Electrical plan.

use std::collections::BTreeSet;

use depict::Show;
use measure::{Len, Precision};
use plan::element::ServiceKind;
use plan::{Body, Element, State};
use space::Facts;

use super::plans::{self, PlanSheet};
use super::{Context, Kind, Made};
use crate::{legend, plan_view};

pub(crate) const KIND: Kind =
    Kind { slug: "electrical-plan", title: "Electrical plan", discipline: "E", first: 101, make };

fn belongs(kind: ServiceKind) -> bool {
    matches!(
        kind,
        ServiceKind::Receptacle
            | ServiceKind::Switch
            | ServiceKind::Light
            | ServiceKind::SmokeAlarm
            | ServiceKind::CoAlarm
            | ServiceKind::Panel
            | ServiceKind::Disconnect
            | ServiceKind::JunctionBox
            | ServiceKind::ExhaustFan
    )
}

fn shown(e: &Element) -> bool {
    match &e.body {
        Body::Service(s) => belongs(s.kind),
        Body::Overhead(_) => false,
        Body::Furnishing(_) => false,
        Body::Note(_) => false,
        _ => true,
    }
}

fn make(context: &Context<'_>) -> Made {
    let plan = context.source.plan();
    let any = plan.elements().iter().any(|e| e.stands() && !structure(&e.body) && shown(e));
    if !any {
        return Made::Nothing("no receptacle, light, switch, alarm or panel is drawn".to_owned());
    }
    let facts = plan_view::without(plan, |e| e.state == State::Removed || !shown(e));
    let sheet = PlanSheet {
        facts: &facts,
        named: &[],
        show: Show::default(),
        strings: false,
        caption: "Receptacles, lights, switches, alarms and the panel",
        legend: legend::of(&facts),
        remarks: vec![
            "Smoke and carbon monoxide alarms: wired, with battery, sounding together, unless stated otherwise. ".to_owned() + &heights(context, &facts),
            "Circuits, sizes of wire and protection are the electrician's plan under the electrical permit.".to_owned(),
        ],
    };
    plans::draw(context, &sheet)
}

/// What is on every plan.
fn structure(body: &Body) -> bool {
    !matches!(body, Body::Service(_) | Body::Overhead(_) | Body::Furnishing(_))
}

/// How high outlets and switches are above the finished floor.
fn heights(context: &Context<'_>, facts: &Facts) -> String {
    let floor = facts.plan.site.floor_build;
    let of = |kind: ServiceKind, word: &str| {
        let points = facts.plan.elements().iter().filter_map(|e| match &e.body {
            Body::Service(s) if s.kind == kind => Some(s.bottom - floor),
            _ => None,
        });
        let heights: BTreeSet<Len> = points.collect();
        let heights: Vec<String> =
            heights.iter().map(|h| context.system.inches(*h, Precision::Tape)).collect();
        match heights.is_empty() {
            true => String::new(),
            false => format!(" Bottom of {word} above the finished floor: {}.", heights.join(", ")),
        }
    };
    of(ServiceKind::Receptacle, "receptacles") + &of(ServiceKind::Switch, "switches")
}
