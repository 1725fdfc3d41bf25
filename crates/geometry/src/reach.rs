//! Squared distances as ratios of integers, compared exactly.

use std::cmp::Ordering;

use measure::Len;

use crate::wide::cmp_ratios;
use crate::{Pt, Seg};

/// A squared distance, `num / den` square units; `den` is positive. Equal and ordered by value.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Reach {
    num: u128,
    den: u128,
}

impl Reach {
    pub(crate) const ZERO: Reach = Reach { num: 0, den: 1 };

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
        Reach { num: u128::from(square.unsigned_abs()), den: 1 }
    }

    /// From a line: `cross` of its direction with the way to the point, `length2` of the direction.
    pub(crate) fn off_line(cross: i64, length2: i64) -> Reach {
        let off = u128::from(cross.unsigned_abs());
        Reach { num: off * off, den: u128::from(length2.unsigned_abs()) }
    }

    /// The square of a length; a negative length counts as zero.
    pub(crate) fn of_len(len: Len) -> Reach {
        let len = i64::from(len.units().max(0));
        Reach::whole(len * len)
    }

    /// Of twice the distance.
    pub(crate) fn doubled(self) -> Reach {
        // The numerator is at most 2^122.
        Reach { num: 4 * self.num, den: self.den }
    }

    pub(crate) fn is_zero(self) -> bool {
        self.num == 0
    }

    /// Whether it is a whole number of square units by its form: then its floor says all.
    pub(crate) fn is_whole(self) -> bool {
        self.den == 1
    }

    /// Whether the distance is less than a positive limit.
    pub(crate) fn is_below(self, limit: Len) -> bool {
        let limit = u128::from(limit.units().unsigned_abs());
        // At most 2^62 * 2^63.
        self.num < limit * limit * self.den
    }

    /// The whole square units of it. Rising with the value, so it orders all but near ties.
    pub(crate) fn floor(self) -> u64 {
        let whole = match (u64::try_from(self.num), u64::try_from(self.den)) {
            (Ok(num), Ok(den)) => u128::from(num / den),
            _ => self.num / self.den,
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
        cmp_ratios((self.num, self.den), (other.num, other.den))
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
