//! Doors, windows and cased openings.

use measure::Len;
use serde::{Deserialize, Serialize};

use super::ElementId;

/// An opening in a wall.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Opening {
    /// The foundation wall or partition it is in. It also cuts furring on that wall.
    pub host: ElementId,
    /// From the host's `a` along its line to the near edge of the opening.
    pub at: Len,
    pub kind: OpeningKind,
}

#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum OpeningKind {
    Door(Door),
    Window(Window),
}

/// How a door moves.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum DoorOperation {
    #[default]
    Hinged,
    Sliding,
    Pocket,
    Bifold,
    /// No leaf.
    Cased,
}

/// An end of the host wall's line.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum End {
    /// The end `a`.
    #[default]
    Start,
    /// The end `b`.
    Finish,
}

/// A side of the host wall, looking from its `a` to its `b`.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Side {
    #[default]
    Left,
    Right,
}

/// A door or cased opening.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Door {
    pub operation: DoorOperation,
    /// Width of the leaf (of all leaves together); of the finished opening when cased.
    pub leaf_width: Len,
    pub leaf_height: Len,
    /// The jamb that carries the hinge (hinged, bifold), or into which it slides (pocket, sliding).
    pub hinge: End,
    /// The side it swings or folds to.
    pub swing: Side,
}

/// How a window opens.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum WindowOperation {
    Casement,
    #[default]
    Slider,
    /// One sash slides up.
    Hung,
    /// Hinged at the top, opens out.
    Awning,
    /// Hinged at the bottom, opens in.
    Hopper,
    Fixed,
}

/// Where the net clear opening comes from.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub enum ClearOpening {
    /// Worked out from the frame by the operation, and marked as estimated.
    #[default]
    Estimated,
    /// From the maker's sheet.
    Sheet { width: Len, height: Len },
}

/// A well outside a window below grade.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Well {
    /// Clear, along the wall.
    pub width: Len,
    /// Clear, out from the wall.
    pub projection: Len,
    /// From the well's floor up to the outside grade.
    pub depth: Len,
    /// A permanent ladder or steps.
    pub ladder: bool,
    /// How far the ladder takes from the clear projection; zero where there is none.
    pub ladder_projection: Len,
}

/// A window. Heights are from the slab; the rules take off the floor build-up.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Window {
    pub operation: WindowOperation,
    pub frame_width: Len,
    pub frame_height: Len,
    pub clear: ClearOpening,
    /// From the slab to the bottom of the clear opening.
    pub sill: Len,
    /// From the slab to the outside grade beside the window.
    pub grade: Len,
    pub well: Option<Well>,
}

impl Opening {
    /// Width along the wall.
    pub fn width(&self) -> Len {
        match &self.kind {
            OpeningKind::Door(d) => d.leaf_width,
            OpeningKind::Window(w) => w.frame_width,
        }
    }

    pub fn door(&self) -> Option<&Door> {
        match &self.kind {
            OpeningKind::Door(d) => Some(d),
            OpeningKind::Window(_) => None,
        }
    }

    pub fn window(&self) -> Option<&Window> {
        match &self.kind {
            OpeningKind::Window(w) => Some(w),
            OpeningKind::Door(_) => None,
        }
    }
}

impl DoorOperation {
    pub const ALL: [DoorOperation; 5] = [
        DoorOperation::Hinged,
        DoorOperation::Sliding,
        DoorOperation::Pocket,
        DoorOperation::Bifold,
        DoorOperation::Cased,
    ];

    pub fn word(self) -> &'static str {
        match self {
            DoorOperation::Hinged => "hinged door",
            DoorOperation::Sliding => "sliding door",
            DoorOperation::Pocket => "pocket door",
            DoorOperation::Bifold => "bifold door",
            DoorOperation::Cased => "cased opening",
        }
    }
}

impl WindowOperation {
    pub const ALL: [WindowOperation; 6] = [
        WindowOperation::Casement,
        WindowOperation::Slider,
        WindowOperation::Hung,
        WindowOperation::Awning,
        WindowOperation::Hopper,
        WindowOperation::Fixed,
    ];

    pub fn word(self) -> &'static str {
        match self {
            WindowOperation::Casement => "casement",
            WindowOperation::Slider => "slider",
            WindowOperation::Hung => "hung",
            WindowOperation::Awning => "awning",
            WindowOperation::Hopper => "hopper",
            WindowOperation::Fixed => "fixed",
        }
    }
}

impl End {
    pub fn other(self) -> End {
        match self {
            End::Start => End::Finish,
            End::Finish => End::Start,
        }
    }
}

impl Side {
    pub fn other(self) -> Side {
        match self {
            Side::Left => Side::Right,
            Side::Right => Side::Left,
        }
    }
}
