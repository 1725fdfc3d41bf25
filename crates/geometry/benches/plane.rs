//! Speed of the plane algorithms on plans of 50, 300 and 2,000 rectangles.
//!
//! Before the table, each algorithm's time is printed as a multiple of a bare pass that compares one
//! box with the boxes of all rectangles, measured in the same run: such a ratio can be compared
//! between machines.

#![expect(clippy::disallowed_methods, reason = "a bench reads the clock")]

use std::hint::black_box;
use std::time::{Duration, Instant};

use divan::Bencher;
use geometry::{
    Bounds, Facing, Grid, Pt, Ring, Seg, Shape, closer_than, gap, overlay, square_core,
};
use measure::Len;

const SIZES: [usize; 3] = [50, 300, 2_000];

/// A plan: walls 4 1/2 in thick along the grid of rooms of 10 ft, cut by doors of 32 in, every
/// twentieth a little turned, and columns.
fn walls(count: usize) -> Vec<Ring> {
    let rooms = (count as f64 / 2.2).sqrt().ceil() as i32;
    let (room, thick, door) = (Len::feet_inches(10, 0), Len::sixty_fourths(288), Len::inches(32));
    let mut rings = Vec::with_capacity(count);
    let mut seed = 20_250_101u32;
    let mut random = move |below: u32| {
        seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        (seed >> 8) % below
    };
    'all: for row in 0..=rooms {
        for column in 0..=rooms {
            let corner = Pt::at(room * column, room * row);
            for across in [false, true] {
                if rings.len() == count {
                    break 'all;
                }
                let turned = if random(20) == 0 { random(20_000) as i32 } else { 0 };
                let reach = (room - door).units();
                let end = if across {
                    Pt::new(corner.x + turned, corner.y + reach)
                } else {
                    Pt::new(corner.x + reach, corner.y + turned)
                };
                let line = Seg::new(corner, end);
                let (left, right) = (line.offset_left(thick / 2), line.offset_left(-(thick / 2)));
                rings.push(vec![right.a, right.b, left.b, left.a]);
            }
        }
    }
    rings
}

fn frame(rings: &[Ring]) -> Ring {
    Bounds::of(rings.iter().flatten()).grow(Len::inches(12)).ring()
}

fn boxes(rings: &[Ring]) -> Vec<Bounds> {
    rings.iter().map(Bounds::of).collect()
}

/// A keep-clear of 30 x 36 in beside the middle wall.
fn keep_clear(rings: &[Ring]) -> Bounds {
    let p = rings[rings.len() / 2][2];
    Bounds::of([p, Pt::new(p.x + Len::inches(30).units(), p.y + Len::inches(36).units())])
}

fn rooms(rings: &[Ring]) -> Vec<Shape> {
    overlay::difference(&[frame(rings)], rings)
}

fn bare_pass(boxes: &[Bounds], ask: Bounds) -> usize {
    boxes.iter().filter(|b| b.meets(ask)).count()
}

#[divan::bench(args = SIZES)]
fn rooms_by_difference(bencher: Bencher, count: usize) {
    let rings = walls(count);
    bencher.bench_local(|| rooms(black_box(&rings)));
}

#[divan::bench(args = SIZES)]
fn union(bencher: Bencher, count: usize) {
    let rings = walls(count);
    bencher.bench_local(|| overlay::union(black_box(&rings), &[]));
}

#[divan::bench(args = SIZES)]
fn bare_box_pass(bencher: Bencher, count: usize) {
    let (rings, boxes) = (walls(count), boxes(&walls(count)));
    let ask = keep_clear(&rings);
    bencher.bench_local(|| bare_pass(black_box(&boxes), black_box(ask)));
}

#[divan::bench(args = SIZES)]
fn grid_built(bencher: Bencher, count: usize) {
    let boxes = boxes(&walls(count));
    bencher.with_inputs(|| boxes.clone()).bench_local_values(Grid::new);
}

#[divan::bench(args = SIZES)]
fn grid_asked(bencher: Bencher, count: usize) {
    let rings = walls(count);
    let (grid, ask) = (Grid::new(boxes(&rings)), keep_clear(&rings));
    bencher.bench_local(|| grid.query(black_box(ask)));
}

#[divan::bench]
fn gap_of_two_boxes(bencher: Bencher) {
    let rings = walls(50);
    bencher.bench_local(|| gap(black_box(&rings[3]), black_box(&rings[20])));
}

#[divan::bench]
fn two_boxes_closer_than(bencher: Bencher) {
    let rings = walls(50);
    bencher
        .bench_local(|| closer_than(black_box(&rings[3]), black_box(&rings[20]), Len::inches(36)));
}

/// A room of six corners with a column.
fn ell_room() -> Shape {
    let ell = [(0, 0), (240, 0), (240, 90), (120, 90), (120, 200), (0, 200)];
    let outer = ell.map(|(x, y)| Pt::inches(x, y)).to_vec();
    let column = Bounds::of([Pt::inches(100, 40), Pt::inches(104, 44)]).ring();
    overlay::difference(&[outer], &[column]).remove(0)
}

#[divan::bench(args = [(0, 1), (3, 4)])]
fn square_core_of_a_room(bencher: Bencher, facing: (i32, i32)) {
    let room = ell_room();
    let (facing, side) = (Facing::from(facing), Len::feet_inches(7, 0));
    bencher.bench_local(|| square_core(black_box(&room), facing, side));
}

#[divan::bench]
fn label_of_a_room(bencher: Bencher) {
    let room = ell_room();
    bencher.bench_local(|| black_box(&room).label_point());
}

/// The median time of a call.
fn median<T>(mut call: impl FnMut() -> T) -> Duration {
    let calls = 20;
    let mut times: Vec<Duration> = (0..51)
        .map(|_| {
            let start = Instant::now();
            (0..calls).for_each(|_| drop(black_box(call())));
            start.elapsed() / calls
        })
        .collect();
    times.sort();
    times[times.len() / 2]
}

fn print_ratios() {
    eprintln!("time as a multiple of one bare pass over the boxes of all rectangles");
    eprintln!("{:>8} {:>12} {:>10} {:>10} {:>10}", "count", "bare pass", "rooms", "union", "query");
    for count in SIZES {
        let rings = walls(count);
        let (boxes, ask) = (boxes(&rings), keep_clear(&rings));
        let grid = Grid::new(boxes.clone());
        // One pass is too short to time: 64 of them.
        let pass =
            median(|| (0..64).map(|_| bare_pass(black_box(&boxes), ask)).sum::<usize>()) / 64;
        let ratio = |time: Duration| time.as_secs_f64() / pass.as_secs_f64();
        let (made, united) = (median(|| rooms(&rings)), median(|| overlay::union(&rings, &[])));
        let asked =
            median(|| (0..64).map(|_| grid.query(black_box(ask)).len()).sum::<usize>()) / 64;
        eprintln!(
            "{count:>8} {:>12} {:>9.0}x {:>9.0}x {:>9.2}x",
            format!("{pass:?}"),
            ratio(made),
            ratio(united),
            ratio(asked)
        );
    }
}

fn main() {
    if !std::env::args().any(|arg| arg == "--test" || arg == "--list") {
        print_ratios();
    }
    divan::main();
}
