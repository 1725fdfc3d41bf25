//! Undo as a labelled stack of whole plans with shared parts.

use std::sync::Arc;

use crate::{Edit, EditError, Plan};

/// The plan now, and the plans before and after it.
#[derive(Clone, Debug)]
pub struct History {
    now: Arc<Plan>,
    past: Vec<(String, Arc<Plan>)>,
    future: Vec<(String, Arc<Plan>)>,
}

impl History {
    pub fn new(plan: Plan) -> History {
        History { now: Arc::new(plan), past: Vec::new(), future: Vec::new() }
    }

    pub fn now(&self) -> &Arc<Plan> {
        &self.now
    }

    /// Makes an edit and keeps the plan before it under `label`, in the user's words.
    pub fn commit(&mut self, label: impl Into<String>, edit: &Edit) -> Result<(), EditError> {
        let next = self.now.with(edit)?;
        self.past.push((label.into(), std::mem::replace(&mut self.now, Arc::new(next))));
        self.future.clear();
        Ok(())
    }

    /// Goes one step back; gives the label of what was undone.
    pub fn undo(&mut self) -> Option<String> {
        unimplemented!()
    }

    /// Goes one step forward; gives the label of what was done again.
    pub fn redo(&mut self) -> Option<String> {
        unimplemented!()
    }

    pub fn can_undo(&self) -> Option<&str> {
        self.past.last().map(|(label, _)| label.as_str())
    }

    pub fn can_redo(&self) -> Option<&str> {
        self.future.last().map(|(label, _)| label.as_str())
    }
}
