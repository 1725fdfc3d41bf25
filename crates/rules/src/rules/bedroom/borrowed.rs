//! Light and air that a room borrows from the next one.

use measure::{Area, Len};
use space::Room;

use crate::Sheet;

/// The rooms that count as one with a room for light and air: itself, and those to which its wall stands open. The
/// openings without leaves take half of the common wall, a tenth of the room's floor, and 25 sq ft, all three.
pub(super) fn as_one<'a>(sheet: &Sheet<'a>, room: &'a Room) -> Vec<&'a Room> {
    let others = sheet.facts.open_to(room.index).into_iter().filter(|r| borrows(sheet, room, r));
    std::iter::once(room).chain(others).collect()
}

fn borrows(sheet: &Sheet<'_>, room: &Room, other: &Room) -> bool {
    let facts = sheet.facts;
    let height = sheet.plan().site.ceiling_height().max(Len::ZERO);
    let walls = space::common_walls(facts, room, other);
    let wall: i128 = walls.iter().map(|(_, len)| Area::of_rect(*len, height).square_units()).sum();
    let between = |r| r == room.index || r == other.index;
    let open: i128 = facts
        .openings_of(room.index)
        .filter(|o| facts.is_cased(o.id) && o.rooms().count() == 2 && o.rooms().all(between))
        .map(|o| Area::of_rect(o.clear_width, o.clear_height).square_units())
        .sum();
    let percent = |slug| i128::from(sheet.book.count(slug).value);
    let least = sheet.book.area("borrow-area").value.square_units();
    100 * open >= percent("borrow-wall") * wall
        && 100 * open >= percent("borrow-floor") * room.area.square_units()
        && open >= least
}
