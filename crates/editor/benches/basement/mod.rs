//! A generated basement: rows of rooms between partitions, each with a door, a tag and things that must stay
//! reachable.

use geometry::{Facing, Pt};
use measure::Len;
use plan::element::{
    Column, ColumnShape, Door, DoorOperation, End, Furnishing, Opening, OpeningKind, Overhead,
    OverheadKind, OverheadShape, Partition, RoomTag, RoomUse, ServiceKind, ServicePoint, ShellWall,
    Side,
};
use plan::{Body, Draft, Edit, ElementId, Plan, State};

/// Rooms are 12 ft by 12 ft, in rows of this many.
const ROW: usize = 16;
const SIDE: i32 = 144;

/// A basement of at least `n` elements, and a point on the partition between its first two rooms.
pub fn of(n: usize) -> (Plan, Pt) {
    let rooms = n.div_ceil(10).max(4);
    let columns = rooms.min(ROW);
    let rows = rooms.div_ceil(ROW);
    let (wide, deep) = (columns as i32 * SIDE, rows as i32 * SIDE);
    let mut drafts = Vec::new();
    let corners = [(0, 0), (wide, 0), (wide, deep), (0, deep)];
    for i in 0..4 {
        let ((ax, ay), (bx, by)) = (corners[i], corners[(i + 1) % 4]);
        drafts.push(existing(Body::Shell(ShellWall {
            a: Pt::inches(ax, ay),
            b: Pt::inches(bx, by),
            thickness: Len::inches(8),
            height: Len::inches(93),
        })));
    }
    for room in 0..rooms {
        let (x, y) = ((room % ROW) as i32 * SIDE, (room / ROW) as i32 * SIDE);
        drafts.extend(furnished(x, y, drafts.len()));
    }
    let edit = Edit::Batch(drafts.into_iter().map(Edit::Add).collect());
    let plan = Plan::default().with(&edit).expect("a sound basement");
    (plan, Pt::inches(SIDE, SIDE / 2))
}

/// The partitions to the right of and above a room, and what is in it; `before` elements come before these.
fn furnished(x: i32, y: i32, before: usize) -> Vec<Draft> {
    let at = |dx: i32, dy: i32| Pt::inches(x + dx, y + dy);
    let right = Partition::two_by_four(at(SIDE, 0), at(SIDE, SIDE));
    let above = Partition::two_by_four(at(0, SIDE), at(SIDE, SIDE));
    // Ids start at 1, so the next element has the number `before + 1`.
    let host = ElementId(u32::try_from(before + 1).expect("few elements"));
    let door = Door {
        operation: DoorOperation::Hinged,
        leaf_width: Len::inches(32),
        leaf_height: Len::inches(80),
        hinge: End::Start,
        swing: Side::Left,
    };
    let service = |kind, p, facing| existing(Body::Service(ServicePoint::usual(kind, p, facing)));
    vec![
        new(Body::Partition(right)),
        new(Body::Partition(above)),
        new(Body::Opening(Opening { host, at: Len::inches(12), kind: OpeningKind::Door(door) })),
        new(Body::RoomTag(RoomTag {
            at: at(60, 60),
            name: String::new(),
            room_use: RoomUse::Office,
        })),
        service(ServiceKind::JunctionBox, at(40, 100), Facing::SOUTH),
        service(ServiceKind::FloorDrain, at(100, 100), Facing::SOUTH),
        service(ServiceKind::Panel, at(3, 40), Facing::EAST),
        existing(Body::Column(Column {
            at: at(110, 40),
            shape: ColumnShape::Round { diameter: Len::inches(4) },
            facing: Facing::NORTH,
        })),
        existing(Body::Overhead(Overhead {
            kind: OverheadKind::Duct,
            shape: OverheadShape::Run { a: at(10, 70), b: at(130, 70), width: Len::inches(20) },
            underside: Len::inches(84),
        })),
        new(Body::Furnishing(Furnishing {
            name: "desk".to_owned(),
            at: at(72, 140),
            facing: Facing::SOUTH,
            width: Len::inches(60),
            depth: Len::inches(30),
            height: Len::inches(29),
            fixed: false,
        })),
    ]
}

fn existing(body: Body) -> Draft {
    Draft::new(State::Existing, body)
}

fn new(body: Body) -> Draft {
    Draft::new(State::New, body)
}
