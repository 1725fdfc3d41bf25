//! The elements of a plan.

mod fixture;
mod opening;
mod overhead;
mod section;
mod service;
mod stair;
mod tag;
mod wall;

use geometry::{Pt, Seg};
use serde::{Deserialize, Serialize};

use crate::detail::{Detail, Details, Value};

pub use fixture::{Column, ColumnShape, Furnishing};
pub use opening::{
    ClearOpening, Door, DoorOperation, End, Opening, OpeningKind, Side, Well, Window,
    WindowOperation,
};
pub use overhead::{Overhead, OverheadKind, OverheadShape};
pub use section::SectionLine;
pub(crate) use section::mark as section_mark;
pub use service::{AccessOpening, Mount, ServiceKind, ServicePoint};
pub use stair::Stair;
pub use tag::{Note, RoomTag, RoomUse};
pub use wall::{Furring, Justify, Layer, Material, Partition, ShellWall};

/// The id of an element: stable, saved, and never used again in its plan, also after undo.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct ElementId(pub u32);

/// Whether an element is there already, comes, or goes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum State {
    Existing,
    #[default]
    New,
    Removed,
}

/// What an element is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum Body {
    Shell(ShellWall),
    Partition(Partition),
    Furring(Furring),
    Opening(Opening),
    Column(Column),
    Stair(Stair),
    Overhead(Overhead),
    Service(ServicePoint),
    Furnishing(Furnishing),
    RoomTag(RoomTag),
    Note(Note),
    Section(SectionLine),
}

/// One element with its id.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Element {
    pub id: ElementId,
    pub state: State,
    pub body: Body,
    /// What is stated besides the figures; only what fits the body.
    pub details: Details,
}

/// An element that has no id yet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Draft {
    pub state: State,
    pub body: Body,
    pub details: Details,
}

impl Draft {
    /// An element of which no details are stated.
    pub fn new(state: State, body: Body) -> Draft {
        Draft { state, body, details: Details::default() }
    }
}

impl Element {
    /// The short name shown to the user: a letter for the kind and the id, such as `W14`.
    pub fn name(&self) -> String {
        format!("{}{}", self.body.letter(), self.id.0)
    }

    /// What is stated of a detail.
    pub fn stated(&self, detail: &Detail) -> Option<Value> {
        self.details.get(detail)
    }

    /// Whether the element stands in the finished basement (not removed).
    pub fn stands(&self) -> bool {
        self.state != State::Removed
    }
}

/// What an element is, without its figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum BodyKind {
    Shell,
    Partition,
    Furring,
    Door,
    Window,
    Column,
    Stair,
    Overhead,
    Service,
    Furnishing,
    RoomTag,
    Note,
    Section,
}

impl BodyKind {
    /// How many there are.
    pub const COUNT: usize = 13;
}

impl Body {
    pub fn kind(&self) -> BodyKind {
        match self {
            Body::Shell(_) => BodyKind::Shell,
            Body::Partition(_) => BodyKind::Partition,
            Body::Furring(_) => BodyKind::Furring,
            Body::Opening(o) => match o.kind {
                OpeningKind::Door(_) => BodyKind::Door,
                OpeningKind::Window(_) => BodyKind::Window,
            },
            Body::Column(_) => BodyKind::Column,
            Body::Stair(_) => BodyKind::Stair,
            Body::Overhead(_) => BodyKind::Overhead,
            Body::Service(_) => BodyKind::Service,
            Body::Furnishing(_) => BodyKind::Furnishing,
            Body::RoomTag(_) => BodyKind::RoomTag,
            Body::Note(_) => BodyKind::Note,
            Body::Section(_) => BodyKind::Section,
        }
    }

    /// The letter of the short name.
    pub fn letter(&self) -> &'static str {
        match self {
            Body::Shell(_) => "F",
            Body::Partition(_) => "W",
            Body::Furring(_) => "U",
            Body::Opening(o) => match o.kind {
                OpeningKind::Door(_) => "D",
                OpeningKind::Window(_) => "N",
            },
            Body::Column(_) => "C",
            Body::Stair(_) => "T",
            Body::Overhead(_) => "H",
            Body::Service(_) => "S",
            Body::Furnishing(_) => "B",
            Body::RoomTag(_) => "R",
            Body::Note(_) => "X",
            Body::Section(_) => "L",
        }
    }

    /// What the user calls it, in lower case: `partition`, `main water valve`, `desk`.
    pub fn word(&self) -> &str {
        match self {
            Body::Shell(_) => "foundation wall",
            Body::Partition(_) => "partition",
            Body::Furring(_) => "furring",
            Body::Opening(o) => match &o.kind {
                OpeningKind::Door(d) => d.operation.word(),
                OpeningKind::Window(_) => "window",
            },
            Body::Column(_) => "column",
            Body::Stair(_) => "stair",
            Body::Overhead(o) => o.kind.word(),
            Body::Service(s) => s.kind.word(),
            Body::Furnishing(f) => &f.name,
            Body::RoomTag(_) => "room tag",
            Body::Note(_) => "note",
            Body::Section(_) => "section line",
        }
    }

    /// The element that this one is fixed to, and goes with when that is deleted.
    pub fn host(&self) -> Option<ElementId> {
        match self {
            Body::Opening(o) => Some(o.host),
            Body::Furring(f) => Some(f.host),
            _ => None,
        }
    }

    /// The drawn line of a foundation wall or partition; openings are placed along it.
    pub fn wall_line(&self) -> Option<Seg> {
        match self {
            Body::Shell(w) => Some(w.line()),
            Body::Partition(w) => Some(w.line()),
            _ => None,
        }
    }

    /// Every point that places the element.
    pub fn points(&self) -> Vec<Pt> {
        match self {
            Body::Shell(w) => vec![w.a, w.b],
            Body::Partition(w) => vec![w.a, w.b],
            Body::Furring(_) | Body::Opening(_) => vec![],
            Body::Column(c) => vec![c.at],
            Body::Stair(s) => vec![s.foot],
            Body::Overhead(o) => match &o.shape {
                OverheadShape::Run { a, b, .. } => vec![*a, *b],
                OverheadShape::Outline(ring) => ring.clone(),
            },
            Body::Service(s) => vec![s.at],
            Body::Furnishing(f) => vec![f.at],
            Body::RoomTag(t) => vec![t.at],
            Body::Note(n) => vec![n.at],
            Body::Section(s) => vec![s.a, s.b],
        }
    }
}
