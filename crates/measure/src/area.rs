//! The area type: a whole count of square units, (1/320 mm)².

use std::iter::Sum;
use std::ops::{Add, Sub};

use serde::{Deserialize, Serialize};

use crate::Len;

/// An area: a whole count of square units, (1/320 mm)².
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct Area(i128);

impl Area {
    /// No area.
    pub const ZERO: Area = Area(0);

    /// An area from its count of square units.
    pub const fn from_square_units(n: i128) -> Area {
        Area(n)
    }

    /// The count of square units.
    pub const fn square_units(self) -> i128 {
        self.0
    }

    /// The area of a rectangle.
    pub const fn of_rect(width: Len, depth: Len) -> Area {
        Area(width.units() as i128 * depth.units() as i128)
    }

    /// Hundredths of a square inch: `Area::square_inch_hundredths(82_080)` is 820.8 sq in (5.7 sq ft).
    pub const fn square_inch_hundredths(n: i128) -> Area {
        // A hundredth of a square inch is not whole in square units. Rounding *up* keeps "at least"
        // exact: a whole count meets the rounded limit exactly when it is at least the true figure.
        let square_inch = Len::PER_INCH as i128 * Len::PER_INCH as i128;
        Area((square_inch * n + 99) / 100)
    }

    /// Whole square feet.
    pub const fn square_feet(n: i128) -> Area {
        Area(Len::PER_FOOT as i128 * Len::PER_FOOT as i128 * n)
    }

    /// Tenths of a square foot, rounded up to a whole square unit: `square_foot_tenths(57)` is 5.7 sq ft.
    pub const fn square_foot_tenths(n: i128) -> Area {
        let square_foot = Len::PER_FOOT as i128 * Len::PER_FOOT as i128;
        Area((square_foot * n + 9) / 10)
    }

    /// Square feet, for display and JSON; never to compare with a limit.
    pub fn to_square_feet(self) -> f64 {
        self.0 as f64 / (f64::from(Len::PER_FOOT) * f64::from(Len::PER_FOOT))
    }

    /// Square inches, for display and JSON; never to compare with a limit.
    pub fn to_square_inches(self) -> f64 {
        self.0 as f64 / (f64::from(Len::PER_INCH) * f64::from(Len::PER_INCH))
    }

    /// Square metres, for display and JSON; never to compare with a limit.
    pub fn to_square_metres(self) -> f64 {
        self.0 as f64 / (f64::from(Len::PER_MM) * f64::from(Len::PER_MM) * 1e6)
    }
}

impl Add for Area {
    type Output = Area;
    fn add(self, other: Area) -> Area {
        Area(self.0 + other.0)
    }
}

impl Sub for Area {
    type Output = Area;
    fn sub(self, other: Area) -> Area {
        Area(self.0 - other.0)
    }
}

impl Sum for Area {
    fn sum<I: Iterator<Item = Area>>(iter: I) -> Area {
        iter.fold(Area::ZERO, Add::add)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_decimal_limit_is_met_by_the_least_whole_count_that_reaches_it() {
        let square_inch = i128::from(Len::PER_INCH).pow(2);
        // 820.80 sq in = 5.7 sq ft; neither is whole in square units.
        for (limit, num, den) in [
            (Area::square_inch_hundredths(82_080), square_inch * 82_080, 100),
            (Area::square_foot_tenths(57), square_inch * 144 * 57, 10),
        ] {
            let n = limit.square_units();
            assert!(n * den >= num && (n - 1) * den < num);
        }
        assert_eq!(Area::square_inch_hundredths(82_080), Area::square_foot_tenths(57));
    }

    #[test]
    fn units_of_area_agree() {
        let room = Area::of_rect(Len::feet_inches(7, 0), Len::feet_inches(10, 0));
        assert_eq!(room, Area::square_feet(70));
        assert_eq!((room.to_square_feet(), room.to_square_inches()), (70.0, 10_080.0));
        assert_eq!(Area::of_rect(Len::mm(2_000), Len::mm(3_000)).to_square_metres(), 6.0);
    }
}
