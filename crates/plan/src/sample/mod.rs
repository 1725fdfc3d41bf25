//! Sample plans for tests and benches: small ones by hand, large regular ones, and arbitrary ones.
//!
//! Only with the feature `sample`. Everything here is invented.

mod basement;
mod bodies;
mod details;
mod texts;
mod wish;

pub use basement::basement;
pub use bodies::any_body;
pub use texts::{any_text, mutations};
pub use wish::{Wish, any_plan, build, wishes};

use geometry::{Facing, Pt};
use measure::Len;

use crate::element::{
    Body, Door, DoorOperation, End, Furnishing, Opening, OpeningKind, Partition, ServiceKind,
    ServicePoint, ShellWall, Side, Window, WindowOperation,
};
use crate::{Draft, Edit, ElementId, Plan, State};

/// Adds an element that must be accepted.
///
/// # Panics
/// When the plan refuses it; the message says why.
pub fn add(plan: &mut Plan, state: State, body: Body) -> ElementId {
    let id = plan.next_ids(1).next().unwrap_or(ElementId(u32::MAX));
    match plan.with(&Edit::Add(Draft::new(state, body))) {
        Ok(next) => *plan = next,
        Err(e) => panic!("sample plan: {e}"),
    }
    id
}

/// A closed shell of 8 in walls, 7 ft 9 in high, through corners in inches; give them
/// counter-clockwise. The walls get the next ids in order.
pub fn shell(plan: &mut Plan, corners: &[(i32, i32)]) -> Vec<ElementId> {
    let corner = |i: usize| Pt::from(corners[i % corners.len()]);
    let inches = |p: Pt| Pt::inches(p.x, p.y);
    let wall = |i| {
        Body::Shell(ShellWall {
            a: inches(corner(i)),
            b: inches(corner(i + 1)),
            thickness: Len::inches(8),
            height: Len::inches(93),
        })
    };
    (0..corners.len()).map(|i| add(plan, State::Existing, wall(i))).collect()
}

/// A basement of 20 ft x 10 ft, its lower left corner at the origin; the walls are 1 (south), 2 (east),
/// 3 (north) and 4 (west).
pub fn room() -> Plan {
    let mut plan = Plan::default();
    shell(&mut plan, &[(0, 0), (240, 0), (240, 120), (0, 120)]);
    plan
}

/// A 4 1/2 in partition between two points in inches, drawn by its middle.
pub fn partition(plan: &mut Plan, a: (i32, i32), b: (i32, i32)) -> ElementId {
    let wall = Partition::two_by_four(Pt::inches(a.0, a.1), Pt::inches(b.0, b.1));
    add(plan, State::New, Body::Partition(wall))
}

/// A hinged door 6 ft 8 in high, `at` inches from the start of its wall.
pub fn door(host: ElementId, at: i32, width: i32) -> Body {
    let kind = OpeningKind::Door(Door {
        operation: DoorOperation::Hinged,
        leaf_width: Len::inches(width),
        leaf_height: Len::inches(80),
        hinge: End::Start,
        swing: Side::Left,
    });
    Body::Opening(Opening { host, at: Len::inches(at), kind })
}

/// A small window high in the wall, `at` inches from the start of its wall.
pub fn window(host: ElementId, at: i32, width: i32) -> Body {
    let kind = OpeningKind::Window(Window {
        operation: WindowOperation::Slider,
        frame_width: Len::inches(width),
        frame_height: Len::inches(24),
        clear: crate::element::ClearOpening::Estimated,
        sill: Len::inches(60),
        grade: Len::inches(72),
        well: None,
    });
    Body::Opening(Opening { host, at: Len::inches(at), kind })
}

/// A service point of a kind with its usual size; the place in inches.
pub fn service(kind: ServiceKind, at: (i32, i32), facing: Facing) -> Body {
    Body::Service(ServicePoint::usual(kind, Pt::inches(at.0, at.1), facing))
}

/// A desk, 60 in x 30 in; the place of the middle of its back edge in inches.
pub fn desk(at: (i32, i32), facing: Facing) -> Body {
    Body::Furnishing(Furnishing {
        name: "desk".to_owned(),
        at: Pt::inches(at.0, at.1),
        facing,
        width: Len::inches(60),
        depth: Len::inches(30),
        height: Len::inches(29),
        fixed: false,
    })
}
