//! The ways in: how wide each is, the narrowest first, and where it pinches.

use drawing::Tone;
use egui::{
    Align, Color32, CornerRadius, Frame, Label, Layout, Margin, RichText, Role, Sense, Stroke, Ui,
    UiBuilder, WidgetInfo,
};
use geometry::Bounds;
use measure::Len;
use rules::capital;
use space::ways::{Hindrance, Target, Walked, WayIn};

use super::super::act::{Act, Cx};
use super::super::theme::{Look, SMALL, mix};
use crate::way_words;

/// Lists the ways; the one under the pointer is lit on the plan, a click shows its pinch.
pub fn show(ui: &mut Ui, cx: &mut Cx<'_>) {
    cx.view.lit_way = None;
    let checked = cx.checked.clone();
    let ways = checked.ways();
    if ways.ways.is_empty() {
        let text = "No room is closed off and no service point is drawn yet.";
        ui.add(Label::new(RichText::new(text).weak()).wrap());
        return;
    }
    let plan = &checked.facts.plan;
    let arrivals: Vec<String> =
        ways.arrivals.iter().map(|a| way_words::element(plan, a.element)).collect();
    let text = match arrivals.as_slice() {
        [] => "No stair and no outside door is drawn. Draw one, or state of a room or door under Details that people come in there.".to_owned(),
        all => format!("From {}. A person is a disc as wide as the figure; doors stand open 90°.", all.join(", ")),
    };
    ui.add(Label::new(RichText::new(text).weak()).wrap());
    let mut sorted: Vec<&WayIn> = ways.ways.iter().collect();
    sorted.sort_by_key(|way| way.width);
    for way in sorted {
        ui.add_space(2.0);
        let picked = cx.view.picked_way == Some(way.target);
        let walked = if picked { ways.walk(&checked.facts, way) } else { None };
        row(ui, cx, way, walked.as_ref(), &checked.facts);
    }
}

fn ink(width: Len, look: Look) -> Color32 {
    look.colour(if width == Len::ZERO { Tone::Stop } else { Tone::Advice })
}

fn row(ui: &mut Ui, cx: &mut Cx<'_>, way: &WayIn, walked: Option<&Walked>, facts: &space::Facts) {
    let system = cx.system();
    let look = cx.view.look;
    let picked = cx.view.picked_way == Some(way.target);
    let title = capital(&way_words::target(facts, way.target));
    let width = way_words::width(way, system);
    let builder = UiBuilder::new().id_salt(("way", way.target)).sense(Sense::click());
    let response = ui
        .scope_builder(builder, |ui| {
            let hovered = ui.response().contains_pointer();
            let paper = ui.visuals().panel_fill;
            let ink = ink(way.width, look);
            let fill = match (picked, hovered) {
                (true, _) => mix(paper, ink, 0.12),
                (_, true) => mix(paper, ink, 0.06),
                _ => paper,
            };
            let line = if picked { Stroke::new(1.5, ink) } else { Stroke::new(1.0, fill) };
            let margin = Margin { left: 8, right: 8, top: 3, bottom: 4 };
            let frame = Frame::new().fill(fill).stroke(line);
            frame.corner_radius(CornerRadius::same(5)).inner_margin(margin).show(ui, |ui| {
                ui.set_width(ui.available_width());
                ui.spacing_mut().item_spacing.y = 1.0;
                ui.spacing_mut().interact_size.y = 0.0;
                ui.with_layout(Layout::right_to_left(Align::TOP), |ui| {
                    ui.label(RichText::new(&width).strong().color(ink));
                    ui.with_layout(Layout::left_to_right(Align::TOP), |ui| {
                        ui.add(Label::new(&title).wrap());
                    });
                });
                let why = capital(&way_words::hindrance(&facts.plan, way));
                ui.add(Label::new(RichText::new(why).weak().size(SMALL)).wrap());
                if let Some(walked) = walked {
                    let far = way_words::walk(&facts.plan, walked, system);
                    ui.add(Label::new(RichText::new(far).size(SMALL)).wrap());
                }
            });
        })
        .response;
    response.widget_info(|| WidgetInfo::labeled(Role::ListItem, true, format!("{title}: {width}")));
    if response.contains_pointer() {
        cx.view.lit_way = Some(way.target);
    }
    if response.clicked() {
        cx.view.picked_way = Some(way.target);
        look_at(cx, way);
    }
}

/// Brings the place and the pinch into sight, and selects what the way leads to.
fn look_at(cx: &mut Cx<'_>, way: &WayIn) {
    let gap = way.gap().into_iter().flat_map(|gap| [gap.from, gap.to]);
    cx.push(Act::LookAt(Bounds::of(gap.chain([way.place]))));
    if let Target::Service(id) = way.target {
        cx.push(Act::Select(vec![id]));
    } else if let Hindrance::Pinch(gap) = &way.hindrance {
        cx.push(Act::Select(gap.opening.map_or_else(|| gap.between.to_vec(), |id| vec![id])));
    }
}
