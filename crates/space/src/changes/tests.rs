use std::sync::Arc;

use geometry::{Facing, Pt};
use measure::Len;
use plan::element::{BodyKind, RoomUse, ServiceKind};
use plan::{Edit, ElementId, ops};

use super::{Changes, On};
use crate::testing::Sketch;
use crate::{Facts, derive};

/// Two rooms of 20 ft by 20 ft, the wall between them, a receptacle 30 in to the left of it that looks left, and a
/// furnace far off.
struct Rooms {
    sketch: Sketch,
    wall: ElementId,
    outlet: ElementId,
    furnace: ElementId,
}

impl Rooms {
    fn new() -> Rooms {
        let mut sketch = Sketch::new();
        sketch.rectangle(480, 240);
        let wall = sketch.partition((240, 0), (240, 240));
        sketch.tag(60, 200, RoomUse::Office);
        sketch.tag(420, 200, RoomUse::Bedroom);
        let outlet = sketch.service(ServiceKind::Receptacle, 210, 60, Facing::WEST);
        let furnace = sketch.service(ServiceKind::Furnace, 20, 120, Facing::EAST);
        Rooms { sketch, wall, outlet, furnace }
    }

    fn facts(&self) -> Facts {
        derive(&self.sketch.shared())
    }

    /// What changes when the wall moves to the left.
    fn moved(&self, inches: i32) -> (Facts, Changes) {
        let before = self.facts();
        let edit = ops::move_wall(&before.plan, self.wall, Len::inches(inches)).unwrap();
        let after = derive(&Arc::new(before.plan.with(&edit).unwrap()));
        let changes = Changes::between(&before, &after).unwrap();
        (after, changes)
    }
}

const OUTLETS: On = On::Service(ServiceKind::Receptacle);

#[test]
fn a_wall_that_moves_changes_itself_its_rooms_and_their_floors() {
    let rooms = Rooms::new();
    let (after, changes) = rooms.moved(3);
    assert!(changes.touch(&[On::Kind(BodyKind::Partition)]) && changes.touch(&[On::Floors]));
    let others = [BodyKind::Shell, BodyKind::Service, BodyKind::RoomTag].map(On::Kind);
    assert!(!changes.touch(&others) && !changes.touch(&[On::Outside]) && !changes.touch(&[]));
    assert_eq!(changes.rooms().len(), after.rooms.len());
    assert!(changes.services().is_empty());
}

#[test]
fn what_a_wall_passes_is_in_another_room() {
    let rooms = Rooms::new();
    let (_, changes) = rooms.moved(20);
    assert!(!changes.touch(&[OUTLETS]), "the wall stops short of it");
    let (after, changes) = rooms.moved(60);
    assert!(changes.touch(&[OUTLETS, On::Service(ServiceKind::Light)]));
    assert!(changes.touch(&[On::Kind(BodyKind::Service)]));
    assert!(!changes.touch(&[On::Service(ServiceKind::Furnace)]));
    let passed: Vec<_> = changes.services().iter().map(|p| after.element_at(*p).id).collect();
    assert_eq!(passed, [rooms.outlet]);
}

#[test]
fn what_is_near_counts_from_the_thing_and_its_own_size() {
    let rooms = Rooms::new();
    let (after, changes) = rooms.moved(3);
    let near = |reach: i32| -> Vec<ElementId> {
        let near = changes.near(&after, Len::inches(240));
        let places: Vec<u32> = near.things(BodyKind::Service, Len::inches(reach)).collect();
        places.into_iter().map(|place| after.element_at(place).id).collect()
    };
    assert_eq!(near(10), []);
    assert_eq!(near(30), [rooms.outlet]);
    assert_eq!(near(240), [rooms.outlet, rooms.furnace]);
    let near = changes.near(&after, Len::inches(240));
    let furnaces = near.services(&[ServiceKind::Furnace], Len::inches(240));
    assert_eq!(furnaces.count(), 1);
}

#[test]
fn what_is_stated_or_used_otherwise_is_no_change_of_places() {
    let rooms = Rooms::new();
    let before = rooms.facts();
    let removed = before.plan.with(&Edit::Remove(vec![rooms.outlet])).unwrap();
    assert!(Changes::between(&before, &derive(&Arc::new(removed))).is_none());
    let mut site = before.plan.site.clone();
    site.sprinklers = !site.sprinklers;
    let other = before.plan.with(&Edit::Site(Box::new(site))).unwrap();
    assert!(Changes::between(&before, &derive(&Arc::new(other))).is_none());
    let same = Changes::between(&before, &before).unwrap();
    assert!(
        same.rooms().is_empty()
            && same.near(&before, Len::inches(99)).openings(Len::ZERO).next().is_none()
    );
}

#[test]
fn a_thing_that_moves_changes_the_room_that_it_stands_in() {
    let rooms = Rooms::new();
    let before = rooms.facts();
    let edit =
        ops::translate(&before.plan, &[rooms.furnace], Pt::inches(0, 5) - Pt::default()).unwrap();
    let after = derive(&Arc::new(before.plan.with(&edit).unwrap()));
    let changes = Changes::between(&before, &after).unwrap();
    assert_eq!(changes.rooms().len(), 1);
    assert!(changes.touch(&[On::Service(ServiceKind::Furnace)]) && !changes.touch(&[On::Floors]));
}
