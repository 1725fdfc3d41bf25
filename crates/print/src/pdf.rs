//! The PDF backend: one `match`, no layout.

use drawing::{Mark, P, Palette, TextMark};
use krilla::geom::Path;
use krilla::metadata::{DateTime, Metadata};
use krilla::page::PageSettings;
use krilla::surface::Surface;
use krilla::{Document, SerializeSettings};

use crate::letters::{Letters, shown};
use crate::text::Type;
use crate::{Error, Info, Page, catalog, check, ink};

/// The pages as one PDF 1.7 file, which asks the viewer not to scale it when it is printed. Text is
/// text, with the letters that are used embedded. `progress` is told how many pages are done, from 1 to
/// all of them.
///
/// # Errors
/// When there is no page, a page has no usable size, a number is not finite or too large, or the font
/// lacks a letter. Nothing is drawn before everything is checked.
pub fn pdf(
    pages: &[Page<'_>],
    info: &Info,
    palette: Palette,
    progress: &mut dyn FnMut(usize),
) -> Result<Vec<u8>, Error> {
    if pages.is_empty() {
        return Err(Error::NoPage);
    }
    let letters = Letters::new()?;
    for (i, page) in pages.iter().enumerate() {
        check::page(page, i + 1, &letters)?;
    }
    let pen = Pen { letters, faces: Type::new()?, palette };
    let mut document = Document::new_with(SerializeSettings {
        xmp_metadata: false,
        enable_tagging: false,
        ..SerializeSettings::default()
    });
    document.set_metadata(metadata(info));
    for (i, page) in pages.iter().enumerate() {
        let (width, height) = page.size;
        let settings = PageSettings::from_wh(width, height).ok_or(Error::Size {
            page: i + 1,
            width,
            height,
        })?;
        let mut sheet = document.start_page_with(settings);
        let mut surface = sheet.surface();
        for mark in &page.marks.0 {
            pen.draw(&mut surface, mark);
        }
        surface.finish();
        sheet.finish();
        progress(i + 1);
    }
    let bytes = document.finish().map_err(|e| Error::Writer(e.to_string()))?;
    catalog::print_unscaled(bytes)
}

fn metadata(info: &Info) -> Metadata {
    let mut data = Metadata::new();
    if !info.title.is_empty() {
        data = data.title(shown(&info.title));
    }
    if !info.author.is_empty() {
        data = data.authors(vec![shown(&info.author)]);
    }
    if !info.subject.is_empty() {
        data = data.description(shown(&info.subject));
    }
    if !info.keywords.is_empty() {
        data = data.keywords(info.keywords.iter().map(|k| shown(k)).collect());
    }
    if let Some((year, month, day)) = info.date {
        data = data.creation_date(DateTime::new(year).month(month).day(day));
    }
    data
}

struct Pen {
    letters: Letters,
    faces: Type,
    palette: Palette,
}

impl Pen {
    fn draw(&self, surface: &mut Surface<'_>, mark: &Mark) {
        match mark {
            Mark::Fill { rings, tone, alpha } => {
                let path = ink::path(rings.iter().map(Vec::as_slice), true);
                put(surface, path, Some(ink::fill(*tone, *alpha, self.palette)), None);
            }
            Mark::Line { points, closed, stroke } => {
                let path = ink::path([points.as_slice()], *closed);
                put(surface, path, None, ink::stroke(stroke, self.palette));
            }
            Mark::Segments { pairs, stroke } => {
                let ends: Vec<[P; 2]> = pairs.iter().map(|(a, b)| [*a, *b]).collect();
                let path = ink::path(ends.iter().map(<[P; 2]>::as_slice), false);
                put(surface, path, None, ink::stroke(stroke, self.palette));
            }
            Mark::Circle { centre, radius, fill, stroke } => {
                let fill = fill.map(|tone| ink::fill(tone, 1.0, self.palette));
                let stroke = stroke.as_ref().and_then(|s| ink::stroke(s, self.palette));
                put(surface, ink::circle(*centre, *radius), fill, stroke);
            }
            Mark::Text(text) => self.text(surface, text),
            Mark::Begin(_) | Mark::End => {}
        }
    }

    fn text(&self, surface: &mut Surface<'_>, text: &TextMark) {
        if let Some(plate) = text.plate {
            let path = ink::path([text.plate_corners().as_slice()], true);
            put(surface, path, Some(ink::fill(plate, 1.0, self.palette)), None);
        }
        self.faces.draw(surface, &self.letters, text, self.palette);
    }
}

/// Draws an outline; nothing when there is no outline, or neither a fill nor a stroke.
fn put(
    surface: &mut Surface<'_>,
    path: Option<Path>,
    fill: Option<krilla::paint::Fill>,
    stroke: Option<krilla::paint::Stroke>,
) {
    // Without a fill and a stroke the library would fill with black.
    let Some(path) = path.filter(|_| fill.is_some() || stroke.is_some()) else { return };
    surface.set_fill(fill);
    surface.set_stroke(stroke);
    surface.draw_path(&path);
}
