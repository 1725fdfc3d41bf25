//! The space in front of a thing: what stands in it, and where a box of a given size fits.
//!
//! Measured in the frame of the face: `out` along the facing from the face, `across` from the middle of the face
//! to the left of one who looks the way it faces. Exact on a facing along an axis; else rounded once to 1/320 mm.

use geometry::{Bounds, Facing, Placed, Pt, Ring, convex_clip, convex_overlap};
use measure::Len;
use plan::ElementId;
use space::Facts;

use crate::Place;

/// The face of a thing.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Face {
    /// The middle of the face.
    pub at: Pt,
    pub facing: Facing,
    pub width: Len,
}

/// The box that must fit, from the face outwards.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Space {
    /// At least as wide as the face, or the box may stand anywhere before it.
    pub width: Len,
    pub depth: Len,
    /// Height range from the slab.
    pub bottom: Len,
    pub top: Len,
}

/// A piece of a thing that stands within reach of the box.
#[derive(Clone, Debug)]
pub(crate) struct Obstacle {
    pub element: ElementId,
    /// The part of it within reach.
    pub overlap: Ring,
    /// Where it begins, out from the face.
    pub near: Len,
    /// Where it ends, out from the face, no further than the box is deep.
    pub far: Len,
    /// Its stretch across.
    pub from: Len,
    pub to: Len,
}

/// How a box fits in front of a face.
#[derive(Clone, Debug)]
pub(crate) struct Fit {
    /// The box where it fits, or where it comes nearest to it.
    pub ring: Ring,
    /// What stands in the box.
    pub within: Vec<Obstacle>,
    /// The depth straight before the face, where something stands there.
    pub short: Option<Len>,
    /// The clear stretch beside what stands there, where no place is wide enough.
    pub narrow: Option<Narrow>,
    /// Every place where the box is clear that was tried, the best first; else only the best place.
    pub places: Vec<Ring>,
}

/// A stretch across that is too narrow.
#[derive(Clone, Debug)]
pub(crate) struct Narrow {
    /// Its right and left end across.
    pub from: Len,
    pub to: Len,
    /// How far out the nearer of its two bounds begins.
    pub out: Len,
    /// What bounds it.
    pub by: Vec<ElementId>,
}

impl Narrow {
    pub fn width(&self) -> Len {
        self.to - self.from
    }
}

impl Fit {
    pub fn is_clear(&self) -> bool {
        self.short.is_none() && self.narrow.is_none()
    }
}

impl Face {
    /// The front of a box.
    pub fn of(placed: Placed) -> Face {
        Face { at: placed.front(), facing: placed.facing, width: placed.width }
    }

    /// How far out from the face a point lies.
    pub fn out(&self, p: Pt) -> Len {
        along(self.facing, p, self.at)
    }

    /// How far across a point lies; positive to the left.
    pub fn across(&self, p: Pt) -> Len {
        along(self.facing.left(), p, self.at)
    }

    /// The point across and out from the middle of the face.
    pub fn point(&self, across: Len, out: Len) -> Pt {
        self.at + self.facing.left().step(across) + self.facing.step(out)
    }

    /// The box whose right end lies at `from` across.
    pub fn ring(&self, from: Len, width: Len, depth: Len) -> Ring {
        let to = from + width;
        vec![
            self.point(from, Len::ZERO),
            self.point(from, depth),
            self.point(to, depth),
            self.point(to, Len::ZERO),
        ]
    }

    /// The box and what stands in it, to paint.
    pub fn breach(&self, fit: &Fit) -> Place {
        let overlap = fit.within.iter().map(|o| o.overlap.clone()).collect();
        Place::Breach { keep_clear: fit.ring.clone(), overlap }
    }

    /// From the face straight out to where an obstacle begins.
    pub fn distance(&self, o: &Obstacle) -> (Pt, Pt) {
        let (right, left) = self.ends();
        let nearest = o.overlap.iter().copied().filter(|&p| self.out(p) <= o.near);
        let across = nearest
            .map(|p| self.across(p).clamp(right, left))
            .min_by_key(|across| (across.abs(), *across))
            .unwrap_or(Len::ZERO);
        // A side that runs along the face is met at its middle, where it can be.
        let across =
            if o.from < Len::ZERO && o.to > Len::ZERO && self.flat(o) { Len::ZERO } else { across };
        (self.point(across, Len::ZERO), self.point(across, o.near))
    }

    /// Whether an obstacle begins with a side along the face.
    fn flat(&self, o: &Obstacle) -> bool {
        o.overlap.iter().filter(|&&p| self.out(p) <= o.near).count() > 1
    }

    /// Whether a thing stands straight before the face, not beside it.
    pub fn faces(&self, o: &Obstacle) -> bool {
        let (right, left) = self.ends();
        o.from < left && o.to > right
    }

    fn ends(&self) -> (Len, Len) {
        let right = -(self.width / 2);
        (right, right + self.width)
    }

    /// Fits a box. `ignore` names what doesn't count.
    pub fn fit(&self, facts: &Facts, space: Space, ignore: impl Fn(&space::Solid) -> bool) -> Fit {
        let (right, left) = self.ends();
        // The box covers the face, or stands before it where it is narrower.
        let (lo, hi) = ordered(right, left - space.width);
        let reach = self.ring(lo, hi + space.width - lo, space.depth);
        let obstacles = self.obstacles(facts, &reach, space, ignore);
        let places = self.places(&obstacles, space.width, lo, hi);
        let from = places[0];
        let meets = |o: &Obstacle| o.from < from + space.width && o.to > from;
        let within: Vec<Obstacle> = obstacles.iter().filter(|o| meets(o)).cloned().collect();
        let in_front = |o: &Obstacle| space.width < self.width || self.faces(o);
        let (mut short, mut narrow) = (None, None);
        if !within.is_empty() {
            short = within.iter().filter(|o| in_front(o)).map(|o| o.near).min();
            let beside: Vec<&Obstacle> = obstacles.iter().filter(|o| !in_front(o)).collect();
            narrow = self.clear_stretch(&beside, lo, hi + space.width);
            narrow = narrow.filter(|n| n.width() < space.width);
        }
        let ring = |from: Len| self.ring(from, space.width, space.depth);
        let places = places.into_iter().map(ring).collect();
        Fit { ring: ring(from), within, short, narrow, places }
    }

    /// The stretch across that things beside the face leave, within `lo` and `hi`.
    fn clear_stretch(&self, beside: &[&Obstacle], lo: Len, hi: Len) -> Option<Narrow> {
        let (right, left) = self.ends();
        let on_left = beside.iter().filter(|o| o.from >= left).min_by_key(|o| (o.from, o.element));
        let on_right = beside.iter().filter(|o| o.to <= right).max_by_key(|o| (o.to, o.element));
        let bounds = || on_left.into_iter().chain(on_right);
        Some(Narrow {
            from: on_right.map_or(lo, |o| o.to),
            to: on_left.map_or(hi, |o| o.from),
            out: bounds().map(|o| o.near).min()?,
            by: bounds().map(|o| o.element).collect(),
        })
    }

    /// What stands in a convex stretch of floor before the face, nearest first.
    pub fn obstacles(
        &self,
        facts: &Facts,
        reach: &[Pt],
        space: Space,
        ignore: impl Fn(&space::Solid) -> bool,
    ) -> Vec<Obstacle> {
        let mut found: Vec<Obstacle> = facts
            .solids_near(Bounds::of(reach))
            .filter(|s| s.bottom < space.top && s.top > space.bottom && !ignore(s))
            .filter(|s| convex_overlap(reach, &s.ring))
            .filter_map(|s| self.obstacle(s, convex_clip(reach, &s.ring)))
            .collect();
        found.sort_by_key(|o| (o.near, o.element));
        found
    }

    fn obstacle(&self, solid: &space::Solid, overlap: Ring) -> Option<Obstacle> {
        let outs = || overlap.iter().map(|&p| self.out(p));
        let acrosses = || overlap.iter().map(|&p| self.across(p));
        Some(Obstacle {
            element: solid.element,
            near: outs().min()?.max(Len::ZERO),
            far: outs().max()?,
            from: acrosses().min()?,
            to: acrosses().max()?,
            overlap,
        })
    }

    /// Where across the box may stand: the places that are free of obstacles, nearest to the middle
    /// first; or where there is none, the one where the nearest obstacle is farthest out.
    fn places(&self, obstacles: &[Obstacle], width: Len, lo: Len, hi: Len) -> Vec<Len> {
        let middle = (-(width / 2)).clamp(lo, hi);
        let mut places = vec![middle, lo, hi];
        places.extend(obstacles.iter().flat_map(|o| [o.to, o.from - width]));
        places.retain(|&p| p >= lo && p <= hi);
        places.sort_unstable_by_key(|&p| ((p - middle).abs(), p));
        places.dedup();
        let near = |from: Len| {
            let meets = |o: &&Obstacle| o.from < from + width && o.to > from;
            obstacles.iter().filter(meets).map(|o| o.near).min()
        };
        let free: Vec<Len> = places.iter().copied().filter(|&p| near(p).is_none()).collect();
        if !free.is_empty() {
            return free;
        }
        let best = places.into_iter().rev().max_by_key(|&p| near(p));
        vec![best.unwrap_or(middle)]
    }
}

/// The component of `p - from` along a facing.
fn along(facing: Facing, p: Pt, from: Pt) -> Len {
    let (v, f) = (p - from, facing.vec());
    let len = match (f.x, f.y) {
        (x, 0) => v.x * x.signum(),
        (0, y) => v.y * y.signum(),
        _ => (v.dot(f) as f64 / f.norm()).round() as i64,
    };
    Len::from_units(i32::try_from(len).unwrap_or(if len < 0 { i32::MIN } else { i32::MAX }))
}

fn ordered(a: Len, b: Len) -> (Len, Len) {
    if a <= b { (a, b) } else { (b, a) }
}

#[cfg(test)]
mod tests {
    use geometry::{Facing, Vec2};
    use plan::element::{Column, ColumnShape};
    use plan::{Body, State};
    use proptest::prelude::*;

    use super::*;
    use crate::testing::{Sample, at, inch};

    fn face(facing: Facing) -> Face {
        Face { at: at(0.0, 0.0), facing, width: inch(14.0) }
    }

    fn space(width: f64, depth: f64) -> Space {
        Space { width: inch(width), depth: inch(depth), bottom: Len::ZERO, top: inch(78.0) }
    }

    /// A square column with its sides along and across the facing, `out` before the face and `across` to the left.
    fn column(face: &Face, out: f64, across: f64, side: f64) -> Sample {
        let centre = face.point(inch(across), inch(out + side / 2.0));
        let shape = ColumnShape::Square { width: inch(side), depth: inch(side) };
        let column = Column { at: centre, shape, facing: face.facing };
        Sample::blank().add(State::Existing, Body::Column(column))
    }

    fn fit(face: &Face, sample: &Sample, space: Space) -> Fit {
        face.fit(&sample.facts(), space, |_| false)
    }

    #[test]
    fn nothing_before_it_leaves_it_clear_and_in_the_middle() {
        let face = face(Facing::NORTH);
        let fit = fit(&face, &Sample::blank(), space(30.0, 36.0));
        assert!(fit.is_clear());
        let expected = [at(15.0, 0.0), at(15.0, 36.0), at(-15.0, 36.0), at(-15.0, 0.0)];
        assert_eq!(fit.ring, expected);
    }

    #[test]
    fn it_slides_no_farther_than_it_must() {
        let face = face(Facing::NORTH);
        // A column from 10 to 14 in left of the middle: the box ends at 10 in.
        let fit = fit(&face, &column(&face, 10.0, 12.0, 4.0), space(30.0, 36.0));
        assert!(fit.is_clear());
        assert_eq!(fit.ring[2], face.point(inch(10.0), inch(36.0)));
    }

    #[test]
    fn a_box_narrower_than_the_face_finds_its_place_before_it() {
        let wide = Face { width: inch(40.0), ..face(Facing::EAST) };
        let clear = |across: f64| fit(&wide, &column(&wide, 5.0, across, 4.0), space(30.0, 30.0));
        assert!(clear(12.0).is_clear(), "30 in are left beside it");
        assert_eq!(clear(11.0).short, Some(inch(5.0)));
    }

    proptest! {
        /// A turned face measures what an upright one does: within the rounding of its corners.
        #[test]
        fn a_turned_face_measures_the_same(
            x in -9i32..9, y in -9i32..9, out in 1u8..34, across in -14i8..14, side in 1u8..8,
        ) {
            prop_assume!((x, y) != (0, 0));
            let facing = Facing::along(Vec2::new(x.into(), y.into())).expect("a direction");
            let measure = |face: Face| {
                let sample = column(&face, out.into(), across.into(), side.into());
                fit(&face, &sample, space(30.0, 36.0))
            };
            let (upright, turned) = (measure(face(Facing::NORTH)), measure(face(facing)));
            let near = |a: Len, b: Len| (a - b).abs() <= Len::from_units(4);
            // Where sides only touch, rounding may decide either way.
            if let (Some(a), Some(b)) = (upright.short, turned.short) {
                prop_assert!(near(a, b), "{a:?} {b:?}");
            }
            if let (Some(a), Some(b)) = (&upright.narrow, &turned.narrow) {
                prop_assert!(near(a.width(), b.width()));
            }
            let touches = (i32::from(across).abs() - i32::from(side) / 2 - 7).abs() <= 1;
            prop_assert!(touches || upright.short.is_some() == turned.short.is_some());
        }
    }
}
