//! The steel: ticks that get finer as one zooms in, red marks at stud spacing, the hooks.

use drawing::{Marks, Stroke, Tone};
use measure::{Len, System};

use super::Frame;
use crate::View;

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

pub(super) fn steel(view: &View, system: System, frame: &Frame, m: &mut Marks) {
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
