//! Large plans, and plans that nobody here drew.

mod common;

use std::fs;

use common::{Sketch, basement};
use geometry::{Pt, twice_area};
use measure::Len;
use space::derive;

#[test]
fn the_generated_basement_is_whole() {
    for n in [10, 50, 300] {
        let plan = basement(n);
        let facts = derive(&plan.into());
        assert!(facts.loose_tags.is_empty(), "{n}: {:?}", facts.loose_tags);
        assert!(facts.rooms.iter().all(|r| r.tag.is_some() || r.area.to_square_feet() < 400.0));
        for room in &facts.rooms {
            let shares = space::height_shares(&facts, room.index);
            assert_eq!(shares.iter().map(|s| s.1).sum::<measure::Area>(), room.area);
            assert_eq!(shares.first().map(|s| s.0), Some(room.lowest));
            assert_eq!(shares.last().map(|s| s.0), Some(room.highest));
        }
    }
}

#[test]
fn deriving_twice_gives_the_same() {
    let plan = std::sync::Arc::new(basement(120));
    assert_eq!(format!("{:?}", derive(&plan)), format!("{:?}", derive(&plan)));
}

/// Structural walls of real floors as rectangles in metres: skipped unless `REAL_FLOORS` names the
/// file. What matters is that nothing panics and every wall comes out with a body.
#[test]
#[allow(clippy::disallowed_methods, reason = "data from outside the project, given by its path")]
fn real_floors_do_not_panic() {
    let Some(path) = std::env::var_os("REAL_FLOORS") else { return };
    let text = fs::read_to_string(path).unwrap();
    let data: serde_json::Value = serde_json::from_str(&text).unwrap();
    let mut floors: std::collections::BTreeMap<i64, Sketch> = Default::default();
    let mut count = 0;
    for rect in data["rect"].as_object().unwrap().values() {
        let column = |key: &str| -> Vec<f64> {
            rect[key].as_array().unwrap().iter().filter_map(|v| v.as_f64()).collect()
        };
        let (x, y) = (column("x"), column("y"));
        let corner = |i: usize| (x[i % 4], y[i % 4]);
        let long = |i: usize| {
            let (a, b) = (corner(i), corner(i + 1));
            (a.0 - b.0).hypot(a.1 - b.1)
        };
        // The middles of the two short sides.
        let short = if long(0) < long(1) { 0 } else { 1 };
        let unit = |m: f64| (m * 1000.0 * f64::from(Len::PER_MM)).round() as i32;
        let middle = |i: usize| {
            let (a, b) = (corner(i), corner(i + 1));
            Pt::new(unit((a.0 + b.0) / 2.0), unit((a.1 + b.1) / 2.0))
        };
        let thickness = Len::from_units(unit(rect["thickness"].as_f64().unwrap()));
        let floor = floors.entry(rect["floorID"].as_i64().unwrap()).or_default();
        floor.wall(middle(short), middle(short + 2), thickness);
        count += 1;
    }
    assert!(count > 300);
    for (id, floor) in floors {
        let facts = derive(&floor.shared());
        assert!(!facts.walls.is_empty(), "floor {id}");
        for wall in &facts.walls {
            assert!(twice_area(&wall.outline) > 0 && !wall.pieces.is_empty(), "{id} {:?}", wall.id);
        }
    }
}
