//! The width of the widest way against free floor round grown pieces.
//!
//! The reference grows every piece by half a width, two units less and two units more, as polygons that
//! hold the round shape or lie within it, takes them from a frame with the overlay library
//! (`i_overlay`), and looks whether two places lie in one shape. No pairs, no rays, no distances.

use geometry::passage::{Limit, Way, ways};
use geometry::{Bounds, Pt, Ring, Shape, Where, convex_hull, overlay};
use measure::Len;

use crate::plans::{KINDS, Kind, Random, SamplePlan, obstacles, plan};

/// The reference works on a grid that is finer by this, so that its rounding is small against a unit.
fn fineness(rings: &[Ring]) -> f64 {
    let all = Bounds::of(rings.iter().flatten());
    let far = [all.min.x, all.min.y, all.max.x, all.max.y].map(i32::abs);
    if far.into_iter().max() < Some(1 << 21) { 64.0 } else { 16.0 }
}

/// The floor that is left when pieces are grown by half of `width` units. `over`: at least by that;
/// else at most. The width is met to better than 1.5 units.
fn free_floor(plan: &SamplePlan, width: f64, over: bool) -> Vec<Shape> {
    let (rings, places) = (&plan.rings, [&plan.arrivals[..], &plan.targets].concat());
    let (radius, fine) = (width / 2.0, fineness(rings));
    // Corners so many that the polygon is off by 0.7 units or less: r (1 - cos(pi / n)).
    let corners = (std::f64::consts::PI * (radius / 1.4).sqrt()).ceil().max(8.0);
    let off = (std::f64::consts::PI / corners).cos();
    let reach = if over { radius / off * fine + 1.5 } else { radius * fine - 1.5 };
    let round: Vec<(f64, f64)> = (0..corners as i32)
        .map(|i| (f64::from(i) * 2.0 * std::f64::consts::PI / corners).sin_cos())
        .map(|(sin, cos)| (reach * cos, reach * sin))
        .collect();
    let grown = |ring: &Ring| {
        let at = |at: i32, by: f64| (f64::from(at) * fine + by).round() as i32;
        let corner = |p: &Pt| round.iter().map(|d| Pt::new(at(p.x, d.0), at(p.y, d.1))).collect();
        convex_hull(&ring.iter().flat_map::<Ring, _>(corner).collect::<Ring>())
    };
    let grown: Vec<Ring> = rings.iter().map(grown).collect();
    let far = Bounds::of(places.iter().map(|&p| finer(p, fine)));
    let frame = Bounds::of(grown.iter().flatten()).union(far).grow(Len::inches(1)).ring();
    overlay::difference(&[frame], &grown)
}

fn finer(p: Pt, fine: f64) -> Pt {
    Pt::new(p.x * fine as i32, p.y * fine as i32)
}

fn together(floor: &[Shape], fine: f64, a: Pt, b: Pt) -> bool {
    let holds = |shape: &Shape, p| shape.locate(finer(p, fine)) == Where::Inside;
    floor.iter().any(|shape| holds(shape, a) && holds(shape, b))
}

pub fn assert_width(plan: &SamplePlan, target: Pt, way: &Way, most: Len) {
    let fine = fineness(&plan.rings);
    let width = f64::from(way.width.units());
    if width >= 2.0 {
        let floor = free_floor(plan, width - 2.0, true);
        let from = plan.arrivals[way.arrival.expect("there are arrivals")];
        assert!(together(&floor, fine, from, target), "narrower than said: {way:?} {plan:?}");
    }
    if way.limit == Limit::Open {
        assert_eq!(way.width, most);
        return;
    }
    // The true width is up to a unit more than its rounding.
    let floor = free_floor(plan, width + 1.0 + 2.0, false);
    let wider = plan.arrivals.iter().any(|&from| together(&floor, fine, from, target));
    assert!(!wider, "wider than said: {way:?} {plan:?}");
}

fn plans_agree(kind: Kind) {
    let mut random = Random::new(7 + kind as u64);
    let mut count = [0; 4];
    for _ in 0..2_500 {
        let plan = plan(&mut random, kind);
        let most = if random.below(4) == 0 { Len::from_units(60) } else { Len::COORD_LIMIT };
        let found = ways(&obstacles(&plan.rings), &plan.arrivals, &plan.targets, most);
        assert_eq!(found.len(), plan.targets.len());
        for (way, &target) in found.iter().zip(&plan.targets) {
            assert_width(&plan, target, way, most);
            count[match way.limit {
                Limit::Open => 0,
                Limit::Pinch(_) => 1,
                Limit::Standing(_) => 2,
                Limit::Walled(_) | Limit::Buried(_) | Limit::NoArrival => 3,
            }] += 1;
        }
    }
    // The sample is worth something: each kind of answer occurs, pinches most of all.
    assert!(count[0] > 50 && count[1] > 250 && count[2] > 250, "{count:?}");
    assert!(count[3] > 20 || matches!(kind, Kind::Posts), "{count:?}");
}

#[test]
fn boxes_agree_with_grown_pieces() {
    plans_agree(KINDS[0]);
}

#[test]
fn skew_walls_agree_with_grown_pieces() {
    plans_agree(KINDS[1]);
}

#[test]
fn mixed_pieces_agree_with_grown_pieces() {
    plans_agree(KINDS[2]);
}

#[test]
fn posts_agree_with_grown_pieces() {
    plans_agree(KINDS[3]);
}
