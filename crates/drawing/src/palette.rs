//! Tones and the palettes that turn them into colours.

/// What a colour means. Never a colour itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Tone {
    /// Panes, rulers, entry fields.
    Paper,
    /// What lies around the basement.
    Ground,
    /// The floor inside the shell.
    Slab,
    Grid,
    GridStrong,
    Ink,
    SoftInk,
    /// Poché of the foundation walls and columns.
    Shell,
    Existing,
    ExistingFill,
    New,
    NewFill,
    Removed,
    Overhead,
    /// Outline and hatch of a keep-clear box that is clear.
    KeepClear,
    /// Correction, as text, line and badge.
    Stop,
    StopFill,
    /// Verify, as text and line.
    Verify,
    VerifyFill,
    /// Advice, and ways in.
    Advice,
    AdviceFill,
    /// The blade of the tape.
    Tape,
    /// Ticks and figures on the blade.
    TapeInk,
    /// The red 16-inch marks on the blade.
    TapeMark,
    /// What is selected.
    Select,
    /// Window glass.
    Glass,
}

/// A colour, 8 bits each, sRGB.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rgb(pub u8, pub u8, pub u8);

/// A colour for every tone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Palette {
    Light,
    /// "Lights off".
    Dark,
    /// Black on white, as printed.
    Print,
}

const fn hex(v: u32) -> Rgb {
    Rgb((v >> 16) as u8, (v >> 8) as u8, v as u8)
}

impl Tone {
    pub const ALL: [Tone; 26] = [
        Tone::Paper,
        Tone::Ground,
        Tone::Slab,
        Tone::Grid,
        Tone::GridStrong,
        Tone::Ink,
        Tone::SoftInk,
        Tone::Shell,
        Tone::Existing,
        Tone::ExistingFill,
        Tone::New,
        Tone::NewFill,
        Tone::Removed,
        Tone::Overhead,
        Tone::KeepClear,
        Tone::Stop,
        Tone::StopFill,
        Tone::Verify,
        Tone::VerifyFill,
        Tone::Advice,
        Tone::AdviceFill,
        Tone::Tape,
        Tone::TapeInk,
        Tone::TapeMark,
        Tone::Select,
        Tone::Glass,
    ];
}

impl Palette {
    pub const ALL: [Palette; 3] = [Palette::Light, Palette::Dark, Palette::Print];

    /// Whether new work is hatched, because its fill can't be told from the ground.
    pub fn hatches(self) -> bool {
        self == Palette::Print
    }

    pub const fn rgb(self, tone: Tone) -> Rgb {
        let (light, dark, print) = match tone {
            Tone::Paper => (0xF6F3EC, 0x2B2925, 0xFFFFFF),
            Tone::Ground => (0xE7E3DA, 0x1D1B18, 0xFFFFFF),
            Tone::Slab => (0xF0EDE6, 0x25231F, 0xFFFFFF),
            Tone::Grid => (0xDCD7CB, 0x2F2C27, 0xE4E4E4),
            Tone::GridStrong => (0xC9C2B3, 0x423E37, 0xC4C4C4),
            Tone::Ink => (0x26231F, 0xEFEAE0, 0x000000),
            Tone::SoftInk => (0x5C564C, 0xBDB5A7, 0x3A3A3A),
            Tone::Shell => (0x37332E, 0x999080, 0x000000),
            Tone::Existing => (0x6E6A63, 0x9A948A, 0x444444),
            Tone::ExistingFill => (0xCFCBC3, 0x45423D, 0xFFFFFF),
            Tone::New => (0x1D5A9E, 0x93BFF2, 0x000000),
            Tone::NewFill => (0xC9DBEE, 0x243B56, 0xFFFFFF),
            Tone::Removed => (0x7A5347, 0xC79C8B, 0x333333),
            Tone::Overhead => (0x6A5F50, 0xBBAB92, 0x333333),
            Tone::KeepClear => (0x7A5B12, 0xD3B467, 0x333333),
            Tone::Stop => (0xB3261E, 0xFF9184, 0x000000),
            Tone::StopFill => (0xF7D9D4, 0x4B201C, 0xFFFFFF),
            Tone::Verify => (0x7F4B00, 0xF0BE55, 0x000000),
            Tone::VerifyFill => (0xFBE6B0, 0x43330F, 0xFFFFFF),
            Tone::Advice => (0x17635A, 0x79CFC0, 0x000000),
            Tone::AdviceFill => (0xD3E9E4, 0x17403A, 0xFFFFFF),
            Tone::Tape => (0xF3C63B, 0xEBBE36, 0xFFFFFF),
            Tone::TapeInk => (0x1E1B16, 0x1E1B16, 0x000000),
            Tone::TapeMark => (0xB3261E, 0xA11B14, 0x000000),
            Tone::Select => (0x7433B0, 0xCDA8FF, 0x000000),
            Tone::Glass => (0xDDEBEF, 0x2F4248, 0xFFFFFF),
        };
        hex(match self {
            Palette::Light => light,
            Palette::Dark => dark,
            Palette::Print => print,
        })
    }
}

/// Contrast ratio of two colours, 1 to 21. Source: WCAG 2.2, definitions of *contrast ratio* and
/// *relative luminance*.
pub fn contrast(a: Rgb, b: Rgb) -> f64 {
    let (a, b) = (luminance(a), luminance(b));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

fn luminance(Rgb(r, g, b): Rgb) -> f64 {
    let linear = |v: u8| {
        let s = f64::from(v) / 255.0;
        if s <= 0.04045 { s / 12.92 } else { libm::pow((s + 0.055) / 1.055, 2.4) }
    };
    0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b)
}

/// Every text tone with the grounds it is written on: at least 4.5 : 1 (WCAG 2.2, criterion 1.4.3).
pub const TEXT_PAIRS: &[(Tone, &[Tone])] = {
    use Tone::*;
    &[
        (
            Ink,
            &[
                Paper,
                Ground,
                Slab,
                Grid,
                GridStrong,
                NewFill,
                ExistingFill,
                StopFill,
                VerifyFill,
                AdviceFill,
                Glass,
            ],
        ),
        (SoftInk, &[Paper, Ground, Slab, Grid]),
        (New, &[Paper, Ground, Slab, NewFill]),
        (Overhead, &[Ground, Slab]),
        (KeepClear, &[Ground, Slab]),
        (Removed, &[Ground, Slab]),
        (Stop, &[Paper, Ground, Slab, StopFill]),
        (Verify, &[Paper, Ground, Slab, VerifyFill]),
        (Advice, &[Paper, Ground, Slab, AdviceFill]),
        (Select, &[Paper, Ground, Slab]),
        (TapeInk, &[Tape]),
        (Paper, &[Stop, Advice, Ink, New]),
    ]
};

/// Marks that carry meaning with the grounds they stand on: at least 3 : 1 (WCAG 2.2, criterion 1.4.11).
pub const MARK_PAIRS: &[(Tone, &[Tone])] = {
    use Tone::*;
    &[
        (Ink, &[Paper, Ground, Slab, Glass]),
        (Shell, &[Paper, Ground, Slab]),
        (Existing, &[Paper, Ground, Slab, ExistingFill]),
        (New, &[Paper, Ground, Slab, NewFill]),
        (Removed, &[Ground, Slab]),
        (Overhead, &[Ground, Slab]),
        (KeepClear, &[Ground, Slab]),
        (Stop, &[Paper, Ground, Slab, StopFill, NewFill]),
        (Verify, &[Paper, Ground, Slab]),
        (Advice, &[Paper, Ground, Slab, AdviceFill]),
        (TapeMark, &[Tape]),
        (TapeInk, &[Tape]),
        (Select, &[Paper, Ground, Slab, NewFill, ExistingFill]),
    ]
};

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn contrast_has_the_published_extremes() {
        // WCAG 2.2: black on white is 21 : 1, a colour on itself 1 : 1. #767676 on white is the well-known
        // lightest grey that passes 4.5 : 1 (W3C, technique G18 examples; from memory).
        assert!((contrast(Rgb(0, 0, 0), Rgb(255, 255, 255)) - 21.0).abs() < 1e-9);
        assert!((contrast(Rgb(9, 80, 7), Rgb(9, 80, 7)) - 1.0).abs() < 1e-9);
        assert!(contrast(hex(0x767676), hex(0xFFFFFF)) >= 4.5);
        assert!(contrast(hex(0x777777), hex(0xFFFFFF)) < 4.5);
    }

    fn too_faint(pairs: &[(Tone, &[Tone])], least: f64) -> Vec<String> {
        let mut faint = Vec::new();
        for palette in Palette::ALL {
            for (tone, grounds) in pairs {
                for ground in *grounds {
                    let ratio = contrast(palette.rgb(*tone), palette.rgb(*ground));
                    if ratio < least {
                        faint.push(format!("{palette:?}: {tone:?} on {ground:?} {ratio:.2}"));
                    }
                }
            }
        }
        faint
    }

    #[test]
    fn text_can_be_read_on_every_ground() {
        assert_eq!(too_faint(TEXT_PAIRS, 4.5), Vec::<String>::new());
    }

    #[test]
    fn marks_can_be_seen_on_every_ground() {
        assert_eq!(too_faint(MARK_PAIRS, 3.0), Vec::<String>::new());
    }

    #[test]
    fn print_is_grey_on_white() {
        for tone in Tone::ALL {
            let Rgb(r, g, b) = Palette::Print.rgb(tone);
            assert!(r == g && g == b, "{tone:?}");
        }
    }
}
