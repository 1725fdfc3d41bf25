//! The words of schema 1. They are apart from the model's names, so that a name can change without
//! changing what a file says.

use serde::{Deserialize, Serialize};

use crate::element as model;

macro_rules! words {
    ($($word:ident = $model:path { $($v:ident),* $(,)? })*) => {$(
        #[derive(Clone, Copy, Debug, Serialize, Deserialize)]
        pub(crate) enum $word { $($v),* }

        impl From<$model> for $word {
            fn from(m: $model) -> $word {
                match m { $(<$model>::$v => $word::$v),* }
            }
        }

        impl From<$word> for $model {
            fn from(w: $word) -> $model {
                match w { $($word::$v => <$model>::$v),* }
            }
        }
    )*};
}

words! {
    Edition = crate::Edition { E2018, E2021, E2024 }
    House = crate::House { New, Existing }
    State = crate::State { Existing, New, Removed }
    Justify = model::Justify { Centre, LeftFace, RightFace }
    End = model::End { Start, Finish }
    Side = model::Side { Left, Right }
    DoorOperation = model::DoorOperation { Hinged, Sliding, Pocket, Bifold, Cased }
    WindowOperation = model::WindowOperation { Casement, Slider, Hung, Awning, Hopper, Fixed }
    OverheadKind = model::OverheadKind { Beam, Duct, Pipe, Soffit }
    Mount = model::Mount { Floor, Wall, Ceiling }
    ServiceKind = model::ServiceKind {
        MainWaterValve, FixtureValve, GasValve, Damper, Cleanout, FloorDrain, Sump, Ejector,
        JunctionBox, Panel, Disconnect, Furnace, WaterHeater, WaterMeter, GasMeter, RadonPipe,
        AirFilter, HoseBibValve, Receptacle, Switch, Light, SmokeAlarm, CoAlarm, ExhaustFan,
        PressureReducer, BackflowPreventer, AirAdmittanceValve, BackwaterValve, Standpipe, SupplyRegister, ReturnGrille, ClothesDryer,
    }
    RoomUse = model::RoomUse {
        Bedroom, Office, Den, FamilyRoom, Bath, Laundry, Closet, Hall, Storage, Mechanical,
        Unfinished, Workshop, Gym, Kitchen, Garage,
    }
}
