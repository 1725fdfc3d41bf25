//! The figures and texts of one element, each against its bound.

use geometry::{Facing, Pt, Seg};
use measure::Len;

use crate::bounds::{self, Bound};
use crate::element::{
    Body, ClearOpening, Column, ColumnShape, Furnishing, Furring, Layer, Opening, OpeningKind,
    Overhead, OverheadShape, ServicePoint, Stair,
};
use crate::{EditError, Plan};

use super::{Who, outline, text};

/// Checks one element by itself.
pub(super) fn check(who: Who, body: &Body) -> Result<(), EditError> {
    if body.points().iter().any(|&p| !in_reach(p)) {
        return Err(EditError::TooFarOut { who: who() });
    }
    match body {
        Body::Shell(w) => {
            len(who, bounds::WALL_LENGTH, w.line().len())?;
            len(who, bounds::WALL_THICKNESS, w.thickness)?;
            len(who, bounds::WALL_HEIGHT, w.height)
        }
        Body::Partition(w) => {
            len(who, bounds::WALL_LENGTH, w.line().len())?;
            layers(who, &w.layers, bounds::WALL_THICKNESS)?;
            len(who, bounds::STUD_SPACING, w.spacing)
        }
        Body::Furring(f) => furring(who, f),
        Body::Opening(o) => opening(who, o),
        Body::Column(c) => column(who, c),
        Body::Stair(s) => stair(who, s),
        Body::Overhead(o) => overhead(who, o),
        Body::Service(s) => service(who, s),
        Body::Furnishing(f) => furnishing(who, f),
        Body::RoomTag(t) => text::check(who, bounds::ROOM_NAME, &t.name),
        Body::Note(n) => text::check(who, bounds::NOTE, &n.text),
        Body::Section(s) => len(who, bounds::SECTION_LENGTH, s.line().len()),
    }
}

/// Checks that what a service point serves is another service point of the plan.
pub(super) fn check_serves(plan: &Plan, who: Who, body: &Body) -> Result<(), EditError> {
    let Body::Service(ServicePoint { serves: Some(serves), .. }) = body else { return Ok(()) };
    match plan.get(*serves).map(|e| &e.body) {
        Some(Body::Service(_)) => Ok(()),
        _ => Err(EditError::ServesMissing { who: who(), serves: *serves }),
    }
}

/// Checks one length.
pub(super) fn len(who: Who, bound: Bound, value: Len) -> Result<(), EditError> {
    if bound.holds(value) {
        Ok(())
    } else {
        Err(EditError::OutOfRange { who: who(), bound, value })
    }
}

/// The kind of an element, for one that has no name yet.
pub(super) fn kind_word(body: &Body) -> &str {
    match body {
        Body::Furnishing(_) => "furnishing",
        other => other.word(),
    }
}

fn in_reach(p: Pt) -> bool {
    [p.x, p.y].into_iter().all(|c| bounds::COORDINATE.holds(Len::from_units(c)))
}

fn facing(who: Who, facing: Facing) -> Result<(), EditError> {
    if (facing.x, facing.y) == (0, 0) {
        return Err(EditError::NoFacing { who: who() });
    }
    len(who, bounds::COORDINATE, Len::from_units(facing.x))?;
    len(who, bounds::COORDINATE, Len::from_units(facing.y))
}

fn layers(who: Who, layers: &[Layer], total: Bound) -> Result<(), EditError> {
    let bound = bounds::LAYERS;
    if !bound.holds(layers.len()) {
        return Err(EditError::CountOutOfRange { who: who(), bound, value: layers.len() });
    }
    for layer in layers {
        len(who, bounds::LAYER_THICKNESS, layer.thickness)?;
    }
    len(who, total, layers.iter().map(|l| l.thickness).sum())
}

fn furring(who: Who, f: &Furring) -> Result<(), EditError> {
    len(who, bounds::PLACE_ON_WALL, f.from)?;
    len(who, bounds::PLACE_ON_WALL, f.to)?;
    if f.from >= f.to {
        return Err(EditError::FurringEmpty { who: who(), from: f.from, to: f.to });
    }
    layers(who, &f.layers, bounds::FURRING_THICKNESS)?;
    len(who, bounds::STUD_SPACING, f.spacing)
}

fn opening(who: Who, o: &Opening) -> Result<(), EditError> {
    len(who, bounds::PLACE_ON_WALL, o.at)?;
    match &o.kind {
        OpeningKind::Door(d) => {
            len(who, bounds::LEAF_WIDTH, d.leaf_width)?;
            len(who, bounds::LEAF_HEIGHT, d.leaf_height)
        }
        OpeningKind::Window(w) => {
            len(who, bounds::FRAME_WIDTH, w.frame_width)?;
            len(who, bounds::FRAME_HEIGHT, w.frame_height)?;
            if let ClearOpening::Sheet { width, height } = w.clear {
                len(who, bounds::CLEAR_WIDTH, width)?;
                len(who, bounds::CLEAR_HEIGHT, height)?;
            }
            len(who, bounds::SILL, w.sill)?;
            len(who, bounds::GRADE, w.grade)?;
            let Some(well) = &w.well else { return Ok(()) };
            len(who, bounds::WELL_WIDTH, well.width)?;
            len(who, bounds::WELL_PROJECTION, well.projection)?;
            len(who, bounds::WELL_DEPTH, well.depth)?;
            len(who, bounds::LADDER_PROJECTION, well.ladder_projection)
        }
    }
}

fn column(who: Who, c: &Column) -> Result<(), EditError> {
    facing(who, c.facing)?;
    match c.shape {
        ColumnShape::Round { diameter } => len(who, bounds::COLUMN_DIAMETER, diameter),
        ColumnShape::Square { width, depth } => {
            len(who, bounds::COLUMN_WIDTH, width)?;
            len(who, bounds::COLUMN_DEPTH, depth)
        }
    }
}

fn stair(who: Who, s: &Stair) -> Result<(), EditError> {
    facing(who, s.up)?;
    len(who, bounds::STAIR_WIDTH, s.width)?;
    let bound = bounds::RISERS;
    if !bound.holds(s.risers as usize) {
        let value = s.risers as usize;
        return Err(EditError::CountOutOfRange { who: who(), bound, value });
    }
    len(who, bounds::RISE, s.rise)?;
    len(who, bounds::RUN, s.run)?;
    len(who, bounds::HEADROOM, s.headroom)
}

fn overhead(who: Who, o: &Overhead) -> Result<(), EditError> {
    len(who, bounds::UNDERSIDE, o.underside)?;
    match &o.shape {
        OverheadShape::Run { a, b, width } => {
            len(who, bounds::OVERHEAD_LENGTH, Seg::new(*a, *b).len())?;
            len(who, bounds::OVERHEAD_WIDTH, *width)
        }
        OverheadShape::Outline(ring) => outline::check(who, ring),
    }
}

fn service(who: Who, s: &ServicePoint) -> Result<(), EditError> {
    facing(who, s.facing)?;
    len(who, bounds::SERVICE_WIDTH, s.width)?;
    len(who, bounds::SERVICE_DEPTH, s.depth)?;
    len(who, bounds::SERVICE_HEIGHT, s.height)?;
    len(who, bounds::SERVICE_BOTTOM, s.bottom)?;
    let Some(access) = &s.access else { return Ok(()) };
    len(who, bounds::ACCESS_WIDTH, access.width)?;
    len(who, bounds::ACCESS_HEIGHT, access.height)
}

fn furnishing(who: Who, f: &Furnishing) -> Result<(), EditError> {
    text::check(who, bounds::FURNISHING_NAME, &f.name)?;
    facing(who, f.facing)?;
    len(who, bounds::FURNISHING_WIDTH, f.width)?;
    len(who, bounds::FURNISHING_DEPTH, f.depth)?;
    len(who, bounds::FURNISHING_HEIGHT, f.height)
}
