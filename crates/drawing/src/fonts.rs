//! The one type family, DejaVu Sans, and the widths of its letters.

use std::sync::LazyLock;

use ttf_parser::Face;

use crate::Style;

/// DejaVu Sans, regular. Licence: `assets/fonts/LICENSE-DejaVu.txt`.
pub const REGULAR: &[u8] = include_bytes!("../../../assets/fonts/DejaVuSans.ttf");
/// DejaVu Sans, bold.
pub const BOLD: &[u8] = include_bytes!("../../../assets/fonts/DejaVuSans-Bold.ttf");
/// The families that a reader of a written drawing may have, first choice first.
pub const FAMILIES: &str = "'DejaVu Sans', Verdana, sans-serif";
/// From the middle height of a line down to its baseline, in multiples of the size: half the height of
/// a capital of DejaVu Sans (1,493 of 2,048 units).
pub const BASELINE_DROP: f32 = 0.3645;

/// Letters below this are looked up in a table; it covers Latin, Greek, Cyrillic, primes, fractions,
/// arrows and the mathematical signs.
const TABLE: u32 = 0x2600;

/// Advances of one face, in multiples of the size.
struct Advances {
    table: Vec<f32>,
    missing: f32,
}

static ADVANCES: LazyLock<[Advances; 2]> = LazyLock::new(|| [read(REGULAR), read(BOLD)]);

fn read(bytes: &[u8]) -> Advances {
    // The bytes are part of the program and tested; a face that can't be read measures as 0.6 em a letter.
    let Ok(face) = Face::parse(bytes, 0) else {
        return Advances { table: Vec::new(), missing: 0.6 };
    };
    let em = f32::from(face.units_per_em());
    let advance = |glyph| f32::from(face.glyph_hor_advance(glyph).unwrap_or(0)) / em;
    let missing = advance(ttf_parser::GlyphId(0));
    let table = (0..TABLE)
        .map(|code| char::from_u32(code).and_then(|c| face.glyph_index(c)).map_or(missing, advance))
        .collect();
    Advances { table, missing }
}

/// Width of a line of text in points: the sum of the advances of its letters (no kerning).
pub fn text_width(text: &str, size: f32, style: Style) -> f32 {
    let advances = &ADVANCES[match style {
        Style::Plain => 0,
        Style::Bold => 1,
    }];
    let ems: f32 = text
        .chars()
        .map(|c| advances.table.get(c as usize).copied().unwrap_or(advances.missing))
        .sum();
    ems * size
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn widths_are_the_advances_of_the_font_file() {
        // Advances of the font's own `hmtx` table, in 1/2048 em, read with an independent program.
        let width = |text, style| (text_width(text, 2048.0, style)).round() as i32;
        assert_eq!(width("W", Style::Plain), 2025);
        assert_eq!(width("0", Style::Plain), 1303);
        assert_eq!(width("12", Style::Plain), 2 * 1303);
        assert_eq!(width("0", Style::Bold), 1425);
        assert_eq!(width("", Style::Plain), 0);
    }

    #[test]
    fn both_faces_have_every_letter_that_drawings_use() {
        for bytes in [REGULAR, BOLD] {
            let face = Face::parse(bytes, 0).unwrap();
            for c in "ABCXYZabcxyz0123456789'\"/.,-–×·½¼¾⅛⅜⅝⅞′″²°?".chars() {
                assert!(face.glyph_index(c).is_some(), "{c}");
            }
        }
    }

    #[test]
    fn half_a_capital_is_the_drop_to_the_baseline() {
        let face = Face::parse(REGULAR, 0).unwrap();
        let glyph = face.glyph_bounding_box(face.glyph_index('H').unwrap()).unwrap();
        let half = f32::from(glyph.y_max) / f32::from(face.units_per_em()) / 2.0;
        assert!((half - BASELINE_DROP).abs() < 0.0005, "{half}");
    }
}
