//! The code book: limits by slug, edition and place, each with its citation.
//!
//! The book is a pile of layers: the model code, and the amendments of a place on top of it. A later
//! layer wins. The model code is in `assets/code`, a list of entries for each family of rules.

mod amend;
mod figure;
mod layer;
mod locality;

use std::sync::{Arc, OnceLock};

use measure::{Area, Len};
use plan::{Edition, Site};

use crate::Citation;

pub use amend::write_amendments;
pub use figure::Figure;
pub use layer::{BookError, Clause, Entry, Layer};
pub use locality::{Locality, localities, locality};

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

/// What [`Book::place`] says where nothing is amended.
pub const MODEL_CODE: &str = "model code";

/// The files of the model code.
const FILES: &[(&str, &str)] = &[
    ("way-out.ron", include_str!("../../../../assets/code/way-out.ron")),
    ("access.ron", include_str!("../../../../assets/code/access.ron")),
    ("bedroom.ron", include_str!("../../../../assets/code/bedroom.ron")),
    ("rooms.ron", include_str!("../../../../assets/code/rooms.ron")),
    ("headroom.ron", include_str!("../../../../assets/code/headroom.ron")),
    ("doors.ron", include_str!("../../../../assets/code/doors.ron")),
    ("build.ron", include_str!("../../../../assets/code/build.ron")),
    ("heat.ron", include_str!("../../../../assets/code/heat.ron")),
    ("fitness.ron", include_str!("../../../../assets/code/fitness.ron")),
    ("stated.ron", include_str!("../../../../assets/code/stated.ron")),
    ("electrical.ron", include_str!("../../../../assets/code/electrical.ron")),
    ("stairs.ron", include_str!("../../../../assets/code/stairs.ron")),
];

fn read_model() -> Result<Layer, BookError> {
    let mut layer = Layer::empty(MODEL_CODE);
    for (file, text) in FILES {
        layer.read(file, text)?;
    }
    Ok(layer)
}

/// The model code.
fn model() -> &'static Arc<Layer> {
    static MODEL: OnceLock<Arc<Layer>> = OnceLock::new();
    MODEL.get_or_init(|| match read_model() {
        Ok(layer) => Arc::new(layer),
        Err(e) => unreachable!("the built-in code files are read by a test: {e}"),
    })
}

/// Reads the text of an amendment file: see `assets/code/places`.
pub fn read_amendments(file: &str, text: &str) -> Result<Layer, BookError> {
    Layer::amendments(model(), file, text)
}

/// What of a site's place and amendments can't be used, each in a sentence; the model code holds there.
pub fn faults(site: &Site) -> Vec<String> {
    let mut faults = Layer::of_plan(model(), "", &site.amendments).1;
    if !site.place.is_empty() && locality(&site.place).is_none() {
        faults.insert(0, unknown_place(&site.place));
    }
    faults
}

/// The name of the code that is in force for a plan besides its edition: what [`Book::place`] of it says.
pub fn place_name(site: &Site) -> String {
    let place = locality(&site.place).map(|l| l.layer.place.as_str());
    match (place, site.amendments.is_empty()) {
        (None, true) => MODEL_CODE.to_owned(),
        (Some(place), true) => place.to_owned(),
        (None, false) => "amended in the plan".to_owned(),
        (Some(place), false) => format!("{place}, amended in the plan"),
    }
}

/// Says that no place has this key, and which there are.
pub fn unknown_place(key: &str) -> String {
    let known: Vec<&str> = localities().iter().map(|p| p.key).collect();
    format!("no place is called \"{key}\"; there are {}", known.join(", "))
}

impl Book {
    /// The model code of an edition, without local amendments.
    pub fn model(edition: Edition) -> Book {
        Book { edition, layers: vec![Arc::clone(model())] }
    }

    /// The code that is in force for a plan: the model code, the amendments of its place, and the user's own.
    /// What can't be used of them is left out: [`faults`] says what.
    pub fn of(site: &Site) -> Book {
        let mut book = Book::model(site.edition);
        if let Some(place) = locality(&site.place) {
            book.layers.push(Arc::clone(&place.layer));
        }
        if !site.amendments.is_empty() {
            let name = place_name(site);
            book.layers.push(Arc::new(Layer::of_plan(model(), &name, &site.amendments).0));
        }
        book
    }

    /// The book with one more layer on top.
    #[must_use]
    pub fn amended(mut self, layer: Arc<Layer>) -> Book {
        self.layers.push(layer);
        self
    }

    /// Every limit of the model code.
    pub fn limits() -> impl Iterator<Item = &'static Entry> {
        model().entries()
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

    fn amended(limit: &str, figure: &str) -> Site {
        let (limit, figure) = (limit.to_owned(), figure.to_owned());
        let amendments = vec![plan::Amendment { limit, figure, reason: "handout 7".to_owned() }];
        Site { amendments, ..Site::default() }
    }

    #[test]
    fn the_user_s_own_amendment_wins_and_says_so() {
        let site = Site { place: "fargo-nd".to_owned(), ..amended("escape-sill", "50") };
        let book = Book::of(&site);
        let sill = book.len("escape-sill");
        assert_eq!(sill.value, Len::inches(50));
        assert_eq!(sill.citation.marked(), "amended: handout 7 (as the user states)");
        assert_eq!(book.place(), "Fargo, North Dakota, amended in the plan");
        assert!(faults(&site).is_empty());
    }

    #[test]
    fn what_cannot_be_used_is_said_and_the_model_code_stays() {
        for (limit, figure) in
            [("escape-sil", "50"), ("escape-sill", "high"), ("panel-no-bath", "1")]
        {
            let site = amended(limit, figure);
            assert_eq!(faults(&site).len(), 1, "{limit} {figure}");
            let model = Book::model(site.edition).len("escape-sill");
            assert_eq!(Book::of(&site).len("escape-sill").value, model.value);
        }
        let said = faults(&amended("escape-sil", "50"));
        assert!(said[0].contains("escape-sill"), "{said:?}");
        let nowhere = Site { place: "nowhere".to_owned(), ..Site::default() };
        assert!(faults(&nowhere)[0].contains("fargo-nd"));
    }

    #[test]
    fn a_bad_file_says_file_line_and_reason() {
        let read = |text: &str| read_amendments("town.ron", text).unwrap_err().to_string();
        let one = |limit: &str, figure: &str| {
            format!(
                "(\n place: \"A town\",\n amendments: [\n  (limit: \"{limit}\", figure: \"{figure}\", \
                 reason: \"r\"),\n ],\n)"
            )
        };
        assert!(read("(\nplace: 7").starts_with("town.ron:2: "));
        assert!(read(&one("panel", "3")).starts_with("town.ron:4: the code book has no limit"));
        assert!(read(&one("panel-depth", "3 sq ft")).starts_with("town.ron:4: \"panel-depth\": "));
        let good = read_amendments("town.ron", &one("panel-depth", "42 in")).expect("good text");
        let book = Book::model(Edition::E2021).amended(Arc::new(good));
        assert_eq!(book.length("panel-depth"), Len::inches(42));
        assert_eq!(book.place(), "A town");
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
