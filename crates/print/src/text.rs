//! Text in the PDF: the one place that knows how the library sets type.

use drawing::fonts::{self, BASELINE_DROP};
use drawing::{Anchor, P, Palette, Style, TextMark};
use krilla::Data;
use krilla::geom::{Point, Transform};
use krilla::surface::Surface;
use krilla::text::{Font, GlyphId, KrillaGlyph};

use crate::letters::{Letters, shown};
use crate::{Error, ink};

/// The two faces as the library embeds them.
pub(crate) struct Type {
    plain: Font,
    bold: Font,
}

impl Type {
    /// An error when the library can't read a face.
    pub(crate) fn new() -> Result<Type, Error> {
        let font = |bytes: &'static [u8]| {
            Font::new(Data::from(bytes), 0)
                .ok_or_else(|| Error::Writer("a face can't be read".to_owned()))
        };
        Ok(Type { plain: font(fonts::REGULAR)?, bold: font(fonts::BOLD)? })
    }

    /// Draws a text whose letters the faces are known to have; a plate is not drawn. The library's own
    /// setting of text kerns, and [`drawing::text_width`] does not, so every glyph is placed here.
    pub(crate) fn draw(
        &self,
        surface: &mut Surface<'_>,
        letters: &Letters,
        text: &TextMark,
        palette: Palette,
    ) {
        let words = shown(&text.text);
        if words.is_empty() || text.size <= 0.0 {
            return;
        }
        let mut glyphs = Vec::with_capacity(words.len());
        let mut ems = 0.0;
        for (at, letter) in words.char_indices() {
            let Some((glyph, advance)) = letters.glyph(text.style, letter) else { continue };
            ems += advance;
            let (id, range) = (GlyphId::new(glyph.0.into()), at..at + letter.len_utf8());
            glyphs.push(KrillaGlyph::new(id, advance, 0.0, 0.0, 0.0, range, None));
        }
        let font = match text.style {
            Style::Plain => &self.plain,
            Style::Bold => &self.bold,
        };
        let left = match text.anchor {
            Anchor::Start => 0.0,
            Anchor::Middle => -ems * text.size / 2.0,
            Anchor::End => -ems * text.size,
        };
        surface.push_transform(&turned(text.at, text.angle));
        surface.set_stroke(None);
        surface.set_fill(Some(ink::fill(text.tone, 1.0, palette)));
        let start = Point::from_xy(left, text.size * BASELINE_DROP);
        surface.draw_glyphs(start, &glyphs, font.clone(), &words, text.size, false);
        surface.pop();
    }
}

/// Puts the origin at `at` and turns the axes counter-clockwise by `degrees`.
fn turned(at: P, degrees: f32) -> Transform {
    let (sin, cos) = match degrees {
        0.0 => (0.0, 1.0),
        90.0 => (-1.0, 0.0),
        -90.0 => (1.0, 0.0),
        // The page's y points down, so a counter-clockwise turn has the sine's sign reversed.
        _ => libm::sincosf(-degrees.to_radians()),
    };
    Transform::from_row(cos, sin, -sin, cos, at.x, at.y)
}
