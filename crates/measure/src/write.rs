//! Writing a length or area for a person.

use serde::{Deserialize, Serialize};

use crate::{Area, Len};

/// The unit system that lengths are shown in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum System {
    /// Feet, inches and fractions; square feet.
    #[default]
    Imperial,
    /// Millimetres; square metres.
    Metric,
}

/// How finely a length is shown, and which way it is rounded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Precision {
    /// Nearest 1/16 in or 1 mm: what a tape shows.
    Tape,
    /// Nearest 1/64 in or 0.1 mm, for entry fields: what was typed comes back.
    Fine,
    /// Down to 1/16 in or 1 mm: for a measured width that must be "at least".
    Floor,
    /// Up to 1/16 in or 1 mm: for a measured size that must be "at most".
    Ceil,
}

impl System {
    /// Feet and inches with fractions (`12' 6 1/2"`, `0"`), or millimetres (`3200 mm`).
    pub fn len(self, _len: Len, _precision: Precision) -> String {
        unimplemented!()
    }

    /// Inches only (`33 5/8"`), or millimetres: how clearances are spoken of.
    pub fn inches(self, _len: Len, _precision: Precision) -> String {
        unimplemented!()
    }

    /// `118.4 sq ft` or `11.00 m²`, rounded down so that a shown figure is never larger than the true one.
    pub fn area(self, _area: Area) -> String {
        unimplemented!()
    }
}
