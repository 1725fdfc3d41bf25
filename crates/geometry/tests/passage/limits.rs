//! Limits met exactly, and plans that are made to be difficult.

use geometry::passage::{Held, Limit, Obstacles, Way, ways};
use geometry::{Pt, Ring, Vec2};
use measure::Len;

use crate::inflated::assert_width;
use crate::plans::{Random, SamplePlan, obstacles};

const MOST: Len = Len::COORD_LIMIT;
const INCH: i32 = Len::PER_INCH;

fn rect(x: i32, y: i32, w: i32, h: i32) -> Ring {
    vec![Pt::new(x, y), Pt::new(x + w, y), Pt::new(x + w, y + h), Pt::new(x, y + h)]
}

fn inches(x: i32, y: i32, w: i32, h: i32) -> Ring {
    rect(x * INCH, y * INCH, w * INCH, h * INCH)
}

fn moved(ring: &[Pt], x: i32, y: i32) -> Ring {
    ring.iter().map(|p| Pt::new(p.x + x, p.y + y)).collect()
}

fn way(rings: &[Ring], from: Pt, to: Pt) -> Way {
    ways(&obstacles(rings), &[from], &[to], MOST)[0]
}

/// The way, after it was compared with free floor round grown pieces.
fn checked(rings: &[Ring], from: Pt, to: Pt) -> Way {
    let way = way(rings, from, to);
    let plan = SamplePlan { rings: rings.to_vec(), arrivals: vec![from], targets: vec![to] };
    assert_width(&plan, to, &way, MOST);
    way
}

/// Two rooms of 10 by 10 ft with a wall of 4 in between them, in it a doorway from 40 in to 70 in.
fn two_rooms() -> Vec<Ring> {
    let around = [(-4, -4, 252, 4), (-4, 120, 252, 4), (-4, 0, 4, 120), (244, 0, 4, 120)];
    let mut rings: Vec<Ring> = around.map(|(x, y, w, h)| inches(x, y, w, h)).to_vec();
    rings.extend([inches(120, 0, 4, 40), inches(120, 70, 4, 50)]);
    rings
}

const HERE: Pt = Pt::inches(60, 60);
const THERE: Pt = Pt::inches(184, 60);

#[test]
fn a_doorway_of_just_the_width_passes_and_one_unit_less_does_not() {
    let (mut rings, limit) = (two_rooms(), Len::inches(30));
    let way = checked(&rings, HERE, THERE);
    assert_eq!(way.width, limit);
    assert!(way.passes(limit) && !way.passes(limit + Len::UNIT));
    let Limit::Pinch(pinch) = way.limit else { panic!("{way:?}") };
    assert_eq!((pinch.from, pinch.to), (Pt::inches(122, 40), Pt::inches(122, 70)));
    assert_eq!(pinch.pieces, [4, 5]);
    rings[5] = moved(&rings[5], 0, -1);
    let way = checked(&rings, HERE, THERE);
    assert_eq!(way.width, limit - Len::UNIT);
    assert!(!way.passes(limit));
}

#[test]
fn asked_for_one_width_the_answer_flips_at_the_unit() {
    let rings = obstacles(&two_rooms());
    let passes = |width| ways(&rings, &[HERE], &[THERE], width)[0];
    assert_eq!(passes(Len::inches(30)).limit, Limit::Open);
    assert!(!passes(Len::inches(30) + Len::UNIT).passes(Len::inches(30) + Len::UNIT));
}

#[test]
fn a_skew_gap_of_just_the_width() {
    // Corner to corner along 3-4-5, closed off by long walls that touch the two boxes.
    let unit = 1_000;
    let boxes = |off: i32| {
        let other = Pt::new(3 * unit + off, 4 * unit);
        vec![
            rect(-50 * unit, -50 * unit, 50 * unit, 50 * unit),
            rect(other.x, other.y, 50 * unit, 50 * unit),
            rect(-60 * unit, -50 * unit, 10 * unit, 104 * unit),
            rect(-50 * unit, 54 * unit + 1, 200 * unit, 1),
            rect(-60 * unit, 53 * unit, 200 * unit, unit + 1),
        ]
    };
    // From the pocket on the left of the gap to the open floor below.
    let (from, to) = (Pt::new(-25 * unit, 26 * unit), Pt::new(60 * unit, -60 * unit));
    for (off, width) in [(0, 5_000), (-1, 4_999), (1, 5_000), (2, 5_001)] {
        let way = checked(&boxes(off), from, to);
        assert_eq!(way.width, Len::from_units(width), "{off}");
        assert!(matches!(way.limit, Limit::Pinch(_)));
    }
}

#[test]
fn pieces_that_touch_by_an_edge_a_corner_or_a_point_wall_off() {
    let edge = two_rooms()[..4].to_vec();
    let outside = Pt::inches(-60, 60);
    let way = checked(&edge, outside, HERE);
    assert!(matches!(way.limit, Limit::Walled(_)) && !way.reached() && way.width == Len::ZERO);
    // A ring of boxes that touch only by their corners.
    let corners: Vec<Ring> =
        [(0, 10), (10, 0), (20, 10), (10, 20)].map(|(x, y)| inches(x, y, 10, 10)).to_vec();
    let (middle, outside) = (Pt::inches(15, 15), Pt::inches(60, 60));
    assert!(matches!(checked(&corners, outside, middle).limit, Limit::Walled(_)));
    // One unit apart is a way, one unit wide.
    let mut apart = corners.clone();
    apart[2] = moved(&corners[2], 1, 0);
    assert_eq!(checked(&apart, outside, middle).width, Len::UNIT);
    // A post that touches a wall at a point, and closes the doorway with another.
    let mut doorway = two_rooms();
    let post = |y: i32| {
        let at = |dx: i32, dy: i32| Pt::new(122 * INCH + dx, y * INCH + dy);
        vec![at(0, 0), at(7 * INCH, 7 * INCH + 7), at(0, 15 * INCH), at(-7 * INCH, 7 * INCH)]
    };
    doorway.extend([post(40), post(55)]);
    assert!(matches!(checked(&doorway, HERE, THERE).limit, Limit::Walled(_)));
}

#[test]
fn a_place_in_a_piece_or_on_its_edge_is_buried() {
    let rings = two_rooms();
    for place in [Pt::inches(121, 20), Pt::inches(120, 20), Pt::inches(124, 40)] {
        let way = checked(&rings, HERE, place);
        let Limit::Buried(stand) = way.limit else { panic!("{way:?}") };
        assert_eq!((stand.piece, stand.at_arrival, stand.nearest), (4, false, place));
        assert!(!way.reached() && !way.passes(Len::ZERO));
        let Limit::Buried(stand) = self::way(&rings, place, HERE).limit else { panic!("{way:?}") };
        assert!(stand.at_arrival);
    }
    // One unit off the wall someone two units wide can stand.
    let beside = Pt::new(120 * INCH - 1, 20 * INCH);
    let way = checked(&rings, HERE, beside);
    assert_eq!((way.width, way.reached()), (Len::from_units(2), true));
    assert!(matches!(way.limit, Limit::Standing(stand) if stand.nearest.x == 120 * INCH));
}

#[test]
fn without_pieces_targets_or_arrivals() {
    let none = Obstacles::new([]);
    let way = ways(&none, &[HERE], &[THERE], Len::inches(48))[0];
    assert_eq!((way.width, way.limit), (Len::inches(48), Limit::Open));
    assert_eq!(ways(&none, &[HERE], &[], MOST), []);
    let way = ways(&obstacles(&two_rooms()), &[], &[THERE], MOST)[0];
    assert_eq!((way.limit, way.arrival, way.reached()), (Limit::NoArrival, None, false));
    assert!(!way.passes(Len::ZERO));
    // An empty ring stands nowhere, but keeps its index.
    let mut rings = two_rooms();
    rings.insert(0, vec![]);
    let way = ways(&obstacles(&rings), &[HERE], &[THERE], MOST)[0];
    assert!(matches!(way.limit, Limit::Pinch(pinch) if pinch.pieces == [5, 6]));
    assert_eq!(
        Held::new(Obstacles::new([]), &[HERE], &[THERE], MOST).ways(&obstacles(&rings)),
        [way]
    );
}

#[test]
fn the_best_arrival_counts() {
    let rings = two_rooms();
    let arrivals = [Pt::inches(-60, 60), HERE, Pt::inches(184, 20)];
    let found = ways(&obstacles(&rings), &arrivals, &[THERE], MOST)[0];
    assert_eq!((found.arrival, found.width), (Some(2), Len::inches(40)));
    let first = ways(&obstacles(&rings), &arrivals[..2], &[THERE], MOST)[0];
    assert_eq!((first.arrival, first.width), (Some(1), Len::inches(30)));
}

/// A long wall turned anyhow through the origin, a wedge that points at its middle, and a screen from the
/// wedge's back that closes the floor beyond the wall: the way from one side of the wedge to the
/// other is the gap before its point, which lies off the grid.
fn skew_pair(random: &mut Random) -> (Vec<Ring>, [Pt; 2], Vec2) {
    let (dx, dy) = (40 + random.below(400), 1 + random.below(400));
    let off = 50 + random.below(120);
    // Corners by their steps along the wall and, to its right, across it.
    let size = Vec2::new(dx.into(), dy.into()).norm();
    let at = |along: i32, across: i32| {
        let step = |u: i32, v: i32| (f64::from(along * u + across * v) / size).round() as i32;
        Pt::new(step(dx, dy), step(dy, -dx))
    };
    let wall = vec![Pt::new(-dx * 9, -dy * 9), Pt::new(dx * 9, dy * 9), at(0, -300)];
    let point = at(random.below(60) - 30, off);
    let back = [at(-20, 900), at(20, 900)];
    let wedge = vec![point, back[0], back[1]];
    // Everything within a frame that the wall's ends and the screen stand against.
    let end = |sign: i32| Pt::new(sign * dx * 9, sign * dy * 9);
    let ends = [end(-1), end(1)].map(|p| p + Vec2::new(i64::from(dy) * 9, -i64::from(dx) * 9));
    let screen = |a: Pt, b: Pt| vec![a, b];
    let rings = vec![
        wall,
        wedge,
        screen(end(-1), ends[0]),
        screen(end(1), ends[1]),
        screen(ends[0], ends[1]),
        screen(back[0], ends[0].midway(ends[1])),
        screen(ends[0].midway(ends[1]), ends[0]),
    ];
    (rings, [at(-300, 300), at(300, 300)], Vec2::new(dx.into(), dy.into()))
}

#[test]
fn places_on_and_one_unit_beside_the_pinch_of_a_skew_pair() {
    let mut random = Random::new(5);
    for _ in 0..60 {
        let (rings, [from, to], along) = skew_pair(&mut random);
        let way = checked(&rings, from, to);
        let Limit::Pinch(pinch) = way.limit else { panic!("{way:?} {rings:?}") };
        assert!(pinch.pieces == [0, 1] || pinch.pieces == [1, 0]);
        let middle = pinch.from.midway(pinch.to);
        let side = |n: i64| middle + Vec2::new(n * along.x.signum(), n * along.y.signum());
        for n in [-40, -2, -1, 0, 1, 2, 40] {
            for end in [from, to] {
                let there = checked(&rings, end, side(n));
                // Nobody wider than the gap stands in it, but for the unit by which it was rounded.
                assert!(there.width <= way.width + Len::UNIT * 2 || n.abs() == 40);
                let mut swapped = rings.clone();
                swapped.swap(0, 1);
                swapped[1].reverse();
                assert_eq!(self::way(&swapped, end, side(n)).width, there.width, "{rings:?}");
            }
        }
    }
}

#[test]
fn a_ring_of_gaps_that_are_all_just_30_in() {
    // Twelve boxes round a square; every gap is 30 in.
    let mut rings = Vec::new();
    for i in 0..3 {
        let at = i * 60;
        rings.extend([inches(at + 30, 0, 30, 30), inches(180 + 30, at + 30, 30, 30)]);
        rings.extend([inches(at + 30, 210, 30, 30), inches(0, at + 30, 30, 30)]);
    }
    rings.extend([(0, 0), (210, 210)].map(|(x, y)| inches(x, y, 1, 1)));
    let (middle, outside) = (Pt::inches(120, 120), Pt::inches(-200, 120));
    let way = checked(&rings, outside, middle);
    assert_eq!(way.width, Len::inches(30));
    for i in 0..rings.len() - 2 {
        let mut wider = rings.clone();
        let towards = |at: i32, far: i32| i32::from(at >= far * INCH) - i32::from(at <= 0);
        let (x, y) = (towards(rings[i][0].x, 210), towards(rings[i][0].y, 210));
        // Outwards, the gaps beside it widen a little; inwards and along, one widens, one narrows.
        wider[i] = moved(&rings[i], -y, x);
        let gaps = self::way(&wider, outside, middle).width;
        assert!(gaps >= Len::inches(30) && gaps <= Len::inches(30) + Len::UNIT, "{gaps:?}");
    }
}

#[test]
fn gaps_of_one_unit_and_less() {
    // Thin screens, their ends one unit apart, or less: (1, 0) to a face through (0, 0) along (1, 1).
    let long = 5_000;
    let gap = |x: i32, y: i32| {
        vec![
            vec![Pt::new(-long, -long), Pt::new(long, long)],
            vec![Pt::new(x, y), Pt::new(long, -long)],
            vec![Pt::new(long, long), Pt::new(long, -long)],
        ]
    };
    let (inside, outside) = (Pt::new(3_000, 0), Pt::new(-3_000, -4_000));
    let thin = way(&gap(1, 0), outside, inside);
    assert!(thin.reached() && thin.width == Len::ZERO && matches!(thin.limit, Limit::Pinch(_)));
    assert!(thin.passes(Len::ZERO) && !thin.passes(Len::UNIT));
    assert_eq!(checked(&gap(2, 0), outside, inside).width, Len::UNIT);
    assert!(matches!(checked(&gap(1, 1), outside, inside).limit, Limit::Walled(_)));
}

#[test]
fn walls_that_are_parallel_but_for_a_hair() {
    // 0.002 degrees over 100 ft are 340 units; the corridor narrows to just 36 in at one end.
    let long = Len::feet_inches(100, 0).units();
    let width = 36 * INCH;
    let low = rect(0, -INCH, long, INCH);
    let high = vec![
        Pt::new(0, width + 340),
        Pt::new(long, width),
        Pt::new(long, width + INCH),
        Pt::new(0, width + INCH + 340),
    ];
    let cap = rect(-100 * INCH, -INCH, 10 * INCH, 200 * INCH);
    let ends =
        [rect(-100 * INCH, -INCH, 100 * INCH, 1), rect(-100 * INCH, 199 * INCH, 101 * INCH, 1)];
    let stop = vec![Pt::new(0, width + 340), Pt::new(0, 199 * INCH)];
    let rings = [vec![low, high, cap, stop], ends.to_vec()].concat();
    let way = checked(&rings, Pt::inches(-45, 100), Pt::new(long + 90 * INCH, 10 * INCH));
    assert_eq!(way.width, Len::inches(36));
    let Limit::Pinch(pinch) = way.limit else { panic!("{way:?}") };
    assert_eq!((pinch.from, pinch.to), (Pt::new(long, 0), Pt::new(long, width)));
}

#[test]
fn a_long_diagonal_comb_a_wall_of_200_ft_and_a_heap_in_one_place() {
    // Teeth of a comb along the diagonal, 31 in apart at the tips, within a wall of 200 ft.
    let long = Len::feet_inches(200, 0).units();
    let mut rings = vec![vec![Pt::new(0, 0), Pt::new(long, long / 2)]];
    for i in 0..12 {
        let root = Pt::new(i * 44 * INCH, i * 22 * INCH);
        rings.push(vec![
            root,
            Pt::new(root.x - 30 * INCH, root.y + 60 * INCH),
            Pt::new(root.x + 1, root.y),
        ]);
    }
    let heap = (0..40).map(|i| inches(100 + i % 7, 400 + i % 5, 3, 3));
    rings.extend(heap);
    let between = |i: i32| Pt::new((i * 44 + 15) * INCH, (i * 22 + 24) * INCH);
    let outside = Pt::inches(-200, 600);
    for i in [0, 4, 10] {
        let way = checked(&rings, outside, between(i));
        assert!(way.width > Len::inches(20), "{way:?}");
    }
    let below = checked(&rings, outside, Pt::inches(600, -200));
    assert!(below.width > Len::inches(100), "{below:?}");
}

#[test]
fn the_ends_of_the_grid() {
    let far = Len::COORD_LIMIT.units();
    let rings = vec![
        rect(0, -far, 1, far - 100),
        rect(0, 100, 1, far - 100),
        vec![Pt::new(-far, -far), Pt::new(far, -far)],
        vec![Pt::new(-far, far), Pt::new(far, far)],
        vec![Pt::new(-far, -far), Pt::new(-far, far)],
        vec![Pt::new(far, -far), Pt::new(far, far)],
    ];
    let (from, to) = (Pt::new(-far + 1_000, 7), Pt::new(far - 1_000, -7));
    assert_eq!(way(&rings, from, to).width, Len::from_units(200));
    let skew = vec![
        vec![Pt::new(-far, -far), Pt::new(far, far)],
        vec![Pt::new(-far, -far), Pt::new(-far, far), Pt::new(far, far)],
    ];
    assert!(matches!(way(&skew, Pt::new(5, -5), Pt::new(-far + 9, 0)).limit, Limit::Buried(_)));
    let skew = vec![
        vec![Pt::new(-far, -far), Pt::new(far, far)],
        vec![Pt::new(-far, -far), Pt::new(-far, far)],
        vec![Pt::new(far - 7, far), Pt::new(-far, far)],
    ];
    // From (far - 7, far) to the diagonal: 7 / sqrt 2.
    assert_eq!(way(&skew, Pt::new(far / 2, 0), Pt::new(-far / 2, 0)).width, Len::from_units(4));
}
