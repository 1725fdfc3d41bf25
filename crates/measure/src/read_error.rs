//! Why a text is not a length, in words.

use crate::{Len, System};

/// What every message about an unreadable length ends with.
const ACCEPTED: &str = "write it like 12' 6 1/2\", 150.5\", 3/8, 3200 mm or 3.2 m";

/// Why a text is not a length. `Display` says what is wrong and what is accepted.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ReadError {
    /// Nothing but spaces.
    #[error("no length is given; {ACCEPTED}")]
    Empty,
    /// No reading fits the text.
    #[error("“{text}” is not a length; {ACCEPTED}")]
    NotALength { text: String },
    /// Two numbers follow each other without a mark, as in `12 6`.
    #[error("“{text}” has two numbers without a mark between them; {ACCEPTED}")]
    TwoNumbers { text: String },
    /// A fraction over zero.
    #[error("“{text}” has a fraction over zero; {ACCEPTED}")]
    OverZero { text: String },
    /// A fraction of one or more after a whole number, as in `6 9/8`.
    #[error("“{text}” has a fraction that is not less than one after a whole number; {ACCEPTED}")]
    FractionTooLarge { text: String },
    /// A part of a foot before inches, as in `12.5' 3"`.
    #[error("“{text}” has a part of a foot before inches; give whole feet, like 12' 6 1/2\"")]
    PartOfFoot { text: String },
    /// Twelve inches or more after feet, as in `12' 14"`.
    #[error("“{text}” has 12 or more inches after feet; give less than 12, or inches alone")]
    InchesAfterFeet { text: String },
    /// More digits than any length needs.
    #[error("“{text}” has too many digits; {ACCEPTED}")]
    TooManyDigits { text: String },
    /// Beyond what a [`Len`] can hold.
    #[error(
        "“{text}” is too long; the largest length that can be kept is {}",
        crate::write::rounded_down(*system, Len::from_units(i32::MAX))
    )]
    TooLong { text: String, system: System },
    /// Outside the range that the field accepts.
    #[error(
        "“{text}” is out of range; give a length from {} to {}",
        crate::write::rounded_up(*system, *min),
        crate::write::rounded_down(*system, *max)
    )]
    OutOfRange { text: String, min: Len, max: Len, system: System },
}

/// Why parsing stopped, before the text is attached.
pub(crate) enum Fault {
    NotALength,
    TwoNumbers,
    OverZero,
    FractionTooLarge,
    PartOfFoot,
    InchesAfterFeet,
    TooManyDigits,
}

impl Fault {
    pub(crate) fn about(self, text: &str) -> ReadError {
        let text = quoted(text);
        match self {
            Fault::NotALength => ReadError::NotALength { text },
            Fault::TwoNumbers => ReadError::TwoNumbers { text },
            Fault::OverZero => ReadError::OverZero { text },
            Fault::FractionTooLarge => ReadError::FractionTooLarge { text },
            Fault::PartOfFoot => ReadError::PartOfFoot { text },
            Fault::InchesAfterFeet => ReadError::InchesAfterFeet { text },
            Fault::TooManyDigits => ReadError::TooManyDigits { text },
        }
    }
}

/// The text as a message quotes it: trimmed, and cut when it is long.
pub(crate) fn quoted(text: &str) -> String {
    const LONGEST: usize = 40;
    let text = text.trim();
    match text.char_indices().nth(LONGEST) {
        Some((end, _)) => format!("{}…", &text[..end]),
        None => text.to_owned(),
    }
}
