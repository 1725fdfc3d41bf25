//! Columns and furnishings.

use geometry::{Facing, Placed, Pt};
use measure::Len;
use serde::{Deserialize, Serialize};

/// The section of a column.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub enum ColumnShape {
    Round { diameter: Len },
    Square { width: Len, depth: Len },
}

/// A post that carries the house above.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Column {
    /// The centre.
    pub at: Pt,
    pub shape: ColumnShape,
    pub facing: Facing,
}

/// A piece of furniture or a stored thing: a plain box with a name.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Furnishing {
    pub name: String,
    /// The middle of the back edge.
    pub at: Pt,
    pub facing: Facing,
    pub width: Len,
    pub depth: Len,
    /// From the floor to its top.
    pub height: Len,
    /// Built in: it can't be pushed aside.
    pub fixed: bool,
}

impl Furnishing {
    pub fn placed(&self) -> Placed {
        Placed { back: self.at, facing: self.facing, width: self.width, depth: self.depth }
    }

    /// Whether one of the words of its name is among some, in capitals or not.
    pub fn is_called(&self, words: &[&str]) -> bool {
        self.name.split(' ').any(|part| words.iter().any(|word| part.eq_ignore_ascii_case(word)))
    }

    /// Whether a word is part of its name, in capitals or not: `tub` of `Bathtub`.
    pub fn name_holds(&self, word: &str) -> bool {
        let parts = self.name.as_bytes().windows(word.len());
        parts.into_iter().any(|part| part.eq_ignore_ascii_case(word.as_bytes()))
    }
}

impl Column {
    /// Width and depth of the box around the section.
    pub fn size(&self) -> (Len, Len) {
        match self.shape {
            ColumnShape::Round { diameter } => (diameter, diameter),
            ColumnShape::Square { width, depth } => (width, depth),
        }
    }

    /// The box around the section.
    pub fn placed(&self) -> Placed {
        let (width, depth) = self.size();
        Placed { back: self.at - self.facing.step(depth / 2), facing: self.facing, width, depth }
    }
}
