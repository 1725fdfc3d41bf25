//! From a record of schema 1 to an element. Figures are checked later, by the plan's own bounds.

use crate::element::{
    AccessOpening, Body, Column, Door, Furnishing, Furring, Layer, Note, Opening, OpeningKind,
    Overhead, Partition, RoomTag, SectionLine, ServicePoint, ShellWall, Stair, Window,
};
use crate::{Element, ElementId};

use super::parts;
use super::record::Record;

impl From<Record> for Element {
    fn from(record: Record) -> Element {
        let details = record.details().clone();
        let (id, state, body) = match record {
            Record::Shell { id, state, a, b, thickness, height, .. } => {
                let (thickness, height) = (thickness.0, height.0);
                (id, state, Body::Shell(ShellWall { a: a.into(), b: b.into(), thickness, height }))
            }
            Record::Partition { id, state, a, b, justify, layers, spacing, .. } => {
                let body = Body::Partition(Partition {
                    a: a.into(),
                    b: b.into(),
                    justify: justify.into(),
                    layers: model_layers(&layers),
                    spacing: spacing.0,
                });
                (id, state, body)
            }
            Record::Furring { id, state, host, from, to, layers, spacing, .. } => {
                let body = Body::Furring(Furring {
                    host: ElementId(host),
                    from: from.0,
                    to: to.0,
                    layers: model_layers(&layers),
                    spacing: spacing.0,
                });
                (id, state, body)
            }
            Record::Door {
                id,
                state,
                host,
                at,
                operation,
                leaf_width,
                leaf_height,
                hinge,
                swing,
                ..
            } => {
                let kind = OpeningKind::Door(Door {
                    operation: operation.into(),
                    leaf_width: leaf_width.0,
                    leaf_height: leaf_height.0,
                    hinge: hinge.into(),
                    swing: swing.into(),
                });
                (id, state, Body::Opening(Opening { host: ElementId(host), at: at.0, kind }))
            }
            Record::Window {
                id,
                state,
                host,
                at,
                operation,
                frame_width,
                frame_height,
                clear,
                sill,
                grade,
                well,
                ..
            } => {
                let kind = OpeningKind::Window(Window {
                    operation: operation.into(),
                    frame_width: frame_width.0,
                    frame_height: frame_height.0,
                    clear: clear.into(),
                    sill: sill.0,
                    grade: grade.0,
                    well: well.map(Into::into),
                });
                (id, state, Body::Opening(Opening { host: ElementId(host), at: at.0, kind }))
            }
            Record::Column { id, state, at, shape, facing, .. } => {
                let (at, shape, facing) = (at.into(), shape.into(), facing.into());
                (id, state, Body::Column(Column { at, shape, facing }))
            }
            Record::Stair { id, state, foot, up, width, risers, rise, run, headroom, .. } => {
                let body = Body::Stair(Stair {
                    foot: foot.into(),
                    up: up.into(),
                    width: width.0,
                    risers,
                    rise: rise.0,
                    run: run.0,
                    headroom: headroom.0,
                });
                (id, state, body)
            }
            Record::Overhead { id, state, kind, shape, underside, .. } => {
                let (kind, shape, underside) = (kind.into(), shape.into(), underside.0);
                (id, state, Body::Overhead(Overhead { kind, shape, underside }))
            }
            Record::Service {
                id,
                state,
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
                ..
            } => {
                let access = access.map(|(w, h)| AccessOpening { width: w.0, height: h.0 });
                let body = Body::Service(ServicePoint {
                    kind: kind.into(),
                    at: at.into(),
                    facing: facing.into(),
                    mount: mount.into(),
                    width: width.0,
                    depth: depth.0,
                    height: height.0,
                    bottom: bottom.0,
                    access,
                    serves: serves.map(ElementId),
                });
                (id, state, body)
            }
            Record::Furnishing {
                id, state, name, at, facing, width, depth, height, fixed, ..
            } => {
                let body = Body::Furnishing(Furnishing {
                    name,
                    at: at.into(),
                    facing: facing.into(),
                    width: width.0,
                    depth: depth.0,
                    height: height.0,
                    fixed,
                });
                (id, state, body)
            }
            Record::RoomTag { id, state, at, name, room_use, .. } => {
                let (at, room_use) = (at.into(), room_use.into());
                (id, state, Body::RoomTag(RoomTag { at, name, room_use }))
            }
            Record::Note { id, state, at, text, .. } => {
                (id, state, Body::Note(Note { at: at.into(), text }))
            }
            Record::SectionLine { id, state, a, b, .. } => {
                (id, state, Body::Section(SectionLine { a: a.into(), b: b.into() }))
            }
        };
        Element { id: ElementId(id), state: state.into(), body, details }
    }
}

fn model_layers(layers: &[parts::Layer]) -> Vec<Layer> {
    layers.iter().map(Into::into).collect()
}
