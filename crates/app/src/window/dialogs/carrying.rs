//! A thing that is to be carried in: its sizes, and to which rooms it gets.

use std::sync::{Arc, PoisonError};

use egui::{Label, RichText, ScrollArea, Ui};
use measure::{Len, System};
use plan::Plan;
use plan::bounds::Bound;
use space::Facts;
use space::carry::{Carried, Verdict};

use super::super::form::Form;
use super::super::moving::Job;
use super::super::theme::{Look, SMALL};
use super::{Answer, foot, heading};
use crate::carry_words::{self, THINGS};
use drawing::Tone;

const SIDE: Bound =
    Bound { what: "side", least: Len::sixty_fourths(8), most: Len::feet_inches(20, 0) };

/// The look at some sizes: nothing until it is done.
type Looking = Job<Option<Vec<Carried>>>;

/// What is carried, and what came of it.
#[derive(Debug)]
pub struct Carrying {
    facts: Arc<Facts>,
    size: [Len; 3],
    /// The sizes that are being looked at, and the answer once it is there.
    job: Option<([Len; 3], Looking)>,
}

impl Carrying {
    /// A sofa, to begin with.
    pub fn of(facts: &Arc<Facts>) -> Carrying {
        let size = THINGS.iter().find(|t| t.key == "sofa").map_or([Len::inches(36); 3], |t| t.size);
        Carrying { facts: Arc::clone(facts), size, job: None }
    }

    /// Looks on a thread of its own; gives the answer for the sizes as they are.
    fn look(&mut self, ctx: &egui::Context) -> Option<Vec<Carried>> {
        if self.job.as_ref().is_none_or(|(size, _)| *size != self.size) {
            let (facts, size, ctx) = (Arc::clone(&self.facts), self.size, ctx.clone());
            let job = Job::start(move |_, result| {
                let found = space::carry::carry(&facts, size);
                *result.lock().unwrap_or_else(PoisonError::into_inner) = Some(found);
                ctx.request_repaint();
            });
            self.job = Some((size, job));
        }
        self.job.as_ref().and_then(|(_, job)| job.read(Option::clone))
    }
}

pub fn show(ui: &mut Ui, carrying: &mut Carrying, system: System, look: Look) -> Option<Answer> {
    heading(ui, "Carry a thing in");
    ui.horizontal_wrapped(|ui| {
        for thing in THINGS {
            let chosen = carrying.size == thing.size;
            if ui.add(egui::Button::selectable(chosen, thing.word)).clicked() {
                carrying.size = thing.size;
            }
        }
    });
    let mut form = Form::new(system);
    for (i, word) in ["Length", "Width", "Height"].into_iter().enumerate() {
        form.len(ui, word, &mut carrying.size[i], SIDE);
    }
    let text = "Sizes of common things are common practice: measure yours.";
    ui.add(Label::new(RichText::new(text).weak().size(SMALL)).wrap());
    ui.add_space(4.0);
    let found = carrying.look(ui.ctx());
    let height = (ui.ctx().content_rect().height() - 420.0).clamp(90.0, 420.0);
    ScrollArea::vertical().max_height(height).show(ui, |ui| {
        ui.set_width(ui.available_width());
        match &found {
            None => {
                ui.label("Looking…");
            }
            Some(rooms) if rooms.is_empty() => {
                ui.label("No room is closed off yet.");
            }
            Some(rooms) => {
                for carried in rooms {
                    row(ui, &carrying.facts, carried, system, look);
                }
            }
        }
    });
    ui.add(Label::new(RichText::new(carry_words::CAUTION).weak().size(SMALL)).wrap());
    foot(ui, &["Close"]).map(|_| Answer::Leave)
}

fn row(ui: &mut Ui, facts: &Facts, carried: &Carried, system: System, look: Look) {
    let plan: &Plan = &facts.plan;
    let tone = match carried.verdict {
        Verdict::Fits(_) => Tone::Ink,
        Verdict::Verify(_) => Tone::Verify,
        Verdict::Sticks(_) | Verdict::NoStart => Tone::Stop,
    };
    ui.horizontal_wrapped(|ui| {
        ui.label(RichText::new(carry_words::room(facts, carried)).strong());
        let text = carry_words::verdict(plan, carried, system);
        ui.add(Label::new(RichText::new(text).color(look.colour(tone))).wrap());
    });
}
