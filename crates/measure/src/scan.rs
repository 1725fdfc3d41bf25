//! Cuts the text of a length into numbers and marks.

use crate::BareUnit;
use crate::read_error::Fault;

/// A number or a mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Token {
    /// A decimal as a ratio; `den` is a power of ten, 1 when nothing but zeros follow the point.
    Number {
        num: i128,
        den: i128,
    },
    /// One character that is a fraction, such as ½.
    Vulgar(i128, i128),
    Slash,
    Minus,
    Feet,
    /// A unit mark; the number is in `1 / .1` of the unit (centimetres are hundredths of a metre).
    Unit(BareUnit, i128),
}

/// Digits that a decimal may have, leading and trailing zeros not counted. Keeps ratios within `i128`.
const LONGEST: usize = 20;

pub(crate) fn scan(text: &str) -> Result<Vec<Token>, Fault> {
    let mut tokens = Vec::new();
    let mut rest = text;
    while let Some(c) = rest.chars().next() {
        let token = match c {
            _ if c.is_whitespace() => {
                rest = &rest[c.len_utf8()..];
                continue;
            }
            '0'..='9' | '.' => {
                let end = rest.find(|c: char| !matches!(c, '0'..='9' | '.')).unwrap_or(rest.len());
                let (word, after) = rest.split_at(end);
                rest = after;
                tokens.push(number(word)?);
                continue;
            }
            'a'..='z' | 'A'..='Z' => {
                let end = rest.find(|c: char| !c.is_ascii_alphabetic()).unwrap_or(rest.len());
                let (word, after) = rest.split_at(end);
                rest = after.strip_prefix('.').unwrap_or(after);
                tokens.push(unit(word)?);
                continue;
            }
            '\'' | '’' | '‘' | '′' => {
                // Two single marks side by side are an inch mark.
                let after = &rest[c.len_utf8()..];
                if after.starts_with(c) {
                    rest = &after[c.len_utf8()..];
                    tokens.push(Token::Unit(BareUnit::Inches, 1));
                    continue;
                }
                Token::Feet
            }
            '"' | '”' | '“' | '″' => Token::Unit(BareUnit::Inches, 1),
            '/' | '⁄' => Token::Slash,
            '-' | '−' | '–' | '‐' | '‑' => Token::Minus,
            _ => {
                let (num, den) = vulgar(c).ok_or(Fault::NotALength)?;
                Token::Vulgar(num, den)
            }
        };
        tokens.push(token);
        rest = &rest[c.len_utf8()..];
    }
    Ok(tokens)
}

/// A decimal number, exactly.
fn number(word: &str) -> Result<Token, Fault> {
    let (whole, part) = word.split_once('.').unwrap_or((word, ""));
    if part.contains('.') || (whole.is_empty() && part.is_empty()) {
        return Err(Fault::NotALength);
    }
    let (whole, part) = (whole.trim_start_matches('0'), part.trim_end_matches('0'));
    if whole.len() + part.len() > LONGEST {
        return Err(Fault::TooManyDigits);
    }
    let (mut num, mut den) = (0i128, 1i128);
    for digit in whole.bytes().chain(part.bytes()) {
        num = num * 10 + i128::from(digit - b'0');
    }
    for _ in part.bytes() {
        den *= 10;
    }
    Ok(Token::Number { num, den })
}

fn unit(word: &str) -> Result<Token, Fault> {
    Ok(match word.to_ascii_lowercase().as_str() {
        "ft" | "foot" | "feet" => Token::Feet,
        "in" | "inch" | "inches" => Token::Unit(BareUnit::Inches, 1),
        "mm" => Token::Unit(BareUnit::Millimetres, 1),
        "cm" => Token::Unit(BareUnit::Metres, 100),
        "m" => Token::Unit(BareUnit::Metres, 1),
        _ => return Err(Fault::NotALength),
    })
}

fn vulgar(c: char) -> Option<(i128, i128)> {
    Some(match c {
        '½' => (1, 2),
        '⅓' => (1, 3),
        '⅔' => (2, 3),
        '¼' => (1, 4),
        '¾' => (3, 4),
        '⅕' => (1, 5),
        '⅖' => (2, 5),
        '⅗' => (3, 5),
        '⅘' => (4, 5),
        '⅙' => (1, 6),
        '⅚' => (5, 6),
        '⅛' => (1, 8),
        '⅜' => (3, 8),
        '⅝' => (5, 8),
        '⅞' => (7, 8),
        _ => return None,
    })
}
