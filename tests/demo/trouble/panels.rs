//! Electrical panels along the south wall, each in another trouble.

use geometry::Facing;
use plan::element::*;

use super::super::build::{Build, inches};
use super::service;

pub fn add(b: &mut Build) {
    // A shelf 20 in before it.
    b.service(ServiceKind::Panel, (40, 0), Facing::NORTH);
    b.furnishing("shelf", (40, 36), Facing::SOUTH, (36, 12, 72));
    // Between two short walls.
    b.service(ServiceKind::Panel, (110, 0), Facing::NORTH);
    b.partition((97, 0), (97, 40));
    b.partition((123, 0), (123, 40));
    // A duct low before it and over it.
    b.service(ServiceKind::Panel, (170, 0), Facing::NORTH);
    b.run(OverheadKind::Duct, (140, 10), (200, 10), 20, 74);
    // Breakers out of reach.
    service(b, ServiceKind::Panel, (230, 0), Facing::NORTH, |p| p.bottom = inches(54));
    // In a bath, and in a clothes closet.
    let bath = b.partition((260, 90), (340, 90));
    b.partition((260, 0), (260, 90));
    b.partition((340, 0), (340, 90));
    b.door(bath, 30, 30, End::Start, Side::Left);
    b.tag((300, 70), "Bath", RoomUse::Bath);
    b.service(ServiceKind::Panel, (300, 0), Facing::NORTH);
    let closet = b.partition((340, 60), (420, 60));
    b.partition((420, 0), (420, 60));
    b.leaf(closet, 16, 48, DoorOperation::Bifold, End::Start, Side::Left);
    b.tag((360, 50), "Closet", RoomUse::Closet);
    b.service(ServiceKind::Panel, (380, 0), Facing::NORTH);
    // A door that swings through the space before a panel.
    let wall = b.partition((440, 0), (440, 100));
    b.door(wall, 6, 30, End::Start, Side::Right);
    b.service(ServiceKind::Panel, (462, 0), Facing::NORTH);
    // A disconnect with a workbench before it.
    b.service(ServiceKind::Disconnect, (530, 0), Facing::NORTH);
    b.furnishing("workbench", (530, 50), Facing::SOUTH, (60, 28, 36));
}
