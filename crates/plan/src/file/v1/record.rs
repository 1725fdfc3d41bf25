//! One element of schema 1: a name for the kind, then its facts.

use serde::{Deserialize, Serialize};

use crate::detail::Details;
use crate::file::length::L;

use super::parts::{Clear, ColumnShape, Facing, Layer, OverheadShape, P, Well};
use super::words::{
    DoorOperation, End, Justify, Mount, OverheadKind, RoomUse, ServiceKind, Side, State,
    WindowOperation,
};

#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) enum Record {
    Shell {
        id: u32,
        state: State,
        a: P,
        b: P,
        thickness: L,
        height: L,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Partition {
        id: u32,
        state: State,
        a: P,
        b: P,
        justify: Justify,
        layers: Vec<Layer>,
        spacing: L,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Furring {
        id: u32,
        state: State,
        host: u32,
        from: L,
        to: L,
        layers: Vec<Layer>,
        spacing: L,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Door {
        id: u32,
        state: State,
        host: u32,
        at: L,
        operation: DoorOperation,
        leaf_width: L,
        leaf_height: L,
        hinge: End,
        swing: Side,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Window {
        id: u32,
        state: State,
        host: u32,
        at: L,
        operation: WindowOperation,
        frame_width: L,
        frame_height: L,
        clear: Clear,
        sill: L,
        grade: L,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        well: Option<Well>,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Column {
        id: u32,
        state: State,
        at: P,
        shape: ColumnShape,
        facing: Facing,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Stair {
        id: u32,
        state: State,
        foot: P,
        up: Facing,
        width: L,
        risers: u32,
        rise: L,
        run: L,
        headroom: L,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Overhead {
        id: u32,
        state: State,
        kind: OverheadKind,
        shape: OverheadShape,
        underside: L,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Service {
        id: u32,
        state: State,
        kind: ServiceKind,
        at: P,
        facing: Facing,
        mount: Mount,
        width: L,
        depth: L,
        height: L,
        bottom: L,
        /// Width and height of the access opening.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        access: Option<(L, L)>,
        #[serde(default, skip_serializing_if = "Option::is_none")]
        serves: Option<u32>,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Furnishing {
        id: u32,
        state: State,
        name: String,
        at: P,
        facing: Facing,
        width: L,
        depth: L,
        height: L,
        fixed: bool,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    RoomTag {
        id: u32,
        state: State,
        at: P,
        name: String,
        room_use: RoomUse,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    Note {
        id: u32,
        state: State,
        at: P,
        text: String,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
    SectionLine {
        id: u32,
        state: State,
        a: P,
        b: P,
        #[serde(default, skip_serializing_if = "Details::is_empty")]
        details: Details,
    },
}

impl Record {
    /// What is stated besides the figures.
    pub(crate) fn details(&self) -> &Details {
        match self {
            Record::Shell { details, .. }
            | Record::Partition { details, .. }
            | Record::Furring { details, .. }
            | Record::Door { details, .. }
            | Record::Window { details, .. }
            | Record::Column { details, .. }
            | Record::Stair { details, .. }
            | Record::Overhead { details, .. }
            | Record::Service { details, .. }
            | Record::Furnishing { details, .. }
            | Record::RoomTag { details, .. }
            | Record::Note { details, .. }
            | Record::SectionLine { details, .. } => details,
        }
    }
}
