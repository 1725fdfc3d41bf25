//! Catching the far end of a line that is being drawn from a point.

use geometry::{Pt, Seg, Vec2, line_crossing};
use measure::Len;

use super::points::on_stretch;
use super::{Catch, Caught};
use crate::Snap;
use crate::pointer::{Pointer, along, offset};

/// Walls as far away as this still lend their direction.
const LEND: Len = Len::feet_inches(12, 0);

/// A direction is caught within one part in this many of its length (about 4°), or within reach.
const SLOPE: i64 = 14;

impl Catch<'_> {
    /// Catches the far end of a line from `base`: an end or corner within reach; else a direction (square, 45°,
    /// parallel or square with a wall near) and on it a crossing with a face, the level of one of `marks`, or a
    /// whole number of grid steps; else as [`Catch::point`].
    pub fn from(&self, base: Pt, pointer: &Pointer, marks: &[Pt]) -> Caught {
        if !self.active(pointer) {
            return (pointer.at, None);
        }
        let mark = marks.iter().find(|m| **m != base && pointer.reaches(**m));
        if let Some(at) = mark {
            return (*at, super::caught("end", *at));
        }
        if let Some((at, snap)) = self.corner(pointer)
            && at != base
        {
            return (at, snap);
        }
        match self.guide(base, pointer) {
            Some((dir, word)) => self.on_guide(base, dir, word, pointer, marks),
            None => self.point(pointer),
        }
    }

    /// The direction that the pointer is nearest to, as a vector, and its word.
    fn guide(&self, base: Pt, pointer: &Pointer) -> Option<(Vec2, &'static str)> {
        let v = pointer.at - base;
        let mut dirs = vec![
            (Vec2::new(1, 0), "square"),
            (Vec2::new(0, 1), "square"),
            (Vec2::new(1, 1), "45°"),
            (Vec2::new(-1, 1), "45°"),
        ];
        for wall in &self.facts.walls {
            let d = wall.line.dir();
            let known = d.x == 0 || d.y == 0 || d.x.abs() == d.y.abs() || d == Vec2::default();
            let near = crate::pointer::box_reaches(wall.line, pointer.at, LEND)
                || crate::pointer::box_reaches(wall.line, base, LEND);
            if !known && near && !self.skip.contains(&wall.id) {
                dirs.push((d, "parallel"));
                dirs.push((d.left(), "square with wall"));
            }
        }
        dirs.into_iter()
            .map(|(d, word)| if v.dot(d) < 0 { (-d, word) } else { (d, word) })
            .map(|(d, word)| (off_line(v, d), along(v, d), d, word))
            .filter(|(off, far, ..)| {
                let off = i64::from(off.units());
                far.units() > 0
                    && (off <= i64::from(pointer.reach.units())
                        || off * SLOPE <= i64::from(far.units()))
            })
            .min_by_key(|(off, ..)| *off)
            .map(|(_, _, d, word)| (d, word))
    }

    /// The point on a guide: where it crosses a face within reach, level with a mark, or on the grid.
    fn on_guide(
        &self,
        base: Pt,
        dir: Vec2,
        word: &'static str,
        pointer: &Pointer,
        marks: &[Pt],
    ) -> Caught {
        let far = along(pointer.at - base, dir);
        let step = |len: Len| offset(base, dir.with_len(len));
        let Some(foot) = step(far) else { return (pointer.at, None) };
        let near = Pointer { at: foot, ..*pointer };
        // Long enough for the crossing to be worked out exactly on an axis-parallel guide.
        let ray = Seg::new(
            base,
            if dir.x == 0 || dir.y == 0 { foot } else { offset(base, dir).unwrap_or(foot) },
        );
        let mut stops: Vec<(Pt, &'static str)> = self
            .lines_near(foot, pointer.reach)
            .into_iter()
            .filter_map(|seg| {
                let p = line_crossing(ray, seg)?;
                on_stretch(seg, p, Len::ZERO).then_some((p, "crossing"))
            })
            .collect();
        stops.extend(marks.iter().filter_map(|m| {
            let p = step(along(*m - base, dir))?;
            Some((p, "in line"))
        }));
        let stop = stops
            .into_iter()
            .filter(|(p, _)| near.reaches(*p) && *p != base)
            .min_by_key(|(p, _)| (foot - *p).norm2());
        let (at, word) = match stop {
            Some(found) => found,
            None => {
                let whole = far.round_to(self.grid);
                let len = if whole > Len::ZERO { whole } else { far };
                (step(len).unwrap_or(foot), word)
            }
        };
        (at, Some(Snap { word, at, guide: Some((base, at)) }))
    }
}

/// Distance of a vector's tip from the line along `dir`, rounded.
fn off_line(v: Vec2, dir: Vec2) -> Len {
    along(v, dir.left()).abs()
}
