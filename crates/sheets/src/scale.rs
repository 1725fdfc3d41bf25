//! Standard scales of drawings.

use measure::{Len, System};

/// So many inches on paper for a foot of the house (imperial), or one to so many (metric).
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Scale {
    /// What stands under the drawing: `1/4" = 1'-0"`.
    pub word: &'static str,
    /// Points on paper for an inch of the house.
    pub points_per_inch: f32,
}

const fn imperial(word: &'static str, over: f32, under: f32) -> Scale {
    Scale { word, points_per_inch: over / under * 72.0 / 12.0 }
}

const fn metric(word: &'static str, to: f32) -> Scale {
    Scale { word, points_per_inch: 72.0 / to }
}

/// Scales of plans, the usual one first: departments name 1/4" = 1'-0" and 1:50 for houses.
const PLANS: [Scale; 11] = [
    imperial("1/4\" = 1'-0\"", 1.0, 4.0),
    imperial("3/16\" = 1'-0\"", 3.0, 16.0),
    imperial("1/8\" = 1'-0\"", 1.0, 8.0),
    imperial("3/32\" = 1'-0\"", 3.0, 32.0),
    imperial("1/16\" = 1'-0\"", 1.0, 16.0),
    imperial("1\" = 20'", 1.0, 20.0),
    imperial("1\" = 40'", 1.0, 40.0),
    imperial("1\" = 100'", 1.0, 100.0),
    imperial("1\" = 400'", 1.0, 400.0),
    imperial("1\" = 1000'", 1.0, 1_000.0),
    imperial("1\" = 4000'", 1.0, 4_000.0),
];
const PLANS_METRIC: [Scale; 8] = [
    metric("1:50", 50.0),
    metric("1:75", 75.0),
    metric("1:100", 100.0),
    metric("1:200", 200.0),
    metric("1:500", 500.0),
    metric("1:2000", 2_000.0),
    metric("1:10000", 10_000.0),
    metric("1:50000", 50_000.0),
];

/// Scales of sections and details.
const SECTIONS: [Scale; 5] = [
    imperial("1\" = 1'-0\"", 1.0, 1.0),
    imperial("3/4\" = 1'-0\"", 3.0, 4.0),
    imperial("1/2\" = 1'-0\"", 1.0, 2.0),
    imperial("3/8\" = 1'-0\"", 3.0, 8.0),
    imperial("1/4\" = 1'-0\"", 1.0, 4.0),
];
const SECTIONS_METRIC: [Scale; 4] =
    [metric("1:10", 10.0), metric("1:20", 20.0), metric("1:25", 25.0), metric("1:50", 50.0)];

/// Scales of sections through the whole building.
const BUILDINGS: [Scale; 7] = [
    imperial("1/2\" = 1'-0\"", 1.0, 2.0),
    imperial("3/8\" = 1'-0\"", 3.0, 8.0),
    imperial("1/4\" = 1'-0\"", 1.0, 4.0),
    imperial("3/16\" = 1'-0\"", 3.0, 16.0),
    imperial("1/8\" = 1'-0\"", 1.0, 8.0),
    imperial("3/32\" = 1'-0\"", 3.0, 32.0),
    imperial("1/16\" = 1'-0\"", 1.0, 16.0),
];
const BUILDINGS_METRIC: [Scale; 5] = [
    metric("1:25", 25.0),
    metric("1:50", 50.0),
    metric("1:75", 75.0),
    metric("1:100", 100.0),
    metric("1:200", 200.0),
];

/// Scales of lots: of surveyors and engineers.
const LOTS: [Scale; 9] = [
    imperial("1/8\" = 1'-0\"", 1.0, 8.0),
    imperial("1\" = 10'", 1.0, 10.0),
    imperial("1\" = 20'", 1.0, 20.0),
    imperial("1\" = 30'", 1.0, 30.0),
    imperial("1\" = 40'", 1.0, 40.0),
    imperial("1\" = 50'", 1.0, 50.0),
    imperial("1\" = 60'", 1.0, 60.0),
    imperial("1\" = 100'", 1.0, 100.0),
    imperial("1\" = 400'", 1.0, 400.0),
];
const LOTS_METRIC: [Scale; 5] = [
    metric("1:100", 100.0),
    metric("1:200", 200.0),
    metric("1:500", 500.0),
    metric("1:1000", 1_000.0),
    metric("1:5000", 5_000.0),
];

/// What is drawn: each has its usual scales.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Of {
    Plan,
    /// A wall, a stair, a ceiling.
    Section,
    /// A section through the whole building.
    Building,
    /// The lot with the house on it.
    Lot,
}

impl Scale {
    /// The usual scale of a drawing, or the next at which `width` by `height` fit into a box of points; the last where
    /// none does.
    pub fn of(drawing: Of, system: System, size: (Len, Len), room: (f32, f32)) -> Scale {
        let scales: &[Scale] = match (drawing, system) {
            (Of::Plan, System::Imperial) => &PLANS,
            (Of::Plan, System::Metric) => &PLANS_METRIC,
            (Of::Section, System::Imperial) => &SECTIONS,
            (Of::Section, System::Metric) => &SECTIONS_METRIC,
            (Of::Building, System::Imperial) => &BUILDINGS,
            (Of::Building, System::Metric) => &BUILDINGS_METRIC,
            (Of::Lot, System::Imperial) => &LOTS,
            (Of::Lot, System::Metric) => &LOTS_METRIC,
        };
        let fits = scales.iter().find(|s| s.fits(size, room));
        *fits.unwrap_or(&scales[scales.len() - 1])
    }

    /// Whether a scale, by its word, is one that is usual for plans of houses: down to 3/32" = 1'-0" or 1:100.
    pub fn is_usual(word: &str) -> bool {
        PLANS[..4].iter().chain(&PLANS_METRIC[..3]).any(|s| s.word == word)
    }

    /// A length on paper, in points.
    pub fn points(self, len: Len) -> f32 {
        (len.to_inches() * f64::from(self.points_per_inch)) as f32
    }

    /// Whether a size fits a box of points.
    pub fn fits(self, size: (Len, Len), room: (f32, f32)) -> bool {
        self.points(size.0) <= room.0 && self.points(size.1) <= room.1
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_quarter_inch_is_18_points_a_foot() {
        let scale = Scale::of(
            Of::Plan,
            System::Imperial,
            (Len::feet_inches(40, 0), Len::feet_inches(30, 0)),
            (800.0, 600.0),
        );
        assert_eq!(scale.word, "1/4\" = 1'-0\"");
        assert!((scale.points(Len::feet_inches(1, 0)) - 18.0).abs() < 1e-4);
        let metric =
            Scale::of(Of::Plan, System::Metric, (Len::inches(40), Len::inches(30)), (800.0, 600.0));
        // 50 mm of the house are a millimetre on paper.
        assert!((metric.points(Len::from_units(320 * 50)) - 72.0 / 25.4).abs() < 1e-4);
    }

    #[test]
    fn the_next_scale_is_taken_where_the_usual_one_is_too_large() {
        let size = (Len::feet_inches(40, 0), Len::feet_inches(30, 0));
        assert_eq!(
            Scale::of(Of::Plan, System::Imperial, size, (719.0, 600.0)).word,
            "3/16\" = 1'-0\""
        );
        assert_eq!(
            Scale::of(Of::Plan, System::Imperial, size, (720.0, 540.0)).word,
            "1/4\" = 1'-0\""
        );
        assert_eq!(Scale::of(Of::Plan, System::Imperial, size, (150.0, 150.0)).word, "1\" = 20'");
        // The largest plan that can be drawn fits a small box at the last scale.
        let all = (Len::COORD_LIMIT, Len::COORD_LIMIT);
        for system in [System::Imperial, System::Metric] {
            let room = (500.0, 300.0);
            assert!(Scale::of(Of::Plan, system, all, room).fits(all, room));
        }
    }
}
