//! What the next placed element will be.

use geometry::{Facing, Pt};
use measure::{Len, System};
use plan::State;
use plan::element::{
    ClearOpening, ColumnShape, Door, DoorOperation, End, Furnishing, Layer, Material, OverheadKind,
    Partition, RoomUse, ServiceKind, Side, Window, WindowOperation,
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

/// Usual sizes (common practice, no source): an 8 in foundation wall, a 2x4 partition with 1/2 in board,
/// a 32 in door, a small slider high in the wall.
impl Default for ToolOptions {
    fn default() -> ToolOptions {
        let half = Len::sixty_fourths(32);
        let partition = Partition::two_by_four(Pt::default(), Pt::default());
        ToolOptions {
            shell_thickness: Len::inches(8),
            shell_height: Len::inches(93),
            partition_layers: partition.layers,
            partition_state: State::New,
            stud_spacing: partition.spacing,
            furring_layers: vec![
                Layer::new(Material::Foam, Len::inches(2)),
                Layer::new(Material::Stud, Len::sixty_fourths(224)),
                Layer::new(Material::Board, half),
            ],
            door: Door {
                operation: DoorOperation::Hinged,
                leaf_width: Len::inches(32),
                leaf_height: Len::inches(80),
                hinge: End::Start,
                swing: Side::Left,
            },
            window: Window {
                operation: WindowOperation::Slider,
                frame_width: Len::inches(32),
                frame_height: Len::inches(16),
                clear: ClearOpening::Estimated,
                sill: Len::inches(70),
                grade: Len::inches(66),
                well: None,
            },
            column: ColumnShape::Round { diameter: Len::sixty_fourths(224) },
            stair_width: Len::inches(36),
            stair_risers: 13,
            stair_rise: Len::sixty_fourths(496),
            stair_run: Len::inches(10),
            stair_headroom: Len::inches(80),
            overhead: OverheadKind::Duct,
            overhead_width: Len::inches(24),
            overhead_underside: Len::inches(84),
            service: ServiceKind::MainWaterValve,
            furnishing: Furnishing {
                name: "desk".to_owned(),
                at: Pt::default(),
                facing: Facing::SOUTH,
                width: Len::inches(60),
                depth: Len::inches(30),
                height: Len::inches(29),
                fixed: false,
            },
            room_use: RoomUse::Office,
            room_name: String::new(),
            note: "Note".to_owned(),
            snap: true,
            grid: usual_grid(System::Imperial),
        }
    }
}

/// The grid that a unit system starts with: 1 in, or 1 cm.
pub(crate) fn usual_grid(system: System) -> Len {
    match system {
        System::Imperial => Len::inches(1),
        System::Metric => Len::mm(10),
    }
}
