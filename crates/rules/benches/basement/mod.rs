//! A generated basement: rooms in a square between partitions, each with doors, a tag, a column, a duct and
//! furniture, and 64 service points spread over them.

use geometry::{Facing, Pt};
use measure::Len;
use plan::element::{
    Column, ColumnShape, Door, DoorOperation, End, Furnishing, Opening, OpeningKind, Overhead,
    OverheadKind, OverheadShape, Partition, RoomTag, RoomUse, ServiceKind, ServicePoint, ShellWall,
    Side,
};
use plan::{Body, Draft, Edit, ElementId, Plan, State, bounds};

/// The sizes that are measured: elements beside the service points. The largest plan has no room for more.
pub const SIZES: [usize; 4] = [50, 500, 5_000, 20_000];

const SERVICES: usize = 64;
/// Rooms are 12 ft by 12 ft.
const SIDE: i32 = 144;
/// Every other row stands this far to the right, so that no partition goes on across the whole plan.
const SHIFT: i32 = 30;
const IN_A_ROOM: usize = 10;
const SHELL: usize = 4;

/// A basement of `n` elements and 64 service points, at most as many as a plan may have, and a point on the partition
/// between its first two rooms.
pub fn of(n: usize) -> (Plan, Pt) {
    let n = n.min(bounds::ELEMENTS.most as usize - SERVICES);
    let rooms = (n - SHELL).div_euclid(IN_A_ROOM);
    let columns = (1..).find(|c| c * c >= rooms).unwrap_or(1);
    let rows = rooms.div_ceil(columns);
    let (wide, deep) = (columns as i32 * SIDE + SHIFT + 40, rows as i32 * SIDE);
    let corners = [(0, 0), (wide, 0), (wide, deep), (0, deep)];
    let mut drafts = Vec::new();
    for i in 0..SHELL {
        let ((ax, ay), (bx, by)) = (corners[i], corners[(i + 1) % SHELL]);
        drafts.push(existing(Body::Shell(ShellWall {
            a: Pt::inches(ax, ay),
            b: Pt::inches(bx, by),
            thickness: Len::inches(8),
            height: Len::inches(93),
        })));
    }
    let corner = |room: usize| {
        let (column, row) = ((room % columns) as i32, (room / columns) as i32);
        (column * SIDE + row % 2 * SHIFT, row * SIDE)
    };
    for room in 0..rooms {
        drafts.extend(furnished(corner(room), room, drafts.len()));
    }
    for i in 0..SERVICES {
        drafts.push(service(corner(i * rooms / SERVICES), i));
    }
    for i in drafts.len()..n + SERVICES {
        let at = Pt::inches(20, 20 + i as i32 % 100);
        drafts.push(existing(Body::Column(column(at))));
    }
    let edit = Edit::Batch(drafts.into_iter().map(Edit::Add).collect());
    let plan = Plan::default().with(&edit).expect("a sound basement");
    (plan, Pt::inches(SIDE, SIDE / 2))
}

/// The partitions to the right of and above a room, and what is in it; `before` elements come before these.
fn furnished((x, y): (i32, i32), room: usize, before: usize) -> Vec<Draft> {
    const USES: [RoomUse; 8] = [
        RoomUse::Office,
        RoomUse::Bedroom,
        RoomUse::FamilyRoom,
        RoomUse::Mechanical,
        RoomUse::Hall,
        RoomUse::Bath,
        RoomUse::Storage,
        RoomUse::Laundry,
    ];
    let at = |dx: i32, dy: i32| Pt::inches(x + dx, y + dy);
    let right = Partition::two_by_four(at(SIDE, 0), at(SIDE, SIDE));
    let above = Partition::two_by_four(at(0, SIDE), at(SIDE, SIDE));
    let stub = Partition::two_by_four(at(100, 84), at(140, 84));
    // Ids start at 1, so the next element has the number `before + 1`.
    let host = |i: usize| ElementId(u32::try_from(before + 1 + i).expect("few elements"));
    let door = |operation| Door {
        operation,
        leaf_width: Len::inches(32),
        leaf_height: Len::inches(80),
        hinge: End::Start,
        swing: Side::Left,
    };
    let opening = |host, operation| {
        let kind = OpeningKind::Door(door(operation));
        new(Body::Opening(Opening { host, at: Len::inches(12), kind }))
    };
    let furnishing = |name: &str, at, facing| {
        new(Body::Furnishing(Furnishing {
            name: name.to_owned(),
            at,
            facing,
            width: Len::inches(60),
            depth: Len::inches(24),
            height: Len::inches(29),
            fixed: false,
        }))
    };
    vec![
        new(Body::Partition(right)),
        new(Body::Partition(above)),
        new(Body::Partition(stub)),
        opening(host(0), DoorOperation::Hinged),
        opening(
            host(1),
            if room.is_multiple_of(5) { DoorOperation::Cased } else { DoorOperation::Hinged },
        ),
        new(Body::RoomTag(RoomTag {
            at: at(60, 60),
            name: String::new(),
            room_use: USES[room % USES.len()],
        })),
        existing(Body::Column(column(at(110, 50)))),
        existing(Body::Overhead(Overhead {
            kind: OverheadKind::Duct,
            shape: OverheadShape::Run { a: at(10, 70), b: at(130, 70), width: Len::inches(20) },
            underside: Len::inches(84),
        })),
        furnishing("desk", at(72, 140), Facing::SOUTH),
        furnishing("shelf", at(4, 110), Facing::EAST),
    ]
}

fn column(at: Pt) -> Column {
    let shape = ColumnShape::Round { diameter: Len::inches(4) };
    Column { at, shape, facing: Facing::NORTH }
}

/// The service point with a number, along the walls of a room.
fn service((x, y): (i32, i32), i: usize) -> Draft {
    let kind = ServiceKind::ALL[i % ServiceKind::ALL.len()];
    let along = 16 + (i as i32 * 37) % 112;
    let (at, facing) = match i % 3 {
        0 => (Pt::inches(x + along, y + 3), Facing::NORTH),
        1 => (Pt::inches(x + 3, y + along), Facing::EAST),
        _ => (Pt::inches(x + SIDE - 3, y + along), Facing::WEST),
    };
    existing(Body::Service(ServicePoint::usual(kind, at, facing)))
}

fn existing(body: Body) -> Draft {
    Draft::new(State::Existing, body)
}

fn new(body: Body) -> Draft {
    Draft::new(State::New, body)
}
