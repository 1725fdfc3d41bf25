//! What can go wrong.

/// Why pages can't be written. Pages and marks are counted from 1.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Error {
    /// There is nothing to write.
    #[error("there is no page to print")]
    NoPage,
    /// A side of the page is not a number, not more than 0 or longer than [`crate::PAGE_LIMIT`].
    #[error("page {page}: {width} by {height} points is no size for a sheet")]
    Size { page: usize, width: f32, height: f32 },
    /// A position or a size is not a number or larger than [`crate::MARK_LIMIT`].
    #[error("page {page}: mark {mark} has a number that can't be drawn: {number}")]
    Number { page: usize, mark: usize, number: f32 },
    /// The font has no picture of a letter.
    #[error("page {page}: the font has no letter {letter:?} for the text {text:?}")]
    Glyph { page: usize, text: String, letter: char },
    /// The resolution is not a number, not more than 0 or asks for more than [`crate::DOT_LIMIT`] dots.
    #[error(
        "a picture at {dots_per_inch} dots per inch can't be made: it must have 1 to 150,000,000 dots"
    )]
    Dots { dots_per_inch: f32 },
    /// A library refused what it was given.
    #[error("the file can't be written: {0}")]
    Writer(String),
}
