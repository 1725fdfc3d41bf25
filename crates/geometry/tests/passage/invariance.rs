//! What must not change a width, and what must not change anything at all.

use geometry::passage::{Held, Limit, Obstacles, Pinch, Way, ways};
use geometry::{Pt, Ring};
use measure::Len;

use crate::plans::{KINDS, Random, SIDE, SamplePlan, obstacles, plan};

const MOST: Len = Len::COORD_LIMIT;

fn ways_of(plan: &SamplePlan) -> Vec<Way> {
    ways(&obstacles(&plan.rings), &plan.arrivals, &plan.targets, MOST)
}

/// Quarter turns, mirrored or not, then a shift.
fn laid(plan: &SamplePlan, way: usize, shift: i32) -> SamplePlan {
    let lay = |p: &Pt| {
        let (x, y) = if way & 4 == 0 { (p.x, p.y) } else { (-p.x, p.y) };
        let (x, y) = [(x, y), (-y, x), (-x, -y), (y, -x)][way & 3];
        Pt::new(x + shift, y - shift)
    };
    let all = |points: &[Pt]| points.iter().map(lay).collect::<Ring>();
    SamplePlan {
        rings: plan.rings.iter().map(|r| all(r)).collect(),
        arrivals: all(&plan.arrivals),
        targets: all(&plan.targets),
    }
}

/// The kind of a limit, without its places.
fn kind(way: &Way) -> (Len, u8) {
    let kind = match way.limit {
        Limit::Open => 0,
        Limit::Pinch(_) => 1,
        Limit::Standing(_) => 2,
        Limit::Walled(_) => 3,
        Limit::Buried(_) => 4,
        Limit::NoArrival => 5,
    };
    (way.width, kind)
}

#[test]
fn turning_and_mirroring_keep_the_width() {
    let mut random = Random::new(31);
    for i in 0..600 {
        let plan = plan(&mut random, KINDS[i % 4]);
        let width = ways_of(&plan).iter().map(kind).collect::<Vec<_>>();
        for way in 1..8 {
            let there = ways_of(&laid(&plan, way, 400_000_000));
            assert_eq!(there.iter().map(kind).collect::<Vec<_>>(), width, "{plan:?}");
        }
    }
}

#[test]
fn the_order_of_the_pieces_changes_nothing() {
    let mut random = Random::new(32);
    for i in 0..2_000 {
        let mut plan = plan(&mut random, KINDS[i % 4]);
        // Twins would be told apart by nothing but their index.
        plan.rings.sort();
        plan.rings.dedup();
        let mut order: Vec<usize> = (0..plan.rings.len()).collect();
        for at in (1..order.len()).rev() {
            order.swap(at, random.below(at as i32 + 1) as usize);
        }
        let shuffled = Obstacles::new(order.iter().map(|&i| (plan.rings[i].as_slice(), i)));
        let there = ways(&shuffled, &plan.arrivals, &plan.targets, MOST);
        let back: Vec<Way> = there.into_iter().map(|way| by_owner(way, &order)).collect();
        assert_eq!(back, ways_of(&plan), "{plan:?}");
    }
}

/// The way with the indices of the plan before it was shuffled.
fn by_owner(mut way: Way, order: &[usize]) -> Way {
    match &mut way.limit {
        Limit::Pinch(pinch) | Limit::Walled(pinch) => {
            assert_eq!(pinch.owners, pinch.pieces.map(|i| order[i]));
            pinch.pieces = pinch.owners;
        }
        Limit::Standing(stand) | Limit::Buried(stand) => stand.piece = stand.owner,
        Limit::Open | Limit::NoArrival => {}
    }
    way
}

#[test]
fn going_the_other_way_is_as_wide() {
    let mut random = Random::new(33);
    for i in 0..1_000 {
        let mut plan = plan(&mut random, KINDS[i % 4]);
        plan.arrivals.truncate(1);
        let there = ways_of(&plan)[0];
        std::mem::swap(&mut plan.arrivals, &mut plan.targets);
        assert_eq!(kind(&ways_of(&plan)[0]), kind(&there), "{plan:?}");
    }
}

#[test]
fn asking_for_many_targets_or_up_to_a_width_gives_the_same_ways() {
    let mut random = Random::new(34);
    for i in 0..16 {
        let mut plan = plan(&mut random, KINDS[i % 4]);
        let points =
            |random: &mut Random, n| (0..n).map(|_| random.point(SIDE, 3)).collect::<Ring>();
        (plan.arrivals, plan.targets) =
            (points(&mut random, 1 + 3 * i as i32), points(&mut random, 90));
        let all = obstacles(&plan.rings);
        let together = ways_of(&plan);
        let most = Len::from_units(1 + random.below(80));
        let narrow = ways(&all, &plan.arrivals, &plan.targets, most);
        for (t, &target) in plan.targets.iter().enumerate() {
            assert_eq!(ways(&all, &plan.arrivals, &[target], MOST)[0], together[t]);
            let (wide, narrow) = (&together[t], &narrow[t]);
            assert_eq!(narrow.width, wide.width.min(most));
            assert_eq!(narrow.passes(most), wide.passes(most));
            assert_eq!(narrow.limit == Limit::Open, wide.passes(most));
            if t % 9 != 0 {
                continue;
            }
            // The best arrival is the first of the best, asked one by one.
            let alone = plan.arrivals.iter().map(|&a| ways(&all, &[a], &[target], MOST)[0]);
            let best = alone.map(|way| way.width).max();
            assert_eq!(best, Some(wide.width));
        }
    }
}

#[test]
fn a_step_of_a_drag_gives_what_starting_anew_gives() {
    let mut random = Random::new(35);
    let mut steps = 0;
    for i in 0..2_000 {
        let plan = plan(&mut random, KINDS[i % 4]);
        let moving = 1 + random.below(3.min(plan.rings.len() as i32)) as usize;
        let (fixed, moving) = plan.rings.split_at(plan.rings.len() - moving);
        let most = if i % 3 == 0 { Len::from_units(90) } else { MOST };
        let mut held = Held::new(obstacles(fixed), &plan.arrivals, &plan.targets, most);
        for _ in 0..50 {
            let (dx, dy) = (random.below(301) - 150, random.below(301) - 150);
            let moved: Vec<Ring> = moving
                .iter()
                .map(|r| r.iter().map(|p| Pt::new(p.x + dx, p.y + dy)).collect())
                .collect();
            let owned = moved.iter().enumerate().map(|(i, r)| (r.as_slice(), fixed.len() + i));
            let step = held.ways(&Obstacles::new(owned));
            let rings = [fixed, &moved].concat();
            let anew = ways(&obstacles(&rings), &plan.arrivals, &plan.targets, most);
            assert_eq!(step, anew, "{rings:?}");
            steps += 1;
        }
    }
    assert_eq!(steps, 100_000);
}

#[test]
fn a_pinch_is_as_long_as_the_width_says() {
    let mut random = Random::new(36);
    let mut pinches = 0;
    for i in 0..1_000 {
        let plan = plan(&mut random, KINDS[i % 4]);
        for way in ways_of(&plan) {
            if let Limit::Pinch(Pinch { from, to, pieces, owners }) = way.limit {
                assert!(from <= to && pieces == owners);
                let gap = geometry::gap(&plan.rings[pieces[0]], &plan.rings[pieces[1]]);
                assert_eq!(gap.len, way.width);
                assert!((gap.from, gap.to) == (from, to) || (gap.to, gap.from) == (from, to));
                pinches += 1;
            }
        }
    }
    assert!(pinches > 100, "{pinches}");
}
