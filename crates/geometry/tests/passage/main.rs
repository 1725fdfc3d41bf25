//! Ways in against independent references.

mod inflated;
mod invariance;
mod limits;
mod plans;
mod raster;
mod real_floors;
mod visibility;
mod walking;
