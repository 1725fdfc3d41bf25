//! What panes ask for. They read a context and push acts; `run.rs` carries them out.

use editor::{Checked, Session};
use geometry::Bounds;
use measure::System;
use plan::{Edit, ElementId};

use super::commands::Command;
use super::dialogs::Dialog;
use super::looking::Preview;
use super::moving::Known;
use super::view::{FindingKey, View};

/// One thing that a pane asks for.
#[derive(Debug)]
pub enum Act {
    Do(Command),
    /// An edit of the plan as one undo step.
    Edit {
        label: String,
        edit: Edit,
    },
    Select(Vec<ElementId>),
    /// Selects what a finding is about and shows its place.
    ShowFinding(FindingKey),
    /// Selects what a finding is about; its place is in sight already.
    PickFinding(FindingKey),
    /// Brings a box of the plan into sight.
    LookAt(Bounds),
    /// Shows on the plan what a remedy would do, before it is applied.
    Preview {
        finding: FindingKey,
        remedy: usize,
    },
    EndPreview,
    Show(Dialog),
    /// Adds elements from the text of the clipboard.
    Paste(String),
    /// Something to say in the status line.
    Notice(String),
}

/// What a pane may look at and change.
pub struct Cx<'a> {
    pub session: &'a mut Session,
    pub checked: &'a Checked,
    pub view: &'a mut View,
    pub acts: &'a mut Vec<Act>,
    /// The remedy that is shown on the plan, if one is.
    pub preview: Option<&'a Preview>,
    /// Where the selected element may go, as far as that is known.
    pub moving: Known,
}

impl Cx<'_> {
    pub fn system(&self) -> System {
        self.session.system()
    }

    pub fn push(&mut self, act: Act) {
        self.acts.push(act);
    }

    pub fn command(&mut self, command: Command) {
        self.push(Act::Do(command));
    }

    pub fn edit(&mut self, label: impl Into<String>, edit: Edit) {
        self.push(Act::Edit { label: label.into(), edit });
    }
}
