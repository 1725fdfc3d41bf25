//! The floor that each element takes in the plan, for picking, marquees and boxes.

use geometry::{Placed, Pt, Ring, Seg};
use measure::Len;
use plan::element::{ColumnShape, OverheadShape};
use plan::{Body, Element, Plan};
use space::Facts;

/// The outline of an element, counter-clockwise or clockwise; a single point for tags and notes, two for a section line. `None` for
/// something fixed to a wall that is not there.
pub(crate) fn outline(plan: &Plan, facts: &Facts, element: &Element) -> Option<Ring> {
    Some(match &element.body {
        Body::Shell(_) | Body::Partition(_) | Body::Furring(_) => match facts.wall(element.id) {
            Some(wall) => wall.outline.clone(),
            None => removed_wall(plan, &element.body)?,
        },
        Body::Opening(opening) => match facts.opening(element.id) {
            Some(opening) => opening.quad.to_vec(),
            None => {
                let host = &plan.get(opening.host)?.body;
                let (line, left, right) = sides(host)?;
                let from = line.point_at(opening.at);
                let to = line.point_at(opening.at + opening.width());
                band(Seg::new(from, to), left, right)
            }
        },
        Body::Overhead(overhead) => match &overhead.shape {
            OverheadShape::Outline(ring) => ring.clone(),
            OverheadShape::Run { a, b, width } => {
                band(Seg::new(*a, *b), *width / 2, *width - *width / 2)
            }
        },
        Body::RoomTag(tag) => vec![tag.at],
        Body::Note(note) => vec![note.at],
        Body::Section(section) => vec![section.a, section.b],
        body => placed(body)?.corners().to_vec(),
    })
}

/// The box of a column, stair, service point or furnishing.
pub(crate) fn placed(body: &Body) -> Option<Placed> {
    match body {
        Body::Column(column) => Some(column.placed()),
        Body::Stair(stair) => Some(stair.placed()),
        Body::Service(service) => Some(service.placed()),
        Body::Furnishing(furnishing) => Some(furnishing.placed()),
        _ => None,
    }
}

/// Whether an element is round, so that its corners do not count.
pub(crate) fn round(body: &Body) -> Option<(Pt, Len)> {
    match body {
        Body::Column(column) => match column.shape {
            ColumnShape::Round { diameter } => Some((column.at, diameter / 2)),
            ColumnShape::Square { .. } => None,
        },
        _ => None,
    }
}

/// A wall that does not stand, from its own figures.
fn removed_wall(plan: &Plan, body: &Body) -> Option<Ring> {
    if let Body::Furring(furring) = body {
        let line = plan.get(furring.host)?.body.wall_line()?;
        let to = furring.to.min(line.len());
        let stretch = Seg::new(line.point_at(furring.from), line.point_at(to));
        return Some(band(stretch, furring.thickness(), Len::ZERO));
    }
    let (line, left, right) = sides(body)?;
    Some(band(line, left, right))
}

/// The drawn line of a wall with the distances to its left and right face.
fn sides(body: &Body) -> Option<(Seg, Len, Len)> {
    match body {
        Body::Shell(wall) => Some((wall.line(), Len::ZERO, wall.thickness)),
        Body::Partition(wall) => {
            let (left, right) = wall.sides();
            Some((wall.line(), left, right))
        }
        _ => None,
    }
}

/// A band along a segment, counter-clockwise.
fn band(line: Seg, left: Len, right: Len) -> Ring {
    let (l, r) = (line.offset_left(left), line.offset_left(-right));
    vec![r.a, r.b, l.b, l.a]
}
