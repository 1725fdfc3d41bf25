//! Reading a length as a person writes it.

use crate::Len;

/// The unit that a bare number means; it is shown beside the field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BareUnit {
    Inches,
    Feet,
    Millimetres,
    Metres,
}

/// Why a text is not a length. `Display` says what is wrong and what is accepted.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum ReadError {}

/// Reads a length.
pub fn read_len(_text: &str, _bare: BareUnit) -> Result<Len, ReadError> {
    unimplemented!()
}
