//! Service points: things that must stay reachable.

use geometry::{Facing, Placed, Pt};
use measure::Len;
use serde::{Deserialize, Serialize};

use super::ElementId;

#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
pub enum ServiceKind {
    #[default]
    MainWaterValve,
    FixtureValve,
    GasValve,
    Damper,
    Cleanout,
    FloorDrain,
    Sump,
    Ejector,
    JunctionBox,
    Panel,
    Disconnect,
    Furnace,
    WaterHeater,
    WaterMeter,
    GasMeter,
    RadonPipe,
    AirFilter,
    HoseBibValve,
    Receptacle,
    Switch,
    /// A ceiling or wall light.
    Light,
    SmokeAlarm,
    /// A carbon monoxide alarm.
    CoAlarm,
    /// A bath fan that blows outdoors.
    ExhaustFan,
    /// A valve that brings the street's pressure down.
    PressureReducer,
    /// A device that keeps used water from flowing back.
    BackflowPreventer,
    /// A vent that lets air in and keeps sewer gas back.
    AirAdmittanceValve,
    /// A flap in the drain against a sewer that backs up.
    BackwaterValve,
    /// The receptor of a washer's or a pump's hose.
    Standpipe,
    SupplyRegister,
    ReturnGrille,
    ClothesDryer,
}

/// What a service point is fixed to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Mount {
    /// Stands on or is set in the floor.
    Floor,
    #[default]
    Wall,
    /// Hangs between or under the joists.
    Ceiling,
}

/// An opening that the user provides to reach a thing behind or above finish: a door panel, a lay-in
/// tile, a hatch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct AccessOpening {
    pub width: Len,
    pub height: Len,
}

/// A thing that must stay reachable.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct ServicePoint {
    pub kind: ServiceKind,
    /// The middle of the back edge (the edge at the wall it hangs on).
    pub at: Pt,
    /// The way its service side looks.
    pub facing: Facing,
    pub mount: Mount,
    pub width: Len,
    pub depth: Len,
    /// From its bottom to its top.
    pub height: Len,
    /// From the slab to its bottom.
    pub bottom: Len,
    pub access: Option<AccessOpening>,
    /// The appliance that a valve or disconnect serves; the nearest is assumed where none is given.
    pub serves: Option<ElementId>,
}

impl ServicePoint {
    pub fn placed(&self) -> Placed {
        Placed { back: self.at, facing: self.facing, width: self.width, depth: self.depth }
    }

    /// A service point of a kind with its usual mount and size (common practice, no source).
    pub fn usual(kind: ServiceKind, at: Pt, facing: Facing) -> ServicePoint {
        let (mount, width, depth, height, bottom) = kind.usual_size();
        ServicePoint {
            kind,
            at,
            facing,
            mount,
            width: Len::inches(width),
            depth: Len::inches(depth),
            height: Len::inches(height),
            bottom: Len::inches(bottom),
            access: None,
            serves: None,
        }
    }
}

impl ServiceKind {
    pub const ALL: [ServiceKind; 32] = [
        ServiceKind::MainWaterValve,
        ServiceKind::FixtureValve,
        ServiceKind::GasValve,
        ServiceKind::Damper,
        ServiceKind::Cleanout,
        ServiceKind::FloorDrain,
        ServiceKind::Sump,
        ServiceKind::Ejector,
        ServiceKind::JunctionBox,
        ServiceKind::Panel,
        ServiceKind::Disconnect,
        ServiceKind::Furnace,
        ServiceKind::WaterHeater,
        ServiceKind::WaterMeter,
        ServiceKind::GasMeter,
        ServiceKind::RadonPipe,
        ServiceKind::AirFilter,
        ServiceKind::HoseBibValve,
        ServiceKind::Receptacle,
        ServiceKind::Switch,
        ServiceKind::Light,
        ServiceKind::SmokeAlarm,
        ServiceKind::CoAlarm,
        ServiceKind::ExhaustFan,
        ServiceKind::PressureReducer,
        ServiceKind::BackflowPreventer,
        ServiceKind::AirAdmittanceValve,
        ServiceKind::BackwaterValve,
        ServiceKind::Standpipe,
        ServiceKind::SupplyRegister,
        ServiceKind::ReturnGrille,
        ServiceKind::ClothesDryer,
    ];

    /// Whether it is a thing of the finished room, on its wall or ceiling: too flat to stand in anyone's way, and
    /// put where the finish is.
    pub fn is_device(self) -> bool {
        matches!(
            self,
            ServiceKind::Receptacle
                | ServiceKind::Switch
                | ServiceKind::Light
                | ServiceKind::SmokeAlarm
                | ServiceKind::CoAlarm
                | ServiceKind::ExhaustFan
                | ServiceKind::SupplyRegister
                | ServiceKind::ReturnGrille
        )
    }

    pub fn word(self) -> &'static str {
        match self {
            ServiceKind::MainWaterValve => "main water valve",
            ServiceKind::FixtureValve => "fixture valve",
            ServiceKind::GasValve => "gas valve",
            ServiceKind::Damper => "volume damper",
            ServiceKind::Cleanout => "cleanout",
            ServiceKind::FloorDrain => "floor drain",
            ServiceKind::Sump => "sump",
            ServiceKind::Ejector => "ejector",
            ServiceKind::JunctionBox => "junction box",
            ServiceKind::Panel => "electrical panel",
            ServiceKind::Disconnect => "disconnect",
            ServiceKind::Furnace => "furnace",
            ServiceKind::WaterHeater => "water heater",
            ServiceKind::WaterMeter => "water meter",
            ServiceKind::GasMeter => "gas meter",
            ServiceKind::RadonPipe => "radon pipe",
            ServiceKind::AirFilter => "air filter",
            ServiceKind::HoseBibValve => "hose-bib valve",
            ServiceKind::Receptacle => "receptacle",
            ServiceKind::Switch => "switch",
            ServiceKind::Light => "light",
            ServiceKind::SmokeAlarm => "smoke alarm",
            ServiceKind::CoAlarm => "carbon monoxide alarm",
            ServiceKind::ExhaustFan => "exhaust fan",
            ServiceKind::PressureReducer => "pressure reducer",
            ServiceKind::BackflowPreventer => "backflow preventer",
            ServiceKind::AirAdmittanceValve => "air admittance valve",
            ServiceKind::BackwaterValve => "backwater valve",
            ServiceKind::Standpipe => "standpipe",
            ServiceKind::SupplyRegister => "supply register",
            ServiceKind::ReturnGrille => "return grille",
            ServiceKind::ClothesDryer => "clothes dryer",
        }
    }

    /// Usual mount, width, depth, height and bottom above the slab, in inches (common practice, no source).
    fn usual_size(self) -> (Mount, i32, i32, i32, i32) {
        match self {
            ServiceKind::MainWaterValve => (Mount::Wall, 6, 6, 6, 24),
            ServiceKind::FixtureValve => (Mount::Ceiling, 4, 4, 4, 88),
            ServiceKind::GasValve => (Mount::Wall, 4, 4, 4, 48),
            ServiceKind::Damper => (Mount::Ceiling, 8, 8, 8, 86),
            ServiceKind::Cleanout => (Mount::Wall, 6, 4, 6, 12),
            ServiceKind::FloorDrain => (Mount::Floor, 8, 8, 1, 0),
            ServiceKind::Sump => (Mount::Floor, 20, 20, 1, 0),
            ServiceKind::Ejector => (Mount::Floor, 24, 24, 1, 0),
            ServiceKind::JunctionBox => (Mount::Ceiling, 4, 4, 2, 90),
            ServiceKind::Panel => (Mount::Wall, 14, 4, 30, 42),
            ServiceKind::Disconnect => (Mount::Wall, 8, 5, 10, 54),
            ServiceKind::Furnace => (Mount::Floor, 21, 29, 60, 0),
            ServiceKind::WaterHeater => (Mount::Floor, 22, 22, 60, 0),
            ServiceKind::WaterMeter => (Mount::Wall, 12, 8, 8, 18),
            ServiceKind::GasMeter => (Mount::Wall, 14, 12, 20, 36),
            ServiceKind::RadonPipe => (Mount::Floor, 4, 4, 96, 0),
            ServiceKind::AirFilter => (Mount::Floor, 20, 6, 25, 6),
            ServiceKind::HoseBibValve => (Mount::Wall, 4, 4, 4, 84),
            ServiceKind::Receptacle => (Mount::Wall, 3, 1, 5, 14),
            ServiceKind::Switch => (Mount::Wall, 3, 1, 5, 46),
            ServiceKind::Light => (Mount::Ceiling, 6, 6, 2, 90),
            ServiceKind::SmokeAlarm | ServiceKind::CoAlarm => (Mount::Ceiling, 6, 6, 2, 90),
            ServiceKind::ExhaustFan => (Mount::Ceiling, 10, 10, 6, 86),
            ServiceKind::PressureReducer => (Mount::Wall, 5, 5, 8, 36),
            ServiceKind::BackflowPreventer => (Mount::Wall, 10, 6, 6, 36),
            ServiceKind::AirAdmittanceValve => (Mount::Wall, 3, 3, 5, 36),
            ServiceKind::BackwaterValve => (Mount::Floor, 12, 16, 1, 0),
            ServiceKind::Standpipe => (Mount::Wall, 9, 4, 8, 34),
            ServiceKind::SupplyRegister => (Mount::Ceiling, 12, 6, 1, 91),
            ServiceKind::ReturnGrille => (Mount::Wall, 14, 1, 8, 6),
            ServiceKind::ClothesDryer => (Mount::Floor, 27, 30, 38, 0),
        }
    }
}
