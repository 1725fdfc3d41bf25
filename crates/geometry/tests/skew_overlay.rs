//! Overlays of skew convex pieces against the boolean operations of `geo` and against the identities
//! that areas obey. A crossing is rounded by at most half a unit in each coordinate, so areas may differ
//! by about the boundary's length times a unit.

use geo::{Area as _, BooleanOps, Coord, LineString, MultiPolygon, Polygon, orient::Orient};
use geometry::{Pt, Ring, Shape, convex_clip, convex_hull, overlay, twice_area};
use proptest::prelude::*;

const LIMIT: i32 = 2_000_000;

/// Wall-like boxes and other convex pieces, in a house of about 25 m.
fn pieces(most: usize) -> impl Strategy<Value = Vec<Ring>> {
    let piece = prop::collection::vec((-LIMIT..LIMIT, -LIMIT..LIMIT), 3..7)
        .prop_map(|points| convex_hull(&points.into_iter().map(Pt::from).collect::<Vec<_>>()));
    let wall = (-LIMIT..LIMIT, -LIMIT..LIMIT, -9i32..=9, -9i32..=9, 10_000..40_000).prop_map(
        |(x, y, dx, dy, thick)| {
            let (dx, dy) = if (dx, dy) == (0, 0) { (1, 0) } else { (dx, dy) };
            let (lx, ly, tx, ty) = (dx * 150_000, dy * 150_000, -dy * thick / 9, dx * thick / 9);
            let p = |a: i32, b: i32| Pt::new(x + a * lx + b * tx, y + a * ly + b * ty);
            vec![p(0, 0), p(1, 0), p(1, 1), p(0, 1)]
        },
    );
    prop::collection::vec(prop_oneof![piece, wall], 1..most)
        .prop_map(|rings| rings.into_iter().filter(|r| twice_area(r) != 0).collect())
}

fn area(shapes: &[Shape]) -> f64 {
    shapes.iter().map(|s| s.area().square_units() as f64).sum()
}

fn boundary(rings: &[Ring]) -> f64 {
    rings.iter().flat_map(|r| geometry::edges(r)).map(|e| e.dir().norm()).sum()
}

fn to_geo(rings: &[Ring]) -> MultiPolygon {
    let polygon = |ring: &Ring| {
        let line: LineString =
            ring.iter().map(|p| Coord { x: f64::from(p.x), y: f64::from(p.y) }).collect();
        Polygon::new(line, vec![]).orient(geo::orient::Direction::Default)
    };
    geo::unary_union(&rings.iter().map(polygon).collect::<Vec<_>>())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]

    #[test]
    fn areas_agree_with_geo(a in pieces(6), b in pieces(6)) {
        let (x, y) = (to_geo(&a), to_geo(&b));
        let near = 2.0 * (boundary(&a) + boundary(&b)) + 100.0;
        for (ours, theirs) in [
            (overlay::union(&a, &b), x.union(&y)),
            (overlay::intersect(&a, &b), x.intersection(&y)),
            (overlay::difference(&a, &b), x.difference(&y)),
        ] {
            prop_assert!((area(&ours) - theirs.unsigned_area()).abs() <= near);
        }
    }

    #[test]
    fn areas_obey_inclusion_and_exclusion(a in pieces(6), b in pieces(6)) {
        let near = 2.0 * (boundary(&a) + boundary(&b)) + 100.0;
        let (x, y) = (overlay::union(&a, &[]), overlay::union(&b, &[]));
        let (either, common) = (overlay::union(&a, &b), overlay::intersect(&a, &b));
        let only = overlay::difference(&a, &b);
        prop_assert!((area(&either) + area(&common) - area(&x) - area(&y)).abs() <= near);
        prop_assert!((area(&only) + area(&common) - area(&x)).abs() <= near);
        prop_assert!((area(&overlay::shape_difference(&x, &b)) - area(&only)).abs() <= near);
    }

    #[test]
    fn the_clip_of_two_pieces_agrees_with_the_overlay(a in pieces(2), b in pieces(2)) {
        prop_assume!(!a.is_empty() && !b.is_empty());
        let clip = twice_area(&convex_clip(&a[0], &b[0])) as f64 / 2.0;
        let near = boundary(&a) + boundary(&b) + 100.0;
        prop_assert!((area(&overlay::intersect(&a, &b)) - clip).abs() <= near);
    }

    #[test]
    fn areas_do_not_depend_on_how_the_plan_lies(a in pieces(6), b in pieces(6), way in 0u8..8, by in (-9_999..9_999, -9_999..9_999)) {
        let there = |rings: &[Ring]| -> Vec<Ring> {
            let lay = |p: &Pt| {
                let (x, y) = if way & 4 == 0 { (p.x, p.y) } else { (-p.x, p.y) };
                let (x, y) = match way & 3 { 0 => (x, y), 1 => (-y, x), 2 => (-x, -y), _ => (y, -x) };
                Pt::new(x + by.0, y + by.1)
            };
            rings.iter().map(|r| r.iter().map(lay).collect()).collect()
        };
        let near = 2.0 * (boundary(&a) + boundary(&b)) + 100.0;
        let here = overlay::difference(&a, &b);
        prop_assert!((area(&overlay::difference(&there(&a), &there(&b))) - area(&here)).abs() <= near);
    }
}
