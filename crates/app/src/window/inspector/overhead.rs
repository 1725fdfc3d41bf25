//! The values of an overhead.

use egui::{RichText, Ui};
use geometry::Seg;
use measure::{Len, Precision};
use plan::bounds;
use plan::element::{Overhead, OverheadKind, OverheadShape};

use super::super::act::Cx;
use super::super::form::Form;

pub fn show(ui: &mut Ui, form: &mut Form, cx: &Cx<'_>, overhead: &mut Overhead) {
    let kinds = OverheadKind::ALL.map(|k| (k, k.word()));
    form.choice(ui, "Kind", &mut overhead.kind, &kinds);
    form.len(ui, "Underside", &mut overhead.underside, bounds::UNDERSIDE);
    match &mut overhead.shape {
        OverheadShape::Run { a, b, width } => {
            form.len(ui, "Width", width, bounds::OVERHEAD_WIDTH);
            let line = Seg::new(*a, *b);
            let before = line.len();
            let mut length = before;
            form.len(ui, "Length", &mut length, bounds::OVERHEAD_LENGTH);
            if length != before {
                *b = line.point_at(length);
            }
        }
        OverheadShape::Outline(ring) => {
            form.fact(ui, "Outline", format!("{} corners", ring.len()));
        }
    }
    let clear: Len = overhead.underside - cx.checked.facts.plan.site.floor_build;
    let system = form.system();
    form.fact(ui, "Clear below", RichText::new(system.len(clear, Precision::Floor)).strong());
    ui.label(RichText::new("The underside is measured from the slab.").weak());
}
