//! The stated details of an element or the site.

use crate::EditError;
use crate::detail::{Detail, Details};

/// Checks that each detail belongs there and has a value that it takes.
pub(super) fn check(
    who: &str,
    details: &Details,
    belongs: impl Fn(&Detail) -> bool,
) -> Result<(), EditError> {
    for (detail, value) in details.iter() {
        let who = who.to_owned();
        if !belongs(detail) {
            return Err(EditError::DetailMisfit { who, detail: detail.slug });
        }
        if !detail.takes(value) {
            return Err(EditError::DetailValue { who, detail, value });
        }
    }
    Ok(())
}
