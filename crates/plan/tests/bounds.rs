//! Every figure is accepted exactly at its bounds and refused one unit beyond.

use geometry::{Facing, Pt};
use measure::Len;
use plan::bounds::{self, Bound};
use plan::element::*;
use plan::{CeilingBuild, Draft, Edit, EditError, ElementId, Plan, Site, State, sample};

type Make = Box<dyn Fn(Len) -> Edit>;

fn add(body: Body) -> Edit {
    Edit::Add(Draft::new(State::New, body))
}

fn body(bound: Bound, start: &Body, set: impl Fn(&mut Body, Len) + 'static) -> (Bound, Make) {
    let start = start.clone();
    let make = move |len| {
        let mut body = start.clone();
        set(&mut body, len);
        add(body)
    };
    (bound, Box::new(make))
}

/// Sets a field of one variant.
macro_rules! field {
    ($bound:expr, $start:expr, $variant:ident . $($path:tt)+) => {
        body($bound, &$start, |body, len| {
            let Body::$variant(x) = body else { unreachable!() };
            x.$($path)+ = len;
        })
    };
}

macro_rules! door_field {
    ($bound:expr, $start:expr, $field:ident) => {
        body($bound, &$start, |body, len| {
            let Body::Opening(Opening { kind: OpeningKind::Door(d), .. }) = body else {
                unreachable!()
            };
            d.$field = len;
        })
    };
}

macro_rules! window_field {
    ($bound:expr, $start:expr, |$w:ident, $len:ident| $set:expr) => {
        body($bound, &$start, |body, $len| {
            let Body::Opening(Opening { kind: OpeningKind::Window($w), .. }) = body else {
                unreachable!()
            };
            $set
        })
    };
}

fn site(bound: Bound, set: impl Fn(&mut Site, Len) + 'static) -> (Bound, Make) {
    let make = move |len| {
        // High enough for every build-up.
        let mut site = Site { joist_underside: Len::feet_inches(30, 0), ..Site::default() };
        set(&mut site, len);
        Edit::Site(Box::new(site))
    };
    (bound, Box::new(make))
}

/// A plan with a foundation wall of the greatest length, so that the place of an opening is free: 1.
fn long_wall() -> Plan {
    let mut plan = Plan::default();
    let (a, b) = (Pt::new(0, 0), Pt::at(bounds::WALL_LENGTH.most, Len::ZERO));
    let wall = ShellWall { a, b, thickness: Len::inches(8), height: Len::inches(93) };
    sample::add(&mut plan, State::Existing, Body::Shell(wall));
    plan
}

fn cases() -> Vec<(Bound, Make)> {
    let plan = long_wall();
    let shell = plan.get(ElementId(1)).expect("a wall").body.clone();
    let partition = Partition::two_by_four(Pt::new(0, 0), Pt::inches(100, 0));
    let thin = Len::sixty_fourths(8);
    let two = vec![Layer::new(Material::Stud, thin), Layer::new(Material::Board, thin)];
    let two_layers = Partition { layers: two.clone(), ..partition.clone() };
    let many = vec![Layer::new(Material::Gap, Len::inches(4)); 2];
    let many = Partition { layers: many, ..partition.clone() };
    let partition = Body::Partition(partition);
    let furring = Furring {
        host: ElementId(1),
        from: Len::ZERO,
        to: Len::inches(40),
        layers: two,
        spacing: Len::inches(16),
    };
    let furring = Body::Furring(furring);
    let door = sample::door(ElementId(1), 10, 32);
    let window = sample::window(ElementId(1), 10, 32);
    let round = ColumnShape::Round { diameter: Len::inches(4) };
    let column = Body::Column(Column { at: Pt::new(0, 0), shape: round, facing: Facing::NORTH });
    let stair = Body::Stair(Stair {
        foot: Pt::new(0, 0),
        up: Facing::NORTH,
        width: Len::inches(36),
        risers: 13,
        rise: Len::inches(7),
        run: Len::inches(10),
        headroom: Len::inches(80),
    });
    let run = |width, length| {
        let (a, b) = (Pt::new(0, 0), Pt::at(length, Len::ZERO));
        let shape = OverheadShape::Run { a, b, width };
        Body::Overhead(Overhead { kind: OverheadKind::Duct, shape, underside: Len::inches(80) })
    };
    let duct = run(Len::inches(14), Len::inches(100));
    let service = sample::service(ServiceKind::Panel, (0, 0), Facing::NORTH);
    let desk = sample::desk((0, 0), Facing::NORTH);
    let well = Well {
        width: Len::inches(36),
        projection: Len::inches(36),
        depth: Len::inches(30),
        ladder: false,
        ladder_projection: Len::ZERO,
    };

    vec![
        body(bounds::WALL_LENGTH, &shell, |b, len| {
            let Body::Shell(w) = b else { unreachable!() };
            w.b = Pt::at(len, Len::ZERO);
        }),
        field!(bounds::WALL_THICKNESS, shell, Shell.thickness),
        field!(bounds::WALL_HEIGHT, shell, Shell.height),
        body(bounds::WALL_LENGTH, &partition, |b, len| {
            let Body::Partition(w) = b else { unreachable!() };
            w.b = Pt::at(Len::ZERO, len);
        }),
        body(bounds::WALL_THICKNESS, &Body::Partition(two_layers), move |b, len| {
            let Body::Partition(w) = b else { unreachable!() };
            w.layers[0].thickness = len - thin;
        }),
        body(bounds::LAYER_THICKNESS, &Body::Partition(many), |b, len| {
            let Body::Partition(w) = b else { unreachable!() };
            // The whole stays within its own bound at both ends of the layer's.
            w.layers[0].thickness = len;
            if len >= Len::inches(48) {
                w.layers.pop();
            }
        }),
        field!(bounds::STUD_SPACING, partition, Partition.spacing),
        body(bounds::FURRING_THICKNESS, &furring, move |b, len| {
            let Body::Furring(f) = b else { unreachable!() };
            f.layers[0].thickness = len - thin;
        }),
        field!(bounds::STUD_SPACING, furring, Furring.spacing),
        door_field!(bounds::LEAF_WIDTH, door, leaf_width),
        door_field!(bounds::LEAF_HEIGHT, door, leaf_height),
        window_field!(bounds::FRAME_WIDTH, window, |w, len| w.frame_width = len),
        window_field!(bounds::FRAME_HEIGHT, window, |w, len| w.frame_height = len),
        window_field!(bounds::CLEAR_WIDTH, window, |w, len| {
            w.clear = ClearOpening::Sheet { width: len, height: Len::inches(20) };
        }),
        window_field!(bounds::CLEAR_HEIGHT, window, |w, len| {
            w.clear = ClearOpening::Sheet { width: Len::inches(20), height: len };
        }),
        window_field!(bounds::SILL, window, |w, len| w.sill = len),
        window_field!(bounds::GRADE, window, |w, len| w.grade = len),
        body(bounds::WELL_WIDTH, &window, move |b, len| set_well(b, Well { width: len, ..well })),
        body(bounds::WELL_PROJECTION, &window, move |b, len| {
            set_well(b, Well { projection: len, ..well });
        }),
        body(bounds::WELL_DEPTH, &window, move |b, len| set_well(b, Well { depth: len, ..well })),
        body(bounds::LADDER_PROJECTION, &window, move |b, len| {
            set_well(b, Well { ladder_projection: len, ..well });
        }),
        field!(bounds::PLACE_ON_WALL, door, Opening.at),
        body(bounds::COLUMN_DIAMETER, &column, |b, len| {
            set_column(b, ColumnShape::Round { diameter: len });
        }),
        body(bounds::COLUMN_WIDTH, &column, |b, len| {
            set_column(b, ColumnShape::Square { width: len, depth: Len::inches(4) });
        }),
        body(bounds::COLUMN_DEPTH, &column, |b, len| {
            set_column(b, ColumnShape::Square { width: Len::inches(4), depth: len });
        }),
        field!(bounds::STAIR_WIDTH, stair, Stair.width),
        field!(bounds::RISE, stair, Stair.rise),
        field!(bounds::RUN, stair, Stair.run),
        field!(bounds::HEADROOM, stair, Stair.headroom),
        field!(bounds::UNDERSIDE, duct, Overhead.underside),
        (bounds::OVERHEAD_WIDTH, Box::new(move |len| add(run(len, Len::inches(100))))),
        (bounds::OVERHEAD_LENGTH, Box::new(move |len| add(run(Len::inches(10), len)))),
        field!(bounds::SERVICE_WIDTH, service, Service.width),
        field!(bounds::SERVICE_DEPTH, service, Service.depth),
        field!(bounds::SERVICE_HEIGHT, service, Service.height),
        field!(bounds::SERVICE_BOTTOM, service, Service.bottom),
        body(bounds::ACCESS_WIDTH, &service, |b, len| set_access(b, len, Len::inches(12))),
        body(bounds::ACCESS_HEIGHT, &service, |b, len| set_access(b, Len::inches(12), len)),
        field!(bounds::FURNISHING_WIDTH, desk, Furnishing.width),
        field!(bounds::FURNISHING_DEPTH, desk, Furnishing.depth),
        field!(bounds::FURNISHING_HEIGHT, desk, Furnishing.height),
        site(bounds::JOIST_UNDERSIDE, |s, len| s.joist_underside = len),
        site(bounds::FLOOR_BUILD, |s, len| s.floor_build = len),
        site(bounds::CEILING_BUILD, |s, len| s.ceiling = CeilingBuild::Board(len)),
        site(bounds::CEILING_BUILD, |s, len| s.ceiling = CeilingBuild::LayIn(len)),
    ]
}

fn set_well(body: &mut Body, well: Well) {
    let Body::Opening(Opening { kind: OpeningKind::Window(w), .. }) = body else { unreachable!() };
    w.well = Some(well);
}

fn set_column(body: &mut Body, shape: ColumnShape) {
    let Body::Column(c) = body else { unreachable!() };
    c.shape = shape;
}

fn set_access(body: &mut Body, width: Len, height: Len) {
    let Body::Service(s) = body else { unreachable!() };
    s.access = Some(AccessOpening { width, height });
}

#[test]
fn each_bound_is_met_exactly_and_missed_by_one_unit() {
    let plan = long_wall();
    for (bound, make) in cases() {
        let is_refused = |len| match plan.with(&make(len)) {
            Err(EditError::OutOfRange { bound: named, value, .. }) => {
                assert_eq!((named, value), (bound, len));
                true
            }
            // An opening or a low ceiling may be refused for another reason at the far end.
            Err(EditError::OffHost { .. }) => false,
            other => {
                assert!(other.is_ok(), "{} {len:?}: {other:?}", bound.what);
                false
            }
        };
        assert!(!is_refused(bound.least), "{} at least", bound.what);
        assert!(is_refused(bound.least - Len::UNIT), "{} below", bound.what);
        assert!(!is_refused(bound.most), "{} at most", bound.what);
        assert!(is_refused(bound.most + Len::UNIT), "{} above", bound.what);
    }
}

#[test]
fn a_finished_ceiling_height_that_leaves_nothing_is_refused() {
    let plan = Plan::default();
    let site = |floor_build| {
        let joist_underside = Len::inches(14);
        let ceiling = CeilingBuild::LayIn(Len::inches(3));
        Edit::Site(Box::new(Site { joist_underside, ceiling, floor_build, ..Site::default() }))
    };
    assert!(plan.with(&site(Len::inches(10))).is_ok());
    let e = plan.with(&site(Len::inches(10) + Len::UNIT)).expect_err("no height left");
    assert!(e.to_string().starts_with("Site: the finished ceiling height of"), "{e}");
}

#[test]
fn points_stay_within_the_range_of_coordinates() {
    let plan = Plan::default();
    let limit = Len::COORD_LIMIT.units();
    let note = |x, y| add(Body::Note(Note { at: Pt::new(x, y), text: "far".into() }));
    for sign in [-1, 1] {
        assert!(plan.with(&note(sign * limit, -sign * limit)).is_ok());
        for (x, y) in
            [(sign * (limit + 1), 0), (0, sign * (limit + 1)), (i32::MIN, 0), (0, i32::MAX)]
        {
            assert!(matches!(plan.with(&note(x, y)), Err(EditError::TooFarOut { .. })), "{x} {y}");
        }
    }
}

#[test]
fn counts_and_texts_have_bounds() {
    let plan = Plan::default();
    let ring = |n: i32| (0..n).map(|i| Pt::new(i * 1000, i * i)).collect::<Vec<_>>();
    let soffit = |n| {
        let shape = OverheadShape::Outline(ring(n));
        add(Body::Overhead(Overhead {
            kind: OverheadKind::Soffit,
            shape,
            underside: Len::inches(80),
        }))
    };
    assert!(plan.with(&soffit(3)).is_ok());
    assert!(plan.with(&soffit(200)).is_ok());
    for n in [0, 2, 201] {
        let e = plan.with(&soffit(n)).expect_err("too few or too many points");
        assert!(e.to_string().contains(&format!("is {n}; it must be from 3 to 200")), "{e}");
    }

    let tag = |name: &str| {
        let room_use = RoomUse::Den;
        add(Body::RoomTag(RoomTag { at: Pt::new(0, 0), name: name.into(), room_use }))
    };
    assert!(plan.with(&tag(&"é".repeat(60))).is_ok());
    assert!(matches!(
        plan.with(&tag(&"é".repeat(61))),
        Err(EditError::TextTooLong { length: 61, .. })
    ));
    assert!(matches!(plan.with(&tag("a\tb")), Err(EditError::TextControl { .. })));
    assert!(matches!(plan.with(&tag("a\nb")), Err(EditError::TextControl { .. })));

    let note = |text: &str| add(Body::Note(Note { at: Pt::new(0, 0), text: text.into() }));
    assert!(plan.with(&note("two\nlines")).is_ok());
    assert!(matches!(plan.with(&note("a\u{7}b")), Err(EditError::TextControl { .. })));

    let named = |name: &str| {
        let Body::Furnishing(f) = sample::desk((0, 0), Facing::NORTH) else { unreachable!() };
        add(Body::Furnishing(Furnishing { name: name.into(), ..f }))
    };
    assert!(plan.with(&named("x")).is_ok());
    assert!(matches!(plan.with(&named("  ")), Err(EditError::TextMissing { .. })));
}

#[test]
fn something_that_faces_nowhere_is_refused() {
    let plan = Plan::default();
    for facing in [Facing { x: 0, y: 0 }, Facing { x: i32::MIN, y: 1 }] {
        assert!(plan.with(&add(sample::desk((0, 0), facing))).is_err());
    }
}

#[test]
fn an_entry_field_can_name_the_accepted_range() {
    use measure::System;
    assert_eq!(bounds::WALL_THICKNESS.accepted(System::Imperial), "from 1\" to 4' 0\"");
    assert_eq!(bounds::WALL_THICKNESS.accepted(System::Metric), "from 25.4 mm to 1219.2 mm");
}
