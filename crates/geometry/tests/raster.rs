//! Overlays and square cores of rectangles against counting cells of a small raster: an independent
//! oracle that shares nothing with the sweep.

use geometry::{Facing, Pt, Ring, Shape, Where, locate, overlay, square_core};
use measure::Len;
use proptest::prelude::*;

/// Cells along a side of the raster.
const SIDE: usize = 20;
/// Grid units along a side of a cell: even, so that a cell's middle is on the grid.
const CELL: i32 = 2;

type Cells = [[bool; SIDE]; SIDE];

/// A rectangle in cells: left, low, width, height.
type Rect = (i32, i32, i32, i32);

fn rects(most: usize) -> impl Strategy<Value = Vec<Rect>> {
    let side = SIDE as i32;
    let rect = (0..side - 1, 0..side - 1, 1..=8, 1..=8)
        .prop_map(move |(x, y, w, h): Rect| (x, y, w.min(side - x), h.min(side - y)));
    prop::collection::vec(rect, 0..most)
}

fn ring((x, y, w, h): Rect, clockwise: bool) -> Ring {
    let at = |x, y| Pt::new(x * CELL, y * CELL);
    let mut ring = vec![at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h)];
    if clockwise {
        ring.reverse();
    }
    ring
}

/// Every other ring is clockwise.
fn rings(rects: &[Rect]) -> Vec<Ring> {
    rects.iter().enumerate().map(|(i, &r)| ring(r, i % 2 == 1)).collect()
}

fn drawn(rects: &[Rect]) -> Cells {
    let mut cells = [[false; SIDE]; SIDE];
    for &(x, y, w, h) in rects {
        for row in &mut cells[y as usize..(y + h) as usize] {
            row[x as usize..(x + w) as usize].fill(true);
        }
    }
    cells
}

fn both(a: &Cells, b: &Cells, rule: impl Fn(bool, bool) -> bool) -> Cells {
    std::array::from_fn(|y| std::array::from_fn(|x| rule(a[y][x], b[y][x])))
}

fn count(cells: &Cells) -> i128 {
    cells.iter().flatten().filter(|&&on| on).count() as i128
}

/// The number of regions of cells that hang together by their sides.
fn regions(cells: &Cells) -> usize {
    let mut left = *cells;
    let mut found = 0;
    for y in 0..SIDE {
        for x in 0..SIDE {
            if !left[y][x] {
                continue;
            }
            found += 1;
            let mut open = vec![(x, y)];
            while let Some((x, y)) = open.pop() {
                if std::mem::take(&mut left[y][x]) {
                    open.extend([(x.saturating_sub(1), y), ((x + 1).min(SIDE - 1), y)]);
                    open.extend([(x, y.saturating_sub(1)), (x, (y + 1).min(SIDE - 1))]);
                }
            }
        }
    }
    found
}

/// The shapes cover just these cells, are as many as the regions, and are well made.
fn assert_covers(shapes: &[Shape], cells: &Cells) -> Result<(), TestCaseError> {
    let area: i128 = shapes.iter().map(|s| s.area().square_units()).sum();
    prop_assert_eq!(area, count(cells) * i128::from(CELL * CELL));
    prop_assert_eq!(shapes.len(), regions(cells));
    for (y, row) in cells.iter().enumerate() {
        for (x, &on) in row.iter().enumerate() {
            let middle = Pt::new(x as i32 * CELL + CELL / 2, y as i32 * CELL + CELL / 2);
            let holders = shapes.iter().filter(|s| s.locate(middle) == Where::Inside).count();
            prop_assert_eq!(holders, usize::from(on), "{:?}", middle);
        }
    }
    for shape in shapes {
        prop_assert!(geometry::twice_area(&shape.outer) > 0);
        for hole in &shape.holes {
            prop_assert!(geometry::twice_area(hole) < 0);
            prop_assert!(hole.iter().all(|&p| locate(p, &shape.outer) != Where::Outside));
        }
        for ring in shape.rings() {
            let mut points = ring.clone();
            points.sort();
            points.dedup();
            prop_assert_eq!(points.len(), ring.len(), "a ring passes a point twice");
            prop_assert!(Some(&ring[0]) == ring.iter().min_by_key(|p| (p.y, p.x)));
        }
    }
    Ok(())
}

/// The union of all squares of `side` cells that lie within the cells.
fn opened(cells: &Cells, side: usize) -> Cells {
    let mut out = [[false; SIDE]; SIDE];
    for y in 0..=SIDE - side {
        for x in 0..=SIDE - side {
            if cells[y..y + side].iter().all(|row| row[x..x + side].iter().all(|&on| on)) {
                out[y..y + side].iter_mut().for_each(|row| row[x..x + side].fill(true));
            }
        }
    }
    out
}

fn moved(shape: &Shape, by: (i32, i32)) -> Shape {
    let ring = |r: &Ring| r.iter().map(|p| Pt::new(p.x + by.0, p.y + by.1)).collect();
    Shape { outer: ring(&shape.outer), holes: shape.holes.iter().map(ring).collect() }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn overlays_cover_the_cells(a in rects(9), b in rects(9)) {
        let (x, y) = (drawn(&a), drawn(&b));
        let (a, b) = (rings(&a), rings(&b));
        assert_covers(&overlay::union(&a, &b), &both(&x, &y, |p, q| p || q))?;
        assert_covers(&overlay::intersect(&a, &b), &both(&x, &y, |p, q| p && q))?;
        assert_covers(&overlay::difference(&a, &b), &both(&x, &y, |p, q| p && !q))?;
    }

    #[test]
    fn shapes_with_islands_go_in_again(a in rects(9), b in rects(9), c in rects(6)) {
        let left = both(&drawn(&a), &drawn(&b), |p, q| p && !q);
        let shapes = overlay::difference(&rings(&a), &rings(&b));
        let (third, c) = (drawn(&c), rings(&c));
        assert_covers(&overlay::shape_union(&shapes, &c), &both(&left, &third, |p, q| p || q))?;
        assert_covers(&overlay::shape_intersect(&shapes, &c), &both(&left, &third, |p, q| p && q))?;
        assert_covers(&overlay::shape_difference(&shapes, &c), &both(&left, &third, |p, q| p && !q))?;
    }

    #[test]
    fn the_order_of_the_input_does_not_matter(a in rects(9), b in rects(9)) {
        let reversed = |rects: &[Rect]| rings(&rects.iter().rev().copied().collect::<Vec<_>>());
        let first = overlay::difference(&rings(&a), &rings(&b));
        prop_assert_eq!(overlay::difference(&reversed(&a), &reversed(&b)), first);
    }

    #[test]
    fn overlays_move_with_the_plan(a in rects(9), b in rects(9), by in (-300_000_000..300_000_000, -300_000_000..300_000_000)) {
        let there = |rects: &[Rect]| -> Vec<Ring> {
            rings(rects).iter().map(|r| r.iter().map(|p| Pt::new(p.x + by.0, p.y + by.1)).collect()).collect()
        };
        let here: Vec<Shape> = overlay::union(&rings(&a), &rings(&b)).iter().map(|s| moved(s, by)).collect();
        prop_assert_eq!(overlay::union(&there(&a), &there(&b)), here);
    }

    /// A square of whole cells reaches just the cells that a brute-force opening keeps; a unit more is
    /// a cell more, since all faces lie on cells.
    #[test]
    fn square_cores_cover_the_opening(a in rects(7), b in rects(5), side in 1usize..6) {
        let solid = both(&drawn(&a), &drawn(&b), |p, q| p && !q);
        let shapes = overlay::difference(&rings(&a), &rings(&b));
        let core = |units: i32| -> Vec<Shape> {
            let length = Len::from_units(units);
            shapes.iter().flat_map(|s| square_core(s, Facing::EAST, length)).collect()
        };
        let cells = side as i32 * CELL;
        assert_covers(&core(cells), &opened(&solid, side))?;
        assert_covers(&core(cells + 1 - CELL), &opened(&solid, side))?;
    }
}
