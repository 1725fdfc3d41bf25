//! One open plan with its history, selection and active tool.

mod arrange;
mod boxes;
mod dims;
mod feed;

use std::collections::BTreeSet;
use std::sync::Arc;

use geometry::Pt;
use measure::System;
use plan::{Edit, EditError, ElementId, History, Plan};

use crate::checked::{Clock, Memo};
use crate::options::usual_grid;
use crate::pick::Hidden;
use crate::pointer::Pointer;
use crate::tools::{Active, Cx};
use crate::{Checked, Dimension, DimensionId, Entry, Status, Stop, ToolKind, ToolOptions, Work};

/// One open plan being worked on.
#[derive(Debug)]
pub struct Session {
    history: History,
    /// The committed plan, or with the edit of the running gesture.
    shown: Arc<Plan>,
    selection: BTreeSet<ElementId>,
    /// The selection when the running gesture began, for Escape.
    selection_before: BTreeSet<ElementId>,
    hovered: Option<ElementId>,
    tool: ToolKind,
    active: Active,
    options: ToolOptions,
    system: System,
    status: Status,
    /// A refusal that stays in the status until the next press or key.
    lasting: Option<String>,
    entry: Option<Entry>,
    /// The live dimension that typed figures go to.
    focus: Option<DimensionId>,
    /// Where the pointer was last.
    pointer: Option<Pointer>,
    hidden: Hidden,
    /// Where a drag sticks.
    stops: Vec<Stop>,
    memo: Memo,
}

impl Session {
    /// Opens a plan with an empty history.
    pub fn new(plan: Plan) -> Session {
        let history = History::new(plan);
        let mut session = Session {
            shown: Arc::clone(history.now()),
            history,
            selection: BTreeSet::new(),
            selection_before: BTreeSet::new(),
            hovered: None,
            tool: ToolKind::default(),
            active: Active::ready(ToolKind::default()),
            options: ToolOptions::default(),
            system: System::default(),
            status: Status::default(),
            lasting: None,
            entry: None,
            focus: None,
            pointer: None,
            hidden: Hidden::default(),
            stops: Vec::new(),
            memo: Memo::default(),
        };
        session.status.expects = session.active.tool().expects().to_owned();
        session
    }

    /// The plan as committed.
    pub fn plan(&self) -> &Arc<Plan> {
        self.history.now()
    }

    /// The plan as shown: with the edit that the running gesture would make.
    pub fn shown(&self) -> &Arc<Plan> {
        &self.shown
    }

    /// Facts and findings of the shown plan; derived again only when the plan has changed.
    pub fn checked(&mut self) -> Checked {
        let shown = Arc::clone(&self.shown);
        self.memo.checked(&shown)
    }

    /// Gives the session a clock, so that [`Session::work`] tells how long the last change took.
    pub fn set_clock(&mut self, clock: Clock) {
        self.memo.clock = Some(clock);
    }

    /// How long the last change took: its edit, and the facts and findings derived from it since.
    pub fn work(&self) -> Work {
        self.memo.work
    }

    pub fn tool(&self) -> ToolKind {
        self.tool
    }

    /// Changes the tool; a running gesture is dropped.
    pub fn set_tool(&mut self, tool: ToolKind) {
        self.tool = tool;
        self.drop_gesture();
    }

    pub fn options(&self) -> &ToolOptions {
        &self.options
    }

    pub fn options_mut(&mut self) -> &mut ToolOptions {
        &mut self.options
    }

    /// The unit system that typed bare numbers and figures in labels use.
    pub fn system(&self) -> System {
        self.system
    }

    /// Changes the unit system; a grid that was the usual one of the old system becomes that of the new one.
    pub fn set_system(&mut self, system: System) {
        if self.options.grid == usual_grid(self.system) {
            self.options.grid = usual_grid(system);
        }
        self.system = system;
        self.refresh_entry();
    }

    /// The kinds that the view does not show: they are not picked.
    pub fn set_hidden(&mut self, hidden: Hidden) {
        self.hidden = hidden;
    }

    /// The limits that a drag of an element sticks to while it snaps, in the plan as committed.
    pub fn set_stops(&mut self, stops: Vec<Stop>) {
        self.stops = stops;
    }

    pub fn selection(&self) -> &BTreeSet<ElementId> {
        &self.selection
    }

    /// Selects elements; ids that the plan does not hold are left out.
    pub fn select(&mut self, ids: impl IntoIterator<Item = ElementId>) {
        let plan = self.history.now();
        self.selection = ids.into_iter().filter(|id| plan.get(*id).is_some()).collect();
        self.selection_before = self.selection.clone();
        self.focus = None;
        self.refresh_entry();
    }

    /// The element under the pointer, for the hover tone and the cursor.
    pub fn hovered(&self) -> Option<ElementId> {
        self.hovered
    }

    /// Whether a gesture is running, so that Escape has something to drop.
    pub fn busy(&self) -> bool {
        self.active.tool().busy()
    }

    /// Two corners of the box being drawn round what is to be selected.
    pub fn marquee(&self) -> Option<(Pt, Pt)> {
        self.active.tool().marquee()
    }

    /// What is being typed, where the tool takes a typed value: while a gesture waits for one (its text is
    /// empty at first), and wherever something has been typed.
    pub fn entry(&self) -> Option<&Entry> {
        self.entry.as_ref()
    }

    /// The live dimension that typed figures go to.
    pub fn focus(&self) -> Option<DimensionId> {
        self.focus
    }

    pub fn status(&self) -> &Status {
        &self.status
    }

    /// Makes an edit that comes from a pane or a remedy, as one undo step. A running gesture is dropped.
    pub fn apply(&mut self, label: &str, edit: &Edit) -> Result<(), EditError> {
        let start = self.begin();
        self.drop_gesture();
        let result = self.history.commit(label, edit);
        if result.is_ok() {
            self.settle();
        }
        self.end(start);
        result
    }

    /// Undoes one step; gives its label. A running gesture is dropped.
    pub fn undo(&mut self) -> Option<String> {
        let start = self.begin();
        self.drop_gesture();
        let label = self.history.undo();
        self.settle();
        self.end(start);
        label
    }

    /// Does again what was undone; gives its label.
    pub fn redo(&mut self) -> Option<String> {
        let start = self.begin();
        self.drop_gesture();
        let label = self.history.redo();
        self.settle();
        self.end(start);
        label
    }

    /// The label of the step that undo would take back.
    pub fn can_undo(&self) -> Option<&str> {
        self.history.can_undo()
    }

    pub fn can_redo(&self) -> Option<&str> {
        self.history.can_redo()
    }

    /// Live measurements of the running gesture, and of the selected element or the thing being placed.
    pub fn dimensions(&mut self) -> Vec<Dimension> {
        let mut dimensions = self.active.tool().dimensions();
        let select = self.tool == ToolKind::Select;
        if self.marquee().is_some() || (!select && Arc::ptr_eq(&self.shown, self.history.now())) {
            return dimensions;
        }
        let shown = Arc::clone(&self.shown);
        let facts = self.memo.facts(&shown);
        if !select {
            dimensions.extend(dims::of_ghost(&facts, self.history.now()));
            return dimensions;
        }
        let own = dims::of_selection(&facts, &self.selection);
        let mut taken: Vec<DimensionId> = dimensions.iter().map(|d| d.id).collect();
        if self.busy() && taken.contains(&DimensionId::Distance) {
            // A tape along a thing that moves would hide it.
            taken.push(DimensionId::Length);
        }
        dimensions.extend(own.into_iter().filter(|d| !taken.contains(&d.id)));
        dimensions
    }

    /// After the committed plan has changed: shows it, and forgets what is no longer there.
    fn settle(&mut self) {
        self.stops.clear();
        self.shown = Arc::clone(self.history.now());
        let plan = Arc::clone(&self.shown);
        self.selection.retain(|id| plan.get(*id).is_some());
        self.hovered = self.hovered.filter(|id| plan.get(*id).is_some());
        self.selection_before = self.selection.clone();
        self.refresh_entry();
    }

    /// Puts into the status why something was refused, to stay until the next press or key.
    fn refuse(&mut self, why: String) {
        self.lasting = Some(why.clone());
        self.status.refused = Some(why);
    }

    /// Drops the running gesture: the tool is ready again and nothing is left of it.
    fn drop_gesture(&mut self) {
        self.status.refused = None;
        self.lasting = None;
        self.active = Active::ready(self.tool);
        self.shown = Arc::clone(self.history.now());
        self.status.caught = None;
        self.status.expects = self.active.tool().expects().to_owned();
        self.entry = None;
        self.focus = None;
        self.hovered = None;
    }

    /// Runs something with what the tools may look at.
    fn with_cx<T>(&mut self, run: impl FnOnce(&mut Active, &Cx<'_>) -> T) -> T {
        let plan = Arc::clone(self.history.now());
        let facts = self.memo.facts(&plan);
        let cx = Cx {
            plan: &plan,
            facts: &facts,
            options: &self.options,
            system: self.system,
            selection: &self.selection,
            hidden: self.hidden,
            stops: &self.stops,
        };
        run(&mut self.active, &cx)
    }

    /// Starts timing a change.
    fn begin(&mut self) -> std::time::Duration {
        self.memo.work = Work::default();
        self.memo.now()
    }

    /// Ends timing a change: what was not deriving or checking was the edit.
    fn end(&mut self, start: std::time::Duration) {
        let spent = self.memo.now().saturating_sub(start);
        let work = &mut self.memo.work;
        work.edit = spent.saturating_sub(work.derive + work.check);
    }
}
