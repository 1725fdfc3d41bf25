//! Speed of ways in and of walks on plans of 50 to 20,000 pieces.
//!
//! First the answers that the timed calls must give are compared: the step of a drag with starting
//! anew, asking for 64 targets with asking for one, an arrival's way with the way back. Then times
//! are printed, and as multiples of a bare loop that finds the distance of one wall to all pieces in
//! floats, in the same run: such a ratio can be compared between machines.

#![expect(clippy::disallowed_methods, reason = "a bench reads the clock")]

mod adverse;
mod voronoi;

use std::hint::black_box;
use std::time::{Duration, Instant};

use geometry::passage::{Held, Obstacles, Way, walk, ways};
use geometry::{Pt, Ring, Seg, edges};
use measure::Len;

const SIZES: [usize; 4] = [50, 500, 5_000, 20_000];
const MOST: Len = Len::inches(48);
const ROOM: Len = Len::feet_inches(10, 0);

/// Walls 4 1/2 in thick along the grid of rooms of 10 ft, cut by doors of 28 to 36 in, every
/// twentieth a little turned, and a column in every third room.
fn plan(count: usize) -> Vec<Ring> {
    let rooms = (count as f64 / 2.4).sqrt().ceil() as i32;
    let thick = Len::sixty_fourths(288);
    let mut rings = Vec::with_capacity(count);
    let mut seed = 20_250_101u32;
    let mut random = move |below: u32| {
        seed = seed.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        ((seed >> 8) % below) as i32
    };
    for row in 0..=rooms {
        for column in 0..=rooms {
            let corner = Pt::at(ROOM * column, ROOM * row);
            for across in [false, true] {
                let turned = if random(20) == 0 { random(20_000) } else { 0 };
                let door = Len::inches(28 + random(9));
                let reach = (ROOM - door).units();
                let end = if across {
                    Pt::new(corner.x + turned, corner.y + reach)
                } else {
                    Pt::new(corner.x + reach, corner.y + turned)
                };
                let line = Seg::new(corner, end);
                let (left, right) = (line.offset_left(thick / 2), line.offset_left(-(thick / 2)));
                rings.push(vec![right.a, right.b, left.b, left.a]);
            }
            if random(3) == 0 {
                let at = Pt::at(ROOM * column + Len::inches(80), ROOM * row + Len::inches(80));
                let side = Len::inches(6).units();
                let corner = |x: i32, y: i32| Pt::new(at.x + x * side, at.y + y * side);
                rings.push(vec![corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)]);
            }
        }
    }
    rings.truncate(count);
    rings
}

fn obstacles(rings: &[Ring]) -> Obstacles {
    Obstacles::new(rings.iter().enumerate().map(|(i, ring)| (ring.as_slice(), i)))
}

/// The middle of a room, a little off the column.
fn place(column: i32, row: i32) -> Pt {
    Pt::at(ROOM * column + Len::inches(50), ROOM * row + Len::inches(50))
}

/// Places in rooms spread over the plan.
fn targets(rings: &[Ring], count: usize) -> Vec<Pt> {
    let side = ((rings.len() as f64 / 2.4).sqrt() as i32 - 1).max(1);
    (0..count as i32).map(|i| place((1 + i * 7) % side, (1 + i * 5) % side)).collect()
}

fn moved(ring: &Ring, by: i32) -> Ring {
    ring.iter().map(|p| Pt::new(p.x + by, p.y)).collect()
}

/// The squared distance of two pieces that do not overlap, in floats and without an index.
fn bare_distance(a: &[Pt], b: &[Pt]) -> f64 {
    let from = |corners: &[Pt], ring: &[Pt]| {
        let mut least = f64::INFINITY;
        for e in edges(ring) {
            let (ax, ay) = (f64::from(e.a.x), f64::from(e.a.y));
            let (dx, dy) = (f64::from(e.b.x) - ax, f64::from(e.b.y) - ay);
            let length2 = dx * dx + dy * dy;
            for p in corners {
                let (x, y) = (f64::from(p.x) - ax, f64::from(p.y) - ay);
                let part = ((x * dx + y * dy) / length2).clamp(0.0, 1.0);
                let (x, y) = (x - part * dx, y - part * dy);
                least = least.min(x * x + y * y);
            }
        }
        least
    };
    from(a, b).min(from(b, a))
}

fn bare_loop(rings: &[Ring], wall: &[Pt]) -> f64 {
    rings.iter().map(|ring| bare_distance(wall, ring)).fold(f64::INFINITY, f64::min)
}

/// The median and the 95th percentile of the time of a call.
fn times<T>(repeats: usize, mut call: impl FnMut(usize) -> T) -> [Duration; 2] {
    let mut times: Vec<Duration> = (0..repeats)
        .map(|i| {
            let start = Instant::now();
            black_box(call(i));
            start.elapsed()
        })
        .collect();
    times.sort();
    [times[repeats / 2], times[repeats * 95 / 100]]
}

struct Row {
    name: &'static str,
    times: [Duration; 2],
}

/// What is timed on one plan, after its answers were compared.
fn rows(count: usize) -> (Duration, Vec<Row>) {
    let rings = plan(count);
    let (all, from) = (obstacles(&rings), place(0, 0));
    let (two, many) = (targets(&rings, 1), targets(&rings, 64));
    let (fixed, wall) = (&[&rings[..20], &rings[21..]].concat(), &rings[20]);
    let mut held = Held::new(obstacles(fixed), &[from], &many, MOST);
    let step = |by: i32| obstacles(&[moved(wall, by * 100)]);
    for by in 0..20 {
        let anew = obstacles(&[&fixed[..], &[moved(wall, by * 100)]].concat());
        let widths = |ways: &[Way]| ways.iter().map(|way| way.width).collect::<Vec<Len>>();
        let (dragged, anew) = (held.ways(&step(by)), ways(&anew, &[from], &many, MOST));
        assert_eq!(widths(&dragged), widths(&anew), "a step differs from starting anew");
    }
    let together = ways(&all, &[from], &many, MOST);
    for (way, &target) in together.iter().zip(&many).step_by(8) {
        assert_eq!([*way], ways(&all, &[from], &[target], MOST)[..], "together and alone differ");
        assert_eq!(
            way.width,
            ways(&all, &[target], &[from], MOST)[0].width,
            "the way back differs"
        );
    }
    let (near, width) = (place(3, 2), Len::inches(20));
    let (thin, person) = (walk(&all, from, near, Len::ZERO), walk(&all, from, near, width));
    let feet = |walk: Option<geometry::passage::Walk>| {
        walk.map_or(f64::NAN, |walk| walk.length / f64::from(Len::PER_FOOT))
    };
    eprintln!(
        "{count} pieces: answers equal; ways of {:?} in; walks of {:.2} and {:.2} ft",
        together.iter().map(|w| w.width.to_inches()).take(4).collect::<Vec<_>>(),
        feet(thin),
        feet(person),
    );
    let repeats = (200_000 / count).clamp(21, 401);
    let bare = times(repeats, |i| bare_loop(&rings, black_box(&rings[i % 40])))[0];
    let row = |name, times| Row { name, times };
    let rows = vec![
        row("pieces and grid", times(repeats, |_| obstacles(black_box(&rings)))),
        row("cold, 2 places", times(repeats, |_| ways(&all, &[from], &two, MOST))),
        row("cold, 65 places", times(repeats, |_| ways(&all, &[from], &many, MOST))),
        row("at grab, 65 places", {
            times(repeats, |_| Held::new(all.clone(), &[from], &many, MOST))
        }),
        row("step, 65 places", times(repeats, |i| held.ways(&step(i as i32)))),
        row("step, 2 places", {
            let mut held = Held::new(obstacles(fixed), &[from], &two, MOST);
            times(repeats, |i| held.ways(&step(i as i32)))
        }),
        row("walk, width 0", times(repeats, |_| walk(&all, from, near, Len::ZERO))),
        row("walk, width 20 in", times(repeats, |_| walk(&all, from, near, width))),
    ];
    (bare, rows)
}

/// The adversarial plans, each on a line of its own; the step is compared with starting anew first.
fn adversarial(count: i32) {
    eprintln!("adversarial plans of about {count} pieces");
    eprintln!("  {:<36} {:>10} {:>8} {:>10} {:>8}", "", "cold", "ratio", "step", "ratio");
    for plan in adverse::all(count) {
        let (fixed, moving) = plan.rings.split_at(plan.rings.len() - 1);
        let mut held = Held::new(obstacles(fixed), &[plan.from], &plan.to, MOST);
        let step = |by: i32| obstacles(&[moved(&moving[0], by * 100)]);
        for by in 0..8 {
            let anew = obstacles(&[fixed, &[moved(&moving[0], by * 100)]].concat());
            let widths = |ways: &[Way]| ways.iter().map(|way| way.width).collect::<Vec<Len>>();
            let (dragged, anew) = (held.ways(&step(by)), ways(&anew, &[plan.from], &plan.to, MOST));
            assert_eq!(widths(&dragged), widths(&anew), "{}", plan.name);
        }
        let all = obstacles(&plan.rings);
        let repeats = if count > 1_000 { 11 } else { 51 };
        let bare = times(repeats, |i| bare_loop(&plan.rings, black_box(&plan.rings[i % 40])))[0];
        let cold = times(repeats, |_| ways(&all, &[plan.from], &plan.to, MOST))[0];
        let frame = times(repeats, |i| held.ways(&step(i as i32)))[0];
        let ratio = |time: Duration| time.as_secs_f64() / bare.as_secs_f64();
        let (cold_time, frame_time) = (format!("{cold:.1?}"), format!("{frame:.1?}"));
        eprintln!(
            "  {:<36} {cold_time:>10} {:>7.2}x {frame_time:>10} {:>7.2}x",
            plan.name,
            ratio(cold),
            ratio(frame)
        );
    }
}

/// The whole question against the diagram alone of a segment Voronoi library, on the same free floor.
fn against_voronoi(count: usize) {
    let rings = plan(count);
    let (all, from, to) = (obstacles(&rings), place(0, 0), targets(&rings, 1));
    let input = voronoi::segments(&rings);
    let repeats = if count > 1_000 { 5 } else { 21 };
    let peer = times(repeats, |_| voronoi::diagram(&input))[0];
    let ours = times(repeats, |_| ways(&all, &[from], &to, MOST))[0];
    eprintln!(
        "{count} pieces: diagram of {} segments alone {peer:.1?} ({} edges); the widest way {ours:.1?}, {:.0}x faster",
        input.len(),
        voronoi::diagram(&input),
        peer.as_secs_f64() / ours.as_secs_f64()
    );
}

fn main() {
    if std::env::args().any(|arg| arg == "--test" || arg == "--list") {
        rows(SIZES[0]);
        adversarial(60);
        return;
    }
    let mut medians: Vec<Vec<f64>> = Vec::new();
    let mut names = Vec::new();
    for count in SIZES {
        let (bare, rows) = rows(count);
        eprintln!("  {:<22} {:>10} {:>10} {:>8}", "", "median", "p95", "ratio");
        eprintln!("  {:<22} {:>10}", "bare loop, 1 wall", format!("{bare:.1?}"));
        for Row { name, times: [median, p95] } in &rows {
            let ratio = median.as_secs_f64() / bare.as_secs_f64();
            let (median, p95) = (format!("{median:.1?}"), format!("{p95:.1?}"));
            eprintln!("  {name:<22} {median:>10} {p95:>10} {ratio:>7.2}x");
        }
        names = rows.iter().map(|row| row.name).collect();
        medians.push(rows.iter().map(|row| row.times[0].as_secs_f64()).collect());
    }
    eprintln!("growth: exponent of the count, from a least-squares line through the logarithms");
    for (i, name) in names.iter().enumerate() {
        let points: Vec<(f64, f64)> = SIZES
            .iter()
            .zip(&medians)
            .map(|(&count, row)| ((count as f64).ln(), row[i].ln()))
            .collect();
        let n = points.len() as f64;
        let mean = |f: &dyn Fn(&(f64, f64)) -> f64| points.iter().map(f).sum::<f64>() / n;
        let (mx, my) = (mean(&|p| p.0), mean(&|p| p.1));
        let slope = mean(&|p| (p.0 - mx) * (p.1 - my)) / mean(&|p| (p.0 - mx).powi(2));
        eprintln!("  {name:<22} {slope:.2}");
    }
    for count in [500, 5_000] {
        adversarial(count);
    }
    eprintln!("peer: boostvoronoi, a segment Voronoi diagram of the free floor's border");
    for count in [50, 500, 5_000] {
        against_voronoi(count);
    }
}
