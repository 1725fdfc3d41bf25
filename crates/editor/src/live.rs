//! What the editor tells while a person works: status, snaps, live dimensions, the typed entry.

use geometry::{Pt, Vec2};
use measure::Len;
use plan::ElementId;

/// What a point was caught by, in one word, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Snap {
    /// `end`, `face`, `crossing`, `square`, `45°`, `parallel`, `in line`, `middle`, `grid` …
    pub word: &'static str,
    pub at: Pt,
    /// A guide line to paint, where a direction was caught.
    pub guide: Option<(Pt, Pt)>,
}

/// The status line: what the tool expects next and what was caught.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Status {
    pub expects: String,
    pub caught: Option<Snap>,
    /// Why the last gesture or entry was refused.
    pub refused: Option<String>,
}

/// Names a live dimension, so that its figure can be typed into.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum DimensionId {
    /// Length of the wall or run being drawn or selected.
    Length,
    /// Clear distance from the selected wall's left face to the next face.
    ClearLeft,
    /// Clear distance from its right face.
    ClearRight,
    /// From the opening's near jamb to the start of its wall, and from its far jamb to the finish.
    ToStart,
    ToFinish,
    /// Distance measured with the tape, or moved by a drag.
    Distance,
    /// From a box (service point, furnishing, column, stair) to the next face on its left, as seen by one who
    /// stands in it and looks the way it faces.
    BoxLeft,
    /// To the next face on its right.
    BoxRight,
    /// To the next face before it.
    BoxFront,
    /// To the next face behind it.
    BoxBack,
}

impl DimensionId {
    /// What the figure is, in a few words: the prompt of its entry field.
    pub fn word(self) -> &'static str {
        match self {
            DimensionId::Length => "length",
            DimensionId::ClearLeft => "clear on the left",
            DimensionId::ClearRight => "clear on the right",
            DimensionId::ToStart => "to the start",
            DimensionId::ToFinish => "to the finish",
            DimensionId::Distance => "distance",
            DimensionId::BoxLeft => "to the left",
            DimensionId::BoxRight => "to the right",
            DimensionId::BoxFront => "to the front",
            DimensionId::BoxBack => "to the back",
        }
    }
}

/// A live measurement, painted as a tape blade from `from` to `to`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Dimension {
    pub id: DimensionId,
    pub from: Pt,
    pub to: Pt,
    pub value: Len,
    /// The figure can be typed into: see `Session::type_dimension`.
    pub editable: bool,
    /// The element that the far end touches.
    pub against: Option<ElementId>,
}

/// A value being typed while a tool waits: the length of the wall being drawn, the distance of a drag.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    pub prompt: &'static str,
    /// What has been typed so far; empty at first.
    pub text: String,
    /// What a bare number means: `in` or `mm`.
    pub unit: &'static str,
}

/// The direction of a vector in tenths of a degree, counter-clockwise from east, 0 to 3599. For display
/// only. Uses additions, divisions and square roots alone, so it is the same on every machine.
/// `None` for the zero vector.
pub fn heading(v: Vec2) -> Option<u16> {
    if v == Vec2::default() {
        return None;
    }
    let (x, y) = (v.x as f64, v.y as f64);
    // Fold into the first octant, where the tangent is at most 1.
    let (ax, ay) = (x.abs(), y.abs());
    let steep = ay > ax;
    let t = if steep { ax / ay } else { ay / ax };
    let mut degrees = arc_tangent(t) * (180.0 / std::f64::consts::PI);
    if steep {
        degrees = 90.0 - degrees;
    }
    if x < 0.0 {
        degrees = 180.0 - degrees;
    }
    if y < 0.0 {
        degrees = 360.0 - degrees;
    }
    Some((degrees * 10.0).round() as u16 % 3600)
}

/// Arc tangent of `t` in 0..=1, in radians, by two half-angle steps and the power series.
fn arc_tangent(t: f64) -> f64 {
    let half = |t: f64| t / (1.0 + (1.0 + t * t).sqrt());
    let t = half(half(t));
    let square = t * t;
    let (mut term, mut sum) = (t, 0.0);
    for k in 0..12u32 {
        sum += term / f64::from(2 * k + 1);
        term *= -square;
    }
    sum * 4.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_of_the_eight_directions() {
        let cases = [
            ((5, 0), 0),
            ((5, 5), 450),
            ((0, 5), 900),
            ((-5, 5), 1350),
            ((-5, 0), 1800),
            ((-5, -5), 2250),
            ((0, -5), 2700),
            ((5, -5), 3150),
        ];
        for ((x, y), tenths) in cases {
            assert_eq!(heading(Vec2::new(x, y)), Some(tenths), "({x}, {y})");
        }
        assert_eq!(heading(Vec2::new(0, 0)), None);
    }

    #[test]
    fn headings_agree_with_the_library_arc_tangent() {
        for i in 0..720 {
            let angle = f64::from(i) * 0.5_f64.to_radians();
            let v = Vec2::new((angle.cos() * 1e8) as i64, (angle.sin() * 1e8) as i64);
            let want = ((v.y as f64).atan2(v.x as f64).to_degrees() * 10.0).rem_euclid(3600.0);
            let got = f64::from(heading(v).expect("not zero"));
            let off = (got - want).abs();
            assert!(off <= 0.5001 || off >= 3599.4, "{i}: {got} against {want}");
        }
    }
}
