//! Rulers along the top and the left, in feet and inches or in metres. A list of their own, so that a
//! window can put them above everything.

use drawing::{Anchor, Marks, P, Stroke, TextMark, Tone, size};
use geometry::Pt;
use measure::{Len, System};

use crate::grid::{Steps, multiples, steps};
use crate::{Scene, View};

/// Breadth of a ruler in points.
pub const RULER: f32 = 22.0;

/// Room that a figure needs, in points.
const LEAST_FIGURE_GAP: f32 = 46.0;

pub(crate) fn draw(view: &View, scene: &Scene<'_>, marks: &mut Marks) {
    let (w, h) = view.size;
    let band = |x: f32, y: f32| [P::new(0.0, 0.0), P::new(x, 0.0), P::new(x, y), P::new(0.0, y)];
    marks.group("rulers", |m| {
        m.fill(band(w, RULER), Tone::Paper);
        m.fill(band(RULER, h), Tone::Paper);
        let steps = steps(view, scene.system);
        let figures = figure_step(view, steps, scene.system);
        along(view, steps, figures, scene.system, true, m);
        along(view, steps, figures, scene.system, false, m);
        m.fill(band(RULER, RULER), Tone::Paper);
        let edge = Stroke::solid(Tone::SoftInk, 0.8);
        m.segments(
            vec![
                (P::new(RULER, RULER), P::new(w, RULER)),
                (P::new(RULER, RULER), P::new(RULER, h)),
            ],
            edge,
        );
        let unit = match scene.system {
            System::Imperial => "ft",
            System::Metric => "m",
        };
        m.text(TextMark::new(P::new(RULER / 2.0, RULER / 2.0), unit, size::SMALL, Tone::SoftInk));
    });
}

/// The step at which figures stand: the finest round one that leaves room.
fn figure_step(view: &View, steps: Steps, system: System) -> Len {
    let roomy = |len: &Len| view.points(*len) >= LEAST_FIGURE_GAP;
    // Round figures only; a metric figure has one decimal, so no step is below 100 mm.
    let imperial = [1, 3, 6, 12, 24, 48, 96, 192, 384, 768, 1_536].map(Len::inches);
    let metric = [100, 200, 500, 1_000, 2_000, 5_000, 10_000, 20_000, 50_000].map(Len::mm);
    let round: &[Len] = match system {
        System::Imperial => &imperial,
        System::Metric => &metric,
    };
    round.iter().copied().find(roomy).unwrap_or(steps.strong * 4)
}

fn along(view: &View, steps: Steps, figures: Len, system: System, top: bool, m: &mut Marks) {
    let seen = view.bounds();
    let (low, high) = if top { (seen.min.x, seen.max.x) } else { (seen.min.y, seen.max.y) };
    let place = |at: Len| {
        if top {
            view.screen_from_plan(Pt::new(at.units(), 0)).x
        } else {
            view.screen_from_plan(Pt::new(0, at.units())).y
        }
    };
    let (mut short, mut long) = (Vec::new(), Vec::new());
    for at in multiples(low, high, steps.fine) {
        let strong = at.units() % steps.strong.units() == 0;
        let s = place(at);
        let reach = if strong { 9.0 } else { 4.0 };
        let (a, b) = if top {
            (P::new(s, RULER - reach), P::new(s, RULER))
        } else {
            (P::new(RULER - reach, s), P::new(RULER, s))
        };
        if strong { &mut long } else { &mut short }.push((a, b));
    }
    m.segments(short, Stroke::solid(Tone::SoftInk, 0.8));
    m.segments(long, Stroke::solid(Tone::Ink, 1.0));
    for at in multiples(low, high, figures) {
        let s = place(at);
        let text = if top {
            TextMark::new(P::new(s + 3.0, 8.0), figure(at, system), size::SMALL, Tone::Ink)
        } else {
            TextMark::new(P::new(8.0, s - 3.0), figure(at, system), size::SMALL, Tone::Ink)
                .angle(90.0)
        };
        m.text(text.anchor(Anchor::Start));
    }
}

/// A short figure: `-4'`, `4' 6"`, `1.2`.
fn figure(at: Len, system: System) -> String {
    let sign = if at < Len::ZERO { "-" } else { "" };
    match system {
        System::Imperial => {
            let inches = at.units().abs() / Len::PER_INCH;
            match (inches / 12, inches % 12) {
                (feet, 0) => format!("{sign}{feet}'"),
                (0, inches) => format!("{sign}{inches}\""),
                (feet, inches) => format!("{sign}{feet}' {inches}\""),
            }
        }
        System::Metric => {
            let tenths = at.units().abs() / (Len::PER_MM * 100);
            format!("{sign}{}.{}", tenths / 10, tenths % 10)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_are_short() {
        let feet = |len| figure(len, System::Imperial);
        assert_eq!(feet(Len::feet_inches(12, 0)), "12'");
        assert_eq!(feet(Len::feet_inches(-4, 0)), "-4'");
        assert_eq!(feet(Len::feet_inches(3, 6)), "3' 6\"");
        assert_eq!(feet(Len::inches(9)), "9\"");
        assert_eq!(feet(Len::ZERO), "0'");
        assert_eq!(figure(Len::mm(1_200), System::Metric), "1.2");
        assert_eq!(figure(Len::mm(-500), System::Metric), "-0.5");
    }
}
