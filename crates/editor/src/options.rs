//! What the next placed element will be.

use measure::Len;
use plan::State;
use plan::element::{
    ColumnShape, Door, Furnishing, Layer, OverheadKind, RoomUse, ServiceKind, Window,
};

/// Settings of the tools: the element that the next click or drag will place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ToolOptions {
    pub shell_thickness: Len,
    pub shell_height: Len,
    pub partition_layers: Vec<Layer>,
    pub partition_state: State,
    pub stud_spacing: Len,
    pub furring_layers: Vec<Layer>,
    pub door: Door,
    pub window: Window,
    pub column: ColumnShape,
    pub stair_width: Len,
    pub stair_risers: u32,
    pub stair_rise: Len,
    pub stair_run: Len,
    pub stair_headroom: Len,
    pub overhead: OverheadKind,
    pub overhead_width: Len,
    pub overhead_underside: Len,
    pub service: ServiceKind,
    /// Name, size and height of the next furnishing; its place is not used.
    pub furnishing: Furnishing,
    pub room_use: RoomUse,
    pub room_name: String,
    pub note: String,
    /// Catch faces, ends, crossings and directions.
    pub snap: bool,
    /// The grid that points fall on when nothing else is caught; zero for none.
    pub grid: Len,
}
