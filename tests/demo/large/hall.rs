//! The long hall: two stairs, two islands, columns under the beam, and the trunk duct with its branches.

use geometry::Facing;
use plan::element::*;

use super::super::build::Build;
use super::{BAY, BAYS, LONG, island};

const BEAM: i32 = 330;
const TRUNK: i32 = 392;

pub fn add(b: &mut Build) {
    b.tag((310, 285), "Long hall", RoomUse::Unfinished);
    b.stair((-20, 262), Facing::EAST);
    b.stair((LONG - 12, 262), Facing::WEST);
    b.run(OverheadKind::Beam, (-100, BEAM), (LONG + 120, BEAM), 8, 84);
    b.run(OverheadKind::Duct, (10, TRUNK), (LONG + 40, TRUNK), 16, 80);
    for bay in 0..BAYS {
        let x = BAY * bay;
        b.column((x + 66, BEAM));
        b.run(OverheadKind::Duct, (x + 20, TRUNK + 8), (x + 20, 560), 8, 84);
        b.service(ServiceKind::Damper, (x + 20, 418), Facing::SOUTH);
        b.service(ServiceKind::JunctionBox, (x + 100, 362), Facing::SOUTH);
        b.service(ServiceKind::JunctionBox, (x + 100, 200), Facing::SOUTH);
    }
    island(b, [(440, 215), (520, 215), (520, 295), (440, 295)], (25, 30));
    b.tag((480, 245), "Linen", RoomUse::Closet);
    b.furnishing("shelf", (480, 292), Facing::SOUTH, (60, 16, 72));
    island(b, [(760, 206), (812, 258), (760, 310), (708, 258)], (24, 24));
    b.tag((760, 258), "Flue", RoomUse::Unfinished);
    b.section((330, 636), (330, -40));
    b.note((330, 310), "The middle stays open: the beam bears on the columns.");
}
