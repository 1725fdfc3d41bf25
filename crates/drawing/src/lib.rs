//! One drawing model: a list of placed marks. What is on the screen is what is printed.
//!
//! Marks are in points of the target (screen points, or 1/72 in on paper), y down, so a backend makes no
//! layout decision: it is one exhaustive `match`. Colours are tones; a palette turns them into colours.
//! This crate knows no plan, no rule and no window.

mod build;
mod dump;
pub mod fonts;
mod hatch;
mod mark;
mod palette;
pub mod svg;

pub use dump::dump;
pub use fonts::text_width;
pub use hatch::{Slope, hatch};
pub use mark::{Anchor, Mark, Marks, Origin, P, Stroke, Style, TextMark};
pub use palette::{MARK_PAIRS, Palette, Rgb, TEXT_PAIRS, Tone, contrast};

/// The three sizes of type, in points.
pub mod size {
    /// Words beside marks, figures of dimensions.
    pub const SMALL: f32 = 10.0;
    /// Figures on the tape blade, running text.
    pub const BODY: f32 = 12.0;
    /// Names of rooms, headings.
    pub const LARGE: f32 = 15.0;
}
