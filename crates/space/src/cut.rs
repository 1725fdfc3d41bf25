//! What a section line cuts, from the slab to the joists.

use geometry::{Pt, Ring, Seg, Shape, stretches};
use measure::Len;
use plan::element::{OverheadKind, Stair};
use plan::{Body, ElementId};

use crate::{Facts, OpeningFacts, Room, RoomIndex, WallFacts, WallKind};

/// What a thing that is cut is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CutKind {
    /// Of a foundation wall, a partition or furring.
    Wall(WallKind),
    /// The hole of a door or window.
    Opening,
    /// The clear space of a well outside a window: from its floor to the grade.
    Well,
    Column,
    /// Up to the step that is cut.
    Stair,
    Overhead(OverheadKind),
    Furnishing,
}

/// A rectangle that is cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CutPiece {
    pub element: ElementId,
    pub kind: CutKind,
    /// Distances from the start of the line.
    pub from: Len,
    pub to: Len,
    /// Heights above the slab.
    pub low: Len,
    pub high: Len,
}

/// The stretch of a line in a room.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CutRoom {
    pub room: RoomIndex,
    pub from: Len,
    pub to: Len,
}

/// What a line cuts.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Cut {
    /// By the element's id, then along the line.
    pub pieces: Vec<CutPiece>,
    /// Along the line.
    pub rooms: Vec<CutRoom>,
}

/// Everything standing that the line cuts. Places are rounded to the grid; nothing is judged by them.
pub fn cut(facts: &Facts, line: Seg) -> Cut {
    let mut cut = Cut::default();
    for wall in &facts.walls {
        cut_wall(facts, line, wall, &mut cut.pieces);
    }
    for opening in &facts.openings {
        cut_opening(facts, line, opening, &mut cut.pieces);
    }
    for over in &facts.overheads {
        let top = facts.plan.site.joist_underside.max(over.underside);
        let kind = CutKind::Overhead(over.kind);
        boxes(over.id, kind, stretches(line, &over.ring), (over.underside, top), &mut cut.pieces);
    }
    for element in facts.plan.elements().iter().filter(|e| e.stands()) {
        let id = element.id;
        match &element.body {
            Body::Column(c) => {
                let up = (Len::ZERO, facts.plan.site.joist_underside);
                let found = stretches(line, &c.placed().corners());
                boxes(id, CutKind::Column, found, up, &mut cut.pieces);
            }
            Body::Furnishing(f) => {
                let found = stretches(line, &f.placed().corners());
                boxes(id, CutKind::Furnishing, found, (Len::ZERO, f.height), &mut cut.pieces);
            }
            Body::Stair(s) => cut_stair(id, s, line, &mut cut.pieces),
            _ => {}
        }
    }
    cut.pieces.sort_by_key(|p| (p.element, p.from, p.low));
    for room in &facts.rooms {
        cut.rooms.extend(within(line, &room.shape).map(|(from, to)| CutRoom {
            room: room.index,
            from,
            to,
        }));
    }
    cut.rooms.sort_by_key(|r| (r.from, r.room));
    cut
}

/// The clear height over the finished floor at the lowest thing that hangs over a stretch of a room.
pub fn lowest_over(facts: &Facts, room: &Room, cut: &Cut, from: Len, to: Len) -> Len {
    let site = &facts.plan.site;
    let hanging = cut
        .pieces
        .iter()
        .filter(|p| matches!(p.kind, CutKind::Overhead(_)) && p.from < to && from < p.to);
    let lowest = hanging.map(|p| p.low - site.floor_build).min();
    lowest.map_or(room.highest, |low| low.min(room.highest))
}

fn boxes(
    element: ElementId,
    kind: CutKind,
    found: Vec<(Len, Len)>,
    (low, high): (Len, Len),
    pieces: &mut Vec<CutPiece>,
) {
    let piece = |(from, to)| CutPiece { element, kind, from, to, low, high };
    pieces.extend(found.into_iter().map(piece));
}

/// The heights of an opening's hole above the slab: its sill and its head.
fn hole(facts: &Facts, id: ElementId) -> Option<(Len, Len)> {
    let Body::Opening(opening) = &facts.plan.get(id)?.body else { return None };
    Some(match (opening.door(), opening.window()) {
        (Some(door), _) => (Len::ZERO, facts.plan.site.floor_build + door.leaf_height),
        (_, Some(window)) => (window.sill, window.sill + window.frame_height),
        (None, None) => return None,
    })
}

/// A wall is whole but for the holes that are cut, below and above which it goes on.
fn cut_wall(facts: &Facts, line: Seg, wall: &WallFacts, pieces: &mut Vec<CutPiece>) {
    let host = wall.host.unwrap_or(wall.id);
    let holes: Vec<((Len, Len), (Len, Len))> = facts
        .openings
        .iter()
        .filter(|o| o.host == host)
        .filter_map(|o| Some((o, hole(facts, o.id)?)))
        .flat_map(|(o, up)| stretches(line, &o.quad).into_iter().map(move |found| (found, up)))
        .collect();
    let kind = CutKind::Wall(wall.kind);
    for (from, to) in stretches(line, &wall.outline) {
        let mut places = vec![from, to];
        places.extend(holes.iter().flat_map(|((a, b), _)| [*a, *b]));
        places.retain(|p| (from..=to).contains(p));
        places.sort_unstable();
        places.dedup();
        for pair in places.windows(2) {
            let (from, to) = (pair[0], pair[1]);
            let piece = |low, high| CutPiece { element: wall.id, kind, from, to, low, high };
            match holes.iter().find(|((a, b), _)| *a <= from && to <= *b) {
                None => pieces.push(piece(Len::ZERO, wall.top)),
                Some((_, (sill, head))) => {
                    let below = piece(Len::ZERO, (*sill).min(wall.top));
                    let above = piece(*head, wall.top);
                    pieces.extend([below, above].into_iter().filter(|p| p.low < p.high));
                }
            }
        }
    }
}

fn cut_opening(facts: &Facts, line: Seg, o: &OpeningFacts, pieces: &mut Vec<CutPiece>) {
    let Some(up) = hole(facts, o.id) else { return };
    boxes(o.id, CutKind::Opening, stretches(line, &o.quad), up, pieces);
    let window = facts.plan.get(o.id).and_then(|e| match &e.body {
        Body::Opening(opening) => opening.window(),
        _ => None,
    });
    if let Some((window, well)) = window.and_then(|w| Some((w, w.well?))) {
        let found = stretches(line, &o.well_ring(&well));
        boxes(o.id, CutKind::Well, found, (window.grade - well.depth, window.grade), pieces);
    }
}

/// Step by step: each tread with the risers under it.
fn cut_stair(id: ElementId, stair: &Stair, line: Seg, pieces: &mut Vec<CutPiece>) {
    let treads = i32::try_from(stair.risers.saturating_sub(1)).unwrap_or(0);
    for i in 0..treads {
        let tread = plan::element::Stair {
            foot: stair.foot + stair.up.step(stair.run * i),
            risers: 2,
            ..stair.clone()
        };
        let found = stretches(line, &tread.placed().corners());
        boxes(id, CutKind::Stair, found, (Len::ZERO, stair.rise * (i + 1)), pieces);
    }
}

/// The stretches within a shape: in its outline and in none of its holes.
fn within(line: Seg, shape: &Shape) -> impl Iterator<Item = (Len, Len)> {
    let mut found = stretches(line, &shape.outer);
    for hole in &shape.holes {
        found = without(found, &stretches(line, &reversed(hole)));
    }
    found.into_iter()
}

fn reversed(hole: &[Pt]) -> Ring {
    hole.iter().rev().copied().collect()
}

/// Stretches with others taken out.
fn without(found: Vec<(Len, Len)>, gone: &[(Len, Len)]) -> Vec<(Len, Len)> {
    gone.iter().fold(found, |found, (a, b)| {
        let parts =
            found.into_iter().flat_map(|(from, to)| [(from, to.min(*a)), (from.max(*b), to)]);
        parts.filter(|(from, to)| from < to).collect()
    })
}

#[cfg(test)]
mod tests {
    use plan::element::RoomUse;

    use super::*;
    use crate::derive;
    use crate::testing::Sketch;

    fn inches(pieces: &[CutPiece], id: ElementId) -> Vec<(f64, f64, f64, f64)> {
        let of = pieces.iter().filter(|p| p.element == id);
        of.map(|p| {
            let i = |l: Len| l.to_inches();
            (i(p.from), i(p.to), i(p.low), i(p.high))
        })
        .collect()
    }

    #[test]
    fn walls_are_cut_round_the_hole_of_a_door_and_whole_beside_it() {
        let mut sketch = Sketch::new();
        let shell = sketch.rectangle(240, 120);
        let wall = sketch.partition((100, 0), (100, 120));
        let door = sketch.door(wall, 30, 32);
        sketch.site(|s| s.floor_build = Len::ZERO);
        let facts = derive(&sketch.shared());
        let joists = facts.plan.site.joist_underside.to_inches();
        let line = |y| Seg::new(Pt::inches(-20, y), Pt::inches(300, y));
        let beside = cut(&facts, line(10));
        assert_eq!(inches(&beside.pieces, wall), [(118.0, 122.0, 0.0, joists)]);
        // The foundation: 8 in at either end of the 240 in.
        assert_eq!(inches(&beside.pieces, shell[3]), [(12.0, 20.0, 0.0, 96.0)]);
        assert_eq!(inches(&beside.pieces, shell[1]), [(260.0, 268.0, 0.0, 96.0)]);
        let through = cut(&facts, line(40));
        assert_eq!(inches(&through.pieces, wall), [(118.0, 122.0, 80.0, joists)]);
        assert_eq!(inches(&through.pieces, door), [(118.0, 122.0, 0.0, 80.0)]);
        let rooms: Vec<_> =
            through.rooms.iter().map(|r| (r.from.to_inches(), r.to.to_inches())).collect();
        assert_eq!(rooms, [(20.0, 118.0), (122.0, 260.0)]);
    }

    #[test]
    fn a_stair_is_cut_step_by_step_and_a_window_with_its_well() {
        use plan::element::{Opening, OpeningKind, Stair, Well, Window, WindowOperation};
        let mut sketch = Sketch::new();
        let shell = sketch.rectangle(240, 120);
        let stair = sketch.add(Body::Stair(Stair {
            foot: Pt::inches(100, 60),
            up: geometry::Facing::EAST,
            width: Len::inches(36),
            risers: 4,
            rise: Len::inches(7),
            run: Len::inches(10),
            headroom: Len::inches(80),
        }));
        let window = sketch.add(Body::Opening(Opening {
            host: shell[1],
            at: Len::inches(40),
            kind: OpeningKind::Window(Window {
                operation: WindowOperation::Casement,
                frame_width: Len::inches(36),
                frame_height: Len::inches(40),
                clear: plan::element::ClearOpening::Estimated,
                sill: Len::inches(44),
                grade: Len::inches(70),
                well: Some(Well {
                    width: Len::inches(40),
                    projection: Len::inches(36),
                    depth: Len::inches(30),
                    ladder: false,
                    ladder_projection: Len::ZERO,
                }),
            }),
        }));
        let facts = derive(&sketch.shared());
        let found = cut(&facts, Seg::new(Pt::inches(0, 60), Pt::inches(300, 60)));
        let steps =
            [(100.0, 110.0, 0.0, 7.0), (110.0, 120.0, 0.0, 14.0), (120.0, 130.0, 0.0, 21.0)];
        assert_eq!(inches(&found.pieces, stair), steps);
        // The hole, then the well outside: its floor 30 in below the grade.
        let hole = [(240.0, 248.0, 44.0, 84.0), (248.0, 284.0, 40.0, 70.0)];
        assert_eq!(inches(&found.pieces, window), hole);
        let wall = [(240.0, 248.0, 0.0, 44.0), (240.0, 248.0, 84.0, 96.0)];
        assert_eq!(inches(&found.pieces, shell[1]), wall);
    }

    #[test]
    fn a_column_and_a_desk_lie_where_the_line_meets_them() {
        let mut sketch = Sketch::new();
        sketch.rectangle(240, 120);
        sketch.tag(50, 50, RoomUse::Office);
        let column = sketch.column(60, 60);
        let desk = sketch.furnishing(200, 50, geometry::Facing::EAST, (48, 24, 29));
        let facts = derive(&sketch.shared());
        let found = cut(&facts, Seg::new(Pt::inches(0, 60), Pt::inches(240, 60)));
        let joists = facts.plan.site.joist_underside.to_inches();
        assert_eq!(inches(&found.pieces, column), [(58.0, 62.0, 0.0, joists)]);
        assert_eq!(inches(&found.pieces, desk), [(200.0, 224.0, 0.0, 29.0)]);
    }
}
