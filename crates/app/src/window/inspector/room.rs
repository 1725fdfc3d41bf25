//! What a room tag speaks for: the room's facts, and what its use demands.

use egui::{Label, RichText, Ui};
use measure::{Precision, System};
use plan::ElementId;
use plan::element::RoomUse;
use rules::{Book, Demand, Met, Severity, Sheet};
use space::{Facts, Room};

use super::super::act::Cx;
use super::super::commands::Command;
use super::super::form::row;
use super::super::panes::findings::{figures, ink};
use super::super::theme::{Look, SMALL};

pub fn facts(ui: &mut Ui, cx: &mut Cx<'_>, tag: ElementId) {
    let facts = std::sync::Arc::clone(&cx.checked.facts);
    let system = cx.system();
    ui.add_space(4.0);
    let own = facts.rooms.iter().find(|r| r.tag == Some(tag));
    let Some(room) = own else {
        let text = if facts.rooms.iter().any(|r| r.more_tags.contains(&tag)) {
            "Another tag speaks for this room already; this one only stands in it."
        } else {
            "No walls and doors close this room off: its walls leave a gap, or the tag stands outside."
        };
        let colour = ui.visuals().warn_fg_color;
        ui.add(Label::new(RichText::new(text).color(colour)).wrap());
        return;
    };
    let fact = |ui: &mut Ui, word: &str, text: String| {
        row(ui, word, |ui| {
            ui.add(Label::new(RichText::new(text).strong()).wrap());
        });
    };
    let say = |l| system.len(l, Precision::Floor);
    fact(ui, "Net area", system.area(room.area));
    fact(ui, "Clear size", format!("{} × {}", say(room.clear.0), say(room.clear.1)));
    let height = if room.lowest == room.highest {
        say(room.lowest)
    } else {
        format!("{} to {}", say(room.lowest), say(room.highest))
    };
    fact(ui, "Height", height);
    if ui.button("Compare two uses…").clicked() {
        cx.command(Command::Compare);
    }
    demands(ui, cx, &facts, room);
}

/// What the use demands, each with whether it is met.
fn demands(ui: &mut Ui, cx: &Cx<'_>, facts: &Facts, room: &Room) {
    let book = Book::of(&facts.plan.site);
    let sheet = Sheet::new(facts, &book);
    let demands = rules::demands(&sheet, room.index, room.room_use);
    if demands.is_empty() {
        return;
    }
    let system = cx.session.system();
    let look = cx.view.look;
    ui.add_space(6.0);
    let word = room.room_use.word();
    let article = if word.starts_with(['a', 'e', 'i', 'o', 'u']) { "an" } else { "a" };
    let noun = match room.room_use {
        RoomUse::Laundry | RoomUse::Storage | RoomUse::Mechanical | RoomUse::Unfinished => " room",
        _ => "",
    };
    ui.label(RichText::new(format!("What {article} {word}{noun} needs")).strong());
    demand_rows(ui, &demands, system, look);
}

/// Each demand with whether it is met, its figures and its source.
pub fn demand_rows(ui: &mut Ui, demands: &[Demand], system: System, look: Look) {
    for demand in demands {
        let (word, colour) = match demand.met {
            Met::Yes => ("met", ink(Severity::Advice, look)),
            Met::No => ("not met", ink(Severity::Correction, look)),
            Met::Unknown => ("verify", ink(Severity::Verify, look)),
        };
        ui.add(Label::new(&demand.text).wrap());
        ui.horizontal_wrapped(|ui| {
            ui.spacing_mut().interact_size.y = 0.0;
            ui.label(RichText::new(word).color(colour).strong());
            figures(ui, demand.measured.as_ref(), demand.required.as_ref(), system);
        });
        let citation = RichText::new(demand.citation.marked()).weak().size(SMALL);
        ui.add(Label::new(citation).wrap());
        ui.add_space(3.0);
    }
}
