//! The tape-foot grid of the slab. It thins out with the zoom.

use drawing::{Marks, P, Stroke, Tone};
use measure::{Len, System};

use crate::View;

/// Spacing of the fine and of the strong lines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Steps {
    pub fine: Len,
    pub strong: Len,
}

/// No two lines come nearer than this, in points.
const LEAST_GAP: f32 = 7.0;

/// Fine steps in inches, each with its strong step.
const IMPERIAL: [(i32, i32); 7] =
    [(1, 12), (3, 12), (12, 48), (48, 192), (192, 768), (768, 3_072), (3_072, 12_288)];

/// The same in millimetres.
const METRIC: [(i32, i32); 7] = [
    (10, 100),
    (50, 500),
    (100, 1_000),
    (500, 5_000),
    (1_000, 10_000),
    (10_000, 100_000),
    (100_000, 1_000_000),
];

/// The steps of the grid at a zoom: 1 ft with every fourth line stronger, inches when near (100 mm and
/// 1 m in metric).
pub fn steps(view: &View, system: System) -> Steps {
    let all = match system {
        System::Imperial => IMPERIAL.map(|(f, s)| (Len::inches(f), Len::inches(s))),
        System::Metric => METRIC.map(|(f, s)| (Len::mm(f), Len::mm(s))),
    };
    let (fine, strong) = all
        .into_iter()
        .find(|(fine, _)| view.points(*fine) >= LEAST_GAP)
        .unwrap_or(all[all.len() - 1]);
    Steps { fine, strong }
}

/// The whole multiples of `step` between two plan coordinates, at most 2,000 of them.
pub(crate) fn multiples(low: i32, high: i32, step: Len) -> impl Iterator<Item = Len> {
    let step = step.units().max(1);
    let first = low.div_euclid(step) + i32::from(low.rem_euclid(step) != 0);
    let last = high.div_euclid(step);
    (first..=last).take(2_000).map(move |n| Len::from_units(n * step))
}

pub(crate) fn draw(view: &View, system: System, marks: &mut Marks) {
    let Steps { fine, strong } = steps(view, system);
    let seen = view.bounds();
    let (mut thin, mut thick) = (Vec::new(), Vec::new());
    let mut put = |at: Len, a: P, b: P| {
        if at.units() % strong.units() == 0 { &mut thick } else { &mut thin }.push((a, b));
    };
    for x in multiples(seen.min.x, seen.max.x, fine) {
        let sx = view.screen_from_plan(geometry::Pt::new(x.units(), 0)).x;
        put(x, P::new(sx, 0.0), P::new(sx, view.size.1));
    }
    for y in multiples(seen.min.y, seen.max.y, fine) {
        let sy = view.screen_from_plan(geometry::Pt::new(0, y.units())).y;
        put(y, P::new(0.0, sy), P::new(view.size.0, sy));
    }
    marks.group("grid", |m| {
        m.segments(thin, Stroke::solid(Tone::Grid, 0.7));
        m.segments(thick, Stroke::solid(Tone::GridStrong, 1.0));
    });
}

#[cfg(test)]
mod tests {
    use drawing::Mark;
    use geometry::{Bounds, Pt};
    use proptest::prelude::*;

    use super::*;

    fn view(ppi: f64) -> View {
        let mut view = View::fit(Bounds::of([Pt::new(0, 0)]), (700.0, 500.0), 0.0);
        view.scale = ppi / f64::from(Len::PER_INCH);
        view
    }

    #[test]
    fn a_foot_grid_at_the_usual_zoom_and_inches_when_near() {
        let at = |ppi| steps(&view(ppi), System::Imperial);
        assert_eq!(at(2.0), Steps { fine: Len::inches(12), strong: Len::inches(48) });
        assert_eq!(at(9.0), Steps { fine: Len::inches(1), strong: Len::inches(12) });
        assert_eq!(at(0.3), Steps { fine: Len::inches(48), strong: Len::inches(192) });
        let metric = steps(&view(2.0), System::Metric);
        assert_eq!(metric, Steps { fine: Len::mm(100), strong: Len::mm(1_000) });
    }

    proptest! {
        #[test]
        fn lines_are_never_denser_than_six_points(
            ppi in (View::LEAST_SCALE * 8128.0)..(View::MOST_SCALE * 8128.0), metric in any::<bool>(),
        ) {
            let system = if metric { System::Metric } else { System::Imperial };
            let mut marks = Marks::new();
            draw(&view(ppi), system, &mut marks);
            let mut xs: Vec<f32> = Vec::new();
            for mark in &marks.0 {
                if let Mark::Segments { pairs, .. } = mark {
                    xs.extend(pairs.iter().filter(|(a, b)| a.x == b.x).map(|(a, _)| a.x));
                }
            }
            xs.sort_by(f32::total_cmp);
            prop_assert!(xs.windows(2).all(|w| w[1] - w[0] >= 6.0), "{:?}", xs);
        }
    }
}
