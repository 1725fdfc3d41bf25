//! Bodies with their points moved.

use geometry::Pt;

use crate::EditError;
use crate::element::{Body, OverheadShape};

/// The body with every point put through `to`; what is fixed to a wall has no points of its own.
pub(crate) fn map_points(
    body: &Body,
    mut to: impl FnMut(Pt) -> Result<Pt, EditError>,
) -> Result<Body, EditError> {
    let mut body = body.clone();
    match &mut body {
        Body::Shell(w) => (w.a, w.b) = (to(w.a)?, to(w.b)?),
        Body::Partition(w) => (w.a, w.b) = (to(w.a)?, to(w.b)?),
        Body::Furring(_) | Body::Opening(_) => {}
        Body::Column(c) => c.at = to(c.at)?,
        Body::Stair(s) => s.foot = to(s.foot)?,
        Body::Overhead(o) => match &mut o.shape {
            OverheadShape::Run { a, b, .. } => (*a, *b) = (to(*a)?, to(*b)?),
            OverheadShape::Outline(ring) => {
                for p in ring {
                    *p = to(*p)?;
                }
            }
        },
        Body::Service(s) => s.at = to(s.at)?,
        Body::Furnishing(f) => f.at = to(f.at)?,
        Body::RoomTag(t) => t.at = to(t.at)?,
        Body::Note(n) => n.at = to(n.at)?,
        Body::Section(s) => (s.a, s.b) = (to(s.a)?, to(s.b)?),
    }
    Ok(body)
}
