//! Fills, strokes and outlines as the PDF library wants them.

use drawing::{P, Palette, Rgb, Stroke, Tone};
use krilla::color::{luma, rgb};
use krilla::geom::{Path, PathBuilder};
use krilla::num::NormalizedF32;
use krilla::paint::{self, FillRule, LineCap, LineJoin, Paint, StrokeDash};

/// How far a Bézier's handle stands off for a quarter circle of radius 1: 4/3 (√2 - 1).
const QUARTER: f32 = 0.552_284_8;
/// The default of SVG, which the SVG backend relies on (SVG 1.1, `stroke-miterlimit`).
const MITER_LIMIT: f32 = 4.0;
/// A dash shorter than this in points, on and off together, is an unbroken line.
const SHORTEST_DASH: f32 = 0.01;

/// The colour of a tone; a grey is written as a grey, so that black is the printer's black.
fn paint(tone: Tone, palette: Palette) -> Paint {
    let Rgb(r, g, b) = palette.rgb(tone);
    if r == g && g == b { luma::Color::new(r).into() } else { rgb::Color::new(r, g, b).into() }
}

/// A fill by the even-odd rule; `alpha` is taken into 0 to 1.
pub(crate) fn fill(tone: Tone, alpha: f32, palette: Palette) -> paint::Fill {
    paint::Fill {
        paint: paint(tone, palette),
        opacity: NormalizedF32::new(alpha.clamp(0.0, 1.0)).unwrap_or(NormalizedF32::ONE),
        rule: FillRule::EvenOdd,
    }
}

/// A stroke with butt ends and miter corners; none when its width is not more than 0.
pub(crate) fn stroke(stroke: &Stroke, palette: Palette) -> Option<paint::Stroke> {
    let dash = stroke
        .dash
        .filter(|(on, off)| *on >= 0.0 && *off >= 0.0 && on + off >= SHORTEST_DASH)
        .map(|(on, off)| StrokeDash { array: vec![on, off], offset: 0.0 });
    (stroke.width > 0.0).then(|| paint::Stroke {
        paint: paint(stroke.tone, palette),
        width: stroke.width,
        miter_limit: MITER_LIMIT,
        line_cap: LineCap::Butt,
        line_join: LineJoin::Miter,
        opacity: NormalizedF32::ONE,
        dash,
    })
}

/// One outline of many runs of points, each `closed` or open; none when nothing is left to draw.
pub(crate) fn path<'a>(runs: impl IntoIterator<Item = &'a [P]>, closed: bool) -> Option<Path> {
    let mut builder = PathBuilder::new();
    for run in runs {
        let Some((start, rest)) = run.split_first() else { continue };
        builder.move_to(start.x, start.y);
        for p in rest {
            builder.line_to(p.x, p.y);
        }
        if closed {
            builder.close();
        }
    }
    builder.finish()
}

/// A circle of four curves, which is nowhere off by more than 1/3000 of its radius; none when the
/// radius is not more than 0.
pub(crate) fn circle(centre: P, radius: f32) -> Option<Path> {
    if radius <= 0.0 {
        return None;
    }
    let (x, y, r, h) = (centre.x, centre.y, radius, radius * QUARTER);
    let mut b = PathBuilder::new();
    b.move_to(x + r, y);
    b.cubic_to(x + r, y + h, x + h, y + r, x, y + r);
    b.cubic_to(x - h, y + r, x - r, y + h, x - r, y);
    b.cubic_to(x - r, y - h, x - h, y - r, x, y - r);
    b.cubic_to(x + h, y - r, x + r, y - h, x + r, y);
    b.close();
    b.finish()
}
