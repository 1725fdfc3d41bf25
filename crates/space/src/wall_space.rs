//! Stretches of wall along the floor of a room, from door to door, round corners.

use geometry::{Pt, Ring, Seg, nearest_on};
use measure::Len;
use plan::element::Side;

use crate::{Facts, OpeningFacts, Room};

/// A stretch of wall at the finished face that no door or cased opening breaks. Windows don't break it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WallSpace {
    /// Its corners in the order of the room's outline, its ends included.
    pub points: Vec<Pt>,
    /// It runs round and has no ends: a room without doors, or an island.
    pub closed: bool,
}

impl WallSpace {
    /// Its pieces between corners.
    pub fn segments(&self) -> impl Iterator<Item = Seg> {
        let n = self.points.len();
        let pieces = if self.closed { n } else { n.saturating_sub(1) };
        (0..pieces).map(move |i| Seg::new(self.points[i], self.points[(i + 1) % n]))
    }

    /// Its length along the floor line.
    pub fn len(&self) -> Len {
        self.segments().fold(Len::ZERO, |sum, s| sum + s.len())
    }

    /// Whether it has no length.
    pub fn is_empty(&self) -> bool {
        self.len() == Len::ZERO
    }

    /// The point at a distance along it, its end at the farthest.
    pub fn point_at(&self, along: Len) -> Pt {
        let mut rest = along;
        let mut end = self.points.first().copied().unwrap_or_default();
        for s in self.segments() {
            if rest <= s.len() {
                return s.point_at(rest);
            }
            rest -= s.len();
            end = s.b;
        }
        end
    }

    /// How far along it the point nearest to `p` lies, and how far that is from `p`.
    pub fn nearest(&self, p: Pt) -> (Len, Len) {
        let mut passed = Len::ZERO;
        let mut best = (Len::ZERO, None);
        for s in self.segments() {
            let foot = nearest_on(s, p);
            let away = Seg::new(foot, p).len();
            if best.1.is_none_or(|b| away < b) {
                best = (passed + Seg::new(s.a, foot).len(), Some(away));
            }
            passed += s.len();
        }
        (best.0, best.1.unwrap_or(Len::ZERO))
    }

    /// The part between two distances along it, as a line of points.
    pub fn part(&self, from: Len, to: Len) -> Vec<Pt> {
        let mut points = vec![self.point_at(from)];
        let mut passed = Len::ZERO;
        for s in self.segments() {
            passed += s.len();
            if from < passed && passed < to {
                points.push(s.b);
            }
        }
        points.push(self.point_at(to));
        points
    }
}

/// The wall spaces of a room: round its outline, and round each island.
pub fn wall_spaces(facts: &Facts, room: &Room) -> Vec<WallSpace> {
    let doors: Vec<&OpeningFacts> = room
        .openings
        .iter()
        .filter(|id| facts.is_door(**id))
        .filter_map(|id| facts.opening(*id))
        .collect();
    room.shape.rings().flat_map(|ring| of_ring(ring, &doors)).collect()
}

/// A doorway on an edge of the outline, as distances from the edge's start.
type Cut = (Len, Len);

fn of_ring(ring: &Ring, doors: &[&OpeningFacts]) -> Vec<WallSpace> {
    let mut done: Vec<WallSpace> = Vec::new();
    let mut open = vec![];
    for (i, a) in ring.iter().enumerate() {
        let edge = Seg::new(*a, ring[(i + 1) % ring.len()]);
        open.push(edge.a);
        for (from, to) in cuts(edge, doors) {
            open.push(edge.point_at(from));
            done.push(WallSpace { points: std::mem::take(&mut open), closed: false });
            open.push(edge.point_at(to));
        }
    }
    if done.is_empty() {
        return vec![WallSpace { points: open, closed: true }];
    }
    // What was begun at the end of the outline goes on at its start.
    open.append(&mut done[0].points);
    done[0].points = open;
    for space in &mut done {
        space.points.dedup();
    }
    done.retain(|s| !s.is_empty());
    done
}

/// The doorways on an edge, in order, those that overlap joined.
fn cuts(edge: Seg, doors: &[&OpeningFacts]) -> Vec<Cut> {
    let mut cuts: Vec<Cut> = doors
        .iter()
        .flat_map(|d| [Side::Right, Side::Left].map(|side| d.face(side)))
        .filter_map(|jambs| cut(edge, [jambs.a, jambs.b]))
        .collect();
    cuts.sort_unstable();
    let mut joined: Vec<Cut> = Vec::new();
    for (from, to) in cuts {
        match joined.last_mut() {
            Some(last) if from <= last.1 => last.1 = last.1.max(to),
            _ => joined.push((from, to)),
        }
    }
    joined
}

/// Where two jambs lie on an edge; `None` where they lie beside it. Corners are rounded to the grid, so a
/// distance of a few units (1/320 mm each) counts as none.
fn cut(edge: Seg, jambs: [Pt; 2]) -> Option<Cut> {
    const HAIR: Len = Len::from_units(4);
    let along = jambs.map(|p| {
        let foot = nearest_on(edge, p);
        (Seg::new(foot, p).len() <= HAIR).then(|| Seg::new(edge.a, foot).len())
    });
    let [Some(a), Some(b)] = along else { return None };
    (a != b).then(|| (a.min(b), a.max(b)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn square() -> Ring {
        [(0, 0), (120, 0), (120, 96), (0, 96)].map(|(x, y)| Pt::inches(x, y)).to_vec()
    }

    #[test]
    fn without_a_door_it_runs_round() {
        let all = of_ring(&square(), &[]);
        assert_eq!(all.len(), 1);
        assert!(all[0].closed);
        assert_eq!(all[0].len(), Len::inches(432));
        assert_eq!(all[0].nearest(Pt::inches(130, 50)), (Len::inches(170), Len::inches(10)));
        assert_eq!(all[0].point_at(Len::inches(130)), Pt::inches(120, 10));
    }

    #[test]
    fn a_part_goes_round_the_corner() {
        let all = of_ring(&square(), &[]);
        let part = all[0].part(Len::inches(100), Len::inches(140));
        assert_eq!(part, [Pt::inches(100, 0), Pt::inches(120, 0), Pt::inches(120, 20)]);
    }

    #[test]
    fn jambs_on_the_edge_cut_it_and_others_do_not() {
        let edge = Seg::new(Pt::inches(0, 0), Pt::inches(120, 0));
        let at = |x, y| Pt::inches(x, y);
        assert_eq!(cut(edge, [at(70, 0), at(40, 0)]), Some((Len::inches(40), Len::inches(70))));
        assert_eq!(cut(edge, [at(40, 5), at(70, 5)]), None);
        assert_eq!(cut(edge, [at(-9, 0), at(-3, 0)]), None);
    }
}
