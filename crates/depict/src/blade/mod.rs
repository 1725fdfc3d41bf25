//! The tape blade: every live measurement is a piece of steel tape.

mod figure;
mod steel;

use drawing::{Marks, P};
use geometry::Pt;
use measure::{Len, System};

use crate::View;
use crate::labels::{NOBODY, Placer};
use figure::figure;
use steel::steel;

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
