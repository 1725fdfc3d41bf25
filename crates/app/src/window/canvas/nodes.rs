//! The elements of the plan for screen readers and tests: each in sight is a node with its kind, name, size
//! and open findings.

use editor::Checked;
use egui::{Event, Id, Rect, Role, Ui, accesskit, pos2};
use geometry::Bounds;
use measure::Precision;
use plan::{Body, Element};

use super::super::act::{Act, Cx};
use super::super::looking::element_boxes;

/// More elements than this are not told one by one.
const MOST: usize = 400;

/// Tells the elements in sight.
pub fn show(ui: &Ui, cx: &mut Cx<'_>, checked: &Checked, rect: Rect, canvas: Id) {
    // Without a reader nothing is made.
    if ui.ctx().accesskit_node_builder(canvas, |_| ()).is_none() {
        return;
    }
    let seen = cx.view.camera.bounds();
    let plan = &checked.facts.plan;
    let boxes = element_boxes(checked);
    let mut told = 0;
    for element in plan.elements().iter() {
        let bounds = boxes.get(&element.id).copied().unwrap_or(Bounds::EMPTY);
        if bounds.is_empty() || !bounds.meets(seen) {
            continue;
        }
        told += 1;
        if told > MOST {
            break;
        }
        let at = |p| {
            let p = cx.view.camera.screen_from_plan(p);
            pos2(p.x, p.y) + rect.min.to_vec2()
        };
        let (a, b) = (at(bounds.min), at(bounds.max));
        let place = Rect::from_two_pos(a, b).intersect(rect);
        let id = canvas.with(("element", element.id.0));
        let selected = cx.session.selection().contains(&element.id);
        let label = label(cx, checked, element);
        ui.ctx().accesskit_node_builder(id, |node| {
            node.set_role(Role::GraphicsObject);
            node.set_label(label);
            node.set_selected(selected);
            node.set_bounds(accesskit::Rect {
                x0: place.min.x.into(),
                y0: place.min.y.into(),
                x1: place.max.x.into(),
                y1: place.max.y.into(),
            });
            node.add_action(accesskit::Action::Click);
        });
        let clicked = ui.input(|i| {
            i.events.iter().any(|event| match event {
                Event::AccessKitActionRequest(request) => {
                    request.action == accesskit::Action::Click
                        && request.target_node == id.accesskit_id()
                }
                _ => false,
            })
        });
        if clicked {
            cx.push(Act::Select(vec![element.id]));
        }
    }
}

/// Kind, name, size, open findings.
fn label(cx: &Cx<'_>, checked: &Checked, element: &Element) -> String {
    let system = cx.session.system();
    let mut text = format!("{} {}", element.body.word(), element.name());
    let say = |l| system.len(l, Precision::Tape);
    match &element.body {
        Body::Shell(w) => text += &format!(", {} long", say(w.line().len())),
        Body::Partition(w) => text += &format!(", {} long", say(w.line().len())),
        Body::Opening(o) => text += &format!(", {} wide", say(o.width())),
        Body::RoomTag(t) => text += &format!(", {} {}", t.name, t.room_use.word()),
        Body::Note(n) => text += &format!(", {}", n.text),
        Body::Section(s) => text += &format!(", {} long", say(s.line().len())),
        Body::Service(s) => {
            text += &format!(", {} by {}", say(s.width), say(s.depth));
        }
        Body::Furnishing(f) => {
            text += &format!(", {} by {}", say(f.width), say(f.depth));
        }
        _ => {}
    }
    let open = checked
        .findings
        .iter()
        .filter(|f| f.set_aside.is_none() && f.elements.contains(&element.id))
        .count();
    match open {
        0 => {}
        1 => text += ", 1 finding",
        n => text += &format!(", {n} findings"),
    }
    text
}
