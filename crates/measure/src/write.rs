//! Writing a length or area for a person.

use serde::{Deserialize, Serialize};

use crate::{Area, BareUnit, Len};

/// The unit system that lengths are shown in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum System {
    /// Feet, inches and fractions; square feet.
    #[default]
    Imperial,
    /// Millimetres; square metres.
    Metric,
}

/// How finely a length is shown, and which way it is rounded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Precision {
    /// Nearest 1/16 in or 1 mm: what a tape shows.
    Tape,
    /// Nearest 1/64 in or 0.1 mm, for entry fields: what was typed comes back.
    Fine,
    /// Down to 1/16 in or 1 mm: for a measured width that must be "at least".
    Floor,
    /// Up to 1/16 in or 1 mm: for a measured size that must be "at most".
    Ceil,
}

/// Which way a count of steps is rounded.
#[derive(Clone, Copy)]
enum Round {
    /// Halves away from zero.
    Nearest,
    /// Towards negative infinity.
    Down,
    /// Towards positive infinity.
    Up,
}

impl Precision {
    const fn round(self) -> Round {
        match self {
            Precision::Tape | Precision::Fine => Round::Nearest,
            Precision::Floor => Round::Down,
            Precision::Ceil => Round::Up,
        }
    }

    const fn is_fine(self) -> bool {
        matches!(self, Precision::Fine)
    }
}

impl System {
    /// Feet and inches with fractions (`12' 6 1/2"`, `0"`), or millimetres (`3200 mm`).
    pub fn len(self, len: Len, precision: Precision) -> String {
        self.written(len, precision.is_fine(), precision.round(), true)
    }

    /// Inches only (`33 5/8"`), or millimetres: how clearances are spoken of.
    pub fn inches(self, len: Len, precision: Precision) -> String {
        self.written(len, precision.is_fine(), precision.round(), false)
    }

    /// `118.4 sq ft` or `11.00 m²`, rounded down so that a shown figure is never larger than the true one.
    pub fn area(self, area: Area) -> String {
        let n = area.square_units();
        match self {
            System::Imperial => {
                let square_foot = i128::from(Len::PER_FOOT) * i128::from(Len::PER_FOOT);
                format!("{} sq ft", decimal((n * 10).div_euclid(square_foot), 1))
            }
            System::Metric => {
                let square_metre = (i128::from(Len::PER_MM) * 1_000).pow(2);
                format!("{} m²", decimal((n * 100).div_euclid(square_metre), 2))
            }
        }
    }

    /// What a bare number means in a field for a size or clearance: inches or millimetres.
    pub const fn bare_unit(self) -> BareUnit {
        match self {
            System::Imperial => BareUnit::Inches,
            System::Metric => BareUnit::Millimetres,
        }
    }

    /// What a bare number means in a field for the length of a wall: feet or metres.
    pub const fn bare_for_feet(self) -> BareUnit {
        match self {
            System::Imperial => BareUnit::Feet,
            System::Metric => BareUnit::Metres,
        }
    }

    fn written(self, len: Len, fine: bool, round: Round, feet: bool) -> String {
        match self {
            System::Imperial => {
                let per_inch = if fine { 64 } else { 16 };
                let step = Len::PER_INCH / per_inch;
                imperial(steps(len, step, round), i64::from(per_inch), feet)
            }
            System::Metric if fine => {
                let tenths = steps(len, Len::PER_MM / 10, round);
                if tenths % 10 == 0 {
                    format!("{} mm", tenths / 10)
                } else {
                    format!("{} mm", decimal(i128::from(tenths), 1))
                }
            }
            System::Metric => format!("{} mm", steps(len, Len::PER_MM, round)),
        }
    }
}

/// A least length as a range gives it: to 1/64 in or 0.1 mm, rounded up.
pub(crate) fn rounded_up(system: System, len: Len) -> String {
    system.written(len, true, Round::Up, true)
}

/// A greatest length as a range gives it: to 1/64 in or 0.1 mm, rounded down.
pub(crate) fn rounded_down(system: System, len: Len) -> String {
    system.written(len, true, Round::Down, true)
}

/// The count of steps of `step` units in a length.
fn steps(len: Len, step: i32, round: Round) -> i64 {
    let (n, step) = (i64::from(len.units()), i64::from(step));
    match round {
        Round::Nearest => n.signum() * ((n.abs() + step / 2) / step),
        Round::Down => n.div_euclid(step),
        Round::Up => -(-n).div_euclid(step),
    }
}

/// A count of parts of an inch as inches, or feet and inches from one foot up.
fn imperial(parts: i64, per_inch: i64, feet: bool) -> String {
    let sign = if parts < 0 { "-" } else { "" };
    let (whole, mut part) = (parts.abs() / per_inch, parts.abs() % per_inch);
    let mut out = sign.to_owned();
    let mut inches = whole;
    let with_feet = feet && whole >= 12;
    if with_feet {
        out += &format!("{}' ", whole / 12);
        inches = whole % 12;
    }
    if part == 0 {
        return out + &format!("{inches}\"");
    }
    if inches > 0 || with_feet {
        out += &format!("{inches} ");
    }
    let mut den = per_inch;
    while part % 2 == 0 {
        (part, den) = (part / 2, den / 2);
    }
    out + &format!("{part}/{den}\"")
}

/// `n / 10^places` as a decimal with that many places.
fn decimal(n: i128, places: u32) -> String {
    let scale = 10i128.pow(places);
    let sign = if n < 0 { "-" } else { "" };
    format!("{sign}{}.{:0width$}", n.abs() / scale, n.abs() % scale, width = places as usize)
}

#[cfg(test)]
mod tests {
    use super::Precision::{Ceil, Fine, Floor, Tape};
    use super::System::{Imperial, Metric};
    use super::*;

    #[test]
    fn feet_inches_and_reduced_fractions() {
        let write = |n| Imperial.len(Len::sixty_fourths(n), Tape);
        assert_eq!(write(0), "0\"");
        assert_eq!(write(24), "3/8\"");
        assert_eq!(write(6 * 64 + 32), "6 1/2\"");
        assert_eq!(write(11 * 64 + 60), "11 15/16\"");
        assert_eq!(write(12 * 64), "1' 0\"");
        assert_eq!(write(144 * 64), "12' 0\"");
        assert_eq!(write(144 * 64 + 24), "12' 0 3/8\"");
        assert_eq!(write(150 * 64 + 32), "12' 6 1/2\"");
        assert_eq!(write(-(150 * 64 + 32)), "-12' 6 1/2\"");
        assert_eq!(write(-24), "-3/8\"");
    }

    #[test]
    fn rounding_carries_into_feet() {
        let len = Len::feet_inches(12, 11) + Len::sixty_fourths(62);
        assert_eq!(Imperial.len(len, Tape), "13' 0\"");
        assert_eq!(Imperial.len(len, Floor), "12' 11 15/16\"");
        assert_eq!(Imperial.len(len, Fine), "12' 11 31/32\"");
        assert_eq!(Imperial.inches(len, Ceil), "156\"");
        assert_eq!(Imperial.len(Len::inches(12) - Len::UNIT, Tape), "1' 0\"");
        assert_eq!(Imperial.len(-Len::UNIT, Tape), "0\"");
    }

    #[test]
    fn inches_only() {
        assert_eq!(Imperial.inches(Len::sixty_fourths(33 * 64 + 40), Tape), "33 5/8\"");
        assert_eq!(Imperial.inches(Len::inches(36), Floor), "36\"");
        assert_eq!(Imperial.inches(Len::inches(36) - Len::UNIT, Floor), "35 15/16\"");
        assert_eq!(Imperial.inches(Len::inches(36) + Len::UNIT, Ceil), "36 1/16\"");
        assert_eq!(Imperial.inches(-Len::inches(2) - Len::UNIT, Floor), "-2 1/16\"");
        assert_eq!(Imperial.inches(-Len::inches(2) - Len::UNIT, Ceil), "-2\"");
    }

    #[test]
    fn millimetres() {
        assert_eq!(Metric.len(Len::mm(3200), Tape), "3200 mm");
        assert_eq!(Metric.len(Len::mm(3200), Fine), "3200 mm");
        assert_eq!(Metric.len(Len::from_units(3200 * 320 + 32), Fine), "3200.1 mm");
        assert_eq!(Metric.len(Len::from_units(-32), Fine), "-0.1 mm");
        assert_eq!(Metric.len(Len::from_units(-32), Tape), "0 mm");
        assert_eq!(Metric.inches(Len::inches(36), Floor), "914 mm");
        assert_eq!(Metric.inches(Len::inches(36), Ceil), "915 mm");
    }

    #[test]
    fn areas_are_never_shown_larger_than_they_are() {
        let room = Area::of_rect(Len::inches(118), Len::inches(144));
        assert_eq!(Imperial.area(room), "118.0 sq ft");
        let less = room - Area::from_square_units(1);
        assert_eq!(Imperial.area(less), "117.9 sq ft");
        assert_eq!(Imperial.area(Area::square_foot_tenths(57)), "5.7 sq ft");
        assert_eq!(Metric.area(Area::of_rect(Len::mm(2750), Len::mm(4000))), "11.00 m²");
        assert_eq!(Metric.area(Area::of_rect(Len::mm(2749), Len::mm(4000))), "10.99 m²");
        assert_eq!(Imperial.area(Area::ZERO), "0.0 sq ft");
    }

    #[test]
    fn the_ends_of_the_range_can_be_written() {
        for system in [Imperial, Metric] {
            for precision in [Tape, Fine, Floor, Ceil] {
                for units in [i32::MIN, i32::MAX] {
                    let text = system.len(Len::from_units(units), precision);
                    assert_eq!(text.starts_with('-'), units < 0);
                }
            }
        }
    }
}
