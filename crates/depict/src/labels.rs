//! Placing words so that none sits on another, on a badge, on a wall or on a symbol.
//!
//! Greedy: labels are taken by rank, each tries its spots in order, the rich form before the terse one.
//! What finds no place is left out. The result depends on nothing but the input order.

use drawing::{Anchor, Marks, P, Style, TextMark, Tone, text_width};

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

/// Space kept round a label, in points.
const AIR: f32 = 2.0;

/// A convex quadrilateral with its owner.
#[derive(Clone, Copy, Debug)]
struct Obstacle {
    quad: [P; 4],
    /// The level box round it: a quick test before the exact one.
    low: P,
    high: P,
    /// It is that box.
    level: bool,
    owner: u32,
}

impl Obstacle {
    fn new(quad: [P; 4], owner: u32) -> Obstacle {
        let (low, high) = level_box(&quad);
        Obstacle { quad, low, high, level: is_level(&quad), owner }
    }
}

/// Whether every side is level or upright.
fn is_level(quad: &[P; 4]) -> bool {
    (0..4).all(|i| {
        let (p, q) = (quad[i], quad[(i + 1) % 4]);
        p.x == q.x || p.y == q.y
    })
}

fn level_box(quad: &[P; 4]) -> (P, P) {
    let (mut low, mut high) = (quad[0], quad[0]);
    for p in &quad[1..] {
        low = P::new(low.x.min(p.x), low.y.min(p.y));
        high = P::new(high.x.max(p.x), high.y.max(p.y));
    }
    (low, high)
}

/// Where words may not go.
#[derive(Clone, Debug)]
pub(crate) struct Placer {
    hard: Cells,
    soft: Cells,
    size: (f32, f32),
}

impl Placer {
    pub fn new(size: (f32, f32)) -> Placer {
        Placer { hard: Cells::new(size), soft: Cells::new(size), size }
    }

    /// Nothing may be written here (except by the owner).
    pub fn block(&mut self, quad: [P; 4], owner: u32) {
        self.hard.put(Obstacle::new(quad, owner));
    }

    /// Better not to write here.
    pub fn avoid(&mut self, quad: [P; 4], owner: u32) {
        self.soft.put(Obstacle::new(quad, owner));
    }

    /// Whether nothing blocks a region; then it is taken.
    pub fn take(&mut self, quad: [P; 4], owner: u32) -> bool {
        let free = self.hard.free(&quad, owner);
        if free {
            self.block(quad, NOBODY);
        }
        free
    }

    /// The same, and nothing says that it would better be left free.
    pub fn take_clear(&mut self, quad: [P; 4], owner: u32) -> bool {
        self.soft.free(&quad, owner) && self.take(quad, owner)
    }

    /// Whether nothing blocks a region; it is not taken.
    pub fn is_free(&self, quad: &[P; 4], owner: u32) -> bool {
        self.hard.free(quad, owner)
    }

    /// Places labels by rank and writes those that found a place.
    pub fn write(&mut self, mut labels: Vec<Label>, marks: &mut Marks) {
        labels.sort_by_key(|label| label.rank);
        for label in &labels {
            if let Some((form, spot)) = self.find(label) {
                let quad = block_corners(&form.size, &spot, AIR);
                self.block(quad, NOBODY);
                marks.group(label.origin.as_str(), |m| form.write(label, &spot, m));
            }
        }
    }

    fn find(&self, label: &Label) -> Option<(Form, Spot)> {
        // A form that crosses something it should avoid waits for a terser one that does not.
        let mut second_best = None;
        for (index, lines) in label.forms.iter().enumerate() {
            let form = Form { index, size: block_size(lines) };
            if form.size.0 > label.most.0 || form.size.1 > label.most.1 {
                continue;
            }
            for spot in &label.spots {
                let quad = block_corners(&form.size, spot, 0.0);
                let on_screen = quad
                    .iter()
                    .all(|p| p.x >= 0.0 && p.y >= 0.0 && p.x <= self.size.0 && p.y <= self.size.1);
                let inside =
                    label.within.as_ref().is_none_or(|ring| quad.iter().all(|p| holds(ring, *p)));
                if !on_screen || !inside || !self.hard.free(&quad, label.owner) {
                    continue;
                }
                if self.soft.free(&quad, label.owner) {
                    return Some((form, *spot));
                }
                second_best.get_or_insert((form, *spot));
            }
        }
        second_best
    }
}

/// One of a label's forms with its width and height.
#[derive(Clone, Copy)]
struct Form {
    index: usize,
    size: (f32, f32),
}

impl Form {
    fn write(&self, label: &Label, spot: &Spot, marks: &mut Marks) {
        let (sin, cos) = libm::sincosf(-spot.angle.to_radians());
        let mut y = -self.size.1 / 2.0;
        for line in &label.forms[self.index] {
            let height = line.size * TextMark::LINE;
            let middle = y + height / 2.0;
            y += height;
            let at = spot.at.by(-middle * sin, middle * cos);
            let mut text =
                TextMark::new(at, line.text.clone(), line.size, line.tone).anchor(spot.anchor);
            text.style = line.style;
            text.angle = spot.angle;
            text.plate = label.plate;
            marks.text(text);
        }
    }
}

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
fn holds(ring: &[P], p: P) -> bool {
    let mut inside = false;
    for (i, a) in ring.iter().enumerate() {
        let b = ring[(i + 1) % ring.len()];
        if (a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x) {
            inside = !inside;
        }
    }
    inside
}

/// Obstacles by square cells of the screen.
#[derive(Clone, Debug)]
struct Cells {
    all: Vec<Obstacle>,
    cells: Vec<Vec<Entry>>,
    columns: usize,
    rows: usize,
}

/// An obstacle in a cell; the box is kept here since most tests end with it.
#[derive(Clone, Copy, Debug)]
struct Entry {
    low: P,
    high: P,
    index: u32,
}

/// Side of a cell in points.
const CELL: f32 = 48.0;

impl Cells {
    fn new(size: (f32, f32)) -> Cells {
        let count = |v: f32| ((v / CELL).ceil().clamp(1.0, 256.0)) as usize;
        let (columns, rows) = (count(size.0), count(size.1));
        Cells { all: Vec::new(), cells: vec![Vec::new(); columns * rows], columns, rows }
    }

    /// The cells that the box round a region meets; what lies off the screen counts for the border cells.
    fn reach(&self, low: P, high: P) -> impl Iterator<Item = usize> + use<> {
        let cell = |v: f32, n: usize| ((v / CELL).clamp(0.0, (n - 1) as f32)) as usize;
        let columns = self.columns;
        let (c0, c1) = (cell(low.x, columns), cell(high.x, columns));
        let (r0, r1) = (cell(low.y, self.rows), cell(high.y, self.rows));
        (r0..=r1).flat_map(move |r| (c0..=c1).map(move |c| r * columns + c))
    }

    fn put(&mut self, obstacle: Obstacle) {
        if obstacle.quad.iter().any(|p| !(p.x.is_finite() && p.y.is_finite())) {
            return;
        }
        let index = self.all.len() as u32;
        for cell in self.reach(obstacle.low, obstacle.high) {
            self.cells[cell].push(Entry { low: obstacle.low, high: obstacle.high, index });
        }
        self.all.push(obstacle);
    }

    fn free(&self, quad: &[P; 4], owner: u32) -> bool {
        let (low, high) = level_box(quad);
        let level = is_level(quad);
        self.reach(low, high).all(|cell| {
            self.cells[cell].iter().all(|entry| {
                let apart = entry.high.x <= low.x + HAIR
                    || entry.low.x >= high.x - HAIR
                    || entry.high.y <= low.y + HAIR
                    || entry.low.y >= high.y - HAIR;
                apart || {
                    let other = &self.all[entry.index as usize];
                    let own = other.owner == owner && owner != NOBODY;
                    own || !((level && other.level) || overlap(quad, &other.quad))
                }
            })
        })
    }
}

/// Regions that share no more than this, in points, only touch.
const HAIR: f32 = 0.02;

/// Whether two convex quadrilaterals have more than a hair in common: a separating axis is sought among
/// the normals of their edges.
pub(crate) fn overlap(a: &[P; 4], b: &[P; 4]) -> bool {
    let separated_by = |of: &[P; 4]| {
        (0..4).any(|i| {
            let (p, q) = (of[i], of[(i + 1) % 4]);
            let (nx, ny) = (q.y - p.y, p.x - q.x);
            if nx == 0.0 && ny == 0.0 {
                return false;
            }
            let reach = |ring: &[P; 4]| {
                ring.iter()
                    .map(|p| p.x * nx + p.y * ny)
                    .fold((f32::INFINITY, f32::NEG_INFINITY), |(low, high), d| {
                        (low.min(d), high.max(d))
                    })
            };
            let ((a0, a1), (b0, b1)) = (reach(a), reach(b));
            let hair = HAIR * (nx * nx + ny * ny).sqrt();
            a1 <= b0 + hair || b1 <= a0 + hair
        })
    };
    !separated_by(a) && !separated_by(b)
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

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn label(text: &str, rank: Rank, x: f32, y: f32) -> Label {
        Label {
            origin: text.into(),
            rank,
            owner: NOBODY,
            forms: vec![vec![Line::plain(text, 10.0, Tone::Ink)]],
            spots: beside(P::new(x, y), 4.0),
            within: None,
            most: ANY_SIZE,
            plate: None,
        }
    }

    #[test]
    fn the_more_important_word_keeps_its_first_spot() {
        let mut placer = Placer::new((400.0, 300.0));
        let mut marks = Marks::new();
        let labels = vec![
            label("opening", Rank::Opening, 100.0, 100.0),
            label("room", Rank::Room, 100.0, 100.0),
        ];
        placer.write(labels, &mut marks);
        let texts: Vec<_> = marks.texts().map(|t| (t.text.as_str(), t.anchor)).collect();
        assert_eq!(texts, [("room", Anchor::Start), ("opening", Anchor::End)]);
    }

    #[test]
    fn a_word_without_a_place_is_left_out_or_said_shorter() {
        let mut placer = Placer::new((400.0, 300.0));
        placer.block(square(P::new(100.0, 100.0), 60.0), 7);
        let mut marks = Marks::new();
        let mut own = label("own", Rank::Service, 100.0, 100.0);
        own.owner = 7;
        placer.write(vec![label("foreign", Rank::Room, 100.0, 100.0), own], &mut marks);
        assert_eq!(marks.origins().collect::<Vec<_>>(), ["own"]);

        let mut terse = label("a very long name of a room", Rank::Room, 350.0, 200.0);
        terse.spots.truncate(1);
        terse.forms.push(vec![Line::plain("a", 10.0, Tone::Ink)]);
        let mut marks = Marks::new();
        placer.write(vec![terse], &mut marks);
        assert_eq!(marks.texts().next().map(|t| t.text.as_str()), Some("a"));
    }

    proptest! {
        #[test]
        fn no_two_words_overlap(
            at in proptest::collection::vec((0f32..600.0, 0f32..400.0, 0f32..180.0), 1..120),
        ) {
            let mut placer = Placer::new((600.0, 400.0));
            let labels = at.iter().enumerate().map(|(i, (x, y, angle))| {
                let mut l = label(&"word ".repeat(1 + i % 4), Rank::Service, *x, *y);
                for spot in &mut l.spots {
                    spot.angle = *angle;
                }
                l
            });
            let mut marks = Marks::new();
            placer.write(labels.collect(), &mut marks);
            let boxes: Vec<_> = marks.texts().map(TextMark::corners).collect();
            prop_assert!(!boxes.is_empty() || at.len() < 4);
            for (i, a) in boxes.iter().enumerate() {
                for b in &boxes[..i] {
                    prop_assert!(!overlap(a, b));
                }
            }
        }
    }
}
