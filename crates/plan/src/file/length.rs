//! Lengths as the plan file writes them: exact, in the unit that says them in whole numbers.
//!
//! `12ft 6 1/2in` where the length is a whole count of 1/64 inch, else `3201mm` where it is a whole
//! count of millimetres, else `1234567u`, a count of 1/320 mm. A minus sign in front holds for the whole.

use std::fmt;

use measure::Len;
use serde::de::{Deserialize, Deserializer, Error, Visitor};
use serde::ser::{Serialize, Serializer};

/// A length in a file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct L(pub Len);

const EXPECTED: &str = "a length in quotes, such as \"12ft 6 1/2in\", \"3200mm\" or \"17u\" (1u is 1/320 mm), of at most 6.7 km";

impl fmt::Display for L {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let units = i64::from(self.0.units());
        let sign = if units < 0 { "-" } else { "" };
        let size = units.abs();
        if size % i64::from(Len::PER_64TH) == 0 {
            write!(f, "{sign}")?;
            feet_and_inches(f, size / i64::from(Len::PER_64TH))
        } else if size % i64::from(Len::PER_MM) == 0 {
            write!(f, "{sign}{}mm", size / i64::from(Len::PER_MM))
        } else {
            write!(f, "{sign}{size}u")
        }
    }
}

fn feet_and_inches(f: &mut fmt::Formatter<'_>, sixty_fourths: i64) -> fmt::Result {
    let (feet, rest) = (sixty_fourths / 768, sixty_fourths % 768);
    let (whole, part) = (rest / 64, rest % 64);
    if feet > 0 {
        write!(f, "{feet}ft")?;
    }
    if rest == 0 && feet > 0 {
        return Ok(());
    }
    if feet > 0 {
        write!(f, " ")?;
    }
    if whole > 0 || part == 0 {
        write!(f, "{whole}")?;
    }
    if part > 0 {
        // The largest power of two that divides both.
        let common = 1 << part.trailing_zeros();
        let space = if whole > 0 { " " } else { "" };
        write!(f, "{space}{}/{}", part / common, 64 / common)?;
    }
    write!(f, "in")
}

/// Reads what [`L`]'s `Display` writes; `None` for anything else.
fn read(text: &str) -> Option<Len> {
    let (sign, text) = match text.strip_prefix('-') {
        Some(rest) => (-1, rest),
        None => (1, text),
    };
    let size = if let Some(count) = text.strip_suffix('u') {
        whole(count)?
    } else if let Some(count) = text.strip_suffix("mm") {
        whole(count)?.checked_mul(i64::from(Len::PER_MM))?
    } else {
        let (feet, inches) = match text.split_once("ft") {
            Some((feet, "")) => (whole(feet)?, "0in"),
            Some((feet, inches)) => (whole(feet)?, inches.strip_prefix(' ')?),
            None => (0, text),
        };
        let inches = sixty_fourths(inches.strip_suffix("in")?)?;
        let sum = feet.checked_mul(768)?.checked_add(inches)?;
        sum.checked_mul(i64::from(Len::PER_64TH))?
    };
    i32::try_from(sign * size).ok().map(Len::from_units)
}

/// `6 1/2`, `6` or `1/2` as a count of 1/64.
fn sixty_fourths(inches: &str) -> Option<i64> {
    let (count, part) = match inches.split_once(' ') {
        Some((count, part)) => (whole(count)?, part),
        None if inches.contains('/') => (0, inches),
        None => (whole(inches)?, "0/64"),
    };
    let (n, d) = part.split_once('/')?;
    let (n, d) = (whole(n)?, whole(d)?);
    let fits = (2..=64).contains(&d) && 64 % d == 0 && n < d;
    if !fits {
        return None;
    }
    count.checked_mul(64)?.checked_add(n * (64 / d))
}

/// Digits only, at most ten.
fn whole(digits: &str) -> Option<i64> {
    let plain = (1..=10).contains(&digits.len()) && digits.bytes().all(|b| b.is_ascii_digit());
    plain.then(|| digits.parse().ok())?
}

impl Serialize for L {
    fn serialize<S: Serializer>(&self, s: S) -> Result<S::Ok, S::Error> {
        s.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for L {
    fn deserialize<D: Deserializer<'de>>(d: D) -> Result<L, D::Error> {
        struct Text;
        impl Visitor<'_> for Text {
            type Value = L;
            fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
                f.write_str(EXPECTED)
            }
            fn visit_str<E: Error>(self, text: &str) -> Result<L, E> {
                let unexpected = serde::de::Unexpected::Str(text);
                read(text).map(L).ok_or_else(|| E::invalid_value(unexpected, &self))
            }
        }
        d.deserialize_str(Text)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn writes_what_a_reader_expects() {
        for (len, text) in [
            (Len::ZERO, "0in"),
            (Len::inches(6), "6in"),
            (Len::inches(-6), "-6in"),
            (Len::feet_inches(12, 0), "12ft"),
            (Len::sixty_fourths(32), "1/2in"),
            (Len::feet_inches(12, 6) + Len::sixty_fourths(32), "12ft 6 1/2in"),
            (Len::feet_inches(1, 0) + Len::sixty_fourths(1), "1ft 1/64in"),
            (Len::sixty_fourths(64 + 24), "1 3/8in"),
            (Len::mm(3201), "3201mm"),
            (Len::mm(-1), "-1mm"),
            (Len::from_units(17), "17u"),
            (Len::from_units(i32::MIN), "-2147483648u"),
            (Len::from_units(i32::MAX), "2147483647u"),
        ] {
            assert_eq!(L(len).to_string(), text);
            assert_eq!(read(text), Some(len), "{text}");
        }
    }

    #[test]
    fn refuses_anything_else() {
        for text in [
            "",
            "-",
            "6",
            "in",
            "ft",
            "mm",
            "u",
            "6 in",
            "1/0in",
            "1/3in",
            "2/2in",
            "1/128in",
            "--1in",
            "+1in",
            "1.5in",
            "6in ",
            " 6in",
            "1ft  6in",
            "6in 1ft",
            "1ft 6",
            "99999999999u",
            "3000000000u",
            "9999999999ft",
            "9999999999mm",
            "1ft6in",
            "1e3u",
            "٣in",
            "1 in",
            "1 1in",
        ] {
            assert_eq!(read(text), None, "{text:?}");
        }
    }

    proptest! {
        #[test]
        fn write_then_read_is_the_identity(units: i32) {
            let len = Len::from_units(units);
            prop_assert_eq!(read(&L(len).to_string()), Some(len));
            let on_tape = Len::from_units(units / 127 * 127);
            prop_assert_eq!(read(&L(on_tape).to_string()), Some(on_tape));
        }

        #[test]
        fn any_text_is_read_or_refused(text in "[-0-9/ finutm.]{0,12}") {
            if let Some(len) = read(&text) {
                prop_assert_eq!(read(&L(len).to_string()), Some(len));
            }
        }
    }
}
