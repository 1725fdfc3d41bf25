//! What the code makes of a room's use.

use plan::element::RoomUse;

/// Used for living, sleeping, eating or cooking. Baths, closets, halls, storage and utility rooms are not
/// (IRC R202). A workshop is taken for a utility room, a gym for living.
pub(crate) const fn habitable(room_use: RoomUse) -> bool {
    match room_use {
        RoomUse::Bedroom
        | RoomUse::Office
        | RoomUse::Den
        | RoomUse::FamilyRoom
        | RoomUse::Gym
        | RoomUse::Kitchen => true,
        RoomUse::Bath
        | RoomUse::Laundry
        | RoomUse::Closet
        | RoomUse::Hall
        | RoomUse::Storage
        | RoomUse::Mechanical
        | RoomUse::Unfinished
        | RoomUse::Workshop
        | RoomUse::Garage => false,
    }
}

/// Baths, toilet rooms and laundry rooms.
pub(crate) const fn wet(room_use: RoomUse) -> bool {
    matches!(room_use, RoomUse::Bath | RoomUse::Laundry)
}
