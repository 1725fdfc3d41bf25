//! A list of marks as text, for tests: one line per mark, one decimal, groups indented.

use std::fmt::Write;

use crate::{Mark, Marks, P, Stroke};

/// The list as text. Equal lists give equal texts on every machine.
pub fn dump(marks: &Marks) -> String {
    let mut out = String::new();
    let mut depth = 0usize;
    for mark in &marks.0 {
        if matches!(mark, Mark::End) {
            depth = depth.saturating_sub(1);
            continue;
        }
        for _ in 0..depth {
            out.push_str("  ");
        }
        put(&mut out, mark);
        out.push('\n');
        if matches!(mark, Mark::Begin(_)) {
            depth += 1;
        }
    }
    out
}

// Writing to a String can't fail; the results are dropped.
fn put(out: &mut String, mark: &Mark) {
    match mark {
        Mark::Fill { rings, tone, alpha } => {
            let _ = write!(out, "fill {tone:?} {alpha:.2}");
            for (i, ring) in rings.iter().enumerate() {
                out.push_str(if i == 0 { "" } else { " /" });
                put_points(out, ring);
            }
        }
        Mark::Line { points, closed, stroke } => {
            out.push_str(if *closed { "outline " } else { "line " });
            put_stroke(out, stroke);
            put_points(out, points);
        }
        Mark::Segments { pairs, stroke } => {
            out.push_str("segments ");
            put_stroke(out, stroke);
            for (a, b) in pairs {
                put_points(out, &[*a, *b]);
                out.push(';');
            }
        }
        Mark::Circle { centre, radius, fill, stroke } => {
            let _ = write!(out, "circle r {radius:.1}");
            put_points(out, &[*centre]);
            if let Some(tone) = fill {
                let _ = write!(out, " fill {tone:?}");
            }
            if let Some(stroke) = stroke {
                out.push_str(" stroke ");
                put_stroke(out, stroke);
            }
        }
        Mark::Text(t) => {
            let _ = write!(out, "text {:?} {:.1} {:?} {:?}", t.tone, t.size, t.style, t.anchor);
            if t.angle != 0.0 {
                let _ = write!(out, " {:.1}°", t.angle);
            }
            if let Some(plate) = t.plate {
                let _ = write!(out, " on {plate:?}");
            }
            put_points(out, &[t.at]);
            let _ = write!(out, " {:?}", t.text);
        }
        Mark::Begin(origin) => {
            let _ = write!(out, "[{}]", origin.0);
        }
        Mark::End => {}
    }
}

fn put_stroke(out: &mut String, stroke: &Stroke) {
    let _ = write!(out, "{:?} {:.1}", stroke.tone, stroke.width);
    if let Some((on, off)) = stroke.dash {
        let _ = write!(out, " dash {on:.1} {off:.1}");
    }
}

fn put_points(out: &mut String, points: &[P]) {
    for p in points {
        // Adding zero turns -0 into 0.
        let tenth = |v: f32| (v * 10.0).round() / 10.0 + 0.0;
        let _ = write!(out, " {:.1},{:.1}", tenth(p.x), tenth(p.y));
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{TextMark, Tone};

    #[test]
    fn groups_are_indented_and_zero_has_no_sign() {
        let mut marks = Marks::new();
        marks.group("W14", |m| {
            m.line(
                [P::new(-0.01, 1.0), P::new(2.06, 3.0)],
                Stroke::dashed(Tone::New, 1.2, 4.0, 2.0),
            );
            m.text(TextMark::new(P::new(1.0, 2.0), "Office", 15.0, Tone::Ink).bold().angle(90.0));
        });
        assert_eq!(
            dump(&marks),
            "[W14]\n  line New 1.2 dash 4.0 2.0 0.0,1.0 2.1,3.0\n  \
             text Ink 15.0 Bold Middle 90.0° 1.0,2.0 \"Office\"\n"
        );
    }
}
