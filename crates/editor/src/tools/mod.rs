//! The tools as state machines, one file each. A tool is told what happens ([`Event`]) and what there is
//! ([`Cx`]); it answers with a [`Step`]: an edit to show, an edit to make, or why it can't. It changes nothing
//! itself, so dropping it leaves everything as it was.

mod column;
mod door;
mod furnishing;
mod furring;
mod hosted;
mod note;
mod overhead;
mod partition;
mod place;
mod room_tag;
mod rubber;
mod section;
mod select;
mod service;
mod shell;
mod stair;
mod tape;
mod window;

pub(crate) use hosted::to_ends;

use std::collections::BTreeSet;

use geometry::{Facing, Pt};
use measure::{Len, Precision, System};
use plan::{Draft, Edit, Element, ElementId, Plan};
use space::Facts;

use crate::pointer::Pointer;
use crate::snap::Catch;
use crate::{Dimension, DimensionId, Hidden, Snap, Stop, ToolKind, ToolOptions};

/// What happens to a tool.
#[derive(Clone, Debug)]
pub(crate) enum Event {
    Press(Pointer),
    Move(Pointer),
    Release(Pointer),
    Double(Pointer),
    /// A length typed into one of the fields that [`Tool::fields`] names.
    Length(DimensionId, Len),
    /// A point typed as `x, y`.
    Point(Pt),
    /// Enter with nothing typed.
    Enter,
    /// An arrow key: the direction of the line being drawn.
    Arrow(Facing),
    /// A quarter turn counter-clockwise of what is being placed.
    Turn,
}

/// What a tool may look at.
pub(crate) struct Cx<'a> {
    /// The plan as committed.
    pub plan: &'a Plan,
    /// Its facts.
    pub facts: &'a Facts,
    pub options: &'a ToolOptions,
    pub system: System,
    pub selection: &'a BTreeSet<ElementId>,
    pub hidden: Hidden,
    /// Where a drag sticks because something breaks further on.
    pub stops: &'a [Stop],
}

impl<'a> Cx<'a> {
    /// What there is to snap to, without the elements in `skip`.
    pub fn catch(&self, skip: &'a [ElementId]) -> Catch<'a> {
        Catch {
            plan: self.plan,
            facts: self.facts,
            skip,
            grid: self.options.grid,
            on: self.options.snap,
        }
    }

    /// A length in the reader's units.
    pub fn say(&self, len: Len) -> String {
        self.system.len(len, Precision::Tape)
    }

    /// The short name of an element.
    pub fn name(&self, id: ElementId) -> String {
        self.plan.get(id).map_or_else(|| format!("element {}", id.0), Element::name)
    }
}

/// An edit with its name in the user's words.
#[derive(Clone, Debug)]
pub(crate) struct Commit {
    pub label: String,
    pub edit: Edit,
    /// What is selected afterwards; `None` leaves the selection.
    pub select: Option<Vec<ElementId>>,
}

/// What a tool answers.
#[derive(Clone, Debug, Default)]
pub(crate) struct Step {
    /// The edit that the running gesture would make.
    pub preview: Option<Edit>,
    pub commit: Option<Commit>,
    pub caught: Option<Snap>,
    pub refused: Option<String>,
    pub select: Option<BTreeSet<ElementId>>,
    /// The element under the pointer; set by every move.
    pub hovered: Option<ElementId>,
}

impl Step {
    pub fn refuse(why: impl Into<String>) -> Step {
        Step { refused: Some(why.into()), ..Step::default() }
    }

    pub fn preview(edit: Edit, caught: Option<Snap>) -> Step {
        Step { preview: Some(edit), caught, ..Step::default() }
    }

    /// Adds one element and selects it.
    pub fn add(cx: &Cx<'_>, label: String, draft: Draft) -> Step {
        let select = Some(cx.plan.next_ids(1).collect());
        Step { commit: Some(Commit { label, edit: Edit::Add(draft), select }), ..Step::default() }
    }
}

/// A tool: an enum of its states.
pub(crate) trait Tool {
    fn on(&mut self, event: &Event, cx: &Cx<'_>) -> Step;

    /// Whether a gesture is running, so that Escape has something to drop.
    fn busy(&self) -> bool;

    /// What the tool expects next, for the status line.
    fn expects(&self) -> &'static str;

    /// The lengths that a typed figure may mean now.
    fn fields(&self) -> &'static [DimensionId] {
        &[]
    }

    /// Whether a point typed as `x, y` is taken now.
    fn takes_point(&self) -> bool {
        false
    }

    /// Live measurements of the running gesture.
    fn dimensions(&self) -> Vec<Dimension> {
        Vec::new()
    }

    /// Two corners of the box being drawn round what is to be selected.
    fn marquee(&self) -> Option<(Pt, Pt)> {
        None
    }
}

/// The active tool.
#[derive(Clone, Debug)]
pub(crate) enum Active {
    Select(select::Select),
    Tape(tape::Tape),
    Shell(shell::Shell),
    Column(column::Column),
    Stair(stair::Stair),
    Overhead(overhead::Overhead),
    Service(service::Service),
    Partition(partition::Partition),
    Furring(furring::Furring),
    Door(door::Door),
    Window(window::Window),
    Furnishing(furnishing::Furnishing),
    RoomTag(room_tag::RoomTag),
    Note(note::Note),
    Section(section::Section),
}

impl Active {
    /// A tool in its first state.
    pub fn ready(kind: ToolKind) -> Active {
        match kind {
            ToolKind::Select => Active::Select(select::Select::default()),
            ToolKind::Tape => Active::Tape(tape::Tape::default()),
            ToolKind::Shell => Active::Shell(shell::Shell::default()),
            ToolKind::Column => Active::Column(column::Column::default()),
            ToolKind::Stair => Active::Stair(stair::Stair::default()),
            ToolKind::Overhead => Active::Overhead(overhead::Overhead::default()),
            ToolKind::Service => Active::Service(service::Service::default()),
            ToolKind::Partition => Active::Partition(partition::Partition::default()),
            ToolKind::Furring => Active::Furring(furring::Furring::default()),
            ToolKind::Door => Active::Door(door::Door::default()),
            ToolKind::Window => Active::Window(window::Window::default()),
            ToolKind::Furnishing => Active::Furnishing(furnishing::Furnishing::default()),
            ToolKind::RoomTag => Active::RoomTag(room_tag::RoomTag::default()),
            ToolKind::Note => Active::Note(note::Note::default()),
            ToolKind::Section => Active::Section(section::Section::default()),
        }
    }

    pub fn tool(&self) -> &dyn Tool {
        match self {
            Active::Select(t) => t,
            Active::Tape(t) => t,
            Active::Shell(t) => t,
            Active::Column(t) => t,
            Active::Stair(t) => t,
            Active::Overhead(t) => t,
            Active::Service(t) => t,
            Active::Partition(t) => t,
            Active::Furring(t) => t,
            Active::Door(t) => t,
            Active::Window(t) => t,
            Active::Furnishing(t) => t,
            Active::RoomTag(t) => t,
            Active::Note(t) => t,
            Active::Section(t) => t,
        }
    }

    pub fn tool_mut(&mut self) -> &mut dyn Tool {
        match self {
            Active::Select(t) => t,
            Active::Tape(t) => t,
            Active::Shell(t) => t,
            Active::Column(t) => t,
            Active::Stair(t) => t,
            Active::Overhead(t) => t,
            Active::Service(t) => t,
            Active::Partition(t) => t,
            Active::Furring(t) => t,
            Active::Door(t) => t,
            Active::Window(t) => t,
            Active::Furnishing(t) => t,
            Active::RoomTag(t) => t,
            Active::Note(t) => t,
            Active::Section(t) => t,
        }
    }
}
