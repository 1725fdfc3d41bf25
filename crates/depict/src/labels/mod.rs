//! Placing words so that none sits on another, on a badge, on a wall or on a symbol.

mod cells;
mod placer;

use drawing::{Anchor, P, Style, TextMark, Tone, text_width};

pub(crate) use cells::overlap;
pub(crate) use placer::Placer;

/// One line of a label.
#[derive(Clone, Debug)]
pub(crate) struct Line {
    pub text: String,
    pub size: f32,
    pub style: Style,
    pub tone: Tone,
}

impl Line {
    pub fn plain(text: impl Into<String>, size: f32, tone: Tone) -> Line {
        Line { text: text.into(), size, style: Style::Plain, tone }
    }

    pub fn bold(text: impl Into<String>, size: f32, tone: Tone) -> Line {
        Line { text: text.into(), size, style: Style::Bold, tone }
    }
}

/// A place that a label may take: its middle height at `at`.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Spot {
    pub at: P,
    pub anchor: Anchor,
    /// Counter-clockwise, degrees.
    pub angle: f32,
}

impl Spot {
    pub fn new(at: P, anchor: Anchor) -> Spot {
        Spot { at, anchor, angle: 0.0 }
    }
}

/// What is left out last.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Rank {
    Room,
    Note,
    Service,
    Overhead,
    Furnishing,
    Opening,
    Detail,
}

/// Words that look for a place.
#[derive(Clone, Debug)]
pub(crate) struct Label {
    pub origin: String,
    pub rank: Rank,
    /// The element whose own symbol or box the label may cover.
    pub owner: u32,
    /// From rich to terse; each is a block of lines.
    pub forms: Vec<Vec<Line>>,
    pub spots: Vec<Spot>,
    /// A form in a spot counts only when the region (on the screen) holds all its corners.
    pub within: Option<Vec<P>>,
    /// A form wider or higher than this is passed over.
    pub most: (f32, f32),
    /// Put behind the words, where they stand on a hatch.
    pub plate: Option<Tone>,
}

impl Label {
    /// Whether some form in some spot lies within the label's region.
    pub fn can_fit(&self) -> bool {
        let Some(ring) = &self.within else { return true };
        self.forms.iter().any(|lines| {
            let size = block_size(lines);
            self.spots
                .iter()
                .any(|spot| block_corners(&size, spot, 0.0).iter().all(|p| holds(ring, *p)))
        })
    }
}

/// Any size of form.
pub(crate) const ANY_SIZE: (f32, f32) = (f32::INFINITY, f32::INFINITY);

/// No element: an obstacle to every label.
pub(crate) const NOBODY: u32 = u32::MAX;

fn block_size(lines: &[Line]) -> (f32, f32) {
    lines.iter().fold((0.0, 0.0), |(w, h), line| {
        let width = text_width(&line.text, line.size, line.style);
        (f32::max(w, width), h + line.size * TextMark::LINE)
    })
}

fn block_corners(size: &(f32, f32), spot: &Spot, air: f32) -> [P; 4] {
    let left = match spot.anchor {
        Anchor::Start => 0.0,
        Anchor::Middle => -size.0 / 2.0,
        Anchor::End => -size.0,
    } - air;
    let (right, half) = (left + size.0 + 2.0 * air, size.1 / 2.0 + air / 2.0);
    if spot.angle == 0.0 {
        return [(left, -half), (right, -half), (right, half), (left, half)]
            .map(|(x, y)| spot.at.by(x, y));
    }
    let (sin, cos) = libm::sincosf(-spot.angle.to_radians());
    [(left, -half), (right, -half), (right, half), (left, half)]
        .map(|(x, y)| spot.at.by(x * cos - y * sin, x * sin + y * cos))
}

/// Whether a ring holds a point (even-odd).
pub(crate) fn holds(ring: &[P], p: P) -> bool {
    let mut inside = false;
    for (i, a) in ring.iter().enumerate() {
        let b = ring[(i + 1) % ring.len()];
        if (a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x) {
            inside = !inside;
        }
    }
    inside
}

/// A thin box along a line, cut short by `short` points at both ends: for lines that words should avoid.
pub(crate) fn strip(a: P, b: P, short: f32) -> [P; 4] {
    let length = a.distance(b).max(0.01);
    let (ux, uy) = ((b.x - a.x) / length, (b.y - a.y) / length);
    let cut = short.min(length / 2.0);
    let (a, b) = (a.by(ux * cut, uy * cut), b.by(-ux * cut, -uy * cut));
    [a.by(uy, -ux), b.by(uy, -ux), b.by(-uy, ux), a.by(-uy, ux)]
}

/// The level box round a point.
pub(crate) fn square(centre: P, half: f32) -> [P; 4] {
    [(-half, -half), (half, -half), (half, half), (-half, half)].map(|(x, y)| centre.by(x, y))
}

/// Spots beside a symbol of half size `reach`: right, left, below, above, then the corners.
pub(crate) fn beside(centre: P, reach: f32) -> Vec<Spot> {
    let d = reach + 5.0;
    let up = reach + 8.0;
    let spot = |dx: f32, dy: f32, anchor| Spot::new(centre.by(dx, dy), anchor);
    vec![
        spot(d, 0.0, Anchor::Start),
        spot(-d, 0.0, Anchor::End),
        spot(0.0, up, Anchor::Middle),
        spot(0.0, -up, Anchor::Middle),
        spot(d * 0.8, up * 0.8, Anchor::Start),
        spot(d * 0.8, -up * 0.8, Anchor::Start),
        spot(-d * 0.8, up * 0.8, Anchor::End),
        spot(-d * 0.8, -up * 0.8, Anchor::End),
        spot(0.0, up + 12.0, Anchor::Middle),
        spot(0.0, -up - 12.0, Anchor::Middle),
    ]
}
