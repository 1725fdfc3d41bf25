//! The glyphs of the two faces.

use drawing::{Style, fonts};
use ttf_parser::{Face, GlyphId};

use crate::Error;

/// The faces of the type family, read from the program's own bytes.
pub(crate) struct Letters {
    plain: Face<'static>,
    bold: Face<'static>,
}

impl Letters {
    /// An error when a face can't be read.
    pub(crate) fn new() -> Result<Letters, Error> {
        let read = |bytes| Face::parse(bytes, 0).map_err(|e| Error::Writer(e.to_string()));
        Ok(Letters { plain: read(fonts::REGULAR)?, bold: read(fonts::BOLD)? })
    }

    /// The glyph of a letter and its advance in multiples of the size; none when the face lacks it.
    pub(crate) fn glyph(&self, style: Style, letter: char) -> Option<(GlyphId, f32)> {
        let face = match style {
            Style::Plain => &self.plain,
            Style::Bold => &self.bold,
        };
        let glyph = face.glyph_index(letter)?;
        let advance = face.glyph_hor_advance(glyph)?;
        Some((glyph, f32::from(advance) / f32::from(face.units_per_em())))
    }
}

/// The text as it is shown: a tab or a new line is a space; what XML 1.0 forbids is left out, as the
/// SVG backend leaves it out.
pub(crate) fn shown(text: &str) -> String {
    text.chars()
        .filter_map(|c| match c {
            '\t' | '\n' | '\r' => Some(' '),
            '\u{0}'..='\u{1f}' | '\u{fffe}' | '\u{ffff}' => None,
            _ => Some(c),
        })
        .collect()
}
