//! What is done to the selection as a whole: delete, duplicate, copy, paste, nudge, flip, turn, and choosing
//! the next element by keyboard.

use std::sync::Arc;

use geometry::{Facing, Vec2};
use measure::{Len, Precision, System};
use plan::{Edit, EditError, ElementId, fragment, ops};

use super::Session;
use crate::Mods;
use crate::pointer::along;

impl Session {
    /// The selection in the user's words: `W14`, or `3 elements`.
    fn selection_word(&self) -> String {
        let plan = self.history.now();
        match (self.selection.first().and_then(|id| plan.get(*id)), self.selection.len()) {
            (Some(element), 1) => element.name(),
            (_, n) => format!("{n} elements"),
        }
    }

    fn selected(&self) -> Vec<ElementId> {
        self.selection.iter().copied().collect()
    }

    /// Makes an edit worked out by an operation; a refusal goes to the status.
    fn arrange(&mut self, label: String, edit: Result<Edit, EditError>) -> bool {
        let made = edit.and_then(|edit| self.apply(&label, &edit));
        match made {
            Ok(()) => true,
            Err(error) => {
                self.refuse(error.to_string());
                false
            }
        }
    }

    pub fn delete_selected(&mut self) {
        if !self.selection.is_empty() {
            let label = format!("Delete {}", self.selection_word());
            let edit = Edit::Remove(self.selected());
            self.arrange(label, Ok(edit));
        }
    }

    /// Puts a copy of the selection beside it and selects the copy.
    pub fn duplicate_selected(&mut self) {
        if self.selection.is_empty() {
            return;
        }
        let step = self.copy_step();
        let label = format!("Duplicate {}", self.selection_word());
        let edit = ops::duplicate(self.history.now(), &self.selected(), step);
        self.add_and_select(label, edit);
    }

    /// A copy lies this far from its original.
    fn copy_step(&self) -> Vec2 {
        let step = match self.system {
            System::Imperial => Len::inches(12),
            System::Metric => Len::mm(300),
        };
        Vec2::new(i64::from(step.units()), -i64::from(step.units()))
    }

    /// Makes an edit that adds elements, and selects them.
    fn add_and_select(&mut self, label: String, edit: Result<Edit, EditError>) {
        let before = Arc::clone(self.history.now());
        if self.arrange(label, edit) {
            let new: Vec<ElementId> = self
                .history
                .now()
                .elements()
                .iter()
                .map(|e| e.id)
                .filter(|id| before.get(*id).is_none())
                .collect();
            self.select(new);
        }
    }

    /// The selection as text for the clipboard; `None` when nothing is selected.
    pub fn copy_selected(&self) -> Option<String> {
        if self.selection.is_empty() {
            return None;
        }
        Some(fragment::write(self.history.now(), &self.selected()))
    }

    /// Pastes elements from clipboard text; the error says why the text is not elements.
    pub fn paste(&mut self, text: &str) -> Result<(), String> {
        let pieces = fragment::read(text).map_err(|error| error.to_string())?;
        let pasted = fragment::paste(self.history.now(), &pieces, self.copy_step())
            .map_err(|error| error.to_string())?;
        let word = match pieces.len() {
            1 => "1 element".to_owned(),
            n => format!("{n} elements"),
        };
        self.status.refused = None;
        self.add_and_select(format!("Paste {word}"), Ok(pasted.edit));
        match self.status.refused.clone().or(pasted.dropped.first().map(ToString::to_string)) {
            Some(why) => Err(why),
            None => Ok(()),
        }
    }

    /// Selects everything.
    pub fn select_all(&mut self) {
        let all: Vec<ElementId> = self.history.now().elements().iter().map(|e| e.id).collect();
        self.select(all);
    }

    /// Selects the element after the selected one, or before it, in the order of the ids; round and round.
    pub fn select_next(&mut self, back: bool) {
        let ids: Vec<ElementId> = self
            .history
            .now()
            .elements()
            .iter()
            .filter(|e| !self.hidden.holds(&e.body))
            .map(|e| e.id)
            .collect();
        let next = if back {
            let first = self.selection.first();
            first.and_then(|now| ids.iter().rev().find(|id| *id < now)).or(ids.last())
        } else {
            let last = self.selection.last();
            last.and_then(|now| ids.iter().find(|id| *id > now)).or(ids.first())
        };
        let next = next.copied();
        self.select(next);
    }

    /// Moves the selection a little: 1 in, finer 1/8 in; 1 cm, finer 1 mm. A wall alone goes along its normal
    /// only, an opening along its wall.
    pub(super) fn nudge(&mut self, facing: Facing, mods: Mods) {
        let step = match (self.system, mods.shift) {
            (System::Imperial, false) => Len::inches(1),
            (System::Imperial, true) => Len::sixty_fourths(8),
            (System::Metric, false) => Len::mm(10),
            (System::Metric, true) => Len::mm(1),
        };
        if self.selection.is_empty() {
            return;
        }
        let label = format!(
            "Move {} by {}",
            self.selection_word(),
            self.system.inches(step, Precision::Fine)
        );
        let plan = Arc::clone(self.history.now());
        let one = self.selection.first().filter(|_| self.selection.len() == 1).copied();
        let line = one.and_then(|id| plan.get(id)).and_then(|e| e.body.wall_line());
        let v = facing.step(step);
        let edit = match (one, line) {
            (Some(id), Some(line)) => {
                let by = along(v, line.dir().left());
                if by == Len::ZERO {
                    let name = self.selection_word();
                    self.refuse(format!(
                        "{name} moves square to its length only: use the other arrow keys."
                    ));
                    return;
                }
                let by = if by < Len::ZERO { -step } else { step };
                ops::move_wall(&plan, id, by)
            }
            _ => ops::nudge(&plan, &self.selected(), v),
        };
        self.arrange(label, edit);
    }

    /// Hangs the selected doors on their other jamb.
    pub fn flip_hinge(&mut self) {
        self.each_door("Flip the hinge of", ops::flip_hinge);
    }

    /// Lets the selected doors swing to the other side.
    pub fn flip_swing(&mut self) {
        self.each_door("Flip the swing of", ops::flip_swing);
    }

    fn each_door(
        &mut self,
        word: &str,
        flip: fn(&plan::Plan, ElementId) -> Result<Edit, EditError>,
    ) {
        let plan = Arc::clone(self.history.now());
        let doors: Vec<ElementId> = self
            .selection
            .iter()
            .copied()
            .filter(|id| {
                let body = plan.get(*id).map(|e| &e.body);
                matches!(body, Some(plan::Body::Opening(o)) if o.door().is_some())
            })
            .collect();
        if doors.is_empty() {
            self.refuse("Select a door first.".to_owned());
            return;
        }
        let edits: Result<Vec<Edit>, EditError> = doors.iter().map(|id| flip(&plan, *id)).collect();
        let label = format!("{word} {}", self.selection_word());
        self.arrange(label, edits.map(Edit::Batch));
    }

    /// Turns the selection a quarter counter-clockwise.
    pub fn turn_selected(&mut self) {
        if !self.selection.is_empty() {
            let label = format!("Turn {}", self.selection_word());
            let edit = ops::turn(self.history.now(), &self.selected());
            self.arrange(label, edit);
        }
    }
}
