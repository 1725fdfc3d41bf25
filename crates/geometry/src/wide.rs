//! Comparing two ratios of wide integers exactly.
//!
//! `a / b < c / d` is `a d < c b`; the products of squared distances need up to 190 bits, so each is
//! made of four 64-bit limbs.

use std::cmp::Ordering;

/// Compares `a.0 / a.1` with `b.0 / b.1`; both denominators positive.
pub(crate) fn cmp_ratios(a: (u128, u128), b: (u128, u128)) -> Ordering {
    match (a.0.checked_mul(b.1), b.0.checked_mul(a.1)) {
        (Some(left), Some(right)) => left.cmp(&right),
        _ => multiply(a.0, b.1).cmp(&multiply(b.0, a.1)),
    }
}

/// The full product of two numbers as (high, low).
fn multiply(a: u128, b: u128) -> (u128, u128) {
    const HALF: u32 = 64;
    const MASK: u128 = u64::MAX as u128;
    let (a1, a0) = (a >> HALF, a & MASK);
    let (b1, b0) = (b >> HALF, b & MASK);
    let (low, mid_a, mid_b, high) = (a0 * b0, a1 * b0, a0 * b1, a1 * b1);
    // At most three times 2^64 - 1: no overflow.
    let carry = (low >> HALF) + (mid_a & MASK) + (mid_b & MASK);
    let low = (low & MASK) | (carry << HALF);
    (high + (mid_a >> HALF) + (mid_b >> HALF) + (carry >> HALF), low)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn the_largest_product() {
        // (2^128 - 1)^2 = 2^256 - 2^129 + 1.
        assert_eq!(multiply(u128::MAX, u128::MAX), (u128::MAX - 1, 1));
        assert_eq!(multiply(u128::MAX, 1), (0, u128::MAX));
        assert_eq!(multiply(0, u128::MAX), (0, 0));
    }

    #[test]
    fn ratios_that_differ_in_the_last_bit() {
        let n = 1u128 << 122;
        assert_eq!(cmp_ratios((n, n - 1), (n + 1, n)), Ordering::Greater);
        assert_eq!(cmp_ratios((n, n + 1), (n + 1, n + 2)), Ordering::Less);
        assert_eq!(cmp_ratios((n, 3), (2 * n, 6)), Ordering::Equal);
    }

    proptest! {
        /// Schoolbook multiplication by 32-bit digits as the reference.
        #[test]
        fn products_agree_with_schoolbook(a: u128, b: u128) {
            let digits = |n: u128| [0, 32, 64, 96].map(|s| ((n >> s) & 0xffff_ffff) as u64);
            let mut sum = [0u128; 9];
            for (i, x) in digits(a).into_iter().enumerate() {
                for (j, y) in digits(b).into_iter().enumerate() {
                    sum[i + j] += u128::from(x) * u128::from(y);
                }
            }
            for i in 0..8 {
                sum[i + 1] += sum[i] >> 32;
                sum[i] &= 0xffff_ffff;
            }
            let word = |d: &[u128]| d.iter().rev().fold(0u128, |n, d| (n << 32) | d);
            prop_assert_eq!(multiply(a, b), (word(&sum[4..8]), word(&sum[0..4])));
        }

        #[test]
        fn products_of_halves_agree_with_u128(a: u64, b: u64) {
            prop_assert_eq!(multiply(a.into(), b.into()), (0, u128::from(a) * u128::from(b)));
        }
    }
}
