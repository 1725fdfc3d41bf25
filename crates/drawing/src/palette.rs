//! Tones and the palettes that turn them into colours.

/// What a colour means. Never a colour itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Tone {
    Paper,
    Ground,
    Grid,
    GridStrong,
    Ink,
    SoftInk,
    Shell,
    Existing,
    New,
    NewFill,
    Removed,
    Overhead,
    Stop,
    StopFill,
    Verify,
    VerifyFill,
    Advice,
    AdviceFill,
    Tape,
    TapeInk,
    TapeMark,
    Select,
    Glass,
}

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

impl Palette {
    pub fn rgb(self, _tone: Tone) -> Rgb {
        unimplemented!()
    }
}
