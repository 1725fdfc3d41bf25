//! Strings of dimensions round a plan: nearest the openings, then the partitions, then the whole.
//!
//! A string runs from one outer corner of the foundation to the other, so that its figures add up: every place is
//! rounded once to what is written, and the figures are differences of rounded places.

use drawing::{Marks, P, Stroke, Style, TextMark, Tone, text_width};
use geometry::{Bounds, Pt, Seg};
use measure::{Len, Precision, System};
use space::{Facts, WallFacts, WallKind};

use crate::dimension::{LINE, slashes};
use crate::plan_view::OnPaper;
use crate::skew;
use crate::type_set::SMALL;

/// From the plan to the first string, from one to the next, and from the last to what stands beyond.
const FIRST: f32 = 20.0;
const STEP: f32 = 20.0;
const LAST: f32 = 18.0;
/// Where there is no string.
const NONE: f32 = 6.0;

/// A side of the drawing.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Edge {
    South,
    East,
    North,
    West,
}

/// One string: rounded places along its side, in order, from corner to corner.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct DimensionString {
    pub edge: Edge,
    /// Counted from the plan outwards.
    pub row: usize,
    pub places: Vec<Len>,
}

/// What is written to the nearest of this.
pub(crate) fn step(system: System) -> Len {
    match system {
        System::Imperial => Len::sixty_fourths(4),
        System::Metric => Len::from_units(320),
    }
}

/// The box round the foundation, its thickness included.
pub(crate) fn house(facts: &Facts) -> Bounds {
    let shell = facts.walls.iter().filter(|w| w.kind == WallKind::Shell);
    shell.fold(Bounds::EMPTY, |all, w| all.union(Bounds::of(&w.outline)))
}

/// The strings of a plan along its axes; what stands at an angle has its own beside it ([`crate::skew`]).
pub(crate) fn strings(facts: &Facts, system: System) -> Vec<DimensionString> {
    let shell = || facts.walls.iter().filter(|w| w.kind == WallKind::Shell);
    let all = house(facts);
    if all.is_empty() {
        return Vec::new();
    }
    let mut strings = Vec::new();
    for edge in [Edge::South, Edge::East, Edge::North, Edge::West] {
        let along = |p: Pt| if matches!(edge, Edge::South | Edge::North) { p.x } else { p.y };
        let across = |p: Pt| if matches!(edge, Edge::South | Edge::North) { p.y } else { p.x };
        let (from, to) = (along(all.min), along(all.max));
        let middle = i32::midpoint(across(all.min), across(all.max));
        let near = |p: Pt| match edge {
            Edge::South | Edge::West => across(p) <= middle,
            Edge::North | Edge::East => across(p) > middle,
        };
        let of_edge = |w: &&WallFacts| faces(&w.line, edge);
        let mut openings: Vec<i32> = shell()
            .filter(of_edge)
            .flat_map(|w| {
                let jambs = facts.openings.iter().filter(move |o| o.host == w.id);
                jambs.flat_map(|o| [o.line.a, o.line.b]).chain([w.right.a, w.right.b])
            })
            .map(along)
            .collect();
        let crossing = |w: &&WallFacts| {
            w.kind == WallKind::Partition
                && across(w.line.a) != across(w.line.b)
                && along(w.line.a) == along(w.line.b)
                && near(w.line.a.midway(w.line.b))
        };
        let mut partitions: Vec<i32> =
            facts.walls.iter().filter(crossing).map(|w| along(middle_of(w))).collect();
        let ends = [from, to];
        openings.extend(ends);
        partitions.extend(ends);
        let inner = [openings, partitions].map(|places| rounded(&places, from, system));
        let rows = inner.into_iter().filter(|places| places.len() > 2);
        let whole = rounded(&ends, from, system);
        for (row, places) in rows.chain([whole]).enumerate() {
            strings.push(DimensionString { edge, row, places });
        }
    }
    strings
}

/// The room that strings take on the left, at the top, on the right and at the bottom, in points.
pub(crate) fn depths(strings: &[DimensionString]) -> [f32; 4] {
    [Edge::West, Edge::North, Edge::East, Edge::South].map(|edge| {
        let rows = strings.iter().filter(|s| s.edge == edge).map(|s| s.row).max();
        rows.map_or(NONE, |row| FIRST + STEP * row as f32 + LAST)
    })
}

/// Whether a shell wall, which has the slab on its left, has its outer face on a side.
fn faces(line: &Seg, edge: Edge) -> bool {
    let d = line.dir();
    match edge {
        Edge::South => d.y == 0 && d.x > 0,
        Edge::East => d.x == 0 && d.y > 0,
        Edge::North => d.y == 0 && d.x < 0,
        Edge::West => d.x == 0 && d.y < 0,
    }
}

/// A point of the wall's centre line.
fn middle_of(wall: &WallFacts) -> Pt {
    wall.left.a.midway(wall.right.a)
}

fn rounded(places: &[i32], from: i32, system: System) -> Vec<Len> {
    let round = |p: &i32| Len::from_units(p - from).round_to(step(system));
    let mut all: Vec<Len> = places.iter().map(round).collect();
    all.sort_unstable();
    all.dedup();
    all
}

/// Draws the strings; whether all were. One whose figures have no room at this scale is left out.
pub(crate) fn draw(
    facts: &Facts,
    strings: &[DimensionString],
    system: System,
    paper: &OnPaper,
    marks: &mut Marks,
) -> bool {
    let all = house(facts);
    let outer = depict::extent(facts);
    // No figure lies on a word of the plan either.
    let mut all_written = true;
    let mut placed: Vec<TextMark> = marks.texts().cloned().collect();
    for string in strings {
        let out = FIRST + STEP * string.row as f32;
        let (low, high) = (paper.at(outer.min), paper.at(outer.max));
        let place = |at: Len| {
            let (x, y) = (all.min.x + at.units(), all.min.y + at.units());
            match string.edge {
                Edge::South => P::new(paper.at(Pt::new(x, 0)).x, low.y + out),
                Edge::North => P::new(paper.at(Pt::new(x, 0)).x, high.y - out),
                Edge::West => P::new(low.x - out, paper.at(Pt::new(0, y)).y),
                Edge::East => P::new(high.x + out, paper.at(Pt::new(0, y)).y),
            }
        };
        if !legible(string, system, place) {
            all_written = false;
            continue;
        }
        marks.group(format!("string {:?} {}", string.edge, string.row), |m| {
            one(string, system, place, &mut placed, m);
        });
    }
    skew::draw(facts, system, paper, &mut placed, marks) && all_written
}

/// A string below a drawing: places rounded once, from the first of them.
pub(crate) fn below(places: &[Len], system: System) -> DimensionString {
    let from = places.iter().min().map_or(0, |p| p.units());
    let units: Vec<i32> = places.iter().map(|p| p.units()).collect();
    DimensionString { edge: Edge::South, row: 0, places: rounded(&units, from, system) }
}

/// Whether the figures of a string have room in two rows along it.
pub(crate) fn legible(string: &DimensionString, system: System, place: impl Fn(Len) -> P) -> bool {
    let (Some(first), Some(last)) = (string.places.first(), string.places.last()) else {
        return false;
    };
    let width = |pair: &[Len]| {
        text_width(&system.len(pair[1] - pair[0], Precision::Tape), SMALL, Style::Plain) + 3.0
    };
    let figures: f32 = string.places.windows(2).map(width).sum();
    figures <= 2.0 * place(*first).distance(place(*last))
}

/// Draws one string; no figure lies on a text of `placed`, which grows by them.
pub(crate) fn one(
    string: &DimensionString,
    system: System,
    place: impl Fn(Len) -> P,
    placed: &mut Vec<TextMark>,
    m: &mut Marks,
) {
    let level = matches!(string.edge, Edge::South | Edge::North);
    let points: Vec<P> = string.places.iter().map(|p| place(*p)).collect();
    let (Some(first), Some(last)) = (points.first(), points.last()) else { return };
    m.line(vec![*first, *last], LINE);
    // At each place a short line that points to it.
    let towards = match string.edge {
        Edge::South => (0.0, -1.0),
        Edge::North => (0.0, 1.0),
        Edge::West => (1.0, 0.0),
        Edge::East => (-1.0, 0.0),
    };
    slashes(&points, m);
    let pointer =
        |p: &P| (p.by(-towards.0 * 3.0, -towards.1 * 3.0), p.by(towards.0 * 8.0, towards.1 * 8.0));
    m.segments(points.iter().map(pointer).collect(), LINE);
    for (pair, at) in string.places.windows(2).zip(points.windows(2)) {
        let text = system.len(pair[1] - pair[0], Precision::Tape);
        let base = at[0].towards(at[1], 0.5);
        let wide = at[0].distance(at[1]) >= text_width(&text, SMALL, Style::Plain) + 3.0;
        let mark = |row: f32, shift: f32| {
            let mark = TextMark::new(base, text.clone(), SMALL, Tone::Ink);
            match level {
                true => TextMark { at: base.by(shift, row), ..mark },
                false => TextMark { at: base.by(row, shift), angle: 90.0, ..mark },
            }
        };
        let free = |mark: &TextMark| placed.iter().all(|other| apart(mark, other));
        let mut spots = spots(wide).map(|(row, shift)| mark(row, shift));
        let first = spots.next().unwrap_or_else(|| mark(OVER, 0.0));
        let mark = if free(&first) { first } else { spots.find(free).unwrap_or(first) };
        placed.push(mark.clone());
        // One that moved far is tied to its stretch.
        if mark.at.distance(base) > 16.0 {
            m.line(vec![base, mark.at], Stroke::solid(Tone::SoftInk, 0.3));
        }
        m.text(mark);
    }
}

/// Over the line, further out, below it.
const OVER: f32 = -5.5;
const OUT: f32 = -13.0;
const UNDER: f32 = 5.5;

/// Where a figure may stand beside the middle of its stretch: over the line where it is wide enough; else further
/// from it; crowded ones move along.
fn spots(wide: bool) -> impl Iterator<Item = (f32, f32)> {
    let rows = if wide { [OVER, UNDER, OUT] } else { [OUT, UNDER, OVER] };
    let shifts = (0..80).flat_map(|n| {
        let by = 4.0 * n as f32;
        [by, -by]
    });
    shifts.flat_map(move |shift| rows.map(|row| (row, shift)))
}

/// Whether two texts, level or upright, don't touch.
pub(crate) fn apart(a: &TextMark, b: &TextMark) -> bool {
    let span = |t: &TextMark| {
        let corners = t.corners();
        let of = |v: fn(&P) -> f32| {
            corners.iter().map(v).fold((f32::MAX, f32::MIN), |(l, h), x| (l.min(x), h.max(x)))
        };
        (of(|p| p.x), of(|p| p.y))
    };
    let ((ax, ay), (bx, by)) = (span(a), span(b));
    ax.1 <= bx.0 || bx.1 <= ax.0 || ay.1 <= by.0 || by.1 <= ay.0
}
