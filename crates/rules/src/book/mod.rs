//! The code book: limits by slug, edition and place, each with its citation.
//!
//! The book is a pile of layers: the model code, and the amendments of a place on top of it. A later
//! layer wins. The model code is in `assets/code`, a list of entries for each family of rules.

mod figure;
mod layer;

use std::sync::{Arc, OnceLock};

use measure::{Area, Len};
use plan::Edition;

use crate::Citation;

pub use figure::Figure;
pub use layer::{BookError, Clause, Entry, Layer};

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
    /// From the model code upwards; never empty.
    layers: Vec<Arc<Layer>>,
}

/// The files of the model code.
const FILES: &[(&str, &str)] = &[
    ("way-out.ron", include_str!("../../../../assets/code/way-out.ron")),
    ("access.ron", include_str!("../../../../assets/code/access.ron")),
    ("bedroom.ron", include_str!("../../../../assets/code/bedroom.ron")),
    ("rooms.ron", include_str!("../../../../assets/code/rooms.ron")),
    ("headroom.ron", include_str!("../../../../assets/code/headroom.ron")),
    ("doors.ron", include_str!("../../../../assets/code/doors.ron")),
    ("stairs.ron", include_str!("../../../../assets/code/stairs.ron")),
];

fn read_model() -> Result<Layer, BookError> {
    let mut layer = Layer::empty("model code");
    for (file, text) in FILES {
        layer.read(file, text)?;
    }
    Ok(layer)
}

impl Book {
    /// The model code of an edition, without local amendments.
    pub fn model(edition: Edition) -> Book {
        static MODEL: OnceLock<Arc<Layer>> = OnceLock::new();
        let model = MODEL.get_or_init(|| match read_model() {
            Ok(layer) => Arc::new(layer),
            Err(e) => unreachable!("the built-in code files are read by a test: {e}"),
        });
        Book { edition, layers: vec![Arc::clone(model)] }
    }

    pub fn edition(&self) -> Edition {
        self.edition
    }

    /// The place whose amendments are in force, or `model code`.
    pub fn place(&self) -> &str {
        self.layers.last().map_or("", |layer| &layer.place)
    }

    /// The topmost entry of a slug that speaks about this edition.
    pub fn entry(&self, slug: &str) -> Option<(&Entry, &Clause)> {
        self.layers.iter().rev().find_map(|layer| {
            let entry = layer.entry(slug)?;
            Some((entry, entry.clause(self.edition)?))
        })
    }

    /// The figure of a length limit alone. Panics as [`Book::len`].
    pub fn length(&self, slug: &str) -> Len {
        match self.clause(slug).figure {
            Figure::Len(value) => value,
            other => unreachable!("{slug} is no length but {other:?}"),
        }
    }

    /// A length limit. Panics on a slug that the book does not hold: a test asks for every slug.
    pub fn len(&self, slug: &'static str) -> Limit<Len> {
        Limit { value: self.length(slug), citation: self.cite(slug) }
    }

    /// An area limit. Panics as [`Book::len`].
    pub fn area(&self, slug: &'static str) -> Limit<Area> {
        match self.clause(slug).figure {
            Figure::Area(value) => Limit { value, citation: self.cite(slug) },
            other => unreachable!("{slug} is no area but {other:?}"),
        }
    }

    /// A counted limit. Panics as [`Book::len`].
    pub fn count(&self, slug: &'static str) -> Limit<u32> {
        match self.clause(slug).figure {
            Figure::Count(value) => Limit { value, citation: self.cite(slug) },
            other => unreachable!("{slug} is no count but {other:?}"),
        }
    }

    /// The citation of a demand, with or without a figure. Panics as [`Book::len`].
    pub fn cite(&self, slug: &'static str) -> Citation {
        let clause = self.clause(slug);
        Citation {
            slug,
            text: clause.text.clone(),
            edition: self.edition,
            confidence: clause.confidence,
        }
    }

    fn clause(&self, slug: &str) -> &Clause {
        match self.entry(slug) {
            Some((_, clause)) => clause,
            None => unreachable!("the code book has no {slug}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_built_in_files_read_and_speak_about_every_edition() {
        let model = read_model().unwrap_or_else(|e| panic!("{e}"));
        for entry in model.entries() {
            for edition in Edition::ALL {
                let clause = entry.clause(edition);
                let clause = clause.unwrap_or_else(|| panic!("{} {edition:?}", entry.slug));
                assert!(!clause.text.is_empty(), "{} {edition:?}", entry.slug);
            }
            assert!(!entry.what.is_empty(), "{}", entry.slug);
        }
    }

    #[test]
    fn a_later_layer_wins_where_it_speaks() {
        let mut book = Book::model(Edition::E2021);
        let model = book.len("panel-depth");
        assert_eq!(book.place(), "model code");
        let mut town = Layer::empty("our town");
        let text = r#"[(slug: "panel-depth", what: "Depth", limit: Inches("42"), editions: {
            2021: (section: "town code 7", source: "town", confidence: Seen)})]"#;
        town.read("town.ron", text).expect("good text");
        book.layers.push(Arc::new(town));
        let local = book.len("panel-depth");
        assert_eq!((local.value, local.citation.text.as_str()), (Len::inches(42), "town code 7"));
        assert_eq!(book.place(), "our town");
        book.edition = Edition::E2018;
        assert_eq!(book.len("panel-depth").value, model.value);
    }
}
