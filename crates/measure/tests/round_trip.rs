//! What is written is read back, and no text makes the reader fall over.

use measure::{Area, BareUnit, Len, Precision, System, read_len, read_len_in};
use proptest::prelude::*;

const BARE: [BareUnit; 4] =
    [BareUnit::Inches, BareUnit::Feet, BareUnit::Millimetres, BareUnit::Metres];

/// Lengths of a plan: about ±1.6 km.
const LARGEST: i32 = 1 << 29;

fn any_len() -> impl Strategy<Value = Len> {
    prop_oneof![-40_000_000..=40_000_000, any::<i32>()].prop_map(Len::from_units)
}

/// A text made of what lengths are made of.
fn nearly_a_length() -> impl Strategy<Value = String> {
    let piece = prop_oneof![
        "[0-9]{1,4}",
        "[0-9]{0,24}\\.[0-9]{0,24}",
        prop::sample::select(vec![
            "'", "\"", "’", "”", "″", "′", "''", "-", "−", "/", "⁄", " ", "½", "⅜", "ft", "in",
            "mm", "cm", "m", ".", "1/2", "0", "\u{a0}", "é", "🧱",
        ])
        .prop_map(str::to_owned),
    ];
    prop::collection::vec(piece, 0..9).prop_map(|pieces| pieces.concat())
}

/// Reads back what `System::len` and `System::inches` write.
fn read_back(text: &str) -> Len {
    // No number in it may depend on the unit that a bare number means.
    let all = BARE.map(|bare| read_len(text, bare));
    assert!(all.iter().all(|r| r == &all[0]), "{text}: {all:?}");
    all[0].clone().unwrap_or_else(|e| panic!("{text}: {e}"))
}

proptest! {
    #[test]
    fn fine_imperial_comes_back_on_the_grid_of_64ths(n in -(LARGEST / 127)..=LARGEST / 127) {
        let len = Len::sixty_fourths(n);
        prop_assert_eq!(read_back(&System::Imperial.len(len, Precision::Fine)), len);
        prop_assert_eq!(read_back(&System::Imperial.inches(len, Precision::Fine)), len);
    }

    #[test]
    fn fine_metric_comes_back_on_the_grid_of_tenths(n in -(LARGEST / 32)..=LARGEST / 32) {
        let len = Len::from_units(n * 32);
        prop_assert_eq!(read_back(&System::Metric.len(len, Precision::Fine)), len);
        prop_assert_eq!(read_back(&System::Metric.inches(len, Precision::Fine)), len);
    }

    #[test]
    fn rounding_stays_within_a_step_and_goes_the_way_it_says(len in any_len()) {
        // Rounding up may pass the largest length.
        prop_assume!(len < Len::from_units(i32::MAX - 512) && len > Len::from_units(i32::MIN + 512));
        for (system, step) in [(System::Imperial, 508), (System::Metric, 320)] {
            for write in [System::len, System::inches] {
                let at = |p| i64::from(read_back(&write(system, len, p)).units());
                let exact = i64::from(len.units());
                let (floor, ceil) = (at(Precision::Floor), at(Precision::Ceil));
                prop_assert!(floor <= exact && exact < floor + step);
                prop_assert!(ceil >= exact && exact > ceil - step);
                let tape = at(Precision::Tape);
                prop_assert!(2 * (tape - exact).abs() <= step);
                prop_assert!(tape == floor || tape == ceil);
            }
        }
    }

    #[test]
    fn fractions_are_reduced_and_inches_under_twelve(len in any_len()) {
        let text = System::Imperial.len(len, Precision::Fine);
        if let Some((over, under)) = text.trim_end_matches('"').split_once('/') {
            let over: u32 = over.rsplit([' ', '-']).next().unwrap().parse().unwrap();
            let under: u32 = under.parse().unwrap();
            prop_assert!(over % 2 == 1 && over < under && under.is_power_of_two() && under <= 64);
        }
        if let Some((_, inches)) = text.split_once("' ") {
            let whole = inches.trim_end_matches('"').split(' ').next().unwrap();
            prop_assert!(whole.parse::<u32>().is_ok_and(|n| n < 12), "{}", text);
        }
    }

    #[test]
    fn any_text_is_read_or_refused_in_words(text in ".*") {
        for bare in BARE {
            if let Err(error) = read_len(&text, bare) {
                prop_assert!(!error.to_string().is_empty());
            }
        }
    }

    #[test]
    fn nearly_a_length_is_read_or_refused_in_words(text in nearly_a_length()) {
        for bare in BARE {
            match read_len(&text, bare) {
                Ok(len) => {
                    // A minus sign before it gives the negative, unless it has one.
                    if let Ok(negative) = read_len(&format!("-{text}"), bare) {
                        prop_assert_eq!(negative, -len);
                    }
                }
                Err(error) => prop_assert!(error.to_string().len() < 400),
            }
        }
    }

    /// Decimals against integer arithmetic: `n / 1000` inches is `n * 8128 / 1000` units.
    #[test]
    fn decimal_inches_are_rounded_once(n in 0i64..200_000_000) {
        let text = format!("{}.{:03} in", n / 1000, n % 1000);
        let exact = n * 8_128;
        let units = i64::from(read_len(&text, BareUnit::Feet).unwrap().units());
        prop_assert!((units * 1000 - exact).abs() <= 500);
    }

    #[test]
    fn the_range_decides_exactly(len in any_len(), min in any_len(), max in any_len()) {
        let text = System::Imperial.len(len, Precision::Fine);
        if let Ok(read) = read_len(&text, BareUnit::Inches) {
            let within = read_len_in(&text, BareUnit::Inches, min, max);
            prop_assert_eq!(within.is_ok(), min <= read && read <= max);
        }
    }

    #[test]
    fn a_shown_area_is_at_most_the_true_one(w in 0..=20_000_000, d in 0..=20_000_000) {
        let area = Area::of_rect(Len::from_units(w), Len::from_units(d));
        let shown = |system: System| -> (i128, i128) {
            let text = system.area(area);
            let (whole, part) = text.split(' ').next().unwrap().split_once('.').unwrap();
            (whole.parse().unwrap(), part.parse().unwrap())
        };
        let (feet, tenths) = shown(System::Imperial);
        let at_least = Area::square_foot_tenths(feet * 10 + tenths);
        prop_assert!(at_least <= area);
        prop_assert!(area < Area::square_foot_tenths(feet * 10 + tenths + 1));
        let (metres, hundredths) = shown(System::Metric);
        let per = (Len::PER_MM as i128 * 1000).pow(2) / 100;
        prop_assert_eq!(metres * 100 + hundredths, area.square_units() / per);
    }
}
