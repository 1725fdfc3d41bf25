//! A wall before it is joined: a line with a thickness to each side.

use geometry::{Bounds, Pt, Seg, Vec2, orient};
use measure::Len;
use plan::element::{Layer, Material};
use plan::{Body as Is, Element, ElementId, Plan};

use super::{WallKind, furring};

/// How far off the face or the end of a wall a point may lie and still count as being on it: the
/// rounding of a point that was caught on a skew face (1/80 mm).
const SLACK: i64 = 4;

/// More than two roundings of a point.
const OVERLAP: Len = Len::from_units(3);

/// A wall as it was drawn.
#[derive(Clone, Debug)]
pub(crate) struct Body {
    pub id: ElementId,
    pub kind: WallKind,
    pub host: Option<ElementId>,
    pub line: Seg,
    /// From the drawn line to the left and to the right face.
    pub left: Len,
    pub right: Len,
    pub left_face: Seg,
    pub right_face: Seg,
    /// From the left face to the right face.
    pub layers: Vec<Layer>,
    pub top: Len,
    /// Where furring starts and ends along its host; the whole length for other walls.
    pub from: Len,
    pub to: Len,
}

/// The body of an element, where it is a standing wall of some length and thickness.
pub(super) fn one(plan: &Plan, e: &Element) -> Option<Body> {
    let joists = plan.site.joist_underside;
    match &e.body {
        _ if !e.stands() => None,
        Is::Shell(w) => {
            let layers = vec![Layer::new(Material::Masonry, w.thickness)];
            let sides = (Len::ZERO, w.thickness);
            Body::new(e.id, WallKind::Shell, w.line(), sides, layers, w.height)
        }
        Is::Partition(w) => {
            let layers = w.layers.clone();
            Body::new(e.id, WallKind::Partition, w.line(), w.sides(), layers, joists)
        }
        Is::Furring(f) => furring::body(plan, e.id, f),
        _ => None,
    }
}

/// The box around two faces, with the slack.
pub(super) fn bounds(left: Seg, right: Seg) -> Bounds {
    Bounds::of([left.a, left.b, right.a, right.b]).grow(Len::from_units(SLACK as i32))
}

impl Body {
    /// `None` for a wall without length or thickness.
    pub fn new(
        id: ElementId,
        kind: WallKind,
        line: Seg,
        (left, right): (Len, Len),
        layers: Vec<Layer>,
        top: Len,
    ) -> Option<Body> {
        let real = line.a != line.b && left >= Len::ZERO && right >= Len::ZERO;
        (real && left + right > Len::ZERO).then(|| Body {
            id,
            kind,
            host: None,
            line,
            left,
            right,
            left_face: line.offset_left(left),
            right_face: line.offset_left(-right),
            layers,
            top,
            from: Len::ZERO,
            to: line.len(),
        })
    }

    pub fn thickness(&self) -> Len {
        self.left + self.right
    }

    /// The box around the unjoined body, with the slack.
    pub fn bounds(&self) -> Bounds {
        bounds(self.left_face, self.right_face)
    }

    /// Whether a point lies in or on the unjoined body.
    pub fn holds(&self, p: Pt) -> bool {
        let dir = self.line.dir();
        let slack = SLACK * dir.norm() as i64;
        let along = (p - self.line.a).dot(dir);
        orient(self.left_face.a, self.left_face.b, p) <= slack
            && orient(self.right_face.a, self.right_face.b, p) >= -slack
            && along >= -slack
            && along <= dir.norm2() + slack
    }

    /// A step to the left, by which the corner of another wall that was rounded onto a face is set into
    /// this wall, so that no slit of less than a unit stays open between the two. None is needed on an
    /// axis-parallel face, where such corners are exact.
    pub fn overlap(&self) -> Vec2 {
        let normal = self.line.dir().left();
        if normal.x == 0 || normal.y == 0 { Vec2::default() } else { normal.with_len(OVERLAP) }
    }

    /// Whether a point beside the line lies between its two ends.
    pub fn spans(&self, p: Pt) -> bool {
        let dir = self.line.dir();
        let slack = SLACK * dir.norm() as i64;
        let along = (p - self.line.a).dot(dir);
        along >= -slack && along <= dir.norm2() + slack
    }
}
