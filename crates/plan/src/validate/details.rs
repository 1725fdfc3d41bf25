//! The stated details of an element or the site.

use crate::EditError;
use crate::detail::{Detail, Details};

use super::Who;

/// Checks that each detail belongs there and has a value that it takes.
pub(super) fn check(
    who: Who,
    details: &Details,
    belongs: impl Fn(&Detail) -> bool,
) -> Result<(), EditError> {
    for (detail, value) in details.iter() {
        if !belongs(detail) {
            return Err(EditError::DetailMisfit { who: who(), detail: detail.slug });
        }
        if !detail.takes(value) {
            return Err(EditError::DetailValue { who: who(), detail, value });
        }
    }
    Ok(())
}
