//! Room tags and notes.

use geometry::Pt;
use serde::{Deserialize, Serialize};

/// What a room is used as.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum RoomUse {
    Bedroom,
    Office,
    Den,
    FamilyRoom,
    Bath,
    Laundry,
    Closet,
    Hall,
    Storage,
    Mechanical,
    #[default]
    Unfinished,
    Workshop,
    Gym,
    Kitchen,
    Garage,
}

/// Names a room and says what it is used as. It speaks for the room that it stands in.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct RoomTag {
    pub at: Pt,
    pub name: String,
    pub room_use: RoomUse,
}

/// A remark on the plan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Note {
    pub at: Pt,
    pub text: String,
}

impl RoomUse {
    pub const ALL: [RoomUse; 15] = [
        RoomUse::Bedroom,
        RoomUse::Office,
        RoomUse::Den,
        RoomUse::FamilyRoom,
        RoomUse::Bath,
        RoomUse::Laundry,
        RoomUse::Closet,
        RoomUse::Hall,
        RoomUse::Storage,
        RoomUse::Mechanical,
        RoomUse::Unfinished,
        RoomUse::Workshop,
        RoomUse::Gym,
        RoomUse::Kitchen,
        RoomUse::Garage,
    ];

    pub fn word(self) -> &'static str {
        match self {
            RoomUse::Bedroom => "bedroom",
            RoomUse::Office => "office",
            RoomUse::Den => "den",
            RoomUse::FamilyRoom => "family room",
            RoomUse::Bath => "bath",
            RoomUse::Laundry => "laundry",
            RoomUse::Closet => "closet",
            RoomUse::Hall => "hall",
            RoomUse::Storage => "storage",
            RoomUse::Mechanical => "mechanical",
            RoomUse::Unfinished => "unfinished",
            RoomUse::Workshop => "workshop",
            RoomUse::Gym => "gym",
            RoomUse::Kitchen => "kitchen",
            RoomUse::Garage => "garage",
        }
    }
}
