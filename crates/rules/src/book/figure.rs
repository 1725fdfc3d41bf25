//! Exact figures from the text of a code file.

use measure::{Area, Len};

/// A figure that a code demands, as a file writes it.
#[derive(Clone, Debug, Default, PartialEq, Eq, serde::Deserialize)]
pub(super) enum FigureText {
    /// A demand without a figure.
    #[default]
    None,
    /// `Inches("36")`, `Inches("9.25")`, `Inches("1 1/2")`.
    Inches(String),
    SquareInches(String),
    SquareFeet(String),
    Count(u32),
}

/// A figure in exact units.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// The demand has no figure.
    None,
    Len(Len),
    Area(Area),
    Count(u32),
}

impl FigureText {
    /// The figure in exact units, or what is wrong with the text.
    pub(super) fn read(&self) -> Result<Figure, String> {
        match self {
            FigureText::None => Ok(Figure::None),
            FigureText::Count(n) => Ok(Figure::Count(*n)),
            FigureText::Inches(text) => {
                let (n, d) = fraction(text)?;
                let units = n * i128::from(Len::PER_INCH);
                if units % d != 0 {
                    return Err(format!("{text} in is no whole number of 1/320 mm"));
                }
                i32::try_from(units / d)
                    .map(|u| Figure::Len(Len::from_units(u)))
                    .map_err(|_| format!("{text} in is too long"))
            }
            FigureText::SquareInches(text) => area(text, Len::PER_INCH),
            FigureText::SquareFeet(text) => area(text, Len::PER_FOOT),
        }
    }
}

/// An area limit, rounded up to a whole square unit, so that a whole count meets it exactly when it is
/// at least the true figure.
pub(super) fn area(text: &str, unit: i32) -> Result<Figure, String> {
    let (n, d) = fraction(text)?;
    let square = i128::from(unit) * i128::from(unit) * n;
    Ok(Figure::Area(Area::from_square_units((square + d - 1) / d)))
}

/// Reads `36`, `820.8`, `3/4` or `1 1/2` as numerator and denominator.
fn fraction(text: &str) -> Result<(i128, i128), String> {
    let bad = || format!("\"{text}\" is no number such as 36, 820.8, 3/4 or 1 1/2");
    let digits = |s: &str| -> Result<i128, String> {
        if s.is_empty() || s.len() > 9 || !s.bytes().all(|b| b.is_ascii_digit()) {
            return Err(bad());
        }
        s.parse().map_err(|_| bad())
    };
    let (whole, part) = match text.rsplit_once(' ') {
        Some((whole, part)) => (digits(whole)?, part),
        None => (0, text),
    };
    if let Some((n, d)) = part.split_once('/') {
        let (n, d) = (digits(n)?, digits(d)?);
        if d == 0 {
            return Err(bad());
        }
        return Ok((whole * d + n, d));
    }
    if whole != 0 {
        return Err(bad());
    }
    match part.split_once('.') {
        None => Ok((digits(part)?, 1)),
        Some((n, decimals)) => {
            let scale = 10i128.pow(u32::try_from(decimals.len().min(9)).unwrap_or(9));
            Ok((digits(n)? * scale + digits(decimals)?, scale))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_are_exact() {
        let inches = |s: &str| FigureText::Inches(s.into()).read();
        assert_eq!(inches("36"), Ok(Figure::Len(Len::inches(36))));
        assert_eq!(inches("9.25"), Ok(Figure::Len(Len::sixty_fourths(592))));
        assert_eq!(inches("1 1/2"), Ok(Figure::Len(Len::sixty_fourths(96))));
        assert_eq!(inches("3/4"), Ok(Figure::Len(Len::sixty_fourths(48))));
        let limit = FigureText::SquareInches("820.8".into()).read();
        assert_eq!(limit, Ok(Figure::Area(Area::square_inch_hundredths(82_080))));
        let limit = FigureText::SquareFeet("5.7".into()).read();
        assert_eq!(limit, Ok(Figure::Area(Area::square_foot_tenths(57))));
    }

    #[test]
    fn what_is_no_figure_is_refused() {
        for text in ["", "x", "-1", "1/0", "1 2", "0.3333", "1e3", "12345678901"] {
            assert!(FigureText::Inches(text.into()).read().is_err(), "{text}");
        }
    }
}
