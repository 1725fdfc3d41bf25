//! What every section shows of the house: slab, joists, concrete.

use drawing::{Marks, P, Slope, Stroke, Tone, hatch};
use measure::Len;

/// How deep slab and joists are drawn; nobody measured them, and the words of each section say so.
pub(crate) const SLAB: Len = Len::inches(4);
pub(crate) const JOIST: Len = Len::sixty_fourths(9 * 64 + 16);

/// Concrete that is cut.
pub(crate) fn concrete(ring: Vec<P>, origin: P, m: &mut Marks) {
    let soft = Stroke::solid(Tone::SoftInk, 0.4);
    m.segments(hatch(&[&ring], Slope::Falling, 5.0, origin), soft);
    m.outline(ring, Stroke::solid(Tone::Ink, 0.9));
}
