//! Squared distances as ratios of integers, compared exactly.

use std::cmp::Ordering;

use measure::Len;

use crate::wide::cmp_ratios;
use crate::{Pt, Seg};

/// A squared distance: a whole number, or the square of a number over another. Equal and ordered by
/// value. Kept small, because there are many.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Reach {
    /// The number, or the number to be squared.
    num: u64,
    /// Zero: the number is not to be squared.
    den: u64,
}

impl Reach {
    pub(crate) const ZERO: Reach = Reach { num: 0, den: 0 };

    fn ratio(self) -> (u128, u128) {
        let num = u128::from(self.num);
        if self.den == 0 { (num, 1) } else { (num * num, u128::from(self.den)) }
    }

    /// From a point to a closed segment.
    pub(crate) fn of(p: Pt, e: Seg) -> Reach {
        let (d, from_a) = (e.dir(), p - e.a);
        let (along, length2) = (from_a.dot(d), d.norm2());
        if along <= 0 {
            Reach::whole(from_a.norm2())
        } else if along >= length2 {
            Reach::whole((p - e.b).norm2())
        } else {
            Reach::off_line(d.cross(from_a), length2)
        }
    }

    /// A squared distance that is a whole number.
    pub(crate) fn whole(square: i64) -> Reach {
        Reach { num: square.unsigned_abs(), den: 0 }
    }

    /// From a line: `cross` of its direction with the way to the point, `length2` of the direction.
    pub(crate) fn off_line(cross: i64, length2: i64) -> Reach {
        Reach { num: cross.unsigned_abs(), den: length2.unsigned_abs() }
    }

    /// The square of a length; a negative length counts as zero.
    pub(crate) fn of_len(len: Len) -> Reach {
        let len = i64::from(len.units().max(0));
        Reach::whole(len * len)
    }

    /// Of twice the distance.
    pub(crate) fn doubled(self) -> Reach {
        // A whole square is at most 2^61, the root of a square at most 2^61.
        let times = if self.den == 0 { 4 } else { 2 };
        Reach { num: times * self.num, den: self.den }
    }

    pub(crate) fn is_zero(self) -> bool {
        self.num == 0
    }

    /// Whether it is a whole number of square units by its form: then its floor says all.
    pub(crate) fn is_whole(self) -> bool {
        self.den == 0
    }

    /// Whether the distance is less than a positive limit.
    pub(crate) fn is_below(self, limit: Len) -> bool {
        let limit = u128::from(limit.units().unsigned_abs());
        let (num, den) = self.ratio();
        // At most 2^62 * 2^63.
        num < limit * limit * den
    }

    /// The whole square units of it. Rising with the value, so it orders all but near ties.
    pub(crate) fn floor(self) -> u64 {
        let (num, den) = self.ratio();
        let whole = match (u64::try_from(num), u64::try_from(den)) {
            (Ok(num), Ok(den)) => return num / den,
            _ => num / den,
        };
        // A plan's diagonal squared is below 2^62.
        u64::try_from(whole).unwrap_or(u64::MAX)
    }

    /// The distance, rounded down.
    pub(crate) fn len(self) -> Len {
        Len::from_units(i32::try_from(self.floor().isqrt()).unwrap_or(i32::MAX))
    }
}

impl Ord for Reach {
    fn cmp(&self, other: &Reach) -> Ordering {
        if self.den == other.den {
            return self.num.cmp(&other.num);
        }
        cmp_ratios(self.ratio(), other.ratio())
    }
}

impl PartialOrd for Reach {
    fn partial_cmp(&self, other: &Reach) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Reach {
    fn eq(&self, other: &Reach) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Reach {}
