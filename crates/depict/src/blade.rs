//! The tape blade: every live measurement is a piece of steel tape.

use drawing::{Marks, P, Stroke, Style, TextMark, Tone, size, text_width};
use geometry::Pt;
use measure::{Len, Precision, System};

use crate::View;
use crate::labels::{NOBODY, Placer, overlap};

/// A live measurement.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Blade<'a> {
    pub from: Pt,
    pub to: Pt,
    /// What the figure says; the blade spans `from` to `to`.
    pub value: Len,
    /// The figure is a field that can be typed into.
    pub editable: bool,
    /// What is being typed into it now.
    pub typed: Option<&'a str>,
}

/// Where the figure of a blade stands, so that a click can open a field on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FigureBox {
    /// Index into the scene's blades.
    pub blade: usize,
    pub min: P,
    pub max: P,
}

/// Breadth of the blade in points.
const BREADTH: f32 = 17.0;
/// Ticks come no nearer than this, in points.
const LEAST_TICK: f32 = 3.0;
/// Beyond this many ticks a blade shows none finer: a guard for a blade far longer than the screen.
const MOST_TICKS: i32 = 1_500;

/// Tick steps with the reach of their tick across the blade, finest first; and the red marks: every
/// 16 in, as on a framer's tape, and 400 mm.
fn rulings(system: System) -> (&'static [(Len, f32)], Len) {
    const fn inch(sixteenths: i32) -> Len {
        Len::sixty_fourths(sixteenths * 4)
    }
    const IMPERIAL: &[(Len, f32)] = &[
        (inch(1), 0.16),
        (inch(2), 0.22),
        (inch(4), 0.28),
        (inch(8), 0.36),
        (inch(16), 0.5),
        (inch(64), 0.5),
        (inch(192), 0.7),
        (inch(768), 0.7),
    ];
    const METRIC: &[(Len, f32)] = &[
        (Len::mm(1), 0.18),
        (Len::mm(5), 0.28),
        (Len::mm(10), 0.4),
        (Len::mm(50), 0.5),
        (Len::mm(100), 0.7),
        (Len::mm(1_000), 0.7),
    ];
    match system {
        System::Imperial => (IMPERIAL, Len::inches(16)),
        System::Metric => (METRIC, Len::mm(400)),
    }
}

/// The blade's frame on the screen: its ends and the unit vector across it (to the ticks' edge).
struct Frame {
    from: P,
    to: P,
    length: f32,
    along: (f32, f32),
    up: (f32, f32),
}

impl Frame {
    fn of(view: &View, blade: &Blade<'_>) -> Frame {
        let (from, to) = (view.screen_from_plan(blade.from), view.screen_from_plan(blade.to));
        let length = from.distance(to);
        let along = if length > 0.0 {
            ((to.x - from.x) / length, (to.y - from.y) / length)
        } else {
            (1.0, 0.0)
        };
        // The ticks hang from the upper edge, or the left one of an upright blade.
        let mut up = (along.1, -along.0);
        if up.1 > 0.001 || (up.1 > -0.001 && up.0 > 0.0) {
            up = (-up.0, -up.1);
        }
        Frame { from, to, length, along, up }
    }

    /// The point `s` points along the blade and `t` half-breadths across it.
    fn at(&self, s: f32, t: f32) -> P {
        let across = t * BREADTH / 2.0;
        self.from.by(self.along.0 * s + self.up.0 * across, self.along.1 * s + self.up.1 * across)
    }

    fn quad(&self, s0: f32, s1: f32) -> [P; 4] {
        [self.at(s0, 1.0), self.at(s1, 1.0), self.at(s1, -1.0), self.at(s0, -1.0)]
    }
}

/// Draws the blades and keeps words off them; gives the boxes of their figures. `badges` are kept free.
pub(crate) fn draw(
    view: &View,
    system: System,
    blades: &[Blade<'_>],
    badges: &[[P; 4]],
    placer: &mut Placer,
    marks: &mut Marks,
) -> Vec<FigureBox> {
    let mut figures = Vec::new();
    let frames: Vec<Frame> = blades.iter().map(|b| Frame::of(view, b)).collect();
    for frame in &frames {
        placer.block(frame.quad(-3.0, frame.length + 3.0), NOBODY);
    }
    for (index, frame) in frames.iter().enumerate() {
        marks.group(format!("blade {index}"), |m| steel(view, system, frame, m));
    }
    // Figures lie above all blades and keep off the other blades and each other.
    let mut taken: Vec<[P; 4]> = Vec::new();
    for (index, (blade, frame)) in blades.iter().zip(&frames).enumerate() {
        let others = frames.iter().enumerate().filter(|(i, _)| *i != index);
        let mut busy = taken.clone();
        busy.extend_from_slice(badges);
        busy.extend(others.map(|(_, f)| f.quad(0.0, f.length)));
        marks.group(format!("blade {index}"), |m| {
            let at = figure(view, system, index, blade, frame, (&busy, placer), m);
            taken.push([at.min, P::new(at.max.x, at.min.y), at.max, P::new(at.min.x, at.max.y)]);
            figures.push(at);
        });
    }
    figures
}

fn steel(view: &View, system: System, frame: &Frame, m: &mut Marks) {
    let blade = frame.quad(0.0, frame.length);
    m.fill(blade, Tone::Tape);
    let (rulings, red) = rulings(system);
    let finest = rulings.iter().position(|(step, _)| {
        let gap = view.points(*step);
        gap >= LEAST_TICK && frame.length / gap <= MOST_TICKS as f32
    });
    let mut ticks = Vec::new();
    if let Some((step, _)) = finest.map(|i| rulings[i]) {
        let count = (frame.length / view.points(step)) as i32;
        for n in 1..=count.min(MOST_TICKS) {
            let at = step * n;
            // The reach of the coarsest step that this tick is a whole multiple of.
            let reach = rulings
                .iter()
                .rev()
                .find(|(s, _)| at.units() % s.units() == 0)
                .map_or(0.2, |(_, reach)| *reach);
            let s = view.points(at);
            ticks.push((frame.at(s, 1.0), frame.at(s, 1.0 - 2.0 * reach)));
        }
    }
    m.segments(ticks, Stroke::solid(Tone::TapeInk, 0.8));
    let gap = view.points(red);
    if gap >= 5.0 {
        let count = ((frame.length / gap) as i32).min(MOST_TICKS);
        for n in 1..=count {
            let s = gap * n as f32;
            // A red bar with a foot: seen by its form also in black and white.
            let bar = [
                frame.at(s - 1.0, 1.0),
                frame.at(s + 1.0, 1.0),
                frame.at(s + 1.0, -0.35),
                frame.at(s + 3.2, -1.0),
                frame.at(s - 3.2, -1.0),
                frame.at(s - 1.0, -0.35),
            ];
            m.fill(bar, Tone::TapeMark);
        }
    }
    m.outline(blade, Stroke::solid(Tone::Ink, 1.0));
    // The hooks at both ends.
    let hook = Stroke::solid(Tone::Ink, 3.0);
    m.line([frame.at(0.0, 1.35), frame.at(0.0, -1.35)], hook);
    m.line([frame.at(frame.length, 1.35), frame.at(frame.length, -1.35)], hook);
}

/// The figure, always level: on the blade where it fits, else on a flag beside it.
fn figure(
    view: &View,
    system: System,
    index: usize,
    blade: &Blade<'_>,
    frame: &Frame,
    (busy, placer): (&[[P; 4]], &mut Placer),
    m: &mut Marks,
) -> FigureBox {
    let text = blade.typed.map_or_else(|| system.len(blade.value, Precision::Tape), str::to_owned);
    let width =
        text_width(&text, size::BODY, Style::Bold).max(if blade.editable { 40.0 } else { 0.0 });
    let half = (width / 2.0 + 6.0, BREADTH / 2.0);
    let box_at = |c: P| {
        [(-half.0, -half.1), (half.0, -half.1), (half.0, half.1), (-half.0, half.1)]
            .map(|(x, y)| c.by(x, y))
    };
    // The extent of the level box along the blade.
    let extent = 2.0 * (half.0 * frame.along.0.abs() + half.1 * frame.along.1.abs());
    let on_screen = |c: &P| {
        c.x > half.0 && c.y > half.1 && c.x < view.size.0 - half.0 && c.y < view.size.1 - half.1
    };
    let middle = frame.from.towards(frame.to, 0.5);
    let fits = frame.length >= extent + 10.0;
    let off = half.0 * frame.up.0.abs() + half.1 * frame.up.1.abs() + BREADTH / 2.0 + 4.0;
    let lift = |c: P, by: f32| c.by(frame.up.0 * by, frame.up.1 * by);
    // On the blade: the middle, then nearer to an end. On a flag: above, below, then further out.
    let mut places: Vec<P> = Vec::new();
    if fits {
        places.extend([0.5, 0.3, 0.7, 0.2, 0.8].map(|t| frame.from.towards(frame.to, t)));
    }
    let along = |by: f32| middle.by(frame.along.0 * by, frame.along.1 * by);
    for far in [1.0, 2.0, 3.0, 4.0] {
        for shift in [0.0, 0.7, -0.7] {
            places.push(lift(along(extent * shift), off * far));
            places.push(lift(along(extent * shift), -off * far));
        }
    }
    let on_blade = |c: &P| fits && places[..5].contains(c);
    let free = |c: &P| {
        let quad = box_at(*c);
        on_screen(c)
            && busy.iter().all(|b| !overlap(&quad, b))
            && (on_blade(c) || placer.is_free(&quad, NOBODY))
    };
    let at = places.iter().find(|c| free(c)).or_else(|| places.iter().find(|c| on_screen(c)));
    let at = at.copied().unwrap_or(middle);
    let fits = on_blade(&at);
    placer.block(box_at(at), NOBODY);
    if !fits {
        m.line([middle, at], Stroke::solid(Tone::Ink, 1.0));
    }
    let (fill, edge) = match (blade.typed.is_some(), blade.editable) {
        (true, _) => (Tone::Paper, Some(Stroke::solid(Tone::Select, 2.0))),
        (false, true) => (Tone::Tape, Some(Stroke::dashed(Tone::TapeInk, 0.8, 2.0, 2.0))),
        (false, false) if fits => (Tone::Tape, None),
        (false, false) => (Tone::Tape, Some(Stroke::solid(Tone::TapeInk, 0.8))),
    };
    let inset = if fits { 1.5 } else { 0.0 };
    let plate = [
        at.by(-half.0, -half.1 + inset),
        at.by(half.0, -half.1 + inset),
        at.by(half.0, half.1 - inset),
        at.by(-half.0, half.1 - inset),
    ];
    m.fill(plate, fill);
    if let Some(edge) = edge {
        m.outline(plate, edge);
    }
    let ink = if blade.typed.is_some() { Tone::Ink } else { Tone::TapeInk };
    let shown = text_width(&text, size::BODY, Style::Bold);
    m.text(TextMark::new(at, text, size::BODY, ink).bold());
    if blade.typed.is_some() {
        let x = at.x + shown / 2.0 + 1.5;
        m.line([P::new(x, at.y - 6.0), P::new(x, at.y + 6.0)], Stroke::solid(Tone::Ink, 1.2));
    }
    FigureBox { blade: index, min: at.by(-half.0, -half.1), max: at.by(half.0, half.1) }
}
