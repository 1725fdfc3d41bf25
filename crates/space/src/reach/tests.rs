//! Boxes before things: exact at the limit, touching is clear.

use geometry::{Facing, Pt};
use measure::Len;
use plan::element::{OverheadKind, ServiceKind};
use plan::{Body, ElementId};

use super::*;
use crate::derive;
use crate::testing::Sketch;

const HEIGHT: (Len, Len) = (Len::ZERO, Len::inches(78));

/// A panel (14 in wide, 4 in deep) on the south wall of a room, looking north, its middle at x = 60 in;
/// its front is at y = 4 in.
fn with_panel() -> (Sketch, ElementId) {
    let mut s = Sketch::new();
    s.rectangle(240, 240);
    let panel = s.service(ServiceKind::Panel, 60, 0, Facing::NORTH);
    (s, panel)
}

fn service(facts: &Facts, id: ElementId) -> ServicePoint {
    match &facts.plan.get(id).unwrap().body {
        Body::Service(s) => s.clone(),
        other => panic!("{other:?}"),
    }
}

fn in_working_space(s: &Sketch, panel: ElementId) -> Vec<Intrusion> {
    let facts = derive(&s.shared());
    let (width, depth) = (Len::inches(30), Len::inches(36));
    let zone = front_box(&service(&facts, panel), width, depth, HEIGHT.0, HEIGHT.1);
    zone.intrusions(&facts, &[panel])
}

#[test]
fn a_partition_just_at_the_depth_passes_and_a_unit_nearer_does_not() {
    for (nearer, free) in [(0, None), (1, Some(Len::inches(36) - Len::UNIT))] {
        let (mut s, panel) = with_panel();
        // Near face at 4 + 36 in.
        let y = Len::inches(42).units() - nearer;
        let wall = s.wall(Pt::new(0, y), Pt::new(Len::inches(240).units(), y), Len::inches(4));
        let found = in_working_space(&s, panel);
        match free {
            None => assert_eq!(found, []),
            Some(free) => {
                assert_eq!(found.len(), 1);
                assert_eq!((found[0].element, found[0].free_depth), (wall, free));
                assert_eq!((found[0].parts.len(), found[0].overhead), (1, false));
            }
        }
    }
}

#[test]
fn beside_above_and_below_is_clear() {
    let (mut s, panel) = with_panel();
    // The box spans x = 45 .. 75, y = 4 .. 40.
    s.furnishing(45 - 12, 20, Facing::NORTH, (24, 24, 30));
    s.run(OverheadKind::Duct, ((0, 20), (240, 20)), 10, 78);
    assert_eq!(in_working_space(&s, panel), []);
    let desk = s.furnishing(75 + 11, 20, Facing::NORTH, (24, 24, 30));
    let duct = s.run(OverheadKind::Duct, ((0, 30), (240, 30)), 10, 77);
    let found = in_working_space(&s, panel);
    let got: Vec<_> = found.iter().map(|i| (i.element, i.free_depth, i.overhead)).collect();
    assert_eq!(got, [(desk, Len::inches(16), false), (duct, Len::inches(21), true)]);
}

#[test]
fn pieces_of_one_element_are_one_intrusion() {
    let (mut s, panel) = with_panel();
    let wall = s.partition((0, 22), (240, 22));
    s.door(wall, 50, 20);
    let found = in_working_space(&s, panel);
    assert_eq!(found.len(), 1);
    assert_eq!((found[0].element, found[0].free_depth), (wall, Len::inches(16)));
    assert_eq!(found[0].parts.len(), 2, "the wall above the door is above the box");
    assert!(found[0].parts.contains(&found[0].overlap));
}

#[test]
fn low_steps_of_a_stair_are_low() {
    use plan::element::Stair;
    let (mut s, panel) = with_panel();
    let stair = s.add(Body::Stair(Stair {
        foot: Pt::inches(60, 10),
        up: Facing::NORTH,
        width: Len::inches(36),
        risers: 13,
        rise: Len::inches(7),
        run: Len::inches(10),
        headroom: Len::inches(80),
    }));
    let facts = derive(&s.shared());
    assert_eq!(facts.solids_of(stair).count(), 12);
    let ring =
        front_box(&service(&facts, panel), Len::inches(30), Len::inches(36), Len::ZERO, Len::ZERO)
            .ring;
    let over = |bottom: i32| {
        let found = intrusions(&facts, &ring, Len::inches(bottom), Len::inches(78), &[panel]);
        found.first().map(|i| i.free_depth)
    };
    assert_eq!(over(0), Some(Len::inches(6)));
    assert_eq!(over(7), Some(Len::inches(16)), "the first tread is 7 in high");
    assert_eq!(over(14), Some(Len::inches(26)));
    assert_eq!(over(21), None);
}

#[test]
fn clear_depth_and_clear_width_before_a_panel() {
    let (mut s, panel) = with_panel();
    s.partition((0, 50), (240, 50));
    // Its face is 5 in left of the panel's middle; the room's east wall is 180 in to the right.
    s.partition((53, 0), (53, 50));
    let facts = derive(&s.shared());
    let placed = service(&facts, panel).placed();
    assert_eq!(
        clear_before(&facts, (placed, Len::inches(10)), HEIGHT, &[panel], REACH),
        Len::inches(44)
    );
    let span = clear_span(&facts, placed, Len::inches(36), HEIGHT, &[panel]);
    assert_eq!((span.left, span.right), (Len::inches(5), Len::inches(180)));
    assert_eq!(span.width(), Len::inches(185));
}

#[test]
fn a_skew_wall_is_measured_at_its_nearest_point_within_the_width() {
    let (mut s, panel) = with_panel();
    // Its lower face passes (45, 40) and (75, 20) in.
    let (a, b) = (Pt::inches(0, 70), Pt::inches(120, -10));
    let line = geometry::Seg::new(a, b).offset_left(Len::inches(2));
    let wall = s.wall(line.a, line.b, Len::inches(4));
    let found = in_working_space(&s, panel);
    assert_eq!(found[0].element, wall);
    let short = Len::inches(16) - found[0].free_depth;
    assert!((0..=3).contains(&short.units()), "{short:?}");
}

#[test]
fn round_columns_are_exact_along_the_axes() {
    let (mut s, panel) = with_panel();
    s.column(60, 42);
    assert_eq!(in_working_space(&s, panel), []);
    let (mut s, panel) = with_panel();
    s.column(60, 41);
    assert_eq!(in_working_space(&s, panel)[0].free_depth, Len::inches(35));
}
