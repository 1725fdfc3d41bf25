//! Light and air that a room borrows from the next one.

use measure::{Area, Len};
use plan::Body;
use plan::element::DoorOperation;
use space::Room;

use crate::Sheet;

/// The rooms that count as one with a room for light and air: itself, and those to which its wall stands open. The
/// openings without leaves take half of the common wall, a tenth of the room's floor, and 25 sq ft, all three.
pub(super) fn as_one<'a>(sheet: &Sheet<'a>, room: &'a Room) -> Vec<&'a Room> {
    let facts = sheet.facts;
    let mut next: Vec<_> = facts
        .openings
        .iter()
        .filter(|o| o.rooms().any(|r| r == room.index) && is_open(sheet, o.id))
        .flat_map(|o| o.rooms())
        .filter(|r| *r != room.index)
        .collect();
    next.sort_unstable();
    next.dedup();
    let others = next.into_iter().map(|r| facts.room(r)).filter(|r| borrows(sheet, room, r));
    std::iter::once(room).chain(others).collect()
}

fn is_open(sheet: &Sheet<'_>, id: plan::ElementId) -> bool {
    match sheet.plan().get(id).map(|e| &e.body) {
        Some(Body::Opening(o)) => o.door().is_some_and(|d| d.operation == DoorOperation::Cased),
        _ => false,
    }
}

fn borrows(sheet: &Sheet<'_>, room: &Room, other: &Room) -> bool {
    let facts = sheet.facts;
    let height = sheet.plan().site.ceiling_height().max(Len::ZERO);
    let walls = space::common_walls(facts, room, other);
    let wall: i128 = walls.iter().map(|(_, len)| Area::of_rect(*len, height).square_units()).sum();
    let between = |r| r == room.index || r == other.index;
    let open: i128 = facts
        .openings
        .iter()
        .filter(|o| is_open(sheet, o.id) && o.rooms().count() == 2 && o.rooms().all(between))
        .map(|o| Area::of_rect(o.clear_width, o.clear_height).square_units())
        .sum();
    let percent = |slug| i128::from(sheet.book.count(slug).value);
    let least = sheet.book.area("borrow-area").value.square_units();
    100 * open >= percent("borrow-wall") * wall
        && 100 * open >= percent("borrow-floor") * room.area.square_units()
        && open >= least
}
