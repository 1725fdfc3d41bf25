//! Ways in: how wide a person may be to get from an arrival to a target, and where it pinches.
//!
//! Theory. Grow every piece by half a width: two places part exactly when the grown pieces hold a closed
//! curve that goes round one of them and not round the other. Grown convex pieces meet in convex
//! sets, so every such curve is made of links between two pieces, and a link lies in the grown pieces
//! as soon as their distance is less than the width. So pairs of pieces are taken by rising distance
//! and joined; each carries a label with one bit per place, set when its path crosses the ray from
//! that place to the left an odd number of times. The first pair that closes a loop whose label
//! differs at two places is the pinch between them. (Obstacles part two points just when the graph of
//! those that meet has an odd cycle: Kumar, Lokshtanov, Saurabh, Suri, Xue, SoCG 2022, for discs and the
//! like; that taking pairs by distance gives the widest way is derived from it.)
//!
//! Everything is decided in whole numbers. A person is a disc; the floor goes on for ever beyond the
//! pieces, so a plan that must not be left needs its walls, or a frame of four pieces, among them.

mod batch;
mod components;
mod contraction;
mod held;
mod link;
mod obstacles;
mod partition;
mod rays;
mod scene;
mod search;
mod walk;
mod way;

use measure::Len;

pub use held::Held;
pub use obstacles::Obstacles;
pub use walk::{Walk, walk};
pub use way::{Limit, Pinch, Standing, Way};

use crate::Pt;
use batch::Batch;
use scene::Scene;
use search::Search;

/// The widest way to every target from the best of the arrivals, in the order of the targets.
///
/// Widths are sought up to `most` (at least one unit, at most [`Len::COORD_LIMIT`]); what is as wide or
/// wider comes back as [`Limit::Open`]. To ask only whether a person of one width gets there, ask with
/// `most` as that width: [`Way::passes`] tells, and few pairs are looked at.
///
/// `width` and what it is limited by are exact and do not depend on the order of the pieces; among
/// several gaps of the same width that all limit a way, one is chosen by where its pieces lie.
pub fn ways(obstacles: &Obstacles, arrivals: &[Pt], targets: &[Pt], most: Len) -> Vec<Way> {
    let none = Obstacles::default();
    let scene = Scene { fixed: obstacles, moving: &none };
    let search = Search::new(scene, arrivals, targets, most);
    let mut batches = Batch::all(arrivals, targets, scene.len());
    search.run(scene, &mut batches);
    search.ways(scene, &batches)
}
