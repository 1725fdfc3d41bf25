//! Things that lower the ceiling.

use geometry::Pt;
use measure::Len;
use serde::{Deserialize, Serialize};

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum OverheadKind {
    Beam,
    #[default]
    Duct,
    Pipe,
    /// A boxed-in drop of the ceiling, its board included.
    Soffit,
}

#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum OverheadShape {
    /// A straight run: its middle line and its width.
    Run { a: Pt, b: Pt, width: Len },
    /// Any outline, counter-clockwise or clockwise, without crossing itself.
    Outline(Vec<Pt>),
}

/// A beam, duct, pipe run or soffit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Overhead {
    pub kind: OverheadKind,
    pub shape: OverheadShape,
    /// From the slab to its underside.
    pub underside: Len,
}

impl OverheadKind {
    pub const ALL: [OverheadKind; 4] =
        [OverheadKind::Beam, OverheadKind::Duct, OverheadKind::Pipe, OverheadKind::Soffit];

    pub fn word(self) -> &'static str {
        match self {
            OverheadKind::Beam => "beam",
            OverheadKind::Duct => "duct",
            OverheadKind::Pipe => "pipe run",
            OverheadKind::Soffit => "soffit",
        }
    }
}
