//! Drawings on paper: the marks of the `drawing` crate as PDF and PNG files.
//!
//! Everything is in points (1/72 in), y down. Nothing is laid out here: a page says how large it is and
//! its marks say where they stand. The same pages, information and palette give the same bytes.

mod catalog;
mod check;
mod error;
mod ink;
mod letters;
mod pdf;
mod png;
mod text;

use drawing::Marks;

pub use crate::error::Error;
pub use crate::pdf::pdf;
pub use crate::png::png;

/// One sheet of paper: its size in points (width, height) and what is drawn on it.
#[derive(Clone, Copy, Debug)]
pub struct Page<'a> {
    /// Width and height in points, more than 0 and at most [`PAGE_LIMIT`].
    pub size: (f32, f32),
    pub marks: &'a Marks,
}

/// Document information of a PDF. What is empty is left out.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Info {
    pub title: String,
    pub author: String,
    pub subject: String,
    pub keywords: Vec<String>,
    /// Year, month (1 to 12) and day (1 to 31) on which the drawing was made. No other date is written.
    pub date: Option<(u16, u8, u8)>,
}

/// The longest side of a page in points: 200 in, what readers of PDF 1.7 can be trusted with (ISO
/// 32000-1, annex C).
pub const PAGE_LIMIT: f32 = 14_400.0;
/// The largest position or size of a mark, in points, in either direction.
pub const MARK_LIMIT: f32 = 1_000_000.0;
/// The most dots of a PNG file.
pub const DOT_LIMIT: u64 = 150_000_000;
