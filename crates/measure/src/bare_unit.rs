//! The unit that a number without a mark is in.

use std::fmt;

use crate::{Len, System};

/// The unit that a bare number means; it is shown beside the field.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum BareUnit {
    Inches,
    Feet,
    Millimetres,
    Metres,
}

impl BareUnit {
    /// The short word to show beside a field: `in`, `ft`, `mm`, `m`.
    pub const fn mark(self) -> &'static str {
        match self {
            BareUnit::Inches => "in",
            BareUnit::Feet => "ft",
            BareUnit::Millimetres => "mm",
            BareUnit::Metres => "m",
        }
    }

    /// The unit system that the unit belongs to.
    pub const fn system(self) -> System {
        match self {
            BareUnit::Inches | BareUnit::Feet => System::Imperial,
            BareUnit::Millimetres | BareUnit::Metres => System::Metric,
        }
    }

    /// Length units in one of this unit.
    pub(crate) const fn per_unit(self) -> i128 {
        match self {
            BareUnit::Inches => Len::PER_INCH as i128,
            BareUnit::Feet => Len::PER_FOOT as i128,
            BareUnit::Millimetres => Len::PER_MM as i128,
            BareUnit::Metres => Len::PER_MM as i128 * 1_000,
        }
    }
}

impl fmt::Display for BareUnit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.mark())
    }
}
