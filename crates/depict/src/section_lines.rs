//! Section lines: a chain line with a lettered bubble at each end, its point to the side that is looked at.

use drawing::{Anchor, Marks, P, Stroke, Style, TextMark, Tone, size};
use geometry::Pt;

use crate::labels::{Placer, square};
use crate::picture::Canvas;

const BUBBLE: f32 = 9.0;
/// How far a line goes in from its ends on paper.
const STUB: f32 = 36.0;

pub(crate) fn draw(canvas: &Canvas<'_>, placer: &mut Placer, marks: &mut Marks) {
    if !canvas.scene.show.notes {
        return;
    }
    for (element, section, letter) in canvas.scene.facts.plan.section_lines() {
        if !canvas.sees_near(&[section.a, section.b], canvas.view.len(2.0 * BUBBLE)) {
            continue;
        }
        let [a, b]: [P; 2] = [section.a, section.b].map(|p: Pt| canvas.view.screen_from_plan(p));
        let along = a.towards(b, 1.0 / a.distance(b).max(0.1));
        let (x, y) = (along.x - a.x, along.y - a.y);
        // To the left of the line as the plan has it; on the screen y points down.
        let looks = (y, -x);
        marks.group(element.name(), |m| {
            let stroke = Stroke::dashed(Tone::SoftInk, 0.9, 14.0, 4.0);
            if canvas.scene.hatched {
                // On paper it is broken within the drawing, so that it crosses no words there.
                let part = (STUB / a.distance(b).max(0.1)).min(0.5);
                m.line(vec![a, a.towards(b, part)], stroke);
                m.line(vec![b, b.towards(a, part)], stroke);
            } else {
                m.line(vec![a, b], stroke);
            }
            for at in [a.by(-x * BUBBLE, -y * BUBBLE), b.by(x * BUBBLE, y * BUBBLE)] {
                placer.block(square(at, BUBBLE), element.id.0);
                bubble(at, looks, &letter, m);
            }
        });
    }
}

fn bubble(at: P, looks: (f32, f32), letter: &str, m: &mut Marks) {
    let (x, y) = looks;
    let out = |far: f32, aside: f32| at.by(x * far + y * aside, y * far - x * aside);
    // The point stands out behind the circle.
    m.fill([out(BUBBLE + 5.0, 0.0), out(2.0, BUBBLE - 1.0), out(2.0, -(BUBBLE - 1.0))], Tone::Ink);
    m.circle(at, BUBBLE - 2.0, Some(Tone::Paper), Some(Stroke::solid(Tone::Ink, 1.0)));
    let text = TextMark::new(at, letter.to_owned(), size::SMALL, Tone::Ink);
    m.text(TextMark { style: Style::Bold, ..text.anchor(Anchor::Middle) });
}
