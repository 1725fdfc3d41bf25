//! A section through the whole building along each section line.

use drawing::{Marks, P, Slope, Stroke, Style, Tone, hatch};
use measure::{Len, Precision};
use plan::element::SectionLine;
use plan::{Body, Element, State};
use space::{Cut, CutKind, CutPiece, CutRoom, WallKind};

use super::{Context, Kind, Made};
use crate::dimension::between;
use crate::fabric::{Frame, JOIST, SLAB, concrete};
use crate::labels::Labels;
use crate::paper::Area;
use crate::plan_view::caption;
use crate::scale::{Of, Scale};
use crate::strings;
use crate::type_set::{BODY, SMALL};

pub(crate) const KIND: Kind = Kind {
    slug: "building-section",
    title: "Building sections",
    discipline: "A",
    first: 201,
    make,
};

/// Left and right of the drawing for heights, above it, and below it for strings and the caption, in points.
const BESIDE: f32 = 70.0;
const ABOVE: f32 = 20.0;
const BELOW: f32 = 78.0;

fn make(context: &Context<'_>) -> Made {
    let plan = context.source.plan();
    if plan.section_lines().next().is_none() {
        let why = "no section line is drawn; the tool \"Section line\" draws one";
        return Made::Nothing(why.to_owned());
    }
    let cuts: Vec<Through> = plan
        .section_lines()
        .filter_map(|(element, line, letter)| Through::of(context, element, line, letter))
        .collect();
    let widest = cuts.iter().map(Through::width).max();
    let highest = cuts.iter().map(|t| t.top + SLAB).max();
    let (Some(width), Some(height)) = (widest, highest) else {
        return Made::Nothing("no section line crosses a wall".to_owned());
    };
    // All at one scale, as many below each other as the sheet holds.
    let area = context.area;
    let room = (area.width() - 2.0 * BESIDE, area.height() - ABOVE - BELOW);
    let scale = Scale::of(Of::Building, context.system, (width, height), room);
    let each = scale.points(height) + ABOVE + BELOW;
    let rows = ((area.height() / each).floor() as usize).max(1);
    let pages = cuts.chunks(rows).map(|cuts| {
        let mut marks = Marks::new();
        let free = (area.height() - each * cuts.len() as f32) / 2.0;
        for (i, through) in cuts.iter().enumerate() {
            let top = area.top + free.max(0.0) + each * i as f32;
            let slot = Area { top, bottom: top + each, ..area };
            marks.group(through.element.name(), |m| one(context, through, scale, slot, m));
        }
        (marks, Some(scale.word))
    });
    Made::Drawn(pages.collect())
}

/// What one section line cuts.
struct Through<'a> {
    element: &'a Element,
    letter: String,
    cut: Cut,
    /// The outer faces of the outermost walls.
    walls: (Len, Len),
    /// The ends of all that is cut; wells stand out beyond the walls.
    ends: (Len, Len),
    top: Len,
}

impl<'a> Through<'a> {
    fn of(
        context: &Context<'_>,
        element: &'a Element,
        line: &SectionLine,
        letter: String,
    ) -> Option<Through<'a>> {
        let facts = context.source.facts;
        let cut = space::cut(facts, line.line());
        let walls = || cut.pieces.iter().filter(|p| matches!(p.kind, CutKind::Wall(_)));
        let (from, to) = (walls().map(|p| p.from).min()?, walls().map(|p| p.to).max()?);
        let ends = cut.pieces.iter().fold((from, to), |(a, b), p| (a.min(p.from), b.max(p.to)));
        let top = (facts.plan.site.joist_underside + JOIST).max(walls().map(|p| p.high).max()?);
        Some(Through { element, letter, walls: (from, to), ends, top, cut })
    }

    fn width(&self) -> Len {
        self.ends.1 - self.ends.0
    }
}

fn ring_of(f: &Frame, piece: &CutPiece) -> Vec<P> {
    f.ring((piece.from, piece.to), (piece.low, piece.high))
}

fn middle_of(f: &Frame, piece: &CutPiece) -> P {
    f.at(piece.from + (piece.to - piece.from) / 2, piece.low + (piece.high - piece.low) / 2)
}

fn one(context: &Context<'_>, through: &Through<'_>, scale: Scale, slot: Area, m: &mut Marks) {
    let left = (slot.left + slot.right - scale.points(through.width())) / 2.0;
    let origin = P::new(left, slot.top + ABOVE + scale.points(through.top));
    let f = Frame { origin, scale, start: through.ends.0 };
    let mut labels = Labels::default();
    fabric(context, &f, through.walls, m);
    for piece in &through.cut.pieces {
        draw(context, &f, piece, m);
        if !matches!(piece.kind, CutKind::Well | CutKind::Stair | CutKind::Furnishing) {
            labels.block(&ring_of(&f, piece));
        }
    }
    for room in &through.cut.rooms {
        finishes(context, &f, room, m);
    }
    heights(context, &f, through, m);
    labels.beside(m);
    words(context, &f, through, &mut labels, m);
    let low = f.at(through.walls.0, Len::ZERO - SLAB).y;
    dimension(context, &f, &through.cut, low, m);
    let name = format!("Section {0}-{0}", through.letter);
    let middle = f.at(through.ends.0 + through.width() / 2, Len::ZERO).x;
    caption(m, &name, Some(scale), P::new(middle, low + 52.0));
}

/// Slab and joists.
fn fabric(context: &Context<'_>, f: &Frame, (from, to): (Len, Len), m: &mut Marks) {
    let joists = context.source.plan().site.joist_underside;
    concrete(f.ring((from, to), (Len::ZERO - SLAB, Len::ZERO)), f.origin, m);
    m.outline(f.ring((from, to), (joists, joists + JOIST)), Stroke::solid(Tone::Ink, 0.5));
}

fn draw(context: &Context<'_>, f: &Frame, piece: &CutPiece, m: &mut Marks) {
    let ring = ring_of(f, piece);
    let new = context.source.plan().get(piece.element).is_some_and(|e| e.state == State::New);
    let (thin, soft) = (Stroke::solid(Tone::Ink, 0.5), Stroke::solid(Tone::SoftInk, 0.5));
    let crossed = |m: &mut Marks| m.segments(vec![(ring[0], ring[2]), (ring[1], ring[3])], soft);
    match piece.kind {
        CutKind::Wall(WallKind::Shell) => m.fill(ring, Tone::Shell),
        CutKind::Wall(_) => {
            if new {
                let lines = hatch(&[&ring], Slope::Rising, 3.0, f.origin);
                m.segments(lines, Stroke::solid(Tone::New, 0.4));
            }
            m.outline(ring, Stroke::solid(Tone::Ink, 0.9));
        }
        CutKind::Opening => {
            let (low, high) = (ring[0].towards(ring[1], 0.5), ring[3].towards(ring[2], 0.5));
            m.segments(vec![(low, high)], thin);
            m.outline(ring, thin);
        }
        CutKind::Well => {
            m.line(vec![ring[3], ring[0], ring[1], ring[2]], Stroke::solid(Tone::Ink, 1.2))
        }
        CutKind::Column => m.outline(ring, Stroke::solid(Tone::Ink, 0.9)),
        CutKind::Stair => m.outline(ring, thin),
        CutKind::Overhead(_) => {
            crossed(m);
            m.outline(ring, Stroke::solid(Tone::Ink, 0.9));
        }
        CutKind::Furnishing => m.outline(ring, Stroke::dashed(Tone::SoftInk, 0.5, 4.0, 2.0)),
    }
}

/// The finished floor and ceiling of a room.
fn finishes(context: &Context<'_>, f: &Frame, room: &CutRoom, m: &mut Marks) {
    let site = &context.source.plan().site;
    let thin = Stroke::solid(Tone::Ink, 0.6);
    let level = |up: Len| (f.at(room.from, up), f.at(room.to, up));
    if site.ceiling.drop() > Len::ZERO {
        m.segments(vec![level(site.joist_underside - site.ceiling.drop())], thin);
    }
    if site.floor_build > Len::ZERO {
        m.segments(vec![level(site.floor_build)], thin);
    }
}

/// What stands in the section: rooms with their heights, what hangs, what is open.
fn words(
    context: &Context<'_>,
    f: &Frame,
    through: &Through<'_>,
    labels: &mut Labels,
    m: &mut Marks,
) {
    let (facts, system) = (context.source.facts, context.system);
    let site = &facts.plan.site;
    let plain = |text: String| (text, SMALL, Style::Plain);
    let say = |len| system.len(len, Precision::Floor);
    for room in &through.cut.rooms {
        let of = facts.room(room.room);
        let lowest = space::lowest_over(facts, of, &through.cut, room.from, room.to);
        let high = site.ceiling_height();
        let mut lines =
            vec![(of.name.clone(), BODY, Style::Bold), plain(format!("ceiling {}", say(high)))];
        if lowest < high {
            lines.push(plain(format!("least {}", say(lowest))));
        }
        let middle = f.at(room.from + (room.to - room.from) / 2, site.joist_underside / 2);
        let spots = (0..10).flat_map(|i| {
            let step = i as f32 * 8.0;
            [middle.by(0.0, step), middle.by(0.0, -step), middle.by(step * 2.0, step)]
        });
        labels.write(&lines, middle, spots, m);
    }
    for piece in &through.cut.pieces {
        let text = match piece.kind {
            CutKind::Overhead(kind) => {
                format!("{} {} clear", kind.word(), say(piece.low - site.floor_build))
            }
            CutKind::Opening | CutKind::Furnishing | CutKind::Column => named(context, piece),
            CutKind::Well => "well".to_owned(),
            CutKind::Wall(_) | CutKind::Stair => continue,
        };
        let (about, spots) = spots_for(f, piece);
        labels.write(&[plain(text)], about, spots, m);
    }
    let joists = f.at(
        through.walls.0 + (through.walls.1 - through.walls.0) / 2,
        site.joist_underside + JOIST / 2,
    );
    let depth = plain("floor joists, existing (depth not measured)".to_owned());
    labels.write(&[depth], joists, [joists], m);
}

/// Where the words for a piece may stand: under what hangs, beside an opening, over the rest; then further off.
fn spots_for(f: &Frame, piece: &CutPiece) -> (P, Vec<P>) {
    let middle = middle_of(f, piece);
    let (left, right) = (f.at(piece.from, piece.low), f.at(piece.to, piece.high));
    let about = match piece.kind {
        CutKind::Overhead(_) => P::new(middle.x, left.y + 8.0),
        CutKind::Opening | CutKind::Column => P::new(right.x + 12.0, middle.y),
        _ => P::new(middle.x, right.y - 7.0),
    };
    let mirrored = P::new(left.x - 12.0, middle.y);
    let beside = matches!(piece.kind, CutKind::Opening | CutKind::Column);
    let mut spots = vec![about];
    spots.extend(beside.then_some(mirrored));
    for i in 0..10 {
        let down = i as f32 * 9.0;
        for aside in [0.0, 26.0, -26.0, 52.0, -52.0] {
            spots.push(about.by(aside, down));
            spots.push(about.by(aside, -down));
        }
    }
    (about, spots)
}

/// The name of an element, with what it is where that is short.
fn named(context: &Context<'_>, piece: &CutPiece) -> String {
    let Some(element) = context.source.plan().get(piece.element) else { return String::new() };
    match &element.body {
        Body::Opening(_) => element.name(),
        body => body.word().to_owned(),
    }
}

/// From the slab to the joists on the left, from floor to ceiling on the right, the sill of each window inside.
fn heights(context: &Context<'_>, f: &Frame, through: &Through<'_>, m: &mut Marks) {
    let site = &context.source.plan().site;
    let say = |l| context.system.len(l, Precision::Tape);
    let at = |along: Len, up: Len, by: f32| f.at(along, up).by(by, 0.0);
    let (left, right) = through.ends;
    let joists = site.joist_underside;
    between(at(left, Len::ZERO, -24.0), at(left, joists, -24.0), &say(joists), m);
    let ceiling = joists - site.ceiling.drop();
    let clear = context.system.len(site.ceiling_height(), Precision::Floor);
    between(at(right, site.floor_build, 30.0), at(right, ceiling, 30.0), &clear, m);
    let windows = through
        .cut
        .pieces
        .iter()
        .filter(|p| p.kind == CutKind::Opening && p.low > site.floor_build);
    for window in windows {
        let inside = through.cut.rooms.iter().find_map(|r| match (r.from, r.to) {
            (from, _) if from == window.to => Some((from, 16.0)),
            (_, to) if to == window.from => Some((to, -10.0)),
            _ => None,
        });
        if let Some((along, by)) = inside {
            let sill = say(window.low - site.floor_build);
            between(at(along, site.floor_build, by), at(along, window.low, by), &sill, m);
        }
    }
}

/// Faces of the walls below, then the whole.
fn dimension(context: &Context<'_>, f: &Frame, cut: &Cut, low: f32, m: &mut Marks) {
    let walls = || cut.pieces.iter().filter(|p| matches!(p.kind, CutKind::Wall(_)));
    let mut placed = Vec::new();
    let all: Vec<Len> = walls().flat_map(|p| [p.from, p.to]).collect();
    let (Some(first), Some(last)) = (all.iter().min().copied(), all.iter().max().copied()) else {
        return;
    };
    for (row, places) in [all, vec![first, last]].into_iter().enumerate() {
        let string = strings::below(&places, context.system);
        let y = low + 18.0 + 18.0 * row as f32;
        let place = |at: Len| P::new(f.at(first + at, Len::ZERO).x, y);
        if strings::legible(&string, context.system, place) {
            m.group(format!("string South {row}"), |m| {
                strings::one(&string, context.system, place, &mut placed, m);
            });
        }
    }
}
