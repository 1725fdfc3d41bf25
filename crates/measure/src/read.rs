//! Reading a length as a person writes it.
//!
//! ```text
//! length   = ["-"] ( feet ["-"] [inches] | inches | metric | bare )
//! feet     = quantity ( ' | ft | foot | feet )
//! inches   = quantity [ " | in | inch | inches ]     the mark may be left off after feet
//! metric   = quantity ( mm | cm | m )
//! bare     = quantity
//! quantity = decimal | whole ["-"] fraction | fraction
//! ```
//!
//! Values are ratios of integers until the last step, which rounds once to the nearest unit.

use crate::read_error::{Fault, quoted};
use crate::scan::{Token, scan};
use crate::{BareUnit, Len, ReadError, System};

/// Reads a length; a number without a mark is in `bare` units.
///
/// # Errors
/// Any variant of [`ReadError`] but [`ReadError::OutOfRange`].
pub fn read_len(text: &str, bare: BareUnit) -> Result<Len, ReadError> {
    read(text, bare).map(|(len, _)| len)
}

/// Reads a length that must lie in `min ..= max`.
///
/// # Errors
/// As [`read_len`], and [`ReadError::OutOfRange`], whose text gives the range in the unit system that
/// the text was written in (rounded inwards to 1/64 in or 0.1 mm, so that the limits given are accepted).
pub fn read_len_in(text: &str, bare: BareUnit, min: Len, max: Len) -> Result<Len, ReadError> {
    let (len, system) = read(text, bare)?;
    if len < min || len > max {
        return Err(ReadError::OutOfRange { text: quoted(text), min, max, system });
    }
    Ok(len)
}

/// A ratio of integers, not negative.
#[derive(Clone, Copy)]
struct Ratio {
    num: i128,
    den: i128,
}

impl Ratio {
    fn is_whole(self) -> bool {
        self.num % self.den == 0
    }
}

fn read(text: &str, bare: BareUnit) -> Result<(Len, System), ReadError> {
    if text.trim().is_empty() {
        return Err(ReadError::Empty);
    }
    let parsed = scan(text).and_then(|tokens| Parser { tokens: &tokens }.length(bare));
    let (units, system) = parsed.map_err(|fault| fault.about(text))?;
    // The negative of every length is one too.
    match i32::try_from(units) {
        Ok(units) if units != i32::MIN => Ok((Len::from_units(units), system)),
        _ => Err(ReadError::TooLong { text: quoted(text), system }),
    }
}

struct Parser<'a> {
    tokens: &'a [Token],
}

impl Parser<'_> {
    fn eat(&mut self, token: Token) -> bool {
        let found = self.tokens.first() == Some(&token);
        if found {
            self.tokens = &self.tokens[1..];
        }
        found
    }

    /// The whole text: a count of length units, rounded once, and the system of the marks.
    fn length(mut self, bare: BareUnit) -> Result<(i128, System), Fault> {
        let sign = if self.eat(Token::Minus) { -1 } else { 1 };
        let first = self.quantity()?;
        let (value, system) = match self.tokens.split_first() {
            None => (times(first, bare.per_unit()), bare.system()),
            Some((Token::Feet, rest)) => {
                self.tokens = rest;
                (self.after_feet(first)?, System::Imperial)
            }
            Some((&Token::Unit(unit, scale), rest)) => {
                self.tokens = rest;
                let value = times(first, unit.per_unit());
                (Ratio { num: value.num, den: value.den * scale }, unit.system())
            }
            Some((token, _)) => return Err(token.out_of_place()),
        };
        match self.tokens.first() {
            None => Ok((sign * nearest(value), system)),
            Some(token) => Err(token.out_of_place()),
        }
    }

    /// What may follow the foot mark.
    fn after_feet(&mut self, feet: Ratio) -> Result<Ratio, Fault> {
        let in_feet = times(feet, BareUnit::Feet.per_unit());
        if self.tokens.is_empty() {
            return Ok(in_feet);
        }
        self.eat(Token::Minus);
        let inches = self.quantity()?;
        self.eat(Token::Unit(BareUnit::Inches, 1));
        if !feet.is_whole() {
            return Err(Fault::PartOfFoot);
        }
        if inches.num >= 12 * inches.den {
            return Err(Fault::InchesAfterFeet);
        }
        // Cut where it is too long already, so that the product below fits.
        let whole = (in_feet.num / in_feet.den).min(1 << 40);
        let rest = times(inches, BareUnit::Inches.per_unit());
        Ok(Ratio { num: whole * rest.den + rest.num, den: rest.den })
    }

    fn quantity(&mut self) -> Result<Ratio, Fault> {
        let (first, rest) = self.tokens.split_first().ok_or(Fault::NotALength)?;
        match *first {
            Token::Vulgar(num, den) => {
                self.tokens = rest;
                Ok(Ratio { num, den })
            }
            Token::Number { num, den } => {
                if let Some((fraction, rest)) = fraction(self.tokens)? {
                    self.tokens = rest;
                    return Ok(fraction);
                }
                self.tokens = rest;
                if den != 1 {
                    return Ok(Ratio { num, den });
                }
                // A fraction may follow a whole number, with a hyphen or without.
                let next = match rest.split_first() {
                    Some((Token::Minus, after)) => after,
                    _ => rest,
                };
                match fraction(next)? {
                    None => Ok(Ratio { num, den }),
                    Some((part, _)) if part.num >= part.den => Err(Fault::FractionTooLarge),
                    Some((part, rest)) => {
                        self.tokens = rest;
                        Ok(Ratio { num: num * part.den + part.num, den: part.den })
                    }
                }
            }
            _ => Err(Fault::NotALength),
        }
    }
}

/// A fraction at the head of the tokens, and what follows it.
fn fraction(tokens: &[Token]) -> Result<Option<(Ratio, &[Token])>, Fault> {
    const LONGEST: i128 = 1_000_000_000;
    match *tokens {
        [Token::Vulgar(num, den), ref rest @ ..] => Ok(Some((Ratio { num, den }, rest))),
        [
            Token::Number { num, den: 1 },
            Token::Slash,
            Token::Number { num: den, den: 1 },
            ref rest @ ..,
        ] => {
            if den == 0 {
                return Err(Fault::OverZero);
            }
            if num >= LONGEST || den >= LONGEST {
                return Err(Fault::TooManyDigits);
            }
            Ok(Some((Ratio { num, den }, rest)))
        }
        _ => Ok(None),
    }
}

fn times(ratio: Ratio, n: i128) -> Ratio {
    Ratio { num: ratio.num * n, den: ratio.den }
}

/// The nearest whole number, halves up (the ratio is not negative).
fn nearest(ratio: Ratio) -> i128 {
    (2 * ratio.num + ratio.den) / (2 * ratio.den)
}

impl Token {
    /// What is wrong when this token comes where the text should have ended.
    fn out_of_place(&self) -> Fault {
        match self {
            Token::Number { .. } | Token::Vulgar(..) | Token::Minus => Fault::TwoNumbers,
            _ => Fault::NotALength,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::BareUnit::{Feet, Inches, Metres, Millimetres};
    use super::*;

    fn inches(text: &str) -> Result<Len, ReadError> {
        read_len(text, Inches)
    }

    #[test]
    fn feet_inches_and_fractions() {
        let expected = Len::feet_inches(12, 6) + Len::sixty_fourths(32);
        for text in [
            "12' 6 1/2\"",
            "12'-6 1/2\"",
            "12' - 6-1/2\"",
            "12'6½\"",
            "12ft 6.5in",
            "12 FT. 6.5 In.",
            "12 feet 6 1/2 inches",
            "12’ 6 1/2”",
            "12‘ 6½“",
            "12′ 6½″",
            "12′–6 1⁄2″",
            "12' 6 1/2''",
            "12' 6 1/2",
            "12'\u{a0}6\u{2009}1/2\"",
            "150.5\"",
            "150.5",
            "150 1/2",
            "150½",
            "301/2 in",
            "  12.541666666666666666' ",
        ] {
            assert_eq!(inches(text), Ok(expected), "{text}");
        }
    }

    #[test]
    fn fractions_alone_and_mixed() {
        assert_eq!(inches("3/8"), Ok(Len::sixty_fourths(24)));
        assert_eq!(inches("6½"), Ok(Len::sixty_fourths(6 * 64 + 32)));
        assert_eq!(inches("1-1/2\""), Ok(Len::sixty_fourths(96)));
        assert_eq!(inches("12′ 6⅜″"), Ok(Len::feet_inches(12, 6) + Len::sixty_fourths(24)));
        assert_eq!(inches("12' 3/8"), Ok(Len::feet_inches(12, 0) + Len::sixty_fourths(24)));
        assert_eq!(inches("12'-3/8\""), Ok(Len::feet_inches(12, 0) + Len::sixty_fourths(24)));
        assert_eq!(inches("⅞"), Ok(Len::sixty_fourths(56)));
        assert_eq!(inches("1/64"), Ok(Len::sixty_fourths(1)));
        assert_eq!(inches(".5"), Ok(Len::sixty_fourths(32)));
        assert_eq!(inches("5."), Ok(Len::inches(5)));
        assert_eq!(inches("0"), Ok(Len::ZERO));
        assert_eq!(inches("-0"), Ok(Len::ZERO));
    }

    #[test]
    fn metric() {
        for text in ["3200 mm", "3200mm", "3.2 m", "3.2M", "320 cm", "3200.0 mm"] {
            assert_eq!(inches(text), Ok(Len::mm(3200)), "{text}");
        }
        assert_eq!(inches("0.1 mm"), Ok(Len::from_units(32)));
        assert_eq!(inches("32 cm"), Ok(Len::mm(320)));
        assert_eq!(inches("2.5 cm"), Ok(Len::mm(25)));
    }

    #[test]
    fn a_bare_number_means_the_unit_shown() {
        assert_eq!(read_len("12", Inches), Ok(Len::inches(12)));
        assert_eq!(read_len("12", Feet), Ok(Len::feet_inches(12, 0)));
        assert_eq!(read_len("12", Millimetres), Ok(Len::mm(12)));
        assert_eq!(read_len("1.2", Metres), Ok(Len::mm(1200)));
        assert_eq!(read_len("6½", Feet), Ok(Len::feet_inches(6, 6)));
        assert_eq!(read_len("6\"", Metres), Ok(Len::inches(6)));
    }

    #[test]
    fn a_leading_minus_is_a_sign_and_an_inner_one_a_hyphen() {
        let expected = -(Len::feet_inches(12, 6) + Len::sixty_fourths(32));
        for text in ["-12' 6 1/2\"", "−12'-6-1/2\"", "- 12'-6½", "–150.5"] {
            assert_eq!(inches(text), Ok(expected), "{text}");
        }
        assert_eq!(inches("-3.2 m"), Ok(Len::mm(-3200)));
    }

    #[test]
    fn decimals_are_exact_and_rounded_once() {
        // 0.1 in = 812.8 units, 0.3 ft = 29260.8 units.
        assert_eq!(inches("0.1"), Ok(Len::from_units(813)));
        assert_eq!(inches("0.3'"), Ok(Len::from_units(29_261)));
        // 0.1 mm = 32 units: exact; half a unit rounds away from zero.
        assert_eq!(inches("0.0015625 mm"), Ok(Len::from_units(1)));
        assert_eq!(inches("-0.0015625 mm"), Ok(Len::from_units(-1)));
        assert_eq!(inches("0.00156249 mm"), Ok(Len::ZERO));
        // 1/3 in = 2709.33 units; twice that is not rounded twice.
        assert_eq!(inches("2/3"), Ok(Len::from_units(5_419)));
    }

    #[test]
    fn what_is_not_a_length_is_named() {
        use ReadError as E;
        let about = |t: &str| t.to_owned();
        assert_eq!(inches(""), Err(E::Empty));
        assert_eq!(inches(" \t"), Err(E::Empty));
        for text in ["12 6", "12-6", "12 6\"", "6 1/2 3/4", "12' 6\" 3", "1--1/2", "12' 6 - 3"] {
            assert_eq!(inches(text), Err(E::TwoNumbers { text: about(text) }), "{text}");
        }
        for text in ["1/0", "12' 6 1/0\"", "0/0"] {
            assert_eq!(inches(text), Err(E::OverZero { text: about(text) }), "{text}");
        }
        for text in ["6 9/8", "6 8/8\"", "12' 6 3/2"] {
            assert_eq!(inches(text), Err(E::FractionTooLarge { text: about(text) }), "{text}");
        }
        for text in ["12' 14\"", "12' 12", "0' 12\""] {
            assert_eq!(inches(text), Err(E::InchesAfterFeet { text: about(text) }), "{text}");
        }
        for text in ["12.5' 3\"", "12 1/2' 3\"", "½' 3\""] {
            assert_eq!(inches(text), Err(E::PartOfFoot { text: about(text) }), "{text}");
        }
        for text in [
            "six",
            "'",
            "\"",
            "-",
            ".",
            "/2",
            "1/",
            "1/2/3",
            "12''' ",
            "3,2 m",
            "1e3",
            "0x10",
            "+5",
            "12\" 6'",
            "5 km",
            "1.5/2",
            "6.5 1/2.5",
            "12 ' '",
            "١٢",
            "¼/2",
            "mm",
            "3 mm mm",
            "12'-",
        ] {
            assert!(
                matches!(inches(text), Err(E::NotALength { .. } | E::TwoNumbers { .. })),
                "{text}: {:?}",
                inches(text)
            );
        }
    }

    #[test]
    fn what_is_too_long_is_named() {
        let largest = Len::from_units(i32::MAX);
        assert!(matches!(inches("7 m"), Ok(len) if len < largest));
        assert_eq!(
            inches("7000 m"),
            Err(ReadError::TooLong { text: "7000 m".into(), system: System::Metric })
        );
        assert!(matches!(inches("99999'"), Err(ReadError::TooLong { .. })));
        assert!(matches!(inches("-999999999999 ft"), Err(ReadError::TooLong { .. })));
        let most = "99999999999999999999' 1.0000000000000000001";
        assert!(matches!(inches(most), Err(ReadError::TooLong { .. })));
        assert!(inches("6710886.396875 mm").is_ok() && inches("-6710886.396875 mm").is_ok());
        assert!(inches("-6710886.4 mm").is_err() && inches("6710886.4 mm").is_err());
        let digits = "1".repeat(400);
        assert!(matches!(inches(&digits), Err(ReadError::TooManyDigits { .. })));
        assert!(matches!(inches("1/1111111111111"), Err(ReadError::TooManyDigits { .. })));
        assert_eq!(inches("0000000000000000000000012.50000000000000000000000000"), inches("12.5"));
    }

    #[test]
    fn messages_say_what_is_wrong_and_what_is_accepted() {
        let said = |text: &str| inches(text).unwrap_err().to_string();
        assert_eq!(
            said("12 6"),
            "“12 6” has two numbers without a mark between them; \
             write it like 12' 6 1/2\", 150.5\", 3/8, 3200 mm or 3.2 m"
        );
        assert_eq!(
            said("12' 14\""),
            "“12' 14\"” has 12 or more inches after feet; give less than 12, or inches alone"
        );
        assert_eq!(
            said("-99999'"),
            "“-99999'” is too long; the largest length that can be kept is 22017' 4 1/8\""
        );
        let long = said(&"x".repeat(300));
        assert!(long.len() < 160, "{long}");
    }

    #[test]
    fn a_range_is_met_exactly_and_given_in_the_system_of_the_text() {
        let (min, max) = (Len::inches(1), Len::feet_inches(40, 0));
        let read = |text, bare| read_len_in(text, bare, min, max);
        assert_eq!(read("1", Inches), Ok(min));
        assert_eq!(read("40'", Inches), Ok(max));
        assert_eq!(
            read("1/2\"", Millimetres).unwrap_err().to_string(),
            "“1/2\"” is out of range; give a length from 1\" to 40' 0\""
        );
        assert_eq!(
            read("12.3 m", Inches).unwrap_err().to_string(),
            "“12.3 m” is out of range; give a length from 25.4 mm to 12192 mm"
        );
        assert_eq!(
            read("13000", Millimetres).unwrap_err().to_string(),
            "“13000” is out of range; give a length from 25.4 mm to 12192 mm"
        );
        assert!(read_len_in("1", Inches, min + Len::UNIT, max).is_err());
        assert!(read("two", Inches).is_err());
    }

    #[test]
    fn a_range_off_the_grid_is_given_rounded_downwards() {
        let (min, max) = (Len::inches(1) + Len::UNIT, Len::inches(2) - Len::UNIT);
        let error = read_len_in("0", Inches, min, max).unwrap_err().to_string();
        assert_eq!(error, "“0” is out of range; give a length from 1 1/64\" to 1 63/64\"");
        assert!(read_len_in("1 1/64", Inches, min, max).is_ok());
        assert!(read_len_in("1 63/64", Inches, min, max).is_ok());
    }
}
