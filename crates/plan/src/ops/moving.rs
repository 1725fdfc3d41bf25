//! A wall that moves along its normal, and everything that gives way to it.
//!
//! What follows is found once; where all of it comes to lie for a given distance is then plain
//! arithmetic, so that the room to move can be searched.

use geometry::{Bounds, Pt, Seg, Vec2};
use measure::Len;

use crate::element::{Body, End};
use crate::{Edit, EditError, Element, ElementId, Plan, bounds};

use super::joint::{REACH, Wall, heeds, walls_near};
use super::{along, moved, replace, stretch, wall};

/// What an end of a wall does when the wall being moved goes by some vector.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Motion {
    Stays,
    Goes,
    /// Slides in the direction `along` until it lies on the moved line, whose direction is `line`.
    Slides {
        along: Vec2,
        line: Vec2,
    },
}

/// A wall that changes its line.
struct Part<'p> {
    element: &'p Element,
    line: Seg,
    a: Motion,
    b: Motion,
    /// One of the walls that are moved, in contrast to one that follows.
    leads: bool,
    fixed: Vec<&'p Element>,
}

/// A wall being moved with all that gives way.
pub(super) struct Moving<'p> {
    lead: &'p Element,
    dir: Vec2,
    parts: Vec<Part<'p>>,
    /// Service points that hang on the moved walls.
    carried: Vec<&'p Element>,
}

/// Where a part comes to lie.
struct Lies {
    line: Seg,
    shift: i64,
}

impl<'p> Moving<'p> {
    pub fn of(plan: &'p Plan, id: ElementId) -> Result<Moving<'p>, EditError> {
        let (lead, line) = wall(plan, id)?;
        let leads = in_line(plan, lead);
        let near = near(plan, &leads);
        let all: Vec<Wall> = near.iter().filter_map(|e| Wall::of(plan, e)).collect();
        let parts = all.iter().filter_map(|w| part(plan, &all, &leads, w)).collect();
        let carries =
            |e: &Element| matches!(&e.body, Body::Service(s) if leads.iter().any(|w| w.carries(s)));
        let carried = near.into_iter().filter(|e| carries(e)).collect();
        Ok(Moving { lead, dir: line.dir(), parts, carried })
    }

    /// The edit that moves the wall to its left by `by`.
    pub fn edit(&self, by: Len) -> Result<Edit, EditError> {
        let v = self.dir.left().with_len(by);
        let mut edits = Vec::new();
        for part in &self.parts {
            let lies = part.lies(v)?;
            let Some(Lies { line, shift }) = lies else {
                let (least, most) = self.range();
                let (wall, follower) = (self.lead.name(), part.element.name());
                return Err(EditError::FollowerInverts { wall, follower, least, most });
            };
            edits.extend(stretch::edits(part.element, &part.fixed, part.line, line, shift));
        }
        for e in &self.carried {
            if let Body::Service(s) = &e.body {
                let mut s = s.clone();
                s.at = moved(e, s.at, v)?;
                edits.push(replace(e, Body::Service(s)));
            }
        }
        Ok(Edit::Batch(edits))
    }

    /// The least (zero or negative, to the right) and the most (to the left) that the wall may move.
    pub fn range(&self) -> (Len, Len) {
        (-self.reach(-1), self.reach(1))
    }

    /// How far everything keeps its sense in one direction. The lengths of all parts are linear in the
    /// distance, so what is allowed is one interval and bisection finds its end.
    fn reach(&self, sign: i32) -> Len {
        let (mut good, mut bad) = (0, bounds::COORDINATE.most.units() * 2 - 1);
        while bad - good > 1 {
            let middle = good + (bad - good) / 2;
            if self.keeps_sense(Len::from_units(sign * middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        Len::from_units(good)
    }

    fn keeps_sense(&self, by: Len) -> bool {
        let v = self.dir.left().with_len(by);
        self.parts.iter().all(|part| matches!(part.lies(v), Ok(Some(_))))
            && self.carried.iter().all(|e| e.body.points().iter().all(|&p| moved(e, p, v).is_ok()))
    }
}

impl Part<'_> {
    /// Where the part lies when the wall goes by `v`; `None` where it would turn inside out or an
    /// opening would stick out.
    fn lies(&self, v: Vec2) -> Result<Option<Lies>, EditError> {
        let too_far = || EditError::TooFarOut { who: self.element.name() };
        let end = |p: Pt, motion: Motion| moved(self.element, p, motion.by(v).ok_or_else(too_far)?);
        let line = Seg::new(end(self.line.a, self.a)?, end(self.line.b, self.b)?);
        let (length, same_sense) = (line.len(), line.dir().dot(self.line.dir()) > 0);
        let rest = if self.leads { Motion::Goes } else { Motion::Stays };
        let shift = if self.a == rest {
            0
        } else if self.b == rest {
            stretch::by_length(self.line, line)
        } else {
            let carried = if self.leads { v } else { Vec2::default() };
            -along((line.a - self.line.a) + -carried, self.line.dir())
        };
        let fits = self.fixed.iter().all(|e| match &e.body {
            Body::Opening(o) => stretch::fits(o, shift, length),
            _ => true,
        });
        let sound = same_sense && bounds::WALL_LENGTH.holds(length) && fits;
        Ok(sound.then_some(Lies { line, shift }))
    }
}

impl Motion {
    /// The vector that an end goes by when the wall goes by `v`; rounded once. `None` on overflow.
    fn by(self, v: Vec2) -> Option<Vec2> {
        match self {
            Motion::Stays => Some(Vec2::default()),
            Motion::Goes => Some(v),
            Motion::Slides { along, line } => {
                let cross = |a: Vec2, b: Vec2| {
                    i128::from(a.x) * i128::from(b.y) - i128::from(a.y) * i128::from(b.x)
                };
                let (steps, of) = (cross(v, line), cross(along, line));
                let scaled = |c: i64| i64::try_from(rounded(i128::from(c) * steps, of)?).ok();
                Some(Vec2::new(scaled(along.x)?, scaled(along.y)?))
            }
        }
    }
}

/// A quotient rounded to the nearest whole number, halves away from zero.
fn rounded(n: i128, d: i128) -> Option<i128> {
    let (n, d) = if d < 0 { (-n, -d) } else { (n, d) };
    let half = d / 2;
    (d != 0).then(|| if n >= 0 { (n + half) / d } else { (n - half) / d })
}

/// The wall with the walls that continue it in line: they share an end point and move as one.
fn in_line<'p>(plan: &'p Plan, lead: &'p Element) -> Vec<Wall<'p>> {
    let mut leads: Vec<Wall> = Wall::of(plan, lead).into_iter().collect();
    let mut next = 0;
    while let Some(lead) = leads.get(next).copied() {
        next += 1;
        for w in walls_near(plan, Bounds::of([lead.line.a, lead.line.b])) {
            let known = leads.iter().any(|l| l.element.id == w.element.id);
            if !known
                && w.shell == lead.shell
                && heeds(&w, &lead)
                && w.shared_end(&lead).is_some()
                && w.runs_with(&lead)
            {
                leads.push(w);
            }
        }
    }
    leads
}

/// Everything that may end on the walls or hang on them, and on what they may end; in the order of the ids.
fn near<'p>(plan: &'p Plan, leads: &[Wall<'p>]) -> Vec<&'p Element> {
    let reach = leads.iter().map(|w| Bounds::of([w.line.a, w.line.b]).grow(REACH));
    let mut near: Vec<&Element> = reach.flat_map(|reach| plan.elements().near(reach)).collect();
    near.sort_unstable_by_key(|e| e.id);
    near.dedup_by_key(|e| e.id);
    near
}

/// What a wall does, or `None` where it stays as it is.
fn part<'p>(
    plan: &'p Plan,
    all: &[Wall<'p>],
    leads: &[Wall<'p>],
    w: &Wall<'p>,
) -> Option<Part<'p>> {
    let leading = leads.iter().any(|l| l.element.id == w.element.id);
    let motion =
        |end| if leading { lead_end(all, leads, w, end) } else { follower_end(leads, w, end) };
    let (a, b) = (motion(End::Start), motion(End::Finish));
    if (a, b) == (Motion::Stays, Motion::Stays) {
        return None;
    }
    Some(Part {
        element: w.element,
        line: w.line,
        a,
        b,
        leads: leading,
        fixed: stretch::fixed_to(plan, w.element),
    })
}

fn follower_end(leads: &[Wall], w: &Wall, end: End) -> Motion {
    let on = leads.iter().find(|l| heeds(w, l) && !w.runs_with(l) && w.ends_on(end, l));
    on.map_or(Motion::Stays, |l| Motion::Slides { along: w.line.dir(), line: l.line.dir() })
}

/// An end of a moved wall slides along the wall that it ends on (a shared corner first), so that the
/// joint stays closed also where the two are not square.
fn lead_end(all: &[Wall], leads: &[Wall], w: &Wall, end: End) -> Motion {
    let other = |o: &&Wall| {
        leads.iter().all(|l| l.element.id != o.element.id)
            && !o.runs_with(w)
            && (o.shell || !w.shell)
            && o.element.stands() == w.element.stands()
    };
    let joins_in_line = leads
        .iter()
        .any(|l| l.element.id != w.element.id && [l.line.a, l.line.b].contains(&w.end(end)));
    if joins_in_line {
        return Motion::Goes;
    }
    let corner = all.iter().filter(other).find(|o| [o.line.a, o.line.b].contains(&w.end(end)));
    let guide = corner.or_else(|| all.iter().filter(other).find(|o| w.ends_on(end, o)));
    guide.map_or(Motion::Goes, |o| Motion::Slides { along: o.line.dir(), line: w.line.dir() })
}
