//! What every section shows of the house, and where: slab, joists, concrete.

use drawing::{Marks, P, Slope, Stroke, Tone, hatch};
use measure::Len;

use crate::scale::Scale;

/// How deep slab and joists are drawn; nobody measured them, and the words of each section say so.
pub(crate) const SLAB: Len = Len::inches(4);
pub(crate) const JOIST: Len = Len::sixty_fourths(9 * 64 + 16);

/// Where a section lies on paper: places along it, and heights above the slab.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Frame {
    /// Of the slab at `start`.
    pub origin: P,
    pub scale: Scale,
    pub start: Len,
}

impl Frame {
    pub fn at(&self, along: Len, up: Len) -> P {
        self.origin.by(self.scale.points(along - self.start), -self.scale.points(up))
    }

    /// A rectangle.
    pub fn ring(&self, along: (Len, Len), up: (Len, Len)) -> Vec<P> {
        vec![
            self.at(along.0, up.0),
            self.at(along.1, up.0),
            self.at(along.1, up.1),
            self.at(along.0, up.1),
        ]
    }
}

/// Concrete that is cut.
pub(crate) fn concrete(ring: Vec<P>, origin: P, m: &mut Marks) {
    let soft = Stroke::solid(Tone::SoftInk, 0.4);
    m.segments(hatch(&[&ring], Slope::Falling, 5.0, origin), soft);
    m.outline(ring, Stroke::solid(Tone::Ink, 0.9));
}
