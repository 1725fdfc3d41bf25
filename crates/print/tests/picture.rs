//! The PNG, and the SVG as an independent parser and renderer sees it.

mod common;

use common::all_kinds;
use drawing::{Marks, P, Palette, Rgb, Tone, svg};
use print::{DOT_LIMIT, Error, Page, png};
use resvg::tiny_skia::Pixmap;
use resvg::usvg::{Options, Tree};

const SIZE: (f32, f32) = (500.0, 500.0);
const WHITE: (u8, u8, u8) = (255, 255, 255);
const BLACK: (u8, u8, u8) = (0, 0, 0);

fn picture(marks: &Marks, size: (f32, f32), dots_per_inch: f32) -> Pixmap {
    let page = Page { size, marks };
    Pixmap::decode_png(&png(&page, Palette::Print, dots_per_inch).unwrap()).unwrap()
}

fn at(picture: &Pixmap, x: u32, y: u32) -> (u8, u8, u8) {
    let dot = picture.pixel(x, y).unwrap();
    assert_eq!(dot.alpha(), 255);
    (dot.red(), dot.green(), dot.blue())
}

#[test]
fn a_black_square_is_where_it_should_be_to_the_dot() {
    // 1 in from the left and 0.5 in from the top, 1 in by 0.5 in, at 150 dots per inch.
    let mut marks = Marks::new();
    let ring = [(72.0, 36.0), (144.0, 36.0), (144.0, 72.0), (72.0, 72.0)];
    marks.fill(ring.map(|(x, y)| P::new(x, y)), Tone::Ink);
    let picture = picture(&marks, (612.0, 396.0), 150.0);
    assert_eq!((picture.width(), picture.height()), (1275, 825));
    for y in 0..825 {
        for x in 0..1275 {
            let inside = (150..300).contains(&x) && (75..150).contains(&y);
            assert_eq!(at(&picture, x, y), if inside { BLACK } else { WHITE }, "{x}, {y}");
        }
    }
}

#[test]
fn every_kind_of_mark_has_its_ink() {
    let picture = picture(&all_kinds(), SIZE, 72.0);
    let Rgb(r, g, b) = Palette::Print.rgb(Tone::Grid);
    let grid = (r, g, b);
    let points = [
        ("fill", 30, 30, BLACK),
        ("hole", 70, 70, WHITE),
        ("outside", 10, 10, WHITE),
        ("line", 250, 20, BLACK),
        ("miter of the line's corner", 301, 18, BLACK),
        ("beside the line", 250, 24, WHITE),
        ("not closed", 250, 60, WHITE),
        ("dash", 330, 320, BLACK),
        ("gap", 345, 320, WHITE),
        ("second dash", 360, 320, BLACK),
        ("closing side", 320, 335, BLACK),
        ("first segment", 70, 200, BLACK),
        ("last segment", 70, 280, BLACK),
        ("between segments", 70, 210, WHITE),
        ("segments are apart", 123, 210, WHITE),
        ("disc", 200, 250, BLACK),
        ("rim of the disc", 230, 250, grid),
        ("outside the rim", 235, 250, WHITE),
        ("plate", 130, 390, grid),
    ];
    for (what, x, y, colour) in points {
        assert_eq!(at(&picture, x, y), colour, "{what} at {x}, {y}");
    }
    // Half black on white.
    let (half, _, _) = at(&picture, 145, 145);
    assert!((127..=128).contains(&half), "{half}");
    // Letters, level and turned: the turned text ends at its point, so it stands below it.
    let dark = |xs: std::ops::Range<u32>, ys: std::ops::Range<u32>| {
        ys.flat_map(|y| xs.clone().map(move |x| (x, y)))
            .filter(|(x, y)| at(&picture, *x, *y).0 < 64)
            .count()
    };
    assert!(dark(125..185, 390..410) > 100, "level text");
    assert!(dark(190..210, 420..495) > 100, "turned text below");
    assert_eq!(dark(190..210, 320..390), 0, "nothing above");
}

#[test]
fn letters_are_drawn_with_the_programs_own_fonts_as_wide_as_measured() {
    // Both ends are stems; the pairs between them kern, and two spaces stay two.
    let text = "HAVAT  To AVH";
    let mut marks = Marks::new();
    let at_start = P::new(20.0, 50.0);
    let mark = drawing::TextMark::new(at_start, text, 40.0, Tone::Ink);
    marks.text(mark.anchor(drawing::Anchor::Start));
    let picture = picture(&marks, SIZE, 72.0);
    let column = |x: &u32| (30..70).any(|y| at(&picture, *x, y).0 < 128);
    let (first, last) = ((0..500).find(column).unwrap(), (0..500).rev().find(column).unwrap());
    // An H of this face has 201 of 2,048 units free on either side (its `hmtx` and `glyf` tables).
    let free = 40.0 * 201.0 / 2048.0;
    let width = drawing::text_width(text, 40.0, drawing::Style::Plain);
    assert!((first as f32 - (20.0 + free)).abs() <= 1.0, "{first}");
    assert!((last as f32 + 1.0 - (20.0 + width - free)).abs() <= 1.0, "{last}, {width}");
}

#[test]
fn the_svg_for_paper_is_as_large_as_the_sheet() {
    let text = svg::write_paper(&all_kinds(), (1224.0, 792.0), Palette::Print);
    let tree = Tree::from_str(&text, &Options { dpi: 300.0, ..Options::default() }).unwrap();
    // 17 in by 11 in at 300 units per inch.
    assert_eq!((tree.size().width(), tree.size().height()), (5100.0, 3300.0));
}

#[test]
fn the_file_says_its_resolution() {
    let marks = Marks::new();
    let bytes = png(&Page { size: SIZE, marks: &marks }, Palette::Print, 300.0).unwrap();
    let at = bytes.windows(4).position(|w| w == b"pHYs").unwrap() + 4;
    // 300 / 0.0254 = 11,811 dots per metre, twice, then unit 1.
    let number = 11_811_u32.to_be_bytes();
    assert_eq!(bytes[at..at + 9], [&number[..], &number[..], &[1]].concat());
}

#[test]
fn a_resolution_that_makes_no_picture_is_refused() {
    let marks = Marks::new();
    let page = Page { size: SIZE, marks: &marks };
    // 500 pt are 6.94 in: at 2,000 dots per inch 13,889 dots a side, which is too many.
    const { assert!(13_889_u64 * 13_889 > DOT_LIMIT) };
    for dots in [0.0, -72.0, f32::NAN, f32::INFINITY, 0.01, 2000.0, 1e30] {
        let result = png(&page, Palette::Print, dots);
        assert!(matches!(result, Err(Error::Dots { .. })), "{dots}");
    }
}
