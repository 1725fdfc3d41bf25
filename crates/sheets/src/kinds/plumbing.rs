//! Plumbing plan.

use depict::Show;
use plan::element::{OverheadKind, ServiceKind};
use plan::{Body, Element, State};

use super::plans::{self, PlanSheet};
use super::{Context, Kind, Made};
use crate::{legend, plan_view};

pub(crate) const KIND: Kind =
    Kind { slug: "plumbing-plan", title: "Plumbing plan", discipline: "P", first: 101, make };

fn belongs(kind: ServiceKind) -> bool {
    matches!(
        kind,
        ServiceKind::MainWaterValve
            | ServiceKind::FixtureValve
            | ServiceKind::HoseBibValve
            | ServiceKind::Cleanout
            | ServiceKind::FloorDrain
            | ServiceKind::Sump
            | ServiceKind::Ejector
            | ServiceKind::WaterMeter
            | ServiceKind::WaterHeater
            | ServiceKind::PressureReducer
            | ServiceKind::BackflowPreventer
            | ServiceKind::AirAdmittanceValve
            | ServiceKind::BackwaterValve
            | ServiceKind::Standpipe
    )
}

fn shown(e: &Element) -> bool {
    match &e.body {
        Body::Service(s) => belongs(s.kind),
        Body::Overhead(o) => o.kind == OverheadKind::Pipe,
        Body::Furnishing(f) => rules::is_fixture(&f.name),
        Body::Note(_) => false,
        _ => true,
    }
}

fn make(context: &Context<'_>) -> Made {
    let plan = context.source.plan();
    let any = plan.elements().iter().any(|e| e.stands() && !structure(&e.body) && shown(e));
    if !any {
        return Made::Nothing("no fixture, valve, cleanout, drain or pump is drawn".to_owned());
    }
    let facts = plan_view::without(plan, |e| e.state == State::Removed || !shown(e));
    let sheet = PlanSheet {
        facts: &facts,
        named: &[],
        show: Show::default(),
        strings: false,
        caption: "Fixtures, valves, cleanouts, drains, pumps",
        legend: legend::of(&facts),
        remarks: vec![
            "Frames of dashes are openings for access. Pipes, traps and vents are the plumber's."
                .to_owned(),
        ],
    };
    plans::draw(context, &sheet)
}

/// What is on every plan.
fn structure(body: &Body) -> bool {
    !matches!(body, Body::Service(_) | Body::Overhead(_) | Body::Furnishing(_))
}
