//! Joints: no gap, no overlap where none is wanted.

use geometry::{Pt, Ring, Shape, overlay, twice_area};
use measure::{Area, Len};

use super::*;
use crate::testing::Sketch;
use crate::{Facts, derive};

fn square_inches(n: i64) -> Area {
    Area::square_inch_hundredths(i128::from(n) * 100)
}

fn outlines(facts: &Facts) -> Vec<Ring> {
    facts.walls.iter().map(|w| w.outline.clone()).collect()
}

fn pieces(facts: &Facts) -> Vec<Ring> {
    facts.walls.iter().flat_map(|w| w.pieces.iter().map(|q| q.to_vec())).collect()
}

fn body(rings: &[Ring]) -> Vec<Shape> {
    overlay::union(rings, &[])
}

fn total(shapes: &[Shape]) -> Area {
    shapes.iter().map(Shape::area).sum()
}

fn sum(rings: &[Ring]) -> Area {
    Area::from_square_units(rings.iter().map(|r| twice_area(r)).sum::<i128>() / 2)
}

/// Outlines and pieces are one body without holes, of the given area, and do not overlap.
fn is_one_clean_body(s: &Sketch, area: Area) {
    let facts = derive(&s.shared());
    for rings in [outlines(&facts), pieces(&facts)] {
        let shapes = body(&rings);
        assert_eq!(shapes.len(), 1, "{rings:?}");
        assert!(shapes[0].holes.is_empty());
        assert_eq!(total(&shapes), area);
    }
    assert_eq!(sum(&outlines(&facts)), area, "outlines overlap");
}

#[test]
fn a_shell_fills_its_outer_corner_squares() {
    let mut s = Sketch::new();
    s.rectangle(120, 144);
    let facts = derive(&s.shared());
    let shapes = body(&outlines(&facts));
    assert_eq!(shapes.len(), 1);
    assert_eq!(shapes[0].outer.len(), 4, "the outside is a plain rectangle");
    assert_eq!(shapes[0].area(), square_inches(136 * 160 - 120 * 144));
    assert_eq!(sum(&outlines(&facts)), shapes[0].area(), "mitred, not overlapping");
    assert_eq!(body(&pieces(&facts)), shapes);
}

#[test]
fn a_shell_is_mitred_at_its_re_entrant_corner_too() {
    let mut s = Sketch::new();
    s.shell(&[(0, 0), (240, 0), (240, 120), (120, 120), (120, 240), (0, 240)]);
    let facts = derive(&s.shared());
    let shapes = body(&outlines(&facts));
    let inner = 240 * 240 - 120 * 120;
    let outer = 256 * 256 - 120 * 120;
    assert_eq!(total(&shapes), square_inches(outer - inner));
    assert_eq!(sum(&outlines(&facts)), total(&shapes));
}

#[test]
fn an_l_of_equal_thickness_is_mitred() {
    let mut s = Sketch::new();
    s.partition((0, 0), (100, 0));
    s.partition((100, 0), (100, 100));
    is_one_clean_body(&s, square_inches(102 * 4 + 98 * 4));
}

#[test]
fn an_l_of_different_thickness_is_mitred() {
    let mut s = Sketch::new();
    s.wall(Pt::inches(0, 0), Pt::inches(100, 0), Len::inches(4));
    s.wall(Pt::inches(100, 0), Pt::inches(100, 100), Len::inches(8));
    is_one_clean_body(&s, square_inches(104 * 4 + 98 * 8));
}

#[test]
fn a_tee_runs_to_the_near_face_wherever_its_end_lies() {
    for end in [-2, 0, 1, 2] {
        let mut s = Sketch::new();
        s.partition((0, 0), (200, 0));
        s.partition((100, 100), (100, end));
        is_one_clean_body(&s, square_inches(200 * 4 + 98 * 4));
    }
}

#[test]
fn a_skew_tee_leaves_no_wedge_open() {
    let mut s = Sketch::new();
    s.partition((0, 0), (200, 0));
    s.partition((150, 100), (100, 2));
    let facts = derive(&s.shared());
    for rings in [outlines(&facts), pieces(&facts)] {
        let shapes = body(&rings);
        assert_eq!((shapes.len(), shapes[0].holes.len()), (1, 0));
        // Both corners of the abutting wall lie on the near face.
        let face = Len::inches(2).units();
        let on_face = facts.walls[1].outline.iter().filter(|p| p.y == face).count();
        assert_eq!(on_face, 2);
    }
}

#[test]
fn a_tee_of_three_ends_closes_its_middle() {
    let mut s = Sketch::new();
    s.partition((0, 0), (100, 0));
    s.partition((100, 0), (200, 0));
    s.partition((100, 0), (100, 100));
    is_one_clean_body(&s, square_inches(200 * 4 + 98 * 4));
}

#[test]
fn a_star_of_three_closes_its_middle() {
    let mut s = Sketch::new();
    for end in [(100, 0), (-60, 80), (-60, -80)] {
        s.partition((0, 0), end);
    }
    let facts = derive(&s.shared());
    for rings in [outlines(&facts), pieces(&facts)] {
        let shapes = body(&rings);
        assert_eq!((shapes.len(), shapes[0].holes.len()), (1, 0));
        // Three arms and three corners between them, nothing else.
        assert_eq!(shapes[0].outer.len(), 9);
    }
}

#[test]
fn crossing_walls_and_four_ends_make_the_same_cross() {
    let mut s = Sketch::new();
    s.partition((-100, 0), (100, 0));
    s.partition((0, -100), (0, 100));
    let crossed = derive(&s.shared());
    let mut s = Sketch::new();
    for end in [(-100, 0), (100, 0), (0, -100), (0, 100)] {
        s.partition((0, 0), end);
    }
    let met = derive(&s.shared());
    assert_eq!(body(&outlines(&crossed)), body(&outlines(&met)));
    assert_eq!(body(&pieces(&met)), body(&outlines(&met)));
    assert_eq!(total(&body(&outlines(&met))), square_inches(200 * 4 + 196 * 4));
}

#[test]
fn walls_drawn_by_opposite_faces_still_join() {
    use plan::Body;
    use plan::element::{Justify, Partition};
    for (first, second) in [
        (Justify::LeftFace, Justify::RightFace),
        (Justify::RightFace, Justify::LeftFace),
        (Justify::LeftFace, Justify::LeftFace),
        (Justify::RightFace, Justify::RightFace),
    ] {
        let mut s = Sketch::new();
        let wall =
            |a, b, justify| Body::Partition(Partition { justify, ..Partition::two_by_four(a, b) });
        s.add(wall(Pt::inches(0, 0), Pt::inches(100, 0), first));
        s.add(wall(Pt::inches(100, 0), Pt::inches(100, -100), second));
        let facts = derive(&s.shared());
        for rings in [outlines(&facts), pieces(&facts)] {
            let shapes = body(&rings);
            assert_eq!((shapes.len(), shapes[0].holes.len()), (1, 0), "{first:?} {second:?}");
            assert_eq!(shapes[0].outer.len(), 6, "{first:?} {second:?} {shapes:?}");
        }
    }
}

#[test]
fn ends_that_just_miss_each_other_still_close_the_corner() {
    let mut s = Sketch::new();
    s.wall(Pt::inches(0, 0), Pt::new(Len::inches(100).units() + 3, 1), Len::inches(4));
    s.partition((100, 0), (100, 100));
    let facts = derive(&s.shared());
    let shapes = body(&outlines(&facts));
    assert_eq!((shapes.len(), shapes[0].holes.len()), (1, 0));
    let missing = (total(&shapes) - square_inches(102 * 4 + 98 * 4)).to_square_inches();
    assert!(missing.abs() < 0.2, "{missing}");
}

#[test]
fn a_sharp_corner_is_cut_off_and_closed() {
    let mut s = Sketch::new();
    s.partition((0, 0), (200, 0));
    s.partition((0, 0), (200, 40));
    let facts = derive(&s.shared());
    for rings in [outlines(&facts), pieces(&facts)] {
        let shapes = body(&rings);
        assert_eq!((shapes.len(), shapes[0].holes.len()), (1, 0));
        let far = shapes[0].outer.iter().map(|p| p.x).min().unwrap();
        assert!(far >= -Len::inches(16).units(), "no endless spike");
    }
}

#[test]
fn a_wall_shorter_than_its_corners_stays_a_wall() {
    let mut s = Sketch::new();
    s.partition((0, 0), (100, 0));
    s.partition((100, 0), (101, 1));
    s.partition((101, 1), (101, 100));
    let facts = derive(&s.shared());
    let shapes = body(&outlines(&facts));
    assert_eq!((shapes.len(), shapes[0].holes.len()), (1, 0));
    assert!(facts.walls.iter().all(|w| twice_area(&w.outline) > 0 && !w.pieces.is_empty()));
}

#[test]
fn furring_is_mitred_at_room_corners_and_fills_the_re_entrant_square() {
    let mut s = Sketch::new();
    let walls = s.shell(&[(0, 0), (240, 0), (240, 120), (120, 120), (120, 240), (0, 240)]);
    for wall in walls {
        s.furring(wall, Len::inches(5));
    }
    let facts = derive(&s.shared());
    let strips: Vec<Ring> = facts
        .walls
        .iter()
        .filter(|w| w.kind == WallKind::Furring)
        .map(|w| w.outline.clone())
        .collect();
    let shapes = body(&strips);
    let (gross, net) = (240 * 240 - 120 * 120, 230 * 230 - 120 * 120);
    assert_eq!(total(&shapes), square_inches(gross - net));
    assert_eq!(sum(&strips), total(&shapes), "strips overlap");
}

#[test]
fn furring_is_cut_along_a_bare_neighbour() {
    let mut s = Sketch::new();
    // A corner of 135°: the second wall runs off at 45°.
    let walls = s.shell(&[(0, 0), (200, 0), (300, 100), (300, 200), (0, 200)]);
    s.furring(walls[0], Len::inches(6));
    let facts = derive(&s.shared());
    let strip = facts.walls.iter().find(|w| w.kind == WallKind::Furring).unwrap();
    assert!(strip.outline.contains(&Pt::inches(206, 6)), "{:?}", strip.outline);
}

#[test]
fn openings_cut_walls_and_furring_into_convex_pieces() {
    let mut s = Sketch::new();
    let walls = s.rectangle(200, 100);
    s.furring(walls[0], Len::inches(5));
    s.door(walls[0], 60, 36);
    let facts = derive(&s.shared());
    let shell = facts.wall(walls[0]).unwrap();
    assert_eq!(shell.pieces.len(), 2);
    let strip = &facts.walls[4];
    assert_eq!((strip.kind, strip.pieces.len()), (WallKind::Furring, 2));
    let hole = facts.openings[0].quad;
    assert_eq!(hole, [(60, -8), (96, -8), (96, 5), (60, 5)].map(|(x, y)| Pt::inches(x, y)));
    for quad in shell.pieces.iter().chain(&strip.pieces) {
        assert!(!geometry::convex_overlap(quad, &hole));
    }
}

#[test]
fn layers_follow_the_mitre() {
    let mut s = Sketch::new();
    use plan::Body;
    use plan::element::Partition;
    s.add(Body::Partition(Partition::two_by_four(Pt::inches(0, 0), Pt::inches(100, 0))));
    s.add(Body::Partition(Partition::two_by_four(Pt::inches(100, 0), Pt::inches(100, 100))));
    let facts = derive(&s.shared());
    for wall in &facts.walls {
        let strips: Vec<Ring> = wall.layers.iter().map(|l| l.quad.to_vec()).collect();
        assert_eq!(strips.len(), 3);
        assert_eq!(body(&strips), body(std::slice::from_ref(&wall.outline)));
        assert_eq!(sum(&strips), sum(std::slice::from_ref(&wall.outline)));
    }
}

#[test]
fn what_is_removed_does_not_stand() {
    let mut s = Sketch::new();
    let walls = s.rectangle(120, 144);
    s.furring(walls[1], Len::inches(5));
    let mut element = s.plan.get(walls[1]).unwrap().clone();
    element.state = plan::State::Removed;
    s.plan = s.plan.with(&plan::Edit::Replace(element)).unwrap();
    let facts = derive(&s.shared());
    assert_eq!(facts.walls.len(), 3, "the furring goes with its wall");
    assert!(facts.rooms.is_empty() && facts.solids_of(walls[1]).next().is_none());
}
