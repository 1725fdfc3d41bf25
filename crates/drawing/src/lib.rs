//! One drawing model: a list of placed marks. What is on the screen is what is printed.
//!
//! Marks are in points of the target (screen points, or 1/72 in on paper), y down, so a backend makes no
//! layout decision: it is one exhaustive `match`. Colours are tones; a palette turns them into colours.

mod mark;
mod palette;

pub use mark::{Anchor, Mark, Marks, Origin, P, Stroke, Style, TextMark};
pub use palette::{Palette, Rgb, Tone};
