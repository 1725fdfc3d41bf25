//! One element of schema 1: a name for the kind, then its facts.

use serde::{Deserialize, Serialize};

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
    },
    Partition {
        id: u32,
        state: State,
        a: P,
        b: P,
        justify: Justify,
        layers: Vec<Layer>,
        spacing: L,
    },
    Furring {
        id: u32,
        state: State,
        host: u32,
        from: L,
        to: L,
        layers: Vec<Layer>,
        spacing: L,
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
    },
    Column {
        id: u32,
        state: State,
        at: P,
        shape: ColumnShape,
        facing: Facing,
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
    },
    Overhead {
        id: u32,
        state: State,
        kind: OverheadKind,
        shape: OverheadShape,
        underside: L,
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
    },
    RoomTag {
        id: u32,
        state: State,
        at: P,
        name: String,
        room_use: RoomUse,
    },
    Note {
        id: u32,
        state: State,
        at: P,
        text: String,
    },
}
