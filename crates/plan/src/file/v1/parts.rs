//! Parts that several records of schema 1 share: points, facings, layers, shapes.

use geometry::Pt;
use measure::Len;
use serde::{Deserialize, Serialize};

use crate::element as model;
use crate::file::length::L;

/// A point: `x` to the east, `y` to the north.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub(crate) struct P(L, L);

impl From<Pt> for P {
    fn from(p: Pt) -> P {
        P(L(Len::from_units(p.x)), L(Len::from_units(p.y)))
    }
}

impl From<P> for Pt {
    fn from(P(x, y): P) -> Pt {
        Pt::at(x.0, y.0)
    }
}

/// A direction: a compass word, or a grid vector for any other.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub(crate) enum Facing {
    North,
    South,
    East,
    West,
    Along(i32, i32),
}

impl From<geometry::Facing> for Facing {
    fn from(f: geometry::Facing) -> Facing {
        match (f.x, f.y) {
            (0, 1) => Facing::North,
            (0, -1) => Facing::South,
            (1, 0) => Facing::East,
            (-1, 0) => Facing::West,
            (x, y) => Facing::Along(x, y),
        }
    }
}

impl From<Facing> for geometry::Facing {
    fn from(f: Facing) -> geometry::Facing {
        match f {
            Facing::North => geometry::Facing::NORTH,
            Facing::South => geometry::Facing::SOUTH,
            Facing::East => geometry::Facing::EAST,
            Facing::West => geometry::Facing::WEST,
            Facing::Along(x, y) => geometry::Facing { x, y },
        }
    }
}

/// A layer with its thickness.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
pub(crate) enum Layer {
    Board(L),
    Stud(L),
    Foam(L),
    Gap(L),
    Panel(L),
    Masonry(L),
}

impl From<&model::Layer> for Layer {
    fn from(layer: &model::Layer) -> Layer {
        let thickness = L(layer.thickness);
        match layer.material {
            model::Material::Board => Layer::Board(thickness),
            model::Material::Stud => Layer::Stud(thickness),
            model::Material::Foam => Layer::Foam(thickness),
            model::Material::Gap => Layer::Gap(thickness),
            model::Material::Panel => Layer::Panel(thickness),
            model::Material::Masonry => Layer::Masonry(thickness),
        }
    }
}

impl From<&Layer> for model::Layer {
    fn from(layer: &Layer) -> model::Layer {
        let (material, thickness) = match *layer {
            Layer::Board(t) => (model::Material::Board, t),
            Layer::Stud(t) => (model::Material::Stud, t),
            Layer::Foam(t) => (model::Material::Foam, t),
            Layer::Gap(t) => (model::Material::Gap, t),
            Layer::Panel(t) => (model::Material::Panel, t),
            Layer::Masonry(t) => (model::Material::Masonry, t),
        };
        model::Layer::new(material, thickness.0)
    }
}

#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) enum ColumnShape {
    Round { diameter: L },
    Square { width: L, depth: L },
}

impl From<model::ColumnShape> for ColumnShape {
    fn from(shape: model::ColumnShape) -> ColumnShape {
        match shape {
            model::ColumnShape::Round { diameter } => ColumnShape::Round { diameter: L(diameter) },
            model::ColumnShape::Square { width, depth } => {
                ColumnShape::Square { width: L(width), depth: L(depth) }
            }
        }
    }
}

impl From<ColumnShape> for model::ColumnShape {
    fn from(shape: ColumnShape) -> model::ColumnShape {
        match shape {
            ColumnShape::Round { diameter } => model::ColumnShape::Round { diameter: diameter.0 },
            ColumnShape::Square { width, depth } => {
                model::ColumnShape::Square { width: width.0, depth: depth.0 }
            }
        }
    }
}

#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) enum OverheadShape {
    Run { a: P, b: P, width: L },
    Outline(Vec<P>),
}

impl From<&model::OverheadShape> for OverheadShape {
    fn from(shape: &model::OverheadShape) -> OverheadShape {
        match shape {
            model::OverheadShape::Run { a, b, width } => {
                OverheadShape::Run { a: (*a).into(), b: (*b).into(), width: L(*width) }
            }
            model::OverheadShape::Outline(ring) => {
                OverheadShape::Outline(ring.iter().map(|&p| p.into()).collect())
            }
        }
    }
}

impl From<OverheadShape> for model::OverheadShape {
    fn from(shape: OverheadShape) -> model::OverheadShape {
        match shape {
            OverheadShape::Run { a, b, width } => {
                model::OverheadShape::Run { a: a.into(), b: b.into(), width: width.0 }
            }
            OverheadShape::Outline(ring) => {
                model::OverheadShape::Outline(ring.into_iter().map(Pt::from).collect())
            }
        }
    }
}

/// Where a window's net clear opening comes from.
#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) enum Clear {
    Estimated,
    Sheet { width: L, height: L },
}

impl From<model::ClearOpening> for Clear {
    fn from(clear: model::ClearOpening) -> Clear {
        match clear {
            model::ClearOpening::Estimated => Clear::Estimated,
            model::ClearOpening::Sheet { width, height } => {
                Clear::Sheet { width: L(width), height: L(height) }
            }
        }
    }
}

impl From<Clear> for model::ClearOpening {
    fn from(clear: Clear) -> model::ClearOpening {
        match clear {
            Clear::Estimated => model::ClearOpening::Estimated,
            Clear::Sheet { width, height } => {
                model::ClearOpening::Sheet { width: width.0, height: height.0 }
            }
        }
    }
}

#[derive(Clone, Copy, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct Well {
    width: L,
    projection: L,
    depth: L,
    ladder: bool,
    ladder_projection: L,
}

impl From<&model::Well> for Well {
    fn from(w: &model::Well) -> Well {
        Well {
            width: L(w.width),
            projection: L(w.projection),
            depth: L(w.depth),
            ladder: w.ladder,
            ladder_projection: L(w.ladder_projection),
        }
    }
}

impl From<Well> for model::Well {
    fn from(w: Well) -> model::Well {
        model::Well {
            width: w.width.0,
            projection: w.projection.0,
            depth: w.depth.0,
            ladder: w.ladder,
            ladder_projection: w.ladder_projection.0,
        }
    }
}
