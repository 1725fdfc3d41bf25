//! The fields of elements and of the site.

use geometry::Facing;
use measure::Len;
use plan::element::{
    AccessOpening, ClearOpening, Column, ColumnShape, Door, DoorOperation, End, Furnishing,
    Furring, Justify, Mount, Note, Opening, Overhead, OverheadKind, OverheadShape, Partition,
    RoomTag, RoomUse, SectionLine, ServiceKind, ServicePoint, ShellWall, Side, Stair, Well, Window,
    WindowOperation,
};
use plan::{CeilingBuild, Edition, House, Site, State};

use super::slot::{Field, Fields, Slot};

fn len(len: &mut Len) -> Option<Slot<'_>> {
    Some(Slot::Len(len))
}

fn coordinate(units: &mut i32) -> Option<Slot<'_>> {
    Some(Slot::Coordinate(units))
}

fn flag(flag: &mut bool) -> Option<Slot<'_>> {
    Some(Slot::Flag(flag))
}

fn text(text: &mut String) -> Option<Slot<'_>> {
    Some(Slot::Text(text))
}

fn facing(facing: &mut Facing) -> Option<Slot<'_>> {
    Slot::kinds(
        facing,
        &["north", "east", "south", "west"],
        |facing| match *facing {
            Facing::NORTH => "north",
            Facing::EAST => "east",
            Facing::SOUTH => "south",
            Facing::WEST => "west",
            _ => "skew",
        },
        |word, _| match word {
            "north" => Facing::NORTH,
            "east" => Facing::EAST,
            "west" => Facing::WEST,
            _ => Facing::SOUTH,
        },
    )
}

/// A thing that is there or not.
fn there<T>(value: &mut Option<T>, make: fn(&str, &Option<T>) -> Option<T>) -> Option<Slot<'_>> {
    Slot::kinds(value, &["yes", "no"], |value| if value.is_some() { "yes" } else { "no" }, make)
}

pub(super) fn state(state: &mut State) -> Option<Slot<'_>> {
    Slot::among(state, &[State::Existing, State::New, State::Removed], |state| match state {
        State::Existing => "existing",
        State::New => "new",
        State::Removed => "removed",
    })
}

impl Fields for State {
    const TABLE: &'static [Field<State>] = &[("state", state)];
}

impl Fields for ShellWall {
    const TABLE: &'static [Field<ShellWall>] = &[
        ("thickness", |w| len(&mut w.thickness)),
        ("height", |w| len(&mut w.height)),
        ("x1", |w| coordinate(&mut w.a.x)),
        ("y1", |w| coordinate(&mut w.a.y)),
        ("x2", |w| coordinate(&mut w.b.x)),
        ("y2", |w| coordinate(&mut w.b.y)),
    ];
}

impl Fields for Partition {
    const TABLE: &'static [Field<Partition>] = &[
        ("justify", |w| {
            let list = &[Justify::Centre, Justify::LeftFace, Justify::RightFace];
            Slot::among(&mut w.justify, list, |justify| match justify {
                Justify::Centre => "centre",
                Justify::LeftFace => "left face",
                Justify::RightFace => "right face",
            })
        }),
        ("spacing", |w| len(&mut w.spacing)),
        ("x1", |w| coordinate(&mut w.a.x)),
        ("y1", |w| coordinate(&mut w.a.y)),
        ("x2", |w| coordinate(&mut w.b.x)),
        ("y2", |w| coordinate(&mut w.b.y)),
    ];
}

impl Fields for Furring {
    const TABLE: &'static [Field<Furring>] = &[
        ("from", |f| len(&mut f.from)),
        ("to", |f| len(&mut f.to)),
        ("spacing", |f| len(&mut f.spacing)),
    ];
}

impl Fields for Opening {
    const TABLE: &'static [Field<Opening>] = &[("at", |o| len(&mut o.at))];
}

impl Fields for Door {
    const TABLE: &'static [Field<Door>] = &[
        ("operation", |d| Slot::among(&mut d.operation, &DoorOperation::ALL, DoorOperation::word)),
        ("width", |d| len(&mut d.leaf_width)),
        ("height", |d| len(&mut d.leaf_height)),
        ("hinge", |d| {
            Slot::among(&mut d.hinge, &[End::Start, End::Finish], |end| match end {
                End::Start => "start",
                End::Finish => "finish",
            })
        }),
        ("swing", |d| {
            Slot::among(&mut d.swing, &[Side::Left, Side::Right], |side| match side {
                Side::Left => "left",
                Side::Right => "right",
            })
        }),
    ];
}

/// A well as it is dug at first (common practice, no source).
const WELL: Well = Well {
    width: Len::inches(36),
    projection: Len::inches(36),
    depth: Len::inches(44),
    ladder: false,
    ladder_projection: Len::ZERO,
};

impl Fields for Window {
    const TABLE: &'static [Field<Window>] = &[
        ("operation", |w| {
            Slot::among(&mut w.operation, &WindowOperation::ALL, WindowOperation::word)
        }),
        ("width", |w| len(&mut w.frame_width)),
        ("height", |w| len(&mut w.frame_height)),
        ("clear", |w| {
            Slot::kinds(
                &mut w.clear,
                &["estimated", "sheet"],
                |clear| match clear {
                    ClearOpening::Estimated => "estimated",
                    ClearOpening::Sheet { .. } => "sheet",
                },
                |word, old| match (word, old) {
                    ("sheet", ClearOpening::Sheet { .. }) => *old,
                    ("sheet", _) => ClearOpening::Sheet { width: Len::ZERO, height: Len::ZERO },
                    _ => ClearOpening::Estimated,
                },
            )
        }),
        ("clear-width", |w| match &mut w.clear {
            ClearOpening::Sheet { width, .. } => len(width),
            ClearOpening::Estimated => None,
        }),
        ("clear-height", |w| match &mut w.clear {
            ClearOpening::Sheet { height, .. } => len(height),
            ClearOpening::Estimated => None,
        }),
        ("sill", |w| len(&mut w.sill)),
        ("grade", |w| len(&mut w.grade)),
        ("well", |w| there(&mut w.well, |word, old| (word == "yes").then(|| old.unwrap_or(WELL)))),
        ("well-width", |w| w.well.as_mut().and_then(|well| len(&mut well.width))),
        ("well-projection", |w| w.well.as_mut().and_then(|well| len(&mut well.projection))),
        ("well-depth", |w| w.well.as_mut().and_then(|well| len(&mut well.depth))),
        ("ladder", |w| w.well.as_mut().and_then(|well| flag(&mut well.ladder))),
        ("ladder-projection", |w| {
            w.well.as_mut().and_then(|well| len(&mut well.ladder_projection))
        }),
    ];
}

pub(super) fn section(shape: &mut ColumnShape) -> Option<Slot<'_>> {
    Slot::kinds(
        shape,
        &["round", "square"],
        |shape| match shape {
            ColumnShape::Round { .. } => "round",
            ColumnShape::Square { .. } => "square",
        },
        |word, old| match (word, *old) {
            ("round", ColumnShape::Square { width, .. }) => ColumnShape::Round { diameter: width },
            ("square", ColumnShape::Round { diameter }) => {
                ColumnShape::Square { width: diameter, depth: diameter }
            }
            _ => *old,
        },
    )
}

/// The diameter of a round column, the width of a square one.
pub(super) fn section_width(shape: &mut ColumnShape) -> Option<Slot<'_>> {
    match shape {
        ColumnShape::Round { diameter } => len(diameter),
        ColumnShape::Square { width, .. } => len(width),
    }
}

pub(super) fn section_depth(shape: &mut ColumnShape) -> Option<Slot<'_>> {
    match shape {
        ColumnShape::Round { .. } => None,
        ColumnShape::Square { depth, .. } => len(depth),
    }
}

impl Fields for Column {
    const TABLE: &'static [Field<Column>] = &[
        ("shape", |c| section(&mut c.shape)),
        ("width", |c| section_width(&mut c.shape)),
        ("depth", |c| section_depth(&mut c.shape)),
        ("facing", |c| facing(&mut c.facing)),
        ("x", |c| coordinate(&mut c.at.x)),
        ("y", |c| coordinate(&mut c.at.y)),
    ];
}

impl Fields for Stair {
    const TABLE: &'static [Field<Stair>] = &[
        ("width", |s| len(&mut s.width)),
        ("risers", |s| Some(Slot::Count(&mut s.risers))),
        ("rise", |s| len(&mut s.rise)),
        ("run", |s| len(&mut s.run)),
        ("headroom", |s| len(&mut s.headroom)),
        ("up", |s| facing(&mut s.up)),
        ("x", |s| coordinate(&mut s.foot.x)),
        ("y", |s| coordinate(&mut s.foot.y)),
    ];
}

pub(super) fn overhead_kind(kind: &mut OverheadKind) -> Option<Slot<'_>> {
    Slot::among(kind, &OverheadKind::ALL, OverheadKind::word)
}

impl Fields for Overhead {
    const TABLE: &'static [Field<Overhead>] = &[
        ("kind", |o| overhead_kind(&mut o.kind)),
        ("underside", |o| len(&mut o.underside)),
        ("width", |o| match &mut o.shape {
            OverheadShape::Run { width, .. } => len(width),
            OverheadShape::Outline(_) => None,
        }),
    ];
}

pub(super) fn service_kind(kind: &mut ServiceKind) -> Option<Slot<'_>> {
    Slot::among(kind, &ServiceKind::ALL, ServiceKind::word)
}

/// An access opening as it is made at first (common practice, no source).
const ACCESS: AccessOpening = AccessOpening { width: Len::inches(14), height: Len::inches(14) };

impl Fields for ServicePoint {
    const TABLE: &'static [Field<ServicePoint>] = &[
        ("kind", |s| service_kind(&mut s.kind)),
        ("mount", |s| {
            let list = &[Mount::Floor, Mount::Wall, Mount::Ceiling];
            Slot::among(&mut s.mount, list, |mount| match mount {
                Mount::Floor => "floor",
                Mount::Wall => "wall",
                Mount::Ceiling => "ceiling",
            })
        }),
        ("facing", |s| facing(&mut s.facing)),
        ("width", |s| len(&mut s.width)),
        ("depth", |s| len(&mut s.depth)),
        ("height", |s| len(&mut s.height)),
        ("bottom", |s| len(&mut s.bottom)),
        ("access", |s| {
            there(&mut s.access, |word, old| (word == "yes").then(|| old.unwrap_or(ACCESS)))
        }),
        ("access-width", |s| s.access.as_mut().and_then(|access| len(&mut access.width))),
        ("access-height", |s| s.access.as_mut().and_then(|access| len(&mut access.height))),
        ("x", |s| coordinate(&mut s.at.x)),
        ("y", |s| coordinate(&mut s.at.y)),
    ];
}

impl Fields for Furnishing {
    const TABLE: &'static [Field<Furnishing>] = &[
        ("name", |f| text(&mut f.name)),
        ("width", |f| len(&mut f.width)),
        ("depth", |f| len(&mut f.depth)),
        ("height", |f| len(&mut f.height)),
        ("fixed", |f| flag(&mut f.fixed)),
        ("facing", |f| facing(&mut f.facing)),
        ("x", |f| coordinate(&mut f.at.x)),
        ("y", |f| coordinate(&mut f.at.y)),
    ];
}

pub(super) fn room_use(room_use: &mut RoomUse) -> Option<Slot<'_>> {
    Slot::among(room_use, &RoomUse::ALL, RoomUse::word)
}

impl Fields for RoomTag {
    const TABLE: &'static [Field<RoomTag>] = &[
        ("use", |t| room_use(&mut t.room_use)),
        ("name", |t| text(&mut t.name)),
        ("x", |t| coordinate(&mut t.at.x)),
        ("y", |t| coordinate(&mut t.at.y)),
    ];
}

impl Fields for Note {
    const TABLE: &'static [Field<Note>] = &[
        ("text", |n| text(&mut n.text)),
        ("x", |n| coordinate(&mut n.at.x)),
        ("y", |n| coordinate(&mut n.at.y)),
    ];
}

impl Fields for SectionLine {
    const TABLE: &'static [Field<SectionLine>] = &[
        ("ax", |s| coordinate(&mut s.a.x)),
        ("ay", |s| coordinate(&mut s.a.y)),
        ("bx", |s| coordinate(&mut s.b.x)),
        ("by", |s| coordinate(&mut s.b.y)),
    ];
}

impl Fields for Site {
    const TABLE: &'static [Field<Site>] = &[
        ("title", |s| text(&mut s.title)),
        ("edition", |s| {
            Slot::among(&mut s.edition, &Edition::ALL, |edition| match edition {
                Edition::E2018 => "2018",
                Edition::E2021 => "2021",
                Edition::E2024 => "2024",
            })
        }),
        ("house", |s| {
            Slot::among(&mut s.house, &[House::New, House::Existing], |house| match house {
                House::New => "new",
                House::Existing => "existing",
            })
        }),
        ("joist-underside", |s| len(&mut s.joist_underside)),
        ("ceiling", |s| {
            Slot::kinds(
                &mut s.ceiling,
                &["open", "board", "lay-in"],
                |ceiling| match ceiling {
                    CeilingBuild::Open => "open",
                    CeilingBuild::Board(_) => "board",
                    CeilingBuild::LayIn(_) => "lay-in",
                },
                |word, old| match word {
                    "board" => CeilingBuild::Board(old.drop()),
                    "lay-in" => CeilingBuild::LayIn(old.drop()),
                    _ => CeilingBuild::Open,
                },
            )
        }),
        ("ceiling-drop", |s| match &mut s.ceiling {
            CeilingBuild::Board(drop) | CeilingBuild::LayIn(drop) => len(drop),
            CeilingBuild::Open => None,
        }),
        ("floor-build", |s| len(&mut s.floor_build)),
        ("sprinklers", |s| flag(&mut s.sprinklers)),
    ];
}
