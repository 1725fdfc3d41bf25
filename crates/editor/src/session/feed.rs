//! Gestures to tool events, and the typed entry.

use std::sync::Arc;

use geometry::Facing;
use plan::EditError;

use super::{Session, dims};
use crate::entry::{is_point, read_point, read_signed, unit_word};
use crate::pointer::Pointer;
use crate::tools::{Event, Step};
use crate::{DimensionId, EditorKey, Entry, Gesture, Mods, ToolKind};

/// The longest text that an entry takes.
const LONGEST: usize = 40;

impl Session {
    /// Feeds one gesture to the active tool.
    pub fn feed(&mut self, gesture: &Gesture) {
        let start = self.begin();
        // Why a press or a key was refused stays to be read while the pointer moves on; why a change can't be
        // shown goes with the pointer.
        let passing = matches!(gesture, Gesture::Move { .. } | Gesture::Release { .. });
        let lasting = self.lasting.take().filter(|_| passing);
        self.status.refused = None;
        match gesture {
            Gesture::Press { at, reach, mods } => {
                self.selection_before = self.selection.clone();
                self.point_at(Pointer::new(*at, *reach, *mods), Event::Press);
            }
            Gesture::Move { at, reach, mods } => {
                self.point_at(Pointer::new(*at, *reach, *mods), Event::Move);
            }
            Gesture::Release { at, reach, mods } => {
                self.point_at(Pointer::new(*at, *reach, *mods), Event::Release);
            }
            Gesture::DoubleClick { at, reach, mods } => {
                self.point_at(Pointer::new(*at, *reach, *mods), Event::Double);
            }
            Gesture::Key { key, mods } => self.key(*key, *mods),
            Gesture::Char(c) => self.char(*c),
        }
        self.lasting = match &self.status.refused {
            Some(why) if !matches!(gesture, Gesture::Move { .. }) => Some(why.clone()),
            _ => lasting,
        };
        self.status.refused = self.status.refused.take().or(self.lasting.clone());
        self.end(start);
    }

    fn point_at(&mut self, pointer: Pointer, event: fn(Pointer) -> Event) {
        self.pointer = Some(pointer);
        self.event(&event(pointer));
    }

    fn key(&mut self, key: EditorKey, mods: Mods) {
        match key {
            EditorKey::Escape => self.escape(),
            EditorKey::Enter => self.enter(),
            EditorKey::Tab => self.tab(mods.shift),
            EditorKey::Backspace => {
                if let Some(entry) = &mut self.entry {
                    entry.text.pop();
                }
                self.refresh_entry();
            }
            EditorKey::Left => self.arrow(Facing::WEST, mods),
            EditorKey::Right => self.arrow(Facing::EAST, mods),
            EditorKey::Up => self.arrow(Facing::NORTH, mods),
            EditorKey::Down => self.arrow(Facing::SOUTH, mods),
            EditorKey::FlipHinge if self.tool == ToolKind::Door => {
                self.options.door.hinge = self.options.door.hinge.other();
                self.look_again();
            }
            EditorKey::FlipSwing if self.tool == ToolKind::Door => {
                self.options.door.swing = self.options.door.swing.other();
                self.look_again();
            }
            EditorKey::FlipHinge => self.flip_hinge(),
            EditorKey::FlipSwing => self.flip_swing(),
            EditorKey::Turn if self.tool == ToolKind::Select && !self.busy() => {
                self.turn_selected()
            }
            EditorKey::Turn => {
                self.event(&Event::Turn);
                self.look_again();
            }
        }
    }

    /// Drops the running gesture with what it selected; with none running, clears the entry, then the selection.
    fn escape(&mut self) {
        if self.busy() {
            self.selection = std::mem::take(&mut self.selection_before);
        } else if self.entry.is_none() && self.tool == ToolKind::Select {
            self.selection.clear();
        }
        self.selection_before = self.selection.clone();
        self.drop_gesture();
    }

    fn arrow(&mut self, facing: Facing, mods: Mods) {
        if self.tool == ToolKind::Select && !self.busy() {
            self.nudge(facing, mods);
        } else {
            self.event(&Event::Arrow(facing));
            if !self.busy() {
                self.look_again();
            }
        }
    }

    /// Shows the tool the pointer again after something else has changed.
    fn look_again(&mut self) {
        if let Some(pointer) = self.pointer {
            self.event(&Event::Move(pointer));
        }
    }

    /// Hands the tool an event and does what it answers.
    pub(super) fn event(&mut self, event: &Event) {
        let before = self.active.clone();
        let step = self.with_cx(|active, cx| active.tool_mut().on(event, cx));
        let committed = step.commit.is_some();
        if let Err(error) = self.take(step) {
            // The edit can't be made: the gesture goes on as it was.
            self.active = before;
            self.status.refused = Some(error.to_string());
        } else if committed {
            self.entry = None;
            self.focus = None;
        }
        self.status.expects = self.active.tool().expects().to_owned();
        self.refresh_entry();
    }

    fn take(&mut self, step: Step) -> Result<(), EditError> {
        self.hovered = step.hovered;
        self.status.caught = step.caught;
        if step.refused.is_some() {
            self.status.refused = step.refused;
        }
        if let Some(selection) = step.select {
            self.selection = selection;
            self.focus = None;
        }
        self.shown = Arc::clone(self.history.now());
        if let Some(commit) = step.commit {
            self.history.commit(commit.label, &commit.edit)?;
            if let Some(ids) = commit.select {
                self.selection = ids.into_iter().collect();
            }
            self.settle();
        } else if let Some(edit) = step.preview {
            match self.history.now().with(&edit) {
                Ok(plan) => self.shown = Arc::new(plan),
                Err(error) => self.status.refused = Some(error.to_string()),
            }
        }
        Ok(())
    }

    fn char(&mut self, c: char) {
        if c.is_control() || !(self.takes_typing()) {
            return;
        }
        let text = self.entry.take().map(|entry| entry.text).unwrap_or_default();
        let text =
            if text.chars().count() < LONGEST { text + c.encode_utf8(&mut [0; 4]) } else { text };
        let entry = Entry { prompt: "", text, unit: unit_word(self.system) };
        self.entry = Some(entry);
        self.refresh_entry();
    }

    fn takes_typing(&mut self) -> bool {
        self.active.tool().takes_point() || !self.fields().is_empty()
    }

    /// The live dimensions that a typed figure may go to: those of the running gesture first.
    pub(super) fn fields(&mut self) -> Vec<DimensionId> {
        let tool = self.active.tool();
        let mut fields = tool.fields().to_vec();
        if self.tool != ToolKind::Select || (tool.busy() && fields.is_empty()) {
            return fields;
        }
        let plan = Arc::clone(self.history.now());
        let facts = self.memo.facts(&plan);
        let own = dims::of_selection(&facts, &self.selection);
        let own = own.into_iter().filter(|d| d.editable).map(|d| d.id);
        fields.extend(own.filter(|id| !tool.fields().contains(id)));
        fields
    }

    /// The live dimension that a typed figure is for.
    fn in_focus(&mut self) -> Option<DimensionId> {
        let own = self.active.tool().fields();
        let first = own.first().copied();
        match self.focus {
            None if first.is_some() => first,
            Some(id) if own.contains(&id) => Some(id),
            focus => {
                let fields = self.fields();
                focus.filter(|id| fields.contains(id)).or(fields.first().copied())
            }
        }
    }

    /// Moves what is typed to the next live dimension, or to the one before.
    fn tab(&mut self, back: bool) {
        let fields = self.fields();
        if fields.is_empty() {
            return;
        }
        let n = fields.len();
        let now = self.focus.and_then(|id| fields.iter().position(|field| *field == id));
        let next = match now {
            None if back => n - 1,
            // A gesture types into its first field without a Tab.
            None if self.busy() => 1 % n,
            None => 0,
            Some(i) if back => (i + n - 1) % n,
            Some(i) => (i + 1) % n,
        };
        self.focus = Some(fields[next]);
        let entry = Entry { prompt: "", text: String::new(), unit: unit_word(self.system) };
        self.entry = Some(entry);
        self.refresh_entry();
    }

    fn enter(&mut self) {
        let text =
            self.entry.as_ref().map(|entry| entry.text.trim().to_owned()).unwrap_or_default();
        if text.is_empty() {
            if self.focus.is_some() && !self.busy() {
                self.focus = None;
                self.entry = None;
                return;
            }
            return self.event(&Event::Enter);
        }
        if let Err(why) = self.typed(&text) {
            self.status.refused = Some(why);
        }
    }

    /// Reads what was typed and hands it on; the error says why it can't be.
    fn typed(&mut self, text: &str) -> Result<(), String> {
        if self.active.tool().takes_point() && is_point(text) {
            let point = read_point(text, self.system)?;
            self.event(&Event::Point(point));
            self.taken();
            return Ok(());
        }
        let field = self.focus.or(self.fields().first().copied());
        let Some(field) = field else {
            return Err(read_point(text, self.system).err().unwrap_or_default());
        };
        let value = read_signed(text, self.system)?;
        self.type_dimension(field, value)?;
        self.taken();
        Ok(())
    }

    /// Clears the entry after what was typed has been taken; what was refused stays, to be put right.
    fn taken(&mut self) {
        if self.status.refused.is_none() {
            self.entry = None;
            self.focus = None;
            self.refresh_entry();
        }
    }

    /// Brings the entry in step with the tool: its prompt, and whether there is one.
    pub(super) fn refresh_entry(&mut self) {
        let text = self.entry.take().map(|entry| entry.text).unwrap_or_default();
        let tool = self.active.tool();
        let waits = tool.busy() && !tool.fields().is_empty();
        if text.is_empty() && !waits && self.focus.is_none() {
            return;
        }
        let prompt = if tool.takes_point() && (is_point(&text) || tool.fields().is_empty()) {
            "x, y"
        } else {
            match self.in_focus() {
                Some(id) => id.word(),
                None => return,
            }
        };
        self.entry = Some(Entry { prompt, text, unit: unit_word(self.system) });
    }
}
