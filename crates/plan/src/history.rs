//! Undo as a labelled stack of whole plans with shared parts.

use std::collections::VecDeque;
use std::sync::Arc;

use crate::{Edit, EditError, Plan};

/// Steps that are kept; the oldest is forgotten first.
pub const STEPS: usize = 500;

/// The plan now, and the plans before and after it.
#[derive(Clone, Debug)]
pub struct History {
    now: Arc<Plan>,
    past: VecDeque<(String, Arc<Plan>)>,
    future: Vec<(String, Arc<Plan>)>,
}

impl History {
    pub fn new(plan: Plan) -> History {
        History { now: Arc::new(plan), past: VecDeque::new(), future: Vec::new() }
    }

    pub fn now(&self) -> &Arc<Plan> {
        &self.now
    }

    /// Makes an edit and keeps the plan before it under `label`, in the user's words. An edit that
    /// changes nothing leaves no step.
    pub fn commit(&mut self, label: impl Into<String>, edit: &Edit) -> Result<(), EditError> {
        let next = self.now.with(edit)?;
        if next == *self.now {
            return Ok(());
        }
        if self.past.len() == STEPS {
            self.past.pop_front();
        }
        self.past.push_back((label.into(), std::mem::replace(&mut self.now, Arc::new(next))));
        self.future.clear();
        Ok(())
    }

    /// Goes one step back; gives the label of what was undone.
    pub fn undo(&mut self) -> Option<String> {
        let (label, before) = self.past.pop_back()?;
        let after = self.show(before);
        self.future.push((label.clone(), after));
        Some(label)
    }

    /// Goes one step forward; gives the label of what was done again.
    pub fn redo(&mut self) -> Option<String> {
        let (label, after) = self.future.pop()?;
        let before = self.show(after);
        self.past.push_back((label.clone(), before));
        Some(label)
    }

    pub fn can_undo(&self) -> Option<&str> {
        self.past.back().map(|(label, _)| label.as_str())
    }

    pub fn can_redo(&self) -> Option<&str> {
        self.future.last().map(|(label, _)| label.as_str())
    }

    /// Makes `plan` the plan now and gives the one that was. The highest next id goes along, so that
    /// an id that was once given is never given again, also after undo.
    fn show(&mut self, mut plan: Arc<Plan>) -> Arc<Plan> {
        if plan.next_id < self.now.next_id {
            Arc::make_mut(&mut plan).next_id = self.now.next_id;
        }
        std::mem::replace(&mut self.now, plan)
    }
}
