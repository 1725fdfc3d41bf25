//! Ways in small basements whose answer is plain to see.

use geometry::{Facing, Pt};
use measure::Len;
use plan::detail::{Value, ways::ARRIVAL};
use plan::element::{
    Furnishing, Overhead, OverheadKind, OverheadShape, RoomTag, RoomUse, ServiceKind, Stair,
};
use plan::{Body, Edit, Element, ElementId};

use super::*;
use crate::derive;
use crate::testing::Sketch;

/// A basement of 20 ft by 10 ft without floor build-up, a stair that goes up to the west along its south wall.
fn basement() -> Sketch {
    let mut sketch = Sketch::new();
    sketch.site(|site| site.floor_build = Len::ZERO);
    sketch.rectangle(240, 120);
    sketch.add(Body::Stair(Stair {
        foot: Pt::inches(60, 20),
        up: Facing::WEST,
        width: Len::inches(36),
        risers: 6,
        rise: Len::inches(7),
        run: Len::inches(10),
        headroom: Len::inches(80),
    }));
    sketch
}

fn cabinet(sketch: &mut Sketch, at: Pt, width: Len, depth: Len) -> ElementId {
    sketch.add(Body::Furnishing(Furnishing {
        name: "cabinet".into(),
        at,
        facing: Facing::NORTH,
        width,
        depth,
        height: Len::inches(60),
        fixed: false,
    }))
}

fn to(sketch: &Sketch, id: ElementId) -> WayIn {
    let all = ways(&derive(&sketch.shared()));
    all.ways.into_iter().find(|w| w.target == Target::Service(id)).expect("a target")
}

fn state(sketch: &mut Sketch, id: ElementId, value: Value) {
    let element = sketch.plan.get(id).expect("there").clone();
    let details = element.details.clone().with(&ARRIVAL, value);
    let edit = Edit::Replace(Element { details, ..element });
    sketch.plan = sketch.plan.with(&edit).expect("it fits");
}

#[test]
fn a_door_is_as_wide_as_it_is_clear() {
    let mut sketch = basement();
    let wall = sketch.partition((140, 0), (140, 120));
    let door = sketch.door(wall, 60, 30);
    let panel = sketch.service(ServiceKind::Panel, 240, 60, Facing::WEST);
    let way = to(&sketch, panel);
    // A leaf of 30 in, open 90°, leaves 28 in.
    assert_eq!(way.width, Len::inches(28));
    let Hindrance::Pinch(gap) = &way.hindrance else { panic!("{way:?}") };
    assert_eq!(gap.opening, Some(door));
    assert!(gap.between.contains(&door), "the leaf makes one side: {gap:?}");
    // The room behind the door is reached through the same gap.
    let facts = derive(&sketch.shared());
    let rooms: Vec<Len> =
        ways(&facts).ways.iter().filter(|w| w.target.room().is_some()).map(|w| w.width).collect();
    assert_eq!(rooms.len(), 2);
    assert!(rooms.contains(&Len::inches(28)), "{rooms:?}");
}

#[test]
fn a_cabinet_pinches_to_the_unit() {
    for off in [Len::ZERO, Len::UNIT] {
        let mut sketch = basement();
        // From the north wall down to 20 in above the south wall, and one unit further.
        let depth = Len::inches(100) + off;
        let at = Pt::at(Len::inches(140), Len::inches(120) - depth);
        let cabinet = cabinet(&mut sketch, at, Len::inches(12), depth);
        let panel = sketch.service(ServiceKind::Panel, 240, 60, Facing::WEST);
        let way = to(&sketch, panel);
        assert_eq!(way.width, Len::inches(20) - off);
        let gap = way.gap().expect("a pinch");
        assert_eq!(gap.between.iter().filter(|id| **id == cabinet).count(), 1);
        assert_eq!((gap.to.y - gap.from.y).abs(), way.width.units());
        assert_eq!(gap.opening, None);
    }
}

#[test]
fn what_is_stepped_over_and_what_hangs_high_is_in_nobodys_way() {
    let mut sketch = basement();
    sketch.service(ServiceKind::Sump, 140, 50, Facing::NORTH);
    let duct = |underside: i32| {
        Body::Overhead(Overhead {
            kind: OverheadKind::Duct,
            shape: OverheadShape::Run {
                a: Pt::inches(140, 0),
                b: Pt::inches(140, 120),
                width: Len::inches(12),
            },
            underside: Len::inches(underside),
        })
    };
    sketch.add(duct(72));
    let panel = sketch.service(ServiceKind::Panel, 240, 60, Facing::WEST);
    assert!(to(&sketch, panel).width >= Len::inches(30));
    let low = sketch.add(duct(71));
    let way = to(&sketch, panel);
    assert!(!way.reached());
    let Hindrance::Walled(gap) = &way.hindrance else { panic!("{way:?}") };
    assert!(gap.between.contains(&low), "{gap:?}");
    assert_eq!(way.width, Len::ZERO);
}

#[test]
fn a_valve_behind_a_wall_and_one_inside_a_cabinet() {
    let mut sketch = basement();
    sketch.partition((140, 0), (140, 120));
    let valve = sketch.service(ServiceKind::MainWaterValve, 240, 60, Facing::WEST);
    assert!(matches!(to(&sketch, valve).hindrance, Hindrance::Walled(_)));
    let mut sketch = basement();
    let valve = sketch.service(ServiceKind::MainWaterValve, 240, 60, Facing::WEST);
    let cabinet = cabinet(&mut sketch, Pt::inches(215, 40), Len::inches(30), Len::inches(40));
    assert_eq!(to(&sketch, valve).hindrance, Hindrance::Buried(cabinet));
}

#[test]
fn ways_begin_at_stairs_outside_doors_and_where_it_is_stated() {
    let mut sketch = Sketch::new();
    let walls = sketch.rectangle(240, 120);
    let panel = sketch.service(ServiceKind::Panel, 240, 60, Facing::WEST);
    assert_eq!(to(&sketch, panel).hindrance, Hindrance::NoArrival);
    let tag = sketch.add(Body::RoomTag(RoomTag {
        at: Pt::inches(60, 60),
        name: "Stair hall".into(),
        room_use: RoomUse::Hall,
    }));
    state(&mut sketch, tag, Value::Yes);
    assert!(to(&sketch, panel).reached());
    state(&mut sketch, tag, Value::No);
    let door = sketch.door(walls[3], 40, 36);
    let all = ways(&derive(&sketch.shared()));
    assert_eq!(all.arrivals.iter().map(|a| a.element).collect::<Vec<_>>(), [door]);
    assert!(all.arrivals[0].at.x < -Len::inches(8).units(), "outdoors, before the door");
    assert_eq!(to(&sketch, panel).width, Len::inches(34), "a leaf of 36 in");
    state(&mut sketch, door, Value::No);
    assert_eq!(to(&sketch, panel).hindrance, Hindrance::NoArrival);
}

#[test]
fn the_place_in_a_room_is_beside_what_stands_there() {
    let mut sketch = basement();
    cabinet(&mut sketch, Pt::inches(140, 30), Len::inches(60), Len::inches(60));
    let all = ways(&derive(&sketch.shared()));
    let room = all.ways.iter().find(|w| w.target.room().is_some()).expect("a room");
    assert!(room.reached(), "{room:?}");
}

#[test]
fn the_walk_goes_through_the_door_and_under_the_duct() {
    let mut sketch = basement();
    let wall = sketch.partition((140, 0), (140, 120));
    let door = sketch.door(wall, 80, 30);
    let duct = sketch.run(OverheadKind::Duct, ((180, 0), (180, 120)), 12, 80);
    let panel = sketch.service(ServiceKind::Panel, 240, 20, Facing::WEST);
    let facts = derive(&sketch.shared());
    let all = ways(&facts);
    let way = all.ways.iter().find(|w| w.target == Target::Service(panel)).expect("a way");
    let walked = all.walk(&facts, way).expect("a walk");
    assert_eq!(walked.doors, [door]);
    assert_eq!((walked.lowest, walked.under), (Len::inches(80), Some(duct)));
    assert_eq!(walked.width, WALKER);
    let (from, to) = (all.arrivals[0].at, way.place);
    assert_eq!((walked.line.first(), walked.line.last()), (Some(&from), Some(&to)));
    // Up to the door, which begins 80 in above the south wall, and down again: longer than straight, shorter
    // than along the walls.
    let straight = geometry::Seg::new(from, to).len();
    assert!(walked.length > straight && walked.length < straight + Len::inches(120));
    let legs: i64 = walked
        .line
        .windows(2)
        .map(|p| geometry::Seg::new(p[0], p[1]).len())
        .map(|l| i64::from(l.units()))
        .sum();
    assert!((legs - i64::from(walked.length.units())).abs() < 320, "arcs are cut into short legs");
}

#[test]
fn nobody_walks_where_nobody_gets() {
    let mut sketch = basement();
    sketch.partition((140, 0), (140, 120));
    let valve = sketch.service(ServiceKind::MainWaterValve, 240, 60, Facing::WEST);
    let facts = derive(&sketch.shared());
    let all = ways(&facts);
    let way = all.ways.iter().find(|w| w.target == Target::Service(valve)).expect("a way");
    assert_eq!(all.walk(&facts, way), None);
}
