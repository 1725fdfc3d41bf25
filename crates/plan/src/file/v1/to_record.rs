//! From an element to a record of schema 1.

use crate::Element;
use crate::element::{Body, Door, Layer, Opening, OpeningKind, ServicePoint, Window};
use crate::file::length::L;

use super::parts;
use super::record::Record;

impl From<&Element> for Record {
    fn from(e: &Element) -> Record {
        let (id, state) = (e.id.0, e.state.into());
        match &e.body {
            Body::Shell(w) => Record::Shell {
                id,
                state,
                a: w.a.into(),
                b: w.b.into(),
                thickness: L(w.thickness),
                height: L(w.height),
                details: e.details.clone(),
            },
            Body::Partition(w) => Record::Partition {
                id,
                state,
                a: w.a.into(),
                b: w.b.into(),
                justify: w.justify.into(),
                layers: file_layers(&w.layers),
                spacing: L(w.spacing),
                details: e.details.clone(),
            },
            Body::Furring(f) => Record::Furring {
                id,
                state,
                host: f.host.0,
                from: L(f.from),
                to: L(f.to),
                layers: file_layers(&f.layers),
                spacing: L(f.spacing),
                details: e.details.clone(),
            },
            Body::Opening(o) => match &o.kind {
                OpeningKind::Door(d) => door(e, o, d),
                OpeningKind::Window(w) => window(e, o, w),
            },
            Body::Column(c) => Record::Column {
                id,
                state,
                at: c.at.into(),
                shape: c.shape.into(),
                facing: c.facing.into(),
                details: e.details.clone(),
            },
            Body::Stair(s) => Record::Stair {
                id,
                state,
                foot: s.foot.into(),
                up: s.up.into(),
                width: L(s.width),
                risers: s.risers,
                rise: L(s.rise),
                run: L(s.run),
                headroom: L(s.headroom),
                details: e.details.clone(),
            },
            Body::Overhead(o) => Record::Overhead {
                id,
                state,
                kind: o.kind.into(),
                shape: (&o.shape).into(),
                underside: L(o.underside),
                details: e.details.clone(),
            },
            Body::Service(s) => service(e, s),
            Body::Furnishing(f) => Record::Furnishing {
                id,
                state,
                name: f.name.clone(),
                at: f.at.into(),
                facing: f.facing.into(),
                width: L(f.width),
                depth: L(f.depth),
                height: L(f.height),
                fixed: f.fixed,
                details: e.details.clone(),
            },
            Body::RoomTag(t) => Record::RoomTag {
                id,
                state,
                at: t.at.into(),
                name: t.name.clone(),
                room_use: t.room_use.into(),
                details: e.details.clone(),
            },
            Body::Note(n) => Record::Note {
                id,
                state,
                at: n.at.into(),
                text: n.text.clone(),
                details: e.details.clone(),
            },
            Body::Section(s) => Record::SectionLine {
                id,
                state,
                a: s.a.into(),
                b: s.b.into(),
                details: e.details.clone(),
            },
        }
    }
}

fn door(e: &Element, o: &Opening, d: &Door) -> Record {
    Record::Door {
        id: e.id.0,
        state: e.state.into(),
        host: o.host.0,
        at: L(o.at),
        operation: d.operation.into(),
        leaf_width: L(d.leaf_width),
        leaf_height: L(d.leaf_height),
        hinge: d.hinge.into(),
        swing: d.swing.into(),
        details: e.details.clone(),
    }
}

fn window(e: &Element, o: &Opening, w: &Window) -> Record {
    Record::Window {
        id: e.id.0,
        state: e.state.into(),
        host: o.host.0,
        at: L(o.at),
        operation: w.operation.into(),
        frame_width: L(w.frame_width),
        frame_height: L(w.frame_height),
        clear: w.clear.into(),
        sill: L(w.sill),
        grade: L(w.grade),
        well: w.well.as_ref().map(Into::into),
        details: e.details.clone(),
    }
}

fn service(e: &Element, s: &ServicePoint) -> Record {
    Record::Service {
        id: e.id.0,
        state: e.state.into(),
        kind: s.kind.into(),
        at: s.at.into(),
        facing: s.facing.into(),
        mount: s.mount.into(),
        width: L(s.width),
        depth: L(s.depth),
        height: L(s.height),
        bottom: L(s.bottom),
        access: s.access.map(|a| (L(a.width), L(a.height))),
        serves: s.serves.map(|id| id.0),
        details: e.details.clone(),
    }
}

fn file_layers(layers: &[Layer]) -> Vec<parts::Layer> {
    layers.iter().map(Into::into).collect()
}
