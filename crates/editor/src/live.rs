//! What the editor tells while a person works: status, snaps, live dimensions, the typed entry.

use geometry::Pt;
use measure::Len;
use plan::ElementId;

/// What a point was caught by, in one word, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Snap {
    /// `end`, `face`, `crossing`, `square`, `45°`, `parallel`, `grid`, `middle` …
    pub word: &'static str,
    pub at: Pt,
    /// A guide line to paint, where a direction was caught.
    pub guide: Option<(Pt, Pt)>,
}

/// The status line: what the tool expects next and what was caught.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Status {
    pub expects: String,
    pub caught: Option<Snap>,
    /// Why the last gesture or entry was refused.
    pub refused: Option<String>,
}

/// Names a live dimension, so that its figure can be typed into.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum DimensionId {
    /// Length of the wall being drawn or selected.
    Length,
    /// Clear distance from the selected wall's left face to the next face.
    ClearLeft,
    /// Clear distance from its right face.
    ClearRight,
    /// From the opening's near jamb to the start of its wall, and from its far jamb to the finish.
    ToStart,
    ToFinish,
    /// Distance measured with the tape, or moved by a drag.
    Distance,
}

/// A live measurement, painted as a tape blade from `from` to `to`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Dimension {
    pub id: DimensionId,
    pub from: Pt,
    pub to: Pt,
    pub value: Len,
    /// The figure can be typed into: see `Session::type_dimension`.
    pub editable: bool,
    /// The element that the far end touches.
    pub against: Option<ElementId>,
}

/// A value being typed while a tool waits: the length of the wall being drawn, the distance of a drag.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    pub prompt: &'static str,
    pub text: String,
}
