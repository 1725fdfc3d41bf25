//! Ways in against independent references.

mod inflated;
mod invariance;
mod plans;
mod raster;
