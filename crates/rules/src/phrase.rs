//! A sentence with lengths in it, written out in the reader's unit system.

use measure::{Area, Len, Precision, System};

/// A piece of a sentence.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Part {
    Text(String),
    /// A clearance, in inches or millimetres.
    Inches(Len),
    /// A length, in feet and inches or millimetres.
    Len(Len),
    Area(Area),
}

/// A sentence whose figures are written when it is read.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Phrase(pub Vec<Part>);

impl Phrase {
    pub fn text(s: impl Into<String>) -> Phrase {
        Phrase(vec![Part::Text(s.into())])
    }

    /// The sentence with more words.
    pub fn then(mut self, s: impl Into<String>) -> Phrase {
        self.0.push(Part::Text(s.into()));
        self
    }

    /// The sentence with a clearance.
    pub fn inches(mut self, l: Len) -> Phrase {
        self.0.push(Part::Inches(l));
        self
    }

    /// The sentence with a length.
    pub fn len(mut self, l: Len) -> Phrase {
        self.0.push(Part::Len(l));
        self
    }

    /// The sentence with an area.
    pub fn area(mut self, a: Area) -> Phrase {
        self.0.push(Part::Area(a));
        self
    }

    /// The sentence in a unit system.
    pub fn say(&self, system: System) -> String {
        self.0
            .iter()
            .map(|part| match part {
                Part::Text(s) => s.clone(),
                Part::Inches(l) => system.inches(*l, Precision::Tape),
                Part::Len(l) => system.len(*l, Precision::Tape),
                Part::Area(a) => system.area(*a),
            })
            .collect()
    }
}
