//! Mechanical plan.

use depict::Show;
use plan::element::{OverheadKind, ServiceKind};
use plan::{Body, Element, State};

use super::plans::{self, PlanSheet};
use super::{Context, Kind, Made};
use crate::{legend, plan_view};

pub(crate) const KIND: Kind =
    Kind { slug: "mechanical-plan", title: "Mechanical plan", discipline: "M", first: 101, make };

fn belongs(kind: ServiceKind) -> bool {
    matches!(
        kind,
        ServiceKind::Furnace
            | ServiceKind::WaterHeater
            | ServiceKind::Damper
            | ServiceKind::AirFilter
            | ServiceKind::SupplyRegister
            | ServiceKind::ReturnGrille
            | ServiceKind::ExhaustFan
            | ServiceKind::ClothesDryer
            | ServiceKind::GasValve
            | ServiceKind::GasMeter
            | ServiceKind::RadonPipe
    )
}

fn shown(e: &Element) -> bool {
    match &e.body {
        Body::Service(s) => belongs(s.kind),
        Body::Overhead(o) => o.kind == OverheadKind::Duct,
        Body::Furnishing(_) => false,
        Body::Note(_) => false,
        _ => true,
    }
}

fn make(context: &Context<'_>) -> Made {
    let plan = context.source.plan();
    let any = plan.elements().iter().any(|e| e.stands() && !structure(&e.body) && shown(e));
    if !any {
        return Made::Nothing(
            "no furnace, duct, register, grille, fan or gas valve is drawn".to_owned(),
        );
    }
    let facts = plan_view::without(plan, |e| e.state == State::Removed || !shown(e));
    let sheet = PlanSheet {
        facts: &facts,
        named: &[],
        show: Show::default(),
        strings: false,
        caption: "Furnace, ducts, registers, grilles, fans, gas",
        legend: legend::of(&facts),
        remarks: vec![
            "Clearances of appliances: by their labels. Heat loss, sizes of ducts and the gas diagram are the contractor's.".to_owned(),
        ],
    };
    plans::draw(context, &sheet)
}

/// What is on every plan.
fn structure(body: &Body) -> bool {
    !matches!(body, Body::Service(_) | Body::Overhead(_) | Body::Furnishing(_))
}
