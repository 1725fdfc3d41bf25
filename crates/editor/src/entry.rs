//! Reading what is typed at the cursor: a length, or a point as `x, y`.

use geometry::Pt;
use measure::{BareUnit, Len, System, read_len};

/// The most that a typed length or coordinate may be.
const MOST: Len = Len::feet_inches(3_000, 0);

/// What a bare number means in a unit system.
pub(crate) fn bare_unit(system: System) -> BareUnit {
    match system {
        System::Imperial => BareUnit::Inches,
        System::Metric => BareUnit::Millimetres,
    }
}

/// How that unit is written beside the field.
pub(crate) fn unit_word(system: System) -> &'static str {
    match system {
        System::Imperial => "in",
        System::Metric => "mm",
    }
}

/// A typed length, which may carry a sign.
pub(crate) fn read_signed(text: &str, system: System) -> Result<Len, String> {
    let text = text.trim();
    let (minus, rest) = match text.strip_prefix(['-', '−']) {
        Some(rest) => (true, rest),
        None => (false, text.strip_prefix('+').unwrap_or(text)),
    };
    let len = read_len(rest, bare_unit(system)).map_err(|error| error.to_string())?;
    if len.abs() > MOST {
        let most = system.len(MOST, measure::Precision::Tape);
        return Err(format!("{text} is too far: at most {most}"));
    }
    Ok(if minus { -len } else { len })
}

/// A typed point: two lengths with a comma or a semicolon between them, east and north of the origin.
pub(crate) fn read_point(text: &str, system: System) -> Result<Pt, String> {
    let form = || format!("a point is written x, y, such as 12', 8': {text} is not");
    let (x, y) = text.split_once([',', ';']).ok_or_else(form)?;
    if y.contains([',', ';']) {
        return Err(form());
    }
    Ok(Pt::at(read_signed(x, system)?, read_signed(y, system)?))
}

/// Whether a typed text is meant as a point.
pub(crate) fn is_point(text: &str) -> bool {
    text.contains([',', ';'])
}
