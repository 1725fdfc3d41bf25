//! Road-sign shapes for severity: the shape alone tells it.

use drawing::{Marks, P, Stroke, TextMark, Tone};
use rules::Severity;

/// Half the side of a regular octagon whose corners lie on the unit circle's box: tan 22.5°.
const OCTAGON: f32 = 0.414_213_57;

/// A severity's sign, `size` points high: correction is an octagon with a bar, verify a diamond with a
/// question mark, advice a ring with an i.
pub fn badge(severity: Severity, centre: P, size: f32) -> Marks {
    let mut marks = Marks::new();
    let r = size / 2.0;
    let edge = (size / 12.0).max(1.0);
    match severity {
        Severity::Correction => {
            let o = OCTAGON * r;
            let ring = [(o, -r), (r, -o), (r, o), (o, r), (-o, r), (-r, o), (-r, -o), (-o, -r)];
            marks.fill(ring.map(|(x, y)| centre.by(x, y)), Tone::Stop);
            marks.outline(
                ring.map(|(x, y)| centre.by(x, y)),
                Stroke::solid(Tone::Paper, edge * 0.6),
            );
            let (w, h) = (r * 0.62, r * 0.19);
            let bar = [(-w, -h), (w, -h), (w, h), (-w, h)];
            marks.fill(bar.map(|(x, y)| centre.by(x, y)), Tone::Paper);
        }
        Severity::Verify => {
            let d = r * 1.08;
            let ring = [(0.0, -d), (d, 0.0), (0.0, d), (-d, 0.0)].map(|(x, y)| centre.by(x, y));
            marks.fill(ring, Tone::Tape);
            marks.outline(ring, Stroke::solid(Tone::Verify, edge));
            marks.text(TextMark::new(centre, "?", size * 0.68, Tone::TapeInk).bold());
        }
        Severity::Advice => {
            let stroke = Stroke::solid(Tone::Advice, edge * 1.3);
            marks.circle(centre, r - edge * 0.65, Some(Tone::AdviceFill), Some(stroke));
            let w = r * 0.13;
            let stem = [(-w, -r * 0.12), (w, -r * 0.12), (w, r * 0.52), (-w, r * 0.52)];
            marks.fill(stem.map(|(x, y)| centre.by(x, y)), Tone::Advice);
            marks.circle(centre.by(0.0, -r * 0.4), r * 0.16, Some(Tone::Advice), None);
        }
    }
    marks
}

#[cfg(test)]
mod tests {
    use drawing::dump;

    use super::*;

    #[test]
    fn the_three_signs_differ_in_shape() {
        let sign = |severity| dump(&badge(severity, P::new(50.0, 50.0), 16.0));
        assert_eq!(
            sign(Severity::Correction),
            "fill Stop 1.00 53.3,42.0 58.0,46.7 58.0,53.3 53.3,58.0 46.7,58.0 42.0,53.3 42.0,46.7 46.7,42.0\n\
             outline Paper 0.8 53.3,42.0 58.0,46.7 58.0,53.3 53.3,58.0 46.7,58.0 42.0,53.3 42.0,46.7 46.7,42.0\n\
             fill Paper 1.00 45.0,48.5 55.0,48.5 55.0,51.5 45.0,51.5\n"
        );
        assert!(sign(Severity::Verify).contains("\"?\""));
        assert!(sign(Severity::Advice).starts_with("circle"));
    }
}
