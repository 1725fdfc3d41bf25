//! The window.
//!
//! `App` owns the open document, the view and the dialog that is up. Panes read a context and push
//! acts; `run.rs` carries them out. Nothing here knows how a plan is judged or drawn.

mod act;
mod app;
mod autosave;
mod canvas;
mod commands;
mod dialogs;
mod document;
mod files;
mod form;
mod inspector;
mod looking;
mod moving;
mod paint;
mod panes;
mod remedies;
mod run;
mod sample;
mod saving;
mod sheeting;
mod start;
mod theme;
mod timing;
mod told;
mod view;

pub use app::{App, Start};
pub use start::run;
