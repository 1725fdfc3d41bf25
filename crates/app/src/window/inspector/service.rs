//! The values of a service point.

use egui::Ui;
use measure::Len;
use plan::element::{AccessOpening, Mount, ServiceKind, ServicePoint};
use plan::{Body, ElementId, bounds};

use super::super::act::Cx;
use super::super::form::Form;
use super::boxes;

pub fn show(ui: &mut Ui, form: &mut Form, cx: &Cx<'_>, point: &mut ServicePoint) {
    let kinds = ServiceKind::ALL.map(|k| (k, k.word()));
    form.choice(ui, "Kind", &mut point.kind, &kinds);
    let mounts = [(Mount::Floor, "floor"), (Mount::Wall, "wall"), (Mount::Ceiling, "ceiling")];
    form.among(ui, "Mounted on", &mut point.mount, &mounts);
    form.len(ui, "Width", &mut point.width, bounds::SERVICE_WIDTH);
    form.len(ui, "Depth", &mut point.depth, bounds::SERVICE_DEPTH);
    form.len(ui, "Height", &mut point.height, bounds::SERVICE_HEIGHT);
    form.len(ui, "Above slab", &mut point.bottom, bounds::SERVICE_BOTTOM);
    boxes::facing(ui, form, "Faces", &mut point.facing);
    boxes::place(ui, form, &mut point.at);
    serves(ui, form, cx, point);
    access(ui, form, &mut point.access);
}

/// Which appliance a valve or disconnect serves.
fn serves(ui: &mut Ui, form: &mut Form, cx: &Cx<'_>, point: &mut ServicePoint) {
    let served: &[ServiceKind] = match point.kind {
        ServiceKind::GasValve | ServiceKind::Disconnect | ServiceKind::FixtureValve => {
            &[ServiceKind::Furnace, ServiceKind::WaterHeater]
        }
        ServiceKind::AirFilter | ServiceKind::Damper => &[ServiceKind::Furnace],
        _ => return,
    };
    let names: Vec<(ElementId, String)> = cx
        .session
        .plan()
        .elements()
        .iter()
        .filter(|e| matches!(&e.body, Body::Service(s) if served.contains(&s.kind)))
        .map(|e| (e.id, format!("{} {}", e.body.word(), e.name())))
        .collect();
    let mut choices: Vec<(Option<ElementId>, &str)> = vec![(None, "the nearest (assumed)")];
    choices.extend(names.iter().map(|(id, name)| (Some(*id), name.as_str())));
    form.choice(ui, "Serves", &mut point.serves, &choices);
}

/// The opening that is left in the finish to reach it.
fn access(ui: &mut Ui, form: &mut Form, access: &mut Option<AccessOpening>) {
    let mut has = access.is_some();
    form.check(ui, "Access opening in the finish", &mut has);
    match (has, access.is_some()) {
        (true, false) => {
            let side = Len::inches(14);
            *access = Some(AccessOpening { width: side, height: side });
        }
        (false, true) => *access = None,
        _ => {}
    }
    if let Some(opening) = access {
        form.len(ui, "Opening width", &mut opening.width, bounds::ACCESS_WIDTH);
        form.len(ui, "Opening height", &mut opening.height, bounds::ACCESS_HEIGHT);
    }
}
