//! One open plan with its history, selection and active tool.

use std::collections::BTreeSet;
use std::sync::Arc;

use measure::{Len, System};
use plan::{Edit, EditError, ElementId, Plan};
use rules::Finding;
use space::Facts;

use crate::{Dimension, DimensionId, Entry, Gesture, Status, ToolKind, ToolOptions};

/// The facts and findings of the plan that is shown (with the preview of the running gesture).
#[derive(Clone, Debug)]
pub struct Checked {
    pub facts: Arc<Facts>,
    pub findings: Arc<Vec<Finding>>,
}

/// One open plan being worked on.
#[derive(Debug)]
pub struct Session {}

impl Session {
    /// Opens a plan with an empty history.
    pub fn new(_plan: Plan) -> Session {
        unimplemented!()
    }

    /// The plan as committed.
    pub fn plan(&self) -> &Arc<Plan> {
        unimplemented!()
    }

    /// The plan as shown: with the edit that the running gesture would make.
    pub fn shown(&self) -> &Arc<Plan> {
        unimplemented!()
    }

    /// Facts and findings of the shown plan; derived again only when the plan has changed.
    pub fn checked(&mut self) -> Checked {
        unimplemented!()
    }

    /// Feeds one gesture to the active tool.
    pub fn feed(&mut self, _gesture: &Gesture) {
        unimplemented!()
    }

    pub fn tool(&self) -> ToolKind {
        unimplemented!()
    }

    /// Changes the tool; a running gesture is dropped.
    pub fn set_tool(&mut self, _tool: ToolKind) {
        unimplemented!()
    }

    pub fn options(&self) -> &ToolOptions {
        unimplemented!()
    }

    pub fn options_mut(&mut self) -> &mut ToolOptions {
        unimplemented!()
    }

    /// The unit system that typed bare numbers and figures in labels use.
    pub fn system(&self) -> System {
        unimplemented!()
    }

    pub fn set_system(&mut self, _system: System) {
        unimplemented!()
    }

    pub fn selection(&self) -> &BTreeSet<ElementId> {
        unimplemented!()
    }

    pub fn select(&mut self, _ids: impl IntoIterator<Item = ElementId>) {
        unimplemented!()
    }

    /// The element under the pointer, for the hover tone and the cursor.
    pub fn hovered(&self) -> Option<ElementId> {
        unimplemented!()
    }

    /// Makes an edit that comes from a pane or a remedy, as one undo step.
    pub fn apply(&mut self, _label: &str, _edit: &Edit) -> Result<(), EditError> {
        unimplemented!()
    }

    /// Undoes one step; gives its label.
    pub fn undo(&mut self) -> Option<String> {
        unimplemented!()
    }

    pub fn redo(&mut self) -> Option<String> {
        unimplemented!()
    }

    pub fn can_undo(&self) -> Option<&str> {
        unimplemented!()
    }

    pub fn can_redo(&self) -> Option<&str> {
        unimplemented!()
    }

    pub fn delete_selected(&mut self) {
        unimplemented!()
    }

    /// Puts a copy of the selection beside it and selects the copy.
    pub fn duplicate_selected(&mut self) {
        unimplemented!()
    }

    /// The selection as text for the clipboard; `None` when nothing is selected.
    pub fn copy_selected(&self) -> Option<String> {
        unimplemented!()
    }

    /// Pastes elements from clipboard text; the error says why the text is not elements.
    pub fn paste(&mut self, _text: &str) -> Result<(), String> {
        unimplemented!()
    }

    /// Live measurements of the selection or the running gesture.
    pub fn dimensions(&mut self) -> Vec<Dimension> {
        unimplemented!()
    }

    /// Types a value into a live dimension: the element moves or grows so that it becomes true.
    pub fn type_dimension(&mut self, _id: DimensionId, _value: Len) -> Result<(), String> {
        unimplemented!()
    }

    /// What is being typed, where the tool takes a typed value.
    pub fn entry(&self) -> Option<&Entry> {
        unimplemented!()
    }

    pub fn status(&self) -> &Status {
        unimplemented!()
    }
}
