//! Catching a point that starts from nowhere.

use geometry::{Pt, Seg, line_crossing, nearest_on};
use measure::Len;

use super::{Catch, Caught, caught};
use crate::pointer::{Pointer, within};

impl Catch<'_> {
    /// Catches a point: an end or a crossing of faces first, then a middle, then a face, then the grid.
    pub fn point(&self, pointer: &Pointer) -> Caught {
        if !self.active(pointer) {
            return (pointer.at, None);
        }
        if let Some(found) = self.corner(pointer) {
            return found;
        }
        let lines = self.lines_near(pointer.at, pointer.reach);
        let middles = lines.iter().map(|seg| (seg.a.midway(seg.b), "middle"));
        if let Some(found) = nearest(pointer, middles) {
            return found;
        }
        if let Some(at) = self.on_face(pointer, &lines) {
            return (at, caught("face", at));
        }
        self.grid_point(pointer)
    }

    /// An end, a crossing of two faces or a column's centre within reach.
    pub(super) fn corner(&self, pointer: &Pointer) -> Option<Caught> {
        let lines = self.lines_near(pointer.at, pointer.reach);
        let mut points = self.marks_near(pointer);
        points.extend(lines.iter().flat_map(|seg| [(seg.a, "end"), (seg.b, "end")]));
        for (i, one) in lines.iter().enumerate() {
            for other in &lines[i + 1..] {
                if let Some(p) = line_crossing(*one, *other)
                    && on_stretch(*one, p, pointer.reach)
                    && on_stretch(*other, p, pointer.reach)
                {
                    points.push((p, "crossing"));
                }
            }
        }
        nearest(pointer, points)
    }

    /// The nearest point on the nearest face; along an axis-parallel face it falls on the grid.
    fn on_face(&self, pointer: &Pointer, lines: &[Seg]) -> Option<Pt> {
        let (seg, at) = lines
            .iter()
            .map(|seg| (*seg, nearest_on(*seg, pointer.at)))
            .filter(|(_, p)| pointer.reaches(*p))
            .min_by_key(|(_, p)| (pointer.at - *p).norm2())?;
        Some(self.along_face(seg, at, pointer))
    }

    /// A point on a face brought to the grid along the face, where the face is parallel to an axis. A typed point
    /// (one without reach) stays as it was typed.
    pub(super) fn along_face(&self, seg: Seg, at: Pt, pointer: &Pointer) -> Pt {
        if !self.active(pointer) || pointer.reach == Len::ZERO {
            return at;
        }
        let rounded = self.on_grid(at);
        let on_axis = if seg.a.x == seg.b.x {
            Pt::new(seg.a.x, rounded.y)
        } else if seg.a.y == seg.b.y {
            Pt::new(rounded.x, seg.a.y)
        } else {
            return at;
        };
        if on_stretch(seg, on_axis, Len::ZERO) { on_axis } else { at }
    }

    /// The grid point, where there is a grid.
    pub(super) fn grid_point(&self, pointer: &Pointer) -> Caught {
        if self.grid <= Len::ZERO {
            return (pointer.at, None);
        }
        let at = self.on_grid(pointer.at);
        (at, caught("grid", at))
    }
}

/// The nearest of the points that are within reach; of equally near ones the first.
fn nearest(
    pointer: &Pointer,
    points: impl IntoIterator<Item = (Pt, &'static str)>,
) -> Option<Caught> {
    points
        .into_iter()
        .filter(|(p, _)| within(pointer.at, *p, pointer.reach))
        .min_by_key(|(p, _)| (pointer.at - *p).norm2())
        .map(|(p, word)| (p, caught(word, p)))
}

/// Whether a point on a segment's line lies between its ends, or beyond one by at most `slack`.
pub(super) fn on_stretch(seg: Seg, p: Pt, slack: Len) -> bool {
    crate::pointer::box_reaches(seg, p, slack)
}
