//! The width of the widest way against a raster of distances.
//!
//! A cell's value is twice the distance of its middle from the nearest piece, in floats; a way goes
//! from cell to cell, also across corners. Every point of a cell of side `h` lies within `h / sqrt 2` of its
//! middle, and so does every point between neighbouring middles, so the raster is off by at most
//! `2 h / sqrt 2` either way, and less so the smaller its cells are.

use geometry::passage::ways;
use geometry::{Pt, Ring, Where, edges, locate};
use measure::Len;

use crate::plans::{KINDS, Random, SIDE, SamplePlan, obstacles, plan};

fn distance(p: (f64, f64), ring: &Ring) -> f64 {
    let to_edge = |(a, b): (Pt, Pt)| {
        let (ax, ay) = (p.0 - f64::from(a.x), p.1 - f64::from(a.y));
        let (dx, dy) = (f64::from(b.x) - f64::from(a.x), f64::from(b.y) - f64::from(a.y));
        let length2 = dx * dx + dy * dy;
        let part =
            if length2 > 0.0 { ((ax * dx + ay * dy) / length2).clamp(0.0, 1.0) } else { 0.0 };
        (ax - part * dx).hypot(ay - part * dy)
    };
    let inside = locate(Pt::new(p.0.round() as i32, p.1.round() as i32), ring) == Where::Inside;
    let outline = edges(ring).map(|e| to_edge((e.a, e.b))).fold(f64::INFINITY, f64::min);
    if inside { 0.0 } else { outline }
}

/// The widest way over the raster: cells are opened from the widest to the narrowest until both
/// places hang together.
fn by_raster(plan: &SamplePlan, cell: i32) -> f64 {
    // Wide of the plan, so that the way round it is seen as far as it can matter.
    let margin = SIDE;
    let across = ((SIDE + 2 * margin) / cell) as usize;
    let middle = |i: usize| f64::from(cell) * (i as f64 + 0.5) - f64::from(margin);
    let mut order: Vec<(f64, usize)> = (0..across * across)
        .map(|i| {
            let p = (middle(i % across), middle(i / across));
            let near = plan.rings.iter().map(|r| distance(p, r)).fold(f64::INFINITY, f64::min);
            (2.0 * near, i)
        })
        .collect();
    order.sort_by(|a, b| b.0.total_cmp(&a.0));
    let mut root: Vec<usize> = vec![usize::MAX; across * across];
    fn find(root: &mut [usize], mut i: usize) -> usize {
        while root[i] != i {
            root[i] = root[root[i]];
            i = root[i];
        }
        i
    }
    let cell_of = |p: Pt| {
        let at = |x: i32| ((x + margin) / cell) as usize;
        at(p.y) * across + at(p.x)
    };
    let (from, to) = (cell_of(plan.arrivals[0]), cell_of(plan.targets[0]));
    for (width, i) in order {
        root[i] = i;
        let (x, y) = (i % across, i / across);
        for ny in y.saturating_sub(1)..=(y + 1).min(across - 1) {
            for nx in x.saturating_sub(1)..=(x + 1).min(across - 1) {
                let n = ny * across + nx;
                if root[n] != usize::MAX {
                    let (a, b) = (find(&mut root, i), find(&mut root, n));
                    root[a] = b;
                }
            }
        }
        if root[from] != usize::MAX && root[to] != usize::MAX {
            let (a, b) = (find(&mut root, from), find(&mut root, to));
            if a == b {
                return width;
            }
        }
    }
    0.0
}

#[test]
fn the_raster_agrees_within_its_cells_and_closes_in() {
    let mut random = Random::new(99);
    let cells = [24, 12, 6];
    let mut sums = [0.0; 3];
    for i in 0..12 {
        let mut plan = plan(&mut random, KINDS[i % 4]);
        plan.arrivals.truncate(1);
        let most = Len::COORD_LIMIT;
        let way = &ways(&obstacles(&plan.rings), &plan.arrivals, &plan.targets, most)[0];
        let width = f64::from(way.width.units());
        for (cell, sum) in cells.into_iter().zip(&mut sums) {
            let error = (by_raster(&plan, cell) - width).abs();
            // One unit for the rounding of the width, one for that of the middle inside a piece.
            let bound = f64::from(cell) * std::f64::consts::SQRT_2 + 2.0;
            assert!(error <= bound, "{error} with cells of {cell}: {way:?} {plan:?}");
            *sum += error;
        }
    }
    assert!(sums[0] > 1.4 * sums[1] && sums[1] > 1.4 * sums[2], "{sums:?}");
}
