//! Comparing what is wanted with what is so.

use measure::{Area, Len, Precision, System};
use plan::Plan;
use rules::{Finding, Quantity};

use super::Wanted;
use crate::script::{changes, names};

pub(super) fn equal(wanted: usize, is: usize) -> Result<(), String> {
    if wanted == is { Ok(()) } else { Err(format!("there are {is}")) }
}

pub(super) fn same_len(wanted: Len, is: Len, system: System) -> Result<(), String> {
    if wanted == is {
        return Ok(());
    }
    let off = (is - wanted).units();
    Err(format!("it is {} ({off:+} units of 1/320 mm)", system.len(is, Precision::Fine)))
}

/// Compares an area with a written figure to as many decimals as are written, rounded down. Exact.
pub(super) fn same_area(figure: &str, area: Area, system: System) -> Result<(), String> {
    let form = || format!("an area is written 118 sq ft or 11.05 m²; {figure:?} is not");
    let (number, unit) = figure.split_once(char::is_whitespace).ok_or_else(form)?;
    let side = match unit.trim() {
        "sq ft" => Len::PER_FOOT,
        "m²" | "sq m" => Len::PER_MM * 1000,
        _ => return Err(form()),
    };
    let decimals = number.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    let wanted: i128 = number.replacen('.', "", 1).parse().map_err(|_| form())?;
    let scale =
        u32::try_from(decimals).ok().and_then(|n| 10i128.checked_pow(n)).ok_or_else(form)?;
    let is = (area.square_units() * scale).div_euclid(i128::from(side) * i128::from(side));
    if is == wanted { Ok(()) } else { Err(format!("it is {}", system.area(area))) }
}

/// Whether a finding is like the one wanted; an error where a name in it is not known.
pub(super) fn matches(
    wanted: &Wanted,
    f: &Finding,
    plan: &Plan,
    system: System,
) -> Result<bool, String> {
    let on = match &wanted.on {
        Some(name) => Some(names::element(plan, name)?.id),
        None => None,
    };
    let figure = |wanted: &Option<String>, is: &Option<Quantity>| match wanted {
        None => Ok(true),
        Some(text) => quantity(text, is.as_ref(), system),
    };
    Ok(wanted.rule.as_deref().is_none_or(|rule| f.rule == rule)
        && wanted.severity.as_deref().is_none_or(|s| changes::severity(f.severity) == s)
        && on.is_none_or(|id| f.elements.contains(&id))
        && f.set_aside.is_none()
        && figure(&wanted.measured, &f.measured)?
        && figure(&wanted.required, &f.required)?)
}

fn quantity(text: &str, is: Option<&Quantity>, system: System) -> Result<bool, String> {
    Ok(match is {
        None => false,
        Some(Quantity::Len(len)) => *len == crate::entry::read_signed(text, system)?,
        Some(Quantity::Area(area)) => same_area(text, *area, system).is_ok(),
        Some(Quantity::Count(n)) => text == n.to_string(),
        Some(Quantity::Words(words)) => text == words,
    })
}
