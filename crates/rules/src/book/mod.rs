//! The code book: limits by slug, edition and place, each with its citation.

use measure::{Area, Len};
use plan::Edition;

use crate::Citation;

/// A limit and where it comes from.
#[derive(Clone, Debug)]
pub struct Limit<T> {
    pub value: T,
    pub citation: Citation,
}

/// The limits in force for one edition and place, read from `assets/code`.
#[derive(Clone, Debug)]
pub struct Book {
    edition: Edition,
}

impl Book {
    /// The model code of an edition, without local amendments.
    pub fn model(edition: Edition) -> Book {
        Book { edition }
    }

    pub fn edition(&self) -> Edition {
        self.edition
    }

    /// A length limit. Panics on a slug that the book does not hold: a test asks for every slug.
    pub fn len(&self, _slug: &str) -> Limit<Len> {
        unimplemented!()
    }

    pub fn area(&self, _slug: &str) -> Limit<Area> {
        unimplemented!()
    }

    /// The citation of a demand that has no figure.
    pub fn cite(&self, _slug: &str) -> Citation {
        unimplemented!()
    }
}
