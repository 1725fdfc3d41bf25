//! The plan as marks: the same picture for the screen and the sheet.
//!
//! [`picture`] is a pure function of a [`View`] (where and how large) and a [`Scene`] (what). This crate
//! decides where everything stands; it knows no colours (see `drawing::Palette`), no window and no tools.

mod arc;
mod badge;
mod blade;
mod caught;
mod columns;
mod dimensions;
mod extent;
mod figure;
mod findings;
mod furnishings;
mod glyphs;
mod grid;
mod heights;
mod highlight;
mod keep_clears;
mod labels;
mod moving;
mod openings;
mod outlines;
mod overheads;
mod picture;
mod poche;
mod rooms;
mod rulers;
mod scene;
mod section_lines;
mod services;
mod stairs;
mod view;
mod walls;
mod ways;

pub use badge::badge;
pub use blade::{Blade, FigureBox};
pub use caught::Caught;
pub use extent::extent;
pub use figure::figure;
pub use glyphs::glyph;
pub use grid::{Steps, steps};
pub use heights::RoomHeights;
pub use picture::{Picture, picture};
pub use poche::Poche;
pub use rulers::RULER;
pub use scene::{Scene, Show};
pub use view::View;
pub use ways::WaysLayer;
