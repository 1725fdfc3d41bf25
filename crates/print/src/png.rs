//! PNG pictures of pages, drawn from their SVG.

use std::sync::{Arc, LazyLock};

use drawing::{Palette, Rgb, Tone, fonts, svg};
use png::{BitDepth, ColorType, Encoder, PixelDimensions, Unit};
use resvg::tiny_skia::{Color, Pixmap, Transform};
use resvg::usvg::{Options, Tree, fontdb};

use crate::letters::Letters;
use crate::{DOT_LIMIT, Error, Page, check};

/// Points of an inch.
const INCH: f64 = 72.0;
/// Metres of an inch.
const METRES: f64 = 0.0254;

/// The only fonts there are: the program's own, never the system's.
static FONTS: LazyLock<Arc<fontdb::Database>> = LazyLock::new(|| {
    let mut fonts = fontdb::Database::new();
    fonts.load_font_source(fontdb::Source::Binary(Arc::new(fonts::REGULAR)));
    fonts.load_font_source(fontdb::Source::Binary(Arc::new(fonts::BOLD)));
    Arc::new(fonts)
});

/// The page as a PNG picture on a ground of the palette's paper, without transparency. Its sides are
/// the page's at `dots_per_inch`, rounded to whole dots; the file says its resolution, so that it prints
/// at the page's size.
///
/// # Errors
/// As for [`crate::pdf()`], and when the resolution is not more than 0 or the picture would have no dot
/// or more than [`DOT_LIMIT`].
pub fn png(page: &Page<'_>, palette: Palette, dots_per_inch: f32) -> Result<Vec<u8>, Error> {
    check::page(page, 1, &Letters::new()?)?;
    let scale = f64::from(dots_per_inch) / INCH;
    let (width, height) = dots(page.size, scale).ok_or(Error::Dots { dots_per_inch })?;
    let mut picture = Pixmap::new(width, height).ok_or(Error::Dots { dots_per_inch })?;
    let Rgb(r, g, b) = palette.rgb(Tone::Paper);
    picture.fill(Color::from_rgba8(r, g, b, 255));

    let text = svg::write_paper(page.marks, page.size, palette);
    // One inch of the SVG is read as 72 units, so a unit is a point.
    let options = Options { fontdb: FONTS.clone(), dpi: INCH as f32, ..Options::default() };
    let tree = Tree::from_str(&text, &options).map_err(|e| Error::Writer(e.to_string()))?;
    let scale = scale as f32;
    resvg::render(&tree, Transform::from_scale(scale, scale), &mut picture.as_mut());
    encode(&picture, dots_per_inch).map_err(|e| Error::Writer(e.to_string()))
}

/// Width and height in dots; none when one is 0, not a number, or there are too many.
fn dots(size: (f32, f32), scale: f64) -> Option<(u32, u32)> {
    let side = |points: f32| {
        let dots = (f64::from(points) * scale).round();
        (dots >= 1.0 && dots <= DOT_LIMIT as f64).then_some(dots as u32)
    };
    let (width, height) = (side(size.0)?, side(size.1)?);
    (u64::from(width) * u64::from(height) <= DOT_LIMIT).then_some((width, height))
}

fn encode(picture: &Pixmap, dots_per_inch: f32) -> Result<Vec<u8>, png::EncodingError> {
    // Every dot is opaque, so its colours are not premultiplied by anything.
    let rgb: Vec<u8> =
        picture.data().as_chunks::<4>().0.iter().flat_map(|[r, g, b, _]| [*r, *g, *b]).collect();
    let per_metre = (f64::from(dots_per_inch) / METRES).round() as u32;
    let mut out = Vec::new();
    let mut encoder = Encoder::new(&mut out, picture.width(), picture.height());
    encoder.set_color(ColorType::Rgb);
    encoder.set_depth(BitDepth::Eight);
    encoder.set_pixel_dims(Some(PixelDimensions {
        xppu: per_metre,
        yppu: per_metre,
        unit: Unit::Meter,
    }));
    let mut writer = encoder.write_header()?;
    writer.write_image_data(&rgb)?;
    writer.finish()?;
    Ok(out)
}
