//! Dimensions along walls that stand at an angle: outside a foundation wall from corner to corner with its openings,
//! beside a partition its length.

use drawing::{Marks, P, Style, TextMark, Tone, text_width};
use geometry::Seg;
use measure::{Len, Precision, System};
use space::{Facts, WallFacts, WallKind};

use crate::dimension::{LINE, slashes};
use crate::plan_view::OnPaper;
use crate::strings::{apart, step};
use crate::type_set::SMALL;

/// From the face of a wall to its dimension, in points.
const OFF: f32 = 11.0;

/// Draws them; whether all figures have room.
pub(crate) fn draw(
    facts: &Facts,
    system: System,
    paper: &OnPaper,
    placed: &mut Vec<TextMark>,
    marks: &mut Marks,
) -> bool {
    let mut all = true;
    for wall in facts.walls.iter().filter(|w| is_skew(&w.line)) {
        // Outside is the right of a foundation wall; a partition has room on one side or the other.
        let faces = match wall.kind {
            WallKind::Shell => vec![wall.right],
            WallKind::Partition => vec![wall.right, Seg::new(wall.left.b, wall.left.a)],
            WallKind::Furring => continue,
        };
        let along =
            faces.into_iter().find_map(|face| along(facts, wall, face, system, paper, placed));
        let Some((points, figures)) = along else {
            all = false;
            continue;
        };
        marks.group(format!("string along {}", wall.id.0), |m| {
            if let (Some(first), Some(last)) = (points.first(), points.last()) {
                m.line(vec![*first, *last], LINE);
            }
            slashes(&points, m);
            for figure in figures {
                placed.push(figure.clone());
                m.text(figure);
            }
        });
    }
    all
}

/// The places and figures beside a face, to the right of it as the plan has it; nothing where one has no room.
fn along(
    facts: &Facts,
    wall: &WallFacts,
    face: Seg,
    system: System,
    paper: &OnPaper,
    placed: &[TextMark],
) -> Option<(Vec<P>, Vec<TextMark>)> {
    let places = places(facts, wall, face, system);
    let (a, b) = (paper.at(face.a), paper.at(face.b));
    let whole = a.distance(b).max(0.1);
    // On paper y points down.
    let (x, y) = ((b.x - a.x) / whole, (b.y - a.y) / whole);
    let out = (-y * OFF, x * OFF);
    let length = places.last().map_or(0.0, |l| l.to_inches() as f32).max(0.01);
    let at = |place: &Len| a.towards(b, place.to_inches() as f32 / length).by(out.0, out.1);
    let points: Vec<P> = places.iter().map(at).collect();
    let figures: Option<Vec<TextMark>> = places
        .windows(2)
        .zip(points.windows(2))
        .map(|(pair, ends)| {
            let text = system.len(pair[1] - pair[0], Precision::Tape);
            let room = ends[0].distance(ends[1]) - text_width(&text, SMALL, Style::Plain);
            let mark = figure(ends[0].towards(ends[1], 0.5), (x, y), out, text);
            (room >= 3.0 && placed.iter().all(|other| apart(&mark, other))).then_some(mark)
        })
        .collect();
    Some((points, figures?))
}

fn is_skew(line: &Seg) -> bool {
    let d = line.dir();
    d.x != 0 && d.y != 0
}

/// Ends and jambs along a face, rounded once to what is written.
fn places(facts: &Facts, wall: &WallFacts, face: Seg, system: System) -> Vec<Len> {
    let along = |p: geometry::Pt| {
        let far = (p - face.a).dot(face.dir()) as f64 / face.dir().norm();
        Len::from_units(far.round() as i32).clamp(Len::ZERO, face.len())
    };
    let jambs = facts.openings.iter().filter(|o| o.host == wall.id);
    let mut places: Vec<Len> = jambs
        .flat_map(|o| [o.line.a, o.line.b])
        .map(along)
        .chain([Len::ZERO, face.len()])
        .map(|l| l.round_to(step(system)))
        .collect();
    places.sort_unstable();
    places.dedup();
    places
}

/// A figure beyond its line, never upside down.
fn figure(middle: P, (x, y): (f32, f32), out: (f32, f32), text: String) -> TextMark {
    let angle = libm::atan2f(-y, x).to_degrees();
    let angle = if angle > 90.0 {
        angle - 180.0
    } else if angle <= -90.0 {
        angle + 180.0
    } else {
        angle
    };
    let at = middle.by(out.0 / OFF * 6.0, out.1 / OFF * 6.0);
    TextMark::new(at, text, SMALL, Tone::Ink).angle(angle)
}
