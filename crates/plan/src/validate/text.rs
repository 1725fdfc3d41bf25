//! Names and remarks.

use crate::EditError;
use crate::bounds::TextBound;

use super::Who;

/// Checks the length of a text and that it can be shown.
pub(super) fn check(who: Who, bound: TextBound, text: &str) -> Result<(), EditError> {
    let length = text.chars().count();
    if length > bound.most as usize {
        return Err(EditError::TextTooLong { who: who(), bound, length });
    }
    if text.chars().filter(|c| !c.is_whitespace()).count() < bound.least as usize {
        return Err(EditError::TextMissing { who: who(), bound });
    }
    if text.chars().any(|c| c.is_control() && !(bound.lines && c == '\n')) {
        return Err(EditError::TextControl { who: who(), bound });
    }
    Ok(())
}
