//! Everything that a page may be refused for, before anything is drawn.

use drawing::{Mark, P, Stroke, TextMark};

use crate::letters::{Letters, shown};
use crate::{Error, MARK_LIMIT, PAGE_LIMIT, Page};

/// An error when the page (the `number`th, from 1) can't be drawn as it is.
pub(crate) fn page(page: &Page<'_>, number: usize, letters: &Letters) -> Result<(), Error> {
    let (width, height) = page.size;
    let fits = |side: f32| side > 0.0 && side <= PAGE_LIMIT;
    if !fits(width) || !fits(height) {
        return Err(Error::Size { page: number, width, height });
    }
    for (i, mark) in page.marks.0.iter().enumerate() {
        if let Some(wrong) = wrong_number(mark) {
            return Err(Error::Number { page: number, mark: i + 1, number: wrong });
        }
        if let Mark::Text(text) = mark
            && let Some(letter) = missing_letter(text, letters)
        {
            return Err(Error::Glyph { page: number, text: text.text.clone(), letter });
        }
    }
    Ok(())
}

/// The first number of the mark that is not finite or beyond the limit.
fn wrong_number(mark: &Mark) -> Option<f32> {
    match mark {
        Mark::Fill { rings, alpha, .. } => {
            first(rings.iter().flatten().flat_map(|p| xy(*p)).chain([*alpha]))
        }
        Mark::Line { points, stroke, .. } => {
            first(points.iter().flat_map(|p| xy(*p)).chain(widths(stroke)))
        }
        Mark::Segments { pairs, stroke } => {
            first(pairs.iter().flat_map(|(a, b)| [a.x, a.y, b.x, b.y]).chain(widths(stroke)))
        }
        Mark::Circle { centre, radius, stroke, .. } => {
            first(xy(*centre).into_iter().chain([*radius]).chain(stroke.iter().flat_map(widths)))
        }
        Mark::Text(text) => first([text.at.x, text.at.y, text.size, text.angle].into_iter()),
        Mark::Begin(_) | Mark::End => None,
    }
}

fn xy(p: P) -> [f32; 2] {
    [p.x, p.y]
}

fn widths(stroke: &Stroke) -> [f32; 3] {
    let (on, off) = stroke.dash.unwrap_or_default();
    [stroke.width, on, off]
}

fn first(mut numbers: impl Iterator<Item = f32>) -> Option<f32> {
    // Written so that NaN is found.
    numbers.find(|v| !(-MARK_LIMIT..=MARK_LIMIT).contains(v))
}

fn missing_letter(text: &TextMark, letters: &Letters) -> Option<char> {
    shown(&text.text).chars().find(|c| letters.glyph(text.style, *c).is_none())
}
