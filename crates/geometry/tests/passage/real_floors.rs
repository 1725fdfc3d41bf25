//! Walls that nobody here drew.

use std::collections::BTreeMap;

use geometry::passage::{Held, walk, ways};
use geometry::{Bounds, Pt, Ring};
use measure::Len;

use crate::inflated::assert_width;
use crate::plans::{Random, SamplePlan, obstacles};

/// Structural walls of real floors as rectangles in metres: skipped unless `REAL_FLOORS` names the
/// file. Ways between places on them agree with the references.
#[test]
#[allow(clippy::disallowed_methods, reason = "data from outside the project, given by its path")]
fn ways_on_real_floors_agree_with_grown_pieces() {
    let Some(path) = std::env::var_os("REAL_FLOORS") else { return };
    let text = std::fs::read_to_string(path).expect("the file can be read");
    let data: serde_json::Value = serde_json::from_str(&text).expect("it is JSON");
    let mut floors: BTreeMap<i64, Vec<Ring>> = BTreeMap::new();
    for rect in data["rect"].as_object().expect("a table of rectangles").values() {
        let column = |key: &str| -> Vec<i32> {
            let unit = |m: f64| (m * 1000.0 * f64::from(Len::PER_MM)).round() as i32;
            let values = rect[key].as_array().expect("a list of coordinates");
            values.iter().filter_map(|v| v.as_f64()).map(unit).collect()
        };
        let corners = column("x").into_iter().zip(column("y")).map(Pt::from).collect();
        floors.entry(rect["floorID"].as_i64().expect("a floor")).or_default().push(corners);
    }
    assert!(floors.values().map(Vec::len).sum::<usize>() > 300);
    let mut random = Random::new(61);
    let mut reached = 0;
    for rings in floors.into_values() {
        let (all, bounds) = (obstacles(&rings), Bounds::of(rings.iter().flatten()));
        let step = Len::inches(1).units();
        let place = |random: &mut Random| {
            let along = |random: &mut Random, size: Len| random.below(size.units() / step) * step;
            let (x, y) = (along(random, bounds.width()), along(random, bounds.height()));
            Pt::new(bounds.min.x + x, bounds.min.y + y)
        };
        for _ in 0..8 {
            let (arrivals, targets) = (vec![place(&mut random)], vec![place(&mut random)]);
            let way = ways(&all, &arrivals, &targets, Len::COORD_LIMIT)[0];
            let plan = SamplePlan { rings: rings.clone(), arrivals, targets };
            let (from, to) = (plan.arrivals[0], plan.targets[0]);
            assert_width(&plan, to, &way, Len::COORD_LIMIT);
            for width in [Len::ZERO, way.width / 2, way.width] {
                assert_eq!(walk(&all, from, to, width).is_some(), way.passes(width), "{way:?}");
            }
            reached += i32::from(way.reached());
        }
        let most = Len::inches(48);
        let places: Vec<Pt> = (0..40).map(|_| place(&mut random)).collect();
        let (fixed, moving) = rings.split_at(rings.len() - 2);
        let mut held = Held::new(obstacles(fixed), &places[..2], &places[2..], most);
        let anew: Vec<_> = ways(&all, &places[..2], &places[2..], most);
        for (step, anew) in held.ways(&obstacles(moving)).iter().zip(&anew) {
            assert_eq!((step.width, step.arrival), (anew.width, anew.arrival));
        }
    }
    assert!(reached > 30, "{reached}");
}
