//! What is caught is met exactly, and what is typed becomes true exactly: for walls parallel to the axes.

use std::time::Duration;

use editor::{DimensionId, EditorKey, Gesture, Mods, Session, ToolKind, script};
use geometry::{Pt, Seg, orient};
use measure::Len;
use plan::{Body, Plan};
use proptest::prelude::*;

/// A foundation of 30 ft by 20 ft with furring, two partitions that cross a part of it, and a column.
const BASEMENT: &str = "
tool shell
enter 0, 0
enter 30', 0
enter 30', 20'
enter 0, 20'
enter 0, 0
tool furring
enter 15', 0
tool partition
enter 10', 0
enter 10', 20'
key escape
enter 10', 8'
enter 30', 8'
key escape
tool column
enter 20', 14'
expect elements 8
";

fn basement() -> Session {
    let report = script::run(BASEMENT, Session::new(Plan::default()), || Duration::ZERO);
    assert!(report.problem.is_none(), "{report}");
    report.session
}

/// Every face and drawn line of the plan.
fn lines(session: &mut Session) -> Vec<Seg> {
    let facts = session.checked().facts;
    facts.walls.iter().flat_map(|w| [w.left, w.right, w.line]).collect()
}

fn on(seg: Seg, p: Pt) -> bool {
    let between = |a: i32, b: i32, v: i32| a.min(b) <= v && v <= a.max(b);
    orient(seg.a, seg.b, p) == 0 && between(seg.a.x, seg.b.x, p.x) && between(seg.a.y, seg.b.y, p.y)
}

fn point() -> impl Strategy<Value = Pt> {
    let foot = Len::PER_FOOT;
    (-foot..31 * foot, -foot..21 * foot).prop_map(|(x, y)| Pt::new(x, y))
}

/// A point near the middle of a face, so that something is caught most of the time.
fn near_a_face() -> impl Strategy<Value = Pt> {
    let inch = Len::PER_INCH;
    let along = 24 * inch..216 * inch;
    let off = -5 * inch..5 * inch;
    prop_oneof![
        (along.clone(), off.clone()).prop_map(|(y, dx)| Pt::new(120 * Len::PER_INCH + dx, y)),
        (along.clone(), off.clone()).prop_map(|(x, dy)| Pt::new(x, 6 * Len::PER_INCH + dy)),
        (along, off).prop_map(|(x, dy)| Pt::new(120 * Len::PER_INCH + x, 96 * Len::PER_INCH + dy)),
        point(),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, ..ProptestConfig::default() })]

    #[test]
    fn a_caught_point_lies_exactly_on_what_caught_it(
        from in near_a_face(),
        to in near_a_face(),
        reach in 1..8i32,
    ) {
        let mut session = basement();
        let lines = lines(&mut session);
        session.set_tool(ToolKind::Partition);
        let (reach, mods) = (Len::inches(reach), Mods::default());
        session.feed(&Gesture::Press { at: from, reach, mods });
        let start = session.status().caught.clone().expect("the grid at least");
        session.feed(&Gesture::Move { at: to, reach, mods });
        let end = session.status().caught.clone();
        for (pointer, snap) in [(from, Some(start.clone())), (to, end)] {
            let Some(snap) = snap else { continue };
            let hits = lines.iter().filter(|seg| on(**seg, snap.at)).count();
            let ends = lines.iter().filter(|seg| seg.a == snap.at || seg.b == snap.at).count();
            match snap.word {
                "end" => prop_assert!(ends >= 1, "{snap:?}"),
                "face" | "middle" => prop_assert!(hits >= 1, "{snap:?}"),
                "crossing" => {
                    let across = lines.iter().filter(|s| orient(s.a, s.b, snap.at) == 0).count();
                    prop_assert!(across >= 1, "{snap:?}");
                }
                "grid" => {
                    let inch = Len::PER_INCH;
                    prop_assert!(snap.at.x % inch == 0 && snap.at.y % inch == 0, "{snap:?}");
                }
                "square" => {
                    prop_assert!(snap.at.x == start.at.x || snap.at.y == start.at.y, "{snap:?}");
                }
                "45°" => {
                    let v = snap.at - start.at;
                    prop_assert!(v.x.abs() == v.y.abs(), "{snap:?}");
                }
                "centre" => prop_assert_eq!(snap.at, Pt::inches(240, 168)),
                word => prop_assert!(false, "what is {word}?"),
            }
            if matches!(snap.word, "end" | "face" | "middle" | "centre") {
                // Along a face the point goes on to the grid: at most half an inch.
                let most = reach + Len::inches(1) / 2;
                prop_assert!((snap.at - pointer).norm() <= f64::from(most.units()), "{snap:?}");
            }
        }
    }

    #[test]
    fn a_typed_clear_distance_is_measured_to_the_unit(
        units in 0..25 * Len::PER_FOOT,
        wall in 0..2usize,
        left in any::<bool>(),
    ) {
        let mut session = basement();
        let walls: Vec<_> = session
            .plan()
            .elements()
            .iter()
            .filter(|e| matches!(e.body, Body::Partition(_)))
            .map(|e| e.id)
            .collect();
        session.select([walls[wall]]);
        let id = if left { DimensionId::ClearLeft } else { DimensionId::ClearRight };
        let value = Len::from_units(units);
        let before = Plan::clone(session.plan());
        match session.type_dimension(id, value) {
            Ok(()) => {
                let all = session.dimensions();
                let now = all.iter().find(|d| d.id == id).expect("it is still there");
                prop_assert_eq!(now.value, value);
            }
            Err(why) => {
                prop_assert!(!why.is_empty());
                prop_assert!(session.plan().says_the_same(&before));
            }
        }
    }

    #[test]
    fn a_typed_length_is_met_to_the_unit(units in 1..25 * Len::PER_FOOT, turn in 0..4usize) {
        let mut session = Session::new(Plan::default());
        session.set_tool(ToolKind::Partition);
        let (reach, mods) = (Len::inches(4), Mods::default());
        session.feed(&Gesture::Press { at: Pt::inches(100, 100), reach, mods });
        session.feed(&Gesture::Release { at: Pt::inches(100, 100), reach, mods });
        let arrows = [EditorKey::Left, EditorKey::Up, EditorKey::Right, EditorKey::Down];
        session.feed(&Gesture::Key { key: arrows[turn], mods });
        let value = Len::from_units(units);
        match session.type_dimension(DimensionId::Length, value) {
            Ok(()) => {
                let wall = session.plan().elements().iter().next().expect("it is drawn");
                prop_assert_eq!(wall.body.wall_line().map(Seg::len), Some(value));
            }
            Err(why) => {
                prop_assert!(value < Len::sixty_fourths(1), "{why}");
                prop_assert!(session.plan().elements().is_empty());
            }
        }
    }
}
