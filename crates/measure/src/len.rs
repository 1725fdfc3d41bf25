//! The length type: a whole count of 1/320 mm.

use std::iter::Sum;
use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub, SubAssign};

use serde::{Deserialize, Serialize};

/// A length, or one coordinate of a point: a whole count of 1/320 mm.
///
/// Range: `i32`, about ±6.7 km. Coordinates of a plan stay within ±[`Len::COORD_LIMIT`] so that the
/// sum and difference of any two of them fit and an orientation test fits `i64`.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct Len(i32);

impl Len {
    /// Units in one millimetre.
    pub const PER_MM: i32 = 320;
    /// Units in 1/64 inch.
    pub const PER_64TH: i32 = 127;
    /// Units in one inch.
    pub const PER_INCH: i32 = 8_128;
    /// Units in one foot.
    pub const PER_FOOT: i32 = 97_536;
    /// No length.
    pub const ZERO: Len = Len(0);
    /// The smallest positive length.
    pub const UNIT: Len = Len(1);
    /// The largest magnitude that a coordinate of a plan may have (2^29 units, about 1.68 km).
    pub const COORD_LIMIT: Len = Len(1 << 29);

    /// A length from its count of units.
    pub const fn from_units(units: i32) -> Len {
        Len(units)
    }

    /// The count of 1/320 mm.
    pub const fn units(self) -> i32 {
        self.0
    }

    /// Whole inches.
    pub const fn inches(n: i32) -> Len {
        Len(n * Self::PER_INCH)
    }

    /// Whole feet and inches: `Len::feet_inches(6, 8)` is 6 ft 8 in.
    pub const fn feet_inches(feet: i32, inches: i32) -> Len {
        Len(feet * Self::PER_FOOT + inches * Self::PER_INCH)
    }

    /// A count of 1/64 inch: `Len::sixty_fourths(96)` is 1 1/2 in.
    pub const fn sixty_fourths(n: i32) -> Len {
        Len(n * Self::PER_64TH)
    }

    /// Whole millimetres.
    pub const fn mm(n: i32) -> Len {
        Len(n * Self::PER_MM)
    }

    /// The length in inches, for painting, reports and JSON; never to compare with a limit.
    pub fn to_inches(self) -> f64 {
        f64::from(self.0) / f64::from(Self::PER_INCH)
    }

    /// The length in millimetres, for painting and reports; never to compare with a limit.
    pub fn to_mm(self) -> f64 {
        f64::from(self.0) / f64::from(Self::PER_MM)
    }

    /// The magnitude.
    pub const fn abs(self) -> Len {
        Len(self.0.abs())
    }

    /// `self + other`, or `None` on overflow.
    pub fn checked_add(self, other: Len) -> Option<Len> {
        self.0.checked_add(other.0).map(Len)
    }

    /// The nearest whole multiple of `step` (halves away from zero); `step` of zero or less gives `self`.
    pub fn round_to(self, step: Len) -> Len {
        if step.0 <= 0 {
            return self;
        }
        let (value, step) = (i64::from(self.0), i64::from(step.0));
        let half = step / 2;
        let rounded = if value >= 0 { (value + half) / step } else { (value - half) / step } * step;
        Len(i32::try_from(rounded).unwrap_or(self.0))
    }
}

impl Add for Len {
    type Output = Len;
    fn add(self, other: Len) -> Len {
        Len(self.0 + other.0)
    }
}

impl Sub for Len {
    type Output = Len;
    fn sub(self, other: Len) -> Len {
        Len(self.0 - other.0)
    }
}

impl Neg for Len {
    type Output = Len;
    fn neg(self) -> Len {
        Len(-self.0)
    }
}

impl Mul<i32> for Len {
    type Output = Len;
    fn mul(self, n: i32) -> Len {
        Len(self.0 * n)
    }
}

impl Div<i32> for Len {
    type Output = Len;
    /// Divides, rounding towards zero.
    fn div(self, n: i32) -> Len {
        Len(self.0 / n)
    }
}

impl AddAssign for Len {
    fn add_assign(&mut self, other: Len) {
        *self = *self + other;
    }
}

impl SubAssign for Len {
    fn sub_assign(&mut self, other: Len) {
        *self = *self - other;
    }
}

impl Sum for Len {
    fn sum<I: Iterator<Item = Len>>(iter: I) -> Len {
        iter.fold(Len::ZERO, Add::add)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn inches_and_millimetres_are_whole_counts_of_units() {
        // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959).
        assert_eq!(Len::inches(10), Len::mm(254));
        assert_eq!(Len::sixty_fourths(64), Len::inches(1));
        assert_eq!(Len::feet_inches(1, 0), Len::inches(12));
        assert_eq!(Len::inches(36).to_mm(), 914.4);
        assert_eq!(Len::mm(127).to_inches(), 5.0);
    }

    #[test]
    fn rounding_to_a_step_takes_halves_away_from_zero() {
        let round = |n: i32| Len::from_units(n).round_to(Len::sixty_fourths(1)).units();
        assert_eq!((round(63), round(64), round(-63), round(-64)), (0, 127, 0, -127));
        let even = |n: i32| Len::from_units(n).round_to(Len::from_units(10)).units();
        assert_eq!((even(4), even(5), even(-5), even(-4)), (0, 10, -10, 0));
        assert_eq!(Len::from_units(7).round_to(Len::ZERO), Len::from_units(7));
        assert_eq!(Len::from_units(i32::MAX).round_to(Len::inches(1)).units() % 8_128, 0);
    }
}
