//! Why a text can't be opened.

use std::fmt;

/// Why a file or a clipboard text can't be opened. `Display` says where, what is wrong and what to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileError {
    pub kind: FileErrorKind,
    /// The place in the text, where there is one.
    pub place: Option<Place>,
    /// What is wrong, without a full stop.
    pub what: String,
    /// What to do about it, as a sentence.
    pub advice: &'static str,
}

/// A place in a text; both counted from 1, the column in characters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Place {
    pub line: usize,
    pub column: usize,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FileErrorKind {
    /// Nothing in it.
    Empty,
    /// Larger than any plan.
    TooLarge,
    /// Not a plan at all.
    Foreign,
    /// Saved by a newer version of this program.
    Newer,
    /// Ends before the plan does.
    Truncated,
    /// A slip in the notation.
    Notation,
    /// Sound notation, but what it says can't be: a figure out of range, a wall that is missing.
    Content,
}

impl FileErrorKind {
    fn advice(self) -> &'static str {
        match self {
            FileErrorKind::Empty => "Choose another file, or open the backup beside it.",
            FileErrorKind::TooLarge => "Choose another file; this is no plan.",
            FileErrorKind::Foreign => "Choose a file that this program has saved.",
            FileErrorKind::Newer => "Open it with that version or a later one.",
            FileErrorKind::Truncated => {
                "It was probably not saved or copied whole; open the backup beside it."
            }
            FileErrorKind::Notation => {
                "Mend it at that place with a text editor, or open the backup beside it."
            }
            FileErrorKind::Content => {
                "Correct it at that place with a text editor, or open the backup beside it."
            }
        }
    }
}

impl FileError {
    pub(crate) fn new(
        kind: FileErrorKind,
        place: Option<Place>,
        what: impl Into<String>,
    ) -> FileError {
        let what = what.into().trim_end_matches('.').to_owned();
        FileError { kind, place, what, advice: kind.advice() }
    }
}

impl fmt::Display for FileError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(Place { line, column }) = self.place {
            write!(f, "line {line}, column {column}: ")?;
        }
        write!(f, "{}. {}", self.what, self.advice)
    }
}

impl std::error::Error for FileError {}
