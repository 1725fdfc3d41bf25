//! Arbitrary bodies: mostly sound, now and then with a figure that is out of range.

use geometry::{Facing, Pt};
use measure::Len;
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

use crate::element::*;

use super::any_text;

/// A coordinate or length: on the inch, on the 1/64 inch, on the millimetre, off all of them, or wild.
fn len(inches: std::ops::Range<i32>) -> impl Strategy<Value = Len> {
    let (low, high) = (inches.start, inches.end);
    prop_oneof![
        10 => (low..high).prop_map(Len::inches),
        10 => (low * 64..high * 64).prop_map(Len::sixty_fourths),
        5 => (low * 25..high * 25).prop_map(Len::mm),
        5 => (low * 8128..high * 8128).prop_map(Len::from_units),
        1 => any::<i32>().prop_map(Len::from_units),
    ]
}

fn point() -> impl Strategy<Value = Pt> {
    let coordinate =
        || prop_oneof![3 => (-4..5).prop_map(|n| Len::inches(n * 60)), 1 => len(-300..300)];
    (coordinate(), coordinate()).prop_map(|(x, y)| Pt::at(x, y))
}

fn facing() -> impl Strategy<Value = Facing> {
    prop_oneof![
        8 => select(vec![Facing::NORTH, Facing::SOUTH, Facing::EAST, Facing::WEST]),
        2 => (-20..20, -20..20).prop_map(Facing::from),
        1 => (any::<i32>(), any::<i32>()).prop_map(Facing::from),
    ]
}

fn layers() -> impl Strategy<Value = Vec<Layer>> {
    let layer = (select(Material::ALL.to_vec()), len(0..6)).prop_map(|(m, t)| Layer::new(m, t));
    vec(layer, 1..5)
}

fn shell() -> impl Strategy<Value = Body> {
    (point(), point(), len(4..16), len(60..120))
        .prop_map(|(a, b, thickness, height)| Body::Shell(ShellWall { a, b, thickness, height }))
}

fn partition() -> impl Strategy<Value = Body> {
    let justify = select(vec![Justify::Centre, Justify::LeftFace, Justify::RightFace]);
    (point(), point(), justify, layers(), len(12..25)).prop_map(
        |(a, b, justify, layers, spacing)| {
            Body::Partition(Partition { a, b, justify, layers, spacing })
        },
    )
}

fn furring() -> impl Strategy<Value = Body> {
    (0..40u32, len(0..60), len(0..300), layers(), len(12..25)).prop_map(
        |(host, from, to, layers, spacing)| {
            Body::Furring(Furring { host: crate::ElementId(host), from, to, layers, spacing })
        },
    )
}

fn door() -> impl Strategy<Value = OpeningKind> {
    let ends = select(vec![End::Start, End::Finish]);
    let sides = select(vec![Side::Left, Side::Right]);
    (select(DoorOperation::ALL.to_vec()), len(12..60), len(60..96), ends, sides).prop_map(
        |(operation, leaf_width, leaf_height, hinge, swing)| {
            OpeningKind::Door(Door { operation, leaf_width, leaf_height, hinge, swing })
        },
    )
}

fn window() -> impl Strategy<Value = OpeningKind> {
    let clear = prop_oneof![
        Just(ClearOpening::Estimated),
        (len(0..40), len(0..40)).prop_map(|(width, height)| ClearOpening::Sheet { width, height }),
    ];
    let well = (len(10..60), len(10..60), len(0..60), any::<bool>(), len(0..8)).prop_map(
        |(width, projection, depth, ladder, ladder_projection)| Well {
            width,
            projection,
            depth,
            ladder,
            ladder_projection,
        },
    );
    let frame = (select(WindowOperation::ALL.to_vec()), len(10..60), len(10..60));
    (frame, clear, len(0..80), len(-40..90), option::of(well)).prop_map(
        |((operation, frame_width, frame_height), clear, sill, grade, well)| {
            let window = Window { operation, frame_width, frame_height, clear, sill, grade, well };
            OpeningKind::Window(window)
        },
    )
}

fn opening() -> impl Strategy<Value = Body> {
    (0..40u32, len(0..240), prop_oneof![door(), window()]).prop_map(|(host, at, kind)| {
        Body::Opening(Opening { host: crate::ElementId(host), at, kind })
    })
}

fn column() -> impl Strategy<Value = Body> {
    let shape = prop_oneof![
        len(2..12).prop_map(|diameter| ColumnShape::Round { diameter }),
        (len(2..24), len(2..24)).prop_map(|(width, depth)| ColumnShape::Square { width, depth }),
    ];
    (point(), shape, facing())
        .prop_map(|(at, shape, facing)| Body::Column(Column { at, shape, facing }))
}

fn stair() -> impl Strategy<Value = Body> {
    (point(), facing(), len(24..60), 0..42u32, len(4..9), len(8..13), len(60..90)).prop_map(
        |(foot, up, width, risers, rise, run, headroom)| {
            Body::Stair(Stair { foot, up, width, risers, rise, run, headroom })
        },
    )
}

fn overhead() -> impl Strategy<Value = Body> {
    let shape = prop_oneof![
        (point(), point(), len(1..40)).prop_map(|(a, b, width)| OverheadShape::Run { a, b, width }),
        vec(point(), 2..6).prop_map(OverheadShape::Outline),
    ];
    (select(OverheadKind::ALL.to_vec()), shape, len(40..95))
        .prop_map(|(kind, shape, underside)| Body::Overhead(Overhead { kind, shape, underside }))
}

fn service() -> impl Strategy<Value = Body> {
    let mount = select(vec![Mount::Floor, Mount::Wall, Mount::Ceiling]);
    let access =
        (len(1..40), len(1..40)).prop_map(|(width, height)| AccessOpening { width, height });
    let place = (select(ServiceKind::ALL.to_vec()), point(), facing(), mount);
    let size = (len(1..40), len(1..40), len(1..80), len(0..90));
    (place, size, option::of(access), option::of((0..40u32).prop_map(crate::ElementId))).prop_map(
        |((kind, at, facing, mount), (width, depth, height, bottom), access, serves)| {
            Body::Service(ServicePoint {
                kind,
                at,
                facing,
                mount,
                width,
                depth,
                height,
                bottom,
                access,
                serves,
            })
        },
    )
}

fn furnishing() -> impl Strategy<Value = Body> {
    (any_text(), point(), facing(), len(10..90), len(10..60), len(0..80), any::<bool>()).prop_map(
        |(name, at, facing, width, depth, height, fixed)| {
            Body::Furnishing(Furnishing { name, at, facing, width, depth, height, fixed })
        },
    )
}

/// Any body. Hosts are drawn blindly; see [`super::Wish`] for ones that fit a plan.
pub fn any_body() -> impl Strategy<Value = Body> {
    let tag = (point(), any_text(), select(RoomUse::ALL.to_vec()))
        .prop_map(|(at, name, room_use)| Body::RoomTag(RoomTag { at, name, room_use }));
    let note = (point(), any_text()).prop_map(|(at, text)| Body::Note(Note { at, text }));
    let section = (point(), point()).prop_map(|(a, b)| Body::Section(SectionLine { a, b }));
    prop_oneof![
        4 => shell(),
        4 => partition(),
        2 => furring(),
        5 => opening(),
        1 => column(),
        1 => stair(),
        2 => overhead(),
        3 => service(),
        1 => furnishing(),
        1 => tag,
        1 => note,
        1 => section,
    ]
}
