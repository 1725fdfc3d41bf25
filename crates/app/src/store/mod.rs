//! Plans on the disk: opening, saving so that nothing is lost, recovery copies.

mod amendments;
mod open;
mod own_lists;
mod recovery;
mod save;
#[cfg(test)]
mod tests;

pub use amendments::amendments;
pub use open::{OpenError, Opened, open, open_limited};
pub use own_lists::{OwnList, keep_list, own_lists, own_lists_dir};
pub use recovery::{Orphan, Recovery, state_dir};
pub use save::{SaveError, Stamp, replace, save, save_unchanged};
