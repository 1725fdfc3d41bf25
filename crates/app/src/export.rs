//! The permit set as files: one PDF of all sheets, or a file for each sheet.

use std::io;
use std::path::{Path, PathBuf};

use clap::ValueEnum;
use drawing::Palette;
use plan::Site;
use print::{Info, Page};
use sheets::{Set, Sheet};

use crate::store;

/// A kind of file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Format {
    /// One file with all sheets, to scale.
    Pdf,
    /// A file for each sheet, to scale.
    Svg,
    /// A picture of each sheet, 150 dots per inch.
    Png,
}

/// Dots per inch of a picture: small type stays legible.
const DOTS: f32 = 150.0;

#[derive(Debug, thiserror::Error)]
pub enum ExportError {
    #[error("{}: the folder can't be made: {cause}. Choose another folder, or make room.", .path.display())]
    Folder { path: PathBuf, cause: io::Error },
    #[error("{}: can't be written: {cause}. Nothing that was there is lost; choose another folder, or make room.", .path.display())]
    File { path: PathBuf, cause: io::Error },
    #[error("Sheet {sheet} can't be drawn: {cause}.")]
    Sheet { sheet: String, cause: print::Error },
}

/// Writes the set into a folder; the names begin with `stem`. `progress` is called for each sheet that
/// is done. Each file is put in place whole: what was there before stays until then.
pub fn write(
    set: &Set,
    site: &Site,
    (folder, stem): (&Path, &str),
    formats: &[Format],
    progress: &mut dyn FnMut(),
) -> Result<Vec<PathBuf>, ExportError> {
    let made = std::fs::create_dir_all(folder);
    made.map_err(|cause| ExportError::Folder { path: folder.to_owned(), cause })?;
    let mut files = Vec::new();
    let mut put = |name: String, bytes: &[u8]| {
        let path = folder.join(name);
        let written = store::replace(&path, bytes);
        written.map_err(|cause| ExportError::File { path: path.clone(), cause })?;
        files.push(path);
        Ok::<(), ExportError>(())
    };
    for format in formats {
        match format {
            Format::Pdf => put(format!("{stem}.pdf"), &pdf(set, site, progress)?)?,
            Format::Svg | Format::Png => {
                for sheet in &set.sheets {
                    let (ending, bytes) = match format {
                        Format::Svg => ("svg", svg(sheet).into_bytes()),
                        _ => ("png", png(sheet)?),
                    };
                    put(format!("{stem}-{}-{}.{ending}", sheet.number, sheet.kind), &bytes)?;
                    progress();
                }
            }
        }
    }
    Ok(files)
}

/// All sheets as one PDF.
pub fn pdf(set: &Set, site: &Site, progress: &mut dyn FnMut()) -> Result<Vec<u8>, ExportError> {
    let pages: Vec<Page<'_>> =
        set.sheets.iter().map(|s| Page { size: s.size, marks: &s.marks }).collect();
    let info = Info {
        title: if site.title.is_empty() { "Basement".to_owned() } else { site.title.clone() },
        author: site.papers.author.clone(),
        subject: "Permit drawings of a basement finish".to_owned(),
        keywords: vec!["basement".to_owned(), "permit".to_owned()],
        date: date(&site.papers.date),
    };
    print::pdf(&pages, &info, Palette::Print, &mut |_| progress()).map_err(|cause| {
        ExportError::Sheet {
            sheet: match page_of(&cause).and_then(|page| set.sheets.get(page.checked_sub(1)?)) {
                Some(sheet) => sheet.number.clone(),
                None => "set".to_owned(),
            },
            cause,
        }
    })
}

fn svg(sheet: &Sheet) -> String {
    drawing::svg::write_paper(&sheet.marks, sheet.size, Palette::Print)
}

fn png(sheet: &Sheet) -> Result<Vec<u8>, ExportError> {
    let page = Page { size: sheet.size, marks: &sheet.marks };
    print::png(&page, Palette::Print, DOTS)
        .map_err(|cause| ExportError::Sheet { sheet: sheet.number.clone(), cause })
}

/// The page, counted from 1, that an error is about.
fn page_of(error: &print::Error) -> Option<usize> {
    match error {
        print::Error::Size { page, .. }
        | print::Error::Number { page, .. }
        | print::Error::Glyph { page, .. } => Some(*page),
        _ => None,
    }
}

/// Year, month and day of a date that is written so: `2026-11-25`.
fn date(text: &str) -> Option<(u16, u8, u8)> {
    let mut parts = text.trim().split('-');
    let date =
        (parts.next()?.parse().ok()?, parts.next()?.parse().ok()?, parts.next()?.parse().ok()?);
    let fits = parts.next().is_none() && (1..=12).contains(&date.1) && (1..=31).contains(&date.2);
    fits.then_some(date)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_date_is_told_only_where_it_is_one() {
        assert_eq!(date("2026-11-25"), Some((2026, 11, 25)));
        assert_eq!(date("25 November"), None);
        assert_eq!(date("2026-13-25"), None);
        assert_eq!(date(""), None);
    }
}
