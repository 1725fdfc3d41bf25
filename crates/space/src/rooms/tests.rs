//! Rooms: exact areas, shapes, islands, tags.

use geometry::{Facing, Pt};
use measure::{Area, Len};
use plan::element::{OverheadKind, RoomUse};

use super::*;
use crate::derive;
use crate::testing::Sketch;

#[test]
fn a_room_of_ten_by_twelve_feet_has_120_square_feet() {
    let mut s = Sketch::new();
    let walls = s.rectangle(120, 144);
    let tag = s.tag(60, 70, RoomUse::Office);
    let facts = derive(&s.shared());
    let [room] = &facts.rooms.iter().collect::<Vec<_>>()[..] else {
        panic!("one room: {:?}", facts.rooms)
    };
    assert_eq!(room.area, Area::square_feet(120));
    assert_eq!(room.clear, (Len::feet_inches(12, 0), Len::feet_inches(10, 0)));
    assert_eq!(room.walls, walls);
    assert_eq!(
        (room.tag, room.name.as_str(), room.room_use),
        (Some(tag), "office", RoomUse::Office)
    );
    assert_eq!(room.label_at, Pt::inches(60, 72));
    assert_eq!((room.lowest, room.highest), (Len::inches(92), Len::inches(92)));
    assert_eq!(facts.room_at(Pt::inches(1, 1)), Some(room.index));
    assert_eq!(facts.room_at(Pt::inches(-1, 1)), None);
}

#[test]
fn furring_moves_the_face_in_by_its_sum_and_no_more() {
    let mut s = Sketch::new();
    let walls = s.rectangle(120, 144);
    let thickness = Len::sixty_fourths(5 * 64 + 32);
    for &wall in &walls {
        s.furring(wall, thickness);
    }
    let facts = derive(&s.shared());
    let room = &facts.rooms[0];
    let (width, depth) = (Len::inches(120) - thickness * 2, Len::inches(144) - thickness * 2);
    assert_eq!(room.area, Area::of_rect(width, depth));
    assert_eq!(room.clear, (depth, width));
    assert_eq!(room.walls.len(), 4, "the furring, not the concrete behind it");
    assert!(room.walls.iter().all(|w| !walls.contains(w)));
}

#[test]
fn an_l_shaped_room() {
    let mut s = Sketch::new();
    s.shell(&[(0, 0), (240, 0), (240, 120), (120, 120), (120, 360), (0, 360)]);
    let facts = derive(&s.shared());
    let room = &facts.rooms[0];
    assert_eq!(room.area, Area::square_feet(20 * 10 + 10 * 20));
    assert_eq!(
        room.clear,
        (Len::feet_inches(30, 0), Len::feet_inches(20, 0)),
        "along the longest wall"
    );
    assert_eq!((room.shape.outer.len(), room.walls.len()), (6, 6));
    assert!(room.shape.contains(room.label_at));
}

#[test]
fn a_closed_ring_of_walls_is_an_island_and_a_room() {
    let mut s = Sketch::new();
    s.rectangle(480, 360);
    let corners = [(100, 100), (196, 100), (196, 196), (100, 196)];
    for i in 0..4 {
        s.partition(corners[i], corners[(i + 1) % 4]);
    }
    s.column(300, 200);
    let facts = derive(&s.shared());
    assert_eq!(facts.rooms.len(), 2);
    let (outer, closet) = (&facts.rooms[0], &facts.rooms[1]);
    assert_eq!(outer.shape.holes.len(), 1, "the column is no island");
    assert_eq!(outer.area, Area::square_inch_hundredths((480 * 360 - 100 * 100) * 100));
    assert_eq!(closet.area, Area::square_inch_hundredths(92 * 92 * 100));
    assert_eq!((outer.walls.len(), closet.walls.len()), (8, 4));
    assert_eq!(facts.room_at(Pt::inches(150, 150)), Some(closet.index));
}

#[test]
fn doors_and_cased_openings_close_a_room() {
    use plan::Body;
    use plan::element::{DoorOperation, OpeningKind};
    let mut s = Sketch::new();
    let shell = s.rectangle(240, 120);
    let partition = s.partition((120, 0), (120, 120));
    let door = s.door(partition, 20, 32);
    let mut element = s.plan.get(door).unwrap().clone();
    let facts = derive(&s.shared());
    assert_eq!(facts.rooms.len(), 2);
    let opening = facts.opening(door).unwrap();
    // The partition runs north: its left is the west room.
    assert_eq!((opening.left, opening.right), (Some(RoomIndex(0)), Some(RoomIndex(1))));
    assert!(!opening.outside);
    assert_eq!((&facts.rooms[0].openings, &facts.rooms[1].openings), (&vec![door], &vec![door]));
    let leaf = &opening.leaves[0];
    assert_eq!(
        (leaf.hinge, leaf.shut, leaf.open),
        (Pt::inches(118, 20), Pt::inches(118, 52), Pt::inches(86, 20))
    );

    let Body::Opening(o) = &mut element.body else { panic!() };
    let OpeningKind::Door(d) = &mut o.kind else { panic!() };
    d.operation = DoorOperation::Cased;
    s.plan = s.plan.with(&plan::Edit::Replace(element)).unwrap();
    let way_out = s.door(shell[1], 40, 36);
    let facts = derive(&s.shared());
    assert_eq!(facts.rooms.len(), 2);
    let opening = facts.opening(way_out).unwrap();
    assert_eq!((opening.left, opening.right, opening.outside), (Some(RoomIndex(1)), None, true));
}

#[test]
fn tags_speak_by_the_lowest_id_and_loose_ones_are_listed() {
    let mut s = Sketch::new();
    s.rectangle(120, 144);
    let outdoors = s.tag(-60, 0, RoomUse::Den);
    let in_wall = s.tag(60, -4, RoomUse::Den);
    let first = s.tag(60, 60, RoomUse::Bedroom);
    let second = s.tag(20, 20, RoomUse::Office);
    let facts = derive(&s.shared());
    let room = &facts.rooms[0];
    assert_eq!((room.tag, &room.more_tags), (Some(first), &vec![second]));
    assert_eq!(room.room_use, RoomUse::Bedroom);
    assert_eq!(facts.loose_tags, [outdoors, in_wall]);
}

#[test]
fn an_open_face_is_no_room() {
    let mut s = Sketch::new();
    let walls = s.rectangle(120, 144);
    let tag = s.tag(60, 60, RoomUse::Office);
    s.plan = s.plan.with(&plan::Edit::Remove(vec![walls[3]])).unwrap();
    let facts = derive(&s.shared());
    assert!(facts.rooms.is_empty());
    assert_eq!(facts.loose_tags, [tag]);
}

#[test]
fn a_cavity_is_no_room_unless_a_tag_stands_in_it() {
    let mut s = Sketch::new();
    s.rectangle(120, 144);
    // A partition 1 in off the west wall, closed at both ends by the shell: 1 x 144 = 1 sq ft.
    s.partition((3, 0), (3, 144));
    let facts = derive(&s.shared());
    assert_eq!(facts.rooms.len(), 2, "just 1 sq ft is a room");

    let mut s = Sketch::new();
    s.rectangle(120, 143);
    s.partition((3, 0), (3, 143));
    assert_eq!(derive(&s.shared()).rooms.len(), 1);
    s.add(plan::Body::RoomTag(plan::element::RoomTag {
        at: Pt::new(Len::PER_INCH / 2, Len::inches(60).units()),
        name: "chase".to_owned(),
        room_use: RoomUse::Storage,
    }));
    assert_eq!(derive(&s.shared()).rooms.len(), 2);
}

#[test]
fn a_room_out_of_square_keeps_its_walls() {
    let mut s = Sketch::new();
    let mut walls = s.shell(&[(0, 0), (240, 3), (236, 150), (-5, 144)]);
    walls.push(s.partition((120, 1), (121, 148)));
    let facts = derive(&s.shared());
    assert_eq!(facts.rooms.len(), 2);
    for room in &facts.rooms {
        assert_eq!(room.walls.len(), 4, "{:?}", room.walls);
        assert!(room.walls.contains(&walls[4]));
    }
}

#[test]
fn headroom_of_a_room_under_a_beam_and_a_full_soffit() {
    let mut s = Sketch::new();
    s.rectangle(120, 144);
    s.run(OverheadKind::Beam, ((0, 72), (120, 72)), 6, 84);
    // It hangs along the wall outside the room only.
    s.run(OverheadKind::Duct, ((-4, 0), (-4, 144)), 8, 60);
    let room = &derive(&s.shared()).rooms[0];
    let floor = Len::sixty_fourths(32);
    assert_eq!((room.lowest, room.highest), (Len::inches(84) - floor, Len::inches(92)));
    s.run(OverheadKind::Soffit, ((60, 0), (60, 144)), 120, 88);
    let room = &derive(&s.shared()).rooms[0];
    assert_eq!((room.lowest, room.highest), (Len::inches(84) - floor, Len::inches(88) - floor));
}

#[test]
fn the_core_leaves_out_what_is_too_narrow() {
    let mut s = Sketch::new();
    // A room of 10 x 10 ft with an alcove 6 ft 11 in wide.
    s.shell(&[(0, 0), (120, 0), (120, 120), (83, 120), (83, 180), (0, 180)]);
    let facts = derive(&s.shared());
    let core = |side| room_core(&facts.rooms[0], side).iter().map(Shape::area).sum::<Area>();
    assert_eq!(core(Len::feet_inches(7, 0)), Area::square_feet(100));
    assert_eq!(core(Len::inches(83)), facts.rooms[0].area);
    assert!([Facing::NORTH, Facing::SOUTH].contains(&facts.rooms[0].along));
}
