//! Rooms that are too small, too low, too narrow or called by two names; doors and a stair in trouble.

use geometry::Facing;
use plan::State;
use plan::element::*;

use super::super::build::{Build, escape_window};
use super::{Shell, bad_stair};

pub fn add(b: &mut Build, shell: &Shell) {
    // A hall 30 in wide in front of the bedrooms, doors that meet across its corner.
    let hall = b.partition((0, 302), (864, 302));
    b.partition((864, 336), (864, 302));
    b.tag((430, 318), "Hall", RoomUse::Hall);
    b.leaf(hall, 800, 36, DoorOperation::Cased, End::Start, Side::Left);
    // An office that is too small and one that is too narrow.
    let office = b.partition((0, 240), (70, 240));
    b.partition((70, 302), (70, 240));
    b.door(office, 20, 30, End::Start, Side::Left);
    b.tag((30, 280), "Nook", RoomUse::Office);
    let narrow = b.partition((70, 200), (150, 200));
    b.partition((70, 240), (70, 200));
    b.partition((150, 302), (150, 200));
    b.door(narrow, 20, 30, End::Start, Side::Left);
    b.furnishing("chest", (105, 222), Facing::NORTH, (30, 20, 20));
    b.tag((100, 280), "Strip", RoomUse::Office);
    b.tag((130, 260), "Strip too", RoomUse::Storage);
    // A den under a wide duct, its door against the next one.
    let den = b.partition((150, 200), (270, 200));
    b.partition((270, 302), (270, 200));
    b.door(den, 86, 30, End::Finish, Side::Left);
    b.tag((190, 280), "Den", RoomUse::Den);
    b.run(OverheadKind::Duct, (150, 250), (270, 250), 80, 72);
    let side = b.partition((270, 200), (390, 200));
    b.partition((390, 302), (390, 200));
    b.door(side, 4, 30, End::Finish, Side::Right);
    b.tag((330, 260), "Store", RoomUse::Storage);
    let other = b.partition((270, 200), (270, 140));
    b.door(other, 4, 30, End::Finish, Side::Left);
    // A room without a tag, and a tag outside the walls.
    b.partition((390, 200), (480, 200));
    b.partition((480, 302), (480, 200));
    b.tag((-60, 100), "Shed", RoomUse::Storage);
    bad_stair(b, (560, 130));
    // A panel on the wall beside the flight.
    b.partition((579, 140), (579, 302));
    b.service(ServiceKind::Panel, (576, 200), Facing::WEST);
    b.tag((660, 240), "Unfinished", RoomUse::Unfinished);
    // An office with everything a bedroom has.
    let study = b.partition((864, 336), (960, 336));
    b.door(study, 30, 30, End::Start, Side::Left);
    b.window(State::New, shell.north, 30, escape_window());
    b.tag((910, 400), "Study", RoomUse::Office);
}
