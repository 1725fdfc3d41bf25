//! Walks against plain visibility graphs and against lengths worked out by hand.

use geometry::passage::{Obstacles, walk, ways};
use geometry::{Pt, Ring, convex_hull};
use measure::Len;

use crate::plans::{KINDS, Random, SamplePlan, obstacles, plan};
use crate::visibility::shortest;

fn rect(x: i32, y: i32, w: i32, h: i32) -> Ring {
    vec![Pt::new(x, y), Pt::new(x + w, y), Pt::new(x + w, y + h), Pt::new(x, y + h)]
}

fn length(rings: &[Ring], from: Pt, to: Pt, width: i32) -> Option<f64> {
    walk(&obstacles(rings), from, to, Len::from_units(width)).map(|walk| walk.length)
}

fn close(found: Option<f64>, expected: f64) -> bool {
    found.is_some_and(|found| (found - expected).abs() <= 1e-9 * expected)
}

#[test]
fn straight_on_and_round_a_corner() {
    let (from, to) = (Pt::new(0, 0), Pt::new(3_000, 4_000));
    assert_eq!(walk(&obstacles(&[]), from, to, Len::ZERO).map(|w| w.line), Some(vec![from, to]));
    assert!(close(length(&[], from, to, 900), 5_000.0));
    // Round the upper left corner of a box: (0, 0) - (1000, 2400) - (3000, 4000).
    let box_ = rect(1_000, 400, 5_000, 2_000);
    let walked = walk(&obstacles(&[box_]), from, to, Len::ZERO).expect("there is a way");
    assert_eq!(walked.line, [from, Pt::new(1_000, 2_400), to]);
    assert!((walked.length - (2_600.0 + 2_561.249_695)).abs() < 1e-6);
    assert_eq!(length(&[rect(-9, -9, 18, 18)], from, to, 0), None);
}

#[test]
fn round_a_post_with_clearance() {
    // From 1,000 on one side to 1,000 on the other, post between, radius r: two tangents and an arc.
    let (from, to) = (Pt::new(-1_000, 0), Pt::new(1_000, 0));
    for width in [2, 100, 500, 1_998] {
        let r = f64::from(width) / 2_000.0;
        let expected = 2_000.0 * ((1.0 - r * r).sqrt() + r * r.asin());
        assert!(close(length(&[vec![Pt::new(0, 0)]], from, to, width), expected));
    }
    assert_eq!(length(&[vec![Pt::new(0, 0)]], from, to, 2_001), None);
}

#[test]
fn round_the_end_of_a_wall_with_clearance() {
    // Half round the end of a thin wall: two legs along it and a half circle, from places beside it.
    let wall = vec![Pt::new(0, 0), Pt::new(0, 5_000)];
    let (from, to) = (Pt::new(-300, 2_000), Pt::new(300, 2_000));
    let expected = 4_000.0 + std::f64::consts::PI * 300.0;
    assert!(close(length(std::slice::from_ref(&wall), from, to, 600), expected));
    let walked = walk(&obstacles(&[wall]), from, to, Len::from_units(600)).expect("a way");
    assert!(walked.line.iter().all(|p| p.y >= -300 && p.x.abs() <= 300));
    assert!(walked.line.contains(&Pt::new(-300, 0)) && walked.line.contains(&Pt::new(300, 0)));
}

#[test]
fn round_a_post_by_more_than_a_half_turn() {
    // A post, and a wall that ends 1,500 before it: too near for 2,000 to pass between them. From the
    // notch between their circles on one side to that on the other, the walk goes round the post.
    let rings = [vec![Pt::new(0, 0)], vec![Pt::new(-1_500, 0), Pt::new(-90_000, 0)]];
    let (from, to) = (Pt::new(-750, 700), Pt::new(-750, -700));
    let (away, r) = (750.0f64.hypot(700.0), 1_000.0f64);
    let turn = 2.0 * (std::f64::consts::PI - (700.0f64 / 750.0).atan() - (r / away).acos());
    assert!(turn > 1.3 * std::f64::consts::PI);
    let expected = 2.0 * (away * away - r * r).sqrt() + r * turn;
    let walked = walk(&obstacles(&rings), from, to, Len::from_units(2_000)).expect("a way");
    assert!(close(Some(walked.length), expected), "{walked:?} {expected}");
    assert!(walked.line.contains(&Pt::new(1_000, 0)));
    assert!(walked.line.iter().all(|&p| (p - Pt::new(0, 0)).norm() > 999.0));
}

#[test]
fn a_gap_of_just_the_width_is_walked_and_one_unit_less_is_not() {
    let walls = |gap: i32| vec![rect(0, -90_000, 10, 90_000), rect(0, gap, 10, 90_000)];
    let (from, to) = (Pt::new(-40_000, 2_000), Pt::new(40_000, 2_000));
    let through = length(&walls(4_000), from, to, 4_000);
    assert!(close(through, 80_000.0));
    let around = length(&walls(3_999), from, to, 4_000);
    assert!(around > Some(150_000.0), "{around:?}");
}

#[test]
fn thin_people_do_not_pass_where_pieces_touch() {
    let (from, to) = (Pt::new(-500, 5), Pt::new(500, 5));
    // Two walls that share a face on the line between the places.
    let face = [rect(-100, 5, 200, 400), rect(-100, -400, 200, 405)];
    assert!(length(&face, from, to, 0) > Some(1_200.0));
    // One unit apart, they can be passed.
    let apart = [rect(-100, 6, 200, 400), rect(-100, -400, 200, 405)];
    assert!(length(&apart, from, to, 0) < Some(1_001.0));
    // Two boxes that touch by a corner on the line between the places.
    let corner = [rect(-100, 5, 100, 400), rect(0, -395, 100, 400)];
    assert!(length(&corner, from, to, 0) > Some(1_150.0));
    // Along the outer faces of two that touch, the walk is straight.
    let beside = [rect(-100, -400, 100, 405), rect(0, -400, 100, 405)];
    assert_eq!(length(&beside, from, to, 0), Some(1_000.0));
    // Closed in on all sides.
    let ring = [
        rect(-20, -20, 40, 10),
        rect(-20, 10, 40, 10),
        rect(-20, -20, 10, 40),
        rect(10, -20, 10, 40),
    ];
    assert_eq!(length(&ring, Pt::new(0, 0), to, 0), None);
}

/// Pieces grown by a unit to every side on a grid that is finer by `by`, so that those that touch overlap.
fn finer(plan: &SamplePlan, by: i32) -> (Vec<Ring>, Pt, Pt) {
    let at = |p: &Pt| Pt::new(p.x * by, p.y * by);
    let grown = |ring: &Ring| {
        let around =
            |p: Pt| [(1, 1), (1, -1), (-1, 1), (-1, -1)].map(|d| Pt::new(p.x + d.0, p.y + d.1));
        convex_hull(&ring.iter().map(at).flat_map(around).collect::<Ring>())
    };
    (plan.rings.iter().map(grown).collect(), at(&plan.arrivals[0]), at(&plan.targets[0]))
}

#[test]
fn at_zero_width_walks_equal_the_visibility_graph() {
    let mut random = Random::new(41);
    let (mut walked, mut bent) = (0, 0);
    for i in 0..200 {
        let plan = plan(&mut random, KINDS[i % 4]);
        let by = 1 << 19;
        let (rings, from, to) = finer(&plan, by);
        let expected = shortest(&rings, from, to).map(|length| length / f64::from(by));
        let found = length(&plan.rings, plan.arrivals[0], plan.targets[0], 0);
        match (found, expected) {
            (Some(found), Some(expected)) => {
                // Each corner lies 2^-19 units farther out in the reference.
                assert!((found - expected).abs() <= 2e-4, "{found} {expected} {plan:?}");
                walked += 1;
                bent += i32::from(found > (to - from).norm() / f64::from(by) + 1e-3);
            }
            _ => assert_eq!(found.is_some(), expected.is_some(), "{plan:?}"),
        }
    }
    assert!(walked > 120 && bent > 50, "{walked} {bent}");
}

/// Pieces with a gap between any two: then the corners themselves are the nodes of the graph.
#[test]
fn among_pieces_apart_walks_equal_the_visibility_graph_to_a_millionth() {
    let mut random = Random::new(42);
    let mut bent = 0;
    for i in 0..400 {
        let mut plan = plan(&mut random, KINDS[i % 4]);
        let mut kept: Vec<Ring> = Vec::new();
        for ring in std::mem::take(&mut plan.rings) {
            if ring.len() > 2 && kept.iter().all(|k| geometry::gap(k, &ring).len > Len::ZERO) {
                kept.push(convex_hull(&ring));
            }
        }
        let (from, to) = (plan.arrivals[0], plan.targets[0]);
        let Some(found) = length(&kept, from, to, 0) else { continue };
        let expected = shortest(&kept, from, to).expect("there is a way");
        assert!((found - expected).abs() <= 1e-6 * expected, "{found} {expected} {kept:?}");
        bent += i32::from(found > (to - from).norm() + 1e-6);
    }
    assert!(bent > 60, "{bent}");
}

/// Pieces grown by `radius` units as polygons that hold the round shape, or lie within it.
fn grown(plan: &SamplePlan, radius: f64, by: i32, over: bool) -> Vec<Ring> {
    let corners = 24;
    let step = std::f64::consts::PI * 2.0 / f64::from(corners);
    let reach = f64::from(by) * radius;
    let reach = if over { reach / (step / 2.0).cos() + 1.5 } else { reach - 1.5 };
    let round = |p: &Pt| -> Ring {
        let at = |x: i32, d: f64| (f64::from(x) * f64::from(by) + reach * d).round() as i32;
        let turned = |i: i32| (f64::from(i) * step).sin_cos();
        (0..corners).map(turned).map(|(sin, cos)| Pt::new(at(p.x, cos), at(p.y, sin))).collect()
    };
    plan.rings.iter().map(|r| convex_hull(&r.iter().flat_map(round).collect::<Ring>())).collect()
}

#[test]
fn with_clearance_walks_lie_between_two_visibility_graphs() {
    let mut random = Random::new(43);
    let (mut bounded, mut bent) = (0, 0);
    for i in 0..100 {
        let mut plan = plan(&mut random, KINDS[i % 4]);
        plan.rings.truncate(7);
        let (from, to) = (plan.arrivals[0], plan.targets[0]);
        let width = 1 + random.below(90);
        let by = 1 << 12;
        let fine = |p: Pt| Pt::new(p.x * by, p.y * by);
        let Some(found) = length(&plan.rings, from, to, width) else { continue };
        let bound = |over| {
            let rings = grown(&plan, f64::from(width) / 2.0, by, over);
            shortest(&rings, fine(from), fine(to)).map(|length| length / f64::from(by))
        };
        let low = bound(false).expect("there is a way");
        assert!(found >= low - 1e-2, "{found} {low} {width} {plan:?}");
        if let Some(high) = bound(true) {
            assert!(found <= high + 1e-2, "{found} {high} {width} {plan:?}");
            bounded += 1;
            bent += i32::from(found > (to - from).norm() + 1e-3);
        }
    }
    assert!(bounded > 50 && bent > 20, "{bounded} {bent}");
}

#[test]
fn there_is_a_walk_just_when_there_is_a_way() {
    let mut random = Random::new(44);
    let mut found = [0, 0];
    for i in 0..1_500 {
        let plan = plan(&mut random, KINDS[i % 4]);
        let (from, to) = (plan.arrivals[0], plan.targets[0]);
        let all = obstacles(&plan.rings);
        let way = ways(&all, &[from], &[to], Len::COORD_LIMIT)[0];
        let widest = way.width.units();
        // The true width is less than `widest + 1`, but may be so by less than floats can tell.
        let widths = [0, 1, widest / 2, widest - 1, widest, widest + 2];
        for width in widths.map(|w| Len::from_units(w.max(0))) {
            let walked = walk(&all, from, to, width);
            assert_eq!(walked.is_some(), way.passes(width), "{width:?} {way:?} {plan:?}");
            found[usize::from(walked.is_some())] += 1;
            if let Some(walked) = walked {
                assert_well_made(&plan, &walked, width);
            }
        }
    }
    assert!(found[0] > 1_000 && found[1] > 4_000, "{found:?}");
}

/// The line goes from place to place, keeps its distance, and is as long as it is said to be.
fn assert_well_made(plan: &SamplePlan, walked: &geometry::passage::Walk, width: Len) {
    let line = &walked.line;
    assert_eq!((line.first(), line.last()), (plan.arrivals.first(), plan.targets.first()));
    for p in line {
        for ring in plan.rings.iter().filter(|ring| !ring.is_empty()) {
            let gap = geometry::gap(&[*p], ring).len.units();
            assert!(2 * gap >= width.units() - 4, "{gap} {width:?} {walked:?} {plan:?}");
        }
    }
    let drawn: f64 = line.windows(2).map(|w| (w[1] - w[0]).norm()).sum();
    let rounding = 1.5 * line.len() as f64;
    assert!(drawn <= walked.length + rounding && walked.length <= drawn * 1.002 + rounding);
}

#[test]
fn a_walk_is_as_long_the_other_way_and_longer_for_wider_people() {
    let mut random = Random::new(45);
    for i in 0..800 {
        let plan = plan(&mut random, KINDS[i % 4]);
        let (from, to) = (plan.arrivals[0], plan.targets[0]);
        let width = random.below(80);
        let there = length(&plan.rings, from, to, width);
        let back = length(&plan.rings, to, from, width);
        match (there, back) {
            (Some(there), Some(back)) => {
                assert!((there - back).abs() <= 1e-6 * there.max(1.0), "{there} {back} {plan:?}");
                let thin =
                    length(&plan.rings, from, to, width / 2).expect("wider people get there");
                assert!(thin <= there + 1e-6 * there);
            }
            _ => assert_eq!(there, back),
        }
    }
}

#[test]
fn nowhere_to_go_and_nothing_in_the_way() {
    let here = Pt::new(7, 7);
    let walked = walk(&Obstacles::new([]), here, here, Len::ZERO).expect("it is there");
    assert_eq!((walked.length, walked.line), (0.0, vec![here]));
    assert_eq!(walk(&obstacles(&[rect(0, 0, 10, 10)]), here, here, Len::ZERO), None);
}
