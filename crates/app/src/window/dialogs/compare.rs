//! A room in two uses, side by side.

use std::sync::Arc;

use egui::{Button, Label, RichText, ScrollArea, Ui};
use measure::System;
use plan::element::RoomUse;
use plan::{Body, ElementId, Plan};
use rules::{Trial, capital};

use super::super::form::Form;
use super::super::inspector::room::demand_rows;
use super::super::panes::findings::ink;
use super::super::theme::Look;
use super::{Answer, foot, heading};

/// What is compared.
#[derive(Debug)]
pub struct Compare {
    plan: Arc<Plan>,
    tag: ElementId,
    name: String,
    now: RoomUse,
    sides: [Side; 2],
}

/// A use and what came of trying it; `None` where the tag speaks for no room.
#[derive(Debug)]
struct Side {
    room_use: RoomUse,
    trial: Option<Trial>,
}

impl Side {
    fn of(plan: &Plan, tag: ElementId, room_use: RoomUse) -> Side {
        Side { room_use, trial: rules::try_use(plan, tag, room_use) }
    }
}

impl Compare {
    /// Office and bedroom, or the present use and one of these. `None` where the element is no room tag.
    pub fn of(plan: &Arc<Plan>, tag: ElementId) -> Option<Compare> {
        let Body::RoomTag(body) = &plan.get(tag)?.body else { return None };
        let now = body.room_use;
        let uses = match now {
            RoomUse::Bedroom | RoomUse::Office => [RoomUse::Office, RoomUse::Bedroom],
            other => [other, RoomUse::Bedroom],
        };
        let name = match body.name.as_str() {
            "" => "the room".to_owned(),
            name => name.to_owned(),
        };
        let sides = uses.map(|room_use| Side::of(plan, tag, room_use));
        Some(Compare { plan: Arc::clone(plan), tag, name, now, sides })
    }
}

/// Shows both uses; a button under each makes the room that.
pub fn show(ui: &mut Ui, compare: &mut Compare, system: System, look: Look) -> Option<Answer> {
    heading(ui, &format!("{} in two uses", capital(&compare.name)));
    let height = (ui.ctx().content_rect().height() - 190.0).clamp(160.0, 640.0);
    let mut chosen = None;
    let Compare { plan, tag, now, sides, .. } = compare;
    ScrollArea::vertical().max_height(height).min_scrolled_height(height).show(ui, |ui| {
        ui.columns(2, |columns| {
            for (i, (ui, side)) in columns.iter_mut().zip(sides).enumerate() {
                ui.push_id(i, |ui| {
                    let mut form = Form::new(system);
                    let uses = RoomUse::ALL.map(|u| (u, u.word()));
                    let word = ["One use", "Other use"][i];
                    form.choice(ui, word, &mut side.room_use, &uses);
                    if form.changed().is_some() {
                        *side = Side::of(plan, *tag, side.room_use);
                    }
                    let word = side.room_use.word();
                    let button =
                        Button::new(format!("Make it: {word}")).selected(side.room_use == *now);
                    if ui.add_enabled(side.room_use != *now, button).clicked() {
                        chosen = Some(side.room_use);
                    }
                    ui.add_space(6.0);
                    match &side.trial {
                        Some(trial) => one(ui, trial, system, look),
                        None => {
                            ui.label("No walls and doors close this room off.");
                        }
                    }
                });
            }
        });
    });
    if let Some(element) = chosen.and_then(|room_use| rules::in_use(plan, *tag, room_use)) {
        return Some(Answer::Use(Box::new(element)));
    }
    foot(ui, &["Close"]).map(|_| Answer::Leave)
}

/// What one use demands, and what it would take.
fn one(ui: &mut Ui, trial: &Trial, system: System, look: Look) {
    if trial.demands.is_empty() {
        ui.label(RichText::new("The code book asks nothing of this use.").weak());
    }
    demand_rows(ui, &trial.demands, system, look);
    if trial.cures.is_empty() {
        return;
    }
    ui.add_space(4.0);
    ui.strong("What it would take");
    for cure in &trial.cures {
        let title = format!("{}: {}", capital(cure.severity.word()), cure.title.say(system));
        ui.add(Label::new(RichText::new(title).color(ink(cure.severity, look))).wrap());
        ui.add(Label::new(cure.how.say(system)).wrap());
        ui.add_space(3.0);
    }
}
