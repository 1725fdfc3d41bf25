//! Ways in against independent references.

mod inflated;
mod invariance;
mod limits;
mod plans;
mod raster;
mod visibility;
mod walking;
